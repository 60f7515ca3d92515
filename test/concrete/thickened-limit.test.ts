/** A thickened edge follows every corner of the outline, so there is a most of them. */
import { expect, it } from 'vitest';
import { slabVolume } from '../../src/index';

const round = (n: number) => ({
  shape: 'polygon' as const,
  points: Array.from({ length: n }, (_, i) => ({
    x: `${(600 + 500 * Math.cos((2 * Math.PI * i) / n)).toFixed(4)} ft`,
    y: `${(600 + 500 * Math.sin((2 * Math.PI * i) / n)).toFixed(4)} ft`,
  })),
});

it('refuses more corners than an edge is followed around, and says how many it takes', () => {
  const attempt = slabVolume.attempt({
    outline: round(4001),
    thickness: '5 in',
    edge: { below: '6 in', width: '10 in' },
  });
  expect(attempt.ok).toBe(false);
  if (attempt.ok) return;
  expect(attempt.error.issues.map(({ code, path }) => [code, path])).toEqual([['too-many', 'edge']]);
  expect(attempt.error.message).toContain('4000');
});
