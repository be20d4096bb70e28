import type * as en from '../../en/colour/mixing.ts';
import { numbersIn } from '../../numbers.ts';

const { plain } = numbersIn('es');
const andList = new Intl.ListFormat('es');
/** Lo cerca que queda, para quien no quiere solo un número. */
const nearness: (typeof en.match)['nearness'] = ({ within }) => {
  if (within <= 2) return 'no se distinguen';
  if (within <= 5) return `muy cerca, a ${within} como mucho`;
  if (within <= 8) return `debería quedar cerca: a ${within} como mucho`;
  if (within <= 14) return `un color emparentado: a ${within} como mucho`;
  return `a ojo: a ${within} como mucho`;
};

const lye: (typeof en.match)['lye'] = {
  stable: 'aguanta la sosa',
  conditional: 'aguanta en casi todos los lotes',
  unknown: 'sin probar en sosa',
  shifts: 'cambia de color en la sosa',
  bleeds: 'sangra a sus vecinos',
  destroyed: 'se pierde en la sosa',
  never: 'no debe tocar la sosa',
};

export const preview: typeof en.preview = {
  headline: ({ word, hex, plusMinus, mix }) => `${word}, ${hex} ± ${plusMinus}: ${mix}`,
  inBase: ({ base, gel }) => `${base}, ${gel}`,
  ofOils: 'tus aceites',
  base: 'En',
  otherwise: { gelled: 'Si gelifica', notGelled: 'Si no gelifica' },
  colour: ({ word, hex }) => `${word}, ${hex}`,
  spooned: ({ spoons, grams, portion }) => `${spoons} en ${portion}, unos ${plain(grams)} g`,
  aboveMost: ({ most }) =>
    `Se ve lo que dijiste, pero es más de lo que esta porción debe llevar: ${most} como mucho. Más tiñe la espuma y el paño.`,
  pooled: 'De barras de prueba que otros de aquí hicieron con el mismo producto.',
  under: ({ spoon }) => `menos de ${spoon}`,
  calibrateFirst: 'Una barra de prueba y /calibrate bars lo afinan para tu bote.',
  columns: { tint: 'Toque', pastel: 'Pastel', medium: 'Medio', full: 'Pleno' },
  card: {
    mix: 'Tu mezcla',
    plain: 'Sin color',
    note: 'Color curado previsto. Cada pantalla es distinta; decide una barra de prueba.',
    expected: ({ plusMinus }) => `más o menos ${plusMinus} (2 apenas se nota, 10 es otro tono)`,
    inPortion: ({ portion }) => `para ${portion}`,
  },
  alt: ({ word, hex, list }) => `Carta de muestras: tu mezcla es ${word}, ${hex}. Sin gel: ${list}.`,
  altField: ({ strength, word, hex }) => `${strength} ${word} ${hex}`,
};

