/**
 * What becomes of the earth: loose, compacted, as fill, and in loads.
 *
 * Swell makes bank volume loose: `U = V × (1 + w)`. Where there is fill too, what it takes out of the bank
 * is set off against what is dug: the rest is left over, or has to be borrowed. Cut is measured in the bank
 * and fill in place, so without the shrinkage the two are not set off.
 */
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { wholeUnits } from '../reckoning/whole';
import type { Cut, Parsed } from './cut';
import { bankFor, type Shrink } from './shrink';
import { COMMON_PRACTICE } from './sources';

/** The loads to haul. */
export interface HaulFigures {
  /** Whole loads. */
  readonly loads: Quantity<'count'>;
  /** Loads if only the volume counted. */
  readonly loadsByVolume?: Quantity<'count'>;
  /** Loads if only the weight counted. */
  readonly loadsByWeight?: Quantity<'count'>;
  /** What limits a load: `volume` or `weight`. */
  readonly governs: 'volume' | 'weight';
  /** What is hauled, as it lies in the bank. */
  readonly bankVolume: Quantity<'volume'>;
  /** The same loose, where some of what is dug stays. */
  readonly looseVolume?: Quantity<'volume'>;
  /** All that is dug or what is left of it, away; or what the fill lacks, in. */
  readonly hauled: 'all that is dug' | 'what does not stay' | 'surplus' | 'borrow';
}

/** What is filled, and what it takes. */
export interface FillFigures {
  /** In place, compacted. */
  readonly volume: Quantity<'volume'>;
  /** What it takes out of the bank; needs `shrink`. */
  readonly bankVolume?: Quantity<'volume'>;
  /** The same as it is hauled; needs `shrink` and `swell`. */
  readonly looseVolume?: Quantity<'volume'>;
  /** Bank volume dug on the same job beyond what the fill takes; needs `shrink`. */
  readonly surplus?: Quantity<'volume'>;
  /** Bank volume that has to be brought; needs `shrink`. */
  readonly borrow?: Quantity<'volume'>;
}

type Volume = Quantity<'volume'>;
type Mass = Quantity<'mass'>;

const ONE = constant(() => ratio('1:1'));

const inTons = (mass: Mass): Mass => mass.in(systemOfQuantity(mass) === 'metric' ? 'tonne' : 'ton');

/** Loose volume and swell factor, where the swell is known. */
export function swollen(V: Volume, w: Quantity<'ratio'> | undefined, pad: Pad) {
  if (!w) return {};
  const swellFactor = pad.step('swell factor', 'F = 1 + w', { w }, ONE().plus(w));
  const looseVolume = pad.step('loose volume', 'U = V × (1 + w)', { V, w }, V.times(swellFactor));
  return { looseVolume, swellFactor };
}

/** Weight of what is dug, where the density is known. */
export function weightOf(what: string, V: Volume, w: Quantity<'density'> | undefined, pad: Pad) {
  return w ? pad.step(what, 'M = V × w', { V, w }, inTons(V.times(w))) : undefined;
}

/** What the fill takes, set off against what is dug. */
export function filling({ volume: V, fill: F }: Cut, shrink: Shrink | undefined, pad: Pad) {
  if (!F) return undefined;
  if (!shrink) return { volume: F };
  const B = bankFor(F, shrink, pad);
  const short = B.greaterThan(V);
  const rest = short
    ? { borrow: pad.step('to be borrowed, in the bank', 'R = B − V', { B, V }, B.minus(V)) }
    : { surplus: pad.step('left over, in the bank', 'R = V − B', { V, B }, V.minus(B)) };
  return { volume: F, bankVolume: B, ...rest };
}

/** Loose volume of the fill, where both swell and shrinkage are known. */
export function looseFill(fill: FillFigures, w: Quantity<'ratio'> | undefined, pad: Pad): FillFigures {
  const B = fill.bankVolume;
  if (!w || !B) return fill;
  const looseVolume = pad.step('fill as it is hauled', 'U = B × (1 + w)', { B, w }, B.times(ONE().plus(w)));
  return { ...fill, looseVolume };
}

interface Hauled {
  readonly volume: Volume;
  readonly looseVolume?: Volume;
  readonly hauled: HaulFigures['hauled'];
}

