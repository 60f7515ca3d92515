/**
 * The one error this library throws.
 *
 * It lists every issue found, each with a stable code, the path of the value at fault and a
 * sentence that says what to write instead.
 */

/** Stable codes of everything that can be wrong with an input. Codes are never reused. */
export type IssueCode =
  | 'missing'
  | 'missing-unit'
  | 'not-a-quantity'
  | 'unreadable-quantity'
  | 'ambiguous'
  | 'unknown-unit'
  | 'survey-foot'
  | 'wrong-dimension'
  | 'too-long'
  | 'too-many-digits'
  | 'out-of-range'
  | 'not-positive'
  | 'negative'
  | 'not-a-count'
  | 'wrong-type'
  | 'unknown-key'
  | 'unknown-choice'
  | 'too-few'
  | 'too-many'
  | 'too-deep'
  | 'unreadable-input'
  | 'dimension-mismatch'
  | 'currency-mismatch'
  | 'divide-by-zero'
  | 'bare-arithmetic'
  | 'self-crossing'
  | 'repeated-point'
  | 'zero-area'
  | 'no-such-triangle'
  | 'does-not-fit'
  | 'wrong-count'
  | 'does-not-close'
  | 'not-placed'
  | 'not-served'
  | 'too-thin'
  | 'probe-outside'
  | 'probed-twice'
  | 'outside-outline'
  | 'openings-meet'
  | 'give-one-of'
  | 'not-a-result'
  | 'repeated-name'
  | 'unknown-name'
  | 'few-spots'
  | 'collinear-spots'
  | 'conflicting-spots'
  | 'no-datum'
  | 'conflicting-grades'
  | 'outside-surface'
  | 'no-tolerance'
  | 'no-solution'
  | 'perimeter-unknown'
  | 'out-of-order'
  | 'grown-together'
  | 'below-least'
  | 'off-edge'
  | 'off-slab'
  | 'ends-inside'
  | 'joint-not-square'
  | 'joints-conflict'
  | 'unknown-designation'
  | 'stock-too-short'
  | 'give-for-all';

/** One thing wrong with an input. */
export interface Issue {
  /** Stable code, for programs. */
  readonly code: IssueCode;
  /** Where in the input, for example `outline.points[3].x`; empty for the input itself. */
  readonly path: string;
  /** What is wrong and what to write instead, for people. */
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
 * Thrown for every input that cannot be reckoned with, and for nothing else.
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
    this.issues = Object.freeze(issues.map((issue) => Object.freeze({ ...issue })));
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

/** A fault without its place: the door adds the path. */
export interface Fault {
  readonly code: IssueCode;
  readonly sentence: string;
}

/** Throw one fault, where there is no path to give. */
export function fail(fault: Fault): never {
  throw new InputError([{ ...fault, path: '' }]);
}
