/**
 * When concrete sets, by its temperature: a range, never one time.
 *
 * `t = t70 × 2^((70 degF − T) ÷ 20 degF)`, with 4 h to 6 h for initial set at 70 degF. Two sources print the factor
 * on their own, halved for each 20 degF warmer and doubled for each 20 degF colder; one of them prints the hours. In
 * degrees Celsius that is 21.1 degC, and an interval of 11.1 degC. A case that is printed beside, fly ash at 45 degF
 * with a water reducer, set within 6 h where the rule has 9.5 h to 14 h: it brackets badly where it is cold.
 */
import { Decimal } from '../quantity/decimal';
import { withExample } from '../quantity/faults';
import { lesserOf } from '../quantity/greater';
import { constant, ratio, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { toPower } from '../solve/exponential';
import type { Hours } from './saw-hours';
import * as cautions from './truck-cautions';
import { SET_TIMES } from './truck-sources';

type Temperature = Quantity<'temperature'>;

export const SET_FROM = constant(() => time('4 h'));
export const SET_TO = constant(() => time('6 h'));
const REFERENCE = 70;
const INTERVAL = 20;

/** What the sources print it for. */
const PRINTED = [
  /*#__PURE__*/ paired('temperature', '50 degF', '10 degC'),
  /*#__PURE__*/ paired('temperature', '90 degF', '32 degC'),
] as const;
/** Beyond this nobody places concrete, and the rule says nothing. */
export const SET_LEAST = /*#__PURE__*/ paired('temperature', '32 degF', '0 degC');
export const SET_MOST = /*#__PURE__*/ paired('temperature', '120 degF', '50 degC');
const USUAL = /*#__PURE__*/ paired('temperature', '70 degF', '21 degC');

/** Digits of a factor that is a rule of thumb. */
const DIGITS = 4;

/** How many times as long concrete at this temperature takes as at 70 degF. */
export function factorAt(T: Temperature): Quantity<'ratio'> {
  const steps = new Decimal(REFERENCE).minus(canonicalValue(T)).div(INTERVAL);
  return ratio(`${toPower(new Decimal(2), steps).toDecimalPlaces(DIGITS).toFixed()}:1`);
}

/**
 * The temperature that sets are reckoned at: as given, within what the rule serves, or as in mild weather.
 *
 * @param measured - the set is known by itself, so that the rule is not stretched by this temperature
 */
export function temperatureOf(given: Temperature | undefined, pad: Pad, measured = false): Temperature {
  if (!given) {
    pad.assume({
      name: 'concreteTemperature',
      value: USUAL,
      because: 'mild weather; warmer concrete sets sooner',
      override: 'Give concreteTemperature as it will be at the site',
      source: SET_TIMES,
    });
    return USUAL.as(pad.system);
  }
  if (SET_LEAST.undercutBy(given) || SET_MOST.exceededBy(given)) {
    refuse(
      'concreteTemperature',
      withExample(
        'not-served',
        ['32 degF to 120 degF', '0 degC to 50 degC'],
        (range) =>
          say`no set times are known for such concrete; give concreteTemperature within ${{ range }}`,
      ),
    );
  }
  const passed = PRINTED[0].undercutBy(given) ?? PRINTED[1].exceededBy(given);
  if (passed && !measured) pad.caution(cautions.setRuleStretched(PRINTED, passed, given));
  return given;
}

/** Initial set after mixing at a temperature, from the earliest to the latest. */
export function initialSetAt(T: Temperature, pad: Pad): Hours {
  const k = factorAt(T);
  const [f, t] = [SET_FROM(), SET_TO()];
  return {
    from: pad.step('initial set at the earliest', 's = f × k', { f, k }, f.times(k)),
    to: pad.step('initial set at the latest', 'S = t × k', { t, k }, t.times(k)),
  };
}

/** The earliest initial set of the skin, in air that is warmer than the concrete. */
export function earliestSetIn(air: Temperature, pad: Pad): Quantity<'time'> {
  const k = factorAt(lesserOf(air, SET_MOST.as(pad.system)));
  const f = SET_FROM();
  return pad.step('initial set of the skin, in warmer air', 'x = f × k', { f, k }, f.times(k));
}
