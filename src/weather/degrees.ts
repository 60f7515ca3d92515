/**
 * Arithmetic of temperatures. A temperature is a point on a scale: what lies between two of them is a difference,
 * and with differences one can reckon. 50 degF of cooling are 27.8 degC of it, though 50 degF is 10 degC.
 */
import { paired } from '../quantity/paired';
import { canonicalValue, newQuantity, type Quantity, systemOfQuantity } from '../quantity/quantity';
import { type Unit, unitOf, usualUnit } from '../quantity/units';

/** A point on a scale of temperature. */
export type Temperature = Quantity<'temperature'>;
/** What lies between two temperatures. */
export type Difference = Quantity<'temperature-difference'>;

/** Where water freezes. */
export const FREEZING = /*#__PURE__*/ paired('temperature', '32 degF', '0 degC');
/** One degree of the scale: what is divided by it is the number of degrees. */
export const ONE_DEGREE = /*#__PURE__*/ paired('temperature-difference', '1 degF', '1 degC');

/** How far one temperature lies above another; below zero where it lies below. */
export const above = (from: Temperature, to: Temperature): Difference =>
  newQuantity(
    'temperature-difference',
    canonicalValue(to).minus(canonicalValue(from)),
    usualUnit('temperature-difference', systemOfQuantity(to)),
  );

/** The temperature so much above another. */
export const raised = (from: Temperature, by: Difference): Temperature =>
  newQuantity(
    'temperature',
    canonicalValue(from).plus(canonicalValue(by)),
    unitOf('temperature', systemOfQuantity(from) === 'metric' ? 'degC' : 'degF') as Unit,
  );

/** Absolute zero, to which the rate of a reaction is reckoned. */
export const ABSOLUTE_ZERO = /*#__PURE__*/ paired('temperature', '-459.67 degF', '-273.15 degC');
