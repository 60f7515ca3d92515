/**
 * Where the lines of a joint plan are snapped: the distance of each from the base line or from its end, and the two
 * ends of those that run aslant.
 */

import type { PlanJoint } from '../joints/layout-figures';
import type { Place } from '../joints/layout-input';
import type { Decimal } from '../quantity/decimal';
import { canonicalValue, quantityOf } from '../quantity/quantity';
import { say } from '../reckoning/words';
import { type BaseLine, offsetsIn, offsetText } from './base-line';
import type { PlanPoint } from './frame';
import type { Sheet } from './sheet';

const JOINTS: Record<PlanJoint['type'], string> = {
  contraction: 'contraction joints',
  construction: 'construction joints',
  isolation: 'isolation joints',
};

const JOINT: Record<PlanJoint['type'], string> = {
  contraction: 'contraction joint',
  construction: 'construction joint',
  isolation: 'isolation joint',
};

/** Nearer than this, in meters, two lines are one. */
const ALIKE = 1e-6;
/** More lines one way than these are found in the figures. */
const MOST = 24;

const corner = ({ x, y }: Place) => ({ x: canonicalValue(x), y: canonicalValue(y) });

/** Which way a joint runs by the base line, and how far it lies off. */
interface Lay {
  readonly way: 'square' | 'beside';
  readonly off: Decimal;
}

function layOf(base: BaseLine, joint: PlanJoint): Lay | undefined {
  if (joint.shape !== 'straight') return undefined;
  const [a, b] = [offsetsIn(base, corner(joint.from)), offsetsIn(base, corner(joint.to))];
  if (a.along.minus(b.along).abs().lessThan(ALIKE)) return { way: 'square', off: a.along };
  if (a.in.minus(b.in).abs().lessThan(ALIKE)) return { way: 'beside', off: a.in };
  return undefined;
}

/** Each distance once, nearest first. */
function distances(offs: readonly Decimal[]): Decimal[] {
  const sorted = [...offs].sort((a, b) => a.comparedTo(b));
  return sorted.filter((off, i) => i === 0 || off.minus(sorted[i - 1] as Decimal).greaterThan(ALIKE));
}

function tellLines(sheet: Sheet, base: BaseLine, type: PlanJoint['type'], { way, offs }: Lines): void {
  const all = distances(offs);
  const told = all.slice(0, MOST).map((off) => sheet.length(quantityOf('length', off, sheet.system)));
  // In some languages a comma is the point of a decimal.
  const places = [...told, ...(all.length > MOST ? ['…'] : [])].join('; ');
  const params = { joints: JOINTS[type], places: [places] };
  const says = base.to
    ? {
        square: '{joints} square to A–B, from A: {places}',
        beside: '{joints} along A–B, in from it: {places}',
      }
    : {
        square: '{joints} up the plan, right of C: {places}',
        beside: '{joints} across the plan, up from C: {places}',
      };
  sheet.note(sheet.text({ says: says[way], params }));
}

interface Lines {
  readonly way: Lay['way'];
  readonly offs: readonly Decimal[];
}

/** Angles nearer than this are the same, in radians: what setting out to whole steps leaves over. */
const SAME_TURN = 0.02;

/** A joint that runs straight away from the center, by its ends from there, in meters, and its direction. */
interface Ray {
  readonly joint: PlanJoint;
  readonly inner: number;
  readonly outer: number;
  readonly turn: number;
}

function rayOf(base: BaseLine, joint: PlanJoint): Ray | undefined {
  if (base.to || joint.shape !== 'straight') return undefined;
  const [a, b] = [joint.from, joint.to].map((place) => {
    const { along, in: up } = offsetsIn(base, corner(place));
    return { x: along.toNumber(), y: up.toNumber() };
  }) as [PlanPoint, PlanPoint];
  const [ra, rb] = [Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)];
  const far = ra > rb ? a : b;
  const aside = Math.abs(a.x * b.y - a.y * b.x) / Math.max(ra, rb, 1e-9);
  if (aside > 0.002 || a.x * b.x + a.y * b.y < 0) return undefined;
  return { joint, inner: Math.min(ra, rb), outer: Math.max(ra, rb), turn: Math.atan2(far.y, far.x) };
}

/** Rays alike and evenly spread, which one sentence tells. */
function evenRays(rays: readonly Ray[]): { list: readonly Ray[]; step: number } | undefined {
  const list = [...rays].sort((a, b) => a.turn - b.turn);
  const steps = list.slice(1).map(({ turn }, i) => turn - (list[i] as Ray).turn);
  const step = steps.reduce((sum, one) => sum + one, 0) / Math.max(1, steps.length);
  const even = steps.every((one) => Math.abs(one - step) < SAME_TURN);
  return list.length > 2 && even ? { list, step } : undefined;
}

