/** Spanish of what to watch out for: steps. */
import type { Language } from '../../report/show';

export const cautionsSteps: Language = {
  'a flight of four or more risers needs a handrail on one side at least, {low} to {high} above the nosings; plan its anchors before the pour and check the local code':
    'un tramo de cuatro contrahuellas o más necesita pasamanos al menos de un lado, de {low} a {high} sobre los bordes de las huellas; prevea sus anclajes antes del colado y consulte el código local',
  'a landing at a door is usually at least {limit} deep in the way of travel, and no narrower than the door; check the local code':
    'el descanso ante una puerta suele tener al menos {limit} de fondo en el sentido del paso, y no ser más angosto que la puerta; consulte el código local',
  'a riser higher than {limit} is not allowed {where}; people trip on it. Check the local code':
    'no se permite una contrahuella de más de {limit} {where}; la gente tropieza en ella. Consulte el código local',
  'a riser lower than {limit} is easily overlooked; people trip on it. Check the local code':
    'una contrahuella de menos de {limit} pasa fácilmente inadvertida; la gente tropieza en ella. Consulte el código local',
  'a tread narrower than {limit} is not allowed {where}; people miss it. Check the local code':
    'no se permite una huella de menos de {limit} {where}; la gente pisa en falso. Consulte el código local',
  'in this run the treads come out narrower than {limit}, which is not allowed {where}; people miss them: with the fewest risers they take {run}. Check the local code':
    'en este largo las huellas salen de menos de {limit}, lo que no se permite {where}; la gente pisa en falso: con el menor número de contrahuellas ocupan {run}. Consulte el código local',
  'here every flight needs handrails on both sides, however few its risers; plan their anchors before the pour and check the local code':
    'aquí todo tramo necesita pasamanos de ambos lados, por pocas que sean sus contrahuellas; prevea sus anclajes antes del colado y consulte el código local',
  'no number of equal risers meets these rules: with {risers} it is {most} at most, and with {more} it is {least} at least. Change the rise to one of these, ramp it, or ask the local building official':
    'ningún número de contrahuellas iguales cumple estas reglas: con {risers} son {most} como máximo, y con {more} son {least} como mínimo. Lleve la subida a una de estas medidas, haga una rampa o pregunte al inspector de obras local',
  'the rise is less than a single riser of these rules, {least} at least: change it, ramp it, or ask the local building official':
    'la subida es menor que una sola contrahuella de estas reglas, {least} como mínimo: cámbiela, haga una rampa o pregunte al inspector de obras local',
  'one flight may rise at most {limit} by the edition commonly quoted: part it by a landing as wide as the flight and at least {deep} deep, and lay out each flight for itself. Check the local code':
    'un tramo puede subir como máximo {limit} según la edición que suele citarse: divídalo con un descanso tan ancho como el tramo y de al menos {deep} de fondo, y trace cada tramo por sí mismo. Consulte el código local',
  'open sides more than {limit} above the ground, measured to the lowest point within {within} of the edge, need a guard {height} high; plan its anchors before the pour and check the local code':
    'los lados abiertos a más de {limit} sobre el terreno, medido al punto más bajo a menos de {within} del borde, necesitan un barandal de {height} de alto; prevea sus anclajes antes del colado y consulte el código local',
  'open sides more than {limit} above the ground need a guard {height} high; plan its anchors before the pour and check the local code':
    'los lados abiertos a más de {limit} sobre el terreno necesitan un barandal de {height} de alto; prevea sus anclajes antes del colado y consulte el código local',
  'one flight may have at most {limit} risers: part it by a landing as wide as the flight. Check the local code':
    'un tramo puede tener como máximo {limit} contrahuellas: divídalo con un descanso tan ancho como el tramo. Consulte el código local',
  'this flight needs a handrail on one side at least, on both where it is wide; plan its anchors before the pour and check the local code':
    'este tramo necesita pasamanos al menos de un lado, de ambos si es ancho; prevea sus anclajes antes del colado y consulte el código local',
  'twice the riser and the tread come to {actual}, and these rules have {least} to {most}: people stumble. Change the tread or the number of risers':
    'dos contrahuellas y una huella suman {actual}, y estas reglas piden de {least} a {most}: la gente tropieza. Cambie la huella o el número de contrahuellas',
  'outdoor treads pitched less than {limit} hold water, which freezes':
    'huellas exteriores con pendiente menor que {limit} retienen agua, que se congela',
  'risers of one flight may differ by at most {limit}; people trip on the odd one. Correct the forms before the pour':
    'las contrahuellas de un tramo pueden diferir como máximo {limit}; la gente tropieza en la que es distinta. Corrija la cimbra antes del colado',
  'steps of three risers or more are usually founded below the frost line, so that they do not heave away from the door; the local building department gives the depth':
    'los escalones de tres contrahuellas o más suelen cimentarse bajo la línea de helada, para que no se levanten y se separen de la puerta; el departamento local de construcción da la profundidad',
  'the door swings out farther than the landing leaves room to stand: whoever opens it is pushed down the steps. Make the landing deeper or hang the door inwards':
    'la puerta abre hacia afuera más de lo que el descanso deja para estar parado: quien la abre es empujado escalera abajo. Haga más hondo el descanso o que la puerta abra hacia adentro',
  'the drop from threshold to landing is more than {limit}, commonly the most at such a door; raise the landing, and check the local code':
    'la bajada del umbral al descanso es de más de {limit}, que suele ser lo máximo en una puerta así; suba el descanso, y consulte el código local',
  'the riser lies between {limit} and the {other} that the same rule has in its other edition, for the other system of units; ask which of the two is enforced, or add a riser':
    'la contrahuella queda entre {limit} y los {other} que la misma regla tiene en su otra edición, para el otro sistema de unidades; pregunte cuál de las dos se exige, o añada una contrahuella',
  'treads and landings steeper than {limit} are usually not allowed; feet slide off them. Check the local code':
    'huellas y descansos con más pendiente que {limit} no suelen permitirse; los pies resbalan. Consulte el código local',
  'steeper than {limit}, the most that these rules allow a ramp; make it longer, or fold it at a landing. Check the local code':
    'más empinado que {limit}, lo más que estas reglas permiten en una rampa; hágala más larga o dóblela en un descanso. Consulte el código local',
  'with its landings it takes {actual}, and there are {limit}: fold it at a level landing as wide as both runs, in more runs if it is, or lower the landing at the top; never make it steeper to fit':
    'con sus descansos ocupa {actual}, y hay {limit}: dóblela en un descanso a nivel tan ancho como ambos tramos, en más tramos si ya lo está, o baje el descanso de arriba; nunca la haga más empinada para que quepa',
  'with its landings it takes {actual}, and there are {limit}: at {slope}, which these rules allow, it takes {overall} and fits':
    'con sus descansos ocupa {actual}, y hay {limit}: a {slope}, que estas reglas permiten, ocupa {overall} y cabe',
  'narrower than {limit}, the least clear width between handrails or curbs that these rules have; widen the forms. Check the local code':
    'más angosto que {limit}, el ancho libre mínimo entre pasamanos o bordillos según estas reglas; ensanche las cimbras. Consulte el código local',
  'these rules ask for handrails on both sides of this ramp and a curb or rail along open edges; plan them before the pour and check the local code':
    'estas reglas piden pasamanos de ambos lados de esta rampa y un bordillo o baranda en los bordes abiertos; prevéalos antes del colado y consulte el código local',
  'a landing shorter than {limit} is less than these rules have on a ramp: a wheelchair cannot rest or turn on it. Check the local code':
    'un descanso de menos de {limit} es menos de lo que estas reglas piden en una rampa: una silla de ruedas no puede parar ni girar en él. Consulte el código local',
};
