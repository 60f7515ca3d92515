/** Runs the tests in this process: once to see which test passes which code, then on one mutant after the other. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';
import fc from 'fast-check';
import { crowding } from './crew';
import { Modules } from './modules';
import { type Mutant, marked, mutated } from './mutants';
import { Collector, expectOfVitest, type Test } from './suite';

/** Tests that read files, want a browser or compare clocks, and so say nothing of a mutant. */
const LEFT_OUT = /^test\/(docs|house|types|codes|sources|limits|drawing)\.test\.ts$|\/fuzz/;
const VECTORS = 'test/vectors.test.ts';
const ALWAYS = /^test\/(vectors|reckoning\/contract|advice\/.*)\.test\.ts$/;
const BELOW = /^src\/(geometry|solve|quantity|reckoning)\//;

/** The `at`-th test of a file. */
export interface TestKey {
  readonly file: string;
  readonly at: number;
}

export interface Seen extends TestKey {
  readonly name: string;
  /** Processor time. */
  readonly ms: number;
  /** Code it passes, by the numbers of the stretches. */
  readonly marks: readonly number[];
}

export interface Passing {
  readonly seen: readonly Seen[];
  /** Tests that fail or take too long as things are, which kill nothing. */
  readonly unused: readonly string[];
}

export type Verdict =
  | { readonly is: 'killed'; readonly by: TestKey | undefined }
  | { readonly is: 'timeout'; readonly by: TestKey }
  | { readonly is: 'survived'; readonly tried: number; readonly all: boolean }
  | { readonly is: 'invalid' };

const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** The first mark of each file is far enough from the next file's. */
export const ROOM = 10_000;

