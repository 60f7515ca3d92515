/** Answers put back where they came from, and draws within bounds. */
import { InputError, type Quantity, ratio, solveFor, type Tolerances, tolerances } from '../../../src/index';
import { siOf } from '../../../src/opinion/scale';
import { type Path, put } from '../relations/inputs';
import type { Chance } from '../relations/random';
import { drawnJob, ESTIMATED, type Job, pageOf } from './jobs';
import { placesIn } from './misread';
import { figuresOf } from './notebook';

/** What came of very many. */
export interface Kept {
  readonly tried: number;
  /** Refused with a reason: what does not change, or leaps. */
  readonly refused: number;
  /** Where something was not as it was said to be. */
  readonly objections: readonly string[];
  /** Draws outside of what is said to be no bound, but the least and greatest that were tried. */
  readonly outsideSamples: number;
}

interface Size {
  readonly path: Path;
  readonly at: string;
  readonly number: number;
  readonly unit: string;
}

/** Sizes with one unit. */
const sizesIn = (job: Job): Size[] =>
  placesIn(job.input).flatMap(({ path, at, leaf }) => {
    const [, number, unit] = /^(\d+(?:\.\d+)?) ([A-Za-z]\S*)$/.exec(String(leaf)) ?? [];
    return number && unit && Number(number) > 0 ? [{ path, at, number: Number(number), unit }] : [];
  });

const text = (x: number, unit: string): string => `${Number(x.toPrecision(9))} ${unit}`;

const figuresAt = (job: Job, input: unknown): Map<string, Quantity> => {
  const page = pageOf(job.calculation, input);
  return page ? figuresOf(page.figures) : new Map();
};

interface Case {
  readonly job: Job;
  readonly size: Size;
  readonly figure: string;
  readonly wanted: Quantity;
}

/** A figure that another size gives, to be reached by that size. */
function drawnCase(id: string, chance: Chance): Case | undefined {
  for (let i = 0; i < 30; i++) {
    const job = drawnJob(id, chance);
    const sizes = sizesIn(job);
    if (sizes.length === 0) continue;
    const size = chance.pick(sizes);
    const there = figuresAt(
      job,
      put(job.input, size.path, text(size.number * (0.7 + 0.6 * chance.next()), size.unit)),
    );
    const here = figuresOf(job.page.figures);
    const changed = [...there].filter(([figure, q]) => {
      const own = here.get(figure);
      return own && own.dimension === q.dimension && q.dimension !== 'temperature' && siOf(own) !== siOf(q);
    });
    if (changed.length === 0) continue;
    const [figure, wanted] = chance.pick(changed);
    return { job, size, figure, wanted };
  }
  return undefined;
}

/** A refusal says so; anything else that is thrown is a fault. */
function orRefused<T>(run: () => T): T | InputError {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}

function putBack({ job, size, figure, wanted }: Case): string | 'refused' | undefined {
  const within = wanted.abs().times(ratio('0.1%') as never) as Quantity;
  const finely = siOf(within) > 0 && wanted.dimension !== 'count' && wanted.dimension !== 'money';
  const asked = { input: job.input, vary: size.at, figure, wanted, ...(finely ? { within } : {}) };
  const solved = orRefused(() => solveFor(job.calculation as never, asked as never));
  if (solved instanceof InputError) return 'refused';
  const where = `${job.calculation.id} ${figure} by ${size.at}, wanted ${wanted.format()} in ${JSON.stringify(job.input)}`;
  const back = figuresAt(job, put(job.input, size.path, solved.value)).get(figure);
  if (!back) return `${where}: ${solved.value.format()} is refused`;
  const off = Math.abs(siOf(back) - siOf(wanted));
  const allowed = finely ? siOf(within) : Math.max(siOf(wanted) * 0.05, 1);
  return off <= allowed * 1.0001 ? undefined : `${where}: ${solved.value.format()} gives ${back.format()}`;
}

