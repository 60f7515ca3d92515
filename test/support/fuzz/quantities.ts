/**
 * Quantities and results as something to be fuzzed: arithmetic with anything, shown with any options, and
 * results read back from JSON that was spoilt on its way. Nothing but InputError may be thrown.
 */
import { calculations as catalog } from '../../../src/catalog/all';
import { InputError, revive } from '../../../src/index';
import { money } from '../../../src/quantity/money';
import { isQuantity, type Quantity } from '../../../src/quantity/quantity';
import { isFaulty, readQuantity } from '../../../src/quantity/read-quantity';
import { unitsOf } from '../../../src/quantity/units';
import { worksheet } from '../../../src/report/text-sheet';
import type { Chance } from '../relations/random';
import { someHand, written } from './notation';
import { poolFor } from './pools';
import { described, refusalObjections } from './refusals';
import type { AnyResult } from './results';
import { someHostile, spoilt } from './spoil';
import { type Objection, type Outcome, type Target, timed } from './target';
import { MEASURED } from './units';

const someMoney = (dice: Chance): Quantity => money(`${dice.below(1000)} ${dice.pick(['USD', 'EUR'])}`);

function someQuantity(dice: Chance, like?: Quantity): Quantity {
  if (like ? like.dimension === 'money' : dice.below(12) === 0) return someMoney(dice);
  const d = MEASURED.find((known) => known === like?.dimension) ?? dice.pick(MEASURED);
  const size = d === 'temperature' ? dice.below(100) : 10 ** (dice.below(13) - 6) * (dice.below(4) - 1);
  const q = readQuantity(written(d, size, someHand(dice), dice), d, 'it');
  return isFaulty(q) ? someQuantity(dice, like) : q;
}

const METHODS = [
  'plus',
  'minus',
  'times',
  'over',
  'upTo',
  'downTo',
  'compareTo',
  'lessThan',
  'equals',
] as const;
const SHOWN = ['format', 'in', 'toNumber'] as const;
const UNIT_NAMES = [
  'ft',
  'ft-in',
  'm',
  'in',
  '%',
  '1:n',
  ':1',
  'yd3',
  'degC',
  'USD',
  'constructor',
  '__proto__',
  '',
];

type Anything = Record<string, (...given: unknown[]) => unknown>;

function someOptions(dice: Chance): unknown {
  const roll = dice.below(6);
  if (roll === 0) return someHostile(dice);
  if (roll < 4) return { places: dice.below(20) };
  return {
    places: dice.pick([0, 3, 60, 61, -1, 0.5, someHostile(dice)]),
    denominator: dice.pick([16, 3, '8']),
  };
}

function operated(dice: Chance): { readonly what: string; readonly run: () => unknown } {
  const q = someQuantity(dice);
  const open = q as unknown as Anything;
  if (dice.below(2) === 0) {
    const method = dice.pick(METHODS);
    const other =
      dice.below(8) === 0 ? someHostile(dice) : someQuantity(dice, dice.below(3) > 0 ? q : undefined);
    const name = isQuantity(other) ? String(other) : typeof other;
    return { what: `${q}.${method}(${name})`, run: () => open[method]?.(other) };
  }
  const method = dice.pick(SHOWN);
  const known = q.dimension === 'money' ? ['USD'] : unitsOf(q.dimension);
  const unit = dice.below(5) === 0 ? someHostile(dice) : dice.pick(dice.below(3) === 0 ? UNIT_NAMES : known);
  const given = method === 'format' ? [unit, someOptions(dice)] : [unit];
  return {
    what: `${q}.${method}(${typeof unit === 'string' ? unit.slice(0, 20) : typeof unit})`,
    run: () => open[method]?.(...given),
  };
}

/** What is wrong with what came out of an operation, or nothing. */
function badResult(value: unknown): string | undefined {
  if (isQuantity(value)) {
    const exact = value.toString();
    const text = `${exact} ${value.format()}`;
    if (/NaN|Infinity|undefined/.test(text)) return `comes to ${text}`;
    const back = value.dimension === 'money' ? money(exact) : readQuantity(exact, value.dimension, 'it');
    return isFaulty(back) || !back.equals(value) ? `comes to ${exact}, which does not read back` : undefined;
  }
  if (typeof value === 'string')
    return /NaN|Infinity|undefined/.test(value) ? `comes to ${value}` : undefined;
  return undefined;
}

function operationRun(dice: Chance): Outcome {
  const { what, run } = operated(dice);
  try {
    const { value, ms } = timed(run);
    const said = badResult(value);
    return { accepted: true, ms, objections: said ? [{ said: said, input: what }] : [] };
  } catch (error) {
    const found = refusalObjections(error, {}).filter((said) => !said.includes(' at , '));
    return { accepted: false, ms: 0, objections: found.map((said): Objection => ({ said, input: what })) };
  }
}

const jsons = new Map<string, unknown>();

/** The JSON of a result of one vector. */
function someJson(dice: Chance): unknown {
  const entry = dice.pick(catalog);
  const pool = poolFor(entry.id).accepted;
  const i = dice.below(Math.min(4, pool.length));
  const key = `${entry.id} ${i}`;
  if (!jsons.has(key)) {
    const attempt = entry.attempt(pool[i]) as { readonly result?: AnyResult };
    jsons.set(key, JSON.parse(JSON.stringify(attempt.result ?? null)));
  }
  return jsons.get(key);
}

function revivalRun(dice: Chance): Outcome {
  const json = someJson(dice);
  const input = dice.below(3) === 0 ? json : spoilt(json, dice);
  try {
    const { value: result, ms } = timed(() => revive(input));
    const text = JSON.stringify(result);
    const again = JSON.stringify(revive(text));
    const sheet = 'figures' in result ? worksheet(result) : String(result);
    const bad = again === text ? undefined : 'read back once more, it differs';
    const nonsense = sheet.includes('[object') ? 'prints nonsense' : undefined;
    const objections = [bad, nonsense].filter((said) => said !== undefined).map((said) => ({ said, input }));
    return { accepted: true, ms, objections };
  } catch (error) {
    const said = refusalObjections(error, input);
    return { accepted: false, ms: 0, objections: said.map((text): Objection => ({ said: text, input })) };
  }
}

function guarded(id: string, cost: number, run: (dice: Chance) => Outcome): Target {
  return {
    id,
    cost,
    run: (dice) => {
      try {
        return run(dice);
      } catch (error) {
        const said = error instanceof InputError ? `let out: ${error.message}` : `threw ${described(error)}`;
        return { accepted: false, ms: 0, objections: [{ said, input: id }] };
      }
    },
  };
}

export const quantityTargets = (): Target[] => [
  guarded('operations', 0.5, operationRun),
  guarded('revival', 2, revivalRun),
];
