/** Schemas for tests that walk them. */

type Schema = Readonly<Record<string, unknown>>;

/** A schema with what it refers to written out in place; what stands within itself only once. */
export function inlined(schema: Schema): Schema {
  const { $defs = {}, ...root } = schema;
  const walk = (value: unknown, open: readonly string[]): unknown => {
    if (Array.isArray(value)) return value.map((item) => walk(item, open));
    if (typeof value !== 'object' || value === null) return value;
    const ref = (value as Schema)['$ref'];
    if (typeof ref === 'string') {
      const name = ref.slice('#/$defs/'.length);
      return open.includes(name) ? { type: 'object' } : walk(($defs as Schema)[name], [...open, name]);
    }
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, walk(inner, open)]));
  };
  return walk(root, []) as Schema;
}
