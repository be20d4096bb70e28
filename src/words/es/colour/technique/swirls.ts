import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueSwirls as english } from '../../../en/colour/technique/swirls.ts';

/** Lo que se dice de verter: capas, líneas, remolinos y sus útiles. */
export const techniqueSwirls: typeof english = {
  'layers-how': {
    answer: [
      'Traza media, y la siguiente cuando una cucharada queda encima sin hundirse: a menudo 5 a 20 minutos.',
    ],
    why: [
      'Molde a nivel, golpeado para sacar el aire.',
      'Vierte bajo, sobre el dorso de una cuchara o una espátula.',
      'Muy pronto se mezclan; muy tarde se separan: entonces raya la superficie con un tenedor.',
      'La masa que espera, en emulsión y sin batir.',
    ],
  },
  'mica-line': {
    answer: ['Un velo fino de mica, tamizado sobre una capa firme, y la siguiente vertida desde muy bajo.'],
    why: [
      'Una línea gruesa parte la pastilla: el jabón debe verse debajo.',
      'Deja un pelo libre en el borde.',
      'Vierte sobre una espátula para que no se lave.',
      'Corta la barra de lado, para que el hilo vaya a lo largo de la línea y no arrastre el polvo por la cara.',
    ],
  },
  'drop-swirl': {
    answer: [
      'Base en traza ligera a media en molde alto, y colores líquidos en líneas desde distintas alturas.',
    ],
    why: [
      'Desde alto se hunden, desde bajo quedan arriba.',
      'Dos o tres colores, cada uno en jarra con pico.',
      'Sin remover, o una pasada de percha al final.',
    ],
  },
  'pot-swirl': {
    answer: [
      'Traza ligera; vierte los colores en la olla en tres o cuatro sitios, una o dos vueltas, y al molde.',
    ],
    why: [
      'Como crema líquida.',
      'Dos o tres colores además de la base, con contraste.',
      'No más de una o dos vueltas lentas, y vierte a lo largo de una línea: más remover da barro.',
    ],
  },
  'hanger-swirl': {
    answer: ['Traza ligera, y una a tres pasadas con la percha: más da barro.'],
    why: [
      'Primero capas o gotas de dos a cuatro colores, justo tan espesos que no se hundan.',
      'Baja por un lado hasta el fondo, cruza, sube y vuelve en lazos, y sal por donde entraste.',
      'Pon blanco o masa sin color entre colores que juntos dan marrón, como azul y naranja.',
    ],
  },
  'spoon-swirl': {
    answer: [
      'Cucharadas en traza ligera a media, alternando colores, y luego una cuchara o un palito por en medio.',
    ],
    why: [
      'Tan espesas que queden una junto a otra.',
      'Un ocho o unos pocos lazos, y para.',
      'Golpea el molde al final.',
    ],
  },
  'comb-swirl': {
    answer: [
      'Líneas finas en traza ligera, una junto a otra; peine a lo ancho, de vuelta por en medio, y curvas.',
    ],
    why: [
      'Los botes con boquilla dan líneas parejas; el molde plano da sitio.',
      'Primero el peine en un sentido, luego en el otro entre sus líneas, y después curvas para las plumas.',
      'Masa lenta y sin esencia rápida, porque lleva tiempo.',
    ],
  },
  'divider-swirl': {
    answer: [
      'Cada color en traza ligera entre sus separadores, todos a la misma altura; sácalos rectos y dibuja.',
    ],
    why: [
      'Vierte todos poco a poco para que los separadores no se inclinen.',
      'Luego líneas con un palito: primero a lo ancho, después a lo largo, y quizá curvas.',
      'Que estén igual de espesos importa más que muy líquidos.',
    ],
  },
  'how-many-colours': {
    answer: ['Con dos o tres y la base basta; cuatro como mucho para un primer remolino.'],
    why: [
      'Cada uno quiere su jarra, ya humedecido, y al menos media taza (120 ml) de masa.',
      'Deja de un tercio a la mitad como base, con contraste.',
      '/plan reparte el lote y dosifica cada uno.',
    ],
  },
  piping: {
    answer: [
      'Con manga en traza espesa: el pico queda firme, como crema de mantequilla.',
      'Colorea en líquido y espera.',
    ],
    why: [
      'Aparta un tercio de la masa, echa el color en traza ligera y déjala 10 a 40 minutos, removiendo de vez en cuando.',
      'Se escurre: demasiado pronto.',
      'Dura en la manga: tarde, así que llena media cada vez.',
      'Lo de debajo tiene que estar firme.',
      'La manga puede reventar con masa cruda.',
    ],
  },
  'pour-order': {
    answer: [
      'Lo que espesa antes va antes: la jarra con esencia y las que llevan dióxido de titanio o arcilla.',
    ],
    why: [
      'En capas, de abajo arriba: lo más oscuro al fondo y al final lo que quieres encima.',
      'En la olla y en gotas: primero la base, luego los colores finos, y el más fuerte al final y poco.',
      'Remueve a mano las otras jarras cada uno o dos minutos mientras tiñes.',
    ],
  },
  'swirl-tools': {
    answer: [
      'Un pincho, un palillo, el mango de una cuchara o una percha forrada de plástico: lo que sea fino y limpio.',
    ],
    why: [
      'Nunca alambre de aluminio, zinc o estañado: la sosa se lo come.',
      'Acero inoxidable, bambú, silicona y plástico PP van bien; la madera, desde entonces solo para jabón.',
      'Lo fino dibuja líneas finas, la cuchara anchas.',
      'Un peine: pinchos clavados en una tira de plástico firme.',
    ],
  },
  'easiest-swirl': {
    answer: [
      'El más fácil: en la olla, un color y blanco.',
      'Luego de gota y a cucharadas; percha; separadores y peine al final.',
    ],
    why: [
      'En la olla no pide útiles y perdona espesa y líquida.',
      'La percha pide dos o tres capas en traza ligera y una a tres pasadas.',
      'Separadores (taiwan) y pavo real piden masa pareja y líquida mucho rato: antes, una receta lenta.',
      'Dos colores con contraste se ven más que cinco.',
    ],
  },
  'split-batter': {
    answer: [
      'Por peso y en emulsión: la mitad de base y el resto a partes iguales, cada una en su jarra con el color listo.',
    ],
    why: [
      'La masa es unas 1,4 veces los aceites. 1200 g en tres colores: 600, 300 y 300, o 400 cada uno.',
      spaced`
        Se separa antes porque así todas quedan igual de líquidas y basta remover a mano; si coloreas la
        olla grande, espesa y no queda base.
      `,
      'Un acento pide 10 a 15 %.',
      '/plan portions:«1/2 plain; 1/4 red oxide; 1/4 charcoal» reparte y dosifica.',
    ],
  },
  'dust-on-top': {
    answer: [
      'Sí: un velo fino con colador sobre la tapa fresca, o 1 cdta de mica en 2 o 3 cdta de aceite ligero, a gotas.',
    ],
    why: [
      'La mica seca queda suelta: se va a las manos y con el primer lavado.',
      'Se pega mejor cuando la tapa aún está pegajosa.',
      'Con aceite, unas gotas por pastilla: de más tarda días.',
      'En jabón curado: con pincel y un poco de alcohol, lejos de llamas.',
      'El dorado solo sigue dorado aquí.',
    ],
  },
};
