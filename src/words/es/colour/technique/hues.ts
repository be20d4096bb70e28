import type { techniqueHues as english } from '../../../en/colour/technique/hues.ts';

/** Respuestas sobre lo claro, lo vivo y el tono de una barra, cuando la pregunta lo nombra. */
export const techniqueHues: typeof english = {
  'gel-for-pastels': {
    answer: ['Para pasteles y blanco, sin gel: masa fresca, sin toalla, molde chico en sitio frío.'],
    why: [
      'Queda lechoso y más pálido.',
      'Masa a 27 o 32 °C (81 a 90 °F), molde destapado o en una caja sin comida que esté fría un día; dos días hasta cortar.',
      'A medias deja un anillo más oscuro: todo o nada.',
    ],
  },
  'gel-for-bright': {
    answer: ['Para colores vivos, gel: tapado y abrigado quedan más intensos y algo translúcidos.'],
    why: [
      'Masa a 35 o 40 °C (95 a 104 °F), tapa y toalla, y a la hora mira si se agrieta.',
      'Sin blanco en esas partes.',
      'Todo o nada: a medias deja un anillo más oscuro.',
      'Leche y miel se calientan de más: fresco y destapado.',
    ],
  },
  'white-without-titanium': {
    answer: [
      'Sin dióxido de titanio: aceites claros, sin gel, sin vainilla, bien curado.',
      'Queda crema o marfil, no blanco papel.',
    ],
    why: [
      'Los más claros: coco refinado, manteca de cerdo, girasol alto oleico, oliva suave.',
      'El óxido de zinc blanquea más o menos la mitad y puede espesar; el caolín solo lo deja blanco roto.',
      'Masa fresca y una pizca de violeta ultramar quitan el amarillo.',
      'Leche, miel y manteca sin refinar oscurecen.',
    ],
  },
  'dull-at-large': {
    answer: [
      'Todos más pálidos o apagados a la vez: casi siempre sin gel, velo de ceniza o jabón aún húmedo.',
      'Júzgalo en cuatro semanas.',
    ],
    why: [
      'Limpia o cepilla una esquina: si debajo brilla, es ceniza, y se va con vapor o un enjuague.',
      'Lechoso por dentro: quedó frío, y la próxima va tapado y abrigado.',
      'Un solo color que se puso gris o marrón es la sosa: dime cuál.',
      'El blanco en la masa apaga todos los colores, y la dosis corta también.',
    ],
  },
  'lighten-in-pot': {
    answer: [
      'Sí, mientras esté líquida: dióxido de titanio humedecido, media cucharadita cada vez, a mano; o masa sin color.',
    ],
    why: [
      'El blanco lo hace lechoso además de claro, la masa sin color solo claro.',
      'Remueve suave, sin batidora.',
      'En crudo se ve más oscuro que la pastilla, así que para un poco antes.',
    ],
  },
  'lighten-next-time': {
    answer: [
      'Una pastilla hecha queda así.',
      'La próxima, la mitad de color, o un cuarto con algo de dióxido de titanio.',
    ],
    why: [
      'Apunta cuánto pusiste.',
      'Casi todos aclaran un poco en cuatro semanas de cura, y las plantas también con la luz.',
      'Rallado en jabón blanco da un refundido más claro.',
    ],
  },
  'rubs-off': {
    answer: [
      'La mica suelta de encima siempre se va un poco; el primer lavado la quita.',
      'La próxima, menos y en fresco.',
    ],
    why: [
      'Sopla el resto al aire libre o pasa un paño húmedo.',
      'Se pega mejor en un poco de aceite, o rociada con alcohol, lejos de llamas.',
    ],
  },
  'white-vanilla': {
    answer: ['Sí, se va a oscurecer: deja la parte blanca sin esencia, o usa una sin vainillina.'],
    why: [
      'Con 1 % de vainillina acaba beige, con 5 % marrón, con 10 % oscuro, en días o semanas, y pasa un poco a lo de al lado.',
      'El dióxido de titanio solo aclara el marrón.',
    ],
  },
  'blue-and-yellow': {
    answer: [
      'Un verde oliva o musgo apagado, de ultramar y óxido amarillo.',
      'Uno vivo: solo verde óxido de cromo.',
    ],
    why: [
      'Para empezar, el doble de amarillo que de azul; una base amarilla cuenta como amarillo.',
      'Pruébalo en una cucharada de masa.',
      '/preview mix:«1/4 tsp ultramarine + 1/2 tsp yellow oxide» lo enseña.',
    ],
  },
  'red-and-blue': {
    answer: [
      'Óxido rojo y azul dan un ciruela turbio.',
      'Morado más limpio: azul ultramar con rosa ultramar, o violeta.',
    ],
    why: [
      'Una mica roja o rosa que aguante la sosa es más limpia que el óxido.',
      'El ultramar violeta no pide mezcla.',
      'Pruébalo en una cucharada de masa.',
      '/preview mix:«1/4 tsp ultramarine + 1/4 tsp ultramarine pink» lo enseña.',
    ],
  },
  'with-white': {
    answer: [
      'El blanco lo hace pálido y lechoso: el óxido rojo da rosa salmón, el azul celeste, el negro un gris frío.',
    ],
    why: [
      'Cuatro partes de blanco por una de color es un pastel.',
      'Los óxidos siguen terrosos; para un rosa limpio, ultramar rosa o mica rosa.',
      'El carbón da un gris más fino que el óxido negro.',
      '/preview mix:«1/2 tsp titanium dioxide + 1/8 tsp red oxide» lo enseña.',
    ],
  },
};
