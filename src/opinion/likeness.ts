/** How well what a slip would give is what was claimed. */
import type { ReadClaim } from './claims';
import { betweenOf, roundedBetween } from './rounding';
import { STRAY } from './scale';
import type { Predicted, Scene } from './scene';

/** By how much a claim may be off for rounding on the way, as shares of the figure. */
export interface Margin {
  readonly below: number;
  readonly above: number;
}

/** What a slip explains. */
export interface Explained {
  /** Claims that it gives, by their place. */
  readonly which: readonly number[];
  /** True where it gives every claim. */
  readonly all: boolean;
  /** True where it does so without any rounding on the way. */
  readonly exact: boolean;
  readonly quality: number;
}

/** The margins of every claim. */
export function margins(scene: Scene): Margin[] {
  const between = betweenOf(scene.graph);
  return scene.claims.map((claim, i) => {
    const si = scene.base[i] as number;
    const [low, high] = roundedBetween(claim, scene.nodes[i], between);
    const size = Math.abs(si);
    return size === 0 ? { below: 0, above: 0 } : { below: (si - low) / size, above: (high - si) / size };
  });
}

/** Whether a value is what was written: within half of its last place. */
export const isWritten = (value: number, { si, half }: ReadClaim): boolean =>
  Math.abs(value - si) <= half * (1 + 1e-6) + STRAY * Math.abs(si);

/** Whether a value is that but for what was rounded on the way. */
export function isNearly(value: number, { si, half }: ReadClaim, { below, above }: Margin): boolean {
  const size = Math.abs(value);
  return si - half <= value + above * size + STRAY * size && si + half >= value - below * size - STRAY * size;
}

/**
 * A claim that is given but for rounding is less of a proof: it is one of all that rounding might have given. One that
 * is not given speaks against.
 */
const NEARLY = 0.3;
const NOT = 0.001;

function shareOf(value: number, { half, coarse }: ReadClaim, { below, above }: Margin): number {
  const room = (Math.max(below, above) * Math.abs(value)) / 2;
  // Zeros at the end say that it was rounded to what stands before them.
  const own = Math.max(half, coarse);
  return own + room === 0 ? NEARLY : (NEARLY * own) / (own + room);
}

/** How much rarer it is that somebody rounds on the way, and always alike, than that nothing is rounded. */
export const ROUNDED = 0.3;

/** A slip that leaves more than this share of what is off is not what put it off. */
const LEFT = 0.5;

/** Whether a value makes up for most of what a claim is off by. */
const makesUp = (value: number, base: number, { si, half }: ReadClaim): boolean =>
  Math.abs(value - si) <= LEFT * Math.abs(base - si) + half;

/**
 * What a slip explains of the claims in the hand of somebody who rounds on the way.
 *
 * @param plain - what it gives without rounding: a slip that does less than the rounding explains nothing
 */
export function explainedByHand(
  values: Predicted,
  plain: Predicted,
  { claims, base }: Pick<Scene, 'claims' | 'base'>,
  weight: number,
): Explained {
  const which = claims.flatMap((claim, i) => {
    const [own, right] = [plain[i] as number, base[i] as number];
    return isWritten(values[i] as number, claim) && (own === right || makesUp(own, right, claim)) ? [i] : [];
  });
  return {
    which,
    all: which.length === claims.length,
    exact: false,
    quality: ROUNDED * weight * NOT ** (claims.length - which.length),
  };
}

/** What a value explains of the claims. */
export function explained(
  values: Predicted,
  { claims, base }: Pick<Scene, 'claims' | 'base'>,
  own: readonly Margin[],
): Explained {
  const which: number[] = [];
  let quality = 1;
  let exact = true;
  claims.forEach((claim, i) => {
    const value = values[i] as number;
    const written = isWritten(value, claim);
    const margin = own[i] as Margin;
    const right = base[i] as number;
    // Of one that is right nothing is left to explain.
    const nearly =
      written ||
      (isNearly(value, claim, margin) && (isNearly(right, claim, margin) || makesUp(value, right, claim)));
    if (nearly) which.push(i);
    exact &&= written;
    quality *= written ? 1 : nearly ? Math.max(NOT, shareOf(value, claim, margin)) : NOT;
  });
  return { which, all: which.length === claims.length, exact, quality };
}
