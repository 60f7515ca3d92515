/**
 * A figure as people write it down, where what it is a figure of says what is meant: `9 yd` of concrete, `12 bars`,
 * `28 t` of gravel on a metric job, `0.45` of water to cement.
 */
import { type Quantity, unitShown } from '../quantity/quantity';
import { unitsNamed } from '../quantity/units';

const COUNT = /^\s*(\d[\d,]*(?:\.\d+)?)(?:\s+([a-z][a-z-]*(?: [a-z][a-z-]*)?)\.?)?\s*$/i;
/** Words behind a number that say more than what is counted. */
const MORE_THAN_COUNTED = /\b(?:dozen|score|gross|hundred|thousand|pairs?|per|a|of|and|to|or)\b/i;
/** No count is longer. */
const LONGEST = 60;

/** `12 bars`, `2 rolls`, `3`: what is counted needs no unit. What is a unit of something else is no name of a thing. */
function counted(text: string): string {
  const [, number, things = ''] = COUNT.exec(text) ?? [];
  const isThings =
    !MORE_THAN_COUNTED.test(things) && things.split(' ').every((word) => unitsNamed(word).length === 0);
  if (number === undefined || !isThings || (things === '' && !/^[\d,]+$/.test(number))) return text;
  return `${number} each`;
}

/** A yard of something that is measured by its volume is a cubic yard. */
const YARDS = /(?<=\d\s*)yd\.?\s*$/i;
const TONNES = /(?<=\d\s*)t\s*$/;
const PLAIN = /^\s*\d*\.\d+\s*$/;

/**
 * What is given for a figure, as it would be written in full.
 *
 * @param like - the figure: `t` beside tonnes is tonnes, a plain number beside `0.45:1` a ratio
 */
export function asWritten(given: unknown, like: Quantity): unknown {
  if (like.dimension === 'count' && typeof given === 'number' && Number.isInteger(given))
    return `${given} each`;
  if (typeof given !== 'string' || given.length > LONGEST) return given;
  switch (like.dimension) {
    case 'count':
      return counted(given);
    case 'volume':
      return given.replace(YARDS, 'yd3');
    case 'mass':
      return unitShown(like).system === 'metric' ? given.replace(TONNES, 'tonne') : given;
    case 'ratio':
      return unitShown(like).id === ':1' && PLAIN.test(given) ? `${given.trim()}:1` : given;
    default:
      return given;
  }
}
