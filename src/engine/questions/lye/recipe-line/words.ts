import { isEveryday, isNearOil, isPlain, PRODUCTS, TURNS } from '../chat-words.ts';
import { SOMETHING } from '../oils-among-words.ts';
import type { Item } from './item.ts';
import { isMeasure, isName, isOil, type Part, partsOf } from './parts.ts';

/** Beside a part of the recipe, and in the same sentence, these turn nothing. */
const HARMLESS = new Set(
  'but or o pero por same sorry maybe perhaps mejor igual misma mismo quiza tal left out not no mas entre between other used usado usada both either any extra blend mixture'.split(
    ' ',
  ),
);

/** Beside an oil's name: it may not be in the pot, or not all of it, whatever was told of its amount. */
const LOST =
  /^(?:did ?n?t|didnt|doesnt|dont|wont|cant|couldnt|havent|hasnt|hadnt|isnt|wasnt|never|nunca|jamas|tampoco|leave|leaves|leaving|out|forg\p{L}+|missed|skip\p{L}*|omit\p{L}*|spill\p{L}*|spilt|drop\p{L}*|fell|floor|threw|thrown|tip\p{L}*|took|lost|broke|evaporat\p{L}+|stuck|olvid\p{L}+|derram\p{L}+|cay\p{L}+|cae|suelo|piso|tir[eo]|bote|botamos|perd\p{L}+|quite|quito|saque|saco|falt\p{L}+|evapor\p{L}+|rompi\p{L}+)$/u;

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
      const amiss = part.items.find(({ is, text }) => is === 'word' && isNearOil(plain(text)));
      if (amiss) return { unclear: amiss.text };
      continue;
    }
    for (const run of runsOf(part.items)) {
      const stop = stopIn(run, part.items, followsJoint(items, part));
      if (stop !== undefined) return { unclear: stop };
      const words = run.words.map(({ text }) => text);
      if (words.some(word => !isPlain(plain(word)))) left.push(words.join(' '));
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

/** "That's", "t'butcher": the word without what is run together with it. */
function plain(word: string): string {
  const [, inner] = /^(?:t['’])?(\p{L}{2,})(?:['’](?:s|ll|d|re|ve|m))?$/u.exec(word) ?? [];
  return inner ?? word.replace(/['’]/gu, '');
}
const isAnyOil = (item: Item | undefined): boolean => isName(item) && item.known === 'any-oil';
const hasRecipe = (items: readonly Item[]): boolean => items.some(item => isMeasure(item) || isName(item));

type Run = {
  readonly words: readonly Item[];
  readonly before: Item | undefined;
  readonly after: Item | undefined;
  /** "From the butcher", "de la finca": where what stands before comes from. */
  readonly isOrigin: boolean;
  /** "It was lovely". */
  readonly isSpeech: boolean;
  /** "Sitting in the garage". */
  readonly isPlaced: boolean;
  /** Before a colon. */
  readonly isHead: boolean;
};
/** "Manteca del higo" would be a fat of its own. */
const KIND = /^(?:manteca|mantequilla|aceite|cera|grasa)$/u;
/** "And my exam is tomorrow": of no oil. */
const WHEN =
  /^(?:is|are|was|es|son) (?:the )?(?:tomorrow|today|tonight|soon|over|next|on|monday|tuesday|wednesday|thursday|friday|saturday|sunday|manana|hoy|pronto)(?!\p{L})/u;
const SPEECH = /(?:^| )(?:it|is|are|was|were|es|son|era|eran)(?: |$)/u;
const PLACE = /(?:^| )(?:in|at|on|as|to|en)(?: |$)/u;
const ORIGIN = /^(?:del|de (?:la|mi|mis|los|las|nuestr[oa])|from (?:the|my|our)|off the)$/u;
const textOf = (items: readonly Item[]): string => items.map(({ text }) => text).join(' ');
/** How a soap came out. */
const LOOKS =
  /^(?:white|black|brown|grey|gray|yellow|green|orange|pink|pale|dark|hard|soft|crumbly|brittle|chalky|sticky|oily|greasy|warm|cold|blanco|blanca|duro|dura|blando|blanda|oscuro|amarillo|pegajoso|aceitoso)$/u;
/** The links that stand directly before, as text. */
function linksBefore(items: readonly Item[]): string {
  const from = items.findLastIndex(({ is }) => is !== 'link') + 1;
  return items
    .slice(from)
    .map(({ text }) => text)
    .join(' ');
}

function linksBehind(items: readonly Item[]): string {
  const to = items.findIndex(({ is }) => is !== 'link');
  return items
    .slice(0, to === -1 ? items.length : to)
    .map(({ text }) => text)
    .join(' ');
}

/** Runs of words, and what stands on either side. */
function runsOf(items: readonly Item[]): readonly Run[] {
  const runs: Run[] = [];
  for (let at = 0; at < items.length; at += 1) {
    // What is left away may be told in any word.
    if (items[at]!.is !== 'word' || items[at - 1]?.is === 'without') continue;
    const from = at;
    while (items[at + 1]?.is === 'word') at += 1;
    const links = linksBefore(items.slice(0, from));
    runs.push({
      words: items.slice(from, at + 1),
      before: items.slice(0, from).findLast(({ is }) => is !== 'link'),
      isSpeech: SPEECH.test(links) || WHEN.test(textOf(items.slice(at + 1, at + 4))),
      isHead: items[at + 1]?.text === ':',
      isPlaced: PLACE.test(links) || PLACE.test(linksBehind(items.slice(at + 1))),
      isOrigin: ORIGIN.test(links),
      after: items.slice(at + 1).find(({ is }) => is !== 'link'),
    });
  }
  return runs;
}

function followsJoint(items: readonly Item[], { items: [first] }: Part): boolean {
  return first !== undefined && items[items.indexOf(first) - 1]?.is === 'joint';
}

function stopIn(
  { words, before, after, isOrigin, isSpeech, isPlaced, isHead }: Run,
  part: readonly Item[],
  isJoined: boolean,
): string | undefined {
  const isOfOil = part.some(isOil);
  const all = words.map(({ text }) => plain(text));
  const said = words.map(({ text }) => text).join(' ');
  if (isOfOil && !isHead && all.some(word => LOST.test(word))) return said;
  // "The coconut's drying" tells of an oil and adds none.
  if (words.some(({ text }, at) => isNearOil(all[at]!) && isNearOil(text.replace(/['’]/gu, '')))) return said;
  if (all.some(word => TURNS.has(word) && !HARMLESS.has(word))) return said;
  // "Potassium hydroxide, the flakes", "for dry old hands".
  const isAside =
    !hasRecipe(part) && all.every(word => !PRODUCTS.test(word) || /^(?:flakes?|dry)$/u.test(word));
  if (!isAside && all.some(word => PRODUCTS.test(word))) return said;
  if (SOMETHING.test(said)) return said;
  if (!hasRecipe(part))
    return isJoined &&
      !isSpeech &&
      !isPlaced &&
      !all.every(word => isEveryday(word) || LOOKS.test(word)) &&
      !all.some(isPlain)
      ? said
      : undefined;
  // Behind an oil, or between its amount and it, only everyday words stand; anything else may be a part of its name.
  if (isOil(before) && !isEveryday(all[0]!) && !(isOrigin && !KIND.test(before.text))) return said;
  if (isOil(after) && before !== undefined && isMeasure(before) && !isEveryday(all.at(-1)!)) return said;
  // "Emu oil", "aceite de emú": a word beside the word for any oil names one.
  if (!part.some(isMeasure)) return undefined;
  if (isAnyOil(after) && !isPlain(all.at(-1)!) && all.at(-1) !== 'other') return said;
  if (isAnyOil(before) && !isPlain(all[0]!) && !/^(?:mou?ld|molde|batch|lot|weight|phase)$/u.test(all[0]!))
    return said;
  if (isJoined && before === undefined && isOil(after) && !isEveryday(all.at(-1)!)) return said;
  return undefined;
}
