import { foldToken, stem } from '../../text/tokens.ts';
import type { FindingId } from '../findings.ts';
import { isConcept } from './concepts.ts';
import type { Reading, Standing } from './polarity.ts';

/** Patterns of one subject, each finding's separated by `; `. The grammar stands in `patterns/looks.ts`. */
export type FindingPatterns = { readonly [Id in FindingId]?: string };

/** A term of a pattern: any of these concepts or plain words, wanted as there, as denied or as hoped for. */
type Term = { readonly any: readonly string[]; readonly as: Standing };

export type Pattern<Id extends string = FindingId> = {
  readonly finding: Id;
  readonly against: boolean;
  readonly within: number;
  readonly terms: readonly Term[];
  readonly shunned: readonly string[];
};

const WITHIN = 6;
const SHUN_WITHIN = 4;

/** The key of a plain word among the places of a text. */
export const wordKey = (word: string): string => `'${stem(foldToken(word))}`;

/** Any hue a member may name, for patterns that hold whatever the colour. */
const HUE =
  'blue|purple|pink|red|green|teal|yellow|black|orange|peach|brown|colour|onecolour|colourant|carbon';

type IsConcept = (name: string) => boolean;

const namesOf = (term: string, isKnown: IsConcept): string[] =>
  term
    .replace('@hue', HUE)
    .split('|')
    .map(name => (isKnown(name) ? name : wordKey(name)));

function compileOne<Id extends string>(finding: Id, text: string, isKnown: IsConcept): Pattern<Id> {
  const names = (term: string) => namesOf(term, isKnown);
  let within = WITHIN;
  let against = false;
  const terms: Term[] = [];
  const shunned: string[] = [];
  for (const part of text.trim().split(/\s+/)) {
    let word = part;
    if (word.startsWith('^')) {
      against = true;
      word = word.slice(1);
    }
    if (word === '') continue;
    if (word.startsWith('~')) within = Number(word.slice(1));
    else if (word.startsWith('!')) shunned.push(...names(word.slice(1)));
    else if (word.startsWith('-')) terms.push({ any: names(word.slice(1)), as: 'no' });
    else if (word.startsWith('?')) terms.push({ any: names(word.slice(1)), as: 'unreal' });
    else terms.push({ any: names(word), as: 'yes' });
  }
  return { finding, against, within, terms, shunned };
}

/** Compiles tables of patterns over the lexicon of flaws; done once. */
export function compile(...tables: readonly FindingPatterns[]): Pattern[] {
  return tables.flatMap(table => compileOver<FindingId>(table, isConcept));
}

/** Compiles a table of patterns over another lexicon, whose names `isKnown` tells from plain words. */
export function compileOver<Id extends string>(
  table: { readonly [One in Id]?: string },
  isKnown: IsConcept,
): Pattern<Id>[] {
  return (Object.entries(table) as [Id, string][]).flatMap(([finding, all]) =>
    all.split(';').map(text => compileOne(finding, text, isKnown)),
  );
}

/** Where a pattern holds in a text: the tokens it spans, and what it says of its finding. */
export type Match<Id extends string = FindingId> = {
  readonly finding: Id;
  readonly present: boolean;
  readonly guessed: boolean;
  readonly from: number;
  readonly to: number;
};

/** Mentions by concept or word, in order of place. */
export type Places = ReadonlyMap<string, readonly Place[]>;

type Place = { readonly from: number; readonly to: number };

/** The occurrence of any of `names` nearest to `anchor` within reach that shares no token with `taken`. */
function nearest(
  names: readonly string[],
  anchor: Place,
  taken: readonly Place[],
  within: number,
  places: Places,
  ruler: readonly number[],
): Place | undefined {
  let best: Place | undefined;
  let least = within + 1e-9;
  for (const name of names) {
    const all = places.get(name) ?? [];
    for (let i = firstAt(all, anchor.from); i < all.length; i += 1) {
      const far = ruler[all[i]!.from]! - ruler[anchor.from]!;
      if (far > least) break;
      if (far < least && !taken.some(t => overlap(t, all[i]!))) [best, least] = [all[i]!, far];
    }
    for (let i = firstAt(all, anchor.from) - 1; i >= 0; i -= 1) {
      const far = ruler[anchor.from]! - ruler[all[i]!.from]!;
      if (far > least) break;
      if (far < least && !taken.some(t => overlap(t, all[i]!))) [best, least] = [all[i]!, far];
    }
  }
  return best;
}

const overlap = (a: Place, b: Place): boolean => a.from < b.to && b.from < a.to;

function firstAt(all: readonly Place[], from: number): number {
  let low = 0;
  let high = all.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (all[middle]!.from < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

function matchAt<Id extends string>(
  pattern: Pattern<Id>,
  anchor: Place,
  places: Places,
  reading: Reading,
): Match<Id> | undefined {
  const taken: Place[] = [anchor];
  for (const term of pattern.terms.slice(1)) {
    const place = nearest(term.any, anchor, taken, pattern.within, places, reading.ruler);
    if (!place) return undefined;
    taken.push(place);
  }
  if (pattern.shunned.length > 0 && nearest(pattern.shunned, anchor, [], SHUN_WITHIN, places, reading.ruler))
    return undefined;
  const standings = taken.map(place => reading.standing[place.to - 1]!);
  const holds = pattern.terms.map((term, i) => standings[i] === term.as);
  const denied = pattern.terms[0]!.as === 'yes' && standings[0] === 'no' && !standings.includes('unreal');
  if (!denied && holds.includes(false)) return undefined;
  return {
    finding: pattern.finding,
    present: denied === pattern.against,
    guessed: reading.guessed[anchor.from]!,
    from: Math.min(...taken.map(place => place.from)),
    to: Math.max(...taken.map(place => place.to)),
  };
}

/** Every place where a pattern holds. Work grows with the text's length: reach is bounded. */
export function matches<Id extends string = FindingId>(
  patterns: readonly Pattern<Id>[],
  places: Places,
  reading: Reading,
): Match<Id>[] {
  return patterns.flatMap(pattern =>
    pattern.terms[0]!.any.flatMap(name => places.get(name) ?? []).flatMap(
      anchor => matchAt(pattern, anchor, places, reading) ?? [],
    ),
  );
}
