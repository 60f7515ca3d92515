/**
 * What is spread, sprayed and filled on a finished slab: curing compound, sealer, release, hardener, color, and what
 * goes into the joints.
 *
 * Liquids by what a measure of them covers, `V = A ÷ C × B × n`; powders by weight on an area, `M = A × r`; color by the
 * cement, `M = V × c × d`; sealant by the joint, `V = L × w × t`. Each with the allowance and in whole containers. A
 * coverage is never assumed: makers' data sheets tell it, and published ones, which lie far apart, stand beside.
 */
import { POUR } from '../pour/ordinary';
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { nextSize, sizesOf } from '../quantity/next-size';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import {
  choice,
  type Field,
  fields,
  list,
  maybe,
  quantity,
  whole,
  wholeNumber,
  yesOrNo,
} from '../reckoning/fields';
import { WASTE_ALLOWANCE } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import type { TakeNote } from '../reckoning/takes';
import { anyOf, given } from '../reckoning/together';
import { carried, wholeUnits } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import {
  CEMENT,
  CONTAINER,
  CONTAINER_MASS,
  COVERED,
  DOSE,
  FINISHED,
  JOINT_DEPTH,
  JOINT_LENGTH,
  JOINT_WIDTH,
  MEASURE,
  ROD,
  SPREAD,
} from './ordinary';
import { CARTRIDGES, CURING_PRACTICES, UFGS_CURING } from './sources';

/** A liquid that is sprayed, rolled or poured on. */
export interface LiquidInput {
  /** What it is. */
  readonly kind: 'curing-compound' | 'sealer' | 'release' | 'hardener' | 'retarder';
  /** The area that a measure of it covers in one coat, by its data sheet. */
  readonly covers: QuantityInput<'area'>;
  /** That measure: 1 gal, 1 L, or a pail of 5 gal. */
  readonly measure: QuantityInput<'volume'>;
  /** How many coats; by default one. */
  readonly coats?: number;
  /** What one container holds, where containers are wanted. */
  readonly container?: QuantityInput<'volume'>;
}

/** A powder that is cast on. */
export interface PowderInput {
  /** What it is. */
  readonly kind: 'hardener' | 'color' | 'release';
  /** Weight on an area, by its data sheet: 60 lb on 100 ft2 is 0.6 lb/ft2. */
  readonly rate: QuantityInput<'mass-per-area'>;
  /** What one container holds, where containers are wanted. */
  readonly container?: QuantityInput<'mass'>;
}

/** Color that is mixed into the concrete. */
export interface ColorInput {
  /** The concrete to be colored. */
  readonly volume: QuantityInput<'volume'>;
  /** Cement in it, and all that counts as cement. */
  readonly cement: QuantityInput<'density'>;
  /** Pigment for the cement, by weight. */
  readonly dose: QuantityInput<'ratio'>;
  /** What one container holds, where containers are wanted. */
  readonly container?: QuantityInput<'mass'>;
}

/** Joints to be filled with sealant. */
export interface FilledJointsInput {
  /** Length of all joints. */
  readonly length: QuantityInput<'length'>;
  /** Width of the joint. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the sealant, above the backer rod. */
  readonly depth: QuantityInput<'length'>;
  /** What one cartridge or pail holds, where they are wanted: `10.1 fl oz`, `300 mL`. */
  readonly container?: QuantityInput<'volume'>;
  /** Diameter of the backer rod; by default the next that is sold, a quarter thicker than the joint is wide. */
  readonly rod?: QuantityInput<'length'>;
}

/** Input of {@link finishMaterials}. */
export interface FinishMaterialsInput {
  /** Area of the finished slab. */
  readonly area: QuantityInput<'area'>;
  /** Added for waste, wind and overlap, `0%` or more. */
  readonly allowance: QuantityInput<'ratio'>;
  /** Liquids that go on it. */
  readonly liquids?: readonly LiquidInput[];
  /** Powders that are cast on it. */
  readonly powders?: readonly PowderInput[];
  /** Color that is mixed into the concrete. */
  readonly color?: ColorInput;
  /** Joints to be filled. */
  readonly sealant?: FilledJointsInput;
  /** True where the concrete is air-entrained, which a hard shake must not be troweled onto. */
  readonly airEntrained?: boolean;
}

/** So much of a liquid. */
export interface LiquidNeeded {
  /** What it is. */
  readonly kind: string;
  /** In all coats, with the allowance. */
  readonly volume: Quantity<'volume'>;
  /** Whole containers. */
  readonly containers?: Quantity<'count'>;
}

