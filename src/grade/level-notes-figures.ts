/** What level notes tell: every point with its elevation, and how well the notes close. */
import type { Quantity } from '../quantity/quantity';

/** A point with its elevation. */
export interface LeveledPoint {
  /** Name of the point. */
  readonly point: string;
  /** Its elevation, in feet or meters. */
  readonly elevation: Quantity<'length'>;
  /** Height of the instrument or water level that it was read from. */
  readonly readFrom?: Quantity<'length'>;
}

/** Figures of {@link levelNotes}. */
export interface LevelNotesFigures {
  /** Points in the order read; of a level book the bench mark first. */
  readonly points: readonly LeveledPoint[];
  /** The elevations by name, for other calculations. */
  readonly elevations: { readonly [point: string]: Quantity<'length'> };
  /** What the check sum of the readings comes to. */
  readonly checkSum: Quantity<'length'>;
  /** What it must equal. */
  readonly checkAgainst: Quantity<'length'>;
  /** All backsights of a level book together. */
  readonly sumOfBacksights?: Quantity<'length'>;
  /** At turning points and the last point. */
  readonly sumOfForesights?: Quantity<'length'>;
  /** Found less known, where the notes close on a known elevation. */
  readonly misclosure?: Quantity<'length'>;
  /** `does not close` where the misclosure is more than allowed. */
  readonly verdict: 'sums agree' | 'does not close';
}
