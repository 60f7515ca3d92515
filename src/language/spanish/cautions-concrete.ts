/** Spanish of what to watch out for: quantities of concrete. */
import type { Language } from '../../report/show';

export const cautionsConcrete: Language = {
  'bolts of a plate stand {actual} apart: {limit} is the most that is usual. The plans and the local code govern':
    'las anclas de la solera están a {actual} una de otra: {limit} es lo más usual. Rigen los planos y el reglamento local',
  'the last bolt stands {actual} from the end of a piece of plate: {limit} is the most that is usual. The plans and the local code govern':
    'la última ancla está a {actual} del extremo de una pieza de solera: {limit} es lo más usual. Rigen los planos y el reglamento local',
  'how thick, how deep and how close anchor bolts are set is by the plans and the local code, which ask for more where wind is strong or the ground shakes':
    'qué gruesas, qué hondas y qué juntas van las anclas lo dicen los planos y el reglamento local, que piden más donde el viento es fuerte o tiembla la tierra',
  '{what} is founded {actual} deep, above the frost depth of {limit}: the ground under it freezes and lifts it. Go deeper, or protect it from frost as the local code and the engineer allow':
    '{what} se cimienta a {actual} de profundidad, por encima de la profundidad de helada de {limit}: el suelo debajo se congela y lo levanta. Vaya más hondo, o protéjalo de la helada como permitan el código local y el ingeniero',
  '{what} is founded {actual} deep; under exterior footings at least {limit} below undisturbed ground is usual even without frost. The plans and the local code govern':
    '{what} se cimienta a {actual} de profundidad; bajo zapatas exteriores lo usual es al menos {limit} bajo suelo sin remover, aun sin heladas. Rigen los planos y el código local',
  '{what} is {actual} thick; codes have footings at least {limit} thick, since what they carry breaks a thinner one. The plans and the local code govern':
    '{what} tiene {actual} de espesor; los códigos piden zapatas de al menos {limit}, pues lo que cargan rompe una más delgada. Rigen los planos y el código local',
  'less than {limit} of concrete lies over the core; it may break through. The plans and the engineer govern':
    'queda menos de {limit} de concreto sobre el núcleo; puede romperse y hundirse. Rigen los planos y el ingeniero',
  'the slab is thinner than the {limit} that a slab on ground is usually required to have; follow the plans and the local code':
    'la losa es más delgada que los {limit} que suelen exigirse a una losa sobre el terreno; siga los planos y el código local',
  'the slab is thinner than the {limit} that a slab on ground is usually required to have; follow the plans and the local code. So thin only a topping lasts, bonded to a slab and jointed over its joints':
    'la losa es más delgada que los {limit} que suelen exigirse a una losa sobre el terreno; siga los planos y el código local. Tan delgado solo dura un recubrimiento adherido a una losa y con junta sobre las juntas de ella',
  'whether {what} reaches below the frost depth of {frost} is not known here: give how deep it is founded':
    'aquí no se sabe si {what} llega bajo la profundidad de helada de {frost}: indique a qué profundidad se cimienta',
  'whether {what} reaches below frost is not known here: ask the local building department for the depth, and give frostDepth and how deep it is founded':
    'aquí no se sabe si {what} llega bajo la helada: pregunte la profundidad al departamento local de construcción, e indique frostDepth (profundidad de helada) y a qué profundidad se cimienta',
};
