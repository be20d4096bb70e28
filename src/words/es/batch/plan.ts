import { oilById } from '../../../engine/batch/oils/find-oil.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { OUNCE_G } from '../../../engine/quantities/units.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type * as en from '../../en/batch/plan.ts';
import { numbersIn } from '../../numbers.ts';
import { shelf } from '../members/shelf.ts';
import { batch } from './batch.ts';

const { down, figure, one, whole } = numbersIn('es');
const quoted = (names: readonly string[]) => names.map(name => `«${name}»`);
const orList = new Intl.ListFormat('es', { type: 'disjunction' });
const cups = (count: string) => (count === '1' ? '1 taza' : `${count} tazas`);

type Plan = typeof en.plan;

const inTwo: Plan['inTwo'] = ({ first, other }) => (other === undefined ? first : `${first} (${other})`);
const weightInTwo: Plan['weightInTwo'] = (grams, { decimals, first }) => {
  const [inGrams, inOunces] = [`${figure(grams, decimals)} g`, `${down(grams / OUNCE_G, 2)} oz`];
  return first === 'grams' ? { first: inGrams, other: inOunces } : { first: inOunces, other: inGrams };
};
const volumeInTwo: Plan['volumeInTwo'] = v => ({
  first: `${figure(v.millilitres, 0)} ml`,
  other: cups(figure(v.cups, v.cups < 10 ? 1 : 0)),
});

