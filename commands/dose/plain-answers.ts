import { givenAgain } from '../../src/conversation/faces/given-again.ts';
import type { ReplyWith } from '../../src/conversation/reply.ts';
import { MEASURES, type Measures } from '../../src/engine/quantities/units.ts';
import type { DoseAnswerData } from '../../src/presenting/dose-data.ts';
import type { Words } from '../../src/words/index.ts';
import type { DoseOptions } from './asked.ts';

type DoseReply = ReplyWith<DoseAnswerData>;

/** So many answers are kept, some 10 KB each; then all are made anew. */
const MOST_KEPT = 200;
/** Longer questions are hardly asked twice, UTF-16 units. */
const LONGEST = 300;

/** Answers that hang on the words of the question, the language and the kind of spoons alone. */
const kept = new Map<string, DoseReply>();
/** So many questions are known to have been asked, by their names; then all are forgotten. */
const MOST_ASKED = 2_000;
const asked = new Set<string>();

/** False for the first who asks it: most questions come once, and what is kept for nobody costs the collector. */
function isAskedAgain(name: string): boolean {
  if (asked.has(name)) return true;
  if (asked.size >= MOST_ASKED) asked.clear();
  asked.add(name);
  return false;
}

/** Under what an answer is kept; undefined for one that a recipe or somebody's own spoons decide too. */
function nameOf(options: DoseOptions, measures: Measures, { language }: Words): string | undefined {
  if (options.recipe !== undefined || MEASURES[measures.id] !== measures) return undefined;
  const { colourant, portion, strength, carrier, premix, with: others } = options;
  const name = JSON.stringify([language, measures.id, colourant, portion, strength, carrier, premix, others]);
  return name.length > LONGEST ? undefined : name;
}

/** The answer to the same question asked before, by whomever. Whose jars and reports it may hang on is for the caller to look up. */
export function plainAnswer(options: DoseOptions, measures: Measures, say: Words): DoseReply | undefined {
  const name = nameOf(options, measures, say);
  return name === undefined ? undefined : kept.get(name);
}

/** Keeps an answer in which no jar, report or recipe had a part: members ask for the same colours in the same cups. */
export function keepPlain(
  options: DoseOptions,
  { measures, say, reply }: { readonly measures: Measures; readonly say: Words; readonly reply: DoseReply },
): void {
  const name = nameOf(options, measures, say);
  if (name === undefined || !isAskedAgain(name)) return;
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(name, givenAgain(reply));
}
