import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import type { BarredScentReason, ScentRisk } from '../../../engine/hazards/index.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { capital } from '../../../engine/text/capital.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const pc = (percent: number) => `${numbersIn('es').two(percent)}%`;

const scentRisks: Readonly<Record<ScentRisk, string>> = {
  cinnamal: 'quema y sensibiliza la piel aunque se enjuague, y espesa la masa de golpe.',
  eugenol: 'quema y sensibiliza la piel, y espesa la masa de golpe.',
  phenols: 'sus fenoles queman la piel y los ojos.',
  citral: 'su citral sensibiliza y escuece la piel.',
  phototoxic:
    'exprimido de la cáscara quema la piel al sol. Enjuagado el riesgo es pequeño; aclara bien, y para lo que se queda en la piel usa uno sin furocumarinas.',
  oxidises: 'viejo o abierto hace tiempo sensibiliza la piel: úsalo fresco.',
  salicylate:
    'venenoso si se traga, una cucharadita puede matar a un niño; también por la piel. Guárdalo bajo llave; no para niños, embarazo ni con anticoagulantes.',
  camphor:
    'escuece en los ojos y puede dañar la respiración de niños pequeños. No para bebés ni niños pequeños, ni con epilepsia o asma; no para la cara.',
  sensitises: 'un fuerte sensibilizante de la piel.',
  balsam:
    'un fuerte sensibilizante de la piel; el bálsamo crudo está prohibido como aroma, solo se admite su aceite, en trazas.',
  perfume:
    'si sale de un frasco de perfume es sobre todo alcohol: arde cerca del calor y espesa la masa. Usa aceite para jabón.',
};

const barredScents: Readonly<Record<BarredScentReason, string>> = {
  alcohol:
    'es sobre todo alcohol. Arde cerca del calor y espesa o corta la masa. Usa una fragancia o aceite esencial con certificado para jabón (IFRA, categoría 9).',
  'not-for-skin': spaced`
    está hecho para otro uso, no para la piel. ¿Su certificado incluye jabón (IFRA, categoría 9)? Entonces
    escribe solo el porcentaje que permite. Si no, déjalo fuera.
  `,
  prohibited: spaced`
    como aceite de la planta está prohibido en cosmética: daña la piel o es venenoso. ¿Es una fragancia de
    perfumista con ese nombre y certificado para jabón? Escribe «fragancia» al lado.
  `,
};

export const scents: {
  readonly warnings: { readonly 'scent-hurts': (values: PlanWarnings['scent-hurts']) => string };
  readonly refusals: Pick<
    RefusalSentences,
    'scent-barred' | 'scent-as-additive' | 'scent-needs-certificate' | 'scent-over-certificate'
  >;
} = {
  warnings: {
    'scent-hurts': ({ scent, risk }) =>
      `${capital(scent)}: ${scentRisks[risk]} Guantes; dosis según su certificado IFRA (jabón: categoría 9), no a ojo ni a nariz, y sin pasarla.`,
  },
  refusals: {
    'scent-needs-certificate': ({ name: scent, risk }) => spaced`
      ${capital(scent)}: ${scentRisks[risk]} Sin su límite no digo gramos: busca el máximo para jabón en su
      certificado IFRA (categoría 9), como «0,5% ${scent}, certificado 0,5%».
    `,
    'scent-over-certificate': ({ name: scent, percent, most }) => spaced`
      ${pc(percent)}${scent === '' ? '' : ` de ${scent}`} es más de lo que su certificado permite en jabón:
      como mucho ${pc(most)}. Escribe «${pc(most)}» o menos.
    `,
    'scent-barred': ({ name: scent, reason }) => `${capital(scent)}: ${barredScents[reason]}`,
    'scent-as-additive': ({ text }) =>
      `«${text.trim()}» es un aroma: escríbelo en fragrance, en porcentaje de los aceites («2% lavanda»), para cuidar su límite.`,
  },
};
