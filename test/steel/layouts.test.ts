/** Mats and mesh: counted out one by one, as a second way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length, meshLayout, rebarLayout } from '../../src/index';

const sixteenths = (min: number, max: number) => fc.integer({ min: min * 16, max: max * 16 });

describe('rebar-layout', () => {
  it('counts as a crew does: first bar at the cover, then on until the far one is reached', () => {
    fc.assert(
      fc.property(
        sixteenths(24, 600),
        sixteenths(24, 600),
        sixteenths(3, 24),
        sixteenths(1, 4),
        (L, W, s, c) => {
          const { along, across, intersections } = rebarLayout({
            length: `${L / 16} in`,
            width: `${W / 16} in`,
            bar: '#4',
            spacing: `${s / 16} in`,
            cover: `${c / 16} in`,
            stockLength: '60 ft',
          }).figures;
          const counted = (side: number): number => {
            let bars = 1;
            for (let at = c; at < side - c; at += s) bars += 1;
            return bars;
          };
          expect(along.lines.toNumber('each')).toBe(counted(W));
          expect(across.lines.toNumber('each')).toBe(counted(L));
          expect(intersections.toNumber('each')).toBe(counted(W) * counted(L));
          expect(along.evenSpacing.greaterThan(length(`${s / 16} in`))).toBe(false);
        },
      ),
    );
  });

  it('laps as many pieces as it takes to reach', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 3000 }),
        fc.integer({ min: 8, max: 40 }),
        fc.integer({ min: 12, max: 60 }),
        (L, S, l) => {
          const { along } = rebarLayout({
            length: `${L} ft`,
            width: '10 ft',
            bar: '#4',
            spacing: '12 in',
            cover: '0 in',
            stockLength: `${S} ft`,
            lap: `${l} in`,
          }).figures;
          let [pieces, reach] = [1, S * 12];
          while (reach < L * 12) [pieces, reach] = [pieces + 1, reach + S * 12 - l];
          expect(along.piecesPerRun.toNumber('each')).toBe(pieces);
          expect(along.barPerRun.toNumber('in')).toBe(L * 12 + (pieces - 1) * l);
        },
      ),
    );
  });
});

describe('mesh-layout', () => {
  it('lays sheets until the rectangle is covered', () => {
    const dims = fc.tuple(
      fc.integer({ min: 1, max: 2000 }),
      fc.integer({ min: 1, max: 2000 }),
      fc.integer({ min: 40, max: 240 }),
      fc.integer({ min: 40, max: 120 }),
      fc.integer({ min: 0, max: 12 }),
      fc.integer({ min: 0, max: 12 }),
    );
    fc.assert(
      fc.property(dims, ([L, W, s, w, e, l]) => {
        const { pieces, withoutReuse, strips } = meshLayout({
          length: `${L} in`,
          width: `${W} in`,
          form: 'sheets',
          pieceLength: `${s} in`,
          pieceWidth: `${w} in`,
          sideLap: `${l} in`,
          endLap: `${e} in`,
        }).figures;
        const laid = (distance: number, piece: number, lap: number): number => {
          let [n, reach] = [1, piece];
          while (reach < distance) [n, reach] = [n + 1, reach + piece - lap];
          return n;
        };
        expect(strips.toNumber('each')).toBe(laid(W, w, l));
        expect(withoutReuse.toNumber('each')).toBe(laid(W, w, l) * laid(L, s, e));
        expect(pieces.greaterThan(withoutReuse)).toBe(false);
      }),
    );
  });
});
