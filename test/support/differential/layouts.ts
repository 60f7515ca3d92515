/**
 * Layouts over plans: joints looked over as the faces between lines by jsts, lines of bar as what jsts leaves of
 * them in the outline drawn in by the cover, mats and mesh place by place.
 */
import {
  barPlaces,
  InputError,
  type JointLayoutFigures,
  jointLayout,
  meshPlaces,
  type RebarRegionInput,
  rebarLayout,
} from '../../../src/index';
import { clippedLines } from '../../steel/clipped';
import { type Plan, polygonOf, randomPlan, type Spot } from '../../steel/outlines';
import { faultsOf } from '../joints/faces';
import { type Drawn, slabOf } from '../joints/slabs';
import { matCase, matFaults, matInput } from '../steel/mats';
import { meshFaults, meshInput } from '../steel/sheets';
import type { Site } from './draw';
import { sum } from './rational';
import { apart, type Compared, numberOf, siOf } from './trial';

interface Put {
  readonly x: string;
  readonly y: string;
}

const feetOf = (text: string): number => Number(text.replace(' ft', ''));

/** Every place of an input moved by whole feet. */
function movedInput(value: unknown, [dx, dy]: readonly [number, number]): unknown {
  if (Array.isArray(value)) return value.map((part) => movedInput(part, [dx, dy]));
  if (typeof value !== 'object' || value === null) return value;
  const out = Object.fromEntries(Object.entries(value).map(([k, v]) => [k, movedInput(v, [dx, dy])]));
  if (!('x' in out && 'y' in out)) return out;
  const { x, y } = out as unknown as Put;
  // Added as whole hundred-millionths: binary sums would shift a corner.
  const add = (text: string, d: number): string => {
    const [a, b = ''] = feetOf(text).toFixed(8).split('.');
    const n = BigInt(`${a}${b}`) + BigInt(d) * 100_000_000n;
    const digits = (n < 0n ? -n : n).toString().padStart(9, '0');
    return `${n < 0n ? '-' : ''}${digits.slice(0, -8)}.${digits.slice(-8)} ft`;
  };
  return { ...out, x: add(x, dx), y: add(y, dy) };
}

/** Figures with every place moved back, as numbers only. */
function movedBack(value: unknown, [dx, dy]: readonly [number, number]): unknown {
  if (Array.isArray(value)) return value.map((part) => movedBack(part, [dx, dy]));
  if (typeof value !== 'object' || value === null || 'toNumber' in value) return value;
  const out = Object.fromEntries(Object.entries(value).map(([k, v]) => [k, movedBack(v, [dx, dy])]));
  if (!('x' in out && 'y' in out)) return out;
  const less = (q: unknown, d: number) => ({
    toNumber: (unit: string) => (q as { toNumber(u: string): number }).toNumber(unit) - d,
  });
  return { ...out, x: less(out['x'], dx), y: less(out['y'], dy) };
}

/** The geometry library gives up on some lines that all but meet. */
function noded<T>(look: () => T): T | undefined {
  try {
    return look();
  } catch (error) {
    if (String(error).includes('non-noded')) return undefined;
    throw error;
  }
}

const PLACED = new Set(['polygon', 'curved']);
const KINDS_OF_SLAB = 12;

/** The plan of a slab of any of twelve kinds, some at survey coordinates. */
function joints(site: Site): Compared {
  const slab: Drawn = slabOf(site.dice.next, site.dice.below(KINDS_OF_SLAB));
  const spacing = site.between(6, 13);
  const far: [number, number] =
    PLACED.has(slab.input.outline.shape) && site.dice.below(3) === 0 ? [2_000_000, 500_000] : [0, 0];
  const input = {
    ...(movedInput(slab.input, far) as Drawn['input']),
    thickness: '4 in',
    spacing: `${spacing} ft`,
  };
  const attempt = jointLayout.attempt(input);
  if (!attempt.ok) {
    const codes = attempt.error.issues.map(({ code }) => code).join();
    if (codes === 'too-many') return { figures: 0, deviation: 0, input, disagreements: [], skipped: codes };
    return { figures: 0, deviation: 0, input, disagreements: [`refused with ${codes}`] };
  }
  const { figures } = attempt.result;
  const local = movedBack(figures, far) as JointLayoutFigures;
  const found = noded(() => faultsOf(slab, local, { spacing, leastSide: 2 }));
  if (!found)
    return { figures: 0, deviation: 0, input, disagreements: [], skipped: 'jsts cannot node the lines' };
  const together = apart(sum(figures.panels.map((p) => siOf(p.area))), siOf(figures.area));
  if (together > 1e-20) found.push(`panels come to ${together} more or less than the slab`);
  return {
    figures: figures.panels.length + figures.joints.length,
    deviation: together,
    input,
    disagreements: found,
  };
}

