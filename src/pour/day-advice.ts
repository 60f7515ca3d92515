/** How the day goes, and what to do about it. */
import { heedAir as heedAirContent } from '../mix/air-heeded';
import { outdoorTrowel, troweledAir } from '../mix/cautions';
import { UFGS_AIR } from '../mix/sources';
import { constant, ratio, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import type { Severity } from '../reckoning/result';
import {
  coldConcrete,
  coldStress,
  fastDrying,
  fastDryingInCold,
  frostInGround,
  heatStress,
  hotConcrete,
} from '../weather/cautions';
import { ACI_EVAPORATION } from '../weather/sources';
import * as cautions from './day-cautions';
import type { DayFinish, DayRange } from './day-set';
import type { Day } from './day-stages';

type Time = Quantity<'time'>;
type Temperature = Quantity<'temperature'>;

/** How it goes. */
export type DayVerdict =
  | 'fits the day'
  | 'after hours'
  | 'in the dark'
  | 'too few finishers'
  | 'too late'
  | 'on bleed water'
  | 'cover for rain'
  | 'keep from frost'
  | 'hold for rain';

/** What the day is held to, each time since the first concrete is placed. */
export interface DayBounds {
  readonly finish: DayFinish;
  readonly finishAt: Time | undefined;
  readonly sheenAt: Time | undefined;
  readonly sunset: Time | undefined;
  readonly workEnds: Time | undefined;
  readonly rainAt: Time | undefined;
  /** By the clock. */
  readonly clock: (t: Time) => string;
}

/** What tells of the weather. */
export interface DayWeather {
  readonly concrete: Temperature;
  readonly air: Temperature | undefined;
  readonly drying: Quantity<'evaporation'> | undefined;
  readonly airContent: Quantity<'ratio'> | undefined;
  readonly freezes: boolean | undefined;
}

const DRYING = /*#__PURE__*/ paired('evaporation', '0.2 lb/ft2/h', '1 kg/m2/h');
const HOT = /*#__PURE__*/ paired('temperature', '90 degF', '32 degC');
const COOL = /*#__PURE__*/ paired('temperature', '50 degF', '10 degC');
const FROST = /*#__PURE__*/ paired('temperature', '32 degF', '0 degC');
const A_MINUTE = constant(() => time('1 min'));
/** The most air under a hard trowel, as quoted from ACI 302.1. */
const TROWELED_AIR_MOST = constant(() => ratio('3%'));
/** The least air that any of the standards of `mixRequirements` asks of what freezes wet. */
const LEAST_AIR = constant(() => ratio('4%'));

/** How grave it is that something passes a limit: most likely, or only when all goes slowly. */
function passes(limit: Time, { likely, latest }: DayRange): Severity | undefined {
  if (likely.greaterThan(limit)) return 'warning';
  return latest.greaterThan(limit) ? 'note' : undefined;
}

function heedWater({ concrete }: Day, bounds: DayBounds, pad: Pad): boolean {
  const { finish, finishAt, sheenAt, clock } = bounds;
  if (!finishAt) return false;
  if (sheenAt && !finishAt.greaterThan(sheenAt)) {
    pad.caution(cautions.sheenStillThere(finish, sheenAt, finishAt));
    return true;
  }
  const { earliest, likely } = concrete.opens;
  if (!finishAt.lessThan(likely)) return false;
  const severity = finishAt.lessThan(earliest) ? 'stop' : 'warning';
  // Whoever begins at the minute that is named begins behind the water, and not seconds before it is gone.
  const gone = likely.upTo(A_MINUTE());
  pad.caution(cautions.finishOnBleedWater(finish, severity, gone, finishAt, clock(gone)));
  return severity === 'stop';
}

function heedClosing(day: Day, { finish, finishAt }: DayBounds, pad: Pad): boolean {
  const { concrete, closed, late, needed, finishers, placingTime, finishingTime } = day;
  const { earliest, likely, latest } = concrete.closes;
  // Enough hands, who begin in time for the first of it and not for the last.
  if (finishAt && late.likely && !closed.likely && !needed.greaterThan(finishers)) {
    pad.caution(cautions.finishEndsTooLate(finish, placingTime.plus(likely).minus(finishingTime), finishAt));
    return true;
  }
  if (!finishAt?.greaterThan(earliest)) return false;
  const passed: readonly (readonly [boolean, Severity, Time])[] = [
    [closed.latest, 'stop', latest],
    [closed.likely, 'warning', likely],
    [true, 'note', earliest],
  ];
  const [, severity, limit] = passed.find(([is]) => is) as (typeof passed)[number];
  pad.caution(cautions.finishTooLate(finish, severity, limit, finishAt));
  return closed.likely;
}

/** Whether the finishers keep up; what is begun too late is no matter of hands. */
function heedHands({ late, closed, needed, finishers }: Day, pad: Pad): boolean {
  if (!needed.greaterThan(finishers) || closed.likely) return false;
  pad.caution(cautions.fewFinishers(late.likely ? 'warning' : 'note', needed, finishers));
  return late.likely;
}

function heedLight({ ends }: Day, { sunset, clock }: DayBounds, pad: Pad): boolean {
  const grave = sunset && passes(sunset, ends);
  if (!grave) return false;
  const at = grave === 'warning' ? ends.likely : ends.latest;
  if (sunset.sign() <= 0) {
    pad.caution(cautions.finishAtNight(clock(ends.likely)));
    return true;
  }
  pad.caution(cautions.finishInTheDark(grave, sunset, at, clock(at)));
  return grave === 'warning';
}

function heedHours({ leaves }: Day, { workEnds, clock }: DayBounds, pad: Pad): boolean {
  const grave = workEnds && passes(workEnds, leaves);
  if (!grave) return false;
  const at = grave === 'warning' ? leaves.likely : leaves.latest;
  pad.caution(cautions.pastWorkingHours(grave, workEnds, at, clock(at)));
  return grave === 'warning';
}

/** Rain hurts from the first concrete on until the last has set. */
function heedRain(
  { placingTime: P, concrete }: Day,
  { rainAt }: DayBounds,
  pad: Pad,
): 'hold for rain' | 'cover for rain' | undefined {
  if (!rainAt) return undefined;
  if (rainAt.lessThan(P)) {
    const falls = rainAt.sign() > 0 ? cautions.rainWhilePlacing : cautions.rainAlready;
    pad.caution(falls(P, rainAt));
    return 'hold for rain';
  }
  const soft = P.plus(concrete.set.latest);
  if (!rainAt.lessThan(soft)) return undefined;
  pad.caution(cautions.rainBeforeSet(soft, rainAt));
  return 'cover for rain';
}

/** Whether the first is ready while the last is placed: told behind the weather, which asks for things on site. */
export function heedOverlap({ placingTime, concrete }: Day, pad: Pad): void {
  const { earliest, likely } = concrete.opens;
  if (!earliest.lessThan(placingTime)) return;
  const now = likely.lessThan(placingTime);
  pad.caution(cautions.readyWhilePlacing(now ? 'warning' : 'note', placingTime, now ? likely : earliest));
}

/** Air and drying, for whoever trowels, sweats and freezes. */
export function heedWeather(finish: DayFinish, weather: DayWeather, pad: Pad): void {
  const { concrete, air, drying, airContent, freezes } = weather;
  const [hot, cool] = [HOT.exceededBy(concrete), COOL.undercutBy(concrete)];
  if (hot) pad.caution(hotConcrete(hot, concrete));
  if (cool) pad.caution(coldConcrete(cool, concrete));
  if (air) heedAir(air, pad);
  const fast = drying && DRYING.exceededBy(drying);
  if (fast && drying) {
    const cold = air && COOL.undercutBy(air);
    pad.caution((cold ? fastDryingInCold : fastDrying)(fast, drying, ACI_EVAPORATION));
    pad.caution(cautions.crustsOver(fast, drying));
  }
  if (freezes && airContent) {
    const asked = { minimum: LEAST_AIR(), maximum: undefined, scales: true, source: UFGS_AIR } as const;
    heedAirContent(airContent, { ...asked, when: 'delivered' }, pad);
  }
  if (finish !== 'hard-trowel') return;
  if (airContent?.greaterThan(TROWELED_AIR_MOST())) pad.caution(troweledAir(TROWELED_AIR_MOST(), airContent));
  if (freezes) pad.caution(outdoorTrowel);
}

function heedAir(air: Temperature, pad: Pad): void {
  const [heat, frost] = [HOT.reachedBy(air), FROST.undercutBy(air)];
  if (heat) pad.caution(heatStress(heat, air));
  if (frost) pad.caution(coldStress(frost, air));
  if (!FROST.exceededBy(air)) pad.caution(frostInGround(FROST.as(pad.system), air));
}

/** Concrete that freezes before it has set is lost, and blankets do not go on before it bears them. */
function heedFrost({ concrete, placingTime }: Day, air: Temperature | undefined, pad: Pad): boolean {
  const frost = air && FROST.undercutBy(air);
  if (!frost) return false;
  pad.caution(cautions.softInFrost(frost, air, placingTime.plus(concrete.set.latest).in('h')));
  return true;
}

/** What the day comes to: the gravest of what was found. */
export function judgeDay(day: Day, bounds: DayBounds, air: Temperature | undefined, pad: Pad): DayVerdict {
  const water = heedWater(day, bounds, pad);
  const late = heedClosing(day, bounds, pad);
  const few = heedHands(day, pad);
  const dark = heedLight(day, bounds, pad);
  const after = heedHours(day, bounds, pad);
  const rain = heedRain(day, bounds, pad);
  const frost = heedFrost(day, air, pad);
  const found: readonly (readonly [boolean, DayVerdict])[] = [
    [rain === 'hold for rain', 'hold for rain'],
    [water, 'on bleed water'],
    [late, 'too late'],
    [few, 'too few finishers'],
    [rain === 'cover for rain', 'cover for rain'],
    [frost, 'keep from frost'],
    [dark, 'in the dark'],
    [after, 'after hours'],
  ];
  return found.find(([is]) => is)?.[1] ?? 'fits the day';
}
