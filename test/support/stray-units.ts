/**
 * Units of one family in texts of the other: read as people read them, by a number with a unit behind it or by the
 * word for a unit, apart from the library.
 */
type System = 'customary' | 'metric';

/** Signs behind a number that one family alone has. */
const SIGNS: Readonly<Record<System, string>> = {
  customary:
    'ft-in|ft/s|ft/h|ft3/s|ft[23]?|in/ft|in/h|in[23]?|yd[23]?/h|yd[23]?|mi|acres?|gal/min|gal|qt|fl oz|lbf|lb/[a-z0-9/]+|lb|tons?|ton/yd3|oz/yd2|oz|pcf|psi|ksi|psf|ksf|kips?|mph|degF|°F|sq ft|cu yd|["″′]',
  metric:
    'mm/m|mm/h|mm[23]?|cm[23]?|km/h|km|m/s|m/h|m3/h|m[23]?|L/s|mL|L|kg/[a-z0-9/]+|kg|tonnes?|g/m2|g|kN|kPa|MPa|degC|°C',
};

/** Words for units: what foot and yard mean besides, as a foot that slides and a yard that sells, is no unit. */
const WORDS: Readonly<Record<System, string>> = {
  customary:
    'inch(?:es)?|(?:per|a|each|square|cubic|of|in) (?:foot|ton|pound|gallon)|(?:square|cubic) (?:feet|yards?)|gallons|quarts|fluid ounces|pounds|long ton|Fahrenheit',
  metric:
    '(?:milli|centi|kilo)met(?:er|re)s?|millilit(?:er|re)s?|(?:per|a|each|square|cubic|of|in) (?:met(?:er|re)|lit(?:er|re)|tonne)|met(?:er|re)s|lit(?:er|re)s|kilograms?|Celsius|megapascals?',
};

const OTHER = { customary: 'metric', metric: 'customary' } as const;

const finderFor = (system: System): RegExp =>
  new RegExp(
    `(?<![\\w#.])\\d[\\d.,/]*(?:-\\d+/\\d+)? ?(?:${SIGNS[system]})(?![\\w/])|(?<![\\w-])(?:${WORDS[system]})(?![\\w-])`,
    'g',
  );

const FINDERS = { customary: finderFor('customary'), metric: finderFor('metric') } as const;

/** What in a text is of the other family than a job's; a text in double quotes is no measure in inches. */
export const strayUnits = (text: string, system: System): string[] => [
  ...new Set(text.replace(/"([^"]*)"/g, '<$1>').match(FINDERS[OTHER[system]]) ?? []),
];
