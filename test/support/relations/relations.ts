/**
 * Relations that must hold for every calculation, whatever the job: the same job written, turned, moved or
 * listed another way gives the same answer, a larger one gives more, a worse one no better verdict.
 *
 * Each takes an input that the calculation accepts and makes another of it; both results are compared.
 */
import { Quantity } from '../../../src/quantity/quantity';
import { valueText } from '../../../src/report/view';
import {
  at,
  keysOf,
  mapLeaves,
  mapObjects,
  measured,
  measuredPaths,
  put,
  timesFactor,
  typed,
} from './inputs';
import type { Chance } from './random';
import { type AnyResult, cautionsDiffer, figuresDiffer } from './results';

export interface Relation {
  readonly name: string;
  /** True where the other input must be accepted as the first is. */
  readonly sameJob: boolean;
  /** Another input made of this one, or nothing where the relation does not speak of it. */
  readonly other: (id: string, input: unknown, chance: Chance) => unknown;
  /** What is wrong between the two results, or nothing. */
  readonly objection: (
    id: string,
    a: AnyResult,
    b: AnyResult,
    inputs: readonly [unknown, unknown],
  ) => string | undefined;
}

/**
 * What is marked with a tape is rounded to sixteenths or to millimeters, and what is said for a stretch or a
 * layer is said for 100 ft or 100 m, for an inch or a centimeter.
 */
const BY_UNIT = new Set([
  'mark',
  'riserMark',
  'treadMark',
  'marks',
  'volumePerStretch',
  'rateForUnitDepth',
  'markedDifference',
  'reach',
  'coverDue',
]);

/** Plans laid out on the tape. */
const ON_THE_TAPE: Readonly<Record<string, readonly string[]>> = {
  'joint-layout': ['joints', 'panels', 'search', 'sawing', 'contraction', 'isolationBoard', 'givesWay'],
  'rebar-layout': ['bars', 'length', 'lengths'],
  'mesh-layout': ['laid', 'laidLength'],
  'steel-minimum': ['bars', 'areaPerFoot', 'areaPerMeter', 'style'],
  // Rules are told in the numbers of the job.
  'joint-spacing': ['rule'],
  // Ten degrees Fahrenheit or five Celsius warmer.
  'day-plan': ['ifHotter', 'ifColder', 'ifWindier'],
};

/** Bars and sheets are cut to whole sixteenths or millimeters. */
const CUT_TO_THE_TAPE: Readonly<Record<string, number>> = {
  'rebar-layout': 2e-3,
  'mesh-layout': 2e-3,
  // No lap is shorter than 12 in, or 300 mm.
  'lap-length': 2e-2,
};

const everything = (id: string, a: AnyResult, b: AnyResult): string | undefined => {
  const left = new Set([...BY_UNIT, ...(ON_THE_TAPE[id] ?? [])]);
  const near = CUT_TO_THE_TAPE[id];
  return figuresDiffer(a, b, near ? { left, near } : { left }) ?? cautionsDiffer(a, b);
};

/** Where something lies is no longer the same; how much there is of it is. */
const PLACES = new Set([
  // A turn makes one of the other.
  'mark',
  'panel',
  'use',
  'binding',
  'along',
  'across',
  'alongX',
  'alongY',
  'direction',
  'x',
  'y',
  'at',
  'from',
  'to',
  'centroid',
  'thinnest',
  'thickest',
  'order',
  'number',
  'opening',
]);

const everythingButPlaces = (_: string, a: AnyResult, b: AnyResult): string | undefined =>
  figuresDiffer(a, b, { left: PLACES, anyOrder: true }) ?? cautionsDiffer(a, b);

/** Dimensions whose units in both systems are finite decimals of each other. */
const OTHER_UNIT: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  length: { ft: 'm', in: 'mm', 'ft-in': 'm', yd: 'm', m: 'in', mm: 'in', cm: 'in' },
  area: { ft2: 'm2', in2: 'mm2', yd2: 'm2', acre: 'm2' },
  volume: { yd3: 'm3', ft3: 'm3', gal: 'L', qt: 'L', 'fl oz': 'mL' },
  mass: { lb: 'kg', ton: 'kg', oz: 'g' },
};

