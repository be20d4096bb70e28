import { unbroken } from '../over-lines.ts';
import { spokenAmounts } from '../quantities/spoken/spoken-amounts.ts';
import { amountAmongWords } from '../text/amounts/amount-among-words.ts';
import { toldAmount } from '../text/amounts/told-amount.ts';
import { sizeBeside } from '../text/amounts/told-beside.ts';

/** "A mould of 800 g and one of 400": both are poured. */
const TWO_MOULDS = new RegExp(
  unbroken`
    ^(?:tengo |i have |i've got )?(?:an?|one|un|una) (?:mou?ld|molde|loaf|barra|box|caja)s? (?:of|de|holds|
    for|para) (\d[\d.,]*) ?(\p{L}+),? (?:and|y|plus|m[aá]s) (?:an?|one|another|un[oa]?|
    otr[oa])(?: (?:mou?ld|molde|loaf|barra|box|caja))? (?:of|de|for|para) (\d[\d.,]*)(?: ?(g|gr|grams?|
    gramos?|ml|kg|kilos?|oz|l|lit(?:er|re)s?|litros?))?(?![\p{L}\d])
  `,
  'iu',
);
/** Two moulds that are both poured, as one size: "un molde de 800 g y uno de 400". Undefined where none are told. Pure. */
export function twoMoulds(text: string): string | undefined {
  const [, one, unit, other, otherUnit = unit] = TWO_MOULDS.exec(text) ?? [];
  if (one === undefined || other === undefined || unit !== otherUnit) return undefined;
  const sum = [one, other].reduce((all, figure) => all + Number(figure.replace(',', '.')), 0);
  return sum > 0 ? `${sum} ${unit} batter` : undefined;
}

/** A size among words that change nothing of it, in the sizes' own grammar. Undefined where none is told. Pure. */
export function sizeAmongWords(text: string): string | undefined {
  const beside = sizeBeside(spokenAmounts(text));
  if (beside !== undefined) return beside;
  const { amount, measure, count, ofOils, ofBatter } = amountAmongWords(text) ?? {};
  if (amount === undefined) return toldAmount(text);
  if (count !== undefined && ofOils) return undefined;
  if (count !== undefined) return `${count} ${measure === 'mass' ? 'bars of' : 'cavities x'} ${amount}`;
  return ofOils ? `${amount} oils` : ofBatter ? `${amount} batter` : amount;
}
