/**
 * What a crew carries of the day of a pour: when each piece of work begins, by the clock, in a short table, and the
 * verdict. How it was reckoned stands on the full sheet.
 */
import type { DayPlanFigures } from '../pour/day-plan';
import { clockTime } from '../pour/saw-clock';
import type { Quantity } from '../quantity/quantity';
import type { Plain } from './figures';

/** A row: what happens, and when by the clock. */
interface Row {
  readonly stage: string;
  readonly earliest: Plain;
  readonly likely: Plain;
  readonly latest: Plain;
}

/** Times after the start, by the clock. */
function byClock(
  { startsAt }: DayPlanFigures,
  { earliest, likely, latest }: DayPlanFigures['coverUntil'],
): Omit<Row, 'stage'> {
  const at = (after: Quantity<'time'>): Plain => clockTime(startsAt.time.plus(after)) as unknown as Plain;
  return { earliest: at(earliest), likely: at(likely), latest: at(latest) };
}

/** In the order of the day; what follows the placers begins with them. */
function rowsOf(figures: DayPlanFigures): Row[] {
  const placed = figures.stages.find(({ stage }) => stage === 'place');
  const rows = figures.stages.flatMap(({ stage, clock }): Row[] => {
    if (stage === 'wait') return [];
    if (stage !== 'finish') return [{ stage, ...clock.begins }];
    return [
      ...(placed ? [{ stage: 'last placed by', ...placed.clock.ends }] : []),
      { stage, ...clock.begins },
      { stage: 'finish ends', ...clock.ends },
    ];
  });
  return [...rows, { stage: 'cover until', ...byClock(figures, figures.coverUntil) }];
}

const OTHER_WEATHER = ['ifHotter', 'ifColder', 'ifWindier', 'ifWet'] as const;

/** What other weather does to the day, where it does anything. */
const otherWeather = (figures: DayPlanFigures): [string, Plain][] =>
  OTHER_WEATHER.flatMap((name): [string, Plain][] => {
    const { verdict } = figures[name];
    return verdict === figures.verdict ? [] : [[name, verdict]];
  });

/** The figures of a day that a crew carries. */
export function crewDay(figures: DayPlanFigures): { readonly [name: string]: Plain } {
  const { verdict, finish, finishers, finishersNeeded, unfinished } = figures;
  return {
    verdict,
    finish,
    finishers,
    finishersNeeded,
    ...(unfinished ? { unfinished } : {}),
    begins: rowsOf(figures) as unknown as Plain,
    ...Object.fromEntries(otherWeather(figures)),
  };
}
