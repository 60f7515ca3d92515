/**
 * What published rules ask of slopes, as data: the least for drainage, the most for feet and wheels.
 *
 * Each value stands in its source's own terms; rules differ from place to place, so the local code
 * and the plans decide. Where there is no document, the entry says common practice.
 */

import { constant, slope } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { CC_STEPS, PCA_DRAINAGE, type Source } from '../reckoning/source';
import { settled } from '../reckoning/system';
import { type Saying, say, type Words, wordsOf } from '../reckoning/words';
import {
  ADA_RAMPS,
  ADA_WALKS,
  DRIVEWAY_CODES,
  GARAGE_FLOORS,
  GRADING_STANDARDS,
  IRC_DRAINAGE,
  MCGRAW_PATIO,
  UFC_SITE,
} from './sources';

/** What a surface is used as. */
export type GradeUse =
  | 'paved-by-building'
  | 'ground-by-building'
  | 'swale-by-building'
  | 'slab-outdoors'
  | 'patio'
  | 'garage-floor'
  | 'walk-along'
  | 'walk-across'
  | 'steps-and-landings'
  | 'accessible-walk-along'
  | 'accessible-walk-across'
  | 'accessible-ramp'
  | 'accessible-landing'
  | 'parking-across'
  | 'driveway';

/** Limits of one use. */
export interface GradeLimit {
  /** The use that is limited. */
  readonly use: GradeUse;
  /** Least slope, for drainage. */
  readonly least?: Quantity<'slope'>;
  /** Most slope, for safety. */
  readonly most?: Quantity<'slope'>;
  /** What the source itself allows to be off, where the part read says so. */
  readonly tolerance?: Words;
  /** In words, with what the source allows beside it. */
  readonly because: Words;
  /** Where the limits are taken from. */
  readonly source: Source;
  /** Where the most is taken from, where that is another work. */
  readonly mostSource?: Source;
}

interface Row {
  readonly use: GradeUse;
  /** One for both unit systems, or as each is built to. */
  readonly least?: string | readonly [customary: string, metric: string];
  readonly most?: string;
  readonly tolerance?: Words;
  readonly because: Saying;
  readonly source: Source;
  readonly mostSource?: Source;
}

/** The strip along a building. */
const ZONE = /*#__PURE__*/ paired('length', '10 ft', '3 m');

const ROWS: readonly Row[] = /*#__PURE__*/ (() => [
  {
    use: 'paved-by-building',
    least: '2%',
    because: say`paving within ${{ zone: ZONE }} of a building`,
    source: IRC_DRAINAGE,
  },
  {
    use: 'ground-by-building',
    least: '5%',
    because: say`ground within ${{ zone: ZONE }} of a building, ${{ fall: paired('length', '6 in', '150 mm') }} in ${{ zone: ZONE }}`,
    source: IRC_DRAINAGE,
  },
  {
    use: 'swale-by-building',
    least: '2%',
    because: say`a swale within ${{ zone: ZONE }} of a building, where lot lines or walls leave no room`,
    source: IRC_DRAINAGE,
  },
  {
    use: 'slab-outdoors',
    least: '1%',
    because: 'an outdoor slab away from buildings, where 2% is better',
    source: PCA_DRAINAGE,
  },
  { use: 'patio', least: ['1/4 in/ft', '2%'], because: 'a patio, away from the house', source: MCGRAW_PATIO },
  {
    use: 'garage-floor',
    least: ['1/8 in/ft', '1%'],
    because: 'a garage floor, to its door or a drain',
    source: GARAGE_FLOORS,
  },
  {
    use: 'walk-along',
    least: '0.5%',
    most: '15%',
    because: 'a walk along its length; 1% to 2% is the usual least, ramps or steps are used above 5%',
    source: UFC_SITE,
  },
  {
    use: 'walk-across',
    least: '1%',
    most: '1:48',
    tolerance: say`${{ off: paired('length', '1/4 in', '6 mm') }} in ${{ run: paired('length', '5 ft', '1.5 m') }}`,
    because: 'a walk across: 1% drains, 1:48 is usual and the most where it must be accessible',
    source: PCA_DRAINAGE,
    mostSource: ADA_WALKS,
  },
  {
    use: 'steps-and-landings',
    most: '1:48',
    because: say`treads and landings, ${{ fall: paired('length', '1/4 in', '20 mm') }} in ${{ run: paired('length', '1 ft', '1 m') }}`,
    source: CC_STEPS,
  },
  {
    use: 'accessible-walk-along',
    most: '1:20',
    because: 'an accessible route along its length; steeper is a ramp',
    source: ADA_WALKS,
  },
  {
    use: 'accessible-walk-across',
    most: '1:48',
    because: 'an accessible route across',
    source: ADA_WALKS,
  },
  { use: 'accessible-ramp', most: '1:12', because: 'a new accessible ramp', source: ADA_RAMPS },
  {
    use: 'accessible-landing',
    most: '1:48',
    because: 'landing of an accessible ramp in any direction, and a ramp across',
    source: ADA_RAMPS,
  },
  {
    use: 'parking-across',
    least: '0.5%',
    most: '1%',
    because: 'parking across the aisle, at 45 or 60 degrees; 1.5% at most in other layouts',
    source: GRADING_STANDARDS,
    mostSource: UFC_SITE,
  },
  { use: 'driveway', most: '10%', because: 'a residential driveway', source: DRIVEWAY_CODES },
])();

