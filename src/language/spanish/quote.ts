/** A customer's quote: what is done, the price and when it is paid, what it counts on, and how new concrete is used. */
import type { Language } from '../../report/show';

export const quote: Language = {
  Quote: 'Presupuesto',
  From: 'De',
  For: 'Para',
  Where: 'Lugar',
  'Total price': 'Precio total',
  'This price stands until': 'Este precio vale hasta',
  'What will be done': 'Trabajo que se hará',
  'Dig out {depth} deep, {volume} of earth': 'Excavar {depth} de profundidad, {volume} de tierra',
  'Dig out {volume} of earth': 'Excavar {volume} de tierra',
  'Dig out {depth} deep, {volume} of earth, and take it away':
    'Excavar {depth} de profundidad, {volume} de tierra, y llevársela',
  'Dig out {volume} of earth, and take it away': 'Excavar {volume} de tierra y llevársela',
  'Dig out {depth} deep, {volume} of earth, and take away what is not filled in again':
    'Excavar {depth} de profundidad, {volume} de tierra, y llevarse lo que no se vuelva a rellenar',
  'Dig out {volume} of earth, and take away what is not filled in again':
    'Excavar {volume} de tierra y llevarse lo que no se vuelva a rellenar',
  'Lay {depth} of gravel on {area} and compact it': 'Tender {depth} de grava en {area} y compactarla',
  'Lay a sheet against damp and tape its seams':
    'Tender una lámina contra la humedad y sellar sus uniones con cinta',
  'Pour a slab of {length} by {width}, {area}, {thickness} thick':
    'Colar una losa de {length} por {width}, {area}, de {thickness} de espesor',
  'Pour a slab of {length} by {width}, {area}': 'Colar una losa de {length} por {width}, {area}',
  'Pour a slab of {area}, {thickness} thick': 'Colar una losa de {area}, de {thickness} de espesor',
  'Pour a slab of {length} by {width}, {area}, {least} to {most} thick':
    'Colar una losa de {length} por {width}, {area}, de {least} a {most} de espesor',
  'Pour a slab of {area}, {least} to {most} thick':
    'Colar una losa de {area}, de {least} a {most} de espesor',
  'Pour a slab of {area}': 'Colar una losa de {area}',
  'Reinforce it with steel bars {bar}, {spacing} apart':
    'Reforzarla con varillas de acero {bar}, cada {spacing}',
  'Reinforce it with steel bars': 'Reforzarla con varillas de acero',
  'Reinforce it with welded wire mesh': 'Reforzarla con malla electrosoldada',
  'Mix fibers into the concrete': 'Agregar fibras al concreto',
  'Cover it with blankets against frost': 'Cubrirla con mantas contra la helada',
  'Covers against frost are in the price where it says so above. More of them, and heat, are extra.':
    'Las cubiertas contra la helada están en el precio donde se dice arriba. Más cubiertas, y el calor, van aparte.',
  'Supply {what}': 'Suministrar {what}',
  'Supply {what}: {much}': 'Suministrar {what}: {much}',
  'Tie it with steel dowels to the concrete beside it':
    'Unirla con pasajuntas de acero al concreto de al lado',
  'Slope it so that water runs away from the building: it falls {drop} in all':
    'Darle pendiente para que el agua se aleje del edificio: baja {drop} en total',
  'Slope it so that water runs off: it falls {drop} in all':
    'Darle pendiente para que el agua escurra: baja {drop} en total',
  'Cut {length} of joints into it, {panels} panels, so that it cracks in them and not beside them':
    'Cortarle {length} de juntas, {panels} tableros, para que se agriete en ellas y no al lado',
  'Cut {length} of joints into it, {panels} panels, so that it cracks in them and not beside them; set a soft joint of {along} where it meets what stands':
    'Cortarle {length} de juntas, {panels} tableros, para que se agriete en ellas y no al lado; poner una junta blanda de {along} donde toca lo que ya existe',
  'Set a soft joint of {along} where it meets what stands':
    'Poner una junta blanda de {along} donde toca lo que ya existe',
  'Cure and treat its surface': 'Curar y tratar su superficie',
  'Color, cure and treat its surface': 'Dar color, curar y tratar su superficie',
  'Fill in along the edges, spread topsoil and seed it':
    'Rellenar a lo largo de los bordes, tender tierra vegetal y sembrarla',
  'Fill in along the edges and spread topsoil': 'Rellenar a lo largo de los bordes y tender tierra vegetal',
  'Fill in along the edges and seed': 'Rellenar a lo largo de los bordes y sembrar',
  'Fill in along the edges': 'Rellenar a lo largo de los bordes',
  '{count} alike, each as follows': '{count} iguales, cada uno como sigue',
  '{count} alike, figures of one': '{count} iguales, cifras de uno',
  'Concrete of a strength of {strength}': 'Concreto con una resistencia de {strength}',
  'Form and pour steps {width} wide that rise {rise}':
    'Cimbrar y colar escalones de {width} de ancho que suben {rise}',
  'Form and pour steps that rise {rise}': 'Cimbrar y colar escalones que suben {rise}',
  'Form and pour walls with {volume} of concrete': 'Cimbrar y colar muros con {volume} de concreto',
  'Form and pour curb with {volume} of concrete': 'Cimbrar y colar guarnición con {volume} de concreto',
  'Pour piers with {volume} of concrete': 'Colar pilas con {volume} de concreto',
  'Pour footings with {volume} of concrete': 'Colar zapatas con {volume} de concreto',
  Price: 'Precio',
  price: 'precio',
  total: 'total',
  Prices: 'Precios',
  'No tax is added to this price.': 'A este precio no se le suma ningún impuesto.',
  'These are parts of one price. What is left out, or done by itself, is priced anew.':
    'Son partes de un solo precio. Lo que se quite, o se haga por separado, se cotiza de nuevo.',
  'Tax on what we buy for the work is in the price. None is added to it.':
    'El impuesto sobre lo que compramos para la obra está en el precio. No se le suma ninguno.',
  'Tax, {rate}': 'Impuesto, {rate}',
  tax: 'impuesto',
  'price before tax': 'precio antes del impuesto',
  Options: 'Opciones',
  'less {adds}': 'menos {adds}',
  'plus {adds}': 'más {adds}',
  option: 'opción',
  'changes the price by': 'cambia el precio en',
  'total with it': 'total con ella',
  'Each by itself': 'Cada una por separado',
  'Each by itself, with tax': 'Cada una por separado, con impuesto',
  'Two or more of them together are priced anew before you sign.':
    'Dos o más de ellas juntas se cotizan de nuevo antes de que usted firme.',
  'When it is paid': 'Cuándo se paga',
  Payments: 'Pagos',
  when: 'cuándo',
  'to pay': 'por pagar',
  'the rest, when the work is done': 'el resto, al terminar el trabajo',
  'what was kept back, when the work is accepted': 'lo retenido, al aceptarse el trabajo',
  'kept back': 'retenido',
  '{retainage} of each payment are kept back until the work is accepted.':
    'De cada pago se retiene {retainage} hasta que se acepte el trabajo.',
  Account: 'Cuenta',
  'Changes agreed since': 'Cambios acordados desde entonces',
  change: 'cambio',
  adds: 'suma',
  'contract with its changes': 'contrato con sus cambios',
  'work done to date': 'trabajo hecho hasta hoy',
  'kept back of that': 'retenido de eso',
  'paid before': 'pagado antes',
  'due now': 'por pagar ahora',
  'left to pay after that': 'por pagar después',
  'What the price counts on': 'Con qué cuenta el precio',
  'A concrete truck can come close enough to pour from its chute. A pump, or wheeling the concrete in, is extra.':
    'Un camión de concreto puede acercarse lo bastante para descargar por su canaleta. Una bomba, o llevar el concreto en carretilla, va aparte.',
  'The ground is firm, and at the right height when we come.':
    'El terreno está firme y a la altura correcta cuando lleguemos.',
  'The ground below what is dug out is firm. Soft ground, rock, roots, old concrete or anything buried is extra, at a price agreed before it is touched; so is digging deeper than is said above.':
    'El terreno debajo de lo que se excava está firme. El suelo blando, la roca, las raíces, el concreto viejo o cualquier cosa enterrada van aparte, a un precio acordado antes de tocarlos; también excavar más hondo de lo dicho arriba.',
  'The ground is not frozen. Nothing is placed on frozen ground, and thawing it is extra.':
    'El terreno no está helado. No se cuela nada sobre suelo helado, y deshelarlo va aparte.',
  'The work is done in mild weather. Covers and heat against frost are extra.':
    'El trabajo se hace en clima templado. Las cubiertas y el calor contra las heladas van aparte.',
  'Rain, frost, heat or a strong wind may move the day of the pour: concrete that is placed in them does not last.':
    'La lluvia, la helada, el calor o un viento fuerte pueden cambiar el día del colado: el concreto que se cuela con ellos no dura.',
  'Water and electricity may be drawn on the site.': 'Se puede tomar agua y electricidad en el lugar.',
  'There is firm ground for a concrete truck and its pump, within reach and clear of power lines.':
    'Hay suelo firme para un camión de concreto y su bomba, al alcance y lejos de líneas eléctricas.',
  'A concrete truck can come near, with a firm way to wheel the concrete in.':
    'Un camión de concreto puede acercarse, con un paso firme para llevar el concreto en carretilla.',
  'Bags can be brought near, with room to mix beside the work.':
    'Los sacos pueden llevarse cerca, con lugar para mezclar junto a la obra.',
  'There is a place on the site where what carried the concrete may be rinsed.':
    'Hay en el lugar un sitio donde enjuagar lo que llevó el concreto.',
  'There is a place on the site where the truck may rinse its chute.':
    'Hay en el lugar un sitio donde el camión puede enjuagar su canaleta.',
  'Sizes are those above. What is to be larger, smaller or other than that is agreed in writing before it is done.':
    'Las medidas son las de arriba. Lo que haya de ser más grande, más chico o distinto se acuerda por escrito antes de hacerlo.',
  '{first} and {second} share {area}: the concrete there is counted once.':
    '{first} y {second} comparten {area}: el concreto de ahí se cuenta una sola vez.',
  'Not in the price': 'No está en el precio',
  '{work} (not in the price yet: {lines})': '{work} (aún no está en el precio: {lines})',
  '{name}, for which there is no price yet': '{name}: todavía sin precio',
  '{what}, since not all is known of it yet': '{what}, porque aún no se sabe todo al respecto',
  '{name}: {what}, since not all is known of it yet':
    '{name}: {what}, porque aún no se sabe todo al respecto',
  'Permits, inspections and their fees': 'Permisos, inspecciones y sus cuotas',
  'Engineering, surveying, and tests of the soil or the concrete':
    'Ingeniería, topografía y pruebas del suelo o del concreto',
  'Moving or mending pipes and cables': 'Mover o reparar tubos y cables',
  'Breaking up old concrete or pavement and taking it away': 'Romper concreto o pavimento viejo y llevárselo',
  'Digging out, and taking earth or old concrete away': 'Excavar, y llevarse la tierra o el concreto viejo',
  'Drains, pipes and gutters': 'Drenajes, tubos y canalones',
  'Filling in along the edges, topsoil, seed and planting':
    'Rellenar a lo largo de los bordes, tierra vegetal, semilla y plantas',
  'Sealing or coloring of the surface, unless it is an option above':
    'Sellar o dar color a la superficie, salvo que sea una opción de arriba',
  'Sealing or coloring of the surface': 'Sellar o dar color a la superficie',
  'Handrails and guards, which the local code may ask for':
    'Pasamanos y barandales, que el reglamento local puede exigir',
  'What we ask of you': 'Lo que le pedimos',
  'Show us buried lines of your own, such as sprinklers, gas to a grill, yard lights, a septic tank: those who mark public lines do not mark these.':
    'Muéstrenos las líneas enterradas que sean suyas, como riego, gas para un asador, luces del patio, una fosa séptica: quienes marcan las líneas públicas no marcan estas.',
  'Clear the place and the way to it before we come.':
    'Despeje el lugar y el camino hasta él antes de que lleguemos.',
  'Keep children, pets and everyone else off the forms and the wet concrete, which burns skin and eyes.':
    'Mantenga a niños, mascotas y a todos los demás lejos de las cimbras y del concreto fresco, que quema la piel y los ojos.',
  'Your new concrete': 'Su concreto nuevo',
  'Concrete shrinks as it dries. Joints take most cracks; a fine crack elsewhere may come all the same.':
    'El concreto se encoge al secarse. Las juntas reciben casi todas las grietas; de todos modos puede salir una grieta fina en otra parte.',
  'Color and texture differ a little from load to load and from day to day.':
    'El color y la textura varían un poco de una carga a otra y de un día a otro.',
  'Stay off it for the first day. In weather below {cold} wait longer, and ask us.':
    'No lo pise el primer día. Con temperaturas por debajo de {cold} espere más y pregúntenos.',
  'No cars on it in the first week, and no heavy trucks for four weeks; later in cold weather. What is heavier than it was made for, a loaded truck or a dumpster, may break it at any age.':
    'Sin autos la primera semana y sin camiones pesados por cuatro semanas; más tiempo con frío. Lo que pese más de aquello para lo que se hizo, un camión cargado o un contenedor de basura, puede romperlo a cualquier edad.',
  'No salt or other deicer in the first winter, nor before six weeks above {mild} and dry weather: strew sand.':
    'Ni sal ni otro deshielante el primer invierno, ni antes de seis semanas por encima de {mild} y de tiempo seco: eche arena.',
  'Never use ammonium nitrate or ammonium sulfate on it, which some deicers and fertilizers are made of: they eat concrete.':
    'Nunca le ponga nitrato de amonio ni sulfato de amonio, de los que se hacen algunos deshielantes y fertilizantes: se comen el concreto.',
  'Keep water from washing the ground out along its edges: lead downspouts away, and fill in where it settles.':
    'No deje que el agua se lleve la tierra a lo largo de los bordes: desvíe las bajadas de agua y rellene donde se asiente.',
  'To go ahead': 'Para empezar',
  'Tick the options that you want, sign, and send this back while the price stands: {stands}.':
    'Marque las opciones que quiera, firme y devuelva esto mientras el precio valga: {stands}.',
  'Tick the options that you want, sign, and send this back in time.':
    'Marque las opciones que quiera, firme y devuelva esto a tiempo.',
  'Sign, and send this back while the price stands: {stands}.':
    'Firme y devuelva esto mientras el precio valga: {stands}.',
  'Sign, and send this back in time.': 'Firme y devuelva esto a tiempo.',
  'Ask about anything that you do not understand before you sign. Once both have signed, this is what was agreed; changes are made in writing.':
    'Pregunte lo que no entienda antes de firmar. Cuando ambos hayan firmado, esto es lo acordado; los cambios se hacen por escrito.',
  Name: 'Nombre',
  Signature: 'Firma',
  Date: 'Fecha',
  Customer: 'Cliente',
  Contractor: 'Contratista',
};
