/** What stands below a plan: the legend, the key by numbers and the notes, in columns where there is room. */
import { type Attributes, element, textElement } from './svg';
import { isGuessed, textWidth, wrapped } from './text-size';

/** What is drawn in which way. */
export interface LegendEntry {
  readonly text: string;
  /** Draws the sample in a field of the given width about a point of the page. */
  readonly sample: Sample;
}

/** Draws a sample; gives elements with `ink` and `paper` for colors. */
export type Sample = (
  x: number,
  y: number,
  width: number,
) => readonly (readonly [name: string, attributes: Attributes, text?: string])[];

/** A line in the key or a note. */
export interface Row {
  readonly text: string;
  readonly number?: string;
}

/** All that stands below a plan. */
export interface Legend {
  readonly calls: readonly Row[];
  readonly listed: readonly string[];
  readonly legend: readonly LegendEntry[];
  readonly key: readonly Row[];
  readonly notes: readonly Row[];
}

interface Place {
  readonly top: number;
  readonly width: number;
  readonly size: number;
  readonly colored: (attributes: Attributes) => Attributes;
}

/** A sample of a line. */
export const lineSample =
  (attributes: Attributes): Sample =>
  (x, y, width) => [['path', { d: `M${x - width / 2} ${y}h${width}`, fill: 'none', ...attributes }]];

/** A sample of a text. */
export const textSample =
  (text: string): Sample =>
  (x) => [['text', { x }, text]];

const LINE = 1.4;
const COLUMN = 30;
const SAMPLE = 2.4;

/** A line of text, so far from the left. */
interface Line {
  readonly text: string;
  readonly left: number;
  /** Which line of its block it stands on. */
  readonly row: number;
}

interface Block {
  readonly lines: readonly Line[];
  readonly rows: number;
  readonly mark: (x: number, y: number) => string[];
}

/** Text in lines one below the other. */
function blockOf(text: string, left: number, column: number, size: number, mark: Block['mark']): Block {
  const lines = wrapped(text, size, column - left);
  return { lines: lines.map((line, row) => ({ text: line, left, row })), rows: lines.length, mark };
}

const NO_MARK = (): string[] => [];

/** Short texts side by side, as many as have room, each below the one before it. */
function listBlocks(texts: readonly string[], column: number, size: number): Block[] {
  const widest = Math.max(...texts.map((text) => textWidth(text, size))) + size;
  const across = Math.max(1, Math.floor((column + size) / widest));
  if (across === 1) return texts.map((text) => blockOf(text, 0, column, size, NO_MARK));
  const rows = Math.ceil(texts.length / across);
  return Array.from({ length: rows }, (_, row) => ({
    lines: texts
      .filter((__, i) => i % rows === row)
      .map((text, i) => ({ text, left: (i * column) / across, row: 0 })),
    rows: 1,
    mark: NO_MARK,
  }));
}

function blocksOf({ calls, legend, key, notes, listed }: Legend, column: number, place: Place): Block[] {
  const { size, colored } = place;
  const indent = (SAMPLE + 0.7) * size;
  const block = (text: string, left: number, mark: Block['mark']): Block =>
    blockOf(text, left, column, size, mark);
  return [
    ...calls.map(({ text }) => block(text, 0, NO_MARK)),
    ...legend.map(({ text, sample }) => block(text, indent, (x, y) => drawn(sample, x, y, place))),
    ...key.map(({ text, number = '' }) =>
      block(text, indent, (x, y) => keyMark(number, x + (SAMPLE / 2) * size, y, size, colored)),
    ),
    ...notes.map(({ text }) => block(text, 0, NO_MARK)),
    ...listBlocks(listed, column, size),
  ];
}

/** A sample in its field; paths are lines. */
function drawn(sample: Sample, x: number, y: number, { size, colored }: Place): string[] {
  return sample(x + (SAMPLE / 2) * size, y, SAMPLE * size).map(([name, attributes, text]) => {
    if (text === undefined) {
      return element(name, colored(name === 'path' ? { fill: 'none', ...attributes } : attributes));
    }
    const middle = { y: y + size * 0.35, 'text-anchor': 'middle' };
    return textElement(name, { ...middle, ...colored(attributes) }, text);
  });
}

function keyMark(number: string, x: number, y: number, size: number, colored: Place['colored']): string[] {
  const across = Math.max(1.4 * size, textWidth(number, size) + size * 0.5);
  const high = 1.36 * size;
  const look = { rx: high / 2, fill: 'none', stroke: 'ink', 'stroke-width': 0.9 };
  return [
    element('rect', colored({ x: x - across / 2, y: y - high / 2, width: across, height: high, ...look })),
    textElement('text', { x, y: y + size * 0.35, 'text-anchor': 'middle' }, number),
  ];
}

/** In so many columns that none is narrow, each as long as the others. */
function columned(blocks: readonly Block[], columns: number): Block[][] {
  const all = blocks.reduce((sum, { rows }) => sum + rows, 0);
  const out: Block[][] = Array.from({ length: columns }, () => []);
  let before = 0;
  for (const block of blocks) {
    out[Math.min(columns - 1, Math.floor((before * columns) / Math.max(all, 1)))]?.push(block);
    before += block.rows;
  }
  return out;
}

/** The rows below a plan, and where they end. */
export function rowsBelow(below: Legend, place: Place): { rows: string[]; bottom: number } {
  const { top, width, size } = place;
  const columns = Math.max(1, Math.floor(width / (COLUMN * size)));
  const column = (width - size) / columns - size;
  let bottom = top;
  const rows = columned(blocksOf(below, column, place), columns).flatMap((blocks, c) => {
    const left = size + c * (column + size);
    let y = top;
    const groups = blocks.map(({ lines, rows: high, mark }) => {
      const first = y + (LINE / 2) * size;
      const texts = lines.map((one) => {
        const held = isGuessed(one.text)
          ? { textLength: textWidth(one.text, size), lengthAdjust: 'spacingAndGlyphs' }
          : {};
        const at = { x: left + one.left, y: first + size * 0.35 + one.row * LINE * size };
        return textElement('text', { ...at, ...held }, one.text);
      });
      y += high * LINE * size + size * 0.3;
      return element('g', { class: 'legend' }, ...mark(left, first), ...texts);
    });
    bottom = Math.max(bottom, y);
    return groups;
  });
  return { rows, bottom: bottom + size * 0.6 };
}
