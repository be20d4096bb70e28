import type { BarPrediction } from '../../src/engine/colour/mixing/bar.ts';
import { CARD_STRENGTHS } from '../../src/engine/colour/mixing/preview.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import { STRENGTH_SHARES, type StrengthName } from '../../src/engine/quantities/strength.ts';
import { capital } from '../../src/engine/text/capital.ts';
import { fullOf, knownAs } from '../../src/presenting/colour/jars.ts';
import { baseView, gelView, whole, wordOf } from '../../src/presenting/colour/view.ts';
import { namesOf, type PreviewView } from './view.ts';

/** The smallest spoon, in neutral writing. */
const SMALLEST = '1/32 tsp';

/** What to spoon of each colourant for one row of the card. */
function rowMeasures(
  { answer, jars, preview, measures, say }: PreviewView,
  strength: StrengthName,
): readonly string[] {
  const colours = answer.doses.some(({ colourant }) => colourant.kind !== 'white');
  return answer.doses.map((dose, at) => {
    const steady = colours && dose.colourant.kind === 'white';
    const share = preview.fullShares[at]! * (steady ? 1 : STRENGTH_SHARES[strength]);
    const grams = (share * fullOf(jars[at]!, measures) * answer.portion.grams) / 100;
    const { typical } = dose.grams;
    const teaspoons = ((dose.premix?.teaspoons ?? dose.teaspoons) * grams) / typical;
    const { spoons } = practicalSpoons(teaspoons, undefined, measures.owned);
    const smallest = measures.owned?.at(-1) ?? SMALLEST;
    const measure =
      spoons.length === 0
        ? say.preview.under({ spoon: say.quantities.spoon(smallest) })
        : say.quantities.measure({ spoons });
    return say.match.part({ spoons: measure, name: knownAs(jars[at]!, say) });
  });
}

/** The swatch card: the mix, the bare base, and each strength of it gelled and not. */
export function cardOf(view: PreviewView) {
  const { preview, portion, base, say } = view;
  const { card, columns, colour } = say.preview;
  const { predicted, plain } = preview;
  const field = ({ word, hex }: BarPrediction) => ({ hex, label: say.colour.names[word] });
  return {
    title: capital(namesOf(view).join(' + ')),
    subtitle: [capital(baseView(base, say)), card.inPortion({ portion })].join(', '),
    mix: {
      hex: predicted.hex,
      title: card.mix,
      label: `${colour({ word: capital(wordOf(predicted, say)), hex: predicted.hex })}, ${gelView(view.gelled, say)}`,
      note: card.expected({ plusMinus: whole(predicted.plusMinus) }),
    },
    plain: { hex: plain.hex, title: card.plain, label: `${wordOf(plain, say)}, ${plain.hex}` },
    columns: [capital(say.colour.notGelled), capital(say.colour.gelled)] as const,
    rows: CARD_STRENGTHS.map((strength, at) => ({
      title: columns[strength],
      measures: rowMeasures(view, strength),
      fields: [
        field(preview.swatches[at]!.predicted),
        field(preview.swatches[at + CARD_STRENGTHS.length]!.predicted),
      ] as const,
    })),
    note: card.note,
  };
}

/** The card in words, for who cannot see it. */
export function altOf({ preview, say }: PreviewView): string {
  const { alt, altField, columns } = say.preview;
  const list = preview.swatches
    .filter(({ gelled }) => !gelled)
    .map(({ strength, predicted: { word, hex } }) =>
      altField({ strength: columns[strength], word: say.colour.names[word], hex }),
    );
  const { word, hex } = preview.predicted;
  return alt({ word: say.colour.names[word], hex, list: list.join('; ') });
}
