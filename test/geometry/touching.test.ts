/** Rings that touch themselves or miss by a hair, far from the origin, where binary numbers cannot tell. */
import { describe, expect, it } from 'vitest';
import {
  type Corner,
  checkSimple,
  insideRing,
  isSimple,
  onRing,
  ringsFarApart,
  ringsMeet,
} from '../../src/geometry/polygon';
import type { InputError } from '../../src/index';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { seeded } from '../support/outlines';

const corner = (x: Decimal | number | string, y: Decimal | number | string): Corner => ({
  x: new Decimal(x),
  y: new Decimal(y),
});
/** A share of the way from one corner to another, exactly. */
const along = (a: Corner, b: Corner, share: Decimal | number | string): Corner => ({
  x: a.x.plus(b.x.minus(a.x).times(share)),
  y: a.y.plus(b.y.minus(a.y).times(share)),
});
const HAIR = new Decimal('1e-12');

/** A box that leans, in tenths of millimeters far from the origin, and which way is into it from its first side. */
function leaning(random: () => number): { box: Corner[]; inwards: Corner } {
  const tenth = (most: number): Decimal => new Decimal(Math.floor(random() * most * 1e4)).div(1e4);
  const [x, y] = [tenth(1e6).plus(1e5), tenth(1e6).plus(1e5)];
  const [dx, dy] = [tenth(9).plus(1), tenth(9)];
  const box = [
    corner(x, y),
    corner(x.plus(dx), y.plus(dy)),
    corner(x.plus(dx).minus(dy), y.plus(dy).plus(dx)),
    corner(x.minus(dy), y.plus(dx)),
  ];
  return { box, inwards: corner(dy.neg(), dx) };
}

const by = ({ x, y }: Corner, { x: dx, y: dy }: Corner, times: Decimal | number | string): Corner =>
  corner(x.plus(dx.times(times)), y.plus(dy.times(times)));

const turned = <T>(list: readonly T[], by: number): T[] => [...list.slice(by), ...list.slice(0, by)];
/** A ring from every corner and both ways around. */
const readings = (ring: readonly Corner[]): Corner[][] =>
  ring.flatMap((_, i) => [turned(ring, i), turned(ring, i).reverse()]);

describe('a ring', () => {
  it('that touches itself is told from one that misses itself by a hair', () => {
    const random = seeded(77);
    for (let i = 0; i < runs(100); i += 1) {
      const { box, inwards } = leaning(random);
      const [a, b, c, d] = box as [Corner, Corner, Corner, Corner];
      // From the far side a thorn comes down to a place on the first one.
      const place = along(a, b, new Decimal(1 + Math.floor(random() * 98)).div(100));
      const thorn = (tip: Corner): Corner[] => [a, b, c, along(c, d, '0.3'), tip, along(c, d, '0.6'), d];
      const ring = i % 2 === 0 ? readings(thorn(place)) : [thorn(place)];
      for (const touching of ring) expect(isSimple(touching)).toBe(false);
      expect(isSimple(thorn(by(place, inwards, HAIR)))).toBe(true);
      expect(isSimple(thorn(by(place, inwards, HAIR.neg())))).toBe(false);
    }
  });

  it('that runs back over itself is told from one that turns by a hair', () => {
    const random = seeded(78);
    for (let i = 0; i < runs(60); i += 1) {
      const { box, inwards } = leaning(random);
      const [a, b, c, d] = box as [Corner, Corner, Corner, Corner];
      const past = along(a, b, '1.3');
      // Straight on is no fold, straight back is, and a spike of a hair's width is none.
      for (const ring of readings([a, along(a, b, '0.4'), b, c, d])) expect(isSimple(ring)).toBe(true);
      for (const ring of readings([a, past, b, c, d])) expect(isSimple(ring)).toBe(false);
      expect(isSimple([a, past, by(b, inwards, HAIR), c, d])).toBe(true);
      expect(isSimple([a, past, by(b, inwards, HAIR.neg()), c, d])).toBe(false);
    }
  });

  it('says which of its sides meet, and which corner is given twice', () => {
    const said = (ring: Corner[]): string => {
      try {
        checkSimple(ring, 'p');
      } catch (error) {
        return (error as InputError).issues
          .map(({ code, path, sentence }) => `${code} ${path} ${sentence}`)
          .join();
      }
      return 'simple';
    };
    const [a, b, c, d] = [corner(0, 0), corner(4, 0), corner(4, 4), corner(0, 4)];
    expect(said([a, b, c, d])).toBe('simple');
    expect(said([a, c, b, corner(-1, 9)])).toMatch(/^self-crossing p .*\b1\b.*\b3\b/);
    for (let i = 0; i < 4; i += 1) {
      const list = [a, b, c, d];
      list.splice(i + 1, 0, list[i] as Corner);
      expect(said(list)).toMatch(/^repeated-point p /);
    }
    expect(said([a, b, c, d, a])).toMatch(/^repeated-point p /);
    expect(said([a, b, corner(9, 0)])).toMatch(/^zero-area p /);
  });
});

