/** Steel: mats, mesh, dowels, laps, and how to cut bars. */

export { barCutting } from './bar-cutting';
export { type BarSizeFigures, type BarSizeInput, barSize } from './bar-size';
export type { AnyBarSize, BarGrade, BarName, BarSeries, BarSize, MetricBarSize } from './bars';
export type { CastAgainst, Exposure } from './cover';
export type { BarCuttingFigures, Cut, CutBars, LengthValue, StockOrder } from './cutting-figures';
export type { BarCuttingInput, CuttingAim, PieceInput, StockInput } from './cutting-input';
export {
  type DowelLayoutFigures,
  type DowelLayoutInput,
  type DowelTable,
  dowelLayout,
} from './dowel-layout';
export {
  type FiberDosageFigures,
  type FiberDosageInput,
  type FiberKind,
  fiberDosage,
} from './fiber-dosage';
export type { DevelopmentLapInput } from './lap-development';
export type {
  AustralianLapInput,
  CsaLapInput,
  EurocodeLapInput,
  StandardLapParts,
} from './lap-inputs';
export {
  type DiametersLapInput,
  type LapGrade,
  type LapLengthFigures,
  type LapLengthInput,
  lapLength,
} from './lap-length';
export {
  type MeshFigures,
  type MeshInput,
  type MeshLayout,
  type MeshLayoutFigures,
  type MeshLayoutInput,
  meshLayout,
  meshPlaces,
} from './mesh-layout';
export type { MeshPieces, MeshPlace, MeshRegionFigures, MeshRegionInput } from './mesh-region';
export {
  type MeshSize,
  type MeshStyleFigures,
  type MeshStyleInput,
  type MeshWires,
  meshStyle,
} from './mesh-style';
export {
  barPlaces,
  type RebarFigures,
  type RebarInput,
  type RebarLayout,
  rebarLayout,
} from './rebar-layout';
export type { BarRun, RebarLayoutFigures, RebarLayoutInput } from './rebar-rectangle';
export type { BarPlace } from './rebar-region';
export type {
  RebarStripFigures,
  RebarStripInput,
  StripBarsInput,
  StripStartersInput,
  StripTiesInput,
} from './rebar-strip';
export type {
  BarMark,
  MarkUse,
  MatDowelInput,
  MatFigures,
  MatInput,
  MatLayer,
  MatLines,
  MatStepsInput,
  RebarListFigures,
  RebarRegionFigures,
  RebarRegionInput,
  SizeTotal,
} from './rebar-types';
export type { BarChoice, MeshChoice, SteelNeed } from './steel-choices';
export {
  type DragSteelInput,
  type InsteadSteelInput,
  type RatioSteelInput,
  type SteelMinimumFigures,
  type SteelMinimumInput,
  steelMinimum,
} from './steel-minimum';
export {
  type SteelPlacementFigures,
  type SteelPlacementInput,
  steelPlacement,
} from './steel-placement';
