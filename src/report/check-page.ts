/**
 * The check of a hand estimate as a page to lay before whoever made it, a supplier or a customer: what was claimed, what
 * is reckoned and how, how far apart they are, and what would explain it. It accuses nobody: an explanation is likely at
 * best, and the sizes are to be agreed on first.
 */
import type { ClaimCheck, EstimateCheck, LikelySlip, NamedSlip } from '../opinion/estimate-check';
import type { FigureSet } from '../reckoning/parts';
import { NO_WORDS, say, type Words } from '../reckoning/words';
import { type Chapter, chaptersHtml, chaptersMarkdown, type Piece, telling } from './chapters';
import { stepsTell } from './check-sheet';
import type { Entry } from './entries';
import { pageHtml, textTag } from './html';
import type { PageView } from './job-pages';
import { placeText } from './labels';
import { capital, markdownText } from './lines';
import { mustBeTitle, mustBeView } from './must-be';
import { readCheck } from './read-check';
import { type Block, type Sheet, sheetOf } from './sheet';
import type { SideBySide } from './show';
import { quantityText, type View, wordsText, wordText } from './view';

/** How the page of a check is made. */
export interface CheckView extends PageView {
  /** What the check was made of, to be printed: the input of the calculation. */
  readonly input?: unknown;
  /** Who made the estimate, as the page is to call them: `the supplier`. */
  readonly claimedBy?: string;
}

type Check = EstimateCheck<FigureSet>;

const told = (words: string, view: View): string => capital(wordText(words, view));

/** So much more or less, and what that is in steps of the trade. */
function differenceText(claim: ClaimCheck, view: View): string {
  const { difference, share, step, steps, verdict } = claim;
  if (verdict === 'agrees') return wordText('agrees, but for rounding', view);
  const size = difference.abs();
  const way = difference.sign() < 0 ? say`${{ size }} less` : say`${{ size }} more`;
  const part = share ? say`, ${{ share: share.abs() }}` : NO_WORDS;
  const many = stepsTell(claim) ? say`; ${{ steps: steps.abs() }} times ${{ step }}` : NO_WORDS;
  return `${wordText(verdict, view)}: ${wordsText(say`${way}${part}${many}`, view)}`;
}

function claimsChapter({ claims }: Check, view: View): Chapter {
  const head = ['figure', 'claimed', 'reckoned', 'difference'];
  const rows = claims.map((claim) => [
    told(placeText(claim.figure, view), view),
    quantityText(claim.claimed, view),
    quantityText(claim.reckoned, view),
    differenceText(claim, view),
  ]);
  const lines = claims.flatMap(({ figure, line }) =>
    line === undefined ? [] : [`${placeText(figure, view)}: ${line}`],
  );
  return {
    title: wordText('What was claimed and what is reckoned', view),
    pieces: [
      {
        kind: 'table',
        caption: wordText('Figures side by side', view),
        head: head.map((word) => told(word, view)),
        rows,
      },
      { kind: 'list', title: wordText('As it was written', view), items: lines },
    ],
  };
}

/** Which claims are as they should be, in a line. */
function shortText({ claims, verdict }: Check, view: View): string {
  if (verdict === 'agrees')
    return wordText('What was claimed agrees with what is reckoned, but for rounding.', view);
  const of = (which: ClaimCheck['verdict']): string[] =>
    claims.filter((one) => one.verdict === which).map(({ figure }) => placeText(figure, view));
  const [differing, close, agreeing] = [of('differs'), of('close'), of('agrees')];
  return [
    ...(differing.length > 0 ? [say`Not as reckoned: ${{ figures: differing }}.`] : []),
    ...(close.length > 0 ? [say`Close to what is reckoned: ${{ figures: close }}.`] : []),
    ...(agreeing.length > 0 ? [say`As reckoned: ${{ figures: agreeing }}.`] : []),
  ]
    .map((words) => wordsText(words, view))
    .join(' ');
}

