/**
 * Every measure of an input of every calculation, made larger and smaller: whatever count a length, a time
 * or a plain number implies, it is bounded.
 */
import { goodInputs } from '../inputs';
import { type Growth, growth } from './growth';

type Path = readonly (string | number)[];
interface Leaf {
  readonly path: Path;
  readonly value: unknown;
}

/** Numbers and quantities of an input; of a list the first alone. */
function leaves(value: unknown, path: Path = []): Leaf[] {
  if (typeof value === 'number' || typeof value === 'string') return [{ path, value }];
  if (Array.isArray(value)) return value.slice(0, 1).flatMap((item, i) => leaves(item, [...path, i]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

const MEASURE = /^(-?\d+(?:\.\d+)?)( ?[a-z%].*)$/i;

function scaled(value: unknown, by: number): unknown {
  if (typeof value === 'number') return by < 1 ? value * by : Math.round(value * by);
  const [, number, unit] = MEASURE.exec(String(value)) ?? [];
  if (number === undefined || unit === undefined || Number(number) === 0) return undefined;
  const n = Number(number) * by;
  return `${n >= 1e12 ? BigInt(Math.round(n)) : n.toFixed(12).replace(/\.?0+$/, '')}${unit}`;
}

function put(value: unknown, path: Path, what: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return what;
  const copy = Array.isArray(value) ? [...value] : { ...(value as object) };
  (copy as Record<string | number, unknown>)[key] = put(
    (copy as Record<string | number, unknown>)[key],
    rest,
    what,
  );
  return copy;
}

const nameOf = (path: Path): string => path.filter((part) => typeof part === 'string').join('.');

/** Inputs that between them have every measure there is, the smallest first. */
function measuresOf(of: string): Growth[] {
  const inputs = [...(goodInputs.get(of) ?? [])].sort(
    (a, b) => JSON.stringify(a).length - JSON.stringify(b).length,
  );
  const seen = new Set<string>();
  return inputs.flatMap((input) => {
    const kind = leaves(input).filter(
      ({ value }) => typeof value === 'string' && scaled(value, 2) === undefined,
    );
    const sort = kind
      .map(({ path, value }) => (/shape|form|method|plan|rule|by$/.test(nameOf(path)) ? value : ''))
      .join(' ');
    return leaves(input).flatMap(({ path, value }) => {
      const name = nameOf(path);
      if (scaled(value, 2) === undefined || seen.has(`${sort} ${name}`)) return [];
      seen.add(`${sort} ${name}`);
      return [true, false].map((larger) =>
        growth(
          of,
          `${name} ${larger ? 'larger' : 'smaller'}${sort.trim() ? ` (${sort.replace(/\s+/g, ' ').trim()})` : ''}`,
          (n) => put(input, path, scaled(value, larger ? n : 1 / n)),
          {
            to: larger ? 2 ** 60 : 2 ** 30,
            anyRefusal: true,
          },
        ),
      );
    });
  });
}

export const measures = (): readonly Growth[] => [...goodInputs.keys()].flatMap(measuresOf);
