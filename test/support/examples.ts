/**
 * Examples in README, docs and docstrings: found, turned into programs, and their shown results
 * compared.
 *
 * A line `expression; // result` is an example of what the expression shows: text in quotes, a number,
 * a yes or no. In a block marked `repl`, a line after `> ` is typed and what follows is what is printed.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Example {
  /** File and line. */
  readonly at: string;
  readonly language: string;
  readonly code: string;
}

function blocksOf(file: string, text: string, strip: RegExp): Example[] {
  const found: Example[] = [];
  const lines = text.split('\n');
  let open: { at: number; language: string; code: string[] } | undefined;
  lines.forEach((raw, i) => {
    const line = raw.replace(strip, '');
    const fence = /^\s*```(\S*)\s*$/.exec(line);
    if (!fence) open?.code.push(line);
    else if (!open) open = { at: i + 1, language: fence[1] ?? '', code: [] };
    else {
      found.push({ at: `${file}:${open.at}`, language: open.language, code: open.code.join('\n') });
      open = undefined;
    }
  });
  if (open) throw new Error(`${file}: a block is not closed`);
  return found;
}

const read = (file: string): string => readFileSync(join(ROOT, file), 'utf8');

/** Every code block of README, docs and docstrings. */
export function examples(): Example[] {
  const pages = [
    'README.md',
    ...readdirSync(join(ROOT, 'docs'))
      .filter((f) => f.endsWith('.md'))
      .map((f) => `docs/${f}`),
  ];
  const sources = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((f) => f.endsWith('.ts'))
    .map((f) => `src/${f}`);
  return [
    ...pages.flatMap((page) => blocksOf(page, read(page), /$^/)),
    ...sources.flatMap((source) => blocksOf(source, read(source), /^\s*\* ?/)),
  ];
}

/** A statement with its result shown beside it or, when it is long, beside its last line. */
const SHOWN = /^(?!(?:const|let|var|import|export|return|if|for)\b|[\s}/)])(.+?);\s*\/\/ (.+)$/;

/** A result that stands on the line below is brought up beside its statement. */
const beside = (code: string): string => code.replace(/;\n\s*(\/\/ ['"[{\d-])/g, '; $1');

/** The program that an example makes: each shown result is checked. */
export function programOf({ code }: Example): string {
  return beside(code)
    .split('\n')
    .map((line) => {
      const shown = SHOWN.exec(line);
      return shown ? `__check(${shown[1]}, ${JSON.stringify(shown[2])});` : line;
    })
    .join('\n');
}

/** Number of results that an example shows. */
export const shownCount = ({ code }: Example): number =>
  beside(code)
    .split('\n')
    .filter((l) => SHOWN.test(l)).length;
