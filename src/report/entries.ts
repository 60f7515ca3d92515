/** Figures and inputs on a sheet: a label and a text, or a table for a list of groups and for a group of many members. */
import { isQuantity, type Quantity } from '../quantity/quantity';
import { clockTime } from './clock';
import {
  breathText,
  figureText,
  type Group,
  groupText,
  isEmpty,
  isGroup,
  isKind,
  isList,
  isPair,
  isPlace,
  labelOf,
  type Plain,
  phrase,
  piecesOf,
  someOf,
} from './figures';
import { groupLabel, isNamedByUser, labelText, listLabel } from './labels';
import type { Cells } from './lines';
import { tapedView } from './taped';
import { type View, wordText } from './view';

/** One figure on a sheet: beside its label, or as a table under it. */
export interface Entry {
  readonly label: string;
  readonly text: string;
  readonly table?: Cells;
}

/** An amount for a quantity says nothing in two cells. */
const isPrice = (group: Group): boolean => 'amount' in group && 'per' in group;

/** The cells of a row by the label of their column; groups within are taken apart. */
function cellsOf(name: string, group: Group, view: View): [string, string][] {
  return Object.entries(group).flatMap(([member, part]): [string, string][] => {
    if (isEmpty(part)) return [];
    const label = labelOf(name, member, part, view);
    if (
      isGroup(part) &&
      !isPair(part) &&
      !isPlace(part) &&
      !isPrice(part) &&
      clockTime(part, view) === undefined
    ) {
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

const isListOfGroups = (part: Plain): part is readonly Group[] =>
  isList(part) && part.every((one) => isGroup(one) && !isPair(one) && !isPlace(one));

/** A figure as it stands on a sheet. */
export function entryOf(name: string, figure: Plain, view: View): Entry[] {
  if (isEmpty(figure)) return [];
  const label = isGroup(figure) ? groupLabel(name, view) : labelText(name, view);
  if (isListOfGroups(figure))
    return [{ label: listLabel(name, view), text: '', table: tableOf(name, figure, tapedView(name, view)) }];
  if (isGroup(figure) && isNamedByUser(name)) {
    const rows = Object.entries(figure).map(([member, part]) => [member, figureText(member, part, view)]);
    const told = rows.map((row) => row.join(' '));
    return [{ label, text: '', table: { head: [wordText('name', view), label], rows, told } }];
  }
  if (!isGroup(figure)) return [{ label, text: figureText(name, figure, view) }];
  const only = onlyOne(name, figure, view);
  return only ? [only] : groupEntries(name, figure, view);
}

/** More members than this are told below each other. */
const IN_A_ROW = 3;

/** A group as a short phrase, or its members below each other, with tables of the lists in it. */
function groupEntries(name: string, group: Group, view: View): Entry[] {
  const label = groupLabel(name, view);
  const breath = breathText(group, view);
  if (breath !== undefined) return [{ label, text: breath }];
  const some = someOf(group);
  const lists = some.filter(([, part]) => isListOfGroups(part));
  const pieces = piecesOf(
    name,
    some.filter(([, part]) => !isListOfGroups(part)),
    view,
  ).filter(({ bare, text }) => !bare || text !== label);
  const text = phrase(pieces);
  const rows = pieces.map((piece) => [piece.label, piece.text]);
  const table = { head: [], rows, told: pieces.map((piece) => phrase([piece])) };
  return [
    ...(pieces.length > 0 ? [pieces.length > IN_A_ROW ? { label, text: '', table } : { label, text }] : []),
    ...lists.flatMap(([member, part]) =>
      entryOf(member, part, view).map((entry) => ({ ...entry, label: `${label}, ${entry.label}` })),
    ),
  ];
}

/** A group of which one member alone is told: its name belongs to the label. */
function onlyOne(name: string, group: Group, view: View): Entry | undefined {
  if (isPair(group) || isPlace(group)) return undefined;
  const [only, ...more] = someOf(group);
  if (!only || more.length > 0 || isGroup(only[1]) || isListOfGroups(only[1])) return undefined;
  const label = groupLabel(name, view);
  const inner = isKind(...only) ? '' : labelOf(name, ...only, view);
  return { label: inner ? `${label}, ${inner}` : label, text: figureText(...only, view) };
}

/** What holds of the bars of one way and of the other, beside each other. */
function eachWay([along, across]: readonly Entry[], view: View): Entry | undefined {
  const [one, other] = [along?.table, across?.table];
  if (!along || !across || !one || !other || one.head.length > 0) return undefined;
  const alike =
    one.rows.length === other.rows.length && one.rows.every(([label], i) => label === other.rows[i]?.[0]);
  if (!alike) return undefined;
  const rows = one.rows.map((row, i) => [...row, other.rows[i]?.[1] ?? '']);
  const table = { head: ['', along.label, across.label], rows, told: rows.map((row) => row.join(', ')) };
  return { label: wordText('bars each way', view), text: '', table };
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
  const shown = (some.length > 0 ? some : telling).map(([name, figure]) => ({
    name,
    entries: entryOf(name, withVerdict(figure), view),
  }));
  return shown.flatMap(({ name, entries }, i) => {
    const [before, after] = [shown[i - 1], shown[i + 1]];
    const both = (along: typeof before, across: typeof before): Entry | undefined =>
      along?.name === 'along' && across?.name === 'across'
        ? eachWay([...along.entries, ...across.entries], view)
        : undefined;
    if (name === 'across' && both(before, shown[i])) return [];
    return name === 'along' ? (both(shown[i], after) ?? entries) : entries;
  });
}
