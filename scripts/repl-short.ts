/**
 * Short forms of the REPL over the calculation that was called last: `check('9 yd3')`, `need('thickness', '9 yd3')`,
 * `within({ thickness: '1/2 in' })`; or over any before it, by its result: `check(apron, '9 yd3')`.
 */

import { readClaims } from '../src/opinion/claims';
import { figuresIn } from '../src/opinion/figure-places';
import type { AnyQuantityInput, Claims, Measures } from '../src/opinion/index';
import { estimateCheck, solveFor, tolerances } from '../src/opinion/index';
import type { AnyCalculation } from '../src/opinion/input-places';
import { InputError } from '../src/quantity/input-error';

/** A calculation that was called, and with what. */
interface Call {
  readonly calculation: AnyCalculation;
  readonly input: unknown;
}

/** The calls that gave these results, and the last of them. */
export class Calls {
  readonly #of = new WeakMap<object, Call>();
  last: Call | undefined;

  /** Keep a call by its result. */
  keep(result: object, call: Call): void {
    this.#of.set(result, call);
    this.last = call;
  }

  /** The call that gave this. */
  by(result: unknown): Call | undefined {
    return typeof result === 'object' && result !== null ? this.#of.get(result) : undefined;
  }
}

const isCalculation = (x: unknown): x is AnyCalculation =>
  typeof x === 'function' && typeof (x as Partial<AnyCalculation>).attempt === 'function';

/** The same names, with calculations that are remembered when they are called. */
export const remembered = (names: Readonly<Record<string, unknown>>, calls: Calls): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(names).map(([name, value]) => [
      name,
      isCalculation(value)
        ? new Proxy(value, {
            apply(calculation, _this, args: [unknown]) {
              const result = calculation(...args);
              calls.keep(result, { calculation, input: args[0] });
              return result;
            },
          })
        : value,
    ]),
  );

const reads = (claims: unknown, figures: object): boolean => {
  try {
    readClaims(claims, figures);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
};

/** The figure that a text is of: the first that it reads as. */
function figureFor({ calculation, input }: Call, text: AnyQuantityInput): string {
  const { figures } = calculation(input);
  const found = figuresIn(figures).find(({ at }) => reads({ [at]: text }, figures));
  return found?.at ?? (figuresIn(figures)[0]?.at as string);
}

/** A text is a claim on the first figure that it may be. */
const check = (call: Call, claims: string | Claims) =>
  estimateCheck(
    call.calculation,
    call.input,
    typeof claims === 'string' ? { [figureFor(call, claims)]: claims } : claims,
  );

const need = (call: Call, vary: string, wanted: string, figure = figureFor(call, wanted)) =>
  solveFor(call.calculation, { input: call.input, vary, figure, wanted }).inSteps;

const within = (call: Call, measures: Measures) => tolerances(call.calculation, call.input, measures).figures;

/** What is asked of the last call, or of the one whose result comes first. */
const asked =
  <A extends readonly unknown[], R>(calls: Calls, ask: (call: Call, ...args: A) => R) =>
  (...args: A | [result: unknown, ...rest: A]): R => {
    const named = calls.by(args[0]);
    const call = named ?? calls.last;
    if (!call) throw new Error('call a calculation first, for example slabVolume({ … })');
    return ask(call, ...((named ? args.slice(1) : args) as unknown as A));
  };

/** The short forms: a claim checked, what an input must be for a figure, how far figures may be off. */
export const shortForms = (calls: Calls) => ({
  check: asked(calls, check),
  need: asked(calls, need),
  within: asked(calls, within),
});
