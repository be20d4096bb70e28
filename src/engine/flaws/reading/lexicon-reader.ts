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

/**
 * A place in the phrases: which ideas end here, and where each further word leads. Of a lexicon of ten thousand phrases most
 * nodes end one, and most of the others have one word to go on with: what a node lacks it has no room for.
 */
type Node<Name> = {
  next: Map<string, Node<Name>> | { readonly key: string; readonly child: Node<Name> } | undefined;
  concepts: readonly Name[];
};

const NONE: readonly never[] = [];
const node = <Name>(): Node<Name> => ({ next: undefined, concepts: NONE });

function childOf<Name>({ next }: Node<Name>, key: string): Node<Name> | undefined {
  if (next === undefined) return undefined;
  if (next instanceof Map) return next.get(key);
  return next.key === key ? next.child : undefined;
}

function childAdded<Name>(at: Node<Name>, key: string): Node<Name> {
  const child = node<Name>();
  if (at.next === undefined) at.next = { key, child };
  else {
    if (!(at.next instanceof Map)) at.next = new Map([[at.next.key, at.next.child]]);
    at.next.set(key, child);
  }
  return child;
}

const ideasOf = <Name extends string>(lexicon: Lexicon<Name>) => Object.entries(lexicon) as [Name, string][];

function grow<Name extends string>(lexicon: Lexicon<Name>): Node<Name> {
  const root = node<Name>();
  for (const [concept, phrases] of ideasOf(lexicon)) {
    const alone = [concept];
    for (const phrase of phrases.split(', ')) {
      let at = root;
      for (const token of tokenise(phrase)) {
        const key = stem(token.text);
        at = childOf(at, key) ?? childAdded(at, key);
      }
      if (at.concepts.length === 0) at.concepts = alone;
      else if (!at.concepts.includes(concept)) at.concepts = [...at.concepts, concept];
    }
  }
  return root;
}

/** Every word that phrases are made of. */
function wordsOf(phrases: Iterable<string>): Set<string> {
  const words = new Set<string>();
  for (const one of phrases)
    for (const phrase of one.split(', '))
      for (const token of tokenise(phrase)) if (token.kind === 'word') words.add(token.text);
  return words;
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
  const root = whenAsked(() => grow(lexicon));
  // Others ask a lexicon for its words alone.
  const words = whenAsked(() => wordsOf(Object.values<string>(lexicon)));
  const correcting = whenAsked(() => {
    const spellable = spelt
      ? wordsOf(ideasOf(lexicon).flatMap(([name, phrases]) => (spelt.test(name) ? [phrases] : [])))
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
    mentions: tokens => mentionsIn(tokens.map(keyOf), root(), open),
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
      at = childOf(at, keys[to]!);
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
