import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { isNearOil } from './amounts/chat-words.ts';
import { withLiquidBesideWater } from './amounts/liquid-beside-water.ts';
import { withMilkAsWater } from './amounts/milk-as-water.ts';
import { prepared, scentsOf } from './amounts/prepared.ts';
import { plainWords } from './amounts/words.ts';
import { ofBatchAsked } from './batch-asked.ts';
import { type Passed, refuseByReason, strictly } from './by-reason.ts';
import { refuseGroupLeftOut } from './group-left-out.ts';
import { refuseOtherAlkali } from './other-alkali.ts';
import { type LyeQuestion, readLyeQuestion } from './question.ts';
import { dissolved } from './ready-lye-told.ts';
import { isShareOfOneOil } from './recipe-line/doubts/amounts/share-of-oil.ts';
import { markedIn } from './recipe-line/doubts/marked.ts';
import { oilLostIn } from './recipe-line/doubts/oil-lost.ts';
import { refusePotsCompared } from './recipe-line/doubts/pots-compared.ts';
import { softSoapIn } from './recipe-line/doubts/soft-soap.ts';
import { beyondIn } from './recipe-line/items/beyond-reading.ts';
import { superfatTold } from './recipe-line/items/fat-unread.ts';
import type { Way } from './recipe-line/items/item.ts';
import { type RecipeLine, recipeLine } from './recipe-line/recipe-line.ts';
import { type FigurePutRight, figurePutRight } from './recipe-line/settling/figure-put-right.ts';
import { withOwnPound } from './recipe-line/talk/own-pound.ts';
import { isStrangeOil, isTalk, namesFat, OF_OURS } from './talk-words.ts';
import { refuseToldInDoubt } from './told-in-doubt.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A recipe that is put right in the middle of its line. */
    'recipe-corrected': { text: string; ways?: readonly Way[] };
    /** A recipe that is to be multiplied. */
    'recipe-scaled': { text: string };
    /** An oil of which only a share is or goes in. */
    'oil-shared': { text: string };
    /** An oil with two amounts, of which one is in the pot. */
    'oil-told-twice': { name: string; one: string; other: string };
    /** What was to go in, beside what did. */
    'recipe-planned': { text: string };
    /** Another's pot, told beside the asker's own. */
    'recipe-of-another': { text: string };
    /** Oils beside words that may keep them, or some of them, out of the pot, and the recipes that it may be. */
    'oil-in-pot': { names: readonly string[]; text: string; ways?: readonly Way[] };
    /** Oils of which some was lost before the lye. */
    'oil-lost': { text: string };
    /** Lye that comes dissolved, and how strong it is is not told. */
    'lye-ready-strength': { text: string };
    /** A soap that another alkali makes than the bar's, and no alkali is told. */
    'lye-of-soft-soap': { text: string };
    /** A superfat beside another one, or beside a discount that may come on top of it. */
    'superfat-twice': { one: string; other: string };
    /** Words beside a recipe that may be a part of it. */
    'recipe-words': { text: string; ways?: readonly Way[] };
  }
}

