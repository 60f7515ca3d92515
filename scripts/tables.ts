/** Tables of the docs that are made from the code, and where in their page they stand. */

/** A table in Markdown, its columns in line. */
export function tableOf(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const wide = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => (row[i] ?? '').length)));
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, i) => cell.padEnd(wide[i] ?? 0)).join(' | ')} |`;
  return [line(heads), line(wide.map((n) => '-'.repeat(n))), ...rows.map(line)].join('\n');
}

/** The text of a page with tables behind a heading, up to its end. */
export const behind =
  (start: string, tables: () => string) =>
  (page: string): string =>
    `${page.split(start)[0]}${start}\n\n${tables()}\n`;
