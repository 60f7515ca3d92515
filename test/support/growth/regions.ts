/** Every size of an outline and of its openings, for a calculation that takes them. */
import { type Growth, growth } from './growth';
import { OPENINGS, PLACED, ragged, UNPLACED, YARD } from './shapes';

type Make = (part: { readonly outline: unknown; readonly openings?: unknown }) => unknown;

/** The fewest corners of what is refused soon where it is not served along many arcs. */
const FIRST: Readonly<Record<string, number>> = { 'arcs swelling': 2, 'arcs hollow': 4 };

const outlinesOf = (
  of: string,
  make: Make,
  kinds: Readonly<Record<string, (size: number) => unknown>>,
): Growth[] =>
  Object.entries(kinds).map(([what, outline]) =>
    growth(of, what, (size) => make({ outline: outline(size) }), { from: FIRST[what] ?? 8 }),
  );

/** Outlines with a place in the plan. */
export const placed = (of: string, make: Make): Growth[] => outlinesOf(of, make, PLACED);

/** Outlines of every kind. */
export const anyOutline = (of: string, make: Make): Growth[] => [
  ...placed(of, make),
  ...outlinesOf(of, make, UNPLACED),
];

/** Openings in a yard, alone and together with its corners. */
export const withOpenings = (of: string, make: Make): Growth[] => [
  ...Object.entries(OPENINGS).map(([what, openings]) =>
    growth(of, what, (size) => make({ outline: YARD, openings: openings(size) })),
  ),
  growth(of, 'corners and round openings', (size) =>
    make({ outline: ragged(10 * size), openings: OPENINGS['round openings']?.(size) }),
  ),
];

/** The outlines without arcs, for what is not served along arcs. */
export const straightSided = (how: string, all: readonly Growth[]): Growth[] =>
  all.filter(({ what }) => !what.startsWith('arcs')).map((one) => ({ ...one, what: `${one.what}, ${how}` }));
