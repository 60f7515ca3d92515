/**
 * Places of an input that can touch what is claimed. Of a job most cannot: the concrete of a walk has nothing to do with
 * the bars in the slab, and every value that is tried there costs a run of the whole job.
 */
import { isRecord } from '../reckoning/record';
import { pathOf, at as valueIn } from './figure-places';
import type { Path, Places } from './input-places';
import type { Scene } from './scene';
import { partsOf } from './whole-working';

/** Elements that a line of the purchase list is for, by their names. */
function namesFor(figures: object, path: Path): ReadonlySet<unknown> | undefined {
  const by = path[0] === 'purchases' ? valueIn(figures, ['purchases', Number(path[1]), 'by']) : undefined;
  return Array.isArray(by)
    ? new Set(by.map((share: unknown) => (isRecord(share) ? share['element'] : 0)))
    : undefined;
}

/** What may touch the claims: elements by their place, and parts of them; nothing where that is not known. */
function lookedAt({
  claims,
  nodes,
  input,
  result,
  lookedAt: parts,
}: Scene): ((path: Path) => boolean) | undefined {
  const told = partsOf(result);
  if (!told) return undefined;
  const unseen = claims
    .filter((_, i) => nodes[i] === undefined)
    .map(({ path }) => namesFor(result.figures, path));
  if (unseen.some((names) => !names)) return undefined;
  const places = new Map([...told].map(([at, steps]) => [at, steps > 0 && !parts.has(at)] as const));
  const names = new Set<unknown>([...told.keys()].flatMap((at) => pathOf(at)?.[2] ?? []));
  const inside = [...told]
    .filter(([at, steps]) => parts.has(at) || steps === 0)
    .map(([at]) => pathOf(at) ?? []);
  const isBought = (i: number): boolean => {
    const name = valueIn(input, ['elements', i, 'name']);
    return unseen.some((own) => own?.has(name));
  };
  return ([first, second, third]) => {
    if (first === 'shared')
      return !names.has(second) || unseen.length > 0 || inside.some(([, , name]) => name === second);
    if (first !== 'elements' || typeof second !== 'number') return true;
    if (isBought(second)) return true;
    return inside.some(([, i]) => i === second) && places.get(`elements[${second}].${third}`) !== true;
  };
}

/** The places of an input that can touch what is claimed. */
export function touching(scene: Scene, places: Places): Places {
  const may = lookedAt(scene);
  if (!may) return places;
  const { leaves, choices, optional, items, objects } = places;
  return {
    leaves: leaves.filter(({ path }) => may(path)),
    others: leaves,
    choices: choices.filter(({ path }) => may(path)),
    optional: optional.filter(may),
    items: items.filter(may),
    objects: objects.filter(({ path }) => may(path)),
  };
}
