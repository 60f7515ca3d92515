/** Spanish of what to watch out for: the mix. */
import type { Language } from '../../report/show';

export const cautionsMix: Language = {
  '{actual} is weaker than the {limit} that is asked: {instead}':
    '{actual} es menos resistente que los {limit} que se piden: {instead}',
  '{actual} of air is above {limit}: each point costs about a twentieth of the strength. Ask for the mix with less of it':
    '{actual} de aire pasa de {limit}: cada punto cuesta cerca de un veinteavo de la resistencia. Pida la mezcla con menos',
  '{actual} of air is above {limit}: each point costs about a twentieth of the strength. Have another portion tested at once; as high again, call the plant before it is discharged':
    '{actual} de aire pasa de {limit}: cada punto cuesta cerca de un veinteavo de la resistencia. Haga probar enseguida otra porción; si sale igual de alto, llame a la planta antes de descargar',
  '{actual} of air is below the {limit} that this exposure needs: {instead}':
    '{actual} de aire es menos que los {limit} que necesita esta exposición: {instead}',
  'a slump of {actual} is above {limit}: unless a plasticizer makes it so, it is water, which bleeds, shrinks and weakens the top. Ask for it with a plasticizer in place of water':
    'un revenimiento de {actual} pasa de {limit}: si no lo da un plastificante, es agua, que sangra, encoge y debilita la superficie. Pídalo con plastificante en vez de agua',
  'a slump of {actual} is above {limit}: unless a plasticizer makes it so, it is water, which bleeds, shrinks and weakens the top. Test another portion at once; as wet again, have the plant say whether a plasticizer makes it so, and send it back where none does':
    'un revenimiento de {actual} pasa de {limit}: si no lo da un plastificante, es agua, que sangra, encoge y debilita la superficie. Pruebe enseguida otra porción; si sale igual de aguada, que la planta diga si lo da un plastificante, y regrésela si no lo hay',
  '{actual} of the cement is {what}, above the {limit} that are the most where deicers come to it: such tops scale, and in cool weather they set late. Ask for a mix with less of it':
    '{actual} del cemento es {what}, más de los {limit} que se admiten como máximo donde le llega sal: tales superficies se descascaran, y con frío fraguan tarde. Pida una mezcla con menos',
  'fly ash': 'ceniza volante',
  'fly ash and silica fume': 'ceniza volante y humo de sílice',
  'fly ash, slag and silica fume': 'ceniza volante, escoria y humo de sílice',
  'silica fume': 'humo de sílice',
  slag: 'escoria',
  'the ticket says {actual}, more than a fifth above the {limit} that was ordered: it may be the load of another job. Ask the plant before it is discharged; a richer mix also stiffens sooner and shrinks more':
    'la remisión dice {actual}, más de un quinto arriba de los {limit} que se pidieron: puede ser la carga de otra obra. Pregunte a la planta antes de descargar; una mezcla más rica además se endurece antes y encoge más',
  'concrete with {actual} of air blisters and peels under a hard trowel; {limit} is the most for such a floor':
    'el concreto con {actual} de aire se ampolla y se pela bajo la llana metálica; {limit} es lo máximo para un piso así',
  'a hard trowel closes the skin of a garage floor over its air and water: it blisters, and what cars drip scales it. Float it and broom it, or, where the residential code is kept, ask for air of 3% and a strength of {strength} at least, and trowel it late and lightly':
    'la llana metálica cierra la superficie de un piso de cochera sobre su aire y su agua: se ampolla, y lo que gotean los coches la descascara. Pásele flota y escobilla, o, donde rige el código residencial, pida aire de 3% y resistencia de {strength} como mínimo, y alísela tarde y sin insistir',
  'concrete with {actual} of air will scale where it freezes wet; it needs {limit} or more: {instead}. No sealer makes up for it':
    'el concreto con {actual} de aire se descascarará donde se congela mojado; necesita {limit} o más: {instead}. Ningún sellador lo compensa',
  'concrete with air is not hard-troweled where it freezes: the skin closes over the water, loses its air and scales. Float it and broom it':
    'el concreto con aire incluido no se alisa con llana metálica donde hay heladas: la superficie se cierra sobre el agua, pierde su aire y se descascara. Pásele flota y escobilla',
  'a hard trowel leaves concrete slick when it is wet, and people fall on it, on steps and slopes above all: broom or float what rain reaches':
    'la llana metálica deja el concreto resbaloso cuando está mojado, y la gente se cae, sobre todo en escalones y pendientes: pase escobilla o flota donde llegue la lluvia',
  'nothing is said of air, and what freezes wet needs {limit} or more: ask before it is ordered or discharged':
    'nada se dice del aire, y lo que se congela mojado necesita {limit} o más: pregunte antes de pedirlo o de descargarlo',
  'stone of {actual} is more than a fifth of what is between the forms, {limit}: it hangs up and leaves hollows. Ask for smaller stone, and for the air that goes with it':
    'piedra de {actual} es más de un quinto de lo que hay entre las caras de la cimbra, {limit}: se atora y deja huecos. Pida piedra más chica, y el aire que le corresponde',
  'stone of {actual} is more than a third of the thickness, {limit}: it cannot be struck off and finished. Ask for smaller stone, and for the air that goes with it':
    'piedra de {actual} es más de un tercio del espesor, {limit}: no se puede enrasar ni acabar. Pida piedra más chica, y el aire que le corresponde',
  'sulfate attacks ordinary cement whatever its strength: ask for cement that resists it, and let the engineer or the supplier confirm the class by a test of the soil or the water':
    'los sulfatos atacan el cemento común, tenga la resistencia que tenga: pida cemento que los resista, y haga que el ingeniero o el proveedor confirme la clase con una prueba del suelo o del agua',
  'water to cement of {actual} is above the {limit} that is asked: it will be weaker, shrink more and scale sooner':
    'la relación agua/cemento de {actual} pasa de los {limit} que se piden: será más débil, encogerá más y se descascarará antes',
};
