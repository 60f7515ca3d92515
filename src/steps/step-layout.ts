/**
 * From the total rise to risers and treads that are all alike.
 *
 * The rise is measured to the door sill, o above the landing, or to the landing itself. A landing of depth
 * d pitched p drains away from the door, so its front edge lies `p × d` lower:
 * `H = total rise − o − p × d` is left for n risers of `H ÷ n`, measured from nosing to nosing. The first
 * stands on the walk and its form is a whole riser high; the others stand at the back of a tread of depth t,
 * which is `p × t` higher there, so their forms are `p × t` lower. Between n risers lie n − 1 treads; the
 * landing tops the last.
 *
 * Every number of risers that the rules allow is listed. They are ranked by how many of the walking
 * rules they meet, then by how near `2 × r + t` is to 25 in, then by fewer risers.
 *
 * Sources: EN5156 (the walking rules), Masonry and Concrete (at most 25 in), codes as quoted.
 */

import { small } from '../grade/marks';
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, list, maybe, quantity, whole } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { all, holds, notBoth, says, where } from '../reckoning/together';
import { say } from '../reckoning/words';
import {
  type Job,
  layoutsOf,
  marksOf,
  NONE,
  RISERS,
  type StepLayoutFigures,
  type StepLayoutsFigures,
  steps,
  USUAL_PITCH,
  WALKING_SUM,
} from './layouts';
import * as ordinary from './ordinary';
import { DWELLING_BECAUSE, STEP_RULES, type StepLimits, type StepRules, stepLimits } from './rules';
import { CC_STEP_TOLERANCE, COMMON_PRACTICE, EN5156_STAIRS, MCGRAW_STEPS } from './sources';
import {
  heedDoor,
  heedHeight,
  heedNone,
  heedPitch,
  heedSteps,
  measuredRisers,
  spread,
} from './step-layout-advice';
import type { StepLayoutInput, StepLayoutParsed } from './step-layout-input';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

function limitsFor(rules: StepRules | undefined, pad: Pad): StepLimits {
  const limits = stepLimits(rules ?? 'dwelling');
  if (rules === undefined) {
    pad.assume({
      name: 'rules',
      value: 'dwelling',
      because: DWELLING_BECAUSE,
      override:
        'Give rules: accessible or public; outside the USA approved-document-k, din-18065, ncc of Australia or nbc of Canada',
      source: limits.source,
    });
  }
  return limits;
}

function pitchFor(pitch: Slope | undefined, pad: Pad): Slope {
  if (pitch) return pitch;
  pad.assume({
    name: 'pitch',
    value: USUAL_PITCH(),
    because: 'outdoor treads and landings shed water at about 2%',
    override: 'Give pitch; 0% for level treads',
    source: MCGRAW_STEPS,
  });
  return USUAL_PITCH();
}

function assumeTread({ tread, totalRun }: StepLayoutParsed, pad: Pad): void {
  if (tread && totalRun) refuse('', faults.giveOneOf(['tread', 'totalRun']));
  if (tread || totalRun) return;
  pad.assume({
    name: 'tread',
    value: say`${{ sum: WALKING_SUM }} less twice the riser`,
    because: say`the first walking rule, twice the riser and the tread make ${{ sum: WALKING_SUM }}, and no less than the rules allow`,
    override: 'Give tread or totalRun',
    source: EN5156_STAIRS,
  });
}

function work(job: Job, best: StepLayoutFigures, pad: Pad): void {
  const { total: H, pitch: p } = job;
  const { risers: n, riser: r, tread: t, treads: k } = best;
  pad.step('riser, nosing to nosing', 'r = H ÷ n', { H, n }, r);
  pad.step('level length of the treads', 'L = k × t', { k, t }, best.run);
  pad.step('fall of a tread', 'f = p × t', { p, t }, best.treadFall);
  pad.step('two risers and a tread', 'S = 2 × r + t', { r, t }, best.twoRisersAndTread);
  pad.step('riser and tread', 'S = r + t', { r, t }, best.riserAndTread);
  pad.step('riser times tread', 'X = r × t', { r, t }, best.riserTimesTread);
  const { treadFall: f, riserForm } = best;
  if (k.sign() > 0)
    pad.step('form of a riser, its tread falling to the front', 'F = r − f', { r, f }, riserForm);
}

function landingFall(input: StepLayoutParsed, pitch: Slope, pad: Pad): Length {
  const d = input.landing;
  if (!d) {
    pad.assume({
      name: 'landing',
      value: 'none',
      because: 'the rise is taken to the front edge of the landing or walk at the top',
      override: 'Give landing, its depth, when the rise is measured to the door',
      source: COMMON_PRACTICE,
    });
    return small(input.totalRise.minus(input.totalRise));
  }
  return pad.step('fall of the landing', 'g = p × d', { p: pitch, d }, small(d.times(pitch)));
}

