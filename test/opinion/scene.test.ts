/** Slips tried by the steps and by runs: steps that another run does not have, values that are enclosed, other values taken. */
import { describe, expect, it } from 'vitest';
import type { EstimateCheck } from '../../src/index';
import {
  deliveryTicket,
  estimateCheck,
  formMaterials,
  jobBid,
  meshLayout,
  pierVolume,
  slabVolume,
} from '../../src/index';
import { byHand } from '../../src/opinion/by-hand';
import { readClaims } from '../../src/opinion/claims';
import { handsFor } from '../../src/opinion/hands';
import { type AnyCalculation, LEFT_OUT, placesOf, withQuantities } from '../../src/opinion/input-places';
import { probed, sceneOf } from '../../src/opinion/probe';
import { predicted, type Scene, sameSteps, told } from '../../src/opinion/scene';
import type { Edit } from '../../src/opinion/slip';
import { sentenceOf } from '../../src/quantity/words';

function scene(calculation: AnyCalculation, input: unknown, claims: unknown): Scene {
  const places = placesOf(calculation, input);
  const read = withQuantities(input, places);
  const result = calculation(read);
  return probed(sceneOf(calculation, read, result, places, readClaims(claims, result.figures)), places);
}

const firstOf = ({ slips }: EstimateCheck): string =>
  (slips[0]?.slips ?? []).map(({ code, input, step }) => `${code} ${input ?? step ?? ''}`).join(' + ');

const named = (calculation: unknown, input: unknown, claims: unknown): string =>
  firstOf(estimateCheck(calculation as typeof slabVolume, input as never, claims as never));

describe('a run with other steps', () => {
  const round = { kind: 'round', diameter: '12 in', height: '4 ft', count: 6 };
  const square = { kind: 'rectangular', length: '16 in', width: '16 in', height: '3 ft' };
  const two = scene(pierVolume, { piers: [round, square] }, { volume: '1 yd3' });
  const leftOut: Edit = { on: 'input', path: ['piers', 1], value: LEFT_OUT };
  const last = two.graph.length - 1;
  const atLast: Edit = { on: 'outcome', step: last, twist: { unit: 1, times: ['2', '1'] } };

  it('has no step of one that has more or fewer, where a step goes wrong', () => {
    const one = scene(pierVolume, { piers: [round] }, { volume: '1 yd3' });
    expect(one.graph.length).toBeLessThan(two.graph.length);
    expect(sameSteps(one.graph, two.graph, [atLast])).toBe(false);
    expect(sameSteps(two.graph, two.graph, [atLast])).toBe(true);
  });

  it('gives nothing for a step that it does not have, and does not break', () => {
    expect(predicted(two, [leftOut])?.every(Number.isFinite)).toBe(true);
    expect(predicted(two, [leftOut, atLast])).toBeUndefined();
    const [hand] = handsFor(two.graph, two.claims);
    expect(byHand(two, [leftOut, atLast], () => hand as never)).toBeUndefined();
    expect(told(two, [leftOut, atLast])).toHaveLength(1);
  });
});

