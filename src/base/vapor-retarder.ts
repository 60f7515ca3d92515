/**
 * A sheet under a slab that keeps damp below: rolls to buy, and seams to tape.
 *
 * Strips of a roll lap at their sides and ends, `C = (w − o) × (l − o)` of a roll `R = w × l` covers ground; the sheet is
 * `G = S × R ÷ C` for `S = A + P × u`, the plan and what is turned up along its edges. Strips are laid the way that leaves
 * the least to tape, `s` between them; each further of `n` rolls begins with a seam across, `T = s + (n − 1) × w`. Where
 * only the area is known, a seam is reckoned along every strip and across every end, `T = S ÷ (w − o) + S ÷ (l − o)`.
 */

import type { OutlineInput } from '../outline/index';
import { measure } from '../outline/measure';
import { netArea, openMeasured } from '../outline/net-area';
import { type Outline, outline } from '../outline/outline';
import { type Opening, type OpeningInput, openings } from '../outline/region';
import { ZERO } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput, quantityOf } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { type Field, fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { all, notBoth, oneOf } from '../reckoning/together';
import { carried, total } from '../reckoning/whole';
import * as cautions from './cautions';
import * as faults from './faults';
import * as ordinary from './ordinary';
import { rolledOut } from './rolls';
import { leastSeams } from './seams';
import { CLOSED_FORM, IRC_RETARDER } from './sources';

/** Input of {@link vaporRetarder}. Give the outline of the slab or its area. */
export interface VaporRetarderInput {
  /** Outline of the slab. */
  readonly outline?: OutlineInput;
  /** Openings in it that are left as they are, as a pool or a tree is; none by default. */
  readonly openings?: readonly OpeningInput[];
  /** Area of the slab, in place of its outline. */
  readonly area?: QuantityInput<'area'>;
  /** Width of the roll, unfolded. */
  readonly rollWidth: QuantityInput<'length'>;
  /** Length of the roll. */
  readonly rollLength: QuantityInput<'length'>;
  /** How far one strip laps over the next, at sides and ends; by default 6 in, or 150 mm. */
  readonly lap?: QuantityInput<'length'>;
  /** How far it is turned up along the edges of the slab, with its outline; by default not at all. */
  readonly turnUp?: QuantityInput<'length'>;
}

/** Figures of {@link vaporRetarder}. */
export interface VaporRetarderFigures {
  /** What lies under the slab and stands at its edges, laps apart. */
  readonly area: Quantity<'area'>;
  /** Sheet with its laps: that area times what a roll has over what it covers. */
  readonly sheet: Quantity<'area'>;
  /** Whole rolls. */
  readonly rolls: Quantity<'count'>;
  /**
   * Seams to tape, between strips laid the way that leaves the least of them, and where a further roll begins; those
   * around pipes and posts come on top.
   */
  readonly seams: Quantity<'length'>;
}

interface Parsed {
  readonly outline: Outline | undefined;
  readonly openings: readonly Opening[] | undefined;
  readonly area: Quantity<'area'> | undefined;
  readonly rollWidth: Quantity<'length'>;
  readonly rollLength: Quantity<'length'>;
  readonly lap: Quantity<'length'> | undefined;
  readonly turnUp: Quantity<'length'> | undefined;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;

const NAMES = { what: 'sheet with laps', symbol: 'S', before: '' } as const;
const LAP = paired('length', '6 in', '150 mm');

/** The plan, and what is turned up all around it and around its openings. */
function covered({ outline: shape, openings: holes, area, turnUp: u }: Parsed, pad: Pad): Area {
  if ((shape === undefined) === (area === undefined)) {
    return refuse('', sharedFaults.giveOneOf(['outline', 'area']));
  }
  const { area: whole, perimeter: P } = shape
    ? measure(shape, pad)
    : { area: area as Area, perimeter: undefined };
  const open = openMeasured(shape, holes, pad);
  const A = netArea(
    whole,
    open.map(({ area: own }) => own),
    pad,
  );
  if (!u?.sign()) return A;
  const E = edgesOf([P, ...open.map(({ perimeter }) => perimeter)], pad);
  if (!E) return refuse(shape ? 'outline' : 'area', faults.perimeterUnknown('what is turned up'));
  return pad.step('with what is turned up', 'S = A + P × u', { A, P: E, u }, A.plus(E.times(u)));
}

/** All edges that it is turned up along, those of openings too; nothing where one is not known. */
function edgesOf(edges: readonly (Length | undefined)[], pad: Pad): Length | undefined {
  const known = edges.flatMap((edge) => edge ?? []);
  if (known.length < edges.length) return undefined;
  return edges.length > 1 ? total('length of all edges', 'p', known, pad) : known[0];
}

function lapOf({ lap }: Parsed, pad: Pad): Length {
  if (!lap) {
    pad.assume({
      name: 'lap',
      value: LAP,
      because: 'codes for houses ask for no less',
      override: 'Give lap as the maker of the sheet says',
      source: IRC_RETARDER,
    });
    return LAP.as(pad.system);
  }
  const least = LAP.undercutBy(lap);
  if (least) pad.caution(cautions.shortRetarderLap(least, lap));
  return lap;
}

function reckon(input: Parsed, pad: Pad): VaporRetarderFigures {
  const S = covered(input, pad);
  const o = lapOf(input, pad);
  const { laid, rolls } = rolledOut(S, { ...input, lap: o }, NAMES, pad);
  const seams = seamsOf(input, { S, o, n: rolls }, pad);
  pad.caution(cautions.retarderCare);
  return { area: S, sheet: laid, rolls, seams };
}

/** What is to be taped, by strips laid over the plan where its corners are known. */
function seamsOf(
  { outline: shape, openings: holes, rollWidth: w, rollLength: l, turnUp }: Parsed,
  { S, o, n }: { readonly S: Area; readonly o: Length; readonly n: Quantity<'count'> },
  pad: Pad,
): Length {
  const turned = turnUp ? canonicalValue(turnUp) : ZERO;
  const strips = { width: canonicalValue(w), lap: canonicalValue(o), turnUp: turned };
  const between = shape && leastSeams(shape, holes, strips);
  if (!between) {
    const all = S.over(w.minus(o)).plus(S.over(l.minus(o)));
    return pad.step('seams', 'T = S ÷ (w − o) + S ÷ (l − o)', { S, w, l, o }, all);
  }
  const s = quantityOf('length', between, pad.system);
  const ends = w.times(n).minus(w);
  return pad.step('seams', 'T = s + n × w − w', { s, n, w }, s.plus(ends));
}

function door(): Field<Parsed> {
  return fields(
    {
      outline: maybe(outline()),
      openings: maybe(openings()),
      area: maybe(quantity('area', 'area', 'positive', ordinary.PLAN_AREA)),
      rollWidth: quantity('length', 'rollWidth', 'positive', ordinary.SHEET_WIDTH),
      rollLength: quantity('length', 'rollLength', 'positive', ordinary.SHEET_LENGTH),
      lap: maybe(quantity('length', 'lap', 'not-negative', ordinary.SHEET_LAP)),
      turnUp: maybe(quantity('length', 'turnUp', 'not-negative', ordinary.TURN_UP)),
    },
    all(oneOf(['outline'], ['area']), notBoth('openings', 'area')),
  );
}

/**
 * A vapor retarder under a slab: rolls of sheet with their laps, and seams to tape.
 *
 * @param input - outline of the slab, or its area; the roll; lap, and how far it is turned up at the edges
 * @returns sheet with laps, whole rolls, and seams
 * @throws {InputError} `give-one-of` for outline and area; `perimeter-unknown` where nothing says how long the edge is; `does-not-fit` for a
 * lap as wide as the roll; `too-many` rolls
 * @source geometry; the lap from the International Residential Code
 * @example
 * ```ts
 * import { vaporRetarder } from 'flatwork-reckoner';
 *
 * const { figures } = vaporRetarder({
 *   outline: { shape: 'rectangle', length: '30 ft', width: '24 ft' },
 *   rollWidth: '14 ft',
 *   rollLength: '100 ft',
 * });
 * figures.rolls.format(); // '1 each'
 * figures.sheet.format(); // '750.42 ft2'
 * ```
 */
export const vaporRetarder: Calculation<VaporRetarderInput, VaporRetarderFigures> = /*#__PURE__*/ define({
  id: 'vapor-retarder',
  title: 'Vapor retarder under a slab',
  version: 1,
  sources: [CLOSED_FORM, IRC_RETARDER],
  limits: [carried('rolls')],
  input: door,
  reckon,
  takes: (_, { rollWidth, rollLength }) => [
    { item: 'vapor-retarder', from: 'rolls', of: { rollWidth, rollLength } },
    { item: 'seam-tape', from: 'seams' },
  ],
});
