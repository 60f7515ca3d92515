/** Sources of the rules for forms. */
import type { Source } from '../reckoning/source';

/** How true a tape is, and how much truer than a tolerance the measuring must be. */
export const TAPE_TRUTH: Source = {
  kind: 'published',
  title: 'Dimensional Tolerances in Construction and for Surface Accessibility',
  publisher:
    'D. Ballast for the US Access Board, quoting NIST Handbook 44 and the Precast/Prestressed Concrete Institute',
  edition: '2011',
  locator: 'metal measuring tapes',
  url: 'https://corada.com/documents/dimensional-tolerances-in-construction-and-for-surface-accessibility/Metal-measuring-tapes',
  fromMemory: false,
};

/** How far a cast member may be out of its line. */
export const MEMBER_LINE: Source = {
  kind: 'published',
  title: 'UFGS 03700, tolerances of cast-in-place work',
  publisher: 'US Department of Defense, unified facilities guide specifications',
  locator: 'lateral alignment of members: 1 in',
  url: 'https://ufgscriteriadocreport.tpub.com/03700/037000026.htm',
  fromMemory: false,
};

export const FORM_PRESSURE: Source = {
  kind: 'published',
  title: 'Use updated wall pressure formulas (M. K. Hurd, on ACI 347-04)',
  publisher: 'Concrete Construction',
  edition: '2007',
  locator:
    'two equations for walls, breaks at 7 and 15 ft/h and at 14 ft, slump of 7 in or less; otherwise the full head. The constants of the equations are from memory',
  url: 'http://www.concreteconstruction.net/how-to/use-updated-wall-pressure-formulas_o',
  fromMemory: false,
};

export const FORM_COEFFICIENTS: Source = {
  kind: 'published',
  title: 'Guide to formwork for concrete, ACI 347',
  publisher: 'American Concrete Institute',
  edition: '2004',
  locator: 'unit weight and chemistry coefficients; least pressure of 600 psf',
  fromMemory: true,
};

export const CIRIA_108: Source = {
  kind: 'published',
  title: 'Concrete pressure on formwork, report 108',
  publisher: 'Construction Industry Research and Information Association',
  edition: '1985',
  locator: 'equation and coefficients C1, C2 and K',
  fromMemory: true,
};

export const ARMY_FORMS: Source = {
  kind: 'published',
  title: 'Concrete Engineering, EN5466A, and Design Forms for a Concrete Wall, EN5151',
  publisher: 'US Army Engineer School',
  edition: '1992 and 1995',
  locator: 'rate of placing = output ÷ plan area; pressure by its chart',
  url: 'https://armyengineer.tpub.com/EN5466A/EN5466A0078.htm',
  fromMemory: false,
};

export const SOFTWOOD_SIZES: Source = {
  kind: 'published',
  title: 'American Softwood Lumber Standard, PS 20',
  publisher: 'US Department of Commerce, National Institute of Standards and Technology',
  locator:
    'sizes of dry boards and dimension lumber: 3/4 and 1-1/2 in; 3-1/2, 5-1/2, 7-1/4, 9-1/4, 11-1/4 in',
  fromMemory: true,
};

export const STAKES_APART: Source = {
  kind: 'common-practice',
  title:
    'Stakes behind forms of 2x4 or 2x6: 3 ft apart and not over 4 ft; closer, with a second stake and a brace, above 6 in (a home magazine article, and a producer of concrete)',
  locator: 'stakes not over 3 ft apart; more than 6 in above the ground each with a second stake and a brace',
  fromMemory: false,
};

export const FORM_DEPTH: Source = {
  kind: 'common-practice',
  title: 'Advice of a producer of concrete: 2x4 forms for slabs of 4 in, which are 3-1/2 in high',
  fromMemory: false,
};
