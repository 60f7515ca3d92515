/** One thing that an app does with the packed library, and how it is run. */
export interface Check {
  readonly name: string;
  /** Throws when it does not work. */
  run(): void | Promise<void>;
}

/** Checks that share a project. */
export interface Suite {
  readonly name: string;
  /** The checks of the suite, after its project is made; fewer of them when time is short. */
  checks(quick: boolean): Promise<readonly Check[]>;
}

export interface Tally {
  passed: number;
  failed: number;
  notTried: number;
}

const seconds = (since: number): string => `${((performance.now() - since) / 1000).toFixed(1).padStart(6)} s`;

const firstLines = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error))
    .split('\n')
    .slice(0, 25)
    .map((line) => `            ${line.slice(0, 200)}`)
    .join('\n');

async function runCheck({ name, run }: Check, tally: Tally): Promise<void> {
  const start = performance.now();
  try {
    await run();
    tally.passed += 1;
    console.log(`pass ${seconds(start)}  ${name}`);
  } catch (error) {
    tally.failed += 1;
    console.log(`FAIL ${seconds(start)}  ${name}\n${firstLines(error)}`);
  }
}

/** Packages that cannot be fetched say nothing about the library: when time is short, that fails nobody. */
export async function runSuite({ name, checks }: Suite, quick: boolean, tally: Tally): Promise<void> {
  const start = performance.now();
  try {
    for (const check of await checks(quick)) await runCheck(check, tally);
  } catch (error) {
    if (quick) tally.notTried += 1;
    else tally.failed += 1;
    console.log(
      `${quick ? 'none' : 'FAIL'} ${seconds(start)}  ${name}: could not be set up\n${firstLines(error)}`,
    );
  }
}
