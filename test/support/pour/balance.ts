/**
 * Pours of the kind that the error model of `balanceLoad` speaks of, and whether its range holds the truth.
 *
 * Each measurement lies within its bound 19 times out of 20, so its standard deviation is half of it: areas, probes
 * about the mean depth around them, the yield. The mean depth of the rest and that of what is done are apart by no more
 * than a probe may be, 19 times out of 20.
 */
import { type BalanceLoadInput, balanceLoad } from '../../../src/index';

type Random = () => number;

const AREA = 0.02;
const YIELD = 0.02;
/** Half an inch, in inches. */
const PROBE = 0.5;

/** Of mean 0 and deviation 1 (Box and Muller). */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

const between = (random: Random, least: number, most: number): number => least + random() * (most - least);

/** A pour as it is measured, and what it really takes. */
interface Pour {
  readonly input: BalanceLoadInput;
  /** To call for in truth, in cubic yards. */
  readonly truth: number;
}

const FT2_IN_PER_YD3 = 324;

function randomPour(random: Random): Pour {
  const probed = random() < 0.5;
  const planned = between(random, 3.5, 8);
  const off = between(random, -0.25, 0.5);
  const region = (): number => planned + off + (normal(random) * PROBE) / (2 * Math.SQRT2);
  const [done, rest] = [region(), region()];
  const [doneArea, restArea] = [between(random, 200, 3000), between(random, 60, 1500)];
  const waste = between(random, 1, 1.08);
  const used = ((doneArea * done) / FT2_IN_PER_YD3) * waste * (1 + (normal(random) * YIELD) / 2);
  const need = ((restArea * rest) / FT2_IN_PER_YD3) * waste;
  const taped = (area: number): string => `${(area * (1 + (normal(random) * AREA) / 2)).toFixed(3)} ft2`;
  const probes = (mean: number): string[] =>
    Array.from(
      { length: Math.floor(between(random, 2, 12)) },
      () => `${(mean + (normal(random) * PROBE) / 2).toFixed(4)} in`,
    );
  const inTruck = Math.min(used, between(random, 0, 4));
  const hand = random() < 0.5 ? 0 : inTruck;
  const thickness = `${planned.toFixed(4)} in`;
  return {
    input: {
      tickets: [`${(used + hand).toFixed(6)} yd3`],
      ...(hand > 0 ? { inTruck: `${hand.toFixed(6)} yd3` } : {}),
      done: { area: taped(doneArea), thickness, ...(probed ? { probes: probes(done) } : {}) },
      left: { area: taped(restArea), thickness, ...(probed ? { probes: probes(rest) } : {}) },
      increment: '0.25 yd3',
    },
    truth: Math.max(0, need - hand),
  };
}

/** How many of so many pours the range holds, how many run short of what is called for, and how wide it is. */
export function balanceTried(count: number, random: Random): { held: number; short: number; width: number } {
  let [held, short, width] = [0, 0, 0];
  for (let i = 0; i < count; i += 1) {
    const { input, truth } = randomPour(random);
    const { low, high, call, needed } = balanceLoad(input).figures;
    const [from, to] = [low.toNumber('yd3'), high.toNumber('yd3')];
    if (truth >= from - 1e-9 && truth <= to + 1e-9) held += 1;
    if (truth > call.toNumber('yd3') + 1e-9) short += 1;
    width += (to - from) / needed.toNumber('yd3');
  }
  return { held, short, width: width / count };
}
