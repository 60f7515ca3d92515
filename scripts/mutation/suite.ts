/** The tests of the project as functions: what `vitest` gives a test file, as far as the tests use it. */
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { format } from 'node:util';

type Body = (...row: readonly unknown[]) => unknown;

export interface Test {
  readonly file: string;
  readonly name: string;
  readonly run: () => unknown;
  /** What must have run before the first of them. */
  readonly before: readonly (() => unknown)[];
}

interface Group {
  readonly name: string;
  readonly before: (() => unknown)[];
  readonly within: Group | undefined;
}

const around = (group: Group | undefined): (() => unknown)[] =>
  group ? [...around(group.within), ...group.before] : [];

const pathOf = (group: Group | undefined): string =>
  group ? [pathOf(group.within), group.name].filter((part) => part !== '').join(' > ') : '';

/** A name with the values of its row: `%s` and `$at`. */
function titled(name: string, row: readonly unknown[]): string {
  const [first] = row;
  const named = name.replace(/\$(\w+)/g, (all, key: string) =>
    typeof first === 'object' && first !== null && key in first
      ? String((first as Record<string, unknown>)[key])
      : all,
  );
  const placed = (named.match(/%[sdijo]/g) ?? []).length;
  return placed === 0 ? named : format(named, ...row.slice(0, placed));
}

/** Collects the tests of one file after the other. */
export class Collector {
  #file = '';
  #tests: Test[] = [];
  #group: Group | undefined;

  collect(file: string, load: () => unknown): Test[] {
    this.#file = file;
    this.#tests = [];
    this.#group = { name: '', before: [], within: undefined };
    load();
    return this.#tests;
  }

  #enter(name: string, body: () => unknown): void {
    const within = this.#group;
    this.#group = { name, before: [], within };
    body();
    this.#group = within;
  }

  #add(name: string, run: () => unknown): void {
    const group = this.#group;
    this.#tests.push({
      file: this.#file,
      name: [pathOf(group), name].filter((part) => part !== '').join(' > '),
      run,
      get before() {
        return around(group);
      },
    });
  }

  /** Some tests put their options between the name and the body, some after it. */
  static #body(rest: readonly unknown[]): Body {
    return rest.find((part) => typeof part === 'function') as Body;
  }

  #each(add: (name: string, run: () => unknown) => void) {
    return (table: readonly unknown[]) =>
      (name: string, ...rest: readonly unknown[]): void => {
        // As the runner does: rows are spread where all of them are lists.
        const spread = table.every((item) => Array.isArray(item));
        for (const item of table) {
          const row = spread ? (item as readonly unknown[]) : [item];
          add(titled(name, row), () => Collector.#body(rest)(...row));
        }
      };
  }

  #adder(add: (name: string, run: () => unknown) => void) {
    const adder = (name: string, ...rest: readonly unknown[]): void =>
      add(name, Collector.#body(rest) as () => unknown);
    const skip = (): void => undefined;
    return Object.assign(adder, {
      each: this.#each(add),
      skipIf: (skipped: unknown) => (skipped ? skip : adder),
    });
  }

  /** What `vitest` exports. */
  exports(expect: unknown): Record<string, unknown> {
    const it = this.#adder((name, run) => this.#add(name, run));
    const describe = this.#adder((name, body) => this.#enter(name, body));
    const nothing = (): void => undefined;
    return {
      __esModule: true,
      expect,
      it,
      test: it,
      describe,
      beforeAll: (run: () => unknown) => this.#group?.before.push(run),
      afterAll: nothing,
    };
  }
}

type Anything = Record<string, unknown>;

/** The very `expect` of vitest, without its runner. */
export async function expectOfVitest(root: string): Promise<unknown> {
  const fromVitest = createRequire(createRequire(`${root}/package.json`).resolve('vitest/package.json'));
  const bring = (name: string): Promise<Anything> => import(pathToFileURL(fromVitest.resolve(name)).href);
  const [chai, made] = await Promise.all([bring('chai'), bring('@vitest/expect')]);
  const use = chai['use'] as (plugin: unknown) => unknown;
  for (const name of ['JestExtend', 'JestChaiExpect', 'JestAsymmetricMatchers']) use(made[name]);
  const own = chai['expect'] as ((value: unknown, message?: string) => unknown) & object;
  const expect = Object.assign((value: unknown, message?: string) => own(value, message), own);
  const setState = made['setState'] as (state: Anything, of: unknown) => void;
  setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect);
  (globalThis as Anything & { [key: symbol]: unknown })[made['GLOBAL_EXPECT'] as symbol] = expect;
  return Object.assign(expect, { getState: () => ({}) });
}
