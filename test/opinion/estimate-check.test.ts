/** Claims against what is reckoned: verdicts, the slips that are named, and that nothing but InputError is thrown. */
import { describe, expect, it } from 'vitest';
import type { Claims, EstimateCheck } from '../../src/index';
import {
  backfill,
  concreteOrder,
  estimateCheck,
  footingVolume,
  InputError,
  jobBid,
  rebarLayout,
  runoff,
  slabVolume,
} from '../../src/index';
import { sentenceOf } from '../../src/quantity/words';

const SLAB = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
const ORDER = { volume: '20.4 yd3', allowance: '8%', increment: '0.25 yd3', truckCapacity: '9 yd3' } as const;

const firstOf = ({ slips }: EstimateCheck): string =>
  (slips[0]?.slips ?? []).map(({ code }) => code).join(' + ');

describe('right estimates', () => {
  // 4 in as 0.33 ft; 166 ft3; 6.1 and 6.2 yd3: rounded as people do.
  it.each(['6.22 yd3', '6.2 yd3', '6.16 yd3', '6 yd3', '168 ft3', '166.3 ft3', '166 ft3', '4.76 m3'])(
    'agree when written as %s',
    (volume) => {
      const check = estimateCheck(slabVolume, SLAB, { volume });
      expect(check.verdict).toBe('agrees');
      expect(check.slips).toEqual([]);
    },
  );

  it('agree with the rounding that is said', () => {
    const claims = [{ figure: 'volume', claimed: '6.25 yd3', rounded: '0.25 yd3', line: '6 1/4 yd' }];
    const check = estimateCheck(slabVolume, SLAB, claims);
    expect(check.verdict).toBe('agrees');
    expect(check.claims[0]?.line).toBe('6 1/4 yd');
  });

  it('are close within a step of the trade', () => {
    const [claim] = estimateCheck(slabVolume, SLAB, { volume: '6.45 yd3' }).claims;
    expect(claim?.verdict).toBe('close');
    expect(claim?.difference.format()).toBe('0.23 yd3');
    expect(claim?.share?.format()).toBe('3.66%');
    expect(claim?.step.format()).toBe('0.25 yd3');
    expect(claim?.steps.format()).toBe('0.9 each');
  });
});

describe('slips of the hand', () => {
  it.each([
    ['168 yd3', 'not-divided-by-27'],
    ['18.67 yd3', 'divided-by-9'],
    ['7.47 yd3', 'inches-as-tenths'],
    ['74.7 yd3', 'inches-as-feet'],
    ['12.44 yd3', 'doubled'],
    ['3.11 yd3', 'halved'],
    ['62.2 yd3', 'point-moved'],
    ['6.67 yd3', 'digits-transposed'],
  ])('%s is %s', (volume, code) => {
    const check = estimateCheck(slabVolume, SLAB, { volume });
    expect(check.verdict).toBe('differs');
    expect(firstOf(check)).toBe(code);
  });

  it('are told in a sentence with what they give and where they show', () => {
    const check = estimateCheck(slabVolume, SLAB, { volume: '7.47 yd3' });
    expect(sentenceOf(check.says)).toBe(
      'The estimate is off. Likely, thickness is 4 in, and 0.4 ft was taken.',
    );
    const [first] = check.slips;
    expect(first?.slips[0]?.input).toBe('thickness');
    expect(first?.gives.map(({ would }) => would.format())).toEqual(['7.47 yd3']);
    expect(first?.explains).toEqual(['volume']);
  });

  it('must explain every claim: an area that is right speaks against a slip in it', () => {
    const both = estimateCheck(slabVolume, SLAB, { area: '504 ft2', volume: '12.44 yd3' });
    expect(both.slips[0]?.slips[0]?.figure).toBe('volume');
    const carried = estimateCheck(slabVolume, SLAB, { area: '540 ft2', volume: '6.67 yd3' });
    expect(firstOf(carried)).toBe('digits-transposed');
    expect(carried.slips[0]?.explains).toEqual(['area', 'volume']);
  });

  it('are found in feet and inches that were typed as decimals, at every place', () => {
    const input = {
      outline: { shape: 'rectangle', length: `12' 6"`, width: `10' 3"` },
      thickness: '4 in',
    } as const;
    const check = estimateCheck(slabVolume, input, { area: '129.78 ft2', volume: '1.60 yd3' });
    expect(firstOf(check)).toBe('feet-inches-as-decimal');
  });

  it('are found in shapes, shares and roundings', () => {
    const sides = { length: '28 ft', width: '18 ft', notchLength: '10 ft', notchWidth: '6 ft' };
    const ell = { outline: { shape: 'L', ...sides }, thickness: '4 in' } as const;
    expect(firstOf(estimateCheck(slabVolume, ell, { volume: '6.22 yd3' }))).toBe('notch-left-out');
    expect(firstOf(estimateCheck(concreteOrder, ORDER, { order: '20.50 yd3' }))).toBe('allowance-missed');
    expect(firstOf(estimateCheck(concreteOrder, ORDER, { order: '22.00 yd3' }))).toBe('rounded-down');
  });

  it('come in twos where one does not explain it', () => {
    // 4 in as 0.4 ft, and cubic feet written as cubic yards.
    const check = estimateCheck(slabVolume, SLAB, { volume: '201.6 yd3' });
    expect(firstOf(check).split(' + ').sort()).toEqual(['inches-as-tenths', 'not-divided-by-27']);
  });

  it('are not invented', () => {
    const check = estimateCheck(slabVolume, SLAB, { volume: '9.7313 yd3', area: '511.77 ft2' });
    expect(check.slips.filter(({ slips }) => slips.length === 1 && slips[0]?.code === 'doubled')).toEqual([]);
    expect(sentenceOf(check.says)).toMatch(/off/);
  });
});

