/** Forms, and whether they are square. */
export { type FormPressureFigures, type FormPressureInput, formPressure } from './form-pressure';
export { type SquareCheckFigures, type SquareCheckInput, squareCheck } from './square-check';