describe('two rings', () => {
  it('that touch at a place meet, and those a hair apart do not', () => {
    const random = seeded(79);
    for (let i = 0; i < runs(60); i += 1) {
      const { box, inwards } = leaning(random);
      const [a, b, c, d] = box as [Corner, Corner, Corner, Corner];
      const place = along(a, b, new Decimal(1 + Math.floor(random() * 98)).div(100));
      const tooth = (tip: Corner): Corner[] => [
        tip,
        by(along(a, b, '0.2'), inwards, -2),
        by(along(a, b, '0.9'), inwards, -2),
      ];
      for (const [one, other] of [
        [box, tooth(place)],
        [tooth(place), box],
      ] as const)
        for (const ring of readings(other)) expect(ringsMeet(one, ring)).toBe(true);
      expect(ringsMeet(box, tooth(by(place, inwards, HAIR)))).toBe(true);
      const off = tooth(by(place, inwards, HAIR.neg()));
      expect([ringsMeet(box, off), ringsMeet(off, box)]).toEqual([false, false]);
      // One within the other shares no point of its sides, near or far.
      const core = box.map((p) => along(p, along(a, c, '0.5'), '0.1'));
      expect([ringsMeet(box, core), ringsMeet(core, box), ringsFarApart(box, core)]).toEqual([
        false,
        false,
        false,
      ]);
      // Beside each other, with a corner on a corner.
      expect(
        ringsMeet(
          box,
          box.map((p) => by(p, inwards, 1)),
        ),
      ).toBe(true);
      expect(ringsMeet(box, [d, c, by(d, inwards, 1)])).toBe(true);
    }
  });

  it('are far apart where they lie beside each other along x or y', () => {
    const box = (x: number, y: number): Corner[] => [
      corner(x, y),
      corner(x + 2, y),
      corner(x + 2, y + 2),
      corner(x, y + 2),
    ];
    for (const [x, y, far] of [
      [3, 0, true],
      [-3, 0, true],
      [0, 3, true],
      [0, -3, true],
      [1, 1, false],
      [2, 2, false],
      [-2, 1, false],
    ] as const) {
      expect(ringsFarApart(box(0, 0), box(x, y))).toBe(far);
      expect(ringsMeet(box(0, 0), box(x, y))).toBe(!far);
    }
  });
});

describe('a place', () => {
  it('on a side is told from one a hair to either side of it', () => {
    const random = seeded(80);
    for (let i = 0; i < runs(60); i += 1) {
      const { box, inwards } = leaning(random);
      const k = Math.floor(random() * 4);
      const [a, b] = [box[0], box[1]] as [Corner, Corner];
      const ring = i % 2 === 0 ? turned(box, k) : turned(box, k).reverse();
      const place = along(a, b, new Decimal(Math.floor(random() * 101)).div(100));
      expect(onRing(place, ring)).toBe(true);
      expect([HAIR, HAIR.neg()].map((off) => onRing(by(place, inwards, off), ring))).toEqual([false, false]);
      const middle = along(a, b, new Decimal(1 + Math.floor(random() * 98)).div(100));
      expect(insideRing(by(middle, inwards, HAIR), ring)).toBe(true);
      expect(insideRing(by(middle, inwards, HAIR.neg()), ring)).toBe(false);
      // On the line of a side, beyond its ends.
      for (const share of ['-0.01', '1.01']) {
        expect(onRing(along(a, b, share), ring)).toBe(false);
        expect(insideRing(along(a, b, share), ring)).toBe(false);
      }
    }
  });

  it('level with corners is inside just where it is, whatever its ray runs through', () => {
    // Teeth up and down, on grid lines: every ray to the right passes corners.
    const ring = [
      [0, 0],
      [2, 2],
      [4, 0],
      [6, 2],
      [8, 0],
      [8, 4],
      [6, 2.5],
      [4, 4],
      [2, 2.5],
      [0, 4],
    ].map(([x = 0, y = 0]) => corner(x, y));
    const inside = (x: number, y: number): boolean => insideRing(corner(x, y), ring);
    expect(
      [
        [0.5, 2],
        [3, 2],
        [7, 2],
        [0.5, 2.5],
        [7, 2.5],
        [4, 2],
        [4, 2.5],
      ].map(([x = 0, y = 0]) => inside(x, y)),
    ).toEqual(Array.from({ length: 7 }, () => true));
    expect(
      [
        [-1, 2],
        [9, 2],
        [-1, 0],
        [2, 0],
        [6, 0],
        [2, 4],
        [6, 4],
        [-1, 4],
        [-1, 2.5],
        [9, 2.5],
      ].map(([x = 0, y = 0]) => inside(x, y)),
    ).toEqual(Array.from({ length: 10 }, () => false));
  });
});
