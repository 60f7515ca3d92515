/** Figures and inputs as text: a label and a text, or a table for a list of groups. */
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { familyNamed, isNamedByUnit } from '../reckoning/system';
import type { Words } from '../reckoning/words';
import { clockTime, timeOfDay, writtenTime } from './clock';
import {
  groupLabel,
  isName,
  isNamedByUser,
  isTimeOfDay,
  labelText,
  listLabel,
  memberLabel,
  optionText,
} from './labels';
import type { Cells } from './lines';
import { measuredText } from './measured';
import { nameText, quantityText, type View, wordsText, wordText } from './view';

/** One figure on a sheet: beside its label, or as a table under it. */
export interface Entry {
  readonly label: string;
  readonly text: string;
  readonly table?: Cells;
}

/** What may stand in a figure or an input. */
export type Plain =
  | Quantity
  | string
  | boolean
  | number
  | null
  | undefined
  | Words
  | readonly Plain[]
  | Group;
interface Group {
  readonly [name: string]: Plain;
}

const isList = (x: Plain): x is readonly Plain[] => Array.isArray(x);
const isObject = (x: Plain): x is Group | Words =>
  typeof x === 'object' && x !== null && !isList(x) && !isQuantity(x);
const isWords = (x: Plain): x is Words => isObject(x) && 'says' in x;
const isGroup = (x: Plain): x is Group => isObject(x) && !('says' in x);

/** `{ value, unit }`, as it comes out of a form. */
const isPair = (x: Group): boolean => 'value' in x && 'unit' in x;

/** Nothing to print: an empty list or group, or what is left out. */
const isEmpty = (x: Plain): boolean =>
  x === undefined ||
  x === null ||
  x === '' ||
  (isList(x) ? x.length === 0 : isGroup(x) && Object.keys(x).length === 0);

/** Equal neighbors as `3 × 9.00 yd3`. */
function runs(texts: readonly string[]): string[] {
  const found: { readonly text: string; times: number }[] = [];
  for (const text of texts) {
    const last = found.at(-1);
    if (last?.text === text) last.times += 1;
    else found.push({ text, times: 1 });
  }
  return found.map(({ text, times }) => (times > 1 ? `${times} × ${text}` : text));
}

const bracketed = (text: string): string => (text.startsWith('(') ? text : `(${text})`);

/** A place is two numbers, and needs no names for them. */
const isPlace = (x: Group): boolean => Object.keys(x).join() === 'x,y';

/** The label of a member of a group; a word that says what sort of thing the group is needs none. */
function labelOf(group: string, member: string, part: Plain, view: View): string {
  if (isNamedByUser(group)) return member;
  if ((member === 'shape' || member === 'kind') && typeof part === 'string') return '';
  return isGroup(part) ? groupLabel(member, view) : memberLabel(group, member, view);
}

const textsOf = (some: readonly [string, Plain][], view: View): { [member: string]: string } =>
  Object.fromEntries(some.map(([member, part]) => [member, figureText(member, part, view)]));

function groupText(name: string, group: Group, view: View): string {
  if (isPair(group)) return `${String(group['value'])} ${String(group['unit'])}`;
  if (isPlace(group)) return `(${figureText('x', group['x'], view)}, ${figureText('y', group['y'], view)})`;
  const told = clockTime(group, view);
  if (told !== undefined) return told;
  const some = Object.entries(group).filter(([, part]) => !isEmpty(part));
  const flat = some.every(([, part]) => (isGroup(part) ? isPair(part) : !isList(part)));
  const measured = flat ? measuredText(textsOf(some, view), view) : undefined;
  if (measured !== undefined) return measured;
  return some
    .map(([member, part]) => {
      const text = figureText(member, part, view);
      return `${labelOf(name, member, part, view)} ${isGroup(part) ? bracketed(text) : text}`.trimStart();
    })
    .join('; ');
}

/**
 * What a sheet in one family of units shows of figures or of an input: a figure that is named by a unit of the other
 * is beside one that is not.
 */
export function ownOf(figures: Plain, system: System): Plain {
  if (isList(figures)) return figures.map((one) => ownOf(one, system));
  if (!isGroup(figures)) return figures;
  const own = Object.entries(figures).filter(([name]) => (familyNamed(name) ?? system) === system);
  return Object.fromEntries(own.map(([name, part]) => [name, ownOf(part, system)]));
}

/** Without the units of the view, where a figure is in those of its name. */
function asNamed(name: string, view: View): View {
  if (!isNamedByUnit(name)) return view;
  const { system: _, ...rest } = view;
  return rest;
}

/** A word of the library's, a time of day as it writes them, or a name that somebody gave. */
const textIn = (name: string, text: string, view: View): string =>
  isName(name) ? nameText(text, view) : (writtenTime(text, view) ?? wordText(optionText(name, text), view));

/** Where more water settles than dries, nothing dries: a rate below zero is for who reckons on with it. */
const isNoDrying = (name: string, figure: Quantity): boolean =>
  name === 'rate' && figure.dimension === 'evaporation' && figure.sign() < 0;

function quantityShown(name: string, q: Quantity, view: View): string {
  if (isNoDrying(name, q)) return wordText('no drying', view);
  return isTimeOfDay(name) ? timeOfDay(q as Quantity<'time'>, view) : quantityText(q, view);
}

const noText = (name: string): string => (name === 'regular' ? 'not needed' : 'no');

