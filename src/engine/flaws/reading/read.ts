import { groupedBy } from '../../grouped.ts';
import { readOnce } from '../../remembered.ts';
import { cut } from '../../text/excerpt.ts';
import { LONGEST_WORDS, type Token, tokenise } from '../../text/tokens.ts';
import { whenAsked } from '../../when-asked.ts';
import type { ColourRate } from '../batch-numbers.ts';
import type { Evidence } from '../diagnosis.ts';
import { FINDINGS } from '../findings.ts';
import { colourChanges } from './colour-change.ts';
import { keyOf, mentions } from './concepts.ts';
import { doseEvidence, type NumberSays } from './dose-evidence.ts';
import { measuredIn } from './measured.ts';
import { compile, type Match, matches } from './pattern.ts';
import { DONE_PATTERNS } from './patterns/done.ts';
import { FEEL_PATTERNS } from './patterns/feel.ts';
import { LOOKS_PATTERNS } from './patterns/looks.ts';
import { SWIRL_AND_SHAPE_PATTERNS } from './patterns/swirl-and-shape.ts';
import { polarity } from './polarity.ts';
import { carrierEvidence, settingEvidence } from './setting-evidence.ts';
import { type Gist, gist } from './wording.ts';

const patterns = whenAsked(() =>
  compile(LOOKS_PATTERNS, FEEL_PATTERNS, DONE_PATTERNS, SWIRL_AND_SHAPE_PATTERNS),
);
const GUESSED = 0.78;
const CONTRADICTED = 0.75;
const QUOTE_LENGTH = 80;

/** What a text says, as soft evidence, one entry a finding. */
export type WordsRead = {
  readonly evidence: readonly Evidence[];
  readonly gist: Gist;
  /** Colours whose spoons and portion the words both tell. */
  readonly rates: readonly ColourRate[];
  readonly cut: boolean;
};

/** Reads a member's description, English or Spanish, into findings. Never throws; reads the first 5,000 characters. */
export const readWords = readOnce((words): WordsRead => {
  const cut = words.length > LONGEST_WORDS;
  const text = cut ? words.slice(0, LONGEST_WORDS) : words;
  const tokens = tokenise(text);
  const found = mentions(tokens);
  const places = new Map<string, { from: number; to: number }[]>();
  const put = (name: string, from: number, to: number) => {
    const all = places.get(name);
    if (all) all.push({ from, to });
    else places.set(name, [{ from, to }]);
  };
  tokens.forEach((token, at) => {
    put(`'${keyOf(token)}`, at, at + 1);
  });
  for (const mention of found) put(mention.concept, mention.from, mention.to);
  const reading = polarity(tokens, found);
  const patterned = matches(patterns(), places, reading);
  // Lye changes a colour within days: what took weeks was light, air or scent.
  const isLate = patterned.some(({ finding, present }) => finding === 'after-weeks' && present);
  const said = isLate ? patterned : [...patterned, ...colourChanges(found, reading)];
  const amounts = measuredIn(tokens);
  const numbers = [
    ...doseEvidence(tokens, found, amounts),
    ...carrierEvidence(tokens, amounts),
    ...settingEvidence(tokens),
  ];
  return {
    evidence: withNumbers(settle(said, tokens, text), numbers, tokens, text),
    gist: gist(tokens, found, reading),
    rates: ratesIn(numbers),
    cut,
  };
});

/** Each rate once, though it speaks of several findings. */
function ratesIn(numbers: readonly NumberSays[]): readonly ColourRate[] {
  const rates = new Map(numbers.flatMap(({ rate, from }) => (rate ? [[from, rate] as const] : [])));
  return [...rates.values()];
}

/** One entry a finding: what is said once beats silence, and a contradiction is believed less. */
function settle(all: readonly Match[], tokens: readonly Token[], text: string): Evidence[] {
  const byFinding = groupedBy(all, match => match.finding);
  return [...byFinding].map(([finding, said]) => {
    const present = said.filter(match => match.present);
    const absent = said.length > present.length;
    const { said: trusted, denied } = FINDINGS[finding];
    const best = present.find(match => !match.guessed) ?? present[0] ?? said[0]!;
    let probability: number =
      present.length === 0 ? denied : best.guessed ? Math.min(trusted, GUESSED) : trusted;
    if (present.length > 0 && absent) probability = Math.min(probability, CONTRADICTED);
    return { finding, probability, via: 'words', from: quote(best, tokens, text) };
  });
}

/** A number outweighs the words around it: "a lot, half a teaspoon". The last number on a finding holds. */
function withNumbers(
  words: readonly Evidence[],
  numbers: readonly NumberSays[],
  tokens: readonly Token[],
  text: string,
): Evidence[] {
  const all = new Map(words.map(item => [item.finding, item]));
  for (const { finding, probability, from, to } of numbers)
    all.set(finding, { finding, probability, via: 'words', from: quote({ from, to }, tokens, text) });
  return [...all.values()];
}

function quote(
  match: { readonly from: number; readonly to: number },
  tokens: readonly Token[],
  text: string,
): string {
  const words = text.slice(tokens[match.from]!.start, tokens[match.to - 1]!.end).replace(/\s+/g, ' ');
  return cut(words, QUOTE_LENGTH);
}
