/** Ways to cut a bar, listed by plain recursion, and cutting lists as whole programs for HiGHS. */
import type highsLoader from 'highs';

export type Highs = Awaited<ReturnType<typeof highsLoader>>;

export interface CutList {
  readonly stock: number;
  readonly pieces: readonly (readonly [length: number, count: number])[];
}

/** Every maximal pattern. With a kerf each piece takes that more, and so has the bar. */
export function allPatterns({ stock, pieces }: CutList, kerf = 0): number[][] {
  const out: number[][] = [];
  const go = (i: number, room: number, taken: number[]): void => {
    const [l] = pieces[i] ?? [0];
    if (i === pieces.length) {
      if (pieces.every(([length]) => length + kerf > room)) out.push(taken);
      return;
    }
    for (let n = Math.floor(room / (l + kerf) + 1e-9); n >= 0; n -= 1)
      go(i + 1, room - n * (l + kerf), [...taken, n]);
  };
  go(0, stock + kerf, []);
  return out;
}

/** The least that bars cut in these ways cost, in whole bars or in parts of them. */
export function leastCut(
  highs: Highs,
  counts: readonly number[],
  columns: readonly (readonly number[])[],
  costs: readonly number[],
  whole: boolean,
): number {
  const names = columns.map((_, k) => `x${k}`);
  const rows = counts.map(
    (d, i) =>
      ` r${i}: ${columns.flatMap((p, k) => ((p[i] as number) > 0 ? [`${p[i]} x${k}`] : [])).join(' + ')} >= ${d}`,
  );
  const aim = names.map((name, k) => `${costs[k]} ${name}`).join(' + ');
  const text = `Minimize\n obj: ${aim}\nSubject To\n${rows.join('\n')}\n${whole ? `General\n ${names.join(' ')}\n` : ''}End`;
  const { Status, ObjectiveValue } = highs.solve(text, { mip_rel_gap: 0 });
  if (Status !== 'Optimal') throw new Error(`HiGHS says ${Status}`);
  return ObjectiveValue;
}
