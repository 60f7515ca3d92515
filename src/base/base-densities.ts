/** Density of gravel, compacted and loose, from what is known of it. */
import * as sharedFaults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import type { TonnageParsed } from './base-tonnage-input';
import { densityOf, looseFor } from './materials';

type Density = Quantity<'density'>;

export const ONE = constant(() => ratio('1:1'));

function fromVoids({ solidDensity, voids }: TonnageParsed, pad: Pad): Density | undefined {
  if (!solidDensity) {
    return voids
      ? refuse(
          'solidDensity',
          sharedFaults.missing('solidDensity', ['"165 pcf", with voids', '"2650 kg/m3", with voids']),
        )
      : undefined;
  }
  if (!voids) return refuse('voids', sharedFaults.missing('voids', '"35%", with solidDensity'));
  const left = ONE().minus(voids);
  if (left.sign() <= 0) return refuse('voids', sharedFaults.doesNotFit('voids', '100%'));
  return pad.step(
    'compacted density',
    'C = S × (1 − v)',
    { S: solidDensity, v: voids },
    solidDensity.times(left),
  );
}

/** Densities are shown in the family of units that the job is in. */
const densityUnit = ({ system }: Pad): 'pcf' | 'kg/m3' => (system === 'metric' ? 'kg/m3' : 'pcf');

export function compactedDensity(input: TonnageParsed, pad: Pad): Density {
  const { compactedDensity: given, material } = input;
  const solid = fromVoids(input, pad);
  if (given && solid) return refuse('', sharedFaults.giveOneOf(['compactedDensity', 'solidDensity']));
  const known = given ?? solid;
  if (known) return known;
  if (!material) {
    return refuse(
      'compactedDensity',
      sharedFaults.missing('compactedDensity', [
        '"135 pcf", or give material',
        '"2160 kg/m3", or give material',
      ]),
    );
  }
  const { value, range, source } = densityOf(material, 'compacted', densityUnit(pad));
  pad.assume({
    name: 'compactedDensity',
    value: { reckoned: value },
    because: range,
    override: 'Give compactedDensity from the supplier or a test',
    source,
  });
  return value;
}

/** Loose density: given, that of the table with the compacted one beside it, or by their usual pair. */
export function looseDensity(input: TonnageParsed, C: Density, pad: Pad): Density {
  const { looseDensity: given, material } = input;
  if (given) return given;
  const tabled = material && !input.compactedDensity && !input.solidDensity;
  const known = tabled ? densityOf(material, 'loose', densityUnit(pad)) : looseFor(C, material);
  pad.assume({
    name: 'looseDensity',
    value: { reckoned: known.value },
    because: known.range,
    override: 'Give looseDensity from the supplier',
    source: known.source,
  });
  return known.value;
}
