import type { LikelyLaw } from '../../../engine/questions/places/likely-law.ts';
import type { lawElsewhere as en } from '../../en/conversation/law-elsewhere.ts';

const countries = new Intl.DisplayNames('es', { type: 'region' });
const nameOfCountry = (code: string) => countries.of(code) ?? code;

const MERCOSUR =
  'El Mercosur tiene una sola lista de colores permitidos por número CI, hecha como la de la UE';
const ANDEAN =
  'Los países andinos se guían por las listas de EE. UU. y de la UE (Decisión 833): lo que está en ellas vale.';
const ASEAN = 'Los países de la ASEAN comparten una lista de colores, que sigue el anexo IV de la UE.';

/** Por qué se guían los países cuyas listas no están, por código ISO 3166-1 (de memoria). */
const COUNTRY_LAWS: Readonly<Record<string, string>> = {
  GB: 'La lista propia del Reino Unido es la de la UE tal como se heredó, y puede haber cambiado.',
  CA: 'Canadá no tiene lista de colores permitidos, sino una de lo prohibido o limitado (la Hotlist de Health Canada), y los cosméticos se notifican.',
  MX: 'México tiene listas propias de lo prohibido, lo limitado y los colores permitidos (COFEPRIS), muy parecidas a las de la UE.',
  AR: `${MERCOSUR}; en Argentina la aplica ANMAT, y se inscriben elaborador y producto.`,
  BR: `${MERCOSUR}; en Brasil la aplica ANVISA.`,
  UY: `${MERCOSUR}.`,
  PY: `${MERCOSUR}.`,
  CO: ANDEAN,
  PE: ANDEAN,
  EC: ANDEAN,
  BO: ANDEAN,
  SG: ASEAN,
  MY: ASEAN,
  PH: ASEAN,
  CH: 'La ley suiza toma sus colores del anexo IV de la UE.',
  NZ: 'La norma de cosméticos de Nueva Zelanda lista los colores casi como el anexo IV de la UE.',
  AU: 'Australia no tiene lista de colores para cosméticos: cada ingrediente está en su inventario nacional o entra según sus reglas (AICIS).',
};

/** Whose lists say so. */
const LISTS = {
  eu: 'el anexo IV de la UE',
  us: 'las listas de EE. UU.',
  both: 'EE. UU. y la UE',
} as const;

const names = (because: readonly string[]) => because.join(', ');

const VERDICTS: Readonly<Record<LikelyLaw['verdict'], (v: LikelyLaw) => string>> = {
  yes: v =>
    `${v.basis === 'unknown' ? 'Probablemente' : 'Casi seguro que'} sí: según ${LISTS[v.by]} se puede.`,
  limits: v => `Probablemente sí, con límites (${names(v.because)}), como según ${LISTS[v.by]}.`,
  no: v => `Casi seguro que no: según ${LISTS[v.by]} no vale para jabón (${names(v.because)}).`,
  unsure: v =>
    `No es seguro, así que no antes de que la autoridad diga que sí: no encuentro ${names(v.because)} en lista clara.`,
  'no-colour': () => 'Casi seguro que sí: nada de lo que lleva cuenta como color.',
};

const decides = (ci: readonly string[]) =>
  ci.length === 0
    ? 'Decide la ley de allí: míralo antes de vender.'
    : `Decide la ley de allí: busca CI ${ci.slice(0, 3).join(', ')} antes de vender.`;

/** Where a colour stands by the law that was asked for. */
export const lawElsewhere: typeof en = {
  lawElsewhere: ({ country }) => {
    const goesBy = COUNTRY_LAWS[country];
    return goesBy === undefined
      ? `Tengo las listas de EE. UU. y de la UE, ninguna de ${nameOfCountry(country)}: pregunta a la autoridad de allí antes de vender.`
      : `${goesBy} Solo tengo las listas de EE. UU. y de la UE: míralo allí antes de vender.`;
  },
  likelyLaw: ({ country, law }) =>
    [
      VERDICTS[law.verdict](law),
      COUNTRY_LAWS[country] ?? `No tengo la lista propia de ${nameOfCountry(country)}.`,
      decides(law.ci),
    ].join(' '),
  lawOfIt: ({ name, law }) => `${name}. ${law}`,
};
