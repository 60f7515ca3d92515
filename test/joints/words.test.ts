/** What cautions and faults about joints say: every number that they are given, and nothing left open. */
import { describe, expect, it } from 'vitest';
import * as cautions from '../../src/joints/cautions';
import * as faults from '../../src/joints/faults';
import { SLAB_LENGTH_RATIO } from '../../src/joints/sources';
import { count, length, ratio } from '../../src/quantity/make';
import type { Quantity } from '../../src/quantity/quantity';
import { sentenceOf } from '../../src/quantity/words';
import type { Caution } from '../../src/reckoning/result';

const [a, b, c, d] = ['11 ft', '23 ft', '37 ft', '53 ft'].map((text) => length(text)) as [
  Quantity<'length'>,
  Quantity<'length'>,
  Quantity<'length'>,
  Quantity<'length'>,
];
const [n, m] = [count('17 each'), count('29 each')];
const [r, s] = [ratio('1.61:1'), ratio('1.97:1')];
const spared = { panels: n, others: m, length: c };
const fewer = { longestRatio: s, panelCount: m, contraction: d };

type Told = readonly [name: string, caution: Caution, limit: Quantity, actual: Quantity, also?: Quantity[]];

const TOLD: readonly Told[] = [
  ['slump over the table', cautions.slumpOutOfTable(a, b), a, b],
  ['openings passed by', cautions.openingsPassedBy(n, m), n, m],
  ['many panels', cautions.manyPanels(r, [n, c], fewer), m, n, [r, c, s, d]],
  ['a hair over', cautions.justOverSpacing([n, m], [a, b], c), n, m, [a, b, c]],
  ['a curved cut', cautions.curvedCut(a, b), a, b],
  ['a topping', cautions.toppingJoints(a, b), a, b],
  ['strips that cut up', cautions.cutUpByStrips(r, [n, c], m), m, n, [r, c]],
  ['thickness out of the table', cautions.thicknessOutOfTable(a, b, c, d), c, d],
  ['a topping out of the table', cautions.toppingOutOfTable(a, b, c, d), c, d],
  ['a deep cut', cautions.deepCut(a, b), a, b],
  ['a shallow cut', cautions.shallowCut(a, b, SLAB_LENGTH_RATIO), a, b],
  ['a cut too deep', cautions.cutTooDeep(a, b), a, b],
  ['a wide strip', cautions.wideStrip(r, s), r, s],
  ['a strip wide for its spacing', cautions.wideForSpacing(a, b), a, b],
  ['a panel long for its stiffness', cautions.longForStiffness(r, s), r, s],
  ['a spacing over other caps', cautions.overOtherCaps(a, b), a, b],
  ['wide panels', cautions.widePanels(a, b, r), a, b, [r]],
  ['rules that give way', cautions.rulesGiveWay(n, m), n, m],
  ['rules eased', cautions.rulesEased(n, m, { panels: n, others: m, length: c }), n, m, [n, m, c]],
  ['the ratio eased', cautions.ratioEased(r, s, spared), r, s, [n, m, c]],
  ['reinforced joints', cautions.reinforcedJoints, n, n],
  ['a square box-out', cautions.squareBoxOut, n, n],
];

describe('a caution about joints', () => {
  it.each(TOLD.map(([name, caution, limit, actual, also = []]) => ({ name, caution, limit, actual, also })))(
    'says what it has: $name',
    ({ caution, limit, actual, also }) => {
      const text = sentenceOf(caution);
      expect(text).not.toMatch(/[{}]|undefined/);
      expect(caution.code).toMatch(/^[a-z]+(-[a-z]+)+$/);
      expect(['note', 'warning', 'stop']).toContain(caution.severity);
      expect(caution.source.title).not.toBe('');
      if (caution.limit === undefined) return;
      expect([caution.limit, caution.actual]).toEqual([limit, actual]);
      // Places in the sentence hold these very quantities, by whatever name.
      const held = Object.values(caution.params ?? {});
      for (const one of also) expect(held).toContain(one);
      expect(Object.keys(caution.params ?? {}).length).toBeGreaterThanOrEqual(also.length);
    },
  );

  it('is a stop where the slab would be cut through, and never where a plan is merely long', () => {
    expect(cautions.deepCut(a, b).severity).toBe('stop');
    expect(TOLD.filter(([, { severity }]) => severity === 'stop')).toHaveLength(1);
    for (const note of [cautions.manyPanels(r, [n, c], fewer), cautions.curvedCut(a, b)])
      expect(note.severity).toBe('note');
    for (const warning of [cautions.rulesGiveWay(n, m), cautions.shallowCut(a, b, SLAB_LENGTH_RATIO)])
      expect(warning.severity).toBe('warning');
  });

  it('names the source that it is given', () => {
    expect(cautions.shallowCut(a, b, SLAB_LENGTH_RATIO).source).toBe(SLAB_LENGTH_RATIO);
  });
});

describe('a fault about joints', () => {
  it.each([
    ['below-least', faults.belowLeast('spacing', '1 ft'), ['spacing', '1 ft']],
    ['off-edge', faults.offEdge(), []],
    ['off-slab', faults.jointOffSlab(), []],
    ['ends-inside', faults.jointEndsInside(), []],
    ['joint-not-square', faults.jointNotSquare(), []],
    ['joints-conflict', faults.jointsConflict('fixed[2]'), ['fixed[2]']],
  ] as const)('has its code and its names in it: %s', (code, fault, names) => {
    expect(fault.code).toBe(code);
    expect(fault.sentence).not.toMatch(/[{}]|undefined/);
    for (const name of names) expect(fault.sentence).toContain(name);
  });
});
