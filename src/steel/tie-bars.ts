/**
 * Tie bars across a joint: deformed bars that hold two slabs together, where dowels let them slide.
 *
 * Usual: bars of 1/2 in, 30 in long, 30 in apart. Where the width that they drag is given, the steel must pull it over
 * its base: `s = a × f ÷ (F × B × w)` is the most that bars of section `a` may be apart, with friction factor `F`,
 * width `B` to the free edge, weight `w` of the slab as a pressure, and working stress `f`.
 */

import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { type AnyBarSize, diameterOf, sectionOf, usualGrade } from './bars';
import { tiedAndIsolated, tiedGroundMoves, tiedToWall, tiesBonded, tiesTooFew } from './cautions';
import { CRSI_DRAG, TIE_BAR_SIZE, TIE_BARS } from './sources';
import { CONCRETE, pressureOf } from './steel-minimum';

type Length = Quantity<'length'>;

/** What ties are sized by. */
export interface TieInput {
  readonly thickness: Length;
  readonly joint: Length;
  readonly placing: 'basket' | 'drilled';
  readonly bar: AnyBarSize | undefined;
  readonly length: Length | undefined;
  readonly spacing: Length | undefined;
  readonly isolation: boolean | undefined;
  readonly into: 'slab' | 'footing' | 'wall' | undefined;
  readonly freeWidth: Length | undefined;
  readonly friction: Quantity<'ratio'> | undefined;
  readonly stress: Quantity<'pressure'> | undefined;
  readonly unitWeight: Quantity<'density'> | undefined;
}

/** Ties, sized. */
export interface Tie {
  readonly bar: AnyBarSize;
  readonly diameter: Length;
  readonly length: Length;
  readonly spacing: Length;
  readonly spacingMost?: Length;
}

/** Of 1/2 in, or 12 mm. */
const BAR: Readonly<Record<System, AnyBarSize>> = { customary: '#4', metric: '12 mm' };
const THIRTY = /*#__PURE__*/ paired('length', '30 in', '750 mm');
const FRICTION = constant(() => ratio('1.5:1'));
const STRESS = /*#__PURE__*/ paired('pressure', '40000 psi', '280 MPa');
const STEP = /*#__PURE__*/ paired('length', '1 in', '10 mm');

const overridden = (name: string): string => `Give ${name} from the plans`;

/** The most that ties may be apart to drag the slab from its free edge. */
function dragSpacing(input: TieInput, B: Length, bar: AnyBarSize, pad: Pad): Length {
  const F = input.friction ?? FRICTION();
  const f = input.stress ?? STRESS.as(pad.system);
  for (const [name, value, because] of [
    ['friction', FRICTION(), 'the usual friction factor'],
    ['stress', STRESS, say`two thirds of the yield strength of grade ${{ grade: usualGrade(pad.system) }}`],
    ['unitWeight', CONCRETE, 'what concrete with steel in it weighs'],
  ] as const) {
    if (!input[name]) pad.assume({ name, value, because, override: overridden(name), source: CRSI_DRAG });
  }
  const { thickness: t } = input;
  const D = input.unitWeight ?? CONCRETE.as(pad.system);
  const w = pressureOf(
    pad.step('weight of the slab, taken as a pressure w', 'G = t × D', { t, D }, t.times(D)),
  );
  const a = sectionOf(bar);
  const s = a
    .times(f)
    .over(w)
    .over(F)
    .over(B)
    .in(systemOfQuantity(B) === 'metric' ? 'mm' : 'in');
  return pad.step('the most that ties may be apart', 's = a × f ÷ w ÷ F ÷ B', { a, f, w, F, B }, s);
}

/** Given, or as is usual, closer where drag asks for it. */
function spacingOf(input: TieInput, most: Length | undefined, pad: Pad): Length {
  const { spacing: given, thickness } = input;
  if (given) {
    if (most && given.greaterThan(most)) pad.caution(tiesTooFew(most, given));
    return given;
  }
  const usual = THIRTY.like(thickness);
  const step = STEP.like(thickness);
  const spacing = most?.lessThan(usual) ? most.downTo(step) : usual;
  const because =
    spacing === usual ? 'tie bars are usually so far apart' : 'rounded down from what drag allows';
  pad.assume({
    name: 'spacing',
    value: { reckoned: spacing },
    because,
    override: overridden('spacing'),
    source: TIE_BARS,
  });
  return spacing;
}

/** Size, length and spacing of ties, given or usual. */
export function tieOf(input: TieInput, pad: Pad): Tie {
  const bar = input.bar ?? BAR[pad.system];
  if (!input.bar) {
    const because = 'tie bars are usually of this size';
    pad.assume({ name: 'bar', value: bar, because, override: overridden('bar'), source: TIE_BAR_SIZE });
  }
  const long = input.length ?? THIRTY.like(input.thickness);
  if (!input.length) {
    const because = 'half of it bonded on each side';
    pad.assume({
      name: 'length',
      value: { reckoned: long },
      because,
      override: overridden('length'),
      source: TIE_BARS,
    });
  }
  const most = input.freeWidth && dragSpacing(input, input.freeWidth, bar, pad);
  const spacing = spacingOf(input, most, pad);
  return { bar, diameter: diameterOf(bar), length: long, spacing, ...(most ? { spacingMost: most } : {}) };
}

/** What ties do that dowels do not: they hold. */
export function heedTies(input: TieInput, pad: Pad): void {
  pad.caution(tiesBonded);
  if (input.isolation) pad.caution(tiedAndIsolated);
  if (input.into === 'wall') pad.caution(tiedToWall);
  else if (input.into || input.placing === 'drilled') pad.caution(tiedGroundMoves);
}
