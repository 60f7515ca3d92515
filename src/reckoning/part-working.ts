/**
 * The working of the parts that a result is summed up of. It stands in the results of the parts, which the whole does
 * not keep: who looks for what went wrong in a sum listens for it while the whole is reckoned.
 */
import type { Step } from './parts';

/** The working of one part. */
export interface PartWorking {
  /** Where the part stands in the input of the whole. */
  readonly at: string;
  readonly working: readonly Step[];
}

/** The working of all parts: of those that the whole sums up, and of those that go on from its sums. */
export interface PartsWorking {
  readonly before: readonly PartWorking[];
  readonly after: readonly PartWorking[];
}

/** Results of parts by what they were given: the same whole is reckoned again and again with little changed in it. */
export type PartsKnown = Map<string, unknown>;

interface Listener {
  readonly tell: (parts: PartsWorking) => void;
  readonly known: PartsKnown;
}

let listener: Listener | undefined;

/** Tell it, if anybody listens. */
export function tellParts(make: () => PartsWorking): void {
  listener?.tell(make());
}

/** Parts that whoever listens has heard of before. */
export const partsKnown = (): PartsKnown | undefined => listener?.known;

/**
 * Run something and hear the working of its parts.
 *
 * @param known - parts that were reckoned before, to which those of this run are added
 */
export function hearParts<T>(
  run: () => T,
  known: PartsKnown,
): { readonly of: T; readonly parts: PartsWorking | undefined } {
  const outer = listener;
  let parts: PartsWorking | undefined;
  const tell = (told: PartsWorking): void => {
    parts = told;
  };
  listener = { tell, known };
  try {
    const of = run();
    return { of, parts };
  } finally {
    listener = outer;
  }
}
