/** A session of Node's own REPL with everything loaded, and short forms that go by the last calculation. */
import { type REPLServer, type ReplOptions, start } from 'node:repl';
import * as catalog from '../src/catalog/index';
import * as drawing from '../src/drawing/index';
import * as library from '../src/index';
import * as report from '../src/report/index';
import { Calls, remembered, shortForms } from './repl-short';
import { written } from './repl-writer';

/** How to go on, for whoever asks. */
const HELP = `A calculation prints its worksheet: slopeOf({ slope: "1/4 in/ft", over: "12 ft" })
What there is:                  catalog.map(({ id, title }) => id + ': ' + title)
What it takes:                  slopeOf.inputSchema.properties
Without an exception:           slopeOf.attempt({ slope: 2 })
Of the last one that was called, or, with its result put first, of any:
  is my figure right?           check('9 yd3')   check(apron, '9 yd3')   check({ volume: '9 yd3' })
  what must an input be?        need('thickness', '9 yd3')
  how far may it be off?        within({ thickness: '3/8 in' })
`;

/** Every name that a session knows, but `help`. */
export function loaded(): Record<string, unknown> {
  const calls = new Calls();
  return { ...remembered(library, calls), ...report, ...catalog, ...drawing, ...shortForms(calls) };
}

export function session(options: ReplOptions = {}): REPLServer {
  const repl = start({ prompt: '> ', writer: written, ...options });
  const help = (): void => void repl.output.write(HELP);
  Object.assign(repl.context, loaded(), { help });
  return repl;
}
