/** Forms, and whether they are square. */
export { type SquareCheckFigures, type SquareCheckInput, squareCheck } from './square-check';
