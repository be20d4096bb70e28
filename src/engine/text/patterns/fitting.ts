import { inSmallLetters, isMoreTelling, type Needs, needsOf } from './needs.ts';

/** Lists that several patterns need are one, so that a text is looked through once for each. */
const lists = new Map<string, readonly string[]>();
const known = new WeakMap<RegExp, Needs>();

function needsKept(pattern: RegExp): Needs {
  const kept = known.get(pattern);
  if (kept) return kept;
  const needs = needsOf(pattern)
    // What is held most seldom first: most patterns are left out by it.
    .toSorted((one, other) => Number(isMoreTelling(other, one)) - Number(isMoreTelling(one, other)))
    .map(list => {
      const name = list.join('|');
      const same = lists.get(name) ?? list;
      lists.set(name, same);
      return same;
    });
  known.set(pattern, needs);
  return needs;
}

/** A text as it stands, or in small letters, and which lists it was looked through for. */
class Letters {
  readonly #text: string;
  readonly #held = new Map<readonly string[], boolean>();

  constructor(text: string) {
    this.#text = text;
  }

  holdOneOf(list: readonly string[]): boolean {
    const before = this.#held.get(list);
    if (before !== undefined) return before;
    const holds = list.some(one => this.#text.includes(one));
    this.#held.set(list, holds);
    return holds;
  }
}

/**
 * A text of which many patterns are asked. One is only run where the text holds what it needs: an engine compiles a pattern when it is
 * first run, about a millisecond for a long one, which is most of what a first question would wait for; and one that looks behind
 * itself at every letter is slower than a look for its words.
 */
export class TextToFit {
  readonly #text: string;
  readonly #asItStands: Letters;
  #small: Letters | undefined;

  constructor(text: string) {
    this.#text = text;
    this.#asItStands = new Letters(text);
  }

  /** As the pattern's own `test`; a pattern that keeps a place in its text has none. */
  fits(pattern: RegExp): boolean {
    return this.mayFit(pattern) && pattern.test(this.#text);
  }

  /** What the first of the patterns that fits finds; undefined where none does. */
  firstOf(patterns: readonly RegExp[]): string | undefined {
    for (const pattern of patterns) {
      const found = this.mayFit(pattern) ? pattern.exec(this.#text)?.[0] : undefined;
      if (found !== undefined) return found;
    }
    return undefined;
  }

  /** Whether the text holds all that the pattern needs: where it does not, the pattern fits it nowhere. */
  mayFit(pattern: RegExp): boolean {
    const needs = needsKept(pattern);
    if (needs.length === 0) return true;
    const letters = pattern.ignoreCase ? this.#inSmallLetters() : this.#asItStands;
    return needs.every(list => letters.holdOneOf(list));
  }

  #inSmallLetters(): Letters {
    this.#small ??= new Letters(inSmallLetters(this.#text));
    return this.#small;
  }
}

/** What stands in a pattern's place: as the second argument of `replace`. */
type Put = string | ((whole: string, ...rest: string[]) => string);
/** A pattern of all places where it fits, and what is put there. */
export type Rewriting = readonly [pattern: RegExp, put: Put];

/**
 * A text in which one pattern after another is replaced, as by `replace`; most of them find nothing and are not run, since the text
 * lacks what they need.
 */
export function rewritten(text: string, rewritings: readonly Rewriting[]): string {
  let said = text;
  let asked = new TextToFit(said);
  for (const [pattern, put] of rewritings) {
    if (!asked.mayFit(pattern)) continue;
    const now = said.replace(pattern, put as string);
    if (now === said) continue;
    said = now;
    asked = new TextToFit(said);
  }
  return said;
}
