/** Spanish of what to watch out for: joints. */
import type { Language } from '../../report/show';

export const cautionsJoints: Language = {
  'joints from every small opening would cut up the slab into strips and slivers, so they keep their spacing and openings are passed by: {actual}, as listed. Set isolation board all around each, full depth, and lay bars diagonally beside it, across its corners where it has any, as the engineer directs; one boxed out round, or moved or turned so that joints meet it, needs fewer':
    'las juntas desde cada abertura pequeña cortarían la losa en tiras y astillas; por eso conservan su separación y pasan de largo aberturas: {actual}, según la lista. Ponga placa de aislamiento alrededor de cada una, en todo el espesor, y varillas en diagonal a su lado, de través en sus esquinas si las tiene, como indique el ingeniero; si la caja es redonda, o se mueve o se gira para que las juntas la encuentren, hacen falta menos',
  'a small opening set square to the joints leaves corners that no joint meets; box it out round, or turned so that its points lie on the joints':
    'una abertura pequeña paralela a las juntas deja esquinas a las que no llega ninguna junta; haga la caja redonda, o gírela para que sus puntas queden sobre las juntas',
  'no plan of this kind keeps every rule; those that give way are listed. Cracks are likelier there: change the outline or an edge, or ask the engineer':
    'ningún trazo de este tipo cumple todas las reglas; las que ceden están en la lista. Ahí son más probables las grietas: cambie el contorno o un borde, o pregunte al ingeniero',
  'panels {actual} long are {times} times the thickness, and plain slabs are jointed at 24 to 36 times, here {limit} at most: they crack where nobody cut. Joint closer, or have the engineer give the steel that is to hold the cracks':
    'paños de {actual} de largo son {times} veces el espesor, y las losas simples llevan juntas a 24 a 36 veces el espesor, aquí {limit} como máximo: se agrietan donde nadie cortó. Haga juntas más cercanas, o que el ingeniero indique el acero que ha de contener las grietas',
  'the strip is {actual} wide and joints may be {limit} apart, which holds both ways: a joint along its middle, with those across closer by the shape of the panels, or a thicker slab, keeps it from cracking lengthwise':
    'la franja tiene {actual} de ancho y las juntas pueden estar a {limit}, lo que vale en los dos sentidos: una junta a lo largo por el centro, con las transversales más cerca según la forma de los paños, o una losa más gruesa, evita que se agriete a lo largo',
  'panels would be wider than {limit} of their length and tend to crack across: joint along the strip too':
    'los paños serían más anchos que {limit} de su largo y tienden a agrietarse a lo ancho: haga juntas también a lo largo de la franja',
  'several published sources stop at {limit} for slabs this thick, though the rules applied allow {actual}; joint at {limit} unless the engineer says otherwise':
    'varias fuentes publicadas no pasan de {limit} para losas de este espesor, aunque las reglas aplicadas permiten {actual}; haga juntas a cada {limit} salvo que el ingeniero diga otra cosa',
  'Spacing and depth of control (contraction) joints':
    'Separación y profundidad de las juntas de contracción (control)',
  'steel holds cracks closed but does not prevent them; wider spacing in a reinforced slab is for the engineer to allow':
    'el acero mantiene cerradas las grietas pero no las evita; una separación mayor en losa reforzada la autoriza el ingeniero',
  'to keep every rule would take {others} panels and {length} of joints. This plan has {panels}, and the rules that give way are listed: cracks are likelier there, so lay bars in those panels and across those corners as the engineer directs, make a strip a slab of its own, or change the outline. Who wants every panel of good shape gives longestRatio':
    'cumplir todas las reglas pediría {others} paños y {length} de juntas. Este plano tiene {panels}, y las reglas que ceden están en la lista: ahí es más fácil que se agriete, así que ponga varillas en esos paños y de través en esas esquinas como indique el ingeniero, haga de la franja una losa aparte, o cambie el contorno. Quien quiera todos los paños de buena forma da longestRatio',
  'a few panels, as listed, are up to {actual} times as long as wide, which handbooks allow: to keep all within {limit} times would take {others} panels and {length} of joints, where this plan has {panels}. For that plan give longestRatio {limit}':
    'unos pocos paños, según la lista, son hasta {actual} veces tan largos como anchos, lo que los manuales permiten: para que ninguno pase de {limit} veces harían falta {others} paños y {length} de juntas, y este plano tiene {panels}. Para aquel plano dé longestRatio {limit}',
  'to keep every panel no longer than {ratio} times its width takes {actual} panels and {length} of joints. {limit} panels and {other} would do if a few were up to {longer} times as long as wide, which handbooks allow: give longestRatio {longer} for that plan, and look where its long panels lie':
    'para que ningún panel sea más largo que {ratio} veces su ancho hacen falta {actual} paños y {length} de juntas. Bastarían {limit} paños y {other} si unos pocos llegaran a {longer} veces su ancho, lo que admiten los manuales: dé longestRatio {longer} para ese plano y mire dónde quedan los paños largos',
  'to keep every panel no longer than {ratio} times its width takes {actual} panels and {length} of joints; {limit} would do but for narrow strips beside a corner. Before so much is cut, see whether that corner can be moved, its strip be a slab of its own, or the corner be passed by with bars across it, as the engineer directs':
    'para que ningún panel sea más largo que {ratio} veces su ancho hacen falta {actual} paños y {length} de juntas; bastarían {limit} si no fuera por las franjas angostas junto a una esquina. Antes de cortar tanto, vea si se puede mover esa esquina, hacer de la franja una losa aparte o dejar pasar la esquina con varillas que la crucen, según indique el ingeniero',
  'the joint would go through more than half of the slab; the slab is too thin for a sawn joint':
    'la junta pasaría de la mitad de la losa; la losa es demasiado delgada para una junta cortada',
  'a joint of {actual} is shallower than {limit}: the slab cracks beside it as well as below it. Make it that deep, in time':
    'una junta de {actual} es menos honda que {limit}: la losa se agrieta tanto al lado como debajo de ella. Hágala así de honda, a tiempo',
  'a joint of {actual} goes through more than half of the slab, {limit}: what is left does not carry across it, and steel may be cut':
    'una junta de {actual} atraviesa más de la mitad de la losa, {limit}: lo que queda no transmite carga, y se puede cortar el acero',
  'the multiple of the thickness for this slump and aggregate is the tightest rule':
    'el múltiplo del espesor para este revenimiento y tamaño de agregado es la regla más estricta',
  'the slump is above the {limit} that the spacing table goes to; wetter concrete shrinks more, so joint closer':
    'el revenimiento pasa de los {limit} a los que llega la tabla de separaciones; el concreto más aguado encoge más, así que haga juntas más cercanas',
  '{actual} is no slab on ground, and the table runs from {from} to {to}: a topping bonded to a slab is jointed over every joint of that slab, in line with it and through its full depth, whatever the spacing; what is not bonded so thin curls and breaks':
    '{actual} no es una losa sobre el terreno, y la tabla va de {from} a {to}: un recubrimiento adherido a una losa lleva junta sobre cada junta de esa losa, en línea con ella y en todo su espesor, sea cual sea la separación; lo que tan delgado no va adherido se alabea y se rompe',
  '{actual} is no slab on ground: a topping bonded to a slab is jointed over every joint of that slab, in line with it and through its full depth, whatever the spacing; what is not bonded so thin curls and breaks':
    '{actual} no es una losa sobre el terreno: un recubrimiento adherido a una losa lleva junta sobre cada junta de esa losa, en línea con ella y en todo su espesor, sea cual sea la separación; lo que tan delgado no va adherido se alabea y se rompe',
  '{side} is a hair more than whole spacings of {spacing}, which takes {actual} rows of panels. With joints {apart} apart {limit} would do: give that as the spacing where who drew the joints agrees':
    '{side} es apenas más que separaciones enteras de {spacing}, y eso pide {actual} filas de paños. Con juntas a {apart} bastarían {limit}: dé esa separación si quien trazó las juntas está de acuerdo',
  'a saw runs straight and follows no joint of a radius of {actual}, below {limit}: form that joint with a groover or a strip while the concrete is fresh, and saw the straight ones':
    'la sierra corre derecho y no sigue una junta de radio {actual}, menor que {limit}: haga esa junta con volteador o con una tira mientras el concreto está fresco, y corte las rectas con sierra',
  'the thickness is outside the published table, which runs from {from} to {to}; the same multiple of the thickness is used':
    'el espesor queda fuera de la tabla publicada, que va de {from} a {to}; se usa el mismo múltiplo del espesor',
};
