import type { privacy as en, PrivacyReason } from '../en/privacy.ts';
import type { RefusalSentences } from '../sentence.ts';

export const privacy: typeof en = {
  jars: {
    private: 'Respuestas que nombran un bote tuyo: solo las ves tú',
    shown: 'Respuestas que nombran un bote tuyo: las ve el grupo',
  },
  jarsSetAside: v =>
    `${v.count === 1 ? 'Un bote tuyo no se puede leer ahora y queda' : `${v.count} botes tuyos no se pueden leer ahora y quedan`} fuera de las respuestas; lo demás sigue igual. Avisa a quien me mantiene.`,
};

export const privacyRefusals: Pick<RefusalSentences, PrivacyReason> = {
  'text-too-long': ({ most }) =>
    `Ese texto es demasiado largo: caben como mucho ${most} caracteres normales.`,
};
