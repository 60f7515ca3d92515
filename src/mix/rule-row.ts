/** One rule of a code or standard, before it is written in the units of the job. */
import { ratio } from '../quantity/make';
import type { Source } from '../reckoning/source';
import type { Words } from '../reckoning/words';
import type { Air } from './air';

/** Codes and standards that a mix may be asked by. */
export type MixStandard =
  | 'irc'
  | 'ibc'
  | 'aci-332'
  | 'aci-318'
  | 'csa-a23.1'
  | 'en-206'
  | 'bs-8500'
  | 'din-1045-2'
  | 'as-3600';

/** Strength and water. */
export interface Limits {
  /** Strength in psi and in MPa; `cube` where the class has two numbers, `grade` where it has a name. */
  readonly psi?: number;
  readonly mpa?: number;
  readonly cube?: number;
  readonly grade?: string;
  readonly w?: string;
}

/** A rule with what it says. */
export interface Row extends Limits {
  readonly standard?: MixStandard;
  readonly rule: Words;
  readonly source: Source;
  readonly air?: Air | undefined;
  readonly old?: true;
}

/** Air from one share to another. */
export const percentRange = (low: string, high?: string): Air => ({
  minimum: ratio(low),
  ...(high ? { maximum: ratio(high) } : {}),
});
