/** A whole job is checked as any calculation is: the element that was left out is named. */
import { expect, it } from 'vitest';
import { estimateCheck, jobTakeoff } from '../../src/index';
import { readVectors } from '../support/vectors';

it('names the element that a job was summed up without', () => {
  const found = readVectors().find(({ vector }) => vector.id === 'job-takeoff/navy-ea-building');
  const input = found?.vector.input as Parameters<typeof jobTakeoff>[0];
  const { figures } = jobTakeoff(input);
  const [first] = figures.elements;
  const [all, own] = [figures.concrete, first?.concrete];
  if (!all || !own) return expect.unreachable();
  const without = all.minus(own);
  const check = estimateCheck(jobTakeoff, input, { concrete: without.format() });
  const codes = check.slips[0]?.slips.map(({ code }) => code);
  expect(['term-left-out', 'part-left-out']).toContain(codes?.[0]);
  expect(check.slips[0]?.explains).toEqual(['concrete']);
});
