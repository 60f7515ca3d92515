/** Ordinary ranges of mixes and tickets, beside those that all calculations share. */
import { range } from '../reckoning/ordinary';

export const STRENGTH = /*#__PURE__*/ range(
  'the strength of concrete for flatwork',
  ['2000 psi', '14 MPa'],
  ['8000 psi', '55 MPa'],
);

export const AIR = /*#__PURE__*/ range('the air in concrete', '0.5%', '10%');

export const REPLACED = /*#__PURE__*/ range('the part of the cement that is something else', '2%', '80%');

export const DENSITY = /*#__PURE__*/ range(
  'the density of fresh concrete',
  ['90 pcf', '1400 kg/m3'],
  ['165 pcf', '2650 kg/m3'],
);

export const SPREAD = /*#__PURE__*/ range(
  'the spread of concrete on the flow table',
  ['10 in', '250 mm'],
  ['30 in', '750 mm'],
  ['18 in', '450 mm'],
);

export const LOAD = /*#__PURE__*/ range(
  'the concrete in a truck',
  ['0.25 yd3', '0.2 m3'],
  ['15 yd3', '12 m3'],
);

/** So much of an ingredient as a truck holds. */
export const BATCHED = /*#__PURE__*/ range(
  'an ingredient of one load',
  ['5 lb', '2 kg'],
  ['35000 lb', '16000 kg'],
);

export const WATER = /*#__PURE__*/ range(
  'water for one load',
  ['0.25 gal', '1 L'],
  ['600 gal', '2500 L'],
  ['6 gal', '25 L'],
);

export const MOISTURE = /*#__PURE__*/ range('the moisture of an aggregate', '0.1%', '12%');

export const AGE = /*#__PURE__*/ range('the time from batching to discharge', '5 min', '4 h');
