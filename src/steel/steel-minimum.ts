/**
 * Least steel in a slab on ground, and what provides it.
 *
 * By ratio: `A = r × b × t` in a width `b`, with 0.0018 for grade 60, 420, and stronger, 0.0020 for weaker grades.
 * By drag: `A = F × L × b × w ÷ (2 × f)`, the pull of a slab of weight `w` dragged over its base from
 * both ends, with friction factor `F`, joints `L` apart and working stress `f`. Drag alone would have thin slabs
 * with bars many feet apart: by no rule are bars offered farther apart than `min(5 × t, 18 in)`.
 * Instead of bars that the plans call for: `A = a × b ÷ s × F ÷ f`, as much steel times its yield strength as they have.
 */

import { Decimal } from '../quantity/decimal';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { bareRatio } from '../reckoning/bare-ratio';
import { type Calculation, define } from '../reckoning/calculation';
import { fields, kinds, maybe, quantity, wholeNumber, word } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import { barGrade, yieldStrength } from './bar-grade';
import {
  type AnyBarSize,
  type BarGrade,
  type BarName,
  sectionOf,
  usualGrade,
  usualGradeOf,
  yieldOf,
} from './bars';
import { steelGoverned } from './cautions';
import {
  CONCRETE_DENSITY,
  DRAG_LENGTH,
  STEEL_RATIO,
  STRESS,
  FRICTION as USUAL_FRICTION,
  YIELD as USUAL_YIELD,
  WIDEST_SPACING,
} from './ordinary';
import { ACI_318_RATIO, CRSI_BARS, CRSI_DRAG, IRC_ALTERNATE, WRI_STYLES } from './sources';
import { AREA_UNIT, madeOfBar, madeOfGrade, needOf, type SteelNeed, WIDTH } from './steel-choices';

/** Steel by a ratio of the section of the slab. */
export interface RatioSteelInput {
  /** A share of the section of the slab. */
  readonly kind: 'ratio';
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** By default 60, or 420 in a metric job. */
  readonly grade?: BarGrade;
  /** Steel over concrete; by default that of the grade. */
  readonly ratio?: QuantityInput<'ratio'>;
  /** No bars farther apart than this; by default the lesser of 5 thicknesses and 18 in. */
  readonly spacingLimit?: QuantityInput<'length'>;
}

/** Steel by the drag of the slab over its base. */
export interface DragSteelInput {
  /** The drag of the slab over its base. */
  readonly kind: 'drag';
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** Between joints, along the slab. */
  readonly length: QuantityInput<'length'>;
  /** Between joints, across the slab; by default the length. */
  readonly width?: QuantityInput<'length'>;
  /** By default 1.5. */
  readonly friction?: QuantityInput<'ratio'>;
  /** Yield strength of the steel; by default 60,000 psi. */
  readonly yieldStrength?: QuantityInput<'pressure'>;
  /** Working stress; by default two thirds of the yield strength. */
  readonly stress?: QuantityInput<'pressure'>;
  /** By default 150 pcf. */
  readonly unitWeight?: QuantityInput<'density'>;
  /** No bars farther apart than this; by default the lesser of 5 thicknesses and 18 in. */
  readonly spacingLimit?: QuantityInput<'length'>;
}

/** Other bars, or mesh, instead of the bars that the plans call for. */
export interface InsteadSteelInput {
  /** Instead of bars that are called for. */
  readonly kind: 'instead';
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** The bars that are called for. */
  readonly bar: BarName;
  /** How far apart they are called for, center to center. */
  readonly spacing: QuantityInput<'length'>;
  /** Grade that is called for; by default the usual one of such bars. */
  readonly grade?: BarGrade;
  /** Grade of the steel instead; by default the same. */
  readonly insteadGrade?: BarGrade;
  /** No bars farther apart than this; by default the lesser of 5 thicknesses and 18 in. */
  readonly spacingLimit?: QuantityInput<'length'>;
}

/** Input of {@link steelMinimum}. */
export type SteelMinimumInput = RatioSteelInput | DragSteelInput | InsteadSteelInput;

