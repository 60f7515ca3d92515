/** Spanish of what to watch out for: forms. */
import type { Language } from '../../report/show';

export const cautionsForms: Language = {
  'a bent board is a spring: fasten it from one end on, stake by stake, and stand inside the curve and clear of its end when it is let go':
    'una tabla doblada es un resorte: fíjela desde un extremo, estaca por estaca, y al soltarla párese por dentro de la curva y lejos de su extremo',
  'a round opening of a radius of {actual} is tighter than the {limit} that this thickness bends to: set a form tube and name the opening in filledOpenings, or use thinner layers, or saw kerfs into its back':
    'una abertura redonda de un radio de {actual} es más cerrada que los {limit} a los que se dobla este espesor: ponga un tubo de cartón para cimbra y nombre la abertura en filledOpenings, o use capas más delgadas, o haga ranuras con sierra en su cara de atrás',
  'a radius of {actual} is tighter than the {limit} that this thickness bends to: it breaks, or pulls its stakes out. Use thinner layers, or saw kerfs into its back':
    'un radio de {actual} es más cerrado que los {limit} a los que se dobla este espesor: se rompe, o arranca sus estacas. Use capas más delgadas, o haga ranuras con sierra en su cara de atrás',
  'concrete {actual} high presses harder than boards and stakes are trusted with, {limit}: forms that give way bury people. Keep to the rate that the pressure was reckoned for, and have ties and braces designed by a licensed engineer':
    'el concreto de {actual} de altura empuja más de lo que se confía a tablas y estacas, {limit}: una cimbra que cede sepulta a la gente. No pase de la velocidad con que se calculó la presión, y haga diseñar tirantes y puntales por un ingeniero con licencia',
  'concrete {actual} high presses harder than boards and stakes are trusted with, {limit}: forms that give way bury people. Reckon the pressure of the concrete first, and have forms, ties and braces designed by a licensed engineer':
    'el concreto de {actual} de altura empuja más de lo que se confía a tablas y estacas, {limit}: una cimbra que cede sepulta a la gente. Calcule primero la presión del concreto, y haga diseñar cimbra, tirantes y puntales por un ingeniero con licencia',
  'forms of {actual} without braces: above {limit} each stake wants a brace to a second stake behind it':
    'cimbra de {actual} sin puntales: arriba de {limit} cada estaca necesita un puntal a una segunda estaca detrás',
  'forms of walls, columns and anything that carries a load are designed by a licensed engineer or by the tables of who makes them, tied through and braced; this counts boards and stakes only. Watch them through the pour':
    'la cimbra de muros, columnas y de todo lo que carga la diseña un ingeniero con licencia o se toma de las tablas de su fabricante, con tirantes de lado a lado y puntales; aquí solo se cuentan tablas y estacas. Vigílela durante el colado',
  'kerfs {actual} apart are closer than {limit}: what stands between them breaks out. Use thin layers, or a thinner board':
    'ranuras a cada {actual} están más juntas que {limit}: lo que queda entre ellas se rompe. Use capas delgadas, o una tabla más delgada',
  'rip {over} off the riser boards: a riser is {limit}, and boards {actual} high stand in the concrete of the tread below. Bevel their lower edge, so that the trowel gets under it':
    'corte {over} a lo largo de las tablas de contrahuella: una contrahuella es de {limit}, y tablas de {actual} de alto quedan metidas en el concreto de la huella de abajo. Bisele su canto inferior, para que la llana entre por debajo',
  'stakes {actual} apart are farther than the {limit} that such boards bear: the edge bows and the forms lean. Set more of them':
    'estacas a cada {actual} están más separadas que los {limit} que soportan esas tablas: el borde se pandea y la cimbra se ladea. Ponga más',
  'stakes of {actual} are shorter than the {limit} that the form and the ground ask: they lean out under the concrete. Take longer ones':
    'estacas de {actual} son más cortas que los {limit} que piden la cimbra y el suelo: se ladean bajo el concreto. Use más largas',
  'the boards stand {actual} high, and the concrete is {limit}: set flat on the base they make it {lacks} too thin. Pack them up and fill below, or grade the base {lacks} below their lower edge':
    'las tablas tienen {actual} de alto, y el concreto {limit}: puestas directo sobre la base lo dejan {lacks} demasiado delgado. Súbalas con calzas y rellene abajo, o deje la base {lacks} por debajo de su canto inferior',
  'the riser boards are {actual} high, and a riser is {limit}: the concrete of the step slumps out below them. Take a wider board ripped to the riser, or nail a strip of {lacks} along its lower edge':
    'las tablas de contrahuella tienen {actual} de alto, y una contrahuella es de {limit}: el concreto del escalón se escurre por debajo. Use una tabla más ancha cortada a la contrahuella, o clave una tira de {lacks} en su canto inferior',
  'where the ground is lowest the boards stand {actual} over it, more than {limit}: base and concrete run out below. Close it with another board or with earth tamped against their outside before the base goes in, and compact the deeper base in lifts':
    'donde el suelo está más bajo las tablas quedan {actual} por encima, más de {limit}: la base y el concreto se salen por debajo. Ciérrelo con otra tabla o con tierra apisonada por fuera antes de poner la base, y compacte por capas la base más gruesa',
  'who trips falls onto steel stakes: drive them below the top of the boards, or put caps or guards on them that stop a fall':
    'quien tropieza cae sobre estacas de acero: húndalas por debajo del canto de las tablas, o póngales tapones o protecciones que detengan una caída',
};
