/**
 * What the concrete has to be for its use and exposure: strength, water, air, stone, slump; and whether a mix
 * that is offered is that.
 *
 * Each code and standard that speaks for the units of the job is shown. The strictest governs, or the one
 * that is named: `f = max(f₁, f₂, …)`, `w = min(w₁, w₂, …)`. Slump by the table of ACI 211.1: 1 in to 3 in for slabs,
 * and 1 in more where it is not vibrated.
 */

import { AGGREGATE_SIZE, SLUMP } from '../joints/ordinary';
import { greaterOf, lesserOf } from '../quantity/greater';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { strength as concreteStrength } from '../reckoning/concrete-strength';
import { choice, fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { stoneSize } from '../reckoning/stone-size';
import type { Words } from '../reckoning/words';
import type { Air } from './air';
import { heedAir } from './air-heeded';
import * as cautions from './cautions';
import {
  type FrostClass,
  frostClass,
  isExposed,
  MIX_USES,
  type MixUse,
  SULFATES,
  type Sulfate,
  WEATHERINGS,
  type Weathering,
} from './exposure';
import * as faults from './faults';
import { AIR, REPLACED, STRENGTH } from './ordinary';
import { heedReplaced } from './replaced';
import type { MixStandard } from './rule-row';
import { SLUMP_CLASSES, type SlumpClass, slumpsOf } from './slump';
import {
  ACI_318,
  ACI_332,
  AIR_TABLE,
  AIR_TOLERANCE,
  AS_3600,
  BS_8500,
  CSA_A23,
  DIN_1045_2,
  EN_206,
  IBC_NONSTRUCTURAL,
  IRC_STRENGTH,
  PCA_CLASSES,
  SCALING_ANSWER,
  SLUMP_TABLE,
  UFGS_AIR,
} from './sources';
import { MIX_STANDARDS, type MixBySource, ruleName, rulesFor } from './standards';
import { waterCement } from './water-cement';

/** A mix as a supplier offers it. */
export interface MixOfferInput {
  /** Strength at 28 days, of cylinders, or a class as `C30/37` or `N32`. */
  readonly strength: QuantityInput<'pressure'>;
  /** Air in all; `0%` for a mix without. */
  readonly airContent?: QuantityInput<'ratio'>;
  /** Water to cementitious material by mass, `0.45`. */
  readonly waterCement?: QuantityInput<'ratio'>;
  /** Slump as delivered. */
  readonly slump?: QuantityInput<'length'>;
  /** Fly ash, as a share of all that counts as cement. */
  readonly flyAsh?: QuantityInput<'ratio'>;
  /** Ground slag, as such a share. */
  readonly slag?: QuantityInput<'ratio'>;
  /** Silica fume, as such a share. */
  readonly silicaFume?: QuantityInput<'ratio'>;
}

/** Input of {@link mixRequirements}. */
export interface MixRequirementsInput {
  /** What is poured. */
  readonly use: MixUse;
  /** How hard the weather is on concrete there: negligible where it hardly freezes, severe where winters are wet and salted. */
  readonly weathering: Weathering;
  /** Whether salt comes to it, spread or dripping from cars. */
  readonly deicers?: boolean;
  /** Largest size of the stone, nominal; as a length, by its size number `#57` or by its sieves `4/20`. */
  readonly aggregateSize: QuantityInput<'length'>;
  /** Sulfate in the soil or the water, by a test. By default none. */
  readonly sulfate?: Sulfate;
  /** True where water must not come through, as below a floor covering that suffers by damp. */
  readonly lowPermeability?: boolean;
  /** True where the steel in it carries loads. */
  readonly reinforced?: boolean;
  /** How the top is finished. */
  readonly finish?: 'broom' | 'float' | 'hard-trowel' | 'stamp' | 'exposed-aggregate';
  /** True where it is consolidated by a vibrator or a vibrating screed; the slump is an inch less. */
  readonly vibrated?: boolean;
  /** Class of the slump by EN 206, where one is called for: S3 is 100 mm to 150 mm. It goes before that of the use. */
  readonly slumpClass?: SlumpClass;
  /** Thickness of the slab, or of the wall between its forms, where the stone is to be judged by it. */
  readonly thickness?: QuantityInput<'length'>;
  /**
   * The code or standard that governs; by default `strictest`: of those for the units of the job. `bs-8500`,
   * `din-1045-2` and `as-3600` speak for one country each, and only where they are named.
   */
  readonly standard?: 'strictest' | MixStandard;
  /** A mix that a supplier offers, to be judged. */
  readonly offered?: MixOfferInput;
}

interface Slumps {
  /** Class of the slump, where one was called for. */
  readonly slumpClass?: SlumpClass;
  /** Slump as delivered, or less. */
  readonly slump: Quantity<'length'>;
  /** The least slump that can be placed and closed, or that of the class. */
  readonly leastSlump: Quantity<'length'>;
}

/** What to ask of the supplier. */
export interface MixAskedFigures extends Slumps {
  /** Strength at 28 days, or more. */
  readonly strength: Quantity<'pressure'>;
  /** How the standard writes that strength, where it has a way of its own. */
  readonly strengthClass?: string;
  /** Largest size of the stone. */
  readonly aggregateSize: Quantity<'length'>;
  /** Air in all; left out where none is asked for, and none is too much. */
  readonly airContent?: Air;
  /** Water to cementitious material by mass, or less; left out where no source limits it. */
  readonly waterCement?: Quantity<'ratio'>;
}

/** Figures of {@link mixRequirements}. */
export interface MixRequirementsFigures {
  /** What to read to the supplier. */
  readonly ask: MixAskedFigures;
  /** Frost, water and salt: F0 does not freeze, F1 freezes while little wet, F2 wet, F3 wet and salted. */
  readonly frostClass: FrostClass;
  /** The rule that asks most strength. */
  readonly strengthBy: Words;
  /** The rule that allows least water. */
  readonly waterCementBy?: Words;
  /** Whether the mix that is offered will do, as far as it is told. */
  readonly offerFits?: boolean;
  /** What each code, standard or text asks; they disagree. */
  readonly bySource: readonly MixBySource[];
}

type Parsed = Read<MixRequirementsInput>;
type Offer = NonNullable<Parsed['offered']>;
type Ratio = Quantity<'ratio'>;

const SLUMP_SLAB = paired('length', '3 in', '75 mm');
const SLUMP_WALL = paired('length', '4 in', '100 mm');
const SLUMP_LEAST = paired('length', '1 in', '25 mm');
const BY_HAND = paired('length', '1 in', '25 mm');
const NO_AIR = constant(() => ratio('0%'));
const TROWELED_MOST = constant(() => ratio('3%'));

/** The least and the most slump: those of a class that is called for, else those of the use. */
function slumpFor({ use, vibrated, slumpClass }: Parsed, pad: Pad): Slumps {
  if (slumpClass) {
    const [leastSlump, slump] = slumpsOf(slumpClass, pad.system);
    return { slumpClass, slump, leastSlump };
  }
  const leastSlump = SLUMP_LEAST.as(pad.system);
  if (vibrated === undefined) {
    pad.assume({
      name: 'vibrated',
      value: 'no',
      because: 'flatwork is mostly struck off by hand',
      override: 'Give vibrated as true for a vibrating screed',
      source: COMMON_PRACTICE,
    });
  }
  const s = (use === 'wall' ? SLUMP_WALL : SLUMP_SLAB).as(pad.system);
  if (vibrated) return { slump: s, leastSlump };
  const h = BY_HAND.as(pad.system);
  return { slump: pad.step('slump at most', 'm = s + h', { s, h }, s.plus(h)), leastSlump };
}

type Pick<D extends 'pressure' | 'ratio'> = (rule: MixBySource) => Quantity<D> | undefined;

/** The rule that is tightest of those that say anything, with the step that shows it. */
function tightest<D extends 'pressure' | 'ratio'>(
  what: string,
  symbol: string,
  rules: readonly MixBySource[],
  of: Pick<D>,
  pad: Pad,
): MixBySource | undefined {
  const saying = rules.filter((rule) => of(rule) !== undefined);
  if (saying.length === 0) return undefined;
  const most = symbol === 'f';
  const q = (rule: MixBySource): Quantity<D> => of(rule) as Quantity<D>;
  const found = saying.reduce((a, b) => ((most ? q(b).greaterThan(q(a)) : q(b).lessThan(q(a))) ? b : a));
  const values = Object.fromEntries(saying.map((rule, i) => [`${symbol}${i + 1}`, q(rule)]));
  const formula = `${symbol} = ${most ? 'max' : 'min'}(${Object.keys(values).join(', ')})`;
  pad.step(what, formula, values, q(found));
  return found;
}

function governing(input: Parsed, all: readonly MixBySource[], pad: Pad): MixBySource[] {
  const { standard } = input;
  const valid = all.filter(({ applies }) => applies);
  if (!standard) {
    pad.assume({
      name: 'standard',
      value: 'strictest',
      because: 'codes and standards disagree, and what meets the strictest of those shown meets them all',
      override: 'Give standard as your building department or the plans name it',
      source: COMMON_PRACTICE,
    });
  }
  if (!standard || standard === 'strictest') return valid;
  const own = valid.filter((rule) => rule.standard === standard);
  const choices = [...new Set(valid.map((rule) => rule.standard as string))];
  return own.length > 0 ? own : refuse('standard', faults.noRuleOf(standard, choices));
}

const airBy = (target: Ratio | undefined, minimum: Ratio, maximum: Ratio | undefined): Air => ({
  ...(target ? { target } : {}),
  minimum,
  ...(maximum ? { maximum } : {}),
});

/** What to aim at: at the end of a range every other load misses it, so then its middle. */
function aimWithin(aim: Ratio, minimum: Ratio, maximum: Ratio | undefined): Ratio {
  if (!maximum) return greaterOf(aim, minimum);
  const inside = aim.greaterThan(minimum) && aim.lessThan(maximum);
  return inside ? aim : minimum.plus(maximum).over(wholeNumber(2));
}

/** The air to ask for: within every range that governs, at what one of them says to aim at. */
function airOf(rules: readonly MixBySource[], input: Parsed): Air | undefined {
  if (input.finish === 'hard-trowel' && !isExposed(input.use)) return undefined;
  const saying = rules.filter(({ minimumAir }) => minimumAir);
  const first = saying.find(({ airTarget }) => airTarget) ?? saying[0];
  if (!first?.minimumAir) return undefined;
  const minimum = saying.reduce((q, r) => greaterOf(q, r.minimumAir as Ratio), first.minimumAir);
  const maxima = saying.flatMap(({ maximumAir }) => maximumAir ?? []);
  const maximum = maxima.length > 0 ? maxima.reduce((a, b) => lesserOf(a, b)) : undefined;
  // Ranges that do not meet cannot all be kept: then the one that says what to aim at counts.
  if (maximum?.lessThan(minimum)) return airBy(first.airTarget, first.minimumAir, first.maximumAir);
  return airBy(first.airTarget && aimWithin(first.airTarget, minimum, maximum), minimum, maximum);
}

/** Nothing asks for air: then a hard trowel asks for little. */
const troweledAir = ({ finish }: Parsed): Air | undefined =>
  finish === 'hard-trowel' ? { minimum: NO_AIR(), maximum: TROWELED_MOST() } : undefined;

interface Judged {
  readonly input: Parsed;
  readonly ask: MixAskedFigures;
  readonly frost: FrostClass;
  readonly source: Source;
}

function judgeTroweled(air: Quantity<'ratio'>, { finish }: Parsed, pad: Pad): boolean {
  if (finish !== 'hard-trowel' || !air.greaterThan(TROWELED_MOST())) return true;
  pad.caution(cautions.troweledAir(TROWELED_MOST(), air));
  return false;
}

function judgeAir({ airContent: air }: Offer, { input, ask, frost, source }: Judged, pad: Pad): boolean {
  if (!ask.airContent || ask.airContent.minimum.sign() === 0) return !air || judgeTroweled(air, input, pad);
  const { minimum, maximum } = ask.airContent;
  const scales = frost === 'F2' || frost === 'F3';
  return heedAir(air, { minimum, maximum, scales, when: 'offered', source }, pad);
}

function judge(offer: Offer, judged: Judged, rules: readonly Source[], pad: Pad): boolean {
  const { ask } = judged;
  const [byStrength, byWater] = rules as [Source, Source];
  let fits = judgeAir(offer, judged, pad);
  if (judged.frost === 'F3' && !heedReplaced(offer, pad)) fits = false;
  if (offer.strength.lessThan(ask.strength)) {
    pad.caution(cautions.weakMix('offered', ask.strength, offer.strength, byStrength));
    fits = false;
  }
  if (offer.waterCement && ask.waterCement && offer.waterCement.greaterThan(ask.waterCement)) {
    pad.caution(cautions.wetMix(ask.waterCement, offer.waterCement, byWater));
    fits = false;
  }
  if (offer.slump?.greaterThan(ask.slump)) {
    pad.caution(cautions.highSlump('offered', ask.slump, offer.slump));
    fits = false;
  }
  return fits;
}

/** Whether the stone goes into the slab, or between the forms of a wall. */
function heedStone({ use, thickness: t, aggregateSize: d }: Parsed, pad: Pad): void {
  if (!t) return;
  const [part, large] = use === 'wall' ? [5, cautions.largeStoneInWall] : [3, cautions.largeStone];
  const most = t.over(wholeNumber(part));
  if (d.greaterThan(most)) pad.caution(large(most, d));
}

/** People walk on these in the rain. */
const WALKED_WET: readonly MixUse[] = ['driveway', 'walk', 'patio', 'steps'];

/** A hard trowel where it freezes, or where rain makes its skin slick. */
function heedTrowel({ use, finish }: Parsed, frost: FrostClass, pad: Pad): void {
  if (finish !== 'hard-trowel') return;
  if (frost !== 'F0') pad.caution(use === 'garage-floor' ? cautions.troweledGarage : cautions.outdoorTrowel);
  else if (WALKED_WET.includes(use)) pad.caution(cautions.slickFinish);
}

const replaced = (what: string) => maybe(quantity('ratio', what, 'not-negative', REPLACED));

const SOURCES: readonly Source[] = [
  IRC_STRENGTH,
  IBC_NONSTRUCTURAL,
  ACI_332,
  ACI_318,
  EN_206,
  BS_8500,
  DIN_1045_2,
  AS_3600,
  CSA_A23,
  AIR_TABLE,
  AIR_TOLERANCE,
  UFGS_AIR,
  PCA_CLASSES,
  SCALING_ANSWER,
  SLUMP_TABLE,
];

const sourceOf = (rule: MixBySource | undefined): Source =>
  SOURCES.find(({ title }) => title === rule?.source) ?? AIR_TABLE;

function reckon(input: Parsed, pad: Pad): MixRequirementsFigures {
  const frost = frostClass(input, pad);
  const sulfate = input.sulfate ?? 'none';
  const bySource = rulesFor({
    use: input.use,
    weathering: input.weathering,
    frost,
    sulfate,
    tight: input.lowPermeability ?? false,
    reinforced: input.reinforced ?? false,
    stone: input.aggregateSize,
    system: pad.system,
    standard: input.standard,
  });
  const rules = governing(input, bySource, pad);
  const strong = tightest('strength', 'f', rules, (r) => r.strength, pad) as MixBySource;
  const dry = tightest('water to cement', 'w', rules, (r) => r.waterCement, pad);
  const air = airOf(rules, input) ?? troweledAir(input);
  const ask: MixAskedFigures = {
    strength: strong.strength as Quantity<'pressure'>,
    ...(strong.strengthClass ? { strengthClass: strong.strengthClass } : {}),
    aggregateSize: input.aggregateSize,
    ...(air ? { airContent: air } : {}),
    ...(dry?.waterCement ? { waterCement: dry.waterCement } : {}),
    ...slumpFor(input, pad),
  };
  heedStone(input, pad);
  if (sulfate !== 'none') pad.caution(cautions.sulfateCement);
  heedTrowel(input, frost, pad);
  const judged = { input, ask, frost, source: AIR_TABLE };
  const offerFits = input.offered && judge(input.offered, judged, [sourceOf(strong), sourceOf(dry)], pad);
  return {
    ask,
    frostClass: frost,
    strengthBy: ruleName(strong),
    ...(dry ? { waterCementBy: ruleName(dry) } : {}),
    ...(offerFits === undefined ? {} : { offerFits }),
    bySource,
  };
}

/**
 * What the concrete has to be for its use and exposure.
 *
 * @param input - use, weathering and stone; deicers, sulfate, finish, the standard that governs, and a mix to judge
 * @returns what to read to the supplier, and what each source asks
 * @throws {InputError} `not-served` for a standard that has no rule here; quantities that cannot be read or
 * are not greater than zero
 * @source International Residential Code, R402.2; ACI 332 and 318; EN 206; CSA A23.1; air by ACI 211.1
 * @example
 * ```ts
 * import { mixRequirements } from 'flatwork-reckoner';
 *
 * const { figures } = mixRequirements({ use: 'driveway', weathering: 'severe', aggregateSize: '3/4 in' });
 * figures.ask.strength.format(); // '4500 psi'
 * figures.ask.airContent?.target?.format(); // '6%'
 * figures.ask.slump.format(); // '4 in'
 * ```
 */
export const mixRequirements: Calculation<MixRequirementsInput, MixRequirementsFigures> =
  /*#__PURE__*/ define({
    id: 'mix-requirements',
    title: 'What the concrete has to be',
    version: 1,
    sources: SOURCES,
    input: () =>
      fields({
        use: choice('use', MIX_USES),
        weathering: choice('weathering', WEATHERINGS),
        deicers: maybe(yesOrNo('deicers')),
        aggregateSize: stoneSize('aggregateSize', AGGREGATE_SIZE),
        sulfate: maybe(choice('sulfate', SULFATES)),
        lowPermeability: maybe(yesOrNo('lowPermeability')),
        reinforced: maybe(yesOrNo('reinforced')),
        finish: maybe(
          choice('finish', ['broom', 'float', 'hard-trowel', 'stamp', 'exposed-aggregate'] as const),
        ),
        vibrated: maybe(yesOrNo('vibrated')),
        slumpClass: maybe(choice('slumpClass', SLUMP_CLASSES)),
        thickness: maybe(quantity('length', 'thickness', 'positive', SLAB_THICKNESS)),
        standard: maybe(choice('standard', ['strictest', ...MIX_STANDARDS] as const)),
        offered: maybe(
          fields({
            strength: concreteStrength('strength', STRENGTH),
            airContent: maybe(quantity('ratio', 'airContent', 'not-negative', AIR)),
            waterCement: maybe(waterCement('waterCement')),
            slump: maybe(quantity('length', 'slump', 'positive', SLUMP)),
            flyAsh: replaced('flyAsh'),
            slag: replaced('slag'),
            silicaFume: replaced('silicaFume'),
          }),
        ),
      }),
    reckon,
  });
