/** What a calculation gives back: figures with their working, assumptions, cautions and sources. */
import { isQuantity } from '../quantity/quantity';
import type { FigureSet, ResultParts } from './parts';
import { settled } from './system';

export type * from './parts';

/** A result: plain data, frozen throughout. Sheets and sentences are made of it when they are asked for. */
export type Result<F extends FigureSet> = ResultParts<F>;

/** Freeze plain data all the way down; what is frozen already is left alone. */
function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value) || isQuantity(value))
    return value;
  if (Array.isArray(value)) for (const part of value) frozen(part);
  else for (const name in value) frozen(value[name]);
  return Object.freeze(value);
}

/** Freeze the parts into a result, all of them in the units of its family. */
export const makeResult = <F extends FigureSet>(parts: ResultParts<F>): Result<F> =>
  frozen({ ...settled(parts, parts.system) });
