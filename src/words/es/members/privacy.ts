import { spaced } from '../../../engine/over-lines.ts';
import { midSentence } from '../../../engine/text/capital.ts';
import type { privacy as en, PrivacyReason } from '../../en/members/privacy.ts';
import type { RefusalSentences } from '../../sentence.ts';

export const privacy: typeof en = {
  jars: {
    private: 'Respuestas que nombran un bote tuyo: solo las ves tú',
    shown: 'Respuestas que nombran un bote tuyo: las ve el grupo',
  },
  kept: v => (v.records === 0 ? 'No guardo nada de ti.' : `Guardo ${v.records} apuntes tuyos.`),
  row: v => `${v.name}: ${v.records}. ${v.until}`,
  topics: {
    shelf: 'Tu estantería',
    preferences: 'Tus preferencias',
    recipes: 'Tus recetas',
    batches: 'Tus lotes',
    recent: 'Planes, recetas de color y deshaceres recientes',
    evidence: 'Tus informes',
    flaws: 'Tus preguntas sobre defectos',
    challenges: 'Tu parte en los retos',
  },
  until: {
    shelf: 'Hasta que la quites.',
    preferences: 'Hasta que las borres.',
    recipes: 'Hasta que las quites.',
    batches: 'Con sus fotos, hasta que los quites.',
    recent: spaced`
      Dos días, los 20 más nuevos de cada clase; lo que pide un «Deshacer», diez minutos y hasta la noche
      como mucho; lo último que preguntaste, media hora, sin escribirlo en ninguna parte.
    `,
    evidence: 'Hasta que los retires.',
    flaws:
      'Las palabras, dos días; lo que resultó ser queda para la cuenta del grupo; las fotos que diste, hasta que las retires.',
    challenges: 'Las entradas quedan con sus resultados, las fotos un año más.',
  },
  notesBeside:
    'Contado como lo contarías: botes, recetas, lotes. Los demás apuntes van con ellos: existencias, lotes, pruebas, historial.',
  leaving: v => spaced`
    Si dejas un grupo, a los ${v.days} días se borra lo que guardabas en él; cuando no estés en ninguno que
    yo conozca ni hables conmigo en privado, se borra todo.
  `,
  next: '/privacy export te lo da todo en un archivo, /privacy erase lo borra.',
  exported: v => `Todo lo que guardo de ti: ${v.records} apuntes en un archivo.`,
  exportedPart: v =>
    v.more
      ? `Apuntes ${v.from} a ${v.to} en este archivo; hace falta más de uno. Pulsa abajo para el siguiente.`
      : `Apuntes ${v.from} a ${v.to} en este archivo, el último.`,
  more: 'Siguiente archivo',
  sure: v =>
    v.name === undefined
      ? '¿Borrar todo lo que guardo de ti? No se puede deshacer.'
      : `¿Borrar esto: ${midSentence(v.name)}? No se puede deshacer.`,
  mustStay:
    'Lo que debe quedar, sin tu nombre: tus entradas en los retos y tus votos en los ya terminados. Un voto en una votación abierta se retira.',
  eraseButton: 'Borrar para siempre',
  erased: v => `Borrado: ${v.records} apuntes.`,
  stays: v => `${v.records} apuntes en los que se apoyan resultados de otros quedan, sin tu nombre.`,
  jarsSetAside: v => spaced`
    ${v.count === 1 ? 'Un bote tuyo no se puede leer ahora y queda' : `${v.count} botes tuyos no se pueden leer ahora y quedan`}
    fuera de las respuestas; lo demás sigue igual. Avisa a quien me mantiene.
  `,
};

export const privacyRefusals: Pick<RefusalSentences, PrivacyReason> = {
  'privacy-under-way': () =>
    'Todavía estoy repasando tus registros: pregunta de nuevo cuando llegue esa respuesta.',
  'shelf-name-set-aside': ({ name }) =>
    `Hay un bote «${name}» en tu estantería, pero ahora no se puede leer: usa otro nombre o avisa a quien me mantiene.`,
  'text-too-long': ({ most }) =>
    `Ese texto es demasiado largo: caben como mucho ${most} caracteres normales.`,
};
