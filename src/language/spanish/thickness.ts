/** Spanish of the check of a placed slab by cores and probes. */
import type { Language } from '../../report/show';

export const thickness: Language = {
  'on average the slab is {actual} thinner than specified, and {limit} is allowed: what it carries goes by the square of its thickness. Tell who ordered it before it is loaded; the engineer says whether it stays':
    'en promedio la losa es {actual} más delgada de lo especificado, y se admite {limit}: lo que carga va con el cuadrado de su espesor. Avise a quien la encargó antes de que se cargue; el ingeniero dice si se queda',
  'samples thinner than specified by more than {limit}: {tooThin}, the thinnest by {actual}. Take more around it to see how far the thin place reaches, and let the engineer say whether it stays; look at the base there before more is placed':
    'muestras más delgadas de lo especificado por más de {limit}: {tooThin}, la más delgada por {actual}. Tome más a su alrededor para ver hasta dónde llega la parte delgada, y que el ingeniero diga si se queda; revise ahí la base antes de colar más',
  'samples: {actual}. So few say little of a slab: take {limit} at least on every {area}, at random places and not where it looks thin or thick':
    'muestras: {actual}. Tan pocas dicen poco de una losa: tome por lo menos {limit} en cada {area}, en lugares al azar y no donde se vea delgada o gruesa',
  mean: 'media',
  'mean at least': 'media mínima',
  'sample at least': 'muestra mínima',
  'within tolerance': 'dentro de tolerancia',
  'Thickness of a placed slab': 'Espesor de una losa colada',
  specified: 'especificado',
  samples: 'muestras',
  'all samples': 'todas las muestras',
  'mean as measured': 'media medida',
  'what the mean may come down to': 'hasta dónde puede bajar la media',
  'what a sample may come down to': 'hasta dónde puede bajar una muestra',
  'over what was specified': 'por encima de lo especificado',
  'mean under': 'media por debajo',
  'sample under': 'muestra por debajo',
  'counts over': 'cuenta por encima',
  'too thin': 'demasiado delgada',
  'thin in places': 'delgada en partes',
  'thin on average': 'delgada en promedio',
  'measured mean': 'media medida',
  'sample {n} as it counts': 'muestra {n} como cuenta',
  'mean as it counts': 'media como cuenta',
};
