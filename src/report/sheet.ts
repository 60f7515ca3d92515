/**
 * What stands on a sheet of several results, before it is text or Markdown: each caution and each source once, the
 * gravest first, and what holds for every job of the kind apart.
 */
import { isQuantity, type Quantity } from '../quantity/quantity';
import { gravestFirst } from '../reckoning/harm';
import type { Assumption, Caution, FigureSet, ResultParts, Severity, Step } from '../reckoning/parts';
import { revive } from '../reckoning/revive';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { hoursIn } from './clock';
import { carriedOf, isCarried } from './crew';
import { type Entry, entriesOf, entryOf } from './entries';
import { ownOf, type Plain } from './figures';
import { labelText, optionText, placeText } from './labels';
import { mustBeParts, mustBeView } from './must-be';
import { tabled } from './own-tables';
import { type StepText, stepText, type View, valueText, wordsText, wordText } from './view';

/** How much of a result a sheet shows, and whose it is. */
export interface SheetView extends View {
  /**
   * `full`, as by default: inputs, figures, how they were figured, what was assumed, all cautions and sources.
   * `crew`: inputs, figures and the cautions that matter most.
   */
  readonly detail?: 'full' | 'crew';
  /** What the job is, on top of the sheet. */
  readonly job?: string;
  /** The date on top of the sheet, as it is to be written. */
  readonly date?: string;
}

/** A result with what was put in, which is printed above it. */
export interface WithInput {
  /** The input of the calculation. */
  readonly input: unknown;
  /** What came of it. */
  readonly result: ResultParts<FigureSet>;
  /** What it is of, where there are several of its kind: a mix by its name. */
  readonly of?: string;
}

/** A part of a job: what it is, and the results that belong to it. */
export interface Part {
  /** What this part of the job is. */
  readonly name: string;
  /** The results that belong to it, in order, with their inputs where these are to be printed. */
  readonly results: readonly (ResultParts<FigureSet> | WithInput)[];
}

/** A result on a sheet. */
export interface Block {
  readonly title: string;
  readonly input: readonly Entry[];
  readonly figures: readonly Entry[];
  readonly working: readonly StepText[];
  readonly assumed: readonly Entry[];
}

/** A caution on a sheet. */
export interface Told {
  readonly severity: Severity;
  readonly head: string;
  readonly text: string;
  /** The number of its source. */
  readonly source: number;
}

/** All that a sheet shows. */
export interface Sheet {
  readonly parts: readonly { readonly name: string; readonly blocks: readonly Block[] }[];
  readonly cautions: readonly Told[];
  /** Cautions that the sheet does not show. */
  readonly left: number;
  /** What holds for every job of the kind. */
  readonly always: readonly Told[];
  readonly sources: readonly string[];
}

/** What this copy of the library made goes through as it is; plain data and what another made is revived first. */
export const living = <F extends FigureSet>(data: ResultParts<F>): ResultParts<F> =>
  isQuantity((data as Partial<ResultParts<F>> | null | undefined)?.working?.[0]?.gives) ? data : revive(data);

/** A source on one line. */
export function sourceText(source: Source, view: View = {}): string {
  const parts = [source.title, source.publisher, source.edition, source.locator].filter(Boolean);
  const unread = source.fromMemory && source.kind !== 'common-practice';
  return parts.join(', ') + (unread ? ` (${wordText('not checked against the text', view)})` : '');
}

