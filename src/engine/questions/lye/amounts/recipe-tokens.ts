import { knownAdditive } from '../../../batch/additives/additives.ts';
import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { isAnyOil } from '../../../text/amounts/stop-words.ts';
import { isIdleWord } from './oils.ts';
import { COUNT, DRY_PURITY, FAT, LYE, PERCENT, UNIT } from './words.ts';

const MEASURE = unbroken`
  (?:${UNIT}|(?:%|percent|por ciento)|(?:ml|cl|l|lit(?:er|re)s?|litros?|cups?|tazas?|tbsps?|tsps?|
  tablespoons?|teaspoons?|cdt?as?|cucharad(?:it)?as?|fl oz)\b)
`;
/** What holds a figure that is no ingredient's amount, and the words that ask. */
export const OPAQUE = [
  String.raw`(?:at |with |con |al |a )*-? ?\d+(?:[.,]\d+)? ?(?:%|percent|por ciento)? ?(?:de |of )?${FAT}`,
  String.raw`${FAT} ?(?:of |at |de |del |al |is |=|: ?)*-? ?\d+(?:[.,]\d+)? ?(?:%|percent|por ciento)?`,
  String.raw`\d+(?:[.,]\d+)? ?: ?\d+(?:[.,]\d+)?`,
  // What all oils weigh together.
  String.raw`${COUNT} ?${UNIT}(?: total| of| de| in)* (?:total )?(?:oils|fats|aceites|grasas)(?![ :]+\d)`,
  `${LYE} ${DRY_PURITY}`,
  `${PERCENT} ?(?:de |of )?(?:${LYE}|concentration|concentracion|conc|strength|solution|solucion|purity|pureza|pure)`,
  `(?:${LYE}|concentration|concentracion|conc|strength|solution|solucion|purity|pureza) ?(?:of |at |de |del |al |is |: ?)*${PERCENT}`,
  unbroken`
    (?:how (?:much|many)|cuant[oa]s?|calcul\w*|que cantidad(?: de)?|
    amount of)(?: \p{L}+){0,3}? ${LYE}(?: (?:and|n|y|e|or|&) (?:how much |cuanta )?(?:the |el )?(?:water|
    agua))?
  `,
  String.raw`${LYE}(?: (?:and|y|&) (?:water|agua))? (?:for|para|pa|needed for)\b`,
];
const TOKENS = new RegExp(
  unbroken`
    (?<opaque>(?<![\p{L}\d])(?:${OPAQUE.join('|')})(?![\p{L}\d]))|
    (?<amount>(?<![\p{L}\d.,])${COUNT} ?(?:${MEASURE})?(?![\p{L}\d]))|(?<word>(?:coconut|
    coco)(?: oil)? (?:76|92)(?:f|°f| deg(?:rees)?)?(?=[\s:=-]+\d)|[\p{L}][\p{L}\p{M}'’-]*)|(?<mark>[;,+/]|
    [^\s])
  `,
  'gu',
);
const JOINT = /^(?:w|and|y|e|n|plus|mas|con|with|in|en|into|then|luego|for|para|[;,+/&])$/u;
/** Inside a name these join its words: "aceite de oliva". */
const OF = /^(?:of|de|del|the|el|la)$/u;
const LONGEST_NAME = 4;
/** A name nobody here knows has no more words. */
const LONGEST_STRANGE = 3;
const IS_LYE = new RegExp(`^${LYE}$`, 'u');
const isWater = (name: string): boolean =>
  /^(?:(?:distilled|cold) )?(?:water|agua)(?: destilada| fria)?$/u.test(name);

export type Token = { readonly from: number; readonly to: number; readonly text: string } & (
  | { readonly is: 'amount' | 'joint' | 'opaque' }
  | { readonly is: 'name'; readonly known: 'oil' | 'any-oil' | 'lye' | 'water' | 'other' | undefined }
);

/** What an ingredient of these words is known as. */
export function knownAs(name: string): 'oil' | 'any-oil' | 'lye' | 'water' | 'other' | undefined {
  if (IS_LYE.test(name)) return 'lye';
  if (isWater(name)) return 'water';
  if (knownOil(name) !== undefined) return 'oil';
  if (isAnyOil(name)) return 'any-oil';
  return knownAdditive(name) === undefined ? undefined : 'other';
}

/** The names, amounts and joints of a line in their order; words that change nothing are left out. Takes what `plainWords` gives. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  const words: { text: string; from: number; to: number }[] = [];
  const flush = () => {
    tokens.push(...namesAmong(words));
    words.length = 0;
  };
  for (const match of text.matchAll(TOKENS)) {
    const { opaque, amount, word, mark } = match.groups!;
    const span = { from: match.index, to: match.index + match[0].length, text: match[0].trim() };
    const isJoint = JOINT.test(word ?? mark ?? '');
    if (word !== undefined && !isJoint) words.push(span);
    else if (mark === undefined || isJoint) {
      flush();
      tokens.push({
        ...span,
        is: opaque !== undefined ? 'opaque' : amount !== undefined ? 'amount' : 'joint',
      });
    }
  }
  flush();
  return tokens;
}

type Word = { readonly text: string; readonly from: number; readonly to: number };

/** The known ingredients in a run of words, and the runs of strange ones between them. */
function namesAmong(words: readonly Word[]): readonly Token[] {
  const names: Token[] = [];
  let strange: Word[] = [];
  const flush = () => {
    const [first, last] = [strange[0], strange.at(-1)];
    if (first && last && strange.length <= LONGEST_STRANGE)
      names.push({
        is: 'name',
        known: undefined,
        from: first.from,
        to: last.to,
        text: strange.map(({ text }) => text).join(' '),
      });
    strange = [];
  };
  for (let at = 0; at < words.length; ) {
    const found = longestKnown(words.slice(at, at + LONGEST_NAME));
    if (found) {
      flush();
      names.push(found.token);
      at += found.length;
      continue;
    }
    const word = words[at]!;
    if (!isIdleWord(word.text) && !OF.test(word.text)) strange.push(word);
    else if (strange.length > 0 && !OF.test(word.text)) flush();
    at += 1;
  }
  flush();
  return names;
}

function longestKnown(
  words: readonly Word[],
): { readonly token: Token; readonly length: number } | undefined {
  for (let length = words.length; length > 0; length -= 1) {
    const [first, last] = [words[0]!, words[length - 1]!];
    const text = words
      .slice(0, length)
      .map(word => word.text)
      .join(' ');
    const known = OF.test(first.text) || OF.test(last.text) ? undefined : knownAs(text);
    if (known) return { token: { is: 'name', known, from: first.from, to: last.to, text }, length };
  }
  return undefined;
}
