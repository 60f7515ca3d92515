/**
 * Spanish for the pages of a job that the crew and the yard read: headings, labels, names of what is bought, and every
 * sentence of what to watch out for.
 *
 * The words are those of building sites in the United States and Mexico. Who works on one has yet to read them: where
 * a sentence is about safety and leaves a doubt, the English one holds.
 *
 * @packageDocumentation
 */
import type { Language } from '../../report/show';
import { cautionsBase } from './cautions-base';
import { cautionsConcrete } from './cautions-concrete';
import { cautionsDay } from './cautions-day';
import { cautionsFinish } from './cautions-finish';
import { cautionsForms } from './cautions-forms';
import { cautionsGrade } from './cautions-grade';
import { cautionsJob } from './cautions-job';
import { cautionsJoints } from './cautions-joints';
import { cautionsMix } from './cautions-mix';
import { cautionsOrdinary } from './cautions-ordinary';
import { cautionsPour } from './cautions-pour';
import { cautionsSteel } from './cautions-steel';
import { cautionsSteps } from './cautions-steps';
import { check } from './check';
import { day } from './day';
import { labelsAB } from './labels-a-b';
import { labelsCD } from './labels-c-d';
import { labelsEF } from './labels-e-f';
import { labelsGL } from './labels-g-l';
import { labelsMP } from './labels-m-p';
import { labelsQR } from './labels-q-r';
import { labelsS } from './labels-s';
import { labelsTZ } from './labels-t-z';
import { ordinary } from './ordinary';
import { overrides } from './overrides';
import { prices } from './prices';
import { quote } from './quote';
import { rareSteps } from './rare-steps';
import { reasons } from './reasons';
import { rules } from './rules';
import { stepsAndReasons } from './steps-and-reasons';
import { thickness } from './thickness';
import { trucks } from './trucks';
import { working } from './working';

export type { Language } from '../../report/show';

/**
 * From each English text on the page of a crew or a yard, a customer's quote and the check of an estimate to Spanish; numbers keep the marks of the locale that is
 * given beside it.
 *
 * @example
 * ```ts
 * import { reckonJob } from 'flatwork-reckoner';
 * import { spanish } from 'flatwork-reckoner/language/spanish';
 * import { jobHtml } from 'flatwork-reckoner/report';
 *
 * const outline = { shape: 'rectangle', length: '12 ft', width: '8 ft' } as const;
 * const job = reckonJob({ version: 1, elements: [{ name: 'Bin pad', outline, thickness: '4 in', slab: true }] });
 * const page = jobHtml('Rear yard', job, 'crew', { language: spanish, lang: 'es-US' });
 * page.includes('<h3><bdi>Volumen de losa</bdi></h3>'); // true
 * ```
 */
export const spanish: Language = {
  ...cautionsBase,
  ...cautionsConcrete,
  ...cautionsDay,
  ...cautionsFinish,
  ...cautionsForms,
  ...cautionsGrade,
  ...cautionsJob,
  ...cautionsJoints,
  ...cautionsMix,
  ...cautionsOrdinary,
  ...cautionsPour,
  ...cautionsSteel,
  ...cautionsSteps,
  ...check,
  ...day,
  ...labelsAB,
  ...labelsCD,
  ...labelsEF,
  ...labelsGL,
  ...labelsMP,
  ...labelsQR,
  ...labelsS,
  ...labelsTZ,
  ...ordinary,
  ...overrides,
  ...prices,
  ...quote,
  ...rareSteps,
  ...reasons,
  ...rules,
  ...stepsAndReasons,
  ...thickness,
  ...trucks,
  ...working,
};
