/**
 * How hard fresh concrete presses on its forms, and how fast it may rise in forms that are made for so much.
 *
 * The equations stand in `lateral.ts`. The rise is given, or follows from how much is placed: `R = Q ÷ A`.
 *
 * Source: ACI 347-04 as told by M. K. Hurd; its constants and coefficients from memory.
 */
import * as faults from '../quantity/faults';
import { constant, density, ratio, temperature } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { all, allOrNone, oneOf } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { fluidDepth, type Placed, riseForDepth } from './ciria';
import { frozenConcrete } from './faults';
import {
  depthOf,
  type Equation,
  FAST,
  type Fresh,
  headOf,
  LEAST,
  LOW,
  pressureAt,
  riseAt,
  SLOW,
} from './lateral';
import { type Lifts, liftsOf } from './lifts';
import {
  FORM_DENSITY,
  FORM_HEIGHT,
  FORM_SLUMP,
  FORM_STRENGTH,
  FORM_TEMPERATURE,
  LIFT,
  OUTPUT,
  PLAN_AREA,
  RISE,
  STIFFENS,
} from './ordinary';
import { ARMY_FORMS, CIRIA_108, FORM_COEFFICIENTS, FORM_PRESSURE } from './sources';

/** Input of {@link formPressure}. */
export interface FormPressureInput {
  /** What is formed. */
  readonly kind: 'wall' | 'column';
  /** Height of the concrete placed in one go. */
  readonly height: QuantityInput<'length'>;
  /** How fast the concrete rises in the forms. */
  readonly rise?: QuantityInput<'speed'>;
  /** How much is placed in an hour, in place of the rise. */
  readonly output?: QuantityInput<'volume-rate'>;
  /** Area of the forms in plan, length by thickness, with the output. */
  readonly planArea?: QuantityInput<'area'>;
  /** Temperature of the concrete as placed. */
  readonly temperature: QuantityInput<'temperature'>;
  /** Whose equations are used: those of ACI 347, by default, or that of CIRIA report 108, which British practice goes by. */
  readonly standard?: 'aci-347' | 'ciria-108';
  /** Density of the fresh concrete. */
  readonly density?: QuantityInput<'density'>;
  /**
   * Cement and admixtures: `plain` portland cement, `retarded`, `blended` with less than 40% of fly ash or 70% of slag,
   * or `blended-retarded`, which stands for more of these too.
   */
  readonly cement?: 'plain' | 'retarded' | 'blended' | 'blended-retarded';
  /** Slump as placed; above 7 in, 175 mm, the full head counts. */
  readonly slump?: QuantityInput<'length'>;
  /** What the forms are made for, by their maker or their design. */
  readonly allowed?: QuantityInput<'pressure'>;
  /** How long the concrete takes to stiffen so far that it carries itself, by a test or by the forms' maker. */
  readonly stiffensIn?: QuantityInput<'time'>;
  /** How high the forms may be filled in one lift, by their maker; with the time of stiffening. */
  readonly mostLift?: QuantityInput<'length'>;
}

/** Figures of {@link formPressure}. */
export interface FormPressureFigures extends Lifts {
  /** What the forms must stand. */
  readonly pressure: Quantity<'pressure'>;
  /** What it comes from: an equation, the least, or the full head. */
  readonly governs: 'equation' | 'least' | 'full head';
  /** By the equation, before least and full head; left out where none speaks. */
  readonly byEquation?: Quantity<'pressure'>;
  /** As if it were a fluid to the top. */
  readonly fullHead: Quantity<'pressure'>;
  /** From the top down to here it presses as a fluid; below it stays the same. */
  readonly depth: Quantity<'length'>;
  /** How fast it rises. */
  readonly rise: Quantity<'speed'>;
  /** How long the placement takes at that. */
  readonly duration: Quantity<'time'>;
  /** Whether the forms stand it, where it is told what they are made for. */
  readonly holds?: boolean;
  /** The fastest rise that they stand; left out where they stand any, or none. */
  readonly fastest?: Quantity<'speed'>;
  /** How high a lift may be that is placed in one go, as fast as one likes. */
  readonly lift?: Quantity<'length'>;
}

