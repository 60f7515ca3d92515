/** Slopes, notes, steps, joints and steel from their published formulas. */
import {
  barSize,
  crossSlope,
  dowelLayout,
  fiberDosage,
  jointSpacing,
  lapLength,
  levelNotes,
  meshStyle,
  relativeStiffness,
  runoff,
  slopeOf,
  squareCheck,
  steelMinimum,
  steelPlacement,
  stepLayout,
  straightedge,
} from '../../../src/index';
import { decimalText, type Measure, type Site } from './draw';
import {
  arcTangent,
  degrees,
  least,
  most,
  ONE,
  PI,
  Rational,
  radians,
  root,
  sum,
  tangent,
  whole,
  ZERO,
} from './rational';
import { type Compared, type Expected, held } from './trial';
import { inSi, UNITS } from './units';

const DIGITS = 45;
const inch = (n: number | string): Rational => inSi(String(n), 'in', 'length');
const psi = (n: number): Rational => inSi(String(n), 'psi', 'pressure');
const LB_FT3 = UNITS.density['pcf'] as Rational;
const GRAVITY = Rational.parse('9.80665');

const units = (amount: Rational, each: Rational): Rational => whole(amount.over(each).ceil());

function slope(site: Site): Compared {
  const over = site.length(0.5, 30);
  const way = site.dice.below(3);
  const [s, a, rise, run] = [
    site.slope(0.2, 30),
    site.degrees(1, 60),
    site.length(0.05, 2),
    site.length(1, 20),
  ];
  const is = [s.is, tangent(radians(a.is)), rise.is.over(run.is)][way] as Rational;
  const put = [{ slope: s.put }, { angle: a.put }, { rise: rise.put, run: run.put }][way];
  return held(
    slopeOf,
    { ...put, over: over.put },
    {
      percent: is,
      inchesPerFoot: is,
      millimetersPerMeter: is,
      oneIn: is,
      angle: way === 1 ? a.is : degrees(arcTangent(is)),
      fall: is.times(over.is),
    },
    DIGITS,
  );
}

function crossing(site: Site): Compared {
  const [along, high, width] = [site.slope(0.2, 9), site.length(2, 3), site.length(0.8, 4)];
  const low = site.length(1, 1.99);
  const across = high.is.minus(low.is).over(width.is);
  return held(
    crossSlope,
    { along: along.put, highSide: high.put, lowSide: low.put, width: width.put },
    {
      across,
      along: along.is,
      steepest: root(along.is.squared().plus(across.squared())),
      // Stated to 22 digits.
      direction: { value: degrees(arcTangent(across.over(along.is))), digits: 21 },
      verdict:
        across.lessThan(Rational.of(1, 48)) || across.compare(Rational.of(1, 48)) === 0
          ? 'within 1:48'
          : 'steeper than 1:48',
    },
    DIGITS,
  );
}

/** A level book: each turning point by the readings since the bench mark, summed at once. */
function book(site: Site): Compared {
  const start = site.plainLength(20, 90);
  const n = site.between(1, 8);
  const turns = Array.from({ length: n }, () => ({
    back: site.plainLength(0.4, 3),
    between: site.plainLength(0.4, 3),
    fore: site.plainLength(0.4, 3),
  }));
  const expected: Record<string, Expected> = {};
  const rows: object[] = [{ point: 'bench', backsight: turns[0]?.back.put }];
  turns.forEach(({ between, fore }, i) => {
    const so = turns.slice(0, i + 1);
    const before = start.is
      .plus(sum(so.map((t) => t.back.is)))
      .minus(sum(so.slice(0, -1).map((t) => t.fore.is)));
    expected[`elevations.spot ${i}`] = before.minus(between.is);
    expected[`elevations.turn ${i}`] = before.minus(fore.is);
    rows.push(
      { point: `spot ${i}`, foresight: between.put },
      {
        point: `turn ${i}`,
        foresight: fore.put,
        ...(turns[i + 1] ? { backsight: turns[i + 1]?.back.put } : {}),
      },
    );
  });
  const backs = sum(turns.map((t) => t.back.is));
  const fores = sum(turns.map((t) => t.fore.is));
  return held(
    levelNotes,
    { kind: 'level', benchMark: { name: 'bench', elevation: start.put }, rows },
    {
      ...expected,
      checkSum: backs.minus(fores),
      checkAgainst: backs.minus(fores),
      sumOfBacksights: backs,
      sumOfForesights: fores,
    },
    DIGITS,
  );
}

