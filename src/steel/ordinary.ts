/** What is ordinary in bars, laps, least steel, placement and dowels; see `reckoning/ordinary`. */
import { type Ordinary, range } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';
import { SPACING_24_IN } from './sources';

export const BAR_LENGTH: Ordinary = /*#__PURE__*/ range('a bar', ['6 in', '150 mm'], ['60 ft', '18 m']);
/** A city asks for bars 24 in apart in walks and drives: farther apart they are hardly reinforcement. */
export const WIDEST_SPACING: Ordinary = {
  of: 'the spacing of bars in flatwork',
  example: ['12 in', '300 mm'],
  least: ['3 in', '75 mm'],
  most: ['24 in', '600 mm'],
  source: SPACING_24_IN,
};
export const LAP_LEAST: Ordinary = /*#__PURE__*/ range(
  'a least lap',
  ['6 in', '150 mm'],
  ['6 ft', '1.8 m'],
  ['12 in', '300 mm'],
);
export const LAP_STRESS: Ordinary = /*#__PURE__*/ range(
  'the stress of bars in service',
  ['10000 psi', '70 MPa'],
  ['40000 psi', '280 MPa'],
  ['40000 psi', '280 MPa'],
);
export const LAP_SPACING: Ordinary = /*#__PURE__*/ range(
  'the spacing of bars',
  ['1 in', '25 mm'],
  ['48 in', '1.2 m'],
  ['12 in', '300 mm'],
);
export const STEEL_RATIO: Ordinary = {
  of: 'steel over concrete',
  example: '0.18%',
  least: '0.05%',
  most: '2%',
  source: COMMON_PRACTICE,
};
export const DRAG_LENGTH: Ordinary = /*#__PURE__*/ range(
  'the distance between joints',
  ['3 ft', '900 mm'],
  ['300 ft', '90 m'],
);
export const FRICTION: Ordinary = {
  of: 'the friction of a slab on its base',
  example: '150%',
  least: '50%',
  most: '250%',
  source: COMMON_PRACTICE,
};
export const YIELD: Ordinary = /*#__PURE__*/ range(
  'the yield strength of reinforcement',
  ['30000 psi', '200 MPa'],
  ['120000 psi', '830 MPa'],
  ['40000 psi', '280 MPa'],
);
export const STRESS: Ordinary = /*#__PURE__*/ range(
  'the working stress of reinforcement',
  ['15000 psi', '100 MPa'],
  ['80000 psi', '550 MPa'],
  ['40000 psi', '280 MPa'],
);
export const LAYER: Ordinary = /*#__PURE__*/ range(
  'a layer of steel in a slab',
  ['1/8 in', '3 mm'],
  ['3 in', '75 mm'],
  ['1/2 in', '12 mm'],
);
export const DEPTH: Ordinary = /*#__PURE__*/ range(
  'the concrete above steel in a slab',
  ['1/2 in', '12 mm'],
  ['12 in', '300 mm'],
  ['2 in', '50 mm'],
);
export const CHAIRS_APART: Ordinary = /*#__PURE__*/ range(
  'the distance between chairs',
  ['6 in', '150 mm'],
  ['10 ft', '3 m'],
  ['3 ft', '900 mm'],
);
export const WORK_HEIGHT: Ordinary = /*#__PURE__*/ range('the height of a place of work', undefined, [
  '100 ft',
  '30 m',
]);
export const JOINT: Ordinary = /*#__PURE__*/ range(
  'the length of a joint',
  ['1 ft', '300 mm'],
  ['2000 ft', '600 m'],
  ['20 ft', '6 m'],
);
export const DOWELLED: Ordinary = /*#__PURE__*/ range(
  'the thickness of a slab with dowels or ties',
  ['3 in', '75 mm'],
  ['30 in', '750 mm'],
);
export const DOWEL_DIAMETER: Ordinary = /*#__PURE__*/ range(
  'the diameter of a dowel',
  ['3/8 in', '10 mm'],
  ['3 in', '75 mm'],
  ['3/4 in', '20 mm'],
);
export const DOWEL_LENGTH: Ordinary = /*#__PURE__*/ range(
  'the length of a dowel or tie',
  ['6 in', '150 mm'],
  ['48 in', '1.2 m'],
  ['18 in', '450 mm'],
);
export const DOWEL_SPACING: Ordinary = /*#__PURE__*/ range(
  'the spacing of dowels or ties',
  ['6 in', '150 mm'],
  ['6 ft', '1.8 m'],
  ['12 in', '300 mm'],
);
export const END: Ordinary = /*#__PURE__*/ range(
  'the distance of a dowel from the end of its joint',
  undefined,
  ['4 ft', '1.2 m'],
  ['6 in', '150 mm'],
);
export const EMBEDMENT: Ordinary = /*#__PURE__*/ range(
  'the depth of a drilled hole',
  ['2 in', '50 mm'],
  ['24 in', '600 mm'],
);
export const HOLE: Ordinary = /*#__PURE__*/ range(
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
export const CARTRIDGE: Ordinary = /*#__PURE__*/ range(
  'what a cartridge of epoxy holds',
  ['5 fl oz', '150 mL'],
  ['60 fl oz', '1800 mL'],
  ['22 fl oz', '650 mL'],
);
export const BASKET: Ordinary = /*#__PURE__*/ range(
  'the length of a basket',
  ['2 ft', '600 mm'],
  ['20 ft', '6 m'],
);
export const FREE_WIDTH: Ordinary = /*#__PURE__*/ range(
  'the width that ties drag',
  ['2 ft', '600 mm'],
  ['60 ft', '18 m'],
);

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
  example: ['2 in', '50 mm'],
  least: ['1/2 in', '12 mm'],
  most: ['6 in', '150 mm'],
  source: COMMON_PRACTICE,
};
