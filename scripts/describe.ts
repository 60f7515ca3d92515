import { writeFileSync } from 'node:fs';
import * as library from '../src/index';
import type { Calculation } from '../src/reckoning/calculation';
import { readVectors } from '../test/support/vectors';
import { examplesFrom } from './describe/examples';
import { formSchema } from './describe/form';
import { readTypes } from './describe/types';

console.time('types');
const { checker, calculations } = readTypes();
console.timeEnd('types');
const byId = new Map(
  calculations.map((d) => [
    (library as never as Record<string, Calculation<never, never>>)[d.name]!.id,
    { ...d, c: (library as never as Record<string, Calculation<never, never>>)[d.name]! },
  ]),
);
console.time('examples');
const examples = examplesFrom(
  readVectors().flatMap(({ vector: v }) =>
    v.expect.error
      ? []
      : [{ id: v.calculation, schema: byId.get(v.calculation)!.c.inputSchema, input: v.input }],
  ),
);
console.timeEnd('examples');
console.time('forms');
for (const [id, d] of byId) {
  const form = formSchema(
    d.c.inputSchema,
    d.input,
    { id, title: d.c.title, summary: d.summary },
    { checker, examples },
  );
  writeFileSync(`src/catalog/described/${id}.json`, JSON.stringify(form, null, 1));
}
console.timeEnd('forms');
console.log(byId.size);
