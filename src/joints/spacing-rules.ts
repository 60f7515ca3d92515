/**
 * What each published source gives for the spacing, the depth and the isolation of joints.
 *
 * The sources disagree. Each is shown with its own figure; which of them are applied, and which one
 * governs, is for `joint-spacing` to say.
 */
import { area, constant, length, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { CSA_CONTROL_JOINTS, type Source } from '../reckoning/source';
import { type Saying, say, type Words, wordsOf } from '../reckoning/words';
import { depthBy, JOINT_METHODS, type JointMethod } from './joint-depth';
import { isLargeStone, isThreeQuarterStone, nominally, nominallyAtLeast, nominallyAtMost } from './nominal';
import {
  ACI_302_JOINTS,
  ARMY_SLAB_PANELS,
  CURVED_JOINTS,
  FLOOR_SAWING,
  IRMCA_JOINTS,
  JOINT_DEPTH,
  JOINT_LAYOUT_RULES,
  MCGRAW_JOINTS,
  NAVY_REINFORCED,
  PAVEMENT_JOINTING,
  PAVEMENT_LAYOUT,
  PCA_NO_INTERVAL,
  POOL_DECK_JOINTS,
  SUDAS_JOINTS,
  TAPER_WIDTH,
  UFC_AIRFIELDS,
  UFGS_WALK_JOINTS,
} from './sources';

type Length = Quantity<'length'>;

/** What the joints are for. */
export type JointUse = 'slab' | 'walk' | 'curb';

/** What one source gives for the spacing. */
export interface SpacingBySource {
  /** The rule in a few words. */
  readonly rule: Words;
  /** Title of the source. */
  readonly source: string;
  /** The farthest apart by this source. */
  readonly spacing: Quantity<'length'>;
  /** The closer end, where the source gives a range. */
  readonly least?: Quantity<'length'>;
}

/** A depth by one way of cutting or forming the joint, or by one source. */
export interface DepthBySource {
  /** The way of cutting or forming it, or the rule in a few words. */
  readonly rule: Words;
  /** Title of the source. */
  readonly source: string;
  /** How deep; the shallower end, where the source gives a range. */
  readonly depth: Quantity<'length'>;
  /** The deeper end, where the source gives a range. */
  readonly most?: Quantity<'length'>;
}

/** What one source says of isolation joints at regular intervals. */
export interface IsolationBySource {
  /** Title of the source. */
  readonly source: string;
  /** False where the source wants none at regular intervals. */
  readonly regular: boolean;
  /** The farthest apart, where the source wants them regularly. */
  readonly atMost?: Quantity<'length'>;
}

/** What the rules are asked for. */
export interface Asked {
  readonly thickness: Length;
  readonly aggregateSize: Length;
  readonly slump: Length;
  readonly width: Length | undefined;
  readonly use: JointUse;
  readonly reinforced: boolean;
}

const nameOf = ({ title }: Source): string => title;

const times = (l: Length, n: number): Length => l.times(wholeNumber(n));
const least = (a: Length, b: Length): Length => (b.lessThan(a) ? b : a);

const isMetric = (l: Length): boolean => systemOfQuantity(l) === 'metric';
const asGiven = (l: Length): Length => l.in(isMetric(l) ? 'm' : 'ft');

const row = (rule: Saying, source: Source, spacing: Length, closer?: Length): SpacingBySource => ({
  rule: wordsOf(rule),
  source: nameOf(source),
  spacing,
  ...(closer ? { least: closer } : {}),
});

/** `[thickness in inches, feet]` as a table prints them. */
type Table = readonly (readonly [number, number])[];

const IRMCA: Table = [
  [4, 10],
  [5, 12],
  [6, 15],
];
const SUDAS: Table = [
  [6, 12],
  [7, 15],
  [8, 15],
  [9, 15],
  [10, 20],
];

/** As a job in the units of a length is told. */
const told = <T>(like: Length, customary: T, metric: T): T => (isMetric(like) ? metric : customary);

/** Feet and inches of a source as metric editions round them: 15 ft is 4.5 m, 1 in 25 mm. */
const feet = (like: Length, n: number): Length => length(told(like, `${n} ft`, `${(n * 3) / 10} m`));
const inches = (like: Length, n: number): Length => length(told(like, `${n} in`, `${n * 25} mm`));

/** The cap of ACI 302.1R-96. */
export const ACI_CAP = /*#__PURE__*/ paired('length', '18 ft', '5.5 m');

/** The printed value for a thickness that the table has; none is read between the lines. */
function printed(table: Table, t: Length): Length | undefined {
  const found = table.find(([thick]) => nominally(t, thick));
  return found && feet(t, found[1]);
}

const CSA_CAP = constant(() => length('5 m'));
const MCGRAW_FROM = 3;
const MCGRAW_LOW = 4;

/** The same numbers as the table that governs, but with a slump of 3 to 5 in, so two columns overlap. */
function mcgraw({ thickness: t, slump, aggregateSize }: Asked): SpacingBySource {
  // This source counts stone of 3/4 in as the larger, others as the smaller.
  const wet = isLargeStone(aggregateSize) || isThreeQuarterStone(aggregateSize) ? 30 : 24;
  const [from, to, low] = [3, 5, 4].map((n) => inches(t, n)) as [Length, Length, Length];
  const rule = say`${{ wet }} times at ${{ from }} to ${{ to }} of slump, 36 times under ${{ low }}`;
  if (!nominallyAtLeast(slump, MCGRAW_FROM)) return row(rule, MCGRAW_JOINTS, asGiven(times(t, 36)));
  const [most, closer] = [asGiven(times(t, 36)), asGiven(times(t, wet))];
  return !nominallyAtLeast(slump, MCGRAW_LOW)
    ? row(rule, MCGRAW_JOINTS, most, closer)
    : row(rule, MCGRAW_JOINTS, closer);
}

/** Its metric edition rounds to tenths of a meter, from memory. */
function airfield(t: Length): SpacingBySource {
  const [thin, thick] = [inches(t, 9), inches(t, 12)];
  const rule = say`by thickness: under ${{ thin }}, ${{ thin }} to ${{ thick }}, over ${{ thick }}`;
  const [near, far] = [told(t, '15 ft', '4.6 m'), told(t, '20 ft', '6.1 m')].map(length) as [Length, Length];
  if (!nominallyAtLeast(t, 9)) return row(rule, UFC_AIRFIELDS, near, length(told(t, '12.5 ft', '3.8 m')));
  return !nominallyAtMost(t, 12) ? row(rule, UFC_AIRFIELDS, far) : row(rule, UFC_AIRFIELDS, far, near);
}

function tables(t: Length): SpacingBySource[] {
  const rows: SpacingBySource[] = [row('24 times on granular base', SUDAS_JOINTS, asGiven(times(t, 24)))];
  const street = !nominallyAtMost(t, 10) ? feet(t, 20) : printed(SUDAS, t);
  if (street) rows.push(row('its table for streets', SUDAS_JOINTS, street));
  const lot = printed(IRMCA, t);
  if (lot) rows.push(row('its figures for lots and streets', IRMCA_JOINTS, lot));
  return rows;
}

/** What limits of panel shape make of a width. */
function shapes(w: Length): SpacingBySource[] {
  const by = (text: string, source: Source): SpacingBySource =>
    row(say`panels of ${{ shape: text }} at most`, source, asGiven(w.times(ratio(text))));
  const most = area(told(w, '600 ft2', '56 m2'));
  return [
    by('1.25:1', ARMY_SLAB_PANELS),
    by('1.5:1', MCGRAW_JOINTS),
    by('2:1', TAPER_WIDTH),
    row(say`panels of ${{ most }} at most`, ARMY_SLAB_PANELS, asGiven(most.over(w))),
  ];
}

/** The cap that several sources put on the spacing; the one that prints both systems has 15 ft (4.5 m). */
export const OTHER_CAP = /*#__PURE__*/ paired('length', '15 ft', '4.5 m');

/** From this thickness on, in inches, that cap is below what even the closest multiple of the thickness allows. */
export const CAPPED_FROM = 8;

/** What the sources that stop at 15 ft give. */
function capped(t: Length): SpacingBySource[] {
  const cap = OTHER_CAP.like(t);
  const upTo = (n: number): Length => least(asGiven(times(t, n)), cap);
  const thin = !nominallyAtLeast(t, 6);
  const rows = [
    row(say`24 times, at most ${{ cap }}`, POOL_DECK_JOINTS, upTo(24)),
    row(say`24 to 36 times, at most ${{ cap }}`, CURVED_JOINTS, upTo(36), upTo(24)),
    row(say`slabs no wider than ${{ cap }}`, JOINT_LAYOUT_RULES, cap, cap),
    thin
      ? row(say`pavements under ${{ thick: inches(t, 6) }}`, PAVEMENT_JOINTING, cap)
      : row('pavements', PAVEMENT_JOINTING, feet(t, 20), cap),
  ];
  if (nominallyAtLeast(t, 10)) return rows;
  return [
    ...rows,
    row(say`24 times on granular base, at most ${{ cap }}`, PAVEMENT_LAYOUT, upTo(24)),
    row(say`21 times on treated base, at most ${{ cap }}`, PAVEMENT_LAYOUT, upTo(21)),
  ];
}

/** In meters where the slab is metric; a source's own metric print stays as it is. */
function inFamily(t: Length, given: SpacingBySource): SpacingBySource {
  if (!isMetric(t)) return given;
  const { least: closer, spacing } = given;
  return { ...given, spacing: spacing.in('m'), ...(closer ? { least: closer.in('m') } : {}) };
}

/** What every source gives for the spacing, applied or not. */
export function spacingBySource(asked: Asked): SpacingBySource[] {
  const { thickness: t, width, use, reinforced } = asked;
  const [t24, t36] = [asGiven(times(t, 24)), asGiven(times(t, 36))];
  const rows = [
    row('24 to 36 times', ACI_302_JOINTS, least(t36, ACI_CAP.like(t)), least(t24, ACI_CAP.like(t))),
    row(
      say`24 to 36 times, at most ${{ cap: CSA_CAP().in(told(t, 'ft', 'm')) }}`,
      CSA_CONTROL_JOINTS,
      least(t36, CSA_CAP()),
      least(t24, CSA_CAP()),
    ),
    mcgraw(asked),
    ...tables(t),
    airfield(t),
    row('floors', FLOOR_SAWING, feet(t, 25), feet(t, 12)),
  ];
  if (reinforced) rows.push(row('reinforced slabs', NAVY_REINFORCED, feet(t, 25), feet(t, 15)));
  if (use === 'walk') rows.push(row('walks', UFGS_WALK_JOINTS, feet(t, 5)));
  if (use === 'curb') rows.push(row('curbs and gutters', UFGS_WALK_JOINTS, feet(t, 10)));
  const all = [...rows, ...(width ? shapes(width) : []), ...capped(t)];
  return all.map((one) => inFamily(t, one));
}

const depthRow = (rule: Saying, source: Source, depth: Length, most?: Length): DepthBySource => ({
  rule: wordsOf(rule),
  source: nameOf(source),
  depth,
  ...(most ? { most } : {}),
});

/** The depth by each way of cutting or forming it, and what other sources give. */
export function depthBySource(t: Length, use: JointUse): DepthBySource[] {
  const [quarter, third, fifth] = [4, 3, 5].map((n) => t.over(wholeNumber(n))) as [Length, Length, Length];
  const rows = JOINT_METHODS.map((method: JointMethod) => {
    const { depth, source } = depthBy(method, t);
    return depthRow(method, source, depth);
  });
  rows.push(
    depthRow('a quarter to a third', CSA_CONTROL_JOINTS, quarter, third),
    depthRow('a quarter to a third', NAVY_REINFORCED, quarter, third),
    depthRow('a fifth, as some have it', JOINT_DEPTH, fifth),
    depthRow('at least a quarter', IRMCA_JOINTS, quarter),
  );
  if (use === 'walk') rows.push(depthRow('walks', UFGS_WALK_JOINTS, inches(t, 1)));
  if (use === 'curb')
    rows.push(depthRow('curbs and gutters', UFGS_WALK_JOINTS, told(t, length('3/4 in'), length('20 mm'))));
  return rows;
}

/** Isolation at regular intervals: what a guide specification wants, and what says that none is needed. */
export function isolationBySource(t: Length, use: JointUse, reinforced: boolean): IsolationBySource[] {
  const rows: IsolationBySource[] = [{ source: nameOf(PCA_NO_INTERVAL), regular: false }];
  const every = (source: Source, n: number): void => {
    rows.push({ source: nameOf(source), regular: true, atMost: feet(t, n) });
  };
  if (use === 'walk') every(UFGS_WALK_JOINTS, 50);
  if (use === 'curb') every(UFGS_WALK_JOINTS, 100);
  if (reinforced) every(NAVY_REINFORCED, 20);
  return rows;
}
