/**
 * The moves that meet every need with the least concrete moved.
 *
 * Each spot carries a third of the facets around it: `V = Σ A ÷ 3 × move`. Of corrections that move as
 * little the one that raises less is taken, since striking off needs no fresh concrete; of those that
 * are still alike the one with the smallest moves, by the sum of squares, so that the order of the spots
 * decides nothing.
 */
import { Decimal, ONE, ZERO } from '../../quantity/decimal';
import { distinct, say, sentenceOf, type Words } from '../../reckoning/words';
import { conflictAmong } from '../../solve/conflict';
import { type Cost, type Kinks, leastOf, type Row, rough } from '../../solve/kinks';
import { smallestOf } from '../../solve/smallest';
import type { Site } from '../terrain';
import { cornersOf, exactCorners, type Need, onSpots } from './needs';

/** How spots may be moved. */
export type How = 'raise' | 'lower' | 'either';

/** A room that a spot has, with what it is called. */
export interface Room {
  readonly name: Words;
  readonly room: Decimal;
}

/** What the moves are sought from. */
export interface Job {
  readonly site: Site;
  readonly how: How;
  readonly movable: readonly number[];
  /** Why a spot may not be moved. */
  readonly held: ReadonlyMap<number, Words>;
  readonly up: ReadonlyMap<number, readonly Room[]>;
  readonly down: ReadonlyMap<number, readonly Room[]>;
  /** A third of the plan area of the facets around each spot. */
  readonly shares: readonly Decimal[];
}

/** Moves by spot, upwards; only those that move. */
export type Moves = ReadonlyMap<number, Decimal>;

const FREE: Cost = [ZERO, ZERO, ZERO];
const HARD: Cost = [ONE, ZERO, ZERO];
/** A move smaller than this, in meters, is none. */
const MOVED = /*#__PURE__*/ new Decimal('1e-12');

/** A third of the plan area of the facets around each spot. */
export function sharesOf(site: Site): Decimal[] {
  const shares = Array.from({ length: site.survey.count }, () => ZERO);
  for (let t = 0; t < site.terrain.tin.facets; t += 1) {
    const [a, b, c] = exactCorners(site, t);
    const twice = b.x
      .minus(a.x)
      .times(c.y.minus(a.y))
      .minus(b.y.minus(a.y).times(c.x.minus(a.x)))
      .abs();
    const third = twice.div(6);
    const { spots, weights } = onSpots(site, cornersOf(site, t), [third, third, third]);
    spots.forEach((v, k) => {
      shares[v] = (shares[v] as Decimal).plus(weights[k] as Decimal);
    });
  }
  return shares;
}

/** How much of a need is missing as the spots lie. */
export function lackOf({ site }: Job, { spots, weights, least }: Need): Decimal {
  return spots.reduce(
    (left, v, k) => left.minus((weights[k] as Decimal).times(site.survey.exact(v).z)),
    least,
  );
}

interface NamedRow {
  readonly name: Words;
  readonly row: Row;
}

function needRow(job: Job, need: Need, place: ReadonlyMap<number, number>): NamedRow {
  const kept = need.spots.flatMap((v, k) => {
    const at = place.get(v);
    const weight = need.weights[k] as Decimal;
    return at === undefined || weight.isZero() ? [] : [{ at, weight }];
  });
  return {
    name: need.name,
    row: {
      at: kept.map(({ at }) => at),
      weights: kept.map(({ weight }) => weight),
      level: lackOf(job, need),
      below: HARD,
      above: FREE,
    },
  };
}

/** A limit with the spot that it is of. */
export const atSpot = (why: Words, name: string): Words => say`${why} at ${{ name }}`;

/** Everything that must hold, as rows. */
function hardRows(job: Job, needs: readonly Need[]): NamedRow[] {
  const place = new Map(job.movable.map((v, k) => [v, k]));
  const rows = needs.map((need) => needRow(job, need, place));
  job.movable.forEach((v, at) => {
    const unit = { at: [at], weights: [ONE] };
    const name = job.site.survey.name(v);
    if (job.how === 'raise') {
      rows.push({
        name: say`only raising is allowed`,
        row: { ...unit, level: ZERO, below: HARD, above: FREE },
      });
    }
    if (job.how === 'lower') {
      rows.push({
        name: say`only striking off is allowed`,
        row: { ...unit, level: ZERO, below: FREE, above: HARD },
      });
    }
    for (const { name: why, room } of job.up.get(v) ?? []) {
      rows.push({ name: atSpot(why, name), row: { ...unit, level: room, below: FREE, above: HARD } });
    }
    for (const { name: why, room } of job.down.get(v) ?? []) {
      rows.push({ name: atSpot(why, name), row: { ...unit, level: room.neg(), below: HARD, above: FREE } });
    }
  });
  return rows;
}

