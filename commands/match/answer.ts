import type { Context } from '../../src/conversation/context.ts';
import type { Choice as Button, Next, Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import type { MatchAnswer } from '../../src/engine/colour/matching/match.ts';
import { parseBase, USUAL_BASE } from '../../src/engine/colour/reading/base-text.ts';
import { nearestWord } from '../../src/engine/colour/reading/plain-words.ts';
import { hexOfLab, type Lab, labOfHex } from '../../src/engine/colour/spectra/cielab.ts';
import { TYPICAL_BATTER } from '../../src/engine/dispersion/batter.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import { parsePortion } from '../../src/engine/quantities/told/portion.ts';
import { type Measures, US_CUP_ML } from '../../src/engine/quantities/units.ts';
import {
  type Choice,
  catalogueChoice,
  refuseTooLarge,
  shelfChoice,
  toldChoice,
} from '../../src/presenting/colour/candidates.ts';
import { lyeChanges } from '../../src/presenting/colour/offers.ts';
import { type Recipe, recipesOf } from '../../src/presenting/colour/recipe.ts';
import { cheapestHolding } from '../../src/presenting/cost.ts';
import { spoonsData } from '../../src/presenting/dose-data.ts';
import {
  keepRecentMatch,
  type MatchAsked,
  type RecentMatch,
  type RecentRecipe,
} from '../../src/records/matches/index.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { buyBlocks, toBuy, toldBuy } from './buy.ts';
import { matchCard } from './card.ts';
import { matchData } from './data.ts';
import { type MatchView, matchBlocks, matchCautions, matchHeadline } from './view.ts';

/** Recipes that are looked through for the cheapest, and told to programs. */
const LOOKED_AT = 12;
const TOLD = 5;
/** Recipes that are shown and can be gone on with. */
const SHOWN = 3;
/** A recipe this much farther off than the best (CIEDE2000) is no choice but another colour. */
const MUCH_WORSE = 5;

/** Who a match is told to, and what they can do with its recipes. */
export type MatchTold = {
  /** What the shelf holds and what jars cost is told to nobody but their owner. */
  readonly to: 'its-maker' | 'everyone';
  readonly choices: (recipes: RecentMatch['recipes']) => readonly Button[];
};

/** The recipes for a colour, in the worker pool, with their picture and what can be done with them. */
export async function makeMatch(
  target: Lab,
  asked: MatchAsked,
  { to, choices }: MatchTold,
  context: Context,
): Promise<Reply> {
  const { store, asker, shelf, workers, say, idempotencyKey, change } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const millilitres = portionMillilitres(parsePortion(asked.portion, measures), TYPICAL_BATTER);
  const base = asked.base === undefined ? USUAL_BASE : parseBase(asked.base);
  const { choice, from, shelfEmpty } = await choose(target, asked, measures, context);
  const owner = { owner: asker.id };
  const soap = {
    shades: base.shades,
    gelled: asked.gelled,
    owned: measures.owned,
    portion: { cups: millilitres / US_CUP_ML, grams: millilitres * TYPICAL_BATTER.gramsPerMillilitre },
  };
  refuseTooLarge(choice, soap.portion, measures);
  const answer: MatchAnswer = await workers.run(
    'matchJars',
    {
      target,
      candidates: choice.usable.map(({ candidate }) => candidate),
      ...soap,
      most: asked.most,
      recipes: LOOKED_AT,
    },
    owner,
  );
  const own = to === 'its-maker';
  const found = recipesOf(answer, choice.usable, measures);
  const all = own ? found : found.map(withoutStock);
  const recipes = all.slice(0, TOLD);
  const best = recipes[0]?.deltaE ?? 0;
  const shown = recipes.slice(0, SHOWN).filter(({ deltaE }) => deltaE <= best + MUCH_WORSE);
  const view: MatchView = {
    target: { lab: target, hex: hexOfLab(target), word: nearestWord(target) },
    asked,
    from,
    shelfEmpty,
    base,
    millilitres,
    answer,
    recipes,
    shown,
    cheapest: cheapestHolding(all),
    unidentified: own ? choice.unidentified : [],
    tellsStock: own,
    say,
  };
  if (own)
    await keepRecentMatch(
      shelf,
      idempotencyKey,
      { asked, target, colours: [], recipes: shown.map(recentOf) },
      change.at,
    );
  const buying =
    own && from === 'shelf'
      ? await toBuy(target, { own: choice.usable, soap, answer, measures }, context)
      : undefined;
  const card = shown.length > 0 ? [await picture(view, context)] : [];
  const buy = buying ? await buyBlocks(buying, target, answer, context) : [];
  return {
    kind: 'reply',
    headline: matchHeadline(view),
    data: { ...matchData(view), ...(buying && { buy: toldBuy(buying) }) },
    blocks: matchBlocks(view, card, buy),
    // Its maker reads how to handle it with the dose; others have no button that leads there.
    cautions: [
      ...matchCautions(view),
      ...lyeChanges(buying?.colourants ?? [], say),
      ...(own ? [] : [{ id: 'gloves' as const, text: say.challengeSteps.gloves }]),
    ],
    choices: choices(shown.map(recentOf)),
    // What to buy is told already where the shelf does not get there.
    ...(own && !buying && { next: buyNext(view) }),
    most: MOST_WORDS,
  };
}

/** Words on the face of a match. */
const MOST_WORDS = 90;

/** What the same colour could be made of, were it bought. */
const buyNext = ({ from, target, asked, say }: MatchView): readonly Next[] =>
  from === 'catalogue'
    ? []
    : [
        {
          label: say.folds.next.buy,
          line: lineOf('match', { target: target.hex, portion: asked.portion, from: 'catalogue' }),
        },
      ];

/** A recipe as others may know it: by the names of its jars, not by what is in them or what they cost. */
const withoutStock = (recipe: Recipe): Recipe => ({
  ...recipe,
  takeable: false,
  doses: recipe.doses.map(dose => {
    const { item, ...jar } = dose.jar;
    if (!item) return dose;
    const { price: _price, ...known } = item;
    const stock = { ...item.stock, grams: undefined };
    return { ...dose, short: 0, jar: { ...jar, item: { ...known, stock } } };
  }),
});

async function picture(view: MatchView, { workers, asker }: Context) {
  const { card, alt } = matchCard(view);
  const png = await workers.run('matchCard', card, { owner: asker.id });
  return { kind: 'picture', name: 'match.png', png, alt } as const;
}

/** Of what is named alone, else from the shelf unless it is asked otherwise, or there is nothing on it that could be used. */
async function choose(
  target: Lab,
  { from, with: told }: MatchAsked,
  measures: Measures,
  context: Context,
): Promise<{ choice: Choice; from: MatchView['from']; shelfEmpty: boolean }> {
  if (told !== undefined)
    return { choice: await toldChoice(told, measures, context), from: 'told', shelfEmpty: false };
  const catalogue = () => catalogueFor(target, measures, context);
  if (from === 'catalogue') return { choice: await catalogue(), from, shelfEmpty: false };
  const own = await shelfChoice(measures, context);
  if (from === 'shelf' || own.usable.length > 0) return { choice: own, from: 'shelf', shelfEmpty: false };
  return { choice: await catalogue(), from: 'catalogue', shelfEmpty: true };
}

/** Below this chroma (CIELAB) a colour is a grey to the eye (from memory; our own choice of figure). */
const GREY = 4;

/** A grey is black and white: hues that cancel one another get there on paper, and drift in a bar. */
const catalogueFor = ({ a, b }: Lab, measures: Measures, context: Context): Promise<Choice> =>
  Math.hypot(a, b) < GREY
    ? toldChoice('activated charcoal, black iron oxide, titanium dioxide', measures, context)
    : catalogueChoice(measures, context);

const recentOf = ({ doses, takeable }: Recipe): RecentRecipe => ({
  takeable,
  doses: doses.map(({ jar, offShelfGrams, powderTeaspoons, spoons }) => ({
    colourant: jar.colourant.id,
    ...(jar.item && { item: jar.item.id }),
    milligrams: Math.max(1, Math.round(offShelfGrams * 1000)),
    teaspoons: powderTeaspoons,
    spoons: spoonsData({ spoons }),
    counts: spoons.map(one => ({ ...one })),
  })),
});

/** The target of a colour that was typed. */
export const targetOf = (hex: string): Lab => labOfHex(hex);