/** Who puts right what was just said. */
const CORRECTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:oops|i (?:meant|mean)|no wait|wait no|scratch (?:the|that)|correction|actually|
    sorry,? (?:make|not|no|its|it s|i meant)|make (?:it|that) \d|quise decir|quiero decir|mejor dicho|digo|
    ay no|no mejor|perdon,? (?:de|es|son|eran?|no|\d))(?!\p{L})
  `,
  'u',
);
const SCALES = new RegExp(
  unbroken`
    (?<!\p{L})(?:doubl(?:e|ed|ing)(?! ?check)|tripl(?:e|ed|ing)|halve|half of this|scal(?:e|ed|ing) (?:it|
    this|them|everything|all|to|up|down|the (?:recipe|batch))|times (?:two|three|\d)|multipl\p{L}+|
    dupli(?:c|qu)\p{L}+|tripli(?:c|qu)\p{L}+|la mitad de|al doble|el doble|(?:la )?quiero a \d)(?!\p{L})
  `,
  'u',
);
/** A part of a recipe, of which nothing tells how it stands to the rest. */
const SHARE = new RegExp(
  unbroken`
    (?<!\p{L})(?:half|halves|thirds?|quarters?|fourth|fifth|two thirds|three quarters|double|triple|mitad|
    tercios?|cuartos?|quinto|(?:tercera|cuarta) parte|medi[oa]|doble)(?!\p{L})|^\d\/\d
  `,
  'u',
);
/** Refusals of a line in which only its words stand in the way. */
const OF_WORDS: ReadonlySet<string> = new Set([
  'oil-unknown',
  'oil-without-amount',
  'amounts-whose',
  'oils-mixed-units',
  'oils-without-unit',
  'amount-unreadable',
  'amount-unit-unknown',
  'oils-empty',
  'oils-percent-sum',
]);

/**
 * {@link readLyeQuestion}, also where courtesies, dialect and what else is chatted stand beside the recipe: those words are passed
 * by and told. `unordered` as `inOrder` found it. Pure. Throws the Refusals of `readLyeQuestion`, and `recipe-corrected`,
 * `recipe-scaled`, `oil-shared`, `oil-told-twice`, `oil-lost`, `superfat-twice`, `oil-in-pot`, `oils-left-out`, `recipe-planned`, `recipe-of-another`,
 * `lye-of-soft-soap`, `recipe-words` and what `refuseToldInDoubt` throws.
 */
export function readLyeInChat(
  question: string,
  order: { readonly ordered: string; readonly unordered?: Refusal },
): LyeQuestion {
  const mark = WEIGHED.test(question) ? markedIn(question) : undefined;
  if (mark !== undefined) refuse('recipe-words', { text: mark.slice(0, 60) });
  const plain = plainWords(question);
  const soft = /\d/u.test(plain) && plain.split(/[^\p{L}]+/u).some(isOil) ? softSoapIn(plain) : undefined;
  if (soft !== undefined) refuse('lye-of-soft-soap', { text: soft });
  if (/\d/u.test(plain)) refuseOtherAlkali(plainWords(question, { clauses: true }));
  const told = readWhole(question, order);
  // A superfat that is told and was not read would be the usual one.
  const isUnread = told.given.oils !== undefined && told.given.superfat === undefined && !told.weighed;
  const fat = isUnread ? superfatTold(plainWords(question, { clauses: true })) : undefined;
  return fat === undefined ? told : refuse('recipe-words', { text: fat.slice(0, 60) });
}
const isOil = (word: string): boolean => word.length > 2 && knownOil(word) !== undefined;

function readWhole(
  question: string,
  { ordered, unordered }: { readonly ordered: string; readonly unordered?: Refusal },
): LyeQuestion {
  refusePotsCompared(plainWords(question, { clauses: true }));
  // Weights are told in words as well.
  const plain = plainWords(question, { clauses: true });
  if (WEIGHED.test(question) || WEIGHED.test(plain)) refuseToldInDoubt(plain);
  const later = figurePutRight(plain);
  if (later?.line === undefined) refusePutRight(later);
  refuseGroupLeftOut(question, { sure: true });
  const beyond = beyondIn(ofBatchAsked(withOwnPound(plain)));
  if (beyond !== undefined && WEIGHED.test(question)) refuse('recipe-words', { text: beyond.slice(0, 60) });
  refuseGroupLeftOut(question, { sure: false });
  const line = prepared(question);
  const read = recipeLine(line, plainWords(question, { clauses: true }));
  const clear = 'line' in read ? strictly(read.line) : undefined;
  if (clear && 'line' in read)
    return dissolved(
      withLiquidBesideWater(
        withBeside(
          withMilkAsWater(clear, line),
          { ...read, left: [...read.left, ...scentsOf(question)] },
          line,
        ),
        line,
      ),
      question,
    );
  if ('unclear' in read) {
    const lost = oilLostIn(line);
    if (lost !== undefined) refuse('oil-lost', { text: lost });
  }
  // Whoever takes every word as it stands would take the first of the two.
  refusePutRight(later);
  const passed = 'unclear' in read ? refuseByReason(read, question) : {};
  // What is changed as it is told is for no reader that takes every word as it stands.
  if (read.isTurned) return refuseTurned(line, read, passed);
  const unclear = 'unclear' in read ? read.unclear : '';
  const isOfAlkalis = 'unclear' in read && read.why === 'alkalis';
  try {
    if (unordered) throw unordered;
    const strict = readLyeQuestion(ordered);
    // Oils whose place is not clear are counted by no other reader: what was planned and what was poured would both be in the pot.
    if (strict.given.oils === undefined || (isOfAlkalis && strict.lye.kohPercent !== undefined))
      return dissolved(strict, question);
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || !OF_WORDS.has(refusal.id)) throw refusal;
    return refuseUnclear({ line, unclear, passed }, refusal);
  }
  // What only the strict reader does not take has no words of its own.
  return refuse('recipe-words', { text: (unclear === '' ? line : unclear).slice(0, 60), ...passed });
}

/** Throws `superfat-twice` or `recipe-corrected` where a figure is put right later. */
function refusePutRight(later: FigurePutRight | undefined): void {
  if (!later) return;
  if (later.isSuperfat) refuse('superfat-twice', { one: `${later.one}%`, other: `${later.other}%` });
  refuse('recipe-corrected', { text: later.other.trim() });
}

/** A weight in figures, or in words: "half a kilo". */
const WEIGHED = new RegExp(
  unbroken`
    \d|(?<!\p{L})(?:half|quarters?|thirds?|one|two|three|four|medi[oa]|cuartos?|tercios?|una?|dos|tres|
    cuatro) (?:(?:an?|of|de|una?) )*(?:kilos?|pounds?|libras?|ounces?|onzas?)(?!\p{L})
  `,
  'iu',
);

const ASKS_WATER = /\b(?:how much|cuanta) (?:water|agua)\b/u;
const withBeside = (told: LyeQuestion, { left, respelt }: RecipeLine, line: string): LyeQuestion => ({
  ...told,
  left,
  respelt,
  asksWater: ASKS_WATER.test(line),
});

/** Throws `oil-shared` where a share is of one oil, else `recipe-scaled`. */
function refuseShare(line: string, text: string): never {
  const [share = text] = SHARE.exec(text) ?? [];
  if (isShareOfOneOil(line, share)) refuse('oil-shared', { text: share });
  return refuse('recipe-scaled', { text });
}

/** Throws `recipe-scaled`, `oil-shared` or `recipe-corrected`, as what is unclear in a recipe that was changed. */
function refuseTurned(line: string, read: ReturnType<typeof recipeLine>, passed: Passed): never {
  const [scaled] = SCALES.exec(line) ?? [];
  if (scaled !== undefined) refuseShare(line, scaled);
  if ('unclear' in read && SHARE.test(read.unclear)) refuseShare(line, read.unclear);
  const [corrected] = CORRECTS.exec(line) ?? [];
  return refuse('recipe-corrected', {
    text: corrected ?? ('unclear' in read ? read.unclear.slice(0, 60) : line.slice(0, 60)),
    ...passed,
  });
}

/** Throws what stands in the way of a recipe told in chat: a correction, a multiple, words, or else the refusal of the strict reader. */
function refuseUnclear(
  { line, unclear, passed }: { readonly line: string; readonly unclear: string; readonly passed: Passed },
  refusal: Refusal,
): never {
  const [corrected] = CORRECTS.exec(line) ?? [];
  if (corrected !== undefined && /\d/u.test(line)) refuse('recipe-corrected', { text: corrected, ...passed });
  const [scaled] = SCALES.exec(line) ?? [];
  if (scaled !== undefined && /\d/u.test(line)) refuseShare(line, scaled);
  if (refusal.id === 'oil-unknown' && SHARE.test(unclear)) refuseShare(line, unclear.slice(0, 60));
  const text = 'text' in refusal.values && typeof refusal.values.text === 'string' ? refusal.values.text : '';
  if (refusal.id === 'oil-unknown' && !namesFat(text) && !text.split(' ').some(isStrangeOil)) {
    const words = unclear.split(' ');
    const mayBeOil = words.some(word => isNearOil(word) || /^\d/u.test(word) || knownOil(word) !== undefined);
    if (unclear !== '' && !mayBeOil) refuse('recipe-words', { text: unclear.slice(0, 60), ...passed });
    // "Between", "later another": no name of an oil, so that none is offered for it.
    const strange = text
      .split(/[^\p{L}\d'-]+/u)
      .filter(word => word !== '' && !/^\d/u.test(word) && knownOil(word) === undefined);
    if (strange.length > 0 && strange.every(word => isTalk(word, line))) {
      const own = strange.filter(word => !OF_OURS.test(word)).join(' ');
      refuse('recipe-words', { text: (own === '' ? line : own).slice(0, 60), ...passed });
    }
  }
  throw refusal;
}
