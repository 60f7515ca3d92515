/** Growths beyond proportion that are known, with the reason. Each still answers within a second. */
export const KNOWN: readonly { readonly of: string; readonly what: RegExp; readonly because: string }[] = [
  {
    of: 'grade-correction',
    what: /spots|sills|movable/,
    because:
      'each exchange on the way to the least correction looks at all needs, and both grow with the spots',
  },
];

/** Shapes that end before any limit, as they come to be no shapes: the code they are refused with, and why. */
export const ENDS: readonly { readonly what: RegExp; readonly code: string; readonly because: string }[] = [
  {
    what: /corners of .*, thickened edge$/,
    code: 'does-not-fit',
    because: 'teeth, steps and turns grow narrower than the edge that is thickened along both their sides',
  },
  {
    what: /corners of .*, (fill|margin.*)$/,
    code: 'grown-together',
    because: 'teeth and turns come nearer to each other than twice the margin',
  },
  {
    what: /^readings of a form$/,
    code: 'collinear-spots',
    because: 'the marks come so close that all readings lie on one line',
  },
];