/** Figures of {@link steelMinimum}. */
export interface SteelMinimumFigures {
  /** Steel that runs along the slab. */
  readonly along: SteelNeed;
  /** Steel that runs across. */
  readonly across: SteelNeed;
  /** Steel over the section of the slab, along. */
  readonly ratio: Quantity<'ratio'>;
  /** The widest that bars may be apart. */
  readonly spacingLimit: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;

interface ByRatio {
  readonly kind: 'ratio';
  readonly thickness: Length;
  readonly grade: BarGrade | undefined;
  readonly ratio: Quantity<'ratio'> | undefined;
  readonly spacingLimit: Length | undefined;
}

interface ByDrag {
  readonly kind: 'drag';
  readonly thickness: Length;
  readonly length: Length;
  readonly width: Length | undefined;
  readonly friction: Quantity<'ratio'> | undefined;
  readonly yieldStrength: Quantity<'pressure'> | undefined;
  readonly stress: Quantity<'pressure'> | undefined;
  readonly unitWeight: Quantity<'density'> | undefined;
  readonly spacingLimit: Length | undefined;
}

interface Instead {
  readonly kind: 'instead';
  readonly thickness: Length;
  readonly bar: AnyBarSize;
  readonly spacing: Length;
  readonly grade: BarGrade | undefined;
  readonly insteadGrade: BarGrade | undefined;
  readonly spacingLimit: Length | undefined;
}

type Parsed = ByRatio | ByDrag | Instead;

/** 0.0018, as codes write it; what may be a percentage keeps its sign. */
const SMALL = /^\s*0?\.0\d{1,4}\s*$/;

const WIDEST = /*#__PURE__*/ paired('length', '18 in', '450 mm');
const FRICTION = constant(() => ratio('1.5:1'));
/** Of grade 60, and of 420. */
const YIELD = /*#__PURE__*/ paired('pressure', '60000 psi', '420 MPa');
export const CONCRETE = /*#__PURE__*/ paired('density', '150 pcf', '2400 kg/m3');
const WEIGHT_EACH = /*#__PURE__*/ paired('mass-per-area', '12.5 lb/ft2', '24 kg/m2');
const EACH = /*#__PURE__*/ paired('length', '1 in', '10 mm');
/** Weaker than grade 60, under its metric name too, which is a little more than 60,000 psi. */
const gradeRatio = (grade: BarGrade): string => (yieldOf(grade).lessThan(yieldOf('60')) ? '0.2%' : '0.18%');

function ratioFor(input: ByRatio, pad: Pad): Quantity<'ratio'> {
  if (input.ratio) return input.ratio;
  const grade = input.grade ?? usualGrade(pad.system);
  if (!input.grade) {
    pad.assume({
      name: 'grade',
      value: grade,
      because: say`most bars are grade ${{ grade }}`,
      override: 'Give grade',
      source: ACI_318_RATIO,
    });
  }
  const r = ratio(gradeRatio(grade));
  pad.assume({
    name: 'ratio',
    value: r,
    because: say`shrinkage and temperature steel of grade ${{ grade }}`,
    override: 'Give ratio from the plans',
    source: ACI_318_RATIO,
  });
  return r;
}

/** No bars farther apart than this, by either rule. */
function limitFor({ thickness: t, spacingLimit }: Parsed, pad: Pad): Length {
  if (spacingLimit) return spacingLimit;
  const w = WIDEST.as(pad.system);
  const five = t.times(wholeNumber(5));
  const limit = five.lessThan(w) ? five : w;
  pad.step('widest spacing', 's = min(5 × t, w)', { t, w }, limit);
  pad.assume({
    name: 'spacingLimit',
    value: { reckoned: limit },
    because: say`the lesser of 5 thicknesses and ${{ widest: WIDEST }}: bars farther apart hold no crack tight, however little is needed`,
    override: 'Give spacingLimit from the plans',
    source: ACI_318_RATIO,
  });
  return limit;
}

function byRatio(input: ByRatio, pad: Pad): SteelMinimumFigures {
  const r = ratioFor(input, pad);
  const { thickness: t } = input;
  const b = WIDTH.as(pad.system);
  const A = b.times(t).times(r).in(AREA_UNIT[pad.system]);
  pad.step(say`steel in ${{ width: b }} of width, both ways`, 'A = r × b × t', { r, b, t }, A);
  const limit = limitFor(input, pad);
  const need = needOf(A, limit, pad.system, madeOfGrade(input.grade));
  return { along: need, across: need, ratio: r, spacingLimit: limit };
}

/** The weight of a slab on its base as a pressure: 1 lb/ft2 is 1 psf. */
export function pressureOf(weight: Quantity<'mass-per-area'>): Quantity<'pressure'> {
  // Canonical units: kg/yd2 to N/ft2 is standard gravity over nine.
  const value = canonicalValue(weight).times(new Decimal('9.80665')).div(9);
  return quantityOf('pressure', value, systemOfQuantity(weight)).in(
    systemOfQuantity(weight) === 'metric' ? 'kPa' : 'psf',
  );
}

function assumeDrag(input: ByDrag, stress: Quantity<'pressure'>, pad: Pad): void {
  const usual = [
    ['width', { reckoned: input.length }, 'the same as the length', COMMON_PRACTICE],
    ['friction', FRICTION(), 'the usual friction factor; 1.06 to 2.10 has been measured', CRSI_DRAG],
    ['yieldStrength', YIELD, say`bars of a yield strength of ${{ usual: YIELD }}`, CRSI_DRAG],
    ['stress', { reckoned: stress }, 'two thirds of the yield strength', CRSI_DRAG],
    ['unitWeight', CONCRETE, say`${{ weight: WEIGHT_EACH }} for each ${{ thick: EACH }} of slab`, CRSI_DRAG],
  ] as const;
  for (const [name, value, because, source] of usual) {
    if (input[name] || (name === 'yieldStrength' && input.stress)) continue;
    pad.assume({ name, value, because, override: say`Give ${{ name }}`, source });
  }
}

function byDrag(input: ByDrag, pad: Pad): SteelMinimumFigures {
  const { thickness: t, length: L } = input;
  const limit = limitFor(input, pad);
  const Y = input.yieldStrength ?? YIELD.as(pad.system);
  const f = input.stress ?? Y.times(wholeNumber(2)).over(wholeNumber(3));
  if (!input.stress) pad.step('working stress', 'f = 2 × Y ÷ 3', { Y }, f);
  assumeDrag(input, f, pad);
  const F = input.friction ?? FRICTION();
  const D = input.unitWeight ?? CONCRETE.as(pad.system);
  const weight = pad.step('weight of the slab', 'G = t × D', { t, D }, t.times(D));
  const w = pressureOf(weight);
  const b = WIDTH.as(pad.system);
  const area = (l: Length, name: string): Area => {
    const pull = l.times(b).times(w).times(F);
    const A = pull.over(f.times(wholeNumber(2))).in(AREA_UNIT[pad.system]);
    const what = say`steel in ${{ width: b }} of width, ${{ name }}, the weight taken as a pressure w`;
    return pad.step(what, 'A = F × L × b × w ÷ (2 × f)', { F, L: l, b, w, f }, A);
  };
  const along = area(L, 'along');
  const across = area(input.width ?? L, 'across');
  return {
    along: needOf(along, limit, pad.system),
    across: needOf(across, limit, pad.system),
    ratio: along.over(b.times(t)).in('%'),
    spacingLimit: limit,
  };
}

function gradesFor(input: Instead, pad: Pad): readonly [called: BarGrade, instead: BarGrade] {
  const called = input.grade ?? usualGradeOf(input.bar, pad.system);
  const instead = input.insteadGrade ?? called;
  for (const name of ['grade', 'insteadGrade'] as const) {
    if (input[name]) continue;
    pad.assume({
      name,
      value: name === 'grade' ? called : instead,
      because:
        name === 'grade'
          ? say`most bars of this kind are grade ${{ grade: called }}`
          : 'the same grade as is called for',
      override: say`Give ${{ name }}`,
      source: IRC_ALTERNATE,
    });
  }
  return [called, instead];
}

function instead(input: Instead, pad: Pad): SteelMinimumFigures {
  const { thickness: t, spacing: s } = input;
  const [called, other] = gradesFor(input, pad);
  const [a, b] = [sectionOf(input.bar), WIDTH.as(pad.system)];
  const [F, f] = [yieldOf(called), yieldOf(other)];
  const A = a.times(b.over(s)).times(F.over(f)).in(AREA_UNIT[pad.system]);
  const what = say`steel in ${{ width: b }} of width that carries as much, by the yield strengths`;
  pad.step(what, 'A = a × b ÷ s × F ÷ f', { a, b, s, F, f }, A);
  const limit = limitFor(input, pad);
  const made = madeOfGrade(input.insteadGrade) ?? madeOfBar(input.bar);
  const need = needOf(A, limit, pad.system, made);
  return { along: need, across: need, ratio: A.over(b.times(t)).in('%'), spacingLimit: limit };
}

function byKind(input: Parsed, pad: Pad): SteelMinimumFigures {
  if (input.kind === 'instead') return instead(input, pad);
  return input.kind === 'ratio' ? byRatio(input, pad) : byDrag(input, pad);
}

function reckon(input: Parsed, pad: Pad): SteelMinimumFigures {
  const figures = byKind(input, pad);
  pad.caution(steelGoverned);
  return figures;
}

/**
 * Least steel in a slab on ground, or instead of bars that are called for, with the bars and the mesh that provide it.
 *
 * @param input - by ratio of the section, by drag over the base, or instead of bars that are called for
 * @returns steel per foot and meter of width each way; bars with spacings, and mesh styles
 * @throws {InputError} for quantities that cannot be read or are not greater than zero
 * @source ratio: ACI 318-02 section 7.12 as given in Concrete International; drag: CRSI Engineering Data
 * Report 37; instead: the table of alternate bars of the International Residential Code. Whether a slab on ground needs steel at all is for the plans and the engineer to say
 * @example
 * ```ts
 * import { steelMinimum } from 'flatwork-reckoner';
 *
 * const { figures } = steelMinimum({ kind: 'drag', thickness: '8 in', length: '24 ft' });
 * figures.along.areaPerFoot?.format('in2', { places: 3 }); // '0.045 in2'
 * figures.along.bars[0]?.spacing.format('in'); // '18 in'
 *
 * const other = steelMinimum({ kind: 'instead', thickness: '6 in', bar: '#4', spacing: '12 in' });
 * other.figures.along.bars[0]?.spacing.format('in'); // '6 in'
 * ```
 */
export const steelMinimum: Calculation<SteelMinimumInput, SteelMinimumFigures> = /*#__PURE__*/ define({
  id: 'steel-minimum',
  title: 'Minimum steel',
  version: 1,
  sources: [ACI_318_RATIO, CRSI_DRAG, CRSI_BARS, WRI_STYLES, IRC_ALTERNATE],
  input: () =>
    kinds('kind', [
      fields({
        kind: word('ratio'),
        thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
        grade: maybe(barGrade('grade')),
        ratio: maybe(bareRatio('ratio', 'positive', STEEL_RATIO, SMALL)),
        spacingLimit: maybe(quantity('length', 'spacingLimit', 'positive', WIDEST_SPACING)),
      }),
      fields({
        kind: word('drag'),
        thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
        length: quantity('length', 'length', 'positive', DRAG_LENGTH),
        width: maybe(quantity('length', 'width', 'positive', DRAG_LENGTH)),
        friction: maybe(bareRatio('friction', 'positive', USUAL_FRICTION)),
        yieldStrength: maybe(yieldStrength(USUAL_YIELD)),
        stress: maybe(quantity('pressure', 'stress', 'positive', STRESS)),
        unitWeight: maybe(quantity('density', 'unitWeight', 'positive', CONCRETE_DENSITY)),
        spacingLimit: maybe(quantity('length', 'spacingLimit', 'positive', WIDEST_SPACING)),
      }),
      fields({
        kind: word('instead'),
        thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
        bar: barField('bar'),
        spacing: quantity('length', 'spacing', 'positive', WIDEST_SPACING),
        grade: maybe(barGrade('grade')),
        insteadGrade: maybe(barGrade('insteadGrade')),
        spacingLimit: maybe(quantity('length', 'spacingLimit', 'positive', WIDEST_SPACING)),
      }),
    ]),
  reckon,
});
