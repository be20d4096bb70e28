import type * as en from '../en/flaws.ts';
import { flawCauses } from './flaws/causes.ts';
import { flawFindings, flawQuestions } from './flaws/findings.ts';
import { flawRemedies } from './flaws/remedies.ts';

export const flaws: typeof en.flaws = {
  causes: flawCauses,
  findings: flawFindings,
  questions: flawQuestions,
  remedies: flawRemedies,
  ranked: v => `${v.percent} %: ${v.name}`,
  because: 'A favor',
  against: 'En contra',
  thisBatch: 'Esta tanda',
  nextBatch: 'La próxima vez',
  doNotUse: 'No uses este jabón: puede tener sosa libre.',
  notThere: v => `no está: ${v.finding}`,
  quoted: v => `dijiste «${v.words}»`,
  via: { words: 'tus palabras', photo: 'la foto', answer: 'tu respuesta' },
  firstAid: {
    skin: 'Si quema o escuece: deja el jabón, enjuaga ya la piel con mucha agua corriente, quita lo que tocó y busca ayuda médica si no se alivia. Nada de vinagre en la piel.',
    eye: 'Jabón o sosa en el ojo: enjuaga enseguida con mucha agua corriente, al menos 30 minutos, y busca ayuda médica ya.',
  },
  cantTell: {
    'nothing-known': 'Aún no lo sé: no encontré nada que conozca. Mira primero estas tres cosas:',
    'too-little': 'Aún no lo sé: eso encaja con muchas causas. Estas tres cosas dirían más:',
    'evenly-matched': 'Aún no lo sé: dos causas encajan casi igual. Estas tres cosas las distinguen:',
  },
  cut: 'Leí solo los primeros 5000 caracteres.',
  notSureAnswer: 'No lo sé',
};
