import { colourantsNamed } from '../colourants/find.ts';
import { metalIn } from '../colourants/metals.ts';
import { unbroken } from '../over-lines.ts';
import { fold, foldedWords } from '../text/fold.ts';
import { byNearness, closestThing } from '../text/spelling/closest-name.ts';
import { distance } from '../text/spelling/edit-distance.ts';
import { type Entry, readEntries } from './entries.ts';
import { namesByLength, substanceNamed, substanceNumbered, substanceWithE } from './names.ts';
import { substanceById } from './substances/index.ts';
import type { Substance } from './substances/substance.ts';

/** What an entry of a list turned out to hold. */
export type Recognised = { readonly substances: readonly Substance[]; readonly unknown: readonly string[] };

const nothing: Recognised = { substances: [], unknown: [] };
const found = (...substances: readonly (Substance | undefined)[]): Recognised => ({
  substances: substances.filter(substance => substance !== undefined),
  unknown: [],
});

/** Label text that names no ingredient. */
const noise = new RegExp(
  unbroken`
    ^(?:net\b|peso\b|weight|wt\b|made (?:in|with)|hecho en|fabriqué|vegan|vegano|cruelty|batch|lot[e]?\b|
    best before|exp\b|store\b|keep\b|warning|www\.|https?:|\d+ ?(?:g|gr|ml|oz|kg|lb)\b|cas\b|
    cosmetic grade$|for external use|approved for|total$|and$|color(?:ant)?s?$|colours?$|pigments?$)
  `,
  'iu',
);

const metalIds = {
  aluminium: 'aluminium',
  copper: 'copper',
  bronze: 'bronze',
  brass: 'bronze',
  tin: 'metal-flake',
  zinc: 'zinc-metal',
  leaf: 'metal-flake',
  unnamed: 'metal-flake',
} as const;
const metallised =
  /alumini[sz]ed|metalli?[sz]ed|vacuum.metal|aluminizado|metalizad[oa]|aluminis[ée]|métallisé|bedampft/iu;

/** Letters a misspelling may differ by; none in short words. */
const slips = (length: number): number => (length < 5 ? 0 : length < 8 ? 1 : length < 14 ? 2 : 3);

/** Whether lye and the law treat two substances alike, so that one may be read for the other without harm. */
const isTreatedAlike = (one: Substance, other: Substance): boolean =>
  one.alkali.behaviour === other.alkali.behaviour &&
  String(one.us) === String(other.us) &&
  String(one.ci) === String(other.ci);

/** What is spoken of beside an ingredient is none that was spelt wrongly: "jabón" is two letters off "latón". */
const BENCH_WORDS = new RegExp(
  unbroken`
    ^(?:(?:the|my|el|la|mi|un|una) )?(?:soaps?|jabon(?:es)?|batter|masa|bars?|barras?|loaf|ovens?|hornos?|
    spoons?|cucharas?|moulds?|molds?|moldes?|fridge|nevera)$
  `,
  'u',
);

/**
 * The substance a misspelt name is nearest to, if only one is. A metal that must never meet lye wins over a nearer
 * harmless name by one letter, so that a slip of the pen never hides it ("aluminm" is no alumina); else another that lye
 * or the law treats otherwise must be farther by two letters.
 */
function nearest(name: string): Substance | 'contested' | undefined {
  const key = fold(name);
  if (BENCH_WORDS.test(key)) return undefined;
  if (key.length > 60 || /\d/.test(key)) return undefined;
  const most = slips(key.length);
  if (most === 0) return undefined;
  const near = byNearness(
    Array.from({ length: 2 * most + 5 }, (_, at) => key.length - most - 2 + at)
      .flatMap(length => namesByLength.get(length) ?? [])
      .map(([candidate, thing]) => ({
        thing,
        far: distance(key, candidate) - (thing.alkali.behaviour === 'never' ? 1 : 0),
      })),
  );
  const [first, second] = near;
  if (first === undefined || first.far > most) return undefined;
  const isAlarm =
    first.thing.alkali.behaviour === 'never' && (second === undefined || second.far > first.far);
  if (isAlarm) return first.thing;
  return closestThing(near, { most, margin: 2, alike: isTreatedAlike }) ?? 'contested';
}

/** Words of one row that are looked at, so that work stays bounded: no label has that many without a comma. */
const MOST_IN_ROW = 300;

/** What stands on many labels and tells no ingredient from another. */
const SAYS_NOTHING = new RegExp(
  unbroken`
    ^(?:powder|polvo|pigment|and|with|con|the|contain|contiene|dispersed|dispersion|dispersible|
    suspended|disperso|dispersado|dispersable|suspendido)$
  `,
);

/** Names in a row without separators, longest first; the rest comes back as unknown. */
function scanned(text: string): Recognised {
  const all = foldedWords(text);
  const words = all.slice(0, MOST_IN_ROW);
  const substances: Substance[] = [];
  const rest: string[] = all.slice(MOST_IN_ROW);
  for (let at = 0; at < words.length; ) {
    const width = [5, 4, 3, 2, 1].find(size => {
      const part = words.slice(at, at + size);
      const hit =
        part.length === size && part.join(' ').length > 3 ? substanceNamed(part.join(' ')) : undefined;
      if (hit === undefined || hit.role === 'metal') return false;
      substances.push(hit);
      return true;
    });
    if (width === undefined) rest.push(words[at] ?? '');
    at += width ?? 1;
  }
  if (substances.length === 0) return { substances: [], unknown: [text] };
  const telling = rest.filter(word => word.length > 2 && !SAYS_NOTHING.test(word));
  return { substances, unknown: telling.length > 0 ? [telling.join(' ')] : [] };
}

