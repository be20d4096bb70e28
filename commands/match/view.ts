import type { Block, Caution, Measure } from '../../src/conversation/reply.ts';
import type { MatchAnswer } from '../../src/engine/colour/matching/match.ts';
import type { WrittenBase } from '../../src/engine/colour/reading/base-text.ts';
import type { ColourWord } from '../../src/engine/colour/reading/plain-words.ts';
import type { Lab } from '../../src/engine/colour/spectra/cielab.ts';
import type { AlkaliBehaviour } from '../../src/engine/colourants/colourant.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import type { Recipe, RecipeDose } from '../../src/presenting/colour/recipe.ts';
import {
  baseView,
  capital,
  gelView,
  looksView,
  predictedData,
  rounded,
  tenth,
  whole,
  wordOf,
} from '../../src/presenting/colour/view.ts';
import { type cheapestHolding, recipeCost } from '../../src/presenting/cost.ts';
import { rough } from '../../src/presenting/dose.ts';
import { spoonsData } from '../../src/presenting/dose-data.ts';
import type { MatchAsked } from '../../src/records/matches/index.ts';
import type { Words } from '../../src/words/index.ts';

/** Everything a match is told from. */
export type MatchView = {
  readonly target: { readonly lab: Lab; readonly hex: string; readonly word: ColourWord };
  readonly asked: MatchAsked;
  readonly from: 'shelf' | 'catalogue';
  /** The catalogue stood in for a shelf with nothing usable on it. */
  readonly shelfEmpty: boolean;
  readonly base: WrittenBase;
  readonly millilitres: number;
  readonly answer: MatchAnswer;
  readonly recipes: readonly Recipe[];
  /** The first few of them, which can be gone on with. */
  readonly shown: readonly Recipe[];
  /** The cheapest recipe that holds, where prices are known. */
  readonly cheapest: ReturnType<typeof cheapestHolding>;
  readonly unidentified: readonly string[];
  readonly say: Words;
};

const partView = ({ jar, spoons }: RecipeDose, say: Words): string =>
  say.match.part({ spoons: say.quantities.measure({ spoons }), name: knownAs(jar, say) });

const recipeView = ({ doses }: Recipe, say: Words): string =>
  doses.map(dose => partView(dose, say)).join(', ');

export function matchHeadline({ target, asked, answer, shown, say }: MatchView): string {
  const [best] = shown;
  if (!best) return say.match.nothing({ target: target.hex });
  const deltaE = tenth(best.deltaE);
  if (!answer.reached) {
    const { predicted } = best;
    return say.match.unreached({
      target: target.hex,
      word: wordOf(predicted, say),
      hex: predicted.hex,
      deltaE,
    });
  }
  return say.match.headline({
    recipe: recipeView(best, say),
    portion: asked.portion,
    deltaE,
    nearness: say.match.nearness(best.deltaE),
  });
}

/** The best recipe in full, its picture, the other ways, and what to know of the numbers. */
export function matchBlocks(view: MatchView, card: readonly Block[]): readonly Block[] {
  const { answer, shown, say } = view;
  const [best, ...others] = shown;
  const why = answer.miss ? [{ kind: 'text' as const, text: say.colour.misses[answer.miss.why] }] : [];
  if (!best) return [...why, ...notes(view)];
  return [
    ...why,
    { kind: 'measures', measures: [...best.doses.map(dose => doseMeasure(dose, say)), ...sums(best, say)] },
    ...card,
    ...(others.length > 0
      ? [
          {
            kind: 'rows' as const,
            title: say.match.others,
            rows: others.map((recipe, at) => `${at + 2}: ${otherView(recipe, say)}`),
          },
        ]
      : []),
    ...notes(view),
  ];
}

