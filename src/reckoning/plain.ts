/**
 * A plain copy of whatever came in.
 *
 * Getters, proxies, cycles and inherited properties are all met here, once: behind this door there
 * is only plain data of bounded size, so nothing later can throw or hang because of the input's
 * nature. Copies have no prototype, so a key such as `__proto__` is a key like any other.
 */

import * as sharedFaults from '../quantity/faults';
import { type Fault, fail } from '../quantity/input-error';
import { isQuantity } from '../quantity/quantity';
import * as faults from './faults';

const DEPTH_LIMIT = 16;
const NODE_LIMIT = 2_000_000;
/** Reading a text takes longer than copying it. */
const TEXTS_LIMIT = 100_000;

/** Our own refusals, known by identity: `instanceof` would run code of a hostile thrown object. */
const refusals = new WeakSet<Refusal>();

class Refusal {
  constructor(readonly fault: Fault) {
    refusals.add(this);
  }
}

/** Counts what has been copied so far. */
interface Tally {
  nodes: number;
  texts: number;
}

function copy(value: unknown, depth: number, tally: Tally): unknown {
  if (typeof value === 'string') countText(tally);
  if (typeof value !== 'object' || value === null) return value;
  if (isQuantity(value)) return value;
  if (depth > DEPTH_LIMIT) throw new Refusal(faults.tooDeep());
  if (Array.isArray(value)) return copyList(value, depth, tally);
  const out = Object.create(null) as Record<string, unknown>;
  for (const key of Object.keys(value)) {
    count(tally);
    out[key] = copy((value as Record<string, unknown>)[key], depth + 1, tally);
  }
  return out;
}

function copyList(list: readonly unknown[], depth: number, tally: Tally): unknown[] {
  const out: unknown[] = [];
  for (let i = 0; i < list.length; i += 1) {
    count(tally);
    out.push(copy(list[i], depth + 1, tally));
  }
  return out;
}

function count(tally: Tally): void {
  tally.nodes += 1;
  if (tally.nodes > NODE_LIMIT) throw new Refusal(sharedFaults.tooMany('the input', NODE_LIMIT));
}

function countText(tally: Tally): void {
  tally.texts += 1;
  if (tally.texts > TEXTS_LIMIT) throw new Refusal(sharedFaults.tooMany('the input in texts', TEXTS_LIMIT));
}

const isRefusal = (error: unknown): error is Refusal => refusals.has(error as Refusal);

/**
 * Copy an input into plain data.
 *
 * @throws {InputError} `too-deep`, `too-many`, `unreadable-input`
 */
export function plainCopy(input: unknown): unknown {
  try {
    return copy(input, 0, { nodes: 0, texts: 0 });
  } catch (error) {
    // What a hostile getter throws may itself be hostile, so it is not looked into.
    return fail(isRefusal(error) ? error.fault : faults.unreadableInput());
  }
}
