/**
 * What a crew carries of a result: what it lays out by, what it does and what comes of it. What else there is, such as
 * what the office orders by, what was compared and how it was reckoned, stands on the full sheet.
 */
import { isQuantity } from '../quantity/quantity';
import { crewDay } from './day-page';
import type { Plain } from './figures';

/** A figure or an input by its name; of a group, or of each of a list, only these members. */
export type Shown = string | readonly [name: string, members: readonly Shown[]];

interface CrewView {
  /** Of the input, in this order. */
  readonly given: readonly Shown[];
  /** Of the figures, in this order. */
  readonly figures: readonly Shown[];
  /** Figures that matter only where another one is and is not nothing, by that one. */
  readonly beside?: Readonly<Record<string, string>>;
}

/** What is shown of each calculation, by its id; of others, all. */
export const CREW_VIEWS: Readonly<Record<string, CrewView>> = {
  backfill: { given: ['gap'], figures: ['looseFill', 'topsoil', 'seed', 'straw', 'bales', 'groundSlope'] },
  'bag-count': { given: ['bag'], figures: ['bags', 'water', 'weight', 'wheelbarrowTrips', 'buggyTrips'] },
  'balance-load': {
    given: ['left'],
    figures: ['call', 'low', 'high', 'callBy', 'callIn', 'roundedDown', 'shortIfDown', 'verdict'],
  },
  'bar-cutting': { given: [], figures: ['order', 'plan'] },
  'base-tonnage': {
    given: ['outline', 'area', 'margin', 'compactor'],
    figures: ['depth', 'area', 'mass', 'tons', 'loads', 'lifts', 'spreadLength', 'reach', 'geotextile'],
  },
  'concrete-order': {
    given: ['pumpLine'],
    figures: ['order', 'leftInPump', 'loads', 'firm', 'balance', 'loadsBelowMinimum'],
  },
  'curb-volume': { given: ['section', 'length', 'drops', 'curves'], figures: ['volume'] },
  'delivery-ticket': {
    given: ['ordered', 'slump', 'airContent', 'waterAdded', 'age'],
    figures: [
      'asOrdered',
      'waterLeft',
      'waterCement',
      'waterCementAfter',
      'effect',
      'aggregateWater',
      'yield',
      'relativeYield',
      'notTold',
    ],
  },
  'dowel-layout': {
    given: ['joint', 'placing'],
    figures: [
      'dowels',
      'bar',
      'diameter',
      'length',
      'evenSpacing',
      'endDistance',
      'embedment',
      'hole',
      'epoxy',
      'cartridges',
      'baskets',
    ],
  },
  'drainage-check': {
    given: ['atBuilding', 'away', 'distance'],
    figures: [
      'verdict',
      'slope',
      'fall',
      'required',
      'requiredFall',
      'shortfall',
      'flattest',
      'reverse',
      'short',
      'lowSpots',
      'ponds',
      'sills',
      'inflows',
      'worstValley',
    ],
  },
  'evaporation-rate': {
    given: ['airTemperature', 'humidity', 'concreteTemperature', 'wind'],
    figures: ['verdict', 'rate', 'limit', 'next'],
  },
  excavation: {
    given: ['outline', 'area', 'depth', 'margin', 'sideSlope', 'length', 'width', 'sections', 'grade'],
    figures: [
      'bottomArea',
      'sections',
      'bankVolume',
      'looseVolume',
      'fill',
      ['haul', ['looseVolume', 'loads']],
      'replacement',
    ],
  },
  'fiber-dosage': { given: [], figures: ['fibers', 'bags', 'fibersPerLoad', 'bagsPerLoad'] },
  'finish-materials': {
    given: [],
    figures: ['liquids', 'powders', 'color', 'sealant', 'rodDiameter', 'backerRod'],
  },
  'footing-volume': { given: ['footings', 'frostDepth'], figures: ['volume'] },
  'form-materials': {
    given: ['height'],
    figures: [
      'board',
      'courses',
      'formHeight',
      'packing',
      'ripped',
      'dugIn',
      'order',
      'plan',
      'edges',
      'layered',
      'stakes',
      'stakeLength',
      'stakeDepth',
      'braces',
      'cleats',
      'fasteners',
      'boxes',
      'release',
    ],
  },
  'form-pressure': {
    given: ['height', 'rise', 'temperature'],
    figures: ['pressure', 'depth', 'rise', 'holds', 'fastest', 'lift', 'lifts', 'duration'],
  },
  'grade-correction': {
    given: [],
    figures: ['verdict', 'moves', 'steps', 'concrete', 'struckOff', 'toBring', 'sills', 'blockedBy'],
  },
  'joint-layout': {
    given: [['isolation', ['against', 'from', 'to']]],
    figures: [
      'panelCount',
      'depth',
      'contraction',
      'construction',
      'isolation',
      ['joints', ['number', 'type', 'alongEdge', 'from', 'to', 'center', 'length']],
      ['sawing', ['order']],
      'givesWay',
    ],
    beside: { depth: 'contraction' },
  },
  'joint-spacing': { given: ['thickness'], figures: ['spacing', 'depth', 'isolation'] },
  'mesh-layout': {
    given: ['style', 'form', 'pieceLength', 'pieceWidth'],
    figures: ['pieces', 'laid', 'sideLap', 'endLap', 'supports'],
  },
  'mix-requirements': { given: ['use'], figures: ['ask', 'offerFits'] },
  'pier-volume': { given: ['piers', 'frostDepth'], figures: ['volume', 'tubes'] },
  'placing-limits': {
    given: ['forecast', 'concreteTemperature', 'protection', 'layers'],
    figures: [
      'verdict',
      'placedAtMost',
      'mixedAtLeast',
      'keptAtLeast',
      'protection',
      'blankets',
      'next',
      'untilForms',
    ],
    // What concrete is kept at matters in the cold, as what it is mixed at.
    beside: { keptAtLeast: 'mixedAtLeast' },
  },
  'rebar-layout': {
    given: ['bar', 'spacing', 'depth'],
    figures: [
      'barsToBuy',
      'cover',
      'lap',
      ['along', ['lines', 'evenSpacing', 'runLength', 'piecesPerRun']],
      ['across', ['lines', 'evenSpacing', 'runLength', 'piecesPerRun']],
      ['bars', ['mark', 'layer', 'use', 'bar', 'shape', 'length', 'count']],
      ['sizes', ['bar', 'barsToBuy', 'stockLength', 'lap']],
      'corners',
      'ties',
      'supports',
    ],
  },
  'ramp-layout': {
    given: ['totalRise', 'width'],
    figures: [
      'verdict',
      'runs',
      'slope',
      'runLength',
      'alongSlope',
      'endLanding',
      'landingLength',
      'overall',
      'lacks',
      'acrossAtMost',
      ['breaks', ['at', 'mark']],
    ],
  },
  'saw-window': {
    given: ['saw', 'placedAt', 'finishedAt'],
    // Hours say nothing to who does not know from when they run.
    figures: ['verdict', 'countedFrom', 'start', 'finishBy', 'clock', 'cuttingTime'],
  },
  'slab-volume': {
    given: ['outline', 'thickness', 'openings', 'edge', 'beams'],
    figures: ['volume', 'withTolerance', 'area', 'thinnest', 'thickest', 'edgeVolume', 'beamVolume'],
  },
  'step-layout': {
    given: ['totalRise'],
    figures: [
      'verdict',
      ['best', ['risers', 'riser', 'firstRiserForm', 'riserForm', 'treads', 'tread', 'run', 'treadFall']],
      'marks',
      'markedDifference',
      'flightDifference',
      'neighborDifference',
      'landingFall',
    ],
  },
  'step-volume': {
    given: ['risers', 'rise', 'tread', 'width', 'landingDepth', 'landings', 'cores', 'wingWalls'],
    figures: ['volume', 'totalRise', 'totalRun', 'formedArea'],
  },
  'truck-plan': {
    given: ['placing', 'firstTruckAt'],
    figures: [
      'verdict',
      ['loads', ['truck', 'volume', 'clock', 'age']],
      'trucks',
      'trucksNeeded',
      'interval',
      'endsAt',
      'longestGap',
      'gapAtMost',
      'longestWait',
      'ageLimit',
      'initialSet',
      'beyondReach',
    ],
  },
  'vapor-retarder': { given: ['rollWidth', 'rollLength'], figures: ['area', 'rolls', 'seams'] },
  'wall-volume': {
    given: ['walls'],
    figures: ['volume', 'formedArea', 'anchors', 'anchorsApart', 'anchorsFromEnd'],
  },
};

