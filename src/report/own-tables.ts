/** Figures that a sheet shows as tables of their own, as those who read them write such lists. */
import type { JobTakeoffFigures } from '../job/takeoff-figures';
import type { Entry } from './entries';
import type { Plain } from './figures';
import { labelText } from './labels';
import { purchaseRowsOf } from './purchases';
import { type View, wordText } from './view';

/** What a take-off buys as a table that a yard reads, each line with what it is for. */
function purchases(figures: JobTakeoffFigures, view: View): Entry[] {
  const rows = purchaseRowsOf(figures, view).map(({ item, kind, quantity, elements }) => [
    [item, kind].filter(Boolean).join(', '),
    quantity,
    elements,
  ]);
  if (rows.length === 0) return [];
  const head = ['item', 'quantity', 'for'].map((name) => wordText(name, view));
  const told = rows.map((row) => row.join('; '));
  return [{ label: labelText('purchases', view), text: '', table: { head, rows, told } }];
}

type Tables = { readonly [figure: string]: (figures: never, view: View) => Entry[] };

/** By the id of a calculation, its figures that have a table of their own. */
const TABLES: { readonly [id: string]: Tables } = { 'job-takeoff': { purchases } };

/** Figures without those that have tables of their own, and these. */
export function tabled(
  id: string,
  figures: Plain,
  view: View,
): { readonly figures: Plain; readonly tables: readonly Entry[] } {
  const own = Object.hasOwn(TABLES, id) ? (TABLES[id] as Tables) : {};
  const rest = Object.entries(figures as object).filter(([name]) => !Object.hasOwn(own, name));
  return {
    figures: Object.fromEntries(rest),
    tables: Object.values(own).flatMap((table) => table(figures as never, view)),
  };
}