/** The landing at the door above the ground at the foot: the rise, less the threshold where it is to the sill. */
function landingHeight({ totalRise, riseTo, door }: StepLayoutParsed, pad: Pad): Length {
  const threshold = door?.threshold;
  const R = small(totalRise);
  if (riseTo === 'sill' && !threshold) {
    return refuse(
      'door.threshold',
      faults.missing('door.threshold', ['"1 in", with riseTo: "sill"', '"25 mm", with riseTo: "sill"']),
    );
  }
  if (!threshold || riseTo === 'landing') return R;
  if (riseTo === undefined) {
    pad.assume({
      name: 'riseTo',
      value: 'sill',
      because: 'with a threshold given, the rise is taken to be measured to the top of it',
      override: 'Give riseTo: "landing" when the rise ends on the landing',
      source: COMMON_PRACTICE,
    });
  }
  const o = small(threshold);
  if (!o.lessThan(R)) refuse('door.threshold', faults.doesNotFit('threshold', 'totalRise'));
  return pad.step('rise to the landing, below the threshold', 'D = R − o', { R, o }, R.minus(o));
}

function reckon(input: StepLayoutParsed, pad: Pad): StepLayoutsFigures {
  assumeTread(input, pad);
  const limits = limitsFor(input.rules, pad);
  const pitch = pitchFor(input.pitch, pad);
  const top = landingHeight(input, pad);
  const fall = landingFall(input, pitch, pad);
  const total = top.minus(fall);
  if (total.sign() <= 0) refuse('landing', faults.doesNotFit('the fall of the landing', 'totalRise'));
  pad.step('rise left for the risers', 'H = D − g', { D: top, g: fall }, total);
  const job: Job = { input, limits, pitch, total, top };
  const layouts = layoutsOf(job);
  const shared = { landingFall: fall, riserTotal: total };
  heedPitch(pitch, pad);
  heedDoor(input, pad);
  heedHeight(job, pad);
  const checked = measuredRisers(input.measured, pad);
  const [best] = layouts;
  if (!best) {
    heedNone(job, pad);
    return { verdict: 'none fits', ...shared, layouts, marks: [], markedDifference: NONE(), ...checked };
  }
  work(job, best, pad);
  heedSteps(job, layouts, pad);
  const marks = marksOf(job, best, best.risers.toNumber('each'));
  const markedDifference = spread(steps(marks.map(({ mark }) => mark)));
  return { verdict: 'steps found', ...shared, best, layouts, marks, markedDifference, ...checked };
}

/**
 * From the total rise to risers and treads that are all alike, with story-pole marks.
 *
 * @param input - the total rise, and whatever of rules, risers, treads, landing and door is settled
 * @returns every layout that the rules allow, best first, and the story pole of the best
 * @throws {InputError} `give-one-of` for tread with totalRun; `too-many` above 200 risers;
 * `does-not-fit` when the landing falls, or the threshold stands, higher than the total rise, and when a
 * tread falls more than a riser; `missing` for a rise to a sill without its threshold; lengths that cannot be read
 * @source walking rules of EN5156; limits of the IRC, ABA 504 and BOCA as quoted; Masonry and Concrete
 * @example
 * ```ts
 * import { stepLayout } from 'flatwork-reckoner';
 *
 * const { figures } = stepLayout({ totalRise: '14 in', tread: '11 in', landing: '4 ft' });
 * figures.landingFall.format(); // '0.96 in'
 * figures.best?.risers.format(); // '2 each'
 * figures.best?.riser.format(); // '6.52 in'
 * figures.marks[0]?.mark.format(); // '6.5 in'
 * ```
 */
export const stepLayout: Calculation<StepLayoutInput, StepLayoutsFigures> = /*#__PURE__*/ define({
  id: 'step-layout',
  title: 'Step layout',
  version: 1,
  sources: [EN5156_STAIRS, MCGRAW_STEPS, CC_STEP_TOLERANCE],
  limits: [RISERS],
  input: () =>
    fields(
      {
        totalRise: quantity('length', 'totalRise', 'positive', ordinary.RISE),
        riseTo: maybe(choice('riseTo', ['sill', 'landing'] as const)),
        rules: maybe(choice('rules', STEP_RULES)),
        risers: maybe(whole('risers', 1, RISERS.most)),
        tread: maybe(quantity('length', 'tread', 'positive', ordinary.TREAD)),
        totalRun: maybe(quantity('length', 'totalRun', 'positive', ordinary.RUN)),
        landing: maybe(quantity('length', 'landing', 'positive', ordinary.LANDING)),
        sideDrop: maybe(quantity('length', 'sideDrop', 'positive', ordinary.SIDE_DROP)),
        pitch: maybe(quantity('slope', 'pitch', 'not-negative', ordinary.PITCH)),
        door: maybe(
          fields({
            swing: choice('swing', ['in', 'out'] as const),
            width: quantity('length', 'width', 'positive', ordinary.DOOR_WIDTH),
            threshold: maybe(quantity('length', 'threshold', 'not-negative', ordinary.THRESHOLD)),
          }),
        ),
        measured: maybe(list(quantity('length', 'each riser', 'positive', ordinary.RISER), 2, RISERS.most)),
      },
      all(notBoth('tread', 'totalRun'), where(says('riseTo', 'sill'), holds('door', 'threshold'))),
    ),
  reckon,
});
