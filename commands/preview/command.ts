import { action, command, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases, suggestMix } from '../../src/presenting/colour/suggest.ts';
import { previewNamesJar, previewReply } from './answer.ts';

const bases = (typed: string, { say }: Context): readonly Suggestion[] => suggestBases(typed, say);

export default command(
  'preview',
  action({
    purpose: {
      en: 'See the cured colour of a mix before you pour, with a swatch card',
      es: 'Mira el color curado de una mezcla antes de verter, con una carta de muestras',
    },
    anywhere: true,
    seenBy: 'group',
    pace: 'slow',
    options: {
      mix: text(
        {
          en: 'What goes in: “ultramarine violet pastel + titanium dioxide 1/4 tsp”',
          es: 'Qué lleva: «violeta ultramar pastel + dióxido de titanio 1/4 cdta»',
        },
        { most: 400 },
      ),
      portion: text(
        {
          en: 'How much batter it goes into: “2 cups”. 1 cup unless you say',
          es: 'En cuánta masa: «2 tazas». 1 taza si no dices nada',
        },
        { reads: 'portion' },
      ).optional(),
      base: text(
        {
          en: 'The soap without colour: white, cream, yellow, green, or your oils. Cream unless you say',
          es: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites. Crema si no dices',
        },
        { most: 400 },
      ).optional(),
      gel: yesNo({
        en: 'Does it go through gel? No unless you say; the card shows both',
        es: '¿Pasa por gel? No, si no dices nada; la carta muestra ambos',
      }).optional(),
    },
    completes: { mix: suggestMix, base: bases },
    namesJar: previewNamesJar,
    answer: previewReply,
  }),
);
