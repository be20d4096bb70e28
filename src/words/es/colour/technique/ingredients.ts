import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueIngredients as english } from '../../../en/colour/technique/ingredients.ts';

/** Lo que se dice de lo que un ingrediente hace con el color: plantas, leche, miel, aceites, arcillas. */
export const techniqueIngredients: typeof english = {
  botanicals: {
    answer: [
      'Casi todos los pétalos, flores y hojas se ponen marrones; solo la caléndula guarda su amarillo.',
    ],
    why: [
      'Dentro se oscurecen en días y dejan cercos.',
      'Encima, secos, apretados en traza espesa o al día siguiente; algo oscurecen igual.',
      'Café molido, avena y semillas quedan como son y raspan: finos, y como mucho 1 cdta por 500 g de aceites.',
      'Nada fresco: se pone marrón y se pudre.',
    ],
  },
  'milk-colour': {
    answer: [
      'La leche se pone beige o naranja con el calor: congelada, la sosa a cucharadas, todo fresco y sin gel.',
    ],
    why: [
      'Su azúcar se tuesta con la sosa, la de cualquier leche.',
      'No pases de 30 °C (86 °F) con la sosa y no tapes el molde.',
      spaced`
        Así queda crema: el blanco es marfil, con 1 cdta de dióxido de titanio por 500 g de aceites;
        azules y lilas se agrisan, así que un poco más, o tonos cálidos.
      `,
      'O leche en polvo en la traza, 1 cda por 500 g de aceites.',
    ],
  },
  'honey-sugar': {
    answer: [
      'Miel, azúcar, cerveza y vino lo ponen de beige a marrón y lo calientan: como mucho 1 a 2 cdta por 500 g de aceites.',
    ],
    why: [
      'Disuelta en un poco del agua de la receta, en traza ligera, nunca en sosa caliente.',
      'Vertido fresco, sin toalla, y mirando si se agrieta.',
      'Cerveza y vino hervidos sin gas y helados, o suben.',
      'Del vino tinto no queda violeta.',
      'Le van los tonos cálidos, no los pasteles ni el azul.',
    ],
  },
  'yellow-base': {
    answer: [
      'Aceites más claros, o 1/2 a 1 cdta de dióxido de titanio por 500 g de aceites en esa parte antes del color.',
    ],
    why: [
      spaced`
        El amarillo y el verde del aceite de oliva, usado o sin refinar se suman a todo: el azul sale
        verdoso, el lila gris, el rosa salmón.
      `,
      'Los más claros: coco refinado, manteca de cerdo, oliva suave, girasol alto oleico.',
      'Una pizca de violeta quita el amarillo del blanco.',
      'Sobre aceite oscuro o usado: carbón, cacao, ladrillo, verde hondo, nada de pasteles.',
    ],
  },
  'clays-colour': {
    answer: [
      'Sí, tonos tierra suaves que se quedan: 1 cdta por 500 g de aceites, hasta 3 a pleno color, en tres veces su volumen de agua.',
    ],
    why: [
      'Rosa: de rosa viejo a ladrillo.',
      'Roja: terracota.',
      'Amarilla: ocre.',
      'Verde: gris verdoso, caqui con aceite amarillo.',
      'Morada: malva grisáceo.',
      'Caolín: blanco roto; bentonita: beige gris, y es la que más espesa.',
      'Barro del río no: nadie sabe qué lleva.',
    ],
  },
  'steep-in-oil': {
    answer: [
      'Sí, para achiote, alcaneta, pimentón o cúrcuma: 1 a 2 cda en 250 ml (1 taza) de aceite ligero, colado, sin granos.',
    ],
    why: [
      'En caliente, al baño maría de 50 a 60 °C (122 a 140 °F), dos horas; en frío y a oscuras, cuatro a seis semanas.',
      'Cuélalo con tela o filtro de café.',
      'Sustituye una parte de los aceites de la receta, del 5 al 25 % según lo hondo que quieras, y cuenta entre ellos.',
      'Achiote: amarillo a naranja.',
      'Alcaneta: lila a gris azulado.',
      'Pimentón: durazno.',
      'En polvo da más, pero deja motas y raspa.',
      'Los verdes de hojas se van igual.',
    ],
  },
};
