/**
 * The schema of a form: that of the input, with titles and help from the docstrings of the input's types.
 *
 * A quantity is text with its unit: who fills a form types `4 in`. The object `{ value, unit }` stays accepted by the
 * calculation, whose own `inputSchema` says so; two nameless ways to write each number would make a form of
 * dropdowns.
 */
import ts from 'typescript';
import type { Dimension } from '../../src/quantity/dimensions';
import type { JsonSchema } from '../../src/reckoning/fields';
import type { Examples } from './examples';
import { helpOf, humanized, titleOf } from './words';

type Node = { [key: string]: unknown };

/** What a form is made with. */
interface Making {
  readonly checker: ts.TypeChecker;
  readonly defs: { readonly [name: string]: JsonSchema };
  readonly described: Node;
  readonly examples: Examples;
}

/** The kinds of a type, without what stands for nothing. */
export const kindsOf = (type: ts.Type): readonly ts.Type[] =>
  (type.isUnion() ? type.types : [type]).filter(
    (t) => !(t.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null)),
  );

const isList = (type: ts.Type, checker: ts.TypeChecker): boolean =>
  checker.isArrayType(type) || checker.isTupleType(type);

const isRecord = (type: ts.Type, checker: ts.TypeChecker): boolean =>
  !!(type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) && !isList(type, checker);

const propertiesOf = (schema: JsonSchema): { [name: string]: JsonSchema } =>
  (schema['properties'] ?? {}) as { [name: string]: JsonSchema };

/** What a member that a type lacks weighs. */
const MISSED = 100;

/** Whether a type may be what a branch describes, and how near its members are. */
function likeness(branch: JsonSchema, type: ts.Type, checker: ts.TypeChecker): number {
  const properties = propertiesOf(branch);
  const names = new Set(checker.getPropertiesOfType(type).map(({ name }) => name));
  for (const [name, { const: word }] of Object.entries(properties)) {
    const member = word === undefined ? undefined : type.getProperty(name);
    if (!member) continue;
    const words = kindsOf(checker.getTypeOfSymbol(member));
    if (!words.some((t) => t.isStringLiteral() && t.value === word)) return Number.NEGATIVE_INFINITY;
  }
  const mine = Object.keys(properties);
  const met = mine.filter((name) => names.has(name)).length;
  // What the branch has and the type has not tells more than what the type has besides.
  return MISSED * (met - mine.length) - (names.size - met);
}

/** The type among several that a branch of a schema describes. */
function typeOf(branch: JsonSchema, type: ts.Type, checker: ts.TypeChecker): ts.Type | undefined {
  const records = kindsOf(type).filter((t) => isRecord(t, checker));
  const [best] = records
    .map((t) => [likeness(branch, t, checker), t] as const)
    .filter(([like]) => like > Number.NEGATIVE_INFINITY)
    .sort(([a], [b]) => b - a);
  return best?.[1];
}

const elementOf = (type: ts.Type, { checker }: Making): ts.Type | undefined => {
  const found = kindsOf(type).find((t) => isList(t, checker));
  if (!found) return undefined;
  const [first] = checker.getTypeArguments(found as ts.TypeReference);
  return first;
};

/** Examples of a field: one, or one in each system of units. */
function exampleOf(path: string, dimension: Dimension | undefined, examples: Examples): Node {
  const { customary, metric } = examples(path, dimension);
  if (customary === undefined) return {};
  if (customary === metric) return { examples: [customary] };
  return { examples: [customary, metric], 'x-examples': { customary, metric } };
}

/** A quantity as a field for text. */
function quantityField(name: string, dimension: Dimension, path: string, { examples }: Making): Node {
  return {
    type: 'string',
    ...exampleOf(path, dimension, examples),
    'x-dimension': dimension,
    ...(name === 'clock' ? { 'x-format': 'time of day' } : {}),
  };
}

function referred(name: string, type: ts.Type, path: string, making: Making): Node {
  const target = making.defs[name] as JsonSchema;
  const dimension = target['x-dimension'] as Dimension | undefined;
  if (dimension) return quantityField(name, dimension, path, making);
  if (!making.described[name]) {
    making.described[name] = {};
    making.described[name] = {
      title: humanized(name),
      ...described(target, type, `$defs/${name}`, making),
    };
  }
  return { $ref: `#/$defs/${name}` };
}

/** The word that tells a branch from others. */
const wordOf = (branch: JsonSchema): string | undefined => {
  const found = Object.values(propertiesOf(branch)).find((p) => p['const'] !== undefined);
  return found && String(found['const']);
};

const branchTitle = (branch: JsonSchema, type: ts.Type | undefined): string => {
  const label = type?.aliasSymbol ?? type?.symbol;
  const tag = label?.getJsDocTags().find(({ name }) => name === 'label');
  if (tag) return ts.displayPartsToString(tag.text);
  return humanized(wordOf(branch) ?? (label?.name ?? 'Other').replace(/Input$/, ''));
};

