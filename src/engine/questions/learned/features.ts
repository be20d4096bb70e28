import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { ideaCounts, pieceCounts, wordCounts } from '../../text/learned/hashes.ts';
import type { Features } from '../../text/learned/model.ts';
import { stem } from '../../text/tokens.ts';
import { OUR_WORDS } from '../fields/soap-words.ts';
import { isOil, type ToldAmount } from '../found/amounts.ts';
import type { Facts } from '../found/facts.ts';
import type { NamedThing } from '../found/names/named-thing.ts';
import type { Words } from '../found/words-of.ts';
import { partsTold } from './parts-told.ts';
import { strangeness } from './strange-words.ts';
import { topicsIn } from './topics.ts';

/** What was found in a question before it is asked which job it is. */
export type Found = {
  readonly things: readonly NamedThing[];
  readonly amounts: readonly ToldAmount[];
  readonly facts: Facts;
};

/** What is named and told in its words alone. */
type Named = Pick<Found, 'things' | 'amounts'>;

/** Words beyond these say little of what is asked. */
const MOST_WORDS = 120;
const MARK = /^[!;,.:()]$/u;

/** Which colourant, how much and which colour do not tell what is asked: each stands as what it is. */
function masked({ words }: Words, { things, amounts }: Named): readonly string[] {
  const said: string[] = [];
  for (let at = 0; at < Math.min(words.length, MOST_WORDS); ) {
    const thing = things.find(({ from, to }) => at >= from && at < to);
    const amount = amounts.find(({ from, to }) => at >= from && at < to);
    const word = words[at]!;
    if (thing) said.push('<thing>');
    else if (amount) said.push(`<${amount.of}>`);
    else if (MARK.test(word)) said.push(...(word === ',' ? ['<,>'] : []));
    else if (word.startsWith('#')) said.push('<hex>');
    else if (/^\d/u.test(word)) said.push('<figure>');
    else if (isOil(words, at)) said.push('<oil>');
    else if (isColourWord(foldedColour(word))) said.push('<colour>');
    else said.push(word);
    at = thing?.to ?? amount?.to ?? at + 1;
  }
  return said;
}

const counted = (name: string, count: number, most: number) => `${name} ${Math.min(count, most)}`;

/** Matters that are none of ours, and whether anything of ours stands beside them. */
function matters(words: readonly string[], { things, facts }: Found): readonly string[] {
  const free = words.filter((_, at) => !things.some(({ from, to }) => at >= from && at < to));
  const topics = topicsIn(free);
  const ours = words.filter(word => OUR_WORDS.test(word)).length;
  const isOurs = ours > 0 || things.length > 0 || facts.oils !== undefined;
  return [
    counted('ours', ours, 2),
    counted('topics', topics.length, 2),
    `${topics.length > 0 ? 'a topic' : 'no topic'}, ${isOurs ? 'ours' : 'nothing of ours'}`,
    ...topics.map(topic => `of ${topic}`),
  ];
}

/** What is named and told, as far as it bears upon what is asked. */
function ideasOf({ words }: Words, found: Found, said: readonly string[]) {
  const { things, amounts, facts } = found;
  const has = (name: string, is: boolean) => (is ? [name] : [`no ${name}`]);
  return [
    counted('things', things.length, 3),
    counted('words', Math.ceil(words.length / 6), 5),
    counted('findings', facts.findings, 2),
    ...['batter', 'oils', 'powder', 'oil', 'unsaid'].flatMap(of =>
      has(
        of,
        amounts.some(one => one.of === of),
      ),
    ),
    dosedInto(amounts),
    ...has('colours', said.includes('<colour>')),
    ...has('oil list', facts.oils !== undefined),
    ...has('target', facts.target !== undefined),
    ...has('region', facts.region !== undefined),
    ...has('strength', facts.strength !== undefined),
    ...has('?', words.includes('?')),
    ...matters(words, found),
    ...partsTold(words, amounts, said),
    lyeAndOils(words, found),
    // How a question begins tells more than the rest of it.
    `first ${said[0]}`,
    `first ${said.slice(0, 2).join(' ')}`,
    `last ${said.at(-1)}`,
  ];
}

/** So much powder in so much batter is a dose, whatever was "used"; so much alone may be off a shelf. */
function dosedInto(amounts: readonly ToldAmount[]): string {
  const powders = amounts.filter(({ of }) => of === 'powder').length;
  const others = amounts.length - powders;
  return `${powders > 0 ? 'powder' : 'no powder'} into ${others > 0 ? 'an amount' : 'none'}`;
}

const LYE =
  /^(?:lye|naoh|koh|sosa|soda|lejia|caustic\p{L}?|hydroxide|hidroxido|potash|potasa|superfat|sobreengrasad\p{L}|saponif\p{L}*)$/u;

/** Whether lye is spoken of, oils are listed, and a colour is named: a bare recipe asks for lye, one with a colour for a plan. */
const lyeAndOils = (words: readonly string[], { things, facts }: Found): string =>
  [
    words.some(word => LYE.test(word)) ? 'lye' : 'no lye',
    facts.oils === undefined ? 'no oils' : 'oils',
    things.length > 0 || facts.target !== undefined ? 'colour' : 'no colour',
  ].join(', ');

/** Chosen, with the ridge's strength, by leaving out one writer at a time. */
const LENGTHS = { words: 1, stems: 1, pieces: 1.2, ideas: 0.6, strange: 0.7 } as const;

const unmarked = (said: readonly string[]): readonly string[] =>
  said.filter(word => word !== '<,>' && word !== '?');

/**
 * A question's words without what is named, told and marked in it.
 * @internal For those who fit the weights.
 */
export const saidIn = (words: Words, found: Named): readonly string[] => unmarked(masked(words, found));

/** A question's words, their stems and pieces, what is named in it, and how many of its words no maker was `known` to use. */
export function featuresOf(words: Words, found: Found, known: ReadonlySet<number>): Features {
  const said = masked(words, found);
  const plain = unmarked(said);
  return [
    { counts: wordCounts(plain), length: LENGTHS.words },
    { counts: wordCounts(plain.map(word => `~${stem(word)}`)), length: LENGTHS.stems },
    { counts: pieceCounts(plain.filter(word => !word.startsWith('<'))), length: LENGTHS.pieces },
    { counts: ideaCounts(ideasOf(words, found, said)), length: LENGTHS.ideas },
    { counts: ideaCounts(strangeness(plain, known)), length: LENGTHS.strange },
  ];
}
