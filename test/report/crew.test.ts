/** What a crew carries: names that the catalog knows, few enough, and nothing of what the crew has to know lost. */
import { describe, expect, it } from 'vitest';
import { calculations } from '../../src/catalog/all';
import {
  drainageCheck,
  placingLimits,
  rebarLayout,
  reckonJob,
  slabVolume,
  stepLayout,
} from '../../src/index';
import { CREW_VIEWS, carriedOf, type Shown } from '../../src/report/crew';
import { textTag } from '../../src/report/html';
import { jobHtml, jobParts, markdownSheet, purchaseRows, textSheet } from '../../src/report/index';
import { sheetOf } from '../../src/report/sheet';
import { readVectors } from '../support/vectors';

const byId = new Map(Object.values(calculations).map((one) => [one.id, one] as const));

/** Every path that somebody's input or result has, lists passed through. */
function paths(value: unknown, at: string, into: Set<string>): Set<string> {
  if (Array.isArray(value)) for (const one of value) paths(one, at, into);
  else if (typeof value === 'object' && value !== null)
    for (const [name, inner] of Object.entries(value)) {
      into.add(`${at}${name}`);
      paths(inner, `${at}${name}.`, into);
    }
  return into;
}

const named = (shown: readonly Shown[], at = ''): string[] =>
  shown.flatMap((each) =>
    typeof each === 'string' ? [`${at}${each}`] : [`${at}${each[0]}`, ...named(each[1], `${at}${each[0]}.`)],
  );

