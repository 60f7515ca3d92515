/**
 * Prints what the check vectors rest on, by calculation: vectors by the kind of their source, different
 * works, different tables and examples in them, and those that only echo their input.
 *
 *     npm run sources
 */
import { type Foundation, foundations } from '../test/support/sources';

const KINDS = ['published', 'corrected', 'reference-library', 'common-practice', 'derived', 'refused'];
const HEADS = ['calculation', ...KINDS, 'works', 'tables and examples', 'echoes', 'advice'];

const row = ({ id, kinds, works, places, echoes, advice }: Foundation): string[] => [
  id,
  ...[...KINDS.map((kind) => kinds[kind] ?? 0), works, places, echoes, advice].map(String),
];

const rows = [HEADS, ...foundations().map(row)];
const widths = HEADS.map((_, i) => Math.max(...rows.map((cells) => (cells[i] ?? '').length)));
for (const cells of rows) {
  console.log(
    cells
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  '),
  );
}
