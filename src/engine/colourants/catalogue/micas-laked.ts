import type { Colourant } from '../colourant.ts';
import { mica } from './micas-mineral.ts';
import { namesIn, toldApart } from './name-list.ts';
import { published, remembered } from './origins.ts';

const laked = {
  ...mica,
  alkali: { behaviour: 'conditional', on: 'bleeds-from-lake' },
  light: 'fades-slowly',
  hints: ['lake-bleeds', ...mica.hints],
  origins: {
    ...mica.origins,
    alkali: published(
      'Pharmaceutical Research 1993;10:1458: lakes let go of their dye as the alumina dissolves',
    ),
    light: remembered('dye chemistry: these dyes fade in daylight'),
  },
} as const satisfies Partial<Colourant>;

/** Micas dyed with lakes. */
export const lakedMicas: readonly Colourant[] = [
  ...(
    [
      [
        'red-40-lake-mica',
        ['Red mica', 'Red 40 lake'],
        ['Mica roja', 'laca Rojo 40'],
        'red 40 mica, red 40 lake mica, mica rojo 40',
        '16035',
        'Red 40 Lake',
        'duller-brown',
        '#c8342f',
      ],
      [
        'red-7-lake-mica',
        ['Red mica', 'Red 7 lake'],
        ['Mica roja', 'laca Rojo 7'],
        'red 7 mica, red 7 lake mica, red 6 mica, mica rojo 7',
        '15850',
        'Red 7 Lake',
        'yellower',
        '#b42a4a',
      ],
      [
        'red-27-lake-mica',
        ['Hot pink mica', 'Red 27 lake'],
        ['Mica fucsia', 'laca Rojo 27'],
        'red 27 mica, red 28 mica, red 28 lake mica, hot pink mica, magenta mica, fuchsia mica, mica fucsia, mica magenta, mica rosa fuerte',
        '45410',
        'Red 27 Lake',
        'bright-pink',
        '#d93a8c',
      ],
      [
        'yellow-5-lake-mica',
        ['Yellow mica', 'Yellow 5 lake'],
        ['Mica amarilla', 'laca Amarillo 5'],
        'yellow 5 mica, yellow 5 lake mica, lemon mica, lemon yellow mica, mica limón, mica amarillo 5',
        '19140',
        'Yellow 5 Lake',
        'redder',
        '#e6c72e',
      ],
      [
        'blue-1-lake-mica',
        ['Blue mica', 'Blue 1 lake'],
        ['Mica azul', 'laca Azul 1'],
        'blue 1 mica, blue 1 lake mica, sky blue mica, electric blue mica, mica azul 1, mica azul cielo, mica celeste',
        '42090',
        'Blue 1 Lake',
        'violet-or-teal',
        '#3b86d1',
      ],
    ] as const
  ).map(
    ([id, [en, lakeEn], [es, lakeEs], synonyms, ci, lake, towards, hex]): Colourant => ({
      ...laked,
      id,
      ...toldApart({ en, es }, { en: lakeEn, es: lakeEs }),
      synonyms: namesIn(synonyms),
      ci: ['77019', '77891', ci],
      inci: `Mica, Titanium Dioxide, ${lake}`,
      alkali: { ...laked.alkali, towards },
      hex,
    }),
  ),
  {
    ...laked,
    id: 'green-lake-mica',
    ...toldApart(
      { en: 'Green mica', es: 'Mica verde' },
      { en: 'Yellow 5 and Blue 1 lakes', es: 'lacas Amarillo 5 y Azul 1' },
    ),
    synonyms: namesIn(
      `lake green mica, lime green mica, apple green mica, kelly green mica, yellow 5 blue 1 mica, mica verde lima, mica verde manzana, mica verde laca`,
    ),
    ci: ['77019', '77891', '19140', '42090'],
    inci: 'Mica, Titanium Dioxide, Yellow 5 Lake, Blue 1 Lake',
    hex: '#6cb33f',
  },
];
