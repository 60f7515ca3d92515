/**
 * Lap length of two bars.
 *
 * By diameters: `l = max(n × d, c)`, with `n` of the plans, of the table for a grade (40 at 40,000 psi, 60 at
 * 60,000 psi), or of the steel stress by the clause on masonry, `0.002 × fs` in psi, at least 40. By development, as
 * ACI 318-19 chapter 25 is given in lecture notes: `l_d = 3 ÷ 40 × fy ÷ (λ √f'c) × ψt ψe ψs ψg ÷ K × d` with
 * `K = min(cb ÷ d, 2.5)`, where `cb` is the lesser of the cover to the middle of the bar and half the spacing; a
 * class A lap is 1.0 and a class B lap 1.3 of it, and each is at least 12 in at its end, not before the factor.
 * Strengths go into the formula as numbers of psi. Laps by EN 1992, CSA A23.3 and AS 3600 are in `lap-standards.ts`.
 * The plans and the engineer govern.
 */

import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { greaterOf } from '../quantity/greater';
import { constant } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, kinds, maybe, quantity, whole, wholeNumber, word } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { all, notBoth } from '../reckoning/together';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import { type AnyBarSize, type BarName, diameterOf, isHeavy, usualGrade, yieldOf } from './bars';
import { fewDiameters, lapsGoverned, noLapOfLargeBars } from './cautions';
import { numberIn, plainNumber } from './common';
import {
  type ByDevelopment,
  byDevelopment,
  type DevelopmentLapInput,
  developmentLap,
  LEAST,
  PSI,
} from './lap-development';
import type { AustralianLapInput, CsaLapInput, EurocodeLapInput } from './lap-inputs';
import { byStandard, type StandardLap, standardLaps } from './lap-standards';
import { LAP_LEAST, LAP_STRESS } from './ordinary';
import {
  ACI_318_DEVELOPMENT,
  AS_3600_LAPS,
  CRSI_BARS,
  CSA_LAPS,
  EUROCODE_LAPS,
  IRC_LAPS,
  MASONRY_LAP,
  VCC_LAP,
} from './sources';

/** Grades for which the residential code gives a number of diameters. */
export type LapGrade = '40' | '60' | '280' | '420';

/** A lap of so many bar diameters. */
export interface DiametersLapInput {
  /** A number of bar diameters. */
  readonly kind: 'diameters';
  /** The bars that are lapped, both of one size. */
  readonly bar: BarName;
  /** By default 40, or as many as the grade or the stress asks for. */
  readonly diameters?: number;
  /** Grade of the bar, 40 or 60, in metric 280 or 420: 40 or 60 diameters, as the residential code has it. */
  readonly grade?: LapGrade;
  /** Stress of the bar in service, where the clause on masonry is to be followed. */
  readonly stress?: QuantityInput<'pressure'>;
  /** Never shorter than this; by default 12 in. */
  readonly minimum?: QuantityInput<'length'>;
}

/** Input of {@link lapLength}. */
export type LapLengthInput =
  | DiametersLapInput
  | DevelopmentLapInput
  | EurocodeLapInput
  | CsaLapInput
  | AustralianLapInput;

/** Figures of {@link lapLength}. */
export interface LapLengthFigures {
  /** How far the two bars overlap. */
  readonly lap: Quantity<'length'>;
  /** The lap in bar diameters. */
  readonly diameters: Quantity<'ratio'>;
  /** In which one bar is anchored; left out of a lap by diameters. */
  readonly development?: Quantity<'length'>;
  /** Cover or half the spacing, in bar diameters, at most 2.5; by the rule of development only. */
  readonly confinement?: Quantity<'count'>;
}

type Length = Quantity<'length'>;

interface ByDiameters {
  readonly kind: 'diameters';
  readonly bar: AnyBarSize;
  readonly diameters: Quantity<'count'> | undefined;
  readonly grade: LapGrade | undefined;
  readonly stress: Quantity<'pressure'> | undefined;
  readonly minimum: Length | undefined;
}

const DIAMETERS = constant(() => wholeNumber(40));
const LOW_STRESS = /*#__PURE__*/ paired('pressure', '20000 psi', '140 MPa');
const MOST_DIAMETERS = 200;
/** Fewer diameters than any rule for deformed bars has. */
const FEW = constant(() => wholeNumber(30));
const DIAMETERS_BY_GRADE: Readonly<Record<LapGrade, number>> = { '40': 40, '60': 60, '280': 40, '420': 60 };

