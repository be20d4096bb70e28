/** What a text must hold before a pattern can fit it: of every list at least one. An empty one says nothing. */
export type Needs = readonly (readonly string[])[];

/** Letters fewer than these stand in nearly every text. */
const SHORTEST = 2;

/** A part of a pattern: letters as they are, what takes no room, or something of which only this much is known. */
type Part =
  | { readonly kind: 'letters'; readonly letters: string }
  | { readonly kind: 'place' }
  | { readonly kind: 'other'; readonly needs: Needs };

const PLACE: Part = { kind: 'place' };
const ANYTHING: Part = { kind: 'other', needs: [] };

/** What stands behind a backslash and is no letter of its own; with what belongs to it. */
const ESCAPES: readonly (readonly [escape: RegExp, part: Part])[] = [
  [/[bB]/y, PLACE],
  [/[dDwWsSnrtfv\d]|[pP]\{[^}]*\}|k<[^>]*>|u(?:\{[^}]*\}|[\da-fA-F]{4})|x[\da-fA-F]{2}|c[a-zA-Z]/y, ANYTHING],
];

/** Letters that nothing is said of behind them, or one; a class, or any letter. */
const LETTERS = /[^\\[\](){}|.*+?^$]+(?![*+?{])/y;
const LETTER = /[^\\[\](){}|.*+?^$]/y;
const CLASS = /\[(?:\\.|[^\]\\])*\]|\./y;
const QUANTIFIER = /(?:[*+?]|\{\d+(?:,\d*)?\})\??/y;

/** How a bracket begins: one that must not fit says nothing, whatever it holds. */
const OPENINGS: readonly (readonly [opening: RegExp, kind: 'needed' | 'forbidden'])[] = [
  [/\?<?!/y, 'forbidden'],
  [/\?(?:<?=|:|<\w+>)/y, 'needed'],
];

/** In how many letters, at least, and by how few of them something is found: the more telling of two lists. */
export const isMoreTelling = (one: readonly string[], other: readonly string[]): boolean => {
  const shortest = (list: readonly string[]) => Math.min(...list.map(({ length }) => length));
  return shortest(one) === shortest(other) ? one.length < other.length : shortest(one) > shortest(other);
};

/** Of several, one fits: the most telling list of each, as one. */
function needsOfOne(choices: readonly Needs[]): Needs {
  const [only] = choices;
  if (choices.length === 1) return only!;
  const telling = choices.map(needs =>
    needs.reduce<readonly string[] | undefined>(
      (best, list) => (best === undefined || isMoreTelling(list, best) ? list : best),
      undefined,
    ),
  );
  return telling.every(list => list !== undefined) ? [[...new Set(telling.flat())]] : [];
}

/** Reads a pattern's source from left to right (ECMA-262, 22.2.1). */
class PatternReader {
  readonly #source: string;
  #at = 0;

  constructor(source: string) {
    this.#source = source;
  }

  /** Choices with a bar between them. Throws where a bracket begins that is not known. */
  choices(): Needs {
    const choices = [this.#sequence()];
    while (this.#source[this.#at] === '|') {
      this.#at += 1;
      choices.push(this.#sequence());
    }
    return needsOfOne(choices);
  }

  #sequence(): Needs {
    const needs: (readonly string[])[] = [];
    let run = '';
    const endRun = () => {
      if (run.length >= SHORTEST) needs.push([run]);
      run = '';
    };
    while (!this.#isAtEnd()) {
      const part = this.#part();
      const least = this.#least();
      if (part.kind === 'place') continue;
      if (part.kind === 'letters' && least !== 0) run += part.letters;
      if (part.kind === 'letters' && least === undefined) continue;
      endRun();
      if (part.kind === 'other' && least !== 0) needs.push(...part.needs);
    }
    endRun();
    return needs;
  }

  #isAtEnd(): boolean {
    const next = this.#source[this.#at];
    return next === undefined || next === '|' || next === ')';
  }

  #part(): Part {
    const letters = this.#taken(LETTERS) ?? this.#taken(LETTER);
    if (letters !== undefined) return { kind: 'letters', letters };
    switch (this.#source[this.#at]) {
      case '\\':
        this.#at += 1;
        return this.#escaped();
      case '(':
        this.#at += 1;
        return this.#bracket();
      case '^':
      case '$':
        this.#at += 1;
        return PLACE;
      default:
        // A closing bracket that stands for itself is passed over.
        if (this.#taken(CLASS) === undefined) this.#at += 1;
        return ANYTHING;
    }
  }

  #escaped(): Part {
    const [, part] = ESCAPES.find(([written]) => this.#taken(written) !== undefined) ?? [];
    return part ?? { kind: 'letters', letters: this.#taken(/./y)! };
  }

  #bracket(): Part {
    const [, kind] = OPENINGS.find(([opening]) => this.#taken(opening)) ?? [];
    if (kind === undefined && this.#source[this.#at] === '?') throw new SyntaxError('a bracket not known');
    const needs = this.choices();
    this.#at += 1;
    return kind === 'forbidden' ? PLACE : { kind: 'other', needs };
  }

  /** How often, at least, what was read before stands there; undefined where that is not said. */
  #least(): number | undefined {
    const said = this.#taken(QUANTIFIER);
    if (said === undefined) return undefined;
    if (said.startsWith('{')) return Number.parseInt(said.slice(1), 10);
    return said.startsWith('+') ? 1 : 0;
  }

  /** What stands here and fits; it is behind us then. */
  #taken(here: RegExp): string | undefined {
    here.lastIndex = this.#at;
    const [taken] = here.exec(this.#source) ?? [];
    this.#at += taken?.length ?? 0;
    return taken;
  }
}

/**
 * A text in the letters in which {@link needsOf} tells what a pattern needs that takes capitals for small ones. The long s is the one
 * letter that such a pattern takes for one of ours though it is a small one already (Unicode, CaseFolding.txt, status C).
 */
export const inSmallLetters = (text: string): string => text.toLowerCase().replaceAll('\u{17F}', 's');

/** Letters of which a pattern that takes capitals for small ones fits no others but their capitals, and the long s. */
const PLAIN_LETTERS = /^[\x20-\x7e\u{e0}-\u{f6}\u{f8}-\u{fe}]*$/u;

/**
 * What a text must hold, as it stands, before a pattern can fit it; nothing where the pattern is written in a way that is not read
 * here. Of one that takes capitals for small letters: what the text must hold {@link inSmallLetters}. Pure.
 * @example needsOf(/\b(?:lye|naoh)\b.*\bspilt?\b/u) // [['lye', 'naoh'], ['spil']]
 */
export function needsOf({ source, flags }: RegExp): Needs {
  // Half a pair of surrogates is no letter.
  if (/v/.test(flags) || /[\uD800-\uDFFF]/.test(source)) return [];
  try {
    const needs = new PatternReader(source).choices();
    if (!flags.includes('i')) return needs;
    return needs
      .map(list => list.map(one => one.toLowerCase()))
      .filter(list => list.every(one => PLAIN_LETTERS.test(one)));
  } catch {
    return [];
  }
}
