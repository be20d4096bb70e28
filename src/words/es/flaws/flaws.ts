import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/flaws/flaws.ts';
import { numbersIn } from '../../numbers.ts';
import { colourantsRefusals } from '../colourants/colourants.ts';
import { flawCauses } from './causes.ts';
import { flawFindings } from './findings.ts';
import { flawNumbers } from './numbers.ts';
import { flawQuestions } from './questions.ts';
import { flawRemedies } from './remedies.ts';

const { tenths } = numbersIn('es');
export const flaws: typeof en.flaws = {
  form: {
    title: '¿Por qué le pasó eso?',
    seen: 'Marca lo que ves',
    words: 'Qué más ves, notas y qué hiciste',
    photo: 'Una foto de la pastilla entera',
  },
  causes: flawCauses,
  findings: flawFindings,
  questions: flawQuestions,
  remedies: flawRemedies,
  numbers: flawNumbers,
  ranked: v => `${v.percent} %: ${v.name}`,
  together: v => `${v.percent} %: dos cosas a la vez, ${v.first} y ${v.second}`,
  dontUse: 'No lo uses.',
  dontUseYet: 'No lo uses aún.',
  because: 'A favor',
  against: 'En contra',
  thisBatch: 'Esta tanda',
  nextBatch: 'La próxima vez',
  doNotUse: 'No uses este jabón: puede tener sosa libre.',
  crumbly: spaced`
    Una pastilla que se desmorona puede tener sosa de más: guantes y gafas al cortar o rallar, sin respirar
    su polvo, y papel de pH sobre la pastilla mojada antes de que nadie la use. Si pasa bastante de 10, no
    la uses.
  `,
  lyeFirst: v => `No lo uses: sosa libre, ${v.percent} % seguro. Guantes puestos.`,
  mayHoldLye: v => `Puede tener sosa libre (${v.percent} %). Hasta saberlo: no lo uses, y guantes puestos.`,
  notThere: v => `sin señal de ${v.finding}`,
  seenBy: v => `${v.findings} (${v.witnesses})`,
  via: { words: 'tus palabras', photo: 'foto', answer: 'tu respuesta', plan: 'tu plan' },
  firstAid: {
    skin: spaced`
      Si quema o escuece: deja el jabón, enjuaga ya la piel con mucha agua corriente, quita lo que tocó y
      busca ayuda médica si no se alivia. Nada de vinagre en la piel.
    `,
    eye: 'Jabón o sosa en el ojo: enjuaga enseguida con mucha agua corriente, al menos 30 minutos, y busca ayuda médica ya.',
  },
  cantTell: {
    'nothing-known': 'Aún no lo sé: no encontré nada que conozca.',
    'too-little': 'Aún no lo sé: eso encaja con muchas causas.',
    'evenly-matched': 'Aún no lo sé: dos causas encajan casi igual.',
  },
  maybe: 'Por ahora',
  lookAt: 'Mira primero esto',
  cut: 'Leí solo los primeros 5000 caracteres.',
  firstPicture: v => `Miré la primera de ${v.count} fotos.`,
  question: v => `Pregunta ${v.at} de ${v.most}: ${v.text}`,
  answers: { yes: 'Sí', no: 'No', unsure: 'No lo sé' },
  answered: v => `${v.text} ${v.answer}.`,
  seenColour: v => `En la foto: ${v.word}`,
  seenHex: v => `${v.hex}, ${v.plusMinus} arriba o abajo`,
  yourAnswers: 'Respondiste',
  notIt: 'Eso no es: quita algo que noté',
  turnedOut: '¿Qué resultó ser?',
  somethingElse: 'otra cosa',
  noted: v => `Anotado: era ${v.name}. Gracias.`,
  notedNote: v =>
    v.count === 1
      ? 'El primero aquí. Lo tendré un poco en cuenta cuando pregunte este grupo.'
      : `Ya van ${v.count} aquí. Los tendré un poco en cuenta cuando pregunte este grupo.`,
  pictures: {
    offer: spaced`
      ¿Hay una foto de esa barra? Si quieres, la guardo con lo que resultó ser, para poder medir con fotos
      reales cómo leo las fotos. Se guarda: la foto a 1024 píxeles, sin lugar ni hora, y la causa. Los
      encargados de este grupo pueden exportarla, sin tu nombre. /flaws given la retira.
    `,
    give: 'Sí, guarda mi foto',
    formTitle: 'Guardar una foto de esta barra',
    formPhoto: 'La barra, con lo que resultó ser a la vista',
    given: v => `Guardada, como ${v.name}. Gracias.`,
    givenNote:
      'Se queda hasta que la retires, borres lo que guardo de ti o dejes este grupo. Un encargado que la haya exportado conserva lo que tiene.',
    takeBack: 'Retirarla',
    takenBack: v =>
      v.count === 0
        ? 'Aquí no había ninguna foto tuya.'
        : v.count === 1
          ? 'Retirada: la foto está borrada.'
          : `Retiradas: ${v.count} fotos están borradas.`,
    own: v =>
      v.count === 0
        ? 'No guardo ninguna foto tuya para este grupo.'
        : v.count === 1
          ? 'Guardo 1 foto tuya para este grupo.'
          : `Guardo ${v.count} fotos tuyas para este grupo.`,
    takeAllBack: 'Retirarlas todas',
    none: 'Nadie de aquí ha dado aún una foto.',
    exported: v =>
      v.count === 1 ? `1 foto, la número ${v.from}` : `${v.count} fotos, desde la número ${v.from}`,
    exportedNote: spaced`
      Los miembros las dieron para medir lo bien que se leen las fotos: úsalas solo para eso y borra las
      que se retiren. Descomprime todas las partes en una carpeta; \`npm run score-photos -- CARPETA\` la
      evalúa.
    `,
    more: 'La parte siguiente',
    dropped: v =>
      `Borrada de la colección: la foto guardada como ${v.name}. Los archivos ya exportados aún la tienen.`,
  },
  learned: {
    headline: v =>
      v.count === 1 ? 'Aquí se supo qué era 1 defecto' : `Aquí se supo qué eran ${v.count} defectos`,
    none: 'Nadie de aquí me ha dicho aún qué resultó ser un defecto',
    row: v =>
      `${v.name}: ${v.count}. Probabilidad antes de ver nada ${tenths(v.before)} → ${tenths(v.after)} %`,
    rowElse: v => `${v.name}: ${v.count}`,
    bounded: v => `Cuentan como mucho ${v.most} de una causa, y ${v.each} de una misma persona.`,
    ask: v =>
      v.count === 1
        ? '¿Olvido qué resultó ser 1 defecto?'
        : `¿Olvido qué resultaron ser ${v.count} defectos?`,
    askNote: 'Las probabilidades vuelven a las de siempre. No se puede deshacer.',
    forget: 'Sí, olvídalos',
    forgotten: v => `Olvidados: ${v.count}.`,
  },
};

export const flawsRefusals: typeof en.flawsRefusals = {
  'metal-and-hurt': ({ text, metal, where }) =>
    `${flaws.firstAid[where]} ${colourantsRefusals['metal-never-in-lye']({ text, metal })}`,
  'flaw-nothing-given': () =>
    'Dime qué ves con tus palabras (words:), o añade una foto (photo:), o las dos cosas.',
  'flaw-message-without-picture': () =>
    'Ese mensaje no tiene foto. Señala uno con una foto de la barra, o usa /diagnose.',
  'flaw-case-gone': () => 'De eso hace demasiado para seguir. Pregunta otra vez con /diagnose.',
  'flaw-pictures-full': ({ most, of }) =>
    of === 'member'
      ? `Guardo como mucho ${most} fotos tuyas aquí. Retira antes alguna con /flaws given.`
      : `Este grupo ha dado ${most} fotos y no guardo más. Un encargado puede exportarlas con /flaws pictures.`,
  'flaw-picture-unknown': ({ name }) =>
    `Nada en la colección se llama «${name}». Los nombres son los del archivo de /flaws pictures, como «3f09c2a1b7de.jpg».`,
  'flaw-choice-unknown': () => 'No puedo tomar esa opción. Elige una del menú.',
};
