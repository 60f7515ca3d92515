/** Spanish of what to watch out for: finishing and backfill. */
import type { Language } from '../../report/show';

export const cautionsFinish: Language = {
  '{actual} of the cement is more pigment than the {limit} at which color no longer deepens and strength suffers':
    '{actual} del cemento es más pigmento que los {limit} en que el color ya no se intensifica y la resistencia baja',
  '{actual} of this seed is pure and alive, below {limit}: old seed, or a mix with much filler. Look at the date on the bag':
    '{actual} de esta semilla es pura y viva, menos de {limit}: semilla vieja, o una mezcla con mucho relleno. Vea la fecha en el saco',
  'a curing compound keeps sealers and joint sealants from holding: use one that goes with them, or let it wear or clean it off, and seal when the concrete is dry':
    'un compuesto de curado no deja adherir selladores ni sellantes de juntas: use uno compatible, o deje que se desgaste o límpielo, y selle cuando el concreto esté seco',
  'a hard shake troweled onto air-entrained concrete seals air and bleed water under a skin that blisters and comes off: have the mix without added air, at most 3%, or leave the shake out. Where it freezes wet, the air is needed and the shake is not':
    'un endurecedor en polvo alisado con llana sobre concreto con aire incluido encierra aire y agua de sangrado bajo una capa que se ampolla y se desprende: pida la mezcla sin aire añadido, 3% como máximo, o no ponga el endurecedor. Donde se congela mojado, el aire hace falta y el endurecedor no',
  'a rod of {actual} is no thicker than the joint is wide, {limit}: it slides down, and the sealant with it. Take one a quarter thicker':
    'un cordón de {actual} no es más grueso que el ancho de la junta, {limit}: se hunde, y el sellante con él. Use uno un cuarto más grueso',
  'all coats together come to {actual} for each measure, thinner than the {limit} at which such compounds are tested: it will not keep the water in. Spray another coat, across the first':
    'todas las capas juntas dan {actual} por cada medida, más delgado que los {limit} con que se prueban estos compuestos: no conservará el agua. Rocíe otra capa, cruzada sobre la primera',
  'bluegrass with fine fescue or ryegrass (Minnesota)': 'pasto azul con festuca fina o ballico (Minnesota)',
  'compounds, sealers and releases harm eyes, skin and lungs, and some burn: follow label and data sheet, keep flames away, and never let rinse water run into a drain':
    'los compuestos, selladores y desmoldantes dañan ojos, piel y pulmones, y algunos arden: siga la etiqueta y la hoja de datos, mantenga lejos las llamas, y nunca deje correr el agua de enjuague a un desagüe',
  'dry shakes, powders and pigments raise dust that holds silica and cement: wear a respirator that fits, and cast low and downwind':
    'los endurecedores en polvo, polvos y pigmentos levantan polvo con sílice y cemento: use un respirador bien ajustado, y riéguelos bajo y a favor del viento',
  'no salt in the first winter, nor any before {limit} of mild and dry weather: tell the owner to strew sand':
    'nada de sal en el primer invierno, ni antes de {limit} de tiempo templado y seco: diga al dueño que eche arena',
  'sealant {actual} deep is deeper than the {limit} that a joint so wide is filled: it tears where a shallower one over a backer rod stretches':
    'un sellante de {actual} de profundidad es más hondo que los {limit} que se llenan en una junta de ese ancho: se rasga donde uno menos hondo sobre cordón de respaldo se estira',
  'the concrete is {actual} old: a tamper beside it before {limit} chips its edges and can shift it. Fill loose, by hand, and tamp later':
    'el concreto tiene {actual} de edad: un pisón a su lado antes de {limit} despostilla sus bordes y puede moverlo. Rellene suelto, a mano, y apisone después',
  'the ground falls {back} toward the building: rain runs to the wall, stands there and freezes under the slab. Before anything is sown raise it at the wall until it falls {limit} away, keeping below sill and siding, or cut a swale that leads the water off':
    'el terreno baja {back} hacia el edificio: la lluvia corre al muro, se estanca ahí y se congela bajo la losa. Antes de sembrar, súbalo junto al muro hasta que baje {limit} al alejarse, sin llegar al alféizar ni al recubrimiento del muro, o abra una cuneta que se lleve el agua',
  'ground that falls {actual}, more than {limit}, washes out before grass holds it, and no mower stands on it: flatten it, hold it by a low wall, or cover it with matting and plants':
    'un terreno que cae {actual}, más de {limit}, se deslava antes de que el pasto lo sostenga, y ahí no se puede podar: hágalo más plano, sosténgalo con un muro bajo, o cúbralo con malla y plantas',
  'the ground falls {actual} away from the building, and {limit} is asked: fill settles, and then it drains to the wall. Raise it there, keeping below sill and siding, or take the fall farther':
    'el terreno baja {actual} al alejarse del edificio, y se pide {limit}: el relleno se asienta, y entonces drena hacia el muro. Súbalo ahí, sin llegar al alféizar ni al recubrimiento del muro, o lleve la pendiente más lejos',
};
