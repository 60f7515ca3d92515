/** What a take-off comes to. */
import type { ClockTime } from '../pour/saw-clock';
import type { Quantity } from '../quantity/quantity';
import type { Purchase } from './purchases';

/** What one element comes to. */
export interface JobElementFigures {
  /** Its name. */
  readonly name: string;
  /** How many alike. */
  readonly count: Quantity<'count'>;
  /** Concrete in place, all of them, with what overlaps counted once; left out where it has none. */
  readonly concrete?: Quantity<'volume'>;
}

/** Concrete of one mix, on one day where days are told. */
export interface JobMixFigures {
  /** The day that it is poured on; left out for what stands in no day. */
  readonly day?: string;
  /** Its name; left out where elements name none. */
  readonly mix?: string;
  /** In place. */
  readonly net: Quantity<'volume'>;
  /** To order; left out where the document says nothing of the order. */
  readonly order?: Quantity<'volume'>;
  /** Bags to buy; left out where the document says nothing of bags. */
  readonly bags?: Quantity<'count'>;
  /** Each load. */
  readonly loads?: readonly Quantity<'volume'>[];
}

/** Two elements that lie over each other. */
export interface JobOverlapFigures {
  /** The one that comes first in the job. */
  readonly first: string;
  /** The other. */
  readonly second: string;
  /** The area that they have in common. */
  readonly area: Quantity<'area'>;
  /** The one that stands on the other, whose concrete is all counted. */
  readonly stands?: string;
  /** Concrete that is counted once instead of twice. */
  readonly countedOnce?: Quantity<'volume'>;
  /** The element that it is taken off. */
  readonly takenOff?: string;
}

/** A value that is not known yet. */
export interface JobMissingFigures {
  /** The element that it is missing in; left out for the job as a whole. */
  readonly element?: string;
  /** The day that it is missing in; left out where it is missing in none. */
  readonly day?: string;
  /** The part that was left out for it. */
  readonly part: string;
  /** Where it goes in the document. */
  readonly at: string;
}

/** A day on which concrete is poured. */
export interface JobDayFigures {
  /** What it is called. */
  readonly name: string;
  /** What is poured, in its order. */
  readonly elements: readonly string[];
  /** Its concrete in place, all mixes; left out where there is none. */
  readonly concrete?: Quantity<'volume'>;
}

/** When the forms of an element may come off; forms that carry wait for the engineer. */
export interface JobFormsOffFigures {
  /** The element. */
  readonly element: string;
  /** The day that it is poured on; left out where it stands in none. */
  readonly day?: string;
  /** At the earliest so long after it is placed. */
  readonly after: Quantity<'time'>;
  /** By the clock; left out where the end of placing is not known. */
  readonly at?: ClockTime;
}

/** Figures of `jobTakeoff`. */
export interface JobTakeoffFigures {
  /** Concrete in place, in all; left out where there is none. */
  readonly concrete?: Quantity<'volume'>;
  /** Each element. */
  readonly elements: readonly JobElementFigures[];
  /** Concrete by mix, with its order. */
  readonly mixes: readonly JobMixFigures[];
  /** The days on which it is poured; left out where none is told. */
  readonly days?: readonly JobDayFigures[];
  /** When forms come off; left out where no element has any. */
  readonly formsOff?: readonly JobFormsOffFigures[];
  /** What to buy, by kind. */
  readonly purchases: readonly Purchase[];
  /** Elements that lie over each other. */
  readonly overlaps: readonly JobOverlapFigures[];
  /** What is not known yet. */
  readonly missing: readonly JobMissingFigures[];
}
