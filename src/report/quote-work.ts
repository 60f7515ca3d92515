/** What is done at each element of a job, in words for a customer: sizes and quantities, no trade terms. */
import { ITEM_PARTS } from '../job/item-parts';
import type { ReckonedJob } from '../job/job-takeoff';
import type { ElementPart } from '../job/part-inputs';
import { nameOf } from '../job/priced';
import type { Purchase } from '../job/purchases';
import type { JobPart } from '../job/work';
import type { Dimension } from '../quantity/dimensions';
import { constant } from '../quantity/make';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { wholeNumber } from '../reckoning/fields';
import { figureAt } from '../reckoning/takes';
import { say, type Words } from '../reckoning/words';
import { lineName } from './line-name';

/** What becomes of the earth that is dug: it is taken away, all of it or what is not filled in again, where that is priced. */
interface Earth {
  readonly goes: boolean;
  readonly fillsIn: boolean;
}

/** A part with what is asked of it here. */
interface Asked {
  readonly earth: Earth;
  /** A figure of the result, by its path. */
  readonly figure: (name: string) => Quantity | undefined;
  /** A quantity of the input, as it was given. */
  readonly given: <D extends Dimension>(name: string, d: D) => Quantity<D> | undefined;
  /** Anything of the input. */
  readonly input: Readonly<Record<string, unknown>>;
}

function asked({ input, result }: JobPart, earth: Earth): Asked {
  return {
    earth,
    figure: (name) => {
      const found = figureAt(result.figures, name);
      return isQuantity(found) ? found : undefined;
    },
    given: (name, d) => {
      const q = readQuantity(input[name], d, name);
      return isFaulty(q) ? undefined : q;
    },
    input,
  };
}

/** How large a rectangle is by its sides; other outlines by their area alone. */
function sides({ outline }: Asked['input']): Words | undefined {
  const of = outline as { shape?: unknown; length?: unknown; width?: unknown } | undefined;
  if (of?.shape !== 'rectangle') return undefined;
  const [length, width] = [
    readQuantity(of.length, 'length', 'length'),
    readQuantity(of.width, 'length', 'width'),
  ];
  return isFaulty(length) || isFaulty(width) ? undefined : say`${{ length }} by ${{ width }}`;
}

type Tell = (asked: Asked) => Words | undefined;

const digging: Tell = ({ figure, given, input, earth }) => {
  const [volume, depth] = [figure('bankVolume'), given('depth', 'length')];
  if (!volume) return undefined;
  const how = depth
    ? say`Dig out ${{ depth }} deep, ${{ volume }} of earth`
    : say`Dig out ${{ volume }} of earth`;
  if (!earth.goes && input['haul'] === undefined) return how;
  return earth.fillsIn
    ? say`${how}, and take away what is not filled in again`
    : say`${how}, and take it away`;
};

const gravel: Tell = ({ figure }) => {
  const [depth, area] = [figure('depth'), figure('area')];
  return depth && area ? say`Lay ${{ depth }} of gravel on ${{ area }} and compact it` : undefined;
};

const fall: Tell = ({ figure, input }) => {
  const [slope, drop] = [figure('slope'), figure('fall')];
  if (!slope || !drop || slope.sign() <= 0) return undefined;
  return input['atBuilding'] === undefined
    ? say`Slope it so that water runs off: it falls ${{ drop }} in all`
    : say`Slope it so that water runs away from the building: it falls ${{ drop }} in all`;
};

const slab: Tell = ({ figure, given, input }) => {
  const [area, thickness] = [figure('area'), given('thickness', 'length')];
  if (!area) return undefined;
  const by = sides(input);
  const large = by ? say`Pour a slab of ${by}, ${{ area }}` : say`Pour a slab of ${{ area }}`;
  if (thickness) return say`${large}, ${{ thickness }} thick`;
  const [least, most] = [figure('thinnest.thickness'), figure('thickest.thickness')];
  return least && most ? say`${large}, ${{ least }} to ${{ most }} thick` : large;
};

