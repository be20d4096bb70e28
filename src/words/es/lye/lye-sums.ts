import { spaced } from '../../../engine/over-lines.ts';
import type { LyeAmiss } from '../../../engine/questions/lye/slips/reckoned.ts';
import type { AcidTakes } from '../../../engine/questions/lye/sums/acid-takes.ts';
import type { lyeSums as english } from '../../en/lye/lye-sums.ts';
import { numbersIn } from '../../numbers.ts';

const { figure, down, one, two } = numbersIn('es');

const ACIDS: Readonly<Record<AcidTakes['acid'], string>> = {
  citric: 'ácido cítrico',
  'citric-monohydrate': 'ácido cítrico monohidrato',
  vinegar: 'vinagre',
  lactic: 'ácido láctico',
};
const share = (percent: number) => `${figure(Math.abs(percent), Math.abs(percent) < 10 ? 1 : 0)} %`;
const weights = ({ putGrams, meantGrams }: LyeAmiss) =>
  putGrams === undefined || meantGrams === undefined
    ? undefined
    : `Entraron ${figure(putGrams, 1)} g de sosa donde tocaban ${figure(meantGrams, 1)} g`;
const moreOil = ({ moreOilGrams }: LyeAmiss) =>
  moreOilGrams === undefined ? '' : `, ${figure(Math.ceil(moreOilGrams), 0)} g en total`;

/** How much lye an acid takes, by which masses. */
const acidMasses = {
  citric: spaced`
    Por masas molares: 3 × 40,0 / 192,1. El monohidrato gasta 0,57 g por gramo: si la etiqueta no dice
    anhidro, cuenta eso, o sobrará sosa.
  `,
  vinegar: 'Por masas molares: 40,0 / 60,05 por gramo de ácido acético; mira su porcentaje en la etiqueta.',
};
const acidKept = spaced`
  Pesada antes, esa sosa de más mantiene el sobreengrasado: /plan additives:«ácido cítrico 10 g» o
  liquid:«vinagre» la cuenta. Sin ella falta esa sosa y la pastilla sale más blanda, nunca más fuerte. El
  ácido va en el agua fría antes que la sosa; nunca sobre sosa seca ni agua de sosa fuerte, nunca con
  ultramar. No arregla una pastilla con sosa de más.
`;

