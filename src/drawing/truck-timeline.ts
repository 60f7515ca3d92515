/** The loads of a pour on a line of time: loading, the way, waiting, unloading and the way back, one below the other. */
import { clockOf } from '../pour/clock';
import type { TruckLoad, TruckPlanFigures } from '../pour/truck-figures';
import type { TruckPlanInput } from '../pour/truck-input';
import { truckPlan } from '../pour/truck-plan';
import { minutesOf } from '../pour/truck-rounds';
import { Decimal } from '../quantity/decimal';
import { say } from '../reckoning/words';
import { lineSample, type Sample } from './legend';
import { type PlanOptions, type PlanStyle, readPlanOptions } from './plan-options';
import { Sheet } from './sheet';
import { type Attributes, coordinate } from './svg';
import { textWidth } from './text-size';
import { type BarRows, boxOf, drawBars } from './timeline-bars';

/** Times of a load in minutes from the first arrival, for drawing. */
interface Bar {
  readonly loaded: number;
  readonly departs: number;
  readonly arrives: number;
  readonly starts: number;
  readonly ends: number;
  readonly free: number;
}

/** Height of a row by that of the text, and of a bar by that of its row. */
const ROW = 1.6;
const BAR = 0.56;
/** No taller than so many times its width. */
const TALL = 1.45;
const MARGIN = { right: 2.2, top: 2.4, bottom: 0.8 };
const STEPS = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480, 720, 1440, 2880, 7200, 14_400, 43_200];
const DAY = 1440;

const WAY: Attributes = { stroke: 'ink', 'stroke-width': 0.8 };
const BACK: Attributes = { ...WAY, 'stroke-dasharray': '2 2' };
const LOADING: Attributes = { fill: 'none', stroke: 'ink', 'stroke-width': 0.8 };
const WAITING: Attributes = { fill: 'ink', 'fill-opacity': 0.25, stroke: 'ink', 'stroke-width': 0.6 };
const PLACING: Attributes = { fill: 'ink', stroke: 'ink', 'stroke-width': 0.6 };
const STILL: Attributes = { fill: 'ink', 'fill-opacity': 0.1 };
const TICK: Attributes = { stroke: 'ink', 'stroke-width': 0.4, 'stroke-opacity': 0.5 };

/** All times of a load; what a round has beside them is the same for every truck. */
function barsOf({ loads, round, placingTime }: TruckPlanFigures): Bar[] {
  const full = round.toNumber('min') - placingTime.toNumber('min');
  return loads.map(({ departs, arrives, starts, ends, age }) => {
    const [d, a, s, e] = [departs, arrives, starts, ends].map((q) => q.toNumber('min')) as [
      number,
      number,
      number,
      number,
    ];
    const loaded = e - age.toNumber('min');
    return { loaded, departs: d, arrives: a, starts: s, ends: e, free: e + full - (a - loaded) };
  });
}

/** Where things lie: minutes across, rows down. */
interface Grid extends BarRows {
  readonly from: number;
  readonly to: number;
  readonly row: number;
}

function gridOf(bars: readonly Bar[], across: number, size: number): Grid {
  const from = Math.min(...bars.slice(0, 1).map(({ loaded }) => loaded));
  const to = bars.reduce((most, { free }) => Math.max(most, free), 1);
  const perMinute = across / (to - from);
  const row = Math.min(ROW * size, (TALL * across) / bars.length) / perMinute;
  return { from, to, row, bar: BAR * row, middle: (i) => -(i + 0.5) * row };
}

/** Ways of one kind, as one path. */
function drawWays(
  sheet: Sheet,
  { middle }: Grid,
  stretches: readonly (readonly [from: number, to: number])[],
  look: Attributes,
  name: string,
): void {
  const d = stretches.map(([from, to], i) => {
    const [p, q] = [sheet.frame.at({ x: from, y: middle(i) }), sheet.frame.at({ x: to, y: middle(i) })];
    sheet.room.draw(p, q);
    return `M${coordinate(p.x)} ${coordinate(p.y)}H${coordinate(q.x)}`;
  });
  sheet.draw('path', { d: d.join(''), ...look, class: name });
}

/** A time on the scale: by the clock, or from the first arrival. */
type Told = (minutes: number) => string;

function scaleOf(sheet: Sheet, first: number | undefined): Told {
  if (first !== undefined) return (minutes) => clockOf(((first + minutes) % DAY) + DAY);
  return (minutes) => sheet.quantity(minutesOf(new Decimal(minutes).times(60)));
}

function drawScale(sheet: Sheet, { from, to, row }: Grid, rows: number, told: Told, shift: number): void {
  const widest = Math.max(...[from, to].map((t) => textWidth(told(Math.round(t)), sheet.size)));
  const room = (widest + sheet.size) / sheet.frame.scale;
  const step = STEPS.find((s) => s >= room) ?? Math.ceil(room / DAY) * DAY;
  const bottom = -rows * row;
  // By the clock ticks stand at full hours, quarters and the like.
  const offset = shift % step;
  for (let t = Math.ceil((from + offset) / step) * step - offset; t <= to + 1e-6; t += step) {
    sheet.line(
      [
        { x: t, y: 0 },
        { x: t, y: bottom },
      ],
      { ...TICK, class: 'tick' },
    );
    const at = sheet.frame.at({ x: t, y: 0 });
    const text = told(t);
    sheet.place(text, [sheet.boxOf(text, { x: at.x, y: at.y - sheet.size * 0.8 })], { class: 'time' });
  }
}

const rowText = (sheet: Sheet, { volume }: TruckLoad, i: number): string =>
  sheet.text(say`${{ load: i + 1 }}: ${{ volume }}`);

