/**
 * Counts that somebody takes a short way to: an area over the area of a piece, with no thought of laps and cuts, or the
 * length of all edges over a spacing, without the ends of each.
 */
import { say, type Words } from '../reckoning/words';
import { figureAt, figuresIn } from './figure-places';
import type { Leaf } from './input-places';
import { siOf } from './scale';
import type { Scene } from './scene';
import type { Slip, SlipCode } from './slip';

/** How common these are. */
const BY_AREA = 7;
const BY_LENGTH = 4;

/** A count that comes to more or less by so much. */
const counted = (
  { claims }: Scene,
  i: number,
  n: number,
  [code, weight, says]: readonly [SlipCode, number, () => Words],
): Slip[] => {
  const { figure, reckoned } = claims[i] as Scene['claims'][number];
  const more = n - siOf(reckoned);
  return more === 0 || !Number.isFinite(n)
    ? []
    : [{ code, weight, says, edits: [{ on: 'claim', figure, twist: { unit: 1, more } }], figure }];
};

/** A stray last digit is no further piece. */
const STRAY = 1e-9;
const whole = (n: number): number => Math.ceil(n - STRAY * Math.abs(n));

function byArea(scene: Scene, i: number): Slip[] {
  const [area, piece] = ['area', 'pieceArea'].map((name) => figureAt(scene.result.figures, [name]));
  if (area?.dimension !== 'area' || piece?.dimension !== 'area') return [];
  const says = (): Words =>
    say`${{ area }} was divided by ${{ piece }}, the area of a piece, without laps and cuts`;
  return counted(scene, i, whole(siOf(area) / siOf(piece)), ['laps-left-out', BY_AREA, says]);
}

/** Where a thing stands every so often along edges: all edges in one. */
function byLength(scene: Scene, i: number, leaves: readonly Leaf[]): Slip[] {
  const own = (scene.claims[i] as Scene['claims'][number]).path.join('.').toLowerCase().replace(/s$/, '');
  const spacing = leaves.find(
    ({ at, name, dimension }) =>
      dimension === 'length' && name === 'spacing' && at.toLowerCase().includes(own),
  );
  const length = figuresIn(scene.result.figures).find(({ at }) => /^\w*Length$/.test(at))?.quantity;
  if (!spacing || length?.dimension !== 'length') return [];
  const n = whole(siOf(length) / siOf(spacing.quantity));
  const says = (): Words =>
    say`${{ length }} was divided by ${{ spacing: spacing.quantity }} in one, without the ends of each edge`;
  return [n, n + 1].flatMap((one) => counted(scene, i, one, ['spaces-for-bars', BY_LENGTH, says]));
}

/** Short ways to a claimed count. */
export const shortcutSlips = (scene: Scene, i: number, leaves: readonly Leaf[]): Slip[] =>
  scene.claims[i]?.reckoned.dimension === 'count' ? [...byArea(scene, i), ...byLength(scene, i, leaves)] : [];
