/**
 * Cut and fill between cross sections along a line, stretch by stretch.
 *
 * Where the area halfway is known, a stretch is a prismoid: `V = L × (A + 4 × M + B) ÷ 6`. It is known
 * where it was measured, and between two trapezoids, whose middle has their mean dimensions. Everywhere
 * else the stretch goes by average end area, `V = L × (A + B) ÷ 2`; one that runs out to nothing is a
 * pyramid of `V = L × (A + B) ÷ 3` where the input says so. Between a trapezoid in cut and one in fill the
 * ground meets the grade where the depth, changing evenly, is nothing: the stretch is parted there.
 *
 * Source: geometry.
 */
import * as faults from '../quantity/faults';
import { constant } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { middleOfLast } from './faults';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

interface Common {
  readonly at: Length;
  readonly middleArea: Area | undefined;
  readonly middleFill: Area | undefined;
}

/** A cross section, read. */
export type Section = Common &
  (
    | {
        readonly by: 'area';
        readonly area: Area;
        readonly fill: Area | undefined;
        readonly depth: Length | undefined;
      }
    | { readonly by: 'trapezoid'; readonly width: Length; readonly depth: Length; readonly sideSlope: Ratio }
  );

type Trapezoid = Extract<Section, { by: 'trapezoid' }>;

/** What a stretch that runs out to nothing is like. */
export type RunOut = 'wedge' | 'pyramid';

/** Cross sections, read. */
export interface SectionList {
  readonly sections: readonly Section[];
  readonly runOut: RunOut | undefined;
}

/** One stretch between neighboring sections. */
export interface StretchFigures {
  /** Number of the section it begins at, counted from one. */
  readonly from: Quantity<'count'>;
  /** The rule that its volume goes by. */
  readonly rule: 'prismoidal' | 'average end area' | 'pyramid';
  /** Its volume by that rule. */
  readonly volume: Quantity<'volume'>;
  /** Its volume by average end area. */
  readonly averageEndArea: Quantity<'volume'>;
}

/** Average end area against the prismoidal formula, for the cut or for the fill. */
export interface SideFigures {
  /** Area of each section, in order. */
  readonly areas: readonly Quantity<'area'>[];
  /** By average end area all along. */
  readonly averageEndArea: Quantity<'volume'>;
  /** By the prismoidal formula all along; left out where a middle section is not known. */
  readonly prismoidal?: Quantity<'volume'>;
  /** How much more the average end area gives on the stretches that go by the prismoidal formula. */
  readonly difference?: Quantity<'volume'>;
  /** The stretches, each with the rule that was used. */
  readonly stretches: readonly StretchFigures[];
}

/** Cut between the sections, and fill where there is any. */
export interface SectionFigures extends SideFigures {
  /** The same for the fill. */
  readonly fill?: SideFigures;
}

/** What has to be said about some stretches: which, and two volumes to compare. */
export interface Compared {
  readonly stretches: readonly string[];
  /** Sum by the rule that is used. */
  readonly used: Volume;
  /** Sum by the other rule. */
  readonly other: Volume;
}

/** What the sections come to. */
export interface SectionsCut {
  readonly volume: Volume;
  readonly fill?: Volume;
  readonly sections: SectionFigures;
  /** Cuts with the slope of their sides, to be judged for safety. */
  readonly cuts: readonly { readonly depth: Length; readonly sideSlope: Ratio | undefined }[];
  /** True where the depth of a cut is not known. */
  readonly depthUnknown: boolean;
  readonly highest: Length | undefined;
  /** Prismoids against average end areas. */
  readonly prismoids: Compared | undefined;
  /** Stretches that run out to nothing, by average end area against pyramids. */
  readonly runOuts: Compared | undefined;
}

const TWO = constant(() => wholeNumber(2));
const THREE = constant(() => wholeNumber(3));
const FOUR = constant(() => wholeNumber(4));
const SIX = constant(() => wholeNumber(6));

/** Cut or fill: which depths and which fields of a section belong to it. */
interface Side {
  readonly name: 'cut' | 'fill';
  /** Put before what a step computes. */
  readonly prefix: string;
  readonly symbols: readonly [end: string, prismoidal: string];
  /** Depth of a trapezoid on this side; not above zero where it lies on the other. */
  readonly depth: (section: Trapezoid) => Length;
  readonly given: (section: Section & { by: 'area' }) => Area | undefined;
  readonly middle: (section: Section) => Area | undefined;
}

