/**
 * Dowels or ties across a joint: size, count, weight, and epoxy where they are drilled in. Dowels are smooth and
 * slide; ties are deformed and hold (see `tie-bars`).
 *
 * `n = ceil((J − 2 × c) ÷ s) + 1` dowels in a joint of length `J` with the first and last `c` from its
 * ends. Epoxy fills the ring between dowel and hole: `V = π × (H² − d²) ÷ 4 × E × n`, and a share for
 * what is lost.
 */

import * as faults from '../quantity/faults';
import { constant, length, ratio } from '../quantity/make';
import { lesserOfPair, paired } from '../quantity/paired';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { bareRatio } from '../reckoning/bare-ratio';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { silica } from '../reckoning/cautions';
import { choice, fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { none, says, where } from '../reckoning/together';
import { wholeUnits } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import { type AnyBarSize, type BarName, weightOf } from './bars';
import * as cautions from './cautions';
import { steadyCount } from './common';
import * as usual from './ordinary';
import { ring, roundSteel, STEEL } from './round-steel';
import { DOWEL_FLOORS, DOWEL_PAVEMENTS, TIE_BARS, TIE_STEEL } from './sources';
import { heedTies, type Tie, tieOf } from './tie-bars';

/** Which table sizes the dowels: floors under lift trucks, or heavy pavements. */
export type DowelTable = 'floors' | 'pavements';

/** Input of {@link dowelLayout}. */
export interface DowelLayoutInput {
  /** Thickness of the thinner slab at the joint. */
  readonly thickness: QuantityInput<'length'>;
  /** Length of the joint. */
  readonly joint: QuantityInput<'length'>;
  /** Set before the pour, in baskets or on chairs, or drilled into concrete that is there. */
  readonly placing: 'basket' | 'drilled';
  /** Smooth dowels that slide, or deformed ties that hold; by default dowels. */
  readonly kind?: 'dowels' | 'ties';
  /** Ties only: their size; by default #4. */
  readonly bar?: BarName;
  /** What it is joined to, where that is there already. */
  readonly into?: 'slab' | 'footing' | 'wall';
  /** True where filler parts the two: an isolation joint, which ties cannot cross. */
  readonly isolation?: boolean;
  /** Ties only: from the joint to the nearest free edge, the width that the ties drag. */
  readonly freeWidth?: QuantityInput<'length'>;
  /** Ties only: by default 1.5. */
  readonly friction?: QuantityInput<'ratio'>;
  /** Ties only: working stress; by default 40,000 psi. */
  readonly stress?: QuantityInput<'pressure'>;
  /** Ties only: of the concrete that they drag; by default 150 pcf. */
  readonly unitWeight?: QuantityInput<'density'>;
  /** By default floors. */
  readonly table?: DowelTable;
  /** By default that of the table. */
  readonly diameter?: QuantityInput<'length'>;
  /** Length of a dowel; by default that of the table. */
  readonly length?: QuantityInput<'length'>;
  /** Center to center at most; by default that of the table. */
  readonly spacing?: QuantityInput<'length'>;
  /** From the end of the joint to the first dowel; by default half the spacing. */
  readonly endDistance?: QuantityInput<'length'>;
  /** How deep a drilled hole is; by default half the dowel. */
  readonly embedment?: QuantityInput<'length'>;
  /** Diameter of a drilled hole; by default 1/8 in more than the dowel. */
  readonly hole?: QuantityInput<'length'>;
  /** Epoxy lost, over what fills the holes; by default 25%. */
  readonly epoxyLoss?: QuantityInput<'ratio'>;
  /** Drilled only: what one cartridge of epoxy holds, where they are wanted. */
  readonly cartridge?: QuantityInput<'volume'>;
  /** Length of a basket as sold, where their number is wanted. */
  readonly basketLength?: QuantityInput<'length'>;
}

/** Figures of {@link dowelLayout}. */
export interface DowelLayoutFigures {
  /** Dowels or ties in the joint. */
  readonly dowels: Quantity<'count'>;
  /** Diameter of a dowel, given or from the table. */
  readonly diameter: Quantity<'length'>;
  /** Length of a dowel, given or from the table. */
  readonly length: Quantity<'length'>;
  /** The most that two dowels are apart. */
  readonly spacing: Quantity<'length'>;
  /** As it comes out with the dowels spread evenly; left out for a single dowel. */
  readonly evenSpacing?: Quantity<'length'>;
  /** From each end of the joint to the nearest dowel. */
  readonly endDistance: Quantity<'length'>;
  /** Ties only: their size. */
  readonly bar?: AnyBarSize;
  /** Ties only: the most that they may be apart to drag the width given. */
  readonly spacingMost?: Quantity<'length'>;
  /** Dowels as smooth round steel at 490 lb/ft3, ties by the table of their series. */
  readonly weight: Quantity<'mass'>;
  /** Concrete above and below a dowel at the middle of the slab. */
  readonly cover: Quantity<'length'>;
  /** Drilled only. */
  readonly embedment?: Quantity<'length'>;
  /** Drilled only. */
  readonly hole?: Quantity<'length'>;
  /** Drilled only, with what is lost. */
  readonly epoxy?: Quantity<'volume'>;
  /** Whole cartridges of it, where their size is given. */
  readonly cartridges?: Quantity<'count'>;
  /** Baskets, where their length is given. */
  readonly baskets?: Quantity<'count'>;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly thickness: Length;
  readonly joint: Length;
  readonly placing: 'basket' | 'drilled';
  readonly kind: 'dowels' | 'ties' | undefined;
  readonly bar: AnyBarSize | undefined;
  readonly into: 'slab' | 'footing' | 'wall' | undefined;
  readonly isolation: boolean | undefined;
  readonly freeWidth: Length | undefined;
  readonly friction: Quantity<'ratio'> | undefined;
  readonly stress: Quantity<'pressure'> | undefined;
  readonly unitWeight: Quantity<'density'> | undefined;
  readonly table: DowelTable | undefined;
  readonly diameter: Length | undefined;
  readonly length: Length | undefined;
  readonly spacing: Length | undefined;
  readonly endDistance: Length | undefined;
  readonly embedment: Length | undefined;
  readonly hole: Length | undefined;
  readonly epoxyLoss: Quantity<'ratio'> | undefined;
  readonly cartridge: Quantity<'volume'> | undefined;
  readonly basketLength: Length | undefined;
}

/** Inches: slabs up to this thickness (below it for pavements), diameter, length, spacing. */
type Row = readonly [thickness: string, diameter: string, length: string, spacing: string];

const FLOORS: readonly Row[] = [
  ['5', '0.625', '12', '12'],
  ['6', '0.75', '14', '12'],
  ['7', '0.875', '14', '12'],
  ['8', '1', '14', '12'],
  ['9', '1.125', '16', '12'],
  ['10', '1.25', '16', '12'],
];

/** Where the table gives a range of diameters the larger is taken. */
const PAVEMENTS: readonly Row[] = [
  ['8', '0.75', '16', '12'],
  ['12', '1', '16', '12'],
  ['16', '1.25', '20', '15'],
  ['21', '1.5', '20', '18'],
  ['26', '2', '24', '18'],
  ['1000', '3', '30', '18'],
];

/** Slabs that the tables are for, by both of their names. */
const THINNEST = {
  floors: /*#__PURE__*/ paired('length', '5 in', '125 mm'),
  pavements: /*#__PURE__*/ paired('length', '6 in', '150 mm'),
};
const THICKEST_FLOOR = /*#__PURE__*/ paired('length', '10 in', '250 mm');
const DOWEL_LIMIT: Limit = { of: 'the joint in dowels', most: 100_000 };
const BASKET_LIMIT: Limit = { of: 'the joint in baskets', most: 100_000 };
const HOLE_MORE = /*#__PURE__*/ paired('length', '1/8 in', '3 mm');
const LOSS = constant(() => ratio('25%'));
const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));

