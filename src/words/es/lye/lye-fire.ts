import { spaced } from '../../../engine/over-lines.ts';
import type { lyeFire as english } from '../../en/lye/lye-fire.ts';

/** What is said of fire, heat and current near lye. */
export const lyeFire: typeof english = {
  'electric-shock': {
    answer: [
      'Corta antes la luz en el cuadro.',
      'Hasta entonces no toques ni el aparato, ni nada mojado, ni a quien lo sujeta.',
    ],
    why: [
      'No respira bien, no responde, se ha quemado o el corazón va raro: llama ya a tu número de emergencias.',
      'Quien se ha llevado un calambre va hoy al médico, aunque se encuentre bien.',
      'Si un cable o la batidora cayó en la sosa: corta la luz, desenchufa, luego gafas y guantes, y sácalo por la parte seca.',
      'No se usa más.',
      'Sosa en la piel: agua corriente, 20 minutos.',
    ],
  },
  'alcohol-and-fire': {
    answer: [
      'No: alcohol nunca cerca de una llama, cocina de gas, vela, placa o cigarrillo.',
      'Su vapor se enciende.',
    ],
    why: [
      'El vapor corre por la mesa y prende a un metro, y lo que rocías también.',
      'Antes apaga llamas y gas y abre la ventana; luego rocía.',
      spaced`
        Fundir jabón con alcohol es un oficio aparte, al baño maría tapado con calor eléctrico ya
        apagado y un extintor a mano; no para principiantes.
      `,
      'Si arde: apártate, tapa o paño húmedo encima, número de emergencias.',
    ],
  },
  'smoking-oil': {
    answer: [
      'Apaga el fuego y no eches nada: ni sosa ni agua.',
      'El aceite que humea está a punto de arder.',
    ],
    why: [
      'Deja la olla donde está, con tapa, la cara lejos, hasta que baje de 50 °C (122 °F); tarda una hora.',
      'Si arde: tapa o manta ignífuga, fuego apagado, nunca agua; todos fuera y número de emergencias.',
      'El aceite que humeó huele a quemado: mejor no para jabón.',
      'Las grasas se funden al mínimo y no necesitan más de 60 °C (140 °F).',
    ],
  },
  'hot-liquid': {
    answer: ['No: solo helado o congelado.', 'La sosa en un líquido caliente hierve y salpica al momento.'],
    why: [
      'La sosa sola ya calienta el agua fría de 40 a 60 °C (72 a 108 °F).',
      'Café, té o caldo: hazlo el día antes, cuélalo, enfríalo o congélalo; la leche, congelada a medias.',
      'Al menos tanto líquido como sosa en peso, la sosa a cucharadas, la jarra en hielo, gafas, guantes, corriente de aire.',
      'Lo más fácil: agua fría para la sosa, y el café o el té como parte pesada de ella: /plan liquid:“half coffee”.',
      'Caldo caliente, nunca.',
    ],
  },
  'heating-lye': {
    answer: ['No: el agua de sosa no se calienta nunca, ni al fuego ni en el microondas.'],
    why: [
      'Salpica, rebosa y llena el cuarto de vapor cáustico.',
      'Que esté fría no es malo: a temperatura ambiente va bien con aceites a 35 a 45 °C (95 a 113 °F).',
      'Si no se ha disuelto: sigue removiendo, en al menos su mismo peso de agua fría.',
      'Cristales en una botella guardada: afloja el tapón y métela en agua caliente del grifo, con gafas y guantes.',
    ],
  },
};
