/** Optima: forms, corrections and cutting lists set up again as programs and solved by HiGHS. */
import loadHighs from 'highs';
import {
  barCutting,
  drainageCheck,
  formGrades,
  type GradeCorrectionFigures,
  type GradeCorrectionInput,
  gradeCorrection,
  type SurfaceDrainageFigures,
} from '../../../src/index';
import { away, inputOf, problem, slab } from '../grade/corrections';
import { FREE, randomSite } from '../grade/forms';
import { oracle } from '../oracle';
import { allPatterns, leastCut } from '../steel/patterns';
import { decimalText, type Site } from './draw';
import { type Compared, numberOf } from './trial';

const NEAR = 1e-5;
/** The solver's own tolerance, a ten millionth, times what it is worth over a yard. */
const MOVED = 1e-6;

let solver: ReturnType<typeof oracle> | undefined;
let cutter: ReturnType<typeof loadHighs> | undefined;

const compared = (input: unknown, figures: number, off: number, disagreements: string[]): Compared => ({
  figures,
  deviation: off,
  input,
  disagreements,
});

/** Every place of an input moved by whole meters. */
function moved(value: unknown, by: readonly [bigint, bigint]): unknown {
  if (Array.isArray(value)) return value.map((part) => moved(part, by));
  if (typeof value !== 'object' || value === null) return value;
  const out: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(value)) {
    const d = key === 'x' ? by[0] : key === 'y' ? by[1] : undefined;
    out[key] = d !== undefined && typeof part === 'string' ? plus(part, d) : moved(part, by);
  }
  return out;
}

function plus(text: string, meters: bigint): string {
  const [a = '', b = ''] = text.replace(' m', '').split('.');
  const n = BigInt(`${a}${b.padEnd(6, '0')}`) + meters * 1_000_000n;
  return `${decimalText(n, 6)} m`;
}

const farOrNot = (site: Site): readonly [bigint, bigint] =>
  site.dice.below(3) === 0 ? [609_601n, 152_400n] : [0n, 0n];

/** The plane with the least fill. */
async function forms(site: Site): Promise<Compared> {
  solver ??= oracle();
  const solve = await solver;
  const { input: local, rows, fill } = randomSite(site.between(1, 1_000_000_000));
  const input = moved(local, farOrNot(site));
  const answer = solve(fill, rows, FREE);
  const attempt = formGrades.attempt(input as never);
  if (answer.status === 'Infeasible') {
    const refused = !attempt.ok && attempt.error.issues[0]?.code === 'conflicting-grades';
    return compared(input, 1, 0, refused ? [] : ['HiGHS finds that the conditions conflict; ours does not']);
  }
  if (!attempt.ok)
    return compared(input, 1, 0, [`refused: ${attempt.error.message}; HiGHS comes to ${answer.objective}`]);
  const { figures } = attempt.result;
  const off = Math.abs(numberOf(figures.fillHeights) - answer.objective);
  const found: string[] = [];
  if (off > NEAR) found.push(`fill: ours ${numberOf(figures.fillHeights)} m, HiGHS ${answer.objective} m`);
  if (figures.verdict !== 'all falls met') found.push(`its own plane is said to be "${figures.verdict}"`);
  return compared(input, 1, found.length > 0 ? 0 : off / Math.max(1, answer.objective), found);
}

/**
 * True where a facet of the corrected surface falls less than it must and all its water is taken by a valley or a
 * drain before the wall, which the library allows and the program does not.
 */
function behindValley(input: unknown, { moves, after }: GradeCorrectionFigures): boolean {
  if (after.verdict !== 'drains') return false;
  const { spots = [], lines, zone } = input as GradeCorrectionInput;
  const by = new Map(moves.map(({ spot, elevation }) => [spot, elevation]));
  const corrected = spots.map((spot) => ({ ...spot, elevation: by.get(spot.name ?? '') ?? spot.elevation }));
  const { facetList } = drainageCheck({ spots: corrected, lines, zone } as never)
    .figures as unknown as SurfaceDrainageFigures;
  return facetList.some(({ away, verdict }) => verdict === 'drains' && away && numberOf(away) < 0.02 - 1e-9);
}

