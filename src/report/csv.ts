/** Comma-separated values, as spreadsheets read them. */

/** A cell that starts like a formula is quoted with a leading apostrophe, so that no spreadsheet runs it. */
export function csvCell(text: string): string {
  const safe = /^[=+@\t\r]|^-(?!\d)/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows of cells as text. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  `${rows.map((row) => row.map(csvCell).join(',')).join('\r\n')}\r\n`;