/** So much of a powder. */
export interface PowderNeeded {
  /** What it is. */
  readonly kind: string;
  /** With the allowance. */
  readonly mass: Quantity<'mass'>;
  /** Whole containers. */
  readonly containers?: Quantity<'count'>;
}

/** What published texts give for curing compound. */
export interface PublishedCoverage {
  /** Who asks it. */
  readonly of: 'UFGS 03372, two coats' | 'AASHTO M148, as tested' | 'Virginia, pavements';
  /** The area that {@link PublishedCoverage.measure} covers, all coats together. */
  readonly covers: Quantity<'area'>;
  /** The measure. */
  readonly measure: Quantity<'volume'>;
}

/** Figures of {@link finishMaterials}. */
export interface FinishMaterialsFigures {
  /** Liquids, in order. */
  readonly liquids?: readonly LiquidNeeded[];
  /** Powders, in order. */
  readonly powders?: readonly PowderNeeded[];
  /** Pigment that is mixed into the concrete. */
  readonly color?: PowderNeeded;
  /** Sealant in the joints. */
  readonly sealant?: LiquidNeeded;
  /** Backer rod: as long as the joints, with the allowance. */
  readonly backerRod?: Quantity<'length'>;
  /** Diameter of the rod, as it is sold: a quarter thicker than the joint is wide, or more, stays where it is pushed. */
  readonly rodDiameter?: Quantity<'length'>;
  /** Coverages of curing compound that published texts ask; they lie far apart, so none is assumed. */
  readonly publishedCoverages?: readonly PublishedCoverage[];
}

type Parsed = Read<FinishMaterialsInput>;
type Volume = Quantity<'volume'>;
type Mass = Quantity<'mass'>;
type Area = Quantity<'area'>;
type Length = Quantity<'length'>;
type Ratio = Quantity<'ratio'>;

const ONE = constant(() => ratio('1:1'));
const QUARTER_MORE = constant(() => ratio('1.25:1'));
/** Rods of closed-cell foam as they are sold. */
const RODS = sizesOf('1/4 3/8 1/2 5/8 3/4 7/8 1 1-1/4 1-1/2 2', '6 8 10 13 15 20 25 30 40 50');
/** Beads wider than this are kept this deep by the rod: common practice. */
const DEEP_ENOUGH = /*#__PURE__*/ paired('length', '1/2 in', '13 mm');
const MOST_COLOR = constant(() => ratio('10%'));
const GALLON = paired('volume', '1 gal', '1 L');
/** At which ASTM C309 has compounds tested. */
const TESTED = paired('area', '200 ft2', '5 m2');

const PUBLISHED = [
  ['UFGS 03372, two coats', paired('area', '200 ft2', '5 m2')],
  ['AASHTO M148, as tested', paired('area', '200 ft2', '4.9 m2')],
  ['Virginia, pavements', paired('area', '100 ft2', '2.45 m2')],
] as const;

/** Whole containers: what is opened is bought. */
function containersOf<D extends 'volume' | 'mass'>(
  what: string,
  needed: Quantity<D>,
  container: Quantity<D> | undefined,
  path: string,
  pad: Pad,
): { containers?: Quantity<'count'> } {
  if (!container) return {};
  return { containers: wholeUnits(`containers of ${what}`, needed, container, `${path}.container`, pad) };
}

interface Job {
  readonly A: Area;
  readonly a: Ratio;
}

function liquidOf(
  liquid: NonNullable<Parsed['liquids']>[number],
  i: number,
  { A, a }: Job,
  pad: Pad,
): LiquidNeeded {
  const { kind, covers: C, coats, container } = liquid;
  const B = liquid.measure;
  const n = coats ?? wholeNumber(1);
  if (!coats) {
    pad.assume({
      name: `liquids[${i}].coats`,
      value: n,
      because: 'no more are told',
      override: 'Give coats as the data sheet says',
      source: COMMON_PRACTICE,
    });
  }
  const V = A.over(C).times(n).times(ONE().plus(a));
  const volume = pad.step(
    say`${{ what: kind.replaceAll('-', ' ') }}`,
    'V = B × (A ÷ C) × n × (1 + a)',
    { B, A, C, n, a },
    B.times(V),
  );
  if (kind === 'curing-compound') heedCuring(C, B, n, pad);
  return {
    kind,
    volume,
    ...containersOf(kind.replaceAll('-', ' '), volume, container, `liquids[${i}]`, pad),
  };
}

/** Whether all coats together are as thick as compounds are tested. */
function heedCuring(covers: Area, measure: Volume, coats: Quantity<'count'>, pad: Pad): void {
  const each = (system: System): Area => covers.over(coats).times(GALLON.as(system).over(measure));
  // So much to the gallon and so much to the liter are two amounts: thin is what is thin by both.
  const isThin = (system: System): boolean => each(system).greaterThan(TESTED.as(system));
  if (isThin('customary') && isThin('metric'))
    pad.caution(cautions.thinCuring(TESTED.as(pad.system), each(pad.system)));
}

