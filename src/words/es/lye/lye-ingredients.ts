import { spaced } from '../../../engine/over-lines.ts';
import type { lyeIngredients as english } from '../../en/lye/lye-ingredients.ts';

/** What is said of what goes into the batter beside oils and lye: milk, sugar, acid, bleach, scent. */
export const lyeIngredients: typeof english = {
  'milk-at-once': {
    answer: [
      'No: nunca toda la sosa de golpe en la leche.',
      'Cucharada a cucharada en leche congelada, sobre hielo.',
    ],
    why: [
      'La sosa calienta la leche hasta quemarla, sube la espuma y huele a amoniaco.',
      spaced`
        Congela la leche hasta que sea granizado, pon la jarra en hielo, echa una cucharada de sosa,
        remueve hasta que desaparezca, y luego otra; por debajo de unos 30 °C (86 °F).
      `,
      'O disuelve la sosa en su mismo peso de agua, fría, y echa el resto como leche en los aceites.',
      'Gafas, guantes, ventana abierta.',
      '/plan liquid:«leche de cabra» calcula las dos.',
    ],
  },
  'scorched-milk': {
    answer: [
      'La leche naranja que huele a amoniaco se ha quemado: abre las ventanas, deja que se enfríe, aparta la cara.',
    ],
    why: [
      'La sosa caliente deshace el azúcar y las proteínas de la leche.',
      'El olor se va en días, el tono tostado queda.',
      'Si aún sube o espuma, apártate y déjala.',
      'Por debajo de 40 °C (104 °F) y lisa se puede usar; marrón y con grumos, deséchala según tus normas locales.',
      'Otra vez, congela la leche y echa la sosa a cucharadas sobre hielo.',
    ],
  },
  'bleach-in-soap': {
    answer: ['No: nunca lejía de limpiar en el jabón, la masa o la sosa.'],
    why: [
      'Con ácidos suelta cloro; con amoniaco (también el de la leche quemada), cloraminas: los dos son tóxicos.',
      'Daña la piel, ataca el jabón y no lo blanquea.',
      'Para blanco: dióxido de titanio, aceites claros, sin vainilla.',
    ],
  },
  'acid-in-batter': {
    answer: ['No para bajar el pH: el ácido en la masa solo gasta sosa.'],
    why: [
      'El jabón sigue siendo alcalino; la sosa que toma el ácido falta a los aceites, y la pastilla queda más blanda y grasa.',
      'Como ingrediente se cuenta antes y se pesa: /plan additives:«ácido cítrico 10 g» o liquid:«vinagre» suma la sosa que gasta.',
      'Nunca ácido sobre sosa seca o agua de sosa fuerte: hierve.',
    ],
  },
  'acid-on-soap': {
    answer: ['No: el ácido no arregla un jabón al que le sobra sosa.', 'No lo uses.'],
    why: [
      'No puedes saber cuánta sosa hay libre ni dónde, el ácido solo moja por fuera, y calienta.',
      'Guantes.',
      spaced`
        Si cada peso es seguro se puede rehacer con los aceites que faltan; si no, deséchalo como
        residuo cáustico según tus normas locales.
      `,
    ],
  },
  'liquid-instead': {
    answer: ['No igual que el agua: vino y cerveza, hervidos sin gas; todo helado, y la sosa poco a poco.'],
    why: [
      'Leche, nata, puré y aloe: congelados como granizado, la sosa a cucharadas sobre hielo, o mezclados con los aceites.',
      'Cerveza, vino y sidra: hervidos hasta perder el gas y el alcohol, y fríos o congelados, o rebosan.',
      'Café y té: hechos antes, helados o congelados, nunca calientes.',
      'Zumos y otros azúcares calientan: congelados, en poca parte.',
      'Vinagre y limón gastan sosa y salpican: solo fríos, y se añade la sosa que toman.',
      'Siempre tanta agua como sosa en peso en la jarra.',
      '/plan con liquid:«leche de cabra», «mitad cerveza» o «vinagre» lo pesa todo.',
      'Gafas, guantes, corriente de aire.',
    ],
  },
  sugars: {
    answer: [
      'Como mucho 30 g por kg de aceites (3 %), disueltos antes en agua: el azúcar y la miel calientan el jabón.',
    ],
    why: [
      'Con 10 a 20 g por kg basta para la espuma.',
      'Con más se recalienta: el pan se raja, sube o se separa, y la miel en sosa caliente rebosa.',
      'Disuélvela en un poco del agua de la receta, en frío, y mézclala con los aceites o en traza fina, nunca en el agua de sosa.',
      'Vierte fresco, menos de 38 °C (100 °F), sin abrigar.',
      '/plan additives:«miel 15 g» cuenta su calor.',
    ],
  },
  'candle-scent': {
    answer: ['Solo si su certificado da una dosis para jabón que se aclara (IFRA, categoría 9).'],
    why: [
      'Muchos aromas para velas o ambientes no son para la piel, y pueden quemar, enrojecer o cortar la masa.',
      'Pide al vendedor el certificado IFRA y no pases de su cifra de la categoría 9; sin él, no lo uses.',
      'El aroma se dosifica por peso de aceites, nunca por cucharas: /plan fragrance:«3%».',
    ],
  },
};
