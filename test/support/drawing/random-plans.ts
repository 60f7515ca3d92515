/** Random jobs, drawn: every kind of plan, crowded ones too. */
import {
  dayTimeline,
  jointPlan,
  matPlan,
  matSection,
  meshPlan,
  outlinePlan,
  type PlanOptions,
  sitePlan,
  surfacePlan,
  thicknessPlan,
  truckTimeline,
} from '../../../src/drawing/index';
import {
  type FormGradesInput,
  InputError,
  type JobElementInput,
  type OpeningInput,
  type OutlineInput,
  type StakeInput,
} from '../../../src/index';
import { inside, type Plan, polygonOf, randomPlan } from '../../steel/outlines';

type Random = () => number;

const between = (random: Random, least: number, most: number): number => least + random() * (most - least);
const whole = (random: Random, least: number, most: number): number =>
  Math.floor(between(random, least, most + 1));
const feet = (n: number): string => `${Math.floor(n)} ft ${Math.floor((n % 1) * 192) / 16} in`;
const meters = (n: number): string => `${n.toFixed(3)} m`;

const NAMES = [
  'bakery wall',
  'W',
  'north-east corner of the yard by the flour store',
  'MMMMMMMMMM',
  'Ofen 日本',
  '9',
];
const nameOf = (random: Random): string => NAMES[whole(random, 0, NAMES.length - 1)] as string;

interface Slab {
  readonly outline: OutlineInput;
  readonly openings: readonly OpeningInput[];
}

/** Small openings in rows over the middle of a rectangle, as crowded as the numbers come. */
function holes(random: Random, long: number, wide: number, tell: (n: number) => string): OpeningInput[] {
  const [nx, ny] = [whole(random, 0, 5), whole(random, 0, 4)];
  const [dx, dy] = [long / (nx + 1), wide / (ny + 1)];
  return Array.from({ length: nx * ny }, (_, i): OpeningInput => {
    const at = { x: tell(dx * ((i % nx) + 0.7)), y: tell(dy * (Math.floor(i / nx) + 0.7)) };
    const size = Math.min(dx, dy) * between(random, 0.1, 0.5);
    return random() < 0.5
      ? { shape: 'circle', at, diameter: tell(size) }
      : { shape: 'rectangle', at, length: tell(size), width: tell(size * between(random, 0.4, 1)) };
  });
}

function rectangle(random: Random): Slab {
  const tell = random() < 0.5 ? feet : meters;
  const size = tell === feet ? 3.3 : 1;
  const [long, wide] = [size * between(random, 2, 14), size * between(random, 1, 12)];
  return {
    outline: { shape: 'rectangle', length: tell(long), width: tell(wide) },
    openings: random() < 0.6 ? holes(random, long, wide, tell) : [],
  };
}

const polygon = ({ outer, openings }: Plan): Slab => ({
  outline: polygonOf(outer),
  openings: openings.map(polygonOf),
});

function round(random: Random): Slab {
  const d = between(random, 2, 12);
  const kinds: OutlineInput[] = [
    { shape: 'circle', diameter: meters(d) },
    { shape: 'ring', outerDiameter: feet(3 * d), innerDiameter: feet(d) },
    {
      shape: 'sector',
      radius: meters(d),
      angle: `${whole(random, 20, 340)} deg`,
      innerRadius: meters(d / 3),
    },
    {
      shape: 'curved',
      points: [
        { x: '0 m', y: '0 m' },
        { x: meters(d), y: '0 m', rise: meters(d / 8) },
        { x: meters(d), y: meters(d / 2) },
        { x: meters(d / 2), y: meters(d / 2), rise: meters(-d / 12) },
        { x: '0 m', y: meters(d / 2) },
      ],
    },
  ];
  return { outline: kinds[whole(random, 0, kinds.length - 1)] as OutlineInput, openings: [] };
}

function slabOf(random: Random): Slab {
  const kind = random();
  if (kind < 0.4) return rectangle(random);
  return kind < 0.7 ? polygon(randomPlan(random)) : round(random);
}