const steps: Tell = ({ figure, given }) => {
  const [rise, width] = [figure('totalRise'), given('width', 'length')];
  if (!rise) return undefined;
  return width
    ? say`Form and pour steps ${{ width }} wide that rise ${{ rise }}`
    : say`Form and pour steps that rise ${{ rise }}`;
};

/** A body that a customer knows by its name and how much concrete is in it. */
const body =
  (words: (volume: { readonly volume: Quantity }) => Words): Tell =>
  ({ figure }) => {
    const volume = figure('volume');
    return volume ? words({ volume }) : undefined;
  };

const bars: Tell = ({ given, input }) => {
  const { bar } = input;
  const spacing = given('spacing', 'length');
  return typeof bar === 'string' && spacing
    ? say`Reinforce it with steel bars ${{ bar }}, ${{ spacing }} apart`
    : say`Reinforce it with steel bars`;
};

const joints: Tell = ({ figure }) => {
  const [panels, length, along] = [figure('panelCount'), figure('contraction'), figure('isolation')];
  const meets = along && along.sign() > 0 && { along };
  if (!panels || !length || length.sign() === 0)
    return meets ? say`Set a soft joint of ${meets} where it meets what stands` : undefined;
  const cut = say`Cut ${{ length }} of joints into it, ${{ panels }} panels, so that it cracks in them and not beside them`;
  return meets ? say`${cut}; set a soft joint of ${meets} where it meets what stands` : cut;
};

const fixed =
  (says: string): Tell =>
  () => ({ says });

function backfill({ figure }: Asked): Words | undefined {
  const [topsoil, seed] = [figure('topsoil'), figure('seed')];
  if (topsoil && seed) return { says: 'Fill in along the edges, spread topsoil and seed it' };
  if (topsoil) return { says: 'Fill in along the edges and spread topsoil' };
  return { says: seed ? 'Fill in along the edges and seed' : 'Fill in along the edges' };
}

/** By the name of the part, in the order of the work. */
const TELLS: Readonly<Partial<Record<ElementPart, Tell>>> = {
  excavation: digging,
  base: gravel,
  retarder: fixed('Lay a sheet against damp and tape its seams'),
  slab,
  steps,
  footings: body((volume) => say`Pour footings with ${volume} of concrete`),
  walls: body((volume) => say`Form and pour walls with ${volume} of concrete`),
  piers: body((volume) => say`Pour piers with ${volume} of concrete`),
  curb: body((volume) => say`Form and pour curb with ${volume} of concrete`),
  bars,
  mesh: fixed('Reinforce it with welded wire mesh'),
  fibers: fixed('Mix fibers into the concrete'),
  dowels: fixed('Tie it with steel dowels to the concrete beside it'),
  fall,
  joints,
  finish: ({ input }) => ({
    says: input['color'] === undefined ? 'Cure and treat its surface' : 'Color, cure and treat its surface',
  }),
  backfill,
};

/** What is done at one element. */
export interface ElementWork {
  readonly name: string;
  readonly does: readonly Words[];
}

/** The concrete that an element is poured of, as the supplier is asked for it. */
function concreteOf({ takeoff }: ReckonedJob, name: string): Words[] {
  const bought = takeoff.figures.purchases.find(
    ({ item, by }) =>
      ['ready-mix', 'bagged-mix', 'concrete'].includes(item) && by.some(({ element }) => element === name),
  );
  const strength = bought?.of['strengthClass'] ?? bought?.of['strength'];
  return strength === undefined ? [] : [say`Concrete of a strength of ${{ strength }}`];
}

/** Whether a check of the fall came out well: what does not drain is not promised to. */
const isPromised = ({ part, result }: JobPart): boolean =>
  part !== 'fall' || !result.cautions.some(({ severity }) => severity !== 'note');

/** What is bought and has no price yet, by the names of its lines in the bid. */
type Unpriced = readonly Purchase[];

/** Whether a thing may come of this part: of several parts that take such things, of those here that do. */
function isTaken({ item }: Purchase, part: JobPart, own: readonly JobPart[]): boolean {
  if (!(ITEM_PARTS[item] as readonly string[]).includes(part.part)) return false;
  const takes = (one: JobPart): boolean => one.result.takes.some((take) => take.item === item);
  return takes(part) || !own.some(takes);
}