/** Where a slip would show. */
function placeOf(
  { input, step, figure }: NamedSlip,
  block: Block | undefined,
  view: View,
): Words | undefined {
  if (input !== undefined)
    return say`Look at ${{ place: placeText(input, view) }} in what it was reckoned from.`;
  const what = step === undefined ? undefined : block?.working[step]?.what;
  if (step !== undefined && what !== undefined)
    return say`Look at step ${{ number: step + 1 }} of the working, ${{ what: [what] }}.`;
  return figure === undefined
    ? undefined
    : say`Look at how ${{ place: placeText(figure, view) }} was written down.`;
}

function explanation(slip: LikelySlip, block: Block | undefined, view: View): string[] {
  const { slips, gives, exact, explains, elsewhere } = slip;
  const [one, other] = slips.map(({ says }) => says);
  if (!one) return [];
  const how = other
    ? say`Two slips together would give it, which is less sure than one: ${{ one }}; and ${{ other }}.`
    : say`A likely explanation is this: ${{ one }}.`;
  const would = gives.map(({ figure, would: q }) => `${placeText(figure, view)} ${quantityText(q, view)}`);
  const named = explains.map((figure) => placeText(figure, view));
  const gave = say`That gives ${{ would }}.`;
  const came = exact
    ? say`${gave} So ${{ figures: named }} would be as claimed.`
    : say`${gave} With rounding on the way ${{ figures: named }} would be as claimed.`;
  const where = slips.flatMap((each) => placeOf(each, block, view) ?? []);
  const places = [...new Set(elsewhere.flatMap(({ input, figure }) => input ?? figure ?? []))];
  const same = places.length > 0 ? [say`The same at ${{ places }} would give the same.`] : [];
  return [[how, came, ...where, ...same].map((words) => wordsText(words, view)).join(' ')];
}

/** More explanations than these are no help. */
const MOST = 3;

function slipsChapter({ verdict, slips }: Check, block: Block | undefined, view: View): Chapter {
  const title = wordText('What would explain it', view);
  if (verdict === 'agrees') return { title, pieces: [] };
  const items = slips.slice(0, MOST).flatMap((one) => explanation(one, block, view));
  const none = items.length === 0 ? wordText('No single slip was found that would explain it.', view) : '';
  const sober =
    'These are what would give such figures, the likeliest first. None of them is certain, and other sizes, another order or another agreement may be the reason.';
  return {
    title,
    pieces: [
      { kind: 'text', text: none },
      { kind: 'list', items },
      { kind: 'text', text: items.length > 0 ? wordText(sober, view) : '' },
    ],
  };
}

const pairsOf = (entries: readonly Entry[]): Piece[] => [
  {
    kind: 'pairs',
    pairs: entries.filter(({ table }) => !table).map(({ label, text }) => [capital(label), text] as const),
  },
  ...entries.flatMap(({ label, table }): Piece[] =>
    table ? [{ kind: 'table', caption: capital(label), head: table.head, rows: table.rows }] : [],
  ),
];

function workingChapters(block: Block | undefined, sheet: Sheet, view: View): Chapter[] {
  if (!block) return [];
  const steps = block.working.map(
    ({ what, formula, put, gives }, i) => `${i + 1}. ${what}: ${formula} = ${put} = ${gives}`,
  );
  return [
    { title: wordText('What it was reckoned from', view), pieces: pairsOf(block.input) },
    {
      title: wordText('How it was reckoned', view),
      pieces: [
        ...steps.map((text): Piece => ({ kind: 'text', text })),
        {
          kind: 'list',
          title: wordText('Taken as usual, since nothing else was said', view),
          items: block.assumed.map(({ label, text }) => `${label}: ${text}`),
        },
      ],
    },
    {
      title: wordText('Watch out for', view),
      pieces: [{ kind: 'list', items: sheet.cautions.map(({ head, text }) => `${capital(head)}: ${text}`) }],
    },
  ];
}

const NEXT = [
  'Measure the sizes above again, together, and write down what was found.',
  'Go through the working line by line beside that of the claimed figure: where the two part is the difference.',
  'Hold what was delivered, by its tickets, apart from what was to be ordered: they are two questions.',
  'Which figure binds is for the contract and the local law, not for this page.',
];

