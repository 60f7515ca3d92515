/**
 * Jobs one after another in one process, and what of the heap is in use after each hundred: it must not grow.
 *
 *     npm run job-memory -- [jobs]
 */
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
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

const HUNDRED = 100;
/** What is made at first use stays: growth is counted from here. */
const WARM = 200;
const MOST = 2;

const seen: number[] = [];
let job = reckonJob(jobNumber(0));
for (let n = 1; n <= jobs; n += 1) {
  // Every other one is an edit of the one before, which must let go of it.
  job = reckonJob(jobNumber(n), n % 2 === 0 ? { from: job } : {});
  if (n % HUNDRED !== 0) continue;
  seen.push(inUse());
  console.log(`${String(n).padStart(6)} jobs  ${seen.at(-1)?.toFixed(1)} MB`);
}
const from = seen[WARM / HUNDRED - 1] ?? seen[0] ?? 0;
const grown = (seen.at(-1) ?? 0) - from;
console.log(`grown by ${grown.toFixed(1)} MB since ${WARM} jobs`);
if (grown > MOST) process.exitCode = 1;
