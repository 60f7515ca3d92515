/** What must hold of a result: it repeats, goes through JSON, prints in every unit, and its working is true. */
import { type Figure, Quantity, type Result, revive } from '../../../src/index';
import { readMoney } from '../../../src/quantity/money';
import { isFaulty, readQuantity } from '../../../src/quantity/read-quantity';
import { unitsOf } from '../../../src/quantity/units';
import { markdownSheet, textSheet } from '../../../src/report/index';
import { worksheet } from '../../../src/report/text-sheet';
import { wordsText } from '../../../src/report/view';
import { stepObjection } from './steps';

export type AnyResult = Result<Record<string, Figure>>;

const NONSENSE = /\bNaN\b|\bInfinity\b|\bundefined\b|\[object|\bnull\b/;

/** A run of noughts behind the point that no measurement has: what rounding left over. */
const STRAY = /\b0\.0{13,}|\.\d{30,}/;

function* quantitiesOf(value: unknown, place = ''): Generator<readonly [string, Quantity]> {
  if (value instanceof Quantity) yield [place, value];
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value))
      yield* quantitiesOf(inner, place ? `${place}.${key}` : key);
}

const nonsense = (where: string, text: string): string | undefined =>
  NONSENSE.test(text) ? `nonsense in ${where}: ${around(text, NONSENSE)}` : undefined;

const textObjection = (where: string, text: string): string | undefined =>
  nonsense(where, text) ?? (STRAY.test(text) ? `stray in ${where}: ${around(text, STRAY)}` : undefined);

const around = (text: string, wanted: RegExp): string => {
  const at = text.search(wanted);
  return text.slice(Math.max(0, at - 60), at + 60).replaceAll('\n', ' ');
};

/** Most quantities that are printed of one result; a mat has thousands. */
const PRINTED = 60;

function quantityObjection(place: string, q: Quantity): string | undefined {
  const { dimension } = q;
  const exact = q.toString();
  const back = dimension === 'money' ? readMoney(exact, 'it') : readQuantity(exact, dimension, 'it');
  if (isFaulty(back)) return `exact text does not read: ${place} ${exact}: ${back.sentence}`;
  if (!back.equals(q)) return `exact text reads as another: ${place} ${exact}`;
  const units = dimension === 'money' ? [] : unitsOf(dimension);
  for (const text of [q.format(), ...units.map((unit) => q.format(unit))]) {
    const said = textObjection(`figure ${place}`, text);
    if (said) return said;
    if (text.length > 60) return `long figure ${place}: ${text}`;
  }
  return undefined;
}

function printedObjections(result: AnyResult): string[] {
  const found: (string | undefined)[] = [];
  let printed = 0;
  for (const [place, q] of quantitiesOf({ figures: result.figures, cautions: result.cautions })) {
    printed += 1;
    if (printed > PRINTED) break;
    found.push(quantityObjection(place, q));
  }
  for (const c of result.cautions) {
    const sentence = wordsText(c);
    if (sentence.length < 8 || sentence.length > 600 || /[{}]/.test(sentence))
      found.push(`caution of ${sentence.length} characters: ${sentence.slice(0, 80)}`);
    if (c.limit?.dimension !== c.actual?.dimension)
      found.push(`caution ${c.code}: limit and actual differ in kind`);
    found.push(textObjection(`caution ${c.code}`, sentence));
  }
  return found.filter((said) => said !== undefined);
}

function revivalObjection(result: AnyResult, text: string): string | undefined {
  const json: unknown = JSON.parse(text);
  const back = revive(text);
  if (JSON.stringify(back) !== text) return 'revived from text, its JSON differs';
  if (JSON.stringify(revive(structuredClone(json))) !== text) return 'revived from a clone, its JSON differs';
  if (worksheet(back) !== worksheet(result)) return 'revived, it prints differently';
  return undefined;
}

function sheetObjection(result: AnyResult): string | undefined {
  const parts = [{ name: 'part', results: [result] }];
  return nonsense('worksheet', textSheet('Job', parts)) ?? nonsense('markdown', markdownSheet('Job', parts));
}

function tried(what: string, look: () => string | undefined): string | undefined {
  try {
    return look();
  } catch (error) {
    return `${what} threw ${(error as Error).name}: ${(error as Error).message}`;
  }
}

const STEPS = 60;

/**
 * Everything that is wrong with a result.
 *
 * @param again - the JSON of the same input reckoned once more
 */
export function resultObjections(result: AnyResult, again: string): string[] {
  const text = JSON.stringify(result);
  const found: (string | undefined)[] = [
    again === text ? undefined : 'repeated, it differs',
    tried('reviving', () => revivalObjection(result, text)),
    tried('the sheet', () => sheetObjection(result)),
  ];
  try {
    found.push(...printedObjections(result));
  } catch (error) {
    found.push(`printing threw ${(error as Error).name}: ${(error as Error).message}`);
  }
  for (const step of result.working.slice(0, STEPS))
    found.push(tried(`step ${step.formula}`, () => stepObjection(step)));
  return found.filter((said) => said !== undefined);
}