describe('what is asked', () => {
  const refusals: readonly (readonly [string, unknown, unknown, unknown])[] = [
    ['unknown-name', slabVolume, SLAB, { volumes: '9 yd3' }],
    ['unknown-name', slabVolume, SLAB, [{ claimed: '9 yd3' }]],
    ['missing-unit', slabVolume, SLAB, { volume: 9 }],
    ['wrong-dimension', slabVolume, SLAB, { volume: '9 ft2' }],
    ['too-few', slabVolume, SLAB, {}],
    ['wrong-type', slabVolume, SLAB, 'nine'],
    ['unknown-key', slabVolume, SLAB, [{ figure: 'volume', claimed: '9 yd3', round: 1 }]],
    ['wrong-type', slabVolume, SLAB, [{ figure: 'volume', claimed: '9 yd3', line: 9 }]],
    ['missing', slabVolume, {}, { volume: '9 yd3' }],
    ['wrong-type', undefined, SLAB, { volume: '9 yd3' }],
    ['wrong-type', () => 1, SLAB, { volume: '9 yd3' }],
    [
      'too-many',
      slabVolume,
      SLAB,
      Array.from({ length: 51 }, () => ({ figure: 'volume', claimed: '9 yd3' })),
    ],
  ];
  it.each(refusals)('is refused as %s', (code, calculation, input, claims) => {
    try {
      estimateCheck(calculation as typeof slabVolume, input as typeof SLAB, claims as Claims);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).issues.map((issue) => issue.code)).toContain(code);
    }
  });

  it('gives the same twice, frozen, and can be cloned', () => {
    const once = estimateCheck(slabVolume, SLAB, { volume: '7.47 yd3' });
    expect(JSON.stringify(once)).toBe(
      JSON.stringify(estimateCheck(slabVolume, SLAB, { volume: '7.47 yd3' })),
    );
    expect(Object.isFrozen(once.slips[0]?.gives)).toBe(true);
    expect(() => structuredClone(once)).not.toThrow();
  });
});

describe('a count that is claimed', () => {
  it('may be a plain whole number', () => {
    const input = { length: '12 ft', width: '8 ft', bar: '#4', spacing: '12 in', cover: '2 in' } as const;
    const { figures } = rebarLayout(input);
    const bars = figures.barsToBuy.toNumber('each');
    for (const claimed of [bars, `${bars}`, `${bars} each`])
      expect(estimateCheck(rebarLayout as never, input as never, { barsToBuy: claimed }).verdict).toBe(
        'agrees',
      );
    expect(estimateCheck(rebarLayout as never, input as never, { barsToBuy: bars - 1 }).verdict).not.toBe(
      'agrees',
    );
  });
});

