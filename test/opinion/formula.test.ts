/** Every formula that any vector prints is read, and comes to what a general-purpose library makes of it. */
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { calculations } from '../../src/catalog/all';
import { BINARY, EXACT, reckoned, treeOf } from '../../src/opinion/formula';
import { graphOf, replay, replayExactly } from '../../src/opinion/graph';
import { Decimal } from '../../src/quantity/decimal';
import type { Step } from '../../src/reckoning/parts';
import { readVectors } from '../support/vectors';
import { inSigns } from '../support/working';

const steps = new Map<string, { id: string; working: readonly Step[] }>();
for (const { at, vector } of readVectors()) {
  const found = calculations.find(({ id }) => id === vector.calculation);
  const outcome = found?.attempt(vector.input as never);
  if (outcome?.ok) steps.set(at, { id: vector.calculation, working: outcome.result.working });
}

describe('formulas', () => {
  const formulas = [
    ...new Set([...steps.values()].flatMap(({ working }) => working.map((one) => one.formula))),
  ];

  it('are all read', () => {
    expect(formulas.length).toBeGreaterThan(150);
    expect(formulas.filter((one) => treeOf(one) === undefined)).toEqual([]);
  });

  it.each(formulas.filter((one) => !/deg|hypot/.test(one)))('%s', (formula) => {
    const tree = treeOf(formula);
    if (!tree) expect.unreachable();
    // Values of no meaning, all of them different, above one and not whole.
    const values: Record<string, number> = {};
    const value = (symbol: string): number => {
      // The zero of a scale lies below what is read on it: no root is taken of less than nothing.
      values[symbol] ??= symbol === 'z' ? 0.125 : 1.125 + Object.keys(values).length * 0.75;
      return values[symbol];
    };
    const binary = reckoned(tree, value, BINARY);
    const names = Object.fromEntries(Object.keys(values).map((one, i) => [one, `q${i}q`]));
    const text = inSigns(formula.slice(formula.indexOf('=') + 1)).replace(
      /[A-Za-z_][\w′]*/gu,
      (one) => names[one] ?? one,
    );
    const scope = Object.fromEntries(Object.entries(values).map(([name, n]) => [names[name] as string, n]));
    const other = evaluate(text, scope) as number;
    if (Number.isNaN(binary)) return;
    expect(binary).toBeCloseTo(other, 8);
    const exact = reckoned(tree, (symbol) => new Decimal(value(symbol)), EXACT).toNumber();
    expect(Math.abs(exact - binary)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(binary)));
  });

  it('give again what every step gave, with nothing changed', () => {
    let off = 0;
    let all = 0;
    for (const { working } of [...steps.values()].slice(0, 400)) {
      const graph = graphOf(working, () => false);
      const again = replay(graph, {});
      const exactly = replayExactly(graph, {});
      graph.forEach(({ si, tree, takes }, i) => {
        all += 1;
        if (!tree) off += 1;
        const room = 1e-6 * Math.max(Math.abs(si), 1e-9);
        // A difference of two binary numbers that are alike keeps the strays of both.
        const stray = 1e-14 * Math.max(...takes.map((one) => Math.abs(one.si)), 0);
        expect(Math.abs((again[i] as number) - si)).toBeLessThanOrEqual(Math.max(room, stray));
        expect(Math.abs((exactly[i] as Decimal).toNumber() - si)).toBeLessThanOrEqual(room);
      });
    }
    expect(all).toBeGreaterThan(500);
    expect(off / all).toBeLessThan(0.01);
  });
});
