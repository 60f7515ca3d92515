/**
 * Granular materials with their usual densities, loose and compacted.
 *
 * Ranges, not promises: the supplier's figure or a test always goes before them. Loose and compacted are
 * pairs of one material: a compacted yard takes from an eighth to a third more of it loose. A loose weight out
 * of a table stands only where it makes such a pair; tables of loose broken stone do not go with stone that is
 * graded to compact, whose loose weight is the compacted one less a fifth.
 */
import { constant, density, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Source } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import {
  ARMY_WEIGHTS,
  COMPACTED_STONE,
  GILLETTE_WEIGHTS,
  LOOSE_SHARE,
  OHIO_DENSITIES,
  RADFORD_WEIGHTS,
} from './sources';

/** Materials with densities at hand. */
export type BaseMaterial =
  | 'crushed-stone'
  | 'crushed-limestone'
  | 'crusher-run'
  | 'clean-stone'
  | 'gravel'
  | 'gravel-and-sand'
  | 'earth-and-gravel'
  | 'sand'
  | 'crushed-concrete';

type Density = Quantity<'density'>;

/** A usual density and the range it lies in, in pcf. */
type Usual = readonly [usual: number, from: number, to: number, source: Source];

/** What is known of a material. */
interface Densities {
  readonly loose: Usual;
  readonly compacted: Usual;
}

/** Graded to compact: 1.25 loose yards to a compacted one. */
const GRADED: Densities = {
  loose: [112, 100, 125, LOOSE_SHARE],
  compacted: [140, 130, 150, OHIO_DENSITIES],
};

const TABLE: Record<BaseMaterial, Densities> = {
  'crushed-stone': GRADED,
  'crushed-limestone': GRADED,
  'crusher-run': GRADED,
  'clean-stone': {
    loose: [90, 85, 100, RADFORD_WEIGHTS],
    compacted: [105, 95, 115, COMPACTED_STONE],
  },
  gravel: { loose: [110, 95, 115, ARMY_WEIGHTS], compacted: [125, 115, 135, COMPACTED_STONE] },
  'gravel-and-sand': {
    loose: [104, 95, 120, LOOSE_SHARE],
    compacted: [130, 120, 140, COMPACTED_STONE],
  },
  'earth-and-gravel': {
    loose: [100, 95, 105, ARMY_WEIGHTS],
    compacted: [125, 115, 135, COMPACTED_STONE],
  },
  sand: { loose: [100, 75, 105, GILLETTE_WEIGHTS], compacted: [115, 105, 125, COMPACTED_STONE] },
  'crushed-concrete': {
    loose: [100, 85, 110, LOOSE_SHARE],
    compacted: [125, 115, 135, OHIO_DENSITIES],
  },
};

/** The names of the materials. */
export const BASE_MATERIALS = /*#__PURE__*/ Object.keys(TABLE) as BaseMaterial[];

/** A density out of the table, with its range in words. */
export interface KnownDensity {
  readonly value: Quantity<'density'>;
  readonly range: Words;
  readonly source: Source;
}

const KG_PER_M3_OF_A_PCF = 16.018463;

/** A density of the table, in metric to the nearest ten, as nobody knows it closer. */
const inRound = (pcf: number, unit: 'pcf' | 'kg/m3'): Quantity<'density'> =>
  density(unit === 'pcf' ? `${pcf} pcf` : `${Math.round((pcf * KG_PER_M3_OF_A_PCF) / 10) * 10} kg/m3`);

/** The usual density of a material, in pcf or in kg/m3. */
export function densityOf(
  material: BaseMaterial,
  state: 'loose' | 'compacted',
  unit: 'pcf' | 'kg/m3',
): KnownDensity {
  const [value, from, to, source] = TABLE[material][state];
  const words = material.replaceAll('-', ' ');
  const which = source.fromMemory ? 'range from memory' : 'range partly from memory';
  const [usual, least, most] = [value, from, to].map((pcf) => inRound(pcf, unit)) as [
    Density,
    Density,
    Density,
  ];
  return {
    value: usual,
    range: say`${{ material: words }}, ${{ state }}: ${{ from: least }} to ${{ to: most }} are met with (${{ which }})`,
    source,
  };
}

/** A quarter more loose than compacted, where the material is not known. */
const USUAL_SHARE = constant(() => ratio('0.8:1'));

/** Loose density for a compacted one: their usual pair tells how much lighter it is. */
export function looseFor(compacted: Quantity<'density'>, material: BaseMaterial | undefined): KnownDensity {
  const pair = material && TABLE[material];
  const share = pair
    ? density(`${pair.loose[0]} pcf`).over(density(`${pair.compacted[0]} pcf`))
    : USUAL_SHARE();
  const times = (1 / share.toNumber(':1')).toFixed(2);
  const words = material ? material.replaceAll('-', ' ') : 'graded base';
  return {
    value: compacted.times(share),
    range: say`${{ material: words }} takes about ${{ times }} times its compacted volume loose; 1.12 to 1.33 are met with`,
    source: LOOSE_SHARE,
  };
}
