/** The REPL has everything loaded, and prints a result as its sheet. */
import { PassThrough } from 'node:stream';
import { text } from 'node:stream/consumers';
import { expect, it } from 'vitest';
import { session } from '../scripts/repl-session';
import * as catalog from '../src/catalog/index';
import * as drawing from '../src/drawing/index';
import * as library from '../src/index';
import * as report from '../src/report/index';

/** What the REPL prints for lines that are typed. */
async function printed(...lines: readonly string[]): Promise<string> {
  const [input, output] = [new PassThrough(), new PassThrough()];
  const said = text(output);
  const repl = session({ input, output, terminal: false });
  const closed = new Promise((done) => repl.once('exit', done));
  input.end(`${lines.join('\n')}\n`);
  await closed;
  output.end();
  return said;
}

it('knows what every entry of the package exports', async () => {
  const names = [catalog, drawing, library, report].flatMap((entry) => Object.keys(entry));
  expect(names.length).toBeGreaterThan(80);
  const missing = await printed(`[${names.join(', ')}].filter((one) => one === undefined).length`);
  expect(missing).toBe('> 0\n> ');
});

it('prints figures as they are read, results as sheets, and draws', async () => {
  const said = await printed(
    "const slab = slabVolume({ outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' })",
    'slab.figures.volume',
    'slab',
    "outlinePlan({ outline: { shape: 'circle', diameter: '9 ft' } }).slice(0, 4)",
    "textSheet('Yard', [{ name: 'Apron', results: [slab] }]).split('\\n')[0].toLowerCase()",
    'slopeOf({ slope: 2 })',
  );
  expect(said).toContain('> 7.78 yd3\n');
  expect(said).toContain('504 ft2');
  expect(said).toContain("> '<svg'\n");
  expect(said).toContain("> 'yard'\n");
  expect(said).toContain('slope needs a unit');
});

it('checks, solves and bounds by the calculation that was called last', async () => {
  const said = await printed(
    "slabVolume({ outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' }).figures.volume",
    "check('168 yd3').slips[0].slips[0].code",
    "check('168 yd3')",
    "need('thickness', '9 yd3')",
    "within({ thickness: '3/8 in' })[0].high",
  );
  expect(said).toContain("'not-divided-by-27'");
  expect(said).toContain('1. volume, 6.22 yd3, is the number of ft3 under the name of yd3');
  expect(said).toContain('> 5-13/16 in\n');
  expect(said).toContain('> 6.81 yd3\n');
});

it('checks any result that was given before, and says how when asked', async () => {
  const said = await printed(
    "const slab = slabVolume({ outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' })",
    "slopeOf({ slope: '2%', over: '12 ft' })",
    "check(slab, '168 yd3').slips[0].slips[0].code",
    "need(slab, 'thickness', '9 yd3')",
    "within(slab, { thickness: '3/8 in' })[0].high",
    'help()',
  );
  expect(said).toContain("> 'not-divided-by-27'\n");
  expect(said).toContain('> 5-13/16 in\n');
  expect(said).toContain('> 6.81 yd3\n');
  expect(said).toContain("check(apron, '9 yd3')");
});

it('says when there is nothing yet to check', async () => {
  expect(await printed("check('9 yd3')")).toContain('call a calculation first');
});
