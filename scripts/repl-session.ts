/** A session of Node's own REPL with everything loaded. */
import { type REPLServer, type ReplOptions, start } from 'node:repl';
import * as catalog from '../src/catalog/index';
import * as drawing from '../src/drawing/index';
import * as library from '../src/index';
import * as report from '../src/report/index';
import { written } from './repl-writer';

export function session(options: ReplOptions = {}): REPLServer {
  const repl = start({ prompt: '> ', writer: written, ...options });
  Object.assign(repl.context, library, report, catalog, drawing);
  return repl;
}