function powderOf(
  powder: NonNullable<Parsed['powders']>[number],
  i: number,
  { A, a }: Job,
  pad: Pad,
): PowderNeeded {
  const { kind, rate: r, container } = powder;
  const what = `${kind} cast on`;
  const mass = pad.step(
    say`${{ what }}`,
    'M = A × r × (1 + a)',
    { A, r, a },
    A.times(r).times(ONE().plus(a)),
  );
  return { kind, mass, ...containersOf(what, mass, container, `powders[${i}]`, pad) };
}

function colorOf(
  { volume: V, cement: c, dose: d, container }: NonNullable<Parsed['color']>,
  pad: Pad,
): PowderNeeded {
  const mass: Mass = pad.step('color in the concrete', 'M = V × c × d', { V, c, d }, V.times(c).times(d));
  if (d.greaterThan(MOST_COLOR())) pad.caution(cautions.muchColor(MOST_COLOR(), d));
  return { kind: 'color', mass, ...containersOf('color', mass, container, 'color', pad) };
}

function sealantOf(
  sealant: NonNullable<Parsed['sealant']>,
  a: Ratio,
  pad: Pad,
): Pick<FinishMaterialsFigures, 'sealant' | 'backerRod' | 'rodDiameter'> {
  const { length: L, width: w, depth: t, container, rod } = sealant;
  const unit = pad.system === 'metric' ? 'L' : 'gal';
  const full = L.times(w).times(t).times(ONE().plus(a)).in(unit);
  const volume = pad.step('sealant', 'V = L × w × t × (1 + a)', { L, w, t, a }, full);
  const most = deepestBead(w);
  if (t.greaterThan(most)) pad.caution(cautions.deepSealant(most, t));
  const rodDiameter = rodFor(w, rod, pad);
  return {
    sealant: { kind: 'sealant', volume, ...containersOf('sealant', volume, container, 'sealant', pad) },
    backerRod: pad.step('backer rod', 'R = L × (1 + a)', { L, a }, L.times(ONE().plus(a))),
    rodDiameter,
  };
}

/** A bead is no deeper than it is wide; a wide one no deeper than what is deep enough for any. */
function deepestBead(w: Length): Length {
  const enough = DEEP_ENOUGH.exceededBy(w);
  return enough ?? w;
}

/** The rod that is given, or the next that is sold. */
function rodFor(w: Length, given: Length | undefined, pad: Pad): Length {
  if (given) {
    if (!given.greaterThan(w)) pad.caution(cautions.thinRod(w, given));
    return given;
  }
  const k = QUARTER_MORE();
  const D = pad.step('a quarter thicker than the joint is wide', 'D = w × k', { w, k }, w.times(k));
  const next = nextSize(RODS, D, pad.system);
  pad.assume({
    name: 'sealant.rod',
    value: { reckoned: next },
    because: say`the next rod that is sold from ${{ least: D }} on`,
    override: 'Give sealant.rod, the diameter at hand',
    source: COMMON_PRACTICE,
  });
  return next;
}

function heed({ liquids = [], powders = [], color, sealant, airEntrained }: Parsed, pad: Pad): void {
  const cured = liquids.some(({ kind }) => kind === 'curing-compound');
  const sealed = sealant ?? liquids.some(({ kind }) => kind === 'sealer');
  if (cured && sealed) pad.caution(cautions.sealTooSoon);
  if (powders.length > 0 || color) pad.caution(cautions.dustyShake);
  if (airEntrained && powders.some(({ kind }) => kind === 'hardener')) pad.caution(cautions.shakeOnAir);
  if (liquids.length > 0 || sealant) pad.caution(cautions.readTheLabel);
}

/** What goes onto the slab and into its joints. */
const PARTS = ['liquids', 'powders', 'color', 'sealant'] as const;

function reckon(input: Parsed, pad: Pad): FinishMaterialsFigures {
  const { area: A, allowance: a, liquids, powders, color, sealant } = input;
  if (!PARTS.some((part) => input[part])) refuse('', faults.giveSomeOf(PARTS));
  const job = { A, a };
  const compound = liquids?.some(({ kind }) => kind === 'curing-compound');
  const figures = {
    ...(liquids ? { liquids: liquids.map((liquid, i) => liquidOf(liquid, i, job, pad)) } : {}),
    ...(powders ? { powders: powders.map((powder, i) => powderOf(powder, i, job, pad)) } : {}),
    ...(color ? { color: colorOf(color, pad) } : {}),
    ...(sealant ? sealantOf(sealant, a, pad) : {}),
    ...(compound
      ? {
          publishedCoverages: PUBLISHED.map(([of, covers]) => ({
            of,
            covers: covers.as(pad.system),
            measure: GALLON.as(pad.system),
          })),
        }
      : {}),
  };
  heed(input, pad);
  return figures;
}

