// Made by `npm run generate`.

import type { AnyCalculation } from '../all';
import type { Description } from '../description';

/** Load a calculation and its description. */
type Loader = () => Promise<[AnyCalculation, Description]>;

/** By id. */
export const loaders: { readonly [id: string]: Loader } = {
  'curb-volume': () =>
    Promise.all([
      import('../../concrete/curb-volume').then((m) => m.curbVolume as unknown as AnyCalculation),
      import('./described/curb-volume.json').then((m) => m.default as Description),
    ]),
  'footing-volume': () =>
    Promise.all([
      import('../../concrete/footing-volume').then((m) => m.footingVolume as unknown as AnyCalculation),
      import('./described/footing-volume.json').then((m) => m.default as Description),
    ]),
  'pier-volume': () =>
    Promise.all([
      import('../../concrete/pier-volume').then((m) => m.pierVolume as unknown as AnyCalculation),
      import('./described/pier-volume.json').then((m) => m.default as Description),
    ]),
  'probed-volume': () =>
    Promise.all([
      import('../../concrete/probed-volume').then((m) => m.probedVolume as unknown as AnyCalculation),
      import('./described/probed-volume.json').then((m) => m.default as Description),
    ]),
  'slab-volume': () =>
    Promise.all([
      import('../../concrete/slab-volume').then((m) => m.slabVolume as unknown as AnyCalculation),
      import('./described/slab-volume.json').then((m) => m.default as Description),
    ]),
  'step-volume': () =>
    Promise.all([
      import('../../concrete/step-volume').then((m) => m.stepVolume as unknown as AnyCalculation),
      import('./described/step-volume.json').then((m) => m.default as Description),
    ]),
  'thickness-check': () =>
    Promise.all([
      import('../../concrete/thickness-check').then((m) => m.thicknessCheck as unknown as AnyCalculation),
      import('./described/thickness-check.json').then((m) => m.default as Description),
    ]),
  'wall-volume': () =>
    Promise.all([
      import('../../concrete/wall-volume').then((m) => m.wallVolume as unknown as AnyCalculation),
      import('./described/wall-volume.json').then((m) => m.default as Description),
    ]),
  'ramp-layout': () =>
    Promise.all([
      import('../../steps/ramp-layout').then((m) => m.rampLayout as unknown as AnyCalculation),
      import('./described/ramp-layout.json').then((m) => m.default as Description),
    ]),
  'step-layout': () =>
    Promise.all([
      import('../../steps/step-layout').then((m) => m.stepLayout as unknown as AnyCalculation),
      import('./described/step-layout.json').then((m) => m.default as Description),
    ]),
  'base-tonnage': () =>
    Promise.all([
      import('../../base/base-tonnage').then((m) => m.baseTonnage as unknown as AnyCalculation),
      import('./described/base-tonnage.json').then((m) => m.default as Description),
    ]),
  'excavation': () =>
    Promise.all([
      import('../../base/excavation').then((m) => m.excavation as unknown as AnyCalculation),
      import('./described/excavation.json').then((m) => m.default as Description),
    ]),
  'vapor-retarder': () =>
    Promise.all([
      import('../../base/vapor-retarder').then((m) => m.vaporRetarder as unknown as AnyCalculation),
      import('./described/vapor-retarder.json').then((m) => m.default as Description),
    ]),
  'form-materials': () =>
    Promise.all([
      import('../../forms/form-materials').then((m) => m.formMaterials as unknown as AnyCalculation),
      import('./described/form-materials.json').then((m) => m.default as Description),
    ]),
  'form-pressure': () =>
    Promise.all([
      import('../../forms/form-pressure').then((m) => m.formPressure as unknown as AnyCalculation),
      import('./described/form-pressure.json').then((m) => m.default as Description),
    ]),
  'square-check': () =>
    Promise.all([
      import('../../forms/square-check').then((m) => m.squareCheck as unknown as AnyCalculation),
      import('./described/square-check.json').then((m) => m.default as Description),
    ]),
  'cross-slope': () =>
    Promise.all([
      import('../../grade/cross-slope').then((m) => m.crossSlope as unknown as AnyCalculation),
      import('./described/cross-slope.json').then((m) => m.default as Description),
    ]),
  'drainage-check': () =>
    Promise.all([
      import('../../grade/drainage-check').then((m) => m.drainageCheck as unknown as AnyCalculation),
      import('./described/drainage-check.json').then((m) => m.default as Description),
    ]),
  'form-grades': () =>
    Promise.all([
      import('../../grade/form-grades').then((m) => m.formGrades as unknown as AnyCalculation),
      import('./described/form-grades.json').then((m) => m.default as Description),
    ]),
  'grade-correction': () =>
    Promise.all([
      import('../../grade/grade-correction').then((m) => m.gradeCorrection as unknown as AnyCalculation),
      import('./described/grade-correction.json').then((m) => m.default as Description),
    ]),
  'level-notes': () =>
    Promise.all([
      import('../../grade/level-notes').then((m) => m.levelNotes as unknown as AnyCalculation),
      import('./described/level-notes.json').then((m) => m.default as Description),
    ]),
  'runoff': () =>
    Promise.all([
      import('../../grade/runoff').then((m) => m.runoff as unknown as AnyCalculation),
      import('./described/runoff.json').then((m) => m.default as Description),
    ]),
  'slope': () =>
    Promise.all([
      import('../../grade/slope').then((m) => m.slopeOf as unknown as AnyCalculation),
      import('./described/slope.json').then((m) => m.default as Description),
    ]),
  'straightedge': () =>
    Promise.all([
      import('../../grade/straightedge').then((m) => m.straightedge as unknown as AnyCalculation),
      import('./described/straightedge.json').then((m) => m.default as Description),
    ]),
  'joint-layout': () =>
    Promise.all([
      import('../../joints/joint-layout').then((m) => m.jointLayout as unknown as AnyCalculation),
      import('./described/joint-layout.json').then((m) => m.default as Description),
    ]),
  'joint-spacing': () =>
    Promise.all([
      import('../../joints/joint-spacing').then((m) => m.jointSpacing as unknown as AnyCalculation),
      import('./described/joint-spacing.json').then((m) => m.default as Description),
    ]),
  'relative-stiffness': () =>
    Promise.all([
      import('../../joints/relative-stiffness').then((m) => m.relativeStiffness as unknown as AnyCalculation),
      import('./described/relative-stiffness.json').then((m) => m.default as Description),
    ]),
  'bar-cutting': () =>
    Promise.all([
      import('../../steel/bar-cutting').then((m) => m.barCutting as unknown as AnyCalculation),
      import('./described/bar-cutting.json').then((m) => m.default as Description),
    ]),
  'bar-size': () =>
    Promise.all([
      import('../../steel/bar-size').then((m) => m.barSize as unknown as AnyCalculation),
      import('./described/bar-size.json').then((m) => m.default as Description),
    ]),
  'dowel-layout': () =>
    Promise.all([
      import('../../steel/dowel-layout').then((m) => m.dowelLayout as unknown as AnyCalculation),
      import('./described/dowel-layout.json').then((m) => m.default as Description),
    ]),
  'fiber-dosage': () =>
    Promise.all([
      import('../../steel/fiber-dosage').then((m) => m.fiberDosage as unknown as AnyCalculation),
      import('./described/fiber-dosage.json').then((m) => m.default as Description),
    ]),
  'lap-length': () =>
    Promise.all([
      import('../../steel/lap-length').then((m) => m.lapLength as unknown as AnyCalculation),
      import('./described/lap-length.json').then((m) => m.default as Description),
    ]),
  'mesh-layout': () =>
    Promise.all([
      import('../../steel/mesh-layout').then((m) => m.meshLayout as unknown as AnyCalculation),
      import('./described/mesh-layout.json').then((m) => m.default as Description),
    ]),
  'mesh-style': () =>
    Promise.all([
      import('../../steel/mesh-style').then((m) => m.meshStyle as unknown as AnyCalculation),
      import('./described/mesh-style.json').then((m) => m.default as Description),
    ]),
  'rebar-layout': () =>
    Promise.all([
      import('../../steel/rebar-layout').then((m) => m.rebarLayout as unknown as AnyCalculation),
      import('./described/rebar-layout.json').then((m) => m.default as Description),
    ]),
  'steel-minimum': () =>
    Promise.all([
      import('../../steel/steel-minimum').then((m) => m.steelMinimum as unknown as AnyCalculation),
      import('./described/steel-minimum.json').then((m) => m.default as Description),
    ]),
  'steel-placement': () =>
    Promise.all([
      import('../../steel/steel-placement').then((m) => m.steelPlacement as unknown as AnyCalculation),
      import('./described/steel-placement.json').then((m) => m.default as Description),
    ]),
  'delivery-ticket': () =>
    Promise.all([
      import('../../mix/delivery-ticket').then((m) => m.deliveryTicket as unknown as AnyCalculation),
      import('./described/delivery-ticket.json').then((m) => m.default as Description),
    ]),
  'mix-requirements': () =>
    Promise.all([
      import('../../mix/mix-requirements').then((m) => m.mixRequirements as unknown as AnyCalculation),
      import('./described/mix-requirements.json').then((m) => m.default as Description),
    ]),
  'evaporation-rate': () =>
    Promise.all([
      import('../../weather/evaporation-rate').then((m) => m.evaporationRate as unknown as AnyCalculation),
      import('./described/evaporation-rate.json').then((m) => m.default as Description),
    ]),
  'fresh-concrete-temperature': () =>
    Promise.all([
      import('../../weather/fresh-concrete-temperature').then((m) => m.freshConcreteTemperature as unknown as AnyCalculation),
      import('./described/fresh-concrete-temperature.json').then((m) => m.default as Description),
    ]),
  'maturity': () =>
    Promise.all([
      import('../../weather/maturity').then((m) => m.maturity as unknown as AnyCalculation),
      import('./described/maturity.json').then((m) => m.default as Description),
    ]),
  'placing-limits': () =>
    Promise.all([
      import('../../weather/placing-limits').then((m) => m.placingLimits as unknown as AnyCalculation),
      import('./described/placing-limits.json').then((m) => m.default as Description),
    ]),
  'strength-gain': () =>
    Promise.all([
      import('../../weather/strength-gain').then((m) => m.strengthGain as unknown as AnyCalculation),
      import('./described/strength-gain.json').then((m) => m.default as Description),
    ]),
  'bag-count': () =>
    Promise.all([
      import('../../pour/bag-count').then((m) => m.bagCount as unknown as AnyCalculation),
      import('./described/bag-count.json').then((m) => m.default as Description),
    ]),
  'balance-load': () =>
    Promise.all([
      import('../../pour/balance-load').then((m) => m.balanceLoad as unknown as AnyCalculation),
      import('./described/balance-load.json').then((m) => m.default as Description),
    ]),
  'concrete-order': () =>
    Promise.all([
      import('../../pour/concrete-order').then((m) => m.concreteOrder as unknown as AnyCalculation),
      import('./described/concrete-order.json').then((m) => m.default as Description),
    ]),
  'day-plan': () =>
    Promise.all([
      import('../../pour/day-plan').then((m) => m.dayPlan as unknown as AnyCalculation),
      import('./described/day-plan.json').then((m) => m.default as Description),
    ]),
  'saw-window': () =>
    Promise.all([
      import('../../pour/saw-window').then((m) => m.sawWindow as unknown as AnyCalculation),
      import('./described/saw-window.json').then((m) => m.default as Description),
    ]),
  'truck-plan': () =>
    Promise.all([
      import('../../pour/truck-plan').then((m) => m.truckPlan as unknown as AnyCalculation),
      import('./described/truck-plan.json').then((m) => m.default as Description),
    ]),
  'backfill': () =>
    Promise.all([
      import('../../finish/backfill').then((m) => m.backfill as unknown as AnyCalculation),
      import('./described/backfill.json').then((m) => m.default as Description),
    ]),
  'finish-materials': () =>
    Promise.all([
      import('../../finish/finish-materials').then((m) => m.finishMaterials as unknown as AnyCalculation),
      import('./described/finish-materials.json').then((m) => m.default as Description),
    ]),
  'invoice-check': () =>
    Promise.all([
      import('../../job/invoice-check').then((m) => m.invoiceCheck as unknown as AnyCalculation),
      import('./described/invoice-check.json').then((m) => m.default as Description),
    ]),
  'job-bid': () =>
    Promise.all([
      import('../../job/job-bid').then((m) => m.jobBid as unknown as AnyCalculation),
      import('./described/job-bid.json').then((m) => m.default as Description),
    ]),
  'job-takeoff': () =>
    Promise.all([
      import('../../job/job-takeoff').then((m) => m.jobTakeoff as unknown as AnyCalculation),
      import('./described/job-takeoff.json').then((m) => m.default as Description),
    ]),
};