/** Of what has no price yet, that which this work takes. */
const stillToPrice = (part: JobPart, own: readonly JobPart[], unpriced: Unpriced): string[] =>
  unpriced
    .filter((line) => line.by.some(({ element }) => element === part.element) && isTaken(line, part, own))
    .map(nameOf);

/** Work as it is told, and what of it the price does not have in it yet. */
function withUnpriced(work: Words, part: JobPart, own: readonly JobPart[], unpriced: Unpriced): Words {
  const names = stillToPrice(part, own, unpriced);
  if (names.length === 0) return work;
  return say`${{ work }} (not in the price yet: ${{ lines: names.map(lineName) }})`;
}

const ONE = constant(() => wholeNumber(1));

/** How much of a thing one of an element takes. */
const shareOf = ({ by }: Purchase, name: string, alike: Quantity<'count'>): Quantity[] =>
  by
    .filter(({ element }) => element === name)
    .map(({ quantity }) => (quantity as Quantity<'volume'>).over(alike));

/** What an element takes besides its parts, as far as it has a price; of a single thing its name says enough. */
const besides = (
  purchases: readonly Purchase[],
  name: string,
  alike: Quantity<'count'>,
  unpriced: readonly string[],
): Words[] =>
  purchases
    .filter((line) => line.item === 'other' && !unpriced.includes(nameOf(line)))
    .flatMap((line) =>
      shareOf(line, name, alike).map((much) => {
        const what = nameOf(line);
        return much.dimension === 'count' && ONE().equals(much as Quantity<'count'>)
          ? say`Supply ${{ what }}`
          : say`Supply ${{ what }}: ${{ much }}`;
      }),
    );

/** Whether a thing is in the price of an element. */
const isPriced = (
  { takeoff }: ReckonedJob,
  item: Purchase['item'],
  name: string,
  priced: readonly string[],
): boolean =>
  takeoff.figures.purchases.some(
    (line) =>
      line.item === item &&
      priced.includes(nameOf(line)) &&
      line.by.some(({ element, quantity }) => element === name && quantity.sign() > 0),
  );

/** Whether earth of an element is taken away at a price, and whether some of it stays. */
const earthOf = (job: ReckonedJob, name: string, priced: readonly string[]): Earth => ({
  goes: isPriced(job, 'haul-away', name, priced),
  fillsIn: job.takeoff.cautions.some(({ code }) => code === 'earth-kept'),
});

/** What a cold day takes. */
const covers = (job: ReckonedJob, name: string, priced: readonly string[]): Words[] =>
  isPriced(job, 'blanket', name, priced) ? [{ says: 'Cover it with blankets against frost' }] : [];

/**
 * What is done at each element, in the order of the job.
 *
 * @param priced - names of lines of the bid that have a price
 * @param unpriced - of those that have none: work that takes such a thing says so
 */
export function workOf(
  job: ReckonedJob,
  priced: readonly string[],
  unpriced: readonly string[],
): ElementWork[] {
  const bought = job.takeoff.figures.purchases.filter((purchase) => unpriced.includes(nameOf(purchase)));
  return job.takeoff.figures.elements.map(({ name, count }) => {
    const own = job.parts.filter(({ element }) => element === name).filter(isPromised);
    const earth = earthOf(job, name, priced);
    const does = Object.entries(TELLS).flatMap(([part, tell]) =>
      own
        .filter((each) => each.part === part)
        .flatMap((each) =>
          [tell(asked(each, earth)) ?? []].flat().map((work) => withUnpriced(work, each, own, bought)),
        ),
    );
    const alike = count.equals(ONE()) ? [] : [say`${{ count }} alike, each as follows`];
    const supplied = besides(job.takeoff.figures.purchases, name, count, unpriced);
    return {
      name,
      does: [
        ...alike,
        ...does,
        ...(does.length > 0 ? concreteOf(job, name) : []),
        ...covers(job, name, priced),
        ...supplied,
      ],
    };
  });
}
