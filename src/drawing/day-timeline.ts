/** The day of a pour on a line of time: each stage as it is likely, and how much earlier or later it may be. */
import { clockOf } from '../pour/clock';
import { type DayPlanFigures, type DayPlanInput, type DayStage, dayPlan } from '../pour/day-plan';
import type { DayFinish } from '../pour/day-set';
import type { DayStageName } from '../pour/day-stages';
import type { Quantity } from '../quantity/quantity';
import { say } from '../reckoning/words';
import { lineSample, type Sample } from './legend';
import { type PlanOptions, type PlanStyle, readPlanOptions } from './plan-options';
import { Sheet } from './sheet';
import type { Attributes } from './svg';
import { textWidth } from './text-size';
import { type BarRows, boxOf, drawBars, STRAY } from './timeline-bars';

/** Height of a row by that of the text, and of a bar by that of its row. */
const ROW = 1.8;
const BAR = 0.6;
const MARGIN = { right: 2.2, top: 2.4, bottom: 3.4 };
const STEPS = [5, 10, 15, 30, 60, 120, 240, 480, 720, 1440, 2880, 7200, 14_400, 43_200];
const DAY = 1440;
/** Less than so much is no stretch that is drawn. */

const LIKELY: Attributes = { fill: 'ink', stroke: 'ink', 'stroke-width': 0.6 };
const WAITING: Attributes = { fill: 'none', stroke: 'ink', 'stroke-width': 0.8, 'stroke-dasharray': '3 2' };
const MAYBE: Attributes = { fill: 'ink', 'fill-opacity': 0.18 };
const TICK: Attributes = { stroke: 'ink', 'stroke-width': 0.4, 'stroke-opacity': 0.5 };
const END: Attributes = { stroke: 'ink', 'stroke-width': 1.4 };
const DARK: Attributes = { fill: 'ink', 'fill-opacity': 0.08 };

const NAMES: Readonly<Record<Exclude<DayStageName, 'finish'>, string>> = {
  place: 'place',
  'strike-off': 'strike off',
  'bull-float': 'bull float',
  wait: 'bleed water leaves',
  edge: 'edge',
  cure: 'cure',
  saw: 'saw',
  leave: 'leave',
  wash: 'wash free',
};
const FINISHES: Readonly<Record<DayFinish, string>> = {
  float: 'float',
  broom: 'float and broom',
  'hard-trowel': 'float and trowel',
  stamp: 'stamp',
  'exposed-aggregate': 'float and spray',
  'rock-salt': 'float and salt',
};

/** A stage in minutes from the first concrete, for drawing. */
interface Bar {
  readonly stage: DayStageName;
  readonly earliest: number;
  readonly begins: number;
  readonly ends: number;
  readonly latest: number;
}

const minutes = (t: Quantity<'time'>): number => t.toNumber('min');

/** What is washed free next day would make all before it too short to read. */
const drawnOf = ({ stages }: DayPlanFigures): readonly DayStage[] =>
  stages.filter(({ stage }) => stage !== 'wash');

const barOf = ({ stage, begins, ends }: DayStage): Bar => ({
  stage,
  earliest: minutes(begins.earliest),
  begins: minutes(begins.likely),
  ends: minutes(ends.likely),
  latest: minutes(ends.latest),
});

/** Where things lie: minutes across, rows down. */
interface Grid extends BarRows {
  readonly to: number;
  readonly row: number;
  readonly bottom: number;
}

const upright = (sheet: Sheet, { row, bottom }: Grid, x: number, look: Attributes): void =>
  sheet.line(
    [
      { x, y: row * 0.15 },
      { x, y: bottom },
    ],
    look,
  );

/** Ticks at full hours, or at halves and quarters of them where there is room. */
function drawScale(sheet: Sheet, grid: Grid, start: number): void {
  const room = (textWidth('22:30', sheet.size) + sheet.size) / sheet.frame.scale;
  const step = STEPS.find((s) => s >= room) ?? Math.ceil(room / DAY) * DAY;
  const offset = start % step;
  for (let t = offset === 0 ? 0 : step - offset; t <= grid.to + STRAY; t += step) {
    upright(sheet, grid, t, { ...TICK, class: 'tick' });
    const at = sheet.frame.at({ x: t, y: 0 });
    const text = clockOf(start + t);
    sheet.place(text, [sheet.boxOf(text, { x: at.x, y: at.y - sheet.size * 0.8 })], { class: 'time' });
  }
}

