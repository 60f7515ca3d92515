/** Sources of the rules for forms. */
import type { Source } from '../reckoning/source';

/** How true a tape is, and how much truer than a tolerance the measuring must be. */
export const TAPE_TRUTH: Source = {
  kind: 'published',
  title: 'Dimensional Tolerances in Construction and for Surface Accessibility',
  publisher:
    'D. Ballast for the US Access Board, quoting NIST Handbook 44 and the Precast/Prestressed Concrete Institute',
  edition: '2011',
  locator:
    'metal measuring tapes: 1/16 in from 7 to 30 ft; measuring instruments and accuracy: good to a third of the tolerance',
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
