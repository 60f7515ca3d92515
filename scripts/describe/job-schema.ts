/**
 * The whole JSON Schema of a job document: its own form, with the form of every part under `$defs`.
 *
 * A part is what its calculation is given, less what follows from the rest of the document: nothing in it must be
 * there, and what it says itself must be right. So what may come from elsewhere is not asked for, and a kind that may be
 * said elsewhere is any of them.
 */
import { VERSIONS } from '../../src/job/versions';
import type { JsonSchema } from '../../src/reckoning/fields';

type Node = { readonly [key: string]: unknown };

/** The member under which a schema names the calculation that a part is the input of. */
const INPUT_OF = 'x-input-of';

/** What a form says of a calculation, by its id. */
type Forms = ReadonlyMap<string, JsonSchema>;

/** The forms of what has been described. */
export const formsOf = (described: readonly (readonly [id: string, description: unknown])[]): Forms =>
  new Map(described.map(([id, description]) => [id, (description as { formSchema: JsonSchema }).formSchema]));

/** A quantity in a file: text, as a form has it, or what this library writes. */
const QUANTITY: JsonSchema = {
  title: 'Quantity',
  anyOf: [
    { title: 'Text with its unit', type: 'string' },
    {
      title: 'Value and unit',
      type: 'object',
      properties: {
        value: {
          anyOf: [
            { title: 'Text', type: 'string' },
            { title: 'Number', type: 'number' },
          ],
        },
        unit: { type: 'string' },
      },
      required: ['value', 'unit'],
    },
  ],
};

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const each = (of: unknown, change: (node: Node) => Node): Node =>
  Object.fromEntries(
    Object.entries(of as Node).map(([name, inner]) => [name, isNode(inner) ? change(inner) : inner]),
  );

/** Every schema within one, changed. */
function within(schema: Node, change: (inner: Node) => Node): Node {
  return Object.fromEntries(
    Object.entries(schema).map(([key, value]) => {
      if (key === 'properties' || key === '$defs') return [key, each(value, change)];
      if (key === 'items' && isNode(value)) return [key, change(value)];
      if (['oneOf', 'anyOf', 'allOf'].includes(key)) return [key, (value as Node[]).map(change)];
      return [key, value];
    }),
  );
}

/** A field for text in a form is a quantity in a file. */
function inFile(schema: Node): Node {
  if (schema['x-dimension'] === undefined) return within(schema, inFile);
  const { type: _type, minLength: _least, 'x-examples': _pair, ...rest } = schema;
  return { ...rest, $ref: '#/$defs/quantity' };
}

/** A rule names what must be there, and describes nothing. */
const isRule = (schema: Node): boolean => schema['type'] === undefined && schema['$ref'] === undefined;

const namesOf = (rule: Node): readonly string[] => (rule['required'] ?? []) as readonly string[];

/** Of groups that stand instead of each other, no two at once. */
function noTwo(groups: readonly Node[]): Node[] {
  const pairs = groups.flatMap((a, i) => groups.slice(i + 1).map((b) => [...namesOf(a), ...namesOf(b)]));
  const apart = pairs.filter((names) => new Set(names).size === names.length);
  return apart.map((required) => ({
    not: { required, properties: Object.fromEntries(required.map((name) => [name, true])) },
  }));
}

/** What a rule still says where members may come from elsewhere: only what must not be together. */
function looserRule(rule: Node): Node[] {
  const { oneOf, allOf, not, if: condition, then } = rule;
  const own = not === undefined ? [] : [{ not }];
  const either = Array.isArray(oneOf) ? noTwo(oneOf as Node[]) : [];
  const all = Array.isArray(allOf) ? (allOf as Node[]).flatMap(looserRule) : [];
  const follows = isNode(then) ? looserRule(then) : [];
  const where = follows.length > 0 ? [{ anyOf: [{ not: condition }, { allOf: follows }] }] : [];
  return [...own, ...either, ...all, ...where];
}

const RULES = ['required', 'dependentRequired', 'not', 'if', 'then', 'else', 'allOf'];

/** The word that tells an object from others of its kind must be there; nothing else must. */
const wordOf = ({ properties, required = [] }: Node): string[] =>
  (required as readonly string[]).filter(
    (name) => (properties as { [name: string]: Node })[name]?.['const'] !== undefined,
  );

