import {
  type Attempt,
  type Calculation,
  concreteOrder,
  InputError,
  type Issue,
  length,
  type Quantity,
  type Result,
  revive,
  type SlabVolumeFigures,
  type SlabVolumeInput,
  slabVolume,
} from 'flatwork-reckoner';
import { catalog } from 'flatwork-reckoner/catalog';
import { jointPlan } from 'flatwork-reckoner/drawing';
import { type Language, spanish } from 'flatwork-reckoner/language/spanish';
import { textSheet, worksheet } from 'flatwork-reckoner/report';

const input: SlabVolumeInput = { outline: { shape: 'circle', diameter: '9 ft' }, thickness: length('4 in') };
const result: Result<SlabVolumeFigures> = slabVolume(input);
const volume: Quantity<'volume'> = result.figures.volume;
const calculation: Calculation<SlabVolumeInput, SlabVolumeFigures> = slabVolume;
const attempt: Attempt<SlabVolumeFigures> = calculation.attempt(input);
const codes: string[] = attempt.ok ? [] : attempt.error.issues.map(({ code }: Issue) => code);
const again: Quantity<'volume'> = revive(result).figures.volume;

// @ts-expect-error a bare number is no thickness
slabVolume.attempt({ outline: { shape: 'circle', diameter: '9 ft' }, thickness: 4 });
// @ts-expect-error a length is no volume
concreteOrder.attempt({ volume: length('9 ft') });

export const language: Language = spanish;

export const shown: string[] = [
  volume.format('m3'),
  again.unit,
  worksheet(result),
  textSheet('Job', [{ name: 'Pad', results: [result] }]),
  jointPlan({
    outline: { shape: 'rectangle', length: '9 m', width: '6 m' },
    thickness: '125 mm',
    spacing: '4.5 m',
  }),
  ...codes,
  ...catalog.map(({ id, title }) => `${id} ${title}`),
];
export const isOurs = (error: unknown): error is InputError => error instanceof InputError;
