/** Concrete: slabs, steps, footings, walls, piers and curbs. */
export type { CrownForm, ThicknessCrownInput } from './crown';
export {
  type CurbCurveInput,
  type CurbDropInput,
  type CurbVolumeFigures,
  type CurbVolumeInput,
  type CurveCenter,
  curbVolume,
} from './curb-volume';
export type {
  FootingInput,
  FootingStepsInput,
  FootingVolumeInput,
  LoopFootingInput,
  PadFootingInput,
  SteppedPadFootingInput,
  StripFootingInput,
  TaperedPadFootingInput,
  TaperedStripFootingInput,
  TierInput,
} from './footing-input';
export { type FootingVolumeFigures, footingVolume } from './footing-volume';
export type { FormTubesFigures } from './form-tubes';
export type { FoundedInput } from './frost';
export {
  type BelledPierInput,
  type PierInput,
  type PierVolumeFigures,
  type PierVolumeInput,
  pierVolume,
  type RectangularPierInput,
  type RoundPierInput,
  type TaperedRectangularPierInput,
  type TaperedRoundPierInput,
} from './pier-volume';
export type { PlateAnchorsInput } from './plate-anchors';
export {
  type ProbedVolumeFigures,
  type ProbedVolumeInput,
  type ProbeGridInput,
  type ProbeInput,
  probedVolume,
} from './probed-volume';
export { type SlabVolumeFigures, type SlabVolumeInput, slabVolume } from './slab-volume';
export type { CoreKind, StepCoreInput } from './step-cores';
export type {
  MidLandingInput,
  RoundStepsInput,
  StepParts,
  StepVolumeInput,
  StraightStepsInput,
  WindingStepsInput,
  WraparoundStepsInput,
} from './step-inputs';
export {
  type StepVolumeFigures,
  stepVolume,
} from './step-volume';
export type { BeamInput, EdgeInput } from './thickened';
export type {
  PlaceOfThickness,
  ThicknessInput,
  ThicknessPlaneInput,
  ThicknessTaperInput,
} from './thickness';
export {
  type ThicknessCheckFigures,
  type ThicknessCheckInput,
  type ThicknessVerdict,
  thicknessCheck,
} from './thickness-check';
export type {
  LoopWallInput,
  PilasterInput,
  RingWallInput,
  StraightWallInput,
  WallInput,
  WallOpeningInput,
  WallParts,
  WallVolumeInput,
} from './wall-input';
export { type WallVolumeFigures, wallVolume } from './wall-volume';
export type { WingWallInput } from './wing-walls';
