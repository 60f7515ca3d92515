/**
 * Mats of bars over any outline with openings, with the bars around them: what `rebar-layout` reckons with.
 *
 * Lines of bar are spread evenly over the outline less its cover, at most the spacing apart, and
 * clipped where they come nearer to an edge than the cover. They are searched for in binary
 * numbers and rounded down to whole cutting steps, 1/16 in or 1 mm unless another is given, so
 * reported lengths are exact and at most one step short of what would fit.
 */
import * as faults from '../quantity/faults';
import { constant, length, mass } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import * as sharedCautions from '../reckoning/cautions';
import { wholeNumber } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import { type Alike, added, grouped, keyOf, listFigures, marked } from './bar-list';
import { type AnyBarSize, bySize, diameterOf, isHeavy } from './bars';
import * as cautions from './cautions';
import { abovePair, namedLike } from './common';
import { lapsBeside, wideSpacing } from './mat-cautions';
import { backTo, type Spot, spotsOf } from './mat-clip';
import { heedEdges, heedFaces } from './mat-cover';
import { CORNER_LENGTH, supportsOf, WIDE } from './mat-defaults';
import { dowelGroups, stepGroups } from './mat-extras';
import { checkClear, type Gap, matFigures } from './mat-figures';
import { type Ground, groundOf, type Laid, layAll } from './mat-ground';
import type { ParsedRegion } from './rebar-fields';
import type { MarkUse, MatFigures, MatLayer, RebarRegionFigures } from './rebar-types';
import { TIE_WIRE_COURSE } from './sources';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

const WIRE = /*#__PURE__*/ paired('length', '12 in', '0.3 m');
/** 79 ft to the pound, or 53 m to the kilogram. */
const WIRE_WEIGHT = {
  customary: constant(() => mass('1 lb').over(length('79 ft'))),
  metric: constant(() => mass('1 kg').over(length('53 m'))),
};
const ONE = constant(() => wholeNumber(1));

/** A bar in its place, for drawing and for checking: plain meters, not figures. */
export interface BarPlace {
  /** Mark on the bar list. */
  readonly mark: string;
  /** The mat that it belongs to. */
  readonly layer: MatLayer;
  /** What the bar is there for. */
  readonly use: MarkUse;
  /** Size of the bar. */
  readonly bar: AnyBarSize;
  /** Two ends, or more corners where it follows an edge; meters, as the outline lies. */
  readonly path: readonly {
    /** Along x, in meters, as the outline lies. */
    readonly x: number;
    /** Along y, in meters, as the outline lies. */
    readonly y: number;
  }[];
}

/** Bars in their places, with the rings that they lie in. */
export interface MatSheet {
  readonly places: BarPlace[];
  readonly rings: readonly (readonly Spot[])[];
}

/** Where the bars of laid mats lie. */
export function placesOf(input: ParsedRegion): MatSheet {
  const ground = groundOf(input, new Pad(systemOfInput(input).system));
  const laid = layAll(input, ground);
  const groups = grouped(laid, ground.step);
  const marks = marked([...groups.values()]);
  const back = backTo(ground.origin);
  const places = laid.flatMap(({ mat, placed }) =>
    placed.bars().map((placedBar): BarPlace => {
      const group = groups.get(keyOf(mat, placedBar)) as Alike;
      const { use, spots } = placedBar;
      return { mark: marks.get(group) ?? '', layer: mat.layer, use, bar: group.bar, path: back(spots) };
    }),
  );
  return { places, rings: spotsOf(ground.rings).map(back) };
}

/** What wire is taken for ties. */
interface Wire {
  readonly wirePerTie: Length | undefined;
  readonly wireWeight: Quantity<'mass-per-length'> | undefined;
}

/** Wire for so many ties. */
export function tieWireFor(ties: Count, { wirePerTie, wireWeight }: Wire, pad: Pad): Quantity<'mass'> {
  const [w, q] = [wirePerTie ?? WIRE.as(pad.system), wireWeight ?? WIRE_WEIGHT[pad.system]()];
  const usual = [
    ['wirePerTie', wirePerTie, w, 'wire for one tie'],
    ['wireWeight', wireWeight, q, 'No. 16 wire'],
  ] as const;
  for (const [name, given, value, because] of usual) {
    if (given) continue;
    pad.assume({ name, value: value, because, override: say`Give ${{ name }}`, source: TIE_WIRE_COURSE });
  }
  return pad.step('tie wire', 'W = t × w × q', { t: ties, w, q }, w.times(ties).times(q));
}

