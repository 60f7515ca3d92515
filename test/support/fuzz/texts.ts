/**
 * Texts as something to be fuzzed: written by a grammar that knows what it means, or spoilt.
 *
 * What is accepted must be what an independent reading makes of it: numbers as fractions of whole numbers,
 * units from the fuzzer's own table, one pattern for a part. What is shown must read back as the same.
 */
import { InputError, type Quantity } from '../../../src/index';
import { readMoney } from '../../../src/quantity/money';
import { isFaulty, readQuantity } from '../../../src/quantity/read-quantity';
import { unitsOf } from '../../../src/quantity/units';
import type { Chance } from '../relations/random';
import { plainText, someHand, written } from './notation';
import { siOf } from './pools';
import { described } from './refusals';
import { type Objection, type Outcome, type Target, timed } from './target';
import { MEASURED, type Measured, toSi, UNITS, type UnitNote } from './units';

const SIGNS = '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞';

/** A sign of a fraction as a space and a fraction: Unicode's own compatibility forms. */
const opened = (text: string): string =>
  text.replace(new RegExp(`[${SIGNS}]`, 'g'), (sign) => ` ${sign.normalize('NFKC').replace('⁄', '/')}`);

const PART =
  /^\s*(?:(\d[\d,]*)(?:\s*[- ]\s*)(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d[\d,]*\.?\d*|\.\d+))\s*-?\s*([^\d\s.,-][^\d]*?(?:[23](?![\d]))?(?:\/[^\d]*?[23]?(?![\d]))*)\.?\s*[-,]?\s*(?=[\d.]|$)/;

function numberOf([, whole, top, bottom, top2, bottom2, decimal]: RegExpExecArray): number {
  const plain = (text: string | undefined): number => Number((text ?? '0').replaceAll(',', ''));
  if (decimal !== undefined) return plain(decimal);
  return top === undefined ? plain(top2) / plain(bottom2) : plain(whole) + plain(top) / plain(bottom);
}

const bySpelling = new Map<string, UnitNote>();
for (const d of MEASURED)
  for (const unit of UNITS[d])
    for (const spelling of unit.spellings) bySpelling.set(`${d} ${unitKey(spelling)}`, unit);

/** One spelling of a unit for many: without points, case, plurals and words for signs. */
function unitKey(name: string): string {
  return name
    .toLowerCase()
    .replace(/\s*[-,.]+\s*$/, '')
    .replace(/\s+/g, ' ')
    .replace(/ per /g, '/')
    .replace(/\b(?:feet|foot)\b/g, 'ft')
    .replace(/\binch(?:es)?\b/g, 'in')
    .replace(/(\w{2})s\b/g, '$1')
    .trim();
}

const unitFor = (d: Measured, name: string): UnitNote | undefined => bySpelling.get(`${d} ${unitKey(name)}`);