export const match: typeof en.match = {
  nearness,
  lye,
  oneCup: '1 taza',
  headline: ({ recipe, portion, word, nearness: near }) => `${recipe} para ${portion}: ${word}, ${near}`,
  unreached: ({ recipe, portion, nearest, target, deltaE }) =>
    nearest === target
      ? `${recipe} para ${portion}: ${nearest}, lo más cerca que llego (difiere ${plain(deltaE)})`
      : `${recipe} para ${portion}: ${nearest}, lo más cerca que llego a ${target} (difiere ${plain(deltaE)})`,
  buy: ({ names, off }) => `Para acercarte, compra ${andList.format(names)}: difiere ${plain(off)}.`,
  nothing: ({ target }) => `${target} es casi el jabón sin color: no añadas nada`,
  part: ({ spoons, name }) => `${spoons} de ${name}`,
  predicted: 'Saldría',
  predictedValue: ({ word, hex, plusMinus }) => `${word} ${hex}, más o menos ${plusMinus}`,
  pigment: 'Pigmento en total',
  pigmentValue: ({ grams, percent }) =>
    `${plain(grams)} g, el ${percent} % de lo máximo que admite esta porción`,
  others: 'Otras maneras',
  other: ({ recipe, word, hex, deltaE, risk }) =>
    `${recipe}: ${word} ${hex}, difiere ${plain(deltaE)}; ${risk}`,
  gramsOf: ({ grams }) => `unos ${plain(grams)} g`,
  share: ({ percent }) => `${percent} % de lo máximo que admite.`,
  enough: ({ left }) => `Tienes ${left} en tu estantería.`,
  short: ({ left }) => `Solo tienes ${left} en tu estantería.`,
  uncounted: 'En tu estantería, sin cantidad anotada.',
  scale:
    'Diferir 2 apenas se nota, 10 ya es otro tono. El «más o menos» cuenta lo que aún nadie sabe de tus botes.',
  rounding: ({ unrounded }) => `Sin redondear a cucharas podría ser ${plain(unrounded)}.`,
  onlyOfThese: 'Solo con los colorantes que se nombraron.',
  fromCatalogue: 'Del catálogo: pigmentos que aguantan la sosa. Sin tintes ni plantas.',
  shelfEmpty: 'Aún no hay nada utilizable en tu estantería, así que esto es del catálogo.',
  leftOut: ({ names }) => `Fuera, porque no sé qué llevan: ${names}.`,
  target: 'Quieres',
  targetValue: ({ word, hex }) => `${word} ${hex}`,
  dose: ({ number }) => `${number}: cómo dosificarla`,
  take: ({ number }) => `${number}: sacarla de mi estantería`,
  takenAll: ({ list }) => `Sacado de tu estantería. Queda: ${list}.`,
  left: ({ name, grams }) => `${name} ${grams}`,
  card: {
    target: 'Quieres',
    recipe: ({ number, nearness: near }) => `${number}: ${near}`,
    note: 'Mitad izquierda: el color que quieres. Mitad derecha: el color curado previsto.',
  },
  alt: ({ target, list }) => `El color deseado ${target} junto a cada receta: ${list}.`,
  photo: {
    which: ({ count }) => `¿Qué color quieres? Veo ${count} en la foto`,
    pick: 'Elige un color',
    item: ({ number, word, hex }) => `${number}: ${word} ${hex}`,
    share: ({ percent }) => `${percent} % de la pastilla`,
    balanced: 'Equilibrado con la hoja blanca de la foto.',
    unbalanced:
      'No se ve ninguna hoja blanca y la luz es una suposición: pon papel blanco al lado para un color más fiel.',
    alt: ({ list }) => `Los colores principales de la foto: ${list}.`,
  },
};

