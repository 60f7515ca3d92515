/** Every English template that results, sheets and errors of the vectors show: what a second language has to have. */
import type { Param, Words } from '../../src/index';
import { type Language, textSheet } from '../../src/report/index';
import { outcomeOf, readVectors } from './vectors';

/** A language that has every word, and notes each that it is asked for. */
export function listening(
  heard: Set<string>,
  answer: (english: string) => string = (word) => word,
): Language {
  return new Proxy<Record<string, string>>(
    {},
    {
      get: (_, key) => {
        heard.add(String(key));
        return answer(String(key));
      },
      getOwnPropertyDescriptor: (_, key) => ({
        configurable: true,
        enumerable: true,
        value: answer(String(key)),
      }),
    },
  );
}

/** The template of an issue, and those of words within it. */
function hear(words: Words, heard: Set<string>): void {
  heard.add(words.says);
  for (const param of Object.values(words.params ?? {})) {
    for (const inner of [param as Exclude<Param, string | number>].flat())
      if (typeof inner === 'object' && 'says' in inner) hear(inner as Words, heard);
  }
}

/** All templates, sorted. */
export function phrases(): string[] {
  const heard = new Set<string>();
  const language = listening(heard);
  for (const { vector } of readVectors()) {
    const tried = outcomeOf(vector);
    if (tried.ok) {
      textSheet('', [{ name: '', results: [{ input: vector.input, result: tried.result }] }], { language });
    } else {
      for (const issue of tried.error.issues) hear(issue, heard);
    }
  }
  return [...heard].filter((phrase) => /[A-Za-z]/.test(phrase)).sort();
}
