import { spaced } from '../../../engine/over-lines.ts';
import type { lyeHouse as english } from '../../en/lye/lye-house.ts';

/** What is said to questions of safety about a house where soap is made: its cleaners, its sink, how a loaf behaves. */
export const lyeHouse: typeof english = {
  'lye-with-cleaner': {
    answer: [
      'Nunca: la sosa no se mezcla con ningún otro producto, ni lejía, ni amoniaco, ni ácido, ni desatascador.',
    ],
    why: [
      'La lejía da gas tóxico con ácidos y amoniaco; la sosa fuerte se calienta y salpica con casi todo.',
      spaced`
        Para una olla: deja que el jabón se endurezca un día, quítalo con papel, y luego agua caliente y
        lavavajillas, aclarando bien entre un producto y otro.
      `,
      'Guantes, gafas, ventana abierta.',
      'Si ya se juntaron, o huele, o alguien tose: fuera, al aire, y /first-aid.',
    ],
  },
  'hot-crack': {
    answer: [
      'Desenvuélvelo y deja que se enfríe, con una bandeja debajo: caliente y con grieta, se sobrecalentó.',
    ],
    why: [
      'Guantes y gafas; la cara lejos, no lo aprietes ni lo remuevas.',
      'Aire o un ventilador, suelo frío bajo el molde, fuera del horno.',
      spaced`
        Ya frío, la grieta es casi solo estética: córtalo pasado un día, mira si hay aceite o gotas
        claras separadas, y úsalo solo si no las hay y no da calambre.
      `,
      'Si sigue subiendo, salpica o humea: apártate, déjalo, que nadie se acerque, y /first-aid.',
    ],
  },
  'batter-away': {
    answer: ['No: la masa cruda no va por ningún desagüe.', 'Es cáustica y cuaja en la tubería.'],
    why: [
      'Échala a una caja forrada o a otro molde y deja que se endurezca; curada y sin calambre es jabón.',
      'Limpia olla y utensilios con papel, con guantes y gafas, déjalos un día y luego lávalos.',
      'Papel y restos en una bolsa cerrada, lejos de niños y animales, según tus normas locales.',
    ],
  },
  'safe-test': {
    answer: [
      'Cuatro semanas de curado, pesos correctos, sin calambre y sin gotas: entonces úsalo.',
      'Con un solo «no», espera.',
    ],
    why: [
      'Primero los números: dime «puse 100 g de sosa en 700 g de oliva» y los compruebo.',
      'Luego mira: sin cristales blancos dentro, sin gotas claras, sin capa grasa.',
      'Papel de pH en espuma mojada: de 9 a 10,5 es lo normal, 11 o más es sospechoso, y una buena cifra sola no prueba nada.',
      'Si pica o da calambre, es sosa libre; nunca la lengua para saberlo.',
      'Guantes hasta entonces; quien vende necesita lo que pidan sus normas locales.',
    ],
  },
  'no-superfat': {
    answer: [
      'Con 0 % no hay reserva: cualquier error la deja con sosa de más.',
      'Lo normal es 5 %; de 15 a 20 % si es todo coco.',
    ],
    why: [
      'Los aceites varían un 2 o 3 % de un lote a otro, y la báscula también: con 0 % a la mitad de las pastillas les sobra sosa.',
      'Para lavar ropa hay quien usa de 0 a 1 %, nunca para la piel.',
      'El jabón solo de coco reseca con un 5 %: por eso lleva más.',
      '/plan oils:«coco 100%» size:«1000 g aceites» superfat:20',
    ],
  },
  vanillin: {
    answer: [
      'Con 1 % de vainillina el jabón se pone tostado, con 5 % marrón, con 10 % o más marrón oscuro, en días o semanas.',
    ],
    why: [
      'Ningún blanco lo tapa: colorea solo una parte sin aroma, o acepta el marrón.',
      spaced`
        Cuánto: la dosis para jabón que se aclara de su certificado (IFRA, categoría 9), normalmente
        hasta el 3 % de los aceites (30 g por kg), pesado, nunca más.
      `,
      'Su porcentaje de vainillina no es una dosis.',
      '/plan fragrance:«3%, vainillina 10%»',
    ],
  },
  'scale-batch': {
    answer: ['Todo por el mismo número: el doble de aceites lleva el doble de sosa y el doble de agua.'],
    why: [
      'Así 99 g de sosa para 700 g de aceites son 198 g para 1400 g de los mismos aceites.',
      spaced`
        Otros aceites llevan otra sosa: dímelos uno a uno, como «cuánta sosa para 1000 g de oliva y 400
        g de coco»; /plan con la medida del molde lo calcula.
      `,
      'Un lote más grande también se calienta más.',
    ],
  },
};