function spreadAndSprayed(
  { liquids = [], powders = [], rodDiameter }: FinishMaterialsFigures,
  input: Parsed,
): TakeNote[] {
  return [
    ...liquids.map(
      ({ kind }, i): TakeNote => ({
        item: 'liquid',
        from: `liquids[${i}].volume`,
        of: { kind, container: input.liquids?.[i]?.container },
      }),
    ),
    ...powders.map(
      ({ kind }, i): TakeNote => ({
        item: 'powder',
        from: `powders[${i}].mass`,
        of: { kind, container: input.powders?.[i]?.container },
      }),
    ),
    { item: 'color', from: 'color.mass', of: { container: input.color?.container } },
    { item: 'sealant', from: 'sealant.volume', of: { container: input.sealant?.container } },
    { item: 'backer-rod', from: 'backerRod', of: { diameter: rodDiameter } },
  ];
}

function door(): Field<Parsed> {
  return fields(
    {
      area: quantity('area', 'area', 'positive', FINISHED),
      allowance: quantity('ratio', 'allowance', 'not-negative', WASTE_ALLOWANCE),
      liquids: maybe(
        list(
          fields({
            kind: choice('kind', ['curing-compound', 'sealer', 'release', 'hardener', 'retarder'] as const),
            covers: quantity('area', 'covers', 'positive', COVERED),
            measure: quantity('volume', 'measure', 'positive', MEASURE),
            coats: maybe(whole('coats', 1, 10)),
            container: maybe(quantity('volume', 'container', 'positive', CONTAINER)),
          }),
          1,
          20,
        ),
      ),
      powders: maybe(
        list(
          fields({
            kind: choice('kind', ['hardener', 'color', 'release'] as const),
            rate: quantity('mass-per-area', 'rate', 'positive', SPREAD),
            container: maybe(quantity('mass', 'container', 'positive', CONTAINER_MASS)),
          }),
          1,
          20,
        ),
      ),
      color: maybe(
        fields({
          volume: quantity('volume', 'volume', 'positive', POUR),
          cement: quantity('density', 'cement', 'positive', CEMENT),
          dose: quantity('ratio', 'dose', 'positive', DOSE),
          container: maybe(quantity('mass', 'container', 'positive', CONTAINER_MASS)),
        }),
      ),
      sealant: maybe(
        fields({
          length: quantity('length', 'length', 'positive', JOINT_LENGTH),
          width: quantity('length', 'width', 'positive', JOINT_WIDTH),
          depth: quantity('length', 'depth', 'positive', JOINT_DEPTH),
          container: maybe(quantity('volume', 'container', 'positive', CONTAINER)),
          rod: maybe(quantity('length', 'rod', 'positive', ROD)),
        }),
      ),
      airEntrained: maybe(yesOrNo('airEntrained')),
    },
    anyOf(...PARTS.map((part) => given(part))),
  );
}

/**
 * What goes onto a finished slab and into its joints, in whole containers.
 *
 * @param input - area and allowance; liquids, powders, color and joints, each as its data sheet tells
 * @returns each with the allowance, and what published texts ask of curing compound
 * @throws {InputError} `give-one-of` where nothing is given; `too-many` containers; quantities that cannot be read or are not greater than zero
 * @source arithmetic; published coverages of curing compound from UFGS 03372 and a survey of the National Academies
 * @example
 * ```ts
 * import { finishMaterials } from 'flatwork-reckoner';
 *
 * const { figures } = finishMaterials({
 *   area: '504 ft2',
 *   allowance: '10%',
 *   liquids: [{ kind: 'curing-compound', covers: '200 ft2', measure: '1 gal', coats: 1, container: '5 gal' }],
 * });
 * figures.liquids?.[0]?.volume.format(); // '2.77 gal'
 * figures.liquids?.[0]?.containers?.format(); // '1 each'
 * ```
 */
export const finishMaterials: Calculation<FinishMaterialsInput, FinishMaterialsFigures> =
  /*#__PURE__*/ define({
    id: 'finish-materials',
    title: 'Curing, sealing and coloring',
    version: 1,
    sources: [UFGS_CURING, CURING_PRACTICES, CARTRIDGES],
    limits: [carried('containers of one material')],
    input: door,
    reckon,
    takes: spreadAndSprayed,
  });
