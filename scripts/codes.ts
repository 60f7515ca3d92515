/**
 * Prints the codes of cautions and issues with what they mean, or writes them into docs/codes.md.
 *
 *     npm run codes -- [--write]
 */
import { CODES_START, codeTables } from '../test/support/codes';
import { printOrWrite } from './tables';

printOrWrite('codes.md', CODES_START, codeTables());
