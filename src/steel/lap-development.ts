/**
 * Lap from the development length of a bar.
 *
 * As ACI 318-19 chapter 25 is given in lecture notes: `l_d = 3 ÷ 40 × fy ÷ (λ √f'c) × ψt ψe ψs ψg ÷ K × d` with
 * `K = min(cb ÷ d, 2.5)`, where `cb` is the lesser of the cover to the middle of the bar and half the spacing; a
 * class A lap is 1.0 and a class B lap 1.3 of it, and each is at least 12 in at its end, not before the factor.
 */

import { Decimal } from '../quantity/decimal';
import { greaterOf } from '../quantity/greater';
import { constant, length, pressure } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { strength } from '../reckoning/concrete-strength';
import { choice, fields, maybe, quantity, wholeNumber, word, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import { barGrade } from './bar-grade';
import { type AnyBarSize, type BarGrade, type BarName, diameterOf, usualGradeOf, yieldOf } from './bars';
import { numberIn, plainNumber } from './common';
import { COVER, LAP_SPACING, STRENGTH } from './ordinary';
import { ACI_318_DEVELOPMENT } from './sources';

/** A lap from the development length of the bar. */
export interface DevelopmentLapInput {
  /** The development length of the bar. */
  readonly kind: 'development';
  /** The bars that are lapped, both of one size. */
  readonly bar: BarName;
  /** Specified strength of the concrete, by its cylinder: `4000 psi`, `28 MPa`, or the class `C25/30`. */
  readonly strength: QuantityInput<'pressure'>;
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

type Length = Quantity<'length'>;

/** Such a lap as it was read. */
export interface ByDevelopment {
  readonly kind: 'development';
  readonly bar: AnyBarSize;
  readonly strength: Quantity<'pressure'>;
  readonly grade: BarGrade | undefined;
  readonly cover: Length | undefined;
  readonly spacing: Length | undefined;
  readonly topBar: boolean | undefined;
  readonly epoxy: boolean | undefined;
  readonly lightweight: boolean | undefined;
  readonly lapClass: 'A' | 'B' | undefined;
}

/** What it comes to. */
export interface DevelopmentLengths {
  readonly lap: Length;
  readonly diameters: Quantity<'ratio'>;
  readonly development: Length;
  readonly confinement: Quantity<'count'>;
}

/** No lap is shorter. */
export const LEAST = /*#__PURE__*/ paired('length', '12 in', '300 mm');
export const PSI = /*#__PURE__*/ constant(() => pressure('1 psi'));
const STRONGEST = constant(() => pressure('10000 psi'));
/** #6 and 20M, which are 19.05 and 19.5 mm, are small; bars by diameter up to 20 mm. */
const SMALL = constant(() => length('20 mm'));

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

/** The lap of class A or B. */
export function byDevelopment(input: ByDevelopment, pad: Pad): DevelopmentLengths {
  const { grade, lapClass } = assumeUsual(input, pad);
  const d = diameterOf(input.bar);
  const strength = input.strength.greaterThan(STRONGEST()) ? STRONGEST() : input.strength;
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

/** The door of such a lap. */
export const developmentLap = () =>
  fields({
    kind: word('development'),
    bar: barField('bar'),
    strength: strength('strength', STRENGTH),
    grade: maybe(barGrade('grade')),
    cover: maybe(quantity('length', 'cover', 'positive', COVER)),
    spacing: maybe(quantity('length', 'spacing', 'positive', LAP_SPACING)),
    topBar: maybe(yesOrNo('topBar')),
    epoxy: maybe(yesOrNo('epoxy')),
    lightweight: maybe(yesOrNo('lightweight')),
    lapClass: maybe(choice('lapClass', ['A', 'B'] as const)),
  });
