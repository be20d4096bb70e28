import { action, command, privateIfRecipe } from '../../src/conversation/command.ts';
import { several, text } from '../../src/conversation/option.ts';
import { suggestJars } from '../../src/presenting/colour/suggest.ts';
import type { doseAnswerData } from '../../src/presenting/dose-data.ts';
import { nearestRecipes } from '../../src/records/recipes/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { doseEssence, doseReply } from './answer.ts';
import { doseNamesJar } from './asked.ts';
import { doseFollowUps } from './follow-ups.ts';

const says = phrases('dose');

export default command(
  'dose',
  action({
    purpose: says.purpose,
    anywhere: true,
    seenBy: privateIfRecipe,
    options: {
      colourant: text(says.colourant),
      portion: text(says.portion, { reads: 'portion' }),
      strength: text(says.strength).optional(),
      carrier: text(says.carrier).optional(),
      premix: text(says.premix).optional(),
      with: several(says.with, { most: 4 }),
      recipe: text(says.recipe, { most: 100 }).optional(),
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
