/**
 * Walls: straight, around a rectangle with the corners counted once, or round; plain, tapered or in
 * insulated forms; less openings, plus pilasters.
 *
 * A wall is its plan area times its height. One that tapers, on its inside where it goes around, has
 * plan areas that change as a square of the height at most, so the prismoidal formula is exact. An
 * opening takes out its area times the thickness at its middle. In insulated forms the webs take up a
 * share of the core: what is left is `1 − share`.
 *
 * Source: geometry.
 */
import type { LengthInput } from '../geometry/outline';
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import {
  type Field,
  fields,
  kinds,
  list,
  maybe,
  quantity,
  whole,
  wholeNumber,
  word,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { FOUR, prismoid, TWO, timesPi } from './solids';

/** An opening through a wall. */
export interface WallOpeningInput {
  /** Along the wall. */
  readonly width: LengthInput;
  /** Up the wall. */
  readonly height: LengthInput;
  /** From the foot of the wall to the opening; halfway up by default, and of no matter unless the wall tapers. */
  readonly sill?: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A pilaster cast with the wall. */
export interface PilasterInput {
  /** Along the wall. */
  readonly width: LengthInput;
  /** How far it stands out from the wall. */
  readonly projection: LengthInput;
  /** Height; that of the wall by default. */
  readonly height?: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** What all walls may have. */
export interface WallParts {
  /** Top to bottom. */
  readonly height: LengthInput;
  /** Thickness, at the foot where the wall tapers; that of the core in insulated forms. */
  readonly thickness: LengthInput;
  /** Thickness at the top; as at the foot by default. */
  readonly topThickness?: LengthInput;
  /** Openings through it. */
  readonly openings?: readonly WallOpeningInput[];
  /** Pilasters on it. */
  readonly pilasters?: readonly PilasterInput[];
  /** Share of the core that the webs of insulated forms take up; none by default. */
  readonly webShare?: QuantityInput<'ratio'>;
  /** How many walls alike; one by default. */
  readonly count?: number;
}

/** A straight wall. */
export interface StraightWallInput extends WallParts {
  /** Always `straight`. */
  readonly form: 'straight';
  /** Along it. */
  readonly length: LengthInput;
}

/** Around a rectangle, by the outside; corners are counted once. */
export interface LoopWallInput extends WallParts {
  /** Always `loop`. */
  readonly form: 'loop';
  /** Outside length. */
  readonly outerLength: LengthInput;
  /** Outside width. */
  readonly outerWidth: LengthInput;
}

/** Around a circle, by the outside. */
export interface RingWallInput extends WallParts {
  /** Always `ring`. */
  readonly form: 'ring';
  /** Across the outside. */
  readonly outerDiameter: LengthInput;
}

/** One wall, or several alike. */
export type WallInput = StraightWallInput | LoopWallInput | RingWallInput;

/** Input of {@link wallVolume}. */
export interface WallVolumeInput {
  /** The walls. */
  readonly walls: readonly WallInput[];
  /** Openings smaller than this are not deducted; all are by default. */
  readonly deductFrom?: QuantityInput<'area'>;
}

/** Figures of {@link wallVolume}. */
export interface WallVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** Of each entry, in order. */
  readonly volumes: readonly Quantity<'volume'>[];
  /** Before openings, webs and pilasters. */
  readonly grossVolume: Quantity<'volume'>;
  /** Plan area at the foot, without pilasters. */
  readonly planArea: Quantity<'area'>;
  /** Both faces as seen square to them, less openings, with the sides of pilasters; no ends of walls. */
  readonly formedArea: Quantity<'area'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;
type Ratio = Quantity<'ratio'>;

interface Opening {
  readonly width: Length;
  readonly height: Length;
  readonly sill: Length | undefined;
  readonly count: Count | undefined;
}

interface Pilaster {
  readonly width: Length;
  readonly projection: Length;
  readonly height: Length | undefined;
  readonly count: Count | undefined;
}

interface Parts {
  readonly height: Length;
  readonly thickness: Length;
  readonly topThickness: Length | undefined;
  readonly openings: readonly Opening[] | undefined;
  readonly pilasters: readonly Pilaster[] | undefined;
  readonly webShare: Ratio | undefined;
  readonly count: Count | undefined;
}

type Wall = Parts &
  (
    | { readonly form: 'straight'; readonly length: Length }
    | { readonly form: 'loop'; readonly outerLength: Length; readonly outerWidth: Length }
    | { readonly form: 'ring'; readonly outerDiameter: Length }
  );

interface Parsed {
  readonly walls: readonly Wall[];
  readonly deductFrom: Area | undefined;
}

interface Place {
  readonly name: string;
  readonly path: string;
}

const ONE = constant(() => wholeNumber(1));
const WHOLE = constant(() => ratio('1:1'));

/** Plan area at a thickness, and the two faces for each unit of height. */
interface Plan {
  readonly formula: string;
  readonly values: Readonly<Record<string, Length>>;
  readonly area: (t: Length) => Area;
  readonly faces: (t: Length) => Length;
}

function planOf(wall: Wall): Plan {
  switch (wall.form) {
    case 'straight': {
      const l = wall.length;
      return { formula: 'l × t', values: { l }, area: (t) => l.times(t), faces: () => l.times(TWO()) };
    }
    case 'loop': {
      const { outerLength: l, outerWidth: b } = wall;
      return {
        formula: '2 × l × t + 2 × (b − 2 × t) × t',
        values: { l, b },
        area: (t) => l.plus(b).minus(t.times(TWO())).times(t).times(TWO()),
        faces: (t) => l.plus(b).minus(t.times(TWO())).times(FOUR()),
      };
    }
    case 'ring': {
      const D = wall.outerDiameter;
      return {
        formula: 'π × t × (D − t)',
        values: { D },
        area: (t) => timesPi(t.times(D.minus(t))),
        faces: (t) => timesPi(D.minus(t)).times(TWO()),
      };
    }
  }
}

const thicker = (a: Length, b: Length): Length => (b.greaterThan(a) ? b : a);

function checkThickness(wall: Wall, { path }: Place): void {
  const twice = thicker(wall.thickness, wall.topThickness ?? wall.thickness).times(TWO());
  const across = wall.form === 'loop' ? [wall.outerLength, wall.outerWidth] : [];
  if (wall.form === 'ring') across.push(wall.outerDiameter);
  if (across.some((l) => !twice.lessThan(l))) {
    refuse(`${path}.thickness`, faults.doesNotFit('twice the thickness', 'what the wall goes around'));
  }
}

/** Gross volume, plan area at the foot, and both faces in elevation. */
function grossOf(wall: Wall, { name }: Place, pad: Pad): { gross: Volume; foot: Area; faces: Area } {
  const { height: h, thickness: t, topThickness: top } = wall;
  const { formula, values, area, faces } = planOf(wall);
  const plan = (what: string, symbol: string, at: Length): Area =>
    pad.step(`${name}, plan area ${what}`, `${symbol} = ${formula}`, { ...values, t: at }, area(at));
  const A = plan('at the foot', 'A', t);
  if (!top) {
    const gross = pad.step(`${name}, gross volume`, 'V = A × h', { A, h }, A.times(h));
    return { gross, foot: A, faces: faces(t).times(h) };
  }
  const mean = t.plus(top).over(TWO());
  const [M, B] = [plan('halfway up', 'M', mean), plan('at the top', 'B', top)];
  const gross = prismoid(h, A, M, B);
  pad.step(`${name}, gross volume`, 'V = h × (A + 4 × M + B) ÷ 6', { h, A, M, B }, gross);
  return { gross, foot: A, faces: faces(mean).times(h) };
}

/** Thickness at the middle of an opening. */
function thicknessAt(wall: Wall, opening: Opening, pad: Pad): Length {
  const { height: H, thickness: t, topThickness: b } = wall;
  if (!b) return t;
  if (!opening.sill) {
    pad.assume({
      name: 'sill',
      value: 'halfway up',
      because: 'the thickness of a tapered wall depends on where the opening is',
      override: 'Give sill, from the foot of the wall to the opening',
      source: CLOSED_FORM,
    });
    return t.plus(b).over(TWO());
  }
  const m = opening.sill.plus(opening.height.over(TWO()));
  return pad.step(
    'thickness at the middle of the opening',
    'c = t + (b − t) × m ÷ H',
    { t, b, m, H },
    t.plus(b.minus(t).times(m.over(H))),
  );
}

interface Deducted {
  readonly volume: Volume | undefined;
  readonly area: Area | undefined;
}

function openingsOf(wall: Wall, { name, path }: Place, least: Area | undefined, pad: Pad): Deducted {
  const volumes: Volume[] = [];
  const areas: Area[] = [];
  (wall.openings ?? []).forEach((opening, i) => {
    const { width: w, height: h, sill, count } = opening;
    if ((sill ? sill.plus(h) : h).greaterThan(wall.height)) {
      refuse(`${path}.openings[${i}].height`, faults.doesNotFit('the opening with its sill', 'height'));
    }
    const one = w.times(h);
    if (least && one.lessThan(least)) return;
    const n = count ?? ONE();
    const t = thicknessAt(wall, opening, pad);
    const A = pad.step(`${name}, opening ${i + 1}`, 'O = n × w × h', { n, w, h }, one.times(n));
    areas.push(A);
    volumes.push(pad.step(`${name}, out of the wall`, 'V = O × t', { O: A, t }, A.times(t)));
  });
  if (areas.length === 0) return { volume: undefined, area: undefined };
  return {
    volume: total(`${name}, openings`, 'V', volumes, pad),
    area: total(`${name}, area of openings`, 'O', areas, pad),
  };
}

function pilastersOf(wall: Wall, { name }: Place, pad: Pad): { volumes: Volume[]; sides: Area[] } {
  const sides: Area[] = [];
  const volumes = (wall.pilasters ?? []).map(({ width: w, projection: p, height, count }, i) => {
    const [h, n] = [height ?? wall.height, count ?? ONE()];
    sides.push(p.times(h).times(n).times(TWO()));
    const volume = w.times(p).times(h).times(n);
    return pad.step(`${name}, pilaster ${i + 1}`, 'P = n × w × p × h', { n, w, p, h }, volume);
  });
  return { volumes, sides };
}

interface Body {
  readonly volume: Volume;
  readonly gross: Volume;
  readonly plan: Area;
  readonly formed: Area;
}

/** What the openings leave, or a refusal where they take everything. */
function netOf(gross: Volume, out: Deducted, { name, path }: Place, pad: Pad): Volume {
  if (!out.volume) return gross;
  const left = gross.minus(out.volume);
  if (left.sign() <= 0) refuse(`${path}.openings`, faults.doesNotFit('the openings together', 'the wall'));
  return pad.step(`${name}, less openings`, 'N = V − O', { V: gross, O: out.volume }, left);
}

function lessWebs(net: Volume, s: Ratio | undefined, { name, path }: Place, pad: Pad): Volume {
  if (!s) return net;
  if (!s.lessThan(WHOLE())) return refuse(`${path}.webShare`, faults.doesNotFit('webShare', '100%'));
  return pad.step(`${name}, less webs`, 'C = N × (1 − s)', { N: net, s }, net.times(WHOLE().minus(s)));
}

function bodyOf(wall: Wall, place: Place, least: Area | undefined, pad: Pad): Body {
  checkThickness(wall, place);
  const { gross, foot, faces } = grossOf(wall, place, pad);
  const out = openingsOf(wall, place, least, pad);
  const core = lessWebs(netOf(gross, out, place, pad), wall.webShare, place, pad);
  const { volumes, sides } = pilastersOf(wall, place, pad);
  const volume = total(`${place.name}, with pilasters`, 'V', [core, ...volumes], pad);
  const bare = out.area ? faces.minus(out.area.times(TWO())) : faces;
  const formed = sides.reduce((all, side) => all.plus(side), bare);
  const n = wall.count;
  if (!n) return { volume, gross, plan: foot, formed };
  const all = pad.step(`${place.name}, all alike`, 'T = n × V', { n, V: volume }, volume.times(n));
  return { volume: all, gross: gross.times(n), plan: foot.times(n), formed: formed.times(n) };
}

function reckon({ walls, deductFrom }: Parsed, pad: Pad): WallVolumeFigures {
  const bodies = walls.map((wall, i) =>
    bodyOf(wall, { name: `wall ${i + 1}`, path: `walls[${i}]` }, deductFrom, pad),
  );
  const volumes = bodies.map((b) => b.volume);
  pad.caution(cautions.alkali);
  return {
    volume: total('volume', 'V', volumes, pad),
    volumes,
    grossVolume: total(
      'gross volume',
      'G',
      bodies.map((b) => b.gross),
      pad,
    ),
    planArea: total(
      'plan area',
      'A',
      bodies.map((b) => b.plan),
      pad,
    ),
    formedArea: total(
      'faces to form',
      'F',
      bodies.map((b) => b.formed),
      pad,
    ),
  };
}

function door(): Field<Parsed> {
  const l = (what: string): Field<Length> => quantity('length', what);
  const count = maybe(whole('count', 1, 10_000));
  const opening = fields({
    width: l('width'),
    height: l('height'),
    sill: maybe(quantity('length', 'sill', 'not-negative')),
    count,
  });
  const pilaster = fields({
    width: l('width'),
    projection: l('projection'),
    height: maybe(l('height')),
    count,
  });
  const parts = {
    height: l('height'),
    thickness: l('thickness'),
    topThickness: maybe(l('topThickness')),
    openings: maybe(list(opening, 0, 500)),
    pilasters: maybe(list(pilaster, 0, 500)),
    webShare: maybe(quantity('ratio', 'webShare', 'not-negative')),
    count,
  };
  const wall = kinds<Wall>('form', [
    fields({ form: word('straight'), length: l('length'), ...parts }),
    fields({ form: word('loop'), outerLength: l('outerLength'), outerWidth: l('outerWidth'), ...parts }),
    fields({ form: word('ring'), outerDiameter: l('outerDiameter'), ...parts }),
  ]);
  return fields({ walls: list(wall, 1, 200), deductFrom: maybe(quantity('area', 'deductFrom')) });
}

/**
 * Concrete for walls.
 *
 * @param input - a list of walls, and from which size on openings are deducted
 * @returns volume in all and of each, gross volume, plan area, faces to form
 * @throws {InputError} `does-not-fit` where a part is larger than what holds it; lengths that cannot be
 * read or are not greater than zero
 * @source geometry
 * @example
 * ```ts
 * import { wallVolume } from 'flatwork-reckoner';
 *
 * const { figures } = wallVolume({
 *   walls: [
 *     {
 *       form: 'straight',
 *       length: '24 ft',
 *       height: '4 ft',
 *       thickness: '8 in',
 *       openings: [{ width: '3 ft', height: '2 ft' }],
 *     },
 *   ],
 * });
 * figures.volume.format('ft3'); // '60 ft3'
 * ```
 */
export const wallVolume: Calculation<WallVolumeInput, WallVolumeFigures> = /*#__PURE__*/ define({
  id: 'wall-volume',
  title: 'Volume of walls',
  version: 1,
  sources: [CLOSED_FORM],
  input: door,
  reckon,
});
