/** Times our work and its peers in one run, and prints the ratios, which travel between machines. */
import { readdirSync } from 'node:fs';
import { Bench } from 'tinybench';
import type { Case } from './bench/case';

interface Suite {
  readonly cases: readonly Case[];
  readonly ratios?: readonly (readonly [string, string, string])[];
}

const folder = new URL('bench/', import.meta.url);
const names = readdirSync(folder).filter((f) => f !== 'case.ts');
const wanted = process.argv.slice(2);

for (const name of names.filter((f) => wanted.length === 0 || wanted.includes(f.replace('.ts', '')))) {
  const suite = (await import(new URL(name, folder).href)) as Suite;
  const bench = new Bench({ time: 800, warmupTime: 200, iterations: 3, warmupIterations: 1 });
  for (const { name: what, run } of suite.cases) bench.add(what, run);
  await bench.run();
  const micro = new Map<string, number>();
  console.log(`\n${name.replace('.ts', '')}`);
  for (const task of bench.tasks) {
    const { result } = task;
    if (result.state !== 'completed') throw new Error(`${task.name}: ${result.state}`);
    micro.set(task.name, result.latency.p50 * 1000);
    console.log(`  ${(result.latency.p50 * 1000).toFixed(2).padStart(12)} µs  ${task.name}`);
  }
  for (const [slow, fast, what] of suite.ratios ?? []) {
    const [a, b] = [micro.get(slow), micro.get(fast)];
    if (a === undefined || b === undefined) throw new Error(`no case ${a === undefined ? slow : fast}`);
    console.log(`  ${(a / b).toFixed(2).padStart(12)} ×   ${what}`);
  }
}
