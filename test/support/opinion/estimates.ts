/** Estimates as a person with a notebook makes them: right but rounded, or with one slip or two. */
import type { Claim, Quantity } from '../../../src/index';
import { siOf, siOfUnit } from '../../../src/opinion/scale';
import { unitShown } from '../../../src/quantity/quantity';
import type { Chance } from '../relations/random';
import { drawnJob, type Job, jobWith } from './jobs';
import { MISREAD } from './misread';
import { MISRECKONED } from './misreckoned';
import { MISWRITTEN } from './miswritten';
import { figuresOf, gone, type Rounding } from './notebook';
import type { Kind, Made } from './slip';

/** What somebody claims, with what we know of how it came about. */
export interface Estimate {
  readonly job: Job;
  readonly slips: readonly Made[];
  readonly claims: readonly Claim[];
  /** Each claimed figure with the slips and without any rounding, in SI units. */
  readonly meant: readonly number[];
}

const MISMADE = [
  [MISREAD, 5],
  [MISRECKONED, 5],
  [MISWRITTEN, 2],
] as const;

function weighted<T>(items: readonly (readonly [T, number])[], chance: Chance): T | undefined {
  let at = chance.next() * items.reduce((sum, [, weight]) => sum + weight, 0);
  for (const [item, weight] of items) {
    at -= weight;
    if (at < 0) return item;
  }
  return undefined;
}

/** One slip in a job: first of which kind, then where. */
function madeIn(
  job: Job,
  groups: readonly (readonly [readonly Kind[], number])[],
  chance: Chance,
): Made | undefined {
  const kinds = weighted(groups, chance) ?? [];
  const able = kinds
    .map((kind) => [kind.made(job, chance), kind.weight] as const)
    .filter(([all]) => all.length > 0);
  const all = weighted(able, chance);
  return all && chance.pick(all);
}

const significant = (x: number, places: number): number => Number(x.toPrecision(places));

/** Fractions of an inch, on a tape. */
const TAPE = 0.0254 / 8;

/** Four inches as 0.33 ft. */
const hundredthsOfFoot = (si: number, q: Quantity): number =>
  q.dimension === 'length' && /^(?:in|ft|ft-in)$/.test(q.unit) && Math.abs(si) > 0.02
    ? Number((si / 0.3048).toFixed(2)) * 0.3048
    : si;

const toTape = (si: number): number => Math.max(TAPE, Math.round(si / TAPE) * TAPE);

/** Rounded from step to step, as one person does it throughout. */
function habit(chance: Chance): Rounding | undefined {
  const way = chance.next();
  if (way < 0.4) return undefined;
  const places = way < 0.6 ? 4 : way < 0.9 ? 3 : 2;
  const tape = chance.below(4) === 0;
  const feet = places < 4 && chance.below(3) === 0;
  return {
    places,
    outcome: (si, q) => {
      if (q.dimension === 'count' || q.dimension === 'temperature' || si === 0 || !Number.isFinite(si))
        return si;
      if (tape && q.dimension === 'length' && /in|ft/.test(q.unit)) return toTape(si);
      const unit = siOfUnit(unitShown(q));
      // Money is kept to the cent.
      if (q.dimension === 'money') return Number((si / unit).toFixed(2)) * unit;
      // Nobody makes 12 in of 11-1/2 in: two digits are for volumes, areas and weights.
      if (places < 3 && !/^(?:volume|area|mass)$/.test(q.dimension)) return significant(si / unit, 3) * unit;
      // Money is kept to the cent.
      return significant(si / unit, places) * unit;
    },
    given: feet ? hundredthsOfFoot : (si) => si,
    pi: places < 4 && chance.below(2) ? '3.14' : 'π',
  };
}

