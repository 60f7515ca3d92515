/** What a part of a job lacks: a value, or any one of several ways to say it. */
import type { Issue } from '../quantity/input-error';
import type { Raw } from './document';

const isRecord = (value: unknown): value is Raw => typeof value === 'object' && value !== null;

/** What stands at a path, or else around it. */
function around(input: Raw, path: string): { readonly object: Raw; readonly at: string } {
  let object: Raw = input;
  let at = '';
  for (const [step, name, index] of path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    const inner = object[name ?? index ?? ''];
    if (!isRecord(inner)) break;
    object = inner;
    at += name === undefined ? step : at === '' ? name : `.${name}`;
  }
  return { object, at };
}

const isGiven = (object: Raw, name: string): boolean => object[name] !== undefined && object[name] !== null;

/**
 * Where something is lacking that a part was refused for; nothing where it was refused for what it says. Of several ways
 * to say a thing, all of whose members are said together, none at all may be there.
 */
export function lackOf({ code, path, params }: Issue, input: Raw): string | undefined {
  if (code === 'missing') return path;
  const names = params?.['names'];
  if (code !== 'give-one-of' || typeof names !== 'string') return undefined;
  const { object, at } = around(input, path);
  const ways = names.split(', ').map((way) => way.split(' with '));
  if (ways.some((way) => way.every((name) => isGiven(object, name)))) return undefined;
  const [first = ''] = ways[0] ?? [];
  return [at, /^\w+$/.test(first) ? first : ''].filter(Boolean).join('.');
}