function doseMeasure(dose: RecipeDose, say: Words): Measure {
  const { jar, spoons, offShelfGrams } = dose;
  const grams = say.match.gramsOf({ grams: rough(offShelfGrams) });
  const stock = stockView(dose, say);
  return {
    label: knownAs(jar, say),
    value: `${say.quantities.measure({ spoons })}, ${grams}`,
    note: [say.match.share({ percent: Math.round(dose.ofCeiling * 100) }), stock].filter(Boolean).join(' '),
  };
}

/** What stands on the shelf for a dose; nothing of the catalogue. */
function stockView({ jar, offShelfGrams }: RecipeDose, say: Words): string {
  if (!jar.item) return '';
  const { grams } = jar.item.stock;
  if (grams === undefined) return say.match.uncounted;
  const left = say.shelf.grams(grams);
  return grams < offShelfGrams ? say.match.short({ left }) : say.match.enough({ left });
}

const costView = (recipe: Recipe, say: Words): string | undefined => {
  const cost = recipeCost(recipe);
  return cost && say.costs.recipe({ money: say.costs.money(cost) });
};

const sums = (recipe: Recipe, say: Words): readonly Measure[] => {
  const { predicted, pigmentGrams, fullness } = recipe;
  const cost = costView(recipe, say);
  return [
    {
      label: say.match.predicted,
      value: say.match.predictedValue({
        word: wordOf(predicted, say),
        hex: predicted.hex,
        plusMinus: whole(predicted.plusMinus),
      }),
    },
    {
      label: say.match.pigment,
      value: say.match.pigmentValue({ grams: rough(pigmentGrams), percent: Math.round(fullness * 100) }),
      ...(cost && { note: cost }),
    },
  ];
};

const otherView = (recipe: Recipe, say: Words): string =>
  say.match.other({
    recipe: recipeView(recipe, say),
    word: wordOf(recipe.predicted, say),
    hex: recipe.predicted.hex,
    deltaE: tenth(recipe.deltaE),
    risk: say.match.lye[riskiest(recipe)],
  });

/** From safe to lost. */
const ORDER: readonly AlkaliBehaviour[] = ['stable', 'conditional', 'unknown', 'shifts', 'bleeds'];

/** What lye does to the least certain of its colourants. */
const riskiest = ({ doses }: Recipe): AlkaliBehaviour =>
  doses
    .map(({ jar }) => jar.colourant.alkali.behaviour)
    .reduce((worst, one) => (ORDER.indexOf(one) > ORDER.indexOf(worst) ? one : worst), 'stable');

function cheapestView({ cheapest, say }: MatchView): string {
  if (!cheapest) return '';
  const { recipe, cost } = cheapest;
  return say.costs.cheapest({
    recipe: recipeView(recipe, say),
    money: say.costs.money(cost),
    deltaE: tenth(recipe.deltaE),
  });
}

function notes(view: MatchView): readonly Block[] {
  const { shown, from, shelfEmpty, unidentified, base, asked, say } = view;
  const [best] = shown;
  const looks = best ? looksView(best.predicted, say) : [];
  const where = shelfEmpty ? say.match.shelfEmpty : '';
  const spared = best && best.deltaE - best.deltaEUnrounded >= 0.5;
  const small = [
    `${capital(say.preview.inBase({ base: baseView(base, say), gel: gelView(asked.gelled, say) }))}.`,
    from === 'catalogue' ? say.match.fromCatalogue : '',
    unidentified.length > 0 ? say.match.leftOut({ names: unidentified.slice(0, 5).join(', ') }) : '',
    say.match.scale,
    spared ? say.match.rounding({ unrounded: tenth(best.deltaEUnrounded) }) : '',
  ];
  const plain = [where, cheapestView(view), ...looks].filter(Boolean);
  return [
    ...(plain.length > 0 ? [{ kind: 'text' as const, text: plain.join('\n') }] : []),
    { kind: 'text', folds: true, text: small.filter(Boolean).join('\n') },
  ];
}

