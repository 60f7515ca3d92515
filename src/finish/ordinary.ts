/** Ordinary ranges of what goes onto finished concrete. */
import { range } from '../reckoning/ordinary';

export const FINISHED = /*#__PURE__*/ range(
  'the area of a slab',
  ['4 ft2', '0.4 m2'],
  ['200000 ft2', '20000 m2'],
);
export const COVERED = /*#__PURE__*/ range(
  'what a measure covers',
  ['5 ft2', '0.5 m2'],
  ['5000 ft2', '500 m2'],
);
export const MEASURE = /*#__PURE__*/ range(
  'the measure of a coverage',
  ['0.1 gal', '0.5 L'],
  ['60 gal', '220 L'],
  ['1 gal', '1 L'],
);
export const CONTAINER = /*#__PURE__*/ range(
  'what a container holds',
  ['0.05 gal', '0.2 L'],
  ['300 gal', '1100 L'],
  ['1 gal', '1 L'],
);
export const CONTAINER_MASS = /*#__PURE__*/ range(
  'what a container holds',
  ['0.5 lb', '0.2 kg'],
  ['3000 lb', '1400 kg'],
  ['1 gal', '1 L'],
);
export const SPREAD = /*#__PURE__*/ range(
  'the weight of a powder on an area',
  ['0.01 lb/ft2', '0.05 kg/m2'],
  ['3 lb/ft2', '15 kg/m2'],
);
export const CEMENT = /*#__PURE__*/ range(
  'the cement in concrete',
  ['350 lb/yd3', '200 kg/m3'],
  ['950 lb/yd3', '560 kg/m3'],
  ['560 lb/yd3', '330 kg/m3'],
);
export const DOSE = /*#__PURE__*/ range('pigment for the cement', '0.1%', '12%');
export const JOINT_LENGTH = /*#__PURE__*/ range(
  'the length of joints',
  ['1 ft', '0.3 m'],
  ['50000 ft', '15000 m'],
);
export const JOINT_WIDTH = /*#__PURE__*/ range(
  'the width of a joint',
  ['1/16 in', '1.5 mm'],
  ['3 in', '75 mm'],
  ['3/8 in', '10 mm'],
);
export const JOINT_DEPTH = /*#__PURE__*/ range(
  'the depth of sealant',
  ['1/16 in', '1.5 mm'],
  ['3 in', '75 mm'],
  ['1/4 in', '6 mm'],
);

export const ROD = /*#__PURE__*/ range(
  'a backer rod',
  ['1/8 in', '3 mm'],
  ['4 in', '100 mm'],
  ['1/2 in', '12 mm'],
);

export const GAP_WIDTH = /*#__PURE__*/ range(
  'the gap behind forms',
  ['1/2 in', '10 mm'],
  ['4 ft', '1.2 m'],
  ['12 in', '300 mm'],
);
export const GAP_DEPTH = /*#__PURE__*/ range(
  'the depth of the gap along forms',
  ['1 in', '25 mm'],
  ['12 ft', '3.6 m'],
);
export const STRIPPED = /*#__PURE__*/ range(
  'the length of stripped forms',
  ['1 ft', '0.3 m'],
  ['10000 ft', '3000 m'],
);
export const GROUND_FALL = /*#__PURE__*/ range(
  'the fall of the ground',
  ['1/4 in', '5 mm'],
  ['12 ft', '3.6 m'],
);
export const GREEN = /*#__PURE__*/ range(
  'the ground to be made good',
  ['4 ft2', '0.4 m2'],
  ['200000 ft2', '20000 m2'],
);
export const SOD_DEPTH = /*#__PURE__*/ range(
  'the depth of topsoil',
  ['1/2 in', '10 mm'],
  ['18 in', '450 mm'],
);
export const RUN = /*#__PURE__*/ range(
  'the run of the ground',
  ['1 ft', '0.3 m'],
  ['200 ft', '60 m'],
  ['20 ft', '6 m'],
);
export const SOWN = /*#__PURE__*/ range(
  'the weight of seed on an area',
  ['0.0002 lb/ft2', '0.001 kg/m2'],
  ['0.02 lb/ft2', '0.1 kg/m2'],
  ['0.005 lb/ft2', '0.025 kg/m2'],
);
export const STRAWED = /*#__PURE__*/ range(
  'the weight of straw on an area',
  ['0.01 lb/ft2', '0.05 kg/m2'],
  ['0.5 lb/ft2', '2.5 kg/m2'],
);
export const BALE = /*#__PURE__*/ range('the weight of a bale', ['15 lb', '7 kg'], ['1200 lb', '550 kg']);
export const BATTER = /*#__PURE__*/ range('how far a side runs out for its depth', '0.05:1', '3:1', '1.5:1');
export const SETTLES = /*#__PURE__*/ range('how much fill or soil settles', '2%', '60%');
export const LIVE = /*#__PURE__*/ range(
  'the share of seed that is pure, or that sprouts',
  '30%',
  '100%',
  '90%',
);
export const CONCRETE_AGE = /*#__PURE__*/ range('the age of the concrete', '4 h', '365 day', '7 day');
