/** What a joint plan takes: saw passes and time, isolation board, backer rod, sealant, dowels. */

import { Decimal } from '../../quantity/decimal';
import { constant, ratio } from '../../quantity/make';
import { paired } from '../../quantity/paired';
import { canonicalValue, type Quantity } from '../../quantity/quantity';
import { wholeNumber } from '../../reckoning/fields';
import { withinLimit } from '../../reckoning/limits';
import type { Pad } from '../../reckoning/pad';
import { COMMON_PRACTICE } from '../../reckoning/source';
import { UFGS_WALK_JOINTS } from '../sources';
import { DOWELS, PASSES } from './most';
import type { Laid } from './plan';
import { type SawOrder, sawOrder } from './saw-order';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** Cutting the contraction joints. */
export interface Sawing {
  /** Passes of the blade in each joint. */
  readonly passes: Quantity<'count'>;
  /** How far the blade travels in all. */
  readonly travel: Quantity<'length'>;
  /** Numbers of the joints in the order they are sawn. */
  readonly order: readonly Quantity<'count'>[];
  /** Cutting time, without moving and setting up; where a rate is given. */
  readonly time?: Quantity<'time'>;
}

/** Board between the slab and what it is kept apart from. */
export interface IsolationBoard {
  /** All isolation joints together. */
  readonly length: Quantity<'length'>;
  /** Full depth of the slab. */
  readonly area: Quantity<'area'>;
  /** As given; by default 1/2 in. */
  readonly thickness: Quantity<'length'>;
}

/** Backer rod under the sealant of isolation joints. */
export interface BackerRod {
  /** All isolation joints together. */
  readonly length: Quantity<'length'>;
  /** A quarter more than the width of the joint. */
  readonly diameter: Quantity<'length'>;
}

/** Sealant in the top of the joints, with nothing for waste. */
export interface Sealant {
  /** All joints that are sealed, contraction and isolation. */
  readonly length: Quantity<'length'>;
  /** Width times depth of the bead times its length. */
  readonly volume: Quantity<'volume'>;
}

/** What is asked of the take-off. */
export interface TakeOffInput {
  readonly thickness: Length;
  readonly depthPerPass: Length | undefined;
  readonly sawRate: { readonly length: Length; readonly in: Quantity<'time'> } | undefined;
  readonly boardThickness: Length | undefined;
  readonly sealant:
    | {
        readonly width: Length;
        readonly depth: Length;
        readonly joints: 'all' | 'isolation' | 'sawn' | undefined;
      }
    | undefined;
  readonly dowelSpacing: Length | undefined;
}

/** The plan as far as the take-off needs it. */
export interface Planned {
  readonly laid: Laid;
  readonly contraction: Length;
  readonly isolation: Length;
  readonly depth: Length;
  readonly sawn: boolean;
  readonly order: SawOrder | undefined;
}

/** The figures of the take-off. */
export interface TakenOff {
  readonly sawing?: Sawing;
  readonly isolationBoard: IsolationBoard;
  readonly backerRod?: BackerRod;
  readonly sealant?: Sealant;
  readonly dowels?: Count;
}

const BOARD = /*#__PURE__*/ paired('length', '1/2 in', '12 mm');
const ROD_OVER_WIDTH = constant(() => ratio('1.25:1'));

function passesOf({ depthPerPass }: TakeOffInput, depth: Length, pad: Pad): Count {
  if (!depthPerPass) {
    pad.assume({
      name: 'depthPerPass',
      value: { reckoned: depth },
      because: 'one pass to the full depth',
      override: 'Give depthPerPass where the saw needs more passes',
      source: COMMON_PRACTICE,
    });
    return wholeNumber(1);
  }
  const passes = depth.upTo(depthPerPass).over(depthPerPass);
  withinLimit(PASSES, passes.toNumber(':1'), 'depthPerPass');
  const p = wholeNumber(Math.round(passes.toNumber(':1')));
  return pad.step('passes in each joint', 'p = ceil(k ÷ q)', { k: depth, q: depthPerPass }, p);
}

