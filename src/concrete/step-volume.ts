/**
 * Volume of steps: straight, wraparound around corners, round or winding.
 *
 * Each step stands on level ground (a flight on a bank: `bank-steps.ts`), so the k-th of a straight flight is k risers high: with n risers of
 * height r, treads of depth t and a width w, the treads make `w × t × r × n × (n + 1) ÷ 2`. With a
 * landing of depth d the last tread is the landing itself: `w × r × n × ((n − 1) × t ÷ 2 + d)`.
 *
 * Treads that slope (a wash) rise from each nosing to the back: each gains a wedge `w × s × t² ÷ 2`.
 * Risers that lean back under a nosing of p lose a triangle `p × face ÷ 2` each.
 *
 * A landing of depth d after the k-th riser takes the place of a tread and adds `w × r × k × (d − t)`.
 *
 * Wraparound and round steps are slabs of one riser on top of each other, each a tread larger than the one
 * above it; their sums have closed forms. Winding steps are sectors of a ring.
 *
 * Source: geometry.
 */

import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import {
  choice,
  type Field,
  fields,
  kinds,
  list,
  maybe,
  quantity,
  whole,
  wholeNumber,
  word,
} from '../reckoning/fields';
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { anyOf, filled, given, where } from '../reckoning/together';
import { RISER, SIDE_DROP } from '../steps/ordinary';
import { STEP_RULES } from '../steps/rules';
import { frostField } from './frost';
import {
  FLIGHT_WIDTH,
  LANDING_DEPTH,
  NOSING,
  STEP_RADIUS,
  TREAD,
  TURN,
  UNDERSIDE,
  WAIST,
  WASH,
} from './ordinary';
import { round, winding, wraparound } from './round-steps';
import { heedFlight } from './step-advice';
import { checkSideBySide, coresField, coresOut } from './step-cores';
import type { Flight } from './step-flight';
import type { Parsed, StepVolumeInput } from './step-inputs';
import { straight } from './straight-steps';
import { type WingWall, wingVolume, wingWallsField } from './wing-walls';

/** Figures of {@link stepVolume}. */
export interface StepVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** From the ground to the top nosing. */
  readonly totalRise: Quantity<'length'>;
  /** From the front of the first riser to the back; along the middle of a winding flight. */
  readonly totalRun: Quantity<'length'>;
  /** Ground that the flight covers. */
  readonly footprint: Quantity<'area'>;
  /** Risers and open sides to form. */
  readonly formedArea: Quantity<'area'>;
  /** What the cores take out. */
  readonly coreVolume?: Quantity<'volume'>;
  /** Part of the volume in wing walls. */
  readonly wingVolume?: Quantity<'volume'>;
  /** Least concrete over or before a core of a straight flight. */
  readonly leastCover?: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;

function flightOf(input: Parsed, pad: Pad): Flight {
  switch (input.kind) {
    case 'wraparound':
      return wraparound(input, pad);
    case 'round':
      return round(input, pad);
    case 'winding':
      return winding(input, pad);
    default:
      return straight(input, pad);
  }
}

/** Risers between landings. */
function flightsOf(input: Parsed): Count[] {
  const landings = input.kind === undefined || input.kind === 'straight' ? (input.landings ?? []) : [];
  const ends = [...landings.map(({ after }) => after), input.risers];
  return ends.map((end, i) => (i === 0 ? end : end.minus(ends[i - 1] as Count)));
}

const REACH_INCHES = 36;

/** How far it is down within a pace of the top edge: beside steps only as far as they fall there. */
function dropBeside(input: Parsed, totalRise: Length): Length | undefined {
  if (input.sideDrop) return input.sideDrop;
  if (input.kind === 'wraparound' || input.kind === 'round') {
    const reached = Math.ceil(REACH_INCHES / input.tread.toNumber('in'));
    const fall = input.rise.times(wholeNumber(reached));
    return fall.lessThan(totalRise) ? fall : totalRise;
  }
  if (input.kind === 'winding') return totalRise;
  // A flight on a bank has the ground beside it all the way up.
  return input.openSides?.sign() === 0 || input.waist ? undefined : totalRise;
}

function heed(input: Parsed, tread: Length, totalRise: Length, pad: Pad): void {
  const straight = input.kind === undefined || input.kind === 'straight' ? input : undefined;
  const landings = [
    ...(straight?.landings ?? []).map(({ depth }) => depth),
    ...(straight?.landingDepth ? [straight.landingDepth] : []),
  ];
  const { rise, frostDepth, founded } = input;
  const rules = input.rules ?? 'dwelling';
  const drop = dropBeside(input, totalRise);
  heedFlight(
    { rules, rise, tread, flights: flightsOf(input), totalRise, drop, landings, frostDepth, founded },
    pad,
  );
}

/** The flight without its cores. */
function lessCores(
  input: Parsed,
  flight: Flight,
  totalRise: Length,
  pad: Pad,
): Pick<StepVolumeFigures, 'volume' | 'coreVolume' | 'leastCover'> {
  const { cores } = input;
  if (!cores?.length) return { volume: flight.volume };
  cores.forEach(({ height }, i) => {
    if (!height.lessThan(totalRise))
      refuse(`cores[${i}].height`, faults.doesNotFit('height', 'the total rise'));
  });
  checkSideBySide(cores, flight.across);
  const { net, core, cover } = coresOut(flight.volume, cores, flight.around, pad);
  return { volume: net, coreVolume: core, ...(cover ? { leastCover: cover } : {}) };
}

