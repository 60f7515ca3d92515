/** Ordinary ranges of the bodies that are poured, beside those that all calculations share. */
import { type Ordinary, range } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';
import { IRC_FOOTINGS } from './sources';

/** Where a slab tapers it may run out to little. */
export const TAPERED_THICKNESS = /*#__PURE__*/ range(
  'the thickness of a slab on ground',
  undefined,
  ['24 in', '600 mm'],
  ['4 in', '100 mm'],
);

export const EDGE_DEPTH = /*#__PURE__*/ range(
  'how far a thickened edge or a beam goes below the slab',
  ['1 in', '25 mm'],
  ['60 in', '1.5 m'],
);
export const EDGE_WIDTH = /*#__PURE__*/ range(
  'the width of a thickened edge or a beam',
  ['3 in', '75 mm'],
  ['60 in', '1.5 m'],
  ['12 in', '300 mm'],
);
export const HAUNCH = /*#__PURE__*/ range(
  'the haunch of an edge or a beam',
  ['1/2 in', '10 mm'],
  ['60 in', '1.5 m'],
);
export const BEAM_LENGTH = /*#__PURE__*/ range(
  'the length of a beam under a slab',
  ['1 ft', '300 mm'],
  ['1000 ft', '300 m'],
);
export const BASE_TOLERANCE = /*#__PURE__*/ range(
  'the tolerance of a base',
  ['1/16 in', '1 mm'],
  ['3 in', '75 mm'],
  ['1/2 in', '12 mm'],
);

/** Wide treads of garden steps and of stepped ramps are counted in. */
export const TREAD = /*#__PURE__*/ range(
  'the tread of a step',
  ['6 in', '150 mm'],
  ['72 in', '1.85 m'],
  ['12 in', '300 mm'],
);
export const FLIGHT_WIDTH = /*#__PURE__*/ range(
  'the width of steps',
  ['12 in', '300 mm'],
  ['100 ft', '30 m'],
);
export const LANDING_DEPTH = /*#__PURE__*/ range(
  'the depth of a landing',
  ['6 in', '150 mm'],
  ['40 ft', '12 m'],
  ['5 ft', '1.5 m'],
);
export const STEP_RADIUS = /*#__PURE__*/ range(
  'the radius of round or winding steps',
  ['2 in', '50 mm'],
  ['100 ft', '30 m'],
);
export const WAIST = /*#__PURE__*/ range(
  'the concrete under steps on a bank',
  ['3 in', '75 mm'],
  ['18 in', '450 mm'],
);
export const NOSING = /*#__PURE__*/ range(
  'how far a riser leans back under its nosing',
  ['1/8 in', '3 mm'],
  ['4 in', '100 mm'],
);
export const WASH: Ordinary = {
  of: 'the wash of a tread',
  least: '0.2%',
  most: '5%',
  source: COMMON_PRACTICE,
};
export const CORE_SIDE = /*#__PURE__*/ range(
  'the size of a core in steps',
  ['2 in', '50 mm'],
  ['100 ft', '30 m'],
);

export const FOOTING_DEPTH: Ordinary = {
  of: 'the thickness of a footing',
  least: ['4 in', '100 mm'],
  most: ['6 ft', '1.8 m'],
  source: IRC_FOOTINGS,
};
export const FOOTING_WIDTH: Ordinary = {
  of: 'the width of a footing',
  example: ['16 in', '400 mm'],
  least: ['6 in', '150 mm'],
  most: ['10 ft', '3 m'],
  source: IRC_FOOTINGS,
};
export const FOOTING_STEP = /*#__PURE__*/ range(
  'the height of a step in a footing',
  ['2 in', '50 mm'],
  ['4 ft', '1.2 m'],
);
export const FOOTING_LENGTH = /*#__PURE__*/ range(
  'the length of a footing',
  ['6 in', '150 mm'],
  ['2000 ft', '600 m'],
);
export const PAD_SIDE = /*#__PURE__*/ range('a side of a footing', ['3 in', '75 mm'], ['40 ft', '12 m']);
/** The upright edge of a tapered pad may be nothing; its top is that of a post. */
export const PAD_EDGE = /*#__PURE__*/ range(
  'the upright edge of a footing',
  ['1 in', '25 mm'],
  ['6 ft', '1.8 m'],
);
export const PAD_TOP = /*#__PURE__*/ range('the top of a footing', ['3 in', '75 mm'], ['20 ft', '6 m']);

export const UNDERSIDE = /*#__PURE__*/ range(
  'how deep concrete is founded below the ground',
  ['2 in', '50 mm'],
  ['20 ft', '6 m'],
);
export const FROST_DEPTH = /*#__PURE__*/ range(
  'the depth of frost',
  ['1 in', '25 mm'],
  ['10 ft', '3 m'],
  ['4 ft', '1.2 m'],
);

