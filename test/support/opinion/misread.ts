/** Slips in taking what is given: a measurement misread, misheard, or keyed in wrongly. Common practice of the trade. */
import type { SlipCode } from '../../../src/index';
import { mapLeaves, type Path, put } from '../relations/inputs';
import type { Chance } from '../relations/random';
import { type Job, nameOf } from './jobs';
import type { Kind, Made } from './slip';

/** What somebody takes for what is written, in one or more ways. */
type Misreading = (text: string, name: string, chance: Chance) => readonly (string | undefined)[];

interface Place {
  readonly path: Path;
  readonly at: string;
  readonly leaf: string | number;
}

const pathText = (path: Path): string =>
  path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text ? `${text}.${key}` : key),
    '',
  );

/** Names of things and choices are not misread as numbers are. */
const NO_SIZE = /^(bar|style|name|grade|table|nominal|unit|per|in|version|at|kind|shape|series)$/;

export function placesIn(input: unknown): Place[] {
  const found: Place[] = [];
  mapLeaves(input, (leaf, _, path) => {
    const sized = !path.some((key) => NO_SIZE.test(String(key)));
    if (sized && (typeof leaf === 'number' || (typeof leaf === 'string' && /\d/.test(leaf))))
      found.push({ path, at: pathText(path), leaf });
    return leaf;
  });
  return found;
}

const leafKind = (name: string, codes: readonly SlipCode[], weight: number, misread: Misreading): Kind => ({
  weight,
  made: (job, chance) =>
    placesIn(job.input).flatMap(({ path, at, leaf }) =>
      misread(String(leaf), nameOf(path), chance)
        .filter((text) => text !== undefined && text !== String(leaf))
        .map((text): Made => {
          const taken = typeof leaf === 'number' ? Number(text) : text;
          return { name, codes, input: at, taken: put(job.input, path, taken) };
        }),
    ),
});

const simple = (text: string): readonly [number: string, unit: string] | undefined => {
  const [, number, unit] = /^(\d+(?:\.\d+)?) ?([A-Za-z%][^\s:]*)?$/.exec(text) ?? [];
  return number === undefined || Number(number) === 0 ? undefined : [number, unit ?? ''];
};
const withUnit = (number: string | number, unit: string): string =>
  unit ? `${number} ${unit}` : String(number);

/** Of a number with one unit. */
const numbered =
  (change: (number: string, unit: string, chance: Chance, name: string) => string | undefined): Misreading =>
  (text, name, chance) => {
    const read = simple(text);
    return read ? [change(...read, chance, name)] : [];
  };

/** Of the digits alone, whatever stands around them. */
const digits =
  (change: (digits: string, chance: Chance) => string | undefined): Misreading =>
  (text, _, chance) => {
    const first = /\d+(?:\.\d+)?/.exec(text)?.[0];
    const other = first && change(first, chance);
    return first && other && Number(other) > 0 ? [text.replace(first, other)] : [];
  };

const LOOKALIKE: Readonly<Record<string, string>> = {
  1: '7',
  7: '1',
  3: '8',
  8: '3',
  6: '0',
  5: '6',
  4: '9',
  9: '4',
};

export function transposed(number: string, { below }: Chance): string | undefined {
  const i = below(number.length - 1);
  const [a, b] = [number[i] ?? '', number[i + 1] ?? ''];
  return /\d\d/.test(a + b) && a !== b ? number.slice(0, i) + b + a + number.slice(i + 2) : undefined;
}
export function misread(number: string, { below }: Chance): string | undefined {
  const i = below(number.length);
  const other = LOOKALIKE[number[i] ?? ''];
  return other && number.slice(0, i) + other + number.slice(i + 1);
}
function dropped(number: string, { below }: Chance): string | undefined {
  const i = below(number.length);
  return number.length > 1 && number[i] !== '.' ? number.slice(0, i) + number.slice(i + 1) : undefined;
}
function doubledDigit(number: string, { below }: Chance): string | undefined {
  const i = below(number.length);
  return number[i] === '.' ? undefined : number.slice(0, i + 1) + number.slice(i);
}
const plain = (x: number): string => String(Number(x.toPrecision(8)));

const SLOPE = /slope|fall|across|along|grade|cross|pitch/i;
const SHARE = /allowance|waste|looser|settles|shrink|swell|tax|markup|overhead|band|extra|over/i;

const times = (factor: number): Misreading =>
  numbered((n, unit) => withUnit(plain(Number(n) * factor), unit));
