/** What a slip is: the hand's mistake that would explain a figure, and how common it is. */
import type { Words } from '../reckoning/words';
import type { Tree } from './formula';
import type { Leaf, Path } from './input-places';

/** Stable codes of slips. Codes are never reused. */
export type SlipCode =
  /** Cubic feet written down as cubic yards. */
  | 'not-divided-by-27'
  /** Cubic feet divided by 9, as square feet are. */
  | 'divided-by-9'
  /** Cubic feet divided by 3. */
  | 'divided-by-3'
  /** Turned into another unit by a number near the right one: cubic feet divided by 25. */
  | 'wrong-factor'
  /** Turned into another unit the wrong way: divided where it is multiplied. */
  | 'converted-upside-down'
  /** A unit turned into another once more than it should be. */
  | 'converted-twice'
  /** The number of one unit under the name of another. */
  | 'wrong-unit'
  /** An area or a volume turned into another unit by the factor of a length. */
  | 'linear-factor'
  /** Short, long and metric tons taken for each other. */
  | 'wrong-ton'
  /** US and imperial gallons taken for each other. */
  | 'wrong-gallon'
  /** Inches taken as so many feet. */
  | 'inches-as-feet'
  /** Feet taken as so many inches. */
  | 'feet-as-inches'
  /** Inches written as tenths of a foot: 4 in as 0.4 ft. */
  | 'inches-as-tenths'
  /** Tenths of a foot read as inches: 12.5 ft as 12 ft 5 in. */
  | 'tenths-as-inches'
  /** Feet and inches typed as a decimal: 12 ft 6 in as 12.6 ft. */
  | 'feet-inches-as-decimal'
  /** Minutes written as hundredths of an hour, or hundredths read as minutes. */
  | 'minutes-as-decimals'
  /** Written so coarsely that the figures are off: 4 in as 0.3 ft, 20 in as 2 ft. */
  | 'rounded-coarsely'
  /** The inches behind the feet left out. */
  | 'inches-left-out'
  /** Two digits in each other's place. */
  | 'digits-transposed'
  /** A digit left out. */
  | 'digit-dropped'
  /** A digit written twice. */
  | 'digit-doubled'
  /** One digit read or written as another. */
  | 'digit-off'
  /** One too many or too few carried. */
  | 'carried-wrongly'
  /** The decimal point in the wrong place. */
  | 'point-moved'
  /** Twice what it is. */
  | 'doubled'
  /** Half of what it is. */
  | 'halved'
  /** An allowance or another share that was not taken. */
  | 'allowance-missed'
  /** A share taken twice over. */
  | 'allowance-twice'
  /** A share taken as the whole factor. */
  | 'allowance-as-factor'
  /** A share taken off that is put on, or put on that is taken off. */
  | 'allowance-turned'
  /** An allowance put on where none is asked for. */
  | 'allowance-put-on'
  /** A percentage of another size: 0.8% or 80% for 8%. */
  | 'percent-misplaced'
  /** A markup on the cost taken for a margin of the price, or the reverse. */
  | 'markup-for-margin'
  /** A diameter taken for a radius. */
  | 'diameter-for-radius'
  /** A radius taken for a diameter. */
  | 'radius-for-diameter'
  /** A circle taken as the square around it. */
  | 'circle-as-square'
  /** A slope the other way up. */
  | 'slope-upside-down'
  /** A slope of one unit under the name of another: percent as inches in a foot. */
  | 'slope-unit'
  /** Degrees of the other scale. */
  | 'temperature-scale'
  /** Degrees of difference of the other scale, or turned as a point on it. */
  | 'degree-interval'
  /** Spaces counted for bars, or bars for spaces. */
  | 'spaces-for-bars'
  /** One too many or too few counted. */
  | 'one-off-count'
  /** A nominal size for the actual one, or the reverse. */
  | 'nominal-for-actual'
  /** Another of the usual sizes: a bag, a spacing or a thickness next to it. */
  | 'other-size'
  /** Pieces that overlap, reckoned without their laps. */
  | 'laps-left-out'
  /** An outer size for the inner one, or the reverse. */
  | 'outer-for-inner'
  /** A shape with a notch taken as its whole rectangle. */
  | 'notch-left-out'
  /** An opening that was not taken off. */
  | 'opening-left-out'
  /** A part left out. */
  | 'part-left-out'
  /** A part taken twice. */
  | 'part-twice'
  /** Rounded down where it is rounded up. */
  | 'rounded-down'
  /** Not rounded where it is. */
  | 'not-rounded'
  /** The middle of the least and the greatest taken for the mean of all. */
  | 'mean-of-ends'
  /** One value of the input in the place of another. */
  | 'other-input'
  /** One figure written down for another. */
  | 'other-figure'
  /** The price of one in the place of the price of all, or the reverse. */
  | 'unit-price-for-total'
  /** Another choice of the same list. */
  | 'other-choice'
  /** A sum without one of its terms. */
  | 'term-left-out'
  /** A term of a sum taken twice. */
  | 'term-twice'
  /** A product without one of its factors. */
  | 'factor-left-out'
  /** A factor taken twice. */
  | 'factor-twice'
  /** A half, a quarter or another fixed number of a formula left out. */
  | 'number-left-out'
  /** Another small number than the one of the formula: a third for a quarter. */
  | 'other-number'
  /** A corner where two rectangles overlap, counted with both. */
  | 'corner-twice'
  /** A square or a cube not taken. */
  | 'power-left-out'
  /** Added for subtracted, or the reverse. */
  | 'added-for-subtracted'
  /** A share taken of another amount than it is a share of: tax on the cost for tax on the price. */
  | 'share-of-other'
  /** Length plus width for length times width. */
  | 'added-for-multiplied'
  /** Multiplied for divided, or the reverse. */
  | 'multiplied-for-divided'
  /** The greater taken for the lesser of two, or one of them left out. */
  | 'greater-for-lesser';

