import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { buyReply } from './buy.ts';
import { makeReply } from './make.ts';
import { todayReply } from './today.ts';

const colours = text(
  {
    en: 'Colours, “teal, gold, #a04060”, or a mood: “sunset, four layers”',
    es: 'Colores, «teal, oro, #a04060», o un ambiente: «atardecer, cuatro capas»',
  },
  { most: 400 },
);
const soap = {
  portion: text(
    {
      en: 'Batter for each colour: “2 cups”. 1 cup unless you say',
      es: 'Masa para cada color: «2 tazas». 1 taza si no dices nada',
    },
    { reads: 'portion' },
  ).optional(),
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
  'palette',
  {
    en: 'Colours that go together: what your shelf makes, and what to buy',
    es: 'Colores que casan: qué hace tu estantería y qué comprar',
  },
  {
    today: action({
      purpose: {
        en: 'What you can make today: palettes from your shelf whose hues hold together',
        es: 'Qué puedes hacer hoy: paletas de tu estantería cuyos tonos casan',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: {
        scheme: choice(
          { en: 'How the hues stand to one another', es: 'Cómo se relacionan los tonos' },
          {
            analogous: { en: 'Neighbours', es: 'Vecinos' },
            complementary: { en: 'Opposites', es: 'Opuestos' },
            'split-complementary': { en: 'Split opposites', es: 'Opuestos partidos' },
            triadic: { en: 'Triangle', es: 'Triángulo' },
            tetradic: { en: 'Square', es: 'Cuadrado' },
          },
        ).optional(),
        ...soap,
      },
      completes: { base },
      answer: todayReply,
    }),
    make: action({
      purpose: {
        en: 'A recipe from your shelf for each colour of a palette',
        es: 'Una receta de tu estantería para cada color de una paleta',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: { colours, ...soap },
      completes: { base },
      answer: makeReply,
    }),
    buy: action({
      purpose: {
        en: 'The one or two colourants that bring a palette nearest',
        es: 'El colorante o los dos que más acercan una paleta',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: { colours, ...soap },
      completes: { base },
      answer: buyReply,
    }),
  },
);
