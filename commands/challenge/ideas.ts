import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import { withinReach } from '../../src/engine/challenges/reach.ts';
import type { Target, Terms } from '../../src/engine/challenges/terms.ts';
import { gramsPerHundred } from '../../src/engine/colour/jars/colourant-optics.ts';
import { opticsOfJar } from '../../src/engine/colour/jars/jar.ts';
import { predictBar } from '../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../src/engine/colour/mixing/base-soap.ts';
import { USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { type Measures, US_CUP_ML } from '../../src/engine/quantities/units.ts';
import { shelfChoice, type Usable } from '../../src/presenting/colour/candidates.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { type Recipe, recipesOf } from '../../src/presenting/colour/recipe.ts';
import { spoonsData } from '../../src/presenting/dose-data.ts';
import { asOf, requireChallenge } from '../../src/records/challenges/index.ts';
import { noteShelf } from '../../src/records/group-shelves.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { tenth } from './bars.ts';
import { scopeOf } from './lookup.ts';

/** A US cup of batter: what a maker pulls out for one colour. */
const oneCup = { cups: 1, grams: US_CUP_ML * TYPICAL_BATTER.gramsPerMillilitre } as const;

/** What a member could make for a challenge from their own shelf; for their eyes only. */
export async function ideasFor(id: string, context: Context): Promise<Reply> {
  const { store, asker, say, at } = context;
  const { terms } = asOf(await requireChallenge(scopeOf(context), id), at);
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const { usable } = await shelfChoice(measures, context);
  if (usable.length === 0)
    return {
      kind: 'reply',
      headline: say.challengeSteps.emptyShelf,
      data: { challenge: id, ideas: [] },
      blocks: [],
      cautions: [],
    };
  await store.commit(noteShelf(context.group, asker.id, new Date(context.at)));
  return terms.palette.length > 0
    ? recipesFor(id, terms, { usable, measures }, context)
    : coloursOf(id, usable, context);
}

/** Colourants beside a white, and whether there may be one: a rule of one or two counts the white too. */
function allowed({ constraint, mostColourants = 4 }: Terms): { most: number; whites: boolean } {
  const together = constraint === 'one-pigment' ? 1 : mostColourants;
  return together === 1 ? { most: 1, whites: false } : { most: Math.min(3, together - 1), whites: true };
}

/** The best recipe in spoons for each colour of the palette, as `/match` finds it. */
async function recipesFor(
  id: string,
  terms: Terms,
  { usable, measures }: { usable: readonly Usable[]; measures: Measures },
  context: Context,
): Promise<Reply> {
  const { say, asker, workers } = context;
  const steps = say.challengeSteps;
  const { most, whites } = allowed(terms);
  const candidates = usable.map(({ candidate }) => candidate).filter(({ white }) => whites || !white);
  const found: Idea[] = [];
  // One after the other: a palette may hold more colours than a member may have searches under way.
  for (const target of terms.palette) {
    const asked = {
      target: target.lab,
      candidates,
      shades: USUAL_BASE.shades,
      gelled: false,
      portion: oneCup,
      owned: measures.owned,
    };
    const answer =
      candidates.length > 0 &&
      (await workers.run('matchJars', { ...asked, most, recipes: 1 }, { owner: asker.id }));
    found.push({ target, recipe: answer ? recipesOf(answer, usable, measures)[0] : undefined });
  }
  const near = found.filter(({ recipe }) => recipe !== undefined && recipe.deltaE <= withinReach).length;
  return {
    kind: 'reply',
    headline: steps.ideas({ near, of: found.length }),
    data: {
      challenge: id,
      ideas: found.map(({ target, recipe }) => ({
        target: target.hex,
        deltaE: recipe?.deltaE,
        doses: recipe?.doses.map(({ jar, teaspoons, spoons }) => ({
          jar: knownAs(jar, say),
          teaspoons,
          spoons: spoonsData({ spoons }),
        })),
      })),
    },
    blocks: [ideaMeasures(found, context), { kind: 'text', text: steps.ideasNote, folds: true }],
    cautions: [{ id: 'gloves', text: steps.gloves }],
  };
}

type Idea = { readonly target: Target; readonly recipe: Recipe | undefined };

function ideaMeasures(found: readonly Idea[], { say }: Context): Block {
  const steps = say.challengeSteps;
  return {
    kind: 'measures',
    measures: found.map(({ target, recipe }) => {
      if (!recipe) return { label: target.hex, value: steps.nothingNear };
      const doses = recipe.doses.map(
        ({ jar, spoons }) => `${say.quantities.measure({ spoons })} ${knownAs(jar, say)}`,
      );
      const { hex, plusMinus } = recipe.predicted;
      return {
        label: target.hex,
        value: doses.length === 0 ? steps.uncoloured : doses.join(', '),
        note: steps.ideaNote({ hex, away: tenth(recipe.deltaE), plusMinus: tenth(plusMinus) }),
      };
    }),
  };
}

/** Without a palette: the colour each jar gives at its ceiling and at a quarter of it. */
function coloursOf(id: string, usable: readonly Usable[], { say }: Context): Reply {
  const steps = say.challengeSteps;
  const base = baseSoap(USUAL_BASE.shades, false);
  const ideas = usable.map(({ jar, candidate }) => {
    const optics = opticsOfJar(candidate.jar);
    const at = (share: number) => {
      const grams = gramsPerHundred(candidate.ceilingTspPerCup * share, candidate.gramsPerTeaspoon);
      return predictBar([{ optics, grams }], base);
    };
    const [full, pale] = [at(1), at(0.25)];
    return {
      name: knownAs(jar, say),
      full: full.hex,
      pale: pale.hex,
      words: [full.word, pale.word] as const,
    };
  });
  return {
    kind: 'reply',
    headline: steps.jarIdeas({ jars: ideas.length }),
    data: { challenge: id, ideas },
    blocks: [
      {
        kind: 'rows',
        rows: ideas.map(({ name, full, pale, words: [deep, light] }) =>
          steps.jarIdea({ name, full, pale, deep: say.colour.names[deep], light: say.colour.names[light] }),
        ),
      },
    ],
    cautions: [{ id: 'gloves', text: steps.gloves }],
  };
}

/** The button under the announcement: everybody gets their own recipes, privately. */
export const ideas = followUp({
  for: 'group',
  hours: 24 * 370,
  seenBy: 'asker',
  pace: 'slow',
  args: { challenge: z.string() },
  answer: ({ challenge }, context) => ideasFor(challenge, context),
});
