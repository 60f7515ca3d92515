/** Spanish of what to watch out for: falls and grades. */
import type { Language } from '../../report/show';

export const cautionsGrade: Language = {
  "steeper along than {limit}: an accessible route so steep is a ramp, with a ramp's rules; check the local code":
    'a lo largo más empinado que {limit}: una ruta accesible tan empinada es una rampa, con las reglas de una rampa; consulte el código local',
  'steeper than {limit}, the most a new accessible ramp may have; people slip on it when it is icy. Check the local code':
    'más empinado que {limit}, lo más que puede tener una rampa accesible nueva; con hielo la gente resbala ahí. Consulte el código local',
  '{area} of the surface falls back toward {line}: a valley or drain that takes it away catches it before it gets there; keep that open and clear':
    '{area} de la superficie bajan de vuelta hacia {line}: una vaguada o desagüe que se lleva el agua la recoge antes de que llegue; manténgalo abierto y limpio',
  '{area} of the surface falls back toward {line}: only a valley too flat to drain, or a low spot, lies between, and runs over toward the building in a heavy rain. Give it a fall to an open edge or a drain, or turn the slope away':
    '{area} de la superficie bajan de vuelta hacia {line}: en medio solo hay una vaguada demasiado plana para drenar, o un punto bajo, que con lluvia fuerte se derrama hacia el edificio. Déle pendiente hacia un borde abierto o un desagüe, o vuelva la pendiente hacia afuera',
  'a ramp that rises more than {limit} needs handrails on both sides; plan their anchors before the pour and check the local code':
    'una rampa que sube más de {limit} necesita pasamanos de ambos lados; prevea sus anclajes antes del colado y consulte el código local',
  'along {name} the forms do not fall as asked; correct the grades before any concrete is placed':
    'a lo largo de {name} la cimbra no tiene la pendiente pedida; corrija los niveles antes de colar',
  'at stake {stake} the form stands {actual} over the ground: fill under a slab deeper than {limit} of clean sand or gravel, or a third of that in earth, needs approval. Compact it in lifts, or ask for another design; the local code and the engineer decide':
    'en la estaca {stake} la cimbra queda {actual} sobre el terreno: un relleno bajo losa de más de {limit} de arena o grava limpia, o de un tercio de eso en tierra, necesita aprobación. Compáctelo por capas o pida otro diseño; deciden el código local y el ingeniero',
  'it rises more than {limit} in one run: where people walk or wheel on it, a ramp so high needs a level landing on the way and one at each end, each at least {landing} long. Check the local code':
    'sube más de {limit} en un solo tramo: donde la gente camina o rueda sobre ella, una rampa tan alta necesita un descanso a nivel en el camino y uno en cada extremo, cada uno de al menos {landing} de largo. Consulte el código local',
  'no line of a building is given, so only the fall itself is checked, not whether it leads away from a wall':
    'no se da ninguna línea de un edificio, así que solo se revisa la pendiente misma, no si aleja el agua de un muro',
  'no side of the surface lies along {line}, so water that reaches it is not seen; take spots along that line':
    'ningún lado de la superficie queda a lo largo de {line}, así que no se ve el agua que llega ahí; tome puntos a lo largo de esa línea',
  'steeper than {limit}, the most that is allowed here; the plans and the local code govern':
    'más empinado que {limit}, lo máximo que se permite aquí; rigen los planos y el código local',
  'the diagonals differ by more than the tolerance: slide a side until they are equal, then brace the forms':
    'las diagonales difieren más que la tolerancia: deslice un lado hasta que sean iguales, y luego apuntale la cimbra',
  'the forms would fall {actual}, more than {limit}, because of {names}: break the slab into steps, change what is fixed, or get the slope approved by whoever answers for the plans':
    'la cimbra bajaría {actual}, más de {limit}, a causa de {names}: divida la losa con escalones, cambie lo que está fijo, o haga aprobar la pendiente por quien responde de los planos',
  'the forms would fall {actual}, more than {limit}, because of {names}: make the run longer, change what is fixed, or get the slope approved by whoever answers for the plans':
    'la cimbra bajaría {actual}, más de {limit}, a causa de {names}: alargue el tramo, cambie lo que está fijo, o haga aprobar la pendiente por quien responde de los planos',
  'the forms would fall {actual}, more than {limit}: make the run longer, change what is fixed, or get the slope approved by whoever answers for the plans':
    'la cimbra bajaría {actual}, más de {limit}: alargue el tramo, cambie lo que está fijo, o haga aprobar la pendiente por quien responde de los planos',
  'the forms would fall {actual}, more than {limit}: break the slab into steps, change what is fixed, or get the slope approved by whoever answers for the plans':
    'la cimbra bajaría {actual}, más de {limit}: divida la losa con escalones, cambie lo que está fijo, o haga aprobar la pendiente por quien responde de los planos',
  'the surface falls less than the required {limit}: water will stand. Correct the grade before any concrete is placed':
    'la superficie baja menos que los {limit} exigidos: el agua se quedará parada. Corrija los niveles antes de colar',
  'the surface falls toward the building: water will run to the wall or the door. Correct the grade before any concrete is placed':
    'la superficie baja hacia el edificio: el agua correrá al muro o a la puerta. Corrija los niveles antes de colar',
  "the surface is less than {limit} below the sill or threshold: rain and snow get in. Lower the surface; check the local code and the door's own instructions":
    'la superficie queda a menos de {limit} bajo el alféizar o umbral: entran lluvia y nieve. Baje la superficie; consulte el código local y las instrucciones de la puerta',
  'the valley {where} falls {actual} along its length, less than {limit}: the water shed into it will stand there. Give it a fall to an open edge or a drain before any concrete is placed':
    'la vaguada {where} baja {actual} a lo largo, menos de {limit}: el agua que le llega se quedará parada ahí. Déle pendiente hacia un borde abierto o un desagüe antes de colar',
  'the valley {where} falls {actual} along its length; {limit} and more is what gutters are better given, since hand finishing leaves low spots in a flatter one':
    'la vaguada {where} baja {actual} a lo largo; a las cunetas conviene darles {limit} o más, porque el acabado a mano deja puntos bajos en una más plana',
  'walls or curbs hold the water in on every side; it leaves only over the lowest of them':
    'muros o bordillos retienen el agua por todos lados; solo sale por encima del más bajo',
  'water from {from} runs to {line}. Correct the grade, or catch the water before it gets there, before any concrete is placed':
    'el agua de {from} corre hacia {line}. Corrija los niveles, o recoja el agua antes de que llegue, antes de colar',
  'water stands deeper than {limit}: it stains, freezes and softens the base. Raise the low spot or cut it an outlet':
    'el agua se queda parada con más de {limit} de hondo: mancha, se congela y ablanda la base. Suba el punto bajo o ábrale una salida',
};