function misspelt(name: string): Recognised | undefined {
  const substance = nearest(name);
  if (substance === 'contested') return { substances: [], unknown: [name] };
  return substance === undefined ? undefined : found(substance);
}

/** A name of our catalogue stands for the ingredients it has ("gold mica"). */
function catalogued(name: string): Recognised | undefined {
  const [colourant, another] = colourantsNamed(name);
  if (colourant?.inci === undefined || another !== undefined) return undefined;
  const parts = readEntries(colourant.inci).map(({ name: part, numbers }) =>
    part === '' ? substanceNumbered(numbers[0] ?? '') : substanceNamed(part),
  );
  return parts.includes(undefined) ? undefined : found(...parts);
}

/** Names joined by signs or "and". What stands before a colon is a heading when it names nothing. */
function divided(name: string): Recognised | undefined {
  const colon = name.lastIndexOf(': ');
  const headed = colon > 0 && substanceNamed(name.slice(0, colon)) === undefined;
  const body = headed ? name.slice(colon + 2) : name;
  const parts = body
    .split(/ ?[/+] ?| & | - | – | (?:and|y|et|und|e) |: /u)
    .filter(part => part.trim() !== '');
  if ((parts.length < 2 && !headed) || parts.length > 12) return undefined;
  const read = parts.map(part => {
    const substance = substanceNamed(part);
    return substance === undefined ? (misspelt(part) ?? scanned(part.trim())) : found(substance);
  });
  const substances = read.flatMap(part => part.substances);
  return substances.length === 0
    ? undefined
    : { substances, unknown: read.flatMap(({ unknown }) => unknown) };
}

/** The ingredients that brackets name, each part of them that is one exactly. */
const bracketed = (brackets: readonly string[]): readonly Substance[] =>
  brackets.flatMap(bracket => bracket.split(/[,;]/)).flatMap(part => substanceNamed(part) ?? []);

/** "Ultramarines (Ultramarine Violet)" is the violet; "Mica (Titanium Dioxide)" is both. */
function detailed(substance: Substance, inBrackets: readonly Substance[]): Recognised {
  const closer = inBrackets.find(
    ({ ci, id }) => id !== substance.id && ci.some(number => substance.ci.includes(number)),
  );
  return found(closer ?? substance, ...inBrackets);
}

/** What names in a row hold, or undefined when nothing in them is known. */
function inRow(name: string): Recognised | undefined {
  const row = scanned(name);
  return row.substances.length > 0 ? row : undefined;
}

/** A name without numbers; undefined when nothing in it is known. */
function byName(name: string, brackets: readonly string[]): Recognised | undefined {
  const inBrackets = bracketed(brackets);
  const whole = [name, ...brackets].join(' ');
  const together = substanceNamed(whole);
  if (together !== undefined) return found(together);
  const alone = substanceNamed(name);
  if (alone !== undefined) return detailed(alone, inBrackets);
  if (metallised.test(whole)) return found(substanceById('metal-flake'), ...scanned(whole).substances);
  const metal = metalIn(name);
  if (metal?.certainty === 'metal')
    return found(substanceById(metalIds[metal.metal]), ...scanned(name).substances);
  const ours = catalogued(whole);
  if (ours !== undefined) return ours;
  if (inBrackets.length > 0) return found(...scanned(name).substances, ...inBrackets);
  if (/\b(?:oil|aceite|huile|öl|olio|óleo|butter|manteca)\b/iu.test(name))
    return found(substanceById('plant-oil'));
  const loose = catalogued(name) ?? divided(name) ?? misspelt(name);
  return loose ?? inRow(name);
}

/** One number tells which of a group is meant; several mean the group. */
function refined(
  named: readonly Substance[],
  numbered: readonly Substance[],
  numbers: readonly string[],
): readonly Substance[] {
  const [group] = named;
  const [exact] = numbered;
  if (group === undefined || exact === undefined) return [...named, ...numbered];
  if (named.length > 1) return [...new Set([...named, ...numbered])];
  const covers = numbers.every(number => group.ci.includes(number));
  if (covers) return [numbers.length === 1 && group.ci.length > 1 ? exact : group];
  const sameColour = numbers.some(number => number.split(':')[0] === group.ci[0]?.split(':')[0]);
  return sameColour ? [group] : [group, ...numbered];
}

const ironOxides = new Set(['iron-oxide-red', 'iron-oxide-yellow', 'iron-oxide-black']);

/** Several shades of iron oxide in one entry are the blend. */
function blended(numbered: readonly Substance[]): readonly Substance[] {
  const blend = substanceById('iron-oxides');
  if (blend === undefined || numbered.length < 2 || !numbered.every(({ id }) => ironOxides.has(id)))
    return numbered;
  return [blend];
}

const lakeWord = /\b(?:lakes?|laca|laque|lack|lacca)\b/iu;

/** "CI 42090 Lake" is the lake of that dye. */
const laked = (substance: Substance | undefined, as: string): Substance | undefined =>
  substance?.role === 'dye' && lakeWord.test(as)
    ? (substanceById(`${substance.id}-lake`) ?? substance)
    : substance;

/** The substances of one entry, by its name and its numbers together. */
export function recognise(entry: Entry): Recognised {
  const numbered = blended(
    [...entry.numbers.map(substanceNumbered), ...entry.eNumbers.map(substanceWithE)]
      .map(substance => laked(substance, entry.as))
      .filter(substance => substance !== undefined),
  );
  const named = byName(entry.name, entry.brackets);
  if (named === undefined && numbered.length === 0) {
    return noise.test(entry.as) ? nothing : { substances: [], unknown: [entry.as] };
  }
  const substances = refined(named?.substances ?? [], numbered, entry.numbers);
  return { substances: [...new Set(substances)], unknown: named?.unknown ?? [] };
}
