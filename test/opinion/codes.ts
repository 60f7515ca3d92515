import type { EstimateCheck } from '../../src/index';

/** The slips that a check names, the likeliest first; two together are joined by a plus. */
export const codesOf = ({ slips }: Pick<EstimateCheck, 'slips'>): string[] =>
  slips.map((one) => one.slips.map(({ code }) => code).join(' + '));
