/** What is ordinary in mats of bars, mesh, footing steel and cut lists; see `reckoning/ordinary`. */

import { type Ordinary, range } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';
import { RICHARDSON_SPACING } from './mat-sources';

const trade = COMMON_PRACTICE;

/** A city asks for bars 24 in apart in walks and drives: farther apart they are hardly reinforcement. */
export const MAT_SPACING: Ordinary = {
  of: 'the spacing of bars in flatwork',
  example: ['12 in', '300 mm'],
  least: ['3 in', '75 mm'],
  most: ['24 in', '600 mm'],
  source: RICHARDSON_SPACING,
};

export const STOCK_LENGTH: Ordinary = /*#__PURE__*/ range(
  'a bar as bought',
  ['6 ft', '1.8 m'],
  ['60 ft', '18 m'],
);
export const LAP: Ordinary = /*#__PURE__*/ range('the lap of two bars', ['6 in', '150 mm'], ['10 ft', '3 m']);
export const CUT_TO: Ordinary = /*#__PURE__*/ range(
  'what bars are cut to',
  ['1/32 in', '1 mm'],
  ['12 in', '300 mm'],
);
export const SHORTEST: Ordinary = /*#__PURE__*/ range('the shortest bar that is laid', undefined, [
  '6 ft',
  '1.8 m',
]);
export const CORNER_BAR: Ordinary = /*#__PURE__*/ range(
  'a bar across a corner',
  ['1 ft', '300 mm'],
  ['16 ft', '5 m'],
);
export const SUPPORTS_APART: Ordinary = /*#__PURE__*/ range(
  'the distance between chairs',
  ['1 ft', '300 mm'],
  ['10 ft', '3 m'],
  ['3 ft', '900 mm'],
);
export const TIE: Ordinary = /*#__PURE__*/ range('the wire of a tie', ['4 in', '100 mm'], ['3 ft', '1 m']);
export const TIE_WIRE: Ordinary = /*#__PURE__*/ range(
  'tie wire',
  ['0.002 lb/ft', '0.003 kg/m'],
  ['0.05 lb/ft', '0.08 kg/m'],
  ['0.01 lb/ft', '0.015 kg/m'],
);
export const DOWEL_SPACING: Ordinary = /*#__PURE__*/ range(
  'the spacing of bars at an edge',
  ['4 in', '100 mm'],
  ['6 ft', '1.8 m'],
);
export const DOWEL: Ordinary = /*#__PURE__*/ range(
  'a bar into what is beside the slab',
  ['6 in', '150 mm'],
  ['8 ft', '2.5 m'],
  ['12 in', '300 mm'],
);
export const END_DISTANCE: Ordinary = /*#__PURE__*/ range(
  'the distance of a bar from a corner',
  undefined,
  ['4 ft', '1.2 m'],
  ['6 in', '150 mm'],
);
export const STARTER_LEG: Ordinary = /*#__PURE__*/ range(
  'a leg of a bent bar',
  ['4 in', '100 mm'],
  ['6 ft', '1.8 m'],
);
export const SHEET_LENGTH: Ordinary = /*#__PURE__*/ range(
  'a sheet or roll of mesh',
  ['3 ft', '900 mm'],
  ['500 ft', '150 m'],
);
export const SHEET_WIDTH: Ordinary = /*#__PURE__*/ range(
  'the width of mesh',
  ['2 ft', '600 mm'],
  ['12 ft', '3.6 m'],
);
export const MESH_EDGE: Ordinary = /*#__PURE__*/ range('the distance of mesh from the forms', undefined, [
  '12 in',
  '300 mm',
]);
export const MESH_LAP: Ordinary = /*#__PURE__*/ range(
  'the lap of mesh',
  ['2 in', '50 mm'],
  ['3 ft', '900 mm'],
);
export const STRETCH: Ordinary = /*#__PURE__*/ range(
  'a straight stretch of footing',
  ['1 ft', '300 mm'],
  ['2000 ft', '600 m'],
  ['30 ft', '9 m'],
);
export const FOOTING_WIDTH: Ordinary = /*#__PURE__*/ range(
  'the width of a strip footing',
  ['6 in', '150 mm'],
  ['10 ft', '3 m'],
  ['16 in', '400 mm'],
);
export const FOOTING_DEPTH: Ordinary = /*#__PURE__*/ range(
  'the depth of a strip footing',
  ['4 in', '100 mm'],
  ['6 ft', '1.8 m'],
);
export const HOOKS: Ordinary = /*#__PURE__*/ range(
  'what the hooks of a tie take',
  ['2 in', '50 mm'],
  ['2 ft', '600 mm'],
);
export const STARTER: Ordinary = /*#__PURE__*/ range(
  'a bar up into a wall',
  ['1 ft', '300 mm'],
  ['20 ft', '6 m'],
);
export const PIECE: Ordinary = /*#__PURE__*/ range(
  'a piece that is cut from a bar',
  ['2 in', '50 mm'],
  ['60 ft', '18 m'],
);
export const KERF: Ordinary = /*#__PURE__*/ range(
  'what a saw takes',
  ['1/64 in', '0.4 mm'],
  ['1/2 in', '12 mm'],
  ['1/8 in', '3 mm'],
);
export const KEPT: Ordinary = /*#__PURE__*/ range(
  'a drop that is kept',
  ['2 in', '50 mm'],
  ['40 ft', '12 m'],
);

export const TURN: Ordinary = { of: 'an angle of bars or strips', most: '360 deg', source: trade };
