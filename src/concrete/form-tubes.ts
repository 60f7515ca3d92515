/**
 * Tubes that round piers are poured in: pieces as high as the piers, cut from tubes as they are sold.
 *
 * A tube gives `p = floor(S ÷ h)` pieces, so `n` piers take `k = ceil(n ÷ p)` tubes; each diameter and height by itself.
 */
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { TakeNote } from '../reckoning/takes';
import { timesDown } from '../reckoning/whole';
import { say } from '../reckoning/words';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** Tubes of one size. */
export interface FormTubesFigures {
  /** Across, inside. */
  readonly diameter: Quantity<'length'>;
  /** Length of a piece: the height of a pier. */
  readonly piece: Quantity<'length'>;
  /** How many pieces. */
  readonly pieces: Quantity<'count'>;
  /** Length of a tube as it is bought. */
  readonly stockLength: Quantity<'length'>;
  /** Tubes to buy. */
  readonly tubes: Quantity<'count'>;
}

/** Round piers alike, with where they stand in the input. */
interface RoundPiers {
  readonly name: string;
  readonly path: string;
  readonly diameter: Length;
  readonly height: Length;
  readonly count: Count;
}

/** Tubes for so many pieces. */
export const tubesFor = (pieces: number, S: Length, h: Length): number => Math.ceil(pieces / timesDown(S, h));

/**
 * The tubes of these piers.
 *
 * @throws {InputError} `does-not-fit` for a pier higher than a tube
 */
export function tubesOf(piers: readonly RoundPiers[], S: Length, pad: Pad): FormTubesFigures[] {
  return piers.map(({ name, path, diameter, height: h, count: n }) => {
    if (h.greaterThan(S))
      return refuse(`${path}.height`, faults.doesNotFit('the pier', 'a tube of tubeLength'));
    const per = timesDown(S, h);
    const wholeTube = h.times(wholeNumber(per)).equals(S);
    const p = pad.step(
      say`${{ name }}, pieces of one tube`,
      wholeTube ? 'p = S ÷ h' : 'p = floor(S ÷ h)',
      { S, h },
      wholeNumber(per),
    );
    const tubes = wholeNumber(tubesFor(canonicalValue(n).toNumber(), S, h));
    pad.step(say`${{ name }}, tubes`, 'k = ceil(n ÷ p)', { n, p }, tubes);
    return { diameter, piece: h, pieces: n, stockLength: S, tubes };
  });
}

/** What is bought, each with the pieces that are cut from it. */
export const tubesTaken = (tubes: readonly FormTubesFigures[] = []): TakeNote[] =>
  tubes.map(({ diameter, stockLength, piece, pieces }, i) => ({
    item: 'form-tube',
    from: `tubes[${i}].tubes`,
    of: { diameter, stockLength },
    cuts: [{ length: piece, count: pieces }],
  }));
