/** The calculations that parts of a job are reckoned by. */
import { baseTonnage } from '../base/base-tonnage';
import { excavation } from '../base/excavation';
import { vaporRetarder } from '../base/vapor-retarder';
import { curbVolume } from '../concrete/curb-volume';
import { footingVolume } from '../concrete/footing-volume';
import { pierVolume } from '../concrete/pier-volume';
import { probedVolume } from '../concrete/probed-volume';
import { slabVolume } from '../concrete/slab-volume';
import { stepVolume } from '../concrete/step-volume';
import { wallVolume } from '../concrete/wall-volume';
import { backfill } from '../finish/backfill';
import { finishMaterials } from '../finish/finish-materials';
import { formMaterials } from '../forms/form-materials';
import { drainageCheck } from '../grade/drainage-check';
import { formGrades } from '../grade/form-grades';
import { jointLayout } from '../joints/joint-layout';
import { jointSpacing } from '../joints/joint-spacing';
import { mixRequirements } from '../mix/mix-requirements';
import { bagCount } from '../pour/bag-count';
import { concreteOrder } from '../pour/concrete-order';
import { dayPlan } from '../pour/day-plan';
import { sawWindow } from '../pour/saw-window';
import { truckPlan } from '../pour/truck-plan';
import type { Calculation } from '../reckoning/calculation';
import type { FigureSet } from '../reckoning/result';
import { barCutting } from '../steel/bar-cutting';
import { dowelLayout } from '../steel/dowel-layout';
import { fiberDosage } from '../steel/fiber-dosage';
import { meshLayout } from '../steel/mesh-layout';
import { rebarLayout } from '../steel/rebar-layout';
import { rampLayout } from '../steps/ramp-layout';
import { stepLayout } from '../steps/step-layout';
import { evaporationRate } from '../weather/evaporation-rate';
import { placingLimits } from '../weather/placing-limits';

const ALL = [
  excavation,
  baseTonnage,
  vaporRetarder,
  formMaterials,
  formGrades,
  drainageCheck,
  stepLayout,
  rampLayout,
  slabVolume,
  stepVolume,
  footingVolume,
  wallVolume,
  pierVolume,
  curbVolume,
  probedVolume,
  rebarLayout,
  meshLayout,
  fiberDosage,
  dowelLayout,
  jointSpacing,
  jointLayout,
  sawWindow,
  finishMaterials,
  backfill,
  mixRequirements,
  concreteOrder,
  bagCount,
  truckPlan,
  barCutting,
  evaporationRate,
  placingLimits,
  dayPlan,
] as const;

/** Any calculation, by what it is given and what it gives. */
type AnyCalculation = Calculation<unknown, FigureSet>;

let byId: ReadonlyMap<string, AnyCalculation> | undefined;

/** A calculation by its id. */
export function calculationOf(id: string): AnyCalculation {
  byId ??= new Map((ALL as unknown as readonly AnyCalculation[]).map((each) => [each.id, each]));
  return byId.get(id) as AnyCalculation;
}
