/** Gravel as it is bought and spread: tons, loads, and how far a load goes. */

import { constant, length, mass, ratio } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { UnitId } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { wholeUnits } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { ONE } from './base-densities';
import type { BaseTonnageFigures, TonFigures, TonKind } from './base-figures';
import type { TonnageParsed } from './base-tonnage-input';

type Length = Quantity<'length'>;

type Density = Quantity<'density'>;
type Mass = Quantity<'mass'>;
type Volume = Quantity<'volume'>;

const NONE = constant(() => ratio('0:1'));
const INCH = constant(() => length('1 in'));
const CENTIMETER = constant(() => length('1 cm'));
const TON = constant(() => mass('1 ton'));
const TONNE = constant(() => mass('1 tonne'));

/** Customary masses of this size are spoken of in tons, metric ones in tonnes. */
export const inTons = (q: Mass): Mass => q.in(systemOfQuantity(q) === 'metric' ? 'tonne' : 'ton');

type LoadFigures = Pick<
  BaseTonnageFigures,
  'loads' | 'loadsByWeight' | 'loadsByVolume' | 'governs' | 'fullTruck'
>;

/** Loads by weight, by volume and the greater of the two. */
export function loadsOf(
  { truckPayload: P, truckVolume: T }: TonnageParsed,
  D: Mass,
  U: Volume,
  L: Density,
  pad: Pad,
): LoadFigures {
  const w = P ? wholeUnits('loads by weight', D, P, 'truckPayload', pad) : undefined;
  const v = T ? wholeUnits('loads by volume', U, T, 'truckVolume', pad) : undefined;
  const full = T
    ? { fullTruck: pad.step('a truck filled by volume', 'F = T × L', { T, L }, inTons(T.times(L))) }
    : {};
  if (!w && !v) return {};
  const each = { ...(w ? { loadsByWeight: w } : {}), ...(v ? { loadsByVolume: v } : {}), ...full };
  if (!v) return { loads: w as Quantity<'count'>, ...each, governs: 'weight' };
  if (!w) return { loads: v, ...each, governs: 'volume' };
  const heavier = D.over(P as Mass).greaterThan(U.over(T as Volume));
  const loads = pad.step('loads', 'n = max(v, w)', { v, w }, heavier ? w : v);
  return { loads, ...each, governs: heavier ? 'weight' : 'volume' };
}

/** What is bought above what lies in place: the trim, the allowance and the water. */
export function delivered(
  input: TonnageParsed,
  { M, T }: { M: Mass; T: Mass },
  pad: Pad,
): { dry: Mass; wet: Mass } {
  const a = input.allowance ?? NONE();
  const dry = input.allowance
    ? pad.step('with the allowance', 'N = T × (1 + a)', { T, a }, T.times(ONE().plus(a)))
    : T;
  const w = input.moisture;
  if (w)
    return {
      dry,
      wet: pad.step('with its water', 'D = N × (1 + w)', { N: dry, w }, dry.times(ONE().plus(w))),
    };
  pad.assume({
    name: 'moisture',
    value: 'none',
    because: say`the weight of ${{ M }} is dry, as the density says`,
    override: 'Give moisture, the share of water that comes with the material',
    source: CLOSED_FORM,
  });
  return { dry, wet: dry };
}

type SpreadFigures = Pick<BaseTonnageFigures, 'rateOfSpread' | 'rateForUnitDepth' | 'reach' | 'spreadLength'>;

export function spreading(
  { spreadWidth: W, rateOfSpread: given }: TonnageParsed,
  d: Length,
  C: Density,
  M: Mass,
  pad: Pad,
): SpreadFigures {
  const metric = systemOfQuantity(d) === 'metric';
  const S = given ?? pad.step('rate of spread', 'S = d × C', { d, C }, d.times(C));
  const u = metric ? CENTIMETER() : INCH();
  const unit = metric ? 'kg/m2' : 'lb/yd2';
  const rateForUnitDepth = pad.step(
    say`rate for each ${{ depth: u }} of depth`,
    'R = u × C',
    { u, C },
    u.times(C).in(unit),
  );
  if (!W) return { rateOfSpread: S, rateForUnitDepth };
  const T = metric ? TONNE() : TON();
  const line = S.times(W);
  const reach = pad.step(
    say`length that ${{ weight: T }} reaches`,
    'l = T ÷ (S × W)',
    { T, S, W },
    T.over(line),
  );
  const spreadLength = pad.step(
    'length that all of it reaches',
    'l = M ÷ (S × W)',
    { M, S, W },
    M.over(line),
  );
  return { rateOfSpread: S, rateForUnitDepth, reach, spreadLength };
}

const TON_UNITS: Record<TonKind, UnitId<'mass'>> = { short: 'ton', long: 'longton', metric: 'tonne' };

export const tonsOf = (wet: Mass, kinds: readonly TonKind[]): TonFigures =>
  Object.fromEntries(kinds.map((kind) => [kind, wet.in(TON_UNITS[kind])]));
