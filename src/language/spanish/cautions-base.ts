/** Spanish of what to watch out for: digging and gravel. */
import type { Language } from '../../report/show';

export const cautionsBase: Language = {
  'strips that lap {actual} part when they are walked on, and damp comes up between: lap {limit} at least, and tape it':
    'unas tiras que se traslapan {actual} se abren al pisarlas y por ahí sube la humedad: traslape {limit} por lo menos, y séllelo con cinta',
  'lay the strips lapped like shingles in the way of the pour, tape laps and around every pipe, and patch tears before the truck comes. On a sheet all bleed water comes up: it takes longer before the finish, and the slab curls more, so cure it well. Patios, walks, drives and unheated garages need none':
    'tienda las tiras traslapadas como tejas en el sentido del colado, selle con cinta los traslapes y alrededor de cada tubo, y parche los desgarres antes de que llegue el camión. Sobre una lámina toda el agua de sangrado sube: el acabado tarda más y la losa se alabea más, así que cúrela bien. Los patios, banquetas, entradas y cocheras sin calefacción no la necesitan',
  'a trench about {limit} deep or more needs a ladder or a ramp close to everyone in it, and the air may need testing; check the rules that apply':
    'una zanja de unos {limit} de profundidad o más necesita una escalera o rampa cerca de todos los que están en ella, y puede hacer falta medir el aire; consulte las normas que rigen',
  'an excavation deeper than {limit} must be protected as a licensed engineer designs, sloped or not':
    'una excavación de más de {limit} debe protegerse según el diseño de un ingeniero con licencia, tenga taludes o no',
  'average end areas and the prismoidal formula differ noticeably ({stretches}); the prismoidal volume is used there, so agree on the method before earth is paid for by volume':
    'las áreas extremas medias y la fórmula prismoidal difieren de manera notable ({stretches}); ahí se usa el volumen prismoidal, así que acuerde el método antes de que se pague la tierra por volumen',
  'by average end area, {stretches} come to {actual}: right for a wedge that keeps its width, but half as much again as a pyramid, {limit}. Say runOut: wedge or pyramid, or give the area halfway':
    'por áreas extremas medias, {stretches} dan {actual}: correcto para una cuña que conserva su ancho, pero la mitad más que una pirámide, {limit}. Indique runOut: wedge (cuña) o pyramid (pirámide), o dé el área a la mitad',
  'cut is measured in the bank and fill compacted in place, and fill takes more than its own volume of the bank: the two sums must not be set off against each other. Give shrink to see what is left over or lacking':
    'el corte se mide en banco y el relleno compactado en su lugar, y el relleno toma más que su propio volumen de banco: las dos sumas no se deben restar una de otra. Indique shrink (la contracción) para ver lo que sobra o falta',
  'fill under a slab deeper than {limit} is beyond what is usually allowed without approval, {earth} of earth and {gravel} of clean sand or gravel; ask the building official or a licensed engineer, and have its compaction tested':
    'un relleno bajo losa de más de {limit} pasa de lo que suele permitirse sin aprobación, {earth} de tierra y {gravel} de arena o grava limpia; consulte al inspector de obras o a un ingeniero con licencia, y haga probar la compactación',
  'from about {limit} of depth on nobody may enter unless the sides are sloped, shored or shielded as a competent person says; shallower cuts cave in too':
    'desde unos {limit} de profundidad nadie puede entrar si los lados no tienen talud, ademe o escudo como diga una persona competente; los cortes menos hondos también se derrumban',
  'have buried lines located and marked before you dig; in the United States call 811':
    'haga localizar y marcar las líneas enterradas antes de excavar; en los Estados Unidos llame al 811',
  'keep loaded trucks off base that is freshly placed, wet or thin: they rut it and push the forms out of line; recompact and check grade after any traffic':
    'no deje pasar camiones cargados sobre base recién puesta, mojada o delgada: la surcan y empujan la cimbra fuera de línea; recompacte y revise los niveles después de cualquier paso',
  'keep spoil, materials and machines at least {back} back from the edge of the cut':
    'mantenga la tierra excavada, los materiales y las máquinas al menos a {back} del borde del corte',
  'lifts of {actual} as spread are thicker than the {limit} that is published for a {tool}: the lower part stays loose and settles. Spread thinner lifts, or bring a heavier machine':
    'capas de {actual} ya tendidas son más gruesas que los {limit} que se publican para {tool}: la parte de abajo queda suelta y se asienta. Tienda capas más delgadas, o traiga una máquina más pesada',
  'loose material must be lighter than compacted; check both densities':
    'el material suelto debe ser más ligero que el compactado; revise las dos densidades',
  'sections given by area do not say how deep the cut is: give their depth. From about {depth} on the sides must be protected before anyone enters':
    'las secciones dadas por su área no dicen qué tan hondo es el corte: indique su profundidad. Desde unos {depth} los lados deben protegerse antes de que alguien entre',
  'sides steeper than 1-1/2:1 stand only in soil that a competent person has classed and found firm enough; clay that is soft, wet, fissured or dug before, and sand, need a flatter slope or shoring':
    'lados más empinados que 1-1/2:1 solo se sostienen en suelo que una persona competente ha clasificado y hallado bastante firme; la arcilla blanda, mojada, agrietada o ya excavada, y la arena, necesitan un talud más tendido o ademe',
  'strip sod and topsoil first, place fill in thin lifts and compact each lift; what is dumped and graded settles under the slab for years':
    'quite primero el césped y la tierra vegetal, ponga el relleno en capas delgadas y compacte cada capa; lo que se vacía y solo se empareja se asienta bajo la losa durante años',
  'suppliers sell by weight as delivered: water in the material is paid for, and the same load fills less once compacted':
    'los proveedores venden por peso según se entrega: el agua del material se paga, y la misma carga llena menos ya compactada',
  'the loose density and the compacted one make a loss of {actual} in compaction, where an eighth to a third is met with: one of them may be of another material or in another unit. The weight does not depend on it, the loose volume and the loads do':
    'la densidad suelta y la compactada dan una pérdida de {actual} al compactar, cuando lo que se encuentra va de un octavo a un tercio: una de ellas puede ser de otro material o estar en otra unidad. El peso no depende de eso, el volumen suelto y las cargas sí',
  'the swell of earth, as a share of its bank volume,':
    'el abundamiento de la tierra, como parte de su volumen en banco,',
  'water brings the sides down and turns the bottom to mud: keep everyone out until it is pumped from a sump and a competent person has looked at the sides, dig out what has softened, and place neither base nor concrete in water':
    'el agua derrumba los lados y vuelve lodo el fondo: que nadie entre hasta que se bombee desde un cárcamo y una persona competente haya revisado los lados, quite lo que se ablandó, y no ponga base ni concreto en agua',
};
