/**
 * Granular materials with their usual densities, loose and compacted.
 *
 * Ranges, not promises: the supplier's figure or a test always goes before them. Loose weights come
 * from tables that were read; compacted ones are what the trade counts on, from memory.
 */
import { density } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import {
  ARMY_WEIGHTS,
  COMMON_PRACTICE,
  COMPACTED_STONE,
  GILLETTE_WEIGHTS,
  RADFORD_WEIGHTS,
  type Source,
} from '../reckoning/source';

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

/** A usual density and the range it lies in, in pcf. */
type Usual = readonly [usual: number, from: number, to: number, source: Source];

/** What is known of a material. */
interface Densities {
  readonly loose: Usual;
  readonly compacted: Usual;
}

const TABLE: Record<BaseMaterial, Densities> = {
  'crushed-stone': {
    loose: [95, 90, 100, ARMY_WEIGHTS],
    compacted: [140, 130, 150, COMPACTED_STONE],
  },
  'crushed-limestone': {
    loose: [100, 90, 105, ARMY_WEIGHTS],
    compacted: [140, 130, 145, COMPACTED_STONE],
  },
  'crusher-run': {
    loose: [100, 90, 105, RADFORD_WEIGHTS],
    compacted: [140, 130, 150, COMPACTED_STONE],
  },
  'clean-stone': {
    loose: [90, 85, 100, RADFORD_WEIGHTS],
    compacted: [105, 95, 115, COMPACTED_STONE],
  },
  gravel: { loose: [110, 95, 115, ARMY_WEIGHTS], compacted: [125, 115, 135, COMPACTED_STONE] },
  'gravel-and-sand': {
    loose: [95, 95, 120, ARMY_WEIGHTS],
    compacted: [130, 120, 140, COMPACTED_STONE],
  },
  'earth-and-gravel': {
    loose: [100, 95, 105, ARMY_WEIGHTS],
    compacted: [125, 115, 135, COMPACTED_STONE],
  },
  sand: { loose: [100, 75, 105, GILLETTE_WEIGHTS], compacted: [115, 105, 125, COMPACTED_STONE] },
  'crushed-concrete': {
    loose: [90, 80, 95, COMMON_PRACTICE],
    compacted: [125, 115, 135, COMPACTED_STONE],
  },
};

/** The names of the materials. */
export const BASE_MATERIALS = /*#__PURE__*/ Object.keys(TABLE) as BaseMaterial[];

/** A density out of the table, with its range in words. */
export interface KnownDensity {
  readonly value: Quantity<'density'>;
  readonly range: string;
  readonly source: Source;
}

/** The usual density of a material. */
export function densityOf(material: BaseMaterial, state: 'loose' | 'compacted'): KnownDensity {
  const [value, from, to, source] = TABLE[material][state];
  const words = material.replaceAll('-', ' ');
  const which = source.fromMemory ? 'range from memory' : 'range partly from memory';
  return {
    value: density(`${value} pcf`),
    range: `${words}, ${state}: ${from} to ${to} pcf are met with (${which})`,
    source,
  };
}
