/** The family of units that an input is written in: that of most of its quantities, those of the outline first met. */
import { isQuantity, unitShown } from '../quantity/quantity';
import type { System } from '../quantity/units';

/** The units of so many quantities tell what a job is written in. */
const ENOUGH = 40;

/** Count the quantities of an input that has been read, metric ones against customary ones. */
export function systemOfInput(input: unknown): System {
  let [metric, customary] = [0, 0];
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || metric + customary >= ENOUGH) return;
    if (!isQuantity(value)) {
      for (const name in value) look((value as Record<string, unknown>)[name]);
      return;
    }
    const { system } = unitShown(value);
    if (system === 'metric') metric += 1;
    else if (system) customary += 1;
  };
  look(input);
  return metric > customary ? 'metric' : 'customary';
}
