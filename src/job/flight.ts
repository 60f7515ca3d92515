/** Whether the steps that are poured climb what the layout of their risers was asked for. */
import type { StepVolumeFigures } from '../concrete/step-volume';
import { greaterOfPair, paired } from '../quantity/paired';
import type { Caution } from '../reckoning/result';
import type { StepLayoutsFigures } from '../steps/layouts';
import * as cautions from './takeoff-cautions';
import type { WorkedElement } from './work';

/** Risers are marked to a sixteenth, or to 2 mm: so much may be lost on each. */
const LOST = paired('length', '1/16 in', '2 mm');

function unlike({ index, parts }: WorkedElement): Caution[] {
  const of = (name: string) => parts.find(({ part }) => part === name)?.result.figures;
  const layout = of('risers') as StepLayoutsFigures | undefined;
  const poured = of('steps') as StepVolumeFigures | undefined;
  if (!layout?.best || !poured) return [];
  const [climbed, asked] = [poured.totalRise, layout.riserTotal];
  const off = climbed.minus(asked).abs();
  const lost = greaterOfPair(LOST).times(layout.best.risers);
  if (!off.greaterThan(lost)) return [];
  return [{ ...cautions.flightDiffers(climbed, asked, off), input: `elements[${index}].steps` }];
}

/** What to watch out for where the risers of an element are laid out for another height than its steps have. */
export const flightCautions = (elements: readonly WorkedElement[]): Caution[] => elements.flatMap(unlike);