describe('a range', () => {
  const said = (volume: string): string => {
    try {
      return estimateCheck(slabVolume, SLAB, { volume }).verdict;
    } catch (error) {
      return error instanceof InputError ? error.message : expect.unreachable();
    }
  };

  it.each(['6-7 yd3', '6 to 7 yd3', '6–7 yd3', '6 yd3 - 7 yd3'])(
    'is no figure: for %s it is said what to give',
    (text) => {
      expect(said(text)).toContain('from 6 yd3 to 7 yd3 is a range');
      expect(said(text)).toContain('{ claimed: "6.5 yd3", rounded: "1 yd3" }');
    },
  );

  it('may be claimed as it is told to be', () => {
    const claims = [{ figure: 'volume', claimed: '6.5 yd3', rounded: '1 yd3' }];
    expect(estimateCheck(slabVolume, SLAB, claims).verdict).toBe('agrees');
  });

  it('is not a mixed number, or feet and inches with a dash', () => {
    expect(said('6-1/4 yd3')).toBe('agrees');
    for (const perimeter of [`92'-0"`, '91 ft-11 in', '92 ft'])
      expect(estimateCheck(slabVolume, SLAB, { perimeter }).verdict).toBe('agrees');
  });
});

describe('what a reader of notebooks would see', () => {
  const named = (calculation: unknown, input: unknown, claims: unknown): string =>
    firstOf(estimateCheck(calculation as typeof slabVolume, input as typeof SLAB, claims as Claims));

  it('knows a hand that keeps two digits throughout, and flags nothing', () => {
    // 33.3 by 21.3 ft, a foot wide all round: 105.3 ft2, written 110, and 3.90 yd3 of that as 4.1.
    const loop = { kind: 'loop', outerLength: `33' 4"`, outerWidth: `21' 4"`, width: '1 ft', depth: '1 ft' };
    const check = estimateCheck(footingVolume, { footings: [loop] } as never, {
      bearingArea: '110 ft2',
      volume: '4.1 yd3',
    });
    expect(check.verdict).toBe('agrees');
    expect(check.slips).toEqual([]);
  });

  it('does not take a hundred and more for rounding where the digits are written', () => {
    const loop = { kind: 'loop', outerLength: `33' 4"`, outerWidth: `21' 4"`, width: '1 ft', depth: '1 ft' };
    const check = estimateCheck(footingVolume, { footings: [loop] } as never, { bearingArea: '112.4 ft2' });
    expect(check.verdict).toBe('differs');
  });

  it('finds two digits turned round before the number was rounded again', () => {
    // 6.22 yd3 was carried on as 2.62, and written as 2.6.
    expect(named(slabVolume, SLAB, { area: '504 ft2', volume: '2.6 yd3' })).toBe('digits-transposed');
  });

  it('finds the first factor taken twice', () => {
    const input = {
      areas: [{ surface: 'roof', area: '900 ft2', coefficient: '0.7:1' }],
      intensity: '5 in/h',
    };
    const right = runoff(input as never).figures.flow.toNumber('gal/min');
    expect(named(runoff, input, { flow: `${(right * 0.7).toFixed(2)} gal/min` })).toBe('factor-twice');
  });

  it('finds a value that stands where several kinds of quantity may, and in parts of which one is enough', () => {
    const sealing = { kind: 'subcontract', name: 'sealing', quantity: '540 ft2' };
    const bid = { lines: [{ ...sealing, price: { amount: '7.20 USD', per: '1 yd2' } }] };
    expect(named(jobBid, bid, { total: '360.00 USD' })).toBe('digits-transposed');
    expect(named(backfill, { ground: { fall: '2 in', over: '10 ft' } }, { groundSlope: '20%' })).toBe(
      'inches-as-feet',
    );
  });

  it('finds a second slip on top of the first', () => {
    // 28 ft as 82, and the cubic feet of that as cubic yards.
    const check = estimateCheck(slabVolume, SLAB, { area: '1476 ft2', volume: '492 yd3' });
    expect(firstOf(check).split(' + ').sort()).toEqual(['digits-transposed', 'not-divided-by-27']);
    expect(check.slips[0]?.explains).toEqual(['area', 'volume']);
  });
});
