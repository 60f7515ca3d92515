/**
 * The grade of bars as plans call for it, `60` or `Grade 60`, and their yield strength by it where a strength is asked
 * for. What stands in no table here has its MPa in its name: `400W` by CSA G30.18, `B500B` by EN 10080, `D500N` by
 * AS/NZS 4671, `Fe 500D` by IS 1786, all from memory.
 */
import { fault, quoted } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { pressure } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { say } from '../quantity/words';
import { choice, type Field, quantity } from '../reckoning/fields';
import { orNamed, respelt } from '../reckoning/or-named';
import type { Ordinary } from '../reckoning/ordinary';
import { BAR_GRADES, type BarGrade, yieldOf } from './bars';

const BEFORE = /^gr(?:ade|\.)? ?(?=\w)/i;
const IN_MPA = /^(?:[BDHSN] ?)?(250|300|400|420|450|460|500|550|600)[A-CNLERW]$|^Fe ?(415|500|550|600)D?$/i;
/** What is meant for a name and not for a number with its unit. */
const NAME = /^(?:gr(?:ade|\.)? ?|[BD] ?|Fe ?)\d{2,3}[A-Z]?$/i;

const noSuchGrade = (what: string, text: string): Fault =>
  fault(
    'unknown-designation',
    say`${{ what }} is no grade of bars in ${{ text: quoted(text) }}; write one as in ${{ example: '"Grade 60"' }} or ${{ another: '"B500B"' }}, or the strength with its unit`,
  );

function strengthOf(what: string, text: string): Quantity<'pressure'> | Fault | undefined {
  const bare = text.replace(BEFORE, '').toUpperCase();
  const grade = BEFORE.test(text) || /[A-Z]/.test(bare) ? BAR_GRADES.find((one) => one === bare) : undefined;
  if (grade) return yieldOf(grade);
  const number = IN_MPA.exec(text)?.slice(1).find(Boolean);
  if (number) return pressure(`${number} MPa`);
  return NAME.test(text) ? noSuchGrade(what, text) : undefined;
}

/** A yield strength as a pressure or by the grade of the bars. */
export const yieldStrength = (ordinary: Ordinary): Field<Quantity<'pressure'>> =>
  orNamed(quantity('pressure', 'yieldStrength', 'positive', ordinary), 'yieldStrength', strengthOf);

/** A grade, with or without the word before it. */
export const barGrade = (what: string): Field<BarGrade> =>
  respelt(choice(what, BAR_GRADES), (text) => text.replace(BEFORE, ''));
