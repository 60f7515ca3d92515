/** Level notes by rod, laser, water or string: as they are written, and as they are read. */

import type { LengthInput } from '../outline/outline';
import type { Quantity } from '../quantity/quantity';

type Length = Quantity<'length'>;

/** A point whose elevation is known. */
export interface BenchMarkInput {
  /** What the point is called. */
  readonly name: string;
  /** Its known elevation. */
  readonly elevation: LengthInput;
}

/** One line of a level book. */
export interface LevelRowInput {
  /** Name of the point that the rod stands on; a point may be met again. */
  readonly point: string;
  /** Rod reading on a point of known elevation, looking back. */
  readonly backsight?: LengthInput;
  /** Rod reading on a new point. A point with a foresight and a backsight is a turning point. */
  readonly foresight?: LengthInput;
}

/** Notes of a level with a rod. */
export interface LevelNotesByRodInput {
  /** Always `level`. */
  readonly kind: 'level';
  /** Left out, the height of the first instrument must be given. */
  readonly benchMark?: BenchMarkInput;
  /** Elevation of the first line of sight, in place of a bench mark. */
  readonly heightOfInstrument?: LengthInput;
  /** Lines of the book, in the order read. */
  readonly rows: readonly LevelRowInput[];
  /** Known elevation of the last point, to close on. */
  readonly closesOn?: LengthInput;
  /** Misclosure that is allowed; by default 1/8 in. */
  readonly allowed?: LengthInput;
}

/** Readings of a laser on a rod set to zero at the bench mark. */
export interface LevelNotesByLaserInput {
  /** Always `laser`. */
  readonly kind: 'laser';
  /** Where the rod was set to zero; left out, `no-datum` names the points that hang on nothing. */
  readonly benchMark?: BenchMarkInput;
  /** One reading for each point, either `up` or `down`. */
  readonly rows: readonly {
    /** Name of the point; no two alike. */
    readonly point: string;
    /** How far the point lies above the bench mark. */
    readonly up?: LengthInput;
    /** How far the point lies below the bench mark. */
    readonly down?: LengthInput;
  }[];
}

/** Readings of a water level: height of the water above each point. */
export interface LevelNotesByWaterInput {
  /** Always `water level`. */
  readonly kind: 'water-level';
  /** The known point; left out, `no-datum` names the points that hang on nothing. */
  readonly benchMark?: BenchMarkInput;
  /** Height of the water above the bench mark. */
  readonly atBenchMark: LengthInput;
  /** One reading for each point. */
  readonly rows: readonly {
    /** Name of the point; no two alike. */
    readonly point: string;
    /** Height of the water above the point. */
    readonly height: LengthInput;
  }[];
}

/** Readings taped down from a string line. */
export interface LevelNotesByStringInput {
  /** Always `string line`. */
  readonly kind: 'string-line';
  /** Start of the string and its elevation; left out, `no-datum` is thrown. */
  readonly from?: BenchMarkInput;
  /** End of the string and its elevation; left out, `no-datum` is thrown. */
  readonly to?: BenchMarkInput;
  /** Length of the string between the two. */
  readonly length: LengthInput;
  /** One reading for each point. */
  readonly rows: readonly {
    /** Name of the point; no two alike. */
    readonly point: string;
    /** How far along the string from `from`. */
    readonly at: LengthInput;
    /** How far the point lies below the string, as taped. */
    readonly down: LengthInput;
  }[];
}

/** Input of {@link levelNotes}. */
export type LevelNotesInput =
  | LevelNotesByRodInput
  | LevelNotesByLaserInput
  | LevelNotesByWaterInput
  | LevelNotesByStringInput;

export interface Mark {
  readonly name: string;
  readonly elevation: Length;
}

export interface RodNotes {
  readonly kind: 'level';
  readonly benchMark: Mark | undefined;
  readonly heightOfInstrument: Length | undefined;
  readonly rows: readonly {
    readonly point: string;
    readonly backsight: Length | undefined;
    readonly foresight: Length | undefined;
  }[];
  readonly closesOn: Length | undefined;
  readonly allowed: Length | undefined;
}

export interface LaserNotes {
  readonly kind: 'laser';
  readonly benchMark: Mark | undefined;
  readonly rows: readonly {
    readonly point: string;
    readonly up: Length | undefined;
    readonly down: Length | undefined;
  }[];
}

export interface WaterNotes {
  readonly kind: 'water-level';
  readonly benchMark: Mark | undefined;
  readonly atBenchMark: Length;
  readonly rows: readonly { readonly point: string; readonly height: Length }[];
}

export interface StringNotes {
  readonly kind: 'string-line';
  readonly from: Mark | undefined;
  readonly to: Mark | undefined;
  readonly length: Length;
  readonly rows: readonly { readonly point: string; readonly at: Length; readonly down: Length }[];
}

export type NotesParsed = RodNotes | LaserNotes | WaterNotes | StringNotes;
