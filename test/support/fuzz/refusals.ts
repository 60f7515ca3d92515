/** What must hold of a refusal: a code, a place in the input, a sentence that a person can read. */
import { InputError, type Issue } from '../../../src/index';

const QUOTED = /"[^"]*"/g;

/** Choices in a row are as long as there are choices; what is said of them is not. */
const CHOICES = /"[^"]*"(, "[^"]*")+/g;

function sentenceObjection({ code, sentence }: Issue): string | undefined {
  if (!/^[a-z]+(-[a-z]+)*$/.test(code)) return `code ${code}`;
  const said = sentence.replace(CHOICES, '"…"').length;
  if (said < 8 || said > 400) return `sentence of ${said} characters: ${sentence}`;
  if (/undefined|\[object|NaN|Infinity/.test(sentence.replace(QUOTED, ''))) return `sentence: ${sentence}`;
  return undefined;
}

/** `a.b[3].c` cut up. */
const partsOf = (path: string): string[] =>
  path === '' ? [] : path.split(/\.|(?=\[\d+\])/).filter((part) => part !== '');

const keyOf = (part: string): string => (/^\[\d+\]$/.test(part) ? part.slice(1, -1) : part);

/** Keys with points or brackets in them cannot be told from paths. */
const odd = (x: object): boolean => Object.keys(x).some((key) => /[.[\]]/.test(key) || key === '');

/** How many parts of a path are there in the input. */
function present(input: unknown, parts: readonly string[]): number {
  let inner = input;
  for (const [i, part] of parts.entries()) {
    if (typeof inner !== 'object' || inner === null) return i;
    if (odd(inner)) return parts.length;
    if (!Object.hasOwn(inner, keyOf(part))) return i;
    inner = (inner as Record<string, unknown>)[keyOf(part)];
  }
  return parts.length;
}

function placeObjection(input: unknown, { code, path, sentence }: Issue): string | undefined {
  if (typeof path !== 'string' || /undefined|NaN/.test(path)) return `path ${String(path)}`;
  const parts = partsOf(path);
  const there = present(input, parts);
  // The last part may be the member that is missing, or that could be given instead.
  if (there >= parts.length - 1 || code === 'missing') return undefined;
  return `${code} at ${path}, of which the input has ${there} parts: ${sentence}`;
}

/** Everything that is wrong with a refusal. */
export function refusalObjections(error: unknown, input: unknown): string[] {
  if (!(error instanceof InputError)) return [`threw ${described(error)}`];
  if (error.issues.length === 0) return ['no issue'];
  const first = error.issues.slice(0, 20);
  const found = first.flatMap((issue) => [
    sentenceObjection(issue),
    safely(() => placeObjection(input, issue)),
  ]);
  return found.filter((said) => said !== undefined);
}

/** The input itself may be a trap; then its places cannot be looked at. */
function safely(look: () => string | undefined): string | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
}

/** What was thrown, with the line where it came from. */
export function described(error: unknown): string {
  try {
    const { name, message, stack } = error as Error;
    const line = /\n\s+at (.*)/.exec(String(stack))?.[1] ?? '';
    return `${name}: ${String(message).slice(0, 120)} at ${line.replace(/\(?[^( ]*\/(src|test)\//, '$1/')}`;
  } catch {
    return 'something that cannot be looked at';
  }
}
