/** Spanish of what to watch out for: figures that are out of the ordinary. */
import type { Language } from '../../report/show';

export const cautionsOrdinary: Language = {
  '{path} reads {value}, but {thing} is ordinarily at least {low}. Is it in {system} units?':
    '{path} dice {value}, pero {thing} es normalmente {low} como mínimo. ¿Está en unidades {system}?',
  '{path} reads {value}, but {thing} is ordinarily at least {low}. Look at the figure and its unit again.':
    '{path} dice {value}, pero {thing} es normalmente {low} como mínimo. Revise otra vez la cifra y su unidad.',
  '{path} reads {value}, but {thing} is ordinarily at least {low}. Was {slip} meant?':
    '{path} dice {value}, pero {thing} es normalmente {low} como mínimo. ¿Quiso decir {slip}?',
  '{path} reads {value}, but {thing} is ordinarily at most {high}. Is it in {system} units?':
    '{path} dice {value}, pero {thing} es normalmente {high} como máximo. ¿Está en unidades {system}?',
  '{path} reads {value}, but {thing} is ordinarily at most {high}. Look at the figure and its unit again.':
    '{path} dice {value}, pero {thing} es normalmente {high} como máximo. Revise otra vez la cifra y su unidad.',
  '{path} reads {value}, but {thing} is ordinarily at most {high}. Was {slip} meant?':
    '{path} dice {value}, pero {thing} es normalmente {high} como máximo. ¿Quiso decir {slip}?',
  '{path} reads {value}, but {thing} is ordinarily from {low} to {high}. Is it in {system} units?':
    '{path} dice {value}, pero {thing} es normalmente de {low} a {high}. ¿Está en unidades {system}?',
  '{path} reads {value}, but {thing} is ordinarily from {low} to {high}. Look at the figure and its unit again.':
    '{path} dice {value}, pero {thing} es normalmente de {low} a {high}. Revise otra vez la cifra y su unidad.',
  '{path} reads {value}, but {thing} is ordinarily from {low} to {high}. Was {slip} meant?':
    '{path} dice {value}, pero {thing} es normalmente de {low} a {high}. ¿Quiso decir {slip}?',
};