/** What a day ends with, below its line: sunset, and the end of work. */
function drawEnd(sheet: Sheet, grid: Grid, at: number, text: string, name: string): void {
  upright(sheet, grid, at, { ...END, class: name });
  const foot = sheet.frame.at({ x: at, y: grid.bottom });
  const box = sheet.boxOf(text, { x: foot.x, y: foot.y + sheet.size });
  const { left, right } = sheet.frame.bounds;
  const inside = (x: number): number => Math.min(Math.max(x, left + box.width / 2), right - box.width / 2);
  const boxes = [0, -1, 1].map((side) => ({ ...box, x: inside(box.x + (side * box.width) / 2) }));
  const lower = boxes.map((one) => ({ ...one, y: one.y + sheet.size * 1.3 }));
  if (!sheet.place(text, [...boxes, ...lower], { class: name })) sheet.note(text);
}

const nameOf = (sheet: Sheet, finish: DayFinish, stage: DayStageName): string =>
  sheet.text(stage === 'finish' ? FINISHES[finish] : NAMES[stage]);

/** The name of each row left of it; what it likely takes stands in its title. */
function nameRows(sheet: Sheet, { middle }: Grid, names: readonly string[]): void {
  names.forEach((text, i) => {
    const at = sheet.frame.at({ x: 0, y: middle(i) });
    const box = sheet.boxOf(text, at);
    sheet.place(text, [{ ...box, x: at.x - box.width / 2 - sheet.size * 0.3 }], { class: 'stage' });
  });
}

const boxSample =
  (look: Attributes): Sample =>
  (x, y, width) => [['rect', { x: x - width / 2, y: y - 4, width, height: 8, ...look }]];

function sheetOf(style: PlanStyle, system: 'customary' | 'metric', figures: DayPlanFigures) {
  const bars = drawnOf(figures).map(barOf);
  const probe = new Sheet({ style, usual: 'The day of the pour', system, points: [{ x: 0, y: 0 }] });
  const names = bars.map(({ stage }) => nameOf(probe, figures.finish, stage));
  const widest = Math.max(...names.map((text) => textWidth(text, style.size)));
  const left = widest / style.size + 1.2;
  const to = Math.max(...bars.map(({ latest }) => latest));
  const across = Math.max(style.width - (left + MARGIN.right) * style.size, style.width / 4);
  const row = (ROW * style.size * to) / across;
  const grid: Grid = { to, row, bottom: -bars.length * row, bar: BAR * row, middle: (i) => -(i + 0.5) * row };
  const points = boxOf(0, to, 0, grid.bottom);
  const sheet = new Sheet({
    style,
    usual: 'The day of the pour',
    system,
    points,
    margins: { left, ...MARGIN },
  });
  return { bars, names, grid, sheet };
}

/** What a day is held to, in minutes from the first concrete. */
function endsOf({ stages, daylight, workLeft }: DayPlanFigures): readonly (number | undefined)[] {
  const latest = (name: DayStageName): number =>
    stages.flatMap(({ stage, ends }) => (stage === name ? [minutes(ends.latest)] : []))[0] ?? 0;
  return [
    daylight && minutes(daylight.left) + latest('finish'),
    workLeft && minutes(workLeft) + latest('leave'),
  ];
}

/** Daylight and working hours, where they end within the day that is drawn. */
function drawEnds(sheet: Sheet, grid: Grid, figures: DayPlanFigures, start: number): void {
  const [sunset, work] = endsOf(figures);
  const told = (t: number): string => clockOf(start + t);
  if (sunset !== undefined && sunset < grid.to) {
    const dark = Math.max(sunset, 0);
    sheet.shape([boxOf(dark, grid.to, 0, grid.bottom)], { ...DARK, class: 'dark' });
    if (sunset > 0) drawEnd(sheet, grid, sunset, sheet.text(say`sunset ${{ at: told(sunset) }}`), 'sunset');
    else sheet.note(sheet.text('all of it is after sunset'));
  }
  if (work !== undefined && work > 0 && work < grid.to)
    drawEnd(sheet, grid, work, sheet.text(say`work ends ${{ at: told(work) }}`), 'work-ends');
}

