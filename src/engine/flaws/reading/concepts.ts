import { COLOURS } from './lexicon/colours.ts';
import { FEEL } from './lexicon/feel.ts';
import { GRAMMAR } from './lexicon/grammar.ts';
import { LOOKS } from './lexicon/looks.ts';
import { MAKING } from './lexicon/making.ts';
import { NAMED } from './lexicon/named.ts';
import { PLAIN_WORDS } from './lexicon/plain.ts';
import { speller } from './spelling.ts';
import { stem, type Token, tokenise } from './tokens.ts';

const LEXICON = { ...LOOKS, ...FEEL, ...COLOURS, ...MAKING, ...NAMED, ...GRAMMAR };

/** An idea that a word or phrase of the text stands for. */
export type Concept = keyof typeof LEXICON;

/** Where a concept stands in the text: tokens `from` up to but not including `to`. */
export type Mention = { readonly concept: Concept; readonly from: number; readonly to: number };

/** True where a name in a pattern is a concept; any other name is a plain word. */
export const isConcept = (name: string): name is Concept => Object.hasOwn(LEXICON, name);

type Node = { readonly next: Map<string, Node>; readonly concepts: Concept[] };

const node = (): Node => ({ next: new Map(), concepts: [] });

/** Concepts whose phrases leave the words inside them free to mean something else as well. */
const OPEN = /^(n_|t_|outsidein|thickfast|everywhere|same|drizzle|wipe|highph|carrier|wish|guess|why|vanish)/;

function grow(): { root: Node; words: Set<string> } {
  const root = node();
  const words = new Set<string>();
  for (const [concept, phrases] of Object.entries(LEXICON) as [Concept, string][])
    for (const phrase of phrases.split(', ')) {
      let at = root;
      for (const token of tokenise(phrase)) {
        if (token.kind === 'word') words.add(token.text);
        const key = stem(token.text);
        const child = at.next.get(key) ?? node();
        at.next.set(key, child);
        at = child;
      }
      if (!at.concepts.includes(concept)) at.concepts.push(concept);
    }
  return { root, words };
}

const { root, words } = grow();
const stems = new Set([...words].map(stem));
const plain = new Set(PLAIN_WORDS);
const plainStems = new Set(PLAIN_WORDS.map(stem));
const correct = speller(words, plain);

/** The word of the trade a misspelling was meant for, or undefined where the word is right or plain. */
export function meant(word: string): string | undefined {
  return stems.has(stem(word)) || plain.has(word) || plainStems.has(stem(word)) ? undefined : correct(word);
}

/** The key a token is looked up by, after putting a slip of the thumb right. */
export function keyOf(token: Token): string {
  return token.kind === 'word' ? stem(meant(token.text) ?? token.text) : token.text;
}

/** Finds every concept in the tokens: the longest phrase at each place, and what its words mean alone where they may. */
export function mentions(tokens: readonly Token[]): Mention[] {
  const keys = tokens.map(keyOf);
  const found: Mention[] = [];
  let shut = 0;
  for (let from = 0; from < keys.length; from += 1) {
    if (from < shut) continue;
    let at: Node | undefined = root;
    let best: Mention[] = [];
    const shorter: Mention[] = [];
    for (let to = from; to < keys.length && at; to += 1) {
      at = at.next.get(keys[to]!);
      if (!at || at.concepts.length === 0) continue;
      shorter.push(...best);
      best = at.concepts.map(concept => ({ concept, from, to: to + 1 }));
    }
    if (best.length === 0) continue;
    found.push(...best);
    const closed = best.some(mention => !OPEN.test(mention.concept));
    if (closed) shut = best[0]!.to;
    else found.push(...shorter);
  }
  return found;
}
