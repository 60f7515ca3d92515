/** Forms: what they are made of, what presses on them, and whether they are square. */
export type { BentInput, CurvesInput, Kerfed, KerfedInput, LayersInput } from './bending';
export type { BoardInput, BoardName, BoardSize, NamedBoardInput, Reached, SizedBoardInput } from './boards';
export type { Fastened, FastenersInput, Released, ReleaseInput } from './fastening';
export type { FormEdgesInput, FormRunInput } from './form-edges';
export type {
  BoardCut,
  BoardOrder,
  BoardPiece,
  FormedEdge,
  FormMaterialsFigures,
  LayeredCurves,
  StakeMark,
} from './form-figures';
export { type FormMaterialsInput, formMaterials } from './form-materials';
export { type FormPressureFigures, type FormPressureInput, formPressure } from './form-pressure';
export type { Lifts } from './lifts';
export { type SquareCheckFigures, type SquareCheckInput, squareCheck } from './square-check';
export type { StakeLength, StakesInput } from './staking';