export const plan: Plan = {
  figure,
  inTwo,
  mass: (grams, { decimals, first }) =>
    first === 'grams' ? `${figure(grams, decimals)} g` : `${down(grams / OUNCE_G, 2)} oz`,
  weightInTwo,
  weight: (grams, shown) => inTwo(weightInTwo(grams, shown)),
  volumeInTwo,
  volume: v => inTwo(volumeInTwo(v)),
  capital,
  lye: { NaOH: 'Sosa (NaOH)', KOH: 'Potasa (KOH)' },
  lyeOf: v => `${v.grams} de ${v.alkali}`,
  water: 'Agua en la jarra de la sosa',
  holdBack: v => `${v.held} menos que los ${v.all} de la receta: los traen los colores.`,
  fragrance: 'Fragancia',
  fragranceNote: v => `${one(v.percent)} % de los aceites, solo en las partes con aroma.`,
  batter: 'Masa',
  batterNote: v =>
    `${v.grams}, ${figure(v.density, 3)} g/ml. Unos ${figure(v.reserve, 0)} ml se quedan en la olla y los vasos.`,
  superfat: 'Sobreengrasado',
  superfatNote: v => spaced`
    ${v.usual ? 'Usual' : 'Pedido'}: ${one(v.asked)}
    %.${v.carriers ? ' El aceite de los colores lo sube.' : ''} Los aceites varían: está entre
    ${one(v.low)} y ${one(v.high)} %.
  `,
  percent: v => `${one(v.percent)} %`,
  portion: v => `${capital(batch.portionName(v.name))}: ${v.volume}`,
  dose: v => `${v.spoons} de ${v.colour}, unos ${v.grams} g${v.liquid ? `, en ${v.liquid}` : ''}`,
  blend: { whisk: 'intégralo con varillas', 'stick-blend': 'intégralo con la batidora' },
  liquid: v => `${v.spoons} de ${v.liquid}${v.dipped ? ' apartado de la receta' : ''}`,
  dippedOil: 'aceite',
  noColour: 'sin color',
  inside: v => `dentro: sobreengrasado ${one(v.superfat)} %, sosa al ${one(v.lye)} %`,
  scent: v => `${v.grams} de fragancia`,
  unscented: 'sin aroma',
  watch: 'Atención',
  colours: 'Sobre los colores',
  stock: 'Tu estantería',
  enough: v => `«${v.name}»: hacen falta ${shelf.grams(v.grams)}, hay ${shelf.grams(v.left)}.`,
  runsLow: v =>
    `«${v.name}»: hacen falta ${shelf.grams(v.grams)}, hay ${shelf.grams(v.left)}. Después quedará poco: ${shelf.grams(v.after)}.`,
  short: v => `No alcanza «${v.name}»: hacen falta ${shelf.grams(v.grams)} y hay ${shelf.grams(v.left)}.`,
  uncounted: v => `«${v.name}»: hacen falta ${shelf.grams(v.grams)}; no sé cuánto tienes.`,
  heat: 'Calor de la barra (estimación)',
  heatShape: v =>
    `No has dicho molde: he supuesto una barra de ${one(v.widthCm)} cm de ancho y ${one(v.heightCm)} cm de alto.`,
  timeline: 'Qué hacer y cuándo',
  cardTitle: v => v.name ?? 'Ficha del lote',
  cardAlt: v => `Ficha del lote: ${v.headline}.`,
  timelineAlt: v => `Qué hacer y cuándo, para ir marcando: ${v.headline}.`,
  card: {
    across: 'Corte del pan de jabón',
    byVolume: 'Por volumen, sin remolino.',
    ring: v => `Por volumen. A trazos: donde puede verse el anillo de gel, a ${whole(v.millimetres)} mm.`,
    gelsFrom: 'gelifica desde aquí',
    hours: v => `${v.hours} h`,
  },
  print: 'Imprimir en una página',
  printed: {
    a4: 'Tu ficha en una página A4, para imprimir y marcar.',
    letter: 'Tu ficha en una página Carta, para imprimir y marcar.',
  },
  handoutAlt: v => `Hoja de clase para imprimir: ${v.headline}`,
  handoutTitle: 'Hoja de clase',
  stations: 'Mesas',
  station: v => `Mesa ${v.number}: ${v.people} ${v.people === 1 ? 'persona' : 'personas'}`,
  eachStation: 'En cada mesa',
  shopping: 'Para toda la clase',
  oil: v => `${v.grams} de ${midSentence(oilById(v.id).names.es)}`,
  gear: v => `${v.pairs} pares de gafas y de guantes`,
  leader: 'Para quien enseña',
  lyeInAll: v => `${v.grams} de álcali en total, pesados mesa por mesa`,
  waterInAll: v => `${v.grams} de agua en total`,
  saved: v => `Guardada como «${v.name}».`,
  forms: {
    begin: 'Planear un lote con color',
    more: 'Sosa, aroma, extras',
    heat: 'Molde, calor, báscula',
    save: 'Guardar esta receta',
    oils: 'Aceites',
    oilsHint: 'coco 30%, oliva 50%, palma 20%',
    size: 'Tamaño (si hay porcentajes)',
    sizeHint: '1000 g de aceites, 1,2 l de masa, molde 25x9x7 cm, 12 x 100 ml',
    water: 'Agua',
    waterHint: '33% sosa, 2:1 (agua a álcali) o 38% de aceites. Si no dices nada, 33% sosa',
    superfat: 'Sobreengrasado, por ciento',
    superfatHint: '5 si no dices nada',
    portions: 'Partes y colores',
    portionsHint: '2 tazas azul ultramar; 500 ml mica dorada pastel en agua; resto sin color',
    lye: 'Sosa o potasa',
    lyeHint: 'NaOH, KOH 90%, NaOH 95% + KOH 5%, o solución al 50%',
    liquid: 'En vez de agua',
    liquidHint: 'leche de cabra; mitad cerveza, mitad agua; nata 100 g en los aceites',
    fragrance: 'Fragancia',
    fragranceHint: '3%, vainillina 8%. Escribe «sin aroma» tras las partes que no lleven',
    additives: 'Aditivos',
    additivesHint: 'miel 10 g, sal 5%, arcilla 1 cda, ácido cítrico 5 g',
    swirl: 'Cómo viertes',
    process: 'El primer día',
    material: 'Molde',
    start: 'Masa al verter',
    temperatureHint: '38 C o 100 F',
    room: 'Habitación',
    scale: 'Tu báscula va de, gramos',
    name: 'Un nombre para ella',
  },
  swirls: {
    'in-the-pot': 'en la olla',
    drop: 'a hilo',
    layered: 'en capas',
    hanger: 'con percha',
    single: 'un solo color',
  },
  change: 'Cambiar',
  tryAgain: 'Corregir',
  showAll: 'Mostrar a todos',
  myShelf: 'Mi estantería para esto',
  takeAll: v =>
    v.colours === 1 ? 'Sacar el color de mi estantería' : `Sacar los ${v.colours} colores de mi estantería`,
  takenAll: v =>
    `Sacado de tu estantería: ${v.outcomes.map(({ name, change = 0 }) => `${shelf.grams(-change)} de «${name}»`).join(', ')}.`,
  takenNone: 'No se ha sacado nada de tu estantería.',
};