/**
 * Draw the day of a pour on a line of time.
 *
 * @param input - the same as for `dayPlan`
 * @param options - heading, units, language, size and colors
 * @returns an SVG document as text, without external resources; it scales with its frame
 * @throws {InputError} as `dayPlan` does
 * @example
 * ```ts
 * import { dayTimeline } from 'flatwork-reckoner/drawing';
 *
 * const svg = dayTimeline({
 *   startAt: '7:30 am',
 *   area: '960 ft2',
 *   placingTime: '60 min',
 *   finish: 'broom',
 *   finishers: 3,
 *   finishRate: { area: '160 ft2', in: '1 h' },
 * });
 * svg.includes('>float and broom<'); // true
 * ```
 */
export function dayTimeline(input: DayPlanInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const { figures, system } = dayPlan(input);
  const { bars, names, grid, sheet } = sheetOf(style, system, figures);
  const start = figures.startsAt.time.toNumber('min');
  drawEnds(sheet, grid, figures, start);
  drawScale(sheet, grid, start);
  const before = bars.map((b) => [b.earliest, b.begins] as const);
  const behind = bars.map((b) => [b.ends, b.latest] as const);
  drawBars(sheet, grid, before, MAYBE, 'earlier');
  drawBars(sheet, grid, behind, MAYBE, 'later');
  const stretch = (b: Bar): readonly [number, number] => [b.begins, b.ends];
  const waits = bars.map((b) => (b.stage === 'wait' ? stretch(b) : undefined));
  const works = bars.map((b) => (b.stage === 'wait' ? undefined : stretch(b)));
  drawBars(sheet, grid, works, LIKELY, 'work');
  drawBars(sheet, grid, waits, WAITING, 'wait');
  drawLeaving(sheet, grid, bars);
  nameRows(sheet, grid, names);
  sheet.explain(
    { text: sheet.text('as is likely'), sample: boxSample(LIKELY) },
    waits.some((w) => w && w[1] - w[0] > STRAY) && {
      text: sheet.text('waiting'),
      sample: boxSample(WAITING),
    },
    { text: sheet.text('as early or as late as it may be'), sample: boxSample(MAYBE) },
    endsOf(figures).some((t) => t !== undefined && t > 0 && t < grid.to) && {
      text: sheet.text('end of daylight or of working hours'),
      sample: lineSample(END),
    },
  );
  tellWashing(sheet, figures);
  return sheet.finish(described(sheet, figures));
}

/** Leaving takes no time: a mark where it is likely. */
function drawLeaving(sheet: Sheet, { middle }: Grid, bars: readonly Bar[]): void {
  bars.forEach(({ stage, ends }, i) => {
    if (stage !== 'leave') return;
    sheet.dot(sheet.frame.at({ x: ends, y: middle(i) }), sheet.size * 0.3, { class: 'leave' });
  });
}

function tellWashing(sheet: Sheet, { stages }: DayPlanFigures): void {
  const wash = stages.find(({ stage }) => stage === 'wash');
  if (!wash) return;
  const [from, to] = [wash.clock.begins.likely, wash.clock.ends.likely];
  sheet.note(sheet.text(say`stones are washed free from ${{ from }} to ${{ to }}, as is likely`));
}

function described(sheet: Sheet, { stages, finishers }: DayPlanFigures): string {
  const clockOfStage = (name: DayStageName) => stages.find(({ stage }) => stage === name)?.clock;
  const [place, finish, leave] = [clockOfStage('place'), clockOfStage('finish'), clockOfStage('leave')];
  const params = {
    start: place?.begins.likely ?? '',
    placed: place?.ends.likely ?? '',
    from: finish?.begins.likely ?? '',
    to: finish?.ends.likely ?? '',
    finishers,
    leave: leave?.ends.likely ?? '',
  };
  return sheet.text({
    says: 'Placed from {start} to {placed}, finished from {from} to {to}, finishers: {finishers}; the crew leaves at {leave}, all as is likely',
    params,
  });
}
