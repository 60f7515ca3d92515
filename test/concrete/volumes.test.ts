/** Volumes: what must hold for any of them, and a second way to each. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  concreteOrder,
  count,
  curbVolume,
  length,
  type OutlineInput,
  ratio,
  slabVolume,
  stepVolume,
  volume,
} from '../../src/index';
import { sentenceOf } from '../../src/reckoning/words';

const feet = fc.integer({ min: 1, max: 4000 }).map((n) => `${(n / 16).toFixed(4)} ft`);
const inches = fc.integer({ min: 1, max: 400 }).map((n) => `${(n / 16).toFixed(4)} in`);
const volumeOf = (outline: OutlineInput, thickness: string) =>
  slabVolume({ outline, thickness }).figures.volume;

describe('slab-volume', () => {
  it('is the same whole or in two parts', () => {
    fc.assert(
      fc.property(feet, feet, feet, inches, (a, b, w, t) => {
        const whole = length(a).plus(length(b)).toString();
        const parts = [a, b].map((l) => volumeOf({ shape: 'rectangle', length: l, width: w }, t));
        const sum = parts[0]?.plus(parts[1] ?? volume('0 ft3'));
        return volumeOf({ shape: 'rectangle', length: whole, width: w }, t).equals(sum ?? volume('0 ft3'));
      }),
    );
  });

  it('grows with the cube of the scale', () => {
    fc.assert(
      fc.property(feet, feet, feet, inches, fc.integer({ min: 2, max: 9 }), (a, b, c, t, k) => {
        const times = count(`${k} each`);
        const big = (l: string): string => length(l).times(times).toString();
        const one = volumeOf({ shape: 'trapezoid', parallel: [a, b], height: c }, t);
        const many = volumeOf({ shape: 'trapezoid', parallel: [big(a), big(b)], height: big(c) }, big(t));
        return many.equals(one.times(times).times(times).times(times));
      }),
    );
  });

  it('of an L is that of its corners, anywhere, either way around', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 500 }),
        fc.integer({ min: 2, max: 500 }),
        feet,
        feet,
        fc.boolean(),
        (L, W, x, y, turn) => {
          const [l, w] = [Math.ceil(L / 3), Math.ceil(W / 3)];
          const at = (px: number, py: number) => ({
            x: length(x).plus(length(`${px} ft`)),
            y: length(y).minus(length(`${py} ft`)),
          });
          const points = [at(0, 0), at(L, 0), at(L, W - w), at(L - l, W - w), at(L - l, W), at(0, W)];
          const ell: OutlineInput = {
            shape: 'L',
            length: `${L} ft`,
            width: `${W} ft`,
            notchLength: `${l} ft`,
            notchWidth: `${w} ft`,
          };
          const ring: OutlineInput = { shape: 'polygon', points: turn ? points.reverse() : points };
          const [one, other] = [ell, ring].map(
            (outline) => slabVolume({ outline, thickness: '4 in' }).figures,
          );
          return (
            one?.area.equals(other?.area ?? ratio('1%')) === true &&
            one.perimeter?.equals(other?.perimeter ?? ratio('1%')) === true
          );
        },
      ),
    );
  });

  it('of a triangle by its sides is that of its corners', () => {
    // Second method: half of base times height, with legs of a right angle.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), (m, n) => {
        if (m === n) return true;
        // Legs and hypotenuse in whole feet, by Euclid's formula.
        const [p, q] = [Math.max(m, n), Math.min(m, n)];
        const [a, b, c] = [p * p - q * q, 2 * p * q, p * p + q * q];
        const { area } = slabVolume({
          outline: { shape: 'triangle', sides: [`${c} ft`, `${a} ft`, `${b} ft`] },
          thickness: '4 in',
        }).figures;
        return (
          area.compareTo(
            length(`${a} ft`)
              .times(length(`${b} ft`))
              .over(count('2 each')),
          ) === 0
        );
      }),
    );
  });

  it('of a circle is that of a ring of very many corners, to the fourth power of their number', () => {
    const n = 720;
    const points = Array.from({ length: n }, (_, i) => ({
      x: `${(10 * Math.cos((2 * Math.PI * i) / n)).toFixed(15)} ft`,
      y: `${(10 * Math.sin((2 * Math.PI * i) / n)).toFixed(15)} ft`,
    }));
    const ring = volumeOf({ shape: 'polygon', points }, '4 in').toNumber('ft3');
    const round = volumeOf({ shape: 'circle', diameter: '20 ft' }, '4 in').toNumber('ft3');
    // sin(x)/x = 1 − x²/6 with x = 2π/n.
    expect(ring / round).toBeCloseTo(1 - (2 * Math.PI) ** 2 / n ** 2 / 6, 9);
  });
});

describe('an arc that is next to straight', () => {
  it('has the area of its series, 2/3 c h (1 + 4/5 (h/c)²), though angle less sine loses nineteen digits', () => {
    // A chord of 402,336 m, about 250 miles, and a rise of 0.1524 m, 6 in.
    const { area } = slabVolume({
      outline: {
        shape: 'curved',
        points: [
          { x: '0 in', y: '0 in', rise: '6 in' },
          { x: '1320000 ft', y: '0 in' },
        ],
      },
      thickness: '4 in',
    }).figures;
    expect(area.in('m2').value.slice(0, 22)).toBe('40877.3376000046920727');
  });
});

describe('the section of a curb', () => {
  it('is called a section, and of many corners says what is summed', () => {
    const around = (n: number) =>
      Array.from({ length: n }, (_, i) => ({
        x: `${Math.round(300 * Math.cos((2 * Math.PI * i) / n)) + 400} mm`,
        y: `${Math.round(300 * Math.sin((2 * Math.PI * i) / n)) + 400} mm`,
      }));
    const told = (n: number) => curbVolume({ section: around(n), length: '12 m' }).working.map(sentenceOf);
    expect(told(8)).toContain('area of the section');
    expect(told(16)).toContain('area of the section, S being the sum of x₁ × y₂ − x₂ × y₁ around 16 corners');
  });
});

describe('step-volume', () => {
  it('is the sum of the boxes that the steps are', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        inches,
        inches,
        inches,
        fc.option(inches),
        (n, r, t, w, d) => {
          const flight = stepVolume({
            risers: n,
            rise: r,
            tread: t,
            width: w,
            ...(d ? { landingDepth: d } : {}),
          }).figures;
          let sum = volume('0 ft3');
          for (let k = 1; k <= n; k += 1) {
            const depth = length(k === n && d ? d : t);
            sum = sum.plus(depth.times(length(w)).times(length(r).times(count(`${k} each`))));
          }
          return flight.volume.compareTo(sum) === 0;
        },
      ),
    );
  });
});

describe('concrete-order', () => {
  const cases = fc.tuple(
    fc.integer({ min: 1, max: 200_000 }),
    fc.integer({ min: 0, max: 200 }),
    fc.constantFrom('0.25 yd3', '0.5 yd3', '1 yd3', '0.1 m3'),
    fc.constantFrom('9 yd3', '10 yd3', '7.5 m3'),
  );

  it('never falls short, never adds a whole increment, and its loads add up', () => {
    fc.assert(
      fc.property(cases, ([v, a, increment, truckCapacity]) => {
        const { figures } = concreteOrder({
          volume: `${(v / 1000).toFixed(6)} yd3`,
          allowance: `${(a / 10).toFixed(1)}%`,
          increment,
          truckCapacity,
        });
        const excess = figures.order.minus(figures.withAllowance);
        if (excess.sign() < 0 || !excess.lessThan(volume(increment))) throw new Error('order');
        const sum = figures.loads.reduce((s, load) => s.plus(load), volume('0 yd3'));
        if (sum.compareTo(figures.order) !== 0) throw new Error('loads');
        if (figures.loads.some((l) => l.greaterThan(volume(truckCapacity)) || l.sign() <= 0))
          throw new Error('load');
        if (figures.loads.length !== figures.loadCount.toNumber('each')) throw new Error('count');
      }),
    );
  });

  it('orders a slab of an exact number of quarter yards as it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 800 }), fc.integer({ min: 2, max: 24 }), (q, t) => {
        // A strip 81 in wide by q × 27 × 12 × 12 ÷ (81 t) ft makes q quarter yards when t inches thick.
        const net = slabVolume({
          outline: {
            shape: 'rectangle',
            length: length(`${q * 12} ft`).over(count(`${t} each`)),
            width: `6 ft 9 in`,
          },
          thickness: `${t} in`,
        }).figures.volume;
        const { order } = concreteOrder({
          volume: net,
          allowance: '0%',
          increment: '0.25 yd3',
          truckCapacity: '9 yd3',
        }).figures;
        if (order.compareTo(volume(`${q} yd3`).over(count('4 each'))) !== 0)
          throw new Error(`${(q / 4).toFixed(2)} yd3: ${order}`);
      }),
    );
  });

  it('orders 5.25 yd3 for 4 in by 12 ft by 35.4375 ft', () => {
    const net = slabVolume({
      outline: { shape: 'rectangle', length: '12 ft', width: '35.4375 ft' },
      thickness: '4 in',
    });
    const { order } = concreteOrder({
      volume: net.figures.volume,
      allowance: '0%',
      increment: '0.25 yd3',
      truckCapacity: '9 yd3',
    }).figures;
    expect(order.format()).toBe('5.25 yd3');
  });
});