/** Solve for what gave a figure, and put the answer back. */
export function answersPutBack(count: number, chance: Chance): Kept {
  const objections: string[] = [];
  let [tried, refused] = [0, 0];
  for (let i = 0; tried < count && i < 3 * count; i++) {
    const one = drawnCase(ESTIMATED[(7 * i) % ESTIMATED.length] as string, chance);
    if (!one) continue;
    tried++;
    const said = putBack(one);
    if (said === 'refused') refused++;
    else if (said) objections.push(said);
  }
  return { tried, refused, objections, outsideSamples: 0 };
}

/** Draws for the same bounds. */
const DRAWS = 10;

interface Bounded {
  readonly job: Job;
  readonly sizes: readonly Size[];
  readonly reach: readonly number[];
}

function drawnBounds(id: string, chance: Chance): Bounded | undefined {
  const job = drawnJob(id, chance);
  const sizes = chance
    .shuffled(sizesIn(job).filter(({ unit }) => !/^deg/.test(unit)))
    .slice(0, 1 + chance.below(4));
  if (sizes.length === 0) return undefined;
  return {
    job,
    sizes,
    reach: sizes.map(({ number }) => Number((number * (0.01 + 0.05 * chance.next())).toPrecision(3))),
  };
}

/** A draw within the tolerances; one in three at an end of each. */
function draw({ job, sizes, reach }: Bounded, chance: Chance): Map<string, Quantity> {
  const atEnds = chance.next() < 1 / 3;
  const input = sizes.reduce<unknown>((whole, { path, number, unit }, i) => {
    const share = atEnds ? chance.pick([-1, 1]) : 2 * chance.next() - 1;
    return put(whole, path, text(number + share * (reach[i] ?? 0) * (1 - 1e-9), unit));
  }, job.input);
  return figuresAt(job, input);
}

/** Figures of a draw that are outside of what was said of them. */
function outside(told: Tolerances, drawn: ReadonlyMap<string, Quantity>): Tolerances['figures'][number][] {
  return told.figures.filter(({ figure, low, high }) => {
    const q = drawn.get(figure);
    if (!q || q.dimension !== low.dimension) return false;
    const slack = 1e-8 * Math.max(Math.abs(siOf(low)), Math.abs(siOf(high)));
    return siOf(q) < siOf(low) - slack || siOf(q) > siOf(high) + slack;
  });
}

/** Draws for one set of bounds: what leaves them. */
function drawsOf(one: Bounded, told: Tolerances, chance: Chance): { said: string[]; samples: number } {
  const said: string[] = [];
  let samples = 0;
  for (let n = 0; n < DRAWS; n++) {
    const drawn = draw(one, chance);
    for (const { figure, low, high, bounds } of outside(told, drawn)) {
      if (bounds === 'samples') samples++;
      else
        said.push(
          `${told.id} ${figure} ${drawn.get(figure)?.format()} leaves ${low.format()} to ${high.format()}: ` +
            `${JSON.stringify(one.sizes.map(({ at }, i) => [at, one.reach[i]]))} in ${JSON.stringify(one.job.input)}`,
        );
    }
  }
  return { said, samples };
}

/** Draw measurements within their plus or minus, and see whether any figure leaves its bounds. */
export function drawsWithin(count: number, chance: Chance, ids: readonly string[] = ESTIMATED): Kept {
  const objections: string[] = [];
  let [tried, refused, outsideSamples] = [0, 0, 0];
  for (let i = 0; tried < count && i < 3 * count; i++) {
    const one = drawnBounds(ids[(7 * i) % ids.length] as string, chance);
    if (!one) continue;
    const measures = Object.fromEntries(
      one.sizes.map(({ at, unit }, j) => [at, text(one.reach[j] ?? 0, unit)]),
    );
    const told = orRefused(() =>
      tolerances(one.job.calculation as never, one.job.input as never, measures),
    ) as Tolerances | InputError;
    tried += DRAWS;
    if (told instanceof InputError) {
      refused += DRAWS;
      continue;
    }
    const { said, samples } = drawsOf(one, told, chance);
    objections.push(...said);
    outsideSamples += samples;
  }
  return { tried, refused, objections, outsideSamples };
}
