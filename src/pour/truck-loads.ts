/**
 * The loads of a pour: full trucks, then the rest, `n = ceil(V ÷ q)`; in steps of the order where the supplier's is
 * given, so that each load can be bought: a truck carries `f = i × floor(q ÷ i)`, and the rest is rounded up.
 */

import * as sharedFaults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { timesDown } from '../reckoning/whole';
import { oddLoad } from './truck-cautions';

type Volume = Quantity<'volume'>;

/** What the loads are made of. */
export interface Split {
  readonly volume: Volume | undefined;
  readonly truckCapacity: Volume | undefined;
  readonly loads: readonly Volume[] | undefined;
  readonly increment: Volume | undefined;
}

/** More loads than one day has. */
export const MOST_LOADS = 2000;
export const DAY_LOADS: Limit = { of: 'the pour in loads', most: MOST_LOADS };
/** What most plants sell in. */
export const STEP = /*#__PURE__*/ paired('volume', '0.25 yd3', '0.25 m3');
const ONE = constant(() => ratio('1:1'));

/** What one truck brings: a whole number of steps. */
function fullLoad(q: Volume, i: Volume | undefined, pad: Pad): Volume {
  if (!i) return q;
  if (i.greaterThan(q)) return refuse('increment', sharedFaults.doesNotFit('increment', 'truckCapacity'));
  const steps = Math.round(q.over(i).downTo(ONE()).toNumber(':1'));
  const f = i.times(wholeNumber(steps)).in(q.shownIn ?? q.unit);
  return pad.step('a full load', 'f = i × floor(q ÷ i)', { i, q }, f);
}

/** Each load, the rest last. */
export function loadsOf(
  { volume: V, truckCapacity, loads, increment: i }: Split,
  pad: Pad,
): readonly Volume[] {
  if (loads && (V || truckCapacity))
    refuse(V ? 'volume' : 'truckCapacity', sharedFaults.giveOneOf(['volume', 'loads']));
  if (loads) return loads;
  if (!V)
    return refuse(
      'volume',
      sharedFaults.missing('volume', ['"30 yd3", or give loads', '"24 m3", or give loads']),
    );
  if (!truckCapacity)
    return refuse('truckCapacity', sharedFaults.missing('truckCapacity', ['"10 yd3"', '"8 m3"']));
  const q = fullLoad(truckCapacity, i, pad);
  withinTimes(DAY_LOADS, V.over(q), 'truckCapacity');
  const full = timesDown(V, q);
  const rest = V.minus(q.times(wholeNumber(full))).in(q.shownIn ?? q.unit);
  const even = rest.sign() === 0;
  const n = wholeNumber(even ? full : full + 1);
  pad.step('loads', even ? 'n = V ÷ q' : 'n = ceil(V ÷ q)', { V, q }, n);
  const last = i ? rest.upTo(i).in(q.shownIn ?? q.unit) : rest;
  return [...Array.from({ length: full }, () => q), ...(even ? [] : [last])];
}

const isWhole = (load: Volume, step: Volume): boolean => load.downTo(step).compareTo(load) === 0;

/** Loads that cannot be bought: no whole number of steps, by the step that is given or that most plants sell in. */
export function heedSteps(loads: readonly Volume[], increment: Volume | undefined, pad: Pad): void {
  const steps = increment ? [increment] : [STEP.as('customary'), STEP.as('metric')];
  // Loads are the very same for most of a day, or of few sizes: one that is as another is as whole.
  const whole = new Set<string>();
  const odd = loads.findIndex((load, i) => {
    if (load === loads[i - 1] || whole.has(`${load.value} ${load.unit}`)) return false;
    whole.add(`${load.value} ${load.unit}`);
    return !steps.some((step) => isWhole(load, step));
  });
  const load = loads[odd];
  if (load) pad.caution(oddLoad(increment ?? STEP.as(pad.system), load, wholeNumber(odd + 1)));
}
