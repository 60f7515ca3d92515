/**
 * The strength of concrete as a job writes it: `4000 psi`, `28 MPa`, the class `C25/30`, the strength of a cylinder
 * and of a cube in MPa, the grade `N32`, that of a cylinder, the grade `M25`, that of a cube, or one of the names of
 * concrete that British plants deliver, `RC28/35`, `PAV2` or `GEN3`. EN 206 and BS 8500, AS 1379 and IS 456, all from
 * memory. What is reckoned with is the strength of the cylinder.
 */
import { fault, quoted } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { pressure } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { twoWays } from '../quantity/text-faults';
import { say } from '../quantity/words';
import { type Field, quantity } from './fields';
import { orNamed } from './or-named';
import type { Ordinary } from './ordinary';

/** Cylinder and cube, in MPa. */
const CLASSES =
  '8/10 12/15 16/20 20/25 25/30 28/35 30/37 32/40 35/45 40/50 45/55 50/60 55/67 60/75 70/85 80/95 90/105'.split(
    ' ',
  );

/** Grades of normal and special concrete, cylinders in MPa. */
const GRADE = /^[NS] ?(20|25|32|40|50|65|80|100)$/i;
const CLASS = /^R?C ?(\d{1,2})(?: ?\/ ?(\d{2,3}))?$/i;
/** A grade by its cube. */
const CUBE = /^M ?(\d{2})$/i;
/** Concrete by name, each with its cylinder behind it. */
const NAMED =
  'GEN0 6 GEN1 8 GEN2 12 GEN3 16 ST1 6 ST2 8 ST3 12 ST4 16 ST5 20 PAV1 25 PAV2 28 FND2 25 FND3 25 FND4 25'.split(
    ' ',
  );

const noSuchClass = (what: string, text: string): Fault =>
  fault(
    'unknown-designation',
    say`${{ what }} is no class of concrete in ${{ text: quoted(text) }}; write both strengths, as in ${{ example: '"C25/30"' }}, or one with its unit`,
  );

/** The cylinder of concrete that goes by its cube, or by a name; nothing where there is none such. */
function namedIn(text: string): string | undefined {
  const cube = CUBE.exec(text)?.[1];
  if (cube) return CLASSES.find((one) => one.endsWith(`/${cube}`))?.split('/')[0];
  // What is a number alone is a cylinder in the list, and no name.
  return /^[a-z]/i.test(text)
    ? NAMED[NAMED.indexOf(text.replace(' ', '').toUpperCase()) + 1 || -1]
    : undefined;
}

/** The strength of a class; a fault where there is none such, or where one number may be either strength. */
function classOf(what: string, text: string): Quantity<'pressure'> | Fault | undefined {
  const grade = GRADE.exec(text)?.[1] ?? namedIn(text);
  if (grade) return pressure(`${grade} MPa`);
  const [, cylinder, cube] = CLASS.exec(text) ?? [];
  if (cylinder === undefined) return undefined;
  if (cube !== undefined)
    return CLASSES.includes(`${cylinder}/${cube}`) ? pressure(`${cylinder} MPa`) : noSuchClass(what, text);
  const own = CLASSES.find((one) => one.startsWith(`${cylinder}/`));
  const other = CLASSES.find((one) => one.endsWith(`/${cylinder}`));
  if (own && other) return twoWays(what, text, `C${own}`, `C${other}`);
  return noSuchClass(what, text);
}

/** A strength as a pressure or as a class. */
export const strength = (what: string, ordinary: Ordinary): Field<Quantity<'pressure'>> =>
  orNamed(quantity('pressure', what, 'positive', ordinary), what, classOf);
