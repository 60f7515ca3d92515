/**
 * The codes that cautions carry by the compiler's reading, held to those that are found where cautions are written: a
 * caution that is written in another way would drop out of docs and of the type of codes without a word.
 */
import ts from 'typescript';
import { cautionRows } from '../../test/support/codes';
import type { Types } from './types';

const OF_THE_TYPE = 'CautionCode';

/** Written as codes are; the compiler is asked about no other text, since that takes its time. */
const LIKE_A_CODE = /^[a-z]+(?:-[a-z]+)+$/;

const isMemberCode = ({ parent }: ts.Node): boolean =>
  ts.isPropertyAssignment(parent) && parent.name.getText() === 'code';

const isCode = (node: ts.StringLiteralLike, checker: ts.TypeChecker): boolean =>
  (LIKE_A_CODE.test(node.text) || isMemberCode(node)) &&
  checker.getContextualType(node)?.aliasSymbol?.name === OF_THE_TYPE;

/** Every text that stands where the code of a caution is wanted, with the place where it does. */
export function codesIn(
  file: ts.SourceFile,
  checker: ts.TypeChecker,
): (readonly [code: string, place: string])[] {
  const found: (readonly [string, string])[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node) && isCode(node, checker)) {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
      found.push([node.text, `${file.fileName.replace(/^.*\/src\//, 'src/')}:${line + 1}`]);
    }
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

/**
 * See to it that every caution is written so that its code and what it says are found.
 *
 * @throws {Error} with the codes that would be lost, and where they stand
 */
export function holdCautionCodes({ checker, files }: Types): void {
  const told = new Set(cautionRows().map(({ code }) => code));
  const lost = files.flatMap((file) => codesIn(file, checker)).filter(([code]) => !told.has(code));
  if (lost.length === 0) return;
  const places = lost.map(([code, place]) => `  '${code}' in ${place}`).join('\n');
  throw new Error(
    `these codes of cautions would be lost:\n${places}\n` +
      "write each caution as an object with code: '…', then severity, then ...say`…` or says: '…', as its members stand elsewhere",
  );
}
