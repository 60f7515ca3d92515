import type { EstimateCheck } from '../../../src/index';

/** The codes of the likeliest slips, those that are made together joined. */
export const first = ({ slips }: EstimateCheck): string | undefined =>
  slips[0]?.slips.map(({ code }) => code).join(' + ');
