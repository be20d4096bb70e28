import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { isOfCraft } from '../learned/topics.ts';
import { LYE } from './dose-by-phrase.ts';

const HOW = new RegExp(
  unbroken`
    (?<!\p{L})(?:how (?:do|can|would|could|might|to|d)(?: (?:i|we|you|one))? (?:get|make|mix|reach|do)|
    how(?:'?d)? you (?:get|make|mix)|(?:como|con que|de que forma) (?:(?:hago|hacemos|consigo|saco|logro|
    obtengo|llego a|mezclo)|se (?:hace|consigue|logra|saca|mezcla|obtiene)|puedo (?:hacer|conseguir|sacar|
    lograr))|(?:what|que) (?:ratio|proporcion|mezcla)|con que (?:lo |la )?(?:se (?:hace|consigue|logra|arma)|armo|arman?))(?!\p{L})
  `,
  'u',
);
const WISHED = new RegExp(
  unbroken`
      ^(?:el|la|un|una|ese|esa|este|esta|the|an?|that|this|some|color|colou?r|tono|shade|of|
      de|i|want|quiero|querria|quisiera|busco|for|after|hacer|lograr|sacar|conseguir)$
    `,
  'u',
);
/** What a hue is likened to stands behind it, or before it in English. */
const LIKENED = /^(?:de|del|como|tipo|estilo|medio|tirando|like|of|as|on|que|igual|a)$/u;
/** "The green on my uniform, sort of bottle green": how a colour is put right, and no stain on a thing. */
export const OF_CRAFTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:paint|wall|hair|nails?|icing|frosting|cake|candles?|wax|resin|yarn|wool|cloth|fabric|shirt|
    stains?|pool|crust|fried|pintura|pared|pelo|unas|glaseado|betun|velas?|cera|resina|lana|tela|camisa|
    manchas?|piscina|alberca|croquetas?|pan|pollo|carne|cebolla|caramelo|horno)(?!\p{L})
  `,
  'u',
);

/** How a hue is got that is likened to something: "el dorado de la piedra al atardecer", "un terracota como los cerros". */
function isLikenedHue(read: Words, { things, amounts }: Found): boolean {
  const { words, text } = read;
  if (!HOW.test(text) || OF_CRAFTS.test(text) || LYE.test(text)) return false;
  if (isOfCraft(words) || amounts.some(({ of }) => of === 'powder')) return false;
  const isOfThing = (at: number) =>
    things.some(
      ({ from, to, colourants }) =>
        at >= from && at < to && to - from > 1 && colourants.length > 0 && !LIKENED.test(words[from + 1]!),
    );
  return words.some(
    (word, at) =>
      !isOfThing(at) &&
      isColourWord(foldedColour(word)) &&
      WISHED.test(words[at - 1] ?? '') &&
      LIKENED.test(words[at + 1] ?? ''),
  );
}

/** What is mixed for a hue that was told. */
const MIXED_FOR = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:what|which)(?: \p{L}+){0,2} (?:do|would|should|can|could) (?:i|you|we) mix (?:for|to)|que (?:\p{L}+ )?(?:mezclo|combino|junto|sumo) para|
    with (?:which|what) (?:\p{L}+ )?(?:pigments?|powders?|colou?rs?|micas?|oxides?|colou?rants?) (?:may|can|do|
    could|would|should|might) (?:i|you|we|one)|con (?:que|cuales) (?:pigmentos?|polvos?|colores|micas?|oxidos?|
    colorantes?) (?:se )?(?:puedo|puede|hago|saco|consigo|logro|llego|armo|hace|saca|logra))(?!\p{L})
  `,
  'u',
);
const FADES =
  /(?<!\p{L})(?:in (?:the )?(?:lye|light|sun)|surviv\p{L}*|aguant\p{L}*|bleed\p{L}*|fad\p{L}*)(?!\p{L})/u;
/** What comes to a hue that is named, where no colourant is: no amount is asked. */
function isMixed(read: Words, found: Found): boolean {
  const { text, words } = read;
  if (FADES.test(text) || LYE.test(text) || isOfCraft(words) || found.amounts.length > 0) return false;
  const isOfHue =
    found.things.every(({ colourants }) => colourants.length === 0) &&
    words.some(word => isColourWord(foldedColour(word)));
  return MIXED_FOR.test(text) && isOfHue;
}

const MAKES = new RegExp(
  unbroken`
    ^(?:whats?|which|what|que|con que|cual) (?:colou?rs? |powders? |mix )?(?:makes?|gives?|would make|
    will make|gets me|do i mix for|to mix for|me da|da|hace|se mezcla para)(?: (?:a|an|the|un|una|el|good|
    nice|proper|decent|lovely|buen|buena|lindo|linda|bonito|bonita))* (?:\p{L}+[ -]){0,2}(\p{L}+)$
  `,
  'u',
);
/** "What makes a good grey-blue": a hue at the end, and nothing else. */
const isMadeHue = ({ text }: Words, { things, amounts }: Found): boolean => {
  const [, hue] = MAKES.exec(text.replace(/[?.!]+$/u, '').trim()) ?? [];
  const isNamed = things.some(({ colourants }) => colourants.length > 0);
  return hue !== undefined && !isNamed && amounts.length === 0 && isColourWord(foldedColour(hue));
};