/** Say where rays lie; gives those that were told. */
function tellRays(sheet: Sheet, base: BaseLine, joints: readonly PlanJoint[]): Set<PlanJoint> {
  const told = new Set<PlanJoint>();
  const groups = new Map<string, Ray[]>();
  for (const ray of joints.flatMap((joint) => rayOf(base, joint) ?? [])) {
    const key = [ray.joint.type, ray.inner.toFixed(2), ray.outer.toFixed(2)].join();
    groups.set(key, [...(groups.get(key) ?? []), ray]);
  }
  for (const rays of groups.values()) {
    const even = evenRays(rays);
    if (!even) continue;
    const first = even.list.reduce((a, b) => (Math.abs(b.turn) < Math.abs(a.turn) ? b : a));
    const { joint, inner, outer } = first;
    const length = (meters: number): string[] => [sheet.length(sheet.meters(meters))];
    const params = {
      count: rays.length,
      joints: JOINTS[joint.type],
      inner: length(inner),
      outer: length(outer),
      first: [offsetText(sheet, base, corner(farther(base, joint)))],
      chord: length(2 * outer * Math.sin(even.step / 2)),
    };
    const says =
      '{count} {joints} straight away from C, from {inner} to {outer}; one ends at {first}, the others are {chord} apart at the outer ends';
    sheet.note(sheet.text({ says, params }));
    for (const { joint: one } of rays) told.add(one);
  }
  return told;
}

/** The end of a joint that is farther from the center. */
function farther(base: BaseLine, { from, to }: PlanJoint): Place {
  const off = (place: Place): Decimal => {
    const { along, in: up } = offsetsIn(base, corner(place));
    return along.times(along).plus(up.times(up));
  };
  return off(from).greaterThan(off(to)) ? from : to;
}

/** A joint that runs aslant or around, by its ends or its center. */
function oddText(sheet: Sheet, base: BaseLine, joint: PlanJoint): string {
  const name = JOINT[joint.type];
  const [from, to] = [joint.from, joint.to].map((place) => [offsetText(sheet, base, corner(place))]) as [
    string[],
    string[],
  ];
  if (joint.shape === 'straight' || !joint.center) {
    return sheet.text(say`${{ joint: name }} from ${{ from }} to ${{ to }}`);
  }
  const [dx, dy] = [joint.from.x.minus(joint.center.x), joint.from.y.minus(joint.center.y)];
  const radius = Math.hypot(dx.toNumber('m'), dy.toNumber('m'));
  const center = [offsetText(sheet, base, corner(joint.center))];
  const words = { joint: name, radius: [sheet.length(sheet.meters(radius))], center };
  if (joint.shape === 'circle') {
    return sheet.text({ says: '{joint} of radius {radius} about {center}', params: words });
  }
  const params = { ...words, from, to };
  return sheet.text({ says: '{joint} of radius {radius} about {center}, from {from} to {to}', params });
}

/** A place on a joint that is not its middle, where those of others meet it. */
const SHARE = 0.42;

function onJoint(joint: PlanJoint, at: (place: Place) => PlanPoint): PlanPoint {
  const [a, b] = [at(joint.from), at(joint.to)];
  if (joint.shape === 'straight') return { x: a.x + (b.x - a.x) * SHARE, y: a.y + (b.y - a.y) * SHARE };
  return a;
}

/** Say where every joint lies: lines one way together, others by a number on the plan. */
export function showCuts(
  sheet: Sheet,
  base: BaseLine,
  joints: readonly PlanJoint[],
  at: (place: Place) => PlanPoint,
): void {
  const rays = tellRays(sheet, base, joints);
  const others = joints.filter((joint) => !rays.has(joint));
  for (const type of ['contraction', 'construction', 'isolation'] as const) {
    const laid = others.filter((joint) => joint.type === type).flatMap((joint) => layOf(base, joint) ?? []);
    for (const way of ['square', 'beside'] as const) {
      const offs = laid.filter((lay) => lay.way === way).map(({ off }) => off);
      if (offs.length > 0) tellLines(sheet, base, type, { way, offs });
    }
  }
  for (const joint of others) {
    if (!layOf(base, joint)) sheet.number(oddText(sheet, base, joint), sheet.frame.at(onJoint(joint, at)), 0);
  }
}
