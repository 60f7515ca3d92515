/**
 * Footings: strips, rectangular loops with their corners counted once, pads, tapered and stepped.
 *
 * A loop is the ring between its outside and its inside: `V = d × (2 × (L + W) × w − 4 × w²)`. A
 * tapered pad is a box with a prismoid on top. A stepped strip gains, at each step, a block as high
 * as the step and as long as the lap.
 *
 * Source: geometry.
 */
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as sharedCautions from '../reckoning/cautions';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { door, type Footing, type FootingParsed, type FootingVolumeInput, type Tier } from './footing-input';
import { heedFrost } from './frost';
import { rectangularFrustum, TWO } from './solids';
import { heedThinFootings } from './thin-footings';

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

function reckon({ footings, frostDepth }: FootingParsed, pad: Pad): FootingVolumeFigures {
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