function string(site: Site): Compared {
  const [p, q, l] = [site.plainLength(20, 21), site.plainLength(20, 21), site.plainLength(6, 20)];
  const rows = Array.from({ length: site.between(1, 8) }, (_, i) => ({
    point: `p${i}`,
    at: site.plainLength(0.1, 6),
    down: site.plainLength(0.05, 0.5),
  }));
  return held(
    levelNotes,
    {
      kind: 'string-line',
      from: { name: 'a', elevation: p.put },
      to: { name: 'b', elevation: q.put },
      length: l.put,
      rows: rows.map(({ point, at, down }) => ({ point, at: at.put, down: down.put })),
    },
    Object.fromEntries(
      rows.map(({ at, down }, i) => [
        `elevations.p${i}`,
        // The two ends weighed by how far they are.
        p.is.times(l.is.minus(at.is)).plus(q.is.times(at.is)).over(l.is).minus(down.is),
      ]),
    ),
    DIGITS,
  );
}

function laser(site: Site): Compared {
  const start = site.plainLength(20, 90);
  const water = site.maybe();
  const at = site.plainLength(0.5, 2);
  const rows = Array.from({ length: site.between(1, 8) }, (_, i) => ({
    point: `p${i}`,
    up: site.maybe(),
    by: site.plainLength(0.1, 2),
  }));
  const input = water
    ? {
        kind: 'water-level',
        benchMark: { name: 'k', elevation: start.put },
        atBenchMark: at.put,
        rows: rows.map(({ point, by }) => ({ point, height: by.put })),
      }
    : {
        kind: 'laser',
        benchMark: { name: 'k', elevation: start.put },
        rows: rows.map(({ point, up, by }) => ({ point, [up ? 'up' : 'down']: by.put })),
      };
  const level = water ? start.is.plus(at.is) : start.is;
  return held(
    levelNotes,
    input,
    Object.fromEntries(
      rows.map(({ up, by }, i) => [
        `elevations.p${i}`,
        up && !water ? level.plus(by.is) : level.minus(by.is),
      ]),
    ),
    DIGITS,
  );
}

/** Every pair of readings that the edge could rest on, each gap below it: the widest that some edge shows. */
function flatness(site: Site): Compared {
  const n = site.between(5, 25);
  const readings = Array.from({ length: n }, () => site.plainLength(1, 1.03));
  const spacing = site.plainLength(0.25, 0.5);
  const edge = site.plainLength(1.1, 3);
  const reach = Number(edge.is.over(spacing.is).floor());
  const z = readings.map(({ is }) => is);
  let widest = ZERO;
  for (let from = 0; from === 0 || from + reach < n; from += 1) {
    const to = Math.min(from + reach, n - 1);
    for (let i = from + 1; i < to; i += 1) {
      // Over a reading the edge stands as high as the highest line through one before and one behind.
      for (let a = from; a < i; a += 1) {
        for (let b = i + 1; b <= to; b += 1) {
          const [p, q] = [z[a], z[b]] as [Rational, Rational];
          const line = p
            .times(b - i)
            .plus(q.times(i - a))
            .over(b - a);
          widest = most(widest, line.minus(z[i] as Rational));
        }
      }
    }
  }
  return held(
    straightedge,
    {
      readings: readings.map(({ put }) => put),
      spacing: spacing.put,
      edge: edge.put,
      allowed: '1/4 in',
    },
    { gap: widest, outOfLevel: z.reduce(most).minus(z.reduce(least)) },
    DIGITS,
  );
}

/** Forms slid out of square by a known length: both diagonals by Pythagoras. */
function squareness(site: Site): Compared {
  const [l, w] = [site.length(3, 12), site.length(2, 9)];
  const [D, d] = [site.length(12, 12.05), site.length(12, 12.05)];
  const given = root(l.is.squared().plus(w.is.squared()));
  const plain = held(squareCheck, { length: l.put, width: w.put }, { trueDiagonal: given }, DIGITS);
  if (plain.disagreements.length > 0) return plain;
  return held(
    squareCheck,
    { length: l.put, width: w.put, diagonals: [D.put, d.put] },
    { trueDiagonal: given, difference: D.is.minus(d.is).abs() },
    DIGITS,
  );
}

