import { isMoreTelling, type Needs, needsOf } from './needs.ts';

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

/**
 * A text of which many patterns are asked. One is only run where the text holds what it needs: an engine compiles a pattern when it is
 * first run, about a millisecond for a long one, which is most of what a first question would wait for.
 */
export class TextToFit {
  readonly #text: string;
  readonly #held = new Map<readonly string[], boolean>();

  constructor(text: string) {
    this.#text = text;
  }

  /** As the pattern's own `test`. */
  fits(pattern: RegExp): boolean {
    return needsKept(pattern).every(list => this.#holdsOneOf(list)) && pattern.test(this.#text);
  }

  #holdsOneOf(list: readonly string[]): boolean {
    const before = this.#held.get(list);
    if (before !== undefined) return before;
    const holds = list.some(one => this.#text.includes(one));
    this.#held.set(list, holds);
    return holds;
  }
}
