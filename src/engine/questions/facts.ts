import { parseOils } from '../batch/oils/oil-list.ts';
import { diagnose } from '../flaws/diagnose.ts';
import { Refusal } from '../refusal.ts';
import { isColourWord } from '../text/colour-lists.ts';
import { colourNamed } from '../text/colour-name.ts';
import { isOil, type ToldAmount } from './amounts.ts';
import { carrierIn } from './carrier-told.ts';
import type { NamedThing, Words } from './entities.ts';
import { type Region, regionIn } from './regions.ts';

/** A wished colour: as it was typed, and what was understood. */
export type Target = { readonly text: string; readonly hex: string; readonly name: string };

/** What a question tells, each part in words that the options' grammars read; what it does not tell is undefined. */
export type Facts = {
  /** Colourants and ingredients by name, in order. */
  readonly named: readonly string[];
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
  readonly target: Target | undefined;
  readonly region: Region | undefined;
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
  const asPortion =
    amounts.find(({ of }) => of === 'batter' || of === 'oils') ??
    amounts.find(({ of, measure }) => of === 'unsaid' && measure === 'mass');
  const powder = amounts.find(({ of }) => of === 'powder');
  const perPound = amounts.find(one => one.perPound);
  const portion = asPortion && withMeasured(asPortion);
  const first = things[0];
  return {
    named: unique(things.map(thing => thing.text)),
    portion,
    size: portion,
    powder: (powder ?? amounts.find(({ of }) => of === 'unsaid'))?.text,
    carrier: carrierIn(text),
    strength: perPound ? `${perPound.text} ppo` : strengthIn(words, things),
    mix: mixOf(things, amounts),
    oils: oilsIn(words, amounts),
    superfat: superfatIn(text),
    percent: figureBefore(text, /(\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)/u),
    concentration: figureBefore(
      text,
      /(?:concentra\w*|lye strength|solution|solucion)\D{0,12}(\d+(?:[.,]\d+)?)|(\d+(?:[.,]\d+)?) ?% ?(?:de |of )?(?:lye|concentra\w*|solution)/u,
    ),
    portions: undefined,
    target: targetIn(question, words, things),
    region: regionIn(text),
    fromShelf:
      /\b(?:my|mi|mis) (?:shelf|estanteria|estante|repisa|inventario|stash|colours|pigments|micas|pigmentos|colores)\b/u.test(
        text,
      ),
    subject: first?.text ?? subjectIn(text),
    findings: findingsIn(question),
  };
}

const unique = (names: readonly string[]) => [...new Set(names)];

const withMeasured = ({ text, of }: ToldAmount) =>
  of === 'oils'
    ? `${text} oils`
    : of === 'batter' && /\b(?:g|gr|grams?|gramos?|kg|kilos?|oz|lbs?|pounds?|libras?|onzas?)\b/u.test(text)
      ? `${text} batter`
      : text;

const STRENGTHS: readonly (readonly [name: string, RegExp])[] = [
  ['double', /\b(?:double|twice|el doble|doble)\b/u],
  [
    'half',
    /\b(?:half (?:of )?(?:the )?(?:usual|normal|strength|dose)|(?:a )?la mitad de lo|media (?:fuerza|dosis|intensidad))\b/u,
  ],
  [
    'tint',
    /\b(?:hint|tint|barely|just a touch|touch|tiny bit|apenas|toque|pizca|un pelin|whisper|very (?:light|pale)|super (?:light|pale)|muy (?:clar\w*|palid\w*|suave)|casi blanco)\b/u,
  ],
  [
    'pastel',
    /\b(?:pastel|pale|light|soft|baby|clarit[oa]s?|clar[oa]s?|palid[oa]s?|suave|suavecit[oa]|minty|muted|delicate|bajit[oa])\b/u,
  ],
  [
    'medium',
    /\b(?:medium|mid|medi[oa]n[oa]|(?:tono|color|intensidad|azul|rojo|verde|rosa|amarillo|fuerza) medi[oa]|half strength)\b/u,
  ],
  [
    'full',
    /\b(?:full|bold|strong|really pop|pop|bright|intense|intens[oa]s?|fuerte|vivo|viva|saturated|vibrant|rich|deep|dark|oscur[oa]s?|vivid|black black|jet black|subid[oa]|bien (?:rojo|azul|negro|blanco|cafe|verde|morado|amarillo|rosa|naranja|fuerte)|(?:properly|proper|really|truly|true|solid|stark|super) (?:white|black|red|blue|green|pink|yellow|orange|purple|brown)|(?<hue>blanc[oa]|negr[oa]|roj[oa]|azul|verde|morad[oa]|amarill[oa]|rosa|white|black|red|blue|green|pink|purple|yellow) \k<hue>|chillon|a tope|maxim[oa])\b/u,
  ],
];

