/** What can grow in the input of a calculation or a plan. */

/** One size that can grow. */
export interface Growth {
  /** Id of the calculation, or `drawing/` and the name of a plan. */
  readonly of: string;
  /** What grows, as `corners of a comb`. */
  readonly what: string;
  /** A job of this size. */
  readonly input: (size: number) => unknown;
  /** The first size; sizes double from there. */
  readonly from: number;
  /** A size at which growing ends, where nothing refuses it before. */
  readonly to: number;
  /** True where beyond its size a job may be refused for another reason than that it is too large. */
  readonly anyRefusal?: boolean;
}

/** More than anybody ever gives. */
const SANE_END = 1_000_000;

/** A size that grows: {@link Growth} with the usual ends. */
export const growth = (
  of: string,
  what: string,
  input: (size: number) => unknown,
  ends: { readonly from?: number; readonly to?: number; readonly anyRefusal?: boolean } = {},
): Growth => ({ of, what, input, from: 4, to: SANE_END, ...ends });

/** `size` things by number. */
export const times = <T>(size: number, make: (i: number) => T): T[] =>
  Array.from({ length: size }, (_, i) => make(i));

export const feet = (n: number): string => `${Number(n.toFixed(4))} ft`;
export const inches = (n: number): string => `${Number(n.toFixed(4))} in`;
