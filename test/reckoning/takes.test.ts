/** What results say that a job takes is what their figures say, for every accepted vector. */
import { describe, expect, it } from 'vitest';
import { isQuantity } from '../../src/quantity/quantity';
import { revive } from '../../src/reckoning/revive';
import { outcomeOf, readVectors } from '../support/vectors';

const figureAt = (figures: unknown, path: string): unknown =>
  path
    .split(/[.[\]]+/)
    .filter((name) => name !== '')
    .reduce<unknown>((x, name) => (x as Record<string, unknown> | undefined)?.[name], figures);

describe('what a job takes', () => {
  const seen = new Map<string, number>();
  for (const { at, vector } of readVectors()) {
    const outcome = outcomeOf(vector);
    if (!outcome.ok) continue;
    for (const take of outcome.result.takes) {
      seen.set(take.item, (seen.get(take.item) ?? 0) + 1);
      const figure = figureAt(outcome.result.figures, take.from);
      if (!isQuantity(figure) || !figure.equals(take.quantity)) throw new Error(`${at}: ${take.from}`);
    }
  }

  it('is listed with the amount of the figure named', () => {
    expect([...seen.keys()].sort()).toMatchInlineSnapshot(`
      [
        "anchor-bolt",
        "backer-rod",
        "bagged-mix",
        "bar",
        "bar-support",
        "base",
        "board",
        "brace",
        "color",
        "concrete",
        "dowel",
        "dowel-basket",
        "epoxy",
        "fibers",
        "fill",
        "form-tube",
        "geotextile",
        "haul-away",
        "isolation-board",
        "joint-strip",
        "liquid",
        "mesh",
        "nail",
        "powder",
        "ready-mix",
        "release-oil",
        "saw-cut",
        "sealant",
        "seam-tape",
        "seed",
        "sheet",
        "stake",
        "straw",
        "tie",
        "tie-bar",
        "topsoil",
        "vapor-retarder",
      ]
    `);
  });

  it('lists each bar with the pieces cut from it', () => {
    for (const { vector } of readVectors()) {
      const outcome = outcomeOf(vector);
      if (vector.calculation !== 'rebar-layout' || !outcome.ok) continue;
      const pieces = outcome.result.takes
        .flatMap(({ cuts = [] }) => cuts)
        .reduce((n, { count }) => n + count.toNumber('each'), 0);
      const { pieces: listed } = outcome.result.figures as never as {
        pieces: { toNumber(unit: string): number };
      };
      expect(pieces).toBe(listed.toNumber('each'));
    }
  });

  it('comes back from plain data', () => {
    for (const { vector } of readVectors()) {
      const outcome = outcomeOf(vector);
      if (vector.calculation !== 'dowel-layout' || !outcome.ok) continue;
      expect(revive(JSON.stringify(outcome.result)).takes).toEqual(outcome.result.takes);
    }
  });
});