function nextChapter({ verdict }: Check, view: View): Chapter {
  const labels = ['Name', 'Name', 'Date'].map((label) => wordText(label, view));
  if (verdict === 'agrees') return { title: '', pieces: [] };
  return {
    title: wordText('What to do next', view),
    pieces: [
      { kind: 'list', items: NEXT.map((text) => wordText(text, view)) },
      { kind: 'blanks', title: wordText('Measured again by', view), labels },
    ],
  };
}

function chaptersOf(plain: Check, given: CheckView): Chapter[] {
  const check = readCheck(plain);
  const { input, claimedBy, ...rest } = given;
  const view: PageView = rest;
  const side: SideBySide = { ...view, volumes: 'as-given' };
  const sheet = sheetOf([{ name: '', results: [{ input, result: check.result }] }], rest);
  const [block] = sheet.parts[0]?.blocks ?? [];
  const by = claimedBy === undefined ? '' : wordsText(say`Claimed by ${{ name: claimedBy }}.`, view);
  const title = wordText(check.title, view);
  return telling([
    {
      title: '',
      pieces: [{ kind: 'text', text: [`${title}.`, by, shortText(check, view)].filter(Boolean).join(' ') }],
    },
    claimsChapter(check, side),
    slipsChapter(check, block, side),
    ...workingChapters(block, sheet, view),
    nextChapter(check, view),
    { title: wordText('Sources', view), pieces: [{ kind: 'list', items: sheet.sources }] },
  ]);
}

/**
 * The check of a hand estimate as one HTML document that stands alone, to lay before whoever made it: no scripts, nothing
 * loaded, every text escaped. It accuses nobody.
 *
 * @param title - what the check is about
 * @param check - what `estimateCheck` gave
 * @param view - units, marks of numbers, language, paper; the `input`, to be printed; and who made the estimate
 * @returns the document
 * @throws {InputError} `not-a-result`; `wrong-type` for what is no language tag, or no title
 * @example
 * ```ts
 * import { estimateCheck, slabVolume } from 'flatwork-reckoner';
 * import { checkHtml } from 'flatwork-reckoner/report';
 *
 * const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
 * const check = estimateCheck(slabVolume, input, { volume: '7.47 yd3' });
 * const page = checkHtml('Invoice of 3 June', check, { input, claimedBy: 'the supplier' });
 * page.replace(/<[^>]*>/g, '').includes('thickness is 4 in, and 0.4 ft was taken'); // true
 * ```
 */
export function checkHtml(title: string, check: EstimateCheck<FigureSet>, view: CheckView = {}): string {
  mustBeTitle(title, 'the check');
  mustBeView(view);
  const body = chaptersHtml(chaptersOf(check, view));
  const metric = (view.system ?? check.result.system) === 'metric';
  const { paper = metric ? 'a4' : 'letter', lang = 'en' } = view;
  const line = [view.job, view.date].filter(Boolean).join(', ');
  const head = textTag('h1', title) + (line === '' ? '' : textTag('p', line));
  return pageHtml({ title, lang, paper, body: head + body });
}

/**
 * The check of a hand estimate in Markdown, with all that its page has.
 *
 * @param title - what the check is about
 * @param check - what `estimateCheck` gave
 * @param view - units, marks of numbers, language; the `input`, to be printed; and who made the estimate
 * @returns Markdown
 * @throws {InputError} as `checkHtml` does
 * @example
 * ```ts
 * import { estimateCheck, slabVolume } from 'flatwork-reckoner';
 * import { checkMarkdown } from 'flatwork-reckoner/report';
 *
 * const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
 * const check = estimateCheck(slabVolume, input, { volume: '7.47 yd3' });
 * checkMarkdown('Invoice of 3 June', check).split('\n')[0]; // '# Invoice of 3 June'
 * ```
 */
export function checkMarkdown(title: string, check: EstimateCheck<FigureSet>, view: CheckView = {}): string {
  mustBeTitle(title, 'the check');
  mustBeView(view);
  return `${[`# ${markdownText(title)}`, ...chaptersMarkdown(chaptersOf(check, view))].join('\n')}\n`;
}
