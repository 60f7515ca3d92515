/**
 * Boards as they are named and as they are: a 2x4 is 1-1/2 in by 3-1/2 in. Metric boards go by their own size.
 *
 * How many stand above each other: `n = ceil(h × 7 ÷ 8 ÷ b)`. A board that lacks no more than an eighth is set low
 * enough, or packed up, to be struck off: a 2x4 for 4 in, 38 × 89 for 100 mm.
 */

import { small } from '../grade/marks';
import { ratio } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { choice, eitherBy, type Field, fields, quantity, wholeNumber } from '../reckoning/fields';
import { respelt } from '../reckoning/or-named';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { BOARD_HEIGHT, BOARD_THICKNESS } from './ordinary';

/** Names of softwood boards, which are larger than the boards. */
export type BoardName = '1x4' | '1x6' | '1x8' | '1x10' | '1x12' | '2x4' | '2x6' | '2x8' | '2x10' | '2x12';

/** A board by its name. */
export interface NamedBoardInput {
  /** As it is sold: `2x6` is 1-1/2 in by 5-1/2 in. */
  readonly nominal: BoardName;
}

/** A board by its size. */
export interface SizedBoardInput {
  /** How thick it is, as it is and not as it is named. */
  readonly thickness: QuantityInput<'length'>;
  /** How high it stands. */
  readonly height: QuantityInput<'length'>;
}

/** The boards that forms are made of. */
export type BoardInput = NamedBoardInput | SizedBoardInput;

type Length = Quantity<'length'>;

/** A board, read. */
export type Board = { readonly nominal: BoardName } | { readonly thickness: Length; readonly height: Length };

const NAMES = ['1x4', '1x6', '1x8', '1x10', '1x12', '2x4', '2x6', '2x8', '2x10', '2x12'] as const;

/** A planed and dried board, by the number that it is named for; Canadian lumber has round millimeters for the same. */
const THICK: Readonly<Record<string, Paired<'length'>>> = /*#__PURE__*/ {
  '1': paired('length', '3/4 in', '19 mm'),
  '2': paired('length', '1 1/2 in', '38 mm'),
};
const HIGH: Readonly<Record<string, Paired<'length'>>> = /*#__PURE__*/ {
  '4': paired('length', '3 1/2 in', '89 mm'),
  '6': paired('length', '5 1/2 in', '140 mm'),
  '8': paired('length', '7 1/4 in', '184 mm'),
  '10': paired('length', '9 1/4 in', '235 mm'),
  '12': paired('length', '11 1/4 in', '286 mm'),
};

/** The name of a board, however it is spaced: `2 x 6`, `2×6`. */
const boardName = (): Field<BoardName> =>
  respelt(choice('nominal', NAMES), (text) => text.replace(/\s*[x×]\s*/i, 'x'));

/** How a board is read. */
export const board = (): Field<Board> =>
  eitherBy<Board>(
    'nominal',
    fields({ nominal: boardName() }),
    fields({
      thickness: quantity('length', 'thickness', 'positive', BOARD_THICKNESS),
      height: quantity('length', 'height', 'positive', BOARD_HEIGHT),
    }),
  );

/** How thick and how high a board is. */
export interface BoardSize {
  /** How thick it is. */
  readonly thickness: Quantity<'length'>;
  /** How high it stands. */
  readonly height: Quantity<'length'>;
}

/** The size of a board, in the units of the job. */
export function sizeOf(given: Board, system: System): BoardSize {
  if (!('nominal' in given)) return given;
  const [thick = '', high = ''] = given.nominal.split('x');
  return {
    thickness: (THICK[thick] as Paired<'length'>).as(system),
    height: (HIGH[high] as Paired<'length'>).as(system),
  };
}

/** How far boards above each other reach. */
export interface Reached {
  /** How many boards stand above each other. */
  readonly courses: Quantity<'count'>;
  /** How high they stand together. */
  readonly formHeight: Quantity<'length'>;
  /** How much they lack of the concrete: packed below, or the base kept lower under them. */
  readonly packing?: Quantity<'length'>;
  /** How much they are higher: dug in, or the base filled up between them. Left out where they stand clear of the ground. */
  readonly dugIn?: Quantity<'length'>;
  /** How much is ripped off the boards of risers, which neither dig in nor are packed up. */
  readonly ripped?: Quantity<'length'>;
}

const SEVEN = 7;
const EIGHT = 8;

function coursesFor(h: Length, b: Length, pad: Pad): Quantity<'count'> {
  const times = h.times(wholeNumber(SEVEN)).over(b.times(wholeNumber(EIGHT)));
  const n = wholeNumber(Math.max(1, Math.round(times.upTo(ratio('1:1')).toNumber(':1'))));
  pad.assume({
    name: 'courses',
    value: { reckoned: n },
    because: say`so many boards of ${{ b }} reach ${{ h }}, or an eighth less`,
    override: 'Give courses',
    source: COMMON_PRACTICE,
  });
  return n;
}

/** What is asked of the boards. */
interface Reach {
  /** Height of the concrete. */
  readonly h: Length;
  /** Height of a board. */
  readonly b: Length;
  /** How many stand above each other, where that was given. */
  readonly given: Quantity<'count'> | undefined;
  /** Whether they form risers, above whose lower edge the tread below is finished. */
  readonly riser: boolean;
  /** Whether they stand clear of the ground, so that nothing is dug for them. */
  readonly clear: boolean;
}

/** Whether the boards reach the top of the concrete. */
export function reached({ h, b, given, riser, clear }: Reach, pad: Pad): Reached {
  const n = given ?? coursesFor(h, b, pad);
  const F = pad.step('height of the forms', 'F = n × b', { n, b }, b.times(n));
  const lacks = small(h.minus(F));
  if (lacks.sign() === 0) return { courses: n, formHeight: F };
  const over = lacks.abs();
  if (riser && lacks.sign() < 0) pad.caution(cautions.ripRisers(h, F, over));
  if (lacks.sign() < 0) {
    const held = riser ? { ripped: over } : clear ? {} : { dugIn: over };
    return { courses: n, formHeight: F, ...held };
  }
  pad.caution((riser ? cautions.lowRisers : cautions.lowForms)(h, F, lacks));
  if (riser) return { courses: n, formHeight: F };
  return { courses: n, formHeight: F, packing: lacks };
}
