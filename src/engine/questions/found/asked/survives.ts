import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { LONGEST_PLANT, type PlantClass, plantNamed } from '../../../stability/plant-classes.ts';
import { foldedColour, isColourWord } from '../../../text/colours/folded-colours.ts';
import { thingsIn } from '../names/entities.ts';
import { unlistedIn } from '../names/unlisted.ts';
import { wordsOf } from '../words-of.ts';

/** What is asked to survive lye: a plant or food by what colours it, or, without `of`, one that no list holds. */
export type SurvivalAsked = {
  /** As it was typed, in lower case without accents. */
  readonly name: string;
  /** Its name in the list. */
  readonly plant?: string;
  readonly of?: PlantClass;
  /** Whether soap or lye is spoken of. */
  readonly isOfSoap: boolean;
  /** As a juice, a tea or a puree it goes in for water. */
  readonly isLiquid: boolean;
};

/** What becomes of a colour, of whatever is named. */
const FATE = new RegExp(
  unbroken`
    \b(?:survive?s?|hold(?:s|ing)?|keeps?|stays?|stay put|lasts?|fades?|fading|colou?rfast|aguanta\w*|
    resist\w*|mantien\w*|mantener\w*|dura\w*|perdura\w*|queda(?!n? (?:en|un|poc))\w*|se (?:va|vaya|dana|
    pierde|pone|quema|destine)|destin\w*|cambia\w*|vira|tine|turns?|wont turn|who wins|quien gana)\b
  `,
  'u',
);
/** Whether it goes, which is of soap only beside a word of it. */
const FIT =
  /\b(?:ok|okay|fine|good|any good|alright|works?|pinta|sirve\w*|vale|va bien|se puede|funciona)\b/u;
const SOAP = new RegExp(
  unbroken`
    \b(?:soap\w*|jabon\w*|batter|masa|lye|sosa|soda|caustic\w?|lejia|naoh|sodium hydroxide|hidroxido|
    saponific\w*|alkali\w*|alcalin\w*|cp|cold process|bars?|barras?|gel|cure|curar)\b
  `,
  'u',
);
const FOR_WATER =
  /\b(?:instead of|in place of|as the|as my|for the|en vez de|en lugar de|por)(?: the| del| el)? ?(?:water|agua)\b/u;
const COLOUR =
  /\b(?:colou?rs?|red|pink|purple|blue|green|yellow|orange|brown|rojo|rosa|morado|azul|verde|amarill[oa]|naranja|marron|cafe)\b/u;
/** A bar that is made, an amount, or another matter than the colour. */
const NOT_ASKED = new RegExp(
  unbroken`
    \b(?:how (?:much|many|long|do|to)|cuant[oa]s?(?! (?:dura|aguanta|se mantiene|tarda))|went|turned|gone|
    came out|se puso|se volvio|quedo|salio|(?:ha|han) (?:quedado|puesto|vuelto|salido)|quedaron|salieron|
    se pusieron|what happened|que (?:le )?(?:ha )?pas(?:o|ado)|lost|recipe|receta|oz|lbs?|grams?|gramos|kg|
    kilos?|tsp|cucharad\w*)\b
  `,
  'u',
);
const EATEN = /\b(?:drink\w*|eat\w*|tomar|comer)\b/u;
const LIQUID = new RegExp(
  unbroken`
    \b(?:juices?|tea|infusion|brew|puree|pulp|smoothie|jugo|zumo|te|pure|pulpa|licuad[oa]|hervid[oa]|
    agua de|instead of water|wine|vino|beer|cerveza|stout|espresso|in place of|instead of|en vez de|
    en lugar de)\b
  `,
  'u',
);

/** A plant's oil is a fat or a scent, and a colour may only bear its name. */
const OTHERWISE = /^(?:oils?|butter|essential|fragrance|mica|oxide|clay|pigment|red|yellow|lake|tree)$/u;
const OTHERWISE_BEFORE =
  /\b(?:aceites?|manteca|fragancia|esencia|mica|arcilla|oxido)(?: esencial)?(?: de(?: la| el)?)?$/u;

