/** Figures of a result by the path to each: `volume`, `loads[2]`, `thinnest.thickness`. */
import { isQuantity, type Quantity } from '../quantity/quantity';
import { pathText } from '../reckoning/calculation';

/** A figure that is a quantity, with the path to it. */
export interface FigureAt {
  readonly at: string;
  readonly quantity: Quantity;
}

/** More figures than this are a table: those beyond are not listed. */
const MOST = 300;

function gather(value: unknown, path: (string | number)[], found: FigureAt[]): void {
  if (found.length >= MOST || typeof value !== 'object' || value === null) return;
  if (isQuantity(value)) found.push({ at: pathText(path), quantity: value });
  else if (Array.isArray(value)) for (const [i, one] of value.entries()) gather(one, [...path, i], found);
  else for (const [name, one] of Object.entries(value)) gather(one, [...path, name], found);
}

/** All figures that are quantities, in order. */
export function figuresIn(figures: object): FigureAt[] {
  const found: FigureAt[] = [];
  gather(figures, [], found);
  return found;
}

const PART = /\.?([^.[\]]+)|\[(\d+)\]|\["((?:[^"\\]|\\.)*)"\]/y;
/** No figure lies deeper. */
const LONGEST = 300;

/** The steps of a path as it is written; `undefined` for what is no path. */
export function pathOf(text: string): (string | number)[] | undefined {
  if (text === '' || text.length > LONGEST) return undefined;
  const path: (string | number)[] = [];
  PART.lastIndex = 0;
  while (PART.lastIndex < text.length) {
    const match = PART.exec(text);
    if (!match) return undefined;
    const [, name, index, quoted] = match;
    path.push(index === undefined ? (name ?? quoted ?? '') : Number(index));
  }
  return path;
}

/** What stands at a path of plain data. */
export const at = (data: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null && !isQuantity(value) && Object.hasOwn(value, part)
        ? (value as Record<string | number, unknown>)[part]
        : undefined,
    data,
  );

/** The quantity at a path of figures, where there is one. */
export function figureAt(figures: object, path: readonly (string | number)[]): Quantity | undefined {
  const found = at(figures, path);
  return isQuantity(found) ? found : undefined;
}
