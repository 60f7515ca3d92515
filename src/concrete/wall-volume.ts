/**
 * Walls: straight, around a rectangle with the corners counted once, or round; plain, tapered or in
 * insulated forms; less openings, plus pilasters.
 *
 * A wall is its plan area times its height. One that tapers, on its inside where it goes around, has
 * plan areas that change as a square of the height at most, so the prismoidal formula is exact. An
 * opening takes out its area times the thickness at its middle. A wall whose top falls along it, a wing
 * wall, has half of both heights. In insulated forms the core is what the two panels leave, and the webs take
 * up a share of it: what is left is `1 − share`.
 *
 * Source: geometry.
 */
import type { LengthInput } from '../outline/outline';
import { Decimal, PI } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
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
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, allOrNone, oneOf } from '../reckoning/together';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { openingInWing } from './faults';
import {
  FOAM,
  LEAST_OPENING,
  PILASTER,
  SILL,
  WALL_HEIGHT,
  WALL_LENGTH,
  WALL_OPENING,
  WALL_THICKNESS,
  WEB_SHARE,
} from './ordinary';
import { circleArea, FOUR, prismoid, regularArea, TWO, timesPi } from './solids';

/** An opening through a wall: by width and height, by its diameter, or by sides alike. */
export interface WallOpeningInput {
  /** Along the wall. */
  readonly width?: LengthInput;
  /** Up the wall. */
  readonly height?: LengthInput;
  /** Across a round one, in place of width and height. */
  readonly diameter?: LengthInput;
  /** How many sides one with sides alike has, in place of width and height. */
  readonly sides?: number;
  /** How long each of them is. */
  readonly side?: LengthInput;
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
  /** Thickness, at the foot where the wall tapers; in insulated forms that of the core, or overall with `foam`. */
  readonly thickness: LengthInput;
  /** Thickness at the top; as at the foot by default. */
  readonly topThickness?: LengthInput;
  /** Openings through it. */
  readonly openings?: readonly WallOpeningInput[];
  /** Pilasters on it. */
  readonly pilasters?: readonly PilasterInput[];
  /** How thick each of the two panels of insulated forms is: with it all sizes are those over the panels. */
  readonly foam?: LengthInput;
  /** Share of the core that the webs of insulated forms take up; none by default. */
  readonly webShare?: QuantityInput<'ratio'>;
  /** How many walls alike; one by default. */
  readonly count?: number;
}

/** A straight wall. */
export interface StraightWallInput extends WallParts {
  /** Always `straight`. */
  readonly kind: 'straight';
  /** Along it. */
  readonly length: LengthInput;
  /** Height at the far end, where the top falls or rises evenly, as that of a wing wall; as `height` by default. */
  readonly endHeight?: LengthInput;
}

/** Around a rectangle, by the outside; corners are counted once. */
export interface LoopWallInput extends WallParts {
  /** Always `loop`. */
  readonly kind: 'loop';
  /** Outside length. */
  readonly outerLength: LengthInput;
  /** Outside width. */
  readonly outerWidth: LengthInput;
}

/** Around a circle, by the outside. */
export interface RingWallInput extends WallParts {
  /** Always `ring`. */
  readonly kind: 'ring';
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
  readonly width: Length | undefined;
  readonly height: Length | undefined;
  readonly diameter: Length | undefined;
  readonly sides: Count | undefined;
  readonly side: Length | undefined;
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
  readonly foam: Length | undefined;
  readonly webShare: Ratio | undefined;
  readonly count: Count | undefined;
}

