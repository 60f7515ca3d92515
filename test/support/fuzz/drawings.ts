/** Drawings of fuzzed inputs: refused as the calculation refuses, or well-formed and within a finite frame. */
import {
  dayTimeline,
  jointPlan,
  matPlan,
  matSection,
  meshPlan,
  outlinePlan,
  surfacePlan,
  thicknessPlan,
  truckTimeline,
} from '../../../src/drawing/index';
import { InputError } from '../../../src/index';
import type { Chance } from '../relations/random';
import { described } from './refusals';

type Draw = (input: never, options?: never) => string;

/** The region of an input; the input itself where it lets nobody read it. */
function regionOf(input: unknown): unknown {
  try {
    const { outline, openings } = input as Record<string, unknown>;
    return { outline, ...(openings === undefined ? {} : { openings }) };
  } catch {
    return input;
  }
}

/** What can be drawn of the input of a calculation. */
const DRAWN: Readonly<
  Record<string, readonly (readonly [name: string, draw: (input: unknown) => string])[]>
> = {
  'joint-layout': [['joint plan', jointPlan as Draw as never]],
  'rebar-layout': [
    ['mat plan', matPlan as Draw as never],
    ['mat section', matSection as Draw as never],
  ],
  'mesh-layout': [['mesh plan', meshPlan as Draw as never]],
  'slab-volume': [['outline plan', (input) => outlinePlan(regionOf(input) as never)]],
  'probed-volume': [['thickness plan', thicknessPlan as Draw as never]],
  'day-plan': [['day timeline', dayTimeline as Draw as never]],
  'truck-plan': [['truck timeline', truckTimeline as Draw as never]],
  'drainage-check': [['surface plan', (surface) => surfacePlan({ surface } as never)]],
};

const TAG = /<(\/?)([a-z]+)((?: [a-zA-Z][a-zA-Z0-9:-]*="[^"<&]*(?:&(?:amp|lt|gt|quot);[^"<&]*)*")*)(\/?)>/y;
const TEXT = /[^<&]*(?:&(?:amp|lt|gt|quot);[^<&]*)*/y;

/** Where an SVG is not well-formed, or nothing: tags, quotes and entities, as XML 1.0 has them. */
function malformed(svg: string): string | undefined {
  const open: string[] = [];
  let at = 0;
  while (at < svg.length) {
    TAG.lastIndex = at;
    const tag = TAG.exec(svg);
    if (!tag) return `not well-formed at ${svg.slice(at, at + 40)}`;
    const [, closing, name = '', , single] = tag;
    if (closing && open.pop() !== name) return `closes ${name} that is not open`;
    if (!closing && !single) open.push(name);
    TEXT.lastIndex = TAG.lastIndex;
    TEXT.exec(svg);
    at = TEXT.lastIndex;
    if (open.length === 0 && at < svg.length) return 'goes on behind its end';
  }
  return open.length > 0 ? `ends within ${open.at(-1)}` : undefined;
}

/** What is wrong with a drawing, or nothing. */
function svgObjection(svg: string): string | undefined {
  if (!svg.startsWith('<svg ')) return 'no SVG';
  if (/NaN|Infinity|undefined|\[object/.test(svg))
    return `nonsense: ${/.{30}(?:NaN|Infinity|undefined|\[object)/.exec(svg)?.[0]}`;
  const box = /viewBox="0 0 (\d+(?:\.\d+)?) (\d+(?:\.\d+)?)"/.exec(svg);
  if (!box || Number(box[1]) > 1e4 || Number(box[2]) > 1e5)
    return `viewBox ${/viewBox="[^"]*"/.exec(svg)?.[0]}`;
  return malformed(svg);
}

function drawingObjection(
  name: string,
  draw: (input: unknown) => string,
  input: unknown,
): string | undefined {
  try {
    const said = svgObjection(draw(input));
    return said && `${name}: ${said}`;
  } catch (error) {
    return error instanceof InputError ? undefined : `${name} threw ${described(error)}`;
  }
}

/** What is wrong with the drawings of an input; one in three is drawn. */
export function drawingObjections(id: string, input: unknown, dice: Chance): string[] {
  const drawn = DRAWN[id];
  if (!drawn || dice.below(3) > 0 || typeof input !== 'object' || input === null) return [];
  return drawn
    .map(([name, draw]) => drawingObjection(name, draw, input))
    .filter((said) => said !== undefined);
}
