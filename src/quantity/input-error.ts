/**
 * The one error this library throws.
 *
 * It lists every issue found, each with a stable code, the path of the value at fault and a
 * sentence that says what to write instead.
 */

import type { System } from './units';
import type { Params } from './words';

/** Stable codes of everything that can be wrong with an input. Codes are never reused. */
export type IssueCode =
  /** A value that is needed is not there. */
  | 'missing'
  /** A number without a unit. */
  | 'missing-unit'
  /** Neither text with a unit nor a number and a unit. */
  | 'not-a-quantity'
  /** Text that is no quantity as people write one. */
  | 'unreadable-quantity'
  /** Text that reads two ways; both readings are in the sentence. */
  | 'ambiguous'
  /** A unit that is not known for what is measured. */
  | 'unknown-unit'
  /** US survey feet, which were retired in 2022. */
  | 'survey-foot'
  /** An area where a length is wanted, and the like. */
  | 'wrong-dimension'
  /** Text longer than any quantity or name. */
  | 'too-long'
  /** More digits than any measurement carries. */
  | 'too-many-digits'
  /** Larger or smaller than anything on a site. */
  | 'out-of-range'
  /** Nothing, or less, where there must be something. */
  | 'not-positive'
  /** Less than nothing where that cannot be. */
  | 'negative'
  /** Not a whole number within its bounds. */
  | 'not-a-count'
  /** A list, text, number or object in place of another. */
  | 'wrong-type'
  /** A member that this input does not have. */
  | 'unknown-key'
  /** A word that is none of those to choose from. */
  | 'unknown-choice'
  /** A list too short. */
  | 'too-few'
  /** More than is worked out at once; see the limits. */
  | 'too-many'
  /** Nested deeper than any input. */
  | 'too-deep'
  /** Something that is no plain data. */
  | 'unreadable-input'
  /** Arithmetic on quantities that do not go together. */
  | 'dimension-mismatch'
  /** Arithmetic on money of two currencies. */
  | 'currency-mismatch'
  /** A division by nothing. */
  | 'divide-by-zero'
  /** Arithmetic with something that is no quantity. */
  | 'bare-arithmetic'
  /** Sides that cross or touch. */
  | 'self-crossing'
  /** A corner given twice in a row. */
  | 'repeated-point'
  /** An outline that encloses nothing. */
  | 'zero-area'
  /** Sides that make no triangle. */
  | 'no-such-triangle'
  /** A part larger than what it is part of. */
  | 'does-not-fit'
  /** A list of another length than its fellow. */
  | 'wrong-count'
  /** A walk around that does not end where it began. */
  | 'does-not-close'
  /** A place is needed, and the measurements give none. */
  | 'not-placed'
  /** A combination that is not worked out here. */
  | 'not-served'
  /** A thickness that goes below nothing. */
  | 'too-thin'
  /** A probe outside the outline. */
  | 'probe-outside'
  /** Two probes at one place. */
  | 'probed-twice'
  /** An opening, spot or joint outside the outline. */
  | 'outside-outline'
  /** Openings that touch or overlap. */
  | 'openings-meet'
  /** None, or too many, of values that are given instead of each other. */
  | 'give-one-of'
  /** What is to be revived is no result or quantity. */
  | 'not-a-result'
  /** One name for two things. */
  | 'repeated-name'
  /** A name that was not given to anything. */
  | 'unknown-name'
  /** A document of a version that is not read. */
  | 'unknown-version'
  /** Too few spots for a surface. */
  | 'few-spots'
  /** Spots that all lie in a line. */
  | 'collinear-spots'
  /** Two elevations at one place. */
  | 'conflicting-spots'
  /** No elevation to start from. */
  | 'no-datum'
  /** Grades that cannot all be kept. */
  | 'conflicting-grades'
  /** A place beside the surface. */
  | 'outside-surface'
  /** No tolerance is published for this. */
  | 'no-tolerance'
  /** Nothing satisfies all that is asked. */
  | 'no-solution'
  /** The measurements do not fix the way around. */
  | 'perimeter-unknown'
  /** Times or places that run backwards. */
  | 'out-of-order'
  /** An outline moved out or in until it meets itself. */
  | 'grown-together'
  /** Less than the least that is worked out. */
  | 'below-least'
  /** A place that must be on the edge and is not. */
  | 'off-edge'
  /** A joint beside the slab. */
  | 'off-slab'
  /** A joint that ends in the middle of a panel. */
  | 'ends-inside'
  /** A joint that meets an edge at a slant. */
  | 'joint-not-square'
  /** Joints closer than they may be. */
  | 'joints-conflict'
  /** A bar or mesh that is not made. */
  | 'unknown-designation'
  /** A piece longer than any bar to cut it from. */
  | 'stock-too-short'
  /** A value that is given for some of a list and must be for all. */
  | 'give-for-all'
  /** Beyond what an equation or a table is made for. */
  | 'outside-range'
  /** Longer between two readings than is bridged. */
  | 'gap-in-history';

