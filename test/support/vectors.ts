/** Reading and running the check vectors. */
import { readdirSync, readFileSync } from 'node:fs';
import { calculations as catalog } from '../../src/catalog/all';
import { temperatureDifference } from '../../src/quantity/make';
import { readMoney } from '../../src/quantity/money';
import { Quantity } from '../../src/quantity/quantity';
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import { sentenceOf, type Words } from '../../src/quantity/words';

interface Expected {
  readonly equals: string | boolean;
  readonly within?: string;
}

export interface Vector {
  readonly id: string;
  readonly calculation: string;
  readonly title: string;
  readonly advice?: string;
  readonly source: { readonly kind: string; readonly title: string; readonly locator?: string };
  readonly input: unknown;
  readonly system?: 'customary' | 'metric';
  readonly expect: {
    readonly figures?: Readonly<Record<string, Expected>>;
    readonly cautions?: readonly string[];
    readonly error?: readonly string[];
  };
  readonly note?: string;
}

export const VECTORS_DIR = new URL('../../vectors/', import.meta.url);

export interface VectorFile {
  /** `<calculation>/<name>`: the path, or for a case out of a list the folder and the name of its own. */
  readonly at: string;
  readonly vector: Vector;
}

/** The cases of one file: one, or a list. */
function casesIn(folder: string, file: string): VectorFile[] {
  const json = JSON.parse(readFileSync(new URL(`${folder}/${file}`, VECTORS_DIR), 'utf8')) as
    | Vector
    | readonly Vector[];
  if (!('length' in json)) return [{ at: `${folder}/${file.replace(/\.json$/, '')}`, vector: json }];
  return json.map((vector) => ({ at: `${folder}/${vector.id.split('/').at(-1)}`, vector }));
}

export function readVectors(): VectorFile[] {
  const folders = readdirSync(VECTORS_DIR, { withFileTypes: true }).filter((d) => d.isDirectory());
  return folders.flatMap(({ name }) =>
    readdirSync(new URL(`${name}/`, VECTORS_DIR)).flatMap((file) => casesIn(name, file)),
  );
}

/** `along.lines` or `loads.0`. */
function figureAt(figures: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((inner, part) => (inner as Record<string, unknown> | undefined)?.[part], figures);
}

function quantityLike(text: string, like: Quantity): Quantity {
  const what = 'the expected figure';
  const q = like.dimension === 'money' ? readMoney(text, what) : readQuantity(text, like.dimension, what);
  if (isFaulty(q)) throw new Error(`${text}: ${q.sentence}`);
  return q;
}

/** Temperatures are points on a scale: how far two are apart is reckoned in degrees Fahrenheit. */
const degrees = (q: Quantity): Quantity => temperatureDifference(`${q.format('degF', { places: 40 })}`);

/** How far two figures of a dimension are apart. */
const apart = (a: Quantity, b: Quantity): Quantity =>
  a.dimension === 'temperature' ? apart(degrees(a), degrees(b)) : a.minus(b).abs();

function isWithin(figure: Quantity, wanted: Quantity, within: string): boolean {
  const off = apart(figure, wanted);
  return !off.greaterThan(quantityLike(within, off));
}

const isWords = (figure: unknown): figure is Words =>
  typeof figure === 'object' && figure !== null && 'says' in figure;

/** What is wrong with one figure, or nothing. */
function objectTo(figure: unknown, expected: Expected): string | undefined {
  const { equals, within } = expected;
  if (!(figure instanceof Quantity)) {
    const told = isWords(figure) ? sentenceOf(figure) : figure;
    return told === equals ? undefined : `${String(told)} is not ${String(equals)}`;
  }
  const wanted = quantityLike(String(equals), figure);
  const close = within ? isWithin(figure, wanted, within) : figure.compareTo(wanted) === 0;
  return close
    ? undefined
    : `${figure.toString()} is not ${String(equals)}${within ? ` within ${within}` : ''}`;
}

const sorted = (codes: readonly string[]): string => [...codes].sort().join(', ');

/** What a calculation makes of the input of a vector. */
export type Outcome = ReturnType<(typeof catalog)[number]['attempt']>;

/** Run a vector once; its outcome may be judged by more than one expectation. */
export function outcomeOf({ calculation, input, system }: Vector): Outcome {
  const entry = catalog.find(({ id }) => id === calculation);
  if (!entry) throw new Error(`no calculation ${calculation}`);
  return entry.attempt(input, system && { system });
}

/** Everything that is wrong with an outcome by what was expected; an empty list when nothing is. */
export function objections(attempt: Outcome, expect: Vector['expect']): string[] {
  if (!attempt.ok) {
    const codes = attempt.error.issues.map(({ code }) => code).join(', ');
    return codes === expect.error?.join(', ') ? [] : [`refused: ${codes}: ${attempt.error.message}`];
  }
  if (expect.error) return [`not refused, but ${expect.error.join(', ')} expected`];
  const found = Object.entries(expect.figures ?? {}).flatMap(([name, expected]) => {
    const objection = objectTo(figureAt(attempt.result.figures, name), expected);
    return objection ? [`${name}: ${objection}`] : [];
  });
  const codes = sorted(attempt.result.cautions.map(({ code }) => code));
  if (expect.cautions && codes !== sorted(expect.cautions)) found.push(`cautions: ${codes}`);
  return found;
}