export const recipes: typeof en.recipes = {
  none: 'Aún no tienes recetas. Planea un lote con /plan y guárdalo con /recipe save.',
  count: v => `${v.own} tuyas, ${v.shared} compartidas en este grupo`,
  own: 'Tuyas',
  shared: 'Compartidas en este grupo',
  row: v => `${v.name}: ${v.oils}, ${v.size}`,
  sharedRow: v => `${v.name}, de ${v.by}: ${v.oils}, ${v.size}`,
  times: v => `${figure(v.factor, 2)} veces`,
  sizeOfOils: 'tamaño por el peso de los aceites',
  asWritten: 'Tal como está escrita',
  by: v => `De ${v.name}.`,
  saved: v => `«${v.name}» está guardada. Planéala cuando quieras con /plan recipe:${v.name}`,
  copied: v => `«${v.name}» ya es tuya, copia de «${v.from}».`,
  sharedNow: v => `«${v.name}» está compartida con este grupo.`,
  unshared: v => `«${v.name}» ya no está compartida con este grupo.`,
  removed: v => `«${v.name}» ya no está entre tus recetas.`,
  removedStillShared: 'La copia que compartiste con este grupo sigue ahí hasta /recipe unshare.',
  rescaled: v => `«${v.name}», ${figure(v.factor, 2)} veces el tamaño. No se guarda nada si no lo pides.`,
  rescaledKept: v => `«${v.from}», ${figure(v.factor, 2)} veces el tamaño, guardada como «${v.name}».`,
  repeated: 'Eso ya lo había hecho: no se ha hecho dos veces.',
};

export const planRefusals: typeof en.planRefusals = {
  'recipe-unknown': ({ asked, nearest }) =>
    nearest.length === 0
      ? `No hay ninguna receta «${asked}», ni otra todavía: planea un lote y guárdalo con /recipe save.`
      : `No hay ninguna receta «${asked}», ni tuya ni de este grupo. Las más parecidas: ${orList.format(quoted(nearest))}.`,
  'recipe-ambiguous': ({ asked, candidates }) =>
    `«${asked}» puede ser ${orList.format(quoted(candidates))}: ¿cuál?`,
  'recipe-name-taken': ({ name }) => `Ya tienes una receta «${name}»: usa otro nombre o quita antes esa.`,
  'recipe-shared-already': ({ name }) =>
    `«${name}» ya está compartida. Para mostrar una más nueva, retírala antes con /recipe unshare.`,
  'recipe-shared-name-taken': ({ name, by }) =>
    `${by} ya comparte aquí una «${name}»: copia la tuya con otro nombre y comparte esa.`,
  'recipe-not-yours': ({ name, by }) =>
    `«${name}» la compartió ${by}: solo esa persona o quien administra el grupo puede retirarla.`,
  'recipes-full': ({ most }) => `Guardo como mucho ${most} recetas en un sitio: quita alguna antes.`,
  'plan-forgotten': () => 'Ya no tengo ese plan a mano: pide /plan otra vez.',
  'oils-missing': () =>
    '¿Qué aceites? Añade oils:«coco 30%, oliva 50%, palma 20%», o recipe: con el nombre de una receta.',
  'additive-without-name': ({ text }) =>
    `¿«${text}» de qué aditivo? Pon también su nombre: «miel 10 g». El aroma va en Fragancia.`,
  'number-unreadable': ({ field }) => `«${field}» necesita un número solo, como 5 o 0,1.`,
  'factor-unreadable': ({ text }) =>
    `No puedo escalar con «${text}». Escribe «2», «1/2», «x3» o un tamaño como «1500 g de aceites» o «molde 25x9x7 cm».`,
};
