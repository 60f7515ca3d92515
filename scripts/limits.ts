/**
 * Prints the limits of every calculation, or writes them into docs/limits.md.
 *
 *     npm run limits -- [--write]
 */
import { limitTables, TABLES_START } from '../test/support/limits';
import { printOrWrite } from './tables';

printOrWrite('limits.md', TABLES_START, limitTables());
