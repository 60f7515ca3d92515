/**
 * Radius of relative stiffness: how far a slab spreads a load before the ground takes it up.
 *
 * `l = (E h³ ÷ (12 (1 − μ²) k))^¼`, after Westergaard, with the modulus of subgrade reaction `k` as a plate
 * test gives it: a pressure for a deflection. A panel longer than 5 times `l` tends to crack from curling.
 */
import { type Decimal, ONE } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { bareRatio } from '../reckoning/bare-ratio';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, maybe, quantity } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { ELASTICITY, JOINT_SPACING, PLATE_DEFLECTION, PLATE_PRESSURE, POISSON_RATIO } from './ordinary';
import { SLAB_LENGTH_RATIO, WESTERGAARD } from './sources';

/** Reaction of the ground: the pressure that presses a plate in by a deflection. */
export interface SubgradeInput {
  /** For example `100 psi`. */
  readonly pressure: QuantityInput<'pressure'>;
  /** For example `1 in`, so that 100 psi and 1 in are 100 pci. */
  readonly deflection: QuantityInput<'length'>;
}

/** Input of {@link relativeStiffness}. */
export interface RelativeStiffnessInput {
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** Modulus of elasticity of the concrete, for example `4000000 psi`. */
  readonly elasticity: QuantityInput<'pressure'>;
  /** Reaction of the ground, as a plate test gives it. */
  readonly subgrade: SubgradeInput;
  /** Poisson's ratio of the concrete; by default 0.15. */
  readonly poisson?: QuantityInput<'ratio'>;
  /** Length of a panel, to be checked. */
  readonly panelLength?: QuantityInput<'length'>;
}

/** Figures of {@link relativeStiffness}. */
export interface RelativeStiffnessFigures {
  /** The radius, exact to 50 digits. */
  readonly radius: Quantity<'length'>;
  /** 5 times the radius: the longest panel by this rule. */
  readonly longestPanel: Quantity<'length'>;
  /** Length of the panel over the radius, where a length is given. */
  readonly panelRatio?: Quantity<'ratio'>;
  /** True when that is not above 5. */
  readonly passes?: boolean;
}

interface Parsed {
  readonly thickness: Quantity<'length'>;
  readonly elasticity: Quantity<'pressure'>;
  readonly subgrade: { readonly pressure: Quantity<'pressure'>; readonly deflection: Quantity<'length'> };
  readonly poisson: Quantity<'ratio'> | undefined;
  readonly panelLength: Quantity<'length'> | undefined;
}

const POISSON = constant(() => ratio('0.15:1'));
const HALF = constant(() => ratio('0.5:1'));
const MOST = constant(() => ratio('5:1'));

function poissonOf({ poisson }: Parsed, pad: Pad): Quantity<'ratio'> {
  if (poisson) {
    if (!poisson.lessThan(HALF())) refuse('poisson', faults.doesNotFit('poisson', '0.5:1'));
    return poisson;
  }
  pad.assume({
    name: 'poisson',
    value: POISSON(),
    because: 'the value that the published tables use',
    override: 'Give poisson',
    source: WESTERGAARD,
  });
  return POISSON();
}

/** The fourth root of E h³ d ÷ (12 (1 − m²) p), in meters. */
function radiusOf({ thickness, elasticity, subgrade }: Parsed, m: Quantity<'ratio'>): Decimal {
  const h = canonicalValue(thickness);
  const top = canonicalValue(elasticity).times(h.pow(3)).times(canonicalValue(subgrade.deflection));
  const one = ONE.minus(canonicalValue(m).pow(2));
  return top
    .div(one.times(12).times(canonicalValue(subgrade.pressure)))
    .sqrt()
    .sqrt();
}

function reckon(input: Parsed, pad: Pad): RelativeStiffnessFigures {
  const m = poissonOf(input, pad);
  const { thickness: h, elasticity: E, subgrade } = input;
  const values = { E, h, d: subgrade.deflection, m, p: subgrade.pressure };
  const l = pad.step(
    'radius of relative stiffness',
    'l = √(√(E × h³ × d ÷ (12 × (1 − m²) × p)))',
    values,
    quantityOf('length', radiusOf(input, m), systemOfQuantity(h)).in(
      systemOfQuantity(h) === 'metric' ? 'mm' : 'in',
    ),
  );
  const longestPanel = pad.step('longest panel', 'P = q × l', { q: MOST(), l }, l.times(MOST()));
  const { panelLength: L } = input;
  if (!L) return { radius: l, longestPanel };
  const panelRatio = pad.step('panel over radius', 'r = L ÷ l', { L, l }, L.over(l));
  const passes = !panelRatio.greaterThan(MOST());
  if (!passes) pad.caution(cautions.longForStiffness(MOST(), panelRatio));
  return { radius: l, longestPanel, panelRatio, passes };
}

/**
 * Radius of relative stiffness of a slab on ground, and the check of a panel by it.
 *
 * @param input - thickness, modulus of elasticity, reaction of the ground; Poisson's ratio and the length
 * of a panel where they are known
 * @returns the radius, the longest panel at 5 times the radius, and the ratio of the panel given
 * @throws {InputError} `does-not-fit` for a Poisson's ratio of one half or more; quantities that cannot be read
 * or are not greater than zero
 * @source Westergaard's formula as in the Pavement Guide of the University of Washington; the limit of 5
 * as in Pavement Interactive after FHWA T 5040.30
 * @example
 * ```ts
 * import { relativeStiffness } from 'flatwork-reckoner';
 *
 * const { figures } = relativeStiffness({
 *   thickness: '6 in',
 *   elasticity: '4000000 psi',
 *   subgrade: { pressure: '100 psi', deflection: '1 in' },
 *   panelLength: '12 ft',
 * });
 * figures.radius.format('in', { places: 2 }); // '29.30 in'
 * figures.passes; // true
 * ```
 */
export const relativeStiffness: Calculation<RelativeStiffnessInput, RelativeStiffnessFigures> =
  /*#__PURE__*/ define({
    id: 'relative-stiffness',
    title: 'Radius of relative stiffness',
    version: 1,
    sources: [WESTERGAARD, SLAB_LENGTH_RATIO],
    input: () =>
      fields({
        thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
        elasticity: quantity('pressure', 'elasticity', 'positive', ELASTICITY),
        subgrade: fields({
          pressure: quantity('pressure', 'pressure', 'positive', PLATE_PRESSURE),
          deflection: quantity('length', 'deflection', 'positive', PLATE_DEFLECTION),
        }),
        poisson: maybe(bareRatio('poisson', 'not-negative', POISSON_RATIO)),
        panelLength: maybe(quantity('length', 'panelLength', 'positive', JOINT_SPACING)),
      }),
    reckon,
  });
