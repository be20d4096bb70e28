import { z } from 'zod';
import { followUp, type SeenBy } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Choice, Reply } from '../../src/conversation/reply.ts';
import type { Lab } from '../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { answerDose } from '../../src/engine/dosing/answer.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import type { Dose } from '../../src/engine/dosing/request.ts';
import { teaspoonsIn } from '../../src/engine/quantities/spoons.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { doseBlocks, doseCautions, MOST_DOSE_WORDS, spoonsOf } from '../../src/presenting/dose.ts';
import { doseAnswerData } from '../../src/presenting/dose-data.ts';
import {
  type MatchAsked,
  type RecentMatch,
  type RecentRecipe,
  recentMatchOf,
} from '../../src/records/matches/index.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findItem, pressedAgain, useItems } from '../../src/records/shelf/index.ts';
import { type Jar, jarOf, knownOf } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';
import { undoChoice } from '../shelf/follow-ups.ts';
import { makeMatch } from './answer.ts';

const recipeId = { match: z.string(), recipe: z.string().transform(Number) };

const shownRecipe = { ...recipeId, seen: z.string() };

/** Only what is matched from the catalogue is for everybody; the mark travels in the buttons. */
export const seenOf = ({ from }: Pick<MatchAsked, 'from'>): 'g' | 'a' => (from === 'catalogue' ? 'g' : 'a');
/** Who sees what follows, by that mark. */
export const seenIn = ({ seen }: { readonly seen?: string }): SeenBy => (seen === 'g' ? 'group' : 'asker');

async function recipeOf(
  { match: id, recipe: number }: { match: string; recipe: number },
  whose: Context['shelf'],
): Promise<{ match: RecentMatch; recipe: RecentRecipe }> {
  const match = await recentMatchOf(whose, id);
  const recipe = match.recipes[number] ?? refuse('match-forgotten', {});
  return { match, recipe };
}

/** Takes a recipe's colourants off the shelf: all of them or none, once whichever of its buttons is pressed. */
const take = followUp({
  seenBy: 'asker',
  args: recipeId,
  async answer(args, context): Promise<Reply> {
    const { say, at } = context;
    const { recipe } = await recipeOf(args, context.shelf);
    const takings = recipe.doses.flatMap(({ item, milligrams }) =>
      item === undefined ? [] : [{ item, grams: milligrams / 1000 }],
    );
    const press = context.id;
    const cause = await pressedAgain(context.shelf, { cause: `match-${args.match}-${args.recipe}`, press });
    const change = { cause, at: new Date(at), press };
    const outcomes = await useItems(context.shelf, takings, change);
    const list = outcomes.map(({ name, left = 0 }) => say.match.left({ name, grams: say.shelf.grams(left) }));
    const notices = [
      ...(outcomes.some(({ repeated }) => repeated) ? [say.shelf.repeated] : []),
      ...outcomes.flatMap(({ name, left, low }) =>
        low && left !== undefined ? [say.shelf.low({ name, left })] : [],
      ),
    ];
    return {
      kind: 'reply',
      headline: say.match.takenAll({ list: list.join(', ') }),
      data: { outcomes },
      blocks: notices.map(text => ({ kind: 'text', text })),
      cautions: [],
      choices: undoChoice({ repeated: outcomes.some(({ repeated }) => repeated) }, change.cause, { say }),
    };
  },
});

/** How to wet and blend a recipe: its doses as `/dose` tells them, in the spoons of whoever reads them. */
async function howToDose(
  args: { match: string; recipe: number },
  context: Context,
  maker = context.asker.id,
): Promise<Reply> {
  const { say, store, asker } = context;
  const { match, recipe } = await recipeOf(args, { store, member: maker });
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const jars = await Promise.all(recipe.doses.map(one => jarOfDose(one, context)));
  const answer = dosed(match, recipe, { jars, measures });
  const named = answer.doses.map((one, at) => ({
    dose: asMatched(one, recipe.doses[at]!.counts),
    name: knownAs(jars[at]!, say),
  }));
  return {
    kind: 'reply',
    headline: say.dosing.headline({
      spoons: spoonsOf(named[0]!.dose, say),
      colourant: named
        .map(({ dose: one, name }, at) => (at === 0 ? name : `${spoonsOf(one, say)} ${name}`))
        .join(' + '),
      portion: match.asked.portion,
    }),
    data: doseAnswerData({ ...answer, doses: named.map(one => one.dose) }),
    blocks: doseBlocks(
      named,
      jars.map(({ colourant }) => colourant),
      say,
    ),
    cautions: doseCautions(answer.cautions, say),
    choices: recipe.takeable ? [takeButton(args, args.recipe, say)] : [],
    most: MOST_DOSE_WORDS,
  };
}