function optionsOf(random: Random): PlanOptions {
  const kind = random();
  if (kind < 0.6) return {};
  if (kind < 0.75) return { width: 816 };
  if (kind < 0.9) return { textSize: 18, title: nameOf(random), locale: 'de-DE' };
  return { textSize: 11, colors: 'dark', system: 'metric' };
}

function probed(random: Random): string {
  const plan = randomPlan(random);
  const probes = Array.from({ length: whole(random, 1, 60) }, () => ({
    x: between(random, -12, 12),
    y: between(random, -12, 12),
  }))
    .filter((p) => inside(p, plan.outer))
    .map(({ x, y }) => ({ x: meters(x), y: meters(y), depth: `${whole(random, 60, 240)} mm` }));
  return thicknessPlan({ outline: polygonOf(plan.outer), probes }, optionsOf(random));
}

function surface(random: Random): string {
  const [nx, ny] = [whole(random, 2, 7), whole(random, 2, 7)];
  const rows = Array.from({ length: nx * ny }, (_, i): [number, number, number] => {
    const [c, r] = [i % nx, Math.floor(i / nx)];
    const edge = c === 0 || r === 0 || c === nx - 1 || r === ny - 1;
    const aside = edge ? 0 : between(random, -1, 1);
    return [c * 5 + aside, r * 4 + aside, Number((100 - r * 0.08 + between(random, -0.15, 0.15)).toFixed(2))];
  });
  const [last, all] = [nx, nx * ny];
  const lines = [
    { kind: 'building' as const, name: nameOf(random), along: ['row 1', `row ${last}`] },
    { kind: 'curb' as const, name: 'curb', along: ['row 1', `row ${all - nx + 1}`] },
    { kind: 'driveway' as const, name: nameOf(random), along: [`row ${all - nx + 1}`, `row ${all}`] },
  ];
  const stakes = Array.from({ length: whole(random, 0, 20) }, (_, i) => ({
    name: `S${i + 1}`,
    x: `${whole(random, -2, 5 * nx)} ft`,
    y: `${whole(random, -2, 4 * ny)} ft`,
    mark: random() < 0.5 ? 'down 2 1/4 in' : nameOf(random),
  }));
  return surfacePlan({ surface: { table: { unit: 'ft', rows }, lines }, stakes }, optionsOf(random));
}

const joints = (random: Random): string => {
  const metric = random() < 0.5;
  const size = between(random, 3, 14);
  const slab: Slab =
    random() < 0.6
      ? {
          outline: { shape: 'rectangle', length: meters(size), width: meters(size / between(random, 1, 3)) },
          openings: [],
        }
      : round(random);
  return jointPlan(
    { ...slab, thickness: metric ? '125 mm' : '5 in', spacing: meters(between(random, 0.9, 4)) },
    optionsOf(random),
  );
};

const mats = (random: Random): string => {
  const layers = random() < 0.3 ? (['bottom', 'top'] as const) : (['bottom'] as const);
  const metric = random() < 0.5;
  const mat = layers.map((layer) => ({
    layer,
    bar: metric ? ('12 mm' as const) : ('#4' as const),
    spacing: meters(between(random, 0.2, 0.6)),
  }));
  return matPlan({ ...slabOf(random), mats: mat }, optionsOf(random));
};

const section = (random: Random): string =>
  matSection(
    {
      ...rectangle(random),
      thickness: `${whole(random, 4, 12)} in`,
      mats: [
        { layer: 'bottom', bar: '#4', spacing: '12 in', faceCover: '1 1/2 in' },
        { layer: 'top', bar: '#5', spacing: '18 in', faceCover: '3/4 in' },
      ],
    },
    optionsOf(random),
  );

const mesh = (random: Random): string =>
  meshPlan(
    { ...slabOf(random), form: 'sheets', pieceLength: '4.8 m', pieceWidth: '2.4 m' },
    optionsOf(random),
  );

const outline = (random: Random): string => {
  const { outline: shape, openings } = slabOf(random);
  return outlinePlan({ outline: shape, openings }, optionsOf(random));
};

