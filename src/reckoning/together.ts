/**
 * What members of an input must be given together, or instead of each other, as its JSON Schema says it.
 *
 * A calculation checks it while it reckons, where it knows which other way there is; here a form learns of it before.
 * Members are named among the `properties` of each rule, as strict readers of schemas want them.
 */
import type { JsonSchema } from './fields';

/** All of these are given. */
export const given = (...names: readonly string[]): JsonSchema => ({
  required: names,
  properties: Object.fromEntries(names.map((name) => [name, true])),
});

/** A list that is given and has something in it. */
export const filled = (name: string): JsonSchema => ({
  required: [name],
  properties: { [name]: { type: 'array', minItems: 1 } },
});

/** A member is this very word. */
export const says = (name: string, word: string | true): JsonSchema => ({
  required: [name],
  properties: { [name]: { const: word } },
});

/** A member is given, an object with this member of its own. */
export const holds = (name: string, member: string): JsonSchema => ({
  required: [name],
  properties: { [name]: { type: 'object', ...given(member) } },
});

/** One of these groups, and only one. */
export const oneOf = (...groups: readonly (readonly string[])[]): JsonSchema => ({
  oneOf: groups.map((names) => given(...names)),
});

/** One of these rules or more. */
export const anyOf = (...rules: readonly JsonSchema[]): JsonSchema => ({ anyOf: rules });

/** None of these. */
export const none = (...names: readonly string[]): JsonSchema => ({
  not: anyOf(...names.map((name) => given(name))),
});

/** Not these two at once. */
export const notBoth = (one: string, other: string): JsonSchema => ({ not: given(one, other) });

/** Who gives one of these gives all. */
export const allOrNone = (...names: readonly string[]): JsonSchema => ({
  dependentRequired: Object.fromEntries(names.map((name) => [name, names.filter((n) => n !== name)])),
});

/** Who gives the first gives the others. */
export const needs = (name: string, ...others: readonly string[]): JsonSchema => ({
  dependentRequired: { [name]: others },
});

/** Where one rule holds, another must; and where it does not, a third may have to. */
export const where = (rule: JsonSchema, then: JsonSchema, otherwise?: JsonSchema): JsonSchema => ({
  if: rule,
  then,
  ...(otherwise && { else: otherwise }),
});

/** All of these rules. */
export const all = (...rules: readonly JsonSchema[]): JsonSchema => ({ allOf: rules });
