/** The balance of heat in a mix: each part by its mass, its heat and how far it is above freezing. */

import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { above, type Difference, FREEZING, type Temperature } from './degrees';
import type { Aggregate, FreshParsed, Part } from './fresh-mix';

type Mass = Quantity<'mass'>;

export const SOLID = constant(() => ratio('0.22:1'));
export const ICE_HEAT = constant(() => ratio('0.5:1'));
/** The heat that melts ice, in degrees of as much water: 144 Btu/lb, or 80 calories a gram. */
export const MELTING = /*#__PURE__*/ paired('temperature-difference', '144 degF', '80 degC');

export const NONE = /*#__PURE__*/ paired('temperature-difference', '0 degF', '0 degC');

/** A share of the batch, by what it is worth in water. */
type Share = Quantity<'ratio'>;

/** An ingredient put in the balance. */
interface Weighed {
  readonly name: string;
  readonly brings: Difference;
  /** What a degree of it moves the concrete, as a share of a degree. */
  readonly share: Share;
}

export interface Balance {
  readonly H: Mass;
  readonly weighed: readonly Weighed[];
  /** The concrete above freezing, below zero where ice is left. */
  readonly D: Difference;
}

export const frozen = (t: Temperature, { system }: Pad): boolean => t.lessThan(FREEZING.as(system));

export const sum = <D extends 'mass' | 'temperature-difference'>(
  parts: readonly Quantity<D>[],
  none: Quantity<D>,
) => parts.reduce((all, part) => all.plus(part), none);

export const zeroLike = (m: Mass): Mass => m.minus(m);

export const waterOf = ({ mass, moisture }: Aggregate): Mass => mass.times(moisture);

/** Ingredients that neither melt nor freeze. */
function plain(name: string, { mass: m, temperature: T }: Part, worth: Share, H: Mass, pad: Pad): Weighed {
  const f = FREEZING.as(pad.system);
  const share = m.times(worth).over(H);
  const brings = pad.step(
    say`what ${{ ingredient: name }} brings`,
    'd = (k × m ÷ H) × (T − f)',
    { k: worth, m, H, T, f },
    above(f, T).times(share),
  );
  return { name, brings, share };
}

/** Ice, or water that is frozen: warmed to freezing, melted, and worth as much as water from there. */
export const melted = (T: Temperature, pad: Pad): Difference =>
  above(FREEZING.as(pad.system), T).times(ICE_HEAT()).minus(MELTING.as(pad.system));

function aggregate(one: Aggregate, i: number, H: Mass, pad: Pad): Weighed {
  const name = one.name ?? `aggregate ${i + 1}`;
  const { mass: m, temperature: T, moisture: r } = one;
  const [f, k, w] = [FREEZING.as(pad.system), SOLID(), waterOf(one)];
  const cold = frozen(T, pad);
  const D = above(f, T);
  const dry = D.times(m.times(k).over(H));
  const wet = (cold ? melted(T, pad) : D).times(w.over(H));
  const values = { k, m, H, T, f, r };
  const share = m
    .times(k)
    .plus(cold ? w.times(ICE_HEAT()) : w)
    .over(H);
  const brings = cold
    ? pad.step(
        say`what ${{ ingredient: name }} brings, its water frozen`,
        'd = (k × m ÷ H) × (T − f) + (m × r ÷ H) × (s × (T − f) − L)',
        { ...values, s: ICE_HEAT(), L: MELTING.as(pad.system) },
        dry.plus(wet),
      )
    : pad.step(
        say`what ${{ ingredient: name }} and its water bring`,
        'd = ((k + r) × m ÷ H) × (T − f)',
        values,
        dry.plus(wet),
      );
  return { name, brings, share };
}

function iceOf({ ice }: FreshParsed, H: Mass, pad: Pad): Weighed[] {
  if (!ice) return [];
  const [f, s, L, i] = [FREEZING.as(pad.system), ICE_HEAT(), MELTING.as(pad.system), ice.mass];
  const T = ice.temperature ?? f;
  const share = i.over(H);
  const brings = pad.step(
    'what ice brings',
    'd = (i ÷ H) × (s × (T − f) − L)',
    { i, H, s, T, f, L },
    melted(T, pad).times(share),
  );
  return [{ name: 'ice', brings, share: share.times(s) }];
}

function worthOf({ cement, aggregates, water, ice }: FreshParsed, pad: Pad): Mass {
  const none = zeroLike(cement.mass);
  const k = SOLID();
  const a = sum(
    aggregates.map((one) => one.mass),
    none,
  );
  const f = sum(aggregates.map(waterOf), none);
  const [c, w, i] = [cement.mass, water.mass, ice?.mass ?? none];
  return pad.step(
    'the batch in water',
    'H = k × (c + a) + w + f + i',
    { k, c, a, w, f, i },
    c.plus(a).times(k).plus(w).plus(f).plus(i),
  );
}

export function balanced(input: FreshParsed, pad: Pad): Balance {
  const { cement, water, aggregates } = input;
  const H = worthOf(input, pad);
  const weighed = [
    plain('cement', cement, SOLID(), H, pad),
    ...aggregates.map((one, i) => aggregate(one, i, H, pad)),
    plain('water', water, ratio('1:1'), H, pad),
    ...iceOf(input, H, pad),
  ];
  const values = Object.fromEntries(weighed.map(({ brings }, i) => [`d${i + 1}`, brings]));
  const D = pad.step(
    'the concrete above freezing',
    `D = ${Object.keys(values).join(' + ')}`,
    values,
    sum(
      weighed.map(({ brings }) => brings),
      NONE.as(pad.system),
    ),
  );
  return { H, weighed, D };
}
