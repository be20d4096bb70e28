import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { MASS } from '../../amounts/words.ts';
import { BESIDE_FATS } from '../talk/things-of-else.ts';
import { absenceIn, isHarmlessBesideOil } from './beside-oils.ts';
import { isOfKind, KINDS } from './kinds-of-oil.ts';
import { placed, placesIn } from './places-in-list.ts';

/*
 * Oils that a recipe leaves out, or alone takes, by their place in the list or by their kind: "the last but one isn't in", "todo menos las
 * mantecas", "only the liquid ones". Which they are is worked out where it is sure and asked where it is not; no lye is told before that.
 */

/** What is said of a group of oils beside a recipe. */
export type GroupTold = {
  /** As it was said, at most 60 characters. */
  readonly text: string;
  /** The line without it; undefined where that would take more with it. */
  readonly rest: string | undefined;
  /** Whether the group, or all but it, is surely out; else only nobody here knows whether it is in. */
  readonly isOut: boolean;
  /** Which of the recipe's oils, in their order, are out, by their names; undefined where that is not sure. */
  readonly outOf: (names: readonly string[]) => readonly number[] | undefined;
};

const STRICT = unbroken`
  (?:no|not|without|minus|except(?:ing| for)?|excluding|bar(?:ring)?(?= (?:the|any|all|those)(?!\p{L})| *$)|
  but(?: not| for)?|save(?: for)?|skip(?:ping)?|omit(?:ting)?|leav(?:e|ing)(?: out)?|drop(?:ping)?|hold|
  forget|none|neither|apart from|other than|(?:don'?t|do not|didn'?t|won'?t|can'?t)(?: \p{L}+)?|sin|ni|nada|
  ningun[oa]?|menos|salvo|excepto|exceptuando|quitando|quit(?:a|ale|ar|e|o)|sac(?:a|ale|ar|o|ando)|fuera|
  omit(?:e|o|iendo)|salt(?:a|o|ando)|dej(?:a|o|amos|ando)(?: fuera)?|aparte|evit\p{L}+)
`;
const STRICTLY = new RegExp(
  `(?<!\\p{L})${STRICT}(?: (?:the|any|all|of|for|my|those|that|about|in|l[oa]s|el|la|lo|de|del|mis?|contar|con|usar|use|using|counting|a))*$`,
  'u',
);
const ONLY_BUT =
  /(?<!\p{L})(?:nothing but|none but|nada mas que|no mas que|sino)(?: (?:the|el|la|l[oa]s|lo))*$/u;