function assumeUsual(input: ParsedRegion, { like }: Ground, pad: Pad): void {
  const usual = [
    ['cornerBars', ONE(), 'one bar across each corner that cracks start from'],
    ['cornerBarLength', namedLike(CORNER_LENGTH(), like), 'bars of this length across such corners'],
  ] as const;
  for (const [name, value, because] of usual) {
    if (input[name] || input.cornerBars?.sign() === 0) continue;
    pad.assume({ name, value: value, because, override: say`Give ${{ name }}`, source: COMMON_PRACTICE });
  }
  if (input.edgeBars === undefined) {
    pad.assume({
      name: 'edgeBars',
      value: 'yes',
      because: 'no place is then farther from a bar than half the spacing',
      override: 'Give edgeBars: false',
      source: COMMON_PRACTICE,
    });
  }
}

/** The widest spacing: as asked for where it is, else as it comes out. */
function widest({ mats }: ParsedRegion, figures: readonly MatFigures[]): Length {
  return figures
    .flatMap(({ along, across }, i) => {
      const { spacing, spacingAcross, linesAcross } = mats[i] ?? {};
      const asked = linesAcross ? undefined : (spacingAcross ?? spacing);
      return [spacing ?? along.evenSpacing, asked ?? across.evenSpacing];
    })
    .reduce((a, b) => (a.lessThan(b) ? b : a));
}

/** Between lines that have others beside them. */
const gapsOf = ({ mats }: ParsedRegion, figures: readonly MatFigures[]): Gap[] =>
  figures.flatMap(({ along, across }, i) => {
    const { bar, barAcross } = mats[i] as ParsedRegion['mats'][number];
    const ways = [
      [along, bar],
      [across, barAcross ?? bar],
    ] as const;
    return ways.flatMap(([lines, size]) =>
      lines.evenSpacing.sign() > 0 ? [{ clear: lines.clearSpacing, d: diameterOf(size) }] : [],
    );
  });

/** True where a bar that is too thick for laps is lapped. */
const lapsHeavy = ({ mat, placed }: Laid): boolean =>
  (placed.lapsAlong > 0 && isHeavy(mat.bar)) || (placed.lapsAcross > 0 && isHeavy(mat.barAcross ?? mat.bar));

function heed(
  input: ParsedRegion,
  ground: Ground,
  laid: readonly Laid[],
  mats: readonly MatFigures[],
  pad: Pad,
): void {
  heedEdges(input, ground.cover, pad);
  heedFaces(input, pad);
  const spacing = widest(input, mats);
  if (abovePair(spacing, WIDE())) pad.caution(wideSpacing(namedLike(WIDE(), spacing), spacing));
  checkClear(gapsOf(input, mats), pad);
  const inLine = added(mats.map((m) => m.lapsInLine));
  if (inLine.sign() > 0) pad.caution(lapsBeside(inLine));
  if (laid.some(lapsHeavy)) pad.caution(cautions.noLapOfLargeBars);
  if (input.dowels?.length) pad.caution(sharedCautions.silica);
  // Flat mats and dowels into a side lie down; only starters stand up.
  if (input.steps?.starterSpacing) pad.caution(cautions.impalement);
}

/** The thinnest bar of all mats, which sags first. */
const thinnest = ({ mats }: ParsedRegion): AnyBarSize =>
  bySize(new Set(mats.flatMap((m) => [m.bar, m.barAcross ?? m.bar])))[0] as AnyBarSize;

/** Reckon mats over any outline. */
export function reckonRegion(input: ParsedRegion, pad: Pad): RebarRegionFigures {
  const ground = groundOf(input, pad);
  assumeUsual(input, ground, pad);
  const laid = layAll(input, ground);
  const groups = [
    ...grouped(laid, ground.step).values(),
    ...dowelGroups(input, ground),
    ...stepGroups(input.steps, ground, pad),
  ];
  if (groups.length === 0) refuse('shortest', faults.doesNotFit('the shortest bar', 'the slab'));
  const list = listFigures(groups, ground, pad);
  const apart = supportsOf(input.supports, thinnest(input), ground.like, pad);
  const mats = laid.map((one) => matFigures(one, apart, ground, pad));
  const ties = added(mats.map((m) => m.ties));
  const tieWire = tieWireFor(ties, input, pad);
  heed(input, ground, laid, mats, pad);
  return {
    ...list,
    mats,
    intersections: added(mats.map((m) => m.crossings)),
    ties,
    tieWire,
    supports: added(mats.map((m) => m.supports)),
    cover: ground.cover,
  };
}
