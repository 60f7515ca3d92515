/** What the pages of a job may say: jobs that have each vector of a part's calculation as that part, and its schemas. */
import { loadCalculation } from '../../src/catalog/index';
import { DAY_PARTS } from '../../src/job/day-inputs';
import type { JobInput } from '../../src/job/document';
import { ELEMENT_PARTS, JOB_PARTS } from '../../src/job/part-inputs';
import { spoken } from '../../src/report/labels';
import type { Vector } from './vectors';

/** Calculations whose words stand on the page of a crew. */
export const PART_IDS: readonly string[] = [
  ...new Set([...Object.values(ELEMENT_PARTS), ...Object.values(DAY_PARTS)]),
];

/** Calculations of the job as a whole, of which a page shows what to watch out for, and the check of what was placed. */
export const WHOLE_IDS: readonly string[] = [
  ...Object.values(JOB_PARTS),
  'mix-requirements',
  'job-takeoff',
  'thickness-check',
];

/** A job with a vector as the part of its one element, called §; nothing for a vector of another calculation. */
export function jobWith({ calculation, input }: Vector): JobInput | undefined {
  const part = Object.entries(ELEMENT_PARTS).find(([, id]) => id === calculation)?.[0];
  if (part !== undefined) return { version: 1, elements: [{ name: '§', [part]: input }] };
  const ofDay = Object.entries(DAY_PARTS).find(([name, id]) => name !== 'trucks' && id === calculation)?.[0];
  if (ofDay !== undefined)
    return { version: 1, elements: [{ name: '§' }], days: [{ name: '§', elements: ['§'], [ofDay]: input }] };
  return calculation === 'job-takeoff' ? (input as JobInput) : undefined;
}

function collect(schema: unknown, words: Set<string>): void {
  if (Array.isArray(schema)) for (const each of schema) collect(each, words);
  if (typeof schema !== 'object' || schema === null || Array.isArray(schema)) return;
  // Words as data are no labels: what they say is met on the pages.
  if ('properties' in schema && 'says' in (schema.properties as object)) return;
  const { properties, enum: all = [], const: one } = schema as Record<string, object | undefined>;
  for (const name of Object.keys(properties ?? {})) words.add(spoken(name));
  for (const word of [...(all as unknown[]), one]) if (typeof word === 'string') words.add(word);
  for (const inner of Object.values(schema)) collect(inner, words);
}

/** Labels of all inputs and figures of a calculation, and the words that may stand in them. */
export async function wordsOf(id: string): Promise<Set<string>> {
  const loaded = await loadCalculation(id);
  const words = new Set<string>();
  if (loaded) words.add(loaded.title);
  collect([loaded?.formSchema, loaded?.outputSchema], words);
  return words;
}