describe('the view of a crew', () => {
  it('speaks of inputs and figures that there are', () => {
    const seen = new Map<string, { readonly given: Set<string>; readonly figures: Set<string> }>();
    for (const { vector } of readVectors()) {
      const attempt = byId.get(vector.calculation)?.attempt(vector.input);
      if (!attempt?.ok) continue;
      const known = seen.get(vector.calculation) ?? { given: new Set(), figures: new Set() };
      paths(vector.input, '', known.given);
      paths(attempt.result.figures, '', known.figures);
      seen.set(vector.calculation, known);
    }
    const unknown = Object.entries(CREW_VIEWS).flatMap(([id, { given, figures }]) => [
      ...named(given)
        .filter((path) => !seen.get(id)?.given.has(path))
        .map((path) => `${id} ${path}`),
      ...named(figures)
        .filter((path) => !seen.get(id)?.figures.has(path))
        .map((path) => `${id}: ${path}`),
    ]);
    expect(unknown).toEqual([]);
  });

  it('says what is counted of a surface that does not drain', () => {
    // Three spots of one height are one facet, and it is level.
    const spots = [
      { name: 'A', x: '0 m', y: '0 m', elevation: '10 m' },
      { name: 'B', x: '6 m', y: '0 m', elevation: '10 m' },
      { name: 'C', x: '0 m', y: '6 m', elevation: '10 m' },
    ];
    const text = textSheet(
      'Yard',
      [{ name: 'Yard', results: [drainageCheck({ use: 'slab-outdoors', spots } as never)] }],
      {
        detail: 'crew',
      },
    );
    expect(text).toMatch(/facets too flat {2,}1\n/);
  });

  it('leaves no result without a figure', () => {
    const bare = readVectors().flatMap(({ at, vector }) => {
      const attempt = byId.get(vector.calculation)?.attempt(vector.input);
      if (!attempt?.ok) return [];
      const { figures } = carriedOf(vector.calculation, vector.input, attempt.result.figures as never);
      return Object.keys(figures as object).length > 0 ? [] : [at];
    });
    expect(bare).toEqual([]);
  });

  it('tells groups as people write them: semicolons stand between what has commas of its own', () => {
    const texts = readVectors().flatMap(({ at, vector }) => {
      const attempt = byId.get(vector.calculation)?.attempt(vector.input);
      if (!attempt?.ok) return [];
      const results = [{ input: vector.input, result: attempt.result }];
      const [part] = sheetOf([{ name: '', results }], { detail: 'crew' }).parts;
      return (part?.blocks ?? []).flatMap(({ input, figures }) =>
        [...input, ...figures].flatMap(({ text, table }) =>
          [text, ...(table?.rows.flat() ?? [])].map((told) => `${at}: ${told}`),
        ),
      );
    });
    expect(texts.length).toBeGreaterThan(5000);
    expect(texts.filter((text) => text.includes('; ') && !text.includes(', '))).toEqual([]);
  });

  it('tells a curved point, a flight, bars of two ways and what lies where in text, Markdown and HTML', () => {
    const curved = {
      outline: {
        shape: 'curved',
        points: [
          { x: '0 m', y: '0 m' },
          { x: '6 m', y: '0 m', rise: '500 mm' },
          { x: '6 m', y: '4 m' },
          { x: '0 m', y: '4 m' },
        ],
      },
      thickness: '100 mm',
    } as const;
    const wedge = {
      outline: { shape: 'L', length: '6 m', width: '4 m', notchLength: '2 m', notchWidth: '1 m' },
      thickness: { kind: 'taper', along: 'x', from: '100 mm', to: '150 mm' },
    } as const;
    const flight = { totalRise: '14 in' } as const;
    const mat = { length: '8.5 m', width: '5.5 m', bar: '12 mm', spacing: '450 mm', cover: '75 mm' } as const;
    const results = [
      { input: curved, result: slabVolume(curved) },
      { input: wedge, result: slabVolume(wedge) },
      { input: flight, result: stepLayout(flight) },
      { input: mat, result: rebarLayout(mat) },
    ];
    const parts = [{ name: 'Yard', results }];
    const text = textSheet('Yard', parts, { detail: 'crew' });
    const markdown = markdownSheet('Yard', parts, { detail: 'crew' });
    for (const sheet of [text, markdown]) {
      expect(sheet).toMatch(/\(6 m, 0 m, rise 500 mm\), \(6 m, 4 m\)/);
      expect(sheet).toMatch(/L 6 m × 4 m, notch 2 m × 1 m/);
      expect(sheet).toMatch(/thinnest\W+100 mm at \(0 m, 0 m\)/);
      expect(sheet).toMatch(/riser form\W+6-3\/4 in/);
      expect(sheet).toMatch(/bars the long way\W+bars the short way/);
      expect(sheet).toMatch(/pieces per run\W+2\W+1\n|pieces per run \| 2 \| 1 \|/);
    }
    const elements = [{ name: 'walk', ...curved, slab: true, risers: flight, bars: mat }];
    const html = jobHtml('Yard', reckonJob({ version: 1, elements } as never), 'crew');
    expect(html.replace(/<[^>]+>/g, '')).toContain('(6 m, 0 m, rise 500 mm), (6 m, 4 m)');
    expect(html).toContain('<th scope="row"><bdi>riser form</bdi></th>');
    expect(html).toContain('<th scope="col">bars the short way</th>');
    expect(html).not.toMatch(/; (?:x|rise|riser) /);
  });

  it('shows of the weather what matters in it: in heat the most, in cold the least', () => {
    const lines = (placing: string, low: string): string => {
      const input = { thickness: '125 mm', forecast: { placing, low }, ground: 'not-frozen' } as const;
      const results = [{ input, result: placingLimits(input) }];
      return textSheet('Yard', [{ name: 'Weather', results }], { detail: 'crew' });
    };
    const [hot, cold] = [lines('33 degC', '24 degC'), lines('4 degC', '-3 degC')];
    expect(hot).toMatch(/placed at most\W+35/);
    expect(hot).not.toMatch(/kept at least|mixed at least/);
    expect(cold).toMatch(/kept at least\W+13/);
    expect(cold).toMatch(/mixed at least\W+16/);
    expect(cold).not.toMatch(/at most/);
  });

  it('shows what is laid out by and what is done, not what the office orders by', () => {
    const slab = {
      name: 'Delivery slab',
      outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
    } as const;
    const job = reckonJob({
      version: 1,
      elements: [
        {
          ...slab,
          thickness: '6 in',
          base: { depth: '6 in', margin: '6 in', compactedDensity: '135 pcf', truckPayload: '15 ton' },
          forms: { board: { thickness: '1.5 in', height: '5.5 in' }, stock: ['12 ft', '16 ft'] },
          slab: true,
        },
      ],
    });
    const text = jobHtml('Yard', job, 'crew')
      .replace(/<[^>]*>/g, ' ')
      .replace(/\s+/g, ' ');
    for (const shown of ['rectangle 28 ft × 18 ft', '18.60 ton', '1-1/2 in × 5-1/2 in', '16 ft', '12 in'])
      expect(text).toContain(shown);
    for (const left of ['rate of spread', 'compacted density', 'waste', 'proved', 'governed by'])
      expect(text).not.toContain(left);
  });

  it('tells a time of day by the clock, and a range in one breath', () => {
    const plan = byId.get('truck-plan');
    const input = {
      loads: ['9 yd3', '4 yd3'],
      placing: { kind: 'chute' },
      travelTime: '25 min',
      firstTruckAt: { value: 7, unit: 'h' },
    };
    const attempt = plan?.attempt(input);
    if (!attempt?.ok) throw new Error('refused');
    const revived = { ...input, firstTruckAt: '7:00' };
    const text = textSheet(
      'Trucks',
      [{ name: 'Day', results: [{ input: revived, result: attempt.result }] }],
      {
        detail: 'crew',
      },
    );
    expect(text).toContain('first truck at 7:00 AM');
    expect(text).toMatch(/initial set +4 h to 6 h/);
    expect(text).toMatch(/truck +volume +departs +arrives +ends/);
  });
});

