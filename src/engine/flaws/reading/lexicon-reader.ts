import { speller } from '../../text/spelling/speller.ts';
import { stem, type Token, tokenise } from '../../text/tokens.ts';
import { whenAsked } from '../../when-asked.ts';

/** Ideas by name, each with the words and phrases that stand for it, parted by `, `. */
export type Lexicon<Name extends string> = Readonly<Record<Name, string>>;

/** Where an idea stands in the text: tokens `from` up to but not including `to`. */
export type Mentioned<Name extends string = string> = {
  readonly concept: Name;
  readonly from: number;
  readonly to: number;
};

/** Finds the ideas of one lexicon in a text. */
export type LexiconReader<Name extends string> = {
  /** True where a name in a pattern is an idea of this lexicon; any other name is a plain word. */
  readonly isConcept: (name: string) => name is Name;
  /** Every word its phrases are made of. */
  readonly words: () => ReadonlySet<string>;
  /** The word of the lexicon a misspelling was meant for, or undefined where the word is right or plain. */
  readonly meant: (word: string) => string | undefined;
  /** The key a token is looked up by, after putting a slip of the thumb right. */
  readonly keyOf: (token: Token) => string;
  /** Every idea in the tokens: the longest phrase at each place, and what its words mean alone where they may. */
  readonly mentions: (tokens: readonly Token[]) => Mentioned<Name>[];
};

/** Most nodes end a phrase or begin longer ones, and not both: what a node lacks it has no room for. */
type Node<Name> = { next: Map<string, Node<Name>> | undefined; concepts: readonly Name[] };

const NONE: readonly never[] = [];
const node = <Name>(): Node<Name> => ({ next: undefined, concepts: NONE });

function grow<Name extends string>(lexicon: Lexicon<Name>): { root: Node<Name>; words: Set<string> } {
  const root = node<Name>();
  const words = new Set<string>();
  for (const [concept, phrases] of Object.entries(lexicon) as [Name, string][])
    for (const phrase of phrases.split(', ')) {
      let at = root;
      for (const token of tokenise(phrase)) {
        if (token.kind === 'word') words.add(token.text);
        const key = stem(token.text);
        at.next ??= new Map();
        const child = at.next.get(key) ?? node<Name>();
        at.next.set(key, child);
        at = child;
      }
      if (!at.concepts.includes(concept)) at.concepts = [...at.concepts, concept];
    }
  return { root, words };
}

/**
 * A reader of one lexicon, which is built when a text is first read. `plain` are words that are never taken for misspellings; ideas that `open` fits leave the
 * words inside their phrases free to mean something else as well; slips of the thumb are put right for the words of
 * those ideas that `spelt` fits, of all unless given.
 */
export function lexiconReader<Name extends string>(
  lexicon: Lexicon<Name>,
  {
    plain: plainWords,
    open,
    spelt,
  }: { readonly plain: () => readonly string[]; readonly open: RegExp; readonly spelt?: RegExp },
): LexiconReader<Name> {
  const grown = whenAsked(() => grow(lexicon));
  const words = () => grown().words;
  const correcting = whenAsked(() => {
    const ideas = Object.entries(lexicon) as [Name, string][];
    const spellable = spelt
      ? grow(Object.fromEntries(ideas.filter(([name]) => spelt.test(name))) as Lexicon<Name>).words
      : words();
    const plain = new Set(plainWords());
    return {
      stems: new Set([...words()].map(stem)),
      plain,
      plainStems: new Set([...plain].map(stem)),
      correct: speller(spellable, plain),
    };
  });
  const meant = (word: string) => {
    const { stems, plain, plainStems, correct } = correcting();
    return stems.has(stem(word)) || plain.has(word) || plainStems.has(stem(word)) ? undefined : correct(word);
  };
  const keyOf = (token: Token) =>
    token.kind === 'word' ? stem(meant(token.text) ?? token.text) : token.text;
  return {
    isConcept: (name): name is Name => Object.hasOwn(lexicon, name),
    words,
    meant,
    keyOf,
    mentions: tokens => mentionsIn(tokens.map(keyOf), grown().root, open),
  };
}

function mentionsIn<Name extends string>(
  keys: readonly string[],
  root: Node<Name>,
  open: RegExp,
): Mentioned<Name>[] {
  const found: Mentioned<Name>[] = [];
  let shut = 0;
  for (let from = 0; from < keys.length; from += 1) {
    if (from < shut) continue;
    let at: Node<Name> | undefined = root;
    let best: Mentioned<Name>[] = [];
    const shorter: Mentioned<Name>[] = [];
    for (let to = from; to < keys.length && at; to += 1) {
      at = at.next?.get(keys[to]!);
      if (!at || at.concepts.length === 0) continue;
      shorter.push(...best);
      best = at.concepts.map(concept => ({ concept, from, to: to + 1 }));
    }
    if (best.length === 0) continue;
    found.push(...best);
    const closed = best.some(mention => !open.test(mention.concept));
    if (closed) shut = best[0]!.to;
    else found.push(...shorter);
  }
  return found;
}
