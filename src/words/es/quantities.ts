import type * as en from '../en/quantities.ts';

const UNITS = 'tazas, cda, cdta, ml, l, fl oz, g, kg, oz o lb';

export const quantities: typeof en.quantities = {
  strengths: { tint: 'toque', pastel: 'pastel', medium: 'medio', full: 'pleno' },
  oils: 'de aceites',
  batter: 'de masa',
  measure: neutral =>
    neutral
      .replace(/(\d)\.(\d)/gu, '$1,$2')
      .replaceAll('Tbsp', 'cda')
      .replaceAll('tsp', 'cdta')
      .replace('cup', 'taza')
      .replace(' of oils', ' oils')
      .replace(' of ', ' de ')
      .replace(/ full$/u, ' pleno')
      .replace(/oils$/u, 'de aceites'),
  paste: ({ powder, carrier, parts }) =>
    `Muy poco para una cuchara: moja ${powder} en ${carrier} y usa 1 parte de ${parts} de esa pasta.`,
  pasteOrSpoons: ({ powder, carrier, parts }) =>
    `Para medir más fino: moja ${powder} en ${carrier} y usa 1 parte de ${parts} de esa pasta.`,
};

export const quantitiesRefusals: typeof en.quantitiesRefusals = {
  'amount-without-unit': ({ text }) =>
    `A «${text}» le falta la unidad: ${UNITS}, por ejemplo «2 tazas», «500 g» o «1 lb de aceites».`,
  'amount-unit-unknown': ({ unit }) =>
    `No conozco «${unit}» como unidad. Usa ${UNITS}; añade «de aceites» para contar por aceites.`,
  'amount-unreadable': ({ text }) =>
    text === ''
      ? 'Dime cuánto, por ejemplo «2 tazas», «1 1/2 tazas» o «250 ml».'
      : `No puedo leer «${text}» como cantidad. Escríbela así: «2 tazas», «1 1/2 tazas», «250 ml» o «1 lb de aceites».`,
  'amount-range': ({ text, low, high }) =>
    `«${text}» es un intervalo. Da uno de sus extremos, «${low}» o «${high}», y pregunta otra vez por el otro.`,
  'amount-ambiguous': ({ text, small, large }) =>
    `«${text}» puede ser ${small} o ${large}. Escribe ${large} sin signo, o ${small} con menos decimales.`,
  'amount-out-of-range': ({ text, low, high }) =>
    `«${text}» está fuera de rango: trabajo de ${low} a ${high}.`,
  'strength-unreadable': ({ text }) =>
    `No puedo leer «${text}» como intensidad. Usa toque, pastel, medio o pleno, o cucharaditas por taza, como «1/4 cdta por taza».`,
  'strength-percent-large': ({ text, most }) =>
    `«${text}»: el porcentaje cuenta sobre los aceites, en peso, y más del ${most} % no es una dosis. Para una parte del color pleno escribe «25% de pleno», o una palabra: toque, pastel, medio, pleno.`,
  'strength-out-of-range': ({ text }) =>
    `«${text}» no es una intensidad que se pueda dosificar. Usa toque, pastel, medio o pleno, o más de 0 y hasta 48 cdta por taza.`,
  'colour-unreadable': ({ text }) =>
    `No puedo leer «${text}» como color. Nómbralo, como «rosa viejo» o «verde salvia», o escríbelo así: «#4b3f9e».`,
};
