/** Growths beyond proportion that are known, with the reason. Each still answers within a second. */
export const KNOWN: readonly { readonly of: string; readonly what: RegExp; readonly because: string }[] = [
  {
    of: 'grade-correction',
    what: /spots|sills|movable/,
    because:
      'each exchange on the way to the least correction looks at all needs, and both grow with the spots',
  },
];
