/**
 * A plan on its page: the heading, what is drawn, what is written beside it, and below it the legend, a key by
 * numbers and notes.
 *
 * Whatever is written finds its own room: beside what it names, farther off with a line to it, or as a number whose
 * text stands in the key. What finds none is counted, and a note says so.
 */
import { Decimal } from '../quantity/decimal';
import { type Quantity, quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Saying, say, wordsOf } from '../reckoning/words';
import { localized, type View } from '../report/show';
import { quantityText, wordsText } from '../report/view';
import { type Frame, frameFor, type Margins, type PlanPoint } from './frame';
import { type Legend, type LegendEntry, type Row, rowsBelow } from './legend';
import { lengthText, sizeText } from './lengths';
import type { PlanStyle } from './plan-options';
import { type Box, type PagePoint, Room } from './room';
import { type Attributes, coordinate, element, fingerprint, pathThrough, textElement } from './svg';
import { firstLines, isGuessed, neatText, textWidth, wrapped } from './text-size';

/** Height of the box of a line of text, by the height of the text: signs above and below the line fit in. */
const BOX = 1.28;
const TITLE = 200;
const TITLE_LINES = 3;
const TITLE_SIZE = 1.2;
const LINE = 1.4;
/** Longer names are cut short. */
const NAME = 40;
/** Where so many texts found no room the page is full, and none is looked for far off. */
const CROWDED = 25;
/** Rows in the key; more than these nobody reads off a plan. */
const MOST_KEYED = 60;

type Length = Quantity<'length'>;

/** What a plan is made with. */
export interface SheetParts {
  readonly style: PlanStyle;
  /** The heading where none is given. */
  readonly usual: Saying;
  /** The family of units of the input. */
  readonly system: System;
  /** What must fit on the plan. */
  readonly points: readonly PlanPoint[];
  /** Room beside the plan, by the height of the text. */
  readonly margins?: Partial<Margins>;
}

/** How a label is to be put. */
export interface LabelOptions {
  readonly class?: string;
  /** What the key says where there is room for a number only; by default the text. */
  readonly keyed?: string;
  /** Without it the label is left out where it does not fit. */
  readonly mayMove?: boolean;
  /** Free room between the place and its label, in pixels. */
  readonly gap?: number;
  /** Directions that are tried first, in degrees clockwise from the right. */
  readonly prefer?: readonly number[];
}

/** Lines that text is to keep clear of. */
const isHeavy = (attributes: Attributes): boolean => Number(attributes['stroke-width'] ?? 0) >= 1.2;

/** How far the gap is kept along both axes where a label stands aslant from its place. */
const ASLANT = 0.3;

const AROUND = [-45, 45, 0, 180, -90, 90, -135, 135];

/** A plan that is being drawn. */
export class Sheet {
  readonly frame: Frame;
  readonly room: Room;
  /** Height of the text. */
  readonly size: number;
  readonly system: System;
  private readonly style: PlanStyle;
  private readonly view: View;
  private readonly heading: readonly string[];
  readonly title: string;
  private readonly drawn: string[] = [];
  private readonly written: string[] = [];
  private readonly calls: Row[] = [];
  private readonly listed: string[] = [];
  private readonly legend: LegendEntry[] = [];
  private readonly key: Row[] = [];
  private readonly notes: Row[] = [];
  private crowdedOut = 0;
  private keyed = 0;
  private reserved = 0;
  private marked = 0;

  constructor({ style, usual, system, points, margins = {} }: SheetParts) {
    this.style = style;
    this.size = style.size;
    this.system = style.system ?? system;
    const { locale, language } = style;
    this.view = { system: this.system, ...(locale ? { locale } : {}), ...(language ? { language } : {}) };
    this.title = style.title ?? neatText(this.text(usual), TITLE);
    const head = TITLE_SIZE * this.size;
    const lines = wrapped(this.title, head, style.width - 2 * this.size, true);
    this.heading = firstLines(lines, TITLE_LINES);
    const em = (side: keyof Margins): number => (margins[side] ?? 2.3) * this.size;
    const beside = { left: em('left'), right: em('right'), top: em('top'), bottom: em('bottom') };
    const top = this.size * 0.8 + this.heading.length * head * LINE;
    this.frame = frameFor(points, style.width, beside, top, 6 * this.size);
    this.room = new Room(this.frame.bounds);
  }

