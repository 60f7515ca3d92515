/**
 * The order in which joints are sawn.
 *
 * The joints across are sawn one after another, in the order in which the concrete was placed, and never every
 * second one first: when those between are cut later the concrete tears ahead of the blade, and the joints
 * open unevenly (TM 5-822-7, paragraph 23 c (4); UFGS 02753 asks for the same). That the joints along come
 * after those across, and circles and arcs last of all, since a walk-behind saw runs straight, is common
 * practice.
 *
 * Which family runs along is told by the longest line of each: along a slab lines are longer than across.
 */
import type { LaidJoint } from './plan';

/** From the end that the plan counts from, or from the other one. */
export type SawOrder = 'consecutive' | 'reverse';

/** Joints on one line, sawn in one go. */
interface Run {
  readonly place: LaidJoint['place'];
  readonly joints: number[];
  readonly curved: boolean;
  length: number;
}

/** Lines side by side. */
interface Family {
  readonly name: string;
  readonly runs: Run[];
  readonly curved: boolean;
  readonly longest: number;
}

function runsOf(joints: readonly LaidJoint[]): Map<string, Map<string, Run>> {
  const families = new Map<string, Map<string, Run>>();
  joints.forEach((joint, i) => {
    if (joint.type !== 'contraction') return;
    const runs = families.get(joint.family) ?? new Map<string, Run>();
    families.set(joint.family, runs);
    const run = runs.get(joint.run) ?? {
      place: joint.place,
      joints: [],
      curved: joint.shape !== 'straight',
      length: 0,
    };
    runs.set(joint.run, run);
    run.joints.push(i);
    run.length += joint.length.toNumber();
  });
  return families;
}

function familiesOf(joints: readonly LaidJoint[], order: SawOrder): Family[] {
  const sign = order === 'reverse' ? -1 : 1;
  return [...runsOf(joints)].map(([name, runs]) => ({
    name,
    runs: [...runs.values()].sort((a, b) => sign * a.place.comparedTo(b.place)),
    curved: [...runs.values()].some(({ curved }) => curved),
    longest: Math.max(...[...runs.values()].map(({ length }) => length)),
  }));
}

/** A tenth of a millimeter: lengths that differ by less are the same line turned. */
const SAME = 1e-4;

const first = (a: Family, b: Family): number => {
  if (a.curved !== b.curved) return a.curved ? 1 : -1;
  const longer = a.longest - b.longest;
  return Math.abs(longer) > SAME ? longer : a.name.localeCompare(b.name);
};

/** The joints to be sawn, by their place in the list, in order. */
export function sawOrder(joints: readonly LaidJoint[], order: SawOrder): number[] {
  return familiesOf(joints, order)
    .sort(first)
    .flatMap(({ runs }) => runs.flatMap((run) => run.joints));
}
