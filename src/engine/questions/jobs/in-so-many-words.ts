import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { isOfCraft } from '../learned/topics.ts';
import { isRunOut } from './command-for.ts';
import { LYE } from './dose-by-phrase.ts';

const isNamed = ({ things }: Found): boolean => things.some(({ colourants }) => colourants.length > 0);

const LIST = '(?:list|shelf|stock|inventory|stash|lista|estante|estanteria|repisa|inventario)';
/** A jar that is to stand on the list from now on. */
const NOTED = new RegExp(
  unbroken`
    ^\P{L}*(?:(?:please|pls|hey|hi|hola|oye|porfa(?:vor)?|can you|could you|puedes|podrias|me) )*(?:(?:add|put|
    stick|pop|chuck|bung|whack|note|jot|write|log|pon(?:me|er|lo)?|mete(?:me)?|agrega(?:me)?|anade(?:me)?|
    anota(?:me)?|apunta(?:me)?|suma(?:me)?) (?:.{2,60}? )?(?:on|onto|to|in|into|down on|a|en) (?:my|the|mi|
    la|el) (?:\p{L}+ )?${LIST}|(?:put|write|jot|note|mark) (?:me |it )?(?:down )?(?:that )?(?:i have|ive|i own|we own|we have|
    i ['’]?ve|i['’]ve)(?: got)?|(?:anota|apunta|registra)(?:me)? (?:que )?(?:tengo|me quedan?|compre))(?!\p{L})
  `,
  'u',
);
/** "Note that I've got a batch of red in the mould" is of no jar. */
const OF_A_BATCH = new RegExp(
  unbroken`
    (?<!\p{L})(?:batch|loaf|bars?|batter|mou?ld|recipe|shopping|to do|todo|wish|lote|pastillas?|masa|
    molde|receta|compras?|quita\p{L}*|borra\p{L}*|saca\p{L}*)(?!\p{L})|(?<!\p{L})off (?:my|the) (?:list|shelf|stock)
  `,
  'u',
);
/** Whether a jar is told to be noted: "stick brown oxide on my list". */
const isNotedJar = ({ text }: Words, found: Found): boolean =>
  isNamed(found) && NOTED.test(text) && !OF_A_BATCH.test(text) && !LYE.test(text);

const COLOURS_WITH = new RegExp(
  unbroken`
    (?<!\p{L})(?:colou?r(?:ing)?|tint(?:ing)?|tenir|colorear|dar(?:le)? color) (?:it |them |soaps? |
    my soaps? |(?:el|mi|los|un) jabon(?:es)? )?(?:with|con) (?:the |a |el |la |un |una )?(\p{L}+)
  `,
  'u',
);
const MAY = new RegExp(
  unbroken`
    ^\P{L}*(?:(?:hi|hey|hola|oye|so|and|y) )?(?:is it (?:ok|okay|all right|alright|safe|fine)|can (?:i|you|
    we|one)|could (?:i|you|we)|may i|is there any point|does it work|se puede|puedo|podria|sirve|vale|
    esta bien)(?!\p{L})
  `,
  'u',
);
/** Whether a thing may colour, and no craft is named that it colours: "is it okay to colour with paprika". */
function isColouredWith({ text, words }: Words, { things }: Found): boolean {
  const with_ = COLOURS_WITH.exec(text)?.[1];
  return (
    with_ !== undefined &&
    MAY.test(text) &&
    !isOfCraft(words) &&
    things.some(({ text: name, colourants }) => colourants.length > 0 && name.split(' ')[0] === with_)
  );
}

