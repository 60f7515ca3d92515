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

let listener: ((parts: PartsWorking) => void) | undefined;

/** Tell it, if anybody listens. */
export function tellParts(make: () => PartsWorking): void {
  listener?.(make());
}

/** Run something and hear the working of its parts. */
export function hearParts<T>(run: () => T): { readonly of: T; readonly parts: PartsWorking | undefined } {
  const outer = listener;
  let parts: PartsWorking | undefined;
  listener = (told) => {
    parts = told;
  };
  try {
    const of = run();
    return { of, parts };
  } finally {
    listener = outer;
  }
}
