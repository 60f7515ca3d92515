/**
 * Lap length of two bars.
 *
 * By diameters: `l = max(n × d, c)`. By development, as ACI 318-19 chapter 25 is given in lecture
 * notes: `l_d = 3 ÷ 40 × fy ÷ (λ √f'c) × ψt ψe ψs ψg ÷ K × d`, at least 12 in, with
 * `K = min(cb ÷ d, 2.5)`; a class A lap is 1.0 and a class B lap 1.3 of it, at least 12 in. Strengths
 * go into the formula as numbers of psi. The plans and the engineer govern.
 */
import { Decimal } from '../quantity/decimal';
import { constant, length, pressure } from '../quantity/make';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
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
import { ACI_318_DEVELOPMENT, CRSI_BARS, VCC_LAP } from '../reckoning/source';
import { BAR_GRADES, BAR_SIZES, type BarGrade, type BarSize, diameterOf, yieldOf } from './bars';
import { numberIn, plainNumber } from './common';

/** A lap of so many bar diameters. */
export interface DiametersLapInput {
  /** A number of bar diameters. */
  readonly rule: 'diameters';
  /** The bars that are lapped, both of one size. */
  readonly bar: BarSize;
  /** By default 40. */
  readonly diameters?: number;
  /** Never shorter than this; by default 12 in. */
  readonly least?: QuantityInput<'length'>;
}

/** A lap from the development length of the bar. */
export interface DevelopmentLapInput {
  /** The development length of the bar. */
  readonly rule: 'development';
  /** The bars that are lapped, both of one size. */
  readonly bar: BarSize;
  /** Specified strength of the concrete. */
  readonly concrete: QuantityInput<'pressure'>;
  /** Grade of the bar; by default 60. */
  readonly grade?: BarGrade;
  /** Cover to the face of the bar. */
  readonly cover?: QuantityInput<'length'>;
  /** Centre to centre of the bars. */
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
  readonly rule: 'diameters';
  readonly bar: BarSize;
  readonly diameters: Quantity<'count'> | undefined;
  readonly least: Length | undefined;
}

interface ByDevelopment {
  readonly rule: 'development';
  readonly bar: BarSize;
  readonly concrete: Quantity<'pressure'>;
  readonly grade: BarGrade | undefined;
  readonly cover: Length | undefined;
  readonly spacing: Length | undefined;
  readonly topBar: boolean | undefined;
  readonly epoxy: boolean | undefined;
  readonly lightweight: boolean | undefined;
  readonly lapClass: 'A' | 'B' | undefined;
}

const LEAST = constant(() => length('12 in'));
const DIAMETERS = constant(() => wholeNumber(40));
const PSI = constant(() => pressure('1 psi'));
const STRONGEST = constant(() => pressure('10000 psi'));
const MOST_DIAMETERS = 200;

const longer = (a: Length, b: Length): Length => (a.lessThan(b) ? b : a);

function byDiameters(input: ByDiameters, pad: Pad): LapLengthFigures {
  const d = diameterOf(input.bar);
  const n = input.diameters ?? DIAMETERS();
  const c = input.least ?? LEAST();
  for (const [name, value] of [
    ['diameters', n],
    ['least', c],
  ] as const) {
    if (input[name]) continue;
    pad.assume({
      name,
      value: value.format(),
      because: '40 bar diameters, at least 12 in',
      override: `Give ${name} from the plans`,
      source: VCC_LAP,
    });
  }
  const lap = pad.step('lap', 'l = max(n × d, c)', { n, d, c }, longer(d.times(n), c));
  return { lap, diameters: lap.over(d) };
}

/** Factor of the grade: 75 is taken as 80. */
const gradeFactor = (grade: BarGrade): string =>
  grade === '100' ? '1.3' : grade === '75' || grade === '80' ? '1.15' : '1';

