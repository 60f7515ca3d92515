/**
 * The schema for calling a calculation as a tool: short, one object, no references.
 *
 * Kinds of a thing are one object with the members of all, and its description says which member goes with which
 * kind: readers of tool schemas often know no `oneOf`, and a branch for each shape of an outline costs more than it
 * tells. The calculation itself checks what comes.
 */
import { firstSentence } from './words';

type Node = { [key: string]: unknown };
type Properties = { [name: string]: Node };

interface Making {
  readonly defs: { readonly [name: string]: Node };
  /** Definitions that are being written out, which may not be written out again within themselves. */
  readonly open: readonly string[];
  readonly telling: Telling;
  /** How deep in the input it stands. */
  readonly depth: number;
}

/** How much is told. */
interface Telling {
  /** So many meanings of a name that several kinds have. */
  readonly meanings: number;
  /** Down to this depth there are examples. */
  readonly examples: number;
  /** Down to this depth there is help. */
  readonly help: number;
  /** At most so long. */
  readonly length: number;
  /** Longer lists of words are written out at the top only; deeper down a few stand for all. */
  readonly words: number;
  /** Of outlines and openings the members are named only, with an example. */
  readonly named?: true;
}

/** The most first; what is too long with it is told less. */
const TELLINGS: readonly Telling[] = [
  { meanings: 4, examples: 9, help: 9, length: 200, words: 99 },
  { meanings: 2, examples: 2, help: 9, length: 120, words: 99 },
  { meanings: 1, examples: 2, help: 9, length: 80, words: 8 },
  { meanings: 2, examples: 2, help: 9, length: 120, words: 8, named: true },
  { meanings: 0, examples: 1, help: 9, length: 80, words: 8, named: true },
  { meanings: 0, examples: 1, help: 1, length: 60, words: 8, named: true },
];

/** A list of tools costs its reader by the letter. */
const MOST = 8000;

const propertiesOf = (node: Node): Properties =>
  Object.fromEntries(
    Object.entries((node['properties'] ?? {}) as Properties).filter(([, p]) => typeof p === 'object'),
  );

/** A rule of what goes together, `oneOf` groups of members. */
const isRule = (node: Node): boolean =>
  node['properties'] !== undefined && node['type'] === undefined && !node['$ref'];

const constOf = (node: Node): [string, string] | undefined => {
  const found = Object.entries(propertiesOf(node)).find(([, p]) => p['const'] !== undefined);
  return found && [found[0], String(found[1]['const'])];
};

/** What must be given, in words. */
function rulesOf(node: Node): string[] {
  const groups = (key: string): string | undefined => {
    const branches = node[key] as Node[] | undefined;
    if (!branches?.every(isRule)) return undefined;
    const each = branches.map((one) => ((one['required'] ?? []) as string[]).join(' with '));
    return `Give ${key === 'oneOf' ? 'one' : 'one or more'} of: ${each.join('; ')}.`;
  };
  const all = (node['allOf'] ?? []) as Node[];
  return [groups('oneOf'), groups('anyOf'), ...all.flatMap(rulesOf)].filter((text) => text !== undefined);
}

const text = (...parts: readonly (string | undefined)[]): Node => {
  const said = parts.filter(Boolean).join(' ');
  return said ? { description: said } : {};
};

/** The first sentence, or as many whole words of it as there is room for. */
function helpOf(node: Node, { telling, depth }: Making): string | undefined {
  const help = node['description'] as string | undefined;
  if (!help || depth > telling.help) return undefined;
  const sentence = firstSentence(help);
  if (sentence.length <= telling.length) return sentence;
  const clause = sentence.slice(0, telling.length).replace(/[,;:]?\s\S*$/, '');
  return `${clause} …`;
}

const same = (a: Node, b: Node): boolean => {
  const bare = ({ description: _, examples: __, ...rest }: Node): string => JSON.stringify(rest);
  return bare(a) === bare(b);
};

/** A member that several kinds have: in every way that one of them takes it. */
function merged(all: readonly (readonly [kind: string, node: Node])[], making: Making): Node {
  const [[, first]] = all as [readonly [string, Node]];
  const distinct = all.filter(([, node], i) => all.findIndex(([, other]) => same(node, other)) === i);
  const words = [...new Set(all.map(([, node]) => node['description'] as string | undefined))];
  const description =
    words.length === 1
      ? words[0]
      : words
          .filter((word) => word !== undefined)
          .slice(0, making.telling.meanings)
          .map((word) => {
            const kinds = all.filter(([, node]) => node['description'] === word).map(([kind]) => kind);
            return `${kinds.join(', ')}: ${word}`;
          })
          .join(' ');
  if (distinct.length === 1) return { ...first, ...text(description) };
  const records = distinct.every(([, node]) => node['type'] === 'object' && node['properties']);
  if (records) return { ...oneObject(distinct, making), ...text(description) };
  return {
    ...text(description),
    anyOf: distinct.map(([, { description: _, ...node }]) => node),
  };
}

/** Kinds of an object as one. */
function oneObject(kinds: readonly (readonly [string, Node])[], making: Making): Node {
  const names = [...new Set(kinds.flatMap(([, node]) => Object.keys(propertiesOf(node))))];
  const properties = names.map((name) => {
    const having = kinds.flatMap(([kind, node]) => {
      const own = propertiesOf(node)[name];
      return own ? [[kind, own] as const] : [];
    });
    const words = having.flatMap(([, node]) => (node['const'] === undefined ? [] : [node['const']]));
    return [
      name,
      words.length === having.length ? { type: 'string', enum: words } : merged(having, making),
    ] as const;
  });
  const required = names.filter((name) =>
    kinds.every(([, node]) => ((node['required'] ?? []) as string[]).includes(name)),
  );
  return {
    type: 'object',
    properties: Object.fromEntries(properties),
    ...(required.length > 0 ? { required } : {}),
    additionalProperties: false,
  };
}

