/** The limits of every calculation as its schema states them, and the page of the docs made from them. */
import { calculations as catalog } from '../../src/catalog/all';
import type { Limit } from '../../src/index';
import { inlined } from './schemas';

type Schema = Readonly<Record<string, unknown>>;

/** A list or a count, by where it stands in the input, and the most it may be. */
interface Row {
  readonly at: string;
  readonly most: number;
}

const branches = (schema: Schema): Schema[] =>
  ['anyOf', 'oneOf'].flatMap((key) => (schema[key] as Schema[] | undefined) ?? []);

const constsOf = (schema: Schema): unknown[] =>
  Object.values((schema['properties'] ?? {}) as Record<string, Schema>).flatMap((inner) =>
    inner['const'] === undefined ? [] : [inner['const']],
  );

/** Outlines are the same in every calculation, and have a table of their own. */
const isOutline = (schema: Schema): boolean =>
  branches(schema).some((branch) => constsOf(branch).includes('combined'));

function* rowsOf(schema: Schema, at: string, intoOutlines: boolean): Generator<Row> {
  if (!intoOutlines && isOutline(schema)) return;
  const { type, maxItems, maximum, items, properties } = schema;
  if (typeof maxItems === 'number') yield { at, most: maxItems };
  if (type === 'integer' && typeof maximum === 'number') yield { at, most: maximum };
  if (items) yield* rowsOf(items as Schema, `${at}[]`, intoOutlines);
  for (const [name, inner] of Object.entries((properties ?? {}) as Record<string, Schema>)) {
    yield* rowsOf(inner, at ? `${at}.${name}` : name, intoOutlines);
  }
  for (const branch of branches(schema)) yield* rowsOf(branch, at, intoOutlines);
}

/** Each place once, with the most that any kind of input may have there. */
function merged(rows: Iterable<Row>): Row[] {
  const most = new Map<string, number>();
  for (const row of rows) most.set(row.at, Math.max(row.most, most.get(row.at) ?? 0));
  return [...most].map(([at, n]) => ({ at, most: n }));
}

function findOutline(schema: Schema): Schema | undefined {
  if (isOutline(schema)) return schema;
  const inner = [
    ...branches(schema),
    ...Object.values((schema['properties'] ?? {}) as Record<string, Schema>),
    ...(schema['items'] ? [schema['items'] as Schema] : []),
  ];
  for (const each of inner) {
    const found = findOutline(each);
    if (found) return found;
  }
  return undefined;
}

const number = (n: number): string => n.toLocaleString('en-US');

function table(head: string, rows: readonly (readonly [string, string])[]): string {
  const wide = Math.max(head.length, ...rows.map(([a]) => a.length));
  const most = Math.max('At most'.length, ...rows.map(([, b]) => b.length));
  const line = (a: string, b: string): string => `| ${a.padEnd(wide)} | ${b.padStart(most)} |`;
  const rule = `| ${'-'.repeat(wide)} | ${'-'.repeat(most - 1)}: |`;
  return [line(head, 'At most'), rule, ...rows.map(([a, b]) => line(a, b))].join('\n');
}

function outlineSchema(): Schema {
  const outline = catalog.map(({ inputSchema }) => findOutline(inlined(inputSchema))).find(Boolean);
  if (!outline) throw new Error('no calculation takes an outline');
  return outline;
}

/** What an outline with all its parts is refused by. */
export const outlineLimits = (): readonly Limit[] =>
  branches(outlineSchema()).flatMap((branch) => (branch['x-limits'] as Limit[] | undefined) ?? []);

function outlineTable(): string {
  const outline = outlineSchema();
  const rows = branches(outline).flatMap((branch) => {
    const [shape] = constsOf(branch);
    return merged(rowsOf(branch, '', true))
      .filter(({ most }) => most > FIXED)
      .map(({ at, most }) => [`\`${shape}\`: \`${at}\``, number(most)] as const);
  });
  const together = outlineLimits().map(({ of, most }) => [of, number(most)] as const);
  return table('Outline', [...rows, ...together]);
}

/** Pairs, triples and corners of a square are what they are, and no limit. */
const FIXED = 4;

function calculationTable(id: string): string | undefined {
  const entry = catalog.find((each) => each.id === id);
  if (!entry) return undefined;
  const rows = [
    ...entry.limits.map(({ of, most }) => [of, number(most)] as const),
    ...merged(rowsOf(inlined(entry.inputSchema), '', false))
      .filter(({ most }) => most > FIXED)
      .map(({ at, most }) => [`\`${at}\``, number(most)] as const),
  ];
  return rows.length > 0 ? `## ${id}\n\n${table('What', rows)}` : undefined;
}

/** The tables of docs/limits.md. */
export function limitTables(): string {
  const each = catalog.map(({ id }) => calculationTable(id)).filter((text) => text !== undefined);
  return [`## Outlines\n\n${outlineTable()}`, ...each].join('\n\n');
}

/** Where the tables begin in the page. */
export const TABLES_START = '<!-- The tables below are made by npm run generate. -->';