function confinementOf({ bar, cover, spacing }: ByDevelopment, pad: Pad): Quantity<'count'> {
  const d = diameterOf(bar);
  const two = wholeNumber(2);
  const options = [
    ...(cover
      ? [{ formula: 'min(c ÷ d + 0.5, 2.5)', values: { c: cover, d }, b: cover.plus(d.over(two)) }]
      : []),
    ...(spacing ? [{ formula: 'min(s ÷ 2 ÷ d, 2.5)', values: { s: spacing, d }, b: spacing.over(two) }] : []),
  ];
  const least = options.reduce<(typeof options)[number] | undefined>(
    (a, o) => (a && !o.b.lessThan(a.b) ? a : o),
    undefined,
  );
  if (!least) {
    pad.assume({
      name: 'cover and spacing',
      value: '1 bar diameter',
      because: 'neither is given, and less would be out of the ordinary',
      override: 'Give cover and spacing',
      source: ACI_318_DEVELOPMENT,
    });
    return plainNumber('1');
  }
  const K = plainNumber(Decimal.min(numberIn(least.b, d), '2.5'));
  return pad.step('confinement', `K = ${least.formula}`, least.values, K);
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
  const small = ['#3', '#4', '#5', '#6'].includes(input.bar);
  return {
    T: plainNumber(Decimal.min(placed, '1.7')),
    S: plainNumber(small ? '0.8' : '1'),
    G: plainNumber(gradeFactor(grade)),
    q: plainNumber(input.lightweight ? '0.75' : '1'),
  };
}

function assumeUsual(input: ByDevelopment, pad: Pad): { grade: BarGrade; lapClass: 'A' | 'B' } {
  const usual = { grade: '60', lapClass: 'B' } as const;
  for (const name of ['grade', 'lapClass'] as const) {
    if (input[name]) continue;
    pad.assume({
      name,
      value: name === 'grade' ? usual.grade : `class ${usual.lapClass}`,
      because:
        name === 'grade' ? 'most bars are grade 60' : 'more than half of the bars are lapped in one place',
      override: `Give ${name} from the plans`,
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
  const c = LEAST();
  const development = pad.step('development', 'L = max(D, c)', { D: raw, c }, longer(raw, c));
  const m = plainNumber(lapClass === 'A' ? '1' : '1.3');
  const lap = longer(development.times(m), c);
  pad.step(`lap of class ${lapClass}`, 'l = max(m × L, c)', { m, L: development, c }, lap);
  return { lap, diameters: lap.over(d), development, confinement: K };
}

function reckon(input: ByDiameters | ByDevelopment, pad: Pad): LapLengthFigures {
  const figures = input.rule === 'diameters' ? byDiameters(input, pad) : byDevelopment(input, pad);
  pad.caution(cautions.lapsGoverned);
  if (['#14', '#18'].includes(input.bar)) pad.caution(cautions.noLapOfLargeBars);
  return figures;
}

/**
 * Lap length of two bars, by diameters or by development.
 *
 * @param input - the rule, the bar, and what the rule asks for
 * @returns the lap, in length and in bar diameters
 * @throws {InputError} `unknown-choice` for a bar or rule that is not known; quantities that cannot be
 * read or are not greater than zero
 * @source diameters: Virginia Construction Code 2107.2.1, a clause on masonry; development: ACI 318-19
 * as given in lecture notes, the limits of 1.7 and 10,000 psi from memory. The plans and the engineer
 * govern
 * @example
 * ```ts
 * import { lapLength } from 'flatwork-reckoner';
 *
 * lapLength({ rule: 'diameters', bar: '#5' }).figures.lap.format('in'); // '25 in'
 * const { figures } = lapLength({
 *   rule: 'development',
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
  title: 'Lap of two bars',
  version: 1,
  sources: [CRSI_BARS, VCC_LAP, ACI_318_DEVELOPMENT],
  input: () =>
    kinds<ByDiameters | ByDevelopment>('rule', [
      fields({
        rule: word('diameters'),
        bar: choice('bar', BAR_SIZES),
        diameters: maybe(whole('diameters', 1, MOST_DIAMETERS)),
        least: maybe(quantity('length', 'least', 'not-negative')),
      }),
      fields({
        rule: word('development'),
        bar: choice('bar', BAR_SIZES),
        concrete: quantity('pressure', 'concrete'),
        grade: maybe(choice('grade', BAR_GRADES)),
        cover: maybe(quantity('length', 'cover')),
        spacing: maybe(quantity('length', 'spacing')),
        topBar: maybe(yesOrNo('topBar')),
        epoxy: maybe(yesOrNo('epoxy')),
        lightweight: maybe(yesOrNo('lightweight')),
        lapClass: maybe(choice('lapClass', ['A', 'B'] as const)),
      }),
    ]),
  reckon,
});
