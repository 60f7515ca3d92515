/**
 * The order in which joints are sawn.
 *
 * Halving: the line nearest the middle of each family first, then the lines that halve what is left,
 * longer ones before shorter, so that the slab is soon in pieces that cannot shrink far. Alternate:
 * every second line of a family first, then those between.
 */
import type { LaidJoint } from './laid';

/** Which lines come first. */
export type SawOrder = 'halving' | 'alternate';

interface Run {
  readonly key: string;
  readonly family: string;
  readonly place: LaidJoint['place'];
  readonly joints: number[];
  length: number;
}

function runsOf(joints: readonly LaidJoint[]): Run[] {
  const runs = new Map<string, Run>();
  joints.forEach((joint, i) => {
    if (joint.type !== 'contraction') return;
    const run = runs.get(joint.run) ?? {
      key: joint.run,
      family: joint.family,
      place: joint.place,
      joints: [],
      length: 0,
    };
    run.joints.push(i);
    run.length += joint.length.toNumber();
    runs.set(joint.run, run);
  });
  return [...runs.values()];
}

/** How many times the family has been halved before each of n lines is reached. */
function halvings(n: number): number[] {
  const level = new Array<number>(n).fill(0);
  const halve = (from: number, to: number, depth: number): void => {
    if (from > to) return;
    const middle = (from + to) >> 1;
    level[middle] = depth;
    halve(from, middle - 1, depth + 1);
    halve(middle + 1, to, depth + 1);
  };
  halve(0, n - 1, 0);
  return level;
}

/** The joints to be sawn, by their place in the list, in order. */
export function sawOrder(joints: readonly LaidJoint[], order: SawOrder): number[] {
  const runs = runsOf(joints);
  const families = new Map<string, Run[]>();
  for (const run of runs) {
    const family = families.get(run.family);
    if (family) family.push(run);
    else families.set(run.family, [run]);
  }
  const turn = new Map<Run, number>();
  for (const family of families.values()) {
    family.sort((a, b) => a.place.comparedTo(b.place));
    const level = order === 'halving' ? halvings(family.length) : family.map((_, i) => i % 2);
    family.forEach((run, i) => {
      turn.set(run, level[i] as number);
    });
  }
  const first = (a: Run, b: Run): number =>
    (turn.get(a) as number) - (turn.get(b) as number) ||
    (order === 'halving' ? b.length - a.length : 0) ||
    a.family.localeCompare(b.family) ||
    a.place.comparedTo(b.place);
  return runs.sort(first).flatMap((run) => run.joints);
}
