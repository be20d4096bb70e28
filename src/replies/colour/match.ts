import type { Context } from '../../conversation/context.ts';
import type { Reply } from '../../conversation/reply.ts';
import { hexOfLab, type Lab, labOfHex } from '../../engine/colour/appearance.ts';
import { parseBase, USUAL_BASE } from '../../engine/colour/base-text.ts';
import type { MatchAnswer } from '../../engine/colour/match.ts';
import { nearestWord } from '../../engine/colour/plain-words.ts';
import { TYPICAL_BATTER } from '../../engine/dispersion/batter.ts';
import { portionMillilitres } from '../../engine/dosing/portion.ts';
import { parsePortion } from '../../engine/quantities/amount.ts';
import { MEASURES, type Measures, US_CUP_ML } from '../../engine/quantities/units.ts';
import { keepLateMatch, type LateRecipe, type MatchAsked } from '../../records/matches/index.ts';
import { preferencesOf } from '../../records/preferences.ts';
import { type Choice, catalogueChoice, shelfChoice } from './candidates.ts';
import { matchChoices } from './match-follow.ts';
import { matchBlocks, matchCard, matchCautions, matchData, matchHeadline, type Told } from './match-say.ts';
import { type Recipe, recipesOf } from './recipe.ts';

/** Recipes that are shown and can be gone on with. */
const SHOWN = 3;
/** A recipe this much farther off than the best (CIEDE2000) is no choice but another colour. */
const MUCH_WORSE = 5;

/** The recipes for a colour, in the worker pool, with their picture and what can be done with them. */
export async function matchReply(target: Lab, asked: MatchAsked, context: Context): Promise<Reply> {
  const { store, asker, workers, say, onceId, at } = context;
  const measures = MEASURES[(await preferencesOf(store, asker.id)).spoons];
  const millilitres = portionMillilitres(parsePortion(asked.portion, measures), TYPICAL_BATTER);
  const base = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const { choice, from, shelfEmpty } = await choose(asked.from, measures, context);
  const owner = { owner: asker.id };
  const answer: MatchAnswer = await workers.run(
    'matchJars',
    {
      target,
      candidates: choice.usable.map(({ candidate }) => candidate),
      shades: base.shades,
      gelled: asked.gelled,
      portion: { cups: millilitres / US_CUP_ML, grams: millilitres * TYPICAL_BATTER.gramsPerMillilitre },
      most: asked.most,
    },
    owner,
  );
  const recipes = recipesOf(answer, choice.usable, measures);
  const best = recipes[0]?.deltaE ?? 0;
  const shown = recipes.slice(0, SHOWN).filter(({ deltaE }) => deltaE <= best + MUCH_WORSE);
  const told: Told = {
    target: { lab: target, hex: hexOfLab(target), word: nearestWord(target) },
    asked,
    from,
    shelfEmpty,
    base,
    millilitres,
    answer,
    recipes,
    shown,
    unidentified: choice.unidentified,
    say,
  };
  await keepLateMatch(
    { store, member: asker.id },
    onceId,
    { asked, colours: [], recipes: shown.map(lateOf) },
    new Date(at),
  );
  const card = shown.length > 0 ? [await picture(told, context)] : [];
  return {
    kind: 'reply',
    headline: matchHeadline(told),
    data: matchData(told),
    blocks: matchBlocks(told, card),
    cautions: matchCautions(told),
    choices: matchChoices(onceId, { asked, recipes: shown.map(lateOf) }, say),
  };
}

async function picture(told: Told, { workers, asker }: Context) {
  const { card, alt } = matchCard(told);
  const png = await workers.run('matchCard', card, { owner: asker.id });
  return { kind: 'picture', name: 'match.png', png, alt } as const;
}

/** From the shelf unless it is asked otherwise, or there is nothing on it that could be used. */
async function choose(
  from: MatchAsked['from'],
  measures: Measures,
  context: Context,
): Promise<{ choice: Choice; from: 'shelf' | 'catalogue'; shelfEmpty: boolean }> {
  if (from === 'catalogue')
    return { choice: await catalogueChoice(measures, context), from, shelfEmpty: false };
  const own = await shelfChoice(measures, context);
  if (from === 'shelf' || own.usable.length > 0) return { choice: own, from: 'shelf', shelfEmpty: false };
  return { choice: await catalogueChoice(measures, context), from: 'catalogue', shelfEmpty: true };
}

const lateOf = ({ doses, takeable }: Recipe): LateRecipe => ({
  takeable,
  doses: doses.map(({ jar, offShelfGrams, powderTeaspoons, spoonsText }) => ({
    colourant: jar.colourant.id,
    ...(jar.item && { item: jar.item.id }),
    milligrams: Math.max(1, Math.round(offShelfGrams * 1000)),
    teaspoons: powderTeaspoons,
    spoons: spoonsText,
  })),
});

/** The target of a colour that was typed. */
export const targetOf = (hex: string): Lab => labOfHex(hex);