function steps(site: Site): Compared {
  const risers = site.between(2, 14);
  const [rise, tread, landing, threshold] = [
    site.plainLength(0.11 * risers, 0.19 * risers),
    site.plainLength(0.26, 0.35),
    site.plainLength(1, 2),
    site.plainLength(0.01, 0.03),
  ];
  const pitch = site.slope(0.5, 2);
  const left = rise.is.minus(threshold.is).minus(pitch.is.times(landing.is));
  const r = left.over(risers);
  const fall = pitch.is.times(tread.is);
  return held(
    stepLayout,
    {
      totalRise: rise.put,
      risers,
      tread: tread.put,
      landing: landing.put,
      pitch: pitch.put,
      door: { swing: 'in', width: '0.9 m', threshold: threshold.put },
    },
    {
      landingFall: pitch.is.times(landing.is),
      riserTotal: left,
      'best.riser': r,
      'best.run': tread.is.times(risers - 1),
      'best.treadFall': fall,
      'best.riserForm': r.minus(fall),
      'best.twoRisersAndTread': r.times(2).plus(tread.is),
      'best.riserTimesTread': r.times(tread.is),
      [`marks.${risers - 1}.height`]: left,
      'marks.0.height': r,
    },
    DIGITS,
  );
}

/** The published table, the cap of 18 ft or 5.5 m and the shape of the panel; sizes clear of its boundaries. */
function spacing(site: Site): Compared {
  const t = site.plainLength(0.105, 0.3);
  const [wet, large] = [site.maybe(), site.maybe()];
  const slump = wet ? site.plainLength(0.11, 0.15) : site.plainLength(0.03, 0.09);
  const stone = large ? site.plainLength(0.022, 0.04) : site.plainLength(0.008, 0.018);
  const width = site.maybe() ? site.plainLength(0.9, 6) : undefined;
  const multiple = wet ? (large ? 30 : 24) : 36;
  const ratio = site.toOne(1, 2);
  const input = {
    thickness: t.put,
    slump: slump.put,
    aggregateSize: stone.put,
    ...(width ? { width: width.put, longestRatio: ratio.put } : {}),
  };
  // Its own round sizes in each system: 18 ft and 1 in, or 5.5 m and 25 mm.
  const metric = jointSpacing(input).system === 'metric';
  const cap = metric ? inSi('5.5', 'm', 'length') : inch(18 * 12);
  const byThickness = t.is.times(multiple);
  const all = least(byThickness, cap);
  return held(
    jointSpacing,
    input,
    {
      multiple,
      byThickness,
      spacing: width ? least(all, width.is.times(ratio.is)) : all,
      depth: most(t.is.over(4), metric ? inSi('25', 'mm', 'length') : inch(1)),
    },
    DIGITS,
  );
}

function stiffness(site: Site): Compared {
  const h = site.length(0.1, 0.4);
  const E = site.of('pressure', 'psi', 'MPa', 2_500_000, 6_000_000, 0);
  const [p, d] = [site.of('pressure', 'psi', 'kPa', 50, 400, 1), site.length(0.01, 0.03)];
  const m = site.percent(10, 30);
  const panel = site.length(2, 6);
  const D = E.is.times(h.is).times(h.is).times(h.is).over(ONE.minus(m.is.squared()).times(12));
  const l = root(root(D.times(d.is).over(p.is)));
  return held(
    relativeStiffness,
    {
      thickness: h.put,
      elasticity: E.put,
      subgrade: { pressure: p.put, deflection: d.put },
      poisson: m.put,
      panelLength: panel.put,
    },
    {
      radius: l,
      longestPanel: l.times(5),
      panelRatio: panel.is.over(l),
      passes: !l.times(5).lessThan(panel.is),
    },
    DIGITS,
  );
}

