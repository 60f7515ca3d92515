/** The pictures in the docs are what the examples beside them draw. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pictures } from '../support/drawing/pictures';
import { sheetPicture } from '../support/drawing/sheet-picture';

const DOCS = new URL('../../docs/', import.meta.url);

describe('pictures in the docs', () => {
  const all = [...pictures(), sheetPicture()];

  it('are there, one for each kind of plan, and no others', () => {
    expect(all.map(({ file }) => file.replace('plans/', '')).sort()).toEqual(
      readdirSync(new URL('plans/', DOCS)).sort(),
    );
    expect(all.length).toBeGreaterThanOrEqual(7);
  });

  it.each(all.map(({ file, svg }) => [file, svg] as const))('%s is what its example draws', (file, svg) => {
    // Where this fails `npm run pictures` draws it anew: look at it before it is committed.
    expect(readFileSync(new URL(file, DOCS), 'utf8') === svg, 'npm run pictures').toBe(true);
  });

  it('in README are among them', () => {
    const readme = readFileSync(new URL('../README.md', DOCS), 'utf8');
    const shown = [...readme.matchAll(/docs\/(plans\/[a-z-]+\.svg)/g)].map(([, file]) => file);
    expect(shown).toEqual(['plans/sheet.svg', 'plans/joints.svg']);
    expect(all.map(({ file }) => file)).toEqual(expect.arrayContaining(shown));
  });
});
