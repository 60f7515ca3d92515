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
export {
  type FootingInput,
  type FootingStepsInput,
  type FootingVolumeFigures,
  type FootingVolumeInput,
  footingVolume,
  type LoopFootingInput,
  type PadFootingInput,
  type SteppedPadFootingInput,
  type StripFootingInput,
  type TaperedPadFootingInput,
  type TaperedStripFootingInput,
  type TierInput,
} from './footing-volume';
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
  type LoopWallInput,
  type PilasterInput,
  type RingWallInput,
  type StraightWallInput,
  type WallInput,
  type WallOpeningInput,
  type WallParts,
  type WallVolumeFigures,
  type WallVolumeInput,
  wallVolume,
} from './wall-volume';
export type { WingWallInput } from './wing-walls';
