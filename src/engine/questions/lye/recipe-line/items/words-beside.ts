import { spaced, unbroken } from '../../../../over-lines.ts';
import { isEveryday, isNearOil, isPlain, PRODUCTS, TURNS } from '../../amounts/chat-words.ts';
import { SOMETHING } from '../../amounts/oils-among-words.ts';
import { isHarmlessBesideOil } from '../doubts/beside-oils.ts';
import { isMeasure, isName, isOil, partsOf } from '../settling/parts.ts';
import { DESCRIBES } from './harmless-words.ts';
import type { Item } from './item.ts';
import { followsJoint, type Run, runsOf } from './word-runs.ts';

/** Beside a part of the recipe, and in the same sentence, these turn nothing. */
const HARMLESS = new Set(
  spaced`
    but or o pero por same sorry maybe perhaps mejor igual misma mismo quiza tal left out not no mas entre
    between other another second otro otra segundo segunda used usado usada both either any extra blend
    mixture
  `.split(' '),
);

/** Beside an oil's name: it may not be in the pot, or not all of it, whatever was told of its amount. */
const LOST = new RegExp(
  unbroken`
    ^(?:did ?n?t|didnt|doesnt|dont|wont|cant|couldnt|havent|hasnt|hadnt|isnt|wasnt|never|nunca|jamas|
    tampoco|leave|leaves|leaving|out|forg\p{L}+|missed|skip\p{L}*|omit\p{L}*|spill\p{L}*|spilt|drop\p{L}*|
    fell|floor|threw|thrown|tip\p{L}*|took|lost|broke|evaporat\p{L}+|stuck|olvid\p{L}+|derram\p{L}+|
    cay\p{L}+|cae|suelo|piso|tir[eo]|bote|botamos|perd\p{L}+|quite|quito|saque|saco|falt\p{L}+|evapor\p{L}+|
    rompi\p{L}+)$
  `,
  'u',
);

/** Whether a word beside an oil's name may keep it, or some of it, out of the pot. Lower case without accents. */
export const isLostWord = (word: string): boolean => LOST.test(word);

/**
 * The words of a line that stand beside its recipe and are passed by; `unclear` where one may be a fat or change an amount. Pure.
 */
export function wordsBeside(
  items: readonly Item[],
): { readonly left: readonly string[] } | { readonly unclear: string } {
  const either = eitherIn(items);
  if (either !== undefined) return { unclear: either };
  const parts = partsOf(items);
  const told = new Set(parts.filter(part => hasRecipe(part.items)).map(({ sentence }) => sentence));
  const left: string[] = [];
  for (const part of parts) {
    if (!told.has(part.sentence)) {
      // A sentence of its own is no part of the recipe, but for an oil that is spelt amiss.
      // ... or makes more or less of the whole of it.
      const amiss = part.items.find(
        ({ is, text }) =>
          is === 'word' &&
          ((isNearOil(plain(text)) && !isHarmlessBesideOil(plain(text)) && !isOwner(part.items, text)) ||
            MULTIPLIES.test(text)),
      );
      if (amiss) return { unclear: amiss.text };
      continue;
    }
    for (const run of runsOf(part.items)) {
      const stop = stopIn(run, part.items, followsJoint(items, part));
      if (stop !== undefined) return { unclear: stop };
      const words = run.words.map(({ text }) => text);
      // Where all of it stands is no part of the recipe, nor that a milk is its liquid.
      const isKnown = run.isIn && words.every(word => isHarmlessBesideOil(plain(word)));
      if (!isKnown && words.some(word => !isPlain(plain(word)) && word !== 'liquid'))
        left.push(words.join(' '));
    }
  }
  return { left };
}

