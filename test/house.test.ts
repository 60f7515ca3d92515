/** The floors of the house: nothing imports from a floor above its own. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const SRC = fileURLToPath(new URL('../src', import.meta.url));

const FLOORS: Record<string, number> = {
  quantity: 1,
  solve: 1,
  reckoning: 2,
  geometry: 2,
  outline: 2.5,
  concrete: 3,
  base: 3,
  grade: 3,
  joints: 3,
  steel: 3,
  steps: 3,
  mix: 3,
  pour: 3,
  weather: 3,
  forms: 3,
  finish: 3,
  job: 4,
  opinion: 4,
  drawing: 5,
  report: 5,
  language: 5,
  catalog: 5,
  repl: 5,
};

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith('.ts'));

const folderOf = (file: string): string => file.split('/')[0] ?? '';

function importsOf(file: string): string[] {
  const text = readFileSync(join(SRC, file), 'utf8');
  return [...text.matchAll(/^(?:import|export|\}).* from '([^']+)'/gm)].map(([, from]) => from ?? '');
}

describe('the house', () => {
  it('has a floor for every folder', () => {
    for (const file of files.filter((f) => f.includes('/')))
      expect(FLOORS, file).toHaveProperty(folderOf(file));
  });

  it.each(files.filter((f) => f.includes('/')))('%s imports from no floor above', (file) => {
    const own = FLOORS[folderOf(file)] ?? 0;
    for (const from of importsOf(file).filter((f) => f.startsWith('.'))) {
      const target = relative(SRC, join(SRC, dirname(file), from));
      expect(FLOORS[folderOf(target)], `${file} imports ${from}`).toBeLessThanOrEqual(own);
    }
  });

  it('takes in packages at stated places only', () => {
    const allowed: Record<string, RegExp> = {
      'decimal.js': /^quantity\/decimal\.ts$/,
      'zod/mini': /^reckoning\/revive\.ts$/,
      delaunator: /^(geometry|grade)\//,
      'polyclip-ts': /^geometry\/clip\.ts$/,
      yalps: /^(solve|steel|joints)\//,
    };
    for (const file of files) {
      for (const from of importsOf(file).filter((f) => !f.startsWith('.'))) {
        expect(allowed[from], `${file} imports ${from}`).toBeDefined();
        expect(file).toMatch(allowed[from] ?? /^$/);
      }
    }
  });

  it('has each calculation in a file of its own name', () => {
    const defined = files.flatMap((file) => {
      const [, id] =
        /= \/\*#__PURE__\*\/ define\(\{\s+id: '([a-z-]+)'/.exec(
          readFileSync(join(SRC, file), 'utf8').replace(/=\n\s*/g, '= '),
        ) ?? [];
      return id ? [[file, id] as const] : [];
    });
    expect(defined.length).toBeGreaterThan(8);
    for (const [file, id] of defined) expect(file.endsWith(`/${id}.ts`), file).toBe(true);
  });
});
