/** Slips between units: the number of one under the name of another, and factors that were not or wrongly taken. */
import type { Dimension } from '../quantity/dimensions';
import { type Unit, unitsIn } from '../quantity/units';
import type { SlipCode } from './slip';

/** A number in one unit, as another makes of it. */
export interface Misnamed {
  readonly code: SlipCode;
  /** What the number is multiplied with. */
  readonly times: readonly [top: string, bottom: string];
  /** The unit whose number it would be, where there is one. */
  readonly as?: string;
  readonly weight: number;
}

/** Slips known by name: what stands under a unit is as many times too much. */
const KNOWN: Readonly<Record<string, readonly Misnamed[]>> = {
  yd3: [
    { code: 'not-divided-by-27', times: ['27', '1'], as: 'ft3', weight: 30 },
    { code: 'divided-by-9', times: ['3', '1'], weight: 20 },
    { code: 'wrong-factor', times: ['27', '25'], weight: 2 },
    { code: 'divided-by-3', times: ['9', '1'], weight: 4 },
    { code: 'converted-twice', times: ['1', '27'], weight: 3 },
    { code: 'linear-factor', times: ['0.764554857984', '0.9144'], weight: 3 },
  ],
  ft3: [
    { code: 'wrong-unit', times: ['1', '27'], as: 'yd3', weight: 6 },
    { code: 'inches-as-feet', times: ['12', '1'], weight: 4 },
  ],
  yd2: [
    { code: 'wrong-unit', times: ['9', '1'], as: 'ft2', weight: 14 },
    { code: 'divided-by-3', times: ['3', '1'], weight: 8 },
    { code: 'divided-by-9', times: ['1', '9'], weight: 2 },
    { code: 'linear-factor', times: ['0.83612736', '0.9144'], weight: 3 },
  ],
  ft2: [
    { code: 'wrong-unit', times: ['144', '1'], as: 'in2', weight: 8 },
    { code: 'linear-factor', times: ['12', '1'], weight: 4 },
    { code: 'wrong-unit', times: ['1', '9'], as: 'yd2', weight: 6 },
  ],
  // 4.546 09 L and 231 in3.
  gal: [
    { code: 'wrong-gallon', times: ['1.20094992550', '1'], weight: 3 },
    { code: 'wrong-gallon', times: ['1', '1.20094992550'], weight: 3 },
  ],
  m3: [{ code: 'wrong-unit', times: ['1000', '1'], as: 'L', weight: 6 }],
};

const TONS: ReadonlySet<string> = /*#__PURE__*/ new Set(['ton', 'tonne', 'longton']);

const isLinear = (d: Dimension): boolean => d === 'area' || d === 'volume';

function codeOf(own: Unit, other: Unit): SlipCode {
  const pair = `${other.id} ${own.id}`;
  if (TONS.has(own.id) && TONS.has(other.id)) return 'wrong-ton';
  if (pair === 'in ft' || pair === 'in ft-in') return 'inches-as-feet';
  if (pair === 'ft in' || pair === 'ft-in in') return 'feet-as-inches';
  if (own.dimension === 'slope') return 'slope-unit';
  if (own.dimension === 'temperature-difference') return 'degree-interval';
  if (own.dimension === 'temperature') return 'temperature-scale';
  return 'wrong-unit';
}

/** Few jobs know both systems: inches for millimeters are rarer than feet for inches. */
const OTHER_SYSTEM = 1.5;

/** Units that a notebook mixes up with another, as common as they are. */
function weightOf(own: Unit, other: Unit, code: SlipCode): number {
  if (code === 'wrong-ton') return 10;
  if (code === 'inches-as-feet') return 14;
  if (code === 'feet-as-inches') return 6;
  if (code === 'slope-unit' || code === 'temperature-scale' || code === 'degree-interval') return 10;
  if (own.id === 'oz' || other.id === 'oz' || other.id === 'mi' || other.id === 'km' || other.id === 'acre')
    return 0.3;
  return own.system === other.system ? 4 : OTHER_SYSTEM;
}

const usable = (unit: Unit): boolean =>
  unit.form !== 'one-in' && unit.form !== 'feet-inches' && unit.form !== 'money';

/** Every unit whose number may stand under the name of this one: `times` is what that makes of it. */
function* otherUnits(own: Unit): Generator<Misnamed> {
  const feet = own.form === 'feet-inches';
  for (const other of unitsIn(own.dimension)) {
    if (!usable(other) || other.id === own.id || (feet && other.id === 'ft') || other.offset || own.offset)
      continue;
    const code = codeOf(own, other);
    const times = [own.factor.toFixed(), other.factor.toFixed()] as const;
    yield { code, times, as: other.id, weight: weightOf(own, other, code) };
    if (isLinear(own.dimension) && own.system !== other.system) yield* linear(own, other);
  }
}

/** Feet to a meter taken once, where they are to be taken two or three times. */
function* linear(own: Unit, other: Unit): Generator<Misnamed> {
  if (own.id !== 'm2' && own.id !== 'm3' && other.id !== 'm2' && other.id !== 'm3') return;
  const ratio = other.factor.div(own.factor);
  const root = ratio.toNumber() ** (own.dimension === 'area' ? 1 / 2 : 1 / 3);
  // The side of a unit has no more than eight digits; the rest is stray.
  const side = String(Number(root.toPrecision(10)));
  yield { code: 'linear-factor', times: [side, ratio.toFixed()], as: other.id, weight: OTHER_SYSTEM };
}

/** What may have become of a number under the name of a unit. */
export function* misnamed(unit: Unit): Generator<Misnamed> {
  if (unit.form === 'money' || unit.form === 'one-in') return;
  const known = KNOWN[unit.id] ?? [];
  yield* known;
  const named = new Set(known.map(({ as }) => as));
  for (const one of otherUnits(unit)) if (one.code === 'linear-factor' || !named.has(one.as)) yield one;
}
