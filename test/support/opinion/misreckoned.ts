/** Slips in the reckoning: a term, a factor or an allowance left out or taken twice, a wrong way round, a wrong unit. */
import type { Quantity, SlipCode } from '../../../src/index';
import { siOf, siOfUnit } from '../../../src/opinion/scale';
import { unitShown } from '../../../src/quantity/quantity';
import type { Chance } from '../relations/random';
import { misread, transposed } from './misread';
import { isSound, type Line } from './notebook';
import type { Kind, Made } from './slip';

type Rewriting = (right: string, line: Line, chance: Chance) => readonly (string | undefined)[];

const NAME = '[A-Za-z]\\d*';
const isPlain = (q: Quantity | undefined): boolean => q?.dimension === 'ratio' || q?.dimension === 'count';

/** A formula gone through otherwise. */
const rewritten = (name: string, codes: readonly SlipCode[], weight: number, rewrite: Rewriting): Kind => ({
  weight,
  made: ({ page, carried }, chance) =>
    carried === undefined
      ? []
      : page.working.flatMap((line, step) => {
          if (!isSound(line)) return [];
          const right = line.formula.slice(line.formula.indexOf('=') + 1).trim();
          return rewrite(right, line, chance)
            .filter((other) => other !== undefined && other !== right)
            .map((other): Made => ({ name, codes, step, otherwise: { step, formula: `= ${other}` } }));
        }),
});

/** Every place where a pattern stands, replaced one at a time. */
const each =
  (pattern: RegExp, to: (...found: string[]) => string | undefined): Rewriting =>
  (right) =>
    [...right.matchAll(pattern)].map((match) => {
      const other = to(...match);
      return other === undefined
        ? undefined
        : right.slice(0, match.index) + other + right.slice(match.index + match[0].length);
    });

const SHARE = new RegExp(`\\(1 \\+ (${NAME})\\)`, 'g');

/** Only sums of single terms: what stands in a product is something else. */
const isSum = (right: string): boolean => new RegExp(`^${NAME}(?: [+−] ${NAME})+$`).test(right);

/** One of the terms of a sum. */
const terms =
  (change: (terms: string[], i: number) => string[]): Rewriting =>
  (right) => {
    if (!isSum(right) || right.includes('−')) return [];
    const all = right.split(' + ');
    return all.map((_, i) => change(all, i).join(' + '));
  };

/** One of the plain factors of a product of single names. */
const factors =
  (change: (factor: string) => string): Rewriting =>
  (right, line) =>
    new RegExp(`^${NAME}(?: [×÷] ${NAME})+$`).test(right)
      ? [...right.matchAll(new RegExp(`× (${NAME})|^(${NAME}) × `, 'g'))].map((match) => {
          const factor = match[1] ?? match[2] ?? '';
          if (!isPlain(line.values[factor])) return undefined;
          const other = change(match[1] ? ` × ${factor}` : `${factor} × `);
          return right.replace(match[1] ? ` × ${factor}` : `${factor} × `, other);
        })
      : [];

