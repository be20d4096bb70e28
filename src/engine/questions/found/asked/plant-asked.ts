import { unbroken } from '../../../over-lines.ts';
import { LONGEST_PLANT, type PlantClass, plantNamed } from '../../../stability/plant-classes.ts';
import { foldedColour, isColourWord } from '../../../text/colours/folded-colours.ts';
import type { NamedThing } from '../names/named-thing.ts';
import type { Words } from '../words-of.ts';

/** Longer questions tell more than a plant and what is asked of it. */
const MOST_WORDS = 12;
/** What of a plant is ground, steeped or pressed. */
const PART = new RegExp(
  unbroken`
    ^(?:powder(?:ed)?|polvo|roots?|raiz|raices|lea(?:f|ves)|hojas?|petals?|petalos?|flowers?|flor(?:es)?|
    husks?|hulls?|skins?|cascaras?|peels?|piel|pits?|stones?|hueso|pepas?|bark|corteza|wood|madera|
    extracto?|flour|harina|ground|molid[oa]s?|sec[oa]s?|dried|puree|pure|infusion|juices?|jugo|zumo)$
  `,
  'u',
);
const PART_IN_NAME =
  /powder|polvo|root|raiz|petal|skin|cascara|pit|stone|hueso|pepa|peel|husk|hull|rind|leaf|hoja|flower|flor|bark|wood|palo|grounds|borra/u;
/** Words with which a colour is asked of it. */
const ASKS = new RegExp(
  unbroken`
    ^(?:for|to|gives?|giving|makes?|turns?|goes?|stays?|keeps?|holds?|lasts?|fades?|works?|ok|okay|para|pa|
    dan?|daran?|daria|tin[eo]n?|quedan?|sirven?|valen?|aguantan?|duran?|mantienen?|salen?|can|could|puedo|
    puede|does|do|will|is|are)$
  `,
  'u',
);
/** And those that may stand around them. */
const BESIDE = new RegExp(
  unbroken`
    ^(?:i|we|you|u|it|its|use|using|usar|add|put|poner|echar|get|give|make|be|an?|the|my|some|any|in|into|
    with|as|of|from|soaps?|cp|batter|bars?|colou?rs?|nice|good|real|natural|naturally|pretty|what|about|hey|
    hi|hello|please|pls|thanks|o|or|y|and|el|la|los|las|una?|de|del|en|se|le|lo|me|si|no|not|nada|algo|hola|
    buenas|jabon(?:es)?|masa|bonito|lindo|porfa|que|tal|alguien|anyone|french|organic|sweet|fresh|raw|turn|
    stay|keep|work)$
  `,
  'u',
);
const MARK = /^\P{L}+$/u;

/** Sugars and drinks that colour by the way: they are asked about for other reasons too. */
const BY_THE_WAY: ReadonlySet<PlantClass> = new Set(['browned-sugar']);

type Span = { readonly name: string; readonly from: number; readonly to: number; readonly of?: PlantClass };

/** The plants and foods of a question, each by its longest name. */
function plantsIn(words: readonly string[], things: readonly NamedThing[]): readonly Span[] {
  const found: Span[] = things
    .filter(({ colourants }) => colourants[0]?.kind === 'botanical')
    .map(({ text, from, to }) => ({ name: text, from, to }));
  for (let length = LONGEST_PLANT; length > 0; length -= 1)
    for (let from = 0; from + length <= words.length; from += 1) {
      const to = from + length;
      const name = words.slice(from, to).join(' ');
      const of = found.some(one => from < one.to && one.from < to) ? undefined : plantNamed(name)?.of;
      if (of !== undefined) found.push({ name, from, to, of });
    }
  return found;
}

const isHue = (word = ''): boolean => isColourWord(foldedColour(word));

/** "Will it make pink soap", "se queda rosa no": a hue is asked of what was told. */
const MAKES_HUE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:will|would|does|do|can|could) (?:it|they|that|this|those|these|
    the \p{L}+)(?: \p{L}+)? (?:make|give|turn|stay|be|keep|colou?r|go)(?: \p{L}+){0,4}|(?:me |se |lo |
    la )*(?:quedara?n?|queda|da|dara|dan|daran|hace|hara|sale|saldra|tine|pone)(?: \p{L}+){0,3})$
  `,
  'u',
);
const MOST_OF_A_STORY = 28;

/** The one plant that a longer text tells of, where a hue is asked of it and no colourant stands beside it. */
function plantToldBefore(words: readonly string[], things: readonly NamedThing[]): string | undefined {
  // An amount is told or asked: that is no question of a hue alone.
  if (words.length > MOST_OF_A_STORY || words.some(word => /\d|^(?:cuant[oa]s?|much|many)$/u.test(word)))
    return undefined;
  const [plant, ...more] = plantsIn(words, things);
  if (!plant || more.some(({ name }) => name !== plant.name)) return undefined;
  if (
    things.some(({ from, to, colourants }) => (from >= plant.to || to <= plant.from) && colourants.length > 0)
  )
    return undefined;
  const hues = words.flatMap((word, at) => (isHue(word) && at >= plant.to ? [at] : []));
  return hues.some(at =>
    MAKES_HUE.test(
      words
        .slice(plant.to, at)
        .join(' ')
        .replace(/[^\p{L} ]+/gu, ' ')
        .trim(),
    ),
  )
    ? plant.name
    : undefined;
}

/**
 * The one plant or food that a short question asks a colour of and that every other word only asks about: "lombarda da morado?",
 * "onion skins for yellow", "rosehip powder?". A hue that is called after a plant ("avocado green", "verde oliva") asks for none.
 * Undefined where more is told. Pure.
 * @example plantAsked(wordsOf('brazilwood for pink?'), []) // 'brazilwood'
 */
export function plantAsked({ words }: Words, things: readonly NamedThing[]): string | undefined {
  if (words.length > MOST_WORDS) return plantToldBefore(words, things);
  const [plant, ...more] = plantsIn(words, things);
  if (!plant || more.length > 0) return undefined;
  const others = things.filter(({ from, to }) => from >= plant.to || to <= plant.from);
  if (others.some(({ colourants }) => colourants.length > 0)) return undefined;
  const beside = words.filter((word, at) => (at < plant.from || at >= plant.to) && !MARK.test(word));
  if (!beside.every(word => PART.test(word) || ASKS.test(word) || BESIDE.test(word) || isHue(word)))
    return undefined;
  const hues = beside.filter(isHue).length;
  const isPart = beside.some(word => PART.test(word)) || PART_IN_NAME.test(plant.name);
  if (beside.length === 0 && plant.name.split(' ').every(isHue)) return undefined;
  const isAsked = isPart || beside.some(word => ASKS.test(word)) || (words.includes('?') && hues === 0);
  if (!isAsked || (plant.of !== undefined && BY_THE_WAY.has(plant.of) && hues === 0)) return undefined;
  // "Verde oliva", "avocado green": a hue right beside it is called after it.
  const isShade = !isPart && (isHue(words[plant.from - 1]) || isHue(words[plant.to]));
  return isShade ? undefined : plant.name;
}