const renamed = (from: RegExp, to: string): Misreading =>
  numbered((n, unit) => (from.test(unit) ? withUnit(n, to) : undefined));

const oneOff: Misreading = (text, _, { below }) =>
  /^\d+$/.test(text) && Number(text) > 1 ? [String(Number(text) + (below(2) ? 1 : -1))] : [];

const feetInches =
  (change: (feet: string, inches: string) => string | undefined): Misreading =>
  (text) => {
    const [, feet, inches] = /^(\d+) ft (\d+) in$/.exec(text) ?? [];
    return feet && inches && inches !== '0' ? [change(feet, inches)] : [];
  };

const LEAVES: readonly Kind[] = [
  leafKind('inches as feet', ['inches-as-feet'], 3, renamed(/^in$/, 'ft')),
  leafKind('feet as inches', ['feet-as-inches'], 1, renamed(/^ft$/, 'in')),
  leafKind(
    'inches as tenths of a foot',
    ['inches-as-tenths'],
    3,
    numbered((n, unit) => (unit === 'in' && Number(n) < 10 && !n.includes('.') ? `0.${n} ft` : undefined)),
  ),
  leafKind(
    'feet and inches as a decimal',
    ['feet-inches-as-decimal'],
    3,
    feetInches((f, i) => `${f}.${i} ft`),
  ),
  leafKind(
    'inches left off',
    ['inches-left-out'],
    2,
    feetInches((f) => `${f} ft`),
  ),
  leafKind('tenths as inches', ['tenths-as-inches'], 2, (text) => {
    const [, feet, tenth] = /^(\d+)\.(\d) ft$/.exec(text) ?? [];
    return feet && tenth ? [`${feet} ft ${tenth} in`] : [];
  }),
  leafKind('yards for feet', ['wrong-unit'], 1, renamed(/^ft$/, 'yd')),
  leafKind('two digits turned round', ['digits-transposed'], 3, digits(transposed)),
  leafKind('a digit left out', ['digit-dropped'], 2, digits(dropped)),
  leafKind('a digit twice', ['digit-doubled'], 1, digits(doubledDigit)),
  leafKind('a digit misread', ['digit-off'], 2, digits(misread)),
  leafKind('point one place off', ['point-moved'], 2, (text, name, chance) =>
    times(chance.below(2) ? 10 : 0.1)(text, name, chance),
  ),
  leafKind('twice a size', ['doubled', 'part-twice'], 1, times(2)),
  leafKind('half a size', ['halved'], 1, times(0.5)),
  leafKind('one more or less', ['one-off-count', 'digit-off', 'spaces-for-bars'], 2, oneOff),
  leafKind(
    'no allowance',
    ['allowance-missed'],
    3,
    numbered((_, unit, __, name) => (unit === '%' && SHARE.test(name) ? '0%' : undefined)),
  ),
  leafKind(
    'allowance twice',
    ['allowance-twice', 'doubled'],
    2,
    numbered((n, unit, _, name) => (unit === '%' && SHARE.test(name) ? `${2 * Number(n)}%` : undefined)),
  ),
  leafKind(
    'percent a hundredth',
    ['percent-misplaced', 'point-moved'],
    1,
    numbered((n, unit) => (unit === '%' ? `${plain(Number(n) / 100)}%` : undefined)),
  ),
  leafKind(
    'diameter for radius',
    ['diameter-for-radius', 'doubled'],
    3,
    numbered((n, unit, _, name) =>
      /(?:radius|diameter)$/i.test(name) ? withUnit(plain(2 * Number(n)), unit) : undefined,
    ),
  ),
  leafKind(
    'radius for diameter',
    ['radius-for-diameter', 'halved'],
    2,
    numbered((n, unit, _, name) =>
      /(?:radius|diameter)$/i.test(name) ? withUnit(plain(Number(n) / 2), unit) : undefined,
    ),
  ),
  leafKind('slope upside down', ['slope-upside-down'], 2, (text) =>
    /^1:\d/.test(text)
      ? [`${text.slice(2)}:1`]
      : /^\d+(\.\d+)?:1$/.test(text)
        ? [`1:${text.slice(0, -2)}`]
        : [],
  ),
  leafKind(
    'percent for inches in a foot',
    ['slope-unit'],
    3,
    numbered((n, unit, _, name) =>
      unit === 'in/ft' ? `${n}%` : unit === '%' && SLOPE.test(name) ? `${n} in/ft` : undefined,
    ),
  ),
  leafKind(
    'short ton for tonne',
    ['wrong-ton'],
    2,
    numbered((n, unit) => (unit === 'ton' ? `${n} tonne` : unit === 'tonne' ? `${n} ton` : undefined)),
  ),
  leafKind(
    'degrees of the other scale',
    ['temperature-scale'],
    1,
    numbered((n, unit) => (unit === 'degF' ? `${n} degC` : unit === 'degC' ? `${n} degF` : undefined)),
  ),
  leafKind(
    'pounds for kilograms',
    ['wrong-unit'],
    1,
    numbered((n, unit) => (unit === 'kg' ? `${n} lb` : unit === 'lb' ? `${n} kg` : undefined)),
  ),
  leafKind('square yards for square feet', ['wrong-unit'], 1, renamed(/^ft2$/, 'yd2')),
];

