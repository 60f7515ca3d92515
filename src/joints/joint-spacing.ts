/**
 * How far apart to joint a slab on ground, and how deep to cut.
 *
 * Spacing by a multiple of the thickness that depends on slump and aggregate, as in the spacing
 * table of the Portland Cement Association: 24 times for slump of 4 in and more with aggregate
 * under 3/4 in, 30 times with larger aggregate, 36 times for slump under 4 in. The table rounds the
 * middle column up to whole feet at 5, 7 and 9 in (13 ft for 12.5 ft); the multiple is kept here.
 * ACI 302.1R-96, as quoted, caps it at 18 ft; a strip is held to 1.5 times its width.
 *
 * A maximum from the plans, and for walks and curbs the intervals of a guide specification, govern where
 * they are tighter. What other published sources give stands beside it, applied or not, because they
 * disagree. No source read here tells wet from dry curing, so neither does the spacing.
 *
 * Sizes under two names count as one: slump of 100 mm is 4 in, stone of 19 or 20 mm is 3/4 in. On both the
 * sources draw their lines differently, so they count on the side that joints closer: such a slump as the
 * wetter, such stone as the smaller.
 *
 * Where the thickness tapers, the spacing goes by the thinnest and the depth by the thickest.
 */

import { constant, length, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { bareRatio } from '../reckoning/bare-ratio';
import { type Calculation, define } from '../reckoning/calculation';
import { silica } from '../reckoning/cautions';
import { choice, fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import { PLAN_LENGTH, SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, EARLY_ENTRY_DEPTH } from '../reckoning/source';
import { stoneSize } from '../reckoning/stone-size';
import { say, type Words } from '../reckoning/words';
import * as cautions from './cautions';
import { JOINT_METHODS, type JointMethod, workedDepth } from './joint-depth';
import { isLargeStone, isThreeQuarterStone, nominally, nominallyAtLeast, nominallyAtMost } from './nominal';
import { AGGREGATE_SIZE, JOINT_SPACING, PANEL_RATIO, SLUMP } from './ordinary';
import {
  ACI_302_JOINTS,
  JOINT_DEPTH,
  JOINT_LAYOUT_RULES,
  MCGRAW_JOINTS,
  PCA_JOINTS,
  UFGS_WALK_JOINTS,
} from './sources';
import {
  ACI_CAP,
  CAPPED_FROM,
  type DepthBySource,
  depthBySource,
  type IsolationBySource,
  isolationBySource,
  type JointUse,
  OTHER_CAP,
  type SpacingBySource,
  spacingBySource,
} from './spacing-rules';

/** Input of {@link jointSpacing}. */
export interface JointSpacingInput {
  /** Thickness of the slab; of one that tapers, where it is thinnest. */
  readonly thickness: QuantityInput<'length'>;
  /** Thickness where it is thickest, of a slab that tapers: the joints are as deep as that needs. */
  readonly thickest?: QuantityInput<'length'>;
  /** Largest aggregate size, nominal; as a length, by its size number `#57` or by its sieves `4/20`. */
  readonly aggregateSize: QuantityInput<'length'>;
  /** Slump of the concrete as placed. */
  readonly slump: QuantityInput<'length'>;
  /** Width of the strip between edges or joints, where it is set already, as on a walk. */
  readonly width?: QuantityInput<'length'>;
  /** How long a panel may be for its width; by default 1.5 to 1. */
  readonly longestRatio?: QuantityInput<'ratio'>;
  /** By default a slab. Walks and curbs have joints at the intervals of a guide specification. */
  readonly use?: 'slab' | 'walk' | 'curb';
  /** The farthest apart that the plans allow. */
  readonly maximum?: QuantityInput<'length'>;
  /** True for a slab with steel; what a source gives for it is shown, the spacing stays that of plain slabs. */
  readonly reinforced?: boolean;
  /** How the joints are made; by default with a conventional saw. */
  readonly method?: 'conventional-saw' | 'early-entry-saw' | 'hand-groover' | 'preformed-strip';
}

/** The rule that came out tightest. */
export type GoverningRule = 'thickness' | 'maximum' | 'panel shape' | 'plans' | 'walk' | 'curb';

/** Figures of {@link jointSpacing}. */
export interface JointSpacingFigures {
  /** The farthest apart that all rules allow. */
  readonly spacing: Quantity<'length'>;
  /** The rule that is tightest. */
  readonly governs: GoverningRule;
  /** By the multiple of the thickness alone. */
  readonly byThickness: Quantity<'length'>;
  /** The multiple of the thickness: 24, 30 or 36. */
  readonly multiple: Quantity<'count'>;
  /** The cap of ACI 302.1R-96. */
  readonly maximum: Quantity<'length'>;
  /** By the width of the strip, where it is given. */
  readonly byShape?: Quantity<'length'>;
  /** Depth of the joint as it is made; sawn, a quarter of the greatest thickness and at least 1 in. */
  readonly depth: Quantity<'length'>;
  /** Why the governing rule governs. */
  readonly because: Words;
  /** What each published source gives for the spacing, those that disagree included. */
  readonly spacings: readonly SpacingBySource[];
  /** The depth by each way of cutting or forming a joint, and by sources that disagree. */
  readonly depths: readonly DepthBySource[];
  /** Isolation at regular intervals, by source. */
  readonly isolation: readonly IsolationBySource[];
}

type Length = Quantity<'length'>;

interface Given {
  readonly thickness: Length;
  readonly thickest: Length | undefined;
  readonly aggregateSize: Length;
  readonly slump: Length;
  readonly width: Length | undefined;
  readonly longestRatio: Quantity<'ratio'> | undefined;
  readonly use: JointUse | undefined;
  readonly maximum: Length | undefined;
  readonly reinforced: boolean | undefined;
  readonly method: JointMethod | undefined;
}

/** The input with the thicknesses in their order. */
type Parsed = Given & { readonly thickest: Length };

/** Inches of slump and of thickness that the published table goes by, and to. */
const LOW_SLUMP = 4;
const TABLE_SLUMP = 6;
const TABLE_FROM = 4;
const TABLE_TO = 10;
/** Thinner concrete is a topping. */
const TOPPING = 3;
const LONGEST = constant(() => ratio('1.5:1'));
const EVERY = {
  walk: /*#__PURE__*/ paired('length', '5 ft', '1.5 m'),
  curb: /*#__PURE__*/ paired('length', '10 ft', '3 m'),
};

function multipleFor({ slump, aggregateSize }: Parsed, pad: Pad): number {
  assumeBoundaries(slump, aggregateSize, pad);
  if (!nominallyAtLeast(slump, LOW_SLUMP)) return 36;
  return isLargeStone(aggregateSize) ? 30 : 24;
}

/** Sizes on which the sources draw their lines differently. */
function assumeBoundaries(slump: Length, aggregateSize: Length, pad: Pad): void {
  if (nominally(slump, LOW_SLUMP)) {
    pad.assume({
      name: 'slump class',
      value: say`${{ slump }} counts as the wetter`,
      because: say`${{ slump: paired('length', '4 in', '100 mm') }} is the boundary of the table, and the closer spacing is the safe one`,
      override: 'Give the slump as measured, if it is lower',
      source: PCA_JOINTS,
    });
  }
  if (isThreeQuarterStone(aggregateSize) && nominallyAtLeast(slump, LOW_SLUMP)) {
    pad.assume({
      name: 'aggregate class',
      value: say`${{ aggregateSize }} counts as the smaller`,
      because: say`the sources put stone of ${{ stone: paired('length', '3/4 in', '20 mm') }} in either class or in none, and the closer spacing is the safe one`,
      override: 'Give maximum where the plans set the spacing',
      source: COMMON_PRACTICE,
    });
  }
}

const isMetric = (l: Length): boolean => systemOfQuantity(l) === 'metric';
const asFeet = (l: Length): Length => l.in(isMetric(l) ? 'm' : 'ft');
/** So many inches in the family of the slab: 4 in, or 100 mm under its metric name. */
const inchesLike = (t: Length, n: number): Length => length(isMetric(t) ? `${n * 25} mm` : `${n} in`);

function shapeLimit({ width, longestRatio }: Parsed, pad: Pad): Length | undefined {
  if (!width) return undefined;
  if (!longestRatio) {
    pad.assume({
      name: 'longestRatio',
      value: LONGEST(),
      because: 'panels longer than that tend to crack across',
      override: 'Give longestRatio; published limits run from 1.25:1 to 2:1',
      source: MCGRAW_JOINTS,
    });
  }
  const q = longestRatio ?? LONGEST();
  return pad.step('by shape of panel', 'p = q × w', { q, w: width }, asFeet(width.times(q)));
}

/** A rule that is applied, with its symbol in the working and why it would govern. */
interface Applied {
  readonly rule: GoverningRule;
  readonly symbol: string;
  readonly spacing: Length;
  readonly because: Words;
}

function appliedRules(input: Parsed, byThickness: Length, byShape: Length | undefined): Applied[] {
  const rules: Applied[] = [
    {
      rule: 'thickness',
      symbol: 'b',
      spacing: byThickness,
      because: say`the multiple of the thickness for this slump and aggregate is the tightest rule`,
    },
    {
      rule: 'maximum',
      symbol: 'c',
      spacing: ACI_CAP.like(input.thickness),
      because: say`ACI 302.1R-96, as quoted, allows no more`,
    },
  ];
  const { use, maximum } = input;
  const because = say`the panel would be too long for its width`;
  if (byShape) rules.push({ rule: 'panel shape', symbol: 'p', spacing: byShape, because });
  if (use === 'walk' || use === 'curb') {
    const spacing = EVERY[use].like(input.thickness);
    rules.push({ rule: use, symbol: 'w', spacing, because: say`the guide specification sets this interval` });
  }
  if (maximum)
    rules.push({ rule: 'plans', symbol: 'x', spacing: maximum, because: say`the plans allow no more` });
  return rules;
}

const tightest = (rules: readonly Applied[]): Applied =>
  rules.reduce((a, b) => (a.spacing.greaterThan(b.spacing) ? b : a));

function useOf({ use }: Parsed, pad: Pad): JointUse {
  if (use) return use;
  pad.assume({
    name: 'use',
    value: 'slab',
    because: 'no interval of its own is set for slabs',
    override: 'Give use for a walk or a curb',
    source: UFGS_WALK_JOINTS,
  });
  return 'slab';
}

function depthFor({ thickest, method }: Parsed, pad: Pad): Length {
  if (!method) {
    pad.assume({
      name: 'method',
      value: 'conventional-saw',
      because: 'the usual way for slabs of this kind',
      override: 'Give method',
      source: COMMON_PRACTICE,
    });
  }
  return workedDepth(method ?? 'conventional-saw', thickest, pad);
}

function heed({ thickness: t, slump, reinforced, method }: Parsed, pad: Pad): void {
  if (!nominallyAtMost(slump, TABLE_SLUMP)) {
    pad.caution(cautions.slumpOutOfTable(inchesLike(slump, TABLE_SLUMP), slump));
  }
  const [from, to] = [inchesLike(t, TABLE_FROM), inchesLike(t, TABLE_TO)];
  if (!nominallyAtLeast(t, TABLE_FROM)) {
    const thin = nominallyAtLeast(t, TOPPING) ? cautions.thicknessOutOfTable : cautions.toppingOutOfTable;
    pad.caution(thin(from, to, from, t));
  }
  if (!nominallyAtMost(t, TABLE_TO)) pad.caution(cautions.thicknessOutOfTable(from, to, to, t));
  if (reinforced) pad.caution(cautions.reinforcedJoints);
  if (!method || method.endsWith('saw')) pad.caution(silica);
}

/** From 8 in on even the closest multiple passes a cap that several sources set. */
function heedCaps({ thickness }: Parsed, spacing: Length, pad: Pad): void {
  const cap = OTHER_CAP.exceededBy(spacing);
  if (nominallyAtLeast(thickness, CAPPED_FROM) && cap) pad.caution(cautions.overOtherCaps(cap, spacing));
}

/**
 * A joint needs slab below it, and a strip wider than its panels are long needs joints along it too, also one of panels
 * of a good shape that is more than a quarter wider than joints may be apart, which is common practice.
 */
function heedShape(
  { width, longestRatio, thickness }: Parsed,
  {
    spacing,
    bothWays,
    depth,
  }: { readonly spacing: Length; readonly bothWays: Length; readonly depth: Length },
  pad: Pad,
): void {
  const half = thickness.over(wholeNumber(2));
  if (depth.greaterThan(half)) pad.caution(cautions.deepCut(half, depth));
  if (!width) return;
  const most = longestRatio ?? LONGEST();
  const ratioAcross = width.over(spacing);
  if (ratioAcross.greaterThan(most)) pad.caution(cautions.wideStrip(most, ratioAcross));
  else if (width.times(wholeNumber(4)).greaterThan(bothWays.times(wholeNumber(5)))) {
    pad.caution(cautions.wideForSpacing(bothWays, width));
  }
}

/** The thicknesses in their order, whichever way round they were given. */
function inOrder(given: Given): Parsed {
  const [one, other] = [given.thickness, given.thickest ?? given.thickness];
  const [thickness, thickest] = other.lessThan(one) ? [other, one] : [one, other];
  return { ...given, thickness, thickest };
}

function reckon(given: Given, pad: Pad): JointSpacingFigures {
  const input = inOrder(given);
  const m = wholeNumber(multipleFor(input, pad));
  const t = input.thickness;
  const byThickness = pad.step('by thickness', 'b = m × t', { m, t }, asFeet(t.times(m)));
  const byShape = shapeLimit(input, pad);
  const rules = appliedRules(input, byThickness, byShape);
  const { spacing, rule, because } = tightest(rules);
  const values = Object.fromEntries(rules.map((r) => [r.symbol, r.spacing]));
  pad.step('spacing', `s = min(${Object.keys(values).join(', ')})`, values, spacing);
  const depth = depthFor(input, pad);
  heed(input, pad);
  // The shape of panels, a cap and the interval of walks are asked along the strip alone.
  const bothWays = tightest(rules.filter(({ symbol }) => 'bx'.includes(symbol))).spacing;
  heedShape(input, { spacing, bothWays, depth }, pad);
  heedCaps(input, spacing, pad);
  const use = useOf(input, pad);
  const reinforced = input.reinforced ?? false;
  return {
    spacing,
    governs: rule,
    byThickness,
    multiple: m,
    maximum: ACI_CAP.like(t),
    ...(byShape ? { byShape } : {}),
    depth,
    because,
    spacings: spacingBySource({ ...input, use, reinforced }),
    depths: depthBySource(input.thickest, use),
    isolation: isolationBySource(t, use, reinforced),
  };
}

/**
 * How far apart to joint a slab on ground, and how deep to cut.
 *
 * @param input - thickness, aggregate, slump, and the width of the strip where it is set
 * @returns the spacing that all rules allow, which rule governs, and the depth
 * @throws {InputError} for quantities that cannot be read or are not greater than zero
 * @source spacing table of the Portland Cement Association; ACI 302.1R-96 as quoted; Masonry and
 * Concrete, McGraw-Hill; Concrete Construction on depth
 * @example
 * ```ts
 * import { jointSpacing } from 'flatwork-reckoner';
 *
 * const { figures } = jointSpacing({ thickness: '5 in', aggregateSize: '1 in', slump: '4 in' });
 * figures.spacing.format(); // '12.5 ft'
 * figures.depth.format(); // '1.25 in'
 * figures.because.says; // 'the multiple of the thickness for this slump and aggregate is the tightest rule'
 * ```
 */
export const jointSpacing: Calculation<JointSpacingInput, JointSpacingFigures> = /*#__PURE__*/ define({
  id: 'joint-spacing',
  title: 'Spacing and depth of control (contraction) joints',
  version: 2,
  sources: [
    PCA_JOINTS,
    ACI_302_JOINTS,
    MCGRAW_JOINTS,
    JOINT_DEPTH,
    EARLY_ENTRY_DEPTH,
    UFGS_WALK_JOINTS,
    JOINT_LAYOUT_RULES,
  ],
  input: () =>
    fields({
      thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
      thickest: maybe(quantity('length', 'thickest', 'positive', SLAB_THICKNESS)),
      aggregateSize: stoneSize('aggregateSize', AGGREGATE_SIZE),
      slump: quantity('length', 'slump', 'not-negative', SLUMP),
      width: maybe(quantity('length', 'width', 'positive', PLAN_LENGTH)),
      longestRatio: maybe(bareRatio('longestRatio', 'positive', PANEL_RATIO)),
      use: maybe(choice('use', ['slab', 'walk', 'curb'] as const)),
      maximum: maybe(quantity('length', 'maximum', 'positive', JOINT_SPACING)),
      reinforced: maybe(yesOrNo('reinforced')),
      method: maybe(choice('method', JOINT_METHODS)),
    }),
  reckon,
});
