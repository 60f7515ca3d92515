/** Spanish of what to watch out for: bars, mesh, dowels and fibers. */
import type { Language } from '../../report/show';

export const cautionsSteel: Language = {
  '{actual} of cover is enough at an edge that is formed; one that is cast against the ground needs {limit}':
    '{actual} de recubrimiento bastan en un borde con cimbra; uno colado contra el suelo necesita {limit}',
  'a slab that is tied to a wall cannot shrink or settle and cracks: put isolation material against the wall and let the slab float, unless the engineer has drawn the ties':
    'una losa amarrada a un muro no puede encogerse ni asentarse y se agrieta: ponga material de aislamiento contra el muro y deje la losa libre, salvo que el ingeniero haya dibujado los amarres',
  'bars #14 and #18 are not lapped in tension; they are coupled or welded as the engineer says':
    'las varillas #14 y #18 no se traslapan en tensión; se unen con conectores o soldadura como diga el ingeniero',
  'bars farther apart than {limit} do little against cracks; the plans and the engineer govern':
    'varillas separadas más de {limit} hacen poco contra las grietas; rigen los planos y el ingeniero',
  'bars that stand up must be capped or bent over so that nobody falls on them':
    'las varillas que sobresalen deben llevar tapones o doblarse para que nadie caiga sobre ellas',
  'dowels must lie level, square to the joint and free to slide on one side, or they lock the joint and the slab cracks':
    'las pasajuntas deben quedar a nivel, a escuadra con la junta y libres de deslizar de un lado, o traban la junta y la losa se agrieta',
  'fibers replace neither joints nor bars that the plans ask for: joint at the same spacing and cut in time; the engineer decides on anything else':
    'las fibras no reemplazan ni las juntas ni las varillas que piden los planos: haga juntas con la misma separación y córtelas a tiempo; sobre lo demás decide el ingeniero',
  'less than {limit} clear between bars keeps the stone out; space them wider or ask the engineer for fewer and larger bars':
    'menos de {limit} libres entre varillas no dejan pasar la piedra; sepárelas más o pida al ingeniero menos varillas y más gruesas',
  'less than {limit} of concrete above these bars in the weather lets them rust and crack the surface; set them lower or thicken the slab, as the plans and the engineer say':
    'menos de {limit} de concreto sobre estas varillas a la intemperie deja que se oxiden y agrieten la superficie; póngalas más abajo o haga más gruesa la losa, como digan los planos y el ingeniero',
  'less than {limit} of concrete above these bars inside a building lets them rust and crack the surface; set them lower or thicken the slab, as the plans and the engineer say':
    'menos de {limit} de concreto sobre estas varillas dentro de un edificio deja que se oxiden y agrieten la superficie; póngalas más abajo o haga más gruesa la losa, como digan los planos y el ingeniero',
  'less than {limit} of concrete below bars that are cast against the ground lets them rust; use higher chairs, as the plans and the engineer say':
    'menos de {limit} de concreto bajo varillas coladas contra el suelo deja que se oxiden; use silletas más altas, como digan los planos y el ingeniero',
  'less than {limit} of cover in concrete that is cast against the ground lets the bars rust; the plans and the engineer govern':
    'menos de {limit} de recubrimiento en concreto colado contra el suelo deja que las varillas se oxiden; rigen los planos y el ingeniero',
  'less than {limit}, the least that is published for these fibers in a slab on ground':
    'menos de {limit}, lo mínimo que se publica para estas fibras en una losa sobre el terreno',
  'mesh in rolls springs back when it is cut or let go: weight both ends down, stand clear, and mind the cut wires':
    'la malla en rollo salta como resorte al cortarla o soltarla: ponga peso en los dos extremos, apártese y cuídese de los alambres cortados',
  'mesh that laps {actual} is not joined: the last wire of one piece has to lie beyond the first of the next, which takes a square, {limit}, at least; the plans and the engineer govern':
    'la malla con traslape de {actual} no queda unida: el último alambre de una pieza debe quedar más allá del primero de la siguiente, lo que pide por lo menos un cuadro, {limit}; rigen los planos y el ingeniero',
  'mesh works only where it ends up in the slab: set it on chairs, not on the ground to be pulled up later':
    'la malla solo sirve donde queda dentro de la losa: póngala sobre silletas, no en el suelo para jalarla después',
  'sawing, drilling or grinding hardened concrete dry releases respirable silica; work wet or with extraction and follow the dust rules that apply':
    'cortar, perforar o esmerilar en seco concreto endurecido suelta sílice respirable; trabaje con agua o con extracción y siga las normas de polvo que rigen',
  'some laps lie beside a lap of the next line, since the stock is short for its lap; buy longer bars or ask the engineer':
    'algunos traslapes quedan al lado de un traslape de la línea siguiente, porque la varilla comercial es corta para su traslape; compre varillas más largas o pregunte al ingeniero',
  'supports farther apart than {limit} let bars of this size sag to the ground under foot; set more chairs':
    'silletas separadas más de {limit} dejan que las varillas de este tamaño se cuelguen hasta el suelo al pisarlas; ponga más silletas',
  'supports farther apart than {limit} let mesh of this wire sag to the ground under foot; set more chairs':
    'silletas separadas más de {limit} dejan que la malla de este alambre se cuelgue hasta el suelo al pisarla; ponga más silletas',
  'the lap is shorter than {limit}, which 40 bar diameters, at least {least}, come to; the plans and the engineer govern':
    'el traslape es más corto que {limit}, que resultan de 40 diámetros de varilla, con {least} como mínimo; rigen los planos y el ingeniero',
  'the plan is not proved the best: none for these pieces can come to less than {limit}':
    'no está probado que el plan sea el mejor: ninguno para estas piezas puede bajar de {limit}',
  'the slab is outside the table, which ends at {limit}; the nearest row is used, so ask the engineer':
    'la losa queda fuera de la tabla, que termina en {limit}; se usa el renglón más cercano, así que pregunte al ingeniero',
  'the slab has no room for these bars: with the usual cover above and below it is {limit} thick at least; take thinner bars or a thicker slab, as the plans and the engineer say':
    'estas varillas no caben en la losa: con el recubrimiento usual arriba y abajo mide por lo menos {limit} de espesor; use varillas más delgadas o una losa más gruesa, según los planos y el ingeniero',
  'the slab is too thin for the usual cover below the bars; hold their middle at half the depth, {limit} up, or a little higher, not at {actual}':
    'la losa es demasiado delgada para el recubrimiento usual bajo las varillas; sostenga su centro a la mitad del espesor, a {limit} de abajo, o un poco más arriba, no a {actual}',
  'ties are deformed bars, clean and bonded on both sides at the middle of the slab: they keep the joint shut and carry no movement':
    'las barras de amarre son varillas corrugadas, limpias y adheridas de ambos lados a la mitad del espesor: mantienen cerrada la junta y no admiten movimiento',
  'ties hold together what an isolation joint keeps apart: leave out the ties and let the slab float, or leave out the filler and tie it':
    'las barras de amarre unen lo que una junta de aislamiento separa: quite las barras y deje la losa libre, o quite el relleno de la junta y amárrela',
  'to drag this slab over its base ties of this size may be at most {limit} apart: space them closer or take larger ones':
    'para arrastrar esta losa sobre su base, las barras de amarre de este tamaño pueden estar separadas como máximo {limit}: póngalas más cerca o use más gruesas',
  'what is tied moves together: frost or loose backfill under the new slab lifts or breaks the edge that it is tied to. Tie only where it bears on the footing or on ground that is drained and compacted; else isolate it':
    'lo que está amarrado se mueve junto: la helada o un relleno suelto bajo la losa nueva levanta o rompe el borde al que se amarra. Amarre solo donde apoya en la zapata o en suelo drenado y compactado; si no, aísle',
};
