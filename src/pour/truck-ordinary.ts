/** Ordinary ranges of trucks and of ways of placing. */
import { range } from '../reckoning/ordinary';

export const PLACING_RATE = /*#__PURE__*/ range(
  'a rate of placing',
  ['1 yd3/h', '0.7 m3/h'],
  ['200 yd3/h', '150 m3/h'],
);

export const CARRIED = /*#__PURE__*/ range(
  'what a wheelbarrow, a cart or a buggy carries',
  ['1 ft3', '28 L'],
  ['30 ft3', '850 L'],
  ['3 ft3', '80 L'],
);

export const HAUL = /*#__PURE__*/ range(
  'the way from the truck to the slab',
  ['3 ft', '1 m'],
  ['1500 ft', '450 m'],
  ['50 ft', '15 m'],
);

export const REACH = /*#__PURE__*/ range(
  'the reach of a chute',
  ['4 ft', '1.2 m'],
  ['40 ft', '12 m'],
  ['12 ft', '3.6 m'],
);

export const DROP = /*#__PURE__*/ range(
  'the fall of a chute',
  ['6 in', '150 mm'],
  ['10 ft', '3 m'],
  ['4 ft', '1.2 m'],
);

export const CARRIER_SPEED = /*#__PURE__*/ range(
  'the speed of a wheelbarrow, a cart or a buggy',
  ['1 ft/s', '0.3 m/s'],
  ['15 ft/s', '4.5 m/s'],
);

export const ROAD = /*#__PURE__*/ range(
  'the way from the plant',
  ['0.2 mi', '0.3 km'],
  ['80 mi', '130 km'],
  ['8 mi', '12 km'],
);

export const ROAD_SPEED = /*#__PURE__*/ range(
  'the speed of a truck on the road',
  ['5 mph', '8 km/h'],
  ['70 mph', '110 km/h'],
);

export const CONCRETE_TEMPERATURE = /*#__PURE__*/ range(
  'the temperature of concrete as placed',
  ['40 degF', '4 degC'],
  ['105 degF', '41 degC'],
);

export const TRIP_TIME = /*#__PURE__*/ range(
  'the time lost on each trip of a wheelbarrow, a cart or a buggy',
  '5 s',
  '10 min',
  '45 s',
);
export const TRAVEL = /*#__PURE__*/ range('the way of a truck in time', '2 min', '3 h');
export const LOADING = /*#__PURE__*/ range('the loading of a truck', '1 min', '45 min', '10 min');
export const WASHING = /*#__PURE__*/ range('the washing out of a truck', '1 min', '45 min', '10 min');
export const SPACING = /*#__PURE__*/ range('the time between trucks', '2 min', '4 h');
export const AGE_LIMIT = /*#__PURE__*/ range('a limit of age at the end of unloading', '30 min', '5 h');
export const FREE_TIME = /*#__PURE__*/ range('the time to unload without a charge', '5 min', '3 h');

export const AREA_PLACED = /*#__PURE__*/ range(
  'an area that is placed on one day',
  ['4 ft2', '0.4 m2'],
  ['200000 ft2', '20000 m2'],
);

export const PROBE_WITHIN = /*#__PURE__*/ range(
  'how far a probe may lie from the mean depth',
  ['1/16 in', '1 mm'],
  ['3 in', '75 mm'],
  ['1/2 in', '12 mm'],
);

export const WITHIN = /*#__PURE__*/ range('how far an area or a yield may be off', '0.1%', '20%');

export const LEAD_TIME = /*#__PURE__*/ range(
  'the time from the call to the truck at the site',
  '5 min',
  '8 h',
);