const SOURCES = { floors: DOWEL_FLOORS, pavements: DOWEL_PAVEMENTS } as const;

function rowFor(table: DowelTable, t: Length, pad: Pad): Row {
  const rows = table === 'floors' ? FLOORS : PAVEMENTS;
  const end =
    THINNEST[table].undercutBy(t) ?? (table === 'floors' ? THICKEST_FLOOR.exceededBy(t) : undefined);
  if (end) pad.caution(cautions.dowelOutOfTable(end, t, SOURCES[table]));
  const holds = ([inches]: Row): boolean => {
    const until = paired('length', `${inches} in`, `${Number(inches) * 25} mm`);
    return table === 'floors' ? !until.exceededBy(t) : t.lessThan(lesserOfPair(until));
  };
  return rows.find(holds) ?? (rows.at(-1) as Row);
}

/**
 * As the table in inches has it. In a metric job pavements get the millimeters that metric editions of their table
 * print, and floors the size that metric round steel is sold in.
 */
function inTable(inches: string, table: DowelTable, system: System): Length {
  if (system === 'customary') return length(`${inches} in`);
  const sold = table === 'floors' ? SOLD_SIZES[inches] : undefined;
  return length(`${sold ?? METRIC_SIZES[inches]} mm`);
}

/** Sizes of the table of floors as they are sold in millimeters, no thinner: common practice. */
const SOLD_SIZES: Readonly<Record<string, string>> = {
  '0.625': '16',
  '0.75': '20',
  '0.875': '25',
  '1': '25',
  '1.125': '30',
  '1.25': '32',
  '12': '300',
  '14': '350',
  '16': '400',
};

