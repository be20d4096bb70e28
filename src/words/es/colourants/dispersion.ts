import type { Carrier } from '../../../engine/colourants/colourant.ts';
import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/colourants/dispersion.ts';

const carriers: Record<Carrier, string> = { water: 'agua', oil: 'aceite ligero', glycerin: 'glicerina' };

const listed = new Intl.ListFormat('es', { type: 'disjunction' });

export const dispersion: typeof en.dispersion = {
  carriers,
  why: {
    asked: 'es el que pediste, y sirve',
    'dish-test-water': 'tu lote se abrió en agua en la prueba del plato',
    'dish-test-oil': 'tu lote pidió aceite en la prueba del plato',
    'dish-test-neither':
      'tu lote no quiso ni agua ni aceite en la prueba del plato, y la glicerina moja todo',
    'usual-for-kind': 'es el líquido habitual para este tipo de color',
    'untested-lot': 'es lo primero que se prueba, pero los lotes cambian: decide la prueba del plato',
    'never-in-water': 'nunca se dispersa en agua',
    'already-wetted': 'ya viene mojado',
  },
  wet: {
    stir: ({ carrier, amount }) =>
      `Deja el polvo cubierto con ${amount} de ${carrier} y remueve hasta que no quede nada seco.`,
    soak: ({ carrier, amount }) => spaced`
      Deja el polvo cubierto con ${amount} de ${carrier}, remueve y déjalo en remojo mientras pesas lo
      demás; remueve cada vez que pases. Tiempo, no más líquido.
    `,
    froth: ({ carrier, amount }) => spaced`
      Deja el polvo cubierto con ${amount} de ${carrier}, remueve primero a mano y luego bate con el
      espumador en el vaso; la cabeza dentro antes de encender.
    `,
  },
  stirPremix: 'Remuévelo desde el fondo antes de medir.',
  blend: {
    whisk: 'Mézclalo en la masa con varillas a mano hasta que el color sea parejo.',
    'stick-blend': 'Mézclalo en la masa con batidora de mano, a toques cortos, o quedan bolsas de color.',
  },
  dipOil:
    'El aceite sacado de tu lote antes de la sosa deja el lote igual; esta porción queda más grasa de todos modos.',
  holdBackWater: 'Resta el mismo peso de agua al agua de la sosa, pero nunca menos agua que sosa, en peso.',
};

const noGo: Record<Carrier, string> = {
  water: 'flota en el agua y nunca se moja',
  oil: 'hace grumos en aceite y deja puntos',
  glycerin: 'la glicerina no lo moja parejo',
};

export const dispersionRefusals: typeof en.dispersionRefusals = {
  'carrier-cannot-work': ({ colourant, asked, allowed }) =>
    `${colourant.es} no se dispersa en ${carriers[asked]}: ${noGo[asked]}. Usa ${listed.format(allowed.map(one => carriers[one]))}.`,
};
