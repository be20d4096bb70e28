import type * as en from '../../en/conversation/leaning.ts';

export const leaning: typeof en.leaning = {
  asBefore: ({ line }) => `Leído como: ${line}, lo demás como preguntaste antes.`,
  again: ({ line }) => `Como preguntaste antes: ${line}`,
  onBefore: 'Esto es sobre lo que preguntaste antes.',
  recipe: ({ oils, superfat, headline }) =>
    `Para ${oils}${superfat === undefined ? '' : `, con ${superfat} % de sobreengrasado`}: ${headline}`,
  inGrams: ({ weight, name, portion }) => `${weight} de ${name} para ${portion}`,
  wetWith: ({ liquid, dose }) => `Humedécelo en ${liquid}: ${dose}`,
  cups: ({ spoons }) =>
    `${spoons}. /prefer spoons lo cambia. Para el color otra taza da igual; la sosa siempre se pesa.`,
  orThis: ({ line }) => `Quería decir: ${line}`,
  fine: 'Bien. Pregunta lo siguiente cuando haga falta.',
  stillAbout: ({ line }) => `¿Sigue siendo sobre ${line}? Dime con alguna palabra más qué quieres saber.`,
  lacks: {
    'amount-of': ({ told }) =>
      `Para ${told}, ¿de qué colorante? Si es sobre la sosa: dime cada aceite con su peso.`,
    'name-for': ({ told }) => `${told}: ¿para cuánta masa o aceites? ¿O quieres saber si aguanta la sosa?`,
    'of-what': () => '¿De qué? No conservo nada de antes: dime el colorante y cuánta masa o cuántos aceites.',
    'what-happened': () =>
      '¿De qué se trata: masa que espesó, color con grumos, una pastilla que salió mal? Bastan unas palabras.',
    'whole-recipe': () =>
      'Para la sosa necesito la receta entera otra vez: cada aceite con su peso, y el sobreengrasado.',
    'which-thing': () => '¿Qué color o polvo dices? Nómbralo, como «arcilla rosa».',
  },
  stillHurt: 'Si no mejora, o ante cualquier duda: atención médica ya. Hasta entonces, los mismos pasos:',
};
