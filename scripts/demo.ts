/** The rear yard of a corner bakery, from tape-measure dimensions to a worksheet. All invented. */
import {
  baseTonnage,
  concreteOrder,
  drainageCheck,
  excavation,
  jointLayout,
  jointSpacing,
  meshLayout,
  rebarLayout,
  slabVolume,
  slopeOf,
  stepLayout,
  stepVolume,
} from '../src/index';
import { textSheet } from '../src/report/index';

const mix = { aggregateSize: '3/4 in', slump: '4 in' } as const;
const gravel = { compactedDensity: '135 pcf', truckPayload: '15 ton' } as const;

// Delivery slab: 28 by 18 ft, 6 in thick, its long side along the back wall.
const deliveryOutline = { shape: 'rectangle', length: "28'", width: "18'" } as const;
const delivery = slabVolume({ outline: deliveryOutline, thickness: '6"' });
const deliveryMat = rebarLayout({ length: "28'", width: "18'", bar: '#4', spacing: '18"', cover: '3"' });
const deliveryRule = jointSpacing({ thickness: '6"', ...mix });
const deliveryJoints = jointLayout({
  outline: deliveryOutline,
  thickness: '6"',
  spacing: deliveryRule.figures.spacing,
  isolation: [{ against: 'building', from: { x: '0"', y: '0"' }, to: { x: "28'", y: '0"' } }],
});

// Under it the clay comes out a foot deep, and 6 in of gravel goes in, both half a foot beyond the forms.
const dig = excavation({
  kind: 'pit',
  outline: deliveryOutline,
  depth: '12"',
  margin: '6"',
  swell: '30%',
  haul: { truckVolume: '10 yd3' },
});
const deliveryBase = baseTonnage({
  ...gravel,
  outline: { shape: 'rectangle', length: "29'", width: "19'" },
  depth: '6"',
});

// Stoop at the door: two risers and a landing.
const stoopSteps = stepLayout({ totalRise: '14"' });
const stoop = stepVolume({ risers: 2, rise: '7"', tread: '11"', width: "5'", landingDepth: "4'" });

// Pad for the bins, an L around the drain cover.
const binOutline = {
  shape: 'L',
  length: "12'",
  width: "8'",
  notchLength: "3'",
  notchWidth: '2\' 6"',
} as const;
const bins = slabVolume({ outline: binOutline, thickness: '4"' });
const binBase = baseTonnage({ ...gravel, outline: binOutline, depth: '4"' });
const binMesh = meshLayout({
  length: '11\' 6"',
  width: '7\' 6"',
  form: 'sheets',
  pieceLength: "10'",
  pieceWidth: "5'",
  style: '6x6-W2.9xW2.9',
});

// Ramp for the flour cart: 4 ft wide, up 7 in from the lane.
const rampOutline = { shape: 'rectangle', length: '7\' 6"', width: "4'" } as const;
const ramp = slabVolume({ outline: rampOutline, thickness: '5"' });

const net = [delivery, stoop, bins, ramp]
  .map(({ figures }) => figures.volume)
  .reduce((sum, volume) => sum.plus(volume));
const order = concreteOrder({
  volume: net,
  allowance: '8%',
  increment: '0.25 yd3',
  truckCapacity: '9 yd3',
});

/** What the crew asks for first; the worksheets below say how it came about. */
const first = [
  [
    'Concrete order',
    `${order.figures.order.format()}, in loads of ${order.figures.loads?.map((load) => load.format()).join(' and ')}`,
  ],
  ['Gravel', deliveryBase.figures.mass.plus(binBase.figures.mass).format()],
  ['Clay to haul, loose', dig.figures.looseVolume?.format()],
  ['Bar', `${deliveryMat.figures.totalLength.format()}, ${deliveryMat.figures.weight.format()}`],
  ['Mesh', `${binMesh.figures.pieces.toNumber('each')} sheets of 5 ft by 10 ft`],
  [
    'Joints of the delivery slab',
    `${deliveryJoints.figures.contraction.format()} to saw, ${deliveryJoints.figures.depth.format()} deep`,
  ],
];
for (const [what, figure] of first) console.log(`${`${what}:`.padEnd(30)}${figure}`);

const sheet = textSheet('Bakery yard', [
  { name: 'Ground', results: [dig, deliveryBase, binBase] },
  {
    name: 'Delivery slab, 28 ft by 18 ft',
    results: [
      delivery,
      deliveryMat,
      deliveryRule,
      deliveryJoints,
      drainageCheck({ atBuilding: '100\' 0"', away: '99\' 7"', distance: "18'" }),
    ],
  },
  {
    name: 'Stoop at the back door',
    results: [stoopSteps, stoop, slopeOf({ slope: '1/4 in/ft', over: "4'" })],
  },
  { name: 'Bin pad', results: [bins, binMesh, jointSpacing({ thickness: '4"', ...mix })] },
  { name: 'Ramp', results: [ramp, slopeOf({ rise: '7"', run: '7\' 6"' })] },
  { name: 'The pour', results: [order] },
]);

console.log(`\n${sheet}`);