/** A change of a number as it is written in one unit. */
export interface Twist {
  /** What one of the unit is, in SI units. */
  readonly unit: number;
  /** Times top over bottom. */
  readonly times?: readonly [top: string, bottom: string];
  /**
   * Another number for what was written, with so many decimal places; below nothing, whole tens, hundreds and so on.
   * What is done to the digits can be done to another number too.
   */
  readonly digits?: { readonly places: number; readonly slip: (text: string) => string | undefined };
  /** So many SI units more. */
  readonly more?: number;
  /** Rounded down to whole steps of so many SI units. */
  readonly down?: number;
  /** What another figure comes to, in its place. */
  readonly of?: OtherFigure;
}

/** A figure that stands in the place of another. */
export interface OtherFigure {
  readonly path: Path;
  /** The step whose outcome it is. */
  readonly step: number | undefined;
  /** What it is where nothing else is wrong, in SI units. */
  readonly si: number;
  /** What its number is worth under the other name. */
  readonly scale: number;
}

/** What is changed by a slip. */
export type Edit =
  | {
      readonly on: 'input';
      readonly path: Path;
      readonly value: unknown;
      readonly leaf?: Leaf;
      readonly si?: number;
    }
  | { readonly on: 'step'; readonly step: number; readonly tree: Tree }
  | { readonly on: 'outcome'; readonly step: number; readonly twist: Twist }
  | { readonly on: 'claim'; readonly figure: string; readonly twist: Twist };

/** One slip that may have been made. */
export interface Slip {
  readonly code: SlipCode;
  /** How common it is, beside the others. */
  readonly weight: number;
  /** In words, made when it is told: most slips never are. */
  readonly says: () => Words;
  /** Usually one; several where a habit shows at every place. */
  readonly edits: readonly Edit[];
  /** Where it would show: a path of the input. */
  readonly input?: string;
  /** Or a step of the working, counted from nothing. */
  readonly step?: number;
  /** Or a claimed figure. */
  readonly figure?: string;
  /** Told beside another that gives the same at the same place, and not for it. */
  readonly beside?: boolean;
}
