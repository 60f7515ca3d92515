/** Every example compiles, runs and shows what it says. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { inspect } from 'node:util';
import { createContext, Script } from 'node:vm';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loaded } from '../scripts/repl-session';
import { written } from '../scripts/repl-writer';
import { type Example, examples, programOf, shownCount } from './support/examples';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const all = examples();
const programs = all.filter(({ language }) => language === 'ts');
const sessions = all.filter(({ language }) => language === 'repl');

/** The package's own names to its sources. */
const HOMES: Record<string, string> = {
  'flatwork-reckoner': 'src/index.ts',
  'flatwork-reckoner/catalog': 'src/catalog/index.ts',
  'flatwork-reckoner/catalog/all': 'src/catalog/all.ts',
  'flatwork-reckoner/report': 'src/report/index.ts',
  'flatwork-reckoner/drawing': 'src/drawing/index.ts',
  'flatwork-reckoner/language/spanish': 'src/language/spanish/index.ts',
};

let folder = '';

const fileFor = (index: number): string => join(folder, `example-${index}.ts`);

function settled(code: string): string {
  return code.replace(/from '(flatwork-reckoner[^']*)'/g, (whole, name: string) => {
    const home = HOMES[name];
    if (home) return `from '${join(ROOT, home)}'`;
    return name.includes('/vectors/')
      ? `from '${join(ROOT, name.replace('flatwork-reckoner/', ''))}'`
      : whole;
  });
}

function show(value: unknown): string {
  return typeof value === 'string' ? `'${value}'` : inspect(value);
}

beforeAll(() => {
  folder = mkdtempSync(join(ROOT, 'test/.examples-'));
  programs.forEach((example, i) => {
    const head = 'declare function __check(value: unknown, shown: string): void;\n';
    writeFileSync(fileFor(i), `${head}${settled(programOf(example))}\nexport {};\n`);
  });
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('examples', () => {
  it('are there, and show results', () => {
    expect(programs.length).toBeGreaterThan(25);
    const silent = programs.filter((e) => shownCount(e) === 0 && !e.code.includes('console.log'));
    expect(silent.map(({ at }) => at)).toEqual([]);
  });

  it('are in languages that are checked, or in none', () => {
    const known = ['ts', 'repl', 'json', 'sh', 'text', ''];
    for (const { at, language } of all) expect(known, at).toContain(language);
    for (const { at, language, code } of all)
      if (language === 'json') expect(() => JSON.parse(code), at).not.toThrow();
  });

  it('compile', () => {
    const config = ts.readConfigFile(join(ROOT, 'tsconfig.json'), ts.sys.readFile);
    const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, ROOT);
    const program = ts.createProgram(
      programs.map((_, i) => fileFor(i)),
      {
        ...options,
        allowImportingTsExtensions: true,
        noUnusedLocals: false,
        lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
      },
    );
    const faults = ts.getPreEmitDiagnostics(program).map((d) => {
      const index = Number(/example-(\d+)\.ts/.exec(d.file?.fileName ?? '')?.[1] ?? -1);
      return `${programs[index]?.at ?? d.file?.fileName}: ${ts.flattenDiagnosticMessageText(d.messageText, '\n')}`;
    });
    expect(faults).toEqual([]);
  });

  it.each(programs.map((example, i) => [example.at, example, i] as const))(
    '%s',
    async (_at, example: Example, i) => {
      const results: [string, string][] = [];
      const logged: string[] = [];
      const globals = globalThis as unknown as Record<string, unknown>;
      globals['__check'] = (value: unknown, shown: string) => results.push([show(value), shown]);
      const log = console.log;
      console.log = (...values: unknown[]) => logged.push(values.map(String).join(' '));
      try {
        await import(/* @vite-ignore */ pathToFileURL(fileFor(i)).href);
      } finally {
        console.log = log;
        delete globals['__check'];
      }
      expect(results.map(([got]) => got)).toEqual(results.map(([, shown]) => shown));
      const said = [...example.code.matchAll(/console\.log\(.*\); \/\/ (.+)$/gm)].map(([, text]) => text);
      expect(logged.slice(0, said.length)).toEqual(said);
    },
  );
});

describe('sessions in the REPL', () => {
  it.each(sessions.map((s) => [s.at, s.code] as const))('%s', (_at, code) => {
    const context = createContext(loaded());
    const typed = code.split(/^> /m).slice(1);
    for (const entry of typed) {
      // A line that is not finished goes on after three dots, as Node shows it.
      const lines = entry.trimEnd().split('\n');
      const goesOn = lines.findIndex((l, i) => i > 0 && !/^(?:\.\.\.|\|) ?/.test(l));
      const end = goesOn < 0 ? lines.length : goesOn;
      const source = lines
        .slice(0, end)
        .map((l) => l.replace(/^(?:\.\.\.|\|) ?/, ''))
        .join('\n');
      const value = new Script(source).runInContext(context) as unknown;
      const printed = lines.slice(end).join('\n');
      if (printed !== '') expect(written(value), source).toBe(printed);
    }
    expect(typed.length).toBeGreaterThan(0);
  });
});