/** What lye may do to the colourants of the best recipe. */
export function matchCautions({ shown: [best], say }: MatchView): readonly Caution[] {
  if (!best) return [];
  return best.doses.flatMap(({ jar: { colourant } }) => {
    const { behaviour } = colourant.alkali;
    if (behaviour === 'stable' || behaviour === 'never') return [];
    const text = say.dosing.cautions['lye-changes']({ colourant: colourant.names, behaviour });
    return [{ id: 'lye-changes', text }];
  });
}

/** The picture: the wanted colour beside each recipe's. */
export function matchCard({ target, asked, shown, base, say }: MatchView) {
  const { card, alt } = say.match;
  const field = (word: ColourWord, hex: string) =>
    say.match.targetValue({ word: say.colour.names[word], hex });
  const wanted = field(target.word, target.hex);
  const recipes = shown.map((recipe, at) => ({
    hex: recipe.predicted.hex,
    title: card.recipe({
      number: at + 1,
      deltaE: tenth(recipe.deltaE),
      nearness: say.match.nearness(recipe.deltaE),
    }),
    label: field(recipe.predicted.word, recipe.predicted.hex),
    doses: recipe.doses.map(dose => partView(dose, say)),
  }));
  return {
    card: {
      title: `${card.target}: ${wanted}`,
      subtitle: [asked.portion, baseView(base, say), gelView(asked.gelled, say)].join(', '),
      target: { hex: target.hex, label: wanted },
      recipes,
      note: card.note,
    },
    alt: alt({
      target: wanted,
      list: recipes.map(({ title, label }) => `${title}, ${label}`).join('; '),
    }),
  };
}

/** The same for programs: ids, numbers, no prose. */
export function matchData(view: MatchView): object {
  const { target, asked, from, base, millilitres, answer, recipes } = view;
  return {
    target: target.hex,
    targetLab: rounded(target.lab),
    targetWord: target.word,
    from,
    base: { ...base, gelled: asked.gelled },
    portion: { written: asked.portion, millilitres },
    most: asked.most,
    reached: answer.reached,
    miss: answer.miss,
    recipes: recipes.map(recipe => ({
      deltaE: recipe.deltaE,
      deltaEUnrounded: recipe.deltaEUnrounded,
      doses: recipe.doses.map(dose => ({
        colourant: dose.jar.colourant.id,
        item: dose.jar.item?.id,
        name: dose.jar.item?.name ?? dose.jar.colourant.names.en,
        teaspoons: dose.teaspoons,
        spoons: spoonsData(dose),
        grams: dose.offShelfGrams,
        pigmentGrams: dose.grams,
        ofCeiling: dose.ofCeiling,
        short: dose.short,
        left: dose.jar.item?.stock.grams,
      })),
      predicted: predictedData(recipe.predicted),
      warnings: warningsOf(recipe),
      fullness: recipe.fullness,
      pigmentGrams: recipe.pigmentGrams,
      risk: recipe.risk,
      takeable: recipe.takeable,
      ...(recipeCost(recipe) && { cost: recipeCost(recipe) }),
    })),
  };
}

function warningsOf({ doses, predicted }: Recipe): readonly object[] {
  const { pearl, fluorescent, onScreen } = predicted;
  return [
    ...doses.flatMap(({ jar: { colourant } }) =>
      colourant.alkali.behaviour === 'stable'
        ? []
        : [{ id: 'lye-changes', colourant: colourant.id, behaviour: colourant.alkali.behaviour }],
    ),
    ...doses.flatMap(({ jar, short }) =>
      short > 0 ? [{ id: 'short', item: jar.item?.id, teaspoons: short }] : [],
    ),
    ...doses.flatMap(({ jar: { colourant } }) =>
      colourant.light === 'holds' ? [] : [{ id: 'fades-in-light', colourant: colourant.id }],
    ),
    ...(pearl ? [{ id: 'pearl' }] : []),
    ...(fluorescent ? [{ id: 'fluorescent' }] : []),
    ...(onScreen ? [] : [{ id: 'off-screen' }]),
  ];
}