/** The exact number in the other unit; metric lengths only where inches come out short. */
function inOtherUnit(q: Quantity): unknown {
  const { unit } = q;
  const wanted = OTHER_UNIT[q.dimension]?.[unit];
  if (!wanted) return undefined;
  const value = q
    .format(wanted as never, { places: 20 } as never)
    .replace(/ .*$/, '')
    .replace(/(\.\d*?)0+$/, '$1');
  return value.length > 18 ? undefined : typed(value.replace(/\.$/, ''), wanted);
}

/** Defaults follow what the trade in each system buys, 20 ft or 6 m: another default is another job. */
function otherDefaults(a: AnyResult, b: AnyResult): boolean {
  if (a.assumed.length !== b.assumed.length) return true;
  return a.assumed.some(({ name, value: assumed }, i) => {
    const other = b.assumed[i];
    const [value, theirs] = [valueText(assumed), other && valueText(other.value)];
    const [p, q] = [measured(value, undefined), measured(theirs, undefined)];
    if (p && q) return p.dimension !== q.dimension || p.compareTo(q) !== 0;
    return name !== other?.name || (/\d/.test(value) && value !== theirs);
  });
}

/** What is asked for by the codes of each system, each in its own round numbers: 4,500 psi and 32 MPa, 400 ft2 to the gallon
 * and 10 m2 to the liter, an inch of slump for a gallon in a yard and 25 mm for 5 L in a cubic meter, joints of walks
 * every 5 ft and every 1.5 m, and 1 in or 25 mm deep at least. */
const OWN_RULES: readonly string[] = [
  'mix-requirements',
  'finish-materials',
  'delivery-ticket',
  'joint-spacing',
];

/** A price for a square foot and one for a square meter are each rounded to the cent; loads of a table are 1 ft3 or 28 L. */
const OWN_FIGURES: Readonly<Record<string, ReadonlySet<string>>> = {
  'job-bid': new Set(['pricePerArea']),
  'truck-plan': new Set(['publishedLoads']),
};

const otherSystem: Relation = {
  name: 'the other unit system',
  sameJob: true,
  other: (id, input) =>
    OWN_RULES.includes(id)
      ? undefined
      : mapLeaves(input, (leaf, key) => {
          const q = measured(leaf, key);
          return (q && inOtherUnit(q)) ?? leaf;
        }),
  objection: (id, a, b) => {
    if (otherDefaults(a, b)) return undefined;
    const left = OWN_FIGURES[id];
    return left ? (figuresDiffer(a, b, { left }) ?? cautionsDiffer(a, b)) : everything(id, a, b);
  },
};

/** Lists in which order means nothing. */
const FREE_LISTS: Readonly<Record<string, readonly string[]>> = {
  'slab-volume': ['openings', 'beams'],
  'probed-volume': ['probes'],
  'thickness-check': ['samples'],
  'footing-volume': ['footings'],
  'pier-volume': ['piers'],
  'wall-volume': ['walls'],
  'bar-cutting': ['pieces', 'stock'],
  'form-materials': ['runs', 'stock', 'formed'],
  'joint-layout': ['openings', 'isolation', 'fixed'],
  'grade-correction': ['spots', 'falls', 'thicknesses'],
  'drainage-check': ['spots', 'sills'],
  'form-grades': ['fixed', 'falls', 'stakes'],
  runoff: ['areas'],
  'concrete-order': ['elements'],
  'balance-load': ['tickets'],
  'job-takeoff': ['mixes'],
  'job-bid': ['lines', 'options', 'changes'],
  'invoice-check': ['elements', 'tickets', 'pastJobs'],
};

const otherOrder: Relation = {
  name: 'another order of a list',
  sameJob: true,
  other: (id, input, { pick, shuffled }) => {
    const lists = (FREE_LISTS[id] ?? []).filter((key) => {
      const list = at(input, [key]);
      return Array.isArray(list) && list.length > 1;
    });
    if (lists.length === 0) return undefined;
    const key = pick(lists);
    return put(input, [key], shuffled(at(input, [key]) as unknown[]));
  },
  objection: everythingButPlaces,
};

type Turned = (p: { x: Quantity; y: Quantity }) => { x: string; y: string };

const text = (q: Quantity): string => {
  const { value, unit } = q;
  return typed(value, unit);
};

