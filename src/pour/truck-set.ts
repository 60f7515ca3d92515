/**
 * When the concrete of a truck sets: by its temperature, or as it was measured on this mix; and how long the open edge may
 * wait for the next load, `g = x × q`, a quarter of the earliest initial set, by the air where that is warmer than the
 * concrete: its skin dries and sets by the air long before the rest does.
 */
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { inOrder } from './measured-hours';
import type { Hours } from './saw-hours';
import { earliestSetIn, initialSetAt, temperatureOf } from './set-time';
import type { TruckPlanFigures } from './truck-figures';
import type { TruckParsed } from './truck-input';

type Time = Quantity<'time'>;

const QUARTER = constant(() => ratio('25%'));

function setsOf(
  { initialSet: measured, concreteTemperature, airTemperature: air }: TruckParsed,
  pad: Pad,
): { readonly initialSet: Hours; readonly skin: Time } {
  const given = inOrder('initialSet', measured);
  if (given) {
    if (concreteTemperature) temperatureOf(concreteTemperature, pad, true);
    return { initialSet: given, skin: given.from };
  }
  const T = temperatureOf(concreteTemperature, pad);
  const initialSet = initialSetAt(T, pad);
  return { initialSet, skin: air?.greaterThan(T) ? earliestSetIn(air, pad) : initialSet.from };
}

/** Set after mixing, and the gap that the open edge bears. */
export function setOfTrucks(
  input: TruckParsed,
  pad: Pad,
): Pick<TruckPlanFigures, 'initialSet' | 'gapAtMost'> {
  const { initialSet, skin: x } = setsOf(input, pad);
  const q = QUARTER();
  return {
    initialSet,
    gapAtMost: pad.step('gap that the open edge bears', 'g = x × q', { x, q }, x.times(q).in('min')),
  };
}