/** What is said of weights of lye that went wrong or are to be turned into others. */
export const lyeSums: typeof english = {
  amiss: (v, isOil) => {
    const what = isOil ? 'con ese aceite que falta' : `${share(v.percentOver)} de sosa de más`;
    const left = `sobreengrasado de un ${one(v.superfat.typical)} %`;
    if (v.verdict === 'lye-heavy') return `No lo uses, ponte guantes, apártalo: ${what}, ${left}.`;
    if (v.verdict === 'may-be-heavy') return `Demasiado justo, guantes, no lo uses aún: ${what}, ${left}.`;
    if (v.percentOver < 0)
      return spaced`
        Con sosa de menos no quema: ${share(v.percentOver)} menos deja
        ${left}${v.verdict === 'soft' ? ', blando y pronto rancio' : ', una pastilla suave'}.
      `;
    return `No sobra sosa: ${what} aún deja ${left}.`;
  },
  amissWhy: (v, isOil) => {
    const from = v.isTold
      ? `Calculado desde ${one(v.meantSuperfat)} % de sobreengrasado`
      : `Calculado como si se quisiera ${one(v.meantSuperfat)} % de sobreengrasado: dime si era otro`;
    const between = `los aceites varían: queda entre ${one(v.superfat.low)} y ${one(v.superfat.high)} %.`;
    return `${[weights(v), `${from}; ${between}`].filter(Boolean).join('. ')} ${v.percentOver < 0 || isOil ? '' : 'Tomo cada peso como lo has dicho.'}`.trim();
  },
  amissRemedy: (v, isOil) => {
    if (v.percentOver < 0)
      return spaced`
        No añadas sosa a ojo. Si falta mucha y la masa sigue líquida: pesa la que falta, disuélvela en al
        menos su peso de agua fría, deja que se enfríe y mézclala, con gafas y guantes. Nunca seca, nunca
        mañana; una pastilla cuajada y blanda, para ropa, o se rehace.
      `;
    if (v.verdict === 'usual')
      return 'Prueba igualmente la pastilla curada: papel de pH en su espuma, nunca la lengua.';
    const oil = isOil
      ? `pesa el aceite que falta (${figure(v.moreOilGrams ?? 0, 0)} g), tibio, y mézclalo`
      : `pesa un ${share(v.percentOver)} más de cada aceite${moreOil(v)}, tibio, y mézclalo`;
    return spaced`
      Gafas y guantes; con etiqueta, fuera del alcance de niños y animales, nada de ello en la piel. Solo
      se salva si cada peso es seguro: ${oil} ahora que la masa está líquida, o rehaz con ello el pan
      cuajado, y cura cuatro semanas. Si un peso no es seguro: residuo cáustico según tus normas locales.
      Esperar no lo arregla, el vinagre no lo remedia, el papel de pH no lo absuelve.
    `;
  },
  slippedDecimal: v =>
    `¿Son ${figure(v.likely, 1)} g? ${figure(v.told, 2)} g de sosa es poquísimo, como si se hubiera corrido la coma.`,
  slippedDecimalWhy:
    'Mira la báscula y la receta antes de verter nada: yo no adivino cuál era. Después no se añade nada a ojo.',
  tooMuchWhy: spaced`
    Sean los aceites que sean. Sin mezclar: no lo mezcles. Mezclado: guantes y gafas, nada de ello en la
    piel, apártalo con etiqueta; se rehace solo si cada peso es seguro; si no, residuo cáustico según tus
    normas locales.
  `,
  acid: v => {
    const name = v.acid === 'vinegar' ? `vinagre al ${one(100 * v.strength)} %` : ACIDS[v.acid];
    const anhydrous = v.acid === 'citric' ? ' (anhidro)' : '';
    const { told, perGram } = v;
    return told
      ? `${figure(told.grams, 1)} g de ${name}${anhydrous} gastan ${down(told.naoh, 1)} g de NaOH (o ${down(told.koh, 1)} g de KOH puro).`
      : `Cada gramo de ${name}${anhydrous} gasta ${two(perGram.naoh * v.strength)} g de NaOH (o ${two(perGram.koh * v.strength)} g de KOH puro).`;
  },
  acidWhy: v =>
    [v.acid in acidMasses ? acidMasses[v.acid as keyof typeof acidMasses] : [], acidKept].flat().join(' '),
  ready: v => spaced`
    ${figure(v.solutionGrams, 1)} g del agua de sosa al ${one(v.strength)}
    %${v.waterGrams !== undefined && v.waterGrams > 0 ? ` y ${figure(v.waterGrams, 1)} g más de agua` : ''}:
    llevan ${figure(v.lyeGrams, 1)} g de sosa.
  `,
  readyWhy: v => spaced`
    Sosa × 100 / ${one(v.strength)}; el resto, ${figure(v.solutionGrams - v.lyeGrams, 1)} g, ya es
    agua${v.waterGrams !== undefined && v.waterGrams < 0 ? ', más de la que pide tu receta: solo tarda más en secar' : ''}.
    Solo si su fuerza se pesó, estuvo cerrada y está clara: la que quedó abierta o tiene cristales no tiene
    fuerza conocida. El agua que falta va a los aceites o al agua de sosa ya fría, con gafas y guantes.
  `,
  impure: v =>
    `${figure(v.pureGrams, 1)} g de sosa pura son ${down(v.grams, 1)} g al ${one(v.percent)} %: ${down(v.grams - v.pureGrams, 1)} g más.`,
  impureWhy: v => spaced`
    Peso × 100 / ${one(v.percent)}. Si se deja así, solo quedan unos ${figure(100 - v.percent, 0)} puntos
    más de sobreengrasado: eso no quema. Se corrige antes, nunca después a ojo: /plan lye:«NaOH
    ${one(v.percent)}%». Si la etiqueta da un margen, cuenta con la cifra más alta.
  `,
  waterFor: v => `${figure(v.waterGrams, 0)} g de agua para ${figure(v.lyeGrams, 1)} g de sosa.`,
  scaled: v => spaced`
    ${figure(v.lyeGrams, 1)} g de
    sosa${v.waterGrams === undefined ? '' : ` y ${figure(v.waterGrams, 0)} g de agua`} para
    ${figure(v.oilGrams, 0)} g de los mismos aceites: todo por ${two(v.factor)}.
  `,
  scaledWhy: spaced`
    Solo si la primera receta está bien, y con los mismos aceites en las mismas partes. No he comprobado su
    sosa, pues no sé los aceites: nómbralos («500 g oliva, 200 g coco») y lo hago. La sosa se redondea
    hacia abajo, nunca hacia arriba. Un lote mayor se calienta más.
  `,
  spilled: v =>
    `Se fue un ${figure(v.percent, 1)} % de la sosa: sigue, el sobreengrasado sube de ${one(v.meantSuperfat)} a un ${one(v.superfat)} %.`,
  spilledWhy: v => spaced`
    ${figure(v.grams, 0)} g de ${figure(v.ofGrams, 0)} g, sosa y agua por igual; con menos sosa queda más
    aceite, no quema. No añadas a
    ojo.${v.superfat > 12 ? ' Saldrá blando: mejor pesa sosa y agua de nuevo.' : ''} Primero el sitio:
    gafas y guantes, recógelo con papel o trapos, luego mucha agua fría varias veces, sin vinagre; niños y
    animales lejos. En la piel o en un ojo: agua corriente ya, /first-aid.
  `,
};
