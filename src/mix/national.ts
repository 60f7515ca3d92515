/**
 * What standards of single countries ask, for those who name them: BS 8500 and DIN 1045-2, which speak where EN 206
 * leaves it to the place, and AS 3600 with AS 2870.
 *
 * They are never the strictest of a job that names none: each speaks for its own country. All are from memory. With air
 * the first two ask less strength than without; what is asked here is the mix with air. AS 3600 counts frosts: fewer
 * than 25 in a year are taken for moderate weathering, more for severe.
 */

import { length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { type Air, fits } from './air';
import { type FrostClass, isExposed, type MixUse, type Sulfate, type Weathering } from './exposure';
import { type Limits, type MixStandard, percentRange, type Row } from './rule-row';
import { AS_3600, BS_8500, DIN_1045_2 } from './sources';

interface Asked {
  readonly use: MixUse;
  readonly weathering: Weathering;
  readonly frost: FrostClass;
  readonly sulfate: Sulfate;
  readonly stone: Quantity<'length'>;
}

interface Named extends Limits {
  readonly name: string;
}

type BySulfate = Record<Exclude<Sulfate, 'none'>, Named>;

/** Where it does not freeze: in the ground, in the weather, and indoors. */
interface Mild {
  readonly ground: Named;
  readonly outdoors: Named;
  readonly indoors: Named;
}

interface European {
  readonly standard: MixStandard;
  readonly source: Source;
  readonly mild: Mild;
  readonly frosty: Record<Exclude<FrostClass, 'F0'>, Named>;
  readonly sulfate: BySulfate;
  /** The least air in percent, from each size of stone on, in millimeters. */
  readonly air: readonly (readonly [stone: number, percent: number])[];
}

const BS: European = {
  standard: 'bs-8500',
  source: BS_8500,
  mild: {
    ground: { name: 'XC2', mpa: 25, cube: 30, w: '0.65' },
    outdoors: { name: 'XC3/4', mpa: 25, cube: 30, w: '0.65' },
    indoors: { name: 'XC1', mpa: 20, cube: 25, w: '0.70' },
  },
  frosty: {
    F1: { name: 'XF1', mpa: 28, cube: 35, w: '0.60' },
    F2: { name: 'XF3', mpa: 25, cube: 30, w: '0.60' },
    F3: { name: 'XF4', mpa: 28, cube: 35, w: '0.55' },
  },
  sulfate: {
    moderate: { name: 'DC-2', mpa: 25, cube: 30, w: '0.55' },
    severe: { name: 'DC-3', mpa: 25, cube: 30, w: '0.50' },
    'very-severe': { name: 'DC-4', mpa: 25, cube: 30, w: '0.45' },
  },
  air: [
    [0, 5.5],
    [14, 4.5],
    [20, 3.5],
    [32, 3],
  ],
};

const DIN: European = {
  standard: 'din-1045-2',
  source: DIN_1045_2,
  mild: {
    ground: { name: 'XC2', mpa: 16, cube: 20, w: '0.75' },
    outdoors: { name: 'XC4', mpa: 25, cube: 30, w: '0.60' },
    indoors: { name: 'XC1', mpa: 16, cube: 20, w: '0.75' },
  },
  frosty: {
    F1: { name: 'XF1', mpa: 25, cube: 30, w: '0.60' },
    F2: { name: 'XF3', mpa: 25, cube: 30, w: '0.55' },
    F3: { name: 'XF4', mpa: 30, cube: 37, w: '0.50' },
  },
  sulfate: {
    moderate: { name: 'XA1', mpa: 25, cube: 30, w: '0.60' },
    severe: { name: 'XA2', mpa: 35, cube: 45, w: '0.50' },
    'very-severe': { name: 'XA3', mpa: 35, cube: 45, w: '0.45' },
  },
  air: [
    [0, 5.5],
    [16, 4.5],
    [32, 4],
    [63, 3.5],
  ],
};

/** Points by which air may be above its least. */
const ABOVE = 4;

const reaches = (stone: Quantity<'length'>, mm: number): boolean => fits(stone, length(`${mm} mm`));

function airOf({ air }: European, stone: Quantity<'length'>): Air {
  const least = air.filter(([size]) => reaches(stone, size)).at(-1)?.[1] ?? 0;
  return percentRange(`${least}%`, `${least + ABOVE}%`);
}

const mildOf = ({ ground, outdoors, indoors }: Mild, use: MixUse): Named =>
  use === 'footing' ? ground : isExposed(use) || use === 'wall' ? outdoors : indoors;

function european(of: European, { use, frost, sulfate, stone }: Asked): Row[] {
  const { standard, source } = of;
  const row = ({ name, ...limits }: Named, air?: Air): Row => ({
    standard,
    source,
    rule: say`class ${{ name }}`,
    ...limits,
    air,
  });
  const wet = frost === 'F2' || frost === 'F3';
  const frosty = frost === 'F0' ? mildOf(of.mild, use) : of.frosty[frost];
  return [
    row(frosty, wet ? airOf(of, stone) : undefined),
    ...(sulfate === 'none' ? [] : [row(of.sulfate[sulfate])]),
  ];
}

const grade = (mpa: number): Limits => ({ mpa, grade: `N${mpa}` });

const AS_SULFATE: BySulfate = {
  moderate: { name: 'B1', ...grade(32) },
  severe: { name: 'B2', ...grade(40) },
  'very-severe': { name: 'C1', ...grade(50) },
};

function australian({ use, weathering, frost, sulfate, stone }: Asked): Row[] {
  const base = { standard: 'as-3600' as const, source: AS_3600 };
  const rows: Row[] = [];
  if (frost === 'F0') {
    const outdoors = isExposed(use) || use === 'wall';
    rows.push({
      ...base,
      rule: say`class ${{ name: outdoors ? 'A2' : 'A1' }}`,
      ...grade(outdoors ? 25 : 20),
    });
  } else {
    const often = weathering === 'severe';
    rows.push({
      ...base,
      rule: often ? say`25 frosts a year and more` : say`fewer than 25 frosts a year`,
      ...grade(often ? 40 : 32),
      air: reaches(stone, 32) ? percentRange('3%', '6%') : percentRange('4%', '8%'),
    });
  }
  if (sulfate !== 'none') {
    const { name, ...limits } = AS_SULFATE[sulfate];
    rows.push({ ...base, rule: say`class ${{ name }}`, ...limits });
  }
  return rows;
}

/** The rules of a standard that speaks only where it is named. */
export function nationalRules(standard: string | undefined, asked: Asked): Row[] {
  if (standard === 'bs-8500') return european(BS, asked);
  if (standard === 'din-1045-2') return european(DIN, asked);
  return standard === 'as-3600' ? australian(asked) : [];
}
