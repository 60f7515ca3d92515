/** The rear yard of a corner bakery, from tape-measure dimensions to a sheet that a crew carries. All invented. */
import {
  baseTonnage,
  concreteOrder,
  drainageCheck,
  excavation,
  jointLayout,
  jointSpacing,
  length,
  meshLayout,
  rebarLayout,
  slabVolume,
  slopeOf,
  stepLayout,
  stepVolume,
} from '../src/index';
import type { Calculation } from '../src/reckoning/calculation';
import type { FigureSet, Result } from '../src/reckoning/result';
import { type Part, textSheet, type WithInput } from '../src/report/index';

/** A result with its input, as a sheet takes it. */
function worked<Input, F extends FigureSet>(
  calculation: Calculation<Input, F>,
  input: Input,
): WithInput & { readonly result: Result<F> } {
  return { input, result: calculation(input) };
}

const mix = { aggregateSize: '3/4 in', slump: '4 in' } as const;
const gravel = { compactedDensity: '135 pcf' } as const;

// Delivery slab: 28 by 18 ft, 6 in thick, its long side along the back wall. The stoop stands beside it, at the door
// in the side wall, so that neither takes concrete from the other.
const deliveryOutline = { shape: 'rectangle', length: "28'", width: "18'" } as const;
const delivery = worked(slabVolume, { outline: deliveryOutline, thickness: '6"' });
const deliveryMat = worked(rebarLayout, {
  length: "28'",
  width: "18'",
  bar: '#4',
  spacing: '18"',
  cover: '3"',
  thickness: '6"',
});
const deliveryRule = worked(jointSpacing, { thickness: '6"', ...mix });
const deliveryJoints = worked(jointLayout, {
  outline: deliveryOutline,
  thickness: '6"',
  spacing: deliveryRule.result.figures.spacing.format(),
  isolation: [{ against: 'building', from: { x: '0"', y: '0"' }, to: { x: "28'", y: '0"' } }],
});
const deliveryFall = worked(drainageCheck, { atBuilding: '100\' 0"', away: '99\' 7"', distance: "18'" });

// Under it the clay comes out a foot deep, and 6 in of gravel goes in, both half a foot beyond the forms.
const dig = worked(excavation, {
  kind: 'pit',
  outline: deliveryOutline,
  depth: '12"',
  margin: '6"',
  swell: '30%',
  haul: { truckVolume: '10 yd3' },
});
const deliveryBase = worked(baseTonnage, {
  ...gravel,
  outline: { shape: 'rectangle', length: "29'", width: "19'" },
  depth: '6"',
  truckPayload: '15 ton',
});

// Stoop at the side door: two risers of 7 in up to a landing 4 ft deep, which falls 1/4 in per ft toward the tread.
// The steps are figured level at the height of the front edge; the wedge that the fall adds lies on top of the landing.
const stoopSteps = worked(stepLayout, { totalRise: '14"' });
const stoop = worked(stepVolume, { risers: 2, rise: '7"', tread: '11"', width: "5'", landingDepth: "4'" });
const landingFall = worked(slopeOf, { slope: '1/4 in/ft', over: "4'" });
const landingWedge = length("5'").times(length("4'")).times(length('1/2"'));
const stoopBase = worked(baseTonnage, {
  ...gravel,
  outline: { shape: 'rectangle', length: "6'", width: '5\' 11"' },
  depth: '4"',
});

// Pad for the bins, an L around the drain cover.
const binOutline = {
  shape: 'L',
  length: "12'",
  width: "8'",
  notchLength: "3'",
  notchWidth: '2\' 6"',
} as const;
const bins = worked(slabVolume, { outline: binOutline, thickness: '4"' });
const binRule = worked(jointSpacing, { thickness: '4"', ...mix });
const binBase = worked(baseTonnage, { ...gravel, outline: binOutline, depth: '4"' });
const binMesh = worked(meshLayout, {
  outline: binOutline,
  form: 'sheets',
  pieceLength: "10'",
  pieceWidth: "5'",
  style: '6x6-W2.9xW2.9',
});

// Ramp for the flour cart: 4 ft wide, beside the stoop, up the same 14 in to the door at 1:12.
const rampPitch = worked(slopeOf, { rise: '14"', run: "14'" });
const rampOutline = { shape: 'rectangle', length: "14'", width: "4'" } as const;
const ramp = worked(slabVolume, { outline: rampOutline, thickness: '5"' });
const rampBase = worked(baseTonnage, {
  ...gravel,
  outline: { shape: 'rectangle', length: "14'", width: "5'" },
  depth: '4"',
});

const net = [delivery, stoop, bins, ramp]
  .map(({ result }) => result.figures.volume)
  .reduce((sum, volume) => sum.plus(volume), landingWedge);
const order = worked(concreteOrder, {
  volume: net.format('yd3'),
  allowance: '8%',
  increment: '0.25 yd3',
  truckCapacity: '9 yd3',
});

/** What the crew asks for first; the sheet below says how it came about. */
const gravelMass = [deliveryBase, stoopBase, binBase, rampBase]
  .map(({ result }) => result.figures.mass)
  .reduce((sum, mass) => sum.plus(mass));
const { figures: ordered } = order.result;
const { figures: joints } = deliveryJoints.result;
const { figures: mat } = deliveryMat.result;
const first = [
  [
    'Concrete',
    `${ordered.order.format()}, in loads of ${ordered.loads.map((l) => l.format()).join(' and ')}`,
  ],
  ['Gravel', gravelMass.in('ton').format()],
  ['Clay to haul, loose', dig.result.figures.looseVolume?.format()],
  ['Bar', `${mat.barsToBuy.toNumber('each')} of #4 by 20 ft, ${mat.weight.format()}`],
  ['Mesh', `${binMesh.result.figures.pieces.toNumber('each')} sheets of 5 ft by 10 ft`],
  ['Joints of the delivery slab', `${joints.contraction.format()} to saw`],
];
for (const [what, figure] of first) console.log(`${`${what}:`.padEnd(30)}${figure}`);

const parts: readonly Part[] = [
  { name: 'Ground', results: [dig, deliveryBase] },
  {
    name: 'Delivery slab, 28 ft by 18 ft',
    results: [delivery, deliveryMat, deliveryRule, deliveryJoints, deliveryFall],
  },
  {
    name: `Stoop at the side door; the fall of its landing adds ${landingWedge.format('ft3')}`,
    results: [stoopSteps, stoop, landingFall, stoopBase],
  },
  { name: 'Bin pad, an L', results: [bins, binRule, binMesh, binBase] },
  { name: 'Ramp beside the stoop', results: [rampPitch, ramp, rampBase] },
  { name: 'The pour', results: [order] },
];

const view = { detail: 'crew', date: 'to be poured on a Tuesday in May' } as const;
console.log(`\n${textSheet('Corner bakery, rear yard', parts, view)}`);
