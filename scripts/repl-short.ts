/**
 * Short forms of the REPL over the calculation that was called last: `check('9 yd3')`, `need('thickness', '9 yd3')`,
 * `within({ thickness: '1/2 in' })`.
 */

import { readClaims } from '../src/opinion/claims';
import { figuresIn } from '../src/opinion/figure-places';
import type { AnyQuantityInput, Claims, Measures } from '../src/opinion/index';
import { estimateCheck, solveFor, tolerances } from '../src/opinion/index';
import type { AnyCalculation } from '../src/opinion/input-places';
import { InputError } from '../src/quantity/input-error';

/** What was called last, and with what. */
export interface Last {
  calculation?: AnyCalculation;
  input?: unknown;
}

const isCalculation = (x: unknown): x is AnyCalculation =>
  typeof x === 'function' && typeof (x as Partial<AnyCalculation>).attempt === 'function';

/** The same names, with calculations that are remembered when they are called. */
export const remembered = (names: Readonly<Record<string, unknown>>, last: Last): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(names).map(([name, value]) => [
      name,
      isCalculation(value)
        ? new Proxy(value, {
            apply(calculation, _this, args: [unknown]) {
              const result = calculation(...args);
              Object.assign(last, { calculation, input: args[0] });
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

/** The short forms. */
export function shortForms(last: Last) {
  const called = (): Required<Last> => {
    if (!last.calculation) throw new Error('call a calculation first, for example slabVolume({ … })');
    return last as Required<Last>;
  };
  /** The figure that a text is of: the first that it reads as. */
  const figureFor = (text: AnyQuantityInput): string => {
    const { calculation, input } = called();
    const { figures } = calculation(input);
    const found = figuresIn(figures).find(({ at }) => reads({ [at]: text }, figures));
    return found?.at ?? (figuresIn(figures)[0]?.at as string);
  };
  return {
    /** Check a claim on the last calculation: a text for the first figure that it may be, or figures with texts. */
    check(claims: string | Claims) {
      const { calculation, input } = called();
      return estimateCheck(
        calculation,
        input,
        typeof claims === 'string' ? { [figureFor(claims)]: claims } : claims,
      );
    },
    /** What a value of the last input must be for a figure to be what is wanted. */
    need(vary: string, wanted: string, figure = figureFor(wanted)) {
      const { calculation, input } = called();
      return solveFor(calculation, { input, vary, figure, wanted }).inSteps;
    },
    /** How far figures may be off with the plus or minus of these measurements. */
    within(measures: Measures) {
      const { calculation, input } = called();
      return tolerances(calculation, input, measures).figures;
    },
  };
}