function sawingOf(input: TakeOffInput, planned: Planned, pad: Pad): Sawing {
  const p = passesOf(input, planned.depth, pad);
  const c = planned.contraction;
  const travel = pad.step('travel of the blade', 'T = c × p', { c, p }, c.times(p));
  const order = sawOrder(planned.laid.joints, planned.order ?? 'consecutive').map((i) => wholeNumber(i + 1));
  const { sawRate } = input;
  if (!sawRate) return { passes: p, travel, order };
  const values = { T: travel, h: sawRate.in, a: sawRate.length };
  const time = sawRate.in.times(travel.over(sawRate.length));
  return { passes: p, travel, order, time: pad.step('time to cut', 'H = T × h ÷ a', values, time) };
}

function boardOf({ boardThickness, thickness: t }: TakeOffInput, F: Length, pad: Pad): IsolationBoard {
  if (!boardThickness && F.sign() > 0) {
    pad.assume({
      name: 'boardThickness',
      value: BOARD,
      because: 'the thickness that walks and curbs are specified with',
      override: 'Give boardThickness from the plans',
      source: UFGS_WALK_JOINTS,
    });
  }
  const area = F.times(t);
  if (F.sign() > 0) pad.step('isolation board', 'B = F × t', { F, t }, area);
  return { length: F, area, thickness: boardThickness ?? BOARD.like(t) };
}

function sealantOf(input: TakeOffInput, planned: Planned, pad: Pad): Sealant | undefined {
  if (!input.sealant) return undefined;
  const { width: w, depth: d, joints = 'all' } = input.sealant;
  const sawn = joints === 'isolation' ? undefined : planned.contraction;
  const edge = joints === 'sawn' ? undefined : planned.isolation;
  const l = sawn && edge ? sawn.plus(edge) : ((sawn ?? edge) as Length);
  const unit = pad.system === 'metric' ? 'L' : 'gal';
  return {
    length: l,
    volume: pad.step('sealant', 'S = w × d × l', { w, d, l }, w.times(d).times(l).in(unit)),
  };
}

function rodOf({ sealant, boardThickness }: TakeOffInput, length: Length, pad: Pad): BackerRod | undefined {
  if (!sealant || sealant.joints === 'sawn' || length.sign() === 0) return undefined;
  pad.assume({
    name: 'backerRod',
    value: '1.25 times the joint',
    because: 'the rod is squeezed to stay in place',
    override: 'Choose the next size that is sold',
    source: COMMON_PRACTICE,
  });
  const b = boardThickness ?? BOARD.as(pad.system);
  const values = { b, f: ROD_OVER_WIDTH() };
  return { length, diameter: pad.step('backer rod', 'r = b × f', values, b.times(ROD_OVER_WIDTH())) };
}

/** Dowels spread evenly, half a spacing from each end of each construction joint. */
function dowelsOf({ dowelSpacing: s }: TakeOffInput, { laid }: Planned): Count | undefined {
  if (!s) return undefined;
  const spacing = canonicalValue(s);
  const each = laid.joints
    .filter((j) => j.type === 'construction')
    .reduce((sum, j) => sum.plus(j.length.div(spacing).minus('1e-20').ceil()), new Decimal(0));
  withinLimit(DOWELS, each.toNumber(), 'dowelSpacing');
  return wholeNumber(each.toNumber());
}

/** Reckon what the plan takes. */
export function takeOff(input: TakeOffInput, planned: Planned, pad: Pad): TakenOff {
  const sawing = planned.sawn ? sawingOf(input, planned, pad) : undefined;
  const isolationBoard = boardOf(input, planned.isolation, pad);
  const sealant = sealantOf(input, planned, pad);
  const backerRod = rodOf(input, planned.isolation, pad);
  const dowels = dowelsOf(input, planned);
  return {
    ...(sawing ? { sawing } : {}),
    isolationBoard,
    ...(backerRod ? { backerRod } : {}),
    ...(sealant ? { sealant } : {}),
    ...(dowels ? { dowels } : {}),
  };
}
