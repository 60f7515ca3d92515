/** The options that every plan takes, the ids and names that plans have, and what names people give do to them. */
import { describe, expect, it } from 'vitest';
import {
  dayTimeline,
  jointPlan,
  type Language,
  matPlan,
  matSection,
  meshPlan,
  outlinePlan,
  type PlanOptions,
  surfacePlan,
  thicknessPlan,
  truckTimeline,
} from '../../src/drawing/index';
import { InputError } from '../../src/index';

interface Plans {
  readonly [name: string]: (options?: PlanOptions) => string;
}

const yard = { shape: 'rectangle', length: '28 ft', width: '18 ft' } as const;
const yardMetric = { shape: 'rectangle', length: '8.5 m', width: '5.4 m' } as const;
const rows = [
  [0, 0, 100],
  [28, 0, 100.02],
  [0, 18, 99.6],
  [28, 18, 99.5],
  [14, 9, 99.5],
] as const;
const lines = [{ kind: 'building', name: 'bakery wall', along: ['row 1', 'row 2'] }] as const;

const PLANS: Plans = {
  day: (options) =>
    dayTimeline(
      {
        startAt: '13:00',
        area: '960 ft2',
        placingTime: '60 min',
        finish: 'broom',
        finishers: 3,
        finishRate: { area: '160 ft2', in: '1 h' },
        saw: 'early-entry',
        sunset: '18:20',
        workTo: '17:00',
      },
      options,
    ),
  trucks: (options) =>
    truckTimeline(
      {
        volume: '38 yd3',
        truckCapacity: '10 yd3',
        placing: { kind: 'chute', rate: '20 yd3/h' },
        travelTime: '55 min',
        trucks: 3,
      },
      options,
    ),
  outline: (options) =>
    outlinePlan(
      { outline: yard, openings: [{ shape: 'circle', at: { x: '5 ft', y: '5 ft' }, diameter: '1 ft' }] },
      options,
    ),
  thickness: (options) =>
    thicknessPlan({ outline: yard, probes: [{ x: '2 ft', y: '2 ft', depth: '4 in' }] }, options),
  joints: (options) =>
    jointPlan(
      {
        outline: yard,
        thickness: '5 in',
        spacing: '12 ft',
        isolation: [{ against: 'building', from: { x: '0 ft', y: '0 ft' }, to: { x: '28 ft', y: '0 ft' } }],
      },
      options,
    ),
  mats: (options) =>
    matPlan({ outline: yard, mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }] }, options),
  section: (options) =>
    matSection(
      {
        outline: yard,
        mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in', faceCover: '2 in' }],
        thickness: '6 in',
      },
      options,
    ),
  mesh: (options) =>
    meshPlan({ outline: yard, form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' }, options),
  surface: (options) =>
    surfacePlan(
      { surface: { table: { unit: 'ft', rows }, lines }, stakes: [{ name: 'S1', x: '28 ft', y: '18 ft' }] },
      options,
    ),
};

const METRIC: Plans = {
  day: (options) =>
    dayTimeline(
      {
        startAt: '13:00',
        area: '90 m2',
        placingTime: '60 min',
        finish: 'stamp',
        finishers: 3,
        finishRate: { area: '15 m2', in: '1 h' },
      },
      options,
    ),
  trucks: (options) =>
    truckTimeline(
      {
        volume: '30 m3',
        truckCapacity: '7.5 m3',
        placing: { kind: 'chute', rate: '15 m3/h' },
        travelTime: '55 min',
        trucks: 3,
      },
      options,
    ),
  outline: (options) =>
    outlinePlan(
      {
        outline: yardMetric,
        openings: [{ shape: 'circle', at: { x: '2 m', y: '2 m' }, diameter: '300 mm' }],
      },
      options,
    ),
  thickness: (options) =>
    thicknessPlan({ outline: yardMetric, probes: [{ x: '2 m', y: '2 m', depth: '112 mm' }] }, options),
  joints: (options) => jointPlan({ outline: yardMetric, thickness: '125 mm', spacing: '3.5 m' }, options),
  mats: (options) =>
    matPlan({ outline: yardMetric, mats: [{ layer: 'bottom', bar: '12 mm', spacing: '300 mm' }] }, options),
  section: (options) =>
    matSection(
      {
        outline: yardMetric,
        mats: [{ layer: 'bottom', bar: '12 mm', spacing: '300 mm' }],
        thickness: '150 mm',
      },
      options,
    ),
  mesh: (options) =>
    meshPlan({ outline: yardMetric, form: 'sheets', pieceLength: '4.8 m', pieceWidth: '2.4 m' }, options),
  surface: (options) =>
    surfacePlan(
      {
        surface: {
          table: {
            unit: 'm',
            rows: [
              [0, 0, 1],
              [5, 0, 1.02],
              [0, 5, 0.9],
            ],
          },
        },
      },
      options,
    ),
};

const all = Object.entries(PLANS);

/** Every text on a plan, with its title and description. */
const textsOf = (svg: string): string[] =>
  [...svg.matchAll(/<(?:text|title|desc)[^>]*>([^<]*)</g)].map(([, text = '']) => text);

const idsOf = (svg: string): string[] => [...svg.matchAll(/ id="([^"]*)"/g)].map(([, id = '']) => id);

const refused = (draw: () => unknown): string => {
  try {
    draw();
    return 'drawn';
  } catch (error) {
    return error instanceof InputError ? `${error.issues[0]?.path}: ${error.issues[0]?.code}` : 'other';
  }
};

describe('units of plans', () => {
  const CUSTOMARY = /[\d/] (?:in|ft|yd)\b|in ft$/m;
  const METRIC_UNIT = /\d (?:mm|cm|m)\b/;

  it.each(all)('of a customary %s plan are feet and inches', (_, draw) => {
    expect(textsOf(draw()).join('\n')).not.toMatch(METRIC_UNIT);
  });

  it.each(Object.entries(METRIC))('of a metric %s plan are meters and millimeters', (_, draw) => {
    expect(textsOf(draw()).join('\n')).not.toMatch(CUSTOMARY);
  });

  it.each(all)('of a %s plan are those asked for', (_, draw) => {
    const text = textsOf(draw({ system: 'metric' })).join('\n');
    expect(text).not.toMatch(CUSTOMARY);
    expect(textsOf(draw({ system: 'metric', locale: 'de-DE' })).join('\n')).not.toMatch(/\d\.\d/);
  });

  it('are to the mark of the tape', () => {
    const svg = outlinePlan({ outline: { shape: 'rectangle', length: '12.34 ft', width: '3.1 m' } });
    expect(textsOf(svg)).toContain('12 ft 4-1/16 in');
    const metric = outlinePlan({ outline: { shape: 'rectangle', length: '3.1234 m', width: '801.7 mm' } });
    expect(textsOf(metric)).toEqual(expect.arrayContaining(['3.123 m', '802 mm']));
  });
});

describe('names and ids of plans', () => {
  it.each(all)('a %s plan is an image with a title and a description', (_, draw) => {
    const svg = draw();
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    const [, labelled = ''] = /aria-labelledby="([^"]*)"/.exec(svg) ?? [];
    expect(labelled.split(' ')).toEqual(idsOf(svg));
    expect(svg).toMatch(/<title id="[^"]+">[^<]+<\/title><desc id="[^"]+">[^<]+<\/desc>/);
    expect(svg).not.toMatch(/url\(|href|<script|<style/);
  });

  it('share no id, and are the same at every run', () => {
    const ids = all.flatMap(([, draw]) => idsOf(draw()));
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, draw] of all) expect(draw()).toBe(draw());
    const others = all.flatMap(([, draw]) => idsOf(draw({ title: 'Another' })));
    expect(others.filter((id) => ids.includes(id))).toEqual([]);
  });

  it('begin with what is asked for', () => {
    for (const [, draw] of all) expect(idsOf(draw({ id: 'yard' }))).toEqual(['yard-title', 'yard-desc']);
  });

  it.each(all)('a %s plan has the heading that is given', (_, draw) => {
    expect(textsOf(draw({ title: 'Rear yard' })).filter((text) => text === 'Rear yard')).toHaveLength(2);
  });
});

