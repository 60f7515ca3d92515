/** What to watch out for when the last concrete is called for. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { NRMCA_YIELD } from './sources';

type Ratio = Quantity<'ratio'>;
type Length = Quantity<'length'>;
type Time = Quantity<'time'>;
type Volume = Quantity<'volume'>;

export const usedTooLittle = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'waste-implausible',
  severity: 'warning',
  ...say`the tickets come to ${{ less: actual.abs() }} less than what is measured in place, more than measuring may be off: look for a ticket that is missing, for concrete from elsewhere, and at area and probes`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const usedTooMuch = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'waste-implausible',
  severity: 'warning',
  ...say`${{ actual }} more is used than is measured in place, and more than ${{ limit }} goes astray on no sound job: look for a ticket counted twice, for what is still in a truck, at forms that gave way, and probe what is done`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const restNotProbed = (limit: Volume, actual: Volume): Caution => ({
  code: 'rest-not-probed',
  severity: 'note',
  ...say`from low to high are ${{ actual }}, more than one step of the order, ${{ limit }}: measure the depth of what is left from a string over the forms before calling`,
  limit,
  actual,
  source: NRMCA_YIELD,
});

export const probesScatter = (limit: Length, actual: Length): Caution => ({
  code: 'probes-scatter',
  severity: 'note',
  ...say`twice the standard deviation of the probes is ${{ actual }}, more than the ${{ limit }} that a probe is taken to lie within: the range is widened by it. Probe in more places`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const calledLate = (limit: Time, actual: Time): Caution => ({
  code: 'called-late',
  severity: 'warning',
  ...say`what is on hand lasts ${{ limit }} and a load takes ${{ actual }} from the call: call now, place slower and keep the open edge short and covered, or end at a bulkhead`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const perhapsLate = (limit: Time, actual: Time): Caution => ({
  code: 'called-late',
  severity: 'warning',
  ...say`what is on hand may be too little, lasts ${{ limit }}, and a load takes ${{ actual }} from the call: measure what is left now, and call now unless that shows enough, or end at a bulkhead`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});
