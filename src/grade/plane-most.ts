/**
 * How steep a plane of forms may be by what it is used as, where nobody has said.
 *
 * Concrete that is least where the ground falls steeply is of no use when nobody can walk or park on it.
 * The most of a use is that of the table named here, for all directions; of uses that it lacks, that of the
 * published limits.
 */
import { constant, slope } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Source } from '../reckoning/source';
import type { Saying } from '../reckoning/words';
import { GRADING_TABLE } from './form-sources';
import { type GradeUse, limitOf } from './limits';
import { ADA_WALKS } from './sources';

/** A most slope with its reason. */
export interface MostSlope {
  readonly most: Quantity<'slope'>;
  readonly because: Saying;
  readonly source: Source;
}

const USUAL = constant(
  (): MostSlope => ({
    most: slope('5%'),
    because: 'steeper than 1:20 a surface that people walk on counts as a ramp',
    source: ADA_WALKS,
  }),
);

const OF_TABLE: Partial<Record<GradeUse, readonly [most: string, what: string]>> = {
  patio: ['3%', 'a terrace'],
  'garage-floor': ['5%', 'a floor that cars stand on, as parking'],
  'parking-across': ['5%', 'parking'],
  'ground-by-building': ['33%', 'a bank of grass that is mown'],
  'swale-by-building': ['10%', 'a swale of grass'],
};

/** The most of a use; without one, that of a surface that people walk on. */
export function mostOf(use: GradeUse | undefined): MostSlope {
  if (!use) return USUAL();
  const row = OF_TABLE[use];
  if (row) return { most: slope(row[0]), because: row[1], source: GRADING_TABLE };
  const limit = limitOf(use);
  return limit.most ? { most: limit.most, because: limit.because, source: limit.source } : USUAL();
}