export const WALL_THICKNESS = /*#__PURE__*/ range(
  'the thickness of a wall',
  ['3 in', '75 mm'],
  ['4 ft', '1.2 m'],
  ['8 in', '200 mm'],
);
export const WALL_HEIGHT = /*#__PURE__*/ range('the height of a wall', ['4 in', '100 mm'], ['40 ft', '12 m']);
export const WALL_LENGTH = /*#__PURE__*/ range(
  'the length of a wall',
  ['6 in', '150 mm'],
  ['2000 ft', '600 m'],
);
export const WALL_OPENING = /*#__PURE__*/ range(
  'the size of an opening in a wall',
  ['1 in', '25 mm'],
  ['60 ft', '18 m'],
);
export const SILL = /*#__PURE__*/ range('the height of a sill', ['1 in', '25 mm'], ['40 ft', '12 m']);
export const PILASTER = /*#__PURE__*/ range(
  'the width or projection of a pilaster',
  ['1 in', '25 mm'],
  ['6 ft', '1.8 m'],
  ['12 in', '300 mm'],
);
export const FOAM = /*#__PURE__*/ range(
  'the panel of an insulated form',
  ['1 in', '25 mm'],
  ['8 in', '200 mm'],
);
export const WEB_SHARE: Ordinary = {
  of: 'the share of the core that webs take up',
  least: '0.5%',
  most: '30%',
  source: COMMON_PRACTICE,
};
export const LEAST_OPENING = /*#__PURE__*/ range(
  'the smallest opening deducted',
  ['0.1 ft2', '0.01 m2'],
  ['50 ft2', '5 m2'],
  ['10 ft2', '1 m2'],
);

export const PIER_SIDE = /*#__PURE__*/ range(
  'the width of a pier',
  ['4 in', '100 mm'],
  ['8 ft', '2.4 m'],
  ['12 in', '300 mm'],
);
export const PIER_HEIGHT = /*#__PURE__*/ range('the height of a pier', ['6 in', '150 mm'], ['80 ft', '24 m']);
export const BELL_HEIGHT = /*#__PURE__*/ range('the height of a bell', ['3 in', '75 mm'], ['10 ft', '3 m']);
export const BELL_TOE = /*#__PURE__*/ range('the toe of a bell', ['1 in', '25 mm'], ['4 ft', '1.2 m']);
export const BELL_WIDTH = /*#__PURE__*/ range('the width of a bell', ['8 in', '200 mm'], ['20 ft', '6 m']);

export const CURB_PLACE = /*#__PURE__*/ range(
  'a corner of the section of a curb',
  undefined,
  ['6 ft', '1.8 m'],
  ['6 in', '150 mm'],
);
export const CURB_LENGTH = /*#__PURE__*/ range(
  'the length of a curb',
  ['1 ft', '300 mm'],
  ['20000 ft', '6 km'],
);
export const CURB_RADIUS = /*#__PURE__*/ range(
  'the radius of a curb',
  ['1 in', '25 mm'],
  ['5000 ft', '1500 m'],
);
export const CURB_WING = /*#__PURE__*/ range(
  'the length of a wing of a curb drop',
  ['6 in', '150 mm'],
  ['20 ft', '6 m'],
  ['3 ft', '0.9 m'],
);

export const SAMPLE = /*#__PURE__*/ range(
  'the thickness of a core or at a probe',
  ['1 in', '25 mm'],
  ['36 in', '900 mm'],
  ['4 in', '100 mm'],
);
export const TOLERANCE = /*#__PURE__*/ range(
  'a tolerance of thickness',
  undefined,
  ['2 in', '50 mm'],
  ['3/8 in', '10 mm'],
);

export const ANCHOR_SPACING = /*#__PURE__*/ range(
  'how far apart anchor bolts stand',
  ['6 in', '150 mm'],
  ['10 ft', '3 m'],
  ['6 ft', '1.8 m'],
);
export const ANCHOR_END = /*#__PURE__*/ range(
  'how far a bolt stands from the end of a plate',
  ['2 in', '50 mm'],
  ['24 in', '600 mm'],
  ['12 in', '300 mm'],
);
export const PLATE_PIECE = /*#__PURE__*/ range(
  'the length of a piece of plate',
  ['2 ft', '600 mm'],
  ['40 ft', '12 m'],
  ['16 ft', '4.8 m'],
);
export const BOLT_DIAMETER = /*#__PURE__*/ range(
  'the diameter of an anchor bolt',
  ['1/4 in', '6 mm'],
  ['2 in', '50 mm'],
  ['1/2 in', '12 mm'],
);
export const BOLT_LENGTH = /*#__PURE__*/ range(
  'the length of an anchor bolt',
  ['3 in', '75 mm'],
  ['4 ft', '1.2 m'],
  ['10 in', '250 mm'],
);

export const TUBE_LENGTH = /*#__PURE__*/ range(
  'the length of a form tube',
  ['2 ft', '600 mm'],
  ['24 ft', '7.5 m'],
  ['12 ft', '3 m'],
);

/** What a turn may be is for its place to say. */
export const TURN = /*#__PURE__*/ range('a turn', undefined, undefined, '90 deg');

/** A plane of thickness may go below nothing where there is no slab. */
export const AT_ORIGIN = /*#__PURE__*/ range('the thickness at the origin', undefined, undefined, [
  '6 in',
  '150 mm',
]);
