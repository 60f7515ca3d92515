/** The schema of a result's figures, out of their declared types. */
import ts from 'typescript';
import { kindsOf } from './form';
import { helpOf, humanized, titleOf } from './words';

type Node = { [key: string]: unknown };

interface Making {
  readonly checker: ts.TypeChecker;
  readonly defs: Node;
}

/** A quantity as JSON writes it; `shownIn` is there where it is shown in another unit than it is exact in. */
const quantityOf = (dimensions: readonly string[]): Node => ({
  title: 'Quantity',
  type: 'object',
  properties: {
    value: { title: 'Value', description: 'Exact, as a decimal or a fraction.', type: 'string' },
    unit: { title: 'Unit', type: 'string' },
    dimension: { title: 'Dimension', type: 'string', enum: dimensions },
    shownIn: { title: 'Unit to show it in', type: 'string' },
  },
  required: ['value', 'unit', 'dimension'],
});

/** The dimension of a quantity's type. */
function dimensionOf(type: ts.Type, checker: ts.TypeChecker): string[] | undefined {
  if (!type.getProperty('shownIn') || !type.getProperty('format')) return undefined;
  const member = type.getProperty('dimension');
  const kinds = member ? kindsOf(checker.getTypeOfSymbol(member)) : [];
  return kinds.flatMap((t) => (t.isStringLiteral() ? [t.value] : []));
}

function quantity(dimensions: readonly string[], { defs }: Making): Node {
  const name = dimensions.join('-or-');
  defs[name] = quantityOf(dimensions);
  return { $ref: `#/$defs/${name}`, ...(dimensions.length === 1 ? { 'x-dimension': dimensions[0] } : {}) };
}

/** Words as data: a sentence in English with places, and what stands in them. */
const WORDS: Node = {
  title: 'Words',
  type: 'object',
  properties: {
    says: { title: 'English', description: 'With places in braces.', type: 'string' },
    params: { title: 'What stands in the places', type: 'object' },
  },
  required: ['says'],
};

function wordsAsData({ defs }: Making): Node {
  defs['words'] = WORDS;
  return { $ref: '#/$defs/words' };
}

const nameOf = (type: ts.Type): string | undefined => {
  const name = (type.aliasSymbol ?? type.symbol)?.name;
  return name?.startsWith('__') ? undefined : name;
};

function record(type: ts.Type, making: Making): Node {
  const { checker } = making;
  const index = checker.getIndexTypeOfType(type, ts.IndexKind.String);
  if (index) return { type: 'object', additionalProperties: schemaOf(index, making) };
  const members = checker.getPropertiesOfType(type);
  const properties = members.map((member) => {
    const help = helpOf(member, checker, type);
    return [
      member.name,
      {
        title: titleOf(member),
        ...(help ? { description: help } : {}),
        ...schemaOf(checker.getTypeOfSymbol(member), making),
      },
    ] as const;
  });
  return {
    type: 'object',
    properties: Object.fromEntries(properties),
    required: members.filter(({ flags }) => !(flags & ts.SymbolFlags.Optional)).map(({ name }) => name),
  };
}

function ofWords(kinds: readonly ts.Type[]): Node | undefined {
  const words = kinds.flatMap((t) => (t.isStringLiteral() ? [t.value] : []));
  return words.length === kinds.length ? { type: 'string', enum: words } : undefined;
}

const BARE: readonly (readonly [ts.TypeFlags, Node])[] = [
  [ts.TypeFlags.BooleanLike, { type: 'boolean' }],
  [ts.TypeFlags.StringLike, { type: 'string' }],
  [ts.TypeFlags.NumberLike, { type: 'number' }],
];

/** What one of several kinds is called. */
const titled = (type: ts.Type, node: Node): Node => ({
  title: humanized((nameOf(type) ?? 'other').replace(/Figures?$/, '')),
  ...node,
});

function schemaOf(type: ts.Type, making: Making): Node {
  const { checker } = making;
  const kinds = kindsOf(type);
  const words = ofWords(kinds);
  if (words) return words;
  const found = kinds.map((kind) => dimensionOf(kind, checker));
  if (found.every(Boolean)) return quantity([...new Set(found.flat() as string[])], making);
  const bare = BARE.find(([flag]) => kinds.every((t) => t.flags & flag));
  if (bare) return bare[1];
  const [kind, ...others] = kinds;
  if (kind && others.length > 0) {
    return { anyOf: kinds.map((each) => titled(each, schemaOf(each, making))) };
  }
  if (kind && (checker.isArrayType(kind) || checker.isTupleType(kind))) {
    const [element] = checker.getTypeArguments(kind as ts.TypeReference);
    return { type: 'array', ...(element ? { items: schemaOf(element, making) } : {}) };
  }
  if (kind && nameOf(kind) === 'Words') return wordsAsData(making);
  return kind ? record(kind, making) : {};
}

/** The schema of the figures of a calculation. */
export function figuresSchema(
  type: ts.Type,
  { id, title }: { readonly id: string; readonly title: string },
  checker: ts.TypeChecker,
): Node {
  const defs: Node = {};
  const root = schemaOf(type, { checker, defs });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:flatwork-reckoner:${id}:figures`,
    title: `Figures: ${title}`,
    ...(root['type'] ? {} : { type: 'object' }),
    ...root,
    ...(Object.keys(defs).length > 0 ? { $defs: defs } : {}),
  };
}
