import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/conversation/glossary.ts';

export const terms: typeof en.terms = {
  batter: {
    name: 'masa',
    text: 'El jabón crudo mientras se vierte: aceites y sosa disuelta, batidos. Quema la piel.',
  },
  trace: {
    name: 'traza',
    text: 'El momento en que un hilo de masa se queda encima. Traza ligera se vierte, espesa se cucharea.',
  },
  superfat: {
    name: 'sobreengrasado',
    text: 'Por ciento de aceites que la sosa deja como aceite. 5 es lo normal; bajo 0 la pastilla es cáustica.',
  },
  gel: {
    name: 'gel',
    text: 'Fase caliente y traslúcida de la barra. Con gel se ve más hondo y claro; a medias, con anillo.',
  },
  glycerinRivers: {
    name: 'ríos de glicerina',
    text: 'Líneas claras en un jabón que se calentó con mucha agua. Solo es aspecto.',
  },
  ash: {
    name: 'ceniza de sosa',
    text: 'Velo blanco donde el jabón joven toca el aire. Solo es aspecto; se va con vapor o agua.',
  },
  premix: {
    name: 'premezcla',
    text: 'Un color ya humedecido, comprado o hecho: se mide la pasta, no el polvo.',
  },
  paste: { name: 'pasta', text: 'Polvo removido en poco líquido hasta que queda liso, antes de la masa.' },
  portion: { name: 'parte de masa', text: 'La masa que apartas para un color: «2 tazas».' },
  lake: { name: 'laca', text: 'Un tinte fijado en alúmina. La sosa suelta casi todos: migran y manchan.' },
  mica: { name: 'mica', text: 'Escamas nacaradas. Lo que las cubre decide si el color aguanta la sosa.' },
  oxide: {
    name: 'óxido',
    text: 'Óxidos de hierro y cromo: fuertes, baratos, firmes en sosa, con grumos. Humedécelos bien.',
  },
  dishTest: {
    name: 'prueba del plato',
    text: 'Una pizca de polvo en un plato de agua. Se reparte: agua. Se queda en el fondo: aceite o glicerina.',
  },
  testBar: {
    name: 'barra de prueba',
    text: 'Una barra pequeña de dosis conocida, curada. Dice la fuerza de tu bote: /calibrate.',
  },
  colourUnits: {
    name: 'unidades de color',
    text: 'Cuánto difieren dos colores (CIEDE2000): 2 apenas se ve, 10 es otro tono.',
  },
  zap: {
    name: 'calambre',
    text: 'Un pinchazo de sosa libre, como de pila. Nunca pongas jabón en la lengua: papel de pH, o la yema mojada de una pastilla curada.',
  },
  cure: {
    name: 'curado',
    text: spaced`
      Las semanas de secado después de cortar, cuatro o más: se va agua y la pastilla queda más dura y
      suave. Está curada cuando pierde menos del 1 % de su peso por semana.
    `,
  },
  ricing: {
    name: 'efecto arroz',
    text: 'La masa se pone granulosa, como arroz con leche, casi siempre por una fragancia. Batirla hasta alisarla suele ayudar, y mientras espesa.',
  },
  acceleration: {
    name: 'aceleración',
    text: 'La masa espesa demasiado rápido, a menudo por una fragancia, por calor o por batir mucho. Deja de batir y échala al molde.',
  },
  bleed: {
    name: 'migración',
    text: spaced`
      Color que pasa a la masa vecina o a la espuma. Lo hacen los tintes y casi todas las lacas; pigmentos
      como óxidos y ultramares se quedan en su sitio.
    `,
  },
  dispersion: {
    name: 'dispersión',
    text: spaced`
      Polvo repartido por igual en agua, aceite o glicerina antes de la masa, o comprado así. Lo que lleva
      una comprada no se sabe si no lo dice la etiqueta: empieza con un cuarto.
    `,
  },
  ppo: {
    name: 'ppo (por libra de aceites)',
    text: 'Por libra de aceites: una libra (454 g) de los aceites solos, sin agua ni sosa. 1 cdta ppo en 1 kg de aceites son 2,2 cdta.',
  },
  waterDiscount: {
    name: 'descuento de agua',
    text: spaced`
      Menos agua de lo usual, así la lejía es más fuerte: la masa espesa antes, las pastillas endurecen
      antes, con menos gel y menos ríos. Nunca menos agua que sosa, peso por peso.
    `,
  },
};