/** One thing wrong with an input. */
export interface Issue {
  /** Stable code, for programs. */
  readonly code: IssueCode;
  /** Where in the input, for example `outline.points[3].x`; empty for the input itself. */
  readonly path: string;
  /** What is wrong and what to write instead, in English with places in braces, for other languages. */
  readonly says: string;
  /** What stands in the places; left out where there are none. */
  readonly params?: Params;
  /** The same as an English sentence, for people. */
  readonly sentence: string;
}

/** An {@link InputError} as plain data. */
export interface InputErrorJson {
  /** Always `InputError`. */
  readonly name: string;
  /** Everything found wrong. */
  readonly issues: readonly Issue[];
}

const MARK: unique symbol = Symbol.for('flatwork-reckoner.input-error');

/**
 * Thrown for every input that cannot be worked with, and for nothing else.
 *
 * @example
 * ```ts
 * import { InputError, length } from 'flatwork-reckoner';
 *
 * try {
 *   length('4');
 * } catch (error) {
 *   if (error instanceof InputError) console.log(error.issues[0]?.code); // missing-unit
 * }
 * ```
 */
export class InputError extends Error {
  /** Always `InputError`. */
  override readonly name = 'InputError';
  /** Everything found wrong, in the order of the input. Never empty. */
  readonly issues: readonly Issue[];

  /** @param issues - one issue or more; the message joins their sentences */
  constructor(issues: readonly Issue[]) {
    super(issues.map(({ path, sentence }) => (path ? `${path}: ${sentence}` : sentence)).join('\n'));
    this.issues = Object.freeze(issues.map(frozen));
    Object.defineProperty(this, TOLD, { value: issues });
  }

  /** True for an error of any copy of this library, as when ESM and CommonJS meet. */
  static override [Symbol.hasInstance](x: unknown): boolean {
    try {
      // What is derived from it asks for itself.
      // biome-ignore lint/complexity/noThisInStatic: the class asked, which may be a derived one
      if (this !== InputError) return Function.prototype[Symbol.hasInstance].call(this, x);
      return typeof x === 'object' && x !== null && MARK in x;
    } catch {
      // A proxy may be a trap.
      return false;
    }
  }

  /** @internal */
  get [MARK](): true {
    return true;
  }

  /** Plain data, for logs and for sending to a front-end. */
  toJSON(): InputErrorJson {
    return { name: this.name, issues: this.issues };
  }
}

/** An issue with its parameters, frozen; quantities and words in it are frozen already or made for it. */
const frozen = ({ code, path, says, params, sentence }: Issue): Issue =>
  Object.freeze({ code, path, says, ...(params ? { params: Object.freeze({ ...params }) } : {}), sentence });

/** A fault without its place: the door adds the path. */
export interface Fault extends Omit<Issue, 'path'> {
  /** The same for a job in metric units, where it is told otherwise. */
  readonly metric?: Fault;
}

/** A fault and its place. */
export interface FaultAt extends Fault {
  readonly path: string;
}

const TOLD: unique symbol = Symbol('told');

/** The same error, told in the units of a job. */
export function toldIn(error: InputError, system: System): InputError {
  const faults = (error as { readonly [TOLD]?: readonly FaultAt[] })[TOLD];
  if (system === 'customary' || !faults?.some(({ metric }) => metric !== undefined)) return error;
  return new InputError(faults.map((fault) => ({ ...(fault.metric ?? fault), path: fault.path })));
}

/** Throw one fault, where there is no path to give. */
export function fail(fault: Fault): never {
  throw new InputError([{ ...fault, path: '' }]);
}
