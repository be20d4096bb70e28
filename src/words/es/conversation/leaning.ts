import { spaced } from '../../../engine/over-lines.ts';
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
  bleeds: ({ name, does }) =>
    does
      ? `${name}: sangra, se corre a lo claro y puede teñir espuma y tela. Lejos del blanco, y poca cantidad.`
      : `${name}: no sangra a otros colores. Si es demasiado tiñe la espuma y un paño claro; a la dosis usual se lava.`,
  micaCoat: spaced`
    La escama de mica aguanta la sosa; decide el color que lleva encima. Lee su lista: los CI 77… casi
    todos aguantan, pero no el azul de hierro (77510) ni el violeta de manganeso (77742); luego, una
    pastilla de prueba.
  `,
  light: ({ name, light }) =>
    ({
      holds: `${name}: no se va con la luz.`,
      'fades-slowly': `${name}: se va despacio con la luz; guarda las pastillas a oscuras.`,
      fades: `${name}: sí, con la luz se va en meses; cura y guarda a oscuras.`,
    })[light],
  scentFor: ({ grams, oils }) =>
    `Unos ${grams} g de fragancia para ${oils} g de aceites (3 %), y nunca más que el límite de su ficha.`,
  contest: ({ told }) =>
    `Cuántas pastillas, hasta cuándo, quién ganó: cada reto dice sus reglas; si no, pregunta a un responsable. ${told}`,
  skinThenSurface: (v: { told: string }) =>
    `Primero la piel: agua corriente, 15 minutos o más. Luego la superficie: ${v.told}`,
  noVinegar: 'Vinagre no, limón tampoco: solo agua corriente, y sigue. Si no mejora: ayuda médica ya.',
  fine: 'Bien. Pregunta lo siguiente cuando haga falta.',
  aboutThing: ({ name }) => `Sobre ${name}: ¿cuánto va, en qué se moja o si aguanta?`,
  aboutFlaw: ({ words }) => `Sobre «${words}»: ¿qué ves, dónde y desde cuándo?`,
  aboutMatter: ({ words }) => `Sobre «${words}»: ¿qué más quieres saber?`,
  lacks: {
    'amount-of': ({ told }) =>
      `Para ${told}, ¿de qué colorante? Si es sobre la sosa: dime cada aceite con su peso.`,
    'name-for': ({ told }) => `${told}: ¿para cuánta masa o aceites? ¿O quieres saber si aguanta la sosa?`,
    'of-what': () => '¿De qué? No conservo nada de antes: dime el colorante y cuánta masa o cuántos aceites.',
    'what-happened': () =>
      '¿De qué se trata: masa que espesó, color con grumos, una pastilla que salió mal? Bastan unas palabras.',
    'lye-over': () => spaced`
      No lo uses: la sosa de más se queda en el jabón y quema. Cuánto se pasa lo calculo con todo lo que
      echaste: «puse 150 g de sosa en 800 g de oliva y 200 g de coco».
    `,
    'whole-recipe': () =>
      'Para la sosa necesito la receta entera otra vez: cada aceite con su peso, y el sobreengrasado.',
    'which-thing': () => '¿Qué color o polvo dices? Nómbralo, como «arcilla rosa».',
  },
  figureBefore:
    'La sosa que te di antes es para la olla tal como la contaste entonces: para otra olla no la uses.',
  lyeHeavy:
    'No lo uses, no lo regales ni laves con él: lleva demasiada sosa hasta que se arregle. Esperar no lo cambia.',
  stillBarred: ({ told }) =>
    `Sigue siendo no. Que a unas manos no les pase nada no dice nada de un baño ni de otra piel. ${told}`,
  lyeHeavyMended:
    'Una vez arreglado: cuatro semanas, y su espuma por debajo de pH 11 en el papel, sin nada duro, húmedo ni que pique. Un solo «no»: no lo uses.',
  lyeHeavyColour:
    'Fundido de nuevo, el remolino queda en un solo color apagado. Óxidos y ultramar aguantan; las plantas y algunas micas, no.',
  goOn: 'La sosa puede esperar: sigue solo cuando la piel lleve 20 minutos de agua, esté seca y no escueza.',
  goOnHow: spaced`
    Hasta entonces, la jarra abierta, con etiqueta, donde no pase nadie; hecho una hora o un día después,
    el jabón no sale peor. Antes, gafas estancas, manga larga y guantes secos. Con una ampolla, piel blanca
    o dura, dolor que sigue o algo en un ojo: hoy no hay jabón, atención médica.
  `,
  stillHurt: 'Si no mejora, o ante cualquier duda: atención médica ya. Hasta entonces, los mismos pasos:',
};
