/** Works that the rules of steel rest on, besides those that others share. */
import type { Source } from '../reckoning/source';

export const METRIC_ROUND: Source = {
  kind: 'closed-form',
  title: 'Round bars and wires by their diameter, steel at 7850 kg/m3',
  fromMemory: false,
};

export const DIAMETER_STYLES: Source = {
  kind: 'published',
  title: 'DIN 488-4, welded fabric: spacing and diameter of the wires in millimetres',
  publisher: 'Deutsches Institut für Normung',
  locator: 'designation of welded fabric',
  fromMemory: true,
};

export const MASONRY_LAP: Source = {
  kind: 'published',
  title: 'Building code on masonry, lap splices: 0.002 × d × fs, as commonly quoted',
  publisher: 'International Code Council',
  locator: '2107.2.1: 0.002 times the diameter times the stress, not less than 40 diameters or 12 in',
  fromMemory: true,
};

export const IRC_LAPS: Source = {
  kind: 'published',
  title:
    'International Residential Code, lap splice and tension development lengths, as shown by a public code library',
  publisher: 'International Code Council',
  edition: '2018 family',
  locator: 'table R608.5.4(1): 40 diameters at 40,000 psi, 60 diameters at 60,000 psi',
  fromMemory: false,
};

export const PLACING_TOLERANCE: Source = {
  kind: 'published',
  title: 'General principles for bar placing, part 1',
  publisher: 'Concrete Construction magazine',
  locator: 'tolerance of 1/4 in on the position of bars',
  fromMemory: false,
};

export const SPACING_24_IN: Source = {
  kind: 'published',
  title: 'Sidewalks and drive approaches',
  publisher: 'City of Richardson, Texas',
  edition: '23 November 2011',
  locator: 'items 1 to 4: 3/8 in bars 24 in on centre in walks, drives and approaches',
  fromMemory: false,
};

export const TIE_BARS: Source = {
  kind: 'published',
  title: 'TM 5-822-5 / UFC 3-250-01FA, Pavement Design for Roads, Streets, Walks, and Open Storage Areas',
  publisher: 'US Departments of the Army and Air Force',
  edition: 'June 1992',
  locator: 'chapter 16, 16-1 e and f: tie bars 30 in long and 30 in apart',
  fromMemory: false,
};

export const TIE_BAR_SIZE: Source = {
  kind: 'published',
  title: 'Codified Ordinances of Coshocton, street paving specification',
  publisher: 'City of Coshocton, Ohio',
  edition: '1993 Code',
  locator: '96.29 (g): tie bars of 1/2 in deformed, 30 in long, 30 in apart',
  fromMemory: false,
};

export const TIE_AND_DOWEL: Source = {
  kind: 'published',
  title: 'Concrete Paving Workshop, dowel and tie bars',
  publisher: 'Nebraska Concrete Paving Association; Nebraska Department of Roads',
  edition: 'January 2014',
  locator: 'slides 3 to 6: dowels are smooth and slide, ties are deformed and hold',
  fromMemory: false,
};

export const TIE_OR_FLOAT: Source = {
  kind: 'published',
  title: 'Tie slab to wall? (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'whole item: float the slab or tie it; bars epoxied into walls restrain it and it cracks',
  fromMemory: false,
};

export const TIE_STEEL: Source = {
  kind: 'published',
  title: 'Transportation Engineering I, lecture 29, rigid pavement design',
  publisher: 'Indian Institute of Technology Bombay; NPTEL',
  locator: 'tie bars: steel = width × thickness × weight × friction ÷ stress',
  fromMemory: false,
};

export const FROST_APRON: Source = {
  kind: 'common-practice',
  title: 'Notes of contractors on aprons tied to garage floors',
  fromMemory: false,
};

export const LIFTING: Source = {
  kind: 'common-practice',
  title:
    'Load constant of the lifting equation of the US National Institute for Occupational Safety and Health',
  fromMemory: true,
};
