/**
 * Footings: strips, rectangular loops with their corners counted once, pads, tapered and stepped.
 *
 * A loop is the ring between its outside and its inside: `V = d × (2 × (L + W) × w − 4 × w²)`. A
 * tapered pad is a box with a prismoid on top. A stepped strip gains, at each step, a block as high
 * as the step and as long as the lap.
 *
 * Source: geometry.
 */
import type { LengthInput } from '../outline/outline';
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as sharedCautions from '../reckoning/cautions';
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
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { type Founded, type FoundedInput, foundedFields, frostField, heedFrost } from './frost';
import {
  FOOTING_DEPTH,
  FOOTING_LENGTH,
  FOOTING_STEP,
  FOOTING_WIDTH,
  PAD_EDGE,
  PAD_SIDE,
  PAD_TOP,
} from './ordinary';
import { rectangularFrustum, TWO } from './solids';
import { heedThinFootings } from './thin-footings';

/** Steps along a strip on sloping ground. */
export interface FootingStepsInput {
  /** How many. */
  readonly count: number;
  /** Height of each. */
  readonly height: LengthInput;
  /** How far the upper strip laps over the lower one. */
  readonly lap: LengthInput;
}

/** A straight run, measured along its centerline. */
export interface StripFootingInput extends FoundedInput {
  /** Always `strip`. */
  readonly kind: 'strip';
  /** Along the centerline, in all. */
  readonly length: LengthInput;
  /** Across. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
  /** Steps on sloping ground. */
  readonly steps?: FootingStepsInput;
}

