/**
 * The units of the trade, each an exact decimal.
 *
 * Definitions: the international foot (1 ft = 0.3048 m) and the avoirdupois pound
 * (1 lb = 0.453 592 37 kg) as in NIST Special Publication 811; the US gallon is 231 in3, of 4 quarts and 128 fluid ounces; the acre
 * is 43,560 international square feet, as NIST has it since 1 January 2023; the pound-force uses
 * standard gravity, 9.806 65 m/s2. All from memory but the foot, pound, gallon and acre, which were
 * read.
 */
import { Decimal } from './decimal';
import type { Dimension } from './dimensions';

/** Which family of units a quantity is shown in when none is asked for. */
export type System = 'customary' | 'metric';

/** The ids of the units of each dimension, in the order in which exact text prefers them. */
export interface UnitIds {
  /** Of length. */
  length: 'ft-in' | 'ft' | 'in' | 'yd' | 'mi' | 'm' | 'mm' | 'cm' | 'km';
  /** Of area. */
  area: 'ft2' | 'in2' | 'yd2' | 'acre' | 'm2' | 'ha' | 'cm2' | 'mm2';
  /** Of volume. */
  volume: 'yd3' | 'ft3' | 'in3' | 'gal' | 'qt' | 'fl oz' | 'm3' | 'L' | 'mL' | 'cm3';
  /** Of mass. */
  mass: 'lb' | 'ton' | 'oz' | 'kg' | 'tonne' | 'longton' | 'g';
  /** Of density. */
  density: 'pcf' | 'lb/yd3' | 'ton/yd3' | 'kg/m3' | 'tonne/m3';
  /** Of mass per length. */
  'mass-per-length': 'lb/ft' | 'kg/m';
  /** Of mass per area. */
  'mass-per-area': 'lb/ft2' | 'lb/yd2' | 'kg/m2' | 'oz/yd2' | 'g/m2';
  /** Of slope. */
  slope: 'in/ft' | '%' | 'mm/m' | '1:n';
  /** Of angle. */
  angle: 'deg';
  /** Of time. */
  time: 'h' | 'min' | 's' | 'day' | 'week';
  /** Of temperature. */
  temperature: 'degF' | 'degC';
  /** Of temperature difference. */
  'temperature-difference': 'degF' | 'degC';
  /** Of temperature over time, as maturity is told. */
  'temperature-time': 'degF-h' | 'degC-h';
  /** Of speed. */
  speed: 'mph' | 'ft/s' | 'km/h' | 'm/s' | 'in/h' | 'mm/h' | 'ft/h' | 'm/h';
  /** Of force. */
  force: 'lbf' | 'kip' | 'N' | 'kN';
  /** Of pressure. */
  pressure: 'psi' | 'ksi' | 'psf' | 'ksf' | 'MPa' | 'kPa' | 'GPa';
  /** Of volume rate. */
  'volume-rate': 'yd3/h' | 'm3/h' | 'gal/min' | 'L/s' | 'ft3/s';
  /** Of evaporation. */
  evaporation: 'lb/ft2/h' | 'kg/m2/h';
  /** Of ratio. */
  ratio: '%' | ':1';
  /** Of count. */
  count: 'each';
  /** The code of a currency by ISO 4217. */
  money: string;
}

/** The id of a unit of a dimension. */
export type UnitId<D extends Dimension = Dimension> = UnitIds[D];

/** One unit. `canonical = value × factor + offset`, or `factor ÷ value` for a slope of 1:n. */
export interface Unit {
  readonly id: string;
  readonly dimension: Dimension;
  readonly factor: Decimal;
  readonly offset?: Decimal;
  readonly form?: 'feet-inches' | 'one-in' | 'to-one' | 'percent' | 'money';
  readonly system?: System;
  /** True for the unit in which its dimension is kept. */
  readonly canonical: boolean;
  /** What the factor has besides twos and fives: a number finite in this unit has a canonical value that is a multiple. */
  readonly divisor: number | bigint;
  /** Decimal places when shown; trailing zeros are kept only where `fixed`. */
  readonly places: number;
  readonly fixed: boolean;
}