function storm(site: Site): Compared {
  const rain = site.of('speed', 'in/h', 'mm/h', 1, 9);
  const areas = Array.from({ length: site.between(1, 5) }, () => ({
    area: site.of('area', 'ft2', 'm2', 100, 9000),
    coefficient: site.percent(10, 100),
  }));
  const flows = areas.map(({ area, coefficient }) => area.is.times(coefficient.is).times(rain.is));
  return held(
    runoff,
    {
      areas: areas.map((a) => ({ surface: 'roof', area: a.area.put, coefficient: a.coefficient.put })),
      intensity: rain.put,
    },
    {
      flow: sum(flows),
      flowInCubicFeet: sum(flows),
      coefficient: sum(flows)
        .over(rain.is)
        .over(sum(areas.map(({ area }) => area.is))),
      'areas.0.flow': flows[0],
    },
    DIGITS,
  );
}

/** Nominal diameter in eighths of an inch, area in in2, weight in lb/ft, as ASTM A615 has them (from memory). */
const BARS: Readonly<Record<string, readonly [eighths: string, area: string, weight: string]>> = {
  '#3': ['0.375', '0.11', '0.376'],
  '#4': ['0.5', '0.20', '0.668'],
  '#5': ['0.625', '0.31', '1.043'],
  '#6': ['0.75', '0.44', '1.502'],
  '#7': ['0.875', '0.60', '2.044'],
  '#8': ['1', '0.79', '2.670'],
  '#9': ['1.128', '1.00', '3.400'],
  '#10': ['1.27', '1.27', '4.303'],
  '#11': ['1.41', '1.56', '5.313'],
  '#14': ['1.693', '2.25', '7.650'],
  '#18': ['2.257', '4.00', '13.600'],
};
const bar = (site: Site, names: readonly string[] = Object.keys(BARS)) => {
  const name = site.dice.pick(names);
  const [d, a, w] = BARS[name] as readonly [string, string, string];
  return {
    name,
    diameter: inch(d),
    area: inSi(a, 'in2', 'area'),
    weight: inSi(w, 'lb/ft', 'mass-per-length'),
  };
};

function bundle(site: Site): Compared {
  const b = bar(site);
  const [l, n] = [site.length(1, 12), site.between(1, 200)];
  return held(
    barSize,
    { bar: b.name, series: 'inch-pound', length: l.put, count: n },
    { diameter: b.diameter, area: b.area, unitWeight: b.weight, weight: b.weight.times(l.is).times(n) },
    DIGITS,
  );
}

/** Development length of ACI 318-19, table 25.4.2.5 as a formula (from memory). */
function lap(site: Site): Compared {
  const b = bar(site, ['#3', '#4', '#5', '#6', '#7', '#8', '#9', '#10', '#11']);
  if (site.maybe()) {
    const n = site.between(30, 80);
    const floor = site.plainLength(0.2, 0.4);
    const long = most(b.diameter.times(n), floor.is);
    return held(
      lapLength,
      { kind: 'diameters', bar: b.name, diameters: n, minimum: floor.put },
      { lap: long, diameters: long.over(b.diameter) },
      DIGITS,
    );
  }
  const fc = site.of('pressure', 'psi', 'MPa', 2500, 9500, 1);
  const [cover, apart] = [site.plainLength(0.02, 0.1), site.plainLength(0.1, 0.5)];
  const [grade, strength, psiG] = site.dice.pick([
    ['40', 40_000, '1'],
    ['60', 60_000, '1'],
    ['80', 80_000, '1.15'],
    ['100', 100_000, '1.3'],
  ] as const);
  const [top, epoxy, light] = [site.maybe(), site.maybe(), site.maybe()];
  const placed = least(
    Rational.parse(top ? '1.3' : '1').times(Rational.parse(epoxy ? '1.5' : '1')),
    Rational.parse('1.7'),
  );
  const small = ['#3', '#4', '#5', '#6'].includes(b.name);
  const confined = least(
    least(cover.is.plus(b.diameter.over(2)), apart.is.over(2)).over(b.diameter),
    Rational.parse('2.5'),
  );
  const number = fc.is.over(psi(1));
  const raw = b.diameter
    .times(3)
    .over(40)
    .times(strength)
    .times(placed)
    .times(Rational.parse(small ? '0.8' : '1'))
    .times(Rational.parse(psiG))
    .over(
      Rational.parse(light ? '0.75' : '1')
        .times(root(number))
        .times(confined),
    );
  const factor = site.dice.pick(['A', 'B'] as const);
  const input = {
    kind: 'development',
    bar: b.name,
    strength: fc.put,
    grade,
    cover: cover.put,
    spacing: apart.put,
    topBar: top,
    epoxy,
    lightweight: light,
    lapClass: factor,
  };
  const shortest = isMetric(lapLength, input) ? Rational.of(3, 10) : inch(12);
  return held(
    lapLength,
    input,
    {
      development: most(raw, shortest),
      lap: most(raw.times(Rational.parse(factor === 'A' ? '1' : '1.3')), shortest),
      confinement: confined,
    },
    DIGITS,
  );
}

