/**
 * Fibers for a pour: weight, bags, bags in each load.
 *
 * Weight is volume × dosage. Bags are rounded up for the pour and for a load, since a bag is emptied
 * whole into the truck.
 */
import { density } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { choice, fields, maybe, quantity } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import { isUnusual, type Ordinary, unusual } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { ACI_FIBER, COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { steadyCount } from './common';

/** Kinds of fiber with a least dosage that is published. */
export type FiberKind = 'micro' | 'fibrillated' | 'macro' | 'steel';

/** Input of {@link fiberDosage}. */
export interface FiberDosageInput {
  /** Concrete to be placed. */
  readonly volume: QuantityInput<'volume'>;
  /** What the fibers are. */
  readonly kind: FiberKind;
  /** By default the least for the kind. */
  readonly dosage?: QuantityInput<'density'>;
  /** Fibers in a bag, where bags are wanted. */
  readonly bag?: QuantityInput<'mass'>;
  /** Concrete in a truck, where bags in a load are wanted. */
  readonly load?: QuantityInput<'volume'>;
}

/** Figures of {@link fiberDosage}. */
export interface FiberDosageFigures {
  /** Fibers in all. */
  readonly fibers: Quantity<'mass'>;
  /** Fibers in the concrete, given or the least for the kind. */
  readonly dosage: Quantity<'density'>;
  /** The least that is published for the kind. */
  readonly leastDosage: Quantity<'density'>;
  /** Whole bags for the pour. */
  readonly bags?: Quantity<'count'>;
  /** Fibers in a load. */
  readonly fibersPerLoad?: Quantity<'mass'>;
  /** Whole bags in a load. */
  readonly bagsPerLoad?: Quantity<'count'>;
}

interface Parsed {
  readonly volume: Quantity<'volume'>;
  readonly kind: FiberKind;
  readonly dosage: Quantity<'density'> | undefined;
  readonly bag: Quantity<'mass'> | undefined;
  readonly load: Quantity<'volume'> | undefined;
}

/** Pounds in a cubic yard of slab on ground. */
const LEAST: Record<FiberKind, string> = { micro: '0.5', fibrillated: '1.5', macro: '3', steel: '15' };

const POUR: Ordinary = {
  of: 'the concrete of one job',
  least: ['0.1 yd3', '0.08 m3'],
  most: ['5000 yd3', '4000 m3'],
  source: COMMON_PRACTICE,
};
const BAG: Ordinary = {
  of: 'a bag of fibers',
  least: ['2 oz', '50 g'],
  most: ['60 lb', '30 kg'],
  source: COMMON_PRACTICE,
};
const LOAD: Ordinary = {
  of: 'the concrete in a truck',
  least: ['0.25 yd3', '0.2 m3'],
  most: ['14 yd3', '12 m3'],
  source: COMMON_PRACTICE,
};
const dosageOf = (kind: FiberKind, least: Ordinary['least'], most: Ordinary['most']): Ordinary => ({
  of: `the dosage of ${kind} fibers`,
  ...(least ? { least } : {}),
  ...(most ? { most } : {}),
  source: COMMON_PRACTICE,
});
/** Ten times apart or more, so that a dosage meant for another kind of fiber shows. */
const DOSAGE: Record<FiberKind, Ordinary> = {
  micro: dosageOf('micro', ['0.25 lb/yd3', '0.15 kg/m3'], ['3 lb/yd3', '1.8 kg/m3']),
  fibrillated: dosageOf('fibrillated', ['0.5 lb/yd3', '0.3 kg/m3'], ['8 lb/yd3', '5 kg/m3']),
  macro: dosageOf('macro', ['1 lb/yd3', '0.6 kg/m3'], ['25 lb/yd3', '15 kg/m3']),
  steel: dosageOf('steel', ['8 lb/yd3', '5 kg/m3'], ['200 lb/yd3', '120 kg/m3']),
};
/** What is ordinary hangs on the kind. */
const ANY_DOSAGE: Ordinary = {
  of: 'a dosage of fibers',
  example: ['1.5 lb/yd3', '0.9 kg/m3'],
  source: COMMON_PRACTICE,
};
const BAG_LIMIT: Limit = { of: 'the pour in bags', most: 1_000_000 };

function bagsFor(mass: Quantity<'mass'>, bag: Quantity<'mass'>): Quantity<'count'> {
  withinTimes(BAG_LIMIT, mass.over(bag), 'bag');
  return steadyCount(mass.upTo(bag).over(bag));
}

function reckon(input: Parsed, pad: Pad): FiberDosageFigures {
  const least = density(`${LEAST[input.kind]} lb/yd3`).in(pad.system === 'metric' ? 'kg/m3' : 'lb/yd3');
  const r = input.dosage ?? least;
  if (!input.dosage) {
    pad.assume({
      name: 'dosage',
      value: { reckoned: r },
      because: say`the least for ${{ kind: input.kind }} fibers in a slab on ground`,
      override: 'Give dosage as the maker and the engineer say',
      source: ACI_FIBER,
    });
  }
  const ordinary = DOSAGE[input.kind];
  if (isUnusual(r, ordinary)) pad.caution(unusual('dosage', { value: r, ordinary }, pad.system));
  if (r.lessThan(least)) pad.caution(cautions.lowFiberDosage(least, r));
  const { volume: V, bag: b, load: L } = input;
  const M = pad.step('fibers', 'M = V × r', { V, r }, V.times(r));
  const perLoad = L ? pad.step('fibers in a load', 'm = L × r', { L, r }, L.times(r)) : undefined;
  const bags = b ? pad.step('bags', 'n = ceil(M ÷ b)', { M, b }, bagsFor(M, b)) : undefined;
  const inLoad =
    b && perLoad
      ? pad.step('bags in a load', 'k = ceil(m ÷ b)', { m: perLoad, b }, bagsFor(perLoad, b))
      : undefined;
  pad.caution(cautions.fibersNotBars);
  return {
    fibers: M,
    dosage: r,
    leastDosage: least,
    ...(bags ? { bags } : {}),
    ...(perLoad ? { fibersPerLoad: perLoad } : {}),
    ...(inLoad ? { bagsPerLoad: inLoad } : {}),
  };
}

/**
 * Fibers for a pour, and bags for it and for each load.
 *
 * @param input - volume, kind, dosage; bag and load where bags are wanted
 * @returns weight of fibers, bags, and bags in a load
 * @throws {InputError} `too-many` bags; quantities that cannot be read or are not greater than zero
 * @source least dosages: American Concrete Institute, frequently asked question 926
 * @example
 * ```ts
 * import { fiberDosage } from 'flatwork-reckoner';
 *
 * const { figures } = fiberDosage({ volume: '8 yd3', kind: 'fibrillated', bag: '1.5 lb', load: '9 yd3' });
 * figures.fibers.format(); // '12 lb'
 * figures.bagsPerLoad?.format(); // '9 each'
 * ```
 */
export const fiberDosage: Calculation<FiberDosageInput, FiberDosageFigures> = /*#__PURE__*/ define({
  id: 'fiber-dosage',
  title: 'Fiber dosage',
  version: 1,
  limits: [BAG_LIMIT],
  sources: [ACI_FIBER],
  input: () =>
    fields({
      volume: quantity('volume', 'volume', 'positive', POUR),
      kind: choice('kind', ['micro', 'fibrillated', 'macro', 'steel'] as const),
      dosage: maybe(quantity('density', 'dosage', 'positive', ANY_DOSAGE)),
      bag: maybe(quantity('mass', 'bag', 'positive', BAG)),
      load: maybe(quantity('volume', 'load', 'positive', LOAD)),
    }),
  reckon,
  takes: (_, { kind, bag }) => [{ item: 'fibers', from: 'fibers', of: { kind, bag } }],
});
