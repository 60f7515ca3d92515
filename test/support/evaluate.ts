/**
 * An independent reading of a printed step: mathjs (a general-purpose library) evaluates the text with
 * its own units.
 */
import { all, create, type FactoryFunctionMap, type Unit } from 'mathjs';

const math = create(all as FactoryFunctionMap, {});
// mathjs knows no tonne of its own short name, no kip, no currency; a slope and a ratio are plain numbers.
// Its own hypot takes no units.
math.import({
  hyp: (a: Unit, b: Unit) => math.sqrt(math.add(math.multiply(a, a), math.multiply(b, b)) as Unit),
});
math.createUnit('xtonne', '1000 kg');
math.createUnit('xton', '2000 lbm');
math.createUnit('xlongton', '2240 lbm');
math.createUnit('xMPa', '1000000 Pa');
math.createUnit('xmoney');
math.createUnit('xdegC', '1 K');
math.createUnit('xdegF', '0.5555555555555555556 K');

const NAMES: Record<string, string> = {
  ft: 'ft',
  in: 'inch',
  yd: 'yard',
  mi: 'mile',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  km: 'km',
  acre: 'acre',
  ha: 'hectare',
  gal: 'gallon',
  floz: 'fluidounce',
  qt: 'quart',
  mL: 'mL',
  L: 'L',
  lb: 'lbm',
  oz: 'oz',
  ton: 'xton',
  longton: 'xlongton',
  kg: 'kg',
  g: 'g',
  tonne: 'xtonne',
  pcf: 'lbm/ft^3',
  mph: 'mile/hour',
  lbf: 'lbf',
  kip: 'kip',
  N: 'N',
  kN: 'kN',
  psi: 'psi',
  psf: 'lbf/ft^2',
  kPa: 'kPa',
  MPa: 'xMPa',
  s: 's',
  min: 'minute',
  h: 'hour',
  day: 'day',
  deg: 'deg',
  // What stands between two temperatures is a difference, which has no zero of its own.
  degF: 'xdegF',
  degC: 'xdegC',
  degFh: 'xdegF hour',
  degCh: 'xdegC hour',
};

const unitName = (unit: string): string =>
  unit
    .split('/')
    .map((part) => {
      const [, name = '', power = ''] = /^([A-Za-z]+)([23]?)$/.exec(part) ?? [];
      return (NAMES[name] ?? name) + (power ? `^${power}` : '');
    })
    .join('/');

const UNIT = '(?:[A-Za-z]+[23]?(?:/[A-Za-z]+[23]?)*)';

/** From our print to an expression of mathjs. */
function translated(text: string): string {
  return (
    text
      .replaceAll('fl oz', 'floz')
      .replace(/deg([CF])-h\b/g, 'deg$1h')
      .replace(/\bln\(/g, 'log(')
      // 12 ft 6-1/2 in
      .replace(
        /(\d+) ft (?:(\d+)[ -])?(\d+)\/(\d+) in\b/g,
        (_, f, i, a, b) => `(${f} ft + ${i ?? 0} inch + (${a}/${b}) inch)`,
      )
      .replace(/(\d+) ft (\d+) in\b/g, '($1 ft + $2 inch)')
      .replace(
        /(?<![\d/.])(?:(\d+)[ -])?(\d+)\/(\d+) in\b/g,
        (_, i, a, b) => `(${i ?? 0} inch + (${a}/${b}) inch)`,
      )
      .replace(/(\d+(?:\.\d+)?):1\b/g, '($1)')
      .replace(/\b1:(\d+(?:\.\d+)?)/g, '(1/$1)')
      .replace(/(\d+(?:\.\d+)?)%/g, '($1/100)')
      .replace(new RegExp(String.raw`(\d(?:[\d.]*)) (${UNIT})(?![\w(])`, 'g'), (_, n, unit) => {
        if (unit === 'each') return n;
        if (/^[A-Z]{3}$/.test(unit)) return `(${n} xmoney)`;
        return `(${n} ${unitName(unit)})`;
      })
      .replaceAll('×', '*')
      .replaceAll('÷', '/')
      .replaceAll('−', '-')
      .replaceAll('√', 'sqrt')
      .replaceAll('hypot(', 'hyp(')
      .replaceAll('π', 'pi')
      .replaceAll('²', '^2')
      .replaceAll('³', '^3')
  );
}

/** The value of a printed text, as a plain number in SI units. */
export function evaluated(text: string): number {
  const value = math.evaluate(translated(text)) as number | Unit;
  if (typeof value === 'number') return value;
  const unit = value as Unit & { value: number };
  return unit.value;
}
