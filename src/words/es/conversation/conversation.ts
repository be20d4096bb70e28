import { spaced } from '../../../engine/over-lines.ts';
import type { ConversationReason, conversation as en } from '../../en/conversation/conversation.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { figure } = numbersIn('es');

const busy = {
  member: 'Todavía se está trabajando en varias de tus respuestas.',
  group: 'Muchos miembros de este grupo esperan ahora imágenes y planes.',
  all: 'Ahora mismo esperan muchas imágenes y planes.',
};

const list = (names: readonly string[]) => names.join(', ');

export const conversation: typeof en = {
  cautions: 'Cuidado',
  more: 'Más',
  pressed: 'Usado. Pregunta otra vez si lo necesitas de nuevo.',
  cut: 'La respuesta era larga: está entera en el archivo adjunto.',
  working: 'Un momento…',
  formLate: 'El formulario tarda un momento. Ábrelo con el botón.',
  formStillLate: 'El formulario aún no está listo. Pulsa otra vez el botón en unos segundos.',
  openForm: 'Abrir el formulario',
  ownByAsk:
    'Eso habla de lo que guardas para ti, así que aquí no lo contesto: pregúntalo con /ask, que solo ves tú.',
  notTold: v => spaced`
    No pude avisar al grupo sobre «${v.title}»: su canal ya no existe o está cerrado para mí. Déjame verlo,
    escribir en él y adjuntar archivos; el próximo aviso llegará solo, y /challenge show lo muestra ya.
  `,
};

export const conversationRefusals: Pick<RefusalSentences, ConversationReason> = {
  'option-missing': ({ option }) => `Falta rellenar «${option}».`,
  'option-unknown': ({ option, known, meant }) =>
    known.length > 0
      ? `Aquí no hay ninguna opción «${option}».${meant === undefined ? '' : ` ¿Será «${meant}»?`} Las opciones son: ${list(known)}.`
      : `Aquí no hay ninguna opción «${option}»: esta orden no lleva ninguna.`,
  'option-too-long': ({ option, most }) =>
    `«${option}» es demasiado largo: caben ${most} caracteres como máximo.`,
  'option-not-offered': ({ option, offered }) => `«${option}» debe ser uno de estos: ${list(offered)}.`,
  'option-not-a-number': ({ option }) => `«${option}» debe ser un número, como 5.`,
  'option-out-of-range': ({ option, least, most }) =>
    `«${option}» debe estar entre ${figure(least, 3)} y ${figure(most, 3)}.`,
  'option-not-yes-or-no': ({ option }) => `«${option}» debe ser sí o no.`,
  'option-needs-a-file': ({ option }) => `«${option}» debe ser un archivo, como una foto.`,
  'option-names-nobody': ({ option, kind }) =>
    `«${option}» debe ser ${{ member: 'alguien', role: 'un rol', channel: 'un canal' }[kind]} de este grupo: elígelo de la lista.`,
  'follow-up-invalid': () =>
    'Ese botón es de una versión anterior. Haz la pregunta otra vez para tener uno nuevo.',
  'follow-up-expired': () => 'Ese botón ha caducado. Haz la pregunta otra vez para tener uno nuevo.',
  'follow-up-not-yours': () =>
    'Ese botón es de otra persona, o de antes de que cambiara mi clave de firma. Haz tú la pregunta para tener el tuyo.',
  'command-unknown': ({ typed, nearest }) =>
    `No existe la orden «/${typed}». ¿Querías decir /${nearest.join(', /')}?`,
  'stewards-only': () => 'Solo puede hacerlo quien coordina este grupo. Pídeselo.',
  'group-only': () =>
    'Eso es cosa de un grupo en el que estoy. Aquí solo me has traído tú: pídemelo allí o añádeme a este grupo.',
  'workers-busy': ({ full, seconds }) => `${busy[full]} Prueba otra vez en unos ${seconds} segundos.`,
  'work-took-too-long': () =>
    'Tardaba demasiado y se ha parado; no ha cambiado nada. Puede servir una imagen más pequeña u otra, o menos colores.',
  'our-fault': ({ reference }) =>
    `Algo ha fallado por nuestra parte y no se ha cambiado nada. Prueba otra vez; si sigue, di «${reference}» a quien coordina el grupo.`,
};
