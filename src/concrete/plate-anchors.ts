/**
 * Anchor bolts for the plate that is laid on top of walls.
 *
 * A plate comes in pieces, `m = floor(L ÷ P)` of them whole and one for the rest of a side. A piece of length `p` is held
 * `e` from each of its ends and no farther apart than `s` between, by two at least: `n = max(2, ceil((p − 2 × e) ÷ s) + 1)`.
 *
 * Source: common practice, from memory, as residential codes have it; the local code and the plans govern, and ask for
 * more where wind is strong or the ground shakes.
 */
import type { LengthInput } from '../outline/outline';
import * as faults from '../quantity/faults';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { carried, timesDown, timesUp, total } from '../reckoning/whole';
import { say, type Words } from '../reckoning/words';
import * as cautions from './cautions';
import { ANCHOR_END, ANCHOR_SPACING, BOLT_DIAMETER, BOLT_LENGTH, PLATE_PIECE } from './ordinary';
import type { Wall } from './wall-input';

/** The bolts of a plate on top of the walls. */
export interface PlateAnchorsInput {
  /** How far apart they are at most; by default 6 ft, 1.8 m. */
  readonly spacing?: LengthInput;
  /** How far from each end of a piece of the plate one is at most; by default 12 in, 300 mm. */
  readonly fromEnd?: LengthInput;
  /** The longest pieces that the plate comes in; by default 16 ft, 4.8 m. */
  readonly plate?: LengthInput;
  /** How thick the bolts are, for the purchase list. */
  readonly diameter?: LengthInput;
  /** How long they are, for the purchase list. */
  readonly length?: LengthInput;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;
type Parsed = Read<PlateAnchorsInput>;

const USUAL: Readonly<Record<'spacing' | 'fromEnd' | 'plate', Paired<'length'>>> = {
  spacing: /*#__PURE__*/ paired('length', '6 ft', '1.8 m'),
  fromEnd: /*#__PURE__*/ paired('length', '12 in', '300 mm'),
  plate: /*#__PURE__*/ paired('length', '16 ft', '4.8 m'),
};

const BECAUSE = {
  spacing: 'the farthest that bolts of a plate stand apart; codes and plans may want them closer',
  fromEnd: 'the farthest from the end of a piece',
  plate: 'longer plates are seldom sold, and each piece has two bolts at least',
};

/** More bolts than any job has. */
export const ANCHORS = /*#__PURE__*/ carried('anchor bolts');

/** The field of the bolts of a plate. */
export const plateAnchors = (): Field<Parsed> =>
  fields({
    spacing: maybe(quantity('length', 'spacing', 'positive', ANCHOR_SPACING)),
    fromEnd: maybe(quantity('length', 'fromEnd', 'positive', ANCHOR_END)),
    plate: maybe(quantity('length', 'plate', 'positive', PLATE_PIECE)),
    diameter: maybe(quantity('length', 'diameter', 'positive', BOLT_DIAMETER)),
    length: maybe(quantity('length', 'length', 'positive', BOLT_LENGTH)),
  });

function usual(given: Parsed, name: keyof typeof USUAL, pad: Pad): Length {
  const told = given[name];
  if (told) return told;
  const value = USUAL[name];
  pad.assume({
    name: `anchors.${name}`,
    value,
    because: BECAUSE[name],
    override: `Give anchors.${name}`,
    source: COMMON_PRACTICE,
  });
  return value.as(pad.system);
}

/** The sides of a wall along which a plate runs. */
function sidesOf(wall: Wall, path: string): Length[] {
  switch (wall.kind) {
    case 'straight':
      return [wall.length];
    case 'loop':
      return [wall.outerLength, wall.outerWidth, wall.outerLength, wall.outerWidth];
    case 'ring':
      return refuse(`${path}.kind`, faults.doesNotFit('a straight plate', 'a round wall'));
  }
}

interface Rule {
  readonly s: Length;
  readonly e: Length;
  readonly P: Length;
}

/** Bolts of one piece of a plate. */
function ofPiece(what: Words, p: Length, { s, e }: Rule, pad: Pad): Count {
  const between = p.minus(e.times(wholeNumber(2)));
  const spaces = timesUp(between, s);
  // What comes out even is printed without the ceiling, which a rounded digit would tip.
  const even = spaces > 0 && s.times(wholeNumber(spaces)).equals(between);
  const apart = even ? '(p − 2 × e) ÷ s' : 'ceil((p − 2 × e) ÷ s)';
  return pad.step(what, `n = max(2, ${apart} + 1)`, { p, e, s }, wholeNumber(Math.max(2, spaces + 1)));
}

/** Bolts of one side, the pieces of its plate end to end. */
function ofSide(name: string, L: Length, rule: Rule, pad: Pad): Count {
  const { P, s } = rule;
  withinTimes(ANCHORS, L.over(P), 'anchors.plate');
  withinTimes(ANCHORS, L.over(s), 'anchors.spacing');
  const whole = timesDown(L, P);
  const rest = L.minus(P.times(wholeNumber(whole)));
  const pieces: Count[] = [];
  if (whole > 0) {
    const n = ofPiece(say`${{ name }}, bolts of a whole piece of plate`, P, rule, pad);
    const m = wholeNumber(whole);
    pieces.push(pad.step(say`${{ name }}, bolts of whole pieces`, 'N = m × n', { m, n }, n.times(m)));
  }
  if (rest.sign() > 0) pieces.push(ofPiece(say`${{ name }}, bolts of the last piece`, rest, rule, pad));
  return total(say`${{ name }}, bolts`, 'N', pieces, pad);
}

/** All bolts of the plates on these walls. */
export function anchorsOf(
  given: Parsed,
  walls: readonly Wall[],
  pad: Pad,
): { anchors: Count; anchorsApart: Length; anchorsFromEnd: Length } {
  const rule = {
    s: usual(given, 'spacing', pad),
    e: usual(given, 'fromEnd', pad),
    P: usual(given, 'plate', pad),
  };
  const far = USUAL.spacing.exceededBy(rule.s);
  if (far) pad.caution(cautions.anchorsApart(far, rule.s));
  const inward = USUAL.fromEnd.exceededBy(rule.e);
  if (inward) pad.caution(cautions.anchorsFromEnd(inward, rule.e));
  pad.caution(cautions.anchorsByCode);
  const all = walls.map((wall, i) => {
    const name = `wall ${i + 1}`;
    const one = total(
      say`${{ name }}, anchor bolts`,
      'N',
      sidesOf(wall, `walls[${i}]`).map((L) => ofSide(name, L, rule, pad)),
      pad,
    );
    return wall.count ? one.times(wall.count) : one;
  });
  return {
    anchors: total('anchor bolts', 'N', all, pad),
    anchorsApart: rule.s,
    anchorsFromEnd: rule.e,
  };
}
