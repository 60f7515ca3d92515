/**
 * One list of assumptions and one of cautions for a whole job, out of those of its parts.
 *
 * What several elements assume alike is listed once, where the job could share it. A caution that holds for every
 * job of its kind is said once; others stand where they apply.
 */
import { keyOnce } from '../quantity/amount-key';
import type { Assumption, Caution } from '../reckoning/result';
import type { WorkedPart } from './work';

/** A default with the part that it was used in. */
interface Used {
  readonly assumption: Assumption;
  readonly part: WorkedPart;
}

/** Results are kept from one job to the next, and so are the keys of what stands in them. */
const usedKey = ({ assumption, part }: Used): string =>
  `${part.day ?? ''}\n${part.part}\n${keyOnce(assumption, ({ name, value, because }) => [name, value, because])}`;

const cautionKey = (caution: Caution): string =>
  keyOnce(caution, ({ code, says, params, input }) => [code, says, params, input]);

/** Assumed in one element, it is named there; in several alike, where they could share it. */
export function assumptionsOf(parts: readonly WorkedPart[]): Assumption[] {
  const byKey = new Map<string, Used[]>();
  for (const part of parts) {
    for (const assumption of part.result.assumed) {
      const key = usedKey({ assumption, part });
      byKey.set(key, [...(byKey.get(key) ?? []), { assumption, part }]);
    }
  }
  return [...byKey.values()].map((used) => {
    const { assumption, part } = used[0] as Used;
    const shared = used.length > 1 && part.element !== undefined;
    return {
      ...assumption,
      name: shared ? `shared.${part.part}.${assumption.name}` : part.place(assumption.name),
    };
  });
}

/** Those that hold for all jobs once each, the rest where they apply. */
export function cautionsOf(parts: readonly WorkedPart[]): Caution[] {
  const said = new Set<string>();
  return parts.flatMap((part) =>
    part.result.cautions.flatMap((caution) => {
      const { code, says, always, input } = caution;
      const where = `${part.element ?? ''}\n${part.day ?? ''}`;
      const key = always ? `${code} ${says}` : `${where}\n${cautionKey(caution)}`;
      if (said.has(key)) return [];
      said.add(key);
      return [always ? caution : { ...caution, input: part.place(input ?? '') }];
    }),
  );
}
