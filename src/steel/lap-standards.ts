/**
 * Laps as the standards of metric countries have them: for each, the length in which a bar is anchored, times what the
 * lap asks for. Strengths go into the formulas as numbers of MPa.
 *
 * EN 1992-1-1, 8.4 and 8.7: `fbd = 2.25 η1 η2 × 0.7 × 0.3 fck^(2/3) ÷ 1.5`, `lb = d ÷ 4 × σ ÷ fbd`, and
 * `l0 = max(α2 α6 lb, 0.3 α6 lb, 15 d, 200 mm)` with `α2 = 1 − 0.15 (cd − d) ÷ d`, from 0.7 to 1, and `cd` the lesser
 * of the cover and half of what is clear between bars. Above C50/60 the strength counts as 50 MPa, on the safe side.
 * CSA A23.3, 12.2.3 and 12.15: `0.45 k1 k2 k3 k4 fy ÷ √f'c × d`, or 0.6 where less than two diameters are clear between
 * bars, at least 300 mm; 1.3 of it for a class B lap.
 * AS 3600, 13.1.2.2 and 13.2.2: `0.5 k1 k3 fy d ÷ (k2 √f'c)` with `k2 = (132 − d) ÷ 100`, at least `0.058 fy k1 d`; 1.25
 * of it for a lap.
 */