const CUT: Side = {
  name: 'cut',
  prefix: '',
  symbols: ['V', 'P'],
  depth: ({ depth }) => depth,
  given: ({ area }) => area,
  middle: ({ middleArea }) => middleArea,
};

const FILL: Side = {
  name: 'fill',
  prefix: 'fill: ',
  symbols: ['F', 'Q'],
  depth: ({ depth }) => depth.negated(),
  given: ({ fill }) => fill,
  middle: ({ middleFill }) => middleFill,
};

const noArea = (section: Section): Area =>
  section.by === 'area'
    ? section.area.minus(section.area)
    : section.width.minus(section.width).times(section.width);

function areaOn(side: Side, section: Section, i: number, pad: Pad): Area {
  if (section.by === 'area') return side.given(section) ?? noArea(section);
  const [w, d, s] = [section.width, side.depth(section), section.sideSlope];
  if (d.sign() <= 0) return noArea(section);
  const A = d.times(w.plus(d.times(s)));
  return pad.step(
    say`${{ side: side.prefix }}area of section ${{ n: i + 1 }}`,
    'A = d × (w + s × d)',
    { d, w, s },
    A,
  );
}

/** A stretch of one side: its length and end areas, and the area halfway where that is known. */
interface Solid {
  readonly L: Length;
  readonly A: Area;
  readonly B: Area;
  readonly M: Area | undefined;
}

const mean = <D extends 'length' | 'ratio'>(a: Quantity<D>, b: Quantity<D>): Quantity<D> =>
  (a as Quantity<'length'>).plus(b as Quantity<'length'>).over(TWO()) as unknown as Quantity<D>;

/** Between two trapezoids: all of the stretch, or the part of it that lies on this side of the grade. */
function betweenTrapezoids(
  side: Side,
  [from, to]: readonly [Trapezoid, Trapezoid],
  [L, A, B]: readonly [Length, Area, Area],
  what: string,
  pad: Pad,
): Solid {
  const [d1, d2] = [side.depth(from), side.depth(to)];
  if (d1.sign() <= 0 && d2.sign() <= 0) return { L, A, B, M: noArea(from) };
  const other = d1.sign() < 0 ? d1 : d2;
  const parted = other.sign() < 0;
  const [here, there] = d1.sign() > 0 ? [from, to] : [to, from];
  const d = side.depth(here);
  const fall = d.minus(side.depth(there));
  const x = parted
    ? pad.step(
        say`${{ what }}: length to where the depth is nothing`,
        'x = L × d ÷ (d − e)',
        { L, d, e: other },
        L.times(d.over(fall)),
      )
    : L;
  // Width and slope where the stretch ends: at the other section, or where the depth is nothing.
  const share = parted ? d.over(fall) : undefined;
  const end = <D extends 'length' | 'ratio'>(a: Quantity<D>, b: Quantity<D>): Quantity<D> => {
    if (!share) return b;
    const [p, q] = [a as Quantity<'length'>, b as Quantity<'length'>];
    return p.plus(q.minus(p).times(share)) as unknown as Quantity<D>;
  };
  const w = mean(here.width, end(here.width, there.width));
  const s = mean(here.sideSlope, end(here.sideSlope, there.sideSlope));
  const h = parted ? d.over(TWO()) : mean(d1, d2);
  const M = pad.step(
    say`${{ what }}: middle area, of mean dimensions`,
    'M = h × (w + s × h)',
    { h, w, s },
    h.times(w.plus(h.times(s))),
  );
  return { L: x, A, B, M };
}

function solidOf(
  side: Side,
  [from, to]: readonly [Section, Section],
  [A, B]: readonly [Area, Area],
  what: string,
  pad: Pad,
): Solid {
  const L = to.at.minus(from.at);
  const M = side.middle(from);
  if (M || from.by === 'area' || to.by === 'area') return { L, A, B, M };
  return betweenTrapezoids(side, [from, to], [L, A, B], what, pad);
}

