import { knownOil } from '../../../batch/oils/find-oil.ts';
import { foldedColour, isColourWord } from '../../../text/colours/folded-colours.ts';
import { amountsIn, type ToldAmount } from '../../found/amounts.ts';
import { thingsIn } from '../../found/names/entities.ts';
import { kindAlone } from '../../found/names/kind-alone.ts';
import type { NamedThing } from '../../found/names/named-thing.ts';
import { strengthIn } from '../../found/strength/strength-in.ts';
import { type Words, wordsOf } from '../../found/words-of.ts';
import { type Region, regionIn } from '../../places/regions.ts';
import {
  ASKED_AGAIN,
  DARKER,
  DEEP_AT_END,
  DENIES,
  FILLING,
  IN_PARTS,
  LIGHTER,
  LIKENED,
  MARKS,
  NUMBERS,
  OF_BATTER,
  OF_OILS,
  PALE_AT_END,
  PER_WEIGHT,
  REASON,
  SCALE,
  SERVES,
  TIMES,
  TOWARDS,
  UNITS,
} from './phrases.ts';
import type { Opened } from './plain.ts';

/** All that a leaning turn tells: nothing but what is to be changed in what was asked before. */
export type Slots = {
  /** Colourants by name. */
  readonly named: readonly string[];
  /** Words for colours that name no colourant. */
  readonly hues: readonly string[];
  readonly amount?: ToldAmount;
  /** A figure without a unit. */
  readonly figure?: number;
  readonly percent?: number;
  readonly times?: number;
  /** One of so many equal parts of what was told, 0 to 1. */
  readonly share?: number;
  readonly unit?: (typeof UNITS)[number][0];
  readonly of?: 'oils' | 'batter';
  readonly depth?: 'lighter' | 'darker';
  readonly strength?: string;
  readonly carrier?: string;
  readonly region?: Region;
  /** The hue that a colour turns towards. */
  readonly towards?: string;
  /** Says by its own words that it goes on from before. */
  readonly isMarked: boolean;
};

const LIQUID = /^(?:water|agua|glycerine?|glycerol|glicerina|oil|aceite)$/u;
const FIGURE = /^(\d{1,4}(?:[.,]\d+)?)(%?)$/u;
const PERCENT =
  /^(?:%|percent|percentage|por|ciento|superfat|sf|sobreengrasado|sobregrasa|engrasado|sobre|superengrasado)$/u;

/** "Al 8": of a figure behind these a percent is meant. */
const AT = /^(?:at|al)$/u;

type SlotsTold = { -readonly [K in keyof Slots]?: Slots[K] };

/** The colour words that stand for themselves: of "the pink one" the pink. */
const isHue = (word: string) => isColourWord(foldedColour(word));

/** What one word tells, written down; false where it tells nothing that is known. */
function takesWord(
  word: string,
  { told, before }: { readonly told: SlotsTold; readonly before: string | undefined },
): boolean {
  const figure = FIGURE.exec(word);
  if (figure) {
    const value = Number(figure[1]!.replace(',', '.'));
    // Of two figures none is chosen.
    const isPercent = figure[2] === '%' || AT.test(before ?? '') || PERCENT.test(before ?? '');
    return take(told, isPercent ? 'percent' : 'figure', value);
  }
  if (PERCENT.test(word)) {
    const { figure: before } = told;
    delete told.figure;
    return before === undefined || take(told, 'percent', before);
  }
  const unit = UNITS.find(([, words]) => words.test(word))?.[0];
  if (unit !== undefined) return take(told, 'unit', unit);
  // "800 g oil" are all of them; "in oil" is what it is wetted in.
  if (OF_OILS.test(word) && (word.endsWith('s') || before === 'amount')) return take(told, 'of', 'oils');
  if (OF_BATTER.test(word)) return take(told, 'of', 'batter');
  if (LIQUID.test(word)) return take(told, 'carrier', word);
  return false;
}

function take<Key extends keyof SlotsTold>(told: SlotsTold, key: Key, value: SlotsTold[Key]): boolean {
  if (told[key] !== undefined && told[key] !== value) return false;
  told[key] = value;
  return true;
}

/** Where a span begins and ends in the words, and what it is. */
type Span = {
  readonly from: number;
  readonly to: number;
  readonly amount?: ToldAmount;
  readonly thing?: NamedThing;
};

/** Every word has its place: undefined as soon as one has none. */
function placed({ words }: Words, spans: readonly Span[], told: SlotsTold): SlotsTold | undefined {
  const named: string[] = [];
  const hues: string[] = [];
  let denies = false;
  let before: string | undefined;
  for (let at = 0; at < words.length; ) {
    const span = spans.find(({ from }) => from === at);
    const word = words[at]!;
    if (span) {
      if (span.thing && !denies) named.push(span.thing.text);
      if (span.amount && !denies && !take(told, 'amount', span.amount)) return undefined;
      before = span.amount ? 'amount' : 'name';
      denies = false;
      at = span.to;
      continue;
    }
    at += 1;
    if (DENIES.test(word)) denies = true;
    else if (isHue(word)) {
      if (!denies) hues.push(word);
      denies = false;
      before = 'hue';
    } else if (FILLING.has(word)) before = before === 'amount' ? before : word;
    else if (takesWord(word, { told: denies ? {} : told, before })) {
      denies = false;
      before = word;
    } else return undefined;
  }
  return { ...told, named, hues };
}

