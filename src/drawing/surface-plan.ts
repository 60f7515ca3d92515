/**
 * Plan of a surface that water runs on: contours, fall arrows with their slope, ponds, slopes that run back, lines
 * with their names, and stakes. Black and white; the legend explains every sign.
 */
import { readSite } from '../grade/held';
import { faultyFacets } from '../grade/judged';
import { type ParsedSurface, type SurfaceDrainageInput, surfaceFields } from '../grade/surface-input';
import type { Site } from '../grade/terrain';
import * as faults from '../quantity/faults';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { readInput, refuse } from '../reckoning/calculation';
import { type Field, fields, list, maybe, label as nameField, quantity } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { sheetFor } from './region-plan';
import type { PagePoint } from './room';
import type { Sheet } from './sheet';
import { contours, spotText } from './surface/contours';
import { cornerOf } from './surface/facets';
import { drawFalls, falls, nameFalls } from './surface/falls';
import { explain } from './surface/legend';
import { drawLines, nameLines, outside } from './surface/lines';
import { type Stake, stakeMarks, stakePlace, stakesNear } from './surface/stakes';
import { drawBack, drawPonds, namePonds } from './surface/water';

/** A mark to be shown at a stake, as `formGrades` gives it. */
export interface StakeMarkInput {
  /** Name of the stake, written beside it. */
  readonly name: string;
  /** How far along the stake stands. */
  readonly x: QuantityInput<'length'>;
  /** How far across the stake stands. */
  readonly y: QuantityInput<'length'>;
  /** What is written beside it, for example `down 2-1/4 in`. */
  readonly mark?: string;
}

/** Input of {@link surfacePlan}. */
export interface SurfacePlanInput {
  /** The surface, as the drainage check takes it. */
  readonly surface: SurfaceDrainageInput;
  /** Height between contours; by default chosen so that there are about a dozen. */
  readonly interval?: QuantityInput<'length'>;
  /** Stakes to be shown; none by default. */
  readonly stakes?: readonly StakeMarkInput[];
}

type Length = Quantity<'length'>;

interface ParsedPlan {
  readonly surface: ParsedSurface;
  readonly interval: Length | undefined;
  readonly stakes: readonly Stake[] | undefined;
}

const FACET_LIMIT = 20_000;
const SPOT_TEXTS = 120;
const STAKE_LIMIT = 1000;

const spotsOf = (sheet: Sheet, { survey }: Site): PagePoint[] =>
  survey.count > SPOT_TEXTS
    ? []
    : Array.from({ length: survey.count }, (_, i) =>
        sheet.frame.at({ x: survey.x[i] as number, y: survey.y[i] as number }),
      );

function drawSurface(sheet: Sheet, site: Site, back: readonly number[], interval: Length | undefined) {
  const { tin } = site.terrain;
  outside(sheet, tin);
  drawBack(sheet, tin, back);
  const ponds = drawPonds(sheet, site);
  const step = contours(sheet, site, interval);
  const arrows = falls(sheet, site.terrain);
  drawFalls(sheet, arrows);
  drawLines(sheet, site);
  return { ponds, step, arrows };
}

/**
 * Draw the plan of a surface as SVG: contours, fall arrows, ponds, slopes that run back, stakes.
 *
 * @param input - the surface as the drainage check takes it, the contour interval and stakes
 * @param options - heading, units, language, size and colors
 * @returns the SVG document as text, without scripts or outside resources
 * @throws {InputError} as the drainage check does; `too-many` above 20,000 facets or 200 contours
 */
export function surfacePlan(input: SurfacePlanInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const { surface, interval, stakes: given = [] } = readInput<ParsedPlan>(planFields(), input);
  const { site, held } = readSite(surface, new Pad(systemOfInput(surface).system));
  const { tin } = site.terrain;
  if (tin.facets > FACET_LIMIT) refuse('surface', faults.tooMany('the facets of a drawing', FACET_LIMIT));
  const corners = [...new Set(tin.corner)].map((v) => cornerOf(tin, v));
  const stakes = stakesNear(site, corners, given);
  const all = [...corners, ...stakes.map((stake) => stakePlace(site, stake))];
  const sheet = sheetFor(style, 'Drainage plan', site.survey.system, all);
  const back = faultyFacets(site, held).reverse;
  const { ponds, step, arrows } = drawSurface(sheet, site, back, interval);
  const spots = spotsOf(sheet, site);
  for (const spot of spots) sheet.dot(spot, 1.6, { class: 'spot' });
  nameLines(sheet, site);
  stakeMarks(sheet, site, stakes);
  namePonds(sheet, ponds);
  nameFalls(sheet, arrows);
  spots.forEach((spot, i) => {
    sheet.label(spotText(sheet, site.survey.exact(i).z), spot, { class: 'elevation' });
  });
  const has = { falls: arrows.length > 0, ponds: ponds.length > 0, back: back.length > 0 };
  explain(sheet, site, { step, ...has, stakes: stakes.length > 0, spots: spots.length > 0 });
  const off = given.length - stakes.length;
  if (off > 0) sheet.note(sheet.text(say`stakes far off the plan: ${{ off }}`));
  const counts = { spots: site.survey.count, ponds: ponds.length, back: back.length };
  return sheet.finish(
    sheet.text({
      says: 'Spots: {spots}. Ponds: {ponds}. Facets that run to a building: {back}.',
      params: counts,
    }),
  );
}

const planFields = () =>
  fields({
    surface: surfaceFields() as Field<ParsedSurface>,
    interval: maybe(quantity('length', 'interval')),
    stakes: maybe(
      list(
        fields({
          name: nameField('name'),
          x: quantity('length', 'x', 'any'),
          y: quantity('length', 'y', 'any'),
          mark: maybe(nameField('mark')),
        }),
        0,
        STAKE_LIMIT,
      ),
    ),
  });