/** The number as it is written, with its unit. */
function written(si: number, q: Quantity, most: number, chance: Chance): string | undefined {
  const shown = unitShown(q);
  if (q.dimension === 'temperature') return undefined;
  if (shown.form === 'one-in') return `${Number((si * 100).toPrecision(Math.min(3, most)))}%`;
  const unit = shown.form === 'feet-inches' ? 'ft' : shown.id;
  const factor = siOfUnit(shown);
  if (unit !== shown.id && chance.below(2)) return onTape(si);
  return numberIn(si / (unit === shown.id ? factor : 0.3048), unit, Math.min(most, 3 + chance.below(2)));
}

function onTape(si: number): string {
  const eighths = Math.round(si / TAPE);
  const [feet, rest] = [Math.floor(eighths / 96), eighths % 96];
  const part = rest % 8 ? ` ${rest % 8}/8` : '';
  return `${feet} ft ${Math.floor(rest / 8)}${part.replace(' ', '-')} in`.replace(/ 0-/, ' ');
}

function numberIn(x: number, unit: string, digits: number): string {
  if (unit === 'each') return `${Number(x.toFixed(2))} each`;
  if (/^[A-Z]{3}$/.test(unit)) return `${x.toFixed(2)} ${unit}`;
  const places = Math.max(0, digits - (Math.floor(Math.log10(Math.abs(x))) + 1));
  return `${x.toFixed(Math.min(places, 6))}${unit === '%' ? '%' : ` ${unit}`}`;
}

/** The half of the last place in which a figure is written. */
function isTold(text: string, si: number, q: Quantity): boolean {
  const number = /^-?\d+\.?\d*(?=[ %]|$)/.exec(text)?.[0];
  if (!number || / ft \d/.test(text)) return Math.abs(si) > TAPE;
  const unit =
    unitShown(q).form === 'feet-inches' ? 0.3048 : text.endsWith('%') ? 0.01 : siOfUnit(unitShown(q));
  const half = 10 ** -(number.split('.')[1]?.length ?? 0) / 2;
  return Math.abs(Number(number) * unit - si) <= Math.max(half * unit * 1.001, 0.02 * Math.abs(si));
}

interface Reckoned {
  readonly meant: Map<string, number>;
  readonly got: Map<string, number>;
}

/** Go through a job with what was slipped in it. */
function reckoned(job: Job, slips: readonly Made[], rounding: Rounding | undefined): Reckoned | undefined {
  const taken = slips.find((slip) => slip.taken !== undefined)?.taken;
  const own = taken === undefined ? job : jobWith(job, taken);
  if (!own) return undefined;
  const carried = own.carried ?? { into: [], figures: new Map() };
  const otherwise = slips.flatMap((slip) => slip.otherwise ?? []);
  const meant = gone(own.page, carried, otherwise);
  const got = own.carried ? gone(own.page, carried, otherwise, rounding) : meant;
  for (const { figure, written: change } of slips) {
    if (figure === undefined || !change) continue;
    for (const figures of [meant, got]) figures.set(figure, change(figures.get(figure) ?? 0));
  }
  return { meant, got };
}

/** So far apart that nobody takes it for rounding. */
const APART = 0.015;

const isApart = (a: number, b: number): boolean =>
  Math.abs(a - b) > APART * Math.max(Math.abs(a), Math.abs(b));

/** Figures that a person would write down, no rows of a table, of which those that came out wrong stand first. */
function chosen(job: Job, { meant }: Reckoned, slips: readonly Made[], chance: Chance): string[] {
  const right = figuresOf(job.page.figures);
  const lists = slips.some((slip) => slip.lists);
  const all = [...right].filter(([path, q]) => {
    const si = meant.get(path) ?? 0;
    return (
      !(lists ? /\[/ : /\]\./).test(path) &&
      si > 1e-9 &&
      si < 1e9 &&
      siOf(q) > 1e-9 &&
      q.dimension !== 'angle'
    );
  });
  const wrong = all.filter(([path, q]) => isApart(meant.get(path) ?? 0, siOf(q))).map(([path]) => path);
  const own = slips.flatMap(({ figure }) => figure ?? []);
  const first = own.length > 0 ? wrong.filter((path) => own.includes(path)) : wrong;
  if (slips.length > 0 && first.length === 0) return [];
  const lead = slips.length > 0 ? chance.pick(first) : undefined;
  const rest = chance.shuffled(all.map(([path]) => path).filter((path) => path !== lead));
  // Of two slips one figure tells too little.
  const least = slips.length > 1 ? 2 : 1;
  return [...(lead === undefined ? [] : [lead]), ...rest].slice(0, least + chance.below(4 - least));
}

