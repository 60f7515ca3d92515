/** What to watch out for on the day of a pour: finish and set, rain, light, heat and cold. */
import type { Language } from '../../report/show';

export const cautionsDay: Language = {
  'the finish is to begin {actual} after the first concrete; begun later than {limit} after it the finishers come to the last of it when {hard}. Begin as soon as the surface bears':
    'el acabado ha de comenzar {actual} después del primer concreto; si comienza más de {limit} después, los acabadores llegan a lo último cuando {hard}. Comience en cuanto la superficie aguante',
  'the broom leaves no mark': 'la escoba ya no marca',
  'a float works the water in, and the surface dusts and scales':
    'la llana de madera mete el agua, y la superficie suelta polvo y se descama',
  'a trowel seals the water in: the skin blisters and flakes off':
    'la llana encierra el agua: la capa se ampolla y se desprende',
  'floated and broomed in its water the surface scales and dusts':
    'flotada y escobillada en su agua, la superficie se descama y suelta polvo',
  'water thins the retarder, and the stones come loose':
    'el agua diluye el retardante, y las piedras se sueltan',
  'salt melts into the water, and the top scales':
    'la sal se disuelve en el agua, y la superficie se descama',
  'prints come out shallow, and the skin tears': 'los estampados salen sin fondo, y la capa se rasga',
  'stamped in its water the color streaks, the prints slump and the top scales':
    'estampado en su agua, el color se corre, los estampados se hunden y la superficie se descama',
  'the hours are guides: begin by the surface, with no sheen anywhere and a footprint no deeper than {depth}, and look in the shade too, which comes later than the sun':
    'las horas son una guía: comience según la superficie, sin brillo en ninguna parte y con una huella no más honda que {depth}, y mire también en la sombra, que tarda más que el sol',
  'the finish may be done {actual} after the first concrete, at {clock}, and daylight lasts for {limit} of it: begin earlier, have the mix accelerated, or have lights low along the slab so that sheen and ridges show':
    'el acabado puede terminar {actual} después del primer concreto, a las {clock}, y la luz del día alcanza para {limit}: comience antes, pida la mezcla acelerada, o ponga luces bajas a lo largo de la losa para que se vean el brillo y los bordos',
  'at {actual}, below {limit}, and with wet gloves and boots, hands and feet freeze: dry changes, a warm place to go to, work in pairs, and an eye for shivering and slurred words':
    'a {actual}, por debajo de {limit}, y con guantes y botas mojados, se congelan manos y pies: ropa seca para cambiarse, un lugar caliente adonde ir, trabajo en pareja, y cuidado con quien tiemble o hable arrastrando las palabras',
  'air that is or was down to {actual} before the pour may have frozen the ground: drive a rod into it in the shade and along the edges before the truck is called, and keep blankets on it until then':
    'aire que está o bajó a {actual} antes del colado pudo congelar el suelo: clave una varilla en la sombra y por las orillas antes de llamar al camión, y téngalo cubierto con mantas hasta entonces',
  'the finish is to begin {actual} after the first concrete, and the bleed water is likely to lie there until {limit} after it, {clock} by the clock: {works}. Wait until the sheen is gone; on a cool damp day drag the water off with a hose, and never trowel it in or dust it with cement':
    'el acabado ha de comenzar {actual} después del primer concreto, y es probable que el agua de sangrado siga ahí hasta {limit} después, las {clock}: {works}. Espere a que se vaya el brillo; en un día fresco y húmedo quite el agua arrastrando una manguera, y nunca la meta con llana ni le eche cemento',
  'the surface dries at {actual}, more than the {limit} that is safe: concrete warmer than the air cracks while it is soft in the cold too. Before the truck comes put up windbreaks or an enclosure; sheet what is not being worked, cover it for good as soon as it bears that, and have the concrete no warmer than cold weather asks for. Spray no water where it may freeze. A dull surface may still be bleeding beneath':
    'la superficie se seca a {actual}, más que los {limit} que son seguros: el concreto más caliente que el aire se agrieta en fresco también con frío. Antes de que llegue el camión ponga cortavientos o un recinto; cubra con plástico lo que no se trabaje, cúbralo del todo en cuanto lo aguante, y no pida el concreto más caliente de lo que pide el frío. No rocíe agua donde pueda helarse. Una superficie opaca puede seguir sangrando por debajo',
  'at {actual}, more than {limit}, the top dries and seems set while it is soft below: it moves like rubber under the tool, more so with air in it. Cover it with wet burlap behind the bull float and uncover a little at a time; do not seal it early':
    'a {actual}, más que {limit}, la capa de arriba se seca y parece fraguada mientras abajo está blanda: se mueve como hule bajo la herramienta, más si lleva aire. Cúbrala con yute mojado detrás de la llana larga y destape poco a poco; no la selle antes de tiempo',
  'stones are to be washed free between {from} and {to}, and of these {limit} only {actual} are working time by daylight: washed too late they stay under their paste. Begin at another hour, have a retarder that holds longer, as its maker says, or a crew with lights, hoses and brushes there':
    'las piedras se han de lavar entre las {from} y las {to}, y de esas {limit} solo {actual} son de jornada con luz de día: lavadas demasiado tarde se quedan bajo su pasta. Comience a otra hora, pida un retardante que aguante más, según diga su fabricante, o tenga ahí una cuadrilla con luces, mangueras y cepillos',
  'the crew may leave {actual} after the first concrete, at {clock}, and working hours end after {limit}: begin earlier, place less, or agree beforehand who stays for finish, curing and saw':
    'la cuadrilla puede salir {actual} después del primer concreto, a las {clock}, y la jornada termina después de {limit}: comience antes, coloque menos, o acuerde de antemano quién se queda para acabado, curado y corte',
  'concrete at {actual} is colder than {limit}: it sets late, bleeds long and dusts, and freezes sooner. Ask the plant for hot water':
    'el concreto a {actual} está más frío que {limit}: fragua tarde, sangra mucho tiempo y suelta polvo, y se congela antes. Pida agua caliente a la planta',
  'the surface dries at {actual}, more than the {limit} that is safe: it cracks while it is soft. Before the truck comes put up windbreaks and dampen the base; fog the air over the slab, spread an evaporation retarder after strike-off and between passes, sheet what is not being worked, in the sun with white sheets, since clear and black ones heat it, and cure at once. A dull surface may still be bleeding beneath':
    'la superficie se seca a {actual}, más que los {limit} que son seguros: se agrieta mientras está blanda. Antes de que llegue el camión ponga cortavientos y humedezca la base; haga neblina sobre la losa, aplique un retardante de evaporación después de enrasar y entre pasadas, cubra con plástico lo que no se trabaje, al sol con plástico blanco, porque el transparente y el negro lo calientan, y cure enseguida. Una superficie opaca puede seguir sangrando por debajo',
  'concrete at {actual} is hotter than the {limit} commonly allowed: it stiffens early, wants more water, cracks, and ends weaker. Cool the mix or place in the cool of the day':
    'el concreto a {actual} está más caliente que los {limit} que suelen permitirse: se endurece pronto, pide más agua, se agrieta y queda más débil. Enfríe la mezcla o coloque a la hora fresca del día',
  'finishers that keep up with the set: {limit}; in this plan: {actual}, enough only if the concrete is slow: the last placed is hard before they are at it. Have more hands, place less at a time behind a bulkhead, or have the supplier retard the mix and say for how long':
    'acabadores que van al paso del fraguado: {limit}; en este plan: {actual}, que bastan solo si el concreto es lento: lo último colocado está duro antes de que lleguen. Consiga más manos, coloque menos a la vez contra un tope, o pida la mezcla retardada y que digan por cuánto tiempo',
  'finishers that keep up with the set: {limit}; in this plan: {actual}, too few for this concrete: the last placed is hard before they are at it. Have more hands, place less at a time behind a bulkhead, or have the supplier retard the mix and say for how long':
    'acabadores que van al paso del fraguado: {limit}; en este plan: {actual}, muy pocos para este concreto: lo último colocado está duro antes de que lleguen. Consiga más manos, coloque menos a la vez contra un tope, o pida la mezcla retardada y que digan por cuánto tiempo',
  'what is placed first is ready after {actual}, while placing goes on for {limit}: finishing needs people of its own, who do not place':
    'lo primero colocado está listo después de {actual}, mientras se sigue colocando por {limit}: el acabado necesita gente propia, que no coloque',
  'at {actual} people fall ill from heat: water, shade and rest every hour, easy first days for new hands, and someone who watches for confusion and fainting, which need an ambulance':
    'a {actual} la gente se enferma de calor: agua, sombra y descanso cada hora, primeros días suaves para los nuevos, y alguien que vigile si hay confusión o desmayo, que piden ambulancia',
  'it rains when the first concrete is to be placed: hold the trucks until it has passed, and sweep the water off the base and out of the forms before any concrete goes in':
    'llueve cuando se va a colocar el primer concreto: detenga los camiones hasta que pase, y barra el agua de la base y de las cimbras antes de que entre concreto',
  'it is dark when the first concrete comes, and the finish is done at {clock}: have lights for the truck and the way to it, lights low along the slab so that sheen and ridges show, bright vests on everyone, and ask whether plant and neighbors bear work at night':
    'está oscuro cuando llega el primer concreto, y el acabado termina a las {clock}: tenga luces para el camión y su camino, luces bajas a lo largo de la losa para que se vean el brillo y los bordos, chalecos brillantes para todos, y pregunte si la planta y los vecinos aceptan trabajo de noche',
  'rain is expected {actual} after the first concrete, before the last is placed at {limit}: hold the trucks until it has passed. If it comes all the same, cover at once so that it runs off clear of the slab, end at a bulkhead, and pour no more; water that stood on it is pushed off before anything touches it':
    'se espera lluvia {actual} después del primer concreto, antes de colocar lo último a los {limit}: detenga los camiones hasta que pase. Si llega de todos modos, cubra enseguida para que el agua escurra fuera de la losa, termine en un tope y no cuele más; el agua que quedó encima se quita antes de que algo toque la superficie',
  'rain is expected {actual} after the first concrete, and the last is soft until {limit} after it: have plastic and lumber for all of it on site before the truck comes, cover at once so that water runs off clear of the slab, and finish under a movable shelter a small part at a time. Never work rain into the surface or dry it with cement':
    'se espera lluvia {actual} después del primer concreto, y lo último está blando hasta {limit} después: tenga plástico y madera para todo en la obra antes de que llegue el camión, cubra enseguida para que el agua escurra fuera de la losa, y acabe bajo un techo movible, una parte pequeña a la vez. Nunca meta la lluvia en la superficie ni la seque con cemento',
  'the finish is to begin {actual} after the first concrete, and sheen was still seen {limit} after it: {works}. Nothing touches the surface while it shines':
    'el acabado ha de comenzar {actual} después del primer concreto, y todavía se vio brillo {limit} después: {works}. Nada toca la superficie mientras brilla',
  'the finish is to begin {actual} after the first concrete, and what was placed first may close {limit} after it: {hard}. Begin as soon as it bears, and have a coarser finish agreed on for what is past it; no water and no paste to bring it back':
    'el acabado ha de comenzar {actual} después del primer concreto, y lo primero colocado puede cerrarse {limit} después: {hard}. Comience en cuanto aguante, y tenga acordado un acabado más tosco para lo que ya pasó; ni agua ni pasta para revivirlo',
  'the chart that the one equation was fitted to ends before what is given here, {places}: hold it against the figure by the pressures of vapor, and go by the larger':
    'la gráfica a la que se ajustó la ecuación termina antes de lo que se da aquí, {places}: compárelo con la cifra por presiones de vapor, y guíese por la mayor',
  'with the wind broken and the concrete no warmer than it has to be the surface still dries at {actual}, more than {limit}: place in an enclosure whose heater is vented outdoors, or wait for a calmer or milder day':
    'con el viento cortado y el concreto no más caliente de lo necesario la superficie aún se seca a {actual}, más que {limit}: coloque en un recinto cuyo calentador saque el escape afuera, o espere un día más tranquilo o más templado',
  'the concrete is so much colder than the moist air that dew settles on it: wait until it is gone, and do not work it into the surface; setting will be slow':
    'el concreto está tanto más frío que el aire húmedo que se le asienta rocío: espere a que se vaya, y no lo meta en la superficie; el fraguado será lento',
  'the surface dries at {actual}, and the estimate may be 40% low: the limit of {limit} can be passed. Have windbreaks, fog and an evaporation retarder at hand, and measure again when the concrete comes':
    'la superficie se seca a {actual}, y la estimación puede quedar 40% corta: se puede pasar el límite de {limit}. Tenga a la mano cortavientos, neblina y retardante de evaporación, y mida otra vez cuando llegue el concreto',
  'the surface dries at {actual}, and the estimate may be 40% low: the limit of {limit} can be passed. Have windbreaks and sheets at hand, and measure again when the concrete comes':
    'la superficie se seca a {actual}, y la estimación puede quedar 40% corta: se puede pasar el límite de {limit}. Tenga a la mano cortavientos y plásticos, y mida otra vez cuando llegue el concreto',
  'one layer of blankets holds a slab to about {limit}, and {actual} is coming: lay a second one, lapped over the joints of the first, and watch a thermometer beneath at an edge':
    'una capa de mantas sostiene una losa hasta unos {limit}, y vienen {actual}: ponga una segunda, traslapada sobre las uniones de la primera, y vigile un termómetro debajo, en una orilla',
  'below {limit}, as the {actual} that is coming, blankets alone do not hold a slab: it takes a heated enclosure, or milder days':
    'por debajo de {limit}, como los {actual} que vienen, las mantas solas no sostienen una losa: hace falta un recinto calentado, o días más templados',
  'concrete at {actual} is colder than the {limit} that a section so thin is placed and kept at, whatever the air is: hold the truck, and have the next load come hotter':
    'el concreto a {actual} está más frío que los {limit} a los que se coloca y se mantiene una sección tan delgada, sea como sea el aire: detenga el camión, y pida la siguiente carga más caliente',
  '{actual} is coming, below {limit}, and nothing covers the slab: have blankets there before the truck, lay them as soon as they leave no mark, tuck edges and corners in, and keep them on for the days of protection':
    'vienen {actual}, por debajo de {limit}, y nada cubre la losa: tenga mantas ahí antes que el camión, póngalas en cuanto no marquen, meta orillas y esquinas, y déjelas los días de protección',
  'no concrete on frozen ground: it has heaved and drops when it thaws, the bottom of the slab sets late while the top crusts, and it may freeze. Cover the ground with blankets days ahead or heat it, and see that it is thawed through':
    'nada de concreto sobre suelo congelado: se ha levantado y se baja al deshelarse, el fondo de la losa fragua tarde mientras arriba hace costra, y puede congelarse. Cubra el suelo con mantas días antes o caliéntelo, y vea que esté deshelado del todo',
  'a heater that burns fuel and vents into an enclosure fills it with carbon monoxide, which kills without a warning, and with carbon dioxide, which turns the surface of young concrete to dust: vent it outdoors or heat with electricity or hot water, air the tent before anyone goes in, and hang up an alarm':
    'un calentador que quema combustible y saca el escape dentro del recinto lo llena de monóxido de carbono, que mata sin avisar, y de dióxido de carbono, que hace polvo la superficie del concreto joven: saque el escape afuera o caliente con electricidad o agua caliente, ventile la carpa antes de que alguien entre, y cuelgue una alarma',
  'what carries its full load early is protected until its strength has been found, which the engineer says and no table':
    'lo que lleva pronto toda su carga se protege hasta que se conozca su resistencia, que la dice el ingeniero y ninguna tabla',
  'concrete at {actual} is warmer than {limit}, far above the least: it dries and cools faster and cracks sooner. Ask for it a little cooler':
    'el concreto a {actual} está más caliente que {limit}, muy por encima del mínimo: se seca y se enfría más rápido y se agrieta antes. Pídalo un poco más fresco',
  '{planned} after {actual}, and the strength for it comes after {from} by the faster curve and {limit} by the slower, kept as warm as it is: wait until then, keep the slab warmer, order a mix that is stronger early, or have the strength found in the slab itself':
    '{planned} a los {actual}, y la resistencia para eso llega a los {from} por la curva más rápida y a los {limit} por la más lenta, a la temperatura que tiene: espere hasta entonces, mantenga la losa más caliente, pida una mezcla de alta resistencia temprana, o mida la resistencia en la losa misma',
  '{actual} before frost and salt is less than the {limit} above freezing, dried, that new concrete wants: no salt on it this winter, sand instead, and say so to the owner in writing; or place in spring':
    '{actual} antes de heladas y sal es menos que los {limit} sin heladas, ya seco, que pide el concreto nuevo: nada de sal este invierno, arena en su lugar, y dígaselo al dueño por escrito; o coloque en primavera',
  'concrete at {actual} is above the {limit} that specifications allow at most: do not place it, ask for ice or chilled water, or place in the cool of the day':
    'el concreto a {actual} pasa de los {limit} que las especificaciones permiten como máximo: no lo coloque, pida hielo o agua fría, o coloque a la hora fresca del día',
  'the air is at {actual}, below {limit}, while the concrete is soft, for up to {until} after the first of it: it freezes from the edges and the top before it has set, and loses up to half of its strength. Wait for milder days, or have an enclosure that is heated without fumes there before the truck, the mix warm and accelerated, and blankets for the hour that it bears them':
    'el aire está a {actual}, por debajo de {limit}, mientras el concreto está fresco, hasta {until} después del primero: se congela desde los bordes y la superficie antes de fraguar, y pierde hasta la mitad de su resistencia. Espere días más templados, o tenga antes de que llegue el camión un cerramiento calentado sin humos, la mezcla caliente y acelerada, y cobijas para la hora en que las aguante',
};
