/**
 * What the concrete has to stand: frost by how wet it lies and whether salt comes to it, and sulfate.
 *
 * Classes as ACI 318 names them: F0 does not freeze, F1 freezes while little wet, F2 freezes wet, F3 freezes
 * wet with deicers. Flatwork lies wet; a wall sheds its water; a footing below frost does not freeze.
 */
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';

/** What is poured. */
export type MixUse =
  | 'driveway'
  | 'walk'
  | 'patio'
  | 'steps'
  | 'garage-floor'
  | 'interior-slab'
  | 'footing'
  | 'wall';

/** Every use, for fields. */
export const MIX_USES: readonly MixUse[] = [
  'driveway',
  'walk',
  'patio',
  'steps',
  'garage-floor',
  'interior-slab',
  'footing',
  'wall',
];

/** How hard the weather is on concrete, in the words of residential codes. */
export type Weathering = 'negligible' | 'moderate' | 'severe';

/** From the mildest. */
export const WEATHERINGS: readonly Weathering[] = ['negligible', 'moderate', 'severe'];

/** Frost, water and salt, in classes. */
export type FrostClass = 'F0' | 'F1' | 'F2' | 'F3';

/** Sulfate in soil or water. */
export type Sulfate = 'none' | 'moderate' | 'severe' | 'very-severe';

/** From none on. */
export const SULFATES: readonly Sulfate[] = ['none', 'moderate', 'severe', 'very-severe'];

/** Uses that cars or people salt: where deicers come though nobody spreads them, too. */
const SALTED: readonly MixUse[] = ['driveway', 'walk', 'steps', 'garage-floor'];
const OUTDOORS: readonly MixUse[] = ['driveway', 'walk', 'patio', 'steps', 'garage-floor'];

/** Flatwork that meets the weather, or the slush that cars bring in. */
export const isExposed = (use: MixUse): boolean => OUTDOORS.includes(use);

interface Asked {
  readonly use: MixUse;
  readonly weathering: Weathering;
  readonly deicers: boolean | undefined;
}

function salted({ use, deicers }: Asked, pad: Pad): boolean {
  if (deicers !== undefined) return deicers;
  const taken = SALTED.includes(use);
  pad.assume({
    name: 'deicers',
    value: taken ? 'yes' : 'no',
    because: taken
      ? 'where it freezes, salt is spread on it or drips from cars sooner or later'
      : 'nobody salts it as a rule',
    override: 'Give deicers',
    source: COMMON_PRACTICE,
  });
  return taken;
}

/** The class of frost. */
export function frostClass(asked: Asked, pad: Pad): FrostClass {
  const { use, weathering } = asked;
  if (weathering === 'negligible' || use === 'interior-slab' || use === 'footing') return 'F0';
  if (use === 'wall') return asked.deicers ? 'F3' : 'F1';
  return salted(asked, pad) ? 'F3' : 'F2';
}
