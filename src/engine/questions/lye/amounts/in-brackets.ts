import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { absenceIn } from '../recipe-line/doubts/beside-oils.ts';

/** What stands in brackets behind a name, or behind its weight, and counts nothing. */
const BRACKETED =
  /(?<before>(?:\p{L}+ ){0,2}\p{L}+)(?<weight>,? \d[\d.,]* ?(?:g|gr|gramos|grams?|kg|kilos?|oz|lbs?)?)? ?\((?<said>[^()\d]{2,60})\)/gu;
/** "The high oleic one", "la de": round the word that tells the kind. */
const ROUND = /^(?:the|el|la|los|las|it'?s|es|son|de|del|that'?s) | (?:one|ones|kind|type|sort)$/giu;
/** "Semilla de uva": the kind stands before the name with a word between them. */
const OF_ITS = /^(?:aceite|mante(?:ca|quilla)|semillas?|pepitas?|huesos?|carozo|grasa|sebo|cera)(?!\p{L})/iu;
/** Why an oil is not in a soap: who asks cannot have it. */
const NOT_BORNE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:can'?t|cannot|don'?t|do not|no puedo|no) (?:do|use|have|take|stand|uso|usar|con)|
    allerg\p{L}+|alerg\p{L}+|brota|itch\p{L}*|irrit\p{L}+|reseca|dries)(?!\p{L})
  `,
  'iu',
);

/** The oils that words name. */
const oilsIn = (text: string): readonly string[] =>
  text.split(/[^\p{L}]+/u).filter(word => word.length > 2 && knownOil(word) !== undefined);

/** The name with the kind that brackets tell of it, where both together are an oil's; undefined where they are none. */
function ofKind(name: string, said: string): string | undefined {
  const kind = said.trim().replace(ROUND, '').replace(ROUND, '').trim();
  const isOther = knownOil(kind) !== undefined && knownOil(kind) !== knownOil(name);
  if (isOther && !OF_ITS.test(kind)) return undefined;
  const order = OF_ITS.test(kind) ? [`${kind} de ${name}`] : [`${kind} ${name}`, `${name} ${kind}`];
  return order.find(one => knownOil(one) !== undefined);
}

/**
 * A question with the kind of an oil that stands in brackets told with its name, "mango 80 (manteca)", and without brackets that
 * only tell why another oil is not in it, "babassu 300 (can't do coconut)". What else stands in brackets stays. Pure.
 */
export const withBrackets = (question: string): string =>
  question.replace(BRACKETED, (whole, before: string, weight: string | undefined, said: string) => {
    const words = before.split(' ');
    for (let from = 0; from < words.length; from += 1) {
      const name = words.slice(from).join(' ');
      const kind = ofKind(name, said);
      if (kind !== undefined) return `${[...words.slice(0, from), kind].join(' ')}${weight ?? ''}`;
    }
    const named = oilsIn(said);
    const isElsewhere = named.some(oil => question.toLowerCase().split(oil.toLowerCase()).length > 2);
    const isReason = NOT_BORNE.test(said) && named.length > 0 && !isElsewhere;
    return isReason && absenceIn(unaccented(said)) === undefined ? `${before}${weight ?? ''}` : whole;
  });
