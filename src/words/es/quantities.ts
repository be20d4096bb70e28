import { spaced } from '../../engine/over-lines.ts';
import type { StrengthName } from '../../engine/quantities/strength.ts';
import type * as en from '../en/quantities.ts';
import { measuresIn } from '../measures.ts';
import { numbersIn } from '../numbers.ts';

const { plain, mixed } = numbersIn('es');
const measures = measuresIn('es', {
  tablespoon: 'cda',
  teaspoon: 'cdta',
  of: 'de',
  units: {
    cup: ['taza', 'tazas'],
    'metric-cup': ['taza métrica', 'tazas métricas'],
    pint: ['pinta', 'pintas'],
    quart: ['cuarto de galón', 'cuartos de galón'],
    gallon: ['galón', 'galones'],
    'imperial-fluid-ounce': ['fl oz imperial', 'fl oz imperiales'],
    'imperial-pint': ['pinta imperial', 'pintas imperiales'],
  },
  kinds: { oils: 'de aceites', batter: 'de masa' },
  bars: 'pastillas de',
});
const { quantity, said } = measures;

export const strengths: Readonly<Record<StrengthName, string>> = {
  tint: 'toque',
  pastel: 'pastel',
  medium: 'medio',
  full: 'pleno',
};

const UNITS = 'tazas, cda, cdta, ml, l, fl oz, g, kg, oz o lb';

export const quantities: typeof en.quantities = {
  ...measures,
  strengths,
  strength: strength => {
    switch (strength.by) {
      case 'name':
        return strengths[strength.name];
      case 'share':
        return `${plain(100 * strength.ofFull)} % del color pleno`;
      case 'percent-of-oils':
        return `${plain(strength.percent)} % de los aceites`;
      case 'cup':
        return `${mixed(strength.tspPerCup)} cdta por taza`;
      case 'pound-of-oils':
        return `${mixed(strength.tspPerPound)} cdta por libra de aceites`;
    }
  },
  oils: 'de aceites',
  batter: 'de masa',
  paste: ({ powder, carrier, parts, part }) =>
    `Muy poco para una cuchara: moja ${powder} en ${carrier}, remueve y usa ${part} de esa pasta (1 parte de ${parts}).`,
  pasteOrSpoons: ({ powder, carrier, parts, part }) =>
    `Para medir más fino: moja ${powder} en ${carrier}, remueve y usa ${part} de esa pasta (1 parte de ${parts}).`,
};

export const quantitiesRefusals: typeof en.quantitiesRefusals = {
  'spoons-owned-unreadable': ({ text }) =>
    `No leo «${text}» como cucharas. Di las que tienes, como «1 cdta, 1/2, 1/4, 1/8», o «todas».`,
  'spoons-too-large': ({ smallest }) => spaced`
    Tu cuchara más pequeña, ${measures.spoon(smallest)}, ya es más de lo que admite cualquier color en esa
    porción. Toma una porción mayor, o anota una cuchara menor con /prefer.
  `,
  'amount-without-unit': ({ text }) =>
    `A «${text}» le falta la unidad: ${UNITS}, por ejemplo «2 tazas», «500 g» o «1 lb de aceites».`,
  'amount-unit-unknown': ({ unit }) =>
    `No conozco «${unit}» como unidad. Usa ${UNITS}; añade «de aceites» para contar por aceites.`,
  'portion-mould-side': ({ text }) =>
    `«${text}»: un lado del molde no dice cuánta masa es. Da largo, ancho y alto, como «molde 25x9x7 cm», o la masa en tazas, litros o gramos.`,
  'amount-vessel': ({ vessel }) =>
    `¿Cuánto cabe en «${vessel}»? Dímelo en ml o g, por ejemplo «500 ml» o «500 g»: mídelo o pésalo con agua.`,
  'amount-gross': ({ text }) =>
    `“${text}” pesa también el recipiente. ¿Cuánto pesa la masa sola? Pon el recipiente vacío en la báscula y réstalo.`,
  'amount-unreadable': ({ text }) =>
    text === ''
      ? 'Dime cuánto, por ejemplo «2 tazas», «1 1/2 tazas» o «250 ml».'
      : `No puedo leer «${text}» como cantidad. Escríbela así: «2 tazas», «1 1/2 tazas», «250 ml» o «1 lb de aceites».`,
  'amount-range': ({ text, low, high }) =>
    `«${text}» es un intervalo. Da uno de sus extremos, «${low}» o «${high}», y pregunta otra vez por el otro.`,
  'amount-several': ({ text, candidates }) =>
    `En «${text}» hay más de una cifra que puede valer: ¿${candidates.map(one => said(one.said)).join(', o ')}? Escribe la que quieres decir.`,
  'amount-ambiguous': ({ text, small, large }) =>
    `«${text}» puede ser ${small} o ${large}. Escribe ${large} sin signo, o ${small} con menos decimales.`,
  'amount-out-of-range': ({ text, low, high }) =>
    `«${typeof text === 'string' ? text : quantity(text)}» está fuera de rango: trabajo de ${quantity(low)} a ${quantity(high)}.`,
  'strength-unreadable': ({ text }) =>
    `No puedo leer «${text}» como intensidad. Usa toque, pastel, medio o pleno, o cucharaditas por taza, como «1/4 cdta por taza».`,
  'strength-percent-large': ({ text, most }) => spaced`
    «${text}»: el porcentaje cuenta sobre los aceites, en peso, y más del ${most} % no es una dosis. Para
    una parte del color pleno escribe «25% de pleno», o una palabra: toque, pastel, medio, pleno.
  `,
  'strength-out-of-range': ({ text }) =>
    `«${text}» no es una intensidad que se pueda dosificar. Usa toque, pastel, medio o pleno, o más de 0 y hasta 48 cdta por taza.`,
  'colour-unreadable': ({ text }) =>
    `No puedo leer «${text}» como color. Nómbralo, como «rosa viejo» o «verde salvia», o escríbelo así: «#4b3f9e».`,
};
