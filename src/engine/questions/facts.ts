import { parseOils } from '../batch/oils/oil-list.ts';
import { signsIn } from '../flaws/signs.ts';
import type { ToldAmount } from './amounts.ts';
import { carrierIn } from './carrier-told.ts';
import { type OtherCountry, otherCountryIn } from './countries.ts';
import type { NamedThing } from './entities.ts';
import { oilsIn } from './oils-in.ts';
import { type Region, regionIn } from './regions.ts';
import { strengthIn } from './strength-in.ts';
import { type Target, targetIn } from './target-in.ts';
import { whiteBeside } from './white-beside.ts';
import type { Words } from './words-of.ts';

/** What a question tells, each part in words that the options' grammars read; what it does not tell is undefined. */
export type Facts = {
  /** Colourants and ingredients by name, in order. */
  readonly named: readonly string[];
  /** Plants among them that are in no catalogue, only in the list of what colours plants. */
  readonly plants?: readonly string[];
  readonly portion: string | undefined;
  /** Size of a whole batch. */
  readonly size: string | undefined;
  readonly powder: string | undefined;
  readonly strength: string | undefined;
  /** What it is to be wetted in, as it was said. */
  readonly carrier: string | undefined;
  readonly mix: string | undefined;
  readonly oils: string | undefined;
  readonly superfat: number | undefined;
  /** Any other percent that is told. */
  readonly percent: number | undefined;
  /** Lye concentration, percent. */
  readonly concentration: number | undefined;
  readonly portions: string | undefined;
  /** The colours that a plan names, in order; of no other job are they told. */
  readonly colours?: readonly { readonly text: string; readonly hex?: string }[];
  readonly target: Target | undefined;
  readonly region: Region | undefined;
  /** ISO 3166-1 code of a country whose law no table holds. */
  readonly country: OtherCountry | undefined;
  readonly fromShelf: boolean;
  /** What is asked about where no name in it is known. */
  readonly subject: string | undefined;
  /** Signs of a flaw that the words tell. */
  readonly findings: number;
};

type Seen = { readonly things: readonly NamedThing[]; readonly amounts: readonly ToldAmount[] };

/** Gathers what a question tells. */
export function factsOf(question: string, words: Words, { things, amounts }: Seen): Facts {
  const { text } = words;
  const base = amounts.find(one => isBase(one, words));
  const apart = amounts.filter(one => one !== base);
  const asPortion = portionAmong(apart, words) ?? base;
  // "1 tsp per 500 g of batter, for 1 kg": a teaspoon is not what goes into the kilo.
  const isRate = base !== undefined && asPortion !== base;
  const powder = isRate ? undefined : amounts.find(({ of }) => of === 'powder');
  const oils = oilsIn(words, amounts);
  // A list of weighed oils is a whole batch; one of its weights is no portion.
  const whole = asPortion?.of === 'batter' || asPortion?.of === 'oils' ? undefined : gramsOfAll(oils);
  const perPound = amounts.find(one => one.perPound);
  const told = asPortion && withMeasured(asPortion);
  const portion = whole === undefined ? told : `${whole} g oils`;
  const first = things[0];
  return {
    named: unique(things.map(thing => thing.text)),
    portion,
    size: told,
    powder: (powder ?? apart.find(({ of }) => of === 'unsaid'))?.text,
    carrier: carrierIn(text),
    strength: perPound ? `${perPound.text} ppo` : strengthIn(words, things),
    mix: withWhite(mixOf(things, amounts), text),
    oils,
    superfat: superfatIn(text),
    percent: figureBefore(text, /(\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)/u),
    concentration: figureBefore(
      text,
      /(?:concentra\w*|lye strength|solution|solucion)\D{0,12}(\d+(?:[.,]\d+)?)|(\d+(?:[.,]\d+)?) ?% ?(?:de |of )?(?:lye|concentra\w*|solution)/u,
    ),
    portions: undefined,
    target: targetIn(question, words, things),
    region: regionIn(text),
    country: otherCountryIn(text),
    fromShelf:
      /\b(?:my|mi|mis) (?:shelf|estanteria|estante|repisa|inventario|stash|colours|pigments|micas|pigmentos|colores)\b/u.test(
        text,
      ),
    subject: first?.text ?? subjectIn(text),
    findings: signsIn(question.slice(0, 600)),
  };
}

/** Grams of two weighed oils and more together. */
function gramsOfAll(oils: string | undefined): number | undefined {
  if (oils === undefined) return undefined;
  const { shares, totalGrams } = parseOils(oils);
  return shares.length > 1 && totalGrams !== undefined ? Number(totalGrams.toFixed(1)) : undefined;
}

