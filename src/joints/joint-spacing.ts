/**
 * How far apart to joint a slab on ground, and how deep to cut.
 *
 * Spacing by a multiple of the thickness that depends on slump and aggregate, as in the spacing
 * table of the Portland Cement Association: 24 times for slump of 4 in and more with aggregate
 * under 3/4 in, 30 times with larger aggregate, 36 times for slump under 4 in. The table rounds the
 * middle column up to whole feet at 5, 7 and 9 in (13 ft for 12.5 ft); the multiple is kept here.
 * ACI 302.1R-96, as quoted, caps it at 18 ft; a strip is held to 1.5 times its width.
 *
 * Boundaries the sources leave open: aggregate of exactly 3/4 in counts as the larger (McGraw-Hill
 * prints it so); slump of exactly 4 in counts as the wetter.
 */
import { constant, length, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { ACI_302_JOINTS, JOINT_DEPTH, MCGRAW_JOINTS, PCA_JOINTS } from '../reckoning/source';

/** Input of {@link jointSpacing}. */
export interface JointSpacingInput {
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** Largest aggregate size, nominal. */
  readonly aggregateSize: QuantityInput<'length'>;
  /** Slump of the concrete as placed. */
  readonly slump: QuantityInput<'length'>;
  /** Width of the strip between edges or joints, where it is set already, as on a walk. */
  readonly width?: QuantityInput<'length'>;
  /** How long a panel may be for its width; by default 1.5 to 1. */
  readonly longestRatio?: QuantityInput<'ratio'>;
}

/** The rule that came out tightest. */
export type GoverningRule = 'thickness' | 'maximum' | 'panel shape';

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
  /** Depth of a sawn joint: a quarter of the thickness, at least 1 in. */
  readonly depth: Quantity<'length'>;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly thickness: Length;
  readonly aggregateSize: Length;
  readonly slump: Length;
  readonly width: Length | undefined;
  readonly longestRatio: Quantity<'ratio'> | undefined;
}

const LOW_SLUMP = constant(() => length('4 in'));
const TABLE_SLUMP = constant(() => length('6 in'));
const LARGE_AGGREGATE = constant(() => length('3/4 in'));
const MAXIMUM = constant(() => length('18 ft'));
const LEAST_DEPTH = constant(() => length('1 in'));
const TABLE_FROM = constant(() => length('4 in'));
const TABLE_TO = constant(() => length('10 in'));
const LONGEST = constant(() => ratio('1.5:1'));
const FOUR = constant(() => wholeNumber(4));

function multipleFor({ slump, aggregateSize }: Parsed): number {
  if (slump.lessThan(LOW_SLUMP())) return 36;
  return aggregateSize.lessThan(LARGE_AGGREGATE()) ? 24 : 30;
}

const asFeet = (l: Length): Length => (l.toString().endsWith('m') ? l.in('m') : l.in('ft'));

function shapeLimit({ width, longestRatio }: Parsed, pad: Pad): Length | undefined {
  if (!width) return undefined;
  if (!longestRatio) {
    pad.assume({
      name: 'longestRatio',
      value: LONGEST().format(),
      because: 'panels longer than that tend to crack across',
      override: 'Give longestRatio; published limits run from 1.25:1 to 2:1',
      source: MCGRAW_JOINTS,
    });
  }
  const q = longestRatio ?? LONGEST();
  return pad.step('by shape of panel', 'p = q × w', { q, w: width }, asFeet(width.times(q)));
}

function tightest(byThickness: Length, byShape: Length | undefined): [Length, GoverningRule] {
  let spacing = byThickness;
  let governs: GoverningRule = 'thickness';
  if (spacing.greaterThan(MAXIMUM())) [spacing, governs] = [MAXIMUM(), 'maximum'];
  if (byShape && spacing.greaterThan(byShape)) [spacing, governs] = [byShape, 'panel shape'];
  return [spacing, governs];
}

function depthFor(t: Length, pad: Pad): Length {
  const c = LEAST_DEPTH();
  const quarter = t.over(FOUR());
  const depth = quarter.lessThan(c) ? c : quarter;
  return pad.step('depth of a sawn joint', 'k = max(t ÷ 4, c)', { t, c }, depth);
}

function heed({ thickness, slump }: Parsed, pad: Pad): void {
  if (slump.greaterThan(TABLE_SLUMP())) pad.caution(cautions.slumpOutOfTable(TABLE_SLUMP(), slump));
  if (thickness.lessThan(TABLE_FROM())) pad.caution(cautions.thicknessOutOfTable(TABLE_FROM(), thickness));
  if (thickness.greaterThan(TABLE_TO())) pad.caution(cautions.thicknessOutOfTable(TABLE_TO(), thickness));
  pad.caution(cautions.silica);
}

function reckon(input: Parsed, pad: Pad): JointSpacingFigures {
  const m = wholeNumber(multipleFor(input));
  const t = input.thickness;
  const byThickness = pad.step('by thickness', 'b = m × t', { m, t }, asFeet(t.times(m)));
  const byShape = shapeLimit(input, pad);
  const [spacing, governs] = tightest(byThickness, byShape);
  const values = { b: byThickness, c: MAXIMUM(), ...(byShape ? { p: byShape } : {}) };
  pad.step('spacing', byShape ? 's = min(b, c, p)' : 's = min(b, c)', values, spacing);
  const depth = depthFor(t, pad);
  heed(input, pad);
  return {
    spacing,
    governs,
    byThickness,
    multiple: m,
    maximum: MAXIMUM(),
    ...(byShape ? { byShape } : {}),
    depth,
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
 * const { figures } = jointSpacing({ thickness: '5 in', aggregateSize: '3/4 in', slump: '4 in' });
 * figures.spacing.format(); // '12.5 ft'
 * figures.depth.format(); // '1.25 in'
 * ```
 */
export const jointSpacing: Calculation<JointSpacingInput, JointSpacingFigures> = /*#__PURE__*/ define({
  id: 'joint-spacing',
  title: 'Spacing and depth of contraction joints',
  version: 1,
  sources: [PCA_JOINTS, ACI_302_JOINTS, MCGRAW_JOINTS, JOINT_DEPTH],
  input: () =>
    fields({
      thickness: quantity('length', 'thickness'),
      aggregateSize: quantity('length', 'aggregateSize'),
      slump: quantity('length', 'slump', 'not-negative'),
      width: maybe(quantity('length', 'width')),
      longestRatio: maybe(quantity('ratio', 'longestRatio')),
    }),
  reckon,
});
