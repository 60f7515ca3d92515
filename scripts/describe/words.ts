/** Titles and help out of the names and docstrings of members. */
import type ts from 'typescript';
import { docOf, plain, tagOf } from './types';

/** `baseTolerance` and `base-tolerance` as people write it: `Base tolerance`. */
export function humanized(name: string): string {
  const words = name
    .replace(/([a-z\d])([A-Z])/g, '$1 $2')
    .replace(/-/g, ' ')
    .split(' ')
    .map((word, i) => (i > 0 && /^[A-Z][a-z]/.test(word) ? word.toLowerCase() : word))
    .join(' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Title of a member: as its `@label` says, or its name in words. */
export const titleOf = (member: ts.Symbol): string => tagOf(member, 'label') ?? humanized(member.name);

/** Names in code marks as a form shows them: members by their titles, other words in quotes. */
const shown = (text: string, owner: ts.Type | undefined): string =>
  text.replace(/`([^`]+)`/g, (_, name: string) => {
    const member = owner?.getProperty(name);
    return `"${member ? titleOf(member) : name}"`;
  });

/** What a docstring says to who fills a form; that a word is always itself says nothing. */
export function helpOf(
  symbol: ts.Symbol | undefined,
  checker: ts.TypeChecker,
  owner?: ts.Type,
): string | undefined {
  const help = shown(plain(docOf(symbol, checker)), owner);
  return help === '' || /^Always "[^"]+"\.$/.test(help) ? undefined : help;
}

/** The first sentence. */
export const firstSentence = (text: string): string =>
  /^.*?[.;:](?=\s|$)/.exec(text)?.[0].replace(/[;:]$/, '.') ?? text;
