import type * as en from '../../en/conversation/glossary.ts';

export const terms: Readonly<Record<keyof typeof en.terms, en.Explained>> = {
  batter: {
    name: 'masa',
    means: 'El jabón crudo mientras se vierte: aceites y sosa disuelta, batidos.',
    more: 'Quema la piel.',
  },
  trace: {
    name: 'traza',
    means: 'El momento en que un hilo de masa se queda encima.',
    more: 'Traza ligera se vierte, espesa se cucharea.',
  },
  superfat: {
    name: 'sobreengrasado',
    means:
      'Por ciento de aceites que la sosa deja como aceite. 5 es lo normal; bajo 0 la pastilla es cáustica.',
  },
  gel: {
    name: 'gel',
    means: 'Fase caliente y traslúcida de la barra.',
    more: 'Con gel se ve más hondo y claro; a medias, con anillo.',
  },
  glycerinRivers: {
    name: 'ríos de glicerina',
    means: 'Líneas claras en un jabón que se calentó con mucha agua.',
    more: 'Solo es aspecto.',
  },
  ash: {
    name: 'ceniza de sosa',
    means: 'Velo blanco donde el jabón joven toca el aire.',
    more: 'Solo es aspecto; se va con vapor o agua.',
  },
  premix: {
    name: 'premezcla',
    means: 'Un color ya humedecido, comprado o hecho: se mide la pasta, no el polvo.',
  },
  paste: {
    name: 'pasta',
    means: 'Polvo removido en poco líquido hasta que queda liso, antes de la masa.',
  },
  portion: {
    name: 'parte de masa',
    means: 'La masa que apartas para un color: «2 tazas».',
  },
  lake: {
    name: 'laca',
    means: 'Un tinte fijado en alúmina.',
    more: 'La sosa suelta casi todos: migran y manchan.',
  },
  mica: {
    name: 'mica',
    means: 'Escamas nacaradas.',
    more: 'Lo que las cubre decide si el color aguanta la sosa.',
  },
  oxide: {
    name: 'óxido',
    means: 'Óxidos de hierro y cromo: fuertes, baratos, firmes en sosa, con grumos.',
    more: 'Humedécelos bien.',
  },
  dishTest: {
    name: 'prueba del plato',
    means: 'Una pizca de polvo en un plato de agua.',
    more: 'Se reparte: agua. Se queda en el fondo: aceite o glicerina.',
  },
  testBar: {
    name: 'barra de prueba',
    means: 'Una barra pequeña de dosis conocida, curada.',
    more: 'Dice la fuerza de tu bote: /calibrate.',
  },
  colourUnits: {
    name: 'unidades de color',
    means: 'Cuánto difieren dos colores (CIEDE2000): 2 apenas se ve, 10 es otro tono.',
  },
  zap: {
    name: 'calambre',
    means: 'Un pinchazo de sosa libre, como de pila.',
    more: 'Nunca pongas jabón en la lengua: papel de pH, o la yema mojada de una pastilla curada.',
  },
  cure: {
    name: 'curado',
    means:
      'Las semanas de secado después de cortar, cuatro o más: se va agua y la pastilla queda más dura y suave.',
    more: 'Está curada cuando pierde menos del 1 % de su peso por semana.',
  },
  ricing: {
    name: 'efecto arroz',
    means: 'La masa se pone granulosa, como arroz con leche, casi siempre por una fragancia.',
    more: 'Batirla hasta alisarla suele ayudar, y mientras espesa.',
  },
  acceleration: {
    name: 'aceleración',
    means: 'La masa espesa demasiado rápido, a menudo por una fragancia, por calor o por batir mucho.',
    more: 'Deja de batir y échala al molde.',
  },
  bleed: {
    name: 'migración',
    means: 'Color que pasa a la masa vecina o a la espuma.',
    more: 'Lo hacen los tintes y casi todas las lacas; pigmentos como óxidos y ultramares se quedan en su sitio.',
  },
  dispersion: {
    name: 'dispersión',
    means: 'Polvo repartido por igual en agua, aceite o glicerina antes de la masa, o comprado así.',
    more: 'Lo que lleva una comprada no se sabe si no lo dice la etiqueta: empieza con un cuarto.',
  },
  ppo: {
    name: 'ppo (por libra de aceites)',
    means:
      'Por libra de aceites: una libra (454 g) de los aceites solos, sin agua ni sosa. 1 cdta ppo en 1 kg de aceites son 2,2 cdta.',
  },
  waterDiscount: {
    name: 'descuento de agua',
    means:
      'Menos agua de lo usual, así la lejía es más fuerte: la masa espesa antes, las pastillas endurecen antes, con menos gel y menos ríos.',
    more: 'Nunca menos agua que sosa, peso por peso.',
  },
};
