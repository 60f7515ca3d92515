/** Joint plans of growing size: panels from 10 to 10,000, and a floor with columns. */
import { type JointLayoutInput, jointLayout } from '../../src/index';

/** One thing to be timed. */
interface Case {
  readonly name: string;
  readonly run: () => unknown;
}

/** A rectangle of about so many panels of 10 ft. */
function floor(panels: number): JointLayoutInput {
  const across = Math.max(2, Math.floor(Math.sqrt(panels)));
  const along = Math.ceil(panels / across);
  return {
    outline: { shape: 'rectangle', length: `${along * 10} ft`, width: `${across * 10} ft` },
    thickness: '5 in',
    spacing: '10 ft',
  };
}

const columns = Array.from({ length: 40 }, (_, i) => ({
  shape: 'circle' as const,
  at: { x: `${27.5 + (i % 8) * 35} ft`, y: `${40 + Math.floor(i / 8) * 55} ft` },
  diameter: '2 ft',
}));

const withColumns: JointLayoutInput = {
  outline: { shape: 'rectangle', length: '300 ft', width: '300 ft' },
  openings: columns,
  columns: columns.map((_, i) => i + 1),
  thickness: '6 in',
  spacing: '15 ft',
};

/** Every case, the smallest first. */
export const cases: readonly Case[] = [
  ...[10, 30, 100, 300, 1000, 3000, 10_000].map((panels) => {
    const input = floor(panels);
    return { name: `joint plan of ${panels} panels`, run: () => jointLayout(input) };
  }),
  { name: 'joint plan of 300 ft × 300 ft with 40 columns', run: () => jointLayout(withColumns) },
];
