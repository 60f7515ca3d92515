/** A result where an input is wanted: said as such, since its members are no slip in writing an input. */
import { expect, it } from 'vitest';
import { jointPlan } from '../../src/drawing/index';
import { jointLayout, slabVolume } from '../../src/index';

const input = {
  outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
  thickness: '5 in',
} as const;

it('says that a result was given, and asks for its input', () => {
  const result = slabVolume(input);
  for (const given of [result, JSON.parse(JSON.stringify(result)), { ...result, thickness: '4 in' }]) {
    const attempt = slabVolume.attempt(given as never);
    expect(attempt.ok ? [] : attempt.error.issues).toMatchObject([{ code: 'unreadable-input', path: '' }]);
  }
});

it('says so of a plan that is drawn from an input', () => {
  const plan = jointLayout({ ...input, spacing: '10 ft' });
  expect(() => jointPlan(plan as never)).toThrow('the input is a result of this library');
});

it('names a member that is not known where no result was given', () => {
  const attempt = slabVolume.attempt({ ...input, working: [] } as never);
  expect(attempt.ok ? [] : attempt.error.issues).toMatchObject([{ code: 'unknown-key', path: 'working' }]);
});
