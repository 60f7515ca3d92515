/** Running targets many times, by chunks that can be run anywhere in any order and come out the same. */
import { inspect } from 'node:util';
import { chance } from '../relations/random';
import { calculationTargets } from './calculations';
import { quantityTargets } from './quantities';
import type { Objection, Target } from './target';
import { textTargets } from './texts';

/** A share of the executions of one target. */
export interface Chunk {
  readonly id: string;
  readonly seed: number;
  readonly count: number;
}

/** An objection as it is written down. */
export interface Written {
  readonly said: string;
  readonly kind: string;
  /** The input as JSON where it has one, otherwise as Node shows it. */
  readonly input: string;
  readonly seed: number;
}

/** What came of a chunk. */
export interface Tally {
  readonly id: string;
  executions: number;
  accepted: number;
  slowest: number;
  found: number;
  readonly written: Written[];
}

const targets = new Map<string, Target>();

function targetOf(id: string): Target {
  if (targets.size === 0) for (const target of allTargets()) targets.set(target.id, target);
  return targets.get(id) as Target;
}

export const allTargets = (): Target[] => [...calculationTargets(), ...textTargets(), ...quantityTargets()];

/** Objections that differ by numbers and names only are of one kind. */
const kindOf = (said: string): string =>
  said
    .replace(/"[^"]*"/g, '"…"')
    .replace(/-?\d[\d.,/]*/g, '#')
    .slice(0, 90);

const LONGEST = 20_000;

function shown(input: unknown): string {
  try {
    return JSON.stringify(input).slice(0, LONGEST);
  } catch {
    return safeInspect(input);
  }
}

function safeInspect(input: unknown): string {
  try {
    return inspect(input, { depth: 8, breakLength: Number.POSITIVE_INFINITY }).slice(0, LONGEST);
  } catch {
    return 'an input that cannot be shown';
  }
}

const EXAMPLES = 5;

function note(tally: Tally, { said, input }: Objection, seed: number): void {
  tally.found += 1;
  const kind = kindOf(said);
  if (tally.written.filter((w) => w.kind === kind).length >= EXAMPLES) return;
  tally.written.push({ said: said.slice(0, 600), kind, input: shown(input), seed });
}

/** One execution by its seed: how a finding is made again. */
export const runOnce = (id: string, seed: number): ReturnType<Target['run']> =>
  targetOf(id).run(chance(seed));

/** Seeds of neighbors lie far apart, since the generator is a plain multiplication. */
const seedOf = (seed: number, i: number): number =>
  (Math.imul(seed ^ (i * 0x9e3779b1), 0x85ebca6b) >>> 1) % 2_147_483_646;

/** Run a chunk. */
export function runChunk({ id, seed, count }: Chunk, heard?: (done: number) => void): Tally {
  const tally: Tally = { id, executions: 0, accepted: 0, slowest: 0, found: 0, written: [] };
  for (let i = 0; i < count; i += 1) {
    const own = seedOf(seed, i);
    const { accepted, ms, objections } = runOnce(id, own);
    tally.executions += 1;
    if (accepted) tally.accepted += 1;
    tally.slowest = Math.max(tally.slowest, ms);
    for (const objection of objections) note(tally, objection, own);
    if (i % 50 === 49) heard?.(i + 1);
  }
  return tally;
}

/** How often each target is run: by its cost, so that each gets alike time, but none less than half a hundredth. */
export function counts(executions: number, ids: readonly string[]): Map<string, number> {
  const chosen = allTargets().filter(({ id }) => ids.includes(id));
  const least = Math.min(Math.ceil(executions / 200), Math.floor(executions / chosen.length));
  const weights = chosen.map(({ cost }) => 1 / cost);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const free = executions - least * chosen.length;
  return new Map(
    chosen.map(({ id }, i) => [id, least + Math.round((free * (weights[i] as number)) / total)]),
  );
}