const RATIO = new RegExp(
  unbroken`
    (?<!\p{L})(?:ratios?|proportions?|proporcion(?:es)?|how much \p{L}+(?: \p{L}+){0,2} and \p{L}+(?: \p{L}+){0,2} for)(?!\p{L})
  `,
  'u',
);
/** Whether a hue can be had of what is named. */
const ATTAINED = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:can|could|may|might) (?:i|we|you|one) (?:hit|get (?:to )?|reach|make|achieve|manage|mix|match)|
    attainable|achievable|reachable|possible (?:from|with|to (?:get|make|reach|hit))|doable|(?:puedo|se puede|
    podria) (?:hacer|lograr|sacar|llegar a|conseguir|obtener)|alcanzable)(?!\p{L})
  `,
  'u',
);
/** Whether a hue is wished and what it is to be mixed of is named: "dusty mauve; I have violet, brown oxide, TD. Ratios?" */
function isHueOfSeveral({ text, words }: Words, { things }: Found): boolean {
  const powders = things.filter(({ colourants }) => colourants.length > 0);
  const isFree = (at: number) => !things.some(({ from, to }) => at >= from && at < to);
  const isHue = words.some((word, at) => isFree(at) && isColourWord(foldedColour(word)));
  return (
    powders.length > 1 &&
    isHue &&
    (RATIO.test(text) || ATTAINED.test(text)) &&
    !LYE.test(text) &&
    !isOfCraft(words)
  );
}

const RECORDED = new RegExp(
  unbroken`
    (?<!\p{L})(?:list|show(?: me)?|read out|what are|lista(?:me)?|muestra(?:me)?|muestrame|ensename|dime) (?:(?:all|
    of|de|the|my|every|todos?|todas?|los|las|mis) )*(?:colou?rants?|colou?rs?|pigments?|micas?|oxides?|jars?|
    powders?|colorantes?|colores|pigmentos?|oxidos?|polvos?|botes|frascos) (?:(?:that|which|que) )?(?:(?:i|ive|
    i've|tengo|he|ya) )*(?:(?:have|got|put|so far|ya) )*(?:recorded|noted|saved|kept|listed|stored|registered|
    written down|on (?:file|record|my (?:list|shelf))|anotad[oa]s|guardad[oa]s|registrad[oa]s|apuntad[oa]s)(?!\p{L})
  `,
  'u',
);
/** What is kept where colours are kept: "qué colores tenemos anotados en el armario", "what powders have we got in the cupboard". */
const KEPT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:what|which|how many) (?:colou?rs?|colou?rants?|pigments?|micas?|oxides?|powders?|jars?)(?: (?:do|are|have|did))?(?: (?:i|we|you|
    there))?(?: (?:still|got|have|left|kept|noted|written|down|listed|own))*|
    (?:que|cuales|cuantos) (?:colores|colorantes|pigmentos|micas|oxidos|polvos|botes|frascos)(?: (?:me|nos))?(?: (?:tengo|tenemos|hay|quedan|guardo|
    guardamos|anote|anotamos|estan))?(?: (?:ya|todavia|aun|anotad[oa]s|guardad[oa]s|apuntad[oa]s|registrad[oa]s))*)
    (?: (?:on|in|at|en|de|del|sobre))+(?: (?:my|our|the|mi|mis|nuestro|nuestra|el|la|los|las))? (?:shelf|shelves|cupboard|drawer|cabinet|closet|stash|
    box|list|
    inventory|armario|estante|estanteria|repisa|cajon|despensa|alacena|lista|inventario|caja|mueble)(?!\p{L})
  `,
  'u',
);
const STRUCK_OFF =
  /(?<!\p{L})(?:remove|delete|take|get rid|strike|cross|clear|drop|quit[ae]\p{L}*|sac[ao]\p{L}*|borr[ae]\p{L}*|elimin[ae]\p{L}*)(?!\p{L})/u;
/** "My red oxide jar is empty, remove it": it goes off the shelf. */
const isEmptyJar = ({ text }: Words, found: Found): boolean =>
  isNamed(found) && isRunOut(text) && STRUCK_OFF.test(text) && !LYE.test(text);

/** A job that a question asks for in so many words, which the judge of jobs may never have met. Pure. */
export function jobInSoManyWords(
  words: Words,
  found: Found,
): 'shelf-add' | 'shelf-show' | 'shelf-use' | 'survives-lye' | 'mix' | undefined {
  const isListed = RECORDED.test(words.text) || KEPT.test(words.text);
  if (isListed && !LYE.test(words.text)) return 'shelf-show';
  if (isEmptyJar(words, found)) return 'shelf-use';
  if (isNotedJar(words, found)) return 'shelf-add';
  if (isColouredWith(words, found)) return 'survives-lye';
  return isHueOfSeveral(words, found) ? 'mix' : undefined;
}
