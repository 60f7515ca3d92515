/** Pieces that overlap, reckoned as if they lay side by side: every lap, given or usual, is taken as nothing. */
import { Decimal } from '../quantity/decimal';
import { isQuantity, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { pathText } from '../reckoning/calculation';
import { say } from '../reckoning/words';
import { figureAt, pathOf } from './figure-places';
import { type Path, type Places, withValue } from './input-places';
import { siOf } from './scale';
import { resultWith, type Scene } from './scene';
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

/** As little as is cut: a sixteenth of an inch, or a millimeter. */
const leastOf = (q: Quantity): string => (unitShown(q).system === 'metric' ? '0.001' : '0.0015875');

/** Laps that stand in the lengths and not in the weights. */
function lapsNotWeighed(scene: Scene, edits: readonly Edit[], names: readonly string[]): Slip[] {
  const weighed = scene.claims.filter(({ reckoned }) => reckoned.dimension === 'mass');
  const result = weighed.length > 0 ? resultWith(scene, edits) : undefined;
  const own = weighed.flatMap(({ figure, path, si, reckoned }): Edit[] => {
    const without = result && figureAt(result.figures, path);
    return without && si !== 0
      ? [{ on: 'claim', figure, twist: { unit: 1, times: [String(siOf(without)), String(siOf(reckoned))] } }]
      : [];
  });
  if (own.length === 0) return [];
  return [
    {
      code: 'laps-left-out',
      weight: 8,
      says: () => say`the weight was reckoned without ${{ places: names }}`,
      edits: own,
      input: names[0] as string,
    },
  ];
}

/**
 * Bars must lap: what lengths and weights come to without is as much less again as they come to less with next to no lap.
 */
function withoutLap(scene: Scene, lap: Quantity, least: readonly Edit[]): readonly Edit[] | undefined {
  const result = resultWith(scene, least);
  const whole = siOf(lap) / (siOf(lap) - Number(leastOf(lap)));
  const edits = scene.claims.flatMap(({ figure, path, reckoned }): Edit[] => {
    const left = result && figureAt(result.figures, path);
    const [own, less] = [siOf(reckoned), left ? siOf(left) : Number.NaN];
    const times = [String(own - (own - less) * whole), String(own)] as const;
    return AMOUNTS.has(reckoned.dimension) && own !== 0 && Number.isFinite(less)
      ? [{ on: 'claim', figure, twist: { unit: 1, times } }]
      : [];
  });
  return edits.length === scene.claims.length ? edits : undefined;
}

/** What laps are felt in, however short they are. */
const AMOUNTS: ReadonlySet<string> = /*#__PURE__*/ new Set(['mass', 'length']);

/** The slip of all laps, where there are any. */
export function lapSlips(scene: Scene, places: Places): Slip[] {
  const laps = lapsOf(scene, places);
  if (laps.length === 0) return [];
  const names = laps.map(({ path }) => pathText(path));
  // One edit of the whole: it is run once, and kept.
  const without = (left: (q: Quantity) => string): readonly Edit[] => [
    {
      on: 'input',
      path: [],
      value: laps.reduce<unknown>(
        (input, { path, quantity }) =>
          withValue(input, path, newQuantity('length', new Decimal(left(quantity)), unitShown(quantity))),
        scene.input,
      ),
    },
  ];
  const none = without(() => '0');
  const isAmount = scene.claims.some(({ reckoned: { dimension } }) => AMOUNTS.has(dimension));
  // Bars must lap: there it is as little as is cut.
  const least = isAmount && !resultWith(scene, none) ? without(leastOf) : undefined;
  const [lap, ...more] = laps.map(({ quantity }) => quantity);
  const edits = (least && lap && more.length === 0 && withoutLap(scene, lap, least)) || least || none;
  return [
    ...lapsNotWeighed(scene, least ?? none, names),
    {
      code: 'laps-left-out',
      weight: 15,
      says: () => say`the pieces were reckoned side by side, without ${{ places: names }}`,
      edits,
      input: names[0] as string,
    },
  ];
}
