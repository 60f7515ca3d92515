/** Node's own REPL with everything loaded. */
import { start } from 'node:repl';
import * as catalog from '../src/catalog/index';
import * as drawing from '../src/drawing/index';
import * as library from '../src/index';
import * as report from '../src/report/index';
import { written } from './repl-writer';

console.log('Everything is loaded. Try: slopeOf({ slope: "1/4 in/ft", over: "12 ft" })');
const repl = start({ prompt: '> ', writer: written });
Object.assign(repl.context, library, report, catalog, drawing);
