import type { HueTurn } from '../../../engine/colour/jars/compare-jars.ts';
import type * as en from '../../en/colour/comparing.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const turns: Record<HueTurn, string> = {
  redder: 'más rojo',
  greener: 'más verde',
  yellower: 'más amarillo',
  bluer: 'más azul',
  lighter: 'más claro',
  darker: 'más oscuro',
  livelier: 'más vivo',
  duller: 'más apagado',
};

const { one: tenths, plain } = numbersIn('es');

export const comparing: typeof en.comparing = {
  sameDepth: 'Para la misma intensidad, en una taza de masa',
  row: ({ name, spoons, grams, hex }) => `${name}: ${spoons}, unos ${plain(grams)} g, ${hex}`,
  turned: ({ one, other, turns: told, deltaE }) =>
    `${other} queda entonces ${told.map(turn => turns[turn]).join(' y ')} que ${one}: difieren ${tenths(deltaE)} (2 apenas se nota).`,
  sameHue: ({ deltaE }) => `Entonces se ven iguales: difieren ${tenths(deltaE)} (2 apenas se nota).`,
  outOfReach: ({ other }) => `Es más ${other} de lo que admite una masa: no llega tan hondo.`,
  cost: ({ cheaper, dearer, a, b }) => `Sale más barato ${cheaper}: ${a} la taza, ${dearer} ${b}.`,
  twoCurrencies: ({ one, other, a, b }) =>
    `Una taza cuesta ${a} con ${one} y ${b} con ${other}; no convierto monedas.`,
  priceMissing: ({ name }) => `Di lo que costó ${name} con /shelf describe y lo comparo también.`,
  untested: ({ plusMinus }) =>
    `Por tipo, ± ${tenths(plusMinus)} de color: las barras de prueba distinguen tus botes, mira /calibrate plan.`,
};

export const comparingRefusals: Pick<RefusalSentences, 'compare-with-itself' | 'compare-white-with-colour'> =
  {
    'compare-with-itself': () => 'Es el mismo bote dos veces. Nombra dos: one «Ocaso», other «Mar».',
    'compare-white-with-colour': () =>
      'Un blanco y un color hacen cosas distintas: compara dos blancos o dos colores.',
  };
