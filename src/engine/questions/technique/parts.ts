import { unbroken } from '../../over-lines.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';
import type { NamedAnswer } from './named-answers.ts';
import type { Technique } from './topic.ts';
import { WHOLE_GRAMS_WORDS } from './whole-grams.ts';

/** Where a question that holds these words is led: to a part of the technique, to what is said near lye, or to another technique. */
export type Part = { readonly words: RegExp } & (
  | { readonly named: NamedAnswer }
  | { readonly lye: LyeTopic }
  | { readonly technique: Technique }
);

/** Whole words, their endings spelt out with `\\w*`; the text is lower case and without accents. */
const of = (words: string) => new RegExp(String.raw`(?<!\p{L})(?:${words})(?!\p{L})`, 'u');
const HUES: readonly Part[] = [
  { words: of('pink|ros(?:a|ad[oa]|it[ao])'), named: 'natural-pink' },
  { words: of(String.raw`blues?|azul\w*|celeste|navy`), named: 'natural-blue' },
  { words: of('greens?|verdes?'), named: 'natural-green' },
  { words: of('reds?|roj[oa]s?'), named: 'natural-red' },
  { words: of(String.raw`yellows?|amarill\w*`), named: 'natural-yellow' },
  { words: of(String.raw`oranges?|naranj\w*`), named: 'natural-orange' },
  {
    words: of(String.raw`purples?|violets?|lilac|morad\w*|violeta|lila|lavender colou?r`),
    named: 'natural-purple',
  },
  { words: of('browns?|marron|cafes?'), named: 'natural-brown' },
  { words: of('blacks?|negr[oa]s?'), named: 'natural-black' },
];

const IN_POT = String.raw`pot|jugs?|jar|still (?:in|liquid|fluid)|havent poured|not poured|olla|jarra|vaso|todavia|sin verter|no vert\w+`;

/** A scale that shows no tenths. */
const WHOLE_GRAMS = of(WHOLE_GRAMS_WORDS);
/** Less of the water that the lye is dissolved in. */
const LESS_WATER = of(String.raw`(?:a (?:bit|little) )?less (?:of the )?water|(?:un poco )?menos agua`);

