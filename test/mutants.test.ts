/** The tool that makes wrong changes: what it changes, what it leaves alone, and what a sample says. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EQUIVALENT, equivalentOf } from '../scripts/mutation/equivalent';
import { marked, mutantsOf, mutated } from '../scripts/mutation/mutants';
import { drawn, interval } from '../scripts/mutation/sample';

const changes = (text: string): string[] => mutantsOf('src/x.ts', text).map((m) => mutated(text, m));

describe('mutants', () => {
  it('are of every kind', () => {
    expect(changes('const f = (a: D, b: D) => a.plus(b);')).toEqual([
      'const f = (a: D, b: D) => undefined;',
      'const f = (a: D, b: D) => a.minus(b);',
    ]);
    expect(changes('if (a < 1) b();')).toEqual([
      'if (true) b();',
      'if (false) b();',
      'if (a <= 1) b();',
      'if (a >= 1) b();',
    ]);
    expect(changes("x = !a ?? b?.c['word'];").sort()).toEqual(
      [
        "x = (a) ?? b?.c['word'];",
        "x = !a && b?.c['word'];",
        "x = !a ?? b.c['word'];",
        "x = !a ?? b?.c[''];",
      ].sort(),
    );
    expect(changes('x = [a.abs()];').sort()).toEqual(['x = [(a)];', 'x = [];']);
  });

  it('leave sentences, types, names and sources alone', () => {
    expect(changes("const a: 'one' | 'two' = f('two words');")).toEqual([]);
    expect(changes("import { a } from 'decimal.js'; interface A { readonly b: 'word' }")).toEqual([]);
    expect(mutantsOf('src/steel/sources.ts', 'const a = b < c;')).toEqual([]);
  });

  // A list that outlives its code would go on to excuse what it was not made for.
  it('that change nothing are there, each with its reason', () => {
    const found = new Map(EQUIVALENT.map((same) => [same, new Set<string>()]));
    for (const file of new Set(EQUIVALENT.map((same) => same.file))) {
      const text = readFileSync(file, 'utf8');
      for (const mutant of mutantsOf(file, text)) {
        const same = equivalentOf(text, mutant);
        if (same) found.get(same)?.add(mutant.by);
      }
    }
    for (const [same, by] of found) {
      expect([...by].sort(), `${same.file}: ${same.line}`).toEqual([...same.to].sort());
      expect(same.why.length).toBeGreaterThan(20);
    }
  });

  it('are counted where the code passes', () => {
    const text = 'const f = (a) => { if (a) return 1; return a ? 2 : (b) => 3; };';
    const { text: counted, stretches } = marked('x.ts', text, 0);
    const passed: number[] = [];
    const made = new Function('__mark', `${counted}; return f;`)((mark: number) => passed.push(mark));
    expect(made(0)(1)).toBe(3);
    const texts = stretches
      .filter(({ mark }) => passed.includes(mark))
      .map((s) => text.slice(s.start, s.end));
    expect(texts).toEqual([text.slice(text.indexOf('{'), -1), '(b) => 3', '3']);
  });

  it('are drawn by the seed alone, none twice', () => {
    const list = Array.from({ length: 50 }, (_, i) => i);
    expect(drawn(list, 20, 7)).toEqual(drawn(list, 20, 7));
    expect(drawn(list, 20, 7)).not.toEqual(drawn(list, 20, 8));
    expect(new Set(drawn(list, 50, 3)).size).toBe(50);
  });

  // Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in Medicine 17 (1998),
  // table I, method 3; from memory.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d has the published interval', (hits, of, low, high) => {
    const found = interval(hits, of, 1e12);
    expect(found[0]).toBeCloseTo(low, 4);
    expect(found[1]).toBeCloseTo(high, 4);
  });

  it('all tried leave nothing open', () => {
    expect(interval(9, 10, 10)).toEqual([0.9, 0.9]);
  });
});