/** The strength a question wishes, looked for outside the colourants' names. */
function strengthIn({ words }: Words, things: readonly NamedThing[]): string | undefined {
  const rest = words
    .map((word, at) => (things.some(({ from, to }) => at >= from && at < to) ? ';' : word))
    .join(' ')
    .replaceAll('colour', 'color');
  return STRENGTHS.find(([, pattern]) => pattern.test(rest))?.[0];
}

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

/** From the first oil or its amount to the last, where that reads as a list of oils. */
function oilsIn({ words }: Words, amounts: readonly ToldAmount[]): string | undefined {
  const oils = words.flatMap((_, at) => (isOil(words, at) ? [at] : []));
  const [first] = oils;
  if (first === undefined || !/\d/u.test(words.join(' '))) return undefined;
  const masses = amounts.filter(({ measure, of }) => measure === 'mass' && of !== 'powder');
  // "720 oliva, 80 coco": figures without a unit.
  const bare = words.flatMap((word, at) =>
    /^\d+$/u.test(word) &&
    (isOil(words, at + 1) || (/^(?:de|of)$/u.test(words[at + 1] ?? '') && isOil(words, at + 2)))
      ? [at]
      : [],
  );
  const starts = [Math.min(first, ...bare, ...masses.map(({ from }) => from))];
  const last = oils.at(-1)!;
  const ends = [last + 5, last + 4, last + 3, last + 2, last + 1, ...masses.map(({ to }) => to)].sort(
    (a, b) => b - a,
  );
  for (const start of starts)
    for (const end of ends) {
      const list = words
        .slice(start, end)
        .filter(word => !/^[?!;.()]$/u.test(word))
        .join(' ')
        .replace(/\b(?:with|con|at|al|a|for|superfat|please|de lye)$/u, '')
        .trim();
      if (parses(list)) return list;
      const grams = inGrams(list);
      if (grams !== undefined && parses(grams)) return grams;
    }
  return undefined;
}

/**
 * Whole figures without any unit that are too large for percents are grams, as kitchen scales tell them; the line that is
 * shown says so.
 */
function inGrams(list: string): string | undefined {
  const figures = list.match(/\d+/gu)?.map(Number) ?? [];
  const sum = figures.reduce((total, figure) => total + figure, 0);
  if (sum <= 101 || figures.some(figure => figure < 10) || /\d\s*(?:%|g|kg|oz|lb)\b/u.test(list))
    return undefined;
  return list.replace(/\d+/gu, figure => `${figure} g`);
}

