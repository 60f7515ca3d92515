/**
 * What the rest of the document puts into a part: outline and thickness of the element, and what its parts before
 * came to. Nothing is put in where the part says it in another way.
 */
import type { Quantity } from '../quantity/quantity';
import type { FigureSet, Result } from '../reckoning/result';
import type { Element, Raw } from './document';
import type { ElementPart } from './part-inputs';

/** What is known of an element when a part of it is reckoned. */
export interface Known {
  readonly element: Element;
  /** What its parts before came to, by name. */
  readonly results: ReadonlyMap<string, Result<FigureSet>>;
  /** What another of its parts says, of its own or from what the job shares; nothing where it has no such part. */
  readonly saidOf: (part: ElementPart) => Raw;
  /** Its openings that another element fills already, counted from 1. */
  readonly filled: readonly number[] | undefined;
}

/** What is put into a part: what its element says, and what follows from other parts, which all else goes before. */
export interface Filling {
  readonly facts?: Raw;
  readonly follows?: Raw;
}

type Fill = (known: Known, said: Raw) => Filling;

const figuresOf = ({ results }: Known, part: ElementPart): Readonly<Record<string, Quantity>> =>
  (results.get(part)?.figures ?? {}) as Readonly<Record<string, Quantity>>;

const isRectangle = (outline: unknown): outline is { length: unknown; width: unknown } =>
  (outline as { shape?: unknown } | undefined)?.shape === 'rectangle';

const nothing: Fill = () => ({});

const plan: Fill = ({ element: { outline, openings } }) => ({ facts: { outline, openings } });

const thickPlan: Fill = ({ element: { outline, openings, thickness } }) => ({
  facts: { outline, openings, thickness },
});

/** What lies below goes by the outline and its openings, unless it says its own outline or area. */
const spread: Fill = ({ element: { outline, openings } }, said) =>
  said['area'] === undefined && said['outline'] === undefined ? { facts: { outline, openings } } : {};

const thick: Fill = ({ element: { thickness } }) => ({ facts: { thickness } });

/** Members of a mat, from which one of any outline is made. */
const MAT = [
  'bar',
  'barAcross',
  'spacing',
  'spacingAcross',
  'lines',
  'linesAcross',
  'angle',
  'angleAcross',
  'faceCover',
  'layer',
] as const;

/** Forms that go all around, and around every opening, leave no edge against the ground. */
function allFormed({ element: { outline }, results, saidOf }: Known): boolean {
  const { formed, runs, kind } = saidOf('forms');
  const isAround = runs === undefined && (formed ?? 'all') === 'all' && (kind ?? 'slab-edge') === 'slab-edge';
  return results.has('forms') && isAround && outline !== undefined;
}

/** Bars in forms need less around them than bars against the ground. */
function bars(known: Known, said: Raw): Filling {
  const filling = mat(known, said);
  const isSlab = said['strip'] === undefined;
  return isSlab && allFormed(known) ? { ...filling, follows: { edges: 'forms' } } : filling;
}

/** Bars of a rectangle go by its sides; those of any other outline are one mat, unless mats are given. */
function mat({ element: { outline, openings, thickness } }: Known, said: Raw): Filling {
  if (said['strip'] !== undefined || said['length'] !== undefined) return {};
  // A mat over an outline of its own lies where that is: openings of the element are told from another corner.
  if (said['outline'] !== undefined)
    return { facts: { thickness, ...(said['mats'] === undefined ? { mats: [matOf(said)] } : {}) } };
  if (said['mats'] !== undefined) return { facts: { outline, openings, thickness } };
  if (outline === undefined) return { facts: { thickness } };
  if (isRectangle(outline) && openings === undefined) {
    return { facts: { length: outline.length, width: outline.width, thickness } };
  }
  return { facts: { outline, openings, thickness, mats: [matOf(said)] } };
}

const matOf = (said: Raw): Raw => ({
  layer: 'bottom',
  ...Object.fromEntries(MAT.filter((name) => said[name] !== undefined).map((name) => [name, said[name]])),
});

/** Members that went into a mat are not said beside it. */
export const withoutMat = (part: ElementPart, input: Raw): Raw =>
  part === 'bars' && input['mats'] !== undefined
    ? Object.fromEntries(Object.entries(input).filter(([name]) => !(MAT as readonly string[]).includes(name)))
    : input;

const saysMat = (said: Raw): boolean => MAT.some((name) => said[name] !== undefined);

/** Mats and a mat beside them: one of the two would be dropped unseen. */
export const bothWays = (part: ElementPart, said: Raw): boolean =>
  part === 'bars' && said['mats'] !== undefined && saysMat(said);

/** What the job shares, without mats where the element says a mat of its own. */
export function ownMat(part: ElementPart, own: Raw, shared: Raw): Raw {
  if (part !== 'bars' || shared['mats'] === undefined || !saysMat(own)) return shared;
  const { mats: _mats, ...rest } = shared;
  return rest;
}

/** A pit is dug as wide as the base that goes into it, unless it says its own margin. */
function excavation(known: Known, said: Raw): Filling {
  if (said['kind'] !== undefined && said['kind'] !== 'pit') return {};
  if (said['area'] !== undefined) return { follows: { kind: 'pit' } };
  return { ...spread(known, said), follows: { kind: 'pit', margin: known.saidOf('base')['margin'] } };
}

const FILLS: Readonly<Partial<Record<ElementPart, Fill>>> = {
  excavation,
  base: spread,
  retarder: spread,
  forms: (known, said) => ({
    follows: {
      kind: 'slab-edge',
      height: known.element.thickness,
      ...(said['runs'] === undefined ? { filledOpenings: known.filled } : {}),
    },
    ...(said['runs'] === undefined ? plan(known, said) : {}),
  }),
  slab: thickPlan,
  bars,
  mesh: (known, said) => (said['length'] === undefined ? plan(known, said) : {}),
  dowels: thick,
  spacing: thick,
  joints: (known, said) => ({
    ...thickPlan(known, said),
    follows: { spacing: figuresOf(known, 'spacing')['spacing'] },
  }),
  fibers: ({ results }) => ({ follows: { volume: concreteOf(results.values()) } }),
  saw: (known, said) =>
    said['sawRate'] !== undefined && said['sawLength'] === undefined
      ? { follows: { sawLength: figuresOf(known, 'joints')['contraction'] } }
      : {},
  finish: (known) => ({ follows: { area: figuresOf(known, 'slab')['area'] } }),
};

/** The sum of amounts, where there are any. */
export const sumOf = <D extends 'area' | 'volume'>(
  amounts: readonly Quantity<D>[],
): Quantity<D> | undefined =>
  amounts.reduce<Quantity<D> | undefined>((sum, q) => sum?.plus(q) ?? q, undefined);

/** Concrete of an element, all of its bodies. */
export const concreteOf = (results: Iterable<Result<FigureSet>>): Quantity<'volume'> | undefined =>
  sumOf(
    [...results]
      .flatMap(({ takes }) => takes)
      .filter(({ item }) => item === 'concrete')
      .map(({ quantity }) => quantity as Quantity<'volume'>),
  );

/** What is put into a part beside what it says. */
export const fillingOf = (part: ElementPart, known: Known, said: Raw): Filling =>
  (FILLS[part] ?? nothing)(known, said);
