/** Families of recomputations, each by ways of its own, and trying them on random jobs. */
import { chance } from '../relations/random';
import { BODIES } from './bodies';
import { Site } from './draw';
import { EARTH } from './earth';
import { FLOODS } from './floods';
import { JOINTS, STEEL } from './layouts';
import { NOTATIONS } from './notations';
import { CUTS, GRADES } from './optima';
import { PLANAR } from './planar';
import { RULES } from './rules';
import { SCANS } from './scans';
import type { Compared } from './trial';

/** Recomputations by one way. */
export interface Family {
  readonly name: string;
  /** What is recomputed, by what, and how near it must come. */
  readonly by: string;
  /** Its share of all comparisons, in parts of 400. */
  readonly share: number;
  readonly jobs: readonly ((site: Site) => Compared | Promise<Compared>)[];
}

export const SHARES = 400;

export const FAMILIES: readonly Family[] = [
  {
    name: 'bodies',
    by: 'slabs, steps, footings, walls, piers and curbs, in exact fractions; to 45 digits',
    share: 90,
    jobs: BODIES,
  },
  {
    name: 'earth',
    by: 'orders, bags, base and excavation, in exact fractions; to 45 digits',
    share: 70,
    jobs: EARTH,
  },
  {
    name: 'rules',
    by: 'slopes, level notes, steps, joint spacing, laps, least steel and the like, in exact fractions; to 45 digits',
    share: 80,
    jobs: RULES,
  },
  {
    name: 'notations',
    by: 'one measurement written in up to 13 ways, each read to the very number',
    share: 60,
    jobs: NOTATIONS,
  },
  {
    name: 'plans',
    by: 'areas and moments in whole numbers to 45 digits; bands, margins and validity by jsts to 1e-10',
    share: 50,
    jobs: PLANAR,
  },
  {
    name: 'scans',
    by: 'crowns, sloping pits and probed depths by lines across the plan; to 1e-9, probed depths to 1%',
    share: 10,
    jobs: SCANS,
  },
  {
    name: 'joints',
    by: 'joint plans as faces between lines by the polygonizer of jsts: panels, corners met, rules kept or named',
    share: 8,
    jobs: JOINTS,
  },
  {
    name: 'steel',
    by: 'mats and mesh by distances at points, lines of bar by the clipping of jsts, to the cutting step',
    share: 18,
    jobs: STEEL,
  },
  {
    name: 'grades',
    by: 'forms with the least fill and corrections with the least concrete as programs by HiGHS; to 0.01 mm, 1 cm3',
    share: 8,
    jobs: GRADES,
  },
  {
    name: 'cutting',
    by: 'cutting lists as whole programs over every way to cut a bar by HiGHS: no worse, bound no higher',
    share: 4,
    jobs: CUTS,
  },
  {
    name: 'ponds',
    by: 'ponds and walls that water gets to, flooded on a grid of 100 by 100 cells; to what the cells can tell',
    share: 2,
    jobs: FLOODS,
  },
];

/** Where the two ways differ on purpose. */
export const KNOWN: Readonly<Record<string, string>> = {
  'behind a valley':
    'the program has every facet fall off the wall; the check lets one be whose water a falling valley takes before the wall, so that less is moved',
  'a gap that is told':
    'with several stock lengths the search may end above the least; it says so, with a bound that is never above the least',
};

interface Disagreement {
  /** Of the job: with it and a count of one the job is made again. */
  readonly seed: number;
  readonly said: readonly string[];
  readonly input: unknown;
}

/** What came of one family. */
export interface Tally {
  readonly name: string;
  jobs: number;
  figures: number;
  deviation: number;
  readonly skipped: Map<string, number>;
  readonly known: Map<string, number>;
  readonly disagreements: Disagreement[];
}

const count = (map: Map<string, number>, key: string): void => {
  map.set(key, (map.get(key) ?? 0) + 1);
};

/** One job of a family, by its seed alone. */
async function compareOne({ jobs }: Family, seed: number): Promise<Compared> {
  const dice = chance(seed);
  // Neighboring seeds begin alike.
  for (let k = 0; k < 5; k += 1) dice.next();
  return dice.pick(jobs)(new Site(dice));
}

/** Jobs of a family, one after another; a job that has nothing to compare is made up for. */
export async function compareFamily(family: Family, wanted: number, seed: number): Promise<Tally> {
  const tally: Tally = {
    name: family.name,
    jobs: 0,
    figures: 0,
    deviation: 0,
    skipped: new Map(),
    known: new Map(),
    disagreements: [],
  };
  for (let n = 0; tally.jobs < wanted && n < 4 * wanted; n += 1) {
    const { figures, deviation, input, disagreements, skipped, known } = await compareOne(family, seed + n);
    if (skipped !== undefined) {
      count(tally.skipped, skipped);
      continue;
    }
    tally.jobs += 1;
    tally.figures += figures;
    tally.deviation = Math.max(tally.deviation, deviation);
    for (const name of known ?? []) count(tally.known, name);
    if (disagreements.length > 0) tally.disagreements.push({ seed: seed + n, said: disagreements, input });
  }
  return tally;
}
