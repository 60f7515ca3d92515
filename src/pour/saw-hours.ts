/**
 * The hours in which joints are sawn, by saw and weather: what is published, and what is made of it.
 *
 * Conventional saws: 4 to 12 hours after placing, by temperature, as the American Concrete Institute answers
 * from ACI 302.1R. Early-entry saws: about 1 hour in hot weather to about 4 hours in cold, from ACI 224.4R;
 * that these run from the end of finishing is printed by secondary sources only.
 *
 * The sources name no degrees. This library's own reading: hot weather is the earlier half of a range, cold
 * weather the later half, mild weather the middle half; without the weather it is the whole range. The cuts
 * are to be done by the end of a range read in the same way: of the 4 to 12 hours for a conventional saw, and
 * of the 2 to 6 hours that ACI 325.12R has for an early-entry saw, there after placing, here after finishing.
 * Hot concrete thus closes first. Nothing is left open beyond 12 hours: CSA A23.1-94 and the Portland Cement
 * Association, as quoted, warn that most cracks form 6 to 18 hours after placing.
 */

import { PAVEMENT_JOINTING } from '../joints/sources';
import { constant, ratio, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import {
  ACI_SAW_TIMES,
  COMMON_PRACTICE,
  CSA_CONTROL_JOINTS,
  EARLY_ENTRY_DEPTH,
  SAW_TIMES_ANSWER,
  type Source,
} from '../reckoning/source';
import { say } from '../reckoning/words';
import { EARLY_FROM_FINISHING, ELDRIDGE_CODE } from './sources';

type Time = Quantity<'time'>;

/** A stretch of time, after placing or after finishing as said beside it. */
export interface Hours {
  /** Where the stretch begins. */
  readonly from: Quantity<'time'>;
  /** Where it ends. */
  readonly to: Quantity<'time'>;
}

/** What one source gives. */
export interface PublishedHours extends Hours {
  /** Title of the source. */
  readonly source: string;
  /** Which saw the hours are for. */
  readonly saw: 'conventional' | 'early-entry' | 'any';
  /** What the hours are counted from. */
  readonly after: 'placing' | 'finishing';
}

/** Which saw cuts. */
export type Saw = 'conventional' | 'early-entry';

/** As the crew would call it. */
export type Weather = 'hot' | 'mild' | 'cold';

const hours = (n: string): Time => time(`${n} h`);

type Row = readonly [
  source: Source,
  saw: PublishedHours['saw'],
  after: PublishedHours['after'],
  from: string,
  to: string,
];

const GIVEN: readonly Row[] = [
  [ACI_SAW_TIMES, 'conventional', 'placing', '4', '12'],
  [CSA_CONTROL_JOINTS, 'any', 'placing', '6', '18'],
  [SAW_TIMES_ANSWER, 'conventional', 'finishing', '4', '72'],
  [ELDRIDGE_CODE, 'any', 'placing', '0', '24'],
  [ACI_SAW_TIMES, 'early-entry', 'placing', '1', '4'],
  [ACI_SAW_TIMES, 'early-entry', 'placing', '2', '6'],
  [EARLY_ENTRY_DEPTH, 'early-entry', 'finishing', '0', '2'],
  [EARLY_FROM_FINISHING, 'early-entry', 'finishing', '1', '4'],
  [PAVEMENT_JOINTING, 'conventional', 'placing', '4', '24'],
];

const published = constant(() =>
  GIVEN.map(
    ([source, saw, after, from, to]): PublishedHours => ({
      source: source.title,
      saw,
      after,
      from: hours(from),
      to: hours(to),
    }),
  ),
);

/** What each source gives for a saw, those that disagree included. */
export const publishedFor = (saw: Saw): PublishedHours[] =>
  published().filter((row) => row.saw === 'any' || row.saw === saw);

/** The range in which cutting starts, and the range by the end of which it is done. */
const RANGES = {
  conventional: { start: ['4', '12'], done: ['4', '12'] },
  'early-entry': { start: ['1', '4'], done: ['2', '6'] },
} as const;

/** Which part of a range goes with the weather: from one share of its width to another. */
const PARTS: Record<Weather | 'unknown', readonly [string, string]> = {
  hot: ['0:1', '0.5:1'],
  mild: ['0.25:1', '0.75:1'],
  cold: ['0.5:1', '1:1'],
  unknown: ['0:1', '1:1'],
};

/** How long after placing the finishing ends, where nobody says: common practice. */
const FINISHING: Record<Weather | 'unknown', string> = { hot: '2', mild: '3', cold: '4', unknown: '3' };

const shareOf = (weather: Weather | undefined, end: 0 | 1): Quantity<'ratio'> =>
  ratio(PARTS[weather ?? 'unknown'][end]);

const range = (saw: Saw, which: 'start' | 'done'): readonly [Time, Time] => {
  const [a, b] = RANGES[saw][which];
  return [hours(a), hours(b)];
};

function assumeWeather(saw: Saw, weather: Weather | undefined, pad: Pad): void {
  if (weather) {
    pad.assume({
      name: 'hours by weather',
      value: { hot: 'the earlier half', mild: 'the middle half', cold: 'the later half' }[weather],
      because:
        'the source says by temperature and names no degrees; the parts of its range are our own reading',
      override: 'Give ready where the set is measured, or leave weather out for the whole range',
      source: COMMON_PRACTICE,
    });
    return;
  }
  const [a, b] = range(saw, 'done');
  pad.assume({
    name: 'weather',
    value: 'not known',
    because: say`the whole published range is used; in hot weather the cuts are to be done by ${{ end: a.plus(b.minus(a).times(shareOf('hot', 1))) }}`,
    override: 'Give weather, or ready where the set is measured',
    source: ACI_SAW_TIMES,
  });
}

/** When cutting can start, by the published range and the weather. */
export function startByWeather(saw: Saw, weather: Weather | undefined, pad: Pad): Hours {
  const [a, b] = range(saw, 'start');
  const [u, v] = [shareOf(weather, 0), shareOf(weather, 1)];
  assumeWeather(saw, weather, pad);
  const at = (share: Quantity<'ratio'>): Time => a.plus(b.minus(a).times(share));
  return {
    from: pad.step('earliest start', 's = a + u × (b − a)', { a, b, u }, at(u)),
    to: pad.step('latest that it may be ready', 'S = a + v × (b − a)', { a, b, v }, at(v)),
  };
}

/** By when the cuts are to be done, by the weather. */
export function doneByWeather(saw: Saw, weather: Weather | undefined, pad: Pad): Time {
  const [a, b] = range(saw, 'done');
  const v = shareOf(weather, 1);
  pad.assume({
    name: 'finishBy',
    value: a.plus(b.minus(a).times(v)),
    because:
      'cuts are taken to be due by the end of the same part of a published range; cracks most often form 6 to 18 h after placing',
    override: 'Give weather; the plans and the engineer may set a time of their own',
    source: saw === 'conventional' ? ACI_SAW_TIMES : EARLY_FROM_FINISHING,
  });
  return pad.step('cuts to be done by', 'f = a + v × (b − a)', { a, b, v }, a.plus(b.minus(a).times(v)));
}

/** How long finishing takes from placing on, where only the placing is known. */
export function usualFinishing(weather: Weather | undefined, pad: Pad): Time {
  const g = hours(FINISHING[weather ?? 'unknown']);
  pad.assume({
    name: 'finishedAt',
    value: say`${{ set: g }} after placing`,
    because: 'hours of an early-entry saw run from the end of finishing',
    override: 'Give finishedAt',
    source: COMMON_PRACTICE,
  });
  return g;
}