const ITS_COLOUR_MADE = new RegExp(
  unbroken`
    (?<!\p{L})(?:how (?:do|does|can|would|could|might|d) (?:i|you|we|one) (?:arrive at|achieve|obtain|reach) (?:(?:a|an|
    the) )?|(?:how (?:do|does|can|would|could|might|d) (?:i|you|we|one) (?:make|get|mix)|como (?:se )?(?:hace|hacen|
    hago|hacemos|saca|saco|logra|logro|consigue|consigo|prepara|preparo)) (?:the|an?|el|un|ese|este) (?:colou?r|
    color|shade|tono)(?: of| de)? (?:(?:the|la|el) )?)(\p{L}+)
  `,
  'u',
);
/** "Cómo se hace el color mostaza": a colour by that word. */
function isColourMade({ text, words }: Words): boolean {
  const [, hue] = ITS_COLOUR_MADE.exec(text) ?? [];
  return hue !== undefined && isColourWord(foldedColour(hue)) && !OF_CRAFTS.test(text) && !isOfCraft(words);
}

/** How pale or deep, and what opens a hue: "a nice light grey", "un gris clarito". */
const BEFORE_HUE = new RegExp(
  unbroken`
    ^(?:an?|the|that|this|some|my|it|to|be|good|nice|proper|decent|lovely|really|very|soft|light|pale|mid|medium|middle|dark|deep|dusty|muted|
    warm|cool|bright|un|una|el|la|ese|esa|lindo|linda|bonito|bonita|buen|buena|tono|color|colou?r|shade|of|de)$
  `,
  'u',
);
/** What may stand behind the hue that is wished, where it is all that is wished. */
const BEHIND_HUE = new RegExp(
  unbroken`
    ^(?:[?.!,;:(]|in|for|from|with|using|by|without|if|en|para|pa|con|de|desde|usando|sin|si|claro|clara|clarit[oa]|oscur[oa]|medio|suave|
    palid[oa]|please|porfa|por|and|y|but|pero|when|cuando|that|que|colou?r|soap|batter|bars?|jabon|masa|i|tengo)$
  `,
  'u',
);
/** Other goods, some of them called as a hue is: "crema", "rubor", "blush". */
const OTHER_GOODS = new RegExp(
  unbroken`
    (?<!\p{L})(?:cremas?|rubor(?:es)?|blush(?:er)?|espuma|bubbles?|balm|balsamo|labial|lipstick|eye ?shadow|sombras? de ojos|make ?up|maquillaje|
    cake|torta|icing|glaseado)(?!\p{L})
  `,
  'u',
);

/** How a hue is got that is named outright: "how do I get light grey in 500 g oils", "cómo saco morado". */
function isHueGot(read: Words, { things }: Found): boolean {
  const { text, words } = read;
  if (!HOW.test(text) || OF_CRAFTS.test(text) || LYE.test(text) || isOfCraft(words)) return false;
  if (OTHER_GOODS.test(text)) return false;
  const isOfPowder = (at: number) =>
    things.some(({ from, to, colourants }) => from <= at && at < to && colourants.length > 0);
  return words.some((word, at) => {
    if (!GOT.test(word) || !HOW.test(words.slice(Math.max(0, at - 4), at + 1).join(' '))) return false;
    const rest = words.slice(at + 1);
    const first = rest.findIndex(one => !BEFORE_HUE.test(one));
    const place = at + 1 + first;
    // "Dusty mauve", "gris perla": the hue may be of two words.
    const length = first < 0 ? 0 : hueLength(words, place);
    const behind = words[place + length];
    return length > 0 && !isOfPowder(place) && (behind === undefined || BEHIND_HUE.test(behind));
  });
}
const GOT =
  /^(?:get|make|mix|reach|hago|hacemos|consigo|saco|logro|obtengo|mezclo|hacer|conseguir|sacar|lograr|hace|consigue|logra|saca|obtiene)$/u;
const hueLength = (words: readonly string[], at: number): number =>
  [3, 2, 1].find(length => isColourWord(foldedColour(words.slice(at, at + length).join(' ')))) ?? 0;

/** What it is made of, at the end of a sentence: "what powders?", "from what?", "con qué polvos?" */
const OF_WHAT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:what|which) (?:powders?|pigments?|colou?rants?|oxides?|micas?)(?: (?:make|makes|do i (?:use|need|mix)|would|for (?:that|it)|give|
    gives|are in it))*|
    (?:made |mixed )?(?:from|of|out of|with) what|(?:con|de|a partir de) que(?: (?:polvos?|pigmentos?|colorantes?|oxidos?|micas?))?(?: (?:lo|
    la) (?:hago|saco|armo|mezclo))?|
    (?:que|cuales) (?:polvos?|pigmentos?|colorantes?|oxidos?|micas?)(?: (?:uso|llevo|lleva|mezclo|pongo|junto|serian))?)(?= ?(?:$|[?.!;]))
  `,
  'u',
);
const TO_BUY =
  /(?<!\p{L})(?:buy|start(?:er|ing)?|begin\p{L}*|first|order|comprar|compro|empezar|principiante|primeros?)(?!\p{L})/u;
/** "Fog. Grey with a little blue in it. What powders?": a hue is told, and no powder. */
const isMadeOfWhat = ({ text, words }: Words, { things, amounts }: Found): boolean =>
  OF_WHAT.test(text) &&
  !TO_BUY.test(text) &&
  !FADES.test(text) &&
  !LYE.test(text) &&
  !isOfCraft(words) &&
  !OF_CRAFTS.test(text) &&
  amounts.length === 0 &&
  things.every(({ colourants }) => colourants.length === 0) &&
  words.some(word => isColourWord(foldedColour(word)));

/** Whether a question asks how a hue is made: one that is likened to something, or is named alone, or by the word "colour". Pure. */
export const asksHowAHueIsMade = (words: Words, found: Found): boolean =>
  isMixed(words, found) ||
  isLikenedHue(words, found) ||
  isMadeHue(words, found) ||
  isColourMade(words) ||
  isHueGot(words, found) ||
  isMadeOfWhat(words, found);
