/** A heap: the item of least cost comes out first; of equal cost, the one put in first. */

interface Entry<T> {
  readonly item: T;
  readonly cost: number;
  readonly turn: number;
}

/** Order of two costs, infinite ones being equal. */
export function compareCosts(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}

const before = <T>(a: Entry<T>, b: Entry<T>): boolean =>
  a.cost < b.cost || (a.cost === b.cost && a.turn < b.turn);

/** A binary heap. */
export class Heap<T> {
  private readonly entries: Entry<T>[] = [];
  private readonly costOf: (item: T) => number;
  private ownTurn = 0;

  constructor(costOf: (item: T) => number) {
    this.costOf = costOf;
  }

  push(item: T): void {
    const entries = this.entries;
    this.ownTurn += 1;
    const entry = { item, cost: this.costOf(item), turn: this.ownTurn };
    let i = entries.length;
    entries.push(entry);
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (!before(entry, entries[up] as Entry<T>)) break;
      entries[i] = entries[up] as Entry<T>;
      i = up;
    }
    entries[i] = entry;
  }

  pop(): T | undefined {
    const entries = this.entries;
    const top = entries[0];
    const last = entries.pop();
    if (!top || !last || entries.length === 0) return top?.item;
    this.sink(last);
    return top.item;
  }

  private sink(entry: Entry<T>): void {
    const entries = this.entries;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= entries.length) break;
      if (down + 1 < entries.length && before(entries[down + 1] as Entry<T>, entries[down] as Entry<T>))
        down += 1;
      if (!before(entries[down] as Entry<T>, entry)) break;
      entries[i] = entries[down] as Entry<T>;
      i = down;
    }
    entries[i] = entry;
  }
}