/** Keys that say a direction, or a place other than by `x` and `y`. */
const DIRECTED = [
  'alongX',
  'alongY',
  'spacingX',
  'spacingY',
  'grid',
  'depths',
  'levels',
  'legs',
  'rise',
  'edges',
  'along',
  'across',
  'thicknessAt',
  'dowels',
  'steps',
  'lines',
  'linesAcross',
  'spacingAcross',
  'barAcross',
  'angle',
  'angleAcross',
  'atOrigin',
  'module',
  'cutTo',
  'direction',
  'corner',
  'position',
  'rotate',
  'baseline',
  'line',
  'radius',
  'section',
  'sections',
  'offset',
  'runs',
  'formed',
];

/** Outlines that stand where their first corner is; a rectangle is the polygon of its corners. */
function asPolygon(object: Record<string, unknown>): Record<string, unknown> {
  if (object['shape'] !== 'rectangle' || 'at' in object || 'x' in object) return object;
  const { length: l, width: w } = object as { length: string; width: string };
  const nothing = `0 ${/[a-z'"]+$/.exec(l.trim())?.[0] ?? 'in'}`;
  const zero = { x: nothing, y: nothing };
  return {
    shape: 'polygon',
    points: [zero, { x: l, y: nothing }, { x: l, y: w }, { x: nothing, y: w }],
  };
}

function placed(input: unknown): unknown {
  if (DIRECTED.some((key) => keysOf(input).has(key))) return undefined;
  const polygons = mapObjects(input, asPolygon);
  const shapes = new Set<unknown>();
  mapObjects(polygons, (object) => {
    if ('shape' in object) shapes.add(object['shape']);
    return object;
  });
  if ([...shapes].some((shape) => shape !== 'polygon')) return undefined;
  return keysOf(polygons).has('x') ? polygons : undefined;
}

const asQuantity = (value: unknown): Quantity | undefined => measured(value, undefined);

const mapPlaces = (input: unknown, f: Turned): unknown =>
  mapObjects(input, (object) => {
    const [x, y] = [asQuantity(object['x']), asQuantity(object['y'])];
    return x && y ? { ...object, ...f({ x, y }) } : object;
  });

/** A long side is doubted where it is given as a measurement, and not between the corners of a polygon. */
function withoutDoubtedSides(result: AnyResult): AnyResult {
  const isSide = ({ code, input = '' }: AnyResult['cautions'][number]): boolean =>
    code === 'unusual' && input.includes('outline');
  return { ...result, cautions: result.cautions.filter((caution) => !isSide(caution)) };
}

const placesMoved = (id: string, a: AnyResult, b: AnyResult): string | undefined =>
  everythingButPlaces(id, withoutDoubtedSides(a), withoutDoubtedSides(b));

const moved = (name: string, f: (chance: Chance) => Turned): Relation => ({
  name,
  sameJob: true,
  other: (id, input, chance) => {
    // An element of a job is turned about a place of its own, which moves with it.
    if (id === 'job-takeoff' && keysOf(input).has('turned')) return undefined;
    const before = placed(input);
    return before === undefined ? undefined : mapPlaces(before, f(chance));
  },
  objection: placesMoved,
});

const quarterTurn = moved('a quarter turn', () => ({ x, y }) => ({ x: text(y.negated()), y: text(x) }));
/** In a mirror the left edge of a strip is its right one. */
function edgesExchanged(result: AnyResult): AnyResult {
  const joints = (result.figures as Readonly<Record<string, unknown>>)['joints'] as
    | readonly { readonly [name: string]: unknown }[]
    | undefined;
  if (!Array.isArray(joints)) return result;
  const exchanged = joints.map(({ alongEdge, ...joint }) => {
    if (!alongEdge) return joint;
    const { left, right } = alongEdge as { readonly left: unknown; readonly right: unknown };
    return { ...joint, alongEdge: { left: right, right: left } };
  });
  return { ...result, figures: { ...result.figures, joints: exchanged } } as unknown as AnyResult;
}

const mirror: Relation = {
  ...moved('a mirror', () => ({ x, y }) => ({ x: text(x.negated()), y: text(y) })),
  objection: (id, a, b) => placesMoved(id, a, edgesExchanged(b)),
};
const shift = moved('another origin', ({ below }) => {
  const [dx, dy] = [below(2_000_000), below(500_000)];
  const by = (q: Quantity, d: number): string => {
    return text(q.plus(asQuantity(`${d} ft`) as Quantity));
  };
  return ({ x, y }) => ({ x: by(x, dx), y: by(y, dy) });
});