/** An oil by its own name, which a colour may be wetted in: "in sweet almond". */
function oilAlone(text: string): string | undefined {
  const name = text
    .replace(
      /^(?:in|with|en|con|i|ive|have|got|tengo|uso|use|using|solo|only|just|the|el|de|hay| )+(?= )/u,
      '',
    )
    .replace(/ (?:in|left|here|oil|nomas|en casa)$/u, '')
    .trim();
  return name.split(' ').length <= 3 && knownOil(name) !== undefined ? name : undefined;
}

/** Behind "and", "y". */
const GOES_ON = /^(?:for|with|in|para|con|en) /u;
/** "The pink one": no figure. */
const ONE_OF_THEM = /(?<=\p{L} )ones?$/u;

/** Depth, multiples and marks, which are phrases and no words; and the text without them. */
function phrasesIn({ text, leads }: Opened): { readonly told: SlotsTold; readonly rest: string } {
  const told: SlotsTold = {};
  let rest = text;
  const isMarked = MARKS.test(rest) || leads.includes('no') || (leads.length > 0 && GOES_ON.test(rest));
  MARKS.lastIndex = 0;
  rest = rest.replace(MARKS, ' ').replace(ASKED_AGAIN, ' ').replace(ONE_OF_THEM, ' ');
  const drop = (pattern: RegExp): boolean => {
    const dropped = rest.replace(pattern, ' ');
    const isThere = dropped !== rest;
    rest = dropped;
    return isThere;
  };
  if (drop(LIGHTER)) told.depth = 'lighter';
  else if (drop(DARKER)) told.depth = 'darker';
  if (told.depth !== undefined) rest = rest.replace(LIKENED, ' ');
  for (const [per, amount] of PER_WEIGHT) rest = rest.replace(per, amount);
  const times = TIMES.find(([pattern]) => drop(pattern))?.[1];
  if (times !== undefined) told.times = times;
  const parts = IN_PARTS.exec(rest)?.[1];
  if (parts !== undefined && times === undefined) {
    told.share = 1 / (NUMBERS[parts] ?? Number(parts));
    drop(IN_PARTS);
  }
  // "Half a kilo for me, pale": a shade of its own, and no part of a colour's name.
  if (told.depth === undefined && drop(PALE_AT_END)) told.strength = 'pastel';
  else if (told.depth === undefined && rest.includes(' ') && drop(DEEP_AT_END)) told.strength = 'full';
  if (isMarked) told.isMarked = true;
  return { told, rest: rest.replace(/\s+/gu, ' ').trim() };
}

/** A kind alone has a name too: "the oxide", "the clay". */
const withKind = (words: Words, things: readonly NamedThing[]): readonly Span[] => {
  const kind = things.length === 0 ? kindAlone(words) : undefined;
  if (kind === undefined) return [];
  const at = words.words.findIndex(word => kindAlone({ ...words, words: [word] }) !== undefined);
  // Spanish names of micas hold "óxido de hierro" too; the English name is of the oxides alone.
  const text = kind === 'oxido de hierro' ? 'iron oxide' : kind;
  return [{ from: at, to: at + 1, thing: { text, from: at, to: at + 1, colourants: [] } }];
};

/** "Pastel", "full strength", "half strength" and nothing more. */
function strengthAlone(words: Words): string | undefined {
  const strength = strengthIn(words, []);
  const others = words.words.filter(word => !FILLING.has(word));
  return strength !== undefined && others.length <= 2 && !others.some(isHue) ? strength : undefined;
}

/**
 * What a turn tells of what is to be changed, where it tells nothing else; undefined as soon as one of its words has no place.
 * `turn`: without what opens and ends it. Pure.
 * @example slotsOf(openedTurn('ok and for 3 cups')!)?.amount?.text // '3 cups'
 */
export function slotsOf(opened: Opened): Slots | undefined {
  const turn = { ...opened, text: opened.text.replace(REASON, '').replace(SCALE, '').replace(SERVES, '') };
  const towards = TOWARDS.exec(turn.text)?.[1];
  if (towards !== undefined && isHue(towards)) return { named: [], hues: [], towards, isMarked: true };
  const { told, rest } = phrasesIn(turn);
  const isMarked = told.isMarked === true;
  if (rest === '') return { ...told, named: [], hues: [], isMarked };
  const region = regionIn(rest);
  const words = wordsOf(rest);
  if (region !== undefined && words.words.length <= 4)
    return { ...told, named: [], hues: [], region, isMarked };
  const oil = oilAlone(rest);
  if (oil !== undefined) return { ...told, named: [], hues: [], carrier: oil, isMarked };
  const strength = told.times === undefined && told.depth === undefined ? strengthAlone(words) : undefined;
  if (strength !== undefined) return { ...told, named: [], hues: [], strength, isMarked };
  const things = thingsIn(words).filter(({ text }) => !LIQUID.test(text));
  const amounts = amountsIn(words, things);
  const spans: readonly Span[] = [
    ...things.map(thing => ({ from: thing.from, to: thing.to, thing })),
    ...amounts.map(amount => ({ from: amount.from, to: amount.to, amount })),
    ...withKind(words, things),
  ];
  const all = placed(words, spans, told);
  if (all?.percent !== undefined && all.figure !== undefined) return undefined;
  // "How much is a teaspoon in grams" is a question of its own.
  if (all?.amount?.of === 'powder' && all.unit !== undefined) return undefined;
  return all && { ...all, named: all.named ?? [], hues: all.hues ?? [], isMarked };
}