/** By technique, the first that fits. */
export const PARTS: Readonly<Partial<Record<Technique, readonly Part[]>>> = {
  'hanger-swirl': [
    {
      words: of('no hanger|without a hanger|no percha|sin percha|no tengo percha|instead of a hanger'),
      technique: 'swirl-tools',
    },
  ],
  'thick-now': [
    {
      words: of(
        String.raw`solid|rock|brick|set hard|as a (?:rock|stone)|dur[ao]|durisim[ao]|piedra|pared|tranc\w*|clavada`,
      ),
      named: 'solid-now',
    },
    {
      words: of(
        unbroken`
          colou?rs? (?:left|to go|still|not in|in)|\d colou?rs?|one jug|(?:second|other|2nd|next) colou?r|
          faltan?.*colou?r\w*|\w+ colores (?:todavia|mas)|segundo color|todavia puedo echar|
          que hago con el color
        `,
      ),
      named: 'colours-left',
    },
  ],
  'riced-now': [
    {
      words: of(
        unbroken`
          oil\w* (?:on|floating|at|pool\w*|standing)|(?:split|separat\w+|curdl\w+)|aceite (?:arriba|encima)|
          se (?:me )?cort[oa]|se (?:me )?separ\w+|cortad[oa]
        `,
      ),
      named: 'split-oil',
    },
  ],
  'gel-and-colour': [
    { words: of('pastels?|white|pale|blanc[oa]s?|clarit[oa]s?'), named: 'gel-for-pastels' },
    { words: of('gel or no gel|vivid|vivos?|bright colou?rs?|vibrant'), named: 'gel-for-bright' },
  ],
  'small-batch': [{ words: WHOLE_GRAMS, named: 'whole-grams' }],
  'thin-it': [{ words: LESS_WATER, named: 'less-water' }],
  'keep-fluid': [{ words: LESS_WATER, named: 'less-water' }],
  'whiter-soap': [
    {
      words: of(
        unbroken`
          (?:td|titanium(?: dioxide)?|tio2)[ -]free|(?:no|without|not|instead of|free of|skip\w*) (?:the |
          any |using )?(?:td|titanium\w*|tio2)|(?:td|titanium\w*) or (?:is there )?(?:some|any)thing else|
          have to use (?:td|titanium\w*)|(?:sin|en (?:vez|lugar) del?|que no (?:sea|lleve)) (?:el |
          usar )?(?:td|dioxido\w*|titanio|tio2)
        `,
      ),
      named: 'white-without-titanium',
    },
  ],
  'spoon-or-grams': [
    { words: WHOLE_GRAMS, named: 'whole-grams' },
    {
      words: of(
        unbroken`
          (?:how many|is|in|to|what is a|whats a) (?:\w+ )?(?:g|grs?|grams?)|(?:tsp|teaspoons?) (?:in|to|is|
          weigh\w*)|how much (?:is|does) a (?:tsp|teaspoon)|(?:cuant[oa]s?|en|son) (?:\w+ )?(?:g|grs?|
          gramos?)|pesa\w*|weigh\w*
        `,
      ),
      named: 'teaspoon-in-grams',
    },
  ],
  'children-colours': [
    { words: of(String.raw`lips?|labios?|labial\w*`), named: 'for-lips' },
    { words: of(String.raw`bab(?:y|ies)|newborns?|bebes?|recien nacid\w+`), named: 'for-a-baby' },
  ],
  'natural-colours': HUES,
  'blend-two': [
    {
      words: of(
        String.raw`(?:blue|azul|ultramar\w*).*(?:yellow|amarill\w*)|(?:yellow|amarill\w*).*(?:blue|azul|ultramar\w*)`,
      ),
      named: 'blue-and-yellow',
    },
    {
      words: of('(?:red|roj[oa]).*(?:blue|azul)|(?:blue|azul).*(?:red|roj[oa])'),
      named: 'red-and-blue',
    },
    { words: of(String.raw`white|titanium\w*|td|blanc[oa]|dioxid\w*`), named: 'with-white' },
  ],
  'ash-avoid': [
    {
      words: of(
        unbroken`
          steam\w*|vapor\w*|plancha|rins\w*|wash\w*|enjuag\w*|lav\w*|(?:get|got|take) (?:it|that|this|
          them)? ?(?:off|rid)|remove|quit\w+|sac(?:o|ar)\w*
        `,
      ),
      named: 'ash-steam',
    },
    { words: of(String.raw`alcohols?|isoprop\w*|ipa|spray\w*|roci\w*`), named: 'ash-alcohol' },
  ],
  'no-lumps': [
    {
      words: of(
        unbroken`
          (?:lumps?|clumps?|bits|dots) (?:inside|in (?:my|the) (?:cut |made |cured )?(?:soap|bars?|loaf)|
          when i cut)|(?:grumos?|bolitas?|puntos?) (?:\w+ )?(?:(?:a|por )?dentro|en (?:el|mi) jabon|
          al cortar)
        `,
      ),
      named: 'lumps-in-bar',
    },
    {
      words: of(
        String.raw`(?:oil|aceite|agua|water) (?:or|o|u) (?:in |en |con )?(?:the |el |la )?(?:oil|aceite|agua|water)`,
      ),
      named: 'oil-or-water',
    },
    { words: of(String.raw`td|titanium\w*|dioxid\w*|titanio|tio2`), named: 'titanium-lumps' },
  ],
  botanicals: [
    { words: of(String.raw`ann?att?os?|achiote|urucu\w*|onoto|bija`), technique: 'steep-in-oil' },
    { words: of('lavender|lavanda'), named: 'lavender-buds' },
    { words: of('coffee|cafe|grounds|posos'), named: 'coffee-grounds' },
    { words: of('fresh|fresc[oa]s?|allotment|from (?:my|me|the) garden'), lye: 'fresh-plants' },
  ],
  'coloured-suds': [
    { words: of(String.raw`charcoal|carbon\w*|gr[ae]y|gris|black|negr[oa]`), named: 'charcoal-suds' },
  ],
  'stained-things': [
    {
      words: of(String.raw`(?:charcoal|carbon\w*).*(?:sink|bath|shower|bar|pileta|ducha|soap)`),
      named: 'charcoal-suds',
    },
  ],
  'steep-in-oil': [
    { words: of(String.raw`ann?att?os?|achiote|urucu\w*|onoto|bija`), named: 'annatto-in-oil' },
  ],
  'colour-families': [
    {
      words: of('coffee grounds|ground coffee|cafe molido|molido|posos'),
      named: 'coffee-grounds',
    },
  ],
  'darker-lighter': [
    {
      words: of(
        unbroken`
          (?:too dark|light\w*|white|aclar\w*|blanc[oa]|oscuro).*(?:${IN_POT})|(?:${IN_POT}).*(?:too dark|
          light\w*|white|aclar\w*|blanc[oa]|berenjena)
        `,
      ),
      named: 'lighten-in-pot',
    },
    {
      words: of('too dark|how fix|muy oscur[oa]|me qued[oa] oscur[oa]'),
      named: 'lighten-next-time',
    },
  ],
  'dust-on-top': [
    {
      words: of(String.raw`rub\w* off|comes? off|on my hands|with (?:the|a) finger|se sale|se va con|dedo`),
      named: 'rubs-off',
    },
  ],
  'vanilla-brown': [{ words: of('white|ivory|blanc[oa]|marfil'), named: 'white-vanilla' }],
  'goggles-gloves': [
    {
      words: of(
        String.raw`in the mou?ld|after|cut(?:ting)?|unmou?ld\w*|handle|touch|bare hands?|desmold\w*|molde|toc\w+|cort\w+|manos`,
      ),
      named: 'gloves-raw',
    },
    {
      words: of(
        String.raw`wear|which|what|kind|type|latex|nitril\w*|vinyl|thin|washing up|que (?:guantes|me pongo|uso)|cuales|finit\w+`,
      ),
      lye: 'gear',
    },
  ],
  'powder-dust': [
    {
      words: of(
        String.raw`masks?|breath\w*|lungs?|inhal\w*|danger\w*|safe|asthma|mascarilla|barbijo|tapabocas?|respir\w*|peligro\w*|malo|asma|grave|count`,
      ),
      lye: 'dust',
    },
  ],
  'lye-cloudy': [
    {
      words: of(
        String.raw`overnight|cold|skin|film|haz[ey]\w*|milky|noche|fria?|nata|capa|lechosa|blanquecina`,
      ),
      lye: 'cloudy-lye',
    },
  ],
  'kitchen-tools': [
    { words: of(String.raw`alumin\w*|ally|foil|tin|zinc|galvani\w*|lata`), lye: 'aluminium' },
    {
      words: of(
        unbroken`
          glass|vidrio|cristal|wood\w*|madera|which (?:plastic|bowl)|plastic\w*|bowl|bol|enamel\w*|
          esmaltad\w*|pp|jug for lye|lye jug|jarra (?:de|para) (?:la )?(?:sosa|soda|lejia)
        `,
      ),
      lye: 'vessel',
    },
  ],
  'water-amount': [
    { words: LESS_WATER, named: 'less-water' },
    { words: of(String.raw`swirl\w*|remolin\w*|discount|descuento`), technique: 'swirl-water' },
  ],
  'label-selling': [
    {
      words: of(
        String.raw`(?:can|may|puedo|podria) (?:i |we )?(?:sell|vend\w*)|sell\w*|vend\w*|insurance|safety report`,
      ),
      lye: 'selling',
    },
  ],
  'cosmetic-grade': [
    {
      words: of(String.raw`resin\w*|nails?|unas|craft\w*|candles?|velas?|manualidades`),
      lye: 'craft-colour',
    },
  ],
  'unlabelled-powder': [
    {
      words: of(String.raw`resin\w*|nails?|unas|craft\w*|school|candles?|velas?|paint`),
      lye: 'craft-colour',
    },
  ],
  'shine-sparkle': [{ words: of('glitter|purpurina|brillantina|escarcha'), lye: 'craft-glitter' }],
  'milk-colour': [
    { words: of(String.raw`burnt|smells?|ammonia|quem\w*|huele|amoniaco`), lye: 'scorched-milk' },
  ],
};
