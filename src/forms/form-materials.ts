/**
 * What forms of slab edges, walks, risers and low walls are made of: boards, stakes, braces, nails and release.
 *
 * Edges are boarded as `boarding.ts` says, staked as `staking.ts` says, bent as `bending.ts` says. Boards are cut from
 * their stock lengths by the plan that buys the least.
 *
 * Source: closed forms; spacing of stakes by common practice; sizes of boards by the softwood lumber standard, from
 * memory.
 */
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import {
  choice,
  type Field,
  fields,
  list,
  maybe,
  quantity,
  whole,
  wholeNumber,
  yesOrNo,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { all, anyOf, given, needs } from '../reckoning/together';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import {
  type Curves,
  type CurvesInput,
  curves as curvesField,
  heedRadius,
  layersFor,
  leastRadius,
  MOST_KERFS,
} from './bending';
import { choicesOf, type Edge, MOST_BOARDS, piecesOf } from './boarding';
import { leastBoarding } from './boarding-ways';
import { type Board, type BoardInput, type BoardSize, board as boardField, reached, sizeOf } from './boards';
import * as cautions from './cautions';
import {
  type FastenersInput,
  fastened,
  fastenersField,
  type ReleaseInput,
  released,
  releaseField,
} from './fastening';
import { BOARDS, type Boarding, bought, layered, planned } from './form-boards';
import { edgeFigure, MARKS } from './form-edge';
import { edgeFields, edgesOf, type FormEdgesInput, MOST_EDGES } from './form-edges';
import type { FormedEdge, FormMaterialsFigures, LayeredCurves } from './form-figures';
import { formsTaken } from './form-takes';
import { BOARD_KERF, BOARD_STOCK, CONCRETE_HEIGHT, LEAST_PIECE } from './ordinary';
import { FORM_DEPTH, SOFTWOOD_SIZES, STAKES_APART } from './sources';
import {
  heedStakes,
  type StakesInput,
  spacingsOf,
  stakeLengthOf,
  stakesField,
  standing,
  TALL,
} from './staking';

/** Input of {@link formMaterials}. Give an outline, runs, or both. */
export interface FormMaterialsInput extends FormEdgesInput {
  /** What is formed. */
  readonly kind: 'slab-edge' | 'riser' | 'low-wall';
  /** Height of the concrete against the boards. */
  readonly height: QuantityInput<'length'>;
  /** The boards. */
  readonly board: BoardInput;
  /** Lengths that boards are sold in. */
  readonly stock: readonly QuantityInput<'length'>[];
  /** Lost in each cut; by default nothing. */
  readonly kerf?: QuantityInput<'length'>;
  /** The shortest piece where an edge takes several; by default 2 ft, 600 mm. */
  readonly leastPiece?: QuantityInput<'length'>;
  /** How many boards stand above each other; by default as many as reach the top, or an eighth less. */
  readonly courses?: number;
  /** How many times the boards are used, where their length for one use is wanted. */
  readonly uses?: number;
  /** How curves are formed; by default boards are bent. */
  readonly curves?: CurvesInput;
  /** The stakes. */
  readonly stakes?: StakesInput;
  /** What is braced to a second stake; by default every stake of forms higher than 6 in, 150 mm. */
  readonly bracing?: 'none' | 'every-stake' | 'every-other-stake';
  /** Nails or screws, where they are wanted. */
  readonly fasteners?: FastenersInput;
  /** Release, where it is wanted. */
  readonly release?: ReleaseInput;
  /** True where the pressure on forms of this height was reckoned for the rate of placing. */
  readonly pressureChecked?: boolean;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

type Own = Read<Omit<FormMaterialsInput, keyof FormEdgesInput | 'board' | 'curves'>>;
type Parsed = Own &
  Parameters<typeof edgesOf>[0] & { readonly board: Board; readonly curves: Curves | undefined };

const NO_KERF = paired('length', '0 in', '0 mm');
const SHORTEST = paired('length', '2 ft', '600 mm');
/** The most that boards and stakes are trusted with. */
const LIGHT_FORMS = paired('length', '2 ft', '600 mm');

function usual(name: 'kerf' | 'leastPiece', given: Length | undefined, because: string, pad: Pad): Length {
  if (given) return given;
  const value = name === 'kerf' ? NO_KERF : SHORTEST;
  pad.assume({ name, value, because, override: `Give ${name}`, source: COMMON_PRACTICE });
  return value.as(pad.system);
}

function bracingOf({ bracing, height, kind, stakes }: Parsed, pad: Pad): NonNullable<Parsed['bracing']> {
  const h = standing(stakes, height);
  const tall = TALL.exceededBy(h);
  if (bracing) {
    if (bracing === 'none' && tall && kind !== 'riser') pad.caution(cautions.unbracedForms(tall, h));
    return bracing;
  }
  const value = tall ? 'every-stake' : 'none';
  pad.assume({
    name: 'bracing',
    value,
    because: say`forms higher than ${{ limit: TALL }} lean out without`,
    override: 'Give bracing',
    source: STAKES_APART,
  });
  return value;
}

/** Whether what is bent bears it, and how many layers there are. */
function heedCurves(
  { curves }: Parsed,
  edges: readonly Edge[],
  { thickness: T }: BoardSize,
  pad: Pad,
): Count {
  const round = edges.filter(({ radius }) => radius);
  const one = wholeNumber(1);
  if (round.length === 0 || curves?.kind === 'kerfed') return one;
  if (!curves) {
    pad.assume({
      name: 'curves.kind',
      value: 'bent',
      because: 'no other way is told',
      override: 'Give curves: kerfed or layers',
      source: COMMON_PRACTICE,
    });
  }
  const t = curves?.kind === 'layers' ? curves.thickness : T;
  heedRadius(round, leastRadius(t, curves?.bend, pad), pad);
  pad.caution(cautions.bentBoards);
  return curves?.kind === 'layers' ? layersFor(T, t, curves.layers, pad) : one;
}

const sum = (edges: readonly FormedEdge[], of: (edge: FormedEdge) => number): Count =>
  wholeNumber(edges.reduce((n, edge) => n + of(edge) * edge.count.toNumber('each'), 0));

const each = (n: Count): number => n.toNumber('each');

interface Supports {
  readonly cleats: Count;
  readonly stakes: Count;
  readonly behind: Count;
  readonly braces: Count;
}

function supportsOf(input: Parsed, edges: readonly FormedEdge[], courses: Count, pad: Pad): Supports {
  const riser = input.kind === 'riser';
  const k = sum(edges, ({ stakes }) => each(stakes));
  const j = sum(edges, ({ joints }) => each(joints));
  const c = courses;
  const joints = wholeNumber(each(j) * each(c));
  const ends = wholeNumber(riser ? 2 * each(sum(edges, () => 1)) : 0);
  const cleats = riser
    ? pad.step('cleats', 'x = j × c + e', { j, c, e: ends }, wholeNumber(each(joints) + each(ends)))
    : pad.step('cleats', 'x = j × c', { j, c }, joints);
  const bracing = riser ? 'none' : bracingOf(input, pad);
  const half = sum(edges, ({ stakes }) => Math.ceil(each(stakes) / 2));
  const z = bracing === 'none' ? wholeNumber(0) : bracing === 'every-stake' ? k : half;
  const stakes = pad.step(
    riser ? 'supports' : 'stakes, with those of braces',
    'K = k + z',
    { k, z },
    wholeNumber(each(k) + each(z)),
  );
  return { cleats, stakes, behind: k, braces: z };
}

/** What is too high for boards and stakes, or bears a load. */
function heedLoads({ kind, height: h, pressureChecked }: Parsed, pad: Pad): void {
  const limit = LIGHT_FORMS.exceededBy(h);
  if (limit) pad.caution(cautions.formsNeedDesign(limit, h, pressureChecked === true));
  if (kind === 'low-wall') pad.caution(cautions.wallForms);
}

interface Cut extends Boarding {
  readonly layeredCurves?: LayeredCurves;
}

/** Pieces of all edges, by the ways that buy the least; those of layered curves are strips of a sheet. */
function cutUp(input: Parsed, edges: readonly Edge[], layers: Count, courses: Count, pad: Pad): Cut {
  const { curves, stock, height } = input;
  const kerf = usual('kerf', input.kerf, 'a joint may stand open by the kerf of a saw', pad);
  const least = usual('leastPiece', input.leastPiece, 'a shorter one is not held by two stakes', pad);
  const sheet = curves?.kind === 'layers' ? curves.sheet : undefined;
  const isLayered = ({ radius }: Edge): boolean => sheet !== undefined && radius !== undefined;
  const strips = sheet && choicesOf([sheet.length]);
  const choices = choicesOf(stock);
  const best = leastBoarding((way, effort) => {
    const boarded = edges.map((edge) => ({
      edge,
      pieces: piecesOf(edge, strips && isLayered(edge) ? strips : choices, least, way(edge)),
    }));
    const sawn = boarded.filter(({ edge }) => !isLayered(edge));
    return planned(boarded, sawn, canonicalValue(courses).toNumber(), stock, kerf, effort);
  }, stock.length > 1);
  const round = best.boarded.filter(({ edge }) => isLayered(edge));
  if (!sheet || round.length === 0) return best;
  return { ...best, layeredCurves: layered(round, layers, { height, sheet }, kerf, pad) };
}

function reckon(input: Parsed, pad: Pad): FormMaterialsFigures {
  const { kind, height: h, stakes, fasteners, release, uses } = input;
  const edges = edgesOf(input, pad);
  const size = sizeOf(input.board, pad.system);
  const reach = reached(
    { h, b: size.height, given: input.courses, riser: kind === 'riser', clear: !!input.stakes?.gap },
    pad,
  );
  const spacings = spacingsOf(
    stakes,
    {
      thickness: size.thickness,
      height: h,
      straight: edges.some(({ radius }) => !radius),
      curved: edges.some(({ radius }) => radius),
    },
    pad,
  );
  const layers = heedCurves(input, edges, size, pad);
  const { boarded, cut, layeredCurves } = cutUp(input, edges, layers, reach.courses, pad);
  const job = { size, spacings, riser: kind === 'riser', curves: input.curves };
  const figures = boarded.map((each) => edgeFigure(each, job, pad));
  const order = bought(cut, input.stock[0] as Length, pad);
  const lengths = edges.map(({ length, count }) => length.times(wholeNumber(count)));
  const formLength = total('length of all edges', 'L', lengths, pad);
  const A = pad.step('contact area', 'A = L × h', { L: formLength, h }, formLength.times(h));
  const held = supportsOf(input, figures, reach.courses, pad);
  const staked = kind === 'riser' ? {} : stakeLengthOf(stakes, h, pad);
  if (kind !== 'riser') heedStakes(stakes, pad);
  heedLoads(input, pad);
  const nails = fasteners
    ? fastened(fasteners, { ...held, stakes: held.behind, courses: reach.courses }, pad)
    : {};
  const B = order.lengthBought;
  return {
    formLength,
    contactArea: A,
    board: size,
    ...reach,
    ...order,
    ...(uses
      ? { lengthPerUse: pad.step('boards for one use', 'U = B ÷ u', { B, u: uses }, B.over(uses)) }
      : {}),
    cleats: held.cleats,
    stakes: held.stakes,
    braces: held.braces,
    ...staked,
    ...nails,
    ...(release ? { release: released(release, A, pad) } : {}),
    ...(layeredCurves ? { layered: layeredCurves } : {}),
    edges: figures,
  };
}

function door(): Field<Parsed> {
  return fields(
    {
      ...edgeFields(),
      kind: choice('kind', ['slab-edge', 'riser', 'low-wall'] as const),
      height: quantity('length', 'height', 'positive', CONCRETE_HEIGHT),
      board: boardField(),
      stock: list(quantity('length', 'each stock length', 'positive', BOARD_STOCK), 1, 10),
      kerf: maybe(quantity('length', 'kerf', 'not-negative', BOARD_KERF)),
      leastPiece: maybe(quantity('length', 'leastPiece', 'positive', LEAST_PIECE)),
      courses: maybe(whole('courses', 1, 20)),
      uses: maybe(whole('uses', 1, 100)),
      curves: maybe(curvesField()),
      stakes: maybe(stakesField()),
      bracing: maybe(choice('bracing', ['none', 'every-stake', 'every-other-stake'] as const)),
      fasteners: maybe(fastenersField()),
      release: maybe(releaseField()),
      pressureChecked: maybe(yesOrNo('pressureChecked')),
    },
    all(anyOf(given('outline'), given('runs')), needs('formed', 'outline')),
  );
}

/**
 * Boards, stakes, braces, nails and release for the forms of slab edges, walks, risers and low walls.
 *
 * @param input - an outline with the sides that are formed, or lengths; height of the concrete, boards and their stock
 * @returns boards to buy with a plan for cutting them, stakes, cleats and braces, and each edge by itself
 * @throws {InputError} `missing` outline and runs; `unknown-name` for a side that the outline does not have;
 * `perimeter-unknown` for outlines whose sides are not told; `too-many`; quantities that cannot be read or are not
 * greater than zero
 * @source closed forms; stakes by common practice; sizes of boards by the softwood lumber standard, from memory
 * @example
 * ```ts
 * import { formMaterials } from 'flatwork-reckoner';
 *
 * const { figures } = formMaterials({
 *   kind: 'slab-edge',
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   formed: [1, 2, 4],
 *   height: '5 1/2 in',
 *   board: { nominal: '2x6' },
 *   stock: ['8 ft', '12 ft', '16 ft'],
 * });
 * figures.boards.format(); // '4 each'
 * figures.lengthBought.format(); // '64 ft'
 * figures.stakes.format(); // '30 each'
 * ```
 */
export const formMaterials: Calculation<FormMaterialsInput, FormMaterialsFigures> = /*#__PURE__*/ define({
  id: 'form-materials',
  title: 'Materials for forms',
  version: 1,
  sources: [CLOSED_FORM, SOFTWOOD_SIZES, STAKES_APART, FORM_DEPTH],
  limits: [MOST_EDGES, MOST_BOARDS, BOARDS, MOST_KERFS, MARKS],
  input: door,
  reckon,
  takes: formsTaken,
});
