/** Pieces that overlap, reckoned as if they lay side by side: every lap, given or usual, is taken as nothing. */
import { canonicalValue, isQuantity, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { pathText } from '../reckoning/calculation';
import { say } from '../reckoning/words';
import { pathOf } from './figure-places';
import { type Path, type Places, withValue } from './input-places';
import type { Scene } from './scene';
import type { Edit, Slip } from './slip';

const LAP = /lap(?:s|Length)?$/i;

interface Lap {
  readonly path: Path;
  readonly quantity: Quantity;
}

function lapsOf({ result }: Scene, { leaves }: Places): Lap[] {
  const isLap = (name: string, q: unknown): q is Quantity =>
    LAP.test(name) && isQuantity(q) && q.dimension === 'length' && q.sign() > 0;
  const usual = result.assumed.flatMap(({ name, value }): Lap[] => {
    const path = pathOf(name);
    return path && isLap(name, value) ? [{ path, quantity: value }] : [];
  });
  return [...leaves.filter(({ name, quantity }) => isLap(name, quantity)), ...usual];
}

/** The slip of all laps, where there are any. */
export function lapSlips(scene: Scene, places: Places): Slip[] {
  const laps = lapsOf(scene, places);
  if (laps.length === 0) return [];
  const names = laps.map(({ path }) => pathText(path));
  const without = laps.reduce<unknown>((input, { path, quantity }) => {
    const none = canonicalValue(quantity).times(0);
    return withValue(input, path, newQuantity('length', none, unitShown(quantity)));
  }, scene.input);
  // One edit of the whole: it is run once, and kept.
  const edits: readonly Edit[] = [{ on: 'input', path: [], value: without }];
  return [
    {
      code: 'laps-left-out',
      weight: 15,
      says: () => say`the pieces were reckoned side by side, without ${{ places: names }}`,
      edits,
      input: names[0] as string,
    },
  ];
}