type Parsed = Read<FormPressureInput>;
type Pressure = Quantity<'pressure'>;
type Ratio = Quantity<'ratio'>;
type Speed = Quantity<'speed'>;
type Density = Quantity<'density'>;

const USUAL_DENSITY = paired('density', '150 pcf', '2400 kg/m3');
const ONE = constant(() => ratio('1:1'));
const HALF = constant(() => ratio('0.5:1'));
const LIGHTEST = constant(() => ratio('0.8:1'));
const CHEMISTRY: Record<NonNullable<Parsed['cement']>, string> = {
  plain: '1:1',
  retarded: '1.2:1',
  blended: '1.2:1',
  'blended-retarded': '1.4:1',
};
const STIFF = paired('length', '7 in', '175 mm');
const COLD = paired('temperature', '40 degF', '5 degC');
const isCiria = ({ standard }: Parsed): boolean => standard === 'ciria-108';
const FROZEN = constant(() => temperature('32 degF'));
/** Ordinary concrete of either system is not heavy yet. */
const HEAVY = paired('density', '150 pcf', '2400 kg/m3');
const LIGHT = constant(() => density('140 pcf'));
const REFERENCE = paired('density', '145 pcf', '2320 kg/m3');

/** The coefficient of unit weight of ACI 347: one around ordinary concrete, half and half below, in proportion above. */
function unitWeight(w: Density, pad: Pad): Ratio {
  const [light, heavy] = [w.lessThan(LIGHT()), HEAVY.exceededBy(w)];
  const n = REFERENCE.as(pad.system);
  if (heavy) return pad.step('unit weight coefficient', 'K = w ÷ n', { w, n }, w.over(n));
  if (!light) return ONE();
  const [e, g] = [HALF(), LIGHTEST()];
  const K = e.times(ONE().plus(w.over(n)));
  const most = K.lessThan(g) ? g : K;
  return pad.step('unit weight coefficient', 'K = max(g, e × (1 + w ÷ n))', { g, e, w, n }, most);
}

function riseOf({ rise, output: Q, planArea: A }: Parsed, pad: Pad): Speed {
  if (rise && Q) return refuse('', faults.giveOneOf(['rise', 'output']));
  if (rise) return rise;
  if (!Q) return refuse('rise', faults.missing('rise', ['"4 ft/h"', '"1.2 m/h"']));
  if (!A) return refuse('planArea', faults.missing('planArea', ['"80 ft2"', '"7.5 m2"']));
  const R = Q.over(A).in(pad.system === 'metric' ? 'm/h' : 'ft/h');
  return pad.step('rise', 'R = Q ÷ A', { Q, A }, R);
}

function densityOf({ density: w }: Parsed, pad: Pad): Density {
  if (w) return w;
  pad.assume({
    name: 'density',
    value: USUAL_DENSITY,
    because: 'concrete of ordinary weight',
    override: 'Give density',
    source: FORM_COEFFICIENTS,
  });
  return USUAL_DENSITY.as(pad.system);
}

function chemistryOf({ cement }: Parsed, pad: Pad): Ratio {
  if (!cement) {
    pad.assume({
      name: 'cement',
      value: 'plain',
      because: 'portland cement without a retarder; with a retarder, slag or fly ash it presses harder',
      override: 'Give cement as the ticket says',
      source: FORM_COEFFICIENTS,
    });
  }
  return ratio(CHEMISTRY[cement ?? 'plain']);
}

function assumeStandard({ standard }: Parsed, pad: Pad): void {
  if (standard) return;
  pad.assume({
    name: 'standard',
    value: 'aci-347',
    because: 'practice of the USA',
    override: 'Give standard: ciria-108, as in Britain',
    source: FORM_PRESSURE,
  });
}

