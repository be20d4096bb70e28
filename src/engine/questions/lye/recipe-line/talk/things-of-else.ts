/*
 * What is no part of a recipe, holds none of it and is nothing that it is weighed, written or told by: of whatever is lost, halved, late or
 * left of these, the pot stays as it is. No bowl, jar, scale, list, shop or cupboard is among them. Lower case without accents, both
 * languages, from general knowledge (no source).
 */
import { spaced } from '../../../../over-lines.ts';

const listed = (...lists: readonly string[]): string =>
  lists
    .join(' ')
    .split(/\s+/u)
    .filter(word => word !== '')
    .join('|');

const WEATHER = listed(
  spaced`
    rain raining rained snow snowing snowed sun sunshine wind windy gale storm stormy thunder thunderstorm
    lightning hail fog foggy frost frosty heat heatwave weather sleet drizzle blizzard
  `,
  spaced`
    lluvia llueve llovio llovia lloviendo llover diluvia nieve nieva nevo nevando viento tormenta trueno
    truenos rayo granizo niebla helada ventarron ventolera aguacero chaparron calor calorazo frio sol
    bochorno clima tiempo temporal
  `,
);
const HOUSE = listed(
  spaced`
    house home kitchen cooker oven stove hob heating heater boiler radiator light lights lamp bulb power
    electricity internet wifi signal phone mobile telephone tablet laptop computer keyboard key keys caps
    screen battery batteries door doorbell bell window windows roof gutter floor stairs chair table sofa
    couch bed curtain curtains bath shower tap sink dishwasher fridge washing laundry iron hoover broom mop
    apron gloves goggles glasses specs spectacles sleeve sleeves shirt jumper shoes boots coat hat towel
    towels cloth rag sponge radio telly tv music song clock timer alarm thermometer whisk spatula ladle
    spoon blender stick-blender funnel string tape scissors knife
  `,
  spaced`
    casa cocina horno estufa hornalla luz luces lampara foco corriente electricidad internet telefono
    celular movil pantalla teclado tecla bateria pilas puerta timbre ventana techo gotera escalera silla
    mesa sofa cama cortina ducha grifo fregadero lavaplatos lavadora plancha escoba trapeador delantal
    guantes gafas lentes anteojos manga camisa zapatos botas abrigo gorro toalla trapo repasador esponja
    radio tele television musica cancion reloj cronometro alarma termometro batidora varilla espatula
    cucharon cuchara licuadora embudo cinta tijeras cuchillo
  `,
);
const OUTSIDE = listed(
  spaced`
    car van bus train tram bike bicycle lorry truck tractor boat ferry road roads street traffic bridge bin
    garden greenhouse hedge lawn tree trees flowers roses tomatoes chickens hens dog dogs puppy cat cats
    kitten rabbit horse horses goat goats cow cows sheep pig donkey parrot bird birds whales church chapel
    school college hospital doctor dentist job shift boss wedding party funeral birthday christening fair
    exam exams homework football match game holiday holidays visitors guests tourists plumber electrician
    builder builders
  `,
  spaced`
    coche carro auto camioneta camion autobus colectivo tren tranvia bici bicicleta moto tractor barco
    carretera calle trafico puente jardin huerto huerta arbol arboles flores rosas tomates gallinas gallo
    perro perra perros perrito gato gata gatos gatito conejo caballo burro cabra cabras vaca vacas ovejas
    loro pajaro iglesia misa escuela colegio hospital medico dentista trabajo turno jefe boda fiesta
    velorio funeral cumpleanos bautizo feria examen examenes tarea partido futbol vacaciones visita visitas
    turistas plomero fontanero electricista albanil albaniles
  `,
);
const FOOD = listed(
  spaced`
    tea coffee cuppa kettle biscuit biscuits cake cakes fruitcake bread toast sandwich soup stew supper
    dinner lunch breakfast pie pies scones porridge rice pasta potatoes beans apple apples oranges salad
    omelette pancakes wine beer whisky squash chocolate sweets jam marmalade pudding leftovers
  `,
  spaced`
    te cafe cafecito mate mates tetera galleta galletas pastel torta tarta bizcocho pan tostada tostadas
    sandwich bocadillo sopa caldo guiso guisado cena almuerzo comida desayuno merienda empanadas tamales
    tortillas arroz fideos papas patatas frijoles lentejas manzanas ensalada panqueques vino cerveza ron
    chocolate dulces mermelada flan asado
  `,
);
/** Of the soap, but of no fat: what it is scented, coloured, poured and wrapped with. */
const OF_SOAP = listed(
  spaced`
    fragrance scent scents perfume mica micas colour colours color colors colourant pigment oxide clay
    charcoal oats oatmeal glitter petals salt stamp label labels ribbon wrapper mould moulds mold molds
    liner lining greaseproof loaf bars
  `,
  spaced`
    fragancia aroma perfume esencia mica micas color colores colorante pigmento oxido arcilla carbon avena
    purpurina petalos sal sello etiquetas cinta envoltorio molde moldes forro barras pastillas lavanda
  `,
);

/** A thing that is none of the recipe, as a pattern. */
export const THING_OF_ELSE = `(?:${[WEATHER, HOUSE, OUTSIDE, FOOD, OF_SOAP].join('|')})(?:['’]s)?`;
/** Weather, which is told of nothing. */
export const WEATHER_WORD = `(?:${WEATHER})`;
/** What goes into soap beside its fats and is weighed or not, and takes no lye. */
export const BESIDE_FATS = `(?:${OF_SOAP}|colou?rants?|fragrances|perfumes|fragancias|colorantes|arcillas|additives|aditivos|extras)`;
