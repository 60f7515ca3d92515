/**
 * Every sentence that says what is wrong with an input, in one place.
 *
 * Each says what was found and what to write instead. Kept as single functions so that a bundle
 * carries only those it can reach.
 */
import type { Dimension } from './dimensions';
import type { Fault, IssueCode } from './input-error';

/** How a quantity of each dimension may be written. */

const EXAMPLES: Record<Dimension, string> = {
  length: '4 in',
  area: '504 ft2',
  volume: '6 yd3',
  mass: '50 lb',
  density: '150 pcf',
  'mass-per-length': '0.668 lb/ft',
  'mass-per-area': '0.21 lb/ft2',
  slope: '1/4 in/ft',
  angle: '2 deg',
  time: '90 min',
  temperature: '55 degF',
  'temperature-difference': '10 degF',
  speed: '10 mph',
  force: '800 lbf',
  pressure: '4000 psi',
  'volume-rate': '20 yd3/h',
  evaporation: '0.2 lb/ft2/h',
  ratio: '10%',
  count: '3 each',
  money: '165 USD',
};

const fault = (code: IssueCode, sentence: string): Fault => ({ code, sentence });
/** At most 40 characters of what was written, safe to print on one line. */

export function quoted(text: string): string {
  const line = text.slice(0, 40).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ');
  return `"${line}${text.length > 40 ? '…' : ''}"`;
}
/** An example of a quantity of the dimension, in double quotes. */

export const exampleOf = (d: Dimension): string => `"${EXAMPLES[d]}"`;

const words = (d: Dimension): string => d.replaceAll('-', ' ');

const article = (d: Dimension): string => (/^[aeiou]/.test(d) ? 'an' : 'a');

export const missing = (what: string, example: string): Fault =>
  fault('missing', `${what} is missing; write it, for example ${example}`);

export const missingUnit = (what: string, d: Dimension): Fault =>
  fault('missing-unit', `${what} needs a unit, for example ${exampleOf(d)}`);

export const missingPartUnit = (what: string): Fault =>
  fault('missing-unit', `${what} needs a unit behind each of its numbers, for example "12 ft 6 in"`);

export const notAQuantity = (what: string, d: Dimension): Fault =>
  fault(
    'not-a-quantity',
    `${what} must be text with a unit, for example ${exampleOf(d)}, or { value, unit }`,
  );

export const unreadable = (what: string, text: string, d: Dimension): Fault =>
  fault('unreadable-quantity', `${what} cannot be read from ${quoted(text)}; write it as in ${exampleOf(d)}`);

export const decimalComma = (what: string, text: string): Fault =>
  fault(
    'unreadable-quantity',
    `${what} cannot be read from ${quoted(text)}; leave the comma out, or write a point if decimals follow it`,
  );

export const exponent = (what: string, text: string): Fault =>
  fault('unreadable-quantity', `${what} cannot be read from ${quoted(text)}; write the number out in full`);

export const unknownUnit = (what: string, unit: string, d: Dimension): Fault =>
  fault('unknown-unit', `${what} has the unknown unit ${quoted(unit)}; write it as in ${exampleOf(d)}`);

export const surveyFoot = (what: string): Fault =>
  fault(
    'survey-foot',
    `${what} is in US survey feet, retired at the end of 2022; convert to the international foot of exactly 0.3048 m and write ft`,
  );

export const wrongDimension = (what: string, found: Dimension, wanted: Dimension): Fault =>
  fault(
    'wrong-dimension',
    `${what} must be ${article(wanted)} ${words(wanted)} such as ${exampleOf(wanted)}, but ${article(found)} ${words(found)} was given`,
  );

export const tooLong = (what: string, limit: number): Fault =>
  fault('too-long', `${what} is longer than ${limit} characters; write one quantity only`);

export const tooManyDigits = (what: string): Fault =>
  fault('too-many-digits', `${what} has more digits than any measurement carries; round it`);

export const outOfRange = (what: string): Fault =>
  fault(
    'out-of-range',
    `${what} is larger than anything this library reckons with; check the number and its unit`,
  );

export const notPositive = (what: string): Fault =>
  fault('not-positive', `${what} must be greater than zero`);

export const negative = (what: string): Fault => fault('negative', `${what} must not be negative`);

export const notACount = (what: string, least: number, most: number): Fault =>
  fault('not-a-count', `${what} must be a whole number from ${least} to ${most}`);

export const wrongType = (what: string, wanted: string): Fault =>
  fault('wrong-type', `${what} must be ${wanted}`);

export const unknownKey = (key: string, known: readonly string[]): Fault =>
  fault('unknown-key', `${quoted(key)} is not known here; known: ${known.join(', ')}`);

