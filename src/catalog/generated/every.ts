// Made by `npm run generate`.

import { backfill } from '../../finish/backfill';
import { bagCount } from '../../pour/bag-count';
import { balanceLoad } from '../../pour/balance-load';
import { barCutting } from '../../steel/bar-cutting';
import { barSize } from '../../steel/bar-size';
import { baseTonnage } from '../../base/base-tonnage';
import { concreteOrder } from '../../pour/concrete-order';
import { crossSlope } from '../../grade/cross-slope';
import { curbVolume } from '../../concrete/curb-volume';
import { dayPlan } from '../../pour/day-plan';
import { deliveryTicket } from '../../mix/delivery-ticket';
import { dowelLayout } from '../../steel/dowel-layout';
import { drainageCheck } from '../../grade/drainage-check';
import { evaporationRate } from '../../weather/evaporation-rate';
import { excavation } from '../../base/excavation';
import { fiberDosage } from '../../steel/fiber-dosage';
import { finishMaterials } from '../../finish/finish-materials';
import { footingVolume } from '../../concrete/footing-volume';
import { formGrades } from '../../grade/form-grades';
import { formMaterials } from '../../forms/form-materials';
import { formPressure } from '../../forms/form-pressure';
import { freshConcreteTemperature } from '../../weather/fresh-concrete-temperature';
import { gradeCorrection } from '../../grade/grade-correction';
import { invoiceCheck } from '../../job/invoice-check';
import { jobBid } from '../../job/job-bid';
import { jobTakeoff } from '../../job/job-takeoff';
import { jointLayout } from '../../joints/joint-layout';
import { jointSpacing } from '../../joints/joint-spacing';
import { lapLength } from '../../steel/lap-length';
import { levelNotes } from '../../grade/level-notes';
import { maturity } from '../../weather/maturity';
import { meshLayout } from '../../steel/mesh-layout';
import { meshStyle } from '../../steel/mesh-style';
import { mixRequirements } from '../../mix/mix-requirements';
import { pierVolume } from '../../concrete/pier-volume';
import { placingLimits } from '../../weather/placing-limits';
import { probedVolume } from '../../concrete/probed-volume';
import { rampLayout } from '../../steps/ramp-layout';
import { rebarLayout } from '../../steel/rebar-layout';
import { relativeStiffness } from '../../joints/relative-stiffness';
import { runoff } from '../../grade/runoff';
import { sawWindow } from '../../pour/saw-window';
import { slabVolume } from '../../concrete/slab-volume';
import { slopeOf } from '../../grade/slope';
import { squareCheck } from '../../forms/square-check';
import { steelMinimum } from '../../steel/steel-minimum';
import { steelPlacement } from '../../steel/steel-placement';
import { stepLayout } from '../../steps/step-layout';
import { stepVolume } from '../../concrete/step-volume';
import { straightedge } from '../../grade/straightedge';
import { strengthGain } from '../../weather/strength-gain';
import { thicknessCheck } from '../../concrete/thickness-check';
import { truckPlan } from '../../pour/truck-plan';
import { vaporRetarder } from '../../base/vapor-retarder';
import { wallVolume } from '../../concrete/wall-volume';

/** Every calculation. */
export const every = [
  curbVolume,
  footingVolume,
  pierVolume,
  probedVolume,
  slabVolume,
  stepVolume,
  thicknessCheck,
  wallVolume,
  rampLayout,
  stepLayout,
  baseTonnage,
  excavation,
  vaporRetarder,
  formMaterials,
  formPressure,
  squareCheck,
  crossSlope,
  drainageCheck,
  formGrades,
  gradeCorrection,
  levelNotes,
  runoff,
  slopeOf,
  straightedge,
  jointLayout,
  jointSpacing,
  relativeStiffness,
  barCutting,
  barSize,
  dowelLayout,
  fiberDosage,
  lapLength,
  meshLayout,
  meshStyle,
  rebarLayout,
  steelMinimum,
  steelPlacement,
  deliveryTicket,
  mixRequirements,
  evaporationRate,
  freshConcreteTemperature,
  maturity,
  placingLimits,
  strengthGain,
  bagCount,
  balanceLoad,
  concreteOrder,
  dayPlan,
  sawWindow,
  truckPlan,
  backfill,
  finishMaterials,
  invoiceCheck,
  jobBid,
  jobTakeoff,
];
