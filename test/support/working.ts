/** Evaluates printed steps of working with mathjs, as a second opinion on the arithmetic. */
import { evaluate } from 'mathjs';
import type { Step } from '../../src/index';
import { stepText } from '../../src/report/view';

/** SI factor of each unit that a printed step may carry. */
const FACTORS: Readonly<Record<string, number>> = {
  'ft/in': 1,
  in: 0.0254,
  ft: 0.3048,
  mm: 0.001,
  cm: 0.01,
  m: 1,
  in2: 0.0254 ** 2,
  ft2: 0.3048 ** 2,
  cm2: 1e-4,
  m2: 1,
  in3: 0.0254 ** 3,
  ft3: 0.3048 ** 3,
  yd3: 0.9144 ** 3,
  m3: 1,
  acre: 4046.8564224,
  ha: 10_000,
  'tonne/m3': 1000,
  '%': 0.01,
  'in/ft': 1 / 12,
  'mm/m': 0.001,
  ':1': 1,
  'in/h': 0.0254 / 3600,
  'mm/h': 0.001 / 3600,
  'ft/h': 0.3048 / 3600,
  'm/h': 1 / 3600,
  'ft3/s': 0.3048 ** 3,
  'gal/min': 0.003785411784 / 60,
  'L/s': 0.001,
  deg: Math.PI / 180,
  each: 1,
};

const UNITS = Object.keys(FACTORS)
  .sort((a, b) => b.length - a.length)
  .map((u) => u.replace('/', '\\/'))
  .join('|');
const QUANTITY = new RegExp(
  `(?:(\\d+) ft )?(?:(\\d+)(?: |-(?=\\d+\\/)))?(\\d+(?:\\.\\d+)?)(?:\\/(\\d+))? ?(${UNITS})(?![A-Za-z0-9/])`,
  'g',
);
const ONE_IN = /1:(\d+(?:\.\d+)?)/g;

/** The signs of a printed expression as mathjs has them. */
export const inSigns = (text: string): string =>
  text
    .replaceAll('level', '0')
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('√', 'sqrt')
    .replaceAll('π', 'pi')
    .replaceAll('ln(', 'log(');

/** A printed expression with every quantity turned into its SI number. */
function plainNumbers(text: string): string {
  const numbers = text.replace(ONE_IN, '(1/$1)').replace(QUANTITY, (_, feet, whole, top, bottom, unit) => {
    const number = Number(whole ?? 0) + Number(top) / Number(bottom ?? 1);
    return `(${Number(feet ?? 0) * 0.3048 + number * (FACTORS[unit] ?? Number.NaN)})`;
  });
  return inSigns(numbers);
}

/** How far the printed outcome is off the evaluated expression, relative to the larger of both. */
export function disagreement(step: Step): number {
  const { put, gives } = stepText(step);
  const [found, printed] = [evaluate(plainNumbers(put)), evaluate(plainNumbers(gives))] as [number, number];
  return Math.abs(found - printed) / Math.max(Math.abs(found), Math.abs(printed), 0.05);
}