export const testFilesIn = (root: string): string[] =>
  readdirSync(join(root, 'test'), { recursive: true, encoding: 'utf8' })
    .map((name) => `test/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.test.ts') && !LEFT_OUT.test(name))
    .sort();

export class Bench {
  readonly #modules: Modules;
  readonly #collector: Collector;
  readonly #marks = new Set<number>();

  private constructor(modules: Modules, collector: Collector) {
    this.#modules = modules;
    this.#collector = collector;
  }

  static async open(root: string): Promise<Bench> {
    const collector = new Collector();
    const vitest = collector.exports(await expectOfVitest(root));
    const modules = new Modules(root, { vitest });
    // Finding a smaller failing input is of no use here.
    fc.configureGlobal({ seed: Number(process.env['FUZZ_SEED'] ?? 20_261_125), endOnFailure: true });
    const bench = new Bench(modules, collector);
    Object.assign(globalThis, { __mark: (mark: number) => bench.#marks.add(mark) });
    return bench;
  }

  /**
   * The test files that take in any of `targets`: for maths and shapes, on which all rests, every one; for a
   * trade those of its own folder, the vectors, the contract and the cases from practice.
   */
  files(root: string, targets: readonly string[], all: boolean): string[] {
    const folders = new Set(targets.map((target) => target.split('/')[1]));
    const every = all || targets.some((target) => BELOW.test(target));
    return testFilesIn(root)
      .filter((file) => every || ALWAYS.test(file) || folders.has(file.split('/')[1]))
      .filter((file) => targets.some((target) => this.#modules.reach(file).has(target)));
  }

  async ready(files: readonly string[]): Promise<void> {
    await this.#modules.bringPackages(files);
  }

  /** From here on the targets count what is passed: not for mutants. */
  watch(targets: readonly string[]): void {
    for (const [i, file] of targets.entries())
      this.#modules.replace(file, marked(file, this.#modules.text(file), i * ROOM).text);
  }

  /** A vector can only reach what its calculation takes in; of all other tests that is not known. */
  #relevant(test: Test, targets: readonly string[]): boolean {
    if (test.file !== VECTORS) return true;
    const id = /^([a-z-]+)\//.exec(test.name)?.[1];
    const home = id && this.#calculations().get(id);
    return home ? targets.some((target) => this.#modules.reach(home).has(target)) : false;
  }

  #homes: Map<string, string> | undefined;
  #calculations(): ReadonlyMap<string, string> {
    this.#homes ??= new Map(
      [...this.#modules.reach('src/catalog/all.ts')].map((file) => [file.replace(/^.*\/|\.ts$/g, ''), file]),
    );
    return this.#homes;
  }

  /** Runs the tests of a file as things are, or has what they passed when all was just the same. */
  async pass(
    file: string,
    targets: readonly string[],
    { slowest, until }: { readonly slowest: number; readonly until: number },
  ): Promise<Passing> {
    const kept = this.#modules.keptFor(file, [...targets, `${slowest}`]);
    const known = kept.read();
    if (known !== undefined) return JSON.parse(known) as Passing;
    const passing = await this.#pass(file, targets, { slowest, until });
    if (Date.now() <= until) kept.write(JSON.stringify(passing));
    return passing;
  }

  async #pass(
    file: string,
    targets: readonly string[],
    { slowest, until }: { readonly slowest: number; readonly until: number },
  ): Promise<Passing> {
    const seen: Seen[] = [];
    const unused: string[] = [];
    if (this.#modules.text(file).includes('vi.mock('))
      return { seen, unused: [`${file}: puts modules of its own in place`] };
    const tests = this.#collector.collect(file, () => this.#modules.load(file));
    const ready = new Set<unknown>();
    for (const [at, test] of tests.entries()) {
      if (Date.now() > until) {
        unused.push(`${file}: not reached in time, from test ${at + 1} of ${tests.length} on`);
        break;
      }
      if (!this.#relevant(test, targets)) continue;
      this.#marks.clear();
      const began = cpu();
      const failed = await this.#fails(test, ready, 4 * slowest);
      const ms = cpu() - began;
      if (failed || ms > slowest) unused.push(`${file}: ${test.name} (${failed ?? `${Math.round(ms)} ms`})`);
      else seen.push({ file, at, name: test.name, ms, marks: [...this.#marks] });
    }
    return { seen, unused };
  }

  /** What a test fails with, if it does; endless loops are cut off. */
  async #fails(test: Test, ready: Set<unknown>, timeout: number): Promise<string | undefined> {
    try {
      for (const before of test.before.filter((b) => !ready.has(b))) {
        ready.add(before);
        await before();
      }
      await within(timeout, test.run);
      return undefined;
    } catch (error) {
      return (error as { code?: string }).code === 'ERR_SCRIPT_EXECUTION_TIMEOUT'
        ? CUT_OFF
        : String(error).slice(0, 200);
    }
  }

  /** Runs the tests in the order given until one fails, or as much processor time is used. */
  async judge(
    mutant: Mutant,
    order: readonly (TestKey & { readonly ms: number })[],
    most: number,
  ): Promise<Verdict> {
    let load: (wanted: string) => unknown;
    try {
      load = this.#modules.changed(mutant.file, mutated(this.#modules.text(mutant.file), mutant));
    } catch {
      return { is: 'invalid' };
    }
    const collected = new Map<string, Test[]>();
    const ready = new Set<unknown>();
    const began = cpu();
    // Where the mutant is not taken in, modules are shared: they are not collected again, and tell nothing.
    const telling = order.filter(({ file }) => this.#modules.reach(file).has(mutant.file));
    for (const [tried, key] of telling.entries()) {
      if (cpu() - began > most) return { is: 'survived', tried, all: false };
      try {
        if (!collected.has(key.file))
          within(20_000, () =>
            collected.set(
              key.file,
              this.#collector.collect(key.file, () => load(key.file)),
            ),
          );
      } catch {
        return { is: 'killed', by: undefined };
      }
      const test = collected.get(key.file)?.[key.at];
      const failed = test ? await this.#fails(test, ready, 4000 + 20 * key.ms) : 'not there';
      if (failed) return failed === CUT_OFF ? { is: 'timeout', by: key } : { is: 'killed', by: key };
    }
    return { is: 'survived', tried: telling.length, all: true };
  }
}

const CUT_OFF = 'cut off';
const slot: { run?: () => unknown } = {};
let script: vm.Script | undefined;

/** Runs a function, cut off by the clock where it does not end by itself. */
function within(timeout: number, run: () => unknown): unknown {
  Object.assign(globalThis, { __slot: slot });
  script ??= new vm.Script('__slot.run()');
  slot.run = run;
  return script.runInThisContext({ timeout: Math.ceil(timeout * crowding()) });
}