interface Stretch extends StretchFigures {
  readonly name: string;
  /** By the pyramid, where the stretch runs out to nothing and no middle is known. */
  readonly pyramid: Volume | undefined;
}

/** Nothing at both ends and nothing between. */
const isNothing = ({ A, B, M }: Solid): boolean => A.sign() === 0 && B.sign() === 0 && !M?.sign();

function stretch(side: Side, solid: Solid, i: number, runOut: RunOut | undefined, pad: Pad): Stretch {
  const { L, A, B, M } = solid;
  const name = `sections ${i + 1} to ${i + 2}`;
  const whole = L.times(A.plus(B));
  const from = wholeNumber(i + 1);
  if (isNothing(solid)) {
    const none = whole.over(TWO());
    const rule = M ? 'prismoidal' : 'average end area';
    return { from, name, rule, volume: none, averageEndArea: none, pyramid: undefined };
  }
  const averageEndArea = pad.step(
    say`${{ side: side.prefix }}average end area, ${{ name }}`,
    'V = L × (A + B) ÷ 2',
    { L, A, B },
    whole.over(TWO()),
  );
  if (M) {
    const volume = pad.step(
      say`${{ side: side.prefix }}prismoidal formula, ${{ name }}`,
      'V = L × (A + 4 × M + B) ÷ 6',
      { L, A, M, B },
      L.times(A.plus(M.times(FOUR())).plus(B)).over(SIX()),
    );
    return { from, name, rule: 'prismoidal', volume, averageEndArea, pyramid: undefined };
  }
  const ends = { from, name, averageEndArea };
  if (A.sign() !== 0 && B.sign() !== 0) {
    return { ...ends, rule: 'average end area', volume: averageEndArea, pyramid: undefined };
  }
  const third = whole.over(THREE());
  if (runOut !== 'pyramid')
    return { ...ends, rule: 'average end area', volume: averageEndArea, pyramid: third };
  pad.step(say`${{ side: side.prefix }}pyramid, ${{ name }}`, 'V = L × (A + B) ÷ 3', { L, A, B }, third);
  return { ...ends, rule: 'pyramid', volume: third, pyramid: third };
}

const sum = (volumes: readonly Volume[]): Volume => {
  const [first, ...rest] = volumes as [Volume, ...Volume[]];
  return rest.reduce((all, volume) => all.plus(volume), first);
};

interface SideCut {
  readonly volume: Volume;
  readonly figures: SideFigures;
  readonly stretches: readonly Stretch[];
}

function sideCut(side: Side, { sections, runOut }: SectionList, pad: Pad): SideCut {
  const areas = sections.map((section, i) => areaOn(side, section, i, pad));
  const stretches = sections.slice(1).map((to, i) => {
    const ends = [sections[i] as Section, to] as const;
    const between = [areas[i] as Area, areas[i + 1] as Area] as const;
    const solid = solidOf(side, ends, between, `${side.prefix}sections ${i + 1} to ${i + 2}`, pad);
    return stretch(side, solid, i, runOut, pad);
  });
  const [V, P] = side.symbols;
  const ends = stretches.map(({ averageEndArea }) => averageEndArea);
  const averageEndArea = total(`${side.prefix}by average end area`, V, ends, pad);
  const exact = stretches.filter(({ rule }) => rule === 'prismoidal');
  const some = stretches.filter(({ averageEndArea: a, volume: v }) => a.sign() !== 0 || v.sign() !== 0);
  const all = some.every(({ rule }) => rule === 'prismoidal');
  const plain = some.every(({ rule }) => rule === 'average end area');
  const what = all ? 'by the prismoidal formula' : 'each stretch by its own rule';
  const volume = plain
    ? averageEndArea
    : total(
        `${side.prefix}${what}`,
        P,
        stretches.map((s) => s.volume),
        pad,
      );
  const figures = {
    areas,
    averageEndArea,
    ...(all ? { prismoidal: volume } : {}),
    ...differenceOf(side, exact, pad),
    stretches: stretches.map(({ from, rule, volume: v, averageEndArea: a }) => ({
      from,
      rule,
      volume: v,
      averageEndArea: a,
    })),
  };
  return { volume, figures, stretches };
}