export const unknownChoice = (what: string, choices: readonly string[]): Fault =>
  fault('unknown-choice', `${what} must be one of ${choices.map((c) => `"${c}"`).join(', ')}`);

export const tooFew = (what: string, least: number): Fault =>
  fault('too-few', `${what} needs at least ${least}`);

export const tooMany = (what: string, most: number): Fault =>
  fault('too-many', `${what} may have at most ${most}; split the work`);

export const tooDeep = (): Fault =>
  fault('too-deep', 'the input is nested deeper than any input of this library; give plain data');

export const unreadableInput = (): Fault =>
  fault('unreadable-input', 'the input cannot be read as plain data; give a plain object');

export const mismatch = (verb: string, a: Dimension, b: Dimension): Fault =>
  fault('dimension-mismatch', `cannot ${verb} ${article(a)} ${words(a)} and ${article(b)} ${words(b)}`);

export const currencyMismatch = (a: string, b: string): Fault =>
  fault(
    'currency-mismatch',
    `cannot mix ${a} and ${/^[A-Z]{3}$/.test(b) ? b : quoted(b)}; convert one of them first`,
  );

export const divideByZero = (): Fault => fault('divide-by-zero', 'cannot divide by zero; check the divisor');

export const bareArithmetic = (): Fault =>
  fault('bare-arithmetic', 'operators such as + and < drop the unit; use .plus, .times or .lessThan');

export const selfCrossing = (first: number, second: number): Fault =>
  fault(
    'self-crossing',
    `the outline meets itself: side ${first + 1} and side ${second + 1} cross or touch; list the corners in order around the slab`,
  );

export const tooTangled = (): Fault =>
  fault(
    'too-many',
    'too many sides of the outline lie beside each other; leave out corners closer than a tape can tell',
  );

export const repeatedPoint = (index: number): Fault =>
  fault('repeated-point', `corner ${index + 1} repeats the corner before it; leave it out`);

export const zeroArea = (): Fault => fault('zero-area', 'the outline encloses no area; check the dimensions');

export const noSuchTriangle = (): Fault =>
  fault(
    'no-such-triangle',
    'no triangle has these sides: the longest must be shorter than the other two together',
  );

export const noSuchTaped = (corner: number): Fault =>
  fault(
    'no-such-triangle',
    `no triangle has the side and the diagonals at corner ${corner}: measure them again; the longest must be shorter than the other two together`,
  );

export const diagonalCount = (sides: number): Fault =>
  fault(
    'wrong-count',
    `${sides} sides need ${sides - 3} diagonals from the first corner, one to each corner but its neighbours`,
  );

export const doesNotClose = (error: string, limit: string): Fault =>
  fault(
    'does-not-close',
    `the walk ends ${error} from its start, more than ${limit}: measure again, or check the turns`,
  );

export const oneCurve = (): Fault => fault('give-one-of', 'give rise or radius for an edge, not both');

export const arcTooTight = (): Fault =>
  fault('does-not-fit', 'the radius is less than half of the edge, so no arc reaches from end to end');

export const oddStrips = (): Fault =>
  fault(
    'wrong-count',
    "Simpson's rule needs an even number of strips, so an odd number of offsets; add one, or use the trapezoidal rule",
  );

export const angleTooWide = (): Fault => fault('does-not-fit', 'the angle must be at most 360 deg');

export const tooThin = (corner: number): Fault =>
  fault('too-thin', `the slab runs out to nothing or less at corner ${corner}; check the thicknesses`);

export const bandTooWide = (): Fault =>
  fault('does-not-fit', 'the slab has no room for the thickened edge; reduce its width or haunch');

export const probeOutside = (probe: number): Fault =>
  fault('probe-outside', `probe ${probe + 1} lies outside the outline; check where it was taken`);

export const probedTwice = (first: number, second: number): Fault =>
  fault('probed-twice', `probes ${first + 1} and ${second + 1} are in the same place; keep one of them`);

export const notServed = (shape: string, what: string): Fault =>
  fault('not-served', `${what} is not served for a ${shape} outline; give a rectangle, a circle or corners`);

export const openingInEdge = (opening: number): Fault =>
  fault(
    'does-not-fit',
    `opening ${opening + 1} reaches into the thickened edge; move it or make the edge narrower`,
  );

export const badOption = (what: string, wanted: string): Fault =>
  fault('wrong-type', `${what} must be ${wanted}`);

export const notPlaced = (what: string): Fault =>
  fault('not-placed', `${what} has no place in the plan, which is needed here; give a shape, or the corners`);

