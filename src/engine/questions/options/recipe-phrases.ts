import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { percentText } from '../../quantities/for-readers.ts';
import { spokenAmounts } from '../../quantities/spoken/spoken-amounts.ts';
import { unaccented } from '../../text/unaccented.ts';
import { isEveryday, PRODUCTS, TURNS } from '../lye/amounts/chat-words.ts';
import { SOMETHING } from '../lye/amounts/oils-among-words.ts';
import { absenceIn, isHarmlessBesideOil } from '../lye/recipe-line/doubts/beside-oils.ts';
import { isLostWord } from '../lye/recipe-line/items/words-beside.ts';
import { MASS, REST_OF, THE_LAST, withRestParted, withRestTo } from './rest-of-recipe.ts';

/** In a list of oils almonds are their oil; bitter ones have another. */
const ALMONDS =
  /(?<!(?:leche|harina|mantequilla|manteca|crema|pasta) (?:de )?)(?<!\p{L})(?:aceite de )?almendras?(?! (?:dulces?|amargas?))(?!\p{L})/giu;
/** "Sheabutter". */
const ONE_WORD = /(?<!\p{L})(?:(shea|cocoa|mango|kokum)(butter)|(rice)(bran)|(palm)(kernel))(?!\p{L})/giu;
/** "Coco nut", "sun flower": one oil's name in two words. */
const TWO_WORDS =
  /(?<!\p{L})(?:(coco|pea|hazel|wal) (nut)|(sun|saf) (flower)|(rape|grape|flax|lin|cotton) (seed))(?!\p{L})/giu;
const HIGH_OLEIC = /(?<!\p{L})hi[- ]oleic(?!\p{L})/giu;
/** "300 g tallow +150 coconut". */
const PLUS = /\s*\+\s*(?=\d)/gu;
/** "(dont ask)": a remark about oneself. */
const DONT_ASK = new RegExp(
  unbroken`
    [\s,]*\(?(?<!\p{L})(?:do ?n['’]?t|do not|dinnae|no me) (?:ask|judge|laugh|pregunt\p{L}+|
    juzgu\p{L}+)(?: (?:me|why|how|please|por qu[eé]|c[oó]mo))*(?=\s*(?:[),.;+]|$))\)?
  `,
  'giu',
);

const FIGURE = String.raw`\d[\d.,/]*(?: ?(?:${MASS}|%)(?!\p{L}))?`;
/** "Coco 300, y de girasol lo mismo", "olive oil the same again". */
const SAME_AGAIN = new RegExp(
  unbroken`
    (${FIGURE})((?:(?!\d)[^;])*?)(?<!\p{L})(?:lo mismo|la misma cantidad|otro tanto|
    the same(?: again| amount)?|same (?:again|amount)|half (?:of )?that|la mitad de eso)(?!\p{L})(?! (?:of|
    de) (?:each|cada))
  `,
  'iu',
);

function withSameAgain(text: string): string {
  let said = text;
  for (let match = SAME_AGAIN.exec(said); match; match = SAME_AGAIN.exec(said)) {
    const [whole, amount, between] = match;
    const again = /half|mitad/iu.test(whole.slice(amount!.length + between!.length))
      ? amount!.replace(/^[\d.,]+/u, figure => String(Number(figure.replace(',', '.')) / 2))
      : amount!;
    said = `${said.slice(0, match.index)}${amount}${between}${again}${said.slice(match.index + whole.length)}`;
  }
  return said;
}

const LONGEST_NAME = 4;
/** Whether an oil is named among words. */
export const namesOilIn = (words: readonly string[]): boolean =>
  words.some((_, at) =>
    Array.from({ length: LONGEST_NAME }, (__, more) => words.slice(at, at + 1 + more).join(' ')).some(
      name => knownOil(name) !== undefined,
    ),
  );

/** Whether words tell nothing of a recipe that they stand beside: everyday ones, and none that turns it or tells of what is not in it. */
export function isIdle(words: readonly string[]): boolean {
  const said = words.join(' ');
  return (
    words.every(
      word =>
        (isEveryday(word) || isHarmlessBesideOil(word)) &&
        !isLostWord(word) &&
        !(TURNS.has(word) && !/^(?:mas|but|pero|so)$/u.test(word)),
    ) &&
    absenceIn(said) === undefined &&
    !SOMETHING.test(said)
  );
}

