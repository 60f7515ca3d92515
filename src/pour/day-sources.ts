/** Sources of the rules for the order of the day that only this folder uses. */
import type { Source } from '../reckoning/source';

export const NO_FINISH_IN_WATER: Source = {
  kind: 'published',
  title: 'Quality finishing of concrete (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: no finishing while bleed water is on the surface',
  url: 'http://www.concreteconstruction.net/how-to/construction/quality-finishing-of-concrete_o',
  fromMemory: false,
};

export const TROWELED_IN_WATER: Source = {
  kind: 'published',
  title: 'Flaking concrete (question and answer, C. Hagstrom)',
  publisher: 'The Journal of Light Construction',
  locator: 'answer: reflections on the slab are bleed water; troweled too soon, a thin skin flakes off',
  url: 'https://www.jlconline.com/how-to/foundations/q-a-flaking-concrete_o',
  fromMemory: false,
};

export const FOOTPRINT_RULE: Source = {
  kind: 'common-practice',
  title: 'Note of a ready-mixed producer to its customers, after ACI 302',
  publisher: 'ready-mixed producer',
  locator: 'when to start finishing: bleeding has stopped, and a footprint is no deeper than about 1/4 in',
  fromMemory: false,
};

export const RUBBERY: Source = {
  kind: 'published',
  title: 'Rubbery or spongy surface (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator:
    'answer: the top dries and seems set; wet burlap after the bull float, uncovered a little at a time',
  url: 'http://www.concreteconstruction.net/how-to/rubbery-or-spongy-surface_o',
  fromMemory: false,
};

export const RAIN: Source = {
  kind: 'published',
  title: 'Protection against rain (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer: covers on site, laid at once, and the finish under a shelter a small part at a time',
  url: 'http://www.concreteconstruction.net/how-to/protection-against-rain_o',
  fromMemory: false,
};