describe('size and colors of plans', () => {
  it.each(all)('a %s plan has no text smaller than asked for', (_, draw) => {
    for (const textSize of [6, 12, 40]) {
      const svg = draw({ textSize });
      const sizes = [...svg.matchAll(/font-size="([^"]*)"/g)].map(([, size]) => Number(size));
      expect(Math.min(...sizes)).toBe(textSize);
    }
    expect(draw({ width: 816 })).toContain('viewBox="0 0 816 ');
    expect(draw()).toContain('viewBox="0 0 390 ');
  });

  it.each(all)('a %s plan has ink and paper alone', (_, draw) => {
    const used = (options?: PlanOptions): string[] =>
      [...new Set([...draw(options).matchAll(/ (?:fill|stroke)="([^"]*)"/g)].map(([, c = '']) => c))].sort();
    expect(used()).toEqual(['#000', '#fff', 'none']);
    expect(used({ colors: 'dark' })).toEqual(['#111', '#eee', 'none']);
    expect(used({ colors: 'transparent' })).toEqual(['currentColor', 'none']);
    expect(used({ colors: { ink: 'navy' } })).toEqual(['navy', 'none']);
  });

  it('of a plan are refused where they cannot be', () => {
    const tries: [unknown, string][] = [
      [{ width: 0 }, 'width: wrong-type'],
      [{ width: '390' }, 'width: wrong-type'],
      [{ textSize: Number.NaN }, 'textSize: wrong-type'],
      [{ colors: 'red' }, 'colors: unknown-choice'],
      [{ colors: { ink: '"><script>' } }, 'colors.ink: wrong-type'],
      [{ id: 'a b' }, 'id: wrong-type'],
      [{ system: 'imperial' }, 'system: unknown-choice'],
      [{ language: { Plan: 3 } }, 'language: wrong-type'],
      [{ locale: 'no such tag' }, 'locale: wrong-type'],
      [{ colour: 'dark' }, 'colour: unknown-key'],
      [{ title: 3 }, 'title: wrong-type'],
      [7, ': wrong-type'],
    ];
    for (const [options, expected] of tries) {
      expect(
        refused(() => outlinePlan({ outline: yard }, options as never)),
        JSON.stringify(options),
      ).toMatch(
        expected.startsWith(':') || expected.startsWith('locale')
          ? /wrong-type/
          : new RegExp(`^${expected}$`),
      );
    }
    for (const options of [null, undefined, {}]) {
      expect(outlinePlan({ outline: yard }, options as never)).toContain('28 ft');
    }
  });
});

describe('the language of plans', () => {
  it('comes from a map of English sentences, and their holes stay holes', () => {
    const language: Language = {
      Plan: 'Plano',
      'round opening, {diameter} across, center {center}':
        'hueco redondo, centro {center}, {diameter} de ancho',
    };
    const texts = textsOf(PLANS['outline']?.({ language }) ?? '');
    expect(texts[0]).toBe('Plano');
    expect(texts.join(' ')).toContain('hueco redondo, centro (5 ft; 5 ft), 1 ft de ancho');
    const side = textsOf(PLANS['joints']?.({ language: { building: 'edificio' } }) ?? '');
    expect(side).toContain('edificio');
  });
});

describe('names on plans', () => {
  const HOSTILE = [
    '<script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    "' onload='x",
    ']]> & &amp; &#0; \u0000\u0007',
    '\u202eright to left\u2066\u200f',
    'a\nb\tc',
    'Z\u0301\u0302\u0303\u0304\u0305\u0306 stacked',
    '\ud800 half a sign',
    '日本語のパン屋',
  ];

  it('are text and nothing else, in the heading and beside lines and stakes', () => {
    for (const name of HOSTILE) {
      const short = name.slice(0, 60);
      const along = ['row 1', 'row 2'];
      const svg = surfacePlan(
        {
          surface: { table: { unit: 'ft', rows }, lines: [{ kind: 'building', name: short, along }] },
          stakes: [{ name: short, x: '28 ft', y: '18 ft', mark: short }],
        },
        { title: name },
      );
      expect(svg).not.toMatch(/<script|<img|on(?:load|error)="/);
      expect(svg).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      const tags = new Set([...svg.matchAll(/<([a-z]+)/g)].map(([, tag]) => tag));
      expect([...tags].sort()).toEqual(expect.not.arrayContaining(['script', 'img', 'image', 'a']));
    }
  });

  it('are cut short where they are very long', () => {
    for (const [, draw] of all) {
      const svg = draw({ title: 'Bakery yard '.repeat(1000) });
      const [title = ''] = textsOf(svg);
      expect(title.length).toBeLessThanOrEqual(200);
      expect(title).toMatch(/…$/);
      expect(svg.match(/class="title"/g)).toHaveLength(3);
      expect(draw({ title: '' })).toBe(draw());
    }
  });
});
