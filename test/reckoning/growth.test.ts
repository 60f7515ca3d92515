/** Work is bounded: what can grow in an input is answered while it is small and refused where it is too large. */
import { describe, expect, it } from 'vitest';
import { runs } from '../support/effort';
import { SIZES } from '../support/growth/all';
import { answer, namesTheMost } from '../support/growth/answer';
import type { Growth } from '../support/growth/growth';

/** Long to begin with, or with a like of theirs here: `npm run growth` has them all. */
const LONG =
  /many spots|under the edge|grade-correction [flpst]|drainage-check [clp]|openings of 360|swelling|hollow|drawing|joint-layout .*(?:corners|sides|opening|arcs|spacing)/;

const nameOf = ({ of, what }: Growth): string => `${of} ${what}`;
const small = SIZES.filter((one) => !LONG.test(nameOf(one)));
/** An even share of them, as all would take long. */
const looked = small.filter((_, i) => i % Math.round(small.length / runs(100)) === 0);

/** Sizes past the limit, for those that are quickly written down. */
const BEYOND: Readonly<Record<string, number>> = {
  'slab-volume square openings': 1001,
  'slab-volume beams': 1001,
  'slab-volume sides taped': 501,
  'slab-volume legs walked': 503,
  'slab-volume arcs swelling': 201,
  'slab-volume offsets': 1001,
  'slab-volume rectangles combined': 101,
  'step-volume risers': 201,
  'step-volume cores': 51,
  'step-volume wing walls': 21,
  'footing-volume footings': 501,
  'footing-volume tiers of a footing': 21,
  'wall-volume walls': 201,
  'wall-volume openings of a wall': 501,
  'pier-volume piers': 501,
  'curb-volume corners of a section': 501,
  'curb-volume drops': 101,
  'curb-volume corners of all drops': 10_500,
  'curb-volume curves': 201,
  'concrete-order loads': 1_000_000,
  'concrete-order elements': 501,
  'truck-plan loads': 2001,
  'balance-load tickets': 501,
  'balance-load probes': 501,
  'truck-plan loads as split': 2001,
  'excavation sections': 201,
  'excavation spots of a grid': 40_401,
  'drainage-check spots of a table': 10_001,
  'drainage-check lines': 101,
  'drainage-check places of a line': 501,
  'form-grades stakes': 1001,
  'form-grades fixed points': 61,
  'grade-correction spots': 51,
  'level-notes readings of a level': 5001,
  'runoff areas': 101,
  'straightedge readings': 2001,
  'joint-layout panels by spacing': 10_000,
  'joint-layout fixed joints': 201,
  'dowel-layout dowels': 1_000_000,
  'rebar-layout lengths of a strip': 1001,
  'mesh-layout sheets by size': 1_000_000,
  'bar-cutting lengths of pieces': 201,
  'bar-cutting stocks': 21,
};

describe('what grows', () => {
  it.each(looked.map((one) => [nameOf(one), one] as const))('is answered while small: %s', (_, one) => {
    const found = answer(one.of, one.input(one.from));
    expect(found.refused && one.anyRefusal !== true ? found.refused.text : '').toBe('');
  });

  it.each(Object.entries(BEYOND))('is refused beyond its limit: %s', (name, size) => {
    const one = SIZES.find((other) => nameOf(other) === name);
    if (!one) throw new Error('no such size');
    const found = answer(one.of, one.input(size));
    expect(found.refused?.text).toMatch(/\d/);
    expect(namesTheMost(found)).toBe(true);
  });
});
