/**
 * Piers and posts: round, rectangular, tapered and belled.
 *
 * `V = π × D² ÷ 4 × h` for a round one, `π × h × (D² + D × d + d²) ÷ 12` for a round one that tapers, and
 * the prismoidal formula for a rectangular one that tapers. A belled pier is a shaft on a frustum on a
 * short cylinder, the toe.
 *
 * Source: geometry.
 */

import type { LengthInput } from '../outline/outline';
import * as faults from '../quantity/faults';
import { hypotenuse } from '../quantity/hypotenuse';
import { constant } from '../quantity/make';
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
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { type FormTubesFigures, tubesOf, tubesTaken } from './form-tubes';
import { type Founded, type FoundedInput, foundedFields, frostField, heedFrost } from './frost';
import { BELL_HEIGHT, BELL_TOE, BELL_WIDTH, PIER_HEIGHT, PIER_SIDE, TUBE_LENGTH } from './ordinary';
import { circleArea, coneFrustum, rectangularFrustum, TWO, timesPi } from './solids';

/** A round pier. */
export interface RoundPierInput extends FoundedInput {
  /** Always `round`. */
  readonly kind: 'round';
  /** Across. */
  readonly diameter: LengthInput;
  /** Top to bottom. */
  readonly height: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A rectangular pier. */
export interface RectangularPierInput extends FoundedInput {
  /** Always `rectangular`. */
  readonly kind: 'rectangular';
  /** One side. */
  readonly length: LengthInput;
  /** The other side; as the first by default. */
  readonly width?: LengthInput;
  /** Top to bottom. */
  readonly height: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A round pier that tapers. */
export interface TaperedRoundPierInput extends FoundedInput {
  /** Always `tapered-round`. */
  readonly kind: 'tapered-round';
  /** Across the bottom. */
  readonly bottomDiameter: LengthInput;
  /** Across the top; zero for a cone. */
  readonly topDiameter: LengthInput;
  /** Top to bottom. */
  readonly height: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A rectangular pier that tapers. */
export interface TaperedRectangularPierInput extends FoundedInput {
  /** Always `tapered-rectangular`. */
  readonly kind: 'tapered-rectangular';
  /** One side at the bottom. */
  readonly length: LengthInput;
  /** The other side at the bottom; as the first by default. */
  readonly width?: LengthInput;
  /** Side of the top along `length`; may be zero. */
  readonly topLength: LengthInput;
  /** Side of the top along `width`; as `topLength` by default. */
  readonly topWidth?: LengthInput;
  /** Top to bottom. */
  readonly height: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** A round shaft that widens at its foot. */
export interface BelledPierInput extends FoundedInput {
  /** Always `belled`. */
  readonly kind: 'belled';
  /** Across the shaft. */
  readonly shaftDiameter: LengthInput;
  /** Across the bell. */
  readonly bellDiameter: LengthInput;
  /** Top to bottom, with the bell. */
  readonly height: LengthInput;
  /** Height over which the shaft widens. */
  readonly bellHeight: LengthInput;
  /** Height of the upright edge under the bell; none by default. */
  readonly toe?: LengthInput;
  /** How many alike; one by default. */
  readonly count?: number;
}

/** One pier, or several alike. */
export type PierInput =
  | RoundPierInput
  | RectangularPierInput
  | TaperedRoundPierInput
  | TaperedRectangularPierInput
  | BelledPierInput;

/** Input of {@link pierVolume}. */
export interface PierVolumeInput {
  /** The piers. */
  readonly piers: readonly PierInput[];
  /** How deep the ground freezes, as the local building department says; `0 in` where it does not. */
  readonly frostDepth?: LengthInput;
  /** Length of the tubes that round piers are poured in, as they are sold; where none is given, none are counted. */
  readonly tubeLength?: LengthInput;
}

/** Figures of {@link pierVolume}. */
export interface PierVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** Of each entry, in order. */
  readonly volumes: readonly Quantity<'volume'>[];
  /** Area that bears on the ground. */
  readonly bearingArea: Quantity<'area'>;
  /** Faces around the piers: what forms or tubes must enclose. */
  readonly sideArea: Quantity<'area'>;
  /** Tubes for round piers, where their length is given. */
  readonly tubes?: readonly FormTubesFigures[];
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;

interface Alike extends Founded {
  readonly height: Length;
  readonly count: Count | undefined;
}

type Pier = Alike &
  (
    | { readonly kind: 'round'; readonly diameter: Length }
    | { readonly kind: 'rectangular'; readonly length: Length; readonly width: Length | undefined }
    | { readonly kind: 'tapered-round'; readonly bottomDiameter: Length; readonly topDiameter: Length }
    | {
        readonly kind: 'tapered-rectangular';
        readonly length: Length;
        readonly width: Length | undefined;
        readonly topLength: Length;
        readonly topWidth: Length | undefined;
      }
    | {
        readonly kind: 'belled';
        readonly shaftDiameter: Length;
        readonly bellDiameter: Length;
        readonly bellHeight: Length;
        readonly toe: Length | undefined;
      }
  );

interface Parsed {
  readonly piers: readonly Pier[];
  readonly frostDepth: Length | undefined;
  readonly tubeLength: Length | undefined;
}

type Of<F extends Pier['kind']> = Extract<Pier, { kind: F }>;

interface Body {
  readonly volume: Volume;
  readonly bearing: Area;
  readonly side: Area;
}

interface Place {
  readonly name: string;
  readonly path: string;
}

const ONE = constant(() => wholeNumber(1));

/** √(h² + ((a − b) ÷ 2)²): along a slope that rises h while a width goes from a to b. */
const slant = (h: Length, a: Length, b: Length): Length => hypotenuse(h, a.minus(b).over(TWO()));

function round({ diameter: D, height: h }: Of<'round'>, { name }: Place, pad: Pad): Body {
  const A = pad.step(say`${{ name }}, bearing area`, 'A = π × D² ÷ 4', { D }, circleArea(D));
  const volume = pad.step(say`${{ name }}, volume`, 'V = A × h', { A, h }, A.times(h));
  const side = pad.step(say`${{ name }}, side`, 'S = π × D × h', { D, h }, timesPi(D.times(h)));
  return { volume, bearing: A, side };
}

function rectangular(pier: Of<'rectangular'>, { name }: Place, pad: Pad): Body {
  const { length: l, height: h } = pier;
  const w = pier.width ?? l;
  const A = pad.step(say`${{ name }}, bearing area`, 'A = l × w', { l, w }, l.times(w));
  const volume = pad.step(say`${{ name }}, volume`, 'V = A × h', { A, h }, A.times(h));
  const faces = l.plus(w).times(TWO()).times(h);
  return {
    volume,
    bearing: A,
    side: pad.step(say`${{ name }}, sides`, 'S = 2 × (l + w) × h', { l, w, h }, faces),
  };
}

function coneSide(name: string, h: Length, D: Length, d: Length, pad: Pad): Area {
  const s = pad.step(
    say`${{ name }}, along the slope`,
    's = √(h² + ((D − d) ÷ 2)²)',
    { h, D, d },
    slant(h, D, d),
  );
  const side = timesPi(D.plus(d).times(s)).over(TWO());
  return pad.step(say`${{ name }}, sloping side`, 'S = π × (D + d) × s ÷ 2', { D, d, s }, side);
}

function taperedRound(pier: Of<'tapered-round'>, { name }: Place, pad: Pad): Body {
  const { bottomDiameter: D, topDiameter: d, height: h } = pier;
  const volume = pad.step(
    say`${{ name }}, volume`,
    'V = π × h × (D² + D × d + d²) ÷ 12',
    { h, D, d },
    coneFrustum(h, D, d),
  );
  const bearing = pad.step(say`${{ name }}, bearing area`, 'A = π × D² ÷ 4', { D }, circleArea(D));
  return { volume, bearing, side: coneSide(name, h, D, d, pad) };
}

function taperedRectangular(pier: Of<'tapered-rectangular'>, { name }: Place, pad: Pad): Body {
  const { length: l, topLength: a, height: h } = pier;
  const [w, b] = [pier.width ?? l, pier.topWidth ?? a];
  const { foot: A, volume } = rectangularFrustum(name, { l, w, a, b, h }, pad);
  const s = pad.step(
    say`${{ name }}, slope of the faces on l`,
    's = √(h² + ((w − b) ÷ 2)²)',
    { h, w, b },
    slant(h, w, b),
  );
  const t = pad.step(
    say`${{ name }}, slope of the faces on w`,
    't = √(h² + ((l − a) ÷ 2)²)',
    { h, l, a },
    slant(h, l, a),
  );
  const side = pad.step(
    say`${{ name }}, sides`,
    'S = (l + a) × s + (w + b) × t',
    { l, a, s, w, b, t },
    l.plus(a).times(s).plus(w.plus(b).times(t)),
  );
  return { volume, bearing: A, side };
}

function belled(pier: Of<'belled'>, { name, path }: Place, pad: Pad): Body {
  const { shaftDiameter: d, bellDiameter: D, bellHeight: b, height: h } = pier;
  if (!d.lessThan(D)) refuse(`${path}.shaftDiameter`, faults.doesNotFit('shaftDiameter', 'bellDiameter'));
  const t = pier.toe ?? b.minus(b);
  const foot = b.plus(t);
  if (foot.greaterThan(h)) refuse(`${path}.bellHeight`, faults.doesNotFit('the bell with its toe', 'height'));
  const l = pad.step(say`${{ name }}, shaft above the bell`, 'l = h − b − t', { h, b, t }, h.minus(foot));
  const parts = [
    pad.step(say`${{ name }}, shaft`, 'V = π × d² ÷ 4 × l', { d, l }, circleArea(d).times(l)),
    pad.step(say`${{ name }}, bell`, 'V = π × b × (D² + D × d + d²) ÷ 12', { b, D, d }, coneFrustum(b, D, d)),
    pad.step(say`${{ name }}, toe`, 'V = π × D² ÷ 4 × t', { D, t }, circleArea(D).times(t)),
  ];
  const sides = [
    pad.step(say`${{ name }}, side of the shaft`, 'S = π × d × l', { d, l }, timesPi(d.times(l))),
    coneSide(name, b, D, d, pad),
    pad.step(say`${{ name }}, side of the toe`, 'S = π × D × t', { D, t }, timesPi(D.times(t))),
  ];
  return {
    volume: total(`${name}, volume`, 'V', parts, pad),
    bearing: circleArea(D),
    side: total(`${name}, sides`, 'S', sides, pad),
  };
}

function oneOf(pier: Pier, place: Place, pad: Pad): Body {
  switch (pier.kind) {
    case 'round':
      return round(pier, place, pad);
    case 'rectangular':
      return rectangular(pier, place, pad);
    case 'tapered-round':
      return taperedRound(pier, place, pad);
    case 'tapered-rectangular':
      return taperedRectangular(pier, place, pad);
    case 'belled':
      return belled(pier, place, pad);
  }
}

function bodyOf(pier: Pier, i: number, pad: Pad): Body {
  const name = `pier ${i + 1}`;
  const { volume, bearing, side } = oneOf(pier, { name, path: `piers[${i}]` }, pad);
  const n = pier.count ?? ONE();
  if (n.equals(ONE())) return { volume, bearing, side };
  return {
    volume: pad.step(say`${{ name }}, all alike`, 'T = n × V', { n, V: volume }, volume.times(n)),
    bearing: bearing.times(n),
    side: side.times(n),
  };
}

/** Round piers that do not taper, as tubes are sold for. */
const roundOnes = (piers: readonly Pier[]) =>
  piers.flatMap((pier, i) =>
    pier.kind === 'round'
      ? [{ ...pier, count: pier.count ?? ONE(), name: `pier ${i + 1}`, path: `piers[${i}]` }]
      : [],
  );

function reckon({ piers, frostDepth, tubeLength }: Parsed, pad: Pad): PierVolumeFigures {
  const bodies = piers.map((pier, i) => bodyOf(pier, i, pad));
  const volumes = bodies.map((b) => b.volume);
  heedFrost(
    piers.map(({ founded, indoors, height }, i) => ({
      name: `pier ${i + 1}`,
      founded,
      indoors,
      atMost: height,
    })),
    frostDepth,
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
    sideArea: total(
      'sides',
      'S',
      bodies.map((b) => b.side),
      pad,
    ),
    ...(tubeLength ? { tubes: tubesOf(roundOnes(piers), tubeLength, pad) } : {}),
  };
}

function door(): Field<Parsed> {
  const l = (what: string, ordinary = PIER_SIDE): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const zero = (what: string, ordinary = PIER_SIDE): Field<Length> =>
    quantity('length', what, 'not-negative', ordinary);
  const alike = {
    height: l('height', PIER_HEIGHT),
    count: maybe(whole('count', 1, 100_000)),
    ...foundedFields(),
  };
  const pier = kinds('kind', [
    fields({ kind: word('round'), diameter: l('diameter'), ...alike }),
    fields({ kind: word('rectangular'), length: l('length'), width: maybe(l('width')), ...alike }),
    fields({
      kind: word('tapered-round'),
      bottomDiameter: l('bottomDiameter'),
      topDiameter: zero('topDiameter'),
      ...alike,
    }),
    fields({
      kind: word('tapered-rectangular'),
      length: l('length'),
      width: maybe(l('width')),
      topLength: zero('topLength'),
      topWidth: maybe(zero('topWidth')),
      ...alike,
    }),
    fields({
      kind: word('belled'),
      shaftDiameter: l('shaftDiameter'),
      bellDiameter: l('bellDiameter', BELL_WIDTH),
      bellHeight: l('bellHeight', BELL_HEIGHT),
      toe: maybe(zero('toe', BELL_TOE)),
      ...alike,
    }),
  ]);
  return fields({
    piers: list(pier, 1, 500),
    frostDepth: frostField(),
    tubeLength: maybe(l('tubeLength', TUBE_LENGTH)),
  });
}

/**
 * Concrete for piers and posts: round, rectangular, tapered, belled.
 *
 * @param input - a list of piers, and how deep the ground freezes
 * @returns volume in all and of each, bearing area, sides
 * @throws {InputError} `does-not-fit` for a bell that does not fit its pier, or a pier higher than its tube; lengths that cannot be read or
 * are not greater than zero
 * @source geometry
 * @example
 * ```ts
 * import { pierVolume } from 'flatwork-reckoner';
 *
 * const { figures } = pierVolume({ piers: [{ kind: 'round', diameter: '12 in', height: '4 ft', count: 6 }] });
 * figures.volume.format(); // '0.70 yd3'
 * ```
 */
export const pierVolume: Calculation<PierVolumeInput, PierVolumeFigures> = /*#__PURE__*/ define({
  id: 'pier-volume',
  title: 'Pier volume',
  version: 1,
  sources: [CLOSED_FORM],
  input: door,
  reckon,
  takes: ({ tubes }) => [{ item: 'concrete', from: 'volume' }, ...tubesTaken(tubes)],
});
