import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type * as en from '../../en/batch/liquids.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { additives, bareLiquids } from './liquid-names.ts';

const { one, whole } = numbersIn('es');
const g = (grams: number) => `${one(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;

const name = (id: AdditiveId) => additives[id];
const bare = (id: AdditiveId) => ({ ...additives, ...bareLiquids })[id];

/** What is warned of where a liquid, a wax or another lye is in the plan. */
export const liquidWarnings: typeof en.jug.warnings = {
  'milk-keep-cold': ({ additive }) => spaced`
    ${capital(name(additive))}: se quema y puede subir con la sosa. En cubitos congelados, una cucharada de
    álcali cada vez, la jarra en un baño de hielo. Su agua cuenta en la jarra.
  `,
  'liquid-goes-into-oils': ({ additive, grams }) =>
    `${g(grams)} de ${name(additive)} van a los aceites, no a la jarra: el álcali necesita el agua sola. El agua que traen está contada.`,
  'boil-off-alcohol': ({ additive, percent, fizzes }) => spaced`
    ${capital(bare(additive))}: lleva cerca de ${pc(percent)} de alcohol${fizzes ? ', y gas' : ''}. Con la
    sosa se desborda, y el alcohol espesa la masa de golpe. Hay que hervir antes el líquido, sin llama
    abierta, y pesar lo que quede.
  `,
  'liquid-salt': ({ additive, grams, percent }) => spaced`
    ${capital(name(additive))}: trae ${g(grams)} de sal (${pc(percent)} de los aceites), pastilla más dura
    y con menos espuma. Disuelve del todo la sal antes de la sosa, y corta pronto.
  `,
  'liquid-read-label': ({ additive }) =>
    `El ${name(additive)} comprado puede llevar alcohol, glicerina o conservante: lee su etiqueta. Si lleva alcohol, hiérvelo antes, sin llama abierta.`,
  'liquid-eats-lye': ({ additive, grams, lyeGrams }) => spaced`
    ${g(grams)} de ${name(additive)} se comen unos ${g(lyeGrams)} de álcali por su ácido; ya están sumados.
    Si es más flojo, queda sosa en la pastilla: lee el % de la etiqueta. Ácido y sosa calientan y salpican:
    mézclalo antes de la sosa.
  `,
  'liquid-fat': ({ additive, points }) =>
    `La grasa de ${name(additive)} es ${one(points)} puntos del sobreengrasado que ves.`,
  'lye-kept-dissolved': ({ percent }) => spaced`
    Tomo tu sosa disuelta al ${pc(percent)} de álcali puro en peso, como en la etiqueta. ¿La disolviste tú
    de escamas? Da su pureza. Remuévela antes de pesar; si hay cristales o costra, templa el envase hasta
    que aclare, con la tapa floja.
  `,
  'jug-strong': ({ percent }) =>
    `En la jarra la sosa queda al ${pc(percent)}: casi hierve. Agua helada, poco álcali cada vez, remueve hasta que aclare.`,
  'water-over-asked': ({ grams }) =>
    `${g(grams)} más de agua de lo pedido: la traen la miel y similares, y de la jarra no se puede quitar.`,
  'melts-above-pour': ({ oil, percent, meltsC, startC }) => spaced`
    ${oil.es} (${pc(percent)}): por debajo de unos ${degrees(meltsC)} es sólida, y viertes a
    ${degrees(startC)}. Saldrán granos o una falsa traza. Vierte más caliente (start:«${whole(Math.ceil(meltsC))}
    C») o pon menos.
  `,
  'acid-thickens-at-once': ({ oil, percent }) =>
    `${oil.es} (${pc(percent)}): reacciona con la sosa en segundos y la masa espesa de golpe. Ten el molde listo; sin dibujos.`,
  'wax-stays': ({ oil, percent }) =>
    `Cerca de la mitad de ${midSentence(oil.es)} (${pc(percent)}) nunca se hace jabón: menos espuma y tacto ceroso.`,
  'koh-paste': ({ percent }) =>
    `${pc(percent)} de KOH da una pasta blanda, no una pastilla: no se desmolda ni se corta.`,
  'koh-soft': ({ percent }) =>
    `${pc(percent)} de KOH: pastilla más blanda, que cuaja y se desmolda más tarde.`,
  'salt-bar': ({ percent, toHours }) =>
    `${pc(percent)} de sal cuaja rápido: córtalo antes de ${toHours} horas, con guantes, o se desmenuza.`,
};