type Wall = Parts &
  (
    | { readonly kind: 'straight'; readonly length: Length; readonly endHeight: Length | undefined }
    | { readonly kind: 'loop'; readonly outerLength: Length; readonly outerWidth: Length }
    | { readonly kind: 'ring'; readonly outerDiameter: Length }
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
  switch (wall.kind) {
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
  const across = wall.kind === 'loop' ? [wall.outerLength, wall.outerWidth] : [];
  if (wall.kind === 'ring') across.push(wall.outerDiameter);
  if (across.some((l) => !twice.lessThan(l))) {
    refuse(`${path}.thickness`, faults.doesNotFit('twice the thickness', 'what the wall goes around'));
  }
}

/** Half of both ends, where the top falls or rises along the wall. */
function meanHeight(wall: Wall, name: string, pad: Pad): Length {
  const h = wall.height;
  const e = wall.kind === 'straight' ? wall.endHeight : undefined;
  if (!e) return h;
  return pad.step(say`${{ name }}, mean height`, 'm = (h + e) ÷ 2', { h, e }, h.plus(e).over(TWO()));
}

/** Gross volume, plan area at the foot, and both faces in elevation. */
function grossOf(wall: Wall, { name }: Place, pad: Pad): { gross: Volume; foot: Area; faces: Area } {
  const { thickness: t, topThickness: top } = wall;
  const h = meanHeight(wall, name, pad);
  const { formula, values, area, faces } = planOf(wall);
  const plan = (what: string, symbol: string, at: Length): Area =>
    pad.step(
      say`${{ name }}, plan area ${{ what }}`,
      `${symbol} = ${formula}`,
      { ...values, t: at },
      area(at),
    );
  const A = plan('at the foot', 'A', t);
  if (!top) {
    const gross = pad.step(say`${{ name }}, gross volume`, 'V = A × h', { A, h }, A.times(h));
    return { gross, foot: A, faces: faces(t).times(h) };
  }
  const mean = t.plus(top).over(TWO());
  const [M, B] = [plan('halfway up', 'M', mean), plan('at the top', 'B', top)];
  const gross = prismoid(h, A, M, B);
  pad.step(say`${{ name }}, gross volume`, 'V = h × (A + 4 × M + B) ÷ 6', { h, A, M, B }, gross);
  return { gross, foot: A, faces: faces(mean).times(h) };
}

/** Thickness at the middle of an opening. */
function thicknessAt(wall: Wall, opening: Opening, high: Length, pad: Pad): Length {
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
  const m = opening.sill.plus(high.over(TWO()));
  return pad.step(
    'thickness at the middle of the opening',
    'c = t + (b − t) × m ÷ H',
    { t, b, m, H },
    t.plus(b.minus(t).times(m.over(H))),
  );
}

/** An opening as a shape: its area, how high it is, and the formula of its area. */
interface OpeningShape {
  readonly area: Area;
  readonly high: Length;
  readonly formula: string;
  readonly values: Readonly<Record<string, Quantity>>;
}

function shapeOf(
  { width: w, height: h, diameter: D, sides: k, side: s }: Opening,
  path: string,
): OpeningShape {
  const ways = [w ?? h, D, k ?? s].filter((way) => way !== undefined);
  if (ways.length > 1) refuse(path, faults.giveOneOf(['width and height', 'diameter', 'sides and side']));
  if (D) return { area: circleArea(D), high: D, formula: 'π × D² ÷ 4', values: { D } };
  if (k ?? s) {
    if (!k) return refuse(`${path}.sides`, faults.missing('sides', '6'));
    if (!s) return refuse(`${path}.side`, faults.missing('side', ['"12 in"', '"300 mm"']));
    // Standing on one side it is at most as high as it is wide over its corners.
    const across = quantityOf(
      'length',
      canonicalValue(s).div(Decimal.sin(PI.div(canonicalValue(k)))),
      systemOfQuantity(s),
    );
    return {
      area: regularArea(k, s),
      high: across,
      formula: 'k × s² ÷ (4 × tan(π ÷ k))',
      values: { k, s },
    };
  }
  if (!w)
    return refuse(`${path}.width`, faults.missing('width', ['"3 ft", or diameter', '"0.9 m", or diameter']));
  if (!h) return refuse(`${path}.height`, faults.missing('height', ['"4 ft"', '"1.2 m"']));
  return { area: w.times(h), high: h, formula: 'w × h', values: { w, h } };
}

interface Deducted {
  readonly volume: Volume | undefined;
  readonly area: Area | undefined;
}

function openingsOf(wall: Wall, { name, path }: Place, least: Area | undefined, pad: Pad): Deducted {
  const volumes: Volume[] = [];
  const areas: Area[] = [];
  const end = wall.kind === 'straight' ? wall.endHeight : undefined;
  const lowest = end?.lessThan(wall.height) ? end : wall.height;
  if (end && wall.topThickness && wall.openings?.length) refuse(`${path}.openings`, openingInWing());
  (wall.openings ?? []).forEach((opening, i) => {
    const { sill, count } = opening;
    const shape = shapeOf(opening, `${path}.openings[${i}]`);
    if ((sill ? sill.plus(shape.high) : shape.high).greaterThan(lowest)) {
      refuse(`${path}.openings[${i}].height`, faults.doesNotFit('the opening with its sill', 'height'));
    }
    if (least && shape.area.lessThan(least)) return;
    const n = count ?? ONE();
    const t = thicknessAt(wall, opening, shape.high, pad);
    const A = pad.step(
      say`${{ name }}, opening ${{ n: i + 1 }}`,
      `O = n × ${shape.formula}`,
      { n, ...shape.values },
      shape.area.times(n),
    );
    areas.push(A);
    volumes.push(pad.step(say`${{ name }}, out of the wall`, 'V = O × t', { O: A, t }, A.times(t)));
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
    return pad.step(say`${{ name }}, pilaster ${{ n: i + 1 }}`, 'P = n × w × p × h', { n, w, p, h }, volume);
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
  return pad.step(say`${{ name }}, less openings`, 'N = V − O', { V: gross, O: out.volume }, left);
}

function lessWebs(net: Volume, s: Ratio | undefined, { name, path }: Place, pad: Pad): Volume {
  if (!s) return net;
  if (!s.lessThan(WHOLE())) return refuse(`${path}.webShare`, faults.doesNotFit('webShare', '100%'));
  return pad.step(say`${{ name }}, less webs`, 'C = N × (1 − s)', { N: net, s }, net.times(WHOLE().minus(s)));
}

/** A wall in insulated forms without their panels: what is poured. */
function coreOf(wall: Wall, { name, path }: Place, pad: Pad): Wall {
  const { thickness: o, topThickness: top, foam: f } = wall;
  if (!f) return wall;
  const both = f.times(TWO());
  if (!both.lessThan(o) || (top && !both.lessThan(top))) {
    refuse(`${path}.foam`, faults.doesNotFit('foam on both sides', 'thickness'));
  }
  const thickness = pad.step(
    say`${{ name }}, thickness of the core`,
    't = o − 2 × f',
    { o, f },
    o.minus(both),
  );
  const core = { ...wall, thickness, topThickness: top?.minus(both) };
  const within = (what: string, L: Length): Length =>
    pad.step(say`${{ name }}, ${{ what }} of the core`, 'l = L − 2 × f', { L, f }, L.minus(both));
  if (core.kind === 'loop') {
    const outerLength = within('outside length', core.outerLength);
    return { ...core, outerLength, outerWidth: within('outside width', core.outerWidth) };
  }
  return core.kind === 'ring'
    ? { ...core, outerDiameter: within('outside diameter', core.outerDiameter) }
    : core;
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
  const all = pad.step(
    say`${{ name: place.name }}, all alike`,
    'T = n × V',
    { n, V: volume },
    volume.times(n),
  );
  return { volume: all, gross: gross.times(n), plan: foot.times(n), formed: formed.times(n) };
}

/** Walls with more openings and pilasters than a street of houses has. */
const IN_WALLS: Limit = { of: 'the openings and pilasters of all walls', most: 1000 };

function reckon({ walls, deductFrom }: Parsed, pad: Pad): WallVolumeFigures {
  const inWalls = walls.reduce((sum, w) => sum + (w.openings?.length ?? 0) + (w.pilasters?.length ?? 0), 0);
  withinLimit(IN_WALLS, inWalls, 'walls');
  const bodies = walls.map((wall, i) => {
    const place = { name: `wall ${i + 1}`, path: `walls[${i}]` };
    return bodyOf(coreOf(wall, place, pad), place, deductFrom, pad);
  });
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
  const l = (what: string, ordinary: Ordinary): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const count = maybe(whole('count', 1, 10_000));
  const opening = fields(
    {
      width: maybe(l('width', WALL_OPENING)),
      height: maybe(l('height', WALL_OPENING)),
      diameter: maybe(l('diameter', WALL_OPENING)),
      sides: maybe(whole('sides', 3, 360)),
      side: maybe(l('side', WALL_OPENING)),
      sill: maybe(quantity('length', 'sill', 'not-negative', SILL)),
      count,
    },
    all(
      oneOf(['width', 'height'], ['diameter'], ['sides', 'side']),
      allOrNone('width', 'height'),
      allOrNone('sides', 'side'),
    ),
  );
  const pilaster = fields({
    width: l('width', PILASTER),
    projection: l('projection', PILASTER),
    height: maybe(l('height', WALL_HEIGHT)),
    count,
  });
  const parts = {
    height: l('height', WALL_HEIGHT),
    thickness: l('thickness', WALL_THICKNESS),
    topThickness: maybe(l('topThickness', WALL_THICKNESS)),
    openings: maybe(list(opening, 0, 500)),
    pilasters: maybe(list(pilaster, 0, 500)),
    foam: maybe(l('foam', FOAM)),
    webShare: maybe(quantity('ratio', 'webShare', 'not-negative', WEB_SHARE)),
    count,
  };
  const wall = kinds('kind', [
    fields({
      kind: word('straight'),
      length: l('length', WALL_LENGTH),
      endHeight: maybe(quantity('length', 'endHeight', 'not-negative', WALL_HEIGHT)),
      ...parts,
    }),
    fields({
      kind: word('loop'),
      outerLength: l('outerLength', WALL_LENGTH),
      outerWidth: l('outerWidth', WALL_LENGTH),
      ...parts,
    }),
    fields({ kind: word('ring'), outerDiameter: l('outerDiameter', WALL_LENGTH), ...parts }),
  ]);
  return fields({
    walls: list(wall, 1, 200),
    deductFrom: maybe(quantity('area', 'deductFrom', 'positive', LEAST_OPENING)),
  });
}

/**
 * Concrete for walls, with openings and pilasters: straight, tapered, or in insulated forms.
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
 *       kind: 'straight',
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
  title: 'Wall volume',
  version: 1,
  sources: [CLOSED_FORM],
  limits: [IN_WALLS],
  input: door,
  reckon,
  takes: () => [{ item: 'concrete', from: 'volume' }],
});
