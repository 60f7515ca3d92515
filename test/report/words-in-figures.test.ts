/**
 * No figure is a finished English text: what is told in figures is a word of a closed list, which programs compare and
 * languages translate, a name that somebody gave, or words whose quantities follow whoever reads.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { catalog, loadCalculation } from '../../src/catalog/index';
import { Quantity } from '../../src/index';
import { outcomeOf, readVectors } from '../support/vectors';

interface Node {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Node>>;
  readonly enum?: readonly string[];
  readonly anyOf?: readonly Node[];
  readonly items?: Node;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly additionalProperties?: Node;
}

const schemas = new Map<string, Node>();

beforeAll(async () => {
  for (const { id } of catalog) schemas.set(id, (await loadCalculation(id))?.outputSchema as Node);
});

/** What a schema says of a place, its unions taken apart. */
const open = (root: Node, node: Node | undefined): Node[] => {
  if (!node) return [];
  if (node.$ref) return open(root, root.$defs?.[node.$ref.replace('#/$defs/', '')]);
  return node.anyOf ? node.anyOf.flatMap((one) => open(root, one)) : [node];
};

/** All texts in a value, members' names too: what came from an input is no text of the library. */
function* textsOf(value: unknown): Generator<string> {
  if (typeof value === 'string') yield value;
  else if (typeof value === 'object' && value !== null)
    for (const [name, inner] of Object.entries(value)) {
      yield name;
      yield* textsOf(inner);
    }
}

interface Found {
  readonly path: string;
  readonly text: string;
}

/** Texts of figures that have blanks and stand in no closed list of their schema. */
function* openTexts(value: unknown, nodes: readonly Node[], root: Node, path: string): Generator<Found> {
  if (value instanceof Quantity || typeof value === 'boolean' || value === undefined) return;
  if (typeof value === 'string') {
    if (/ /.test(value) && !nodes.some((node) => node.enum?.includes(value))) yield { path, text: value };
  } else if (Array.isArray(value)) {
    const items = nodes.flatMap(({ items }) => open(root, items));
    for (const one of value) yield* openTexts(one, items, root, `${path}[]`);
  } else if (!('says' in (value as object))) {
    for (const [name, part] of Object.entries(value as object)) {
      const inner = nodes.flatMap(({ properties, additionalProperties }) =>
        open(root, properties?.[name] ?? additionalProperties),
      );
      yield* openTexts(part, inner, root, path ? `${path}.${name}` : name);
    }
  }
}

/**
 * Names that are made of a number, of names, or both; a time of day on a later day; the name of a metric bar; what an
 * invoice calls a charge, which stands among names of lines; the edge of a surface that no line is named for.
 */
const NAMED =
  /^(?:aggregate|footing|opening|pier|row|run|section|side|spot|wall) \d+$|^row \d+ spot \d+$|^middle of |^\d+:\d\d \+\d$|^\d+ mm$|^short loads$|^open edge$/;

const TITLES = /\.(?:source|title)$/;

describe('texts in figures', () => {
  const vectors = readVectors().map(({ vector }) => vector);
  it.each(catalog.map(({ id }) => id))(
    '%s: words of closed lists, names and titles, else words with quantities',
    (id) => {
      const root = schemas.get(id) as Node;
      const found = new Set<string>();
      for (const vector of vectors.filter(({ calculation }) => calculation === id)) {
        const attempt = outcomeOf(vector);
        if (!attempt.ok) continue;
        const given = new Set(textsOf(vector.input));
        for (const { path, text } of openTexts(attempt.result.figures, open(root, root), root, ''))
          if (!given.has(text) && !NAMED.test(text) && !TITLES.test(path)) found.add(`${path}: ${text}`);
      }
      expect([...found]).toEqual([]);
    },
  );
});
