import { spaced } from '../../../engine/over-lines.ts';
import type { fronts as en, FrontReason } from '../../en/fronts/fronts.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { down } = numbersIn('es');

export const fronts: typeof en = {
  welcome: v => spaced`
    Tintmoot, la sala local: no hay servidor de chat, las respuestas salen de aquí y ${v.store} recuerda.
    Prueba /help, o /dose colourant:"azul ultramar" portion:"2 tazas". Sal con Ctrl-D.
  `,
  pickOne: v => `Escribe un número del 1 al ${v.most} para elegir.`,
  nothingAsked: "Pregunta algo: npm run -s ask -- '¿cuánto azul para 2 tazas?', o '/help'.",
  leaveAgain: 'Pulsa Ctrl-C otra vez para salir.',
  goodbye: 'Hasta luego.',
};

export const frontsRefusals: Pick<RefusalSentences, FrontReason> = {
  'line-not-a-command': () => 'Una orden empieza con una barra, como /help.',
  'line-quote-open': ({ option }) => `Las comillas tras «${option}:» no se cierran: termina el valor con ".`,
  'line-not-understood': ({ text }) =>
    `No sé dónde va «${text}». Escribe las opciones como nombre:valor, con comillas si hay espacios.`,
  'file-not-found': ({ path }) =>
    `No hay ningún archivo en «${path}». Da la ruta de una imagen de este equipo.`,
  'line-option-twice': ({ option }) => `«${option}» está dos veces: ponlo una sola.`,
  'file-not-fetched': () => 'No he podido traer ese archivo: los enlaces caducan. Adjúntalo otra vez.',
  'file-too-large': ({ most }) =>
    `Ese archivo es demasiado grande: ${down(most / 1024 / 1024, 0)} MB como máximo. Basta una imagen más pequeña.`,
};