/** Figures that are put together anew for a crew, by id; what was given stands on the full sheet. */
const MADE: Readonly<Record<string, (figures: never) => Plain>> = { 'day-plan': crewDay };

/** What a crew reads nothing in where another calculation of the same element says it better, by that one. */
const SAID_BY: Readonly<Record<string, string>> = { 'joint-spacing': 'joint-layout' };

/** Whether a crew reads what this came to: how far apart joints may be is no place to saw where there is a plan of them. */
export const isCarried = (id: string, beside: readonly string[]): boolean =>
  !Object.hasOwn(SAID_BY, id) || !beside.includes(SAID_BY[id] as string);

type Group = { readonly [name: string]: Plain };

const isGroup = (x: Plain): x is Group => typeof x === 'object' && x !== null && !Array.isArray(x);

/** Along a curve a crew measures from the end of the edge: nobody stands at the center that places are counted from. */
const isSaidAlong = (name: string, group: Group): boolean =>
  group['alongEdge'] !== undefined && (name === 'from' || name === 'to');

/** Of a group, or of each of a list, what is shown, in the order in which it is shown. */
function pick(from: Plain, shown: readonly Shown[]): Plain {
  if (Array.isArray(from)) return from.map((one: Plain) => pick(one, shown));
  if (!isGroup(from)) return from;
  const all = shown.flatMap((each): [string, Plain][] => {
    const [name, members] = typeof each === 'string' ? [each] : each;
    const part = from[name];
    if (part === undefined || isSaidAlong(name, from)) return [];
    return [[name, members ? pick(part, members) : part]];
  });
  return Object.fromEntries(all);
}

/** Whether a figure is shown beside the others that there are. */
const matters =
  ({ beside }: CrewView, figures: Plain) =>
  (shown: Shown): boolean => {
    const other = typeof shown === 'string' ? beside?.[shown] : undefined;
    if (other === undefined || !isGroup(figures)) return true;
    const figure = figures[other];
    return figure !== undefined && !(isQuantity(figure) && figure.sign() === 0);
  };

/** What a crew carries of an input and of the figures that came of it. */
export function carriedOf(
  id: string,
  input: unknown,
  figures: Plain,
): { readonly given: unknown; readonly figures: Plain } {
  const made = Object.hasOwn(MADE, id) ? MADE[id] : undefined;
  if (made) return { given: undefined, figures: made(figures as never) };
  const view = Object.hasOwn(CREW_VIEWS, id) ? CREW_VIEWS[id] : undefined;
  if (!view) return { given: input, figures };
  return {
    given: pick(input as Plain, view.given),
    figures: pick(figures, view.figures.filter(matters(view, figures))),
  };
}
