/** Spanish of what to watch out for: the order, the trucks and the saw. */
import type { Language } from '../../report/show';

export const cautionsPour: Language = {
  '{actual} is little for {what}, where at least {limit} is usual: measure the depth to the base or the holes as they really are, or order more':
    '{actual} es poco para {what}, donde lo usual es al menos {limit}: mida la profundidad hasta la base o los hoyos como son en realidad, o pida más',
  'a bag heavier than {limit} is more than one person should lift again and again; lift it in pairs, or buy smaller bags':
    'un saco de más de {limit} es más de lo que una persona debe levantar una y otra vez; levántelo entre dos, o compre sacos más chicos',
  'a load is below the least that the supplier carries without a charge; ask what it costs':
    'una carga es menor que lo mínimo que el proveedor lleva sin recargo; pregunte cuánto cuesta',
  'a truck is at the site for up to {actual}, and {limit} are free: {over} are charged in all. Place faster, with more people, buggies or a pump, or order smaller loads':
    'un camión está en la obra hasta {actual}, y {limit} son gratis: en total se cobran {over}. Cuele más rápido, con más gente, buggies o una bomba, o pida cargas más chicas',
  'an allowance above {limit} is more than usual for {what}; it is the share added on top, so a factor of 1.08 is 8%':
    'un margen de más de {limit} es más de lo usual para {what}; es la parte que se añade, así que un factor de 1.08 es 8%',
  'have a lined pit or a tub ready before the first truck: water from washing out is caustic and may not run onto the street or the base, into a drain or into water; ask what the local rules want':
    'tenga lista una fosa forrada o una tina antes del primer camión: el agua del lavado es cáustica y no debe correr a la calle ni a la base, a un desagüe ni a cuerpos de agua; pregunte qué piden las normas locales',
  'load {load} brings {actual}, less than a quarter of the largest: most suppliers charge more for it, so ask, or make the loads more even':
    'la carga {load} trae {actual}, menos de un cuarto de la mayor: la mayoría de los proveedores cobran más por ella, así que pregunte, o haga las cargas más parejas',
  'load {load} is for {actual}, and concrete is sold in steps of {step}: the plant makes it the next step up or down, so give increment and order loads that can be bought':
    'la carga {load} es por {actual}, y el concreto se vende en incrementos de {step}: la planta la hace del incremento siguiente hacia arriba o hacia abajo, así que indique increment (incremento) y pida cargas que se puedan comprar',
  'look up before the boom is unfolded: keep boom, hose and everyone at them at least {clear} from every power line until its owner says otherwise, have one person do nothing but watch it, and set the outriggers on firm ground away from trenches':
    'mire hacia arriba antes de desplegar la pluma: mantenga la pluma, la manguera y a todos los que estén junto a ellas al menos a {clear} de toda línea eléctrica mientras su dueño no diga otra cosa, ponga a una persona que no haga más que vigilar, y apoye los estabilizadores en suelo firme lejos de zanjas',
  'more than {limit} is much for bags: the first of {bags} sets before the last is mixed, and the pour gets a cold joint. Ask for a part load from a plant, or plan construction joints and enough mixers':
    'más de {limit} es mucho para sacos: el primero de {bags} fragua antes de que se mezcle el último, y al colado le queda una junta fría. Pida una carga parcial a una planta, o planee juntas de construcción y suficientes mezcladoras',
  'nothing is allowed for waste, spillage and an uneven base; published texts add 5% to 10%':
    'no se añade nada por desperdicio, derrames y base dispareja; los textos publicados añaden de 5% a 10%',
  'nothing is allowed for waste, spillage and earth that is never cut as drawn; for {what} at least {limit} is usual':
    'no se añade nada por desperdicio, derrames y tierra que nunca se corta como en el plano; para {what} lo usual es al menos {limit}',
  'one more truck is for {actual} above {lower} in full loads, less than any measuring of the job can know: check the measurements again':
    'un camión más es por {actual} sobre {lower} en cargas completas, menos de lo que puede saber cualquier medición del trabajo: revise otra vez las medidas',
  'one more truck is for {actual} above {lower} in full loads, less than any measuring of the job can know: check the measurements again, or order {lower} and measure what is left before the last truck is sent':
    'un camión más es por {actual} sobre {lower} en cargas completas, menos de lo que puede saber cualquier medición del trabajo: revise otra vez las medidas, o pida {lower} y mida lo que falta antes de que salga el último camión',
  'only {actual} of the {limit} in which the cuts are due are working time: see that the cutting fits, or arrange for people and lights to stay':
    'solo {actual} de las {limit} en que tocan los cortes son tiempo de trabajo: vea que el corte quepa, o disponga que se queden gente y luces',
  'set times are printed for concrete from {from} to {to}; at {actual} the rule is stretched, so go by a footprint and a trowel, not by the clock':
    'los tiempos de fraguado están publicados para concreto de {from} a {to}; a {actual} se estira la regla, así que guíese por una huella del pie y una llana, no por el reloj',
  'slurry of a wet saw is as caustic as wet concrete: keep it off skin and eyes, and out of drains, gutters and lawns. Vacuum it up before it dries to dust, and take it to where concrete is washed out':
    'el lodo de la sierra con agua es tan cáustico como el concreto fresco: evite que toque piel y ojos, o llegue a desagües, cunetas y céspedes. Aspírelo antes de que se seque y se haga polvo, y llévelo a donde se lavan los residuos de concreto',
  'a line of this bore takes stone up to a third of it, {limit}: larger stone plugs it. Take a wider line, or a mix of small stone that the operator of the pump agrees to':
    'una tubería de este diámetro admite piedra de hasta un tercio de él, {limit}: la piedra más grande la tapa. Use una tubería más ancha, o una mezcla de piedra chica con la que esté de acuerdo el operador de la bomba',
  'the chute lies at {actual}, flatter than {limit}: concrete of an ordinary slump does not run down it. Raise the truck or take fewer extensions; water that makes it run is lost strength':
    'el canalón queda a {actual}, más plano que {limit}: por él no baja concreto de revenimiento común. Suba el camión o use menos extensiones; el agua que lo hace correr es resistencia perdida',
  'the chute lies at {actual}, steeper than {limit}: stones run ahead of the mortar, and the load comes down with a rush. Lay it flatter, and keep a baffle or a drop pipe at its end':
    'el canalón queda a {actual}, más empinado que {limit}: las piedras corren delante del mortero y la carga baja de golpe. Póngalo más tendido, y tenga un deflector o un tubo de bajada en su extremo',
  'the chute reaches {limit} and the farthest concrete goes {actual} from the truck: find a firm place nearer, or have a buggy, wheelbarrows or a pump there. Concrete is not to be dragged or raked so far':
    'el canalón alcanza {limit} y el concreto más lejano queda a {actual} del camión: busque un lugar firme más cercano, o tenga ahí un buggy, carretillas o una bomba. El concreto no se arrastra ni se rastrilla tan lejos',
  'the concrete may be ready as late as {actual} after placing, though by the weather the cuts should be done {limit} after placing: watch the slab from then on, cut as soon as a trial cut holds, and ask the supplier about the mix':
    'el concreto puede estar listo apenas {actual} después del colado, aunque por el clima los cortes deben quedar hechos {limit} después del colado: vigile la losa desde entonces, corte en cuanto aguante un corte de prueba, y pregunte al proveedor por la mezcla',
  'the cuts are due between {from} and {to}, and too little of that is working time; the next morning is too late. Keep a crew with proper lights for those hours, or place earlier, or cut a morning placement the same day with an early-entry saw':
    'los cortes tocan entre {from} y {to}, y muy poco de eso es tiempo de trabajo; la mañana siguiente es demasiado tarde. Deje una cuadrilla con buenas luces para esas horas, o cuele más temprano, o corte el colado de la mañana el mismo día con sierra de corte temprano',
  'the cutting takes {actual} and fits only if the concrete is ready early: ready in the middle of its hours, {limit} of working time are left. Have a second saw or a late crew at hand':
    'el corte toma {actual} y solo cabe si el concreto está listo temprano: si está listo a la mitad de sus horas, quedan {limit} de tiempo de trabajo. Tenga a la mano otra sierra o una cuadrilla de la tarde',
  'the cutting takes {actual} and the window is open for {limit}, night included: joints cut late crack beside the cut. Bring more saws, or place less at a time':
    'el corte toma {actual} y el plazo está abierto {limit}, contando la noche: las juntas cortadas tarde se agrietan junto al corte. Traiga más sierras, o cuele menos de una vez',
  'the driver sees nobody behind a reversing truck: one person in a bright vest guides each in, in sight of the mirrors, and everyone else stays clear; nobody stands between truck and forms, and the truck keeps back from trenches and fresh walls and off base that it ruts':
    'el chofer no ve a nadie detrás de un camión en reversa: una persona con chaleco de color vivo guía a cada uno, a la vista de los espejos, y todos los demás se apartan; nadie se para entre el camión y la cimbra, y el camión se mantiene lejos de zanjas y muros frescos y fuera de una base que marcaría con sus ruedas',
  'the hose of a pump whips when air or a plug comes through, at the start and after every stop: nobody stands near its end or under a boom then, and only the operator opens a line under pressure. What primed the line goes into a tub and not into the forms':
    'la manguera de la bomba da latigazos cuando pasa aire o un tapón, al empezar y después de cada paro: nadie se para entonces cerca de su extremo ni bajo la pluma, y solo el operador abre una línea con presión. Lo que cebó la línea va a una tina y no a la cimbra',
  'the hours are guides: make a trial cut. Edges that ravel mean too early; a crack that runs ahead of the blade means too late. Where a crack has formed near a line, leave that cut out':
    'las horas son una guía: haga un corte de prueba. Bordes que se desmoronan indican demasiado temprano; una grieta que corre delante del disco indica demasiado tarde. Donde ya se formó una grieta cerca de una línea, no haga ese corte',
  'the only load is less than a quarter of a truck; most suppliers charge more for so little, so ask, or pour something else on the same day':
    'la única carga es menos de un cuarto de camión; la mayoría de los proveedores cobra más por tan poco, así que pregunte, o cuele otra cosa el mismo día',
  'the last load is less than a quarter of a truck; most suppliers charge more for it, so ask, or split the order evenly':
    'la última carga es menos de un cuarto de camión; la mayoría de los proveedores cobran más por ella, así que pregunte, o divida el pedido en cargas iguales',
  'the last step of the order is for {actual} above {lower}, less than any measuring of the job can know: check the measurements again':
    'el último incremento del pedido es por {actual} sobre {lower}, menos de lo que puede saber cualquier medición del trabajo: revise otra vez las medidas',
  'the last step of the order is for {actual} above {lower}, less than any measuring of the job can know: check the measurements again, or order {lower}':
    'el último incremento del pedido es por {actual} sobre {lower}, menos de lo que puede saber cualquier medición del trabajo: revise otra vez las medidas, o pida {lower}',
  'wet concrete burns skin and eyes: wear gloves, boots and eye protection, and wash it off at once':
    'el concreto fresco quema piel y ojos: use guantes, botas y protección de ojos, y lávese de inmediato',
  'wheelbarrows and hand carts are for up to about {limit}; for {actual} take power buggies or a pump':
    'carretillas y carros de mano son para hasta unos {limit}; para {actual} use buggies con motor o una bomba',
};