/** "700 g olive or 700 g canola": one of two weighed oils goes in, and nobody here knows which. */
function eitherIn(items: readonly Item[]): string | undefined {
  const isWeighed = (some: readonly Item[]) => some.some(isOil) && some.some(isMeasure);
  for (const [at, item] of items.entries()) {
    if (item.is !== 'word' || !/^(?:or|o|u)$/u.test(item.text)) continue;
    const before = items.slice(items.slice(0, at).findLastIndex(({ text }) => text === ';') + 1, at);
    const after = items.slice(at + 1);
    const end = after.findIndex(({ text }) => text === ';');
    const behind = end === -1 ? after : after.slice(0, end);
    if (isWeighed(before) && isWeighed(behind))
      return [before.at(-1)!, item, ...behind.slice(0, 2)].map(({ text }) => text).join(' ');
  }
  return undefined;
}

/** "Mamgu's book": whose something is. */
const isOwner = (items: readonly Item[], text: string): boolean =>
  /['’]s$/u.test(text) && items[items.findIndex(one => one.text === text) + 1]?.is === 'word';

/** What makes more or less of a recipe, in whatever sentence it stands. */
const MULTIPLIES = new RegExp(
  unbroken`
    ^(?:twice|thrice|doubl(?:e|es|ed|ing)|tripl(?:e|es|ed|ing)|quadrupl\p{L}+|halv(?:e|es|ed|ing)|
    half-batch|multipl\p{L}+|upscal\p{L}+|downscal\p{L}+|scal(?:e|es|ed|ing)|x[2-9]|[2-9]x|doble|dobles|
    dupli(?:c|qu)\p{L}+|triple|tripli(?:c|qu)\p{L}+|cuadruple|mitades|multiplic\p{L}+|divid\p{L}+|
    divis\p{L}+|halves|thirds|quarters|tercios|cuartos|tenth|tenths|decim[oa]s?)$
  `,
  'u',
);

/** "That's", "t'butcher": the word without what is run together with it. */
function plain(word: string): string {
  const [, inner] = /^(?:t['’])?(\p{L}{2,})(?:['’](?:s|ll|d|re|ve|m))?$/u.exec(word) ?? [];
  return inner ?? word.replace(/['’]/gu, '');
}
const isAnyOil = (item: Item | undefined): boolean => isName(item) && item.known === 'any-oil';
const hasRecipe = (items: readonly Item[]): boolean => items.some(item => isMeasure(item) || isName(item));

/** "Manteca del higo" would be a fat of its own. */
const KIND = /^(?:manteca|mantequilla|aceite|cera|grasa)$/u;

/** How a soap came out. */
const LOOKS = new RegExp(
  unbroken`
    ^(?:white|black|brown|grey|gray|yellow|green|orange|pink|pale|dark|hard|soft|crumbly|brittle|chalky|
    sticky|oily|greasy|warm|cold|blanco|blanca|duro|dura|blando|blanda|oscuro|amarillo|pegajoso|aceitoso)$
  `,
  'u',
);

/** "Dissolved and cooling": how lye stands in its jug is of no fat. */
const OF_LYE = new RegExp(
  unbroken`
    ^(?:dissolved|cooling|cooled|cool|cold|hot|warm|ready|waiting|clear|mixed|stirred|made|weighed|poured|
    disuelt[oa]|enfriando|enfriandose|fri[oa]|caliente|list[oa]|clar[oa]|mezclad[oa]|esperando|hech[oa]|
    pesad[oa])$
  `,
  'u',
);
/** "I mixed 250 g rice bran": done to all that follows. */
const WHO_MIXED = new RegExp(
  unbroken`
    ^(?:(?:so|then|and|today|y|hoy) )?(?:i|we|i've|we've|ive|weve|yo)?(?: (?:have|just|
    already))*(?: ?(?:mixed|blended|used|mix|blend|mezcla|mezcle|mezclo|mezclamos))(?: (?:of|de))?(?: (?:up|
    together|in))?$
  `,
  'u',
);

/** Beside a weight and the word for any oil these tell of all of it; any other word names one that nobody here knows. */
const OF_ALL_OIL = new RegExp(
  unbroken`
    ^(?:total|all|whole|combined|mixed|weight|worth|other|more|total(?:es)?|todo|toda|mezclad[oa]|mas|otro|
    junto|hay|i|we|so|please|pls|but|pero|how|what|cuanta|cuanto|calculate|calcula)$
  `,
  'u',
);
/** "500 g of pal oil", "500 g de aceite pal": a weight of one oil whose name is not known, which would be dropped as that of all. */
function namesOneOil(
  words: readonly Item[],
  all: readonly string[],
  { before, after }: Pick<Run, 'before' | 'after'>,
  part: readonly Item[],
): boolean {
  const isOne = (item: Item | undefined) => isAnyOil(item) && /^(?:oil|fat|aceite|grasa)$/u.test(item!.text);
  if (isOne(after) && before !== undefined && isMeasure(before)) return !OF_ALL_OIL.test(all.at(-1)!);
  // In Spanish the name stands behind.
  if (!isOne(before) || !/^(?:aceite|grasa)$/u.test(before!.text)) return false;
  if (!isMeasure(part.slice(0, part.indexOf(before!)).findLast(({ is }) => is !== 'link'))) return false;
  const isPurpose = all[0] === 'para' && (words.length > 1 || after?.is === 'word');
  return !isPurpose && !OF_ALL_OIL.test(all[0]!);
}

function stopIn(
  { words, before, after, isOrigin, isSpeech, isPlaced, isIn, isHead }: Run,
  part: readonly Item[],
  isJoined: boolean,
): string | undefined {
  const isOfOil = part.some(isOil);
  const all = words.map(({ text }) => plain(text));
  const said = words.map(({ text }) => text).join(' ');
  if (isOfOil && !isHead && all.some(word => LOST.test(word))) return said;
  // "The coconut's drying" tells of an oil and adds none.
  if (
    words.some(
      ({ text }, at) =>
        isNearOil(all[at]!) && isNearOil(text.replace(/['’]/gu, '')) && !isHarmlessBesideOil(all[at]!),
    )
  )
    return said;
  const isDone = before === undefined && after?.is === 'amount' && WHO_MIXED.test(all.join(' '));
  if (!isDone && all.some(word => TURNS.has(word) && !HARMLESS.has(word))) return said;
  // "Potassium hydroxide, the flakes", "for dry old hands".
  const isAside =
    !hasRecipe(part) && all.every(word => !PRODUCTS.test(word) || /^(?:flakes?|dry)$/u.test(word));
  if (!isAside && all.some(word => PRODUCTS.test(word))) return said;
  if (SOMETHING.test(said)) return said;
  if (!hasRecipe(part) && all.every(word => OF_LYE.test(word))) return undefined;
  if (!hasRecipe(part))
    return isJoined &&
      !isSpeech &&
      !isPlaced &&
      !all.every(word => isEveryday(word) || LOOKS.test(word)) &&
      !all.some(isPlain)
      ? said
      : undefined;
  // Behind an oil, or between its amount and it, only everyday words stand; anything else may be a part of its name.
  const isKnownPlace = isIn && all.every(isHarmlessBesideOil);
  if (
    isOil(before) &&
    !isEveryday(all[0]!) &&
    !isKnownPlace &&
    !DESCRIBES.has(all[0]!) &&
    all[0] !== 'off' &&
    !(isOrigin && !KIND.test(before.text))
  )
    return said;
  if (isOil(after) && before !== undefined && isMeasure(before) && !isEveryday(all.at(-1)!)) return said;
  if (namesOneOil(words, all, { before, after }, part)) return said;
  // "Emu oil", "aceite de emú": a word beside the word for any oil names one.
  if (!part.some(isMeasure)) return undefined;
  // "Soft oils" are several; "rock oil" is one.
  const isOfSeveral = /s$/u.test(after?.text ?? '') && DESCRIBES.has(all.at(-1)!);
  if (isAnyOil(after) && !isPlain(all.at(-1)!) && !isOfSeveral && all.at(-1) !== 'other') return said;
  if (isAnyOil(before) && !isPlain(all[0]!) && !/^(?:mou?ld|molde|batch|lot|weight|phase)$/u.test(all[0]!))
    return said;
  if (isJoined && before === undefined && isOil(after) && !isEveryday(all.at(-1)!)) return said;
  return undefined;
}
