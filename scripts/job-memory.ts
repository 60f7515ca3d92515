/**
 * Jobs one after another in one process, and what of the heap is in use after each hundred: nothing of them may stay.
 *
 * The engine goes on compiling what has become hot for thousands of jobs, and keeps that code in the same heap. So
 * what grows is told by kind, from snapshots of the heap: data (objects, lists, texts, closures) must be flat; code of
 * the engine is told beside it.
 *
 *     npm run job-memory -- [jobs]
 */
import { readFileSync } from 'node:fs';
import { text } from 'node:stream/consumers';
import { getHeapSnapshot, setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { type JobInput, reckonJob } from '../src/index';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

const jobs = Number(process.argv[2] ?? 1000);
const yards = ['rear-yard', 'rear-yard-metric'].map(
  (file) => JSON.parse(readFileSync(new URL(`demo/${file}.json`, import.meta.url), 'utf8')) as JobInput,
);

/** No two alike, so that nothing is remembered of the one before. */
const jobNumber = (n: number): JobInput => {
  const yard = yards[n % yards.length] as JobInput;
  const allowance = `${5 + (n % 997) / 1000}%`;
  return { ...yard, name: `${yard.name} ${n}`, shared: { ...yard.shared, allowance } };
};

const inUse = (): number => {
  collect();
  return process.memoryUsage().heapUsed / 2 ** 20;
};

interface Snapshot {
  readonly snapshot: {
    readonly meta: {
      readonly node_fields: readonly string[];
      readonly node_types: readonly [readonly string[]];
    };
  };
  readonly nodes: readonly number[];
}

interface Held {
  readonly data: number;
  /** Compiled code with what belongs to it, and what the engine itself keeps. */
  readonly engine: number;
}

const ENGINE: ReadonlySet<string | undefined> = new Set([
  'code',
  'hidden',
  'native',
  'object shape',
  'synthetic',
]);

/** What the heap holds, in MB. */
async function held(): Promise<Held> {
  collect();
  const { snapshot, nodes } = JSON.parse(await text(getHeapSnapshot())) as Snapshot;
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [kind, size] = ['type', 'self_size'].map((name) => fields.indexOf(name)) as [number, number];
  const sums = { data: 0, engine: 0 };
  for (let at = 0; at < nodes.length; at += fields.length) {
    const of = ENGINE.has(types[0][nodes[at + kind] as number]) ? 'engine' : 'data';
    sums[of] += (nodes[at + size] as number) / 2 ** 20;
  }
  return sums;
}

const HUNDRED = 100;
/** What is made at first use stays: growth is counted from here. */
const WARM = 200;
/** Of data, in MB: one of these jobs, kept, is three times that. */
const MOST = 0.1;

if (!(jobs > WARM)) throw new Error(`needs more than ${WARM} jobs`);
let before: Held | undefined;
let job = reckonJob(jobNumber(0));
for (let n = 1; n <= jobs; n += 1) {
  // Every other one is an edit of the one before, which must let go of it.
  job = reckonJob(jobNumber(n), n % 2 === 0 ? { from: job } : {});
  if (n % HUNDRED === 0) console.log(`${String(n).padStart(6)} jobs  ${inUse().toFixed(1)} MB`);
  if (n === WARM) before = await held();
}
const after = await held();
const grown = (of: keyof Held): number => after[of] - (before as Held)[of];
console.log(`grown since ${WARM} jobs: data by ${grown('data').toFixed(3)} MB of ${after.data.toFixed(1)}`);
console.log(
  `compiled code and the engine's own by ${grown('engine').toFixed(1)} MB of ${after.engine.toFixed(1)}`,
);
if (grown('data') > MOST) process.exitCode = 1;