function parses(list: string): boolean {
  try {
    return parseOils(list).shares.length > 0;
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}

function superfatIn(text: string): number | undefined {
  const match =
    /(\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)? ?(?:de )?(?:superfat|sf|sobre ?engrasado|sobregrasa)|(?:superfat|sf|sobre ?engrasado|sobregrasa) (?:of |de |del |at |al )?(\d+(?:[.,]\d+)?)/u.exec(
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

const BEFORE_TARGET =
  /\b(?:to get|to make|make it|make me|make|get|achieve|mix|reach|for|hit|match|hago|hacer|saco|sacar|consigo|conseguir|logro|lograr|obtengo|obtener|quiero|want|need|necesito|salga|quede|lograr|recipe for|receta (?:de|para))\s+(?:it |me |mi |my |this |to |get |make |a |an |the |un |una |el |la |al |colou?r |tono |de |some |like )*(.+)$/u;
const AFTER_TARGET =
  /\s+(?:from|with|out of|using|i (?:only |just )?(?:got|have)|con|usando|de mi|de lo que|in (?:cp|cold|my|soap|lye|\d)|for \d|para \d|en (?:cp|jabon|mi|\d)|on my shelf|how|if|but i|sin|without|please|porfa\w*|por favor|because|since|so|my (?:base|batter|soap|oils)|mi (?:base|masa|mezcla|jabon)|pero|porque|and i do|(?:and |but )?all i|lo unico|[?!;.,]|en que|que no|solo con|si (?:tengo|solo)|that|which)(?:\s.*|$)/u;

function targetIn(question: string, { text }: Words, things: readonly NamedThing[]): Target | undefined {
  const hex = /#[\da-f]{6}\b|#[\da-f]{3}\b/iu.exec(question)?.[0];
  if (hex) return { text: hex.toLowerCase(), hex: colourNamed(hex)?.hex ?? hex, name: hex };
  const asked = /\b(?:what|que|which) ((?:\p{L}+ )?\p{L}+) (?:can i|could i|puedo|podria)\b/u.exec(text)?.[1];
  const head = /\b(?:como|how)\s*\?*$/u.test(text)
    ? text.replace(/\s+(?:solo|only|con|with|sin|,|how|como).*$/u, '')
    : undefined;
  const fallback = wishedIn(text, things);
  const phrase = asked ?? BEFORE_TARGET.exec(text)?.[1]?.replace(AFTER_TARGET, '').trim() ?? head;
  if (phrase === undefined || phrase === '' || phrase.split(' ').length > 8) return fallback;
  // What can be wetted is no wish: "how do I mix titanium dioxide".
  if (
    things.some(
      thing =>
        thing.text === phrase &&
        thing.colourants.length > 0 &&
        /\b(?:oxide|mica|clay|oxido|arcilla|dioxide|lake)\b/u.test(phrase),
    )
  )
    return undefined;
  const named = colourNamed(phrase);
  // "A recipe of maize cakes" wishes no colour: a thing is one only where colour is spoken of.
  if (!named || (isOnlyThing(named.name) && !/\b(?:colou?r|tono|tone|shade|like|como)\b/u.test(text)))
    return fallback;
  return { text: phrase, hex: named.hex, name: named.name };
}

const isOnlyThing = (name: string): boolean =>
  !name.includes(' ') && !isColourWord(name) && !/^#/u.test(name);

/** Turns of phrase that ask for a mix, whatever the order of words: "olive green what colors do i use". */
const WISHES =
  /\b(?:mix|blend|combin\w+|mezcl[oa]\w*|junto|what colors?|which (?:colors?|pigments?|micas?)|que (?:colores|uso)|how would i|close to|yields?|gives?|con que)\b/u;
const DEPTH =
  /^(?:light|dark|deep|pale|dusty|bright|warm|soft|muted|burnt|hot|baby|claro|clara|oscuro|oscura|viejo|quemado|palido|fuerte|pastel)$/u;

/** The first word of the trade for a colour that is no part of a colourant's name, where a mix is asked for. */
function wishedIn(text: string, things: readonly NamedThing[]): Target | undefined {
  if (!WISHES.test(text)) return undefined;
  const words = text.split(' ').slice(0, 60);
  const isFree = (from: number, to: number) => !things.some(one => from < one.to && one.from < to);
  for (let length = 4; length > 0; length -= 1)
    for (let at = 0; at + length <= words.length; at += 1) {
      const name = words.slice(at, at + length).join(' ');
      if (!isFree(at, at + length) || !isColourWord(name)) continue;
      const from = DEPTH.test(words[at - 1] ?? '') ? at - 1 : at;
      const to = DEPTH.test(words[at + length] ?? '') ? at + length + 1 : at + length;
      const wish = words.slice(from, to).join(' ');
      const named = colourNamed(wish);
      if (named) return { text: wish, hex: named.hex, name: named.name };
    }
  return undefined;
}

const SUBJECT =
  /\b(?:can i (?:use|put|add)|will|does|do|is|are|puedo (?:usar|echar|poner|ponerle|echarle|meter)|le puedo (?:echar|poner)|si (?:uso|le pongo|le echo)|se puede (?:usar|poner|echar)|what about|el|la|los|las)\s+(?:i |you |use |put |add |gotta |have to |the |a |an |some |my |mi |el |la |un |una |de )*(.+?)(?=\s+(?:survive|stay|hold|fade|bleed|turn|work|instead|in|to|for|as|ok|be|make|going|allowed|legal|safe|permitted|aguanta|sobrevive|resiste|en|para|como|se|es|esta|sirve|funciona|por|con|if|si)\b|\s*[?!.,;]|$)/u;

/** What stands where the thing asked about would stand. */
const subjectIn = (text: string): string | undefined =>
  SUBJECT.exec(text)?.[1]?.split(' ').slice(0, 5).join(' ');

/** Signs of a flaw that the flaws' own reader finds; metals in soap are a matter of their own. */
function findingsIn(question: string): number {
  try {
    return diagnose(question.slice(0, 600)).findings.length;
  } catch (refusal) {
    if (refusal instanceof Refusal) return 1;
    throw refusal;
  }
}