/** A curved walk between boards, and a slab that is sawn: metric, with what is cut and what is set out. */
const walk = reckonJob({
  version: 1,
  elements: [
    {
      name: 'walk',
      outline: { shape: 'sector', radius: '6 m', innerRadius: '4.8 m', angle: '75 deg' },
      thickness: '100 mm',
      slab: true,
      forms: {
        kind: 'slab-edge',
        board: { thickness: '12 mm', height: '100 mm' },
        stock: ['2.4 m', '3 m'],
      },
      spacing: { aggregateSize: '20 mm', slump: '100 mm', use: 'walk', method: 'hand-groover' },
      joints: { method: 'hand-groover' },
    },
    {
      name: 'slab',
      outline: { shape: 'rectangle', length: '7.1237 m', width: '5.0462 m' },
      thickness: '125 mm',
      slab: true,
      bars: { bar: '12 mm', spacing: '300 mm' },
      spacing: { aggregateSize: '20 mm', slump: '100 mm' },
      joints: true,
      saw: { saw: 'early-entry', weather: 'mild' },
    },
  ],
});

describe('lengths and hours that a crew works by', () => {
  const text = textSheet('Yard', jobParts(walk), { detail: 'crew' });
  const part = (element: string, name: string) =>
    walk.parts.find((one) => one.element === element && one.part === name)?.result.figures as never;

  it('cuts boards in whole millimeters, none of them short', () => {
    const rows = text.split('\n').filter((line) => /^ +side \d/.test(line));
    const { edges } = part('walk', 'forms') as { edges: { length: { toNumber: (u: string) => number } }[] };
    expect(rows.length).toBe(edges.length);
    rows.forEach((row, i) => {
      const pieces = [...row.matchAll(/(\d+) × (\d+) mm/g)].map(([, n, mm]) => Number(n) * Number(mm));
      const whole = edges[i]?.length.toNumber('mm') ?? Number.NaN;
      const cut = pieces.reduce((sum, mm) => sum + mm, 0);
      expect(cut).toBeGreaterThanOrEqual(whole - 1e-9);
      expect(cut).toBeLessThan(whole + 4);
    });
  });

  it('cuts bars by no more than they are', () => {
    const { bars } = part('slab', 'bars') as { bars: { length: { toNumber: (u: string) => number } }[] };
    for (const { length: l } of bars) expect(text).toContain(`${Math.round(l.toNumber('mm'))} mm`);
  });

  it('sets out in whole centimeters, along the edge where that is curved', () => {
    // 6 × π ÷ 12 and 4.8 × π ÷ 12, a twelfth of half a turn each.
    expect(text).toMatch(/along the edge, left +along the edge, right/);
    expect(text).toMatch(/1 +contraction +1\.26 m +1\.57 m +1\.2 m/);
    expect(text).not.toContain('4.636');
    expect(text).toContain('(2.38 m, 0 m)');
    const full = textSheet('Yard', jobParts(walk));
    expect(full).toContain('4.636');
  });

  it('says from when the hours of the saw run', () => {
    expect(text).toMatch(/counted from +finishing/);
  });

  it('saws by the plan, and by the spacing only where there is none', () => {
    const title = 'Spacing and depth of control (contraction) joints';
    expect(text).not.toContain(title);
    expect(textSheet('Yard', jobParts(walk))).toContain(title);
    const { parts, takeoff } = walk;
    const alone = { takeoff, parts: parts.filter((one) => one.part !== 'joints') };
    expect(textSheet('Yard', jobParts(alone), { detail: 'crew' })).toContain(title);
  });

  it('buys lengths up to whole centimeters or inches', () => {
    const cut = purchaseRows(walk).find(({ item }) => item === 'joints to saw')?.quantity;
    // 2 × 5.0462 m and 7.1237 m.
    expect(cut).toBe('17.22 m');
    expect(
      purchaseRows(walk, { system: 'customary', feet: 'fractions' }).map(({ quantity }) => quantity),
    ).toContain('56 ft 6 in');
  });

  it('names boards by fractions of an inch, as the sheets do, unless the view says otherwise', () => {
    const outline = { shape: 'rectangle', length: '14 ft', width: '9 ft' } as const;
    const forms = { board: { nominal: '2x6' }, stock: ['16 ft'] } as const;
    const pad = reckonJob({
      version: 1,
      elements: [{ name: 'Pad', outline, thickness: '5 in', forms }],
    });
    const kind = (view?: Parameters<typeof purchaseRows>[1]) =>
      purchaseRows(pad, view).find(({ item }) => item === 'board')?.kind;
    expect(kind()).toBe('1-1/2 in × 5-1/2 in × 16 ft');
    expect(kind({ feet: 'tenths' })).toBe('1.5 in × 5.5 in × 16 ft');
    expect(purchaseRows(walk, { system: 'customary' }).map(({ quantity }) => quantity)).toContain(
      '56 ft 6 in',
    );
  });

  it('has the plan that cuts the bars of several elements', () => {
    const slab = { ...walk.takeoff };
    expect(slab.figures.elements.length).toBe(2);
    const outline = { shape: 'rectangle', length: '14 ft', width: '9 ft' } as const;
    const bars = { bar: '#4', spacing: '18 in' } as const;
    const two = reckonJob({
      version: 1,
      elements: [
        { name: 'a', outline, thickness: '5 in', bars },
        { name: 'b', outline, thickness: '5 in', bars },
      ],
    });
    const page = jobHtml('Yard', two, 'crew');
    expect(two.parts.some((one) => one.part === 'cutting')).toBe(true);
    expect(page).toContain('Bar cutting list');
    expect(page).not.toContain('Job take-off');
  });

  it('ends no line within a mixed number, nor between a number and its unit', () => {
    const outline = { shape: 'rectangle', length: '14 ft', width: '9 ft' } as const;
    const forms = { board: { nominal: '2x6' }, stock: ['10 ft'] } as const;
    const edge = reckonJob({ version: 1, elements: [{ name: 'a', outline, thickness: '5 in', forms }] });
    const page = jobHtml('Pad 1-1/2', edge, 'yard');
    expect(page).toContain(
      'Board, <span class="whole">1-1/2 in</span> × <span class="whole">5-1/2 in</span>',
    );
    expect(page).toContain('<title>Pad 1-1/2</title>');
    expect(page).toContain('<h1><bdi>Pad <span class="whole">1-1/2</span></bdi></h1>');
    const sign = (text: string): string[] =>
      [...textTag('p', text).matchAll(/<span class="whole">(.*?)<\/span>/g)].map(
        ([, whole]) => whole as string,
      );
    expect(sign('falls 12 ft 6-1/2 in at 9:02 AM, 10 h 46 min, below 50 °F, for 14,447.45 USD')).toEqual([
      '12 ft 6-1/2 in',
      '9:02 AM',
      '10 h 46 min',
      '50 °F',
      '14,447.45 USD',
    ]);
    expect(sign('2,36 kg/m² und 3 × 9.00 yd3, 64 fl oz')).toEqual(['2,36 kg/m²', '9.00 yd3', '64 fl oz']);
    expect(sign('7 panels, side 1, #4, <b>8 cmx</b>')).toEqual([]);
  });
});