function claimed(
  job: Job,
  slips: readonly Made[],
  chance: Chance,
  rounding: Rounding | undefined,
): Estimate | undefined {
  const figures = reckoned(job, slips, rounding);
  const right = figuresOf(job.page.figures);
  const claims: Claim[] = [];
  const meant: number[] = [];
  for (const figure of figures ? chosen(job, figures, slips, chance) : []) {
    const [q, si] = [right.get(figure), figures?.got.get(figure)];
    const text =
      q && si !== undefined && Number.isFinite(si)
        ? written(si, q, rounding?.places ?? 4, chance)
        : undefined;
    // What cannot be written in so many places is not claimed.
    if (!q || text === undefined || !isTold(text, si ?? 0, q)) continue;
    claims.push({ figure, claimed: text });
    meant.push(figures?.meant.get(figure) ?? Number.NaN);
  }
  return claims.length > 0 ? { job, slips, claims, meant } : undefined;
}

const isWrong = ({ job, claims, meant }: Estimate): boolean => {
  const right = figuresOf(job.page.figures);
  return claims.some(({ figure }, i) => isApart(meant[i] ?? 0, siOf(right.get(figure) as Quantity)));
};

/**
 * An estimate with so many slips; where it comes out right within the rounding it is thrown away and drawn again.
 * Nothing where the calculation has too little in it for so many.
 */
export function estimate(id: string, count: 0 | 1 | 2, chance: Chance): Estimate | undefined {
  for (let i = 0; i < 40; i++) {
    const job = drawnJob(id, chance);
    const found = count === 0 ? claimed(job, [], chance, habit(chance)) : slipped(job, count, chance);
    if (found && (count === 0 || isWrong(found))) return found;
  }
  return undefined;
}

const AFTER = [
  [MISRECKONED, 3],
  [MISWRITTEN, 1],
] as const;

function slipped(job: Job, count: 1 | 2, chance: Chance): Estimate | undefined {
  const one = madeIn(job, count === 2 ? [[MISREAD, 1]] : MISMADE, chance);
  if (!one) return undefined;
  const rounding = habit(chance);
  if (count === 1) return claimed(job, [one], chance, rounding);
  const after = jobWith(job, one.taken);
  const two = after && (chance.below(2) ? madeIn(after, AFTER, chance) : again(after, one, chance));
  if (!two) return undefined;
  const both = claimed(
    job,
    [two.taken === undefined ? one : { ...one, taken: two.taken }, two],
    chance,
    rounding,
  );
  return both && isSeen(both, [one, two]) ? both : undefined;
}

/** A second size misread, another one. */
function again(after: Job, one: Made, chance: Chance): Made | undefined {
  const two = madeIn(after, [[MISREAD, 1]], chance);
  return two && two.input !== one.input ? two : undefined;
}

/** Both slips show in what is claimed: each alone would give something else. */
function isSeen({ job, claims, meant }: Estimate, slips: readonly Made[]): boolean {
  const right = figuresOf(job.page.figures);
  const differs = (figures: Map<string, number> | undefined): boolean =>
    figures === undefined ||
    claims.some(({ figure }, i) =>
      isApart(figures.get(figure) ?? siOf(right.get(figure) as Quantity), meant[i] ?? 0),
    );
  const [one, two] = slips;
  const second = two?.taken === undefined ? two : undefined;
  return (
    differs(one && reckoned(job, [one], undefined)?.meant) &&
    (!second || differs(reckoned(job, [second], undefined)?.meant))
  );
}
