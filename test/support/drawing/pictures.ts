/** The pictures in docs/plans.md, made from the example before each. */
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import * as drawing from '../../../src/drawing/index';

const PAGE = new URL('../../../docs/plans.md', import.meta.url);

/** A picture of the page: its file in docs/, and what stands in it. */
export interface Picture {
  readonly file: string;
  readonly svg: string;
}

/** The plan that an example makes, called `svg` in it. */
function drawn(code: string): string {
  const { outputText } = ts.transpileModule(`${code}\nexport { svg };`, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  });
  const exported: { svg?: string } = {};
  const load = (name: string): unknown => {
    if (name !== 'flatwork-reckoner/drawing') throw new Error(`${name} is not known to examples of plans`);
    return drawing;
  };
  new Function('require', 'exports', outputText)(load, exported);
  return exported.svg ?? '';
}

/** An example, and the picture under it. */
const WITH_PICTURE = /```ts\n([\s\S]*?)```\n\n!\[[^\]]+\]\((plans\/[a-z-]+\.svg)\)/g;

export function pictures(): Picture[] {
  const page = readFileSync(PAGE, 'utf8');
  return [...page.matchAll(WITH_PICTURE)].map(([, code = '', file = '']) => ({
    file,
    svg: `${drawn(code)}\n`,
  }));
}