  /** Words in the language and units of the reader. */
  text(saying: Saying): string {
    return wordsText(wordsOf(saying), this.view);
  }

  /** A length to lay out from: feet and inches to 1/16 in, or meters to the millimeter. */
  length = (q: Length): string => localized(lengthText(q, this.system), this.view);

  /** A size as it is specified: inches, or millimeters. */
  sized = (q: Length): string => localized(sizeText(q, this.system), this.view);

  /** Text of a quantity with the marks of numbers of the reader. */
  marks = (text: string): string => localized(text, this.view);

  /** So many meters as a length. */
  meters(n: number): Length {
    return quantityOf('length', new Decimal(n.toFixed(9)), this.system);
  }

  /** Any other quantity, as it is told in the units of the plan. */
  quantity = (q: Quantity): string => quantityText(q, this.view);

  /** A name that somebody gave to something. */
  name = (text: string): string => neatText(text, NAME);

  /** `ink` and `paper` as the colors of the plan. */
  private colored(attributes: Attributes): Attributes {
    const color = (value: string | number): string | number => {
      if (value === 'ink') return this.style.ink;
      return value === 'paper' ? (this.style.paper ?? 'none') : value;
    };
    return Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, color(value)]));
  }

  /** Draw an element on the page. */
  draw(name: string, attributes: Attributes): void {
    this.drawn.push(element(name, this.colored(attributes)));
  }

  /** A line through points of the plan. */
  line(points: readonly PlanPoint[], attributes: Attributes, closed = false): void {
    this.pageLine(points.map(this.frame.at), attributes, closed);
  }

  /** A line through points of the page. */
  pageLine(points: readonly PagePoint[], attributes: Attributes, closed = false): void {
    const heavy = isHeavy(attributes);
    points.forEach((p, i) => {
      const next = points[i + 1] ?? (closed ? points[0] : undefined);
      if (next) this.room.draw(p, next, heavy);
    });
    this.draw('path', { d: pathThrough(points) + (closed ? 'Z' : ''), ...attributes });
  }

  /** Rings of the plan as one shape with holes. */
  shape(rings: readonly (readonly PlanPoint[])[], attributes: Attributes): void {
    const pages = rings.map((ring) => ring.map(this.frame.at));
    for (const ring of pages) {
      ring.forEach((p, i) => {
        if (attributes['stroke'])
          this.room.draw(p, ring[(i + 1) % ring.length] as PagePoint, isHeavy(attributes));
      });
    }
    const d = pages.map((ring) => `${pathThrough(ring)}Z`).join('');
    this.draw('path', { d, 'fill-rule': 'evenodd', ...attributes });
  }

  /** A circle of the plan; its radius in meters. */
  circle(center: PlanPoint, radius: number, attributes: Attributes): void {
    const { x, y } = this.frame.at(center);
    const r = radius * this.frame.scale;
    const spot = (i: number): PagePoint => ({
      x: x + r * Math.cos((i * Math.PI) / 48),
      y: y + r * Math.sin((i * Math.PI) / 48),
    });
    for (let i = 0; i < 96; i += 1) this.room.draw(spot(i), spot(i + 1), isHeavy(attributes));
    this.draw('circle', { cx: x, cy: y, r, ...attributes });
  }

  /** A dot on the page that nothing is written over. */
  dot({ x, y }: PagePoint, r: number, attributes: Attributes = {}): void {
    this.room.take({ x, y, width: 2 * r, height: 2 * r, turn: 0 });
    this.draw('circle', { cx: x, cy: y, r, fill: 'ink', ...attributes });
  }

  /** The box of a text about a point. */
  boxOf(text: string, at: PagePoint, turn = 0): Box {
    return { ...at, width: textWidth(text, this.size) + 2, height: this.size * BOX, turn };
  }

  /** Write a text into a box that is its own. */
  write(text: string, { x, y, width, turn }: Box, attributes: Attributes = {}): void {
    const style = isGuessed(text) ? { textLength: width - 2, lengthAdjust: 'spacingAndGlyphs' } : {};
    const turned =
      turn === 0 ? {} : { transform: `rotate(${coordinate(turn)} ${coordinate(x)} ${coordinate(y)})` };
    // A rim of the ground around it, over lines that it crosses.
    const rim = this.style.paper
      ? { stroke: this.style.paper, 'stroke-width': this.size / 4, 'paint-order': 'stroke' }
      : {};
    const place = { x, y: y + this.size * 0.35, 'text-anchor': 'middle' };
    this.written.push(
      textElement('text', { ...place, ...rim, ...style, ...turned, ...this.colored(attributes) }, text),
    );
  }

  /** Put a text into the best free one of these boxes, in which no more lines than this are hidden. */
  place(text: string, boxes: readonly Box[], attributes: Attributes = {}, most?: number): boolean {
    const box = this.room.choose(boxes, most);
    if (box) this.write(text, box, attributes);
    return box !== undefined;
  }

  /** Boxes around a spot of the page, so far from it. */
  private around(box: Box, spot: PagePoint, gap: number, directions: readonly number[]): Box[] {
    return directions.map((degrees) => {
      const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const side = (n: number): number => (Math.abs(n) < 0.1 ? 0 : Math.sign(n));
      return {
        ...box,
        x: spot.x + side(cos) * (box.width / 2 + gap * ASLANT) + cos * gap * (1 - ASLANT),
        y: spot.y + side(sin) * (box.height / 2 + gap * ASLANT) + sin * gap * (1 - ASLANT),
      };
    });
  }

  /** Farther and farther off, with a line back to the spot. */
  private farOff(box: Box, spot: PagePoint): Box | undefined {
    if (this.crowdedOut >= CROWDED) return undefined;
    const boxes: Box[] = [];
    for (let far = 1; far <= 7; far += 1) {
      for (let turn = 0; turn < 12; turn += 1) {
        const angle = ((turn * 30 + far * 15 - 45) * Math.PI) / 180;
        const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
        const off = far * this.size * 1.1;
        boxes.push({
          ...box,
          x: spot.x + dx * (off + box.width / 2),
          y: spot.y + dy * (off + box.height / 2),
        });
      }
    }
    const found = this.room.choose(boxes);
    if (found) this.leader(found, spot);
    return found;
  }

  private leader(box: Box, spot: PagePoint): void {
    const near = {
      x: Math.min(Math.max(spot.x, box.x - box.width / 2), box.x + box.width / 2),
      y: Math.min(Math.max(spot.y, box.y - box.height / 2), box.y + box.height / 2),
    };
    const strokes = { stroke: 'ink', 'stroke-width': 0.5, 'stroke-opacity': 0.7, class: 'leader' };
    this.pageLine([near, spot], strokes);
  }

  /** Write a text beside a spot of the page, farther off, or in the key. */
  label(text: string, spot: PagePoint, options: LabelOptions = {}): void {
    const { gap = 3, prefer = [], keyed = text, mayMove = true } = options;
    const attributes = options.class ? { class: options.class } : {};
    const directions = [...prefer, ...AROUND.filter((d) => !prefer.includes(d))];
    const box = this.boxOf(text, spot);
    if (this.place(text, this.around(box, spot, gap, directions), attributes)) return;
    if (!mayMove) return;
    const far = this.farOff(box, spot);
    if (far) this.write(text, far, attributes);
    else this.number(keyed, spot, gap);
  }

  /** Put a number at a spot of the page, or beside it, and a text beside that number in the key. */
  number(keyed: string, spot: PagePoint, gap = 0): void {
    if (this.keyed - this.reserved >= MOST_KEYED || this.crowdedOut >= CROWDED) {
      this.crowdedOut += 1;
      return;
    }
    const number = String(this.keyed + 1);
    const box = this.bubbleBox(number, spot);
    const near = [...(gap === 0 ? [box] : []), ...this.around(box, spot, gap + 1, AROUND)];
    const put = this.room.choose(near) ?? this.farOff(box, spot);
    if (!put) {
      this.crowdedOut += 1;
      return;
    }
    this.keyed += 1;
    this.bubble(number, put);
    this.key.push({ number, text: keyed });
  }

  /**
   * Numbers from 1 to this are given to things by hand, with `mark`; those of the key go on behind them.
   */
  reserve(numbers: number): void {
    this.reserved = numbers;
    this.keyed = numbers;
  }

  /** A number that was given to a thing, in the first of these places that is free, with what the key says of it. */
  mark(number: number, keyed: string | undefined, spots: readonly PagePoint[]): void {
    const text = String(number);
    const boxes = spots.map((spot) => this.bubbleBox(text, spot));
    const [middle] = spots;
    const put = this.room.choose(boxes) ?? (middle && this.farOff(this.bubbleBox(text, middle), middle));
    if (put) this.bubble(text, put);
    else this.crowdedOut += 1;
    if (keyed !== undefined && this.marked < MOST_KEYED) {
      this.marked += 1;
      this.key.push({ number: text, text: keyed });
    }
  }

  private bubbleBox(number: string, at: PagePoint): Box {
    const across = Math.max(1.5 * this.size, textWidth(number, this.size) + this.size * 0.6);
    return { ...at, width: across, height: 1.5 * this.size, turn: 0 };
  }

  private bubble(number: string, box: Box): void {
    const { x, y, width, height } = box;
    const place = { x: x - width / 2 + 0.5, y: y - height / 2 + 0.5, width: width - 1, height: height - 1 };
    const look = { rx: height / 2 - 0.5, fill: 'paper', stroke: 'ink', 'stroke-width': 0.9, class: 'number' };
    this.written.push(element('rect', this.colored({ ...place, ...look })));
    this.write(number, box, { class: 'number' });
  }

  /** Something that a reader must know of what is drawn. */
  explain(...entries: readonly (LegendEntry | false | undefined)[]): void {
    for (const entry of entries) if (entry) this.legend.push(entry);
  }

  /** What is called for, above the legend. */
  callOut(text: string): void {
    this.calls.push({ text });
  }

  /** Short texts below the plan, side by side where there is room. */
  list(texts: readonly string[]): void {
    this.listed.push(...texts);
  }

  /** A sentence below the plan, once however often it is needed. */
  note(text: string): void {
    if (!this.notes.some((note) => note.text === text)) this.notes.push({ text });
  }

  /** Something that had no room and no place in the key. */
  leaveOut(): void {
    this.crowdedOut += 1;
  }

  /** The whole document, as text. */
  finish(description: string): string {
    if (this.crowdedOut > 0) {
      this.note(this.text(say`${{ count: this.crowdedOut }} more texts have no room; draw the plan wider`));
    }
    const { calls, legend, notes, listed } = this;
    const key = [...this.key].sort((a, b) => Number(a.number) - Number(b.number));
    const below: Legend = { calls, legend, key, notes, listed };
    const { rows, bottom } = rowsBelow(below, {
      top: this.frame.bounds.bottom + this.size * 0.4,
      width: this.style.width,
      size: this.size,
      colored: (attributes) => this.colored(attributes),
    });
    const { width, paper, ink } = this.style;
    const body = [
      ...(paper ? [element('rect', { x: 0, y: 0, width, height: bottom, fill: paper })] : []),
      ...this.headingLines(),
      element('g', { fill: 'none' }, ...this.drawn),
      element('g', { fill: ink }, ...this.written),
      element('g', { fill: ink }, ...rows),
    ];
    const prefix = this.style.id ?? `plan-${fingerprint([this.title, description, ...body].join())}`;
    return element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        viewBox: `0 0 ${coordinate(width)} ${coordinate(bottom)}`,
        role: 'img',
        'aria-labelledby': `${prefix}-title ${prefix}-desc`,
        'font-family': 'sans-serif',
        'font-size': this.size,
        fill: 'none',
      },
      textElement('title', { id: `${prefix}-title` }, this.title),
      textElement('desc', { id: `${prefix}-desc` }, description),
      ...body,
    );
  }

  private headingLines(): string[] {
    const head = TITLE_SIZE * this.size;
    return this.heading.map((line, i) => {
      const place = { x: this.size, y: this.size * 0.8 + head * (1 + i * LINE) };
      const look = { fill: this.style.ink, 'font-weight': 'bold', 'font-size': head };
      const most = this.style.width - 2 * this.size;
      const held = isGuessed(line)
        ? { textLength: Math.min(most, textWidth(line, head, true)), lengthAdjust: 'spacingAndGlyphs' }
        : {};
      return textElement('text', { ...place, ...look, ...held, class: 'title' }, line);
    });
  }
}