const portionAmong = (amounts: readonly ToldAmount[], words: Words): ToldAmount | undefined =>
  amounts.find(one => isTaken(one, words)) ??
  amounts.find(({ of }) => of === 'batter' || of === 'oils') ??
  amounts.find(({ of, measure }) => of === 'unsaid' && measure === 'mass');

/** To how much a rate is told: "per 500 g of batter", "por cada medio kilo". */
const isBase = ({ from, perPound }: ToldAmount, { words }: Words): boolean =>
  !perPound && /^(?:per|every|cada|x)$|^por$/u.test(words[from - 1] ?? '');

/** What is taken out of a larger pot is the portion: "6 cups, gonna pull 1.5 cups for the black". */
const isTaken = ({ of, from }: ToldAmount, { words }: Words): boolean =>
  of === 'batter' &&
  /\b(?:tak(?:e|en|ing)|took|pull(?:ed|ing)?|pour(?:ed|ing)? off|reserv(?:e|ed|ing)|set(?:ting)? aside|split off|saco|sacar|saque|aparto|apartar|aparte|separo|separar|separe|reservo)(?: \p{L}+){0,2}$/u.test(
    words.slice(Math.max(0, from - 5), from).join(' '),
  );

const unique = (names: readonly string[]) => [...new Set(names)];

const withMeasured = ({ text, of }: ToldAmount) =>
  of === 'oils'
    ? `${text} oils`
    : of === 'batter' && /\b(?:g|gr|grams?|gramos?|kg|kilos?|oz|lbs?|pounds?|libras?|onzas?)\b/u.test(text)
      ? `${text} batter`
      : text;

/** "1 tsp green chrome oxide + 2 g titanium dioxide": each thing with the amount that stands nearest before it. */
function mixOf(things: readonly NamedThing[], amounts: readonly ToldAmount[]): string | undefined {
  if (things.length === 0) return undefined;
  return things
    .map(({ text, from, to }) => {
      const own =
        amounts.find(
          amount => amount.of === 'powder' && !amount.perPound && amount.to <= from && from - amount.to <= 2,
        ) ??
        amounts.find(
          amount => amount.of === 'powder' && !amount.perPound && amount.from >= to && amount.from - to <= 2,
        );
      return own ? `${own.text} ${text}` : text;
    })
    .join(' + ');
}

/** A white that is only called white is a part of the mix, unless a white pigment is named. */
function withWhite(mix: string | undefined, text: string): string | undefined {
  const white =
    mix === undefined || /titan|zinc|white|blanco|kaolin|caolin/u.test(mix) ? undefined : whiteBeside(text);
  return white === undefined ? mix : `${mix} + ${white}`;
}

function superfatIn(text: string): number | undefined {
  const match =
    /(\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)? ?(?:de )?(?:superfat|sf|(?:sobre|super) ?engrasado|sobregrasa)|(?:superfat|sf|(?:sobre|super) ?engrasado|sobregrasa) (?:of |de |del |at |al )?(\d+(?:[.,]\d+)?)/u.exec(
      text,
    );
  const figure = match?.[1] ?? match?.[2];
  return figure === undefined ? undefined : Number(figure.replace(',', '.'));
}

function figureBefore(text: string, pattern: RegExp): number | undefined {
  const match = pattern.exec(text);
  const figure = match?.[1] ?? match?.[2];
  return figure === undefined ? undefined : Number(figure.replace(',', '.'));
}

const SUBJECT =
  /\b(?:can i (?:use|put|add)|will|does|do|is|are|puedo (?:usar|echar|poner|ponerle|echarle|meter)|le puedo (?:echar|poner)|si (?:uso|le pongo|le echo)|se puede (?:usar|poner|echar)|what about|el|la|los|las)\s+(?:i |you |use |put |add |gotta |have to |the |a |an |some |my |mi |el |la |un |una |de )*(.+?)(?=\s+(?:survive|stay|hold|fade|bleed|turn|work|instead|in|to|for|as|ok|be|make|going|allowed|legal|safe|permitted|aguanta|sobrevive|resiste|en|para|como|se|es|esta|sirve|funciona|por|con|if|si)\b|\s*[?!.,;]|$)/u;

/** What stands where the thing asked about would stand. */
const subjectIn = (text: string): string | undefined =>
  SUBJECT.exec(text)?.[1]?.split(' ').slice(0, 5).join(' ');
