import type { says as en } from '../../../en/declared/colour/palette.ts';

export const says: typeof en = {
  purpose: 'Colores que casan: qué hace tu estantería y qué comprar',
  options: {
    colours: 'Colores, «teal, oro, #a04060», o un ambiente: «atardecer, cuatro capas»',
    portion: 'Masa para cada color: «2 tazas». 1 taza si no dices nada',
    base: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites',
    gel: '¿Pasa por gel?',
  },
  today: {
    purpose: 'Qué puedes hacer hoy: paletas de tu estantería cuyos tonos casan',
    scheme: {
      says: 'Cómo se relacionan los tonos',
      choices: {
        analogous: 'Vecinos',
        complementary: 'Opuestos',
        'split-complementary': 'Opuestos partidos',
        triadic: 'Triángulo',
        tetradic: 'Cuadrado',
      },
    },
  },
  make: { purpose: 'Una receta de tu estantería para cada color de una paleta' },
  buy: { purpose: 'El colorante o los dos que más acercan una paleta' },
};
