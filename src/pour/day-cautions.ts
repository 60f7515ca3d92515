/** What to watch out for on the day: water, the window of the finish, people, light, rain. */
import type { Quantity } from '../quantity/quantity';
import type { Caution, Severity } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import { FREEZING_YOUNG } from '../weather/sources';
import { type DayFinish, FOOTPRINT } from './day-set';
import * as sources from './day-sources';

type Time = Quantity<'time'>;
type Count = Quantity<'count'>;

export const testNotClock: Caution = {
  code: 'test-not-clock',
  severity: 'note',
  always: true,
  ...say`the hours are guides: begin by the surface, with no sheen anywhere and a footprint no deeper than ${{ depth: FOOTPRINT }}, and look in the shade too, which comes later than the sun`,
  source: sources.FOOTPRINT_RULE,
};

const WET_WORK: Readonly<Record<DayFinish, string>> = {
  float: 'a float works the water in, and the surface dusts and scales',
  broom: 'floated and broomed in its water the surface scales and dusts',
  'hard-trowel': 'a trowel seals the water in: the skin blisters and flakes off',
  stamp: 'stamped in its water the color streaks, the prints slump and the top scales',
  'exposed-aggregate': 'water thins the retarder, and the stones come loose',
  'rock-salt': 'salt melts into the water, and the top scales',
};

const ofWater = (finish: DayFinish) =>
  finish === 'hard-trowel' ? sources.TROWELED_IN_WATER : sources.NO_FINISH_IN_WATER;

export const finishOnBleedWater = (
  finish: DayFinish,
  severity: Severity,
  limit: Time,
  actual: Time,
  clock: string,
): Caution => ({
  code: 'finish-on-bleed-water',
  severity,
  ...say`the finish is to begin ${{ actual }} after the first concrete, and the bleed water is likely to lie there until ${{ limit }} after it, ${{ clock }} by the clock: ${{ works: WET_WORK[finish] }}. Wait until the sheen is gone; on a cool damp day drag the water off with a hose, and never trowel it in or dust it with cement`,
  limit,
  actual,
  source: ofWater(finish),
});

export const sheenStillThere = (finish: DayFinish, limit: Time, actual: Time): Caution => ({
  code: 'finish-on-bleed-water',
  severity: 'stop',
  ...say`the finish is to begin ${{ actual }} after the first concrete, and sheen was still seen ${{ limit }} after it: ${{ works: WET_WORK[finish] }}. Nothing touches the surface while it shines`,
  limit,
  actual,
  source: ofWater(finish),
});

const TOO_HARD: Readonly<Record<DayFinish, string>> = {
  float: 'a float no longer moves anything',
  broom: 'the broom leaves no mark',
  'hard-trowel': 'the trowel burnishes and no longer closes',
  stamp: 'prints come out shallow, and the skin tears',
  'exposed-aggregate': 'the retarder no longer takes',
  'rock-salt': 'the salt no longer goes in',
};

