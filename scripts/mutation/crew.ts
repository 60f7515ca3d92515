/** Worker processes that run the tests; one that hangs is ended and its mutant counts as timed out. */

import { type ChildProcess, fork } from 'node:child_process';
import os from 'node:os';
import type { Passing, TestKey, Verdict } from './bench';
import type { Mutant } from './mutants';

export type Task =
  | {
      readonly do: 'open';
      readonly targets: readonly string[];
      readonly watch: boolean;
      readonly all: boolean;
    }
  | { readonly do: 'pass'; readonly file: string; readonly slowest: number; readonly until: number }
  | {
      readonly do: 'judge';
      readonly mutant: Mutant;
      readonly order: readonly (TestKey & { readonly ms: number })[];
      readonly most: number;
    };

/** What comes back: the test files for `open`, and so on. */
export type Answer = readonly string[] | Passing | Verdict;

/** Longest silence before a worker is taken for hung, on a machine that does nothing else. */
const SILENCE = 180_000;

/** How many times as long as alone a process takes by the clock, where others want the processors too. */
export const crowding = (): number => Math.max(1, (2 * (os.loadavg()[0] ?? 0)) / os.cpus().length);

class Worker {
  readonly #child: ChildProcess;
  constructor(script: string) {
    this.#child = fork(script, ['--work'], {
      execArgv: process.execArgv,
      stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    });
  }

  /** Nothing where the worker hangs or ends. */
  ask(task: Task): Promise<Answer | undefined> {
    return new Promise((resolve) => {
      const done = (answer?: Answer): void => {
        clearTimeout(timer);
        this.#child.off('message', done).off('exit', gone);
        if (answer === undefined) this.end();
        resolve(answer);
      };
      const gone = (): void => done();
      const timer = setTimeout(gone, SILENCE * crowding());
      this.#child.on('message', done).on('exit', gone);
      this.#child.send(task);
    });
  }

  end(): void {
    this.#child.kill('SIGKILL');
  }
}

export class Crew {
  readonly #script: string;
  readonly #count: number;
  constructor(script: string, count: number) {
    this.#script = script;
    this.#count = count;
  }

  /** Opens the benches and gives them one task after the other as they come free. */
  async run(
    open: Task,
    next: () => Task | undefined,
    heard: (task: Task, answer: Answer | undefined) => void,
  ): Promise<void> {
    const work = async (): Promise<void> => {
      let worker: Worker | undefined;
      for (let task = next(); task; task = next()) {
        if (!worker) {
          worker = new Worker(this.#script);
          if ((await worker.ask(open)) === undefined) throw new Error('a worker did not start');
        }
        const answer = await worker.ask(task);
        heard(task, answer);
        if (answer !== undefined) continue;
        worker.end();
        worker = undefined;
      }
      worker?.end();
    };
    await Promise.all(Array.from({ length: this.#count }, work));
  }
}
