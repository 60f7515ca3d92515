/** What is fuzzed: one thing with a door, tried once with dice. */
import type { Chance } from '../relations/random';

/** Something wrong, with what brought it about. */
export interface Objection {
  readonly said: string;
  readonly input: unknown;
}

/** What came of one execution. */
export interface Outcome {
  readonly accepted: boolean;
  /** CPU time of the call itself, in milliseconds. */
  readonly ms: number;
  readonly objections: readonly Objection[];
}

export interface Target {
  readonly id: string;
  /** Milliseconds that one execution takes with all that is looked at, about: dear ones are tried less often. */
  readonly cost: number;
  run(dice: Chance): Outcome;
}

/** CPU time of this process in milliseconds. */
function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export const SLOW = 1000;

/** Run it and take its CPU time; what takes over a second is run once more to be sure. */
export function timed<T>(run: () => T): { readonly value: T; readonly ms: number } {
  const start = cpu();
  const value = run();
  const ms = cpu() - start;
  if (ms <= SLOW) return { value, ms };
  const again = cpu();
  run();
  return { value, ms: Math.min(ms, cpu() - again) };
}