/** Inches of the tables as their metric editions round them, from memory. */
const METRIC_SIZES: Readonly<Record<string, string>> = {
  '0.625': '16',
  '0.75': '19',
  '0.875': '22',
  '1': '25',
  '1.125': '29',
  '1.25': '32',
  '1.5': '38',
  '2': '51',
  '3': '76',
  '12': '305',
  '14': '356',
  '15': '381',
  '16': '406',
  '18': '457',
  '20': '508',
  '24': '610',
  '30': '762',
};

interface Dowel {
  readonly diameter: Length;
  readonly length: Length;
  readonly spacing: Length;
}

function dowelOf(input: Parsed, pad: Pad): Dowel {
  const table = input.table ?? 'floors';
  const names = ['diameter', 'length', 'spacing'] as const;
  if (names.every((name) => input[name])) return input as Dowel;
  if (!input.table) {
    pad.assume({
      name: 'table',
      value: table,
      because: 'dowels for floors; heavy pavements have a table of their own',
      override: 'Give table, or diameter, length and spacing',
      source: DOWEL_FLOORS,
    });
  }
  const row = rowFor(table, input.thickness, pad);
  const found = names.map((name, i) => {
    const given = input[name];
    if (given) return given;
    const value = inTable(row[i + 1] as string, table, pad.system);
    pad.assume({
      name,
      value: { reckoned: value },
      because: say`the table for a slab of ${{ thickness: input.thickness }}`,
      override: say`Give ${{ name }} from the plans`,
      source: SOURCES[table],
    });
    return value;
  }) as [Length, Length, Length];
  return { diameter: found[0], length: found[1], spacing: found[2] };
}

function countDowels(input: Parsed, { spacing: s }: Dowel, pad: Pad): { n: Quantity<'count'>; c: Length } {
  const { joint: J } = input;
  const c = input.endDistance ?? s.over(TWO());
  if (!input.endDistance) {
    pad.assume({
      name: 'endDistance',
      value: { reckoned: c },
      because: 'half the spacing',
      override: 'Give endDistance from the plans',
      source: COMMON_PRACTICE,
    });
  }
  const room = J.minus(c.times(TWO()));
  if (room.sign() < 0) return refuse('endDistance', faults.doesNotFit('twice the end distance', 'the joint'));
  withinTimes(DOWEL_LIMIT, room.over(s), 'joint');
  const n = steadyCount(room.upTo(s).over(s)).plus(ONE());
  return { n: pad.step('dowels', 'n = ceil((J − 2 × c) ÷ s) + 1', { J, c, s }, n), c };
}

/** What lies between two of them where they are spread evenly. */
function evenly(J: Length, c: Length, n: Quantity<'count'>, pad: Pad): { evenSpacing?: Length } {
  const gaps = n.minus(ONE());
  if (gaps.sign() <= 0) return {};
  const even = J.minus(c.times(TWO())).over(gaps);
  return { evenSpacing: pad.step('spread evenly', 'e = (J − 2 × c) ÷ (n − 1)', { J, c, n }, even) };
}

interface Drilled {
  readonly embedment: Length;
  readonly hole: Length;
  readonly epoxy: Quantity<'volume'>;
  readonly cartridges?: Quantity<'count'>;
}