/** Which equation speaks, and why none does. */
function equationFor(input: Parsed, R: Speed, pad: Pad): Equation {
  const { kind, height, slump, temperature } = input;
  const cold = COLD.undercutBy(temperature);
  if (cold) {
    pad.caution(cautions.coldConcretePresses(cold, temperature));
    return 'full head';
  }
  if (slump && STIFF.exceededBy(slump)) {
    pad.caution(cautions.fullHeadGoverns(say`concrete so wet does not stiffen in time`));
    return 'full head';
  }
  if (kind === 'column') return 'slow';
  if (FAST.exceededBy(R) && !isCiria(input)) {
    pad.caution(cautions.fullHeadGoverns(say`it rises faster than any equation speaks for`));
    return 'full head';
  }
  return !SLOW.reachedBy(R) && !LOW.exceededBy(height) ? 'slow' : 'fast';
}

interface Pressed {
  readonly pressure: Pressure;
  readonly governs: FormPressureFigures['governs'];
  readonly byEquation?: Pressure;
}

function pressed(equation: Equation, R: Speed, fresh: Fresh, head: Pressure, pad: Pad): Pressed {
  if (equation === 'full head') return { pressure: head, governs: 'full head' };
  const p = pressureAt(equation, R, fresh, pad);
  const { unitWeight: K } = fresh;
  const s = LEAST.as(pad.system);
  const least = s.times(K);
  const [atLeast, rule] = p.lessThan(least) ? ([least, 'least'] as const) : ([p, 'equation'] as const);
  const isHead = !atLeast.lessThan(head);
  const outcome = isHead ? head : atLeast;
  pad.step('pressure', 'q = min(f, max(p, s × K))', { f: head, p, s, K }, outcome);
  return { pressure: outcome, governs: isHead ? 'full head' : rule, byEquation: p };
}

const placedOf = ({ kind, cement, height, temperature }: Parsed): Placed => ({
  kind,
  cement: cement ?? 'plain',
  height,
  temperature,
});

/** By CIRIA report 108: no least, and the full head where the depth comes to the height. */
function byCiria(input: Parsed, R: Speed, { w, head }: Pick<Forms, 'w' | 'head'>, pad: Pad): Pressed {
  const y = fluidDepth(R, placedOf(input), pad);
  if (!y.lessThan(input.height)) return { pressure: head, governs: 'full head' };
  const pressure = headOf(w, y, pad);
  return { pressure, governs: 'equation', byEquation: pressure };
}

/** The fastest rise that forms stand; the equation that speaks for it is the one whose rise lies in its range. */
function fastestFor({ input, fresh, head, w }: Forms, P: Pressure, pad: Pad): Speed | undefined {
  const least = LEAST.as(pad.system).times(fresh.unitWeight);
  if (!P.lessThan(head) || (P.lessThan(least) && !isCiria(input))) return undefined;
  if (COLD.undercutBy(input.temperature)) return undefined;
  if (input.slump && STIFF.exceededBy(input.slump)) return undefined;
  if (isCiria(input)) return riseForDepth(depthOf(P, w, pad), placedOf(input), pad);
  const slow = input.kind === 'column' || !LOW.exceededBy(input.height);
  const R = slow ? riseAt('slow', P, fresh, pad) : undefined;
  if (R && (input.kind === 'column' || !SLOW.reachedBy(R))) return R;
  const fast = riseAt('fast', P, fresh, pad);
  const most = FAST.as(pad.system);
  if (fast.sign() <= 0) return undefined;
  return fast.greaterThan(most) ? most : fast;
}

interface Forms {
  readonly input: Parsed;
  readonly fresh: Fresh;
  readonly head: Pressure;
  readonly actual: Pressure;
  readonly w: Density;
}

function judge(forms: Forms, pad: Pad): Partial<FormPressureFigures> {
  const { input, head, actual, w } = forms;
  const P = input.allowed;
  if (!P) return {};
  const holds = !actual.greaterThan(P);
  const fastest = fastestFor(forms, P, pad);
  if (!holds) pad.caution(cautions.overFormPressure(P, actual, fastest));
  const lift = P.lessThan(head) ? depthOf(P, w, pad) : undefined;
  return { holds, ...(fastest ? { fastest } : {}), ...(lift ? { lift } : {}) };
}

