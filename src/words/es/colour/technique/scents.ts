import { spaced } from '../../../../engine/over-lines.ts';
import type { techniqueScents as english } from '../../../en/colour/technique/scents.ts';

/** Lo que se dice de los aromas en la masa con color. */
export const techniqueScents: typeof english = {
  'vanilla-brown': {
    answer: [
      'La vainillina oscurece el jabón durante semanas y ningún blanco lo para: sin esencia lo que deba quedar claro.',
    ],
    why: [
      'Con 1 % de vainillina en la esencia acaba beige, con 5 % marrón, con 10 % o más marrón oscuro; su ficha dice cuánta lleva.',
      'El dióxido de titanio solo lo aclara.',
      'No es un fallo ni hace daño, pero no se quita.',
      'Cuenta con ello: la esencia en una parte que pueda ser marrón o negra, nada en blancos y pasteles; o una esencia sin vainillina.',
    ],
  },
  'scent-amount': {
    answer: [
      'Fragancia: alrededor del 3 % de los aceites, 30 g por kilo (media onza por libra), y nunca más que el límite de su ficha.',
    ],
    why: [
      'La ficha (IFRA, jabón que se aclara) dice el máximo de ese aroma, y puede ser mucho menos del 3 %: canela y clavo 0,5 % o menos.',
      'Se pesa, sin cucharas.',
      'Va lo último y a mano.',
      'Nada para bebés.',
      'El color se calcula aparte: dime cuál y para cuánto.',
    ],
  },
  'scent-lasts': {
    answer: [
      'Para que dure el olor: un 3 % de los aceites dentro de su límite, vertido fresco, curado con aire y a oscuras, y luego cerrado.',
    ],
    why: [
      'Los cítricos se van en semanas; maderas, resinas, pachuli y casi todas las fragancias se quedan.',
      'Sin gel y a 30 a 35 °C (86 a 95 °F) se pierden menos los ligeros.',
      'Que la arcilla o el almidón lo fijen no lo he visto probado.',
      'Más de lo que permite la ficha no es camino: irrita la piel.',
    ],
  },
  'scent-mix': {
    answer: ['Sí: mezcla los aromas en un vaso y échalos al final; juntos no más de un 3 % de los aceites.'],
    why: [
      'Y cada uno dentro del límite de su ficha.',
      'Si uno acelera, acelera todo; si uno lleva vainillina, todo se oscurece.',
      'Huele antes una gota de cada uno en papel y deja reposar la mezcla un día.',
    ],
  },
  'scent-speeds': {
    answer: [
      'Corren las florales y de especias: rosa, jazmín, lila, clavo, canela.',
      'Lavanda y casi todos los cítricos son tranquilos.',
    ],
    why: [
      spaced`
        La próxima: 30 °C (86 °F), sosa al 28 o 30 %, aceites lentos, primero los colores, la esencia al
        final y a mano, o solo en la parte sin color.
      `,
      'Pruébala: unas gotas en una cucharada de masa, o en 100 g.',
      'Ayuda lo que diga el vendedor de aceleración.',
      'Clavo y canela irritan la piel: solo lo que diga su certificado.',
    ],
  },
};
