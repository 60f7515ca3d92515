/** Figures and inputs as text on one line: quantities, words, and groups as they are said. */
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { familyNamed, isNamedByUnit } from '../reckoning/system';
import type { Words } from '../reckoning/words';
import { clockTime, timeOfDay, writtenTime } from './clock';
import { groupLabel, isName, isNamedByUser, isTimeOfDay, labelText, memberLabel, optionWord } from './labels';
import { measuredText } from './measured';
import { taped, tapedView } from './taped';
import { nameText, quantityText, type View, wordsText, wordText } from './view';

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
export interface Group {
  readonly [name: string]: Plain;
}

export const isList = (x: Plain): x is readonly Plain[] => Array.isArray(x);
const isObject = (x: Plain): x is Group | Words =>
  typeof x === 'object' && x !== null && !isList(x) && !isQuantity(x);
const isWords = (x: Plain): x is Words => isObject(x) && 'says' in x;
export const isGroup = (x: Plain): x is Group => isObject(x) && !('says' in x);

/** `{ value, unit }`, as it comes out of a form. */
export const isPair = (x: Group): boolean => 'value' in x && 'unit' in x;

/** Nothing to print: an empty list or group, or what is left out. */
export const isEmpty = (x: Plain): boolean =>
  x === undefined ||
  x === null ||
  x === '' ||
  (isList(x) ? x.length === 0 : isGroup(x) && Object.keys(x).length === 0);

/** Equal neighbors as `3 × 9.00 yd3`. */
export function runs(texts: readonly string[]): string[] {
  const found: { readonly text: string; times: number }[] = [];
  for (const text of texts) {
    const last = found.at(-1);
    if (last?.text === text) last.times += 1;
    else found.push({ text, times: 1 });
  }
  return found.map(({ text, times }) => (times > 1 ? `${times} × ${text}` : text));
}

/** Within a run of text, what has commas of its own is set apart. */
const bracketed = (text: string): string =>
  text.includes(', ') && !text.startsWith('(') ? `(${text})` : text;

/** A place is two numbers, and needs no names for them. */
export const isPlace = (x: Group): boolean => Object.keys(x).join() === 'x,y';

/** A word that says what sort of thing a group is, or what it is called. */
export const isKind = (member: string, part: Plain): boolean =>
  ['shape', 'kind', 'name'].includes(member) && typeof part === 'string';

/** The label of a member of a group. */
export function labelOf(group: string, member: string, part: Plain, view: View): string {
  if (isNamedByUser(group)) return member;
  return isGroup(part) ? groupLabel(member, view) : memberLabel(group, member, view);
}

const textsOf = (some: readonly [string, Plain][], view: View): { [member: string]: string } =>
  Object.fromEntries(some.map(([member, part]) => [member, figureText(member, part, view)]));

/** A member of a group as it is told: beside its label, or without one. */
interface Piece {
  readonly label: string;
  readonly text: string;
  /** What needs no label within a run of text. */
  readonly bare: boolean;
}

const LENGTH = /^(.*?)length$/i;

/** What is said together with the member before it: `(6 m, 0 m)`, `12 ft × 8 ft`. */
function joined([first, second]: readonly (readonly [string, Plain])[], view: View): Piece | undefined {
  if (!first || !second) return undefined;
  const texts = [first, second].map(([member, part]) => figureText(member, part, view));
  if (first[0] === 'x' && second[0] === 'y')
    return { label: wordText('where', view), text: `(${texts.join(', ')})`, bare: true };
  const of = LENGTH.exec(first[0])?.[1];
  if (of === undefined || second[0] !== (of === '' ? 'width' : `${of}Width`)) return undefined;
  return { label: labelText(of || 'size', view), text: texts.join(' × '), bare: of === '' };
}

/** The members of a group as they are told. */
export function piecesOf(name: string, some: readonly [string, Plain][], view: View): Piece[] {
  const pieces: Piece[] = [];
  for (let i = 0; i < some.length; i += 1) {
    const [member, part] = some[i] as [string, Plain];
    const both = joined(some.slice(i, i + 2), view);
    if (both) i += 1;
    pieces.push(
      both ?? {
        label: labelOf(name, member, part, view),
        text: figureText(member, part, view),
        bare: isKind(member, part) && !isNamedByUser(name),
      },
    );
  }
  return pieces;
}

/** Members of a group one behind the other; what a corner has beside its place stands with it. */
export function phrase(all: readonly Piece[]): string {
  // What a group is need not be told where its first member says so: `area 240 yd2`.
  const pieces = all[0]?.bare && all[0].text === all[1]?.label ? all.slice(1) : all;
  const told = pieces.map(({ label, text, bare }) => (bare ? text : `${label} ${bracketed(text)}`));
  const [first = '', ...more] = told;
  if (first.startsWith('(') && more.length > 0) return `(${[first.slice(1, -1), ...more].join(', ')})`;
  const [kind, size] = pieces;
  return told.join(', ').replace(', ', kind?.bare && size?.bare ? ' ' : ', ');
}

export const someOf = (group: Group): [string, Plain][] =>
  Object.entries(group).filter(([, part]) => !isEmpty(part));

/** A group that is said in one breath: a place, a time, two measures of one thing. */
export function breathText(group: Group, view: View): string | undefined {
  if (isPair(group)) return `${String(group['value'])} ${String(group['unit'])}`;
  if (isPlace(group)) return `(${figureText('x', group['x'], view)}, ${figureText('y', group['y'], view)})`;
  const told = clockTime(group, view);
  if (told !== undefined) return told;
  const some = someOf(group);
  const flat = some.every(([, part]) => (isGroup(part) ? isPair(part) : !isList(part)));
  return flat ? measuredText(textsOf(some, view), view) : undefined;
}

export const groupText = (name: string, group: Group, view: View): string =>
  breathText(group, view) ?? phrase(piecesOf(name, someOf(group), view));

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
  isName(name) ? nameText(text, view) : (writtenTime(text, view) ?? optionWord(name, text, view));

/** Where as much water settles as dries, nothing dries: a rate below zero is for who reckons on with it. */
const isNoDrying = (name: string, figure: Quantity): boolean =>
  name === 'rate' && figure.dimension === 'evaporation' && figure.sign() <= 0;

function quantityShown(name: string, q: Quantity, view: View): string {
  if (isNoDrying(name, q)) return wordText('no drying', view);
  return isTimeOfDay(name) ? timeOfDay(q as Quantity<'time'>, view) : quantityText(taped(q, view), view);
}

const noText = (name: string): string => (name === 'regular' ? 'not needed' : 'no');

/** A figure on one line. */
export function figureText(name: string, figure: Plain, given: View): string {
  const view = tapedView(name, asNamed(name, given));
  if (isQuantity(figure)) return quantityShown(name, figure, view);
  if (typeof figure === 'boolean') return wordText(figure ? 'yes' : noText(name), view);
  if (typeof figure === 'number') return String(figure);
  if (typeof figure === 'string') return textIn(name, figure, view);
  if (isWords(figure)) return wordsText(figure, view);
  if (isList(figure)) {
    const texts = runs(figure.map((one) => figureText(name, one, view)));
    return texts.join(texts.some((text) => bracketed(text) !== text) ? '; ' : ', ');
  }
  return isGroup(figure) ? groupText(name, figure, view) : '';
}