export const doesNotFit = (what: string, inside: string): Fault =>
  fault('does-not-fit', `${what} must be smaller than ${inside}`);

export const outsideOutline = (): Fault =>
  fault('outside-outline', 'the opening must lie wholly inside the outline; check where it is placed');

export const openingsMeet = (first: number, second: number): Fault =>
  fault(
    'openings-meet',
    `openings ${first + 1} and ${second + 1} meet; join them into one or move them apart`,
  );

export const giveOneOf = (names: readonly string[]): Fault =>
  fault('give-one-of', `give exactly one of ${names.join(', ')}`);

export const notAResult = (): Fault =>
  fault('not-a-result', 'this is not a result of this library as JSON; give what JSON.stringify wrote');

const NAMED = 12;
/** Names in quotes, joined; more than a dozen are cut short. */

const named = (names: readonly string[]): string => {
  const shown = names.slice(0, NAMED).map(quoted).join(', ');
  return names.length > NAMED ? `${shown} and ${names.length - NAMED} more` : shown;
};

export const repeatedName = (name: string): Fault =>
  fault('repeated-name', `${quoted(name)} names two things; give each a name of its own`);

export const unknownName = (name: string, known: readonly string[]): Fault =>
  fault('unknown-name', `${quoted(name)} is not a name given here; known: ${named(known)}`);

export const fewSpots = (names: readonly string[]): Fault =>
  fault(
    'few-spots',
    `a surface needs at least three spots; given: ${names.length === 0 ? 'none' : named(names)}`,
  );

export const collinearSpots = (names: readonly string[]): Fault =>
  fault(
    'collinear-spots',
    `the spots lie on one straight line and make no surface: ${named(names)}; take a spot beside the line`,
  );

export const conflictingSpots = (first: string, second: string): Fault =>
  fault(
    'conflicting-spots',
    `spots ${quoted(first)} and ${quoted(second)} lie at one place with different elevations; keep the right one`,
  );

export const noDatum = (names: readonly string[]): Fault =>
  fault(
    'no-datum',
    `these readings hang on no elevation: ${named(names)}; give the height of the instrument or a bench mark`,
  );

export const conflictingGrades = (names: readonly string[]): Fault =>
  fault(
    'conflicting-grades',
    `no plane meets all of it: ${named(names)} conflict; move or ease one of them, or use another kind of surface`,
  );

export const outsideSurface = (name: string): Fault =>
  fault('outside-surface', `${quoted(name)} lies off the surface; place it among the spots`);

export const noSolution = (names: readonly string[]): Fault =>
  fault(
    'no-solution',
    `moving only the spots allowed, and only so far, cannot meet all of this: ${named(names)}; allow more spots or more room`,
  );

export const perimeterUnknown = (what: string): Fault =>
  fault(
    'perimeter-unknown',
    `${what} cannot be put around this outline; give one whose edge is fixed, such as a rectangle, circle, L, triangle or polygon`,
  );

export const outOfOrder = (what: string, before: string): Fault =>
  fault('out-of-order', `${what} must lie beyond ${before}; list them in order along the line`);

export const grownTogether = (what: string): Fault =>
  fault(
    'grown-together',
    `sides of the outline meet when it is spread by ${what}; give the outline of the wider area instead`,
  );

export const belowLeast = (what: string, least: string): Fault =>
  fault('below-least', `${what} must be at least ${least}`);

export const offEdge = (): Fault =>
  fault('off-edge', 'this must lie on one side of the outline; check the coordinates');

export const jointOffSlab = (): Fault =>
  fault('off-slab', 'the joint does not lie on the slab; check the coordinates');

export const jointEndsInside = (): Fault =>
  fault('ends-inside', 'the joint ends within the slab; run it from edge to edge or to an opening');

export const jointNotSquare = (): Fault =>
  fault(
    'joint-not-square',
    'the joint must run along or square to the direction of the plan; give direction, or turn the joint',
  );

export const jointsConflict = (other: string): Fault =>
  fault(
    'joints-conflict',
    `the joint contradicts ${other}: two kinds in one place, or a sliver between them; keep one of them`,
  );

export const unknownDesignation = (what: string, examples: readonly string[]): Fault =>
  fault('unknown-designation', `${what} is none that is made; write it as ${examples.join(' or ')}`);

export const stockTooShort = (what: string, wayOut: string): Fault =>
  fault('stock-too-short', `the longest stock is shorter than ${what}; ${wayOut}`);

export const giveForAll = (what: string, of: string): Fault =>
  fault('give-for-all', `give ${what} for all ${of} or for none`);