const leastIn = (least: NonNullable<Row['least']>, system: System): Quantity<'slope'> =>
  slope(typeof least === 'string' ? least : least[system === 'metric' ? 1 : 0]);

const tableIn = (system: System): readonly GradeLimit[] =>
  Object.freeze(
    ROWS.map(({ use, least, most, tolerance, because, source, mostSource }) =>
      Object.freeze({
        use,
        ...(least ? { least: leastIn(least, system) } : {}),
        ...(most ? { most: slope(most) } : {}),
        ...(tolerance ? { tolerance } : {}),
        because: wordsOf(because),
        source,
        ...(mostSource ? { mostSource } : {}),
      }),
    ),
  );

const TABLES = { customary: constant(() => tableIn('customary')), metric: constant(() => tableIn('metric')) };

/**
 * Published limits of slopes, as data.
 *
 * @param system - the family of units that the limits and lengths in the words are in; by default customary
 * @returns one entry for each use, with its source
 * @example
 * ```ts
 * import { gradeLimits } from 'flatwork-reckoner';
 *
 * gradeLimits().find(({ use }) => use === 'ground-by-building')?.least?.format(); // '5%'
 * ```
 */
export const gradeLimits = (system: System = 'customary'): readonly GradeLimit[] =>
  settled(TABLES[system](), system);

/** Every use, for fields. */
export const GRADE_USES: readonly GradeUse[] = /*#__PURE__*/ ROWS.map(({ use }) => use);

/** The limits of one use, of which the least may differ between systems; what it says comes in the units of a job when the result is made. */
export const limitOf = (use: GradeUse, system: System = 'customary'): GradeLimit =>
  TABLES[system]().find((row) => row.use === use) as GradeLimit;

const GROUND: readonly GradeUse[] = ['ground-by-building', 'swale-by-building'];

/** True for uses where the surface is grass or earth, not paving. */
export const isGround = (use: GradeUse): boolean => GROUND.includes(use);

/** Uses that have rules of their own for wheels: none of them is judged as a way on foot. */
const WHEELED: readonly GradeUse[] = ['parking-across', 'driveway'];

/** True for paving that people walk on, for which nobody has said that it is to be a ramp. */
export const isWalked = (use: GradeUse): boolean =>
  !isGround(use) && !isAccessible(use) && !WHEELED.includes(use);

/** True for uses that people with wheels must be able to take. */
export const isAccessible = (use: GradeUse): boolean => use.startsWith('accessible');
