/**
 * Lap length of two bars.
 *
 * By diameters: `l = max(n × d, c)`, with `n` of the plans, of the table for a grade (40 at 40,000 psi, 60 at
 * 60,000 psi), or of the steel stress by the clause on masonry, `0.002 × fs` in psi, at least 40. By development, as
 * ACI 318-19 chapter 25 is given in lecture notes: `l_d = 3 ÷ 40 × fy ÷ (λ √f'c) × ψt ψe ψs ψg ÷ K × d` with
 * `K = min(cb ÷ d, 2.5)`, where `cb` is the lesser of the cover to the middle of the bar and half the spacing; a
 * class A lap is 1.0 and a class B lap 1.3 of it, and each is at least 12 in at its end, not before the factor.
 * Strengths go into the formula as numbers of psi. The plans and the engineer govern.
 */

import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { greaterOf } from '../quantity/greater';
import { constant, length, pressure } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { strength } from '../reckoning/concrete-strength';
import {
  choice,
  fields,
  kinds,
  maybe,
  quantity,
  whole,
  wholeNumber,
  word,
  yesOrNo,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { all, notBoth } from '../reckoning/together';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import {
  type AnyBarSize,
  BAR_GRADES,
  type BarGrade,
  diameterOf,
  isHeavy,
  usualGrade,
  usualGradeOf,
  yieldOf,
} from './bars';
import { fewDiameters, lapsGoverned, noLapOfLargeBars } from './cautions';
import { numberIn, plainNumber } from './common';
import { COVER, LAP_LEAST, LAP_SPACING, LAP_STRESS, STRENGTH } from './ordinary';
import { ACI_318_DEVELOPMENT, CRSI_BARS, IRC_LAPS, MASONRY_LAP, VCC_LAP } from './sources';

/** Grades for which the residential code gives a number of diameters. */
export type LapGrade = '40' | '60' | '280' | '420';

/** A lap of so many bar diameters. */
export interface DiametersLapInput {
  /** A number of bar diameters. */
  readonly kind: 'diameters';
  /** The bars that are lapped, both of one size. */
  readonly bar: AnyBarSize;
  /** By default 40, or as many as the grade or the stress asks for. */
  readonly diameters?: number;
  /** Grade of the bar, 40 or 60, in metric 280 or 420: 40 or 60 diameters, as the residential code has it. */
  readonly grade?: LapGrade;
  /** Stress of the bar in service, where the clause on masonry is to be followed. */
  readonly stress?: QuantityInput<'pressure'>;
  /** Never shorter than this; by default 12 in. */
  readonly minimum?: QuantityInput<'length'>;
}

/** A lap from the development length of the bar. */
export interface DevelopmentLapInput {
  /** The development length of the bar. */
  readonly kind: 'development';
  /** The bars that are lapped, both of one size. */
  readonly bar: AnyBarSize;
  /** Specified strength of the concrete, by its cylinder: `4000 psi`, `28 MPa`, or the class `C25/30`. */
  readonly concrete: QuantityInput<'pressure'>;
  /** Grade of the bar; by default 60, in a metric job 420, 400 of bars such as 15M and B500B of those by diameter. */
  readonly grade?: BarGrade;
  /** Cover to the face of the bar; without it the least confinement is taken. */
  readonly cover?: QuantityInput<'length'>;
  /** Center to center of the bars; without it the least confinement is taken. */
  readonly spacing?: QuantityInput<'length'>;
  /** More than 12 in of concrete is placed below the bar; by default not. */
  readonly topBar?: boolean;
  /** The bar is epoxy coated; by default not. */
  readonly epoxy?: boolean;
  /** Lightweight concrete; by default not. */
  readonly lightweight?: boolean;
  /** Class of the lap; by default B. */
  readonly lapClass?: 'A' | 'B';
}

/** Input of {@link lapLength}. */
export type LapLengthInput = DiametersLapInput | DevelopmentLapInput;

/** Figures of {@link lapLength}. */
export interface LapLengthFigures {
  /** How far the two bars overlap. */
  readonly lap: Quantity<'length'>;
  /** The lap in bar diameters. */
  readonly diameters: Quantity<'ratio'>;
  /** By the rule of development only. */
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

interface ByDevelopment {
  readonly kind: 'development';
  readonly bar: AnyBarSize;
  readonly concrete: Quantity<'pressure'>;
  readonly grade: BarGrade | undefined;
  readonly cover: Length | undefined;
  readonly spacing: Length | undefined;
  readonly topBar: boolean | undefined;
  readonly epoxy: boolean | undefined;
  readonly lightweight: boolean | undefined;
  readonly lapClass: 'A' | 'B' | undefined;
}

const LEAST = /*#__PURE__*/ paired('length', '12 in', '300 mm');
const DIAMETERS = constant(() => wholeNumber(40));
const LOW_STRESS = /*#__PURE__*/ paired('pressure', '20000 psi', '140 MPa');
const PSI = constant(() => pressure('1 psi'));
const STRONGEST = constant(() => pressure('10000 psi'));
const MOST_DIAMETERS = 200;
/** Fewer diameters than any rule for deformed bars has. */
const FEW = constant(() => wholeNumber(30));
/** #6 and 20M, which are 19.05 and 19.5 mm, are small; bars by diameter up to 20 mm. */
const SMALL = constant(() => length('20 mm'));

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

/** Factor of the grade: 1 up to 60 and 420, 1.15 up to 80 and 550, what lies between as these. */
function gradeFactor(grade: BarGrade): string {
  const strength = yieldOf(grade);
  if (!strength.greaterThan(yieldOf('420'))) return '1';
  return strength.greaterThan(yieldOf('80')) ? '1.3' : '1.15';
}

/** What is not given counts as little as it may be: one diameter from the middle of the bar. */
function assumeLeast(name: 'cover' | 'spacing', value: Length, pad: Pad): Length {
  pad.assume({
    name,
    value: { reckoned: value },
    because: 'not given, so the least that is ordinary: the lap comes out long',
    override: say`Give ${{ name }} for a shorter lap`,
    source: ACI_318_DEVELOPMENT,
  });
  return value;
}

/** The lesser of the cover to the middle of the bar and half the spacing, in diameters, at most 2.5. */
function confinementOf({ bar, ...given }: ByDevelopment, pad: Pad): Quantity<'count'> {
  const d = diameterOf(bar);
  const two = wholeNumber(2);
  const c = given.cover ?? assumeLeast('cover', d.over(two), pad);
  const s = given.spacing ?? assumeLeast('spacing', d.times(two), pad);
  const [edge, half] = [c.plus(d.over(two)), s.over(two)];
  const K = plainNumber(Decimal.min(numberIn(edge.lessThan(half) ? edge : half, d), '2.5'));
  return pad.step('confinement', 'K = min(c ÷ d + 0.5, s ÷ 2 ÷ d, 2.5)', { c, d, s }, K);
}

interface Factors {
  readonly T: Quantity<'count'>;
  readonly S: Quantity<'count'>;
  readonly G: Quantity<'count'>;
  readonly q: Quantity<'count'>;
}

/** Position and coating together need not exceed 1.7 (from memory). */
function factorsOf(input: ByDevelopment, grade: BarGrade): Factors {
  const placed = new Decimal(input.topBar ? '1.3' : '1').times(input.epoxy ? '1.5' : '1');
  const small = !diameterOf(input.bar).greaterThan(SMALL());
  return {
    T: plainNumber(Decimal.min(placed, '1.7')),
    S: plainNumber(small ? '0.8' : '1'),
    G: plainNumber(gradeFactor(grade)),
    q: plainNumber(input.lightweight ? '0.75' : '1'),
  };
}

function assumeUsual(input: ByDevelopment, pad: Pad): { grade: BarGrade; lapClass: 'A' | 'B' } {
  const usual = { grade: usualGradeOf(input.bar, pad.system), lapClass: 'B' } as const;
  for (const name of ['grade', 'lapClass'] as const) {
    if (input[name]) continue;
    pad.assume({
      name,
      value: name === 'grade' ? usual.grade : `class ${usual.lapClass}`,
      because:
        name === 'grade'
          ? say`most bars of this kind are grade ${{ grade: usual.grade }}`
          : 'more than half of the bars are lapped in one place',
      override: say`Give ${{ name }} from the plans`,
      source: ACI_318_DEVELOPMENT,
    });
  }
  return { grade: input.grade ?? usual.grade, lapClass: input.lapClass ?? usual.lapClass };
}

function byDevelopment(input: ByDevelopment, pad: Pad): LapLengthFigures {
  const { grade, lapClass } = assumeUsual(input, pad);
  const d = diameterOf(input.bar);
  const strength = input.concrete.greaterThan(STRONGEST()) ? STRONGEST() : input.concrete;
  const F = plainNumber(numberIn(yieldOf(grade), PSI()));
  const C = plainNumber(numberIn(strength, PSI()));
  const K = confinementOf(input, pad);
  const { T, S, G, q } = factorsOf(input, grade);
  const number = canonicalValue(F).times('0.075');
  const factors = [T, S, G].reduce((p, f) => p.times(canonicalValue(f)), number);
  const under = canonicalValue(C).sqrt().times(canonicalValue(q)).times(canonicalValue(K));
  const raw = d.times(plainNumber(factors.div(under)));
  pad.step(
    'development before its least: T position and coating, S size, G grade, q concrete',
    'D = 0.075 × F × T × S × G × d ÷ (q × √(C) × K)',
    { F, T, S, G, d, q, C, K },
    raw,
  );
  const c = LEAST.as(pad.system);
  const development = pad.step('development', 'L = max(D, c)', { D: raw, c }, greaterOf(raw, c));
  const m = plainNumber(lapClass === 'A' ? '1' : '1.3');
  const lap = greaterOf(raw.times(m), c);
  pad.step(
    say`lap of class ${{ lapClass }}, the least after the factor`,
    'l = max(m × D, c)',
    { m, D: raw, c },
    lap,
  );
  return { lap, diameters: lap.over(d), development, confinement: K };
}

function reckon(input: ByDiameters | ByDevelopment, pad: Pad): LapLengthFigures {
  const figures = input.kind === 'diameters' ? byDiameters(input, pad) : byDevelopment(input, pad);
  pad.caution(lapsGoverned);
  if (isHeavy(input.bar)) pad.caution(noLapOfLargeBars);
  return figures;
}

/**
 * Lap length of two bars, by diameters or by development.
 *
 * @param input - the rule, the bar, and what the rule asks for
 * @returns the lap, in length and in bar diameters
 * @throws {InputError} `unknown-choice` for a bar or rule that is not known; `give-one-of` for more than one of
 * diameters, grade and stress; quantities that cannot be
 * read or are not greater than zero
 * @source diameters: Virginia Construction Code 2107.2.1, a clause on masonry whose equation, 0.002 × d × fs, is
 * from memory, and International Residential Code table R608.5.4(1); development: ACI 318-19
 * as given in lecture notes, the limits of 1.7 and 10,000 psi from memory. The plans and the engineer
 * govern
 * @example
 * ```ts
 * import { lapLength } from 'flatwork-reckoner';
 *
 * lapLength({ kind: 'diameters', bar: '#5' }).figures.lap.format('in'); // '25 in'
 * const { figures } = lapLength({
 *   kind: 'development',
 *   bar: '#8',
 *   concrete: '4000 psi',
 *   cover: '3 in',
 *   spacing: '12 in',
 * });
 * figures.lap.format('in', { places: 1 }); // '37.0 in'
 * ```
 */
export const lapLength: Calculation<LapLengthInput, LapLengthFigures> = /*#__PURE__*/ define({
  id: 'lap-length',
  title: 'Lap splice length',
  version: 1,
  sources: [CRSI_BARS, VCC_LAP, MASONRY_LAP, IRC_LAPS, ACI_318_DEVELOPMENT],
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
      fields({
        kind: word('development'),
        bar: barField('bar'),
        concrete: strength('concrete', STRENGTH),
        grade: maybe(choice('grade', BAR_GRADES)),
        cover: maybe(quantity('length', 'cover', 'positive', COVER)),
        spacing: maybe(quantity('length', 'spacing', 'positive', LAP_SPACING)),
        topBar: maybe(yesOrNo('topBar')),
        epoxy: maybe(yesOrNo('epoxy')),
        lightweight: maybe(yesOrNo('lightweight')),
        lapClass: maybe(choice('lapClass', ['A', 'B'] as const)),
      }),
    ]),
  reckon,
});