const ONLY = new RegExp(
  unbroken`
    (?<!\p{L})(?:only|just|solely|purely|exclusively|nothing but|entirely|solo|solamente|unicamente|nomas|
    nada mas|exclusivamente|make (?:it|this)|keep (?:it|this)|version|vegan[oa]?s?|vegetarian[oa]?s?|
    plant-based)(?!\p{L})
  `,
  'u',
);
const OUT = new RegExp(
  unbroken`
    (?<!\p{L})(?:no|not|nor|never|none|nothing|cannot|\p{L}+n['’]t|dont|didnt|doesnt|wont|cant|isnt|arent|
    wasnt|without|minus|except\p{L}*|exclud\p{L}*|bar|barring|but|skip\p{L}*|omit\p{L}*|leav\p{L}+|left|
    drop\p{L}*|forg[eo]t\p{L}*|hold|ban\p{L}*|out|off|away|free|\p{L}+-free|gone|ran|run|missing|rancid|
    stay\p{L}*|wait\p{L}*|home|apart|sin|ni|nada|ningun\p{L}*|nunca|menos|salvo|quit\p{L}*|sac\p{L}*|
    dej\p{L}*|salt\p{L}*|fuera|olvid\p{L}*|falt\p{L}*|acab\p{L}*|agot\p{L}*|otr[oa]|another|aparte|allergic|
    alergic\p{L}*)(?!\p{L})
  `,
  'u',
);
/** What one may do with some of the oils and leave them in. */
const DONE = new RegExp(
  unbroken`
    ^(?:melt\p{L}*|warm\p{L}*|soften\p{L}*|heat\p{L}*|derret\p{L}*|derrit\p{L}*|fund\p{L}*|abland\p{L}*|
    calent\p{L}*|entib\p{L}*|first|primero|already|ya|estan?|both|microwave|microondas|slowly|gently|bain|
    marie|bano|maria)$
  `,
  'u',
);
/** Of these a part is told with a weight of its own, or it is no fat. */
const WEIGHED_BEFORE = new RegExp(`${MASS}(?: of| de)?(?: the| my| l[oa]s)? ?$`, 'u');
const NO_FAT = /(?<!\p{L})(?:water|agua|milk|leche|mou?lds?|moldes?)(?!\p{L})/u;
/** "Everything but the expensive one", "todo menos lo de mi suegra": of a thing that nobody here knows. */
const ALL_BUT = new RegExp(
  unbroken`
    (?<!\p{L})(?:everything|all|all of (?:it|them|these|those)|the (?:whole )?lot|every one|todos?|
    todas?)(?: \p{L}+){0,2}? (?:but|except(?:ing)?|excluding|bar(?:ring)?|minus|save|apart from|other than|
    menos|salvo|excepto|quitando|sin)(?: for)?(?: (?:the|my|any|that|those|el|la|lo|l[oa]s|mi|
    es[aeo]s?))* (?<what>\p{L}+(?: (?:de )?\p{L}+)?)
  `,
  'u',
);
const THING_BUT = new RegExp(`^(?:${BESIDE_FATS}|lye|sosa|soda|water|agua|naoh|koh)(?!\\p{L})`, 'u');

/** Where the list begins: "the first one" before it is another soap. */
const FIRST_WEIGHT = new RegExp(`${MASS}|\\d{2,}`, 'u');
/** Who tells of a soap that was made before. */
const MADE = new RegExp(
  unbroken`
    (?<!\p{L})(?:i|we|ive|i've|we've) (?:(?:ever|just|have|had) )?(?:did|made|make|tried|poured|
    do)(?!\p{L})|(?<!\p{L})que (?:hice|hago|hicimos|haces)(?!\p{L})
  `,
  'u',
);

type Clause = { readonly text: string; readonly from: number; readonly behind: string };
const LONGEST = 60;

function clausesOf(plain: string): readonly Clause[] {
  const parts = plain.split(/(;|,(?!\d)|:(?!\d))/u);
  const clauses: Clause[] = [];
  let from = 0;
  for (let at = 0; at < parts.length; at += 2) {
    const text = parts[at]!;
    // What the sentence goes on to say without a figure.
    let behind = '';
    for (let next = at + 1; parts[next] === ',' && !/\d/u.test(parts[next + 1] ?? '0'); next += 2)
      behind += ` ${parts[next + 1]}`;
    clauses.push({ text, from, behind });
    from += text.length + (parts[at + 1]?.length ?? 0);
  }
  return clauses;
}
const hasOil = (text: string): boolean =>
  text.split(/[^\p{L}]+/u).some(word => word.length > 2 && knownOil(word) !== undefined);

/** Where of the clause the group is named, and which oils it is. */
type Group = {
  readonly at: number;
  readonly text: string;
  readonly isPlace: boolean;
  readonly of: (names: readonly string[]) => readonly number[] | undefined;
  /** Whether none of the oils, or nothing but them, is surely of it; undefined of a place. */
  readonly share?: (names: readonly string[]) => 'none' | 'all' | 'some';
};

function groupsIn(text: string): readonly Group[] {
  const place = placesIn(text);
  const kinds = KINDS.flatMap((kind): readonly Group[] => {
    const match = kind.noun.exec(text);
    if (!match) return [];
    const told = (names: readonly string[]) => names.map(name => isOfKind(kind, name));
    return [
      {
        at: match.index,
        text: match[0],
        isPlace: false,
        of: names =>
          told(names).includes('maybe')
            ? undefined
            : told(names).flatMap((is, at) => (is === 'yes' ? [at] : [])),
        share: names =>
          told(names).every(is => is === 'no')
            ? 'none'
            : told(names).every(is => is === 'yes')
              ? 'all'
              : 'some',
      },
    ];
  });
  if (!place) return kinds;
  const at = place.at;
  return [
    {
      at: text.indexOf(place.text),
      text: place.text,
      isPlace: true,
      of: names => at && placed(at, names.length),
    },
    ...kinds,
  ];
}