/** Around a rectangle, by the outside; corners are counted once. */
export interface LoopFootingInput extends FoundedInput {
  /** Always `loop`. */
  readonly kind: 'loop';
  /** Outside length. */
  readonly outerLength: LengthInput;
  /** Outside width. */
  readonly outerWidth: LengthInput;
  /** Across the strip. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
}

/** A straight run whose section is a trapezoid. */
export interface TaperedStripFootingInput extends FoundedInput {
  /** Always `tapered-strip`. */
  readonly kind: 'tapered-strip';
  /** Along the centerline, in all. */
  readonly length: LengthInput;
  /** Across the bottom. */
  readonly bottomWidth: LengthInput;
  /** Across the top. */
  readonly topWidth: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
}

/** A box under a post. */
export interface PadFootingInput extends FoundedInput {
  /** Always `pad`. */
  readonly kind: 'pad';
  /** One side. */
  readonly length: LengthInput;
  /** The other side. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A box with a sloping top that narrows to a rectangle. */
export interface TaperedPadFootingInput extends FoundedInput {
  /** Always `tapered-pad`. */
  readonly kind: 'tapered-pad';
  /** One side at the bottom. */
  readonly length: LengthInput;
  /** The other side at the bottom. */
  readonly width: LengthInput;
  /** Height of the upright edge; may be zero. */
  readonly edge: LengthInput;
  /** Side of the top along `length`. */
  readonly topLength: LengthInput;
  /** Side of the top along `width`. */
  readonly topWidth: LengthInput;
  /** Height of the sloping part. */
  readonly taper: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** One block of a stepped pad. */
export interface TierInput {
  /** One side. */
  readonly length: LengthInput;
  /** The other side. */
  readonly width: LengthInput;
  /** Top to bottom. */
  readonly depth: LengthInput;
}

/** Blocks on top of each other, the lowest first. */
export interface SteppedPadFootingInput extends FoundedInput {
  /** Always `stepped-pad`. */
  readonly kind: 'stepped-pad';
  /** The blocks, each within the one below. */
  readonly tiers: readonly TierInput[];
  /** How many alike; one by default. */
  readonly count?: number;
}

/** One footing, or several alike. */
export type FootingInput =
  | StripFootingInput
  | LoopFootingInput
  | TaperedStripFootingInput
  | PadFootingInput
  | TaperedPadFootingInput
  | SteppedPadFootingInput;

/** Input of {@link footingVolume}. */
export interface FootingVolumeInput {
  /** The footings. */
  readonly footings: readonly FootingInput[];
  /** How deep the ground freezes, as the local building department says; `0 in` where it does not. */
  readonly frostDepth?: LengthInput;
}

/** Figures of {@link footingVolume}. */
export interface FootingVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** Of each entry, in order. */
  readonly volumes: readonly Quantity<'volume'>[];
  /** Area that bears on the ground, laps of steps counted once. */
  readonly bearingArea: Quantity<'area'>;
  /** Upright faces to form, if nothing is cast against earth: both sides of strips, without their ends. */
  readonly formedArea: Quantity<'area'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Count = Quantity<'count'>;

interface Tier {
  readonly length: Length;
  readonly width: Length;
  readonly depth: Length;
}

type Footing = Founded & Form;

interface Parsed {
  readonly footings: readonly Footing[];
  readonly frostDepth: Length | undefined;
}

type Form =
  | (Tier & {
      readonly kind: 'strip';
      readonly steps: { readonly count: Count; readonly height: Length; readonly lap: Length } | undefined;
    })
  | {
      readonly kind: 'loop';
      readonly outerLength: Length;
      readonly outerWidth: Length;
      readonly width: Length;
      readonly depth: Length;
    }
  | {
      readonly kind: 'tapered-strip';
      readonly length: Length;
      readonly bottomWidth: Length;
      readonly topWidth: Length;
      readonly depth: Length;
    }
  | (Tier & { readonly kind: 'pad'; readonly count: Count | undefined })
  | {
      readonly kind: 'tapered-pad';
      readonly length: Length;
      readonly width: Length;
      readonly edge: Length;
      readonly topLength: Length;
      readonly topWidth: Length;
      readonly taper: Length;
      readonly count: Count | undefined;
    }
  | { readonly kind: 'stepped-pad'; readonly tiers: readonly Tier[]; readonly count: Count | undefined };

type Of<F extends Footing['kind']> = Extract<Footing, { kind: F }>;

interface Body {
  readonly volume: Quantity<'volume'>;
  readonly bearing: Area;
  readonly formed: Area;
}

/** Where a footing stands in the input, in words and as a path. */
interface Place {
  readonly name: string;
  readonly path: string;
}

const around = ({ length, width }: Tier): Length => length.plus(width).times(TWO());

function strip({ length: l, width: w, depth: d, steps }: Of<'strip'>, { name }: Place, pad: Pad): Body {
  const bearing = pad.step(say`${{ name }}, bearing area`, 'A = l × w', { l, w }, l.times(w));
  const formed = pad.step(say`${{ name }}, sides`, 'F = 2 × l × d', { l, d }, l.times(d).times(TWO()));
  const plain = pad.step(say`${{ name }}, strip`, 'V = l × w × d', { l, w, d }, bearing.times(d));
  if (!steps) return { volume: plain, bearing, formed };
  const { count: n, height: h, lap: o } = steps;
  const blocks = h.times(o).times(n);
  const volume = pad.step(
    say`${{ name }}, with its steps`,
    'S = V + n × h × o × w',
    { V: plain, n, h, o, w },
    plain.plus(blocks.times(w)),
  );
  const sides = pad.step(
    say`${{ name }}, sides and fronts of the steps`,
    'G = F + n × h × (2 × o + w)',
    { F: formed, n, h, o, w },
    formed.plus(h.times(o.times(TWO()).plus(w)).times(n)),
  );
  return { volume, bearing, formed: sides };
}

function loop(footing: Of<'loop'>, { name, path }: Place, pad: Pad): Body {
  const { outerLength: l, outerWidth: b, width: w, depth: d } = footing;
  const twice = w.times(TWO());
  if (!twice.lessThan(l)) refuse(`${path}.width`, faults.doesNotFit('twice the width', 'outerLength'));
  if (!twice.lessThan(b)) refuse(`${path}.width`, faults.doesNotFit('twice the width', 'outerWidth'));
  const inner = b.minus(twice);
  const long = pad.step(say`${{ name }}, two long sides`, 'P = 2 × l × w', { l, w }, l.times(w).times(TWO()));
  const short = pad.step(
    say`${{ name }}, two short sides between them`,
    'Q = 2 × (b − 2 × w) × w',
    { b, w },
    inner.times(w).times(TWO()),
  );
  const bearing = pad.step(
    say`${{ name }}, bearing area`,
    'A = P + Q',
    { P: long, Q: short },
    long.plus(short),
  );
  const volume = pad.step(say`${{ name }}, volume`, 'V = A × d', { A: bearing, d }, bearing.times(d));
  // Outside and inside: 2 (l + b) + 2 (l − 2w + b − 2w).
  const edge = l.plus(b).minus(twice).times(TWO()).times(TWO());
  const formed = pad.step(
    say`${{ name }}, outside and inside faces`,
    'F = 4 × (l + b − 2 × w) × d',
    { l, b, w, d },
    edge.times(d),
  );
  return { volume, bearing, formed };
}

function taperedStrip(footing: Of<'tapered-strip'>, { name }: Place, pad: Pad): Body {
  const { length: l, bottomWidth: b, topWidth: t, depth: d } = footing;
  const bearing = pad.step(say`${{ name }}, bearing area`, 'A = l × b', { l, b }, l.times(b));
  const volume = pad.step(
    say`${{ name }}, volume`,
    'V = l × d × (b + t) ÷ 2',
    { l, d, b, t },
    l.times(d).times(b.plus(t)).over(TWO()),
  );
  const formed = pad.step(
    say`${{ name }}, sides in elevation`,
    'F = 2 × l × d',
    { l, d },
    l.times(d).times(TWO()),
  );
  return { volume, bearing, formed };
}

function padFooting({ length: l, width: w, depth: d, count }: Of<'pad'>, { name }: Place, pad: Pad): Body {
  const n = count ?? wholeNumber(1);
  const bearing = pad.step(say`${{ name }}, bearing area`, 'A = n × l × w', { n, l, w }, l.times(w).times(n));
  const volume = pad.step(say`${{ name }}, volume`, 'V = A × d', { A: bearing, d }, bearing.times(d));
  const sides = l.plus(w).times(TWO()).times(d).times(n);
  const formed = pad.step(say`${{ name }}, sides`, 'F = n × 2 × (l + w) × d', { n, l, w, d }, sides);
  return { volume, bearing, formed };
}

function taperedPad(footing: Of<'tapered-pad'>, { name, path }: Place, pad: Pad): Body {
  const { length: l, width: w, edge: e0, topLength: a, topWidth: b, taper: h } = footing;
  if (a.greaterThan(l)) refuse(`${path}.topLength`, faults.doesNotFit('topLength', 'length'));
  if (b.greaterThan(w)) refuse(`${path}.topWidth`, faults.doesNotFit('topWidth', 'width'));
  const n = footing.count ?? wholeNumber(1);
  const { foot: A, volume: K } = rectangularFrustum(name, { l, w, a, b, h }, pad);
  const volume = pad.step(
    say`${{ name }}, with its upright edge`,
    'V = n × (A × g + K)',
    { n, A, g: e0, K },
    A.times(e0).plus(K).times(n),
  );
  const sides = l.plus(w).times(TWO()).times(e0).times(n);
  const formed = pad.step(
    say`${{ name }}, upright edges`,
    'F = n × 2 × (l + w) × g',
    { n, l, w, g: e0 },
    sides,
  );
  return { volume, bearing: A.times(n), formed };
}

function steppedPad({ tiers, count }: Of<'stepped-pad'>, { name, path }: Place, pad: Pad): Body {
  const n = count ?? wholeNumber(1);
  tiers.forEach(({ length: l, width: w }, i) => {
    const below = tiers[i - 1];
    if (!below) return;
    if (l.greaterThan(below.length)) {
      refuse(`${path}.tiers[${i}].length`, faults.doesNotFit('length', 'that of the block below'));
    }
    if (w.greaterThan(below.width)) {
      refuse(`${path}.tiers[${i}].width`, faults.doesNotFit('width', 'that of the block below'));
    }
  });
  const blocks = tiers.map(({ length: l, width: w, depth: d }, i) =>
    pad.step(say`${{ name }}, block ${{ n: i + 1 }}`, 'B = l × w × d', { l, w, d }, l.times(w).times(d)),
  );
  const one = total(`${name}, one of them`, 'B', blocks, pad);
  const volume = pad.step(say`${{ name }}, volume`, 'V = n × B', { n, B: one }, one.times(n));
  const faces = tiers.map((tier) => around(tier).times(tier.depth));
  const formed = total(`${name}, sides of one`, 'F', faces, pad).times(n);
  const lowest = tiers[0] as Tier;
  return { volume, bearing: lowest.length.times(lowest.width).times(n), formed };
}

function bodyOf(footing: Footing, place: Place, pad: Pad): Body {
  switch (footing.kind) {
    case 'strip':
      return strip(footing, place, pad);
    case 'loop':
      return loop(footing, place, pad);
    case 'tapered-strip':
      return taperedStrip(footing, place, pad);
    case 'pad':
      return padFooting(footing, place, pad);
    case 'tapered-pad':
      return taperedPad(footing, place, pad);
    case 'stepped-pad':
      return steppedPad(footing, place, pad);
  }
}

function reckon({ footings, frostDepth }: Parsed, pad: Pad): FootingVolumeFigures {
  const bodies = footings.map((footing, i) =>
    bodyOf(footing, { name: `footing ${i + 1}`, path: `footings[${i}]` }, pad),
  );
  const volumes = bodies.map((b) => b.volume);
  heedFrost(
    footings.map(({ founded, indoors }, i) => ({ name: `footing ${i + 1}`, founded, indoors })),
    frostDepth,
    pad,
  );
  heedThinFootings(
    footings.map((footing, i) => ({
      name: `footing ${i + 1}`,
      depth: 'depth' in footing ? footing.depth : undefined,
    })),
    pad,
  );
  pad.caution(cautions.buriedUtilities);
  pad.caution(sharedCautions.alkali);
  return {
    volume: total('volume', 'V', volumes, pad),
    volumes,
    bearingArea: total(
      'bearing area',
      'A',
      bodies.map((b) => b.bearing),
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

const MOST_FOOTINGS = 500;
const MOST_ALIKE = 100_000;

function door(): Field<Parsed> {
  const l = (what: string, ordinary: Ordinary): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const count = maybe(whole('count', 1, MOST_ALIKE));
  const ground = foundedFields();
  const depth = l('depth', FOOTING_DEPTH);
  const pad = { length: l('length', PAD_SIDE), width: l('width', PAD_SIDE), depth };
  const steps = fields({
    count: whole('count', 1, 1000),
    height: l('height', FOOTING_STEP),
    lap: l('lap', PAD_SIDE),
  });
  const footing = kinds('kind', [
    fields({
      kind: word('strip'),
      length: l('length', FOOTING_LENGTH),
      width: l('width', FOOTING_WIDTH),
      depth,
      steps: maybe(steps),
      ...ground,
    }),
    fields({
      kind: word('loop'),
      outerLength: l('outerLength', FOOTING_LENGTH),
      outerWidth: l('outerWidth', FOOTING_LENGTH),
      width: l('width', FOOTING_WIDTH),
      depth,
      ...ground,
    }),
    fields({
      kind: word('tapered-strip'),
      length: l('length', FOOTING_LENGTH),
      bottomWidth: l('bottomWidth', FOOTING_WIDTH),
      topWidth: l('topWidth', FOOTING_WIDTH),
      depth,
      ...ground,
    }),
    fields({ kind: word('pad'), ...pad, count, ...ground }),
    fields({
      kind: word('tapered-pad'),
      length: l('length', PAD_SIDE),
      width: l('width', PAD_SIDE),
      edge: quantity('length', 'edge', 'not-negative', PAD_EDGE),
      topLength: l('topLength', PAD_TOP),
      topWidth: l('topWidth', PAD_TOP),
      taper: l('taper', FOOTING_DEPTH),
      count,
      ...ground,
    }),
    fields({ kind: word('stepped-pad'), tiers: list(fields(pad), 2, 20), count, ...ground }),
  ]);
  return fields({ footings: list(footing, 1, MOST_FOOTINGS), frostDepth: frostField() });
}

/**
 * Concrete for footings: strips, loops, pads, tapered, stepped.
 *
 * @param input - a list of footings, and how deep the ground freezes
 * @returns volume in all and of each, bearing area, faces to form
 * @throws {InputError} `does-not-fit` where a part is larger than what holds it; lengths that cannot be
 * read or are not greater than zero
 * @source geometry
 * @example
 * ```ts
 * import { footingVolume } from 'flatwork-reckoner';
 *
 * const { figures } = footingVolume({
 *   footings: [
 *     { kind: 'loop', outerLength: '33 ft 4 in', outerWidth: '21 ft 4 in', width: '2 ft', depth: '1 ft' },
 *   ],
 * });
 * figures.volume.format('ft3'); // '202.67 ft3'
 * ```
 */
export const footingVolume: Calculation<FootingVolumeInput, FootingVolumeFigures> = /*#__PURE__*/ define({
  id: 'footing-volume',
  title: 'Footing volume',
  version: 1,
  sources: [CLOSED_FORM],
  input: door,
  reckon,
  takes: () => [{ item: 'concrete', from: 'volume' }],
});
