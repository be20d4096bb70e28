import { spaced } from '../../../over-lines.ts';
import { fold } from '../../fold.ts';
import { unaccented } from '../../unaccented.ts';
import { completesName, joinedWord, wordInName } from './in-names.ts';
import { mayBeBarred } from './near-barred.ts';
import { COMMON_WORDS, TRADE_WORDS, tradeWords } from './trade-words.ts';

/** Words as they were typed, and the word of the trade that they were meant for. */
export type Respelling = { readonly from: string; readonly to: string };

/** The words of the trade are few: what is longer than this names none. UTF-16 units. */
const LONGEST = 600;
const PIECES = /(\p{L}[\p{L}\p{M}]*)/u;

/** Letters of words for colours, as they are left out on labels and phones. */
const SHORT: ReadonlyMap<string, string> = new Map(
  spaced`
    whit white,whte white,whie white,purpel purple,pruple purple,blk black,blck black,brn brown,brwn
    brown,grn green,wht white,yel yellow,ylw yellow,yllw yellow,ppl purple,prpl purple,gry grey,blu
    blue,orng orange,pnk pink,turq turquoise,trq turquoise,burg burgundy,lav lavender,azl azul,vrd
    verde,rsa rosa,ngro negro,blnc blanco,midnite midnight,morao morado,colorao colorado,rosao
    rosado,plateao plateado,dorao dorado,lite light,brite bright,turkesa turquesa
  `
    .split(',')
    .map(pair => pair.split(' ') as [string, string]),
);

/** What may be a slip for a colour or an alkali that hurts is asked back, never put right. */
const unlessBarred = (typed: string, right: string | undefined): string | undefined =>
  right === undefined || mayBeBarred(typed, right) ? undefined : right;

/** The word of the trade that a single word was meant for; undefined where it is one already, is common, or may be one that hurts. */
export function wordMeant(typed: string): string | undefined {
  const plain = unaccented(typed);
  const word = fold(typed);
  if ([plain, word].some(one => TRADE_WORDS.has(one) || COMMON_WORDS.has(one))) return undefined;
  return unlessBarred(word, SHORT.get(plain) ?? tradeWords.meant(plain) ?? tradeWords.meant(word));
}

/**
 * Which of the words (lower case, no accents) are slips, and what each was meant for: by itself, or as part of a name. `keeps`
 * tells which are left alone by themselves.
 */
export function slipsAmong(
  words: readonly string[],
  keeps: (word: string) => boolean = () => false,
): ReadonlyMap<number, string> {
  const slips = new Map<number, string>();
  const inNames = (said: readonly string[]) => {
    const contested = new Set<number>();
    for (const [at, word] of words.entries()) {
      if (slips.has(at)) continue;
      const meant = wordInName(said, at);
      if (meant === undefined) continue;
      if ('contested' in meant) contested.add(at);
      else if (!mayBeBarred(word, meant.word)) slips.set(at, meant.word);
    }
    return contested;
  };
  // Whole names first, then word by word, then names that stand whole only now.
  const contested = inNames(words);
  for (const [at, word] of words.entries()) {
    const meant = slips.has(at) || contested.has(at) || keeps(word) ? undefined : wordMeant(word);
    if (meant !== undefined) slips.set(at, meant);
  }
  const right = words.map((word, at) => slips.get(at) ?? word);
  if (slips.size > 0) inNames(right);
  // "blu" is a word of the trade too, in a third language.
  for (const [at, word] of words.entries()) {
    const whole = slips.has(at) ? undefined : SHORT.get(word);
    if (whole !== undefined && completesName(right, at, whole)) slips.set(at, whole);
  }
  return slips;
}

/** A text in which no space parts a word of the trade; what is two words in its own right stays. */
function joined(text: string): string {
  const pieces = text.split(PIECES);
  for (let at = 1; at + 2 < pieces.length; at += 2) {
    if (pieces[at + 1] !== ' ') continue;
    const meant = joinedWord(unaccented(pieces[at]!), unaccented(pieces[at + 2]!));
    if (meant !== undefined) pieces.splice(at, 3, meant);
  }
  return pieces.join('');
}

/**
 * A text with slips of the finger put right, word by word, and which; all else stays as it was typed.
 * @example respelt('80 g ultramrine blue').text // '80 g ultramarine blue'
 */
export function respelt(text: string): { readonly text: string; readonly changes: readonly Respelling[] } {
  if (text.length > LONGEST) return { text, changes: [] };
  const whole = joined(text);
  const pieces = whole.split(PIECES);
  const places = pieces.flatMap((piece, at) => (at % 2 === 1 || /[^\s]/u.test(piece) ? [at] : []));
  const slips = slipsAmong(places.map(at => unaccented(pieces[at]!).trim()));
  const changes: Respelling[] = [];
  for (const [place, to] of slips) {
    const at = places[place]!;
    changes.push({ from: pieces[at]!, to });
    pieces[at] = to;
  }
  if (whole !== text) changes.push({ from: text, to: whole });
  return { text: pieces.join(''), changes };
}