// A dimension, and its units: id | factor | system (c, m, or -) | places (= keeps trailing zeros) | aliases
// The aliases are lower case; a unit is looked up as written first, then in lower case, then without
// the s of a plural.
// Within a dimension the order is that in which exact text prefers them; the first of each family is the usual one.
const TABLE = `
length
ft-in|0.3048|c|3
ft|0.3048|c|3|foot,feet,',lf
in|0.0254|c|4|inch,inches,",''
yd|0.9144|c|3|yard,yds
mi|1609.344|c|3|mile
m|1|m|3|metre,meter,mtr,lm
mm|0.001|m|1|millimetre,millimeter
cm|0.01|m|2|centimetre,centimeter
km|1000|m|3|kilometre,kilometer
area
ft2|0.09290304|c|2|sf,sqft
in2|0.00064516|c|2
yd2|0.83612736|c|2|sy,sqyd
acre|4046.8564224|c|4
m2|1|m|2|sqm
ha|10000|m|4|hectare
cm2|0.0001|m|2
mm2|0.000001|m|1
volume
yd3|0.764554857984|c|2=|cy,cuyd,yard,yds
ft3|0.028316846592|c|2|cf,cuft
in3|0.000016387064|c|2
gal|0.003785411784|c|2|gallon
qt|0.000946352946|c|2|quart
fl oz|0.0000295735295625|c|1|floz,fl ounce,fluid oz,fluid ounce
m3|1|m|2=|cum
L|0.001|m|2|litre,liter
mL|0.000001|m|1|millilitre,milliliter
cm3|0.000001|m|1
mass
lb|0.45359237|c|1|pound
ton|907.18474|c|2=|tn
oz|0.028349523125|c|1|ounce
kg|1|m|1|kilogram,kilo
tonne|1000|m|2=
longton|1016.0469088|c|2=
g|0.001|m|1|gram
density
pcf|12.24699399|c|1|lb/ft3
lb/yd3|0.45359237|c|1
ton/yd3|907.18474|c|3
kg/m3|0.764554857984|m|1
tonne/m3|764.554857984|m|3|t/m3
mass-per-length
lb/ft|0.45359237|c|3|plf
kg/m|0.3048|m|3
mass-per-area
lb/ft2|4.08233133|c|3
lb/yd2|0.45359237|c|2
kg/m2|0.83612736|m|2
oz/yd2|0.028349523125|c|1
g/m2|0.00083612736|m|1
slope
in/ft|1|c|3
%|0.12|-|2|percent,pct,cm/m
mm/m|0.012|m|2
1:n|12|-|2
angle
deg|1|-|3|degree,°
time
h|3600|-|2|hr,hour
min|60|-|1|minute
s|1|-|1|sec,second
day|86400|-|2|d
week|604800|-|2|wk
temperature
degF|1|c|1|f
degC|1.8|m|1|c
temperature-difference
degF|1|c|1|f
degC|1.8|m|1|c
temperature-time
degF-h|1|c|1|f-h,°f-h
degC-h|1.8|m|1|c-h,°c-h
speed
mph|1609.344|c|2|mi/h
ft/s|1097.28|c|2|fps
km/h|1000|m|2|kph,kmh
m/s|3600|m|2
in/h|0.0254|c|2
mm/h|0.001|m|1
ft/h|0.3048|c|2|fph
m/h|1|m|2
force
lbf|4.4482216152605|c|1
kip|4448.2216152605|c|3
N|1|m|1
kN|1000|m|3
pressure
psi|640.543912597512|c|1|lbf/in2,lb/in2
ksi|640543.912597512|c|3|kip/in2
psf|4.4482216152605|c|1|lbf/ft2,lb/ft2
ksf|4448.2216152605|c|3|kip/ft2
MPa|92903.04|m|2|n/mm2,mn/m2
GPa|92903040|m|2|kn/mm2
kPa|92.90304|m|2|kn/m2
volume-rate
yd3/h|0.764554857984|c|2|yd/h
m3/h|1|m|2
gal/min|0.22712470704|c|2|gpm
L/s|3.6|m|2
ft3/s|101.9406477312|c|3|cfs
evaporation
lb/ft2/h|0.45359237|c|3
kg/m2/h|0.09290304|m|3
ratio
%|0.01|-|2|percent,pct
:1|1|-|4
count
each|1|-|2|ea,pc,piece
`;

/** Units that are not written as a number and a name. */
const FORMS: Record<string, Unit['form']> = {
  'ft-in': 'feet-inches',
  '1:n': 'one-in',
  ':1': 'to-one',
  '%': 'percent',
};

/** Read as degrees Celsius = 1.8 Fahrenheit degrees above 32 degF. */
const CELSIUS_ZERO = '32';

interface Registry {
  readonly byId: ReadonlyMap<string, Unit>;
  /** From a normalised alias to every unit that it may mean, in different dimensions. */
  readonly byAlias: ReadonlyMap<string, readonly Unit[]>;
}

let registry: Registry | undefined;

const idKey = (dimension: Dimension, id: string): string => `${dimension} ${id}`;

/** What is left of the digits without twos and fives. */
function divisorOf(factor: string): number | bigint {
  let rest = BigInt(factor.replace('.', ''));
  for (const prime of [2, 5].map(BigInt)) while (rest % prime === BigInt(0)) rest /= prime;
  return rest > Number.MAX_SAFE_INTEGER ? rest : Number(rest);
}