const branchesOf = (schema: Node, key: 'oneOf' | 'anyOf'): readonly Node[] | undefined => {
  const branches = schema[key] as readonly Node[] | undefined;
  return branches?.every(isRule) ? undefined : branches;
};

/** Without what must be there; a word that tells kinds apart only where it `tells`. */
function looser(schema: Node, tells = true): Node {
  if (schema['x-dimension'] !== undefined) return schema;
  const kinds = branchesOf(schema, 'oneOf') ?? branchesOf(schema, 'anyOf');
  const told = tells && schema['x-discriminator'] !== undefined;
  const { oneOf: _one, anyOf: _any, ...rest } = schema;
  const members = Object.fromEntries(Object.entries(rest).filter(([key]) => !RULES.includes(key)));
  const rules = looserRule(kinds ? rest : schema);
  const words = told || kinds || !tells ? [] : wordOf(schema);
  return {
    ...within(members, (inner) => looser(inner)),
    ...(words.length > 0 ? { required: words } : {}),
    ...(rules.length > 0 ? { allOf: rules } : {}),
    ...(kinds ? { [told ? 'oneOf' : 'anyOf']: kinds.map((kind) => looser(kind, tells)) } : {}),
  };
}

/** A form as a part: of one kind or another, whichever the rest of the document says. */
function partOf(form: JsonSchema): Node {
  const { $schema: _schema, $id: _id, $defs: _defs, 'x-limits': _limits, ...root } = form;
  return looser(inFile(root), false);
}

/** Members of a mat stand beside those of a region, which is then one mat. */
function withMat(part: Node): Node {
  const kinds = part['anyOf'] as readonly Node[];
  const region = kinds.find(({ properties }) => isNode(properties) && 'mats' in properties) as Node;
  const properties = region['properties'] as { readonly [name: string]: Node };
  const mat = (properties['mats'] as Node)['items'] as Node;
  const one = { ...properties, ...(mat['properties'] as Node) };
  const rules = [...((region['allOf'] ?? []) as Node[]), ...((mat['allOf'] ?? []) as Node[])];
  const beside = { ...region, title: 'One mat over an outline', properties: one, allOf: rules };
  return { ...part, anyOf: [...kinds, beside] };
}

const OWN_WAY: Readonly<Record<string, (part: Node) => Node>> = { 'rebar-layout': withMat };

/** What the job puts into a part is not said in it. */
function without(part: Node, names: readonly string[]): Node {
  const properties = Object.entries(part['properties'] as Node).filter(([name]) => !names.includes(name));
  return { ...part, properties: Object.fromEntries(properties) };
}

/** The whole schema of a job document. */
export function jobSchema(forms: Forms): JsonSchema {
  const { $defs, $id: _id, ...root } = inFile(forms.get('job-takeoff') as JsonSchema) as JsonSchema;
  const defs: { [name: string]: unknown } = { quantity: QUANTITY };
  const define = (all: unknown): void => {
    for (const [name, def] of Object.entries((all ?? {}) as Node)) defs[name] ??= looser(inFile(def as Node));
  };
  define($defs);

  /** A part refers to what its calculation is given. */
  function filled(schema: Node): Node {
    const id = schema[INPUT_OF] as string | undefined;
    if (id === undefined) return within(schema, filled);
    const form = forms.get(id) as JsonSchema;
    define(form['$defs']);
    const part = (OWN_WAY[id] ?? ((one: Node) => one))(partOf(form));
    const from = (schema['x-from-job'] ?? []) as readonly string[];
    const { title, description, 'x-from-job': _from, ...rest } = schema;
    const words = { ...(title ? { title } : {}), ...(description ? { description } : {}) };
    if (schema['properties']) {
      return {
        ...part,
        ...words,
        ...rest,
        properties: { ...(part['properties'] as Node), ...(schema['properties'] as Node) },
      };
    }
    defs[id] ??= from.length > 0 ? without(part, from) : part;
    const [, yesOrNo] = schema['anyOf'] as [Node, Node];
    return {
      ...words,
      [INPUT_OF]: id,
      anyOf: [{ title: 'What it is given', $ref: `#/$defs/${id}` }, yesOrNo],
    };
  }

  const document = filled(root);
  return { ...document, $id: `urn:flatwork-reckoner:job:${VERSIONS.newest}`, $defs: defs };
}
