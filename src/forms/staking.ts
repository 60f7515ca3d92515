/**
 * Stakes behind forms: how far apart, how long, and what braces them.
 *
 * A stake stands at both ends of every board and between them no farther apart than the spacing: `k = ceil(p ÷ s) + 1`
 * for a board `p` long. So there is one at both sides of each joint and two at each corner. A stake is as long as the form
 * is high, as the ground lies below it on a slope, and as it stands in the ground, `l = h + g + d`, and the next length
 * that is sold.
 */
import { greaterOf } from '../quantity/greater';
import { nextSize, sizesOf } from '../quantity/next-size';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { choice, type Field, fields, maybe, quantity, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { BELOW_BOARDS, STAKE_DEPTH, STAKE_LENGTH, STAKE_SPACING } from './ordinary';

/** The stakes behind forms. */
export interface StakesInput {
  /** What they are; by default `wood`. */
  readonly kind?: 'wood' | 'steel';
  /** True where caps or guards are put on steel stakes. */
  readonly capped?: boolean;
  /** The most that they are apart along straight edges; by default as the boards and the height ask. */
  readonly spacing?: QuantityInput<'length'>;
  /** The most that they are apart along curves; by default closer than along straight edges. */
  readonly onCurves?: QuantityInput<'length'>;
  /** How far the ground lies below the boards where it is lowest, as on a slope; by default they stand on it. */
  readonly gap?: QuantityInput<'length'>;
  /** How deep they stand in the ground; by default as deep as the form stands above it, and 12 in, 300 mm, at least. */
  readonly depth?: QuantityInput<'length'>;
  /** How long they are; by default the next length that is sold. */
  readonly length?: QuantityInput<'length'>;
}

type Length = Quantity<'length'>;
type Parsed = Read<StakesInput>;

/** Forms higher than this lean out unless each stake is braced. */
export const TALL = /*#__PURE__*/ paired('length', '6 in', '150 mm');
/** Thinner boards bow between stakes. */
const THICK = paired('length', '1 1/4 in', '32 mm');

interface Rule {
  readonly usual: Paired<'length'>;
  readonly most: Paired<'length'>;
  readonly because: string;
}

const THIN_RULE: Rule = {
  usual: paired('length', '18 in', '450 mm'),
  most: paired('length', '2 ft', '600 mm'),
  because: 'thin boards bow between stakes',
};
const TALL_RULE: Rule = {
  usual: paired('length', '2 ft', '600 mm'),
  most: paired('length', '3 ft', '900 mm'),
  because: 'forms higher than a curb are pushed hard',
};
const LOW_RULE: Rule = {
  usual: paired('length', '3 ft', '900 mm'),
  most: paired('length', '4 ft', '1.2 m'),
  because: 'low forms of thick boards',
};
const CURVE_RULE: Rule = {
  usual: paired('length', '18 in', '450 mm'),
  most: paired('length', '2 ft', '600 mm'),
  because: 'a bent board pulls flat between stakes',
};

const LEAST_DEPTH = paired('length', '12 in', '300 mm');
const LENGTHS = sizesOf('12 18 24 30 36 42 48 60', '300 450 600 750 900 1000 1200 1500');

/** How stakes are read. */
export const stakesField = (): Field<Parsed> =>
  fields({
    kind: maybe(choice('kind', ['wood', 'steel'] as const)),
    capped: maybe(yesOrNo('capped')),
    spacing: maybe(quantity('length', 'spacing', 'positive', STAKE_SPACING)),
    onCurves: maybe(quantity('length', 'onCurves', 'positive', STAKE_SPACING)),
    gap: maybe(quantity('length', 'gap', 'positive', BELOW_BOARDS)),
    depth: maybe(quantity('length', 'depth', 'positive', STAKE_DEPTH)),
    length: maybe(quantity('length', 'length', 'positive', STAKE_LENGTH)),
  });

/** How far stakes are apart. */
export interface Spacings {
  readonly straight: Length;
  readonly curved: Length;
}

function spacingBy(rule: Rule, name: 'spacing' | 'onCurves', given: Length | undefined, pad: Pad): Length {
  if (!given) {
    pad.assume({
      name: `stakes.${name}`,
      value: rule.usual,
      because: rule.because,
      override: `Give stakes.${name}`,
      source: COMMON_PRACTICE,
    });
    return rule.usual.as(pad.system);
  }
  const limit = rule.most.exceededBy(given);
  if (limit) pad.caution(cautions.farStakes(limit, given));
  return given;
}

/** How far stakes are apart, given or by the boards and the height. */
export function spacingsOf(
  stakes: Parsed | undefined,
  form: {
    readonly thickness: Length;
    readonly height: Length;
    readonly straight: boolean;
    readonly curved: boolean;
  },
  pad: Pad,
): Spacings {
  const thin = THICK.undercutBy(form.thickness);
  const tall = TALL.exceededBy(form.height);
  const rule = thin ? THIN_RULE : tall ? TALL_RULE : LOW_RULE;
  const straight = form.straight ? spacingBy(rule, 'spacing', stakes?.spacing, pad) : undefined;
  const curved = form.curved ? spacingBy(CURVE_RULE, 'onCurves', stakes?.onCurves, pad) : undefined;
  const either = (straight ?? curved) as Length;
  return { straight: straight ?? either, curved: curved ?? either };
}

/** How deep and how long stakes are. */
export interface StakeLength {
  /** How deep they stand in the ground. */
  readonly stakeDepth: Quantity<'length'>;
  /** How long they are. */
  readonly stakeLength: Quantity<'length'>;
}

/** A gap that boards stand over on any ground, and that a shovel closes. */
const CLOSED_BY_HAND = paired('length', '1 in', '25 mm');

/** How high the top of a form stands above the ground, where that is lowest. */
export const standing = (stakes: Parsed | undefined, h: Length): Length =>
  stakes?.gap ? h.plus(stakes.gap) : h;

/** How deep and how long the stakes of a form are. */
export function stakeLengthOf(stakes: Parsed | undefined, h: Length, pad: Pad): StakeLength {
  const { system } = pad;
  const unit = system === 'metric' ? 'mm' : 'in';
  const g = stakes?.gap;
  const usual = greaterOf(standing(stakes, h).in(unit), LEAST_DEPTH.as(system));
  const d = stakes?.depth ?? usual;
  if (!stakes?.depth) {
    pad.assume({
      name: 'stakes.depth',
      value: { reckoned: d },
      because: g
        ? say`as deep as the form stands above the ground, and ${{ least: LEAST_DEPTH }} at least, in firm ground`
        : say`as deep as the form is high, and ${{ least: LEAST_DEPTH }} at least, in firm ground`,
      override: 'Give stakes.depth; loose or wet ground takes more',
      source: COMMON_PRACTICE,
    });
  }
  const l = g
    ? pad.step('length of a stake', 'l = h + g + d', { h, g, d }, h.plus(g).plus(d).in(unit))
    : pad.step('length of a stake', 'l = h + d', { h, d }, h.plus(d).in(unit));
  const limit = g && CLOSED_BY_HAND.exceededBy(g);
  if (g && limit) pad.caution(cautions.gapUnderForms(limit, g));
  const given = stakes?.length;
  if (given) {
    if (given.lessThan(l)) pad.caution(cautions.shortStakes(l, given));
    return { stakeDepth: d, stakeLength: given };
  }
  const next = nextSize(LENGTHS, l, system);
  pad.assume({
    name: 'stakes.length',
    value: { reckoned: next },
    because: 'the next length that is sold',
    override: 'Give stakes.length',
    source: COMMON_PRACTICE,
  });
  return { stakeDepth: d, stakeLength: next };
}

/** What stakes are made of, and whether people may fall on them. */
export function heedStakes(stakes: Parsed | undefined, pad: Pad): void {
  if (!stakes?.kind) {
    pad.assume({
      name: 'stakes.kind',
      value: 'wood',
      because: 'sawn stakes',
      override: 'Give stakes.kind: steel',
      source: COMMON_PRACTICE,
    });
  }
  if (stakes?.kind === 'steel' && !stakes.capped) pad.caution(cautions.bareStakes);
}
