/** What describes each calculation: the schemas of its form, as a tool, and of its figures. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Listed } from './catalog';
import { examplesFrom, type Taken } from './examples';
import { figuresSchema } from './figures';
import { formSchema } from './form';
import { toolSchema } from './tool';
import type { Types } from './types';

const VECTORS = new URL('../../vectors/', import.meta.url);

interface Vector {
  readonly input: unknown;
  readonly expect: { readonly error?: unknown };
}

/** The inputs of a calculation that its check vectors have it take. */
function takenBy({ entry, calculation }: Listed): Taken[] {
  const folder = new URL(`${entry.id}/`, VECTORS);
  const vectors = readdirSync(folder)
    .sort()
    .flatMap((file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Vector | Vector[]);
  const schema = calculation.inputSchema;
  return vectors.flatMap(({ input, expect }) => (expect.error ? [] : [{ id: entry.id, schema, input }]));
}

/** By id. */
export function describe({ checker }: Types, entries: readonly Listed[]): [string, unknown][] {
  const examples = examplesFrom(entries.flatMap(takenBy));
  return entries.map(({ declared, calculation, entry }) => {
    const form = formSchema(calculation.inputSchema, declared.input, entry, { checker, examples });
    return [
      entry.id,
      {
        formSchema: form,
        toolSchema: toolSchema(form),
        outputSchema: figuresSchema(declared.figures, entry, checker),
      },
    ];
  });
}