export const calibrating: typeof en.calibrating = {
  plainLeftOut:
    'La barra sin color quedó fuera: con varios botes no sé de cuál es la base. Dala con item: y las barras de un solo bote.',
  headline: ({ name, times, before, after }) =>
    `«${name}» es ${times}: más o menos ${plain(after)} ahora, ${plain(before)} antes`,
  notKept: ({ name, off }) =>
    `No se guarda: estas barras no encajan con «${name}», difieren ${plain(off)} en el mejor caso`,
  asStrong: 'tan fuerte como lo habitual',
  stronger: ({ times }) => `${plain(times)} veces tan fuerte como lo habitual`,
  bar: ({ dose, hex, expected, deltaE }) =>
    `${dose}: tu barra ${hex}, ahora prevista ${expected}, difiere ${plain(deltaE)}`,
  plainBar: ({ hex }) => `Barra sin color ${hex}: por ella se juzga la base`,
  doseOf: ({ spoons }) => `${spoons} por taza`,
  bars: 'Tus barras de prueba',
  fullCup: 'Color pleno en una taza',
  spoonsNow: ({ now, usual }) =>
    now === usual ? `${now}, como siempre` : `ahora ${now}; de un bote normal, ${usual}: /dose ya lo usa`,
  covering: 'Poder cubriente',
  strength: 'Fuerza de color',
  timesKind: ({ times }) => `${plain(times)} veces lo habitual`,
  fit: 'Tus barras',
  fitValue: ({ before, after }) => `difieren ${plain(after)} de media, antes ${plain(before)}`,
  kept: ({ name, lot }) =>
    `Guardado con ${lot} de «${name}»: lo usan /preview y /match. Un lote nuevo empieza de cero.`,
  more: 'Una segunda barra con otra intensidad separaría la fuerza del poder cubriente.',
  otherBase: 'Tus barras anteriores eran de otra base, así que ya no cuentan.',
  fromPhoto: ({ hex, plusMinus }) => `Leído en la foto: ${hex}, más o menos ${plusMinus}.`,
  shared: ({ name, others }) =>
    others === 0
      ? `Compartido con este grupo: quien tenga un bote llamado «${name}» parte de ahí.`
      : `Compartido con este grupo como «${name}»; ${others === 1 ? 'otro bote ayudó' : `otros ${others} botes ayudaron`} al tuyo.`,
  helped: ({ others }) =>
    others === 1
      ? 'Ayudó otro bote del mismo nombre de este grupo.'
      : `Ayudaron otros ${others} botes del mismo nombre de este grupo.`,
  withdrawn: 'Ya no se comparte con este grupo.',
  mixedJars: 'Lo que las barras mezcladas dicen de tus botes',
  mixedBars: 'Tus barras mezcladas',
  mixedNotKept: ({ off }) =>
    `No se guarda: ningún bote así da estos colores, difieren ${plain(off)} en el mejor caso`,
  mixedShared: ({ names }) => `Compartido con este grupo: ${names.join(', ')}.`,
  mixedWhy:
    'Los botes que comparten barra se aprenden juntos: una barra de cada uno, o los dos en otras partes, los distingue.',
  plot: {
    title: ({ name }) => `Barras de prueba de ${name}`,
    lightness: 'Claridad (100 blanco, 0 negro)',
    chroma: 'Viveza (0 gris)',
    dose: 'Cucharaditas por taza de masa',
    measured: 'tus barras',
    usual: 'bote habitual',
    fitted: 'previsto ahora',
    pairs: 'Cada barra: a la izquierda la tuya, a la derecha la prevista',
  },
  alt: ({ name, list }) => `Claridad y viveza de ${name} según la dosis, medidas y previstas. ${list}.`,
};

export const mixingRefusals: typeof en.mixingRefusals = {
  'mix-empty': () => 'Di qué lleva, por ejemplo «violeta ultramar pastel + dióxido de titanio 1/4 cdta».',
  'mix-too-many': ({ most }) => `En una porción caben como mucho ${most} colorantes; con más sale barro.`,
  'mix-part-without-name': ({ text }) =>
    `«${text}» no nombra ningún colorante. Escribe «mica dorada pastel» o «1/4 cdta de mica dorada».`,
  'base-unreadable': ({ text }) =>
    `No entiendo «${text}» como base. Di blanca, crema, amarilla o verde, o tus aceites: «oliva 60%, coco 40%».`,
  'test-bar-unreadable': ({ text }) =>
    `No entiendo «${text}» como barra de prueba. Da su dosis y luego su color: «1/4 cdta por taza #6b5aa8».`,
  'lab-out-of-range': ({ text }) =>
    `«${text}» no es un color: en Lab, L va de 0 a 100, y a y b de −128 a 128.`,
  'match-of-nothing': () =>
    'La sosa echa a perder todos los colorantes que nombraste: nombra uno que aguante, como un óxido o un ultramar.',
  'match-without-target': () =>
    'Di qué color quieres, por ejemplo «#6b3fa0» o «teal», o adjunta una foto de él.',
  'match-two-targets': () => 'Da un color o una foto, no ambos: busco uno cada vez.',
  'match-forgotten': () => 'Esa búsqueda es de hace demasiado: vuelve a usar /match y pulsa allí.',
  'calibration-photo-without-dose': () =>
    'Di también la dosis de la barra de la foto, por ejemplo dose: «1/4 cdta por taza».',
  'calibration-without-item': () =>
    '¿Qué bote? Da item: su nombre, o nómbralo en la barra: «Cielo 1 cdta + Blanco 1/2 cdta #8899bb».',
  'calibration-mix-without-jar': ({ text }) =>
    `«${text}» no lleva ningún bote de tu estantería: nombra uno tuyo, o añádelo antes con /shelf add.`,
  'calibration-photo-without-white': () =>
    'No veo ninguna hoja blanca en esa foto, así que no conozco su luz. Pon papel blanco junto a la barra, con luz de día, y prueba otra vez.',
};
