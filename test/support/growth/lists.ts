/** Every list in the inputs of calculations that name no sizes of their own, made longer. */
import { goodInputs } from '../inputs';
import { type Path, put } from '../relations/inputs';
import { type Growth, growth, times } from './growth';

interface Listed {
  readonly path: Path;
  readonly items: readonly unknown[];
}

function listsIn(value: unknown, path: Path = []): Listed[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.entries(value).flatMap(([key, item]) =>
    listsIn(item, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return Array.isArray(value) && value.length > 0 ? [{ path, items: value }, ...inner] : inner;
}

/** An item once more, by another name where it has one. */
function again(item: unknown, i: number): unknown {
  const name = (item as { readonly name?: unknown } | null)?.name;
  return typeof name === 'string' ? { ...(item as object), name: `${name} ${i}` } : item;
}

const nameOf = (path: Path): string => path.map((part) => (typeof part === 'number' ? '*' : part)).join('.');

function grownLists(of: string): Growth[] {
  const seen = new Set<string>();
  return (goodInputs.get(of) ?? []).flatMap((input) =>
    listsIn(input).flatMap(({ path, items }) => {
      const what = nameOf(path);
      if (seen.has(what)) return [];
      seen.add(what);
      const longer = (n: number): unknown[] =>
        times(n, (i) => (i < items.length ? items[i] : again(items[i % items.length], i)));
      return [growth(of, what, (n) => put(input, path, longer(n)), { from: items.length, anyRefusal: true })];
    }),
  );
}

/** The lists of all calculations but those that are named. */
export const listsBut = (named: ReadonlySet<string>): readonly Growth[] =>
  [...goodInputs.keys()].filter((id) => !named.has(id)).flatMap(grownLists);
