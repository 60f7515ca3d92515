/**
 * Numbers and stretches gathered along a line, put in order and forgotten again, line after line.
 *
 * Stretches that overlap are joined without pairing them: where they begin and where they end are put in order
 * each for itself, and after the nth end there is a gap where the next beginning comes later.
 */

/** From one place to another along a line. */
export type Stretch = readonly [from: number, to: number];

/** Up to so many, numbers are put in order faster one by one. */
const FEW = 24;

function insertionSort(values: Float64Array): void {
  for (let i = 1; i < values.length; i += 1) {
    const value = values[i] as number;
    let k = i;
    for (; k > 0 && (values[k - 1] as number) > value; k -= 1) values[k] = values[k - 1] as number;
    values[k] = value;
  }
}

/** A list of numbers that is filled again and again. */
export class Numbers {
  private values = new Float64Array(FEW);
  private size = 0;

  clear(): void {
    this.size = 0;
  }

  add(value: number): void {
    if (this.size === this.values.length) {
      const more = new Float64Array(this.size * 2);
      more.set(this.values);
      this.values = more;
    }
    this.values[this.size] = value;
    this.size += 1;
  }

  /** In rising order; good until the list is filled again. */
  sorted(): Float64Array {
    const values = this.values.subarray(0, this.size);
    if (this.size > FEW) values.sort();
    else insertionSort(values);
    return values;
  }
}

/** A list of stretches that is filled again and again. */
export class Stretches {
  private readonly begins = new Numbers();
  private readonly ends = new Numbers();

  clear(): void {
    this.begins.clear();
    this.ends.clear();
  }

  add(from: number, to: number): void {
    this.begins.add(from);
    this.ends.add(to);
  }

  /**
   * Those that overlap or come together made into one, in rising order.
   *
   * @param steady - what may lie between two that count as coming together
   */
  joined(steady: number): Stretch[] {
    const [begins, ends] = [this.begins.sorted(), this.ends.sorted()];
    const out: Stretch[] = [];
    for (let i = 0; i < begins.length; i += 1) {
      const from = begins[i] as number;
      while (i + 1 < begins.length && (begins[i + 1] as number) <= (ends[i] as number) + steady) i += 1;
      out.push([from, ends[i] as number]);
    }
    return out;
  }
}
