import { unbroken } from '../../over-lines.ts';
import type { Token } from '../../text/tokens.ts';
import type { Concept } from './concepts.ts';
import type { Mentioned } from './lexicon-reader.ts';

/** How the member means a mention: as there, as not there, or as what was hoped for. */
export type Standing = 'yes' | 'no' | 'unreal';

/** The text with each token's standing, its place on a ruler of reading distance, and whether it is guessed. */
export type Reading = {
  readonly standing: readonly Standing[];
  readonly ruler: readonly number[];
  readonly guessed: readonly boolean[];
};

const SMALL = new RegExp(
  unbroken`
    ^(a|an|the|of|in|on|my|is|are|was|were|it|its|to|at|and|i|this|that|some|all|very|so|like|with|for|
    there|got|has|have|had|el|la|los|las|un|una|de|del|en|mi|mis|es|son|y|con|al|se|que|muy|lo|le|me|hay|
    tiene|really|quite|little|tiny|small|all|over|just)$
  `,
  '',
);
const SENTENCE_END = /^(\.{1,}|[;!?\n]|→)$/;
const JOINS = /^(or|nor|ni|o|u)$/;
const STOPS = /^(and|y|e|plus|also|with|con)$/;
/** Begins what came instead of what was hoped for: "supposed to be navy its baby blue". */
const OUTCOME =
  /^(its|is|came|got|ended|turned|looks|looked|instead|quedo|quedaron|parece|salio|salieron|resulto)$/;
const REACH = 7;
const GUESS_REACH = 5;

const ends = (token: Token): boolean => token.kind === 'mark' && SENTENCE_END.test(token.text);

/** True where the comma at `at` only separates the members of a list that a later "or" closes. */
function inList(tokens: readonly Token[], at: number): boolean {
  let words = 0;
  for (let i = at + 1; i < tokens.length && words <= 8; i += 1) {
    const token = tokens[i]!;
    if (token.kind === 'word' && JOINS.test(token.text)) return true;
    if (ends(token) || (token.kind === 'word' && STOPS.test(token.text))) return false;
    if (token.kind === 'word') words += 1;
  }
  return false;
}

/** The token a denial or a wish that opens before `start` no longer reaches. */
function scopeEnd(tokens: readonly Token[], start: number, closes: ReadonlySet<number>): number {
  let words = 0;
  for (let i = start; i < tokens.length; i += 1) {
    const token = tokens[i]!;
    if (ends(token)) return i;
    if (i > start && closes.has(i)) return i;
    if (token.kind === 'mark' && token.text !== '/' && !(token.text === ',' && inList(tokens, i))) return i;
    if (i > start && token.kind === 'word' && STOPS.test(token.text)) return i;
    if (token.kind === 'word') words += 1;
    if (words > REACH) return i;
  }
  return tokens.length;
}

const DENIED_AFTER: ReadonlySet<string> = new Set<Concept>([
  'vanilla',
  'zap',
  'burn',
  'itch',
  'ph',
  'highph',
  'n_ash',
  'n_dos',
  'film',
]);

/**
 * Works out what is affirmed, denied, wished for and guessed, by the mentions named as in `lexicon/grammar.ts`.
 * One pass over tokens and mentions.
 */
export function polarity(tokens: readonly Token[], mentions: readonly Mentioned[]): Reading {
  const standing: Standing[] = tokens.map(() => 'yes');
  const guessed = tokens.map(() => false);
  const starts = (concept: Concept) => mentions.filter(mention => mention.concept === concept);
  // "won't stay on": a phrase that holds its own denial is what it says.
  const whole = mentions.filter(m => m.concept.startsWith('s_') && m.to - m.from > 1);
  const innocent = new Set([...starts('notdeny'), ...whole].flatMap(m => range(m.from, m.to)));
  const closes = new Set([...starts('contrast'), ...starts('why'), ...starts('turn')].map(m => m.from));
  const hardCloses = new Set([...starts('contrast'), ...starts('why')].map(m => m.from));
  for (const wish of starts('wish')) {
    const end = scopeEnd(tokens, wish.to, closes);
    for (let i = wish.to; i < end && !(i > wish.to && OUTCOME.test(tokens[i]!.text)); i += 1)
      standing[i] = 'unreal';
  }
  for (const denial of starts('deny')) {
    if (innocent.has(denial.from)) continue;
    for (let i = denial.to; i < scopeEnd(tokens, denial.to, hardCloses); i += 1) standing[i] = 'no';
  }
  const deniable = new Set(
    mentions.filter(m => DENIED_AFTER.has(m.concept)).flatMap(m => range(m.from, m.to)),
  );
  for (const after of starts('denyafter'))
    for (let i = after.from - 1; i >= Math.max(0, after.from - 4) && !ends(tokens[i]!); i -= 1)
      if (deniable.has(i)) standing[i] = 'no';
  for (const guess of starts('guess'))
    for (let i = guess.to; i < Math.min(tokens.length, guess.to + GUESS_REACH); i += 1) {
      if (ends(tokens[i]!)) break;
      guessed[i] = true;
    }
  questions(tokens, guessed);
  return { standing, ruler: ruler(tokens, new Set(starts('contrast').map(m => m.from))), guessed };
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, i) => from + i);
}

/** What stands in a short question is a guess: "soda ash?" */
function questions(tokens: readonly Token[], guessed: boolean[]): void {
  tokens.forEach((token, at) => {
    if (token.text !== '?') return;
    for (let i = at - 1; i >= Math.max(0, at - 6) && !ends(tokens[i]!) && tokens[i]!.text !== ','; i -= 1)
      guessed[i] = true;
  });
}

/** Reading distance: small words count half, a comma one, a new thought one more, a new sentence four. */
function ruler(tokens: readonly Token[], contrasts: ReadonlySet<number>): number[] {
  let at = 0;
  return tokens.map((token, i) => {
    if (ends(token)) at += 4;
    else if (token.kind === 'mark') at += 1;
    else at += SMALL.test(token.text) ? 0.5 : 1;
    if (contrasts.has(i)) at += 1;
    return at;
  });
}
