/** Spanish of how to say otherwise than was assumed; names of members stay as they are to be written. */
import type { Language } from '../../report/show';

export const overrides: Language = {
  'Ask the maker': 'Pregunte al fabricante',
  'Give age as the concrete is placed, from its loading on, as truckPlan has it':
    'Indique age, la edad del concreto al colocarlo, desde que se cargó, como la da truckPlan',
  'Give ageLimit as it is stated for this concrete': 'Indique ageLimit como está fijado para este concreto',
  'Give aim: fewest-bars, least-length or least-cost': 'Indique aim: fewest-bars, least-length o least-cost',
  'Give bar from the plans': 'Indique bar según los planos',
  'Give bleeding: "little"': 'Indique bleeding: "little"',
  'Give closingLimit': 'Indique closingLimit',
  'Give cement: high-early for type III, more cement or an accelerator':
    'Indique cement: high-early para tipo III, más cemento o un acelerante',
  'Give layers': 'Indique layers (capas)',
  'Give purity by the label of the bag': 'Indique purity (pureza) según la etiqueta del saco',
  'Give germination by the label of the bag': 'Indique germination (germinación) según la etiqueta del saco',
  'Give coats as the data sheet says': 'Indique coats como dice la hoja de datos',
  'Give compactedDensity from the supplier or a test':
    'Indique compactedDensity según el proveedor o un ensayo',
  'Give concreteTemperature as it will be at the site': 'Indique concreteTemperature como estará en la obra',
  'Give countsOver as the plans have it': 'Indique countsOver como lo traen los planos',
  'Give cover from the plans': 'Indique cover según los planos',
  'Give curves.bend, by a trial with the boards at hand':
    'Indique curves.bend, por una prueba con las tablas que hay',
  'Give curves.layers': 'Indique curves.layers',
  'Give curves: kerfed or layers': 'Indique curves: kerfed o layers',
  'Give cut: none': 'Indique cut: none',
  'Give cutTo, for example {step}, for fewer marks': 'Indique cutTo, por ejemplo {step}, para menos marcas',
  'Give deicers': 'Indique deicers',
  'Give depthPerPass where the saw needs more passes':
    'Indique depthPerPass si la sierra necesita más pasadas',
  'Give dosage as the maker and the engineer say': 'Indique dosage como dicen el fabricante y el ingeniero',
  'Give edgeBars: false': 'Indique edgeBars: false',
  'Give embedment as the maker of the epoxy says': 'Indique embedment como dice el fabricante del epóxico',
  'Give endDistance from the plans': 'Indique endDistance según los planos',
  'Give epoxyLoss as the maker of the epoxy says': 'Indique epoxyLoss como dice el fabricante del epóxico',
  'Give exposed: false for a floor that stays warm':
    'Indique exposed: false para un piso que se mantiene caliente',
  'Give fasteners.perBrace': 'Indique fasteners.perBrace',
  'Give fasteners.perCleat': 'Indique fasteners.perCleat',
  'Give fasteners.perStake': 'Indique fasteners.perStake',
  'Give finishedAt': 'Indique finishedAt',
  'Give founded: how deep the underside lies below the ground':
    'Indique founded: a qué profundidad bajo el terreno queda la cara inferior',
  'Give friction from the plans': 'Indique friction según los planos',
  'Give hole as the maker of the epoxy says': 'Indique hole como dice el fabricante del epóxico',
  'Give hopper as the operator of the pump has it': 'Indique hopper como lo sabe el operador de la bomba',
  'Give initialSet as it was measured on this mix, and sheenAt as it was seen':
    'Indique initialSet como se midió en esta mezcla, y sheenAt como se vio',
  'Give isolation: the sides that do, for a board that lets the slab move':
    'Indique isolation: los lados que sí, para un relleno que deje mover la losa',
  'Give kerf for a saw; an abrasive wheel takes about {wheel}':
    'Indique kerf si es sierra; un disco abrasivo quita cerca de {wheel}',
  'Give landing, its depth, when the rise is measured to the door':
    'Indique landing, su fondo, cuando la altura se mide hasta la puerta',
  'Give landingDepth when the top is a landing': 'Indique landingDepth cuando arriba hay un descanso',
  'Give lap as the maker of the sheet says': 'Indique lap como dice el fabricante de la lámina',
  'Give length from the plans': 'Indique length según los planos',
  'Give longestRatio; published limits run from 1.25:1 to 2:1':
    'Indique longestRatio; los límites publicados van de 1.25:1 a 2:1',
  'Give looseLift, the thickness of a lift as spread':
    'Indique looseLift, el espesor de una capa tal como se tiende',
  'Give margin for working room beyond the forms':
    'Indique margin para el espacio de trabajo más allá de la cimbra',
  'Give maximum where the plans set the spacing': 'Indique maximum si los planos fijan la separación',
  'Give maximum, or use': 'Indique maximum, o use',
  'Give meanUnder as the plans have it': 'Indique meanUnder como lo traen los planos',
  'Give minimum, or another surface': 'Indique minimum, u otra surface',
  'Give minimumValley': 'Indique minimumValley',
  'Give moisture, the share of water that comes with the material':
    'Indique moisture, la parte de agua que trae el material',
  'Give openSides: 0 between walls, 1 against a wall': 'Indique openSides: 0 entre muros, 1 contra un muro',
  'Give pitch; 0% for level treads': 'Indique pitch; 0% para huellas a nivel',
  'Give placing.lostTime': 'Indique placing.lostTime',
  'Give placing.rate as this crew places': 'Indique placing.rate según coloca esta cuadrilla',
  'Give placing.reach as the supplier says': 'Indique placing.reach como dice el proveedor',
  'Give placing.speed': 'Indique placing.speed',
  'Give pushedOut as true where that is agreed with the operator of the pump':
    'Indique pushedOut: true si así se acordó con el operador de la bomba',
  'Give ready where the set is measured, or leave weather out for the whole range':
    'Indique ready si se mide el fraguado, u omita weather para tener todo el intervalo',
  'Give riseTo: "landing" when the rise ends on the landing':
    'Indique riseTo: "landing" cuando la altura termina en el descanso',
  'Give rollerMass, or looseLift as spread': 'Indique rollerMass, o looseLift tal como se tiende',
  'Give rules: accessible or public; outside the USA approved-document-k, din-18065, ncc of Australia or nbc of Canada':
    'Indique rules: accessible o public; fuera de EE. UU. approved-document-k, din-18065, ncc de Australia o nbc de Canadá',
  'Give runOut: "pyramid", or the area halfway in middleArea':
    'Indique runOut: "pyramid", o el área a la mitad en middleArea',
  'Give sampleUnder as the plans have it': 'Indique sampleUnder como lo traen los planos',
  'Give sealant.rod, the diameter at hand': 'Indique sealant.rod, el diámetro que se tiene',
  'Give service: partial-load or full-load': 'Indique service: partial-load o full-load',
  'Give sideSlope as level run for each unit of depth, for example "1:1"':
    'Indique sideSlope, el avance a nivel por cada unidad de profundidad, por ejemplo "1:1"',
  'Give sideSlope as level run for each unit of height, for example "2:1"':
    'Indique sideSlope, el avance a nivel por cada unidad de altura, por ejemplo "2:1"',
  'Give sill, from the foot of the wall to the opening': 'Indique sill, desde el pie del muro hasta el hueco',
  'Give spacing as the supplier sends them': 'Indique spacing, como los manda el proveedor',
  'Give spacing from the plans': 'Indique spacing según los planos',
  'Give split as "full-first"': 'Indique split: "full-first"',
  'Give stakes.depth; loose or wet ground takes more':
    'Indique stakes.depth; un suelo suelto o mojado pide más',
  'Give stakes.kind: steel': 'Indique stakes.kind: steel',
  'Give stakes.length': 'Indique stakes.length',
  'Give stakes.onCurves': 'Indique stakes.onCurves',
  'Give stakes.spacing': 'Indique stakes.spacing',
  'Give standard as your building department or the plans name it':
    'Indique standard como lo nombran la oficina de permisos de construcción o los planos',
  'Give steps.treadBars from the plans': 'Indique steps.treadBars según los planos',
  'Give stress from the plans': 'Indique stress según los planos',
  'Give unitWeight from the plans': 'Indique unitWeight según los planos',
  'Give table, or diameter, length and spacing': 'Indique table, o diameter, length y spacing',
  'Give the corners as a polygon': 'Indique las esquinas como polígono',
  'Give the slump as measured, if it is lower': 'Indique el revenimiento medido, si es menor',
  'Give tolerance': 'Indique tolerance',
  'Give tread or totalRun': 'Indique tread o totalRun',
  'Give use for a walk or a curb': 'Indique use si es banqueta o guarnición',
  'Give vibrated as true for a vibrating screed': 'Indique vibrated: true si la regla es vibratoria',
  'Give weather, or ready where the set is measured': 'Indique weather, o ready si se mide el fraguado',
  'Give weather; the plans and the engineer may set a time of their own':
    'Indique weather; los planos y el ingeniero pueden fijar su propia hora',
  'Give windHeight, {height} for a weather station':
    'Indique windHeight, {height} si es de una estación meteorológica',
  'Give workFrom': 'Indique workFrom',
  'Give yield as the bag prints it': 'Indique yield como lo imprime el saco',
  'Give water as the bag prints it': 'Indique water como lo imprime el saco',
  'Give workFrom and workTo': 'Indique workFrom y workTo',
  'Give {name} as the supplier has it': 'Indique {name} como lo tiene el proveedor',
  'Give {name} from the plans': 'Indique {name} según los planos',
  'Probe at the corners of the outline': 'Sondee en las esquinas del contorno',
  'Start at a corner from which all others can be seen, or give the corners':
    'Empiece en una esquina desde la que se vean todas las demás, o indique las esquinas',
  'Give slope': 'Dé slope',
  'Give endLanding, its length along the ramp': 'Dé endLanding, su largo a lo largo de la rampa',
  'Give landing, its length along the ramp': 'Dé landing, su largo a lo largo de la rampa',
  'Give rules: dwelling, approved-document-m, din-18040, as-1428, nbc, or service for carts only':
    'Dé rules: dwelling, approved-document-m, din-18040, as-1428, nbc, o service solo para carritos',
};