/** A plan with its first corner anywhere, turned and mirrored; now and then with two walls that nearly touch. */
function planOf(site: Site): Plan {
  const { outer, openings } = randomPlan(site.dice.next);
  const flip = site.maybe();
  const pose = (ring: readonly Spot[]): Spot[] => ring.map(({ x, y }) => (flip ? { x: y, y: x } : { x, y }));
  const at = site.between(0, outer.length - 1);
  const turned = pose(outer);
  return { outer: [...turned.slice(at), ...turned.slice(0, at)], openings: openings.map(pose) };
}

type Laid<T> = { readonly ok: T } | { readonly refused: string };

/** A random ring may cross itself or be too narrow for any bar: refused with a code. */
function laid<T>(make: () => T): Laid<T> {
  try {
    return { ok: make() };
  } catch (error) {
    if (error instanceof InputError) return { refused: error.issues.map(({ code }) => code).join() };
    throw error;
  }
}

function mats(site: Site): Compared {
  const c = matCase(site.dice.next, planOf(site));
  const input = matInput(c);
  const bars = laid(() => barPlaces(input));
  if ('refused' in bars) return { figures: 0, deviation: 0, input, disagreements: [], skipped: bars.refused };
  return {
    figures: bars.ok.length,
    deviation: 0,
    input,
    disagreements: matFaults(c, bars.ok, site.dice.next),
  };
}

function sheets(site: Site): Compared {
  const plan = planOf(site);
  const edge = Math.round((0.03 + site.dice.next() * 0.05) * 1000) / 1000;
  const input = meshInput(plan, edge);
  const places = laid(() => meshPlaces(input));
  if ('refused' in places)
    return { figures: 0, deviation: 0, input, disagreements: [], skipped: places.refused };
  return {
    figures: places.ok.length,
    deviation: 0,
    input,
    disagreements: meshFaults(plan, places.ok, edge, site.dice.next),
  };
}

/** Lines of bar by jsts, both ways: all of them together. */
function lines(site: Site): Compared {
  const plan = planOf(site);
  const spacing = Math.round((0.25 + site.dice.next() * 0.4) * 1000) / 1000;
  const cover = 0.05;
  const input: RebarRegionInput = {
    outline: polygonOf(plan.outer),
    openings: plan.openings.map(polygonOf),
    mats: [{ layer: 'bottom', bar: '#4', spacing: `${spacing} m` }],
    cover: `${cover} m`,
    stockLength: '60 m',
    edgeBars: false,
    cornerBars: 0,
    shortest: '0 m',
  };
  const attempt = rebarLayout.attempt(input);
  if (!attempt.ok) {
    const codes = attempt.error.issues.map(({ code }) => code).join();
    return { figures: 0, deviation: 0, input, disagreements: [], skipped: codes };
  }
  const theirs = [false, true].flatMap((upright) => clippedLines(plan, { cover, spacing, upright }).flat());
  const total = theirs.reduce((a, b) => a + b, 0);
  const ours = numberOf((attempt.result.figures as { totalLength: unknown }).totalLength);
  // Each line is rounded down to a millimeter.
  const agree = total - ours > -0.005 && total - ours < 0.001 * theirs.length + 0.01;
  return {
    figures: theirs.length,
    deviation: agree ? Math.abs(total - ours) / total : 0,
    input,
    disagreements: agree ? [] : [`bars of ${ours} m, jsts leaves ${total} m of ${theirs.length} lines`],
  };
}

export const JOINTS: readonly ((site: Site) => Compared)[] = [joints];
export const STEEL: readonly ((site: Site) => Compared)[] = [mats, sheets, lines];