/** What something turns is a hue, though a plant has its name: "se pone café", "se vuelve naranja". */
const BECOMES = new RegExp(
  unbroken`
    (?:^| )(?:(?:se )?(?:(?:me|te|le|nos) )?(?:pon(?:e|en|ga|gan|dra|er)|pus(?:o|ieron)|vuelv(?:e|en|a)|
    volvi(?:o|eron)|hace|hizo|torna|torno|qued(?:a|an|e|o|ara)|vira)|color|
    tono)(?: (?:a|medio|muy|todo|toda|bien|como|de|color))*$
  `,
  'u',
);
const isHueThere = (name: string, before: string): boolean =>
  BECOMES.test(before) && isColourWord(foldedColour(name));

function listedIn(words: readonly string[]): { name: string; plant: string; of: PlantClass } | undefined {
  for (let length = LONGEST_PLANT; length > 0; length -= 1)
    for (let from = 0; from + length <= words.length; from += 1) {
      const name = words.slice(from, from + length).join(' ');
      const found = plantNamed(name);
      const before = words.slice(Math.max(0, from - 3), from).join(' ');
      if (
        found &&
        !OTHERWISE.test(words[from + length] ?? '') &&
        !OTHERWISE_BEFORE.test(before) &&
        !isHueThere(name, before)
      )
        return { name, ...found };
    }
  return undefined;
}

/** "Does X survive lye", "X ok in soap", "X aguanta la sosa": what stands for X, of one to three words. */
const ASKED: readonly RegExp[] = [
  new RegExp(
    unbroken`
      ^(?:so |and |hi |hey |hello )?(?:does|do|will|would|is|are|can|could) (?:the |my |
      some )?(\p{L}+(?: \p{L}+){0,2}?) (?:survive|hold up|stay put|keep its colou?r|ok|okay|fine|good|
      any good|work) (?:in |to |with |against |the )*(?:lye|soap|cp|cold process|caustic)\b
    `,
    'u',
  ),
  /^(\p{L}+(?: \p{L}+){0,2}?) (?:ok|okay|fine|good|any good) in (?:my |a |cp |cold process )?soap\b/u,
  /^(?:el |la |los |las |y |hola )*(\p{L}+(?: (?:de )?\p{L}+){0,2}?) (?:aguantan?|resisten?|soportan?) (?:a )?(?:la |el )?(?:sosa|soda|lejia|jabon)\b/u,
  /^(?:se puede (?:usar|poner) )(?:el |la |los |las )?(\p{L}+(?: (?:de )?\p{L}+){0,2}?) en (?:el |mi )?jabon\b/u,
];
/** No name of anything. */
const NO_NAME = new RegExp(
  unbroken`
    ^(?:it|this|that|they|these|those|he|she|i|we|you|there|anything|something|what|which|eso|esto|ese|esta|
    este|ella|el|color|colou?r|colours?|colors?|que|cual|todo|nada|soap|bar|batter|lye|sosa|soda|jabon|masa|
    barra)$
  `,
  'u',
);

/**
 * What a question asks to survive lye, where it is a plant or a food, or stands where such a name would; undefined where it asks
 * something else, or of what the catalogue knows. `isSure`: what was learned is sure that it asks this, so that no word of it has to
 * say so. Pure.
 * @example survivalAsked('guava ok in soap') // { name: 'guava', plant: 'guava', of: 'tannins', isLiquid: false, isOfSoap: true }
 */
export function survivalAsked(question: string, isSure = false): SurvivalAsked | undefined {
  const read = wordsOf(question);
  const { words } = read;
  const text = words.filter(word => /[\p{L}\d]/u.test(word)).join(' ');
  if (EATEN.test(text) || (!isSure && NOT_ASKED.test(text))) return undefined;
  const ours = thingsIn(read).length > 0;
  const isOfSoap = isSure || SOAP.test(text) || FOR_WATER.test(text);
  const isFate = FATE.test(text) && (isOfSoap || COLOUR.test(text));
  const isLiquid = LIQUID.test(text);
  if (isSure || isFate || (FIT.test(text) && isOfSoap)) {
    const listed = listedIn(words);
    // What the catalogue holds is answered from there, but a juice of it is no powder.
    if (listed)
      return ours && !isLiquid && listed.of !== 'phycocyanin' ? undefined : { ...listed, isLiquid, isOfSoap };
  }
  if (ours) return undefined;
  const name =
    ASKED.map(pattern => pattern.exec(text)?.[1]).find(found => found !== undefined) ??
    (isSure ? unlistedIn(read)?.text : undefined);
  if (name === undefined || name.split(' ').some(word => NO_NAME.test(word))) return undefined;
  return knownOil(name) === undefined ? { name, isLiquid, isOfSoap } : undefined;
}
