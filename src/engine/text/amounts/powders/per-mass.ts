import { unbroken } from '../../../over-lines.ts';
import { type Amount, parseAmount } from '../../../quantities/amount.ts';
import { refuse, unlessRefused } from '../../../refusal.ts';
import { cut } from '../../excerpt.ts';

const MASS = unbroken`
  (?:each |every |cada |a |an |one |un |una |the )*((?:\d[\d.,/ ]*)?\s*(?:kgs?|kilos?|kilogram(?:me|o)?s?|
  lbs?|pounds?|libras?|g|grs?|grams?|gramos?|oz|ounces?|onzas?))\b
`;
const OF_OILS = String.raw`(?:of|de)?\s*(?:the |los |tus |my |mis |total )?(?:oils?|fats?|aceites?|grasas?)\b(?: weight)?`;
/** To so much of the oils: "per pound of oils", "por cada medio kilo de aceite", "to 500 g oils", "x libra". */
const PER_MASS = new RegExp(
  unbroken`
    (?:(?:\b(?:per|por|(?<!\d\s?)x|each|cada|for (?:each|every)|(?:to|a) (?:each|every|cada|an?|la|un|una))|
    (?<!\d\s?)\/)\s*${MASS}(?:\s+${OF_OILS})?|\b(?:to|a|for|para|in|en)\s*${MASS}\s+${OF_OILS})
  `,
  'iu',
);

/** Batter is oils with lye and water, how much of them hangs on the recipe. */
const OF_BATTER =
  /^\s*(?:(?:of|de)\s+)?(?:(?:the|my|raw|soap|la|el|mi)\s+)*(?:batter|soap|masa|mezcla|jab[oó]n|batch|lote|pasta)\b/iu;

/** What stands for "to so much oil", and the text without it; undefined where the mass is what is dosed ("2 oz in all"). */
export function perMassIn(text: string): { readonly grams: number; readonly rest: string } | undefined {
  const match = PER_MASS.exec(text);
  if (!match || !/\d|\p{L}/u.test(text.slice(0, match.index))) return undefined;
  // "half a pound" was made a figure, and "1 " may be left out.
  const written = (match[1] ?? match[2]!).trim();
  const amount = amountOf(/^\d/u.test(written) ? written : `1 ${written}`);
  if (
    amount?.measure !== 'mass' ||
    (amountOf(text.slice(0, match.index).trim()) === undefined && !/\d/u.test(text.slice(0, match.index)))
  )
    return undefined;
  if (OF_BATTER.test(text.slice(match.index + match[0].length)))
    refuse('strength-unreadable', { text: cut(text.trim(), 60) });
  return {
    grams: amount.grams,
    rest: `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`,
  };
}

/** An amount as it is read; undefined where it is refused. Pure. */
export const amountOf = (text: string): Amount | undefined => unlessRefused(() => parseAmount(text));
