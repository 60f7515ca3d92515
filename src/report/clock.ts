/** Times of day as a clock shows them, where a figure is a day and a time, or words have one in them. */
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { wordText } from './names';
import type { View } from './show';

const MINUTES = 60;
const NOON = 12;
const DAY = 24 * MINUTES;

/** By which clock the people of a locale tell the time; `undefined` where it is not known. */
function hoursOfLocale(locale: string): 12 | 24 | undefined {
  const { hour12 } = new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions();
  return hour12 === undefined ? undefined : hour12 ? 12 : 24;
}

/** By which clock a sheet tells the time: as asked, as in the locale, or as goes with the units. */
export const hoursIn = ({ hours, locale }: View, system: System): 12 | 24 =>
  hours ?? (locale === undefined ? undefined : hoursOfLocale(locale)) ?? (system === 'metric' ? 24 : 12);

/** `2:00 PM`; `14:00` by 24 hours. */
function clockShows(minutes: number, view: View): string {
  const all = ((Math.round(minutes) % DAY) + DAY) % DAY;
  const [hour, minute] = [Math.floor(all / MINUTES), String(all % MINUTES).padStart(2, '0')];
  if (view.hours === 24) return `${hour}:${minute}`;
  return `${hour % NOON === 0 ? NOON : hour % NOON}:${minute} ${hour < NOON ? 'AM' : 'PM'}`;
}

/** A time since midnight as a clock shows it. */
export const timeOfDay = (sinceMidnight: Quantity<'time'>, view: View): string =>
  clockShows(sinceMidnight.toNumber('min'), view);

const onDay = (told: string, after: number, view: View): string => {
  if (after === 0) return told;
  return after === 1
    ? `${told}, ${wordText('next day', view)}`
    : `${told}, ${wordText('day', view)} ${after + 1}`;
};

/** A time of day as it is written in words and figures, `14:30`, or `6:15 +1` on the day after. */
const WRITTEN = /^(\d{1,2}):(\d{2})(?: \+(\d+))?$/;

/** Such a text by the clock of the view; `undefined` for any other, and where the view has no clock of its own. */
export function writtenTime(text: string, view: View): string | undefined {
  const [, hour, minute, after = '0'] = WRITTEN.exec(text) ?? [];
  if (hour === undefined || view.hours === undefined) return undefined;
  return onDay(clockShows(Number(hour) * MINUTES + Number(minute), view), Number(after), view);
}

/** The text of a group that is a day and a time of it, else nothing. */
export function clockTime(group: { readonly [name: string]: unknown }, view: View): string | undefined {
  const { day, time } = group;
  if (Object.keys(group).length !== 2 || !isQuantity(day) || !isQuantity(time)) return undefined;
  const told = timeOfDay(time as Quantity<'time'>, view);
  return onDay(told, day.toNumber('each' as never), view);
}
