/** The check of a hand estimate as text, to lay before whoever made it. */
import type { ClaimCheck, EstimateCheck, LikelySlip } from '../opinion/estimate-check';
import type { FigureSet } from '../reckoning/parts';
import { NO_WORDS, say, type Words } from '../reckoning/words';
import { placeInSentence, placeText } from './labels';
import { wrapped } from './lines';
import { mustBeView } from './must-be';
import { readCheck } from './read-check';
import type { SideBySide } from './show';
import { quantityText, type View, wordsText, wordText } from './view';

const INDENT = '  ';

const FEWEST_STEPS = 0.1;
const MOST_STEPS = 1000;

/** Whether steps of the trade say anything of a difference: 22 ft are not told in sixteenths of an inch. */
export function stepsTell({ steps }: ClaimCheck): boolean {
  const many = Math.abs(Number(steps.value));
  return many >= FEWEST_STEPS && many <= MOST_STEPS;
}

function claimLines(claim: ClaimCheck, view: View): string[] {
  const { figure, claimed, reckoned, verdict, difference, share, steps, step, line } = claim;
  const part = share ? say`, ${{ share }}` : NO_WORDS;
  const many = stepsTell(claim) ? say`, or ${{ steps }} × ${{ step }}` : NO_WORDS;
  const off =
    verdict === 'agrees' ? say`${{ verdict }}` : say`${{ verdict }} by ${{ difference }}${part}${many}`;
  const told: Words = say`claimed ${{ claimed }}, reckoned ${{ reckoned }}: ${off}`;
  const text = `${placeText(figure, view)}: ${wordsText(told, view)}`;
  return [
    ...(line === undefined ? [] : wrapped(line, INDENT, INDENT)),
    ...wrapped(text, INDENT, INDENT.repeat(2)),
  ];
}

function slipLines({ slips, gives, elsewhere }: LikelySlip, i: number, view: View): string[] {
  const how = slips.map(({ says }) => wordsText(says, view)).join(`; ${wordText('and', view)} `);
  const would = gives
    .map(({ figure, would: q }) => `${placeText(figure, view)} ${quantityText(q, view)}`)
    .join(', ');
  const places = elsewhere.flatMap(({ input, figure }) => input ?? figure ?? []);
  const also =
    places.length > 0
      ? ` ${wordText('The same at', view)} ${[...new Set(places)].map((place) => placeInSentence(place, view)).join(', ')}.`
      : '';
  const codes = slips.map(({ code }) => code).join(', ');
  return [
    ...wrapped(`${i + 1}. ${how} (${codes})`, INDENT, INDENT.repeat(2)),
    ...wrapped(`${wordText('would give', view)} ${would}.${also}`, INDENT.repeat(2), INDENT.repeat(2)),
  ];
}

/**
 * The check of a hand estimate in plain text: each claim beside what is reckoned, and the slips that would explain what
 * is off, the likeliest first.
 *
 * @param check - what `estimateCheck` gave, or the plain data of it
 * @param view - units, marks of numbers and language
 * @returns lines of text, none longer than 100 characters
 * @throws {InputError} `not-a-result` for what is no check
 * @example
 * ```ts
 * import { estimateCheck, slabVolume } from 'flatwork-reckoner';
 * import { checkSheet } from 'flatwork-reckoner/report';
 *
 * const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
 * const sheet = checkSheet(estimateCheck(slabVolume, input, { volume: '168 yd3' }));
 * sheet.split('\n')[0]; // 'Slab volume'
 * ```
 */
export function checkSheet(check: EstimateCheck<FigureSet>, view: View = {}): string {
  mustBeView(view);
  const side: SideBySide = { ...view, volumes: 'as-given' };
  const { title, verdict, says, claims, slips } = readCheck(check);
  const off = verdict === 'differs';
  const likely =
    slips.length > 0
      ? ['', wordText('Likely slips', view), ...slips.flatMap((one, i) => slipLines(one, i, side))]
      : off
        ? ['', wordText('No slip was found that would explain it.', view)]
        : ['', wordsText(says, view)];
  return [wordText(title, view), ...claims.flatMap((one) => claimLines(one, side)), ...likely].join('\n');
}
