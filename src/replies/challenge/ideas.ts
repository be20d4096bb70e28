import { z } from 'zod';
import { followUp } from '../../conversation/command.ts';
import type { Context } from '../../conversation/context.ts';
import type { Block, Reply } from '../../conversation/reply.ts';
import type { Target, Terms } from '../../engine/challenges/terms.ts';
import { predictBar } from '../../engine/colour/bar.ts';
import { plainBase } from '../../engine/colour/base-soap.ts';
import { gramsPerHundred } from '../../engine/colour/colourant-optics.ts';
import type { MatchCandidate, MatchRecipe } from '../../engine/colour/match.ts';
import { printSpoons } from '../../engine/quantities/spoons.ts';
import { asOf, requireChallenge } from '../../records/challenges/index.ts';
import { noteShelf } from '../../records/group-shelves.ts';
import { listShelf } from '../../records/shelf/index.ts';
import type { ShelfItem } from '../../records/shelf/shelf.ts';
import { tenth } from './bars.ts';
import { boardOf } from './board.ts';
import { candidatesOf } from './shelf-candidates.ts';

/** A US cup of batter at 1 g/ml: what a maker pulls out for one colour. */
const oneCup = { cups: 1, grams: 236.6 } as const;
const base = plainBase('white', false);

/** What a member could make for a challenge from their own shelf; for their eyes only. */
export async function ideasFor(id: string, context: Context): Promise<Reply> {
  const { store, asker, say, at } = context;
  const steps = say.challengeSteps;
  const { terms } = asOf(await requireChallenge(boardOf(context), id), at);
  const items = await listShelf({ store, member: asker.id });
  const candidates = candidatesOf(items);
  if (candidates.length === 0)
    return {
      kind: 'reply',
      headline: steps.emptyShelf,
      data: { challenge: id, ideas: [] },
      blocks: [],
      cautions: [],
    };
  await store.commit([noteShelf(context.group, asker.id)]);
  return terms.palette.length > 0
    ? recipesFor(id, terms, { items, candidates }, context)
    : coloursOf(id, { items, candidates }, context);
}

type OwnShelf = { readonly items: readonly ShelfItem[]; readonly candidates: readonly MatchCandidate[] };

/** Whites do not count as a colour beside the one pigment, but the rule allows one colourant in all. */
const mostTogether = ({ constraint, mostColourants = 2 }: Terms) =>
  constraint === 'one-pigment' ? 1 : Math.max(1, Math.min(2, mostColourants));

/** The best recipe in spoons for each colour of the palette. */
async function recipesFor(id: string, terms: Terms, shelf: OwnShelf, context: Context): Promise<Reply> {
  const { say, asker, workers } = context;
  const steps = say.challengeSteps;
  const allowed =
    terms.constraint === 'one-pigment' ? shelf.candidates.filter(one => !one.white) : shelf.candidates;
  const found = await Promise.all(
    terms.palette.map(async target => ({
      target,
      recipe: (
        await workers.run(
          'match',
          {
            target: target.lab,
            candidates: allowed,
            base,
            portion: oneCup,
            most: mostTogether(terms),
            recipes: 1,
          },
          { owner: asker.id },
        )
      ).recipes[0],
    })),
  );
  const near = found.filter(({ recipe }) => (recipe?.deltaE ?? Number.POSITIVE_INFINITY) <= 5).length;
  const names = new Map(shelf.items.map(item => [item.id, item.name]));
  return {
    kind: 'reply',
    headline: steps.ideas({ near, of: found.length }),
    data: { challenge: id, ideas: found.map(({ target, recipe }) => ({ target: target.hex, recipe })) },
    blocks: [ideaMeasures(found, names, context), { kind: 'text', text: steps.ideasNote, folds: true }],
    cautions: [{ id: 'gloves', text: steps.gloves }],
  };
}

function ideaMeasures(
  found: readonly { readonly target: Target; readonly recipe: MatchRecipe | undefined }[],
  names: ReadonlyMap<string, string>,
  { say }: Context,
): Block {
  const steps = say.challengeSteps;
  return {
    kind: 'measures',
    measures: found.map(({ target, recipe }) => {
      if (!recipe) return { label: target.hex, value: steps.nothingNear };
      const doses = recipe.doses.map(
        dose => `${say.quantities.measure(dose.spoons.map(printSpoons).join(' + '))} ${names.get(dose.id)}`,
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
function coloursOf(id: string, { items, candidates }: OwnShelf, { say }: Context): Reply {
  const steps = say.challengeSteps;
  const ideas = candidates.map(candidate => {
    const at = (share: number) => {
      const grams = gramsPerHundred(candidate.ceilingTspPerCup * share, candidate.gramsPerTeaspoon);
      return predictBar([{ optics: candidate.optics, grams }], base);
    };
    const [full, pale] = [at(1), at(0.25)];
    const name = items.find(item => item.id === candidate.id)?.name ?? candidate.id;
    return { name, full: full.hex, pale: pale.hex, words: [full.word, pale.word] as const };
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
