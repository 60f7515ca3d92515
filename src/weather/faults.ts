/** Faults of readings that only weather has. */
import { fault, withExample } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import type { Quantity } from '../quantity/quantity';
import { say } from '../quantity/words';

/** No equation may be carried beyond what it was made for. */
export const outsideRange = (what: string, range: string | readonly [string, string]): Fault =>
  withExample(
    'outside-range',
    range,
    (from) =>
      say`${{ what }} must lie within ${{ range: from }}, which is as far as the equation holds; check the reading and its unit`,
  );

export const backwards = (number: number): Fault =>
  fault(
    'out-of-order',
    say`reading ${{ number }} is not later than the one before it; list readings in order of time, and each time once`,
  );

/** What happened in between nobody knows. */
export const gapInHistory = (gap: Quantity<'time'>, most: Quantity<'time'>): Fault =>
  fault(
    'gap-in-history',
    say`${{ gap }} without a reading is longer than the ${{ most }} that is bridged; put in what is missing, or give gap where the temperature is known to have run straight`,
  );

export const oneIndex = (): Fault =>
  fault('give-one-of', 'give maturity or age, the same of them for every specimen of the calibration');

export const calibrationOrder = (number: number): Fault =>
  fault(
    'out-of-order',
    say`specimen ${{ number }} is not both older and stronger than the one before it; list them from the weakest on, and leave out one that broke wrong`,
  );

export const noCalibration = (): Fault =>
  fault('missing', 'calibration is missing; a strength is found by specimens of the same mix only');

export const shareOrStrength = (): Fault =>
  fault(
    'give-one-of',
    'give share or strength for a use and not both; where neither is given, the usual share is taken',
  );

export const lowAbovePlacing = (): Fault =>
  fault(
    'out-of-order',
    'the low is above the air at placing; give the lowest air of the days that follow, the hour of placing among them',
  );

export const onlyWith = (what: string, other: string): Fault =>
  fault('does-not-fit', say`${{ what }} goes with ${{ other }} only`);
