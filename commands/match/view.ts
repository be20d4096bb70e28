import type { Block, Caution, Measure } from '../../src/conversation/reply.ts';
import type { MatchAnswer } from '../../src/engine/colour/matching/match.ts';
import type { WrittenBase } from '../../src/engine/colour/reading/base-text.ts';
import type { ColourWord } from '../../src/engine/colour/reading/plain-words.ts';
import type { Lab } from '../../src/engine/colour/spectra/cielab.ts';
import type { AlkaliBehaviour } from '../../src/engine/colourants/colourant.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { capital } from '../../src/engine/text/capital.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { learntNote } from '../../src/presenting/colour/learnt-strength.ts';
import { lyeChanges } from '../../src/presenting/colour/offers.ts';
import type { Recipe, RecipeDose } from '../../src/presenting/colour/recipe.ts';
import {
  baseView,
  closenessOf,
  gelView,
  looksView,
  tenth,
  whole,
  wordOf,
} from '../../src/presenting/colour/view.ts';
import { type cheapestHolding, recipeCost } from '../../src/presenting/cost.ts';
import { rough } from '../../src/presenting/dose.ts';
import type { MatchAsked } from '../../src/records/matches/index.ts';
import type { Words } from '../../src/words/index.ts';

/** Everything a match is told from. */
export type MatchView = {
  readonly target: { readonly lab: Lab; readonly hex: string; readonly word: ColourWord };
  readonly asked: MatchAsked;
  readonly from: 'shelf' | 'catalogue' | 'told';
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
  /** Whether it is said what stands on the shelf. */
  readonly tellsStock: boolean;
  readonly say: Words;
};

export const partView = ({ jar, spoons }: RecipeDose, say: Words): string =>
  say.match.part({ spoons: say.quantities.measure({ spoons }), name: knownAs(jar, say) });

const recipeView = ({ doses }: Recipe, say: Words): string =>
  doses.map(dose => partView(dose, say)).join(', ');

export function matchHeadline({ target, asked, answer, shown, say }: MatchView): string {
  const [best] = shown;
  if (!best) return say.match.nothing({ target: target.hex });
  const recipe = recipeView(best, say);
  const portion = say.quantities.said(saidAmount(asked.portion));
  const nearest = wordOf(best.predicted, say);
  if (answer.reached)
    return say.match.headline({ recipe, portion, word: nearest, nearness: closenessOf(best, say) });
  return say.match.unreached({
    recipe,
    portion,
    nearest,
    target: wordOf(target, say),
    deltaE: tenth(best.deltaE),
  });
}

/** The best recipe in full, its picture, the other ways, and what to know of the numbers. */
export function matchBlocks(
  view: MatchView,
  card: readonly Block[],
  buy: readonly Block[] = [],
): readonly Block[] {
  const { answer, shown, say } = view;
  const [best, ...others] = shown;
  const missed = answer.miss && say.colour.misses[answer.miss.why];
  // What to buy is better advice than what might help.
  const helps = answer.miss?.why === 'too-vivid' && buy.length === 0 ? [say.colour.dullIt] : [];
  const why = missed ? [{ kind: 'text' as const, text: [missed, ...helps].join(' ') }] : [];
  if (!best) return [...why, ...buy, ...notes(view)];
  return [
    ...why,
    ...buy,
    { kind: 'measures', measures: faceMeasures(best, view), fold: 'face' },
    ...learntNote(
      best.doses.map(({ jar }) => jar),
      say,
    ),
    {
      kind: 'measures',
      measures: [...best.doses.map(dose => doseMeasure(dose, view)), ...sums(best, say)],
      fold: 'numbers',
    },
    ...card,
    ...(others.length > 0
      ? [
          {
            kind: 'rows' as const,
            title: say.match.others,
            rows: others.map((recipe, at) => `${at + 2}: ${otherView(recipe, say)}`),
            fold: 'others' as const,
          },
        ]
      : []),
    ...notes(view),
  ];
}

/** What is weighed, how much of it is short, and what comes of it; the headline has the spoons. */
const faceMeasures = (best: Recipe, { say }: MatchView): readonly Measure[] => [
  ...best.doses.map(dose => {
    const left = dose.jar.item?.stock.grams;
    const note = left !== undefined && left < dose.offShelfGrams ? stockView(dose, say) : '';
    return {
      label: knownAs(dose.jar, say),
      value: say.match.gramsOf({ grams: rough(dose.offShelfGrams) }),
      ...(note && { note }),
    };
  }),
  ...sums(best, say).slice(0, 1),
];

function doseMeasure(dose: RecipeDose, { say, tellsStock }: MatchView): Measure {
  const { jar, spoons, offShelfGrams } = dose;
  const grams = say.match.gramsOf({ grams: rough(offShelfGrams) });
  const stock = tellsStock ? stockView(dose, say) : '';
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
      hex: predicted.hex,
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
    from === 'told' ? say.match.onlyOfThese : '',
    unidentified.length > 0 ? say.match.leftOut({ names: unidentified.slice(0, 5).join(', ') }) : '',
    say.match.scale,
    spared ? say.match.rounding({ unrounded: tenth(best.deltaEUnrounded) }) : '',
  ];
  const plain = [where, ...looks].filter(Boolean);
  const cheapest = cheapestView(view);
  return [
    ...(plain.length > 0 ? [{ kind: 'text' as const, text: plain.join('\n') }] : []),
    ...(cheapest === '' ? [] : [{ kind: 'text' as const, text: cheapest, fold: 'others' as const }]),
    { kind: 'text', folds: true, fold: 'why', text: small.filter(Boolean).join('\n') },
  ];
}

/** What lye may do to the colourants of the best recipe. */
export function matchCautions({ shown: [best], say }: MatchView): readonly Caution[] {
  return lyeChanges(best?.doses.map(({ jar }) => jar.colourant) ?? [], say);
}