/** One value where its neighbor of the same kind belongs. */
const swapped: Rewriting = (right, line) => {
  if (/m(?:ax|in)\(/.test(right)) return [];
  const names = Object.keys(line.values);
  return names.flatMap((a) =>
    names.map((b) => {
      const [x, y] = [line.values[a], line.values[b]];
      if (a === b || x?.dimension !== y?.dimension || x?.dimension !== 'length') return undefined;
      return right.replace(new RegExp(`\\b${a}\\b`), b);
    }),
  );
};

const WAYS: readonly Kind[] = [
  rewritten(
    'allowance missed',
    ['allowance-missed'],
    3,
    each(SHARE, () => '1'),
  ),
  rewritten(
    'allowance put on twice',
    ['allowance-twice'],
    2,
    each(SHARE, (all) => `${all} × ${all}`),
  ),
  rewritten(
    'allowance as the factor',
    ['allowance-as-factor'],
    3,
    each(SHARE, (_, a) => a),
  ),
  rewritten(
    'allowance taken off',
    ['allowance-turned', 'added-for-subtracted'],
    2,
    each(SHARE, (_, a) => `(1 − ${a})`),
  ),
  rewritten(
    'share put on',
    ['allowance-turned', 'added-for-subtracted'],
    2,
    each(new RegExp(`\\(1 − (${NAME})\\)`, 'g'), (_, a) => `(1 + ${a})`),
  ),
  rewritten(
    'margin as a markup',
    ['markup-for-margin'],
    2,
    each(new RegExp(`÷ \\(1 − (${NAME})\\)`, 'g'), (_, a) => `× (1 + ${a})`),
  ),
  rewritten(
    'rounded down',
    ['rounded-down'],
    3,
    each(/ceil\(/g, () => 'floor('),
  ),
  rewritten(
    'spaces for bars',
    ['spaces-for-bars', 'term-left-out', 'one-off-count'],
    3,
    each(/ \+ 1(?=$|\))/g, () => ''),
  ),
  rewritten(
    'a half or a quarter left out',
    ['number-left-out', 'diameter-for-radius'],
    2,
    each(/ ÷ [24]\b/g, () => ''),
  ),
  rewritten(
    'twice left out',
    ['number-left-out', 'factor-left-out'],
    1,
    each(/\b2 × /g, () => ''),
  ),
  rewritten(
    'a term left out',
    ['term-left-out', 'part-left-out'],
    3,
    terms((all, i) => all.filter((_, j) => j !== i)),
  ),
  rewritten(
    'a term twice',
    ['term-twice', 'part-twice'],
    2,
    terms((all, i) => [...all, all[i] ?? '']),
  ),
  rewritten(
    'a factor left out',
    ['factor-left-out'],
    2,
    factors(() => ''),
  ),
  rewritten(
    'a factor twice',
    ['factor-twice'],
    1,
    factors((factor) => factor + factor),
  ),
  rewritten(
    'added for taken off',
    ['added-for-subtracted'],
    2,
    each(new RegExp(`(?<=${NAME}) − (?=${NAME})`, 'g'), () => ' + '),
  ),
  rewritten(
    'not taken off',
    ['term-left-out', 'opening-left-out'],
    2,
    each(new RegExp(`(?<=^${NAME}) − ${NAME}(?=$)`, 'g'), () => ''),
  ),
  rewritten(
    'the greater of two for the less',
    ['greater-for-lesser'],
    1,
    each(/\b(max|min)\(/g, (_, which) => (which === 'max' ? 'min(' : 'max(')),
  ),
  rewritten('one size for its neighbor', ['other-input'], 2, swapped),
];

/** An outcome that was carried on otherwise than it came out. */
const carriedOn = (
  name: string,
  codes: readonly SlipCode[],
  weight: number,
  change: (like: Quantity, chance: Chance) => ((si: number) => number) | undefined,
): Kind => ({
  weight,
  made: ({ page, carried }, chance) =>
    carried === undefined
      ? []
      : page.working.flatMap((line, step) => {
          const outcome = isSound(line) && siOf(line.gives) !== 0 ? change(line.gives, chance) : undefined;
          return outcome ? [{ name, codes, step, otherwise: { step, outcome } }] : [];
        }),
});

const ofVolume =
  (factor: number) =>
  (q: Quantity): ((si: number) => number) | undefined =>
    unitShown(q).id === 'yd3' ? (si) => si * factor : undefined;

const byDigits =
  (slip: (number: string, chance: Chance) => string | undefined) =>
  (q: Quantity, chance: Chance): ((si: number) => number) | undefined => {
    const unit = siOfUnit(unitShown(q));
    const number = Number((siOf(q) / unit).toPrecision(4));
    const other = number >= 0.01 && number < 1e7 ? slip(String(number), chance) : undefined;
    return other === undefined ? undefined : () => Number(other) * unit;
  };

/** One carried too many or too few, in the last two places but one. */
function carriedWrongly(number: string, { below }: Chance): string | undefined {
  const places = number.split('.')[1]?.length ?? 0;
  const high = number.split('.')[0]?.length ?? 0;
  if (high < 2) return undefined;
  const off = 10 ** (1 + below(high - 1));
  return (Number(number) + (below(2) ? off : -off)).toFixed(places);
}

export const MISRECKONED: readonly Kind[] = [
  ...WAYS,
  carriedOn('not divided by 27', ['not-divided-by-27'], 4, ofVolume(27)),
  carriedOn('divided by 9', ['divided-by-9'], 3, ofVolume(3)),
  carriedOn('divided by 27 twice', ['converted-twice'], 1, ofVolume(1 / 27)),
  carriedOn('short ton for tonne', ['wrong-ton'], 2, (q) =>
    /^(ton|tonne)$/.test(unitShown(q).id)
      ? (si) => si * (unitShown(q).id === 'ton' ? 0.90718474 : 1 / 0.90718474)
      : undefined,
  ),
  carriedOn('two digits turned round', ['digits-transposed'], 2, byDigits(transposed)),
  carriedOn('a digit misread', ['digit-off'], 1, byDigits(misread)),
  carriedOn('carried wrongly', ['carried-wrongly', 'digit-off'], 2, byDigits(carriedWrongly)),
  carriedOn('twice', ['doubled'], 1, () => (si) => 2 * si),
  carriedOn('half', ['halved'], 1, () => (si) => si / 2),
];
