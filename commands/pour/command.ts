import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, number, text, whole, yesNo } from '../../src/conversation/option.ts';
import { suggestBases, suggestMix } from '../../src/presenting/colour/suggest.ts';
import { gradientReply } from './gradient.ts';
import { infusionReply } from './infusion.ts';
import { layersReply, lineReply, swirlReply } from './shape.ts';

const mould = text(
  {
    en: 'Its inside, filled height last: “25x9x7 cm”, “cylinder 8x25 cm”, “12 cavities x 100 ml, 3 cm deep”',
    es: 'Su interior, altura al final: «25x9x7 cm», «cilindro 8x25 cm», «12 cavidades x 100 ml»',
  },
  { most: 100 },
);
const soap = {
  base: text(
    {
      en: 'The soap without colour: white, cream, yellow, green, or your oils',
      es: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites',
    },
    { most: 400 },
  ).optional(),
  gel: yesNo({ en: 'Does it go through gel?', es: '¿Pasa por gel?' }).optional(),
};
const base = (typed: string, { say }: Context) => suggestBases(typed, say);

export default commandGroup(
  'pour',
  {
    en: 'How much of each colour goes where: layers, lines, swirls, gradients, infused oils',
    es: 'Cuánto de cada color va dónde: capas, líneas, remolinos, degradados, aceites infusionados',
  },
  {
    layers: action({
      purpose: {
        en: 'Layers of one height, flat or with a wedge from a tilted mould',
        es: 'Capas de igual altura, planas o con cuña de un molde inclinado',
      },
      seenBy: 'group',
      options: {
        mould,
        layers: whole({ en: 'How many layers', es: 'Cuántas capas' }, { least: 2, most: 12 }),
        raised: number(
          {
            en: 'Block under one long side for the first layer, cm: it sets as a wedge',
            es: 'Taco bajo un lado largo para la primera capa, cm: queda en cuña',
          },
          { least: 0, most: 40 },
        ).optional(),
      },
      answer: layersReply,
    }),
    line: action({
      purpose: {
        en: 'How much powder a pencil line takes',
        es: 'Cuánto polvo lleva una línea de lápiz',
      },
      seenBy: 'asker',
      options: {
        mould,
        colourant: text({
          en: 'A jar of yours or any colourant. Gold mica unless you say',
          es: 'Un bote tuyo o un colorante. Mica dorada si no dices nada',
        }).optional(),
        lines: whole(
          { en: 'How many lines. One unless you say', es: 'Cuántas líneas. Una si no dices' },
          { least: 1, most: 20 },
        ).optional(),
        thickness: choice(
          { en: 'How thick', es: 'Qué grosor' },
          {
            thin: { en: 'Thin', es: 'Fina' },
            usual: { en: 'Usual', es: 'Normal' },
            thick: { en: 'Thick', es: 'Gruesa' },
          },
        ).optional(),
      },
      answer: lineReply,
    }),
    swirl: action({
      purpose: {
        en: 'How much of each colour for its share of the top',
        es: 'Cuánto de cada color para su parte de la superficie',
      },
      seenBy: 'group',
      options: {
        mould,
        shares: text(
          {
            en: 'What share each takes: “blue 50%, white 30%, gold 20%” or “blue 2, white 1”',
            es: 'Qué parte toma cada uno: «azul 50%, blanco 30%» o «azul 2, blanco 1»',
          },
          { most: 400 },
        ),
        depth: number(
          {
            en: 'How deep the swirled top is, cm. 2.5 unless you say',
            es: 'Profundidad del remolino, cm. 2,5 si no dices',
          },
          { least: 0.5, most: 30 },
        ).optional(),
      },
      answer: swirlReply,
    }),
    gradient: action({
      purpose: {
        en: 'Steps between two pots that look even, not equal spoons',
        es: 'Pasos entre dos jarras que se ven iguales, no cucharas iguales',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: {
        from: text(
          {
            en: 'Pot A: “ultramarine blue full”, or “plain”',
            es: 'Jarra A: «azul ultramar pleno», o «sin color»',
          },
          { most: 400 },
        ),
        to: text({ en: 'Pot B, likewise', es: 'Jarra B, lo mismo' }, { most: 400 }),
        steps: whole(
          { en: 'How many steps. 5 unless you say', es: 'Cuántos pasos. 5 si no dices' },
          { least: 3, most: 12 },
        ).optional(),
        portion: text(
          {
            en: 'Batter in each step: “1 cup”. 1 cup unless you say',
            es: 'Masa en cada paso: «1 taza». 1 taza si no dices nada',
          },
          { reads: 'portion' },
        ).optional(),
        ...soap,
      },
      completes: { base, from: suggestMix, to: suggestMix },
      answer: gradientReply,
    }),
    infusion: action({
      purpose: {
        en: 'What share of your oils to infuse with a plant, from a test bar',
        es: 'Qué parte de tus aceites infusionar con una planta, por una barra de prueba',
      },
      seenBy: 'group',
      options: {
        bar: text({
          en: 'A cured bar: share of infused oil, then its colour: “20% #d9b86a”',
          es: 'Una barra curada: parte de aceite infusionado y color: «20% #d9b86a»',
        }).optional(),
        target: text({
          en: 'The colour you want: “#c79a3c” or “mustard”',
          es: 'El color que quieres: «#c79a3c» o «mostaza»',
        }).optional(),
        oils: text({
          en: 'All oils of the recipe: “1000 g”',
          es: 'Todos los aceites de la receta: «1000 g»',
        }).optional(),
        ...soap,
      },
      completes: { base },
      answer: infusionReply,
    }),
  },
);
