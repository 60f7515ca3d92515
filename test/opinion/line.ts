/**
 * A line of a notebook as a calculation: `W = V × d` with its values. For arithmetic that is printed somewhere and that no
 * calculation of the library does.
 */
import type { FigureSet } from '../../src/index';
import { EXACT, reckoned, treeOf } from '../../src/opinion/formula';
import { exactSiOf, fromSi } from '../../src/opinion/scale';
import type { Decimal } from '../../src/quantity/decimal';
import type { Dimension } from '../../src/quantity/dimensions';
import { readMoney } from '../../src/quantity/money';
import type { Quantity } from '../../src/quantity/quantity';
import { currencyUnit, type Unit, unitOf } from '../../src/quantity/units';
import { type Calculation, define } from '../../src/reckoning/calculation';
import { type Field, fields, quantity, reading } from '../../src/reckoning/fields';
import type { Pad } from '../../src/reckoning/pad';

/** One printed line: `foreman: USD = t × p`. */
export interface Line {
  /** Name of the figure that it gives. */
  readonly figure: string;
  /** In symbols, `C = t × p`. */
  readonly formula: string;
  /** Unit of what it gives, with its dimension. */
  readonly gives: readonly [Dimension, string];
}

/** Values of the symbols, each with its dimension. */
export type Values = Readonly<Record<string, readonly [Dimension, string]>>;

const money = (): Field<Quantity<'money'>> =>
  reading(
    (input) => readMoney(input, 'it'),
    () => ({ 'x-dimension': 'money', anyOf: [] }),
  ) as Field<Quantity<'money'>>;

const fieldOf = ([dimension]: readonly [Dimension, string]): Field<Quantity> =>
  (dimension === 'money' ? money() : quantity(dimension, 'it', 'any')) as Field<Quantity>;

const unitNamed = ([dimension, id]: readonly [Dimension, string]): Unit =>
  dimension === 'money' ? currencyUnit(id) : (unitOf(dimension, id) as Unit);

function valuesFor(formula: string, known: Readonly<Record<string, Quantity>>): Record<string, Quantity> {
  const names = formula.slice(formula.indexOf('=')).match(/[A-Za-z]\w*(?!\w*\()/g) ?? [];
  return Object.fromEntries(names.flatMap((name) => (known[name] ? [[name, known[name]]] : [])));
}

/** A calculation of lines, each of which may take what those above it give. */
export function notebook(lines: readonly Line[], values: Values): [Calculation<unknown, FigureSet>, unknown] {
  const calculation = define({
    id: 'notebook',
    title: 'Lines of a notebook',
    version: 1,
    sources: [],
    input: () =>
      fields(Object.fromEntries(Object.entries(values).map(([name, one]) => [name, fieldOf(one)]))),
    reckon: (input: unknown, pad: Pad) => {
      const known: Record<string, Quantity> = { ...(input as Record<string, Quantity>) };
      const figures: Record<string, Quantity> = {};
      for (const { figure, formula, gives } of lines) {
        const own = valuesFor(formula, known);
        const tree = treeOf(formula);
        if (!tree) throw new Error(formula);
        const si = reckoned<Decimal>(tree, (name) => exactSiOf(own[name] as Quantity), EXACT);
        const q = fromSi(gives[0], si, unitNamed(gives));
        known[formula.slice(0, formula.indexOf('=')).trim()] = pad.step(figure, formula, own, q);
        figures[figure] = q;
      }
      return figures;
    },
  } as never) as unknown as Calculation<unknown, FigureSet>;
  return [calculation, Object.fromEntries(Object.entries(values).map(([name, [, text]]) => [name, text]))];
}
