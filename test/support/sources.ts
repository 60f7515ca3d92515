/** What the check vectors rest on: how many works, and how many tables and examples in them. */
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import { measuredPaths } from './relations/inputs';
import { readVectors, type Vector } from './vectors';

/** What the vectors of one calculation, or of all, rest on. */
export interface Foundation {
  readonly id: string;
  /** Vectors by the kind of their source; those that must be refused by themselves. */
  readonly kinds: Readonly<Record<string, number>>;
  /** Different published works that print what is checked. */
  readonly works: number;
  /** Different tables and examples in them. */
  readonly places: number;
  /** Published vectors that expect nothing but what was put in, or the same in another unit. */
  readonly echoes: number;
  /** Cases from practice, with exactly the cautions that must show. */
  readonly advice: number;
}

const PRINTED = new Set(['published', 'corrected']);

/** Row, line and item numbers go: two rows of one table are one table. */
const placeOf = ({ source }: Vector): string =>
  `${source.title} | ${(source.locator ?? '').replace(/\b(?:rows?|lines?|items?|columns?)\b[^,;]*/gi, '').replace(/[\s,;]+$/, '')}`;

/** True where every figure expected stands in the input already. */
function isEcho({ input, expect }: Vector): boolean {
  const given = measuredPaths(input).map(({ q }) => q);
  const expected = Object.values(expect.figures ?? {});
  if (expected.length === 0) return false;
  return expected.every(({ equals }) =>
    given.some((q) => {
      const wanted = readQuantity(String(equals), q.dimension, 'it');
      return !isFaulty(wanted) && wanted.compareTo(q) === 0;
    }),
  );
}

/** What a set of vectors rests on. */
function foundationOf(id: string, vectors: readonly Vector[]): Foundation {
  const kinds: Record<string, number> = {};
  for (const { source, expect } of vectors) {
    const kind = expect.error ? 'refused' : source.kind;
    kinds[kind] = (kinds[kind] ?? 0) + 1;
  }
  const printed = vectors.filter(({ source, expect }) => PRINTED.has(source.kind) && !expect.error);
  return {
    id,
    kinds,
    works: new Set(printed.map(({ source }) => source.title)).size,
    places: new Set(printed.map(placeOf)).size,
    echoes: printed.filter(isEcho).length,
    advice: vectors.filter(({ advice }) => advice !== undefined).length,
  };
}

/** By calculation, and all together as the last. */
export function foundations(): Foundation[] {
  const vectors = readVectors().map(({ vector }) => vector);
  const ids = [...new Set(vectors.map(({ calculation }) => calculation))].sort();
  return [
    ...ids.map((id) =>
      foundationOf(
        id,
        vectors.filter(({ calculation }) => calculation === id),
      ),
    ),
    foundationOf('all', vectors),
  ];
}
