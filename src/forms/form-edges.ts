/** The edges that are formed: sides of an outline and of its openings, and lengths that are given. */
import { type Outline, type OutlineInput, outline } from '../outline/outline';
import { type Opening, type OpeningInput, openings as openingsField } from '../outline/region';
import { type Side, sidesOf } from '../outline/sides';
import { checkSize } from '../outline/size';
import { keyOf } from '../quantity/amount-key';
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, label, later, list, maybe, quantity, whole } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import type { Edge } from './boarding';
import { noSuchNumber } from './faults';
import { CURVE, EDGE_FALL, FORMED } from './ordinary';

/** An edge of a given length. */
export interface FormRunInput {
  /** What it is called; by default its number. */
  readonly name?: string;
  /** Its length along the concrete. */
  readonly length: QuantityInput<'length'>;
  /** How many there are of it, as the two faces of a wall or the risers of a flight; by default one. */
  readonly count?: number;
  /** Radius along the concrete, where it is round. */
  readonly radius?: QuantityInput<'length'>;
  /** How far its top falls from one end to the other, where marks at its stakes are wanted; negative where it rises. */
  readonly fall?: QuantityInput<'length'>;
}

/** The edges that are formed. */
export interface FormEdgesInput {
  /** The slab in plan; a length has no place in it, so runs may be given instead or beside. */
  readonly outline?: OutlineInput;
  /** Its sides that are formed, counted from 1; those against a building are not. By default all. */
  readonly formed?: 'all' | readonly number[];
  /** Openings in the slab, which are boxed out; none by default. */
  readonly openings?: readonly OpeningInput[];
  /**
   * Those of them, counted from 1, that are filled by what stands there already, as a column or steps: isolation board
   * takes the place of a form; or that a form tube is set for. By default none.
   */
  readonly filledOpenings?: readonly number[];
  /** Edges by their length. */
  readonly runs?: readonly FormRunInput[];
}

type Parsed = Omit<Read<FormEdgesInput>, 'outline' | 'openings'> & {
  readonly outline: Outline | undefined;
  readonly openings: readonly Opening[] | undefined;
};

const SIDE_LIMIT = 10_000;
const RUN_LIMIT = 50;
const OPENING_LIMIT = 1000;
/** Each edge has two lengths of its own at the most, and the plan is made for so many. */
export const MOST_EDGES: Limit = { of: 'the edges that are formed', most: 50 };

/** How the edges are read, to be spread into the fields of a calculation. */
export const edgeFields = (): { [K in keyof Parsed]: Field<Parsed[K]> } => {
  const all = choice('formed', ['all'] as const);
  const sides = list(whole('each side', 1, SIDE_LIMIT), 1, MOST_EDGES.most);
  return {
    outline: maybe(outline()),
    formed: maybe(
      later<'all' | readonly Quantity<'count'>[]>(
        (input) => (Array.isArray(input) ? sides : all) as Field<'all' | readonly Quantity<'count'>[]>,
        () => ({ 'All sides': all, 'Some sides': sides }),
      ),
    ),
    openings: maybe(openingsField()),
    filledOpenings: maybe(list(whole('each opening', 1, SIDE_LIMIT), 0, OPENING_LIMIT)),
    runs: maybe(
      list(
        fields({
          name: maybe(label('name')),
          length: quantity('length', 'length', 'positive', FORMED),
          count: maybe(whole('count', 1, 1000)),
          radius: maybe(quantity('length', 'radius', 'positive', CURVE)),
          fall: maybe(quantity('length', 'fall', 'any', EDGE_FALL)),
        }),
        1,
        RUN_LIMIT,
      ),
    ),
  };
};

/** Numbers of sides or openings, each of which there is. */
const numbersOf = (name: string, given: readonly Quantity<'count'>[], most: number): Set<number> =>
  new Set(
    given.map((n, i) => {
      const number = canonicalValue(n).toNumber();
      return number > most ? refuse(`${name}[${i}]`, noSuchNumber(number, most)) : number;
    }),
  );

function formedSides({ outline: shape, formed }: Parsed, pad: Pad): Edge[] {
  if (!shape) return [];
  if (!formed) {
    pad.assume({
      name: 'formed',
      value: 'all',
      because: 'no side is told to stand against a building',
      override: 'Give formed, the numbers of the sides',
      source: COMMON_PRACTICE,
    });
  }
  const sides = sidesOf(shape, pad.system);
  const some = formed === 'all' ? undefined : formed;
  const wanted = some && numbersOf('formed', some, sides.length);
  return sides.flatMap((side, i) =>
    !wanted || wanted.has(i + 1) ? [{ ...side, name: `side ${i + 1}`, path: 'outline', count: 1 }] : [],
  );
}

/** Sides of openings that are alike, with the first opening that has one. */
interface Alike extends Side {
  readonly first: number;
  count: number;
}

/** The sides of what is boxed out, alike ones together: many openings are of one size. */
function boxedSides({ openings = [], filledOpenings }: Parsed, pad: Pad): Edge[] {
  const filled = numbersOf('filledOpenings', filledOpenings ?? [], openings.length);
  if (openings.length > 0 && !filledOpenings) {
    pad.assume({
      name: 'filledOpenings',
      value: 'none',
      because: 'no opening is told to be filled by what stands there already, as a column or steps',
      override: 'Give filledOpenings, the numbers of those that isolation board goes around',
      source: COMMON_PRACTICE,
    });
  }
  checkSize(openings, 'openings');
  const alike = new Map<string, Alike>();
  openings.forEach((opening, i) => {
    if (filled.has(i + 1)) return;
    for (const side of sidesOf(opening as Outline, pad.system, `openings[${i}]`)) {
      const key = keyOf([side.length, side.radius]);
      const one = alike.get(key) ?? { ...side, first: i + 1, count: 0 };
      one.count += 1;
      alike.set(key, one);
    }
  });
  return [...alike.values()].map(
    ({ first, ...side }): Edge => ({
      ...side,
      name: `opening ${first}`,
      path: 'openings',
      ...(side.radius ? {} : { boxed: true }),
    }),
  );
}

/** All edges that are formed: those of the outline first, then those of openings. */
export function edgesOf(input: Parsed, pad: Pad): Edge[] {
  if (!input.outline && (!input.runs || input.formed)) {
    refuse('outline', sharedFaults.missing('outline', ['{ shape, … } or runs', '{ shape, … } or runs']));
  }
  const sides = formedSides(input, pad);
  const runs = (input.runs ?? []).map(
    ({ name, length, count, radius, fall }, i): Edge => ({
      name: name ?? `run ${i + 1}`,
      path: `runs[${i}].length`,
      length,
      count: count ? canonicalValue(count).toNumber() : 1,
      ...(radius ? { radius } : {}),
      ...(fall ? { fall } : {}),
    }),
  );
  const boxed = boxedSides(input, pad);
  const all = [...sides, ...boxed, ...runs];
  const [most] = [sides, boxed, runs].sort((a, b) => b.length - a.length);
  withinLimit(MOST_EDGES, all.length, most?.[0]?.path.replace(/\[.*/, '') ?? '');
  return all;
}
