/** Trying the relations on inputs varied from the vectors, and counting. */
import { calculations as catalog } from '../../../src/catalog/all';
import { goodInputs } from '../inputs';
import { varied } from './inputs';
import { chance } from './random';
import { RELATIONS, type Relation } from './relations';
import type { AnyResult } from './results';

/** What came of it for one calculation. */
export interface Tally {
  readonly id: string;
  /** Inputs tried. */
  tried: number;
  /** Of these accepted. */
  accepted: number;
  /** Pairs compared, by relation. */
  readonly compared: Map<string, number>;
  readonly objections: Objection[];
}

interface Objection {
  readonly id: string;
  readonly relation: string;
  readonly said: string;
  readonly input: unknown;
  readonly other: unknown;
}

type Attempt = (input: unknown) => { ok: true; result: AnyResult } | { ok: false; error: Error };

/** An attempt never throws; where it does all the same, the input that made it is wanted. */
function attempted(attempt: Attempt, input: unknown): ReturnType<Attempt> | { readonly threw: string } {
  try {
    return attempt(input);
  } catch (error) {
    return { threw: `threw ${String(error)}` };
  }
}

function tryRelation(
  relation: Relation,
  attempt: Attempt,
  input: unknown,
  result: AnyResult,
  tally: Tally,
  dice: ReturnType<typeof chance>,
): void {
  const { id } = tally;
  const other = relation.other(id, input, dice);
  if (other === undefined) return;
  tally.compared.set(relation.name, (tally.compared.get(relation.name) ?? 0) + 1);
  const second = attempted(attempt, other);
  const said =
    'threw' in second
      ? second.threw
      : second.ok
        ? relation.objection(id, result, second.result, [input, other])
        : relation.sameJob
          ? `refused: ${second.error.message}`
          : undefined;
  if (said) tally.objections.push({ id, relation: relation.name, said, input, other });
}

/** Try every relation on `count` accepted inputs of one calculation. */
export function tryRelations(id: string, count: number, seed: number): Tally {
  const dice = chance(seed);
  const entry = catalog.find((c) => c.id === id);
  const attempt = (entry as unknown as { attempt: Attempt }).attempt;
  const goods = goodInputs.get(id) ?? [];
  const tally: Tally = { id, tried: 0, accepted: 0, compared: new Map(), objections: [] };
  while (tally.accepted < count && tally.tried < 10 * count) {
    tally.tried += 1;
    const input = varied(dice.pick(goods), dice);
    const first = attempted(attempt, input);
    if ('threw' in first) {
      tally.objections.push({ id, relation: 'throws nothing', said: first.threw, input, other: undefined });
      continue;
    }
    if (!first.ok) continue;
    tally.accepted += 1;
    for (const relation of RELATIONS) tryRelation(relation, attempt, input, first.result, tally, dice);
  }
  return tally;
}
