/**
 * Bids made at random, and their totals by whole cents in big integers: a second way that shares nothing with the
 * decimals of the library.
 *
 * Every number of a made bid is a whole number of some part: cents, hundredths of a unit, hundredths of a percent. So
 * each amount is one fraction of whole numbers, rounded half-up by `⌊(2 a + b) ÷ 2 b⌋`.
 */
import { type BidLineInput, type JobBidInput, jobBid } from '../../../src/index';
import type { Chance } from '../relations/random';

/** Cents. */
type Cents = bigint;

/** `top ÷ below`, rounded half-up. */
export const halfUp = (top: bigint, below: bigint): Cents => (2n * top + below) / (2n * below);

interface MadeLine {
  readonly input: BidLineInput;
  readonly cents: Cents;
  readonly taxed: boolean;
}

/** A bid with the cents that it must come to. */
export interface MadeBid {
  readonly input: JobBidInput;
  readonly lines: readonly Cents[];
  readonly tax: Cents;
  readonly contingency: Cents;
  readonly overhead: Cents;
  readonly profit: Cents;
  readonly priceTax: Cents;
  readonly total: Cents;
}

const hundredths = (n: number | bigint): string => {
  const text = String(n).padStart(3, '0');
  return `${text.slice(0, -2)}.${text.slice(-2)}`;
};
const usd = (n: number): string => `${hundredths(n)} USD`;
const percent = (n: number): string => `${hundredths(n)}%`;

/** All of it, in hundredths of a percent. */
const WHOLE = 10_000n;

const UNITS = ['yd3', 'ft2', 'ton', 'each', 'ft', 'm3'] as const;

function material(name: string, { below, pick }: Chance): Omit<MadeLine, 'taxed'> {
  const [q, p, per, unit] = [1 + below(50_000), 1 + below(30_000), pick([1, 1, 1, 3, 7, 100]), pick(UNITS)];
  return {
    input: {
      kind: pick(['material', 'equipment', 'subcontract', 'fee'] as const),
      name,
      quantity: `${hundredths(q)} ${unit}`,
      price: { amount: usd(p), per: `${per} ${unit}` },
    },
    cents: halfUp(BigInt(q) * BigInt(p), 100n * BigInt(per)),
  };
}

function labor(name: string, { below, pick }: Chance): Omit<MadeLine, 'taxed'> {
  const [work, output, minutes, heads] = [1 + below(20_000), 1 + below(4_000), 1 + below(600), 1 + below(5)];
  const [wage, burden, efficiency] = [1000 + below(6000), below(6000), pick([10_000, 8000, 7500, 6667])];
  return {
    input: {
      kind: 'labor',
      name,
      quantity: `${hundredths(work)} ft2`,
      production: { output: `${hundredths(output)} ft2`, time: `${minutes} min`, by: 'crew' },
      crew: [{ count: heads, wage: { amount: usd(wage), per: '1 h' } }],
      efficiency: percent(efficiency),
      burden: percent(burden),
    },
    cents: halfUp(
      BigInt(work) * BigInt(minutes) * WHOLE * BigInt(heads) * BigInt(wage) * (WHOLE + BigInt(burden)),
      BigInt(output) * BigInt(efficiency) * 60n * WHOLE,
    ),
  };
}

function lump(name: string, { below }: Chance): Omit<MadeLine, 'taxed'> {
  const cents = 1 + below(1_000_000);
  return { input: { kind: 'fee', name, amount: usd(cents) }, cents: BigInt(cents) };
}

function madeLine(i: number, dice: Chance): MadeLine {
  const name = `line ${i + 1}`;
  const made = dice.pick([material, material, labor, lump])(name, dice);
  const taxed = dice.below(2) === 0;
  return { ...made, input: { ...made.input, taxable: taxed } as BidLineInput, taxed };
}

const sum = (all: readonly Cents[]): Cents => all.reduce((a, b) => a + b, 0n);

type Share = 'markup' | 'margin';

/** A share put on an amount: of it, or of what it becomes. */
const put = (cents: Cents, share: number, kind: Share): Cents =>
  halfUp(cents * BigInt(share), kind === 'markup' ? WHOLE : WHOLE - BigInt(share));

/** A bid of some lines, with terms of every kind. */
export function madeBid(dice: Chance): MadeBid {
  const { below, pick } = dice;
  const made = Array.from({ length: 1 + below(8) }, (_, i) => madeLine(i, dice));
  const onPrice = below(2) === 0;
  const [rate, reserve, over, gain] = [below(1500), below(1500), below(3000), below(4000)];
  const [overKind, gainKind] = [pick<Share>(['markup', 'margin']), pick<Share>(['markup', 'margin'])];
  const lines = made.map(({ cents }) => cents);
  const taxed = made.flatMap(({ taxed: is, cents }) =>
    is && !onPrice ? [halfUp(cents * BigInt(rate), WHOLE)] : [],
  );
  const cost = sum(lines) + sum(taxed);
  const contingency = halfUp(cost * BigInt(reserve), WHOLE);
  const overhead = put(cost + contingency, over, overKind);
  const profit = put(cost + contingency + overhead, gain, gainKind);
  const price = cost + contingency + overhead + profit;
  const priceTax = onPrice ? halfUp(price * BigInt(rate), WHOLE) : 0n;
  const input: JobBidInput = {
    lines: made.map(({ input: line }) => line),
    contingency: { share: percent(reserve) },
    overhead: { [overKind]: percent(over) },
    profit: { [gainKind]: percent(gain) },
    tax: onPrice
      ? { kind: 'on-price', rate: percent(rate) }
      : { kind: 'on-purchases', rate: percent(rate), on: ['material'], rounded: 'each-line' },
  };
  return { input, lines, tax: sum(taxed), contingency, overhead, profit, priceTax, total: price + priceTax };
}

const cents = (n: Cents): string => usd(Number(n));
const shown = (q: { format(): string } | undefined): string => q?.format() ?? '0.00 USD';

/** What differs between a bid and its cents, in the order given and in another. */
export function bidObjections({ input, ...made }: MadeBid, { shuffled }: Chance): string[] {
  const { figures } = jobBid(input);
  const turned = jobBid({ ...input, lines: shuffled(input.lines) }).figures;
  const pairs: readonly (readonly [string, string, string])[] = [
    ['total', shown(figures.total), cents(made.total)],
    ['total in another order', shown(turned.total), cents(made.total)],
    ['tax on purchases', shown(figures.purchaseTax), cents(made.tax)],
    ['contingency', shown(figures.contingency), cents(made.contingency)],
    ['overhead', shown(figures.overhead), cents(made.overhead)],
    ['profit', shown(figures.profit), cents(made.profit)],
    ['tax on the price', shown(figures.priceTax), cents(made.priceTax)],
    ...made.lines.map((own, i) => [`line ${i + 1}`, shown(figures.lines[i]?.amount), cents(own)] as const),
  ];
  const kinds = Object.values(figures.byKind)
    .reduce((all, one) => all.plus(one))
    .format();
  return [
    ...pairs.flatMap(([what, found, wanted]) =>
      found === wanted ? [] : [`${what}: ${found}, not ${wanted}`],
    ),
    ...(kinds === shown(figures.linesTotal) ? [] : [`kinds add to ${kinds}`]),
  ];
}
