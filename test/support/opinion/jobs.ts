/** Jobs to be estimated: the inputs of the vectors in other sizes, written as people write them. */
import { calculations as catalog } from '../../../src/catalog/all';
import { goodInputs } from '../inputs';
import { mapLeaves, type Path } from '../relations/inputs';
import type { Chance } from '../relations/random';
import { type Carried, carriedIn, holds, type Page } from './notebook';

type AnyCalculation = (typeof catalog)[number];

/** One job: a calculation with an input, and its working. */
export interface Job {
  readonly calculation: AnyCalculation;
  readonly input: unknown;
  readonly page: Page;
  /** What is carried from step to step; nothing where no other job of the kind has the same steps. */
  readonly carried: Carried | undefined;
}

/** What people work out with a notebook. */
export const ESTIMATED = [
  'slab-volume',
  'base-tonnage',
  'excavation',
  'footing-volume',
  'wall-volume',
  'pier-volume',
  'step-volume',
  'curb-volume',
  'concrete-order',
  'bag-count',
  'backfill',
  'finish-materials',
  'form-materials',
  'fiber-dosage',
  'bar-size',
  'rebar-layout',
  'mesh-layout',
  'mesh-style',
  'lap-length',
  'dowel-layout',
  'steel-minimum',
  'joint-layout',
  'joint-spacing',
  'slope',
  'runoff',
  'invoice-check',
  'job-bid',
  'truck-plan',
  'balance-load',
  'step-layout',
  'delivery-ticket',
  'form-pressure',
] as const;

const WRITTEN = /^(\d+(?:\.\d+)?) (\S+)$/;
const FEET_INCHES = /^(\d+) ft (\d+(?:\.\d+)?) in$/;

/** To whole steps that a tape or a drawing shows. */
const STEP: Readonly<Record<string, number>> = { in: 0.5, mm: 5, cm: 1, m: 0.05, yd3: 0.25, '%': 1, ft2: 1 };
/** Not changed: what is a choice of a list rather than a size. */
const KEPT = /^(bar|style|name|grade|table|nominal|stock|stockLength|unit|per|in|x|y|version|at|rows?|kind)$/;

function feet(value: number, { next, below }: Chance): string {
  const whole = Math.max(1, Math.round(value));
  const way = next();
  if (way < 0.55 || value < 3) return `${whole} ft`;
  return way < 0.85 ? `${whole} ft ${1 + below(11)} in` : `${whole}.5 ft`;
}

/** Another size of the same kind. */
function resized(leaf: string, chance: Chance): string {
  const factor = 0.6 + chance.next() * 1.1;
  const both = FEET_INCHES.exec(leaf);
  if (both) return feet(Number(both[1]) * factor, chance);
  const [, number, unit = ''] = WRITTEN.exec(leaf) ?? [];
  if (number === undefined || Number(number) === 0) return leaf;
  if (unit === 'ft') return feet(Number(number) * factor, chance);
  const step = STEP[unit];
  const value = Number(number) * factor;
  const size = step ? Math.max(step, Math.round(value / step) * step) : value;
  return `${Number(size.toPrecision(3))} ${unit}`;
}

/** The keys of a place that say what it is. */
export const nameOf = (path: Path): string =>
  String([...path].reverse().find((key) => typeof key === 'string'));

const isKept = (path: Path): boolean => path.some((key) => KEPT.test(String(key)));

const changedAll = (input: unknown, share: number, chance: Chance): unknown =>
  mapLeaves(input, (leaf, _, path) =>
    typeof leaf === 'string' && !isKept(path) && chance.next() < share ? resized(leaf, chance) : leaf,
  );

/** The result of an input; nothing where it is refused. */
export function pageOf(calculation: AnyCalculation, input: unknown): Page | undefined {
  const attempt = calculation.attempt(input);
  return attempt.ok ? (attempt.result as unknown as Page) : undefined;
}

const shapeOf = (page: Page): string => page.working.map(({ formula }) => formula).join('\n');

/** Other jobs with the same steps. */
function siblings(calculation: AnyCalculation, input: unknown, page: Page, chance: Chance): Page[] {
  const found: Page[] = [];
  for (let i = 0; i < 8 && found.length < 2; i++) {
    const other = pageOf(calculation, changedAll(input, i < 4 ? 0.9 : 0.4, chance));
    if (other && shapeOf(other) === shapeOf(page)) found.push(other);
  }
  return found;
}

/** A job with its working; nothing where the input is refused or says nothing of itself. */
function jobOf(calculation: AnyCalculation, input: unknown, chance: Chance): Job | undefined {
  const page = pageOf(calculation, input);
  if (!page) return undefined;
  const others = siblings(calculation, input, page, chance);
  return { calculation, input, page, carried: others.length > 0 ? carriedIn([page, ...others]) : undefined };
}

/** The same job after something in its input was taken otherwise. */
export function jobWith(job: Job, input: unknown): Job | undefined {
  const page = pageOf(job.calculation, input);
  if (!page) return undefined;
  const alike = shapeOf(page) === shapeOf(job.page) && job.carried && holds(page, job.carried);
  return { ...job, input, page, carried: alike ? job.carried : undefined };
}

/** Draw a job. */
export function drawnJob(id: string, chance: Chance): Job {
  const calculation = catalog.find((one) => one.id === id);
  if (!calculation) throw new Error(`no calculation ${id}`);
  const good = goodInputs.get(id) ?? [];
  for (let i = 0; i < 100; i++) {
    const input = changedAll(chance.pick(good), 0.7, chance);
    const job = jobOf(calculation, input, chance);
    if (job && job.page.working.length > 0) return job;
  }
  throw new Error(`no job of ${id}`);
}
