/**
 * Fuzzes every calculation with made, changed and spoilt inputs, and prints what came of it.
 *
 *     npm run fuzz -- [executions, 1000000] [seed, 20261127] [calculation] [--workers 2] [--out findings.json]
 *
 * The same seed makes the same run, whatever the number of workers. Each finding has the seed of its own
 * execution: `npm run fuzz -- --once <seed> <calculation>` makes it again. Exit code 1 where anything was found.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import {
  allTargets,
  type Chunk,
  counts,
  runChunk,
  runOnce,
  type Tally,
  type Written,
} from '../test/support/fuzz/run';

/** What a worker says: how far it is, or what came of a chunk with the memory in use after a collection. */
type Word = { readonly done: number } | { readonly tally: Tally; readonly heap: number };

const CHUNK = 500;

function heap(): number {
  (globalThis as { gc?: () => void }).gc?.();
  return process.memoryUsage().heapUsed;
}

function work(): void {
  const say = (word: Word): void => {
    process.send?.(word);
  };
  process.on('message', (chunk: Chunk) => {
    const tally = runChunk(chunk, (done) => say({ done }));
    say({ tally, heap: heap() });
  });
}

/** Dear targets first and in small pieces, so that the workers end together. */
function chunksOf(shares: ReadonlyMap<string, number>, seed: number): Chunk[] {
  const order = allTargets().map(({ id, cost }, t) => ({ id, cost, t }));
  order.sort((a, b) => b.cost - a.cost);
  return order.flatMap(({ id, t }) => {
    const all = shares.get(id) ?? 0;
    return Array.from({ length: Math.ceil(all / CHUNK) }, (_, i) => ({
      id,
      seed: (seed + 7919 * i + 104_729 * t) % 2_147_483_647,
      count: Math.min(CHUNK, all - i * CHUNK),
    }));
  });
}

/** Longest that a chunk may go without a word before its worker is taken for hung. */
const SILENCE = 240_000;

class Run {
  readonly tallies = new Map<string, Tally>();
  readonly heaps: { readonly worker: number; readonly heap: number }[] = [];
  private readonly left: Chunk[];

  constructor(
    chunks: readonly Chunk[],
    private readonly finished: () => void,
  ) {
    this.left = [...chunks].reverse();
  }

  private active = 0;

  start(worker: number): void {
    const child = fork(fileURLToPath(import.meta.url), ['--worker'], {
      execArgv: ['--import', 'tsx', '--expose-gc', '--max-old-space-size=4096'],
    });
    this.active += 1;
    this.serve(child, worker);
  }

  private serve(child: ChildProcess, worker: number): void {
    let chunk = this.left.pop();
    let done = 0;
    const hung = (): void => {
      child.kill('SIGKILL');
    };
    let watch = setTimeout(hung, SILENCE);
    const next = (): void => {
      if (chunk) child.send(chunk);
      else child.disconnect();
    };
    child.on('message', (word: Word) => {
      clearTimeout(watch);
      watch = setTimeout(hung, SILENCE);
      if ('done' in word) done = word.done;
      else {
        this.add(word.tally);
        this.heaps.push({ worker, heap: word.heap });
        [chunk, done] = [this.left.pop(), 0];
        next();
      }
    });
    child.on('exit', (code, signal) => {
      clearTimeout(watch);
      this.active -= 1;
      if (chunk) {
        this.add(lost(chunk, done, String(signal ?? code)));
        this.start(worker);
      } else if (this.active === 0) this.finished();
    });
    next();
  }

  private add(part: Tally): void {
    const all = this.tallies.get(part.id);
    if (!all) {
      this.tallies.set(part.id, part);
      return;
    }
    all.executions += part.executions;
    all.accepted += part.accepted;
    all.found += part.found;
    all.slowest = Math.max(all.slowest, part.slowest);
    all.written.push(...part.written);
  }
}

