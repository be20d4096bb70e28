import type { Mentioned } from '../../../flaws/reading/lexicon-reader.ts';
import type { Reading } from '../../../flaws/reading/polarity.ts';
import { type EmergencyId, WEIGHED_IDS, type WeighedId } from '../emergency.ts';

/** Ideas around which the words of an emergency are gathered; without one of them it is not considered. */
export const CORES: { readonly [Id in WeighedId]: readonly string[] } = {
  'lye-swallowed': ['swallow', 'taste', 'mouth', 'drool', 'mistaken'],
  'lye-eye': ['eye', 'sight'],
  'fumes-inhaled': ['fume', 'breathe', 'cough', 'unwell'],
  'hydrogen-sulfide': ['rotten'],
  'hydrogen-from-metal': ['alu', 'ware', 'metalware'],
  'lye-eruption': ['erupt', 'seethe', 'runaway', 'wateronlye'],
  'lye-skin': ['body', 'limb', 'hurts', 'lyeburn'],
  'animal-exposed': ['animal', 'pets'],
  'skin-reaction': ['rash', 'itch', 'sore'],
};

/** Half the width, on the ruler of reading distance, of what is taken as one account. */
const REACH = 22;

/** Harm and contact: denied, they speak against an emergency. */
const DENIABLE = new Set(
  'swallow drool cough hurts rash itch sore contact reached signs rotten erupt fizz eye body animal alu'.split(
    ' ',
  ),
);
const EVERYDAY = new Set(['harmless', 'noscene']);

/**
 * Names of ideas that stand around the word at token `at`: among them `denied` and `idiom`, `told` where a pattern held
 * there, and `looks+`, `technique+` where they stand there more than once or twice.
 */
export type Account = { readonly names: ReadonlySet<string>; readonly at: number };

/** So many different places make an idea the subject of the text. */
const SUBJECT = { looks: 4, technique: 3 } as const;

type ToldOutright = { readonly id: EmergencyId; readonly from: number };

/** Every account that may be of an emergency: what stands around each of its core words, each combination once. */
export function accountsOf(
  mentions: readonly Mentioned[],
  { standing, ruler }: Reading,
  told: readonly ToldOutright[],
): ReadonlyMap<WeighedId, readonly Account[]> {
  const ordered = mentions.toSorted((a, b) => a.from - b.from);
  const named = ordered.map(({ concept, to }) => {
    if (EVERYDAY.has(concept)) return 'idiom';
    if (standing[to - 1] === 'yes') return concept;
    return DENIABLE.has(concept) ? 'denied' : undefined;
  });
  const places = ordered.map(({ from }) => ruler[from]!);
  const around = new Map<number, ReadonlySet<string>>();
  const namesAround = (at: number) => {
    const place = places[at]!;
    const known = around.get(place);
    if (known) return known;
    let from = at;
    while (from > 0 && places[from - 1]! >= place - REACH) from -= 1;
    let to = at + 1;
    while (to < places.length && places[to]! <= place + REACH) to += 1;
    const inside = named.slice(from, to);
    const names = new Set(inside.filter(name => name !== undefined));
    for (const [name, many] of Object.entries(SUBJECT))
      if (inside.filter(one => one === name).length >= many) names.add(`${name}+`);
    around.set(place, names);
    return names;
  };
  return new Map(
    WEIGHED_IDS.map(id => {
      const accounts = new Map<string, Account>();
      named.forEach((name, at) => {
        if (name === undefined || !CORES[id].includes(name)) return;
        const names = new Set(namesAround(at));
        if (told.some(one => one.id === id && Math.abs(ruler[one.from]! - places[at]!) <= REACH))
          names.add('told');
        const key = [...names].sort().join(' ');
        if (!accounts.has(key)) accounts.set(key, { names, at: ordered[at]!.from });
      });
      return [id, [...accounts.values()]] as const;
    }),
  );
}

/** What each idea adds to the score of an emergency, and where the score starts; log odds against no emergency. */
export type Weights = { readonly [Id in WeighedId]: Readonly<Record<string, number>> };

/** The start of every score in a table of weights. */
export const START = 'start';

/** Log odds of an emergency, read from one account. */
export function scoreOf(account: Account, weights: Readonly<Record<string, number>>): number {
  let score = weights[START] ?? 0;
  for (const name of account.names) score += weights[name] ?? 0;
  return score;
}

/** An emergency's best account and its score, log odds. */
export type Weighed = { readonly id: WeighedId; readonly score: number } & Account;

/** Each emergency that has an account, by its best one, the likeliest first. */
export function weighAll(
  accounts: ReadonlyMap<WeighedId, readonly Account[]>,
  weights: Weights,
): readonly Weighed[] {
  return [...accounts]
    .flatMap(([id, all]) => {
      const [best] = all
        .map(account => ({ id, score: scoreOf(account, weights[id]), ...account }))
        .toSorted((a, b) => b.score - a.score);
      return best ? [best] : [];
    })
    .toSorted((a, b) => b.score - a.score);
}
