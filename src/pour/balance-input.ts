/** A pour that is almost done: as it is written, and as it is read. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, list, maybe, quantity } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import { all, allOrNone, anyOf, holds, needs, notBoth, where } from '../reckoning/together';
import { clock as clockField } from './clock';
import { INCREMENT, LEAST_LOAD, POUR, TRUCK } from './ordinary';
import { AREA_PLACED, LEAD_TIME, PLACING_RATE, PROBE_WITHIN, WITHIN } from './truck-ordinary';

type Volume = Quantity<'volume'>;
type Length = Quantity<'length'>;
type Ratio = Quantity<'ratio'>;
type Time = Quantity<'time'>;

/** What is struck off: its area, and what is known of its depth. */
export interface PlacedInput {
  /** Area that is struck off to grade. */
  readonly area: QuantityInput<'area'>;
  /** Thickness that was planned for it; by default that of the rest. */
  readonly thickness?: QuantityInput<'length'>;
  /** Depths probed in it, each through to the base. */
  readonly probes?: readonly QuantityInput<'length'>[];
  /** Volume measured in place, in place of probes. */
  readonly volume?: QuantityInput<'volume'>;
}

/** What is left to place. */
export interface LeftInput {
  /** Area that is left. */
  readonly area: QuantityInput<'area'>;
  /** Thickness that is planned for it. */
  readonly thickness: QuantityInput<'length'>;
  /** Depths from a string over the forms down to the base. */
  readonly probes?: readonly QuantityInput<'length'>[];
}

/** Input of {@link balanceLoad}. */
export interface BalanceLoadInput {
  /** What each ticket so far says. */
  readonly tickets: readonly QuantityInput<'volume'>[];
  /** Of these, still in a truck or a pump. */
  readonly inTruck?: QuantityInput<'volume'>;
  /** Ordered and on its way, not among the tickets. */
  readonly onTheWay?: QuantityInput<'volume'>;
  /** What is done. */
  readonly done: PlacedInput;
  /** What is left. */
  readonly left: LeftInput;
  /** How far each area may be off; by default `2%`. */
  readonly areaWithin?: QuantityInput<'ratio'>;
  /** How far a single probe may lie from the mean around it; by default `1/2 in` or `12 mm`. */
  readonly probeWithin?: QuantityInput<'length'>;
  /** How far the yield of the rest may be off that so far; by default `2%`. */
  readonly yieldWithin?: QuantityInput<'ratio'>;
  /** The step in which the supplier sells. */
  readonly increment: QuantityInput<'volume'>;
  /** The least that the supplier carries without a charge. */
  readonly minimumLoad?: QuantityInput<'volume'>;
  /** What is placed in a given time; with `leadTime`. */
  readonly placingRate?: QuantityInput<'volume-rate'>;
  /** From the call to the truck at the site; with `placingRate`. */
  readonly leadTime?: QuantityInput<'time'>;
  /** Time of day; with `placingRate` and `leadTime`. */
  readonly now?: QuantityInput<'time'>;
}

export interface BalanceParsed {
  readonly tickets: readonly Volume[];
  readonly inTruck: Volume | undefined;
  readonly onTheWay: Volume | undefined;
  readonly done: {
    readonly area: Quantity<'area'>;
    readonly thickness: Length | undefined;
    readonly probes: readonly Length[] | undefined;
    readonly volume: Volume | undefined;
  };
  readonly left: {
    readonly area: Quantity<'area'>;
    readonly thickness: Length;
    readonly probes: readonly Length[] | undefined;
  };
  readonly areaWithin: Ratio | undefined;
  readonly probeWithin: Length | undefined;
  readonly yieldWithin: Ratio | undefined;
  readonly increment: Volume;
  readonly minimumLoad: Volume | undefined;
  readonly placingRate: Quantity<'volume-rate'> | undefined;
  readonly leadTime: Time | undefined;
  readonly now: Time | undefined;
}

const MOST = 500;

export const thickness = (name: string): Field<Length> =>
  quantity('length', name, 'positive', SLAB_THICKNESS);
export const probes = (): Field<readonly Length[] | undefined> => maybe(list(thickness('probe'), 1, MOST));

export function door(): Field<BalanceParsed> {
  return fields(
    {
      tickets: list(quantity('volume', 'ticket', 'positive', TRUCK), 1, MOST),
      inTruck: maybe(quantity('volume', 'inTruck', 'not-negative', TRUCK)),
      onTheWay: maybe(quantity('volume', 'onTheWay', 'not-negative', POUR)),
      done: fields(
        {
          area: quantity('area', 'area', 'positive', AREA_PLACED),
          thickness: maybe(thickness('thickness')),
          probes: probes(),
          volume: maybe(quantity('volume', 'volume', 'positive', POUR)),
        },
        notBoth('volume', 'probes'),
      ),
      left: fields({
        area: quantity('area', 'area', 'positive', AREA_PLACED),
        thickness: thickness('thickness'),
        probes: probes(),
      }),
      areaWithin: maybe(quantity('ratio', 'areaWithin', 'not-negative', WITHIN)),
      probeWithin: maybe(quantity('length', 'probeWithin', 'not-negative', PROBE_WITHIN)),
      yieldWithin: maybe(quantity('ratio', 'yieldWithin', 'not-negative', WITHIN)),
      increment: quantity('volume', 'increment', 'positive', INCREMENT),
      minimumLoad: maybe(quantity('volume', 'minimumLoad', 'positive', LEAST_LOAD)),
      placingRate: maybe(quantity('volume-rate', 'placingRate', 'positive', PLACING_RATE)),
      leadTime: maybe(quantity('time', 'leadTime', 'positive', LEAD_TIME)),
      now: maybe(clockField('now')),
    },
    all(
      allOrNone('placingRate', 'leadTime'),
      needs('now', 'leadTime'),
      where(holds('left', 'probes'), anyOf(holds('done', 'probes'), holds('done', 'volume'))),
    ),
  );
}