/** A chunk whose worker died or hung is a finding too. */
function lost({ id, seed }: Chunk, done: number, how: string): Tally {
  const said = `the worker ended (${how}) after ${done} executions of the chunk ${seed}`;
  const written = [{ said, kind: 'the worker ended', input: '', seed }];
  return { id, executions: done, accepted: 0, slowest: 0, found: 1, written };
}

function byKind(written: readonly Written[]): Map<string, Written[]> {
  const kinds = new Map<string, Written[]>();
  for (const w of written) kinds.set(w.kind, [...(kinds.get(w.kind) ?? []), w]);
  return kinds;
}

const EXAMPLES = 5;

const percent = (part: number, all: number): string => `${((100 * part) / Math.max(1, all)).toFixed(0)}%`;

function printTally({ id, executions, accepted, slowest, found, written }: Tally): void {
  const share = percent(accepted, executions);
  console.log(
    `${id.padEnd(20)} ${String(executions).padStart(7)} executions, ${share.padStart(4)} accepted, ` +
      `slowest ${slowest.toFixed(0).padStart(5)} ms, ${found} findings`,
  );
  for (const [, examples] of byKind(written))
    for (const { said, seed } of examples.slice(0, 2))
      console.log(`    ${said.slice(0, 240)} [seed ${seed}]`);
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

function printMemory(heaps: Run['heaps']): void {
  for (const worker of new Set(heaps.map((h) => h.worker))) {
    const own = heaps.filter((h) => h.worker === worker).map((h) => h.heap);
    const [start, middle, end] = [own[0], own[Math.floor(own.length / 2)], own.at(-1)] as number[];
    console.log(
      `worker ${worker}: heap in use after a collection ${megabytes(start as number)} at the start, ` +
        `${megabytes(middle as number)} in the middle, ${megabytes(end as number)} at the end`,
    );
  }
}

function printed(run: Run, out: string | undefined, started: number): void {
  const tallies = allTargets().flatMap(({ id }) => run.tallies.get(id) ?? []);
  for (const tally of tallies) printTally(tally);
  const sum = (of: (t: Tally) => number): number => tallies.reduce((all, t) => all + of(t), 0);
  const [executions, accepted, found] = [
    sum((t) => t.executions),
    sum((t) => t.accepted),
    sum((t) => t.found),
  ];
  const minutes = ((Date.now() - started) / 60_000).toFixed(1);
  console.log(
    `\n${executions} executions, ${accepted} accepted (${percent(accepted, executions)}), ` +
      `${found} findings, slowest ${Math.max(...tallies.map((t) => t.slowest)).toFixed(0)} ms, ${minutes} min`,
  );
  printMemory(run.heaps);
  if (out) {
    const all = tallies.flatMap(({ id, written }) =>
      [...byKind(written).values()].flatMap((w) => w.slice(0, EXAMPLES).map((x) => ({ id, ...x }))),
    );
    writeFileSync(out, `${JSON.stringify(all, undefined, 2)}\n`);
  }
  process.exitCode = found > 0 ? 1 : 0;
}

function main(): void {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      worker: { type: 'boolean' },
      workers: { type: 'string', default: '2' },
      out: { type: 'string' },
      once: { type: 'string' },
    },
  });
  if (values.worker) {
    work();
    return;
  }
  if (values.once) {
    const { accepted, ms, objections } = runOnce(positionals[0] ?? '', Number(values.once));
    console.log(accepted ? 'accepted' : 'refused', `${ms.toFixed(0)} ms`);
    for (const { said, input } of objections) console.dir({ said, input }, { depth: 12 });
    return;
  }
  const [executions = '1000000', seed = '20261127', only] = positionals;
  const ids = allTargets()
    .map(({ id }) => id)
    .filter((id) => !only || id === only);
  const started = Date.now();
  const shares = counts(Number(executions), ids);
  const run = new Run(chunksOf(shares, Number(seed)), () => printed(run, values.out, started));
  console.log(`seed ${seed}, ${values.workers} workers`);
  for (let worker = 1; worker <= Number(values.workers); worker += 1) run.start(worker);
}

main();