/** How many diameters where none are given: by grade, by stress, or the least of the clause. */
function usualDiameters({ grade, stress }: ByDiameters, pad: Pad): Quantity<'count'> {
  if (grade) {
    const n = wholeNumber(DIAMETERS_BY_GRADE[grade]);
    const because = say`${{ n }} diameters for bars of ${{ strength: yieldOf(grade) }}`;
    const override = 'Give diameters from the plans';
    pad.assume({ name: 'diameters', value: n, because, override, source: IRC_LAPS });
    return n;
  }
  if (stress) {
    const f = plainNumber(numberIn(stress, PSI()));
    const k = DIAMETERS();
    const n = plainNumber(Decimal.max(canonicalValue(f).times('0.002'), canonicalValue(k)));
    return pad.step('diameters by the stress in psi', 'n = max(0.002 × f, k)', { f, k }, n);
  }
  pad.assume({
    name: 'diameters',
    value: DIAMETERS(),
    because: say`the least of the clause, which holds for a stress of up to ${{ stress: LOW_STRESS }}; bars of grade ${{ grade: usualGrade(pad.system) }} may need 60`,
    override: 'Give diameters from the plans, or grade, or stress',
    source: VCC_LAP,
  });
  return DIAMETERS();
}

function byDiameters(input: ByDiameters, pad: Pad): LapLengthFigures {
  const given = (['diameters', 'grade', 'stress'] as const).filter((name) => input[name] !== undefined);
  if (given.length > 1) refuse('', faults.giveOneOf(['diameters', 'grade', 'stress']));
  const d = diameterOf(input.bar);
  const n = input.diameters ?? usualDiameters(input, pad);
  if (n.lessThan(FEW())) pad.caution(fewDiameters(FEW(), n));
  const c = input.minimum ?? LEAST.as(pad.system);
  if (!input.minimum) {
    const override = 'Give minimum from the plans';
    pad.assume({ name: 'minimum', value: LEAST, because: 'no lap is shorter', override, source: VCC_LAP });
  }
  const lap = pad.step('lap', 'l = max(n × d, c)', { n, d, c }, greaterOf(d.times(n), c));
  return { lap, diameters: lap.over(d) };
}

function byRule(input: ByDiameters | ByDevelopment | StandardLap, pad: Pad): LapLengthFigures {
  if (input.kind === 'diameters') return byDiameters(input, pad);
  if (input.kind === 'development') return byDevelopment(input, pad);
  const { lap, development } = byStandard(input, pad);
  return { lap, diameters: lap.over(diameterOf(input.bar)), development };
}

function reckon(input: ByDiameters | ByDevelopment | StandardLap, pad: Pad): LapLengthFigures {
  const figures = byRule(input, pad);
  pad.caution(lapsGoverned);
  if (isHeavy(input.bar)) pad.caution(noLapOfLargeBars);
  return figures;
}

/**
 * Lap length of two bars, by diameters, by development, or by EN 1992, CSA A23.3 or AS 3600.
 *
 * @param input - the rule, the bar, and what the rule asks for
 * @returns the lap, in length and in bar diameters
 * @throws {InputError} `unknown-choice` for a bar or rule that is not known; `give-one-of` for more than one of
 * diameters, grade and stress; quantities that cannot be
 * read or are not greater than zero
 * @source diameters: Virginia Construction Code 2107.2.1, a clause on masonry whose equation, 0.002 × d × fs, is
 * from memory, and International Residential Code table R608.5.4(1); development: ACI 318-19
 * as given in lecture notes, the limits of 1.7 and 10,000 psi from memory; EN 1992-1-1 as the ICE Manual tabulates
 * it; CSA A23.3 and AS 3600 as quoted. The plans and the engineer govern
 * @example
 * ```ts
 * import { lapLength } from 'flatwork-reckoner';
 *
 * lapLength({ kind: 'diameters', bar: '#5' }).figures.lap.format('in'); // '25 in'
 * const { figures } = lapLength({
 *   kind: 'development',
 *   bar: '#8',
 *   strength: '4000 psi',
 *   cover: '3 in',
 *   spacing: '12 in',
 * });
 * figures.lap.format('in', { places: 1 }); // '37.0 in'
 *
 * const lap = lapLength({ kind: 'eurocode-2', bar: '12 mm', strength: 'C25/30' }).figures.lap;
 * lap.format('mm'); // '726.8 mm'
 * ```
 */
export const lapLength: Calculation<LapLengthInput, LapLengthFigures> = /*#__PURE__*/ define({
  id: 'lap-length',
  title: 'Lap splice length',
  version: 1,
  sources: [
    CRSI_BARS,
    VCC_LAP,
    MASONRY_LAP,
    IRC_LAPS,
    ACI_318_DEVELOPMENT,
    EUROCODE_LAPS,
    CSA_LAPS,
    AS_3600_LAPS,
  ],
  input: () =>
    kinds('kind', [
      fields(
        {
          kind: word('diameters'),
          bar: barField('bar'),
          diameters: maybe(whole('diameters', 1, MOST_DIAMETERS)),
          grade: maybe(choice('grade', ['40', '60', '280', '420'] as const)),
          stress: maybe(quantity('pressure', 'stress', 'positive', LAP_STRESS)),
          minimum: maybe(quantity('length', 'minimum', 'not-negative', LAP_LEAST)),
        },
        all(notBoth('diameters', 'grade'), notBoth('diameters', 'stress'), notBoth('grade', 'stress')),
      ),
      developmentLap(),
      ...standardLaps(),
    ]),
  reckon,
});