/** "Avocado 100 cause it was going off": why tells nothing of how much. */
const WHY =
  /[\s,]+(?:'?cause|cos|cuz|coz|because|since|as (?=(?:i|it|we|they|that)(?!\p{L}))|porque|ya que|pues)\s+([^,;.()\d]*)/giu;
const withoutWhy = (text: string): string =>
  text.replace(WHY, (all, why: string) => {
    const words = wordsOf(why.replace(/(?<!\p{L})(?:going|gone|went|goes) off(?!\p{L})/iu, 'old'));
    return !namesOilIn(words) && isIdle(words) ? ' ' : all;
  });

/** "The sustainable one": which of a kind it is, where no other fat is told by it. */
function isKind(clause: string): boolean {
  const [, kind] =
    /^\s*(?:the|la|el) (\p{L}+) (?:ones?|kind|sort|stuff)\s*$/iu.exec(unaccented(clause)) ?? [];
  return (
    kind !== undefined &&
    !PRODUCTS.test(kind) &&
    !TURNS.has(kind) &&
    !isLostWord(kind) &&
    absenceIn(kind) === undefined &&
    !/oleic|acid|cold/u.test(kind) &&
    knownOil(kind) === undefined
  );
}

const STOP = /([,;()]|\.(?!\d)|\s[-–—]\s)/u;
const wordsOf = (text: string): readonly string[] => unaccented(text).match(/\p{L}[\p{L}'’]*/gu) ?? [];

/** A list without the clauses that tell nothing of it: "cocoa butter (from work), 350 g olive". */
function withoutAsides(text: string): string {
  return withoutWhy(text)
    .split(STOP)
    .map((clause, at) => {
      const words = wordsOf(clause);
      const isAside = at % 2 === 0 && words.length > 0 && !/[\d%]/u.test(clause);
      if (isAside && isKind(clause)) return ' ';
      return isAside && !namesOilIn(words) && isIdle(words) ? ' ' : clause;
    })
    .join('')
    .replace(/\([\s,;]*\)/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
}

const OIL = String.raw`((?:\p{L}+ ){0,2}\p{L}+)`;
/** "Lard n coconut, 3 to 1", "just lard and coconut, 75/25": the shares of two stand behind both. */
const SHARES_BEHIND = new RegExp(
  String.raw`^\s*(?:(?:just|only|solo|sólo|it['’]?s) )*${OIL} (?:and|n|&|y|e|con|with) ${OIL}[,:]? (?:at |al? )?(\d{1,2}) ?(?:\/|-|:|to|a) ?(\d{1,2})[\s.!]*$`,
  'iu',
);
const HALVES_BEHIND = new RegExp(
  unbroken`
    ^\s*(?:(?:just|only|solo|sólo|it['’]?s) )*${OIL} (?:and|n|&|y|e|con|with) ${OIL}[,:]? (?:half (?:and |
    n )?half|half n half|mitad (?:y )?mitad|50[ /-]50|a medias)[\s.!]*$
  `,
  'iu',
);
/** "All olive bar 5% castor": what is left out of all is the other's. */
const ALL_BUT = new RegExp(
  unbroken`
    ^\s*(?:(?:it['’]?s|is|es) )*(?:all|todo|pura?o?) ${OIL},? (?:bar|but|except|excepto|salvo|
    menos) (?:for )?(?:an? |un |el )?(\d{1,2}) ?(?:%|percent|por ?ciento)(?: (?:of|de))? ${OIL}[\s.!]*$
  `,
  'iu',
);
/** "60% girasol alto oleico no, girasol común": the second name is meant. */
const NAME_PUT_RIGHT = new RegExp(
  String.raw`(?<=\d ?%? ?(?:g |de )?)${OIL},? (?:no|perd[oó]n|digo|i mean|sorry|wait),? ${OIL}(?=\s*(?:[,;]|$))`,
  'giu',
);

const figured = (one: string, share: number, other: string): string =>
  `${percentText(share)} ${one}, ${percentText(1 - share)} ${other}`;
const isFat = (name: string): boolean => knownOil(unaccented(name)) !== undefined;

/** Two fats whose shares are told for both at once, each with its own. */
function withSharesApart(text: string): string {
  const [, one, other, first, second] = SHARES_BEHIND.exec(text) ?? [];
  // No number where none are told.
  const sum = Number(first) + Number(second);
  if (sum > 0 && isFat(one!) && isFat(other!)) return figured(one!, Number(first) / sum, other!);
  const [, left, right] = HALVES_BEHIND.exec(text) ?? [];
  if (left !== undefined && isFat(left) && isFat(right!)) return figured(left, 1 / 2, right!);
  const [, most, share, rest] = ALL_BUT.exec(text) ?? [];
  if (most !== undefined && isFat(most) && isFat(rest!)) return figured(most, 1 - Number(share) / 100, rest!);
  return text.replace(NAME_PUT_RIGHT, (all, told: string, meant: string) =>
    isFat(told) && isFat(meant) ? meant : all,
  );
}

/** A list of oils as an option tells it, in words that the grammar of recipes takes. Pure. */
export const listSaidPlainly = (text: string): string =>
  withoutAsides(
    withRestParted(
      withSameAgain(
        withRestTo(withSharesApart(spokenAmounts(text)).replace(DONT_ASK, '').replace(PLUS, ', '))
          .replace(TWO_WORDS, '$1$2$3$4$5$6')
          .replace(HIGH_OLEIC, 'high oleic')
          .replace(ALMONDS, 'aceite de almendras dulces')
          .replace(ONE_WORD, '$1$3$5 $2$4$6')
          .replace(
            REST_OF,
            (_, mass: string) => `; total ${/^\d/u.test(mass) ? mass : `1 ${mass}`} ; the rest`,
          )
          .replace(THE_LAST, ''),
      ),
    ),
  );