const trucks = (random: Random): string =>
  truckTimeline(
    {
      loads: Array.from(
        { length: whole(random, 1, random() < 0.2 ? 90 : 14) },
        () => `${whole(random, 4, 44) / 4} yd3`,
      ),
      placing: { kind: 'rate', rate: `${whole(random, 4, 60)} yd3/h` },
      travelTime: `${whole(random, 0, 90)} min`,
      trucks: whole(random, 1, 7),
      sending: random() < 0.5 ? 'at-once' : 'spaced',
      ...(random() < 0.5 ? { firstTruckAt: `${whole(random, 0, 23)}:${whole(random, 10, 59)}` } : {}),
    },
    optionsOf(random),
  );

const day = (random: Random): string =>
  dayTimeline(
    {
      startAt: `${whole(random, 0, 23)}:${whole(random, 10, 59)}`,
      area: `${whole(random, 50, 3000)} ft2`,
      placingTime: `${whole(random, 10, 240)} min`,
      finish: random() < 0.5 ? 'broom' : 'hard-trowel',
      finishers: whole(random, 1, 6),
      finishRate: { area: `${whole(random, 40, 400)} ft2`, in: '1 h' },
      concreteTemperature: `${whole(random, 40, 105)} degF`,
      ...(random() < 0.5 ? { saw: 'early-entry' } : {}),
      ...(random() < 0.5 ? { sunset: `${whole(random, 15, 22)}:${whole(random, 10, 59)}` } : {}),
      ...(random() < 0.5 ? { workTo: `${whole(random, 0, 23)}:00` } : {}),
    },
    optionsOf(random),
  );

/** Kinds of plan, those with most to write more often. */
const KINDS = [outline, outline, outline, surface, surface, joints, mats, mesh, probed, section, trucks, day];

type Draw = (random: Random) => string;

/** So many random plans; inputs that no plan can be made of are passed over. */
export const randomPlans = (count: number, random: Random): string[] => drawn(KINDS, count, random);

function drawn(kinds: readonly Draw[], count: number, random: Random): string[] {
  const plans: string[] = [];
  for (let i = 0; plans.length < count; i += 1) {
    try {
      plans.push((kinds[i % kinds.length] as Draw)(random));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
  return plans;
}

/** A random job on its site: elements that lie anywhere, over each other too, with falls, heights and joints. */
function site(random: Random): string {
  const metric = random() < 0.5;
  const tell = metric ? meters : (n: number): string => feet(3.3 * n);
  const elements = Array.from({ length: whole(random, 1, 9) }, (_, i): JobElementInput => {
    const [long, wide] = [between(random, 1.5, 9), between(random, 1, 6)];
    const corner = (x: number, y: number): StakeInput => ({
      name: `${x} ${y}`,
      x: tell(x),
      y: tell(y),
      ...(random() < 0.5 ? { top: tell(30) } : {}),
    });
    const plane: FormGradesInput = {
      surface: {
        kind: 'sloped-plane',
        at: { name: 'door', x: tell(0), y: tell(0), elevation: tell(30) },
        alongX: `${whole(random, -3, 3)}%`,
        alongY: '2%',
      },
      stakes: [corner(0, 0), corner(long, 0), corner(long, wide), corner(0, wide)],
    };
    const wall = {
      against: 'building',
      from: { x: tell(0), y: tell(0) },
      to: { x: tell(long), y: tell(0) },
    } as const;
    const fall = { atBuilding: tell(30), away: tell(30 - wide / 50), distance: tell(wide) };
    return {
      name: `${i} ${nameOf(random)}`,
      outline: { shape: 'rectangle', length: tell(long), width: tell(wide) },
      thickness: metric ? '125 mm' : '5 in',
      slab: true,
      ...(i === 0 || random() < 0.85
        ? { at: { x: tell(between(random, 0, 16)), y: tell(between(random, 0, 12)) } }
        : {}),
      ...(random() < 0.4 ? { turned: `${whole(random, 0, 359)} deg` } : {}),
      ...(random() < 0.4 ? { stakes: plane } : { fall }),
      ...(random() < 0.5 ? { joints: { spacing: tell(2.5), isolation: [wall] } } : {}),
    };
  });
  return sitePlan({ version: 1, elements }, optionsOf(random));
}

/** So many random site plans. */
export const randomSites = (count: number, random: Random): string[] => drawn([site], count, random);
