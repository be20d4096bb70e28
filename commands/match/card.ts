import type { ColourWord } from '../../src/engine/colour/reading/plain-words.ts';
import { saidAmount } from '../../src/engine/quantities/told/said-amount.ts';
import { baseView, closenessOf, gelView } from '../../src/presenting/colour/view.ts';
import { type MatchView, partView } from './view.ts';

/** The picture: the wanted colour beside each recipe's. */
export function matchCard({ target, asked, shown, base, say }: MatchView) {
  const { card, alt } = say.match;
  const field = (word: ColourWord, hex: string) =>
    say.match.targetValue({ word: say.colour.names[word], hex });
  const wanted = field(target.word, target.hex);
  const recipes = shown.map((recipe, at) => ({
    hex: recipe.predicted.hex,
    title: card.recipe({ number: at + 1, nearness: closenessOf(recipe, say) }),
    label: field(recipe.predicted.word, recipe.predicted.hex),
    doses: recipe.doses.map(dose => partView(dose, say)),
  }));
  return {
    card: {
      title: `${card.target}: ${wanted}`,
      subtitle: [
        say.quantities.said(saidAmount(asked.portion)),
        baseView(base, say),
        gelView(asked.gelled, say),
      ].join(', '),
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