import { Decimal } from '../quantity/decimal';
import { greaterOf, lesserOf } from '../quantity/greater';
import { constant, length, pressure } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { strength } from '../reckoning/concrete-strength';
import { choice, fields, maybe, quantity, wholeNumber, word, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { toPower } from '../solve/exponential';
import { barField } from './bar-field';
import { yieldStrength as yieldOfBars } from './bar-grade';
import { type AnyBarSize, diameterOf } from './bars';
import { numberIn, plainNumber } from './common';
import { COVER, LAP_SPACING, STRENGTH, STRESS, YIELD } from './ordinary';
import { AS_3600_LAPS, CSA_LAPS, EUROCODE_LAPS } from './sources';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;
type Pressure = Quantity<'pressure'>;

interface Parts {
  readonly bar: AnyBarSize;
  readonly strength: Pressure;
  readonly spacing: Length | undefined;
}

interface Eurocode extends Parts {
  readonly kind: 'eurocode-2';
  readonly cover: Length | undefined;
  readonly stress: Pressure | undefined;
  readonly bond: 'good' | 'poor' | undefined;
  readonly lapped: 'quarter' | 'third' | 'half' | 'more' | undefined;
}

interface Csa extends Parts {
  readonly kind: 'csa-a23-3';
  readonly yieldStrength: Pressure | undefined;
  readonly topBar: boolean | undefined;
  readonly epoxy: boolean | undefined;
  readonly lightweight: boolean | undefined;
  readonly lapClass: 'A' | 'B' | undefined;
}

interface Australian extends Parts {
  readonly kind: 'as-3600';
  readonly cover: Length | undefined;
  readonly yieldStrength: Pressure | undefined;
  readonly topBar: boolean | undefined;
}

/** A lap by one of these standards, as it was read. */
export type StandardLap = Eurocode | Csa | Australian;

/** What each comes to. */
export interface StandardLapLengths {
  readonly lap: Length;
  readonly development: Length;
}

const MPA = constant(() => pressure('1 MPa'));
const MM = constant(() => length('1 mm'));
/** Bars up to 20M, 19.5 mm, and 20 mm are small. */
const SMALL = constant(() => length('20 mm'));
const LEAST_OF_EUROCODE = /*#__PURE__*/ paired('length', '8 in', '200 mm');
const LEAST_OF_CSA = /*#__PURE__*/ paired('length', '12 in', '300 mm');
/** 500 MPa over 1.15. */
const DESIGN_STRESS = /*#__PURE__*/ paired('pressure', '63000 psi', '435 MPa');
const YIELD_400 = /*#__PURE__*/ paired('pressure', '58000 psi', '400 MPa');
const YIELD_500 = /*#__PURE__*/ paired('pressure', '72500 psi', '500 MPa');

const number = (q: Pressure): Count => plainNumber(numberIn(q, MPA()));
const least = (q: Pressure, most: number): Count => plainNumber(Decimal.min(numberIn(q, MPA()), most));

/** `1 − 0.15 (c − d) ÷ d`, from 0.7 to 1, with the lesser of the cover and half of what is clear between bars. */
function coverFactor(input: Eurocode | Australian, d: Length, source: Source, pad: Pad): Count {
  const { cover: c, spacing: s } = input;
  if (!c || !s) {
    for (const name of ['cover', 'spacing'] as const) {
      if (input[name]) continue;
      pad.assume({
        name,
        value: { reckoned: name === 'cover' ? d : d.times(wholeNumber(3)) },
        because: 'not given, so nothing is taken off for what surrounds the bar: the lap comes out long',
        override: say`Give cover and spacing for a shorter lap`,
        source,
      });
    }
  }
  const [cover, spacing] = [c ?? d, s ?? d.times(wholeNumber(3))];
  const half = spacing.minus(d).over(wholeNumber(2));
  const around = lesserOf(cover, half);
  const raw = new Decimal(1).minus(numberIn(around, d).minus(1).times('0.15'));
  const k = plainNumber(Decimal.min(Decimal.max(raw, '0.7'), 1));
  return pad.step(
    'factor of the concrete around the bar',
    'k = min(max(1 − 0.15 × (min(c, (s − d) ÷ 2) − d) ÷ d, 0.7), 1)',
    { c: cover, s: spacing, d },
    k,
  );
}

const SHARES = { quarter: '1', third: '1.15', half: '1.4', more: '1.5' } as const;

function eurocode(input: Eurocode, pad: Pad): StandardLapLengths {
  const source = EUROCODE_LAPS;
  const d = diameterOf(input.bar);
  if (!input.stress) {
    const because = 'bars of 500 MPa that are used to the full';
    pad.assume({
      name: 'stress',
      value: DESIGN_STRESS,
      because,
      override: 'Give stress from the design',
      source,
    });
  }
  if (!input.bond) {
    const because = 'the bar lies in the lower part of the slab, or the slab is at most 250 mm thick';
    pad.assume({ name: 'bond', value: 'good', because, override: 'Give bond', source });
  }
  if (!input.lapped) {
    const because = 'laps of flatwork lie side by side: all bars are lapped in one place';
    pad.assume({ name: 'lapped', value: 'more', because, override: 'Give lapped', source });
  }
  const C = least(input.strength, 50);
  const e = plainNumber(input.bond === 'poor' ? '0.7' : '1');
  const thick = numberIn(d, MM());
  const n = plainNumber(Decimal.min(new Decimal(132).minus(thick).div(100), 1));
  const B = plainNumber(
    toPower(canonicalValue(C), new Decimal(2).div(3))
      .times('0.315')
      .times(canonicalValue(e))
      .times(canonicalValue(n)),
  );
  pad.step('bond in MPa: e of its place, n of thick bars', 'B = 0.315 × e × n × C^(2 ÷ 3)', { e, n, C }, B);
  const f = number(input.stress ?? DESIGN_STRESS.as(pad.system));
  const four = wholeNumber(4);
  const basic = pad.step(
    'basic anchorage',
    'b = d × f ÷ (4 × B)',
    { d, f, B },
    d.times(f.over(B.times(four))),
  );
  const k = coverFactor(input, d, source, pad);
  const [ten, fifteen] = [wholeNumber(10), wholeNumber(15)];
  const tenth = LEAST_OF_EUROCODE.as(pad.system).over(wholeNumber(2));
  const share = plainNumber('0.3');
  const development = greaterOf(
    greaterOf(basic.times(k), basic.times(share)),
    greaterOf(d.times(ten), tenth),
  );
  pad.step(
    'anchorage of a straight bar',
    'L = max(k × b, 0.3 × b, 10 × d, c)',
    { k, b: basic, d, c: tenth },
    development,
  );
  const a = plainNumber(SHARES[input.lapped ?? 'more']);
  const c = LEAST_OF_EUROCODE.as(pad.system);
  const lap = greaterOf(
    greaterOf(basic.times(k).times(a), basic.times(share).times(a)),
    greaterOf(d.times(fifteen), c),
  );
  pad.step(
    'lap: a of the share that is lapped',
    'l = max(a × k × b, 0.3 × a × b, 15 × d, c)',
    { a, k, b: basic, d, c },
    lap,
  );
  return { lap, development };
}

/** The yield strength that is given or usual. */
function yieldFor(given: Pressure | undefined, usual: typeof YIELD_400, source: Source, pad: Pad): Count {
  if (!given) {
    const because = 'the usual bars of that country';
    pad.assume({ name: 'yieldStrength', value: usual, because, override: 'Give yieldStrength', source });
  }
  return number(given ?? usual.as(pad.system));
}

function csa(input: Csa, pad: Pad): StandardLapLengths {
  const source = CSA_LAPS;
  const d = diameterOf(input.bar);
  const F = yieldFor(input.yieldStrength, YIELD_400, source, pad);
  if (!input.spacing) {
    const because = 'two diameters are clear between the bars of flatwork';
    const value = { reckoned: d.times(wholeNumber(3)) };
    pad.assume({ name: 'spacing', value, because, override: 'Give spacing', source });
  }
  if (!input.lapClass) {
    const because = 'more than half of the bars are lapped in one place';
    pad.assume({
      name: 'lapClass',
      value: 'class B',
      because,
      override: 'Give lapClass from the plans',
      source,
    });
  }
  const close = input.spacing?.lessThan(d.times(wholeNumber(3)));
  const j = plainNumber(close ? '0.6' : '0.45');
  const k = plainNumber(
    Decimal.min(new Decimal(input.topBar ? '1.3' : 1).times(input.epoxy ? '1.5' : 1), '1.7'),
  );
  const q = plainNumber(input.lightweight ? '1.3' : '1');
  const S = plainNumber(d.greaterThan(SMALL()) ? '1' : '0.8');
  const C = least(input.strength, 64);
  const factor = [j, k, q, S, F].reduce((p, x) => p.times(canonicalValue(x)), new Decimal(1));
  const raw = d.times(plainNumber(factor.div(canonicalValue(C).sqrt())));
  pad.step(
    'development before its least: j of the space between bars, k position and coating, q concrete, S size',
    'D = j × k × q × S × F ÷ √(C) × d',
    { j, k, q, S, F, C, d },
    raw,
  );
  const c = LEAST_OF_CSA.as(pad.system);
  const development = pad.step('development', 'L = max(D, c)', { D: raw, c }, greaterOf(raw, c));
  const m = plainNumber(input.lapClass === 'A' ? '1' : '1.3');
  const lap = greaterOf(raw.times(m), c);
  pad.step('lap, the least after the factor of its class', 'l = max(m × D, c)', { m, D: raw, c }, lap);
  return { lap, development };
}

function australian(input: Australian, pad: Pad): StandardLapLengths {
  const source = AS_3600_LAPS;
  const d = diameterOf(input.bar);
  const F = yieldFor(input.yieldStrength, YIELD_500, source, pad);
  const C = least(input.strength, 65);
  const p = plainNumber(input.topBar ? '1.3' : '1');
  const k = coverFactor(input, d, source, pad);
  const z = plainNumber(new Decimal(132).minus(numberIn(d, MM())).div(100));
  pad.step('factor of the size', 'z = (132 − d ÷ u) ÷ 100', { d, u: MM() }, z);
  const over = canonicalValue(z).times(canonicalValue(C).sqrt());
  const factor = [p, k, F].reduce((all, x) => all.times(canonicalValue(x)), new Decimal('0.5')).div(over);
  const raw = d.times(plainNumber(factor));
  pad.step(
    'development before its least: p of its place',
    'D = 0.5 × p × k × F × d ÷ (z × √(C))',
    { p, k, F, d, z, C },
    raw,
  );
  const floor = d.times(plainNumber(canonicalValue(F).times(canonicalValue(p)).times('0.058')));
  pad.step('the least', 'c = 0.058 × F × p × d', { F, p, d }, floor);
  const development = pad.step('development', 'L = max(D, c)', { D: raw, c: floor }, greaterOf(raw, floor));
  const m = plainNumber('1.25');
  const lap = pad.step('lap', 'l = m × L', { m, L: development }, development.times(m));
  return { lap, development };
}

/** A lap by the standard that is named. */
export function byStandard(input: StandardLap, pad: Pad): StandardLapLengths {
  if (input.kind === 'eurocode-2') return eurocode(input, pad);
  return input.kind === 'csa-a23-3' ? csa(input, pad) : australian(input, pad);
}

const parts = () => ({
  bar: barField('bar'),
  strength: strength('strength', STRENGTH),
  spacing: maybe(quantity('length', 'spacing', 'positive', LAP_SPACING)),
});
const cover = () => maybe(quantity('length', 'cover', 'positive', COVER));
const yieldStrength = () => maybe(yieldOfBars(YIELD));

/** The doors of these laps. */
export const standardLaps = () =>
  [
    fields({
      kind: word('eurocode-2'),
      ...parts(),
      cover: cover(),
      stress: maybe(quantity('pressure', 'stress', 'positive', STRESS)),
      bond: maybe(choice('bond', ['good', 'poor'] as const)),
      lapped: maybe(choice('lapped', ['quarter', 'third', 'half', 'more'] as const)),
    }),
    fields({
      kind: word('csa-a23-3'),
      ...parts(),
      yieldStrength: yieldStrength(),
      topBar: maybe(yesOrNo('topBar')),
      epoxy: maybe(yesOrNo('epoxy')),
      lightweight: maybe(yesOrNo('lightweight')),
      lapClass: maybe(choice('lapClass', ['A', 'B'] as const)),
    }),
    fields({
      kind: word('as-3600'),
      ...parts(),
      cover: cover(),
      yieldStrength: yieldStrength(),
      topBar: maybe(yesOrNo('topBar')),
    }),
  ] as const;
