import { parseOils } from '../../batch/oils/lists/oil-list.ts';
import { signsIn } from '../../flaws/signs.ts';
import { unbroken } from '../../over-lines.ts';
import { type OtherCountry, otherCountryIn } from '../places/countries.ts';
import { type Region, regionIn } from '../places/regions.ts';
import { readPortions } from '../portion-line/portion-line.ts';
import type { Reckoned } from '../portion-line/settled.ts';
import type { ToldAmount } from './amounts.ts';
import { carrierIn } from './carrier-told.ts';
import { mixOf } from './mix-told.ts';
import type { NamedThing } from './names/named-thing.ts';
import { oilsIn } from './oils-in.ts';
import { strengthIn } from './strength/strength-in.ts';
import { whiteBeside } from './strength/white-beside.ts';
import { type Target, targetIn } from './target-in.ts';
import type { Words } from './words-of.ts';

/** What a question tells, each part in words that the options' grammars read; what it does not tell is undefined. */
export type Facts = {
  /** Colourants and ingredients by name, in order. */
  readonly named: readonly string[];
  /** Plants among them that are in no catalogue, only in the list of what colours plants. */
  readonly plants?: readonly string[];
  /** What is to be coloured. */
  readonly portion: string | undefined;
  /** How the portion was reckoned, where it was not told as it is. */
  readonly reckoned: Reckoned | undefined;
  /** Portions that may be meant, where the words do not tell which: two and more, or none. */
  readonly unclear: readonly string[];
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
  /** Colourants that are told to be at hand, where a mix is asked for: nothing else may be in it. */
  readonly onHand?: readonly string[];
  /** What is asked about where no name in it is known. */
  readonly subject: string | undefined;
  /** Signs of a flaw that the words tell. */
  readonly findings: number;
};

type Seen = { readonly things: readonly NamedThing[]; readonly amounts: readonly ToldAmount[] };

/** Gathers what a question tells. */
export function factsOf(question: string, words: Words, { things, amounts }: Seen): Facts {
  const { text } = words;
  const line = readPortions(words, things, amounts);
  const { portionAt } = line;
  // "1 tsp per 500 g of batter, for 1 kg": a teaspoon is not what goes into the kilo.
  const powder = line.isRate ? undefined : line.amounts.find(({ of }) => of === 'powder');
  const oils = oilsIn(words, amounts);
  // A list of weighed oils is a whole batch; one of its weights is no portion.
  const isTold = portionAt?.of === 'batter' || portionAt?.of === 'oils';
  const whole = isTold ? undefined : gramsOfAll(oils, portionAt === undefined ? 1 : 2);
  const perPound = amounts.find(one => one.perPound);
  // Of two rates that were read somewhere neither is the one that is wished.
  const areRatesTold = new Set(amounts.filter(one => one.perPound).map(one => one.text)).size > 1;
  const first = things[0];
  return {
    named: unique(things.map(thing => thing.text)),
    portion: whole === undefined ? line.part : `${whole} g oils`,
    reckoned: whole === undefined ? line.reckoned : undefined,
    unclear: whole === undefined ? line.unclear : [],
    size: line.whole,
    powder: (powder ?? line.unsaid)?.text,
    carrier: carrierIn(text),
    strength: perPound && !areRatesTold ? `${perPound.text} ppo` : strengthIn(words, things),
    mix: withWhite(mixOf(words, things, line.amounts), text),
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

/** Less of one oil wets a colour. */
const LEAST_BATCH_G = 100;

/** Grams of so many weighed oils and more together. */
function gramsOfAll(oils: string | undefined, least: number): number | undefined {
  if (oils === undefined) return undefined;
  const { shares, totalGrams } = parseOils(oils);
  const isBatch = shares.length > 1 || (totalGrams ?? 0) >= LEAST_BATCH_G;
  return shares.length >= least && isBatch && totalGrams !== undefined
    ? Number(totalGrams.toFixed(1))
    : undefined;
}

const unique = (names: readonly string[]) => [...new Set(names)];

/** A white that is only called white is a part of the mix, unless a white pigment is named. */
function withWhite(mix: string | undefined, text: string): string | undefined {
  const white =
    mix === undefined || /titan|zinc|white|blanco|kaolin|caolin/u.test(mix) ? undefined : whiteBeside(text);
  return white === undefined ? mix : `${mix} + ${white}`;
}

/** "5% superfat", "sobreengrasado del 5". */
const SUPERFAT = new RegExp(
  unbroken`
    (\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)? ?(?:de )?(?:superfat|sf|(?:sobre|super) ?engrasado|
    sobregrasa)|(?:superfat|sf|(?:sobre|super) ?engrasado|sobregrasa) (?:of |de |del |at |
    al )?(\d+(?:[.,]\d+)?)
  `,
  'u',
);

function superfatIn(text: string): number | undefined {
  const match = SUPERFAT.exec(text);
  const figure = match?.[1] ?? match?.[2];
  return figure === undefined ? undefined : Number(figure.replace(',', '.'));
}

function figureBefore(text: string, pattern: RegExp): number | undefined {
  const match = pattern.exec(text);
  const figure = match?.[1] ?? match?.[2];
  return figure === undefined ? undefined : Number(figure.replace(',', '.'));
}

const SUBJECT = new RegExp(
  unbroken`
    \b(?:can i (?:use|put|add)|will|does|do|is|are|puedo (?:usar|echar|poner|ponerle|echarle|meter)|
    le puedo (?:echar|poner)|si (?:uso|le pongo|le echo)|se puede (?:usar|poner|echar)|what about|el|la|los|
    las)\s+(?:i |you |use |put |add |gotta |have to |the |a |an |some |my |mi |el |la |un |una |
    de )*(.+?)(?=\s+(?:survive|stay|hold|fade|bleed|turn|work|instead|in|to|for|as|ok|be|make|going|allowed|
    legal|safe|permitted|aguanta|sobrevive|resiste|en|para|como|se|es|esta|sirve|funciona|por|con|if|si)\b|
    \s*[?!.,;]|$)
  `,
  'u',
);

/** What stands where the thing asked about would stand. */
const subjectIn = (text: string): string | undefined =>
  SUBJECT.exec(text)?.[1]?.split(' ').slice(0, 5).join(' ');