const moveRows = ({ movable, shares }: Job): Row[] =>
  movable.map((v, at) => {
    const share = shares[v] as Decimal;
    return {
      at: [at],
      weights: [ONE],
      level: ZERO,
      below: [ZERO, share, ZERO],
      above: [ZERO, share, share],
    };
  });

/** A need that no movable spot has part in is met or not, whatever is moved. */
const outOfReach = (row: Row): boolean => row.at.length === 0;
const unmet = ({ row }: NamedRow): boolean => outOfReach(row) && row.level.greaterThan(MOVED);

interface Set {
  readonly kinks: Kinks;
  readonly hard: readonly NamedRow[];
}

function setUp(job: Job, needs: readonly Need[]): Set {
  const hard = hardRows(job, needs);
  const rows = [...hard.map(({ row }) => row).filter((row) => !outOfReach(row)), ...moveRows(job)];
  return { kinks: { unknowns: job.movable.length, rows }, hard };
}

const movesOf = ({ movable }: Job, values: readonly Decimal[]): Moves =>
  new Map(
    movable.flatMap((v, k): [number, Decimal][] => {
      const move = values[k] as Decimal;
      return move.abs().lessThan(MOVED) ? [] : [[v, move]];
    }),
  );

/** The moves, exact; `undefined` where nothing meets the needs. */
export function solve(job: Job, needs: readonly Need[]): Moves | undefined {
  const { kinks, hard } = setUp(job, needs);
  if (hard.some(unmet)) return undefined;
  const least = leastOf(kinks);
  if (!least || !(least.total[0] as Decimal).isZero()) return undefined;
  const squares = job.movable.map((v) => job.shares[v] as Decimal);
  return movesOf(job, smallestOf(kinks, least, squares));
}

/** The moves in binary numbers, good enough to look at the surface they make. */
export function solveRoughly(
  job: Job,
  needs: readonly Need[],
): { readonly moves: Moves; readonly volume: number } | undefined {
  const { kinks, hard } = setUp(job, needs);
  if (hard.some(unmet)) return undefined;
  const found = rough(kinks);
  if ((found.total[0] as number) > 1e-7) return undefined;
  return {
    moves: movesOf(
      job,
      found.values.map((v) => new Decimal(v)),
    ),
    volume: found.total[1] as number,
  };
}

/** What stands in the way: needs and limits that cannot be met together, and the spots that are held. */
export function blockedBy(
  job: Job,
  needs: readonly Need[],
): { readonly names: Words[]; readonly contradiction: boolean } {
  const { hard } = setUp(job, needs);
  const beyond = hard.filter(unmet);
  const reachable = hard.filter(({ row }) => !outOfReach(row));
  const clash =
    beyond.length > 0
      ? beyond
      : conflictAmong(
          job.movable.length,
          reachable.map(({ row }) => row),
        ).map((k) => reachable[k] as NamedRow);
  const names = new Set(clash.map(({ name }) => sentenceOf(name)));
  const told = needs.filter(({ name }) => names.has(sentenceOf(name)));
  const stays = staying(job, new Set(told.flatMap(({ spots }) => spots)));
  const asked = new Set(told.map(({ name }) => sentenceOf(name)));
  return {
    names: distinct([...clash.map(({ name }) => name), ...stays]),
    contradiction: stays.length === 0 && asked.size === names.size,
  };
}

/** Which of the spots are held, by the reason. */
function staying(job: Job, spots: ReadonlySet<number>): Words[] {
  const byReason = new Map<string, { readonly why: Words; readonly spots: string[] }>();
  for (const v of spots) {
    const why = job.held.get(v);
    if (!why) continue;
    const alike = byReason.get(sentenceOf(why)) ?? { why, spots: [] };
    alike.spots.push(job.site.survey.name(v));
    byReason.set(sentenceOf(why), alike);
  }
  return [...byReason.values()].map(({ why, spots: names }) => say`${{ spots: names.sort() }} ${why}`);
}