function readRow(row: string, dimension: Dimension): { unit: Unit; aliases: string[] } {
  const [id = '', factor = '', system = '', places = '', aliases = ''] = row.split('|');
  const form = FORMS[id];
  const unit: Unit = Object.freeze({
    id,
    dimension,
    factor: new Decimal(factor),
    ...(id === 'degC' && dimension === 'temperature' ? { offset: new Decimal(CELSIUS_ZERO) } : {}),
    ...(form ? { form } : {}),
    canonical: factor === '1',
    divisor: divisorOf(factor),
    ...(system === '-' ? {} : { system: system === 'c' ? 'customary' : 'metric' }),
    places: Number.parseInt(places, 10),
    fixed: places.endsWith('='),
  });
  return {
    unit,
    aliases: [id, id.toLowerCase(), ...aliases.split(',').filter(Boolean)],
  };
}

function units(): Registry {
  if (registry) return registry;
  const byId = new Map<string, Unit>();
  const byAlias = new Map<string, Unit[]>();
  let dimension: Dimension = 'length';
  for (const row of TABLE.trim().split('\n')) {
    if (!row.includes('|')) {
      dimension = row as Dimension;
      continue;
    }
    const { unit, aliases } = readRow(row, dimension);
    byId.set(idKey(unit.dimension, unit.id), unit);
    for (const alias of aliases) {
      const list = byAlias.get(alias);
      if (list) list.push(unit);
      else byAlias.set(alias, [unit]);
    }
  }
  registry = { byId, byAlias };
  return registry;
}

/** The unit of that id and dimension, or `undefined`. */
export function unitOf(dimension: Dimension, id: string): Unit | undefined {
  return dimension === 'money' ? undefined : units().byId.get(idKey(dimension, id));
}

/** All units of a dimension, in the order of the table. */
export const unitsIn = (dimension: Dimension): readonly Unit[] =>
  [...units().byId.values()].filter((u) => u.dimension === dimension);

/**
 * The ids of all units of a dimension, for a list to choose from; none for money, whose units are currencies.
 *
 * @param dimension - what is measured
 * @returns the ids, in the order in which exact data prefers them
 * @example
 * ```ts
 * import { unitsOf } from 'flatwork-reckoner';
 *
 * unitsOf('evaporation'); // [ 'lb/ft2/h', 'kg/m2/h' ]
 * ```
 */
export const unitsOf = <D extends Dimension>(dimension: D): readonly UnitId<D>[] =>
  unitsIn(dimension).map(({ id }) => id as UnitId<D>);

/** An s behind two letters or more: `lbs`, `yards`. */
const PLURAL = /(?<=..)s$/;

/** Every unit an already normalised name may mean. */
export function unitsNamed(name: string): readonly Unit[] {
  const { byAlias } = units();
  const lower = name.toLowerCase();
  return byAlias.get(name) ?? byAlias.get(lower) ?? byAlias.get(lower.replace(PLURAL, '')) ?? [];
}

type Usual = { readonly [S in System]: Unit };

const shown: { [D in Dimension]?: Usual } = {};

/**
 * The unit that a quantity is shown in when none is asked for: the first of its dimension in the table that is of
 * the family, or of both.
 */
export function usualUnit(dimension: Exclude<Dimension, 'money'>, system: System): Unit {
  let pair = shown[dimension];
  if (!pair) {
    const all = unitsIn(dimension);
    const first = (family: System): Unit => all.find((u) => (u.system ?? family) === family) as Unit;
    pair = { customary: first('customary'), metric: first('metric') };
    shown[dimension] = pair;
  }
  return pair[system];
}

const currencies = new Map<string, Unit>();

/** Currencies without a coin below one, and those with a thousandth, by ISO 4217 (from memory; tests ask ICU). */
const WHOLE = 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF';
const THOUSANDTHS = 'BHD IQD JOD KWD LYD OMR TND';

const placesOf = (code: string): number => (WHOLE.includes(code) ? 0 : THOUSANDTHS.includes(code) ? 3 : 2);

/** The unit of money with that ISO 4217 code. */
export function currencyUnit(code: string): Unit {
  let unit = currencies.get(code);
  if (!unit) {
    unit = Object.freeze({
      id: code,
      dimension: 'money',
      factor: new Decimal(1),
      form: 'money',
      canonical: true,
      divisor: 1,
      places: placesOf(code),
      fixed: true,
    } satisfies Unit);
    currencies.set(code, unit);
  }
  return unit;
}

/** The id of a unit as it was given: what is no text may be a trap when made into one. */
export const idOf = (given: unknown): string => (typeof given === 'string' ? given : 'no text');