const startCorner: Relation = {
  name: 'another first corner, the other way around',
  sameJob: true,
  other: (_, input, { below }) => {
    if (DIRECTED.some((key) => keysOf(input).has(key))) return undefined;
    let found = false;
    const other = mapObjects(mapObjects(input, asPolygon), (object) => {
      const points = object['points'];
      if (object['shape'] !== 'polygon' || !Array.isArray(points)) return object;
      found = true;
      const from = below(points.length);
      const turned = [...points.slice(from), ...points.slice(0, from)];
      return { ...object, points: below(2) ? turned : turned.reverse() };
    });
    return found ? other : undefined;
  },
  objection: placesMoved,
};

/** Bodies whose figures are geometry alone. */
const SOLIDS: readonly string[] = [
  'slab-volume',
  'footing-volume',
  'wall-volume',
  'pier-volume',
  'curb-volume',
  'step-volume',
  'probed-volume',
];

const POWER: Readonly<Record<string, number>> = { length: 1, area: 2, volume: 3 };

/** Figures that are rules of setting out, which are the same on a wall of twice the size. */
const RULES: readonly string[] = ['volumePerStretch', 'anchorsApart', 'anchorsFromEnd'];

/** Everything twice as large: lengths double, areas are four times, volumes eight times as large. */
const scaling: Relation = {
  name: 'twice as large',
  sameJob: false,
  other: (id, input) => {
    if (!SOLIDS.includes(id)) return undefined;
    const places = measuredPaths(input).filter(({ q }) => q.dimension in POWER);
    return places.reduce<unknown>((all, { path, q }) => {
      const { value, unit } = q;
      return put(all, path, typed(times(value, 2 ** (POWER[q.dimension] ?? 0)), unit));
    }, input);
  },
  objection: (_, a, b) => {
    const [one, other] = [scalars(a), scalars(b)];
    for (const [name, q] of one) {
      const p = other.get(name);
      const power = POWER[q.dimension];
      if (power === undefined || RULES.includes(name)) continue;
      if (!p) return `${name} is gone`;
      const ratio = Number(p.value) / Number(q.value);
      if (q.sign() !== 0 && p.unit === q.unit && Math.abs(ratio - 2 ** power) > 1e-6 * ratio) {
        return `${name}: ${ratio} times`;
      }
    }
    return undefined;
  },
};

