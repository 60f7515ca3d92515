/** Spanish of what was assumed, and why. */
import type { Language } from '../../report/show';

export const reasons: Language = {
  'printed for a bag of {bag}; it says "approximately"':
    'impreso para un saco de {bag}; dice "aproximadamente"',
  '{water} are printed for a bag of {bag}, here in proportion to the weight':
    'se imprimen {water} para un saco de {bag}, aquí en proporción al peso',
  'the farthest that bolts of a plate stand apart; codes and plans may want them closer':
    'lo más que se separan las anclas de una solera; los reglamentos y los planos pueden pedirlas más cerca',
  'the farthest from the end of a piece': 'lo más lejos del extremo de una pieza',
  'longer plates are seldom sold, and each piece has two bolts at least':
    'rara vez se venden soleras más largas, y cada pieza lleva al menos dos anclas',
  'Give anchors.spacing': 'Indique anchors.spacing',
  'Give anchors.fromEnd': 'Indique anchors.fromEnd',
  'Give anchors.plate': 'Indique anchors.plate',
  'not known': 'no se sabe',
  'a 960th of the diagonal, {each} for each {run} of it; at least three times what a tape is true to, at most {most}':
    'un 960avo de la diagonal, {each} por cada {run}; por lo menos tres veces lo que puede errar una cinta, a lo más {most}',
  'a bent board pulls flat between stakes': 'una tabla curvada se endereza entre estacas',
  'a chute with its extensions on, from behind the truck':
    'una canaleta con sus extensiones, desde atrás del camión',
  'a cut or a fill that runs out is taken to keep its width, so that end areas are right for it':
    'de un corte o relleno que se acaba se supone que conserva su ancho, de modo que las áreas extremas son correctas para él',
  'a garage floor, to its door or a drain': 'piso de cochera, hacia su puerta o un desagüe',
  'a patio, away from the house': 'patio, alejándose de la casa',
  'landing of an accessible ramp in any direction, and a ramp across':
    'descanso de una rampa accesible en cualquier sentido, y una rampa de través',
  'an accessible route across': 'ruta accesible de través',
  'a new accessible ramp': 'rampa accesible nueva',
  'an accessible route along its length; steeper is a ramp':
    'ruta accesible a lo largo; más inclinada es una rampa',
  'a residential driveway': 'entrada de autos de una casa',
  'a swale within {zone} of a building, where lot lines or walls leave no room':
    'una cuneta a menos de {zone} de un edificio, donde los linderos o muros no dejan lugar',
  'a terrace': 'una terraza',
  'a truck of ten yards down its chute in half an hour, with a crew that keeps up':
    'un camión de diez yardas por su canaleta en media hora, con una cuadrilla que se da abasto',
  'a usual working day': 'una jornada usual',
  'a usual working day begins then, or as this one does where that is earlier or at night':
    'a esa hora empieza una jornada usual, o cuando empieza esta si es antes o de noche',
  'a walk across: 1% drains, 1:48 is usual and the most where it must be accessible':
    'banqueta a lo ancho: con 1% desagua, 1:48 es lo usual y lo máximo si debe ser accesible',
  'all of the height is taken to be in the ground': 'se supone que toda la altura queda en el terreno',
  'an outdoor slab away from buildings, where 2% is better':
    'losa al aire libre lejos de edificios, donde 2% es mejor',
  'as close as a tape and a square get': 'con la precisión de una cinta y una escuadra',
  'bars of this length across such corners': 'varillas de este largo a través de esas esquinas',
  'by the concrete, or the air where that is warmer; the sources of the hours of sawing name no degrees':
    'por el concreto, o por el aire donde está más caliente; las fuentes de las horas de corte no dicen grados',
  'chairs that hold mesh when people walk on it':
    'silletas que sostienen la malla cuando se camina sobre ella',
  'codes and standards disagree, and what meets the strictest of those shown meets them all':
    'los reglamentos y normas no coinciden, y lo que cumple el más estricto de los mostrados los cumple todos',
  'concrete cast against the ground': 'concreto colado contra el terreno',
  'cuts are taken to be due by the end of the same part of a published range; cracks most often form 6 to 18 h after placing':
    'se supone que los cortes deben estar listos al final de la misma parte de un intervalo publicado; las grietas casi siempre salen de 6 a 18 h después de colocar',
  'dowels for floors; heavy pavements have a table of their own':
    'pasajuntas para pisos; los pavimentos pesados tienen su propia tabla',
  'dry softwood, plywood and hardboard break when their faces are strained by more than about 0.5%':
    'la madera blanda seca, el triplay y el tablero duro se rompen cuando sus caras se estiran más de 0.5% o cerca de eso',
  'filling, turning and dumping on each trip': 'llenar, dar vuelta y vaciar en cada viaje',
  'flatwork is mostly struck off by hand': 'los pisos casi siempre se enrasan a mano',
  'flatwork on the ground carries nothing early': 'los pisos sobre el terreno no cargan nada al principio',
  'nothing says that the mix gains strength early': 'nada dice que la mezcla gane resistencia temprano',
  'blankets are laid in one layer, unless more are asked for':
    'las mantas se ponen en una capa, salvo que se pidan más',
  'as though nothing but seed were in the bag': 'como si en el saco no hubiera más que semilla',
  'as though every seed sprouted': 'como si germinara cada semilla',
  'flatwork outdoors freezes when it is in use': 'los pisos al aire libre se congelan cuando están en uso',
  'forms higher than a curb are pushed hard': 'las cimbras más altas que una guarnición reciben mucho empuje',
  'four into each board end': 'cuatro en cada punta de tabla',
  'ground within {zone} of a building, {fall} in {zone}':
    'terreno a menos de {zone} de un edificio, {fall} en {zone}',
  'half of it bonded on each side': 'adherida la mitad de cada lado',
  'half the dowel': 'la mitad de la pasajunta',
  'half the spacing': 'la mitad de la separación',
  'hours of an early-entry saw run from the end of finishing':
    'las horas de una sierra de entrada temprana corren desde el fin del acabado',
  'mild weather; warmer concrete sets sooner': 'clima templado; el concreto más caliente fragua antes',
  'no more are told': 'no se dice que haya más',
  'no other way is told': 'no se dice otra manera',
  'no place is then farther from a bar than half the spacing':
    'así ningún punto queda de una varilla a más de la mitad de la separación',
  'no probe was taken there': 'ahí no se sondeó',
  'no weight is published for this style; the wires of a wide sheet at {steel}, without edges':
    'no hay peso publicado de este tipo; los alambres de una hoja ancha a {steel}, sin orillas',
  'nobody salts it as a rule': 'por regla nadie le echa sal',
  'one bar across each corner that cracks start from':
    'una varilla a través de cada esquina de la que parten grietas',
  'one bar along each tread besides the one at its nosing':
    'una varilla a lo largo de cada huella además de la de su nariz',
  'one square of the mesh that is sold most': 'un cuadro de la malla que más se vende',
  'panels longer than that tend to crack across':
    'los tableros más largos que eso tienden a agrietarse a lo ancho',
  'parallel sides and height do not fix the slant of the others':
    'los lados paralelos y la altura no fijan la inclinación de los otros',
  'parking across the aisle, at 45 or 60 degrees; 1.5% at most in other layouts':
    'estacionamiento a través del pasillo, a 45 o 60 grados; a lo más 1.5% en otros acomodos',
  'prices are given': 'se dan precios',
  'rounded down from what drag allows': 'redondeado hacia abajo de lo que permite el arrastre',
  'set is counted from placing; concrete that rode for an hour sets an hour sooner':
    'el fraguado se cuenta desde la colocación; el concreto que viajó una hora fragua una hora antes',
  'so many of {t} are as thick as the boards': 'tantas de {t} son tan gruesas como las tablas',
  'so much thinner any sample of a slab on ground may be':
    'esto puede faltarle de espesor a cualquier muestra de una losa sobre el terreno',
  'so much thinner the mean of a slab on ground may be':
    'esto puede faltarle al espesor medio de una losa sobre el terreno',
  'somebody who wheels concrete and comes back': 'quien lleva concreto en carretilla y regresa',
  'spots are seldom placed nearer than that': 'rara vez se toman puntos más cerca que eso',
  'squeeze-out and what stays in the nozzle': 'lo que se sale y lo que queda en la boquilla',
  'steeper than 1:20 a surface that people walk on counts as a ramp':
    'con más de 1:20 una superficie por la que se camina cuenta como rampa',
  'steps of a dwelling: risers up to {high}, treads from {tread}; below {low} by practice only':
    'escalones de vivienda: peraltes hasta {high}, huellas desde {tread}; por debajo de {low} solo por costumbre',
  'tape alone cannot tell on which side of a diagonal a corner is':
    'con la sola cinta no se sabe de qué lado de una diagonal está una esquina',
  'the code asks for the fall within {zone}': 'el reglamento pide el desnivel dentro de {zone}',
  'the cut is no wider than what is built in it': 'el corte no es más ancho que lo que se construye en él',
  'the default of ASTM C94 before its edition of 2021, which is shortened in hot weather; since then the purchaser states the limit, else the producer, and it is on the ticket':
    'lo que fijaba ASTM C94 antes de su edición de 2021, que se acorta en clima caluroso; desde entonces el límite lo fija el comprador, si no el productor, y está en la nota de entrega',
  'the default of ASTM C94 before its edition of 2021; since then the purchaser states the limit, else the producer, and it is on the ticket':
    'lo que fijaba ASTM C94 antes de su edición de 2021; desde entonces el límite lo fija el comprador, si no el productor, y está en la nota de entrega',
  'the equations want the wind near the surface; one from a weather station is stronger':
    'las ecuaciones piden el viento cerca de la superficie; el de una estación meteorológica es más fuerte',
  'the fill is taken to be held by walls or forms': 'se supone que muros o cimbras sostienen el relleno',
  'the first walking rule, twice the riser and the tread make {sum}, and no less than the rules allow':
    'la primera regla del paso, dos peraltes y una huella hacen {sum}, y no menos de lo que permiten las reglas',
  'the forms may lie below the ground as it is': 'la cimbra puede quedar por debajo del terreno como está',
  'the least along a grassed swale; the code asks for more where it keeps water off a building':
    'lo mínimo a lo largo de una cuneta con pasto; el reglamento pide más donde aleja el agua de un edificio',
  'the least along a paved gutter': 'lo mínimo a lo largo de una cuneta pavimentada',
  'the least for outdoor slabs': 'lo mínimo para losas al aire libre',
  'the least for {kind} fibers in a slab on ground':
    'lo mínimo de fibras {kind} en una losa sobre el terreno',
  'the next rod that is sold from {least} on': 'el siguiente cordón que se vende desde {least}',
  'the same as the side lap': 'igual que el traslape lateral',
  'the source says by temperature and names no degrees; the parts of its range are our own reading':
    'la fuente dice según la temperatura y no dice grados; las partes de su intervalo son lectura nuestra',
  'the sources put stone of {stone} in either class or in none, and the closer spacing is the safe one':
    'las fuentes ponen la piedra de {stone} en una u otra clase o en ninguna, y la separación menor es la segura',
  'the table for a slab of {thickness}': 'la tabla para una losa de {thickness}',
  'the thickest lift for a {compactor}{roller}, on the careful side; up to {most} {mostState} is published':
    'la capa más gruesa para {compactor}{roller}, del lado prudente; se publica hasta {most} {mostState}',
  'the thickness of a tapered wall depends on where the opening is':
    'el espesor de un muro que adelgaza depende de dónde está el hueco',
  'the top tread is one like the others': 'la huella de arriba es como las demás',
  'the usual friction factor': 'el factor de fricción usual',
  'what concrete with steel in it weighs': 'lo que pesa el concreto con acero',
  'the whole published range is used; in hot weather the cuts are to be done by {end}':
    'se usa todo el intervalo publicado; en clima caluroso los cortes deben estar listos a las {end}',
  'thick places do not make up for thin ones: a thicker sample counts as this much above':
    'los lugares gruesos no compensan los delgados: una muestra más gruesa cuenta solo con esto de más',
  'tie bars are usually of this size': 'las barras de amarre suelen ser de este tamaño',
  'tie bars are usually so far apart': 'las barras de amarre suelen ir con esta separación',
  'two at each end': 'dos en cada extremo',
  'two keep a board from turning': 'dos evitan que una tabla gire',
  'two thirds of the yield strength of grade {grade}': 'dos tercios de la fluencia del grado {grade}',
  'water that shallow dries off by itself': 'agua tan poco profunda se seca sola',
  'what crews find; sources tell a footprint of {depth} and no hours':
    'lo que ven las cuadrillas; las fuentes hablan de una huella de pie de {depth} y de ninguna hora',
  'what fills the line is washed out and lost; it comes back into the forms only where the crew pushes it out with a sponge ball while there is room for it':
    'lo que llena la tubería se lava y se pierde; vuelve a la cimbra solo si la cuadrilla lo empuja con una pelota de esponja mientras hay lugar para él',
  'what is commonly allowed for concrete of {bleeding} bleeding':
    'lo que se suele admitir para concreto de sangrado {bleeding}',
  'what stays in the hopper differs with the pump, and its operator knows it':
    'lo que queda en la tolva depende de la bomba, y su operador lo sabe',
  'where it freezes, salt is spread on it or drips from cars sooner or later':
    'donde hiela, tarde o temprano se le echa sal o gotea de los autos',
  'with a threshold given, the rise is taken to be measured to the top of it':
    'si se da un umbral, se supone que la altura se mide hasta su parte de arriba',
  '{material}, {state}: {from} to {to} are met with ({which})':
    '{material}, {state}: se encuentra de {from} a {to} ({which})',
  '{more} more than the dowel': '{more} más que la pasajunta',
  ' of unknown weight': ' de peso desconocido',
  'clean stone': 'piedra limpia',
  'crushed concrete': 'concreto triturado',
  'crushed stone': 'piedra triturada',
  'crusher run': 'piedra triturada sin cribar',
  'earth and gravel': 'tierra y grava',
  'graded base': 'base graduada',
  'range from memory': 'intervalo de memoria',
  'range partly from memory': 'intervalo en parte de memoria',
  'vibratory roller': 'rodillo vibratorio',
  '1% of the way around': '1% de todo el contorno',
  '2 sides': '2 lados',
  '{corners} corners as their nearest probe': '{corners} esquinas como su sondeo más cercano',
  'a windbreak leaves {wind} of the wind': 'un rompevientos deja {wind} del viento',
  'a windbreak leaves {wind} of the wind, concrete comes {concrete} cooler':
    'un rompevientos deja {wind} del viento, el concreto llega {concrete} más fresco',
  'a windbreak leaves {wind} of the wind, fog brings the air over the slab to {humidity}, concrete comes {concrete} cooler, an early hour has air {air} cooler with the same water in it':
    'un rompevientos deja {wind} del viento, la neblina lleva el aire sobre la losa a {humidity}, el concreto llega {concrete} más fresco, a una hora temprana el aire está {air} más fresco con la misma agua',
  'an even trapezoid': 'un trapecio isósceles',
  'as deep as high': 'tan hondo como alto',
  'every diagonal lies inside': 'todas las diagonales quedan dentro',
  'halfway up': 'a media altura',
  'opens at 50% to 70% of initial set, closes at 130%':
    'se abre al 50% a 70% del fraguado inicial, se cierra al 130%',
  'opens at 50% to 70% of initial set, closes at initial set':
    'se abre al 50% a 70% del fraguado inicial, se cierra con el fraguado inicial',
  'the earlier half': 'la primera mitad',
  'the later half': 'la segunda mitad',
  'the middle half': 'la mitad de en medio',
  upright: 'a plomo',
  'what the load before takes to place': 'lo que tarda en colocarse la carga anterior',
  '{aggregateSize} counts as the smaller': '{aggregateSize} cuenta como la menor',
  '{least}, and {swale} by a building': '{least}, y {swale} junto a un edificio',
  '{set} after placing': '{set} después de colocar',
  '{slump} counts as the wetter': '{slump} cuenta como el más húmedo',
  '{sum} less twice the riser': '{sum} menos dos peraltes',
  'the shortest ramp under these rules; flatter leaves room for what the forms are off':
    'la rampa más corta según estas reglas; menos empinada deja lugar para lo que se desvíen las cimbras',
  'the least length of a landing under these rules': 'el largo mínimo de un descanso según estas reglas',
  'a new ramp of the USA; other countries have flatter ones':
    'una rampa nueva de EE. UU.; otros países las tienen menos empinadas',
};
