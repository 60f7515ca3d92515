/** Stakes on the plan of a surface, with their marks. */
import type { Site } from '../../grade/terrain';
import { canonicalValue, type Quantity } from '../../quantity/quantity';
import { extentOf, type PlanPoint } from '../frame';
import type { PagePoint } from '../room';
import type { Sheet } from '../sheet';
import { pathThrough } from '../svg';

type Length = Quantity<'length'>;

export interface Stake {
  readonly name: string;
  readonly x: Length;
  readonly y: Length;
  readonly mark: string | undefined;
}

/** Where a stake stands on the plan, from the first spot. */
export function stakePlace({ survey }: Site, { x, y }: Stake): PlanPoint {
  const origin = survey.exact(0);
  return {
    x: canonicalValue(x).minus(origin.x).toNumber(),
    y: canonicalValue(y).minus(origin.y).toNumber(),
  };
}

const ARM = 3.6;

export const cross = ({ x, y }: PagePoint): string =>
  pathThrough([
    { x: x - ARM, y: y - ARM },
    { x: x + ARM, y: y + ARM },
  ]) +
  pathThrough([
    { x: x - ARM, y: y + ARM },
    { x: x + ARM, y: y - ARM },
  ]);

export function stakeMarks(sheet: Sheet, site: Site, stakes: readonly Stake[]): void {
  const at = stakes.map((stake) => sheet.frame.at(stakePlace(site, stake)));
  for (const place of at) {
    sheet.room.take({ ...place, width: 2 * ARM, height: 2 * ARM, turn: 0 });
    sheet.draw('path', { d: cross(place), stroke: 'ink', 'stroke-width': 1.1, class: 'stake' });
  }
  stakes.forEach(({ name, mark }, i) => {
    const text = sheet.name(mark ? `${name}: ${mark}` : name);
    sheet.label(text, at[i] as PagePoint, { gap: 5, class: 'stake-mark' });
  });
}

/** Stakes farther off than half the plan would make the rest small. */
export function stakesNear(site: Site, spots: readonly PlanPoint[], stakes: readonly Stake[]): Stake[] {
  const { from, to } = extentOf(spots);
  const far = Math.max(to.x - from.x, to.y - from.y) / 2;
  return stakes.filter((stake) => {
    const { x, y } = stakePlace(site, stake);
    return x >= from.x - far && x <= to.x + far && y >= from.y - far && y <= to.y + far;
  });
}
