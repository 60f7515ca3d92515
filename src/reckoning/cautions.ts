/**
 * Cautions that several trades raise; those of one trade stand in its folder.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from './result';
import * as sources from './source';
import { say } from './words';

type Length = Quantity<'length'>;

export const steepRiser = (limit: Length, actual: Length): Caution => ({
  code: 'riser-too-high',
  severity: 'warning',
  ...say`a riser higher than ${{ limit }} is not allowed in most dwellings; people trip on it. Check the local code`,
  limit,
  actual,
  source: sources.IRC_STAIRS,
});

export const narrowTread = (limit: Length, actual: Length): Caution => ({
  code: 'tread-too-narrow',
  severity: 'warning',
  ...say`a tread narrower than ${{ limit }} is not allowed in most dwellings; people miss it. Check the local code`,
  limit,
  actual,
  source: sources.IRC_STAIRS,
});

export const handrail = (limit: Quantity<'count'>, actual: Quantity<'count'>): Caution => ({
  code: 'handrail',
  severity: 'warning',
  says: 'a flight of four or more risers usually needs a handrail; plan its anchors before the pour and check the local code',
  limit,
  actual,
  source: sources.IRC_HANDRAIL,
});

export const silica: Caution = {
  code: 'silica-dust',
  severity: 'warning',
  says: 'sawing, drilling or grinding hardened concrete dry releases respirable silica; work wet or with extraction and follow the dust rules that apply',
  always: true,
  source: sources.SILICA_RULE,
};

export const alkali: Caution = {
  code: 'alkaline-burns',
  severity: 'warning',
  always: true,
  says: 'wet concrete burns skin and eyes: wear gloves, boots and eye protection, and wash it off at once',
  source: sources.COMMON_PRACTICE,
};

export const lowRiser = (limit: Length, actual: Length): Caution => ({
  code: 'riser-too-low',
  severity: 'warning',
  ...say`a riser lower than ${{ limit }} is easily overlooked; people trip on it. Check the local code`,
  limit,
  actual,
  source: sources.CC_STEPS,
});