function assumeDrilled(input: Parsed, E: Length, H: Length, w: Quantity<'ratio'>, pad: Pad): void {
  const defaults = [
    ['embedment', E, 'half the dowel'],
    ['hole', H, say`${{ more: HOLE_MORE }} more than the dowel`],
    ['epoxyLoss', w, 'squeeze-out and what stays in the nozzle'],
  ] as const;
  for (const [name, value, because] of defaults) {
    if (input[name]) continue;
    const override = `Give ${name} as the maker of the epoxy says`;
    pad.assume({ name, value: { reckoned: value }, because, override, source: COMMON_PRACTICE });
  }
}

function drilled(input: Parsed, dowel: Dowel, n: Quantity<'count'>, pad: Pad): Drilled {
  const { diameter: d } = dowel;
  const E = input.embedment ?? dowel.length.over(TWO());
  const H = input.hole ?? d.plus(HOLE_MORE.as(pad.system));
  const w = input.epoxyLoss ?? LOSS();
  if (!E.lessThan(dowel.length)) refuse('embedment', faults.doesNotFit('the embedment', 'the dowel'));
  if (!d.lessThan(H)) refuse('hole', faults.doesNotFit('the dowel', 'its hole'));
  assumeDrilled(input, E, H, w, pad);
  const filled = ring(H, d, E).times(n);
  const epoxy = filled.plus(filled.times(w)).in(systemOfQuantity(H) === 'metric' ? 'mL' : 'fl oz');
  pad.step('epoxy', 'V = π × (H² − d²) ÷ 4 × E1 × n × (1 + w)', { H, d, E1: E, n, w }, epoxy);
  pad.caution(silica);
  const { cartridge } = input;
  const whole = cartridge && wholeUnits('cartridges of epoxy', epoxy, cartridge, 'cartridge', pad);
  return { embedment: E, hole: H, epoxy, ...(whole ? { cartridges: whole } : {}) };
}

function basketsOf({ joint: J, basketLength: B }: Parsed, pad: Pad): Quantity<'count'> | undefined {
  if (!B) return undefined;
  withinTimes(BASKET_LIMIT, J.over(B), 'basketLength');
  return pad.step('baskets', 'b = ceil(J ÷ B)', { J, B }, steadyCount(J.upTo(B).over(B)));
}

function checkDowel(input: Parsed, { diameter, spacing }: Dowel): void {
  if (!diameter.lessThan(input.thickness))
    refuse('diameter', faults.doesNotFit('the dowel', 'the thickness'));
  if (!diameter.lessThan(spacing)) refuse('spacing', faults.doesNotFit('the dowel', 'its spacing'));
}

const FOR_TIES = ['bar', 'freeWidth', 'friction', 'stress', 'unitWeight'] as const;
const FOR_DOWELS = ['table', 'diameter', 'basketLength'] as const;

/** Dowels and ties are asked different things. */
function checkKind(input: Parsed): void {
  const kind = input.kind ?? 'dowels';
  const others = kind === 'ties' ? FOR_DOWELS : FOR_TIES;
  const stray = others.find((name) => input[name] !== undefined);
  if (stray) refuse(stray, faults.giveOneOf([stray, `kind: ${kind}`]));
}

/** Smooth dowels by their section, ties by their table. */
function weightOfAll(dowel: Dowel | Tie, n: Quantity<'count'>, pad: Pad): Quantity<'mass'> {
  const { diameter: d, length: l } = dowel;
  if ('bar' in dowel) {
    const u = weightOf(dowel.bar);
    return pad.step('weight', 'M = n × l × u', { n, l, u }, l.times(u).times(n));
  }
  const weight = roundSteel(d, l).times(n);
  return pad.step('weight', 'M = π × d² ÷ 4 × l × n × D', { d, l, n, D: STEEL() }, weight);
}

function reckon(input: Parsed, pad: Pad): DowelLayoutFigures {
  checkKind(input);
  const ties = input.kind === 'ties';
  const dowel: Dowel | Tie = ties ? tieOf(input, pad) : dowelOf(input, pad);
  checkDowel(input, dowel);
  const { n, c } = countDowels(input, dowel, pad);
  const { diameter: d } = dowel;
  const weight = weightOfAll(dowel, n, pad);
  const t = input.thickness;
  const cover = pad.step('cover', 'k = (t − d) ÷ 2', { t, d }, t.minus(d).over(TWO()));
  const baskets = input.placing === 'basket' ? basketsOf(input, pad) : undefined;
  if (ties) heedTies(input, pad);
  else pad.caution(cautions.dowelsAligned);
  return {
    dowels: n,
    ...dowel,
    ...evenly(input.joint, c, n, pad),
    endDistance: c,
    weight,
    cover,
    ...(input.placing === 'drilled' ? drilled(input, dowel, n, pad) : {}),
    ...(baskets ? { baskets } : {}),
  };
}

