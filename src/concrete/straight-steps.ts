/**
 * Straight flights: treads, landings on top and midway, the wash, the undercut of leaning risers, faces.
 */

import * as faults from '../quantity/faults';
import { hypotenuse } from '../quantity/hypotenuse';
import type { Quantity } from '../quantity/quantity';

import { canonicalValue } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { onBank } from './bank-steps';
import { plainOnBank } from './faults';
import { type Flight, ONE, TWO } from './step-flight';
import type { Straight } from './step-inputs';

type Area = Quantity<'area'>;
type Count = Quantity<'count'>;
type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;

/** Depth of the tread behind each riser, from the ground up; the last is the top. */
function treadsOf({ risers, tread, landingDepth, landings = [] }: Straight): Length[] {
  const n = canonicalValue(risers).toNumber();
  const treads = Array.from({ length: n }, () => tread);
  if (landingDepth) treads[n - 1] = landingDepth;
  (landings ?? []).forEach(({ after, depth }, i) => {
    const k = canonicalValue(after).toNumber();
    const before = landings?.[i - 1]?.after;
    if (k >= n) refuse(`landings[${i}].after`, faults.doesNotFit('after', 'the number of risers'));
    if (before && !after.greaterThan(before))
      refuse(`landings[${i}].after`, faults.outOfOrder('after', 'the landing before it'));
    treads[k - 1] = depth;
  });
  return treads;
}

/** What landings part of the way up add to a flight of equal treads. */
function withMidLandings(V: Volume, { rise: r, tread: t, width: w, landings }: Straight, pad: Pad): Volume {
  return (landings ?? []).reduce(
    (sum, { after: k, depth: d }, i) =>
      pad.step(
        say`volume with landing ${{ n: i + 1 }} after k risers`,
        'U = V + w × r × k × (d − t)',
        { V: sum, w, r, k, d, t },
        sum.plus(w.times(r.times(k)).times(d.minus(t))),
      ),
    V,
  );
}

/** The run with landings part of the way up. */
function runWithLandings(L: Length, { tread: t, landings }: Straight, pad: Pad): Length {
  return (landings ?? []).reduce(
    (sum, { depth: d }, i) =>
      pad.step(
        say`run with landing ${{ n: i + 1 }}`,
        'R = L + d − t',
        { L: sum, d, t },
        sum.plus(d).minus(t),
      ),
    L,
  );
}

function plainFlight({ risers: n, rise: r, tread: t, width: w }: Straight, pad: Pad): Volume {
  const steps = n.times(n.plus(ONE())).over(TWO());
  pad.assume({
    name: 'landingDepth',
    value: 'none',
    because: 'the top tread is one like the others',
    override: 'Give landingDepth when the top is a landing',
    source: COMMON_PRACTICE,
  });
  return pad.step(
    'volume',
    'V = w × t × r × n × (n + 1) ÷ 2',
    { w, t, r, n },
    w.times(t).times(r.times(steps)),
  );
}

function withLanding({ risers: n, rise: r, tread: t, width: w }: Straight, d: Length, pad: Pad): Volume {
  const side = t.times(n.minus(ONE())).over(TWO()).plus(d);
  return pad.step(
    'volume',
    'V = w × r × n × ((n − 1) × t ÷ 2 + d)',
    { w, r, n, t, d },
    w.times(r.times(n)).times(side),
  );
}

/** What the wash adds: a wedge on each tread, and on the landing. */
function washed(V: Volume, input: Straight, pad: Pad): Volume {
  const { risers: n, rise: r, tread: t, width: w, landingDepth, nosing, wash: s } = input;
  if (!s) return V;
  const deepest = treadsOf(input)
    .slice(0, -1)
    .reduce((most, d) => (d.greaterThan(most) ? d : most), t);
  const reach = nosing ? deepest.plus(nosing) : deepest;
  if (!reach.times(s).lessThan(r)) refuse('wash', faults.doesNotFit('the rise of a tread', 'rise'));
  const d = landingDepth ?? t;
  const mid = input.landings ?? [];
  const squares = t
    .times(t)
    .times(n.minus(wholeNumber(1 + mid.length)))
    .plus(d.times(d));
  const all = mid.reduce((sum, { depth }) => sum.plus(depth.times(depth)), squares);
  const terms = mid.map((_, i) => ` + d${i + 1}²`).join('');
  const added = pad.step(
    'added by the wash',
    `W = w × s × ((n − ${1 + mid.length}) × t² + d²${terms}) ÷ 2`,
    {
      w,
      s,
      n,
      t,
      d,
      ...numbered(
        'd',
        mid.map(({ depth }) => depth),
      ),
    },
    w.times(s).times(all).over(TWO()),
  );
  return pad.step('volume with the wash', 'U = V + W', { V, W: added }, V.plus(added));
}