/**
 * The group of oils of which a line says that it is left out, or alone in; undefined where none is told, or none of the oils that are
 * `named` in it is of that kind. Takes what `plainWords` gives with its clauses, and the oils in their order. Pure.
 */
export function groupTold(plain: string, named: readonly string[]): GroupTold | undefined {
  const first = plain.search(FIRST_WEIGHT);
  for (const { text, from, behind } of clausesOf(plain)) {
    const isBefore = from + text.length <= first;
    const but = ALL_BUT.exec(text);
    for (const group of groupsIn(text)) {
      const head = text.slice(0, group.at);
      const isStrict = isStrictly(head.trimEnd(), group.text);
      const isInRecipe = /\d/u.test(text) && hasOil(text);
      if ((isInRecipe && !isStrict && !group.isPlace) || WEIGHED_BEFORE.test(head)) continue;
      if (
        group.isPlace &&
        isBefore &&
        !isStrict &&
        !/(?<!\p{L})(?:list|lista|oil|aceite|ingredient\p{L}*)(?!\p{L})/u.test(text)
      )
        continue;
      if (group.isPlace && !isStrict && MADE.test(text)) continue;
      if (!group.isPlace && NO_FAT.test(text)) continue;
      const said = `${text} ${behind}`;
      const isOnly = !isStrict && ONLY.test(said.replace(/(?<!\p{L})not only|no solo(?!\p{L})/gu, ''));
      // "No animal fats", where none is listed; "vegan", where all are pressed from plants.
      if (group.share?.(named) === (isOnly ? 'all' : 'none')) continue;
      const isOut = isStrict || isOnly || OUT.test(said) || absenceIn(said) !== undefined;
      if (
        !isOut &&
        said
          .replace(group.text, ' ')
          .split(/[^\p{L}'’-]+/u)
          .every(isIdle)
      )
        continue;
      // "Scratch that last one" in the middle of a list is of what was told until then: which oils follow it is asked.
      const isInMiddle = group.isPlace && !isBefore && isListed(plain.slice(from + text.length));
      const outOf = (names: readonly string[]) => {
        const found = isInMiddle ? undefined : group.of(names);
        const out = isOnly && found ? names.flatMap((_, at) => (found.includes(at) ? [] : [at])) : found;
        return out === undefined || out.length === 0 || out.length === names.length ? undefined : out;
      };
      return {
        text: said.trim().replace(/\s+/gu, ' ').slice(0, LONGEST),
        rest: without(plain, { text, from, behind }),
        isOut,
        outOf,
      };
    }
    const what = but?.groups?.what;
    if (what !== undefined && !hasOil(what) && !THING_BUT.test(what))
      return { text: but![0].slice(0, LONGEST), rest: undefined, isOut: true, outOf: () => undefined };
  }
  return undefined;
}
const isListed = (text: string): boolean => FIRST_WEIGHT.test(text) && hasOil(text);
const isStrictly = (head: string, group: string): boolean =>
  group.endsWith('-free') || (STRICTLY.test(head) && !ONLY_BUT.test(head));
const isIdle = (word: string): boolean => word === '' || DONE.test(word) || isHarmlessBesideOil(word);

/** A line without a clause and what its sentence goes on to say; undefined where a figure stands in it. */
function without(plain: string, { text, from, behind }: Clause): string | undefined {
  if (/\d/u.test(text.replace(/(?<!\d)[1-6](?!\d)/gu, '')) || /\d ?%/u.test(text)) return undefined;
  const rest = plain.slice(from + text.length).replace(/^[:,]/u, ' ');
  const gone = behind.trim();
  const tail = gone === '' ? rest : rest.slice(rest.indexOf(gone) + gone.length);
  return `${plain.slice(0, from)} ; ${tail}`;
}
