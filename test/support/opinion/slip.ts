/** A slip as it was made: by its maker's name, and under which codes it goes. */
import type { SlipCode } from '../../../src/index';
import type { Chance } from '../relations/random';
import type { Job } from './jobs';
import type { Otherwise } from './notebook';

export interface Made {
  /** What its maker calls it. */
  readonly name: string;
  /** The codes that name it rightly. */
  readonly codes: readonly SlipCode[];
  /** Where: a path of the input, a step, or a figure. */
  readonly input?: string;
  readonly step?: number;
  readonly figure?: string;
  /** What was taken for the input. */
  readonly taken?: unknown;
  /** What was reckoned otherwise. */
  readonly otherwise?: Otherwise;
  /** What was written down for the figure. */
  readonly written?: (si: number) => number;
  /** Lists have another length after it. */
  readonly lists?: boolean;
}

/** One kind of slip, which can be made in several places. */
export interface Kind {
  /** How often it is drawn, beside the others. */
  readonly weight: number;
  readonly made: (job: Job, chance: Chance) => readonly Made[];
}