const numbered = (name: string, values: readonly Length[]): Record<string, Length> =>
  Object.fromEntries(values.map((value, i) => [`${name}${i + 1}`, value]));

/** Height of the risers that stand on landings part of the way up. */
const landingFaces = ({ rise: r, wash: s, landings }: Straight): Length[] =>
  (landings ?? []).map(({ depth }) => (s ? r.minus(depth.times(s)) : r));

/** Height of the risers above the first: less by what the tread before them rises. */
const upperFace = ({ rise: r, tread: t, wash: s }: Straight): Length => (s ? r.minus(t.times(s)) : r);

/** What leaning risers take away: a triangle each. */
function undercut(V: Volume, input: Straight, pad: Pad): Volume {
  const { risers: n, rise: r, tread: t, width: w, nosing: p } = input;
  if (!p) return V;
  if (!p.lessThan(t)) refuse('nosing', faults.doesNotFit('nosing', 'tread'));
  const u = upperFace(input);
  const mid = landingFaces(input);
  const plain = r.plus(u.times(n.minus(wholeNumber(1 + mid.length))));
  const faces = mid.reduce((sum, face) => sum.plus(face), plain);
  const terms = mid.map((_, i) => ` + u${i + 1}`).join('');
  const less = pad.step(
    'taken away under the nosings',
    `N = w × p × (r + (n − ${1 + mid.length}) × u${terms}) ÷ 2`,
    { w, p, r, n, u, ...numbered('u', mid) },
    w.times(p).times(faces).over(TWO()),
  );
  return pad.step('volume with the nosings', 'U = V − N', { V, N: less }, V.minus(less));
}

export function openSides({ openSides: given }: Straight, pad: Pad): Count {
  if (given) return given;
  pad.assume({
    name: 'openSides',
    value: '2 sides',
    because: 'both sides are formed',
    override: 'Give openSides: 0 between walls, 1 against a wall',
    source: COMMON_PRACTICE,
  });
  return TWO();
}

/** Risers along their slope, and the open sides. */
function straightFaces(V: Volume, input: Straight, pad: Pad): Area {
  const { risers: n, rise: r, width: w, nosing } = input;
  const o = openSides(input, pad);
  const p = nosing ?? r.minus(r);
  // The tread before a riser goes on rising under its nosing.
  const less = (face: Length): Length => (input.wash ? face.minus(p.times(input.wash)) : face);
  const u = input.wash ? less(upperFace(input)) : r;
  const mid = landingFaces(input).map(less);
  const [a, b] = [hypotenuse(r, p), hypotenuse(u, p)];
  const plain = a.plus(b.times(n.minus(wholeNumber(1 + mid.length))));
  const slopes = mid.reduce((sum, face) => sum.plus(hypotenuse(face, p)), plain);
  const terms = mid.map((_, i) => ` + √(u${i + 1}² + p²)`).join('');
  return pad.step(
    'faces to form',
    `F = w × (√(r² + p²) + (n − ${1 + mid.length}) × √(u² + p²)${terms}) + o × V ÷ w`,
    { w, r, p, n, u, o, V, ...numbered('u', mid) },
    w.times(slopes).plus(V.over(w).times(o)),
  );
}

/** The flight without its wash and its nosings. */
function plainVolume(input: Straight, pad: Pad): Volume {
  const { landingDepth: d, waist } = input;
  if (waist) {
    if (input.landings?.length || input.cores?.length) refuse('waist', plainOnBank());
    return onBank(input, waist, pad);
  }
  return withMidLandings(d ? withLanding(input, d, pad) : plainFlight(input, pad), input, pad);
}

export function straight(input: Straight, pad: Pad): Flight {
  const { risers: n, rise, tread: t, width: w, landingDepth: d, nosing } = input;
  const treads = treadsOf(input);
  const equal = d
    ? pad.step('total run', 'L = (n − 1) × t + d', { n, t, d }, t.times(n.minus(ONE())).plus(d))
    : pad.step('total run', 'L = n × t', { n, t }, t.times(n));
  const run = runWithLandings(equal, input, pad);
  const plain = plainVolume(input, pad);
  const volume = undercut(washed(plain, input, pad), input, pad);
  const footprint = pad.step('footprint', 'A = L × w', { L: run, w }, run.times(w));
  const formed = straightFaces(volume, input, pad);
  const around = { rise, treads, run, width: w, nosing };
  return { volume, run, footprint, formed, tread: t, around, across: w };
}