const dose = followUp({
  seenBy: seenIn,
  args: shownRecipe,
  answer: (args, context) => howToDose(args, context),
});

/** The same of a recipe that the group sees, for whoever presses: nothing in it is of anybody's shelf. */
const doseForAll = followUp({
  for: 'group',
  seenBy: 'asker',
  args: { ...recipeId, maker: z.string() },
  answer: ({ maker, ...args }, context) => howToDose(args, context, maker),
});

/** A colour's recipes for whoever asked, with all that can be done with them. */
export const matchReply = (target: Lab, asked: MatchAsked, context: Context): Promise<Reply> =>
  makeMatch(
    target,
    asked,
    {
      to: 'its-maker',
      choices: recipes => matchChoices(context.idempotencyKey, { asked, recipes }, context),
    },
    context,
  );

/** The same for everybody, once its maker wants to show it; what only its maker could press is not under it. */
const show = followUp({
  seenBy: 'group',
  pace: 'slow',
  args: recipeId,
  async answer(args, context) {
    const { asked, target } = await recentMatchOf(context.shelf, args.match);
    if (!target) return refuse('match-forgotten', {});
    return makeMatch(target, asked, { to: 'everyone', choices: () => [] }, context);
  },
});

async function jarOfDose(
  { item, colourant: id }: RecentRecipe['doses'][number],
  context: Context,
): Promise<Jar> {
  if (item !== undefined) return jarOf(await findItem(context.shelf, item));
  const colourant = colourantById(id);
  return colourant ? { colourant } : refuse('match-forgotten', {});
}

function dosed(
  { asked }: RecentMatch,
  { doses }: RecentRecipe,
  { jars, measures }: { readonly jars: readonly Jar[]; readonly measures: Measures },
) {
  const portion = parsePortion(asked.portion, measures);
  const cups = portionMillilitres(portion, TYPICAL_BATTER) / measures.cup;
  return answerDose({
    portion,
    measures,
    colourants: doses.map(({ teaspoons }, at) => ({
      ...knownOf(jars[at]!, measures),
      strength: { by: 'cup', tspPerCup: teaspoons / cups },
    })),
  });
}

/** The spoons that were matched, where the nearest spoons to the same dose would be others. */
function asMatched(one: Dose, counts: RecentRecipe['doses'][number]['counts']): Dose {
  if (counts === undefined) return one;
  const spooned = one.premix ?? one;
  const teaspoons = teaspoonsIn(counts);
  const spoons = { spoons: counts, teaspoons, off: teaspoons / spooned.teaspoons - 1 };
  return one.premix ? { ...one, premix: { ...one.premix, spoons } } : { ...one, spoons };
}

const takeButton = ({ match }: { readonly match: string }, recipe: number, say: Words): Choice => ({
  kind: 'button',
  label: say.match.take({ number: recipe + 1 }),
  follow: take.with({ match, recipe }),
});

/** How to dose each recipe shown, and its way off the shelf where all of it is there. */
export function matchChoices(
  match: string,
  { asked, recipes }: Pick<RecentMatch, 'asked' | 'recipes'>,
  { say, asker }: Pick<Context, 'say' | 'asker'>,
): readonly Choice[] {
  const seen = seenOf(asked);
  return [
    ...recipes.map(
      (_, recipe): Choice => ({
        kind: 'button',
        label: say.match.dose({ number: recipe + 1 }),
        weight: recipe === 0 ? 'main' : 'plain',
        follow:
          seen === 'g'
            ? doseForAll.with({ match, recipe, maker: asker.id })
            : dose.with({ match, recipe, seen }),
      }),
    ),
    ...recipes.flatMap(({ takeable }, recipe) => (takeable ? [takeButton({ match }, recipe, say)] : [])),
    ...(seen === 'a' && recipes.length > 0
      ? [{ kind: 'button', label: say.plan.showAll, follow: show.with({ match, recipe: 0 }) } as const]
      : []),
  ];
}

export const matchFollowUps = { dose, 'dose-all': doseForAll, take, show };