/** Which members go with which kind. */
const goesWith = (kinds: readonly (readonly [string, Node])[]): string =>
  kinds
    .map(([kind, node]) => {
      const needed = ((node['required'] ?? []) as string[]).filter(
        (name) => propertiesOf(node)[name]?.['const'] === undefined,
      );
      return `${kind}: ${needed.join(', ')}`;
    })
    .join('; ');

/** The first kind with what it needs, as it may be given. */
function exampleOf(branch: Node): Node {
  const needed = (branch['required'] ?? []) as string[];
  const members = needed.map((name) => {
    const { const: word, examples } = propertiesOf(branch)[name] as { const?: unknown; examples?: unknown[] };
    return [name, word ?? examples?.[0]] as const;
  });
  return Object.fromEntries(members);
}

/** An outline by the names of its members. */
function named(node: Node, branches: readonly Node[], making: Making): Node {
  const key = node['x-discriminator'] as string;
  const kinds = branches.map((branch) => [constOf(branch)?.[1] ?? '', branch] as const);
  return {
    type: 'object',
    properties: { [key]: { type: 'string', enum: kinds.map(([kind]) => kind) } },
    required: [key],
    ...text(helpOf(node, making), `Needed: ${goesWith(kinds)}.`),
    examples: branches.slice(0, 1).map(exampleOf),
  };
}

function ofKinds(node: Node, branches: readonly Node[], making: Making): Node {
  if (making.telling.named && making.open.length > 0) return named(node, branches, making);
  const kinds = branches.map((branch) => {
    const [, word] = constOf(branch) ?? [];
    return [word ?? String(branch['title']).toLowerCase(), short(branch, making)] as const;
  });
  return { ...oneObject(kinds, making), ...text(helpOf(node, making), `Needed: ${goesWith(kinds)}.`) };
}

function ofObject(node: Node, making: Making): Node {
  const inside = { ...making, depth: making.depth + 1 };
  const properties = Object.entries(propertiesOf(node)).map(([name, inner]) => [name, short(inner, inside)]);
  const required = (node['required'] ?? []) as string[];
  const more = node['x-input-of'];
  return {
    type: 'object',
    ...text(helpOf(node, making), ...rulesOf(node), ...(more ? [`Also what ${String(more)} takes.`] : [])),
    properties: Object.fromEntries(properties),
    ...(required.length > 0 ? { required } : {}),
    // What is read by another calculation is judged there, and what takes more takes it here too.
    ...(more || node['additionalProperties'] !== false ? {} : { additionalProperties: false }),
  };
}

function ofReference(node: Node, making: Making): Node {
  const name = String(node['$ref']).slice('#/$defs/'.length);
  if (making.open.includes(name)) return { type: 'object', ...text(`Like the ${name} itself.`) };
  const target = making.defs[name] as Node;
  const inner = short(target, { ...making, open: [...making.open, name] });
  return {
    ...inner,
    ...text(
      helpOf(node, making),
      (inner['description'] as string | undefined)?.replace(/^.*?(?=Needed:)/, ''),
    ),
  };
}

/** Each once: an amount that is counted, measured or weighed reads alike in all of them. */
const distinct = (nodes: readonly Node[]): Node[] => [
  ...new Map(nodes.map((node) => [JSON.stringify(node), node])).values(),
];

function short(node: Node, making: Making): Node {
  if (node['$ref']) return ofReference(node, making);
  const branches = (node['oneOf'] ?? node['anyOf']) as Node[] | undefined;
  if (branches && !node['properties']) {
    if (branches.every((branch) => branch['properties'])) return ofKinds(node, branches, making);
    const each = distinct(branches.map((branch) => short(branch, making)));
    return { ...text(helpOf(node, making)), ...(each.length === 1 ? each[0] : { anyOf: each }) };
  }
  if (node['properties']) return ofObject(node, making);
  const kept = ['type', 'const', 'enum', 'examples', 'default', 'minimum', 'maximum', 'minItems', 'maxItems'];
  const facts = Object.fromEntries(
    kept.flatMap((key) => (node[key] === undefined ? [] : [[key, node[key]]])),
  );
  const items = node['items'] ? { items: short(node['items'] as Node, making) } : {};
  const words = facts['enum'] as string[] | undefined;
  if (words && words.length > making.telling.words && making.depth > 1) {
    return { ...text(helpOf(node, making)), type: 'string', examples: words.slice(0, 2) };
  }
  const { minItems, examples, ...rest } = facts;
  const example = examples && making.depth <= making.telling.examples ? { examples } : {};
  return { ...text(helpOf(node, making)), ...rest, ...example, ...(minItems ? { minItems } : {}), ...items };
}

/** The schema for calling a calculation as a tool, out of that of its form: as much as there is room for. */
export function toolSchema(form: Node): Node {
  const { $defs, $schema: _, $id: __, description, ...root } = form;
  const defs = ($defs ?? {}) as Making['defs'];
  const tries = TELLINGS.map((telling) => {
    const made = short(root, { defs, open: [], telling, depth: 0 });
    return {
      type: 'object',
      ...made,
      ...text(description as string, made['description'] as string | undefined),
    };
  });
  const found = tries.find((tool) => JSON.stringify(tool).length < MOST);
  if (!found)
    throw new Error(`no schema short enough: ${tries.map((t) => JSON.stringify(t).length)} ${form['$id']}`);
  return found;
}
