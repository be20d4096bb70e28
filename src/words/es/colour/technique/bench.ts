import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueBench as english } from '../../../en/colour/technique/bench.ts';

/** Lo que se dice de la mesa de trabajo: primera receta, moldes, balanza, limpieza. */
export const techniqueBench: typeof english = {
  'starter-recipe': {
    answer: [
      'Primera receta: 50 % oliva, 25 % coco, 25 % manteca de cerdo o palma, sobreengrasado 5 %, 500 g de aceites.',
      'Un color.',
    ],
    why: [
      'Es lenta, se deja remolinear y endurece en un día o dos.',
      'Karité o manteca de cacao hasta 10 % en lugar de la de cerdo, ricino hasta 5 % para la espuma.',
      spaced`
        Cada aceite lleva su sosa: que te la pese para los tuyos exactos: /plan oils:«50% oliva, 25%
        coco, 25% manteca de cerdo» size:«500 g».
      `,
      'Gafas y guantes, la sosa al agua fría.',
      'Empieza con un óxido o una mica, 1/2 cdta, y sin aroma.',
    ],
  },
  'clean-clothes': {
    answer: ['Masa cruda en la ropa: con guantes, ráspala, aclara con mucha agua fría y lávala aparte.'],
    why: [
      'Quema la piel un día o dos: si está empapada, quítatela y aclara la piel de debajo bajo el grifo.',
      'La lana y la seda sufren con la sosa: aclara ya.',
      'Si ya es jabón: deja secar, cepilla y lava normal.',
      'Si queda color: lavavajillas frotado y al lavado; carbón y óxidos salen, la cúrcuma y los tintes a menudo no.',
      'Ni lejía ni vinagre mientras haya sosa.',
    ],
  },
  'stuck-in-mould': {
    answer: [
      'Pegado al molde: déjalo un día o dos más, o dos horas en el congelador; separa los lados y luego empuja.',
    ],
    why: [
      'Con guantes, es jabón joven.',
      'El blando se pega: mucha oliva, mucha agua, sin gel; quiere días, no fuerza.',
      'Al sacarlo del congelador, que se seque lo que suda.',
      'Silicona: que entre aire alrededor antes de empujar.',
      'Madera o caja sin papel: una hoja fina por los lados.',
      'La próxima fórralo; 1 cdta de lactato de sodio por 500 g de aceites, en el agua de sosa ya fría, lo endurece.',
    ],
  },
  'clean-tools': {
    answer: [
      'Quita la masa cruda con papel, con guantes; deja los útiles un día, ya será jabón, y lávalos con agua caliente.',
    ],
    why: [
      'El papel, a la basura.',
      'Poca masa por el desagüe y mucha agua caliente detrás: la masa y la cera cuajan en las tuberías.',
      spaced`
        El tinte en silicona o plástico no hace daño: una hora en agua caliente con jabón, o aceite
        frotado, quita casi todo; cúrcuma y tintes se quedan.
      `,
      'Manos y uñas: aceite, luego jabón y cepillo.',
      'Moldes de madera: que seque, raspa, paño húmedo.',
      'Nada de lavavajillas con masa cruda, hace espuma.',
    ],
  },
  'scale-drift': {
    answer: [
      'Firme y nivelada, pila nueva, encendida diez minutos; compruébala con un peso conocido y ponla a cero.',
    ],
    why: [
      'Una moneda o un paquete de azúcar cerrado dice cuánto falla.',
      spaced`
        El aire, un móvil y una jarra caliente la mueven; muchas se apagan o se arrastran si echas
        despacio: echa en un vaso y pesa el vaso.
      `,
      'La sosa de 500 g de aceites pide balanza de 1 g, menos pide 0,1 g.',
      'Lo que se pesó en una balanza que bailaba no se sabe: pésalo otra vez antes de que toque los aceites.',
    ],
  },
  'make-it-gel': {
    answer: [
      'Para que gelifique: vierte a 38 a 43 °C (100 a 109 °F), tapa, una toalla un día; mira a la hora.',
    ],
    why: [
      'O un horno templado a 60 °C (140 °F) como mucho y apagado, con el molde dentro toda la noche, nada de plástico que ablande.',
      'Un molde pequeño o plano pierde calor y es el que más lo necesita.',
      'Se oscurece y se pone translúcido entero, luego aclara: una hora o dos bastan.',
      'Con leche, miel, azúcar o cerveza: ni horno ni toalla, se calienta solo.',
      'Grieta o bulto arriba: destapa.',
    ],
  },
};
