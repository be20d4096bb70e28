import type { RefusedCases } from './row.ts';

export const amounts: RefusedCases = {
  'amounts and strengths': [
    ['/dose colourant:"gold mica" portion:500', 'amount-without-unit', 'needs a unit', 'le falta la unidad'],
    [
      '/dose colourant:"gold mica" portion:"2 zorks"',
      'amount-unit-unknown',
      'to count by oils',
      'para contar por aceites',
    ],
    [
      '/dose colourant:"gold mica" portion:"25 cm mould"',
      'portion-mould-side',
      'one side of a mould tells no amount',
      'un lado del molde no dice cuánta masa es',
    ],
    [
      '/dose colourant:"gold mica" portion:"half a pail"',
      'amount-vessel',
      'weigh or measure it with water',
      'mídelo o pésalo con agua',
    ],
    [
      '/dose colourant:"gold mica" portion:"615 g with the jug"',
      'amount-gross',
      'Put the empty one on the scale and take that off',
      'Pon el recipiente vacío en la báscula y réstalo',
    ],
    ['/dose colourant:"gold mica" portion:lots', 'amount-unreadable', 'as an amount', 'como cantidad'],
    [
      '/shelf use item:Dusk amount:"5-10 g"',
      'amount-range',
      'and ask again for the other',
      'y pregunta otra vez por el otro',
    ],
    [
      '/dose colourant:"ultramarine blue" portion:"500g oils then lye n that on top, or 600"',
      'amount-several',
      'has more than one figure that may be meant',
      'hay más de una cifra que puede valer',
    ],
    [
      '/dose colourant:"gold mica" portion:"900 l"',
      'amount-out-of-range',
      'is out of range',
      'está fuera de rango',
    ],
    [
      '/dose colourant:"gold mica" portion:"1 cup" strength:loud',
      'strength-unreadable',
      'or teaspoons per cup',
      'o cucharaditas por taza',
    ],
    [
      '/dose colourant:"gold mica" portion:"1 cup" strength:"50% of oils"',
      'strength-percent-large',
      'percent counts of the oils by weight',
      'el porcentaje cuenta sobre los aceites',
    ],
    [
      '/dose colourant:"gold mica" portion:"1 cup" strength:"90 tsp per cup"',
      'strength-out-of-range',
      'is not a strength I can dose',
      'no es una intensidad que se pueda dosificar',
    ],
    [
      '/shelf use item:Dusk amount:"1,250 g"',
      'amount-ambiguous',
      'with fewer decimals',
      'con menos decimales',
    ],
  ],
};