function times(value: string, factor: number): string {
  const decimals = /\.(\d+)$/.exec(value)?.[1]?.length ?? 0;
  const scaled = (BigInt(value.replace('.', '')) * BigInt(factor)).toString();
  if (decimals === 0) return scaled;
  const sign = scaled.startsWith('-') ? '-' : '';
  const digits = scaled.replace('-', '').padStart(decimals + 1, '0');
  return `${sign}${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}

function scalars(result: AnyResult): Map<string, Quantity> {
  const out = new Map<string, Quantity>();
  for (const [name, figure] of Object.entries(result.figures as Record<string, unknown>)) {
    if (figure instanceof Quantity) out.set(name, figure);
  }
  return out;
}

/** Lists whose members are reckoned each for itself, and the total that they add up to. */
const ADDITIVE: Readonly<Record<string, readonly [list: string, each: string, total: string]>> = {
  'footing-volume': ['footings', 'volumes', 'volume'],
  'wall-volume': ['walls', 'volumes', 'volume'],
  'pier-volume': ['piers', 'volumes', 'volume'],
};

/** A part listed twice adds just itself, and the other parts stay as they were. */
const splitting: Relation = {
  name: 'one part more',
  sameJob: false,
  other: (id, input) => {
    const list = at(input, [ADDITIVE[id]?.[0] ?? '']);
    if (!Array.isArray(list) || list.length > 20) return undefined;
    return put(input, [ADDITIVE[id]?.[0] ?? ''], [...list, list[0]]);
  },
  objection: (id, a, b) => {
    const [, each = '', sum = ''] = ADDITIVE[id] ?? [];
    const parts = at(a.figures, [each]) as readonly Quantity[];
    const more = at(b.figures, [each]) as readonly Quantity[];
    const first = parts[0] as Quantity;
    if (more.length !== parts.length + 1) return `${more.length} parts`;
    const changed = [...parts, first].findIndex((q, i) => q.compareTo(more[i] as Quantity) !== 0);
    if (changed >= 0) return `part ${changed} is another`;
    const [before, after] = [at(a.figures, [sum]), at(b.figures, [sum])] as [Quantity, Quantity];
    return after.compareTo(before.plus(first)) === 0
      ? undefined
      : `${sum}: ${before} and ${first} are ${after}`;
  },
};

type Way = 'more' | 'less';

/** `[calculation, input, a worse job has more or less of it, figure, which is then not less or not more]`. */
const WORSE: readonly (readonly [id: string, input: string, way: Way, figure: string, wantsMore: boolean])[] =
  [
    ['slab-volume', 'thickness', 'more', 'volume', true],
    ['base-tonnage', 'depth', 'more', 'mass', true],
    ['base-tonnage', 'compactedDensity', 'more', 'mass', true],
    ['excavation', 'depth', 'more', 'bankVolume', true],
    ['excavation', 'swell', 'more', 'looseVolume', true],
    ['thickness-check', 'specified', 'more', 'tooThin', true],
    ['concrete-order', 'volume', 'more', 'order', true],
    ['concrete-order', 'allowance', 'more', 'order', true],
    ['bag-count', 'volume', 'more', 'bags', true],
    ['bag-count', 'allowance', 'more', 'bags', true],
    ['fiber-dosage', 'volume', 'more', 'fibers', true],
    ['joint-spacing', 'thickness', 'less', 'spacing', false],
    ['joint-spacing', 'slump', 'more', 'spacing', false],
    ['joint-spacing', 'aggregateSize', 'less', 'spacing', false],
    ['lap-length', 'cover', 'less', 'lap', true],
    ['lap-length', 'spacing', 'less', 'lap', true],
    ['lap-length', 'strength', 'less', 'lap', true],
    ['relative-stiffness', 'thickness', 'more', 'radius', true],
    ['relative-stiffness', 'subgrade', 'more', 'radius', false],
    ['runoff', 'intensity', 'more', 'flow', true],
    ['steel-minimum', 'thickness', 'more', 'along', true],
    ['rebar-layout', 'spacing', 'less', 'weight', true],
    ['curb-volume', 'length', 'more', 'volume', true],
    ['drainage-check', 'away', 'more', 'slope', false],
    ['saw-window', 'placedAt', 'more', 'start', true],
    ['evaporation-rate', 'humidity', 'less', 'rate', true],
    ['day-plan', 'area', 'more', 'finishingTime', true],
    ['day-plan', 'area', 'more', 'finishersNeeded', true],
    ['day-plan', 'placingTime', 'more', 'placingTime', true],
    ['truck-plan', 'volume', 'more', 'ends', true],
    ['truck-plan', 'travelTime', 'more', 'oldest', true],
  ];

const worse: Relation = {
  name: 'a worse job',
  sameJob: false,
  other: (id, input, { pick, next }) => {
    const rules = WORSE.filter(([of, key]) => of === id && measured(at(input, [key]), key));
    if (rules.length === 0) return undefined;
    const [, key, way] = pick(rules);
    const q = measured(at(input, [key]), key) as Quantity;
    if (q.sign() <= 0) return undefined;
    const factor = way === 'more' ? 1 + next() * 0.5 : 1 - next() * 0.4;
    return put(input, [key], timesFactor(q, factor));
  },
  objection: (id, a, b, [before, after]) => {
    for (const [of, key, , figure, wantsMore] of WORSE) {
      if (of !== id || at(before, [key]) === at(after, [key])) continue;
      const [p, q] = [at(a.figures, [figure]), at(b.figures, [figure])] as unknown[];
      if (!(p instanceof Quantity && q instanceof Quantity) || p.dimension !== q.dimension) continue;
      if (wantsMore ? q.compareTo(p) < 0 : q.compareTo(p) > 0) return `${figure}: ${p}, then ${q}`;
    }
    return undefined;
  },
};

export const RELATIONS: readonly Relation[] = [
  otherSystem,
  otherOrder,
  quarterTurn,
  mirror,
  shift,
  startCorner,
  scaling,
  splitting,
  worse,
];
