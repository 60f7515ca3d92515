/** Valleys in figures, and what falls back behind them. */

import { nextEdge } from '../geometry/tin';
import { Decimal } from '../quantity/decimal';
import type { Quantity } from '../quantity/quantity';
import { sixFigures, slopeOfFall } from './facet-figures';
import type { Held } from './held';
import type { Judged } from './judged';
import { NO_FALL } from './runs';
import { metersAs } from './spots';
import type { FallsBackFigure, ValleyFigure } from './surface-figures';
import type { Site } from './terrain';
import { type FoundValley, isFlat } from './valleys';

const HELD = 40;

/** Where the middle of a half-edge lies, to break ties alike in whatever order the spots came. */
function placeOfEdge({ terrain: { tin } }: Site, e: number): number {
  const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
  return (tin.x[p] as number) + (tin.x[q] as number);
}

/** The worst first: those that lack most, then those with least to spare, then the longest. */
export function worstValleys(site: Site, valleys: readonly FoundValley[]): FoundValley[] {
  const spare = ({ fall, least }: FoundValley): number => Math.round((fall - least) / NO_FALL);
  return [...valleys].sort(
    (a, b) => spare(a) - spare(b) || placeOfEdge(site, a.edge) - placeOfEdge(site, b.edge),
  );
}

export function valleyFigure(site: Site, valley: FoundValley, held: Held): ValleyFigure {
  const { survey, lines } = site;
  const [p, q] = [survey.exact(valley.from), survey.exact(valley.to)];
  const long = Decimal.hypot(q.x.minus(p.x), q.y.minus(p.y));
  const curb = lines[valley.curb - 1]?.name;
  return {
    from: survey.name(valley.from),
    to: survey.name(valley.to),
    fall: slopeOfFall(p.z.minus(q.z).div(long), survey.system),
    required: valley.bySwaleRule ? held.swale : held.valley,
    length: metersAs(long.toSignificantDigits(HELD), survey.system),
    ...(curb === undefined ? {} : { curb }),
    verdict: isFlat(valley) ? 'too flat' : 'drains',
  };
}

/** Plan area of a facet, in binary numbers. */
function areaOf({ terrain: { tin } }: Site, t: number): number {
  const [a, b, c] = [tin.corner[3 * t], tin.corner[3 * t + 1], tin.corner[3 * t + 2]] as [
    number,
    number,
    number,
  ];
  const [ax, ay] = [tin.x[a] as number, tin.y[a] as number];
  const cross =
    ((tin.x[b] as number) - ax) * ((tin.y[c] as number) - ay) -
    ((tin.y[b] as number) - ay) * ((tin.x[c] as number) - ax);
  return Math.abs(cross) / 2;
}

/** What falls back, by the building line nearest to it, in the order of the lines. */
export function backFigures(site: Site, { back, reach }: Judged): FallsBackFigure[] {
  const { system } = site.survey;
  return site.lines.flatMap(({ name }, i) => {
    const facets = back.facets.filter((t) => back.line[t] === i + 1);
    if (facets.length === 0) return [];
    const sum = (share: (t: number) => number): Quantity<'area'> =>
      sixFigures(
        facets.reduce((total, t) => total + share(t) * areaOf(site, t), 0),
        system,
      );
    return [
      {
        line: name,
        area: sum(() => 1),
        reaching: sum((t) => reach?.share[t] ?? 0),
        standing: sum((t) => back.stands[t] as number),
        caught: sum((t) => back.caught[t] as number),
      },
    ];
  });
}