/** Areas of the bars that are offered in a metric job, in square millimeters: CSA G30.18 and EN 10080, from memory. */
const METRIC_AREAS = {
  '8 mm': 50.3,
  '10 mm': 78.5,
  '12 mm': 113,
  '16 mm': 201,
  '10M': 100,
  '15M': 200,
  '20M': 300,
};

/** A printed area, and the least and the greatest that print so. Bars that are numbered are so by definition. */
function sectionsBetween(text: string): readonly Rational[] {
  const [digits, unit] = text.split(' ') as [string, string];
  const at = inSi(digits, unit, 'area');
  const places = digits.split('.')[1]?.length ?? 0;
  const half = inSi('0.5', unit, 'area').over(10 ** places);
  const byDefinition = unit === 'in2' || digits.endsWith('00');
  return byDefinition ? [at, at, at] : [at, at.minus(half), at.plus(half)];
}

/** In which family of units a job is taken; no figure of it is looked at. */
const isMetric = (calculation: (input: never) => { system: string }, input: unknown): boolean =>
  calculation(input as never).system === 'metric';

function steel(site: Site): Compared {
  const t = site.plainLength(0.1, 0.3);
  const foot = inch(12);
  const limit = site.plainLength(0.2, 0.6);
  const drag = site.maybe();
  const [l, w, F] = [site.plainLength(3, 20), site.plainLength(3, 20), site.toOne(1, 2)];
  const [f, D] = [
    site.of('pressure', 'psi', 'MPa', 20_000, 45_000, 0),
    site.of('density', 'pcf', 'kg/m3', 110, 155, 1),
  ];
  const ratio = Rational.of(site.between(10, 60), 10_000);
  // Half of the slab is dragged: its weight on the base times the friction, by the stress.
  const pulled = (long: Rational): Rational =>
    F.is.times(long).times(foot).times(t.is).times(D.is).times(GRAVITY).over(f.is.times(2));
  const need = drag ? pulled(l.is) : foot.times(t.is).times(ratio);
  const input = drag
    ? {
        kind: 'drag',
        thickness: t.put,
        length: l.put,
        width: w.put,
        friction: F.put,
        stress: f.put,
        unitWeight: D.put,
        spacingLimit: limit.put,
      }
    : {
        kind: 'ratio',
        thickness: t.put,
        ratio: { value: decimalText(ratio.times(10_000).top, 2), unit: '%' },
        spacingLimit: limit.put,
      };
  const metric = isMetric(steelMinimum, input);
  const areas = metric
    ? Object.values(METRIC_AREAS).map((area) => `${area} mm2`)
    : ['#3', '#4', '#5', '#6'].map((name) => `${(BARS[name] as readonly string[])[1]} in2`);
  const unit = metric ? Rational.of(1, 100) : inch(1);
  const spacingBy = (area: Rational): Rational =>
    unit.times(whole(least(limit.is, foot.times(area).over(need)).over(unit).floor()));
  const offered = areas
    .map((text) => sectionsBetween(text).map(spacingBy))
    .filter(([, s]) => (s as Rational).sign() > 0);
  return held(
    steelMinimum,
    input,
    {
      'along.areaPerFoot': need,
      'along.areaPerMeter': need.over(foot),
      'across.areaPerFoot': drag ? pulled(w.is) : need,
      ratio: need.over(foot.times(t.is)),
      // Where the last digit of a printed area tips the step of the spacing, either is right.
      ...Object.fromEntries(
        offered.flatMap(([s, low, high], i) =>
          low?.compare(high as Rational) === 0 ? [[`along.bars.${i}.spacing`, s as Rational]] : [],
        ),
      ),
    },
    DIGITS,
  );
}

