/** The check of a hand estimate: what was claimed beside what is reckoned, and the slips that would explain it. */
import type { Language } from '../../report/show';

export const check: Language = {
  Sources: 'Fuentes',
  agrees: 'concuerda',
  close: 'casi igual',
  differs: 'difiere',
  claimed: 'declarado',
  reckoned: 'calculado',
  figure: 'cifra',
  and: 'y',
  'claimed {claimed}, reckoned {reckoned}: {verdict}': 'declarado {claimed}, calculado {reckoned}: {verdict}',
  'claimed {claimed}, reckoned {reckoned}: {verdict} by {difference}, {share}, or {steps} × {step}':
    'declarado {claimed}, calculado {reckoned}: {verdict} por {difference}, {share}, o {steps} × {step}',
  'claimed {claimed}, reckoned {reckoned}: {verdict} by {difference}, or {steps} × {step}':
    'declarado {claimed}, calculado {reckoned}: {verdict} por {difference}, o {steps} × {step}',
  'claimed {claimed}, reckoned {reckoned}: {verdict} by {difference}, {share}':
    'declarado {claimed}, calculado {reckoned}: {verdict} por {difference}, {share}',
  'claimed {claimed}, reckoned {reckoned}: {verdict} by {difference}':
    'declarado {claimed}, calculado {reckoned}: {verdict} por {difference}',
  'would give': 'daría',
  'The same at': 'Lo mismo en',
  'Likely slips': 'Errores probables',
  'No slip was found that would explain it.': 'No se encontró ningún error que lo explique.',
  'The estimate agrees with what is reckoned.': 'La estimación concuerda con lo calculado.',
  'The estimate is close to what is reckoned, as near as rounding may bring it.':
    'La estimación casi concuerda con lo calculado, tan cerca como puede dejarla el redondeo.',
  'The estimate is off. No slip was found that would explain it.':
    'La estimación no concuerda. No se encontró ningún error que lo explique.',
  'The estimate is close to what is reckoned. Likely, {one}.':
    'La estimación casi concuerda con lo calculado. Es probable que: {one}.',
  'The estimate is off. Likely, {one}.': 'La estimación no concuerda. Es probable que: {one}.',
  'The estimate is close to what is reckoned. No one slip was found that explains it; two together would, which is less sure: {one}; and {other}.':
    'La estimación casi concuerda con lo calculado. Ningún error por sí solo lo explica; dos juntos sí, lo que es menos seguro: {one}; y {other}.',
  'The estimate is off. No one slip was found that explains it; two together would, which is less sure: {one}; and {other}.':
    'La estimación no concuerda. Ningún error por sí solo lo explica; dos juntos sí, lo que es menos seguro: {one}; y {other}.',
  'The estimate is close to what is reckoned. No one slip was found that explains all of it. Of {figures}, this would: {one}.':
    'La estimación casi concuerda con lo calculado. Ningún error por sí solo lo explica todo. De {figures}, esto: {one}.',
  'The estimate is off. No one slip was found that explains all of it. Of {figures}, this would: {one}.':
    'La estimación no concuerda. Ningún error por sí solo lo explica todo. De {figures}, esto: {one}.',

  '{place} is {is}, and {taken} was taken': '{place} es {is}, y se tomó {taken}',
  'the same slip at {places}': 'el mismo error en {places}',
  '{place} was left out': 'se omitió {place}',
  '{place} was taken twice': 'se tomó dos veces {place}',
  '{place} does not say {kind}, and that was counted in': '{place} no dice {kind}, y se incluyó',
  'what {figure}, {reckoned}, lies below or above {place}, {quantity}, was put on for taken off, or taken off for put on':
    'lo que {figure}, {reckoned}, está por debajo o por encima de {place}, {quantity}, se sumó en vez de restarse, o al contrario',
  'a joint was counted for every panel, one more in each direction':
    'se contó una junta por cada panel, una de más en cada sentido',
  'the edges were counted as joints too, two more in each direction':
    'los bordes se contaron también como juntas, dos de más en cada sentido',
  '{place} was taken as a whole {shape}': '{place} se tomó como entero: {shape}',
  'the pieces were reckoned side by side, without {places}':
    'las piezas se calcularon una junto a otra, sin {places}',
  'in {step}, {formula}, {how}': 'en {step}, {formula}, {how}',
  'the outcome of {step}, {gives}, {how}': 'el resultado de {step}, {gives}, {how}',
  'in {step}, {formula}, {symbol}, {taken}, was taken for {instead}, {is}':
    'en {step}, {formula}, se tomó {symbol}, {taken}, en lugar de {instead}, {is}',
  '{other}, {quantity}, was taken for the outcome of {step}, {gives}':
    'se tomó {other}, {quantity}, en lugar del resultado de {step}, {gives}',
  '{figure}, {reckoned}, was turned into {unit} the wrong way, divided where it is multiplied or the reverse':
    '{figure}, {reckoned}, se convirtió a {unit} al revés: se dividió donde se multiplica, o al contrario',
  '{figure}, {reckoned}, has an allowance of {share} put on it that is not asked for here':
    '{figure}, {reckoned}, lleva ya un margen de {share} que aquí no se pide',
  '{figure}, {reckoned}, was rounded down to a step of {step}':
    '{figure}, {reckoned}, se redondeó hacia abajo a un paso de {step}',
  '{figure}, {reckoned}, was counted with one too many or too few':
    '{figure}, {reckoned}, se contó con uno de más o de menos',
  '{other}, {quantity}, stands in the place of {figure}': '{other}, {quantity}, está en el lugar de {figure}',

  'the two sides were added and not multiplied': 'los dos lados se sumaron en vez de multiplicarse',
  'the four sides were added up, and the two were not multiplied':
    'se sumaron los cuatro lados, y no se multiplicaron los dos',
  '{place}, {is}, was taken on one side only': '{place}, {is}, se tomó solo de un lado',
  'the plain mean of {values} was taken for each of them':
    'se tomó la media simple de {values} para cada uno',
  '{area} was divided by {piece}, the area of a piece, without laps and cuts':
    '{area} se dividió entre {piece}, el área de una pieza, sin traslapes ni cortes',
  '{length} was divided by {spacing} in one, without the ends of each edge':
    '{length} se dividió entre {spacing} de una vez, sin los extremos de cada borde',
  'the share was not taken': 'no se tomó el porcentaje',
  'the share was taken as the factor': 'el porcentaje se tomó como factor',
  'the share was taken twice': 'el porcentaje se tomó dos veces',
  'the share was taken off for put on, or put on for taken off':
    'el porcentaje se restó en vez de sumarse, o al contrario',
  'it was divided by one less the share where one plus the share multiplies, or the reverse, as a margin is taken for a markup':
    'se dividió entre uno menos el porcentaje donde se multiplica por uno más el porcentaje, o al revés, como cuando un margen se toma por un recargo',
  'in {step}, {formula}, the share was taken of {part} alone and not of {whole}':
    'en {step}, {formula}, el porcentaje se tomó solo de {part} y no de {whole}',
  'the mean of both ends was taken, without the middle': 'se tomó la media de los dos extremos, sin el medio',
  'the one in the middle was taken for the mean of all': 'se tomó el del medio por la media de todos',
  'the one at the end was not counted': 'no se contó el del extremo',
  'the one less at the end was not taken off': 'no se restó el que falta en el extremo',
  '{one}, and likewise in the other steps of the kind': '{one}, y lo mismo en los demás pasos de esa clase',
  '{symbol} = {value} was left out in {step} and wherever else it stands':
    'se omitió {symbol} = {value} en {step} y dondequiera que aparece',
  'another number was taken for {part}': 'se tomó otro número en lugar de {part}',
  'another number of the formula was taken': 'se tomó otro número de la fórmula',
  '{part} was counted with one too many or too few': '{part} se contó con uno de más o de menos',
  'the corner where two rectangles overlap was counted with both':
    'la esquina en que se solapan dos rectángulos se contó con los dos',
  'in {step}, {formula}, {symbol}, {value}, was taken as so many {unit}':
    'en {step}, {formula}, {symbol}, {value}, se tomó como otras tantas unidades: {unit}',
  '{place}, {is}, and {other}, {taken}, were exchanged':
    'se intercambiaron {place}, {is}, y {other}, {taken}',
  'a term of the sum was left out': 'se omitió un sumando',
  'a term of the sum was taken twice': 'un sumando se tomó dos veces',
  'plus and minus were exchanged': 'se cambiaron más y menos',
  'a number of the formula was left out': 'se omitió un número de la fórmula',
  'a factor was left out': 'se omitió un factor',
  'a factor was taken twice': 'un factor se tomó dos veces',
  'times and divided by were exchanged': 'se cambiaron multiplicar y dividir',
  'the square was taken for the cube': 'se tomó el cuadrado por el cubo',
  'the cube was taken for the square': 'se tomó el cubo por el cuadrado',
  'one of two roots was not taken': 'no se tomó una de las dos raíces',
  'a power or a root was not taken': 'no se tomó una potencia o una raíz',
  'it was rounded the other way': 'se redondeó hacia el otro lado',
  'it was not rounded': 'no se redondeó',
  'the other of several values was taken': 'se tomó otro de varios valores',
  'the diameter was taken for the radius': 'se tomó el diámetro por el radio',
  'the circle was taken as the square around it': 'el círculo se tomó como el cuadrado que lo encierra',
  '{part} was left out': 'se omitió {part}',
  '{part} was taken twice': 'se tomó dos veces {part}',

  'is the number of {unit} under the name of {own}': 'es el número de {unit} con el nombre de {own}',
  'was not turned into {own} as it should be': 'no se convirtió a {own} como es debido',
  'was divided by 9 to turn it into {own}, which is the factor of another unit':
    'se dividió entre 9 para convertirlo a {own}, que es el factor de otra unidad',
  'was divided by 3 to turn it into {own}, which is the factor of a length':
    'se dividió entre 3 para convertirlo a {own}, que es el factor de una longitud',
  'was divided by 25 to turn it into {own}, and not by 27':
    'se dividió entre 25 para convertirlo a {own}, y no entre 27',
  'is in gallons of the other kind, US for imperial or the reverse':
    'está en galones de la otra clase, de EE. UU. por imperiales o al revés',
  'the middle of the least and the greatest was taken for the mean of all':
    'se tomó el medio entre el menor y el mayor por la media de todos',
  'that of another size was taken for {part}': 'se tomó el de otro tamaño por {part}',
  'the weight was reckoned without {places}': 'el peso se calculó sin {places}',
  'was turned into {own} twice': 'se convirtió a {own} dos veces',
  'was turned into {own} by the factor of a length': 'se convirtió a {own} con el factor de una longitud',
  'was doubled': 'se duplicó',
  'was halved': 'se tomó la mitad',
  'was written with its point in the wrong place': 'se escribió con el punto en otro lugar',
  'was written as {written}': 'se escribió como {written}',
  'was turned into the other scale as a point on it, and not as a difference':
    'se convirtió a la otra escala como temperatura, y no como diferencia',
  'is what the slope is one in, and no percentage': 'es el uno en tanto de la pendiente, y no un porcentaje',
  'was read with its tenths of a foot as inches': 'se leyó con las décimas de pie como pulgadas',
  'was written with its inches as tenths of a foot': 'se escribió con las pulgadas como décimas de pie',
  'was read with its hundredths of an hour as minutes': 'se leyó con las centésimas de hora como minutos',
  'was written with its minutes as hundredths of an hour':
    'se escribió con los minutos como centésimas de hora',

  'agrees, but for rounding': 'concuerda, salvo redondeo',
  '{size} less, {share}; {steps} times {step}': '{size} menos, {share}; {steps} veces {step}',
  '{size} more, {share}; {steps} times {step}': '{size} más, {share}; {steps} veces {step}',
  '{size} less, {share}': '{size} menos, {share}',
  '{size} more, {share}': '{size} más, {share}',
  '{size} less': '{size} menos',
  '{size} more': '{size} más',
  '{size} less; {steps} times {step}': '{size} menos; {steps} veces {step}',
  '{size} more; {steps} times {step}': '{size} más; {steps} veces {step}',
  'What was claimed and what is reckoned': 'Lo declarado y lo calculado',
  'Figures side by side': 'Cifras lado a lado',
  'As it was written': 'Como se escribió',
  'What was claimed agrees with what is reckoned, but for rounding.':
    'Lo declarado concuerda con lo calculado, salvo redondeo.',
  'Not as reckoned: {figures}.': 'No como se calculó: {figures}.',
  'Close to what is reckoned: {figures}.': 'Casi como se calculó: {figures}.',
  'As reckoned: {figures}.': 'Como se calculó: {figures}.',
  'Look at {place} in what it was reckoned from.': 'Revise {place} en los datos del cálculo.',
  'Look at step {number} of the working, {what}.': 'Revise el paso {number} del cálculo, {what}.',
  'Look at how {place} was written down.': 'Revise cómo se anotó {place}.',
  'A likely explanation is this: {one}.': 'Una explicación probable es esta: {one}.',
  'Two slips together would give it, which is less sure than one: {one}; and {other}.':
    'Dos errores juntos lo darían, lo que es menos seguro que uno solo: {one}; y {other}.',
  'That gives {would}. So {figures} would be as claimed.':
    'Eso da {would}. Así {figures} sería como se declaró.',
  'That gives {would}. With rounding on the way {figures} would be as claimed.':
    'Eso da {would}. Con redondeos por el camino, {figures} sería como se declaró.',
  'The same at {places} would give the same.': 'Lo mismo en {places} daría lo mismo.',
  'What would explain it': 'Qué lo explicaría',
  'No single slip was found that would explain it.':
    'No se encontró ningún error que lo explique por sí solo.',
  'These are what would give such figures, the likeliest first. None of them is certain, and other sizes, another order or another agreement may be the reason.':
    'Esto daría tales cifras, lo más probable primero. Nada de ello es seguro: la razón puede ser otras medidas, otro pedido u otro acuerdo.',
  'What it was reckoned from': 'Datos del cálculo',
  'How it was reckoned': 'Cómo se calculó',
  'Taken as usual, since nothing else was said': 'Tomado como es usual, porque no se dijo otra cosa',
  'Measure the sizes above again, together, and write down what was found.':
    'Midan de nuevo, juntos, las medidas de arriba y anoten lo que encuentren.',
  'Go through the working line by line beside that of the claimed figure: where the two part is the difference.':
    'Recorran el cálculo línea por línea junto al de la cifra declarada: donde se separan está la diferencia.',
  'Hold what was delivered, by its tickets, apart from what was to be ordered: they are two questions.':
    'Separen lo que se entregó, según sus boletas, de lo que había que pedir: son dos preguntas.',
  'Which figure binds is for the contract and the local law, not for this page.':
    'Qué cifra obliga lo dicen el contrato y la ley del lugar, no esta hoja.',
  'What to do next': 'Qué hacer ahora',
  'Measured again by': 'Medido de nuevo por',
  'Claimed by {name}.': 'Declarado por {name}.',
};
