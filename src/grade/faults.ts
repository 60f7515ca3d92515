/** Faults of readings that only this trade has. */

import { fault, named, quoted, withExample } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

/** No published tolerance belongs to an edge of this length, and none may be scaled to it. */
export const noTolerance = (edge: string): Fault =>
  withExample(
    'no-tolerance',
    ['5, 10 or 12 ft', '1.5, 2, 3 or 4 m'],
    (edges) =>
      say`no tolerance is published for a straightedge of ${{ edge }}, and one for another length must not be scaled to it; give allowed as the plans have it, or use an edge of ${{ edges }}`,
  );

export const repeatedName = (name: string): Fault =>
  fault('repeated-name', say`${{ name: quoted(name) }} names two things; give each a name of its own`);

export const unknownName = (name: string, known: readonly string[]): Fault =>
  fault(
    'unknown-name',
    say`${{ name: quoted(name) }} is not a name given here; known: ${{ names: named(known) }}`,
  );

export const fewSpots = (names: readonly string[]): Fault =>
  fault(
    'few-spots',
    say`a surface needs at least three spots; given: ${{ names: names.length === 0 ? 'none' : named(names) }}`,
  );

export const collinearSpots = (names: readonly string[]): Fault =>
  fault(
    'collinear-spots',
    say`the spots lie on one straight line and make no surface: ${{ names: named(names) }}; take a spot beside the line`,
  );

export const conflictingSpots = (first: string, second: string): Fault =>
  fault(
    'conflicting-spots',
    say`spots ${{ first: quoted(first) }} and ${{ second: quoted(second) }} lie at one place with different elevations; keep the right one`,
  );

export const noDatum = (names: readonly string[]): Fault =>
  fault(
    'no-datum',
    say`these readings are not tied to a bench mark: ${{ names: named(names) }}; give the height of the instrument or a bench mark`,
  );

export const conflictingGrades = (names: readonly string[]): Fault =>
  fault(
    'conflicting-grades',
    say`no plane meets all of it: ${{ names: named(names) }} conflict; move or ease one of them, or use another kind of surface`,
  );

export const outsideSurface = (name: string): Fault =>
  fault('outside-surface', say`${{ name: quoted(name) }} lies off the surface; place it among the spots`);

export const noSolution = (names: readonly string[]): Fault =>
  fault(
    'no-solution',
    say`moving only the spots allowed, and only so far, cannot meet all of this: ${{ names: named(names) }}; allow more spots or more room`,
  );