/** Pairs that are taken for each other. */
const PAIRS = [
  ['looseDensity', 'compactedDensity'],
  ['width', 'length'],
  ['depth', 'width'],
  ['planned', 'placed'],
  ['height', 'width'],
  ['thickness', 'height'],
] as const;

/** One value of the input for its neighbor. */
const neighbor: Kind = {
  weight: 3,
  made: (job) => {
    const places = placesIn(job.input);
    return PAIRS.flatMap(([a, b]) => [
      [a, b],
      [b, a],
    ]).flatMap(([from, to]) =>
      places
        .filter(({ path }) => path.at(-1) === to)
        .flatMap(({ path, at }) => {
          const other = places.find(
            (one) => pathText(one.path) === pathText([...path.slice(0, -1), from ?? '']),
          );
          return other && typeof other.leaf === 'string'
            ? [
                {
                  name: 'one size for its neighbor',
                  codes: ['other-input'],
                  input: at,
                  taken: put(job.input, path, other.leaf),
                } as const,
              ]
            : [];
        }),
    );
  },
};

interface List {
  readonly path: Path;
  readonly items: readonly unknown[];
}

function listsIn(value: unknown, path: Path = []): List[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = Array.isArray(value) ? [{ path, items: value as unknown[] }] : [];
  const keys = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [...own, ...keys.flatMap((key) => listsIn((value as never)[key], [...path, key]))];
}

const OPENINGS = /openings|voids|holes/;
/** The points of an outline are no parts that one forgets. */
const NO_PARTS = /points|section|rows|table|stock|depths|history|ages|parallel|offsets|stations/;

const parts = (job: Job): List[] =>
  listsIn(job.input).filter(
    ({ path, items }) => items.length > 0 && !path.some((key) => NO_PARTS.test(String(key))),
  );

const without = (job: Job, { path, items }: List, i: number): unknown =>
  put(
    job.input,
    path,
    items.filter((_, j) => j !== i),
  );

const forgotten: Kind = {
  weight: 3,
  made: (job) =>
    parts(job).flatMap((list) =>
      list.items.flatMap((_, i): Made[] => {
        const opening = list.path.some((key) => OPENINGS.test(String(key)));
        if (list.items.length < 2 && !opening) return [];
        const taken = without(job, list, i);
        const input = pathText([...list.path, i]);
        const codes: SlipCode[] = opening ? ['opening-left-out', 'part-left-out'] : ['part-left-out'];
        return [
          { name: opening ? 'opening not taken off' : 'a part forgotten', codes, input, taken, lists: true },
        ];
      }),
    ),
};

const takenTwice: Kind = {
  weight: 2,
  made: (job) =>
    parts(job).flatMap((list) =>
      list.items.map(
        (item, i): Made => ({
          name: 'a part twice',
          codes: ['part-twice'],
          input: pathText([...list.path, i]),
          taken: put(job.input, list.path, [...list.items.slice(0, i), item, ...list.items.slice(i)]),
          lists: true,
        }),
      ),
    ),
};

/** An L, a U or a circle as the rectangle around it. */
const asRectangle: Kind = {
  weight: 3,
  made: (job) => {
    const outline = (job.input as { outline?: { shape?: string; length?: string; width?: string } }).outline;
    if (!outline || (outline.shape !== 'L' && outline.shape !== 'U')) return [];
    const { length, width } = outline;
    const taken = put(job.input, ['outline'], { shape: 'rectangle', length, width });
    return [{ name: 'L as its rectangle', codes: ['notch-left-out'], input: 'outline', taken }];
  },
};

export const MISREAD: readonly Kind[] = [...LEAVES, neighbor, forgotten, takenTwice, asRectangle];
