/** What a refusal proposes is what the trade would write there: put in, it is read and not asked about. */
import { describe, expect, it } from 'vitest';
import { calculations } from '../../src/catalog/all';
import type { Caution } from '../../src/index';
import { readVectors } from '../support/vectors';

const vectors = readVectors().map(({ vector }) => vector);

type Attempt = ReturnType<(typeof calculations)[number]['attempt']>;

type Options = { readonly system: 'customary' | 'metric' };

const SYSTEMS = ['customary', 'metric'] as const;

type Path = readonly (string | number)[];

/** Where text with a unit stands in an input. */
function measuresIn(value: unknown, path: Path = []): Path[] {
  if (typeof value === 'string') return /^-?[\d.,/ -]+ ?[a-zA-Z%'":]/.test(value) ? [path] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) =>
    measuresIn(part, [...path, Array.isArray(value) ? Number(name) : name]),
  );
}

/** The same input with another value at a place. */
function withAt(input: unknown, [name, ...rest]: Path, value: unknown): unknown {
  if (name === undefined) return value;
  const copy: Record<string | number, unknown> = Array.isArray(input)
    ? ([...input] as never)
    : { ...(input as object) };
  copy[name] = withAt(copy[name], rest, value);
  return copy;
}

const written = (path: Path): string =>
  path.reduce<string>(
    (text, part) => (typeof part === 'number' ? `${text}[${part}]` : text ? `${text}.${part}` : part),
    '',
  );

/** Places that other inputs of the same kind have too are tried once for each unit system. */
const kindOf = (path: Path): string => written(path).replace(/\[\d+\]/g, '[]');

const askedAbout = (cautions: readonly Caution[], path: string): boolean =>
  cautions.some(({ code, input }) => code === 'unusual' && input === path);

/** What is proposed where nothing is written: the first text in quotes of the example. */
function proposedAt(attempt: Attempt, at: string): string | undefined {
  if (attempt.ok) return undefined;
  const issue = attempt.error.issues.find(({ path, code }) => path === at && code === 'missing');
  return /^"([^"]+)"/.exec(String(issue?.params?.['example']))?.[1];
}

/** Refused where it was put in, for itself: what the rest of the input makes of it is another matter. */
function unread(attempt: Attempt, at: string): boolean {
  if (attempt.ok) return askedAbout(attempt.result.cautions, at);
  return attempt.error.issues.some(({ path, code }) => path === at && /quantity|unit|dimension/.test(code));
}

/** Loads are weighed or measured, all alike: what is proposed for one does not see the others. */
const LOADS = /^(?:tickets|loads)\b/;

/** The places of one kind in one unit system, once each, with an input that they stand in. */
function* placesOf({
  id,
  attempt,
}: (typeof calculations)[number]): Generator<readonly [unknown, Path, Options]> {
  const tried = new Set<string>();
  for (const { input, system } of vectors.filter((vector) => vector.calculation === id)) {
    const places = measuresIn(input).filter((path) => !LOADS.test(written(path)));
    if (places.every((path) => SYSTEMS.every((one) => tried.has(`${one} ${kindOf(path)}`)))) continue;
    const whole = attempt(input, system && { system });
    if (!whole.ok) continue;
    const options = { system: whole.result.system };
    for (const path of places) {
      const kind = `${options.system} ${kindOf(path)}`;
      if (!tried.has(kind)) yield [input, path, options];
      tried.add(kind);
    }
  }
}

function* oddProposals(calculation: (typeof calculations)[number]): Generator<string> {
  for (const [input, path, options] of placesOf(calculation)) {
    const at = written(path);
    const example = proposedAt(calculation.attempt(withAt(input, path, ''), options), at);
    if (!example) continue;
    if (unread(calculation.attempt(withAt(input, path, example), options), at)) yield `${at}: ${example}`;
  }
}

describe('what a refusal proposes', () => {
  it.each(calculations.map((calculation) => [calculation.id, calculation] as const))(
    'is ordinary in %s',
    (_, calculation) => {
      expect([...oddProposals(calculation)]).toEqual([]);
    },
  );
});