const tidied = (text: string): string =>
  opened(text)
    .replace(/[″“”]/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/−/g, '-')
    .replace(/[０-９]/g, (digit) => digit.normalize('NFKC'))
    .replace(/([A-Za-z])\.(?!\d)/g, '$1')
    .replace(/(\d)\.+(?=\s*[A-Za-z%°"'])/g, '$1')
    .replace(/\s+per\s+/g, '/')
    .replace(/\s*\/\s*/g, '/')
    .trim();

/** The SI value of a text by the independent reading; `undefined` where that reading does not know it. */
function readApart(text: string, d: Measured): number | undefined {
  const whole = tidied(text);
  return readColon(whole, d) ?? readParts(whole, d);
}

/** `1:48` as a slope, `1.5:1` as a ratio. */
function readColon(text: string, d: Measured): number | undefined {
  const [, minus, one, other] = /^(-?)([\d,.]+)\s*:\s*([\d,.]+)$/.exec(text) ?? [];
  if (one === undefined || other === undefined) return undefined;
  const [a, b] = [one, other].map((n) => Number(n.replaceAll(',', ''))) as [number, number];
  const known = (d === 'slope' && a === 1) || (d === 'ratio' && b === 1);
  return known ? ((minus ? -1 : 1) * a) / b : undefined;
}

function readParts(whole: string, d: Measured): number | undefined {
  let rest = whole;
  const sign = rest.startsWith('-') ? -1 : 1;
  rest = rest.replace(/^[-+]\s*/, '');
  let [sum, parts] = [0, 0];
  while (rest !== '') {
    const found = PART.exec(rest);
    const unit = found ? unitFor(d, found[7] as string) : undefined;
    if (!found || !unit) return undefined;
    const number = numberOf(found);
    sum += parts === 0 ? toSi(d, unit, sign * number) : sign * number * unit.si;
    parts += 1;
    rest = rest.slice(found[0].length);
  }
  return sum;
}

/** Letters that slips of the thumb put in, leave out or change. */
const SLIPS = [
  ...'0123456789.,\'"-/ :½²°%eExmMftin',
  '  ',
  '--',
  '\u00a0',
  '\u200b',
  '\u0000',
  '１',
  ' ft',
  ' in',
];

function slipped(text: string, dice: Chance): string {
  let out = text;
  for (let n = 1 + dice.below(3); n > 0; n -= 1) {
    const at = dice.below(out.length + 1);
    out = out.slice(0, at) + (dice.below(3) > 0 ? dice.pick(SLIPS) : '') + out.slice(at + dice.below(2));
  }
  return out;
}

function size(d: Measured, dice: Chance): number {
  if (d === 'temperature') return dice.below(200) - 60;
  return 10 ** (dice.below(9) - 4) * (1 + 9 * dice.next()) * (dice.below(10) === 0 ? -1 : 1);
}

const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-12);

/** What is wrong with how a quantity is shown, in each unit of its dimension. */
function showingObjection(q: Quantity): string | undefined {
  const d = q.dimension;
  const exact = readQuantity(q.toString(), d, 'it');
  if (isFaulty(exact) || !exact.equals(q)) return `${q.toString()} does not read back as itself`;
  for (const unit of [undefined, ...unitsOf(d)]) {
    const shown = q.format(unit);
    const back = readQuantity(shown, d, 'it');
    if (isFaulty(back)) return `${shown} does not read back: ${back.sentence}`;
    if (back.in(unit ?? back.unit).format(unit) !== shown && unit !== undefined)
      return `${shown} reads back as ${back.format(unit)}`;
  }
  return undefined;
}

/** A slope of 1 in nothing much is shown as level and the like: only readable sizes are read back. */
const readable = (si: number): boolean => si === 0 || (Math.abs(si) > 1e-9 && Math.abs(si) < 1e12);

function objectionTo(text: string, d: Measured, q: Quantity, wanted: number | undefined): string | undefined {
  const found = siOf(q);
  const apart = readApart(text, d);
  if (apart !== undefined && !near(apart, found)) return `reads as ${found}, apart as ${apart}`;
  // The plain reading does not know every slip that is still read; what is written well it must know.
  if (apart === undefined && wanted !== undefined) return `is read as ${q.toString()}, and apart not at all`;
  if (wanted !== undefined && Math.abs(found - wanted) > 0.05 * Math.abs(wanted) + 0.002)
    return `reads as ${found}, written for ${wanted}`;
  // A tenth of a degree is the last that is shown of a temperature: below it two roundings may differ.
  const degrees = d.startsWith('temperature') && Math.abs(found) < 0.1;
  return readable(found) && !degrees ? showingObjection(q) : undefined;
}

function readingRun(dice: Chance): Outcome {
  const d = dice.pick(MEASURED);
  const si = size(d, dice);
  const whole = written(d, si, { ...someHand(dice), digits: 5 }, dice);
  const spoil = dice.below(3) === 0;
  const input = typeof whole === 'string' && spoil ? slipped(whole, dice) : whole;
  const { value: q, ms } = timed(() => readQuantity(input, d, 'it'));
  const said: (string | undefined)[] = [];
  if (isFaulty(q)) {
    const { sentence } = q;
    if (sentence.length < 8 || sentence.length > 400) said.push(`sentence: ${sentence}`);
    if (!spoil) said.push(`is refused: ${sentence}`);
  } else if (typeof input === 'string') said.push(objectionTo(input, d, q, spoil ? undefined : si));
  return outcome(!isFaulty(q), ms, said, { dimension: d, input });
}

function outcome(
  accepted: boolean,
  ms: number,
  said: readonly (string | undefined)[],
  input: unknown,
): Outcome {
  const objections = said.filter((x) => x !== undefined).map((x): Objection => ({ said: x, input }));
  return { accepted, ms, objections };
}

const CODES = ['USD', 'EUR', 'CAD', 'JPY', 'KWD', 'usd', 'XXQ', '$', ''];

function moneyRun(dice: Chance): Outcome {
  const number = plainText(Math.round(10 ** dice.below(9) * dice.next() * 100) / 100, 12);
  const code = dice.pick(CODES);
  const plain = dice.below(2) === 0 ? `${number} ${code}` : `${code} ${number}`;
  const input = dice.below(3) === 0 ? slipped(plain, dice) : plain;
  const { value: q, ms } = timed(() => readMoney(input, 'it'));
  if (isFaulty(q)) {
    const wellWritten = input === plain && /^[A-Z]{3}$/.test(code) && code !== 'XXQ';
    return outcome(false, ms, [wellWritten ? `is refused: ${q.sentence}` : undefined], input);
  }
  const { value, unit } = q;
  const back = readMoney(q.toString(), 'it');
  const same = !isFaulty(back) && back.equals(q);
  const amounts = input.replace(/[０-９]/g, (digit) => digit.normalize('NFKC')).match(/[\d.,]+/g) ?? [];
  const apart = Number((amounts[0] ?? '').replaceAll(',', ''));
  return outcome(
    true,
    ms,
    [
      same ? undefined : `${q.toString()} does not read back`,
      amounts.length !== 1 || Math.abs(Number(value)) !== apart
        ? `${input} reads as ${value} ${unit}`
        : undefined,
    ],
    input,
  );
}

function guarded(id: string, run: (dice: Chance) => Outcome): Target {
  return {
    id,
    cost: 0.5,
    run: (dice) => {
      try {
        return run(dice);
      } catch (error) {
        const said =
          error instanceof InputError
            ? `let an InputError out: ${error.message}`
            : `threw ${described(error)}`;
        return { accepted: false, ms: 0, objections: [{ said, input: id }] };
      }
    },
  };
}

export const textTargets = (): Target[] => [guarded('text', readingRun), guarded('money', moneyRun)];