/** A figure on one line. */
export function figureText(name: string, figure: Plain, given: View): string {
  const view = asNamed(name, given);
  if (isQuantity(figure)) return quantityShown(name, figure, view);
  if (typeof figure === 'boolean') return wordText(figure ? 'yes' : noText(name), view);
  if (typeof figure === 'number') return String(figure);
  if (typeof figure === 'string') return textIn(name, figure, view);
  if (isWords(figure)) return wordsText(figure, view);
  if (isList(figure)) {
    const texts = figure.map((one) => figureText(name, one, view));
    return runs(texts).join(figure.some(isObject) ? '; ' : ', ');
  }
  return isGroup(figure) ? groupText(name, figure, view) : '';
}

/** The cells of a row by the label of their column; groups within are taken apart. */
function cellsOf(name: string, group: Group, view: View): [string, string][] {
  return Object.entries(group).flatMap(([member, part]): [string, string][] => {
    if (isEmpty(part)) return [];
    const label = labelOf(name, member, part, view);
    if (isGroup(part) && !isPair(part) && !isPlace(part) && clockTime(part, view) === undefined) {
      const before = member === 'clock' ? '' : `${label}, `;
      return cellsOf(member, part, view).map(([inner, text]) => [`${before}${inner}`, text]);
    }
    return [[label, figureText(member, part, view)]];
  });
}

/** Rows that are alike and follow each other, as one with their number. */
function merged(rows: readonly (readonly string[])[]): { rows: string[][]; times: number[] } {
  const kept: string[][] = [];
  const times: number[] = [];
  for (const row of rows) {
    const last = kept.at(-1);
    if (last?.every((cell, i) => cell === row[i]))
      times[kept.length - 1] = (times[kept.length - 1] as number) + 1;
    else {
      kept.push([...row]);
      times.push(1);
    }
  }
  return { rows: kept, times };
}

/** A list of groups as a table. */
function tableOf(name: string, groups: readonly Group[], view: View): Cells {
  const found = groups.map((group) => new Map(cellsOf(name, group, view)));
  const head = [...new Set(found.flatMap((cells) => [...cells.keys()]))];
  const { rows, times } = merged(found.map((cells) => head.map((title) => cells.get(title) ?? '')));
  const told = groups.map((group) => groupText(name, group, view));
  if (times.every((n) => n === 1)) return { head, rows, told };
  return {
    told,
    head: [...head, wordText('times', view)],
    rows: rows.map((row, i) => [...row, String(times[i])]),
  };
}

/** A figure as it stands on a sheet. */
export function entryOf(name: string, figure: Plain, view: View): Entry[] {
  if (isEmpty(figure)) return [];
  const label = isGroup(figure) ? groupLabel(name, view) : labelText(name, view);
  if (isList(figure) && figure.every((one) => isGroup(one) && !isPair(one) && !isPlace(one))) {
    const groups = figure as readonly Group[];
    return [{ label: listLabel(name, view), text: '', table: tableOf(name, groups, view) }];
  }
  if (isGroup(figure) && isNamedByUser(name)) {
    const rows = Object.entries(figure).map(([member, part]) => [member, figureText(member, part, view)]);
    const told = rows.map((row) => row.join(' '));
    return [{ label, text: '', table: { head: [wordText('name', view), label], rows, told } }];
  }
  return [onlyOne(name, figure, view) ?? { label, text: figureText(name, figure, view) }];
}

/** A group of which one member alone is told: its name belongs to the label. */
function onlyOne(name: string, group: Plain, view: View): Entry | undefined {
  if (!isGroup(group) || isPair(group) || isPlace(group)) return undefined;
  const [only, ...more] = Object.entries(group).filter(([, part]) => !isEmpty(part));
  if (!only || more.length > 0 || isGroup(only[1])) return undefined;
  const inner = labelOf(name, ...only, view);
  const label = groupLabel(name, view);
  return { label: inner ? `${label}, ${inner}` : label, text: figureText(...only, view) };
}

/** True for a zero amount that tells nobody anything: no loads, no waste, no length of this kind. */
const isNothing = (figure: Plain): boolean =>
  isQuantity(figure) && figure.sign() === 0 && SUMS.has(figure.dimension);

const SUMS: ReadonlySet<string> = new Set(['length', 'area', 'volume', 'mass', 'count', 'money']);

/** True where a figure says again what one with a shorter name says: `deliveredMass` beside `mass`. */
function repeats(name: string, figure: Plain, all: readonly [string, Plain][]): boolean {
  const ends = (other: string): boolean => other !== name && name.toLowerCase().endsWith(other.toLowerCase());
  return (
    isQuantity(figure) &&
    all.some(([other, one]) => ends(other) && isQuantity(one) && (one as Quantity).equals(figure))
  );
}

const OF_NO_SIZE: ReadonlySet<string> = new Set(['count', 'area', 'volume', 'mass']);

/** A group with a verdict, which says it all where there is nothing of a kind: no ponds, none of any volume. */
function withVerdict(figure: Plain): Plain {
  if (!isGroup(figure) || !('verdict' in figure)) return figure;
  const none = (part: Plain): boolean =>
    isQuantity(part) && OF_NO_SIZE.has(part.dimension) && isNothing(part);
  return Object.fromEntries(Object.entries(figure).filter(([, part]) => !none(part)));
}

/** All figures of a result, without what is empty, nothing or said already. */
export function entriesOf(figures: object, view: View): Entry[] {
  const all = Object.entries(figures as Record<string, Plain>);
  const telling = all.filter(([name, figure]) => !repeats(name, figure, all));
  const some = telling.filter(([, figure]) => !isNothing(figure));
  return (some.length > 0 ? some : telling).flatMap(([name, figure]) =>
    entryOf(name, withVerdict(figure), view),
  );
}
