/** Times as people tell them: two hours and a half, not 150 minutes; three days, not 3 day. */
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { wordText } from './names';
import type { View } from './show';

const MINUTES = 60;

/** Minutes up to here are told as minutes: trucks have 90 of them. */
const FEW = 2 * MINUTES;

/** Hours and minutes, to the nearest minute. */
function inHours(minutes: number): string {
  const all = Math.round(Math.abs(minutes));
  const [hours, rest] = [Math.floor(all / MINUTES), all % MINUTES];
  return `${minutes < 0 ? '-' : ''}${hours} h${rest > 0 ? ` ${rest} min` : ''}`;
}

/** A time as it is told, where that is not its number with its unit; hours in decimals stay so, as wages are paid by them. */
export function durationText(q: Quantity, view: View): string | undefined {
  const unit = unitShown(q).id;
  if (unit === 'day' || unit === 'week') {
    const number = q.format().slice(0, -unit.length - 1);
    return `${number} ${wordText(number === '1' ? unit : `${unit}s`, view)}`;
  }
  if (unit !== 'min') return undefined;
  const minutes = numberShown(q).toNumber();
  return Math.abs(minutes) < FEW ? undefined : inHours(minutes);
}
