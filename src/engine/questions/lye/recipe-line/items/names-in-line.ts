import { knownOil, namesOf } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { unaccented } from '../../../../text/unaccented.ts';
import { oilWordsMeant } from '../../amounts/chat-words.ts';
import { knownAs } from '../../amounts/recipe-tokens.ts';
import { LYE } from '../../amounts/words.ts';
import type { Item, Name } from './item.ts';
import { nutOil } from './nut-oil.ts';

const OF = /^(?:of|de|del|d|a|al|the|el|la|los|las|to|in|for|at|is|as)$/u;
const LONGEST_NAME = 5;

/** Words that make up the name of an ingredient as one piece. */
export function withNames(tokens: readonly Item[], plain: string): readonly Item[] {
  const named: Item[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found = nameAt(tokens, at, plain);
    named.push(found?.name ?? tokens[at]!);
    at += found?.length ?? 1;
  }
  return named;
}

/** Bare milk is the drink; a courtesy is also how some write an oil. */
const OTHER = /^(?:milk|leche)$/u;
const I_AM = new RegExp(
  unbroken`
    ^(?:nuev[oa]s?|profes?|profesora?|maestr[oa]|quimic[oa]|estudiante|mama|mexican[oa]|colombian[oa]|de|
    una?|el|la|muy|yo|principiantes?|novat[oa]s?|primeriz[oa]s?|alergic[oa]|mal[oa]|[^\p{L}]*|)$
  `,
  'u',
);
const COURTESY = /^(?:po|co|oo|sb|cb)$/u;
const OF_FRUIT = /(?:^| )(?:pure|pulpa|jugo|zumo|polvo|harina|semillas?|trozos?|rodajas?|cascara) del?$/u;
/** "Aceite de oliva 500, de almendras 100". */
const FOOD = /^(?:almendras|nueces|avellanas|aguacates?|cacahuetes?|cacahuates?|mani)$/u;
const PIG = /^(?:cerdo|puerco|chancho)$/u;
const FAT_WORD = /^(?:aceite|manteca|mantequilla|grasa|cera)$/u;
const LYE_ALONE = new RegExp(`^${LYE}$`, 'u');

const KIND = /^(?:butters?|fat|wax|manteca|mantequilla|grasa|cera|sebo)$/u;
/** "Manteca coco": a word for a fat that none of the oil's own names has is a fat of its own. */
function isTwoFats(text: string): boolean {
  const words = text.split(' ');
  const kind = words.find(word => KIND.test(word));
  const oil = knownOil(text);
  if (words.length < 2 || kind === undefined || !oil) return false;
  return !namesOf(oil).some(name =>
    unaccented(name)
      .split(/[^\p{L}]+/u)
      .includes(kind),
  );
}

/** "Hola, soy Lupita": at the head of a clause, before a name that is no oil's. */
const isWhoIAm = (tokens: readonly Item[], at: number): boolean =>
  (at === 0 || tokens[at - 1]!.is === 'mark') &&
  tokens[at + 1]?.is === 'word' &&
  !/^(?:oil|wax|beans?|butter)$/u.test(tokens[at + 1]!.text);

function nameAt(
  tokens: readonly Item[],
  at: number,
  plain: string,
): { readonly name: Name; readonly length: number } | undefined {
  const isPart = (token: Item | undefined) =>
    token?.is === 'word' || (token?.is === 'link' && /^\p{L}/u.test(token.text));
  let most = 0;
  while (most < LONGEST_NAME && isPart(tokens[at + most])) most += 1;
  for (let length = most; length > 0; length -= 1) {
    const [first, last] = [tokens[at]!, tokens[at + length - 1]!];
    if (OF.test(first.text) || OF.test(last.text)) continue;
    // "Other oils coconut 250 g": the first word is of all.
    if (length > 1 && /^(?:oils|fats|aceites|grasas)$/u.test(first.text)) continue;
    // "Coco manteca de cerdo" is two fats.
    if (length > 1 && FAT_WORD.test(last.text) && /^del?$/u.test(tokens[at + length]?.text ?? '')) continue;
    const text = plain.slice(first.from, last.to);
    // "Puré de calabaza", "pulpa de palta": of a fruit, and no oil.
    if (
      OF_FRUIT.test(
        tokens
          .slice(Math.max(0, at - 2), at)
          .map(one => one.text)
          .join(' '),
      )
    )
      continue;
    const isCounted = tokens[at - 1]?.is === 'amount' || tokens[at + length]?.is === 'amount';
    // "Soy nueva": in Spanish nobody weighs it so.
    if (text === 'soy' && !isCounted && I_AM.test(tokens[at + 1]?.text ?? '')) continue;
    if (text === 'soy' && !isCounted && isWhoIAm(tokens, at)) continue;
    const known =
      COURTESY.test(text) && !isCounted
        ? undefined
        : OTHER.test(text)
          ? 'other'
          : LYE_ALONE.test(text)
            ? 'lye'
            : knownAs(text);
    if (known === 'oil' && isTwoFats(text)) continue;
    // Among weighed oils nobody means the meat.
    if (known === 'oil' && PIG.test(text))
      return {
        name: {
          is: 'name',
          known: 'oil',
          from: first.from,
          to: last.to,
          text: `manteca de ${text}`,
          typed: text,
        },
        length,
      };
    const isEllipsis = FOOD.test(text) && tokens[at - 1]?.text === 'de' && /aceite de /u.test(plain);
    const nut = nutOil(text, plain, first);
    if (nut !== undefined)
      return {
        name: { is: 'name', known: 'oil', from: first.from, to: last.to, text: nut, typed: text },
        length,
      };
    if (known === 'oil' || isEllipsis) {
      const said = isEllipsis ? `aceite de ${text}` : text;
      return { name: { is: 'name', known: 'oil', from: first.from, to: last.to, text: said }, length };
    }
    if (known) return { name: { is: 'name', known, from: first.from, to: last.to, text }, length };
    const respelt = respeltOil(text);
    if (respelt !== undefined)
      return {
        name: { is: 'name', known: 'oil', from: first.from, to: last.to, text: respelt, typed: text },
        length,
      };
  }
  return undefined;
}

/** An oil with one word of its name spelt amiss, where all that the word may have been meant for give the same oil. */
function respeltOil(text: string): string | undefined {
  const words = text.split(' ');
  const meant = words.map(word => (word.length < 4 || /\d/u.test(word) ? [] : oilWordsMeant(word)));
  const at = meant.findIndex(some => some.length > 0);
  if (at === -1 || meant.some((some, other) => other !== at && some.length > 0)) return undefined;
  const read = meant[at]!.map(word => words.with(at, word).join(' '));
  const oils = new Set(read.map(name => knownOil(name)).filter(oil => oil !== undefined));
  return oils.size === 1 && knownOil(read[0]!) !== undefined ? read[0] : undefined;
}
