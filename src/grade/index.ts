/** Grade: slopes, where water runs, and heights of forms. */
export type { ConcreteStage, CorrectionStepFigure, CorrectionVerdict } from './correction/advice';
export { type CrossSlopeFigures, type CrossSlopeInput, crossSlope } from './cross-slope';
export {
  type DrainageCheck,
  type DrainageCheckFigures,
  type DrainageCheckInput,
  type DrainedSurface,
  drainageCheck,
} from './drainage-check';
export type { FallFigure } from './form-falls';
export {
  type ElevationBoundInput,
  type FormGradesFigures,
  type FormGradesInput,
  type FormSquareInput,
  formGrades,
  type RequiredFallInput,
  type StakeInput,
} from './form-grades';
export type { StakeFigure } from './form-stakes';
export {
  type GradeCorrectionFigures,
  type GradeCorrectionInput,
  gradeCorrection,
  type SillAfterFigure,
  type SpotFallInput,
  type SpotMoveFigure,
  type SpotSillInput,
  type SpotThicknessInput,
} from './grade-correction';
export { levelNotes } from './level-notes';
export type { LeveledPoint, LevelNotesFigures } from './level-notes-figures';
export type {
  BenchMarkInput,
  LevelNotesByLaserInput,
  LevelNotesByRodInput,
  LevelNotesByStringInput,
  LevelNotesByWaterInput,
  LevelNotesInput,
  LevelRowInput,
} from './level-notes-input';
export { type GradeLimit, type GradeUse, gradeLimits } from './limits';
export type { LineKind, SurfaceLineInput } from './lines';
export {
  type RunoffAreaInput,
  type RunoffFigures,
  type RunoffInput,
  type RunoffSurface,
  runoff,
} from './runoff';
export type {
  DrainFallInput,
  FixedPointInput,
  FoldInput,
  FormSurfaceInput,
  PlaneInput,
  SlopedPlaneInput,
  WarpedInput,
} from './shapes';
export { type SlopeFigures, type SlopeInput, slopeOf } from './slope';
export type { FormReadingsInput, SpotGridInput, SpotInput, SpotsInput, SpotTableInput } from './spots';
export { type StraightedgeFigures, type StraightedgeInput, straightedge } from './straightedge';
export type {
  FacetFigure,
  FallsBackFigure,
  InflowFigure,
  LowSpotFigure,
  PathFigure,
  PlanPointFigure,
  PondFigure,
  ReachFigure,
  SillFigure,
  SurfaceDrainageFigures,
  ValleyFigure,
} from './surface-figures';
export type { InflowInput, SillInput, SurfaceDrainageInput } from './surface-input';
