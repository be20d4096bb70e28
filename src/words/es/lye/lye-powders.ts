import { spaced } from '../../../engine/over-lines.ts';
import type { lyePowders as english } from '../../en/lye/lye-powders.ts';

/** Lo que se dice de polvos que dañan o que no son para jabón. */
export const lyePowders: typeof english = {
  'ultramarine-acid': {
    answer: [
      'No: ácido y azul ultramar nunca juntos, ni en la masa ni en la barra.',
      'Suelta sulfuro de hidrógeno, venenoso.',
    ],
    why: [
      'Limón, vinagre y ácido cítrico destruyen el azul y huele a huevo podrido.',
      spaced`
        En una receta el ácido va entero al agua de sosa primero, con la sosa que gasta: /plan
        additives:“citric acid 10 g”; el pigmento, solo en la traza.
      `,
      'Sobre una barra hecha, nada de ácido.',
      'Si huele a huevo podrido: todos fuera, aire libre, /first-aid.',
    ],
  },
  'prussian-acid': {
    answer: ['No: nada de ácido con azul de Prusia, que además no aguanta en jabón crudo.'],
    why: [
      'La sosa lo vuelve marrón óxido.',
      'Lleva cianuro atado al hierro: así es seguro, pero un ácido fuerte y caliente puede soltar cianuro de hidrógeno.',
      'Para un azul que aguante: ultramar, y con ese tampoco ácido.',
    ],
  },
  'craft-colour': {
    answer: ['No: un color para arte, resina, velas, uñas, pelo o ropa no va en un jabón para la piel.'],
    why: [
      'Nadie lo ha evaluado para la piel: puede llevar cromo VI, plomo, disolventes o tintes prohibidos, y la henna negra a menudo PPD.',
      'Además la sosa puede cambiarlo.',
      spaced`
        Solo lo que se vende como grado cosmético con su número CI en la etiqueta, como CI 77288 para el
        verde de óxido de cromo, y pregúntame «aguanta la mica, CI 77891, la sosa».
      `,
    ],
  },
  'ground-stuff': {
    answer: ['No: óxido de clavos, ladrillo, polvo de metal o carbón de barbacoa no van en el jabón.'],
    why: [
      'Nadie sabe qué metales llevan; rayan, y la sosa ataca el polvo de latón, bronce y aluminio, a veces con hidrógeno.',
      spaced`
        Para marrón y rojo: óxido de hierro, CI 77491, grado cosmético; dorado: mica con sus números CI;
        negro: carbón activado u óxido de hierro negro.
      `,
    ],
  },
  filler: {
    answer: ['No: yeso, escayola y talco no van en el jabón.'],
    why: [
      'El yeso fragua en la masa, se calienta, y lo haría en la tubería.',
      'El talco hace un polvo malo para los pulmones, y puede llevar amianto si no es de grado cosmético; polvos de bebé tampoco.',
      'Para un jabón más duro: más grasas duras, menos agua, de 10 a 20 g de sal por kg de aceites en el agua, y más curado.',
    ],
  },
};