function withWings(
  V: Volume,
  walls: readonly WingWall[] | undefined,
  pad: Pad,
): Pick<StepVolumeFigures, 'volume' | 'wingVolume'> {
  if (!walls?.length) return { volume: V };
  const W = wingVolume(walls, pad);
  return { volume: pad.step('volume with the wing walls', 'U = V + W', { V, W }, V.plus(W)), wingVolume: W };
}

function reckon(input: Parsed, pad: Pad): StepVolumeFigures {
  const { risers: n, rise: r } = input;
  const totalRise = pad.step('total rise', 'R = n × r', { n, r }, r.times(n));
  const flight = flightOf(input, pad);
  heed(input, flight.tread, totalRise, pad);
  const { volume: net, ...cores } = lessCores(input, flight, totalRise, pad);
  return {
    ...withWings(net, input.wingWalls, pad),
    totalRise,
    totalRun: flight.run,
    footprint: flight.footprint,
    formedArea: flight.formed,
    ...cores,
  };
}

function door(): Field<Parsed> {
  const l = (what: string, ordinary: Ordinary): Field<Length> =>
    quantity('length', what, 'positive', ordinary);
  const inner = quantity('length', 'innerRadius', 'not-negative', STEP_RADIUS);
  const parts = {
    risers: whole('risers', 1, 200),
    rise: l('rise', RISER),
    cores: maybe(coresField()),
    wingWalls: maybe(wingWallsField()),
    rules: maybe(choice('rules', STEP_RULES)),
    sideDrop: maybe(quantity('length', 'sideDrop', 'not-negative', SIDE_DROP)),
    frostDepth: frostField(),
    founded: maybe(quantity('length', 'founded', 'not-negative', UNDERSIDE)),
  };
  const landing = fields({ after: whole('after', 1, 199), depth: l('depth', LANDING_DEPTH) });
  const straightField = fields(
    {
      kind: maybe(word('straight')),
      ...parts,
      tread: l('tread', TREAD),
      width: l('width', FLIGHT_WIDTH),
      landingDepth: maybe(l('landingDepth', LANDING_DEPTH)),
      landings: maybe(list(landing, 0, 50)),
      waist: maybe(l('waist', WAIST)),
      wash: maybe(quantity('slope', 'wash', 'not-negative', WASH)),
      nosing: maybe(quantity('length', 'nosing', 'not-negative', NOSING)),
      openSides: maybe(whole('openSides', 0, 2)),
    },
    where(given('waist'), { not: anyOf(filled('landings'), filled('cores')) }),
  );
  return kinds(
    'kind',
    [
      straightField,
      fields({
        kind: word('wraparound'),
        ...parts,
        tread: l('tread', TREAD),
        topWidth: l('topWidth', FLIGHT_WIDTH),
        topDepth: l('topDepth', LANDING_DEPTH),
        sides: choice<'one' | 'both'>('sides', ['one', 'both']),
      }),
      fields({
        kind: word('round'),
        ...parts,
        tread: l('tread', TREAD),
        topRadius: l('topRadius', STEP_RADIUS),
        innerRadius: maybe(inner),
        turn: quantity('angle', 'turn', 'positive', TURN),
      }),
      fields({
        kind: word('winding'),
        ...parts,
        innerRadius: inner,
        outerRadius: l('outerRadius', STEP_RADIUS),
        turnEach: quantity('angle', 'turnEach'),
      }),
    ],
    straightField,
  );
}

/**
 * Volume of steps: straight, wraparound, round or winding, solid or on a bank, with landings, wing walls and cores.
 *
 * @param input - risers, rise and the plan: straight (as when none is said), wraparound, round or winding;
 * cores inside, landings part of the way up, wing walls; whose rules hold, frost, and a drop beside the top
 * @returns volume, total rise and run, footprint, faces to form (of the flight alone); with cores, what they
 * take out and the least concrete around them
 * @throws {InputError} for a number of risers that is not whole, and for lengths that cannot be read
 * or are not greater than zero; `does-not-fit` for a core, a nosing or a turn that the flight has no
 * room for, and for cores that overlap; `out-of-order` landings; `not-served` for a flight on a bank with landings part
 * of the way up or cores
 * @source closed form; cautions from the rules that `stepLayout` goes by
 * @example
 * ```ts
 * import { stepVolume } from 'flatwork-reckoner';
 *
 * const { figures } = stepVolume({
 *   risers: 2,
 *   rise: '7 in',
 *   tread: '11 in',
 *   width: '6 ft',
 *   landingDepth: '4 ft',
 * });
 * figures.volume.format('ft3'); // '31.21 ft3'
 * ```
 */
export const stepVolume: Calculation<StepVolumeInput, StepVolumeFigures> = /*#__PURE__*/ define({
  id: 'step-volume',
  title: 'Step volume',
  version: 1,
  sources: [CLOSED_FORM],
  input: door,
  reckon,
  takes: () => [{ item: 'concrete', from: 'volume' }],
});
