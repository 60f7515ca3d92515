/** Codes of cautions are found by the compiler in whatever way they are written, so that none is lost unheard. */
import ts from 'typescript';
import { expect, it } from 'vitest';
import { codesIn } from '../scripts/describe/caution-codes';

const TEXT = `
type CautionCode = 'deep-cut' | 'hot-load' | 'handrail';
interface Caution { code: CautionCode; severity: string; says: string }
const plain: Caution = { code: 'deep-cut', severity: 'note', says: 'deep' };
const turned: Caution = { severity: 'note', code: 'handrail', says: 'rail' };
const made = (code: CautionCode, says: string): Caution => ({ code, severity: 'note', says });
const either: Caution = { code: true ? 'hot-load' : 'not-listed-yet', severity: 'note', says: 'hot' };
const called = made('hot-load', 'not-a-code');
`;

it('finds codes that stand alone, in a choice, in a call, and before they are listed', () => {
  const file = ts.createSourceFile('/src/a.ts', TEXT, ts.ScriptTarget.ES2021, true);
  const host: ts.CompilerHost = {
    ...ts.createCompilerHost({}),
    getSourceFile: (name) => (name === '/src/a.ts' ? file : undefined),
    fileExists: (name) => name === '/src/a.ts',
  };
  const program = ts.createProgram(['/src/a.ts'], { noLib: true, strict: true }, host);
  expect(codesIn(file, program.getTypeChecker())).toEqual([
    ['deep-cut', 'src/a.ts:4'],
    ['handrail', 'src/a.ts:5'],
    ['hot-load', 'src/a.ts:7'],
    ['not-listed-yet', 'src/a.ts:7'],
    ['hot-load', 'src/a.ts:8'],
  ]);
});
