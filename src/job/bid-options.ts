/** Options and alternates: the whole bid priced again with each, so that its total is to the cent. */
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { withinLimit } from '../reckoning/limits';
import { say } from '../reckoning/words';
import type { Base } from './bid-base';
import { noOption, twoOptions } from './bid-faults';
import { OPTIONS } from './bid-input';
import { sumOf } from './bid-money';
import { type Costed, priced, silent } from './bid-price';
import { lineNamed } from './bid-progress';

/** An option or an alternate, by itself. */
export interface OptionFigures {
  /** What it is called. */
  readonly name: string;
  /** What its own lines cost. */
  readonly cost: Quantity<'money'>;
  /** What it adds to the total, below zero where it takes from it. */
  readonly difference: Quantity<'money'>;
  /** The total with it. */
  readonly total: Quantity<'money'>;
}

function optionOf(name: string, gone: readonly Costed[], base: Base): OptionFigures {
  const { input, lines, optional, nothing, pad, price } = base;
  const own = optional.filter(({ option }) => option === name);
  const together = [...lines.filter((one) => !gone.includes(one)), ...own];
  const { total: T } = priced(together, input, nothing, silent);
  const { total: F } = price;
  const difference = pad.step(say`what ${{ name }} adds to the total`, 'd = T − F', { T, F }, T.minus(F));
  const amounts = own.map(({ amount }) => amount);
  return { name, cost: sumOf(amounts, nothing), difference, total: T };
}

/** The lines that fall away with each option that is listed. */
function replaced({ input, lines, optional }: Base): Map<string, readonly Costed[]> {
  const gone = new Map<string, readonly Costed[]>();
  (input.options ?? []).forEach(({ name, replaces }, i) => {
    const path = `options[${i}]`;
    if (gone.has(name)) refuse(`${path}.name`, twoOptions(name));
    if (!replaces && !optional.some(({ option }) => option === name)) refuse(`${path}.name`, noOption(name));
    gone.set(
      name,
      (replaces ?? []).map((one, j) => lineNamed(lines, one, `${path}.replaces[${j}]`)),
    );
  });
  return gone;
}

/** Each option by itself, those that are listed first. */
export function optionsOf(base: Base): OptionFigures[] | undefined {
  const gone = replaced(base);
  for (const { option } of base.optional) if (option && !gone.has(option)) gone.set(option, []);
  withinLimit(OPTIONS, gone.size, 'lines');
  return gone.size > 0 ? [...gone].map(([name, lines]) => optionOf(name, lines, base)) : undefined;
}