function differenceOf({ prefix }: Side, exact: readonly Stretch[], pad: Pad): { difference?: Volume } {
  if (exact.length === 0) return {};
  const V = sum(exact.map(({ averageEndArea }) => averageEndArea));
  const P = sum(exact.map(({ volume }) => volume));
  return {
    difference: pad.step(say`${{ prefix }}more by average end area`, 'E = V − P', { V, P }, V.minus(P)),
  };
}

/** The stretches of both sides that `keep` picks out, with their sums by two rules. */
function compared(
  sides: readonly (readonly [Side, SideCut])[],
  keep: (stretch: Stretch) => boolean,
  other: (stretch: Stretch) => Volume,
  tell: (stretch: Stretch) => boolean = () => true,
): Compared | undefined {
  const kept = sides.flatMap(([side, { stretches }]) => stretches.filter(keep).map((s) => ({ side, s })));
  if (kept.length === 0) return undefined;
  const names = kept.filter(({ s }) => tell(s)).map(({ side, s }) => `${side.prefix}${s.name}`);
  return {
    stretches: names,
    used: sum(kept.map(({ s }) => s.volume)),
    other: sum(kept.map(({ s }) => other(s))),
  };
}

/** A middle area after the last section would belong to no stretch. */
function checkSections(sections: readonly Section[]): void {
  sections.slice(1).forEach((to, i) => {
    if (!to.at.greaterThan((sections[i] as Section).at)) {
      refuse(`sections[${i + 1}].at`, faults.outOfOrder(`section ${i + 2}`, `section ${i + 1}`));
    }
  });
  const last = sections.length - 1;
  const { middleArea, middleFill } = sections[last] as Section;
  if (middleArea) refuse(`sections[${last}].middleArea`, middleOfLast('middleArea'));
  if (middleFill) refuse(`sections[${last}].middleFill`, middleOfLast('middleFill'));
}

const hasFill = (section: Section): boolean =>
  (section.by === 'trapezoid' ? section.depth.sign() < 0 : (section.fill?.sign() ?? 0) > 0) ||
  (section.middleFill?.sign() ?? 0) > 0;

function cutsOf(sections: readonly Section[]): SectionsCut['cuts'] {
  return sections.flatMap((section): SectionsCut['cuts'] => {
    if (section.by === 'area') return section.depth ? [{ depth: section.depth, sideSlope: undefined }] : [];
    return section.depth.sign() > 0 ? [{ depth: section.depth, sideSlope: section.sideSlope }] : [];
  });
}

/** Stretches of even section are not worth naming. */
const differs = ({ volume, averageEndArea }: Stretch): boolean => averageEndArea.compareTo(volume) !== 0;

/**
 * Cross sections along a line.
 *
 * @throws {InputError} `out-of-order` sections; `does-not-fit` for a middle area after the last section
 */
export function sectionsCut(input: SectionList, pad: Pad): SectionsCut {
  const { sections, runOut } = input;
  checkSections(sections);
  const cut = sideCut(CUT, input, pad);
  const fill = sections.some(hasFill) ? sideCut(FILL, input, pad) : undefined;
  const sides = [[CUT, cut] as const, ...(fill ? [[FILL, fill] as const] : [])];
  const heights = sections.flatMap((s) =>
    s.by === 'trapezoid' && s.depth.sign() < 0 ? [s.depth.negated()] : [],
  );
  return {
    volume: cut.volume,
    ...(fill ? { fill: fill.volume } : {}),
    sections: { ...cut.figures, ...(fill ? { fill: fill.figures } : {}) },
    cuts: cutsOf(sections),
    depthUnknown: sections.some((s) => s.by === 'area' && s.area.sign() > 0 && !s.depth),
    highest: heights.length > 0 ? heights.reduce((most, h) => (h.greaterThan(most) ? h : most)) : undefined,
    prismoids: compared(
      sides,
      ({ rule }) => rule === 'prismoidal',
      ({ averageEndArea }) => averageEndArea,
      differs,
    ),
    runOuts:
      runOut === undefined
        ? compared(
            sides,
            ({ rule, pyramid }) => rule === 'average end area' && pyramid !== undefined,
            ({ pyramid, volume }) => pyramid ?? volume,
          )
        : undefined,
  };
}
