/** What to watch out for in tickets and an invoice. */

import { NRMCA_YIELD } from '../pour/sources';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';

type Money = Quantity<'money'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

/** More than is usual over plan dimensions. */
export const MUCH = constant(() => ratio('10%'));

/** A mean of fewer says little. */
export const ENOUGH_JOBS = 5;

export const lineDiffers = (name: string, limit: Money, actual: Money): Caution => ({
  code: 'extension-differs',
  severity: 'warning',
  ...say`${{ name }} comes to ${{ limit }}, and ${{ actual }} is billed: look at quantity, price and point, and have it corrected before it is paid`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const feeDiffers = (name: string, limit: Money, actual: Money): Caution => ({
  code: 'fee-differs',
  severity: 'warning',
  ...say`the charge for ${{ name: { says: name } }} comes to ${{ limit }}, and ${{ actual }} is billed: ask the supplier how it was reckoned before it is paid`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const totalDiffers = (limit: Money, actual: Money): Caution => ({
  code: 'total-differs',
  severity: 'warning',
  ...say`the charges of the invoice add to ${{ limit }}, and its total is ${{ actual }}: have it corrected`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const billedNotDelivered = (limit: Volume, actual: Volume): Caution => ({
  code: 'billed-not-delivered',
  severity: 'warning',
  ...say`${{ actual }} of concrete are billed, and the tickets bring ${{ limit }}: look for a ticket that is missing here, and ask for it before the rest is paid`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const deliveredNotBilled = (limit: Volume, actual: Volume): Caution => ({
  code: 'delivered-not-billed',
  severity: 'note',
  ...say`the tickets bring ${{ limit }}, and ${{ actual }} are billed: another invoice may follow`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const overPlan = (name: string | Words, limit: Ratio, actual: Ratio): Caution => ({
  code: 'over-plan',
  severity: 'warning',
  ...say`${{ name }} took ${{ actual }} more than planned, where ${{ limit }} is the most that is usual: look for low ground, forms that gave way, a thickness beyond the plan, or a pump and a truck not emptied, before it goes into the next order`,
  limit,
  actual,
  source: NRMCA_YIELD,
});

export const shortOfPlan = (name: string | Words, limit: Volume, actual: Volume): Caution => ({
  code: 'short-of-plan',
  severity: 'warning',
  ...say`${{ name }} took ${{ actual }}, less than the ${{ limit }} of the plan: it may be thinner than drawn. Measure it, and look for a ticket that is missing`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** So little more is less than any measuring of a slab can know. */
export const MEASURED = constant(() => ratio('101%'));

export const placedBeyondTickets = (limit: Volume, actual: Volume): Caution => ({
  code: 'placed-beyond-tickets',
  severity: 'warning',
  ...say`${{ actual }} are measured in place, and the tickets bring ${{ limit }} to it: look for a ticket that is missing, or measure again, before either figure is used`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const fewJobs = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'few-jobs',
  severity: 'note',
  ...say`jobs that the allowance rests on: ${{ actual }}. With fewer than ${{ limit }} one odd pour decides it, so keep the usual allowance beside it`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});
