/** Times of day as a clock shows them, where a figure is a day and a time. */
import { isQuantity, type Quantity } from '../quantity/quantity';
import { type View, wordText } from './view';

const MINUTES = 60;
const NOON = 12;
const DAY = 24 * MINUTES;

/** `2:00 PM`; `14:00` by 24 hours. */
export function timeOfDay(sinceMidnight: Quantity<'time'>, view: View): string {
  const all = ((Math.round(sinceMidnight.toNumber('min')) % DAY) + DAY) % DAY;
  const [hour, minute] = [Math.floor(all / MINUTES), String(all % MINUTES).padStart(2, '0')];
  if (view.hours === 24) return `${hour}:${minute}`;
  return `${hour % NOON === 0 ? NOON : hour % NOON}:${minute} ${hour < NOON ? 'AM' : 'PM'}`;
}

/** The text of a group that is a day and a time of it, else nothing. */
export function clockTime(group: { readonly [name: string]: unknown }, view: View): string | undefined {
  const { day, time } = group;
  if (Object.keys(group).length !== 2 || !isQuantity(day) || !isQuantity(time)) return undefined;
  const told = timeOfDay(time as Quantity<'time'>, view);
  const after = day.toNumber('each' as never);
  if (after === 0) return told;
  return after === 1
    ? `${told}, ${wordText('next day', view)}`
    : `${told}, ${wordText('day', view)} ${after + 1}`;
}