export const finishTooLate = (finish: DayFinish, severity: Severity, limit: Time, actual: Time): Caution => ({
  code: 'finish-too-late',
  severity,
  ...say`the finish is to begin ${{ actual }} after the first concrete, and what was placed first may close ${{ limit }} after it: ${{ hard: TOO_HARD[finish] }}. Begin as soon as it bears, and have a coarser finish agreed on for what is past it; no water and no paste to bring it back`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const finishEndsTooLate = (finish: DayFinish, limit: Time, actual: Time): Caution => ({
  code: 'finish-too-late',
  severity: 'warning',
  ...say`the finish is to begin ${{ actual }} after the first concrete; begun later than ${{ limit }} after it the finishers come to the last of it when ${{ hard: TOO_HARD[finish] }}. Begin as soon as the surface bears`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

const IN_TIME: Words = { says: 'enough only if the concrete is slow' };
const NOT_IN_TIME: Words = { says: 'too few for this concrete' };

export const fewFinishers = (severity: Severity, limit: Count, actual: Count): Caution => ({
  code: 'few-finishers',
  severity,
  ...say`finishers that keep up with the set: ${{ limit }}; in this plan: ${{ actual }}, ${severity === 'note' ? IN_TIME : NOT_IN_TIME}: the last placed is hard before they are at it. Have more hands, place less at a time behind a bulkhead, or have the supplier retard the mix and say for how long`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const readyWhilePlacing = (severity: Severity, limit: Time, actual: Time): Caution => ({
  code: 'ready-while-placing',
  severity,
  ...say`what is placed first is ready after ${{ actual }}, while placing goes on for ${{ limit }}: finishing needs people of its own, who do not place`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const finishInTheDark = (severity: Severity, limit: Time, actual: Time, clock: string): Caution => ({
  code: 'finish-in-the-dark',
  severity,
  ...say`the finish may be done ${{ actual }} after the first concrete, at ${{ clock }}, and daylight lasts for ${{ limit }} of it: begin earlier, have the mix accelerated, or have lights low along the slab so that sheen and ridges show`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** It is dark from the first concrete on: a pour of the night, which no earlier hour brings into the light. */
export const finishAtNight = (clock: string): Caution => ({
  code: 'finish-in-the-dark',
  severity: 'warning',
  ...say`it is dark when the first concrete comes, and the finish is done at ${{ clock }}: have lights for the truck and the way to it, lights low along the slab so that sheen and ridges show, bright vests on everyone, and ask whether plant and neighbors bear work at night`,
  source: COMMON_PRACTICE,
});

export const pastWorkingHours = (severity: Severity, limit: Time, actual: Time, clock: string): Caution => ({
  code: 'past-working-hours',
  severity,
  ...say`the crew may leave ${{ actual }} after the first concrete, at ${{ clock }}, and working hours end after ${{ limit }}: begin earlier, place less, or agree beforehand who stays for finish, curing and saw`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const washAtNight = (
  severity: Severity,
  limit: Time,
  actual: Time,
  { from, to }: { readonly from: string; readonly to: string },
): Caution => ({
  code: 'wash-at-night',
  severity,
  ...say`stones are to be washed free between ${{ from }} and ${{ to }}, and of these ${{ limit }} only ${{ actual }} are working time by daylight: washed too late they stay under their paste. Begin at another hour, have a retarder that holds longer, as its maker says, or a crew with lights, hoses and brushes there`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const rainWhilePlacing = (limit: Time, actual: Time): Caution => ({
  code: 'rain-on-fresh-concrete',
  severity: 'stop',
  ...say`rain is expected ${{ actual }} after the first concrete, before the last is placed at ${{ limit }}: hold the trucks until it has passed. If it comes all the same, cover at once so that it runs off clear of the slab, end at a bulkhead, and pour no more; water that stood on it is pushed off before anything touches it`,
  limit,
  actual,
  source: sources.RAIN,
});

export const rainAlready = (limit: Time, actual: Time): Caution => ({
  code: 'rain-on-fresh-concrete',
  severity: 'stop',
  says: 'it rains when the first concrete is to be placed: hold the trucks until it has passed, and sweep the water off the base and out of the forms before any concrete goes in',
  limit,
  actual,
  source: sources.RAIN,
});

export const rainBeforeSet = (limit: Time, actual: Time): Caution => ({
  code: 'rain-on-fresh-concrete',
  severity: 'warning',
  ...say`rain is expected ${{ actual }} after the first concrete, and the last is soft until ${{ limit }} after it: have plastic and lumber for all of it on site before the truck comes, cover at once so that water runs off clear of the slab, and finish under a movable shelter a small part at a time. Never work rain into the surface or dry it with cement`,
  limit,
  actual,
  source: sources.RAIN,
});

export const softInFrost = (
  limit: Quantity<'temperature'>,
  actual: Quantity<'temperature'>,
  until: Time,
): Caution => ({
  code: 'soft-in-frost',
  severity: 'warning',
  ...say`the air is at ${{ actual }}, below ${{ limit }}, while the concrete is soft, for up to ${{ until }} after the first of it: it freezes from the edges and the top before it has set, and loses up to half of its strength. Wait for milder days, or have an enclosure that is heated without fumes there before the truck, the mix warm and accelerated, and blankets for the hour that it bears them`,
  limit,
  actual,
  source: FREEZING_YOUNG,
});

export const crustsOver = (limit: Quantity<'evaporation'>, actual: Quantity<'evaporation'>): Caution => ({
  code: 'crusts-over',
  severity: 'warning',
  ...say`at ${{ actual }}, more than ${{ limit }}, the top dries and seems set while it is soft below: it moves like rubber under the tool, more so with air in it. Cover it with wet burlap behind the bull float and uncover a little at a time; do not seal it early`,
  limit,
  actual,
  source: sources.RUBBERY,
});
