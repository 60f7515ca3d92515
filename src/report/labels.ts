/**
 * The words that stand before a figure: those of the trade where the name of the figure alone would not be
 * understood on a site, else the name itself, taken apart.
 */
import { wordText } from './names';
import type { View } from './show';

/** By the name of the figure or input. */
const TRADE: Readonly<Record<string, string>> = {
  alongEdge: 'along the edge',
  barPerRun: 'bar per run with laps',
  clearance: 'clearance below the sill',
  contraction: 'control (contraction) joints',
  evenSpacing: 'spacing as laid',
  governs: 'governed by',
  how: 'what may be done',
  kept: 'drops kept',
  lengthValues: 'value of each length',
  lines: 'runs',
  oneIn: 'ratio',
  regular: 'at regular intervals',
  reverse: 'facets toward the building',
  runLength: 'length of a run',
  short: 'facets too flat',
  shrinkage: 'shrinkage, loose to compacted',
  waterCement: 'water-cement ratio',
  workFrom: 'work starts',
  workTo: 'work ends',
};

/** Options whose word alone says little. */
const OPTIONS: Readonly<Record<string, string>> = { 'how either': 'raise or lower' };

/** An option as it is said, by the name of its input. */
export const optionText = (name: string, option: string): string => OPTIONS[`${name} ${option}`] ?? option;

/** Where only words of this library stand, never a name that somebody gave. */
const OWN_WORDS: ReadonlySet<string> = new Set(
  `against aim bracing by cement change compactor do finish ground kind material method next on protection rounded saw
  sending service shape split startedBy sulfate surface table use`.split(/\s+/),
);

/** An option in the language of the view, without the hyphens of its code. */
export function optionWord(name: string, option: string, view: View): string {
  const told = wordText(optionText(name, option), view);
  const isCode = told === option && OWN_WORDS.has(name) && /^[a-z]+(?:-[a-z]+)+$/.test(option);
  return isCode ? option.replaceAll('-', ' ') : told;
}

const TAKEN_APART = /([a-z])([A-Z0-9])/g;

/** `looseVolume` to `loose volume`; what has places in it, as `areas[0].coefficient` has, part by part. */
export const spoken = (name: string): string =>
  Object.hasOwn(TRADE, name)
    ? (TRADE[name] as string)
    : name.replace(TAKEN_APART, '$1 $2').replace(/ [A-Z](?=[a-z])/g, (capital) => capital.toLowerCase());

const INDEX = /^(.*?)\[(\d+)\]$/;

/** Where in an input something stands, counted as people count: `areas[0].coefficient` to `areas 1, coefficient`. */
export function placeText(path: string, view: View): string {
  const part = (text: string): string => {
    const [, name, index] = INDEX.exec(text) ?? [];
    return name === undefined ? labelText(text, view) : `${listLabel(name, view)} ${Number(index) + 1}`;
  };
  return path.split('.').map(part).join(', ');
}

/** A place within a sentence: what it is first, and behind it in brackets what it belongs to. */
export function placeInSentence(path: string, view: View): string {
  if (!/[.[A-Z]/.test(path)) return wordText(path, view);
  const parts = placeText(path, view).split(', ');
  const [last, ...before] = [parts.at(-1) as string, ...parts.slice(0, -1)];
  return before.length === 0 ? last : `${last} (${before.join(', ')})`;
}

/** A name of this library as a label. */
export const labelText = (name: string, view: View): string => wordText(spoken(name), view);

/** Labels of lists of groups, where a single figure of the same name is called otherwise. */
const OF_LISTS: Readonly<Record<string, string>> = { lines: 'lines' };

/** The label of a list of groups. */
export const listLabel = (name: string, view: View): string =>
  Object.hasOwn(OF_LISTS, name) ? wordText(OF_LISTS[name] as string, view) : labelText(name, view);

/** Groups whose members are named by who gave the input: `NE`, `doorSill`, `A` and `a` stay as they are. */
const NAMED_BY_USER: ReadonlySet<string> = new Set(['elevations']);

/** Bars that run one way. */
const WAYS: Readonly<Record<string, string>> = {
  along: 'bars the long way',
  across: 'bars the short way',
};

/** The label of a figure or input that is a group. */
export const groupLabel = (name: string, view: View): string =>
  wordText(Object.hasOwn(WAYS, name) ? (WAYS[name] as string) : spoken(name), view);

/** True where the members of a group are named by who gave the input. */
export const isNamedByUser = (group: string): boolean => NAMED_BY_USER.has(group);

/** Members that are called otherwise in this group than alone. */
const IN_GROUPS: Readonly<Record<string, string>> = {
  'panels.ratio': 'length to width',
  'plan.drop': 'offcut',
  'sawing.order': 'in this order',
};

/** The label of a member of a group. */
export function memberLabel(group: string, name: string, view: View): string {
  const key = `${group}.${name}`;
  return Object.hasOwn(IN_GROUPS, key) ? wordText(IN_GROUPS[key] as string, view) : labelText(name, view);
}

/** Inputs that are a time of day. */
const TIMES_OF_DAY: ReadonlySet<string> = new Set([
  'finishAt',
  'finishedAt',
  'firstTruckAt',
  'now',
  'placedAt',
  'rainAt',
  'sheenAt',
  'startAt',
  'sunset',
  'workFrom',
  'workTo',
]);

/** True for an input that is a time of day. */
export const isTimeOfDay = (name: string): boolean => TIMES_OF_DAY.has(name);

/** Figures and inputs whose text is a name that somebody gave, a mark or a designation: no language has a word for it. */
const NAMES: ReadonlySet<string> = new Set([
  'name',
  'day',
  'point',
  'mark',
  'bar',
  'bars',
  'style',
  'source',
  'title',
  'from',
  'to',
  'spot',
  'spots',
]);

/** True where the text of a figure is a name that somebody gave. */
export const isName = (figure: string): boolean => NAMES.has(figure);
