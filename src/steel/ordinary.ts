/** What is ordinary in bars, laps, least steel, placement and dowels; see `reckoning/ordinary`. */
import type { Ordinary } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';
import { SPACING_24_IN } from './sources';

type Pair = readonly [string, string];

const range = (of: string, least: Pair | undefined, most: Pair | undefined): Ordinary => ({
  of,
  ...(least ? { least } : {}),
  ...(most ? { most } : {}),
  source: COMMON_PRACTICE,
});

export const BAR_LENGTH: Ordinary = range('a bar', ['6 in', '150 mm'], ['60 ft', '18 m']);
/** A city asks for bars 24 in apart in walks and drives: farther apart they are hardly reinforcement. */
export const WIDEST_SPACING: Ordinary = {
  of: 'the spacing of bars in flatwork',
  least: ['3 in', '75 mm'],
  most: ['24 in', '600 mm'],
  source: SPACING_24_IN,
};
export const LAP_LEAST: Ordinary = range('a least lap', ['6 in', '150 mm'], ['6 ft', '1.8 m']);
export const LAP_STRESS: Ordinary = range(
  'the stress of bars in service',
  ['10000 psi', '70 MPa'],
  ['40000 psi', '280 MPa'],
);
export const LAP_SPACING: Ordinary = range('the spacing of bars', ['1 in', '25 mm'], ['48 in', '1.2 m']);
export const STEEL_RATIO: Ordinary = {
  of: 'steel over concrete',
  least: '0.05%',
  most: '2%',
  source: COMMON_PRACTICE,
};
export const DRAG_LENGTH: Ordinary = range(
  'the distance between joints',
  ['3 ft', '900 mm'],
  ['300 ft', '90 m'],
);
export const FRICTION: Ordinary = {
  of: 'the friction of a slab on its base',
  least: '50%',
  most: '250%',
  source: COMMON_PRACTICE,
};
export const YIELD: Ordinary = range(
  'the yield strength of reinforcement',
  ['30000 psi', '200 MPa'],
  ['120000 psi', '830 MPa'],
);
export const STRESS: Ordinary = range(
  'the working stress of reinforcement',
  ['15000 psi', '100 MPa'],
  ['80000 psi', '550 MPa'],
);
export const LAYER: Ordinary = range('a layer of steel in a slab', ['1/8 in', '3 mm'], ['3 in', '75 mm']);
export const DEPTH: Ordinary = range(
  'the concrete above steel in a slab',
  ['1/2 in', '12 mm'],
  ['12 in', '300 mm'],
);
export const CHAIRS_APART: Ordinary = range(
  'the distance between chairs',
  ['6 in', '150 mm'],
  ['10 ft', '3 m'],
);
export const WORK_HEIGHT: Ordinary = range('the height of a place of work', undefined, ['100 ft', '30 m']);
export const JOINT: Ordinary = range('the length of a joint', ['1 ft', '300 mm'], ['2000 ft', '600 m']);
export const DOWELLED: Ordinary = range(
  'the thickness of a slab with dowels or ties',
  ['3 in', '75 mm'],
  ['30 in', '750 mm'],
);
export const DOWEL_DIAMETER: Ordinary = range(
  'the diameter of a dowel',
  ['3/8 in', '10 mm'],
  ['3 in', '75 mm'],
);
export const DOWEL_LENGTH: Ordinary = range(
  'the length of a dowel or tie',
  ['6 in', '150 mm'],
  ['48 in', '1.2 m'],
);
export const DOWEL_SPACING: Ordinary = range(
  'the spacing of dowels or ties',
  ['6 in', '150 mm'],
  ['6 ft', '1.8 m'],
);
export const END: Ordinary = range('the distance of a dowel from the end of its joint', undefined, [
  '4 ft',
  '1.2 m',
]);
export const EMBEDMENT: Ordinary = range(
  'the depth of a drilled hole',
  ['2 in', '50 mm'],
  ['24 in', '600 mm'],
);
export const HOLE: Ordinary = range(
  'the diameter of a drilled hole',
  ['3/8 in', '10 mm'],
  ['4 in', '100 mm'],
);
export const EPOXY_LOSS: Ordinary = {
  of: 'the share of epoxy that is lost',
  least: '5%',
  most: '100%',
  source: COMMON_PRACTICE,
};
export const CARTRIDGE: Ordinary = range(
  'what a cartridge of epoxy holds',
  ['5 fl oz', '150 mL'],
  ['60 fl oz', '1800 mL'],
);
export const BASKET: Ordinary = range('the length of a basket', ['2 ft', '600 mm'], ['20 ft', '6 m']);
export const FREE_WIDTH: Ordinary = range('the width that ties drag', ['2 ft', '600 mm'], ['60 ft', '18 m']);

export const STRENGTH: Ordinary = {
  of: 'the strength of concrete for flatwork',
  least: ['2000 psi', '14 MPa'],
  most: ['10000 psi', '70 MPa'],
  source: COMMON_PRACTICE,
};

export const CONCRETE_DENSITY: Ordinary = {
  of: 'the density of concrete',
  least: ['90 pcf', '1440 kg/m3'],
  most: ['165 pcf', '2650 kg/m3'],
  source: COMMON_PRACTICE,
};

export const COVER: Ordinary = {
  of: 'the cover of concrete over steel',
  least: ['1/2 in', '12 mm'],
  most: ['6 in', '150 mm'],
  source: COMMON_PRACTICE,
};
