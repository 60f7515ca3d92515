/** What a sheet or a page is made of must be that: where a caller has no types, it is refused before anything is made. */
import { fault, wrongType } from '../quantity/faults';
import { isQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';

type Members = { readonly [name: string]: unknown };

const isObject = (x: unknown): x is Members => typeof x === 'object' && x !== null && !Array.isArray(x);

const notA = (path: string, wanted: string): never =>
  refuse(path, fault('not-a-result', `this is not what is wanted here; give ${wanted}`));

/** @throws {InputError} `wrong-type` */
export function mustBeTitle(title: unknown, of = 'what it is of'): void {
  if (typeof title !== 'string') refuse('title', wrongType('the title', `text; ${of} comes after it`));
}

/** @throws {InputError} `wrong-type` */
export function mustBeView(view: unknown): void {
  if (!isObject(view)) refuse('view', wrongType('the view', 'an object, for example { system: "metric" }'));
}

const JOB_LISTS = ['elements', 'mixes', 'purchases', 'overlaps', 'missing'] as const;

/** @throws {InputError} `not-a-result` */
export function mustBeJob(job: unknown): void {
  const takeoff = isObject(job) && Array.isArray(job['parts']) ? job['takeoff'] : undefined;
  const figures = isObject(takeoff) && Array.isArray(takeoff['cautions']) ? takeoff['figures'] : undefined;
  if (!isObject(figures) || !JOB_LISTS.every((name) => Array.isArray(figures[name])))
    notA('job', 'what reckonJob returned');
}

/** @throws {InputError} `not-a-result` */
export function mustBeResult(result: unknown, path: string): void {
  if (!isObject(result)) notA(path, 'what a calculation returned');
}

/** @throws {InputError} `wrong-type`, `not-a-result` */
export function mustBeParts(parts: unknown): void {
  const wanted = 'a list of { name: "Slab", results: [ … ] }';
  if (!Array.isArray(parts)) refuse('parts', wrongType('the parts', wanted));
  for (const [i, part] of parts.entries()) {
    if (!isObject(part) || typeof part['name'] !== 'string' || !Array.isArray(part['results']))
      refuse(`parts[${i}]`, wrongType('a part', '{ name: "Slab", results: [ … ] }'));
    for (const [k, one] of part['results'].entries()) mustBeResult(one, `parts[${i}].results[${k}]`);
  }
}

/** @throws {InputError} `not-a-result` */
export function mustHave(figures: unknown, list: string, of: string): void {
  if (!isObject(figures) || !Array.isArray(figures[list])) notA('figures', `the figures of ${of}`);
}

/** @throws {InputError} `not-a-result` */
export function mustBeQuantity(q: unknown): void {
  if (!isQuantity(q)) notA('quantity', 'a quantity');
}

/** @throws {InputError} `not-a-result` */
export function mustBeWords(words: unknown): void {
  if (!isObject(words) || typeof words['says'] !== 'string')
    notA('words', 'what says something, as a caution');
}
