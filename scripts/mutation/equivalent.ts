/**
 * Mutants that change nothing: whatever comes in, the answer is the same. They are drawn by no sample.
 *
 * Each is named by the file, a stretch of its line, what is changed and what to, with the reason why no
 * test can tell. "Only the time differs" is such a reason; "nothing here needs it" is none: that is code
 * to be taken out.
 */
import type { Mutant } from './mutants';

export interface Equivalent {
  readonly file: string;
  /** Part of the line on which the change begins. */
  readonly line: string;
  /** What is changed: the text, or how it begins. */
  readonly from: string;
  readonly to: readonly string[];
  readonly why: string;
}

export const EQUIVALENT: readonly Equivalent[] = [];

const lineAt = (text: string, at: number): string =>
  text.slice(text.lastIndexOf('\n', at - 1) + 1, `${text}\n`.indexOf('\n', at));

const isNamed = (text: string, { file, start, end, by }: Mutant, same: Equivalent): boolean =>
  file === same.file &&
  same.to.includes(by) &&
  text.slice(start, end).startsWith(same.from) &&
  lineAt(text, start).includes(same.line);

/** The entry that says that a mutant changes nothing. */
export const equivalentOf = (text: string, mutant: Mutant): Equivalent | undefined =>
  EQUIVALENT.find((same) => isNamed(text, mutant, same));