function reckon(input: Parsed, pad: Pad): FormPressureFigures {
  const { height: h, temperature: T } = input;
  if (T.lessThan(FROZEN())) refuse('temperature', frozenConcrete());
  if (input.mostLift && !input.stiffensIn) refuse('stiffensIn', faults.missing('stiffensIn', '"1 h"'));
  if (input.stiffensIn && !input.mostLift)
    refuse('mostLift', faults.missing('mostLift', ['"4 ft"', '"1.2 m"']));
  const R = riseOf(input, pad);
  assumeStandard(input, pad);
  const w = densityOf(input, pad);
  const chemistry = chemistryOf(input, pad);
  const fresh = { unitWeight: isCiria(input) ? ONE() : unitWeight(w, pad), chemistry, temperature: T };
  const head = headOf(w, h, pad);
  const equation = equationFor(input, R, pad);
  const made =
    isCiria(input) && equation !== 'full head'
      ? byCiria(input, R, { w, head }, pad)
      : pressed(equation, R, fresh, head, pad);
  const judged = judge({ input, fresh, head, actual: made.pressure, w }, pad);
  pad.caution(cautions.engineeredForms);
  return {
    ...made,
    fullHead: head,
    depth: made.governs === 'full head' ? h : depthOf(made.pressure, w, pad),
    ...liftsOf(input, R, pad),
    rise: R,
    duration: pad.step('time to place', 'D = h ÷ R', { h, R }, h.over(R).in('h')),
    ...judged,
  };
}

/**
 * How hard fresh concrete presses on its forms.
 *
 * @param input - wall or column, height, rise or output with plan area, temperature; what the forms are made for
 * @returns the pressure that forms must stand, and the rise that given forms stand
 * @throws {InputError} `missing` rise or output, or one of the time of stiffening and the most of a lift; `give-one-of` both; `out-of-range` temperatures of frozen concrete;
 * quantities that cannot be read or are not greater than zero
 * @source ACI 347-04 as told by M. K. Hurd in Concrete Construction, constants from memory; CIRIA report 108 from memory
 * @example
 * ```ts
 * import { formPressure } from 'flatwork-reckoner';
 *
 * const { figures } = formPressure({ kind: 'wall', height: '8 ft', rise: '5 ft/h', temperature: '60 degF' });
 * figures.pressure.format('psf'); // '900 psf'
 * figures.governs; // 'equation'
 * ```
 */
export const formPressure: Calculation<FormPressureInput, FormPressureFigures> = /*#__PURE__*/ define({
  id: 'form-pressure',
  title: 'Pressure on forms',
  version: 1,
  sources: [FORM_PRESSURE, FORM_COEFFICIENTS, ARMY_FORMS, CIRIA_108],
  input: () =>
    fields(
      {
        kind: choice('kind', ['wall', 'column'] as const),
        height: quantity('length', 'height', 'positive', FORM_HEIGHT),
        rise: maybe(quantity('speed', 'rise', 'positive', RISE)),
        output: maybe(quantity('volume-rate', 'output', 'positive', OUTPUT)),
        planArea: maybe(quantity('area', 'planArea', 'positive', PLAN_AREA)),
        temperature: quantity('temperature', 'temperature', 'any', FORM_TEMPERATURE),
        standard: maybe(choice('standard', ['aci-347', 'ciria-108'] as const)),
        density: maybe(quantity('density', 'density', 'positive', FORM_DENSITY)),
        cement: maybe(choice('cement', ['plain', 'retarded', 'blended', 'blended-retarded'] as const)),
        slump: maybe(quantity('length', 'slump', 'positive', FORM_SLUMP)),
        allowed: maybe(quantity('pressure', 'allowed', 'positive', FORM_STRENGTH)),
        stiffensIn: maybe(quantity('time', 'stiffensIn', 'positive', STIFFENS)),
        mostLift: maybe(quantity('length', 'mostLift', 'positive', LIFT)),
      },
      all(allOrNone('output', 'planArea'), allOrNone('stiffensIn', 'mostLift'), oneOf(['rise'], ['output'])),
    ),
  reckon,
});
