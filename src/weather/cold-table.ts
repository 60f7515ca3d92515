/** Least temperatures of concrete by the size of the section, and days of protection, as published. */

import { constant, time } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import type { Source } from '../reckoning/source';
import * as cautions from './cautions';
import type { ProtectionRule, WeatherMeasure } from './placing-limits-figures';
import type { PlacingParsed } from './placing-limits-input';
import { ACI_306_TABLES, ACI_306_THICK, OLD_COLD_RULE, PROTECTION_SPECIFICATION } from './sources';

type Degrees = Paired<'temperature'>;

/** Days of protection: ordinary cement, and high-early. */
type Days = readonly [ordinary: string, early: string];

/** One column of the table: concrete of a least dimension. */
export interface Column {
  /** Below this least dimension. */
  readonly below: Paired<'length'> | undefined;
  readonly kept: Degrees;
  /** As mixed above 30 degF, from 0 degF, and below. */
  readonly mixed: readonly [mild: Degrees, cold: Degrees, bitter: Degrees];
  readonly drop: Paired<'temperature-difference'>;
  readonly source: Source;
}

export const degrees = (customary: number, metric: number): Degrees =>
  paired('temperature', `${customary} degF`, `${metric} degC`);
export const drop = (customary: number, metric: number): Paired<'temperature-difference'> =>
  paired('temperature-difference', `${customary} degF`, `${metric} degC`);

/** Degrees in both systems as the standard has them; a drop of 50 degF is one of 28 degC. */
const TABLE = constant((): readonly Column[] => [
  {
    below: paired('length', '12 in', '300 mm'),
    kept: degrees(55, 13),
    mixed: [degrees(60, 16), degrees(65, 18), degrees(70, 21)],
    drop: drop(50, 28),
    source: ACI_306_TABLES,
  },
  {
    below: paired('length', '36 in', '900 mm'),
    kept: degrees(50, 10),
    mixed: [degrees(55, 13), degrees(60, 16), degrees(65, 18)],
    drop: drop(40, 22),
    source: ACI_306_TABLES,
  },
  {
    below: paired('length', '72 in', '1800 mm'),
    kept: degrees(45, 7),
    mixed: [degrees(50, 10), degrees(55, 13), degrees(60, 16)],
    drop: drop(30, 17),
    source: ACI_306_THICK,
  },
  {
    below: undefined,
    kept: degrees(40, 5),
    mixed: [degrees(45, 7), degrees(50, 10), degrees(55, 13)],
    drop: drop(20, 11),
    source: ACI_306_THICK,
  },
]);

export const COOL = /*#__PURE__*/ degrees(50, 10);
const WARM = /*#__PURE__*/ degrees(70, 21);

const DAYS: Readonly<Record<'sheltered' | 'exposed' | 'forms', Days>> = {
  sheltered: ['2 day', '1 day'],
  exposed: ['3 day', '2 day'],
  forms: ['6 day', '4 day'],
};

export const PUBLISHED: readonly (readonly [Source, ProtectionRule, string, Degrees?])[] = [
  [PROTECTION_SPECIFICATION, 'keep from freezing', '3 day'],
  [OLD_COLD_RULE, 'keep warm', '3 day', WARM],
  [OLD_COLD_RULE, 'keep warm', '5 day', COOL],
  [OLD_COLD_RULE, 'keep from freezing after that', '4 day'],
];

/** What is gathered while the weather is judged. */
export interface Judged {
  readonly next: WeatherMeasure[];
  hold: boolean;
  postpone: boolean;
}

export const columnOf = (t: Quantity<'length'>): Column =>
  TABLE().find(({ below }) => below === undefined || below.reachedBy(t) === undefined) as Column;

interface ProtectedFor {
  readonly protection?: Quantity<'time'>;
  readonly untilForms?: Quantity<'time'>;
}

export function protectionOf(input: PlacingParsed, pad: Pad): ProtectedFor {
  const { service, exposed, cement } = input;
  if (service === 'full-load') {
    pad.caution(cautions.engineerProtects);
    return {};
  }
  if (!service) {
    pad.assume({
      name: 'service',
      value: 'no-load',
      because: 'flatwork on the ground carries nothing early',
      override: 'Give service: partial-load or full-load',
      source: ACI_306_TABLES,
    });
  }
  if (exposed === undefined) {
    pad.assume({
      name: 'exposed',
      value: 'yes',
      because: 'flatwork outdoors freezes when it is in use',
      override: 'Give exposed: false for a floor that stays warm',
      source: ACI_306_TABLES,
    });
  }
  if (!cement) {
    pad.assume({
      name: 'cement',
      value: 'ordinary',
      because: 'nothing says that the mix gains strength early',
      override: 'Give cement: high-early for type III, more cement or an accelerator',
      source: ACI_306_TABLES,
    });
  }
  const early = cement === 'high-early' ? 1 : 0;
  const partial = service === 'partial-load';
  const days = DAYS[(exposed ?? true) || partial ? 'exposed' : 'sheltered'];
  return {
    protection: time(days[early]),
    ...(partial ? { untilForms: time(DAYS.forms[early]) } : {}),
  };
}
