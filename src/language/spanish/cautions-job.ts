/** Spanish of what to watch out for: the whole job. */
import type { Language } from '../../report/show';

export const cautionsJob: Language = {
  '{kept} of loose earth from the dig fills in along the edges and is not hauled away: pile it up clear of the forms and of the dig. Sod, roots and mud are no fill':
    '{kept} de tierra suelta de la excavación rellenan a lo largo de los bordes y no se acarrean: amontónela lejos de la cimbra y de la excavación. Pasto, raíces y lodo no son relleno',
  'the dig gives {lacks} less loose earth than is to be filled in from it, and that is bought. Without its swell it is not known how much it gives':
    'la excavación da {lacks} menos de tierra suelta de la que se ha de rellenar con ella, y eso se compra. Sin su abundamiento no se sabe cuánta da',
  'the slab is thickened by {more} below its underside, and nothing is dug for that: dig as much more, and bend the gravel down with it':
    'la losa se engrosa {more} por debajo de su lecho bajo, y no se excava nada para eso: excave otro tanto, y baje la grava con ella',
  'no concrete of {elements} is in these figures, since nothing says that it is poured. Say slab: true, or slab: false where the concrete is there already':
    'ningún concreto de {elements} está en estas cifras, pues nada dice que se cuele. Indique que son losas por colar, o que el concreto ya está',
  'nothing of {places} is in these figures: it is shared, and no element has it. Say it of each that it is for':
    'nada de {places} está en estas cifras: es común, y ningún elemento lo tiene. Indíquelo en cada uno al que corresponde',
  'the steps as poured climb {actual}, and their risers are laid out for {limit}: they end {by} off the door. Give both the same height before anything is formed':
    'los escalones colados suben {actual}, y sus contrahuellas están trazadas para {limit}: terminan a {by} de la puerta. Dé a ambos la misma altura antes de cimbrar',
  'it is dug {by} deeper than slab and gravel are together: the top comes as much below the ground beside it, and water runs onto it. Dig {limit}; where the ground is soft further down, order gravel for the rest as well':
    'se excava {by} más hondo de lo que miden juntas la losa y la grava: la superficie queda eso por debajo del terreno de al lado, y el agua corre hacia ella. Excave {limit}; donde el suelo sea blando más abajo, pida también grava para el resto',
  'slab and gravel are together {by} more than it is dug: the top comes as much above the ground beside it. Where it is to lie flush, dig {limit}':
    'la losa y la grava miden juntas {by} más de lo que se excava: la superficie queda eso por encima del terreno de al lado. Donde deba quedar al ras, excave {limit}',
  '{first} and {second} lie over each other on {area}, and the concrete there is counted in both: give a thickness of one of them, or say standsOn':
    '{first} y {second} se enciman en {area}, y ahí el concreto se cuenta en los dos: indique el espesor de uno de ellos, o indique standsOn',
  '{first} and {second} lie over each other on {area}: the concrete there is counted once, {less} less. Say standsOn where one stands on the other, or cut an opening. Gravel there is counted once too, steel in both':
    '{first} y {second} se enciman en {area}: ahí el concreto se cuenta una vez, {less} menos. Indique standsOn donde uno descansa sobre el otro, o recorte una abertura. La grava ahí también se cuenta una vez, el acero en los dos',
  'less than {limit} of cover at an edge lets these bars rust and split the concrete; the plans and the engineer govern':
    'menos de {limit} de recubrimiento en un borde deja que estas varillas se oxiden y partan el concreto; rigen los planos y el ingeniero',
  'the job is known in part: one value is missing, and what it is for is in none of these figures':
    'el trabajo se conoce en parte: falta un valor, y aquello para lo que sirve no está en ninguna de estas cifras',
  'the job is known in part: {count} values are missing, and what they are for is in none of these figures':
    'el trabajo se conoce en parte: faltan {count} valores, y aquello para lo que sirven no está en ninguna de estas cifras',
};