/** Which load each row is, where there is room. */
function nameRows(sheet: Sheet, { from, middle }: Grid, loads: readonly TruckLoad[]): void {
  loads.forEach((load, i) => {
    const text = rowText(sheet, load, i);
    const at = sheet.frame.at({ x: from, y: middle(i) });
    const box = sheet.boxOf(text, at);
    sheet.place(text, [{ ...box, x: at.x - box.width / 2 - sheet.size * 0.3 }], { class: 'load' });
  });
}

const boxSample =
  (look: Attributes): Sample =>
  (x, y, width) => [['rect', { x: x - width / 2, y: y - 4, width, height: 8, ...look }]];

/** Ages beyond the limit, each behind its bar. */
function nameOld(sheet: Sheet, figures: TruckPlanFigures, bars: readonly Bar[], { middle }: Grid): void {
  const { loads, ageLimit } = figures;
  loads.forEach(({ age }, i) => {
    const bar = bars[i];
    if (!bar || !age.greaterThan(ageLimit)) return;
    const text = sheet.text(say`${{ age }} old`);
    const at = sheet.frame.at({ x: bar.ends, y: middle(i) });
    const box = sheet.boxOf(text, at);
    const beside = [1, -1].map((side) => ({ ...box, x: at.x + side * (box.width / 2 + 3) }));
    sheet.place(text, beside, { class: 'age' });
  });
}

function sheetOf(style: PlanStyle, system: 'customary' | 'metric', figures: TruckPlanFigures) {
  const bars = barsOf(figures);
  // The names of the rows stand left of them.
  const probe = new Sheet({ style, usual: 'Trucks', system, points: [{ x: 0, y: 0 }] });
  const widest = Math.max(...figures.loads.map((load, i) => textWidth(rowText(probe, load, i), style.size)));
  const left = widest / style.size + 1.2;
  const across = Math.max(style.width - (left + MARGIN.right) * style.size, style.width / 4);
  const grid = gridOf(bars, across, style.size);
  const points = boxOf(grid.from, grid.to, 0, -bars.length * grid.row);
  const sheet = new Sheet({ style, usual: 'Trucks', system, points, margins: { left, ...MARGIN } });
  return { bars, grid, sheet };
}

/**
 * Draw the loads of a pour on a line of time.
 *
 * @param input - the same as for `truckPlan`
 * @param options - heading, units, language, size and colors
 * @returns an SVG document as text, without external resources; it scales with its frame
 * @throws {InputError} as `truckPlan` does
 * @example
 * ```ts
 * import { truckTimeline } from 'flatwork-reckoner/drawing';
 *
 * const svg = truckTimeline({
 *   volume: '38 yd3',
 *   truckCapacity: '10 yd3',
 *   placing: { kind: 'chute', rate: '20 yd3/h' },
 *   travelTime: '25 min',
 *   firstTruckAt: '7:00',
 * });
 * svg.includes('>8:00<'); // true
 * ```
 */
export function truckTimeline(input: TruckPlanInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const { figures, system } = truckPlan(input);
  const { bars, grid, sheet } = sheetOf(style, system, figures);
  const first = figures.endsAt && minutesOfDay(figures);
  drawScale(sheet, grid, bars.length, scaleOf(sheet, first), first ?? 0);
  const still = bars.flatMap(({ starts }, i) => {
    const before = bars[i - 1];
    return before && starts - before.ends > 1e-6
      ? [boxOf(before.ends, starts, 0, -bars.length * grid.row)]
      : [];
  });
  if (still.length > 0) sheet.shape(still, { ...STILL, class: 'still' });
  drawBars(
    sheet,
    grid,
    bars.map((b) => [b.loaded, b.departs]),
    LOADING,
    'loading',
  );
  drawWays(
    sheet,
    grid,
    bars.map((b) => [b.departs, b.arrives]),
    WAY,
    'way',
  );
  drawWays(
    sheet,
    grid,
    bars.map((b) => [b.ends, b.free]),
    BACK,
    'back',
  );
  drawBars(
    sheet,
    grid,
    bars.map((b) => [b.arrives, b.starts]),
    WAITING,
    'waiting',
  );
  drawBars(
    sheet,
    grid,
    bars.map((b) => [b.starts, b.ends]),
    PLACING,
    'placing',
  );
  nameRows(sheet, grid, figures.loads);
  nameOld(sheet, figures, bars, grid);
  const { waits, trucks, loadCount, ends, longestGap, longestWait } = figures;
  sheet.explain(
    { text: sheet.text('being loaded'), sample: boxSample(LOADING) },
    { text: sheet.text('on the way'), sample: lineSample(WAY) },
    waits.sign() > 0 && { text: sheet.text('waiting'), sample: boxSample(WAITING) },
    { text: sheet.text('being unloaded'), sample: boxSample(PLACING) },
    { text: sheet.text('washing out and on the way back'), sample: lineSample(BACK) },
    still.length > 0 && { text: sheet.text('placing stands still'), sample: boxSample(STILL) },
  );
  if (!figures.endsAt) sheet.note(sheet.text('times from the first arrival on'));
  const params = { loads: loadCount, trucks, ends, longestGap, longestWait };
  return sheet.finish(
    sheet.text({
      says: 'Loads: {loads}, trucks: {trucks}; all placed {ends} after the first arrival. Placing stands still for up to {longestGap}, a truck waits up to {longestWait}',
      params,
    }),
  );
}

/** Minutes of the day at the first arrival. */
const minutesOfDay = ({ endsAt, ends }: TruckPlanFigures): number => {
  const at = (endsAt?.time.toNumber('min') ?? 0) - ends.toNumber('min');
  return Math.round((((at % DAY) + DAY) % DAY) * 1e6) / 1e6;
};