function mesh(site: Site): Compared {
  // Styles that are sold have a published weight, with the edge wires in it.
  const [s, c] = [site.between(3, 16), site.between(3, 16)];
  const [a, b] = [site.between(61, 200), site.between(61, 200)];
  const wire = (tenths: number): Rational => inSi(`${tenths}`, 'in2', 'area').over(1000);
  const weight = wire(a)
    .over(inch(s))
    .plus(wire(b).over(inch(c)))
    .times(LB_FT3.times(490));
  return held(
    meshStyle,
    { style: `${s}x${c}-W${a / 10}xW${b / 10}` },
    {
      'along.wireArea': wire(a),
      'along.wireDiameter': root(wire(a).times(4).over(PI)),
      'along.areaPerFoot': wire(a).times(12).over(s),
      'across.areaPerFoot': wire(b).times(12).over(c),
      weight,
    },
    40,
  );
}

function fibers(site: Site): Compared {
  const [v, dose] = [site.of('volume', 'yd3', 'm3', 2, 90), site.of('density', 'lb/yd3', 'kg/m3', 1, 40)];
  const [bag, load] = [site.of('mass', 'lb', 'kg', 1, 25), site.of('volume', 'yd3', 'm3', 4, 11)];
  const all = v.is.times(dose.is);
  return held(
    fiberDosage,
    { volume: v.put, kind: 'macro', dosage: dose.put, bag: bag.put, load: load.put },
    {
      fibers: all,
      bags: units(all, bag.is),
      fibersPerLoad: load.is.times(dose.is),
      bagsPerLoad: units(load.is.times(dose.is), bag.is),
    },
    DIGITS,
  );
}

function dowels(site: Site): Compared {
  const [t, j, d, l, s] = [
    site.plainLength(0.14, 0.3),
    site.plainLength(3, 20),
    site.plainLength(0.015, 0.04),
    site.plainLength(0.3, 0.5),
    site.plainLength(0.2, 0.5),
  ];
  const [c, E, more, loss] = [
    site.plainLength(0.05, 0.3),
    site.plainLength(0.1, 0.25),
    site.plainLength(0.041, 0.05),
    site.percent(0, 50),
  ];
  const room = j.is.minus(c.is.times(2));
  const n = Number(room.over(s.is).ceil()) + 1;
  const section = (across: Rational): Rational => PI.times(across.squared()).over(4);
  const steelWeight = LB_FT3.times(490);
  return held(
    dowelLayout,
    {
      thickness: t.put,
      joint: j.put,
      placing: 'drilled',
      diameter: d.put,
      length: l.put,
      spacing: s.put,
      endDistance: c.put,
      embedment: E.put,
      hole: more.put,
      epoxyLoss: loss.put,
    },
    {
      dowels: n,
      evenSpacing: room.over(n - 1),
      weight: section(d.is).times(l.is).times(n).times(steelWeight),
      cover: t.is.minus(d.is).over(2),
      epoxy: section(more.is).minus(section(d.is)).times(E.is).times(n).times(ONE.plus(loss.is)),
    },
    DIGITS,
  );
}

function placement(site: Site): Compared {
  const [t, k, d]: [Measure, Measure, Measure] = [
    site.plainLength(0.12, 0.3),
    site.plainLength(0.02, 0.07),
    site.plainLength(0.01, 0.04),
  ];
  const z = k.is.plus(d.is.over(2));
  return held(
    steelPlacement,
    { steel: 'mesh', thickness: t.put, coverTop: k.put, layer: d.put },
    {
      coverBottom: t.is.minus(k.is).minus(d.is),
      depth: z,
      depthRatio: z.over(t.is),
      inUpperThird: !t.is.lessThan(z.times(3)),
    },
    DIGITS,
  );
}

export const RULES: readonly ((site: Site) => Compared)[] = [
  slope,
  crossing,
  book,
  string,
  laser,
  flatness,
  squareness,
  steps,
  spacing,
  stiffness,
  storm,
  bundle,
  lap,
  steel,
  mesh,
  fibers,
  dowels,
  placement,
];