/**
 * Dowels or ties across a joint: size, number, baskets, epoxy.
 *
 * @param input - thickness, joint, how they are placed; sizes where the plans give them
 * @returns count, size, weight, spacing, and epoxy with its cartridges or baskets
 * @throws {InputError} `does-not-fit` for a dowel, hole, embedment or end distance too large; `too-many`
 * dowels; lengths that cannot be read or are not greater than zero
 * @source ties: TM 5-822-5 and a street ordinance; their spacing by drag: a course on pavements. Dowels: Concrete Construction, dowels under lift trucks; UFC 3-260-02 table 12-8. Epoxy loss,
 * hole and end distance are common practice. The plans and the engineer govern
 * @example
 * ```ts
 * import { dowelLayout } from 'flatwork-reckoner';
 *
 * const { figures } = dowelLayout({ thickness: '6 in', joint: '18 ft', placing: 'drilled' });
 * figures.dowels.format(); // '18 each'
 * figures.diameter.format('in'); // '0.75 in'
 * ```
 */
export const dowelLayout: Calculation<DowelLayoutInput, DowelLayoutFigures> = /*#__PURE__*/ define({
  id: 'dowel-layout',
  title: 'Dowels and tie bars across a joint',
  version: 1,
  limits: [DOWEL_LIMIT, BASKET_LIMIT],
  sources: [DOWEL_FLOORS, DOWEL_PAVEMENTS, TIE_BARS, TIE_STEEL, CLOSED_FORM],
  input: () =>
    fields(
      {
        thickness: quantity('length', 'thickness', 'positive', usual.DOWELLED),
        joint: quantity('length', 'joint', 'positive', usual.JOINT),
        placing: choice('placing', ['basket', 'drilled'] as const),
        kind: maybe(choice('kind', ['dowels', 'ties'] as const)),
        bar: maybe(barField('bar')),
        into: maybe(choice('into', ['slab', 'footing', 'wall'] as const)),
        isolation: maybe(yesOrNo('isolation')),
        freeWidth: maybe(quantity('length', 'freeWidth', 'positive', usual.FREE_WIDTH)),
        friction: maybe(bareRatio('friction', 'positive', usual.FRICTION)),
        stress: maybe(quantity('pressure', 'stress', 'positive', usual.STRESS)),
        unitWeight: maybe(quantity('density', 'unitWeight', 'positive', usual.CONCRETE_DENSITY)),
        table: maybe(choice('table', ['floors', 'pavements'] as const)),
        diameter: maybe(quantity('length', 'diameter', 'positive', usual.DOWEL_DIAMETER)),
        length: maybe(quantity('length', 'length', 'positive', usual.DOWEL_LENGTH)),
        spacing: maybe(quantity('length', 'spacing', 'positive', usual.DOWEL_SPACING)),
        endDistance: maybe(quantity('length', 'endDistance', 'not-negative', usual.END)),
        embedment: maybe(quantity('length', 'embedment', 'positive', usual.EMBEDMENT)),
        hole: maybe(quantity('length', 'hole', 'positive', usual.HOLE)),
        epoxyLoss: maybe(quantity('ratio', 'epoxyLoss', 'not-negative', usual.EPOXY_LOSS)),
        cartridge: maybe(quantity('volume', 'cartridge', 'positive', usual.CARTRIDGE)),
        basketLength: maybe(quantity('length', 'basketLength', 'positive', usual.BASKET)),
      },
      where(says('kind', 'ties'), none(...FOR_DOWELS), none(...FOR_TIES)),
    ),
  reckon,
  takes: ({ diameter, length, bar }, { cartridge }) => [
    {
      item: bar ? 'tie-bar' : 'dowel',
      from: 'dowels',
      of: { bar, diameter: bar ? undefined : diameter, length },
    },
    { item: 'dowel-basket', from: 'baskets' },
    { item: 'epoxy', from: 'epoxy', of: { cartridge } },
  ],
});
