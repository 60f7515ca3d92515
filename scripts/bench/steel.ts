/** Mats, mesh and cutting plans. */
import { barCutting, meshLayout, rebarLayout } from '../../src/index';
import type { Case } from './case';

const YARD = {
  shape: 'L',
  length: '28 ft',
  width: '18 ft',
  notchLength: '8 ft',
  notchWidth: '6 ft',
} as const;

/** Thirty lengths between 2 ft and 18 ft, in whole sixteenths, the same each time. */
const PIECES = Array.from({ length: 30 }, (_, i) => ({
  length: `${384 + ((i * 1543) % 3072)}/16 in`,
  count: 1 + ((i * 7) % 40),
}));

export const cases: readonly Case[] = [
  {
    name: 'mat over an L, #4 at 18 in',
    run: () => rebarLayout({ outline: YARD, mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }] }),
  },
  {
    name: 'mat of 107,661 bars',
    run: () =>
      rebarLayout({
        outline: { shape: 'rectangle', length: '2000 ft', width: '1000 ft' },
        mats: [{ layer: 'bottom', bar: '#3', spacing: '24 in' }],
      }),
  },
  {
    name: 'mesh over an L',
    run: () => meshLayout({ outline: YARD, form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' }),
  },
  {
    name: 'cutting plan of 30 lengths',
    run: () => barCutting({ pieces: PIECES, stock: [{ length: '20 ft' }], kerf: '0 in' }),
  },
];
