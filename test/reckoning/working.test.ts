/**
 * Every printed step is true: an independent library reads what was put in and comes to what is given.
 *
 * Second method: mathjs with its own units.
 */
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../../src/catalog/all';
import { stepText } from '../../src/report/view';
import { evaluated } from '../support/evaluate';
import { goodInputs } from '../support/inputs';

/** Half of the last place that is printed, or of the 1/16 in that feet and inches are shown to. */
function roomOf(gives: string): number {
  if (/ in$/.test(gives) && (/ ft /.test(gives) || /\d\/\d+ in$/.test(gives) || /^-?\d+ in$/.test(gives))) {
    return 0.0254 / 32;
  }
  const number = /\d+(?:\.(\d+))?/.exec(gives.replace(/^-?1:/, ''));
  const step = 0.5 * 10 ** -(number?.[1]?.length ?? 0);
  return Math.abs(evaluated(gives.replace(/\d+(?:\.\d+)?/, '1'))) * step;
}

/** A slope of 1:n is rounded in n. */
function close(put: number, gives: string): boolean {
  const oneIn = /^(-?)1:(\d+(?:\.(\d+))?)$/.exec(gives);
  if (oneIn)
    return Math.abs(1 / Math.abs(put) - Number(oneIn[2])) <= 0.5 * 10 ** -(oneIn[3]?.length ?? 0) + 1e-9;
  const given = evaluated(gives);
  return Math.abs(put - given) <= roomOf(gives) * (1 + 1e-6) + Math.abs(given) * 1e-9;
}

describe('the evaluator', () => {
  it('objects to a step that is not true', () => {
    expect(close(evaluated('28 ft × 18 ft'), '504 ft2')).toBe(true);
    expect(close(evaluated('28 ft × 18 ft'), '505 ft2')).toBe(false);
    expect(close(evaluated('12 ft 6 1/2 in × 2'), '25 ft 1 in')).toBe(true);
    expect(close(evaluated('12 ft 6 1/2 in × 2'), '25 ft 1 1/8 in')).toBe(false);
    expect(close(evaluated('3 in ÷ 12 ft'), '1:48')).toBe(true);
    expect(close(evaluated('3 in ÷ 12 ft'), '1:49')).toBe(false);
    expect(close(evaluated('210 ft3 × 150 pcf'), '15.75 ton')).toBe(true);
    expect(close(evaluated('210 ft3 × 150 pcf'), '15.76 ton')).toBe(false);
  });
});

describe.each(catalog.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
  const inputs = goodInputs.get(id) ?? [];

  it('prints steps that are true', () => {
    let steps = 0;
    for (const input of inputs) {
      const attempt = entry.attempt(input);
      if (!attempt.ok) throw attempt.error;
      for (const step of attempt.result.working.map((one) => stepText(one))) {
        steps += 1;
        const put = evaluated(step.put);
        expect(Number.isFinite(put), `${step.put} in ${id}`).toBe(true);
        expect(close(put, step.gives), `${step.what}: ${step.put} = ${put}, not ${step.gives}`).toBe(true);
      }
    }
    expect(steps).toBeGreaterThan(0);
  });

  it('puts in nothing that its formula does not ask for', () => {
    for (const input of inputs) {
      const attempt = entry.attempt(input);
      if (!attempt.ok) throw attempt.error;
      for (const { formula, values } of attempt.result.working) {
        const [, ...symbols] = formula.match(/[A-Za-z]\w*/g) ?? [];
        expect(symbols, formula).toEqual(expect.arrayContaining(Object.keys(values)));
      }
    }
  });

  it('names every symbol that it puts a number in for', () => {
    for (const input of inputs) {
      const attempt = entry.attempt(input);
      if (!attempt.ok) throw attempt.error;
      for (const { formula, put } of attempt.result.working.map((one) => stepText(one))) {
        expect(formula).toMatch(/^[A-Za-z]\w* = \S/);
        const words = put.match(/[A-Za-z]+/g) ?? [];
        const functions = [
          'min',
          'max',
          'ceil',
          'floor',
          'tan',
          'atan',
          'abs',
          'hypot',
          'sin',
          'cos',
          'exp',
          'ln',
        ];
        const units = words.filter((w) => !functions.includes(w));
        for (const unit of units) expect(() => evaluated(`1 ${unit}`), `${unit} in ${put}`).not.toThrow();
      }
    }
  });
});
