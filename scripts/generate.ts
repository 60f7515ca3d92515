/**
 * Writes what is made from the calculations: the catalog, its loaders, what describes each calculation, and the tables
 * of README and docs.
 *
 *     npm run generate
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { entriesOf, everyModule, loadersModule } from './describe/catalog';
import { holdCautionCodes } from './describe/caution-codes';
import { describe } from './describe/describe';
import { digest } from './describe/digest';
import { formsOf, jobSchema } from './describe/job-schema';
import { readTypes } from './describe/types';
import { unitTable } from './describe/units';

const OUT = new URL('../src/catalog/generated/', import.meta.url);

const json = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;

const types = readTypes();
holdCautionCodes(types);
const entries = entriesOf(types);
const described = describe(types, entries);
rmSync(new URL('described/', OUT), { recursive: true, force: true });
mkdirSync(new URL('described/', OUT), { recursive: true });
for (const [id, description] of described) {
  writeFileSync(new URL(`described/${id}.json`, OUT), json(description));
}
writeFileSync(new URL('job.schema.json', OUT), json(jobSchema(formsOf(described))));
writeFileSync(new URL('units.json', OUT), json(unitTable(described)));
writeFileSync(new URL('list.json', OUT), json(entries.map(({ entry }) => entry)));
writeFileSync(new URL('loaders.ts', OUT), loadersModule(entries));
writeFileSync(new URL('every.ts', OUT), everyModule(entries));

// These read the catalog, which is only now as it should be.
const { pages } = await import('./describe/pages');
for (const { file, text } of pages()) writeFileSync(new URL(`../${file}`, import.meta.url), text);

// Last, since the list of caution codes among the pages is one of the sources.
writeFileSync(new URL('digest.json', OUT), json(digest()));
