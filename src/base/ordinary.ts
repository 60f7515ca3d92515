/** What is ordinary in earth and base. Wide ranges: outside them the result asks for a second look. */
import type { Ordinary } from '../reckoning/ordinary';
import * as sources from './sources';

const trade = sources.COMMON_PRACTICE;

export const CUT_DEPTH: Ordinary = {
  of: 'the depth of a cut or a fill',
  least: ['1 in', '25 mm'],
  most: ['30 ft', '9 m'],
  source: trade,
};

export const WORKING_MARGIN: Ordinary = {
  of: 'the working room beyond the forms',
  least: ['1 in', '25 mm'],
  most: ['10 ft', '3 m'],
  source: trade,
};

export const PLAN_AREA: Ordinary = {
  of: 'the area of a pad or a base',
  least: ['1 ft2', '0.1 m2'],
  most: ['500000 ft2', '50000 m2'],
  source: trade,
};

export const SECTION_AREA: Ordinary = {
  of: 'the area of a cross section',
  least: ['1 in2', '5 cm2'],
  most: ['10000 ft2', '1000 m2'],
  source: trade,
};

export const SECTION_WIDTH: Ordinary = {
  of: 'the width of a cut or a fill at its bottom or top',
  least: ['4 in', '100 mm'],
  most: ['300 ft', '90 m'],
  source: trade,
};

export const TRENCH_LENGTH: Ordinary = {
  of: 'the length of a trench',
  least: ['1 ft', '300 mm'],
  most: ['10000 ft', '3000 m'],
  source: trade,
};

export const GRID_SPACING: Ordinary = {
  of: 'the spacing of a grid of levels',
  least: ['1 ft', '300 mm'],
  most: ['200 ft', '60 m'],
  source: trade,
};

export const SIDE_SLOPE: Ordinary = {
  of: 'the level run of a side slope for each unit of depth',
  example: '1.5:1',
  least: '0.1:1',
  most: '6:1',
  source: trade,
};

export const SWELL: Ordinary = {
  of: 'the swell of earth, as a share of its bank volume,',
  least: '3%',
  most: '85%',
  source: sources.SWELL_TABLES,
};

export const SHRINK_SHARE: Ordinary = {
  of: 'the share by which earth shrinks',
  least: '2%',
  most: '50%',
  source: trade,
};

export const STAYS: Ordinary = {
  of: 'earth that stays on the site',
  least: ['0 yd3', '0 m3'],
  most: ['1000 yd3', '750 m3'],
  source: trade,
};

export const TRUCK_VOLUME: Ordinary = {
  of: 'what a truck holds',
  least: ['0.5 yd3', '0.4 m3'],
  most: ['45 yd3', '35 m3'],
  source: trade,
};

export const TRUCK_PAYLOAD: Ordinary = {
  of: 'what a truck carries',
  example: ['15 ton', '14 tonne'],
  least: ['500 lb', '200 kg'],
  most: ['50 ton', '45 tonne'],
  source: trade,
};

export const BASE_DEPTH: Ordinary = {
  of: 'the depth of a base under flatwork',
  least: ['1 in', '25 mm'],
  most: ['36 in', '1 m'],
  source: trade,
};

export const SOLID_DENSITY: Ordinary = {
  of: 'the density of solid stone',
  least: ['120 pcf', '1900 kg/m3'],
  most: ['220 pcf', '3500 kg/m3'],
  source: trade,
};

export const VOIDS: Ordinary = {
  of: 'the share of voids in stone or sand',
  least: '5%',
  most: '60%',
  source: trade,
};

export const MOISTURE: Ordinary = {
  of: 'the water in base material, as a share of its dry weight,',
  least: '0.5%',
  most: '25%',
  source: trade,
};

export const LIFT: Ordinary = {
  of: 'a lift of base as spread',
  least: ['1 in', '25 mm'],
  most: ['18 in', '450 mm'],
  source: trade,
};

export const SPREAD_WIDTH: Ordinary = {
  of: 'the width that is spread at once',
  least: ['1 ft', '300 mm'],
  most: ['60 ft', '18 m'],
  source: trade,
};

export const SPREAD_RATE: Ordinary = {
  of: 'the weight of base spread on each unit of area',
  example: ['400 lb/yd2', '220 kg/m2'],
  least: ['60 lb/yd2', '30 kg/m2'],
  most: ['5000 lb/yd2', '2700 kg/m2'],
  source: trade,
};

export const ROLLER_MASS: Ordinary = {
  of: 'the weight of a roller',
  example: ['2500 lb', '1200 kg'],
  least: ['500 lb', '200 kg'],
  most: ['25 ton', '25 tonne'],
  source: trade,
};

export const ROLL_WIDTH: Ordinary = {
  of: 'the width of a roll of geotextile',
  least: ['2 ft', '600 mm'],
  most: ['30 ft', '9 m'],
  source: trade,
};

export const ROLL_LENGTH: Ordinary = {
  of: 'the length of a roll of geotextile',
  least: ['10 ft', '3 m'],
  most: ['1500 ft', '450 m'],
  source: trade,
};

export const FABRIC_LAP: Ordinary = {
  of: 'the lap of geotextile',
  least: ['3 in', '75 mm'],
  most: ['6 ft', '2 m'],
  source: trade,
};

export const SOIL_DENSITY: Ordinary = {
  of: 'the density of soil, sand or gravel',
  least: ['60 pcf', '950 kg/m3'],
  most: ['175 pcf', '2800 kg/m3'],
  source: trade,
};

export const SHEET_WIDTH: Ordinary = {
  of: 'the width of a roll of sheeting',
  least: ['2 ft', '600 mm'],
  most: ['50 ft', '15 m'],
  source: trade,
};

export const SHEET_LENGTH: Ordinary = {
  of: 'the length of a roll of sheeting',
  least: ['10 ft', '3 m'],
  most: ['1000 ft', '300 m'],
  source: trade,
};

export const SHEET_LAP: Ordinary = {
  of: 'the lap of sheeting',
  least: ['2 in', '50 mm'],
  most: ['3 ft', '1 m'],
  source: trade,
};

export const TURN_UP: Ordinary = {
  of: 'how far sheeting is turned up',
  least: ['1 in', '25 mm'],
  most: ['4 ft', '1.2 m'],
  source: trade,
};
