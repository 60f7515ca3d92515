/**
 * What a search may run: so many times the calculation itself, and not more than so many cells of the long searches that
 * some of them make. Where the work of one run is all that is allowed, nothing more is run after it.
 */
import { effort } from '../quantity/effort';

/** What is refused at the door costs little. */
const REFUSED = 0.25;

export class Budget {
  private runs: number;
  private work: number;

  constructor(
    private readonly mostRuns: number,
    private readonly mostWork: number,
  ) {
    this.runs = mostRuns;
    this.work = mostWork;
  }

  get spent(): boolean {
    return this.runs <= 0 || this.work <= 0;
  }

  /** The share that is left of what was allowed. */
  get left(): number {
    return Math.max(0, Math.min(this.runs / this.mostRuns, this.work / this.mostWork));
  }

  /** A share more than was allowed. */
  more(share: number): void {
    this.runs += Math.ceil(share * this.mostRuns);
    this.work += share * this.mostWork;
  }

  /** Run it, if anything may still be run. */
  run<T>(one: () => T): T | undefined {
    if (this.spent) return undefined;
    const before = effort.spent;
    const found = one();
    this.runs -= found === undefined ? REFUSED : 1;
    this.work -= effort.spent - before;
    return found;
  }
}
