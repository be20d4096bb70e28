import { additiveById, knownAdditive } from '../../batch/additives/additives.ts';
import { isPotassiumNamed, type Pair, pairsIn } from './chat-pairs.ts';
import { type NameToken, tokensOfChat } from './chat-tokens.ts';
import { stands } from './chat-words.ts';

/** A recipe told in chat as one line that the strict reader takes, and the words beside it that were passed by. */
export type RecipeAmongChat = { readonly line: string; readonly left: readonly string[] };
/** Words or a figure for which nothing is answered. */
export type Stopped = { readonly stop: string };

/**
 * The recipe in a chat line, where every weight and share has its own oil, lye, liquid or the whole beside it and no other word may
 * be a fat or change an amount; otherwise the words that stop it. Takes what `plainWords` gives with its clauses. Pure.
 * @example recipeAmongChat('morning pal ; lye for a kilo of olive') // see the tests
 */
export function recipeAmongChat(plain: string): RecipeAmongChat | Stopped {
  const tokens = tokensOfChat(plain);
  const amounts = tokens.filter(({ is }) => is === 'amount');
  const names = tokens.filter((token): token is NameToken => token.is === 'name');
  if (amounts.length === 0 || !names.some(({ known }) => known === 'oil')) return { stop: '' };
  const paired = pairsIn(tokens);
  if ('stop' in paired) return paired;
  const { pairs, superfat } = paired;
  const left = stands(tokens, pairs);
  if ('stop' in left) return left;
  const written = amountsOf(pairs);
  if (written === undefined) return { stop: amounts.map(({ text }) => text).join(', ') };
  const fixed = tokens.filter(({ is }) => is === 'fixed').map(({ text }) => text);
  if (
    superfat !== undefined &&
    fixed.some(text => /superfat|discount|descuento|\bsf\b|grasa|engras/u.test(text))
  )
    return { stop: superfat.text };
  const counted = new Set(pairs.map(({ name }) => name));
  const line = [
    written.join(', '),
    // A liquid or an additive that has no amount is still in the recipe.
    ...new Set(names.filter(name => name.known === 'other' && !counted.has(name)).map(nameOf)),
    ...fixed,
    ...(superfat === undefined ? [] : [`superfat ${Number.parseFloat(superfat.text.replace(',', '.'))}%`]),
    ...(isPotassiumNamed(tokens) && !/koh|potas/u.test([...written, ...fixed].join(' ')) ? ['koh'] : []),
  ].join(' ; ');
  return { line, left: left.left };
}

const HAS_UNIT = /[a-z%]/u;
const IN_GRAMS = /\d ?(?:kg|kilos?|kilograms?|kilogramos?|g|gr|grams?|gramos?)$/u;

/** Each pair as "500 g olive"; bare figures as grams where every unit beside them is metric; undefined where that is not plain. */
function amountsOf(pairs: readonly Pair[]): readonly string[] | undefined {
  const bare = pairs.filter(({ amount }) => !HAS_UNIT.test(amount.text));
  if (bare.length === 0) return pairs.map(said);
  const told = pairs.filter(({ amount }) => HAS_UNIT.test(amount.text));
  const oils = pairs.filter(({ name }) => name.known === 'oil');
  const sum = oils.reduce((all, { amount }) => all + Number.parseFloat(amount.text.replace(',', '.')), 0);
  const isBare = told.length === 0;
  const areShares =
    bare.length === pairs.length &&
    pairs.every(({ name }) => name.known === 'oil') &&
    Math.abs(sum - 100) <= 1;
  // "70 olive 20 coconut 10 castor": shares, with or without the weight of all oils beside them.
  const whole = pairs.filter(({ name }) => name.known === 'any-oil');
  if (
    areShares ||
    (whole.length === 1 &&
      oils.every(one => bare.includes(one)) &&
      Math.abs(sum - 100) <= 1 &&
      bare.length === oils.length)
  )
    return pairs.map(pair =>
      pair.name.known === 'oil' ? `${pair.amount.text}% ${pair.name.text}` : said(pair),
    );
  if (bare.some(({ amount }) => Number.parseFloat(amount.text) < 10 || /\//u.test(amount.text)))
    return undefined;
  if (isBare ? sum <= 110 : !told.every(({ amount }) => IN_GRAMS.test(amount.text))) return undefined;
  return pairs.map(pair =>
    HAS_UNIT.test(pair.amount.text) ? said(pair) : `${pair.amount.text} g ${nameOf(pair.name)}`,
  );
}

const said = ({ amount, name }: Pair): string => `${amount.text} ${nameOf(name)}`;

/** What all oils are is told in one word, a liquid by its plainest name: "vino tinto" is wine. */
function nameOf({ known, text }: NameToken): string {
  if (known === 'any-oil') return 'oils';
  const id = known === 'other' ? knownAdditive(text) : undefined;
  return id === undefined ? text : additiveById(id).synonyms[0]!;
}