/** The least concrete that is moved so that a slab drains. */
async function corrections(site: Site): Promise<Compared> {
  solver ??= oracle();
  const solve = await solver;
  const spots = slab(site.between(1, 1_000_000_000));
  const { aim, rows } = problem(spots);
  const input = moved(inputOf(spots, { movable: away(spots) }), farOrNot(site));
  const answer = solve(aim, rows, new Set());
  const attempt = gradeCorrection.attempt(input as never);
  if (!attempt.ok) return compared(input, 1, 0, [`refused: ${attempt.error.message}`]);
  const { figures } = attempt.result;
  const ours = numberOf(figures.concrete) + numberOf(figures.struckOff);
  const less = answer.objective - ours;
  const off = Math.abs(less);
  const found: string[] = [];
  if (less > MOVED && behindValley(input, figures))
    return { ...compared(input, 1, 0, []), known: ['behind a valley'] };
  if (off > MOVED) found.push(`moved: ours ${ours} m3, HiGHS ${answer.objective} m3`);
  if (figures.after.verdict !== 'drains') found.push(`afterward "${figures.after.verdict}"`);
  return compared(input, 1, found.length > 0 ? 0 : off, found);
}

/** Pieces from bars of one length or two, with and without a kerf: whole programs over every way to cut. */
async function cutting(site: Site): Promise<Compared> {
  cutter ??= loadHighs();
  const highs = await cutter;
  const stock = site.dice.pick([100, 160, 240]);
  const kinds = site.between(2, 5);
  const lengths = new Set<number>();
  while (lengths.size < kinds) lengths.add(site.between(Math.ceil(stock / 9), Math.floor(stock * 0.8)));
  const pieces = [...lengths].map((l) => [l, site.between(1, 40)] as const);
  const kerf = site.dice.pick([0, 0, 1, 2]);
  const stocks = site.maybe() ? [stock] : [stock, Math.round(stock * (1.2 + site.dice.next()))];
  const priced = stocks.length > 1 && site.maybe();
  const prices = stocks.map((l) => Math.round(l * (0.8 + 0.5 * site.dice.next())));
  const columns = stocks.flatMap((l, s) =>
    allPatterns({ stock: l, pieces }, kerf).map((p) => ({ p, cost: priced ? (prices[s] as number) : l })),
  );
  const costs = columns.map(({ cost }) => (stocks.length === 1 ? 1 : cost));
  const input = {
    pieces: pieces.map(([l, count]) => ({ length: `${l} in`, count })),
    stock: stocks.map((l, s) => ({ length: `${l} in`, ...(priced ? { price: `${prices[s]} USD` } : {}) })),
    kerf: `${kerf} in`,
  };
  const attempt = barCutting.attempt(input);
  const counts = pieces.map(([, d]) => d);
  const best = Math.round(
    leastCut(
      highs,
      counts,
      columns.map(({ p }) => p),
      costs,
      true,
    ),
  );
  if (!attempt.ok) return compared(input, 1, 0, [`refused: ${attempt.error.message}`]);
  const { figures } = attempt.result;
  const unit = priced ? 'USD' : stocks.length > 1 ? 'in' : 'each';
  const [reached, bound] = [figures.reached, figures.lowerBound].map((q) => q.toNumber(unit)) as [
    number,
    number,
  ];
  const found: string[] = [];
  if (reached < best - 1e-6) found.push(`ours takes ${reached}, HiGHS needs ${best}: not all is cut`);
  if (bound > best + 1e-6) found.push(`the bound of ${bound} is above the ${best} of HiGHS`);
  if (reached > best + 1e-6 && figures.proved) found.push(`ours takes ${reached}, proved; HiGHS ${best}`);
  // With several stock lengths the search may end with a gap, which it tells.
  if (reached > best + 1e-6 && stocks.length === 1)
    found.push(`ours takes ${reached}, HiGHS ${best}; the bound is ${bound}`);
  const known = reached > best + 1e-6 && stocks.length > 1 ? { known: ['a gap that is told'] } : {};
  return { ...compared(input, 2, 0, found), ...known };
}

export const GRADES: readonly ((site: Site) => Promise<Compared>)[] = [forms, corrections];
export const CUTS: readonly ((site: Site) => Promise<Compared>)[] = [cutting];
