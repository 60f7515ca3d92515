/**
 * Spanish of what to watch out for while trucks come: what is the matter, with what is done about it in the middle.
 * Each of the one goes with several of the other, so the sentences are put together here as they are in English.
 */
import type { Language } from '../../report/show';

type Pair = readonly [english: string, spanish: string];

/** Where a remedy stands in a sentence. */
const REMEDY = '…';

const FEWER: readonly Pair[] = [
  [
    'With {trucks} trucks that each come as the one before is empty none waits for the next',
    'Con {trucks} camiones que lleguen cada uno al vaciarse el anterior nunca se espera al siguiente',
  ],
  ['With {trucks} trucks none waits for the next', 'Con {trucks} camiones nunca se espera al siguiente'],
  ['Have them sent {spacing} apart', 'Pida que salgan a intervalos de {spacing}'],
  [
    'Have each sent so that it comes as the one before is empty',
    'Pida que salga cada uno para llegar al vaciarse el anterior',
  ],
  [
    'With {trucks} trucks sent {spacing} apart none waits, and placing goes as fast',
    'Con {trucks} camiones que salgan a intervalos de {spacing} ninguno espera, y el colado va igual de rápido',
  ],
];

const MORE: readonly Pair[] = [
  ['With {trucks} trucks none waits for the next', 'Con {trucks} camiones nunca se espera al siguiente'],
  ['Trucks {spacing} apart would keep it going', 'Con camiones a intervalos de {spacing} no se pararía'],
  [
    'With {trucks} trucks {spacing} apart none waits for the next',
    'Con {trucks} camiones a intervalos de {spacing} nunca se espera al siguiente',
  ],
  [
    'With {trucks} trucks that each come as the one before is empty none waits for the next',
    'Con {trucks} camiones que lleguen cada uno al vaciarse el anterior nunca se espera al siguiente',
  ],
  [
    'Trucks that each come as the one before is empty would keep it going',
    'Con camiones que lleguen cada uno al vaciarse el anterior no se pararía',
  ],
  [
    'With {trucks} trucks {loading} apart it is down to {rest}, since the plant takes as long for each load: ask whether two are loaded at once, or place at that pace',
    'Con {trucks} camiones a intervalos de {loading} baja a {rest}, ya que la planta tarda eso en cada carga: pregunte si se cargan dos a la vez, o cuele a ese paso',
  ],
  [
    'The plant takes {loading} for each load, longer than placing it: ask whether two are loaded at once, or place at that pace',
    'La planta tarda {loading} en cada carga, más que colarla: pregunte si se cargan dos a la vez, o cuele a ese paso',
  ],
];

const SOONER: readonly Pair[] = [
  ['Space the trucks so that none waits', 'Espacie los camiones para que ninguno espere'],
  [
    'Take loads of at most {most}, a nearer plant or a faster way of placing, or agree on a retarder and another limit with the supplier',
    'Pida cargas de {most} a lo más, una planta más cercana o una forma más rápida de colar, o acuerde con el proveedor un retardante y otro límite',
  ],
  [
    'Take a nearer plant or a faster way of placing, or agree on a retarder and another limit with the supplier',
    'Use una planta más cercana o una forma más rápida de colar, o acuerde con el proveedor un retardante y otro límite',
  ],
  [
    'Loading and the way alone use up that limit: take a nearer plant, or agree on a retarder and another limit with the supplier',
    'Solo cargar y el camino ya agotan ese límite: use una planta más cercana, o acuerde con el proveedor un retardante y otro límite',
  ],
  [
    'Order smaller loads closer together, place faster, take a nearer plant, or have the supplier say how long a retarder holds this concrete back',
    'Pida cargas más chicas y más seguidas, cuele más rápido, use una planta más cercana, o haga que el proveedor diga cuánto detiene un retardante a este concreto',
  ],
];

/** What is the matter, and what may be done about it. */
const SAID: readonly (readonly [...Pair, remedies: readonly Pair[]])[] = [
  [
    'a truck waits {actual} before it is unloaded: waiting is charged, and the concrete grows old and stiff in the drum. …',
    'un camión espera {actual} antes de descargar: la espera se cobra, y el concreto se envejece y se endurece en la olla. …',
    FEWER,
  ],
  [
    'placing stands still for up to {actual} between loads. …',
    'el colado se queda parado hasta {actual} entre cargas. …',
    MORE,
  ],
  [
    'the open edge waits {actual} for the next load; past {limit} in this weather it may crust over, sooner in sun and wind. …. Keep the edge short, covered and alive, and have a bulkhead ready to end at',
    'el borde abierto espera {actual} la siguiente carga; después de {limit} con este clima puede formar costra, y antes con sol y viento. …. Mantenga el borde corto, cubierto y vivo, y tenga lista una tapa de cimbra donde terminar',
    MORE,
  ],
  [
    'the concrete at the open edge is {actual} old when the next load comes, and past {limit} it knits badly in this weather. …. Work the edge until then, and have a bulkhead ready to end at',
    'el concreto del borde abierto tiene {actual} cuando llega la siguiente carga, y después de {limit} une mal con este clima. …. Trabaje el borde hasta entonces, y tenga lista una tapa de cimbra donde terminar',
    MORE,
  ],
  [
    'the concrete at the open edge is {actual} old when the next load comes, and may set after {limit}: the two will not knit. …, or plan a construction joint with its bulkhead and dowels there',
    'el concreto del borde abierto tiene {actual} cuando llega la siguiente carga, y puede fraguar después de {limit}: los dos no se unirán. …, o prevea ahí una junta de construcción con su tapa de cimbra y pasajuntas',
    MORE,
  ],
  [
    'load {load} is {actual} old when it is out of the truck, and the limit is {limit}. …; never make it placeable with water',
    'la carga {load} tiene {actual} cuando sale del camión, y el límite es {limit}. …; nunca la haga manejable con agua',
    SOONER,
  ],
  [
    'load {load} is {actual} old when it is out of the truck: within its limit, but past {limit} in this weather it may be stiff, hard to strike off and soon beyond finishing. …; have everybody ready when it comes, and never make it placeable with water',
    'la carga {load} tiene {actual} cuando sale del camión: dentro de su límite, pero después de {limit} con este clima puede estar dura, difícil de enrasar y pronto imposible de acabar. …; tenga a todos listos cuando llegue, y nunca la haga manejable con agua',
    SOONER,
  ],
  [
    'load {load} is {actual} old when the last of it is out, and may set after {limit}: it sets in the drum, the hopper or the barrow. …',
    'la carga {load} tiene {actual} cuando sale lo último, y puede fraguar después de {limit}: fragua en la olla, la tolva o la carretilla. …',
    SOONER,
  ],
];

export const trucks: Language = /*#__PURE__*/ Object.fromEntries(
  SAID.flatMap(([english, spanish, remedies]) =>
    remedies.map(([asked, told]) => [english.replace(REMEDY, asked), spanish.replace(REMEDY, told)] as const),
  ),
);
