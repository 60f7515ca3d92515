/** The surface as it will be, looked at and checked as any other. */
import { type Decimal, ZERO } from '../../quantity/decimal';
import type { Quantity } from '../../quantity/quantity';
import { readInput } from '../../reckoning/calculation';
import { Pad } from '../../reckoning/pad';
import { type Held, readSite } from '../held';
import type { ParsedLine } from '../lines';
import { metersAs, type Survey } from '../spots';
import { checkSurface } from '../surface-check';
import type { SurfaceDrainageFigures } from '../surface-figures';
import { surfaceFields } from '../surface-input';
import { type Site, siteOf } from '../terrain';
import type { Moves } from './program';

/** Spots read twice at one place move together: for each, the one that stands for both. */
export function standIns({ survey, terrain }: Site): number[] {
  const places = new Map<string, number>();
  const key = (v: number): string => `${survey.x[v]} ${survey.y[v]}`;
  for (const v of terrain.tin.corner) if (v < survey.count) places.set(key(v), v);
  return Array.from({ length: survey.count }, (_, v) => places.get(key(v)) ?? v);
}

/** What the surface is held to, as it was asked. */
export interface Asked {
  readonly lines: readonly ParsedLine[];
  readonly minimum: Quantity<'slope'>;
  readonly zone: Quantity<'length'>;
}

/** Looks at the surface that moves would make. */
export interface Looker {
  readonly held: Held;
  /** The site as it would be, for the search. */
  readonly site: (moves: Moves) => Site;
  /** The check of it. */
  readonly check: (moves: Moves) => { readonly figures: SurfaceDrainageFigures; readonly pad: Pad };
}

function movedBy(survey: Survey, standIn: readonly number[], moves: Moves): (v: number) => Decimal {
  return (v) => survey.exact(v).z.plus(moves.get(standIn[v] ?? v) ?? ZERO);
}

/** Make a looker for a site. */
export function lookerAt(site: Site, survey: Survey, asked: Asked, near: number): Looker {
  const standIn = standIns(site);
  const input = (moves: Moves): unknown => {
    const height = movedBy(survey, standIn, moves);
    return {
      ...asked,
      spots: Array.from({ length: survey.count }, (_, v) => {
        const { x, y } = survey.exact(v);
        const at = (z: Decimal) => metersAs(z, survey.system);
        return { name: survey.name(v), x: at(x), y: at(y), elevation: at(height(v)) };
      }),
    };
  };
  const read = (moves: Moves) => readInput(surfaceFields(), input(moves));
  return {
    held: readSite(read(new Map()), new Pad(survey.system)).held,
    site: (moves) => {
      const height = movedBy(survey, standIn, moves);
      const origin = survey.exact(0).z;
      const z = Float64Array.from({ length: survey.count }, (_, v) => height(v).minus(origin).toNumber());
      const exact = (v: number) => ({ ...survey.exact(v), z: height(v) });
      return siteOf({ ...survey, z, exact }, { lines: asked.lines, outline: undefined, near });
    },
    check: (moves) => {
      const pad = new Pad(survey.system);
      return { figures: checkSurface(read(moves), pad), pad };
    },
  };
}