function branchOf(branch: JsonSchema, type: ts.Type, path: string, making: Making): Node {
  if (branch['properties'] === undefined) {
    const inner = described(branch, type, path, making);
    return branch['title'] ? { title: branch['title'], ...inner } : inner;
  }
  const own = typeOf(branch, type, making.checker) ?? type;
  const help = helpOf(own.aliasSymbol ?? own.symbol, making.checker, own);
  return {
    title: (branch['title'] as string) ?? branchTitle(branch, own),
    ...(help ? { description: help } : {}),
    ...described(branch, own, path, making),
  };
}

/** A choice within a choice is one choice: who fills a form sees one list. */
function branchesOf(branch: JsonSchema, type: ts.Type, path: string, making: Making): Node[] {
  const inner = branch['oneOf'] as JsonSchema[] | undefined;
  if (!inner || branch['properties']) return [branchOf(branch, type, path, making)];
  return inner.map((one, i) => branchOf(one, type, `${path}/${wordOf(one) ?? i}`, making));
}

/** A rule of what goes together: its branches by the titles of their members. */
function rule(schema: JsonSchema, owner: ts.Type): Node {
  const named = (one: JsonSchema): Node => {
    const names = (one['required'] as string[] | undefined) ?? [];
    const titles = names.map((name) => {
      const member = owner.getProperty(name);
      return member ? titleOf(member) : humanized(name);
    });
    return titles.length > 0 ? { title: titles.join(' with '), ...one } : one;
  };
  const each = (key: string): Node =>
    schema[key] ? { [key]: (schema[key] as JsonSchema[]).map(named) } : {};
  const all = schema['allOf'] as JsonSchema[] | undefined;
  return {
    ...each('oneOf'),
    ...each('anyOf'),
    ...(all ? { allOf: all.map((one) => ({ ...one, ...rule(one, owner) })) } : {}),
  };
}

/** Text that must be given may not be empty. */
function notEmpty(text: Node): Node {
  if (text['type'] === 'string' && !text['enum']) return { minLength: 1 };
  const branches = text['anyOf'] as Node[] | undefined;
  return branches ? { anyOf: branches.map((one) => ({ ...one, ...notEmpty(one) })) } : {};
}

/** An object with its members; those that must be given may not be empty text. */
function objectForm(schema: JsonSchema, type: ts.Type, path: string, making: Making): Node {
  const required = new Set(schema['required'] as string[]);
  const members = Object.entries(propertiesOf(schema)).map(([name, inner]) => {
    const symbol = type.getProperty(name);
    const own = symbol ? making.checker.getTypeOfSymbol(symbol) : type;
    const help = helpOf(symbol, making.checker, type);
    const text = described(inner, own, `${path}/${name}`, making);
    const filled = required.has(name) ? notEmpty(text) : {};
    return [
      name,
      {
        title: symbol ? titleOf(symbol) : humanized(name),
        ...(help ? { description: help } : {}),
        ...text,
        ...filled,
      },
    ] as const;
  });
  return { ...schema, ...rule(schema, type), properties: Object.fromEntries(members) };
}

function described(schema: JsonSchema, type: ts.Type, path: string, making: Making): Node {
  const ref = schema['$ref'] as string | undefined;
  if (ref) return referred(ref.slice('#/$defs/'.length), type, path, making);
  if (schema['properties']) {
    return objectForm(schema, typeOf(schema, type, making.checker) ?? type, path, making);
  }
  for (const key of ['oneOf', 'anyOf']) {
    const branches = schema[key] as JsonSchema[] | undefined;
    if (!branches) continue;
    return {
      ...schema,
      [key]: branches.flatMap((one, i) => branchesOf(one, type, `${path}/${wordOf(one) ?? i}`, making)),
    };
  }
  if (schema['items']) {
    const items = described(
      schema['items'] as JsonSchema,
      elementOf(type, making) ?? type,
      `${path}/[]`,
      making,
    );
    return { ...schema, items };
  }
  // A form writes by itself the word that tells a kind from others.
  if (schema['const'] !== undefined) return { ...schema, default: schema['const'] };
  if (schema['enum'] || schema['type'] === 'null') return { ...schema };
  return { ...schema, ...exampleOf(path, undefined, making.examples) };
}

/** The schema of a calculation's form. */
export function formSchema(
  schema: JsonSchema,
  type: ts.Type,
  { id, title, summary }: { readonly id: string; readonly title: string; readonly summary: string },
  { checker, examples }: Pick<Making, 'checker' | 'examples'>,
): Node {
  const { $schema, $defs, title: _, ...root } = schema;
  const making: Making = {
    checker,
    defs: ($defs ?? {}) as Making['defs'],
    described: {},
    examples,
  };
  const form = described(root, type, id, making);
  return {
    $schema,
    $id: `urn:flatwork-reckoner:${id}:form`,
    title,
    description: summary,
    ...form,
    ...(Object.keys(making.described).length > 0 ? { $defs: making.described } : {}),
  };
}
