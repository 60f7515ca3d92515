/** HiGHS as a second opinion on linear programs. */
import loadHighs from 'highs';

/** A condition `least ≤ Σ weights × variables ≤ most`. */
export interface OracleRow {
  readonly weights: Readonly<Record<string, number>>;
  readonly least?: number;
  readonly most?: number;
}

/** What the solver found. */
export interface OracleAnswer {
  readonly status: string;
  readonly objective: number;
  readonly values: Readonly<Record<string, number>>;
  /** Objective of the dual: equal to the primal at the optimum. */
  readonly dual: number;
}

const term = ([name, weight]: readonly [string, number]): string =>
  `${weight < 0 ? '-' : '+'} ${Math.abs(weight).toFixed(12)} ${name}`;

const sum = (weights: Readonly<Record<string, number>>): string =>
  Object.entries(weights).map(term).join(' ') || '+ 0 zero';

/** Load the solver once; the function minimizes. */
export async function oracle(): Promise<
  (
    aim: Readonly<Record<string, number>>,
    rows: readonly OracleRow[],
    free: ReadonlySet<string>,
  ) => OracleAnswer
> {
  const highs = await loadHighs();
  return (aim, rows, free) => {
    const lines: string[] = [];
    const right: number[] = [];
    for (const { weights, least, most } of rows) {
      if (least !== undefined) {
        lines.push(` r${right.length}: ${sum(weights)} >= ${least.toFixed(12)}`);
        right.push(least);
      }
      if (most !== undefined) {
        lines.push(` r${right.length}: ${sum(weights)} <= ${most.toFixed(12)}`);
        right.push(most);
      }
    }
    const bounds = [...free].map((name) => ` ${name} free`).join('\n');
    const text = `Minimize\n obj: ${sum(aim)}\nSubject To\n${lines.join('\n')}\nBounds\n zero = 0\n${bounds}\nEnd\n`;
    const answer = highs.solve(text);
    const values = Object.fromEntries(
      Object.entries(answer.Columns).map(([name, column]) => [name, 'Primal' in column ? column.Primal : 0]),
    );
    const dual = answer.Rows.reduce(
      (total, row, i) => total + ('Dual' in row ? (row.Dual ?? 0) * (right[i] ?? 0) : 0),
      0,
    );
    return { status: answer.Status, objective: answer.ObjectiveValue, values, dual };
  };
}