/** What goes over the road: what is left of the cut, what the fill lacks, or all that is dug. */
function hauledOf(V: Volume, fill: FillFigures | undefined, pad: Pad): Hauled {
  if (fill?.borrow) return { volume: fill.borrow, hauled: 'borrow' };
  if (fill?.surplus) return { volume: fill.surplus, hauled: 'surplus' };
  if (fill && V.sign() === 0) {
    return refuse(
      'shrink',
      faults.missing('shrink', '{ convention: "1-s", share: "10%" }, to know what a fill takes'),
    );
  }
  if (fill) {
    pad.assume({
      name: 'shrink',
      value: 'none of the cut goes into the fill',
      because: 'without the shrinkage it is not known how much of the cut the fill takes',
      override: 'Give shrink, and only what is left over is hauled',
      source: COMMON_PRACTICE,
    });
  }
  return { volume: V, hauled: 'all that is dug' };
}

/** What of it stays is told loose, as it lies in its pile. */
function withoutStaying({ volume: V, hauled }: Hauled, { haul, swell: w }: Parsed, pad: Pad): Hauled {
  const S = haul?.stays;
  if (!S || hauled === 'borrow') return { volume: V, hauled };
  if (!w) return refuse('swell', faults.missing('swell', '"25%", to know how much of it stays'));
  const left = V.times(ONE().plus(w)).minus(S);
  const looseVolume = left.sign() > 0 ? left : S.minus(S);
  pad.step('hauled of it, loose', 'U = max(V × (1 + w) − S, z)', { V, w, S, z: S.minus(S) }, looseVolume);
  return { volume: looseVolume.over(ONE().plus(w)), looseVolume, hauled: 'what does not stay' };
}

type Haul = NonNullable<Parsed['haul']>;

function byVolume(haul: Haul, V: Volume, w: Quantity<'ratio'> | undefined, pad: Pad) {
  if (!haul.truckVolume) return undefined;
  if (!w) return refuse('swell', faults.missing('swell', '"25%", to know what a truck holds'));
  const U = pad.step('hauled, loose', 'U = V × (1 + w)', { V, w }, V.times(ONE().plus(w)));
  const loads = wholeUnits('loads by volume', U, haul.truckVolume, 'haul.truckVolume', pad);
  return { loads, exact: U.over(haul.truckVolume) };
}

function byWeight(haul: Haul, V: Volume, density: Quantity<'density'> | undefined, pad: Pad) {
  if (!haul.payload) return undefined;
  const M = weightOf('weight hauled', V, density, pad);
  if (!M) {
    return refuse(
      'bankDensity',
      faults.missing('bankDensity', [
        '"100 pcf", to know what a load weighs',
        '"1600 kg/m3", to know what a load weighs',
      ]),
    );
  }
  const loads = wholeUnits('loads by weight', M, haul.payload, 'haul.payload', pad);
  return { loads, exact: M.over(haul.payload) };
}

/** The loads, by whichever of volume and weight takes more. */
export function loadsOf(
  input: Parsed,
  V: Volume,
  fill: FillFigures | undefined,
  pad: Pad,
): HaulFigures | undefined {
  const { haul, swell, bankDensity } = input;
  if (!haul) return undefined;
  if (!haul.truckVolume && !haul.payload) {
    return refuse('haul', faults.giveOneOf(['truckVolume', 'payload']));
  }
  const { volume, ...rest } = withoutStaying(hauledOf(V, fill, pad), input, pad);
  const [v, w] = [byVolume(haul, volume, swell, pad), byWeight(haul, volume, bankDensity, pad)];
  const each = {
    ...(v ? { loadsByVolume: v.loads } : {}),
    ...(w ? { loadsByWeight: w.loads } : {}),
    bankVolume: volume,
    ...rest,
  };
  if (!w) return { loads: (v as NonNullable<typeof v>).loads, ...each, governs: 'volume' };
  if (!v) return { loads: w.loads, ...each, governs: 'weight' };
  // The exact shares of a load, where the counts may happen to be equal.
  const heavier = w.exact.greaterThan(v.exact);
  const most = heavier ? w.loads : v.loads;
  const loads = pad.step('loads', 'n = max(v, w)', { v: v.loads, w: w.loads }, most);
  return { loads, ...each, governs: heavier ? 'weight' : 'volume' };
}
