/** A session of Node's own REPL with everything loaded, and short forms that go by the last calculation. */
import { type REPLServer, type ReplOptions, start } from 'node:repl';
import * as catalog from '../src/catalog/index';
import * as drawing from '../src/drawing/index';
import * as library from '../src/index';
import * as report from '../src/report/index';
import { remembered, shortForms } from './repl-short';
import { written } from './repl-writer';

export function session(options: ReplOptions = {}): REPLServer {
  const repl = start({ prompt: '> ', writer: written, ...options });
  const last = {};
  Object.assign(repl.context, remembered(library, last), report, catalog, drawing, shortForms(last));
  return repl;
}