describe('what only the calculation tells', () => {
  it('is enclosed: a height that takes more courses of boards, and one far off', () => {
    const input = {
      kind: 'low-wall',
      runs: [{ length: '15 ft', count: 2 }],
      height: '14.5 in',
      board: { thickness: '1.5 in', height: '6.5 in' },
      stock: ['16 ft'],
      stakes: { spacing: '1 ft' },
      bracing: 'every-stake',
    } as const;
    const high = formMaterials({ ...input, height: '144.5 in' } as never).figures as unknown as {
      courses: { format(): string };
      lengthBought: { format(): string };
    };
    const claims = { courses: high.courses.format(), lengthBought: high.lengthBought.format() };
    const codes = estimateCheck(formMaterials as never, input as never, claims).slips.map(
      ({ slips }) => slips[0],
    );
    expect(codes.slice(0, 3).some((slip) => slip?.input === 'height')).toBe(true);
  });

  it('is told by the calculation where a plan takes other counts', () => {
    // 8 ft 6 in taken twice for the side of a sheet: the plan of sheets stays, the weight follows.
    const input = {
      outline: { shape: 'L', length: '31.5 ft', width: '27.5 ft', notchLength: '8 ft', notchWidth: '7 ft' },
      form: 'sheets',
      pieceLength: '10 ft',
      pieceWidth: '8 ft 6 in',
      style: '6x6-W1.4xW1.4',
      supports: '6 ft',
    };
    expect(named(meshLayout, input, { weight: '166.9 lb', pieces: 11 })).toBe('other-input 0');
  });

  it('is a rate of tax behind many other values', () => {
    const concrete = {
      kind: 'material',
      name: 'concrete',
      quantity: '8.09 m3',
      allowance: '5%',
      increment: '0.25 m3',
    };
    const placing = { kind: 'labor', name: 'placing', quantity: '78.7 m2' };
    const input = {
      lines: [
        { ...concrete, price: { amount: '148.40 EUR', per: '1 m3' } },
        {
          ...placing,
          production: { output: '1.38 m2', time: '0.736 h', by: 'worker' },
          wage: { amount: '31.2 EUR', per: '1 h' },
        },
      ],
      profit: { markup: '12%' },
      tax: { kind: 'on-price', rate: '19%' },
    };
    const off = jobBid({ ...input, tax: { kind: 'on-price', rate: '91%' } } as never).figures.total;
    expect(named(jobBid, input, { total: off?.format() })).toBe('digits-transposed tax.rate');
  });
});

describe('a round pier', () => {
  it('may be taken as the square around it', () => {
    const input = { piers: [{ kind: 'round', diameter: '16 in', height: '4 ft', count: 8 }] };
    // 16 in square, 4 ft deep, eight of them: 56.9 ft3.
    expect(named(pierVolume, input, { volume: '2.11 yd3' })).toMatch(/^circle-as-square/);
  });
});

describe('a slip in turning units', () => {
  it('is told by what was done', () => {
    const input = {
      outline: { shape: 'rectangle', length: '24 ft', width: '22 ft' },
      thickness: '5 in',
    } as const;
    const { says } = estimateCheck(slabVolume, input, { volume: '24.4 yd3' });
    expect(sentenceOf(says)).toMatch(/was divided by 9/);
  });
});

describe('values of an input', () => {
  it('are found where a ratio is a number alone', () => {
    const ordered = { strength: '4000 psi', waterCement: '0.45', slump: '4 in' };
    const input = { volume: '9 yd3', ordered, waterToAdd: '10 gal', slump: '4 in' };
    const at = placesOf(deliveryTicket, input).leaves.map((leaf) => leaf.at);
    expect(at).toContain('ordered.waterCement');
  });
});

describe('rounding on the way', () => {
  it('comes after a slip that was made in the reckoning, and before one in writing it down', () => {
    // 113 by 3 by 2 ft, not divided by 27 but by 9: 175.8, kept with two digits.
    const trench = { outline: { shape: 'rectangle', length: '113 ft', width: '14 ft' }, thickness: '12 in' };
    expect(named(slabVolume, trench, { volume: '180 yd3' })).toBe('divided-by-9 ');
  });
});

describe('what is said of two slips', () => {
  const slab = {
    outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
    thickness: '4 in',
  } as const;

  it('is less sure than of one', () => {
    const { says } = estimateCheck(slabVolume, slab, { volume: '201.6 yd3' });
    expect(sentenceOf(says)).toMatch(/No one slip .* two together would, which is less sure/);
  });

  it('is nothing where rare slips meet in one figure by chance', () => {
    for (const volume of ['9.73 yd3', '5.41 yd3', '13.9 yd3']) {
      const { slips } = estimateCheck(slabVolume, slab, { volume });
      const digits = slips.filter(
        ({ slips: two }) => two.length > 1 && two.every(({ code }) => /digit|carried/.test(code)),
      );
      expect(digits).toEqual([]);
    }
  });

  it('and of a slip that explains some of the figures only', () => {
    const { says, slips } = estimateCheck(slabVolume, slab, { area: '511.77 ft2', volume: '12.44 yd3' });
    if (slips[0] && slips[0].slips.length === 1) expect(sentenceOf(says)).toMatch(/No one slip .* all of it/);
    expect(sentenceOf(says)).not.toMatch(/^The estimate is off. Likely/);
  });
});
