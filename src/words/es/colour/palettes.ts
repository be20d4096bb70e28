import type { HueScheme } from '../../../engine/palettes/hue-schemes.ts';
import type * as en from '../../en/colour/palettes.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const schemes: Record<HueScheme, string> = {
  analogous: 'vecinos',
  complementary: 'opuestos',
  'split-complementary': 'opuestos partidos',
  triadic: 'triángulo',
  tetradic: 'cuadrado',
};
const and = new Intl.ListFormat('es');

const { one } = numbersIn('es');

export const palettes: typeof en.palettes = {
  schemes,
  today: ({ count, first }) =>
    `${count} ${count === 1 ? 'paleta' : 'paletas'} de tu estantería hoy; la más viva: ${first}`,
  nothingToday: 'Hoy ninguna paleta de tu estantería casa por sus tonos',
  nothingTodayWhy:
    'Faltan dos tonos enfrentados, o tres en triángulo. Mira /palette buy con una paleta que te guste.',
  row: ({ scheme, list }) => `${scheme}: ${list}`,
  colour: ({ word, doses }) => `${word} (${doses})`,
  dose: ({ spoons, name }) => `${spoons} de ${name}`,
  inPortion: ({ portion }) => `Cucharas para ${portion} cada uno.`,
  schemeNote: 'Tonos por el círculo de Itten (1961), medidos en OKLCh; cada uno a menos de medio paso.',
  todayTitle: 'Lo que hace hoy tu estantería',
  buy: ({ names, off, before }) =>
    `Compra ${and.format(names)}: difiere ${one(off)} de media, ${one(before)} ahora`,
  buyNothing: ({ off, reached }) =>
    reached
      ? 'No compres nada: tu estantería llega a todo'
      : `Nada que aguante la sosa y esté en las listas legales lo acerca más: difiere ${one(off)} ahora`,
  one: 'Si compras uno',
  two: 'Si compras dos',
  purchase: ({ names, off }) => `${and.format(names)}: difiere ${one(off)} de media`,
  now: 'Con tu estantería',
  wanted: 'Lo que quieres',
  withIt: ({ names }) => `Con ${and.format(names)}`,
  off: ({ hex, deltaE }) => `${hex}, difiere ${one(deltaE)}`,
  buyNote:
    'Solo ofrezco pigmentos que aguantan la sosa y que ambas leyes listan para jabón. Mejores dosis, antes de cucharas: /match las da.',
  emptyShelf: 'Tu estantería está vacía, así que parto del jabón solo.',
  buyTitle: 'Lo que traería',
  make: ({ reached, of, portion }) =>
    `${reached} de ${of} colores alcanzados con tu estantería, ${portion} cada uno`,
  makeRow: ({ hex, recipe, deltaE, nearness }) => `${hex}: ${recipe}; difiere ${one(deltaE)}, ${nearness}`,
  makeNone: ({ hex }) => `${hex}: nada de tu estantería se acerca`,
  makeTitle: ({ theme }) => (theme ? `Una paleta: ${theme}` : 'Tu paleta'),
  madeOf: 'Hecho',
  idea: ({ names }) => `${names.join(', ')}: colores que casan.`,
  goesWith: ({ colour, names }) => `Junto a ${colour}: ${names.join(', ')}, y blanco o crema.`,
  ideaWhy: ({ hexes }) =>
    `${hexes.join(', ')}. Deja un tercio de la masa sin color o blanca, para que respiren. Un ambiente o una lista de colores va en /palette make.`,
  ideaMake: 'De mi estantería',
  ideaBuy: 'Qué comprar',
  reachMore: 'Para lo que no alcanza: /palette buy con las mismas palabras.',
  picture: ({ list }) => `Franjas de color: ${list}.`,
  pictureNote: 'Colores curados previstos. Las pantallas varían; decide una barra de prueba.',
};

export const palettesRefusals: Pick<
  RefusalSentences,
  'palette-size' | 'palette-unreadable' | 'palette-without-jars'
> = {
  'palette-size': ({ least, most }) =>
    `Una paleta tiene de ${least} a ${most} colores, como «teal, oro, crema».`,
  'palette-unreadable': ({ text }) =>
    `No entiendo «${text}» como paleta. Nombra colores, «teal, oro, #a04060», o un ambiente: «atardecer, cuatro capas».`,
  'palette-without-jars': () => 'Tu estantería aún no tiene con qué dar color: pon un bote con /shelf add.',
};
