import { action, command, privateIfRecipe } from '../../src/conversation/command.ts';
import { several, text } from '../../src/conversation/option.ts';
import { suggestJars } from '../../src/presenting/colour/suggest.ts';
import type { doseAnswerData } from '../../src/presenting/dose-data.ts';
import { nearestRecipes } from '../../src/records/recipes/index.ts';
import { doseEssence, doseReply } from './answer.ts';
import { doseNamesJar } from './asked.ts';
import { doseFollowUps } from './follow-ups.ts';

export default command(
  'dose',
  action({
    purpose: {
      en: 'How much colourant for the batter you pull out, and how to wet it',
      es: 'Cuánto colorante para la masa que apartas, y cómo humedecerlo',
    },
    anywhere: true,
    seenBy: privateIfRecipe,
    options: {
      colourant: text({
        en: 'A colourant by name or CI number, or a jar on your shelf',
        es: 'Un colorante por su nombre o número CI, o un bote de tu estantería',
      }),
      portion: text(
        {
          en: 'How much batter: “2 cups”, “500 ml”, “1 lb oils”',
          es: 'Cuánta masa: «2 tazas», «500 ml», «500 g de aceites»',
        },
        { reads: 'portion' },
      ),
      strength: text({
        en: 'Tint, pastel, medium, full, or teaspoons per cup. What is usual unless you say',
        es: 'Toque, pastel, medio, pleno, o cucharaditas por taza. Lo usual si no dices nada',
      }).optional(),
      carrier: text({
        en: 'What you want to wet it in: water, oil or glycerin',
        es: 'En qué quieres humedecerlo: agua, aceite o glicerina',
      }).optional(),
      premix: text({
        en: 'Already wet? “30%” pigment, or your own paste: “1 tsp in 1 Tbsp oil”',
        es: '¿Ya humedecido? «30%» de pigmento, o tu pasta: «1 cdta en 1 cda de aceite»',
      }).optional(),
      with: several(
        {
          en: 'Another colourant in the same portion: “gold mica pastel”',
          es: 'Otro colorante en la misma porción: «mica dorada pastel»',
        },
        { most: 4 },
      ),
      recipe: text(
        {
          en: 'A kept recipe whose batter it is, for a closer answer',
          es: 'Una receta guardada, si es su masa: la respuesta es más exacta',
        },
        { most: 100 },
      ).optional(),
    },
    completes: {
      colourant: suggestJars,
      with: suggestJars,
      strength: (typed, { say }) =>
        Object.entries(say.quantities.strengths)
          .map(([value, name]) => ({ name, value }))
          .filter(({ name }) => name.startsWith(typed.toLowerCase())),
      recipe: async (typed, context) =>
        (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
      carrier: (_, { say }) =>
        Object.entries(say.dispersion.carriers).map(([value, name]) => ({ name, value })),
    },
    essence: ({ data }) => doseEssence(data as ReturnType<typeof doseAnswerData>),
    namesJar: doseNamesJar,
    answer: doseReply,
  }),
  { followUps: doseFollowUps },
);