const TENTHS = /\d\.\d+ ?(?:ft|feet|foot|')/;
const FRACTIONS = /["″”]|\bin\b|inch|\d ?['′’] ?\d/;

/** How the lengths of an input are written: on a rod, or on a tape. */
function feetOf(input: unknown): View['feet'] {
  const text = JSON.stringify(input) ?? '';
  if (TENTHS.test(text)) return 'tenths';
  return FRACTIONS.test(text.replaceAll('\\"', '″')) ? 'fractions' : undefined;
}

/** Inches in decimals are put on the tape wherever feet and inches were given. */
function feetSeen({ working }: ResultParts<FigureSet>): View['feet'] {
  const inFeet = (q: Quantity): boolean => (q.shownIn ?? q.unit) === ('ft-in' as never);
  return working.some((step) => Object.values(step.values).some(inFeet)) ? 'fractions' : undefined;
}

const DIGITS = '₀₁₂₃₄₅₆₇₈₉';
const lowered = (n: number): string => Array.from(String(n), (d) => DIGITS[Number(d)]).join('');

const SYMBOLS = /[A-Za-z]\w*/g;

/** One symbol has one meaning on a sheet: where it stands for something else than before, it gets a number. */
class Symbols {
  private readonly meanings = new Map<string, Quantity[]>();

  /** The symbol for this quantity. */
  of(symbol: string, q: Quantity): string {
    const known = this.meanings.get(symbol) ?? [];
    let at = known.findIndex((one) => one.equals(q));
    if (at < 0) {
      at = known.length;
      this.meanings.set(symbol, [...known, q]);
    }
    return at === 0 ? symbol : `${symbol}${lowered(at + 1)}`;
  }

  formula({ formula, values, gives }: Step): string {
    const [left = '', ...right] = formula.split('=');
    if (right.length === 0) return formula;
    const known = right
      .join('=')
      .replace(SYMBOLS, (name) => (values[name] ? this.of(name, values[name]) : name));
    const named = left.trim();
    return `${/^[A-Za-z]\w*$/.test(named) ? this.of(named, gives) : named} =${known}`;
  }
}

const workingOf = (result: ResultParts<FigureSet>, view: View): StepText[] => {
  const symbols = new Symbols();
  return result.working.map((step) => ({ ...stepText(step, view), formula: symbols.formula(step) }));
};

/** Which of several of the same name: the first word that stands in its reason, such as the size of a bar. */
function which({ because, value }: Assumption): string {
  const params = [
    ...Object.values(because.params ?? {}),
    ...(isQuantity(value) ? [] : Object.values(value.params ?? {})),
  ];
  const found = params.find((param) => typeof param === 'string');
  return typeof found === 'string' ? ` (${found})` : '';
}

function assumedEntries(assumed: readonly Assumption[], view: View): Entry[] {
  const told = assumed.map((assumption) => {
    const { name, value, because, override } = assumption;
    const said = isQuantity(value) ? value : { ...value, says: optionText(name, value.says) };
    const twice = assumed.filter((other) => other.name === name).length > 1;
    return {
      label: `${placeText(name, view)}${twice ? which(assumption) : ''}`,
      text: `${valueText(said, view)}: ${wordsText(because, view)}. ${wordsText(override, view)}.`,
    };
  });
  const same = (a: Entry, b: Entry): boolean => a.label === b.label && a.text === b.text;
  return told.filter((one, i) => told.findIndex((other) => same(one, other)) === i);
}

const inputEntries = (input: unknown, view: View): Entry[] =>
  typeof input === 'object' && input !== null
    ? Object.entries(input).flatMap(([name, value]) => entryOf(name, value, view))
    : [];

function blockOf(result: ResultParts<FigureSet>, { input, of }: Partial<WithInput>, view: SheetView): Block {
  const full = view.detail !== 'crew';
  const system = view.system ?? result.system;
  const { figures: read, tables } = tabled(result.id, result.figures as Plain, view);
  const shown = full ? { given: input, figures: read } : carriedOf(result.id, input, read);
  const figures = [...entriesOf(ownOf(shown.figures, system) as object, view), ...tables];
  const isReference = ({ table }: Entry): boolean => table?.head.includes(labelText('source', view)) === true;
  return {
    title: [wordText(result.title, view), of].filter(Boolean).join(', '),
    input: inputEntries(shown.given, view),
    figures: full ? figures : figures.filter((entry) => !isReference(entry)),
    working: full ? workingOf(result, view) : [],
    assumed: full ? assumedEntries(result.assumed, view) : [],
  };
}

/** Cautions that a crew reads at most, but for those that say stop. */
export const CREW = 3;

/** Each caution once: of the same code and words, whichever part of the job raised it. */
class Collected {
  private readonly ownTold = new Map<string, Told & Pick<Caution, 'code'> & { readonly always: boolean }>();
  private readonly ownSources = new Map<string, number>();

  constructor(readonly view: SheetView) {}

  source(source: Source): number {
    const text = sourceText(source, this.view);
    const known = this.ownSources.get(text);
    if (known !== undefined) return known;
    this.ownSources.set(text, this.ownSources.size + 1);
    return this.ownSources.size;
  }

  caution(caution: Caution, view: View): void {
    const text = wordsText(caution, view);
    const key = caution.always ? caution.code : `${caution.code} ${text}`;
    if (this.ownTold.has(key)) return;
    this.ownTold.set(key, {
      code: caution.code,
      severity: caution.severity,
      head: wordText(caution.severity, view),
      text,
      source: this.source(caution.source),
      always: caution.always === true,
    });
  }

  /** The cautions of a result and, on a full sheet, its sources. */
  all({ cautions, sources }: ResultParts<FigureSet>, view: SheetView): void {
    for (const caution of cautions) this.caution(caution, view);
    for (const source of view.detail === 'crew' ? [] : sources) this.source(source);
  }

  get sources(): string[] {
    return [...this.ownSources.keys()];
  }

  told(always: boolean): Told[] {
    return gravestFirst([...this.ownTold.values()].filter((one) => one.always === always));
  }
}

/** The view of one result: feet as in its input, and the clock that goes with its units. */
function ownView(
  result: ResultParts<FigureSet>,
  input: unknown,
  view: SheetView,
  beside: View['feet'],
): SheetView {
  const feet = view.feet ?? (input === undefined ? (feetSeen(result) ?? beside) : feetOf(input));
  const hours = hoursIn(view, view.system ?? result.system);
  return { ...view, hours, ...(feet ? { feet } : {}) };
}

const isWithInput = (x: ResultParts<FigureSet> | WithInput): x is WithInput => 'result' in x;

const putOf = (one: ResultParts<FigureSet> | WithInput): WithInput => {
  const put: WithInput = isWithInput(one) ? one : { result: one, input: undefined };
  return { ...put, result: living(put.result) };
};

/** All that a sheet of these parts shows. */
export function sheetOf(parts: readonly Part[], view: SheetView): Sheet {
  mustBeParts(parts);
  mustBeView(view);
  const collected = new Collected(view);
  const puts = parts.map(({ name, results }) => ({ name, puts: results.map(putOf) }));
  // What was given nothing of its own, as the take-off of a job, goes by what stands beside it.
  const beside = puts.flatMap((part) => part.puts.flatMap(({ input }) => feetOf(input) ?? []))[0];
  const shown = puts.map(({ name, puts: own }) => ({
    name,
    blocks: own.flatMap((put) => {
      const { result } = put;
      const seen = ownView(result, put.input, view, beside);
      collected.all(result, seen);
      const ids = own.map((other) => other.result.id);
      return seen.detail === 'crew' && !isCarried(result.id, ids) ? [] : [blockOf(result, put, seen)];
    }),
  }));
  const cautions = collected.told(false);
  const stops = cautions.filter(({ severity }) => severity === 'stop').length;
  const most = view.detail === 'crew' ? Math.max(CREW, stops) : cautions.length;
  return {
    parts: shown,
    cautions: cautions.slice(0, most),
    left: Math.max(0, cautions.length - most),
    always: collected.told(true),
    sources: collected.sources,
  };
}

/** What a sheet that leaves some cautions out says of them. */
export const moreCautions = (n: number, view: View): string =>
  wordsText(say`${{ more: String(n) }} more on the full sheet`, view);
