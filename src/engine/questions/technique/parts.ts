import { unbroken } from '../../over-lines.ts';
import { CARE_PARTS } from './care-parts.ts';
import { LESS_WATER, type Part, wholeWords } from './part.ts';
import type { Technique } from './topic.ts';
import { WHOLE_GRAMS_WORDS } from './whole-grams.ts';

/** Ultramarine is blue where it is not called pink or violet. */
const BLUE = String.raw`(?:blue|azul|(?<!(?:pink|violet|rosa|violeta) )ultramar\w*(?! (?:rosa|violeta|pink|violet|morad)))`;

const HUES: readonly Part[] = [
  { words: wholeWords('pink|ros(?:a|ad[oa]|it[ao])'), named: 'natural-pink' },
  { words: wholeWords(String.raw`blues?|azul\w*|celeste|navy`), named: 'natural-blue' },
  { words: wholeWords('greens?|verdes?'), named: 'natural-green' },
  { words: wholeWords('reds?|roj[oa]s?'), named: 'natural-red' },
  { words: wholeWords(String.raw`yellows?|amarill\w*`), named: 'natural-yellow' },
  { words: wholeWords(String.raw`oranges?|naranj\w*`), named: 'natural-orange' },
  {
    words: wholeWords(String.raw`purples?|violets?|lilac|morad\w*|violeta|lila|lavender colou?r`),
    named: 'natural-purple',
  },
  { words: wholeWords('browns?|marron|cafes?'), named: 'natural-brown' },
  { words: wholeWords('blacks?|negr[oa]s?'), named: 'natural-black' },
];

const IN_POT = String.raw`pot|jugs?|jar|still (?:in|liquid|fluid)|havent poured|not poured|olla|jarra|vaso|todavia|sin verter|no vert\w+`;

/** A scale that shows no tenths. */
const WHOLE_GRAMS = wholeWords(WHOLE_GRAMS_WORDS);

/** By technique, the first that fits. */
export const PARTS: Readonly<Partial<Record<Technique, readonly Part[]>>> = {
  'hanger-swirl': [
    {
      words: wholeWords(
        'no hanger|without a hanger|no percha|sin percha|no tengo percha|instead of a hanger',
      ),
      technique: 'swirl-tools',
    },
  ],
  'thick-now': [
    {
      words: wholeWords(
        String.raw`solid|rock|brick|set hard|as a (?:rock|stone)|dur[ao]|durisim[ao]|piedra|pared|tranc\w*|clavada`,
      ),
      named: 'solid-now',
    },
    {
      words: wholeWords(
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
      words: wholeWords(
        unbroken`
          oil\w* (?:on|floating|at|pool\w*|standing)|(?:split|separat\w+|curdl\w+)|aceite (?:arriba|encima)|
          se (?:me )?cort[oa]|se (?:me )?separ\w+|cortad[oa]
        `,
      ),
      named: 'split-oil',
    },
  ],
  'gel-and-colour': [
    { words: wholeWords('pastels?|white|pale|blanc[oa]s?|clarit[oa]s?'), named: 'gel-for-pastels' },
    { words: wholeWords('gel or no gel|vivid|vivos?|bright colou?rs?|vibrant'), named: 'gel-for-bright' },
  ],
  'small-batch': [{ words: WHOLE_GRAMS, named: 'whole-grams' }],
  'thin-it': [{ words: LESS_WATER, named: 'less-water' }],
  'keep-fluid': [{ words: LESS_WATER, named: 'less-water' }],
  'whiter-soap': [
    {
      words: wholeWords(
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
      words: wholeWords(
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
    { words: wholeWords(String.raw`lips?|labios?|labial\w*`), named: 'for-lips' },
    { words: wholeWords(String.raw`bab(?:y|ies)|newborns?|bebes?|recien nacid\w+`), named: 'for-a-baby' },
  ],
  'natural-colours': HUES,
  'blend-two': [
    {
      words: wholeWords(String.raw`${BLUE}.*(?:yellow|amarill\w*)|(?:yellow|amarill\w*).*${BLUE}`),
      named: 'blue-and-yellow',
    },
    {
      words: wholeWords('(?:red|roj[oa]).*(?:blue|azul)|(?:blue|azul).*(?:red|roj[oa])'),
      named: 'red-and-blue',
    },
    { words: wholeWords(String.raw`white|titanium\w*|td|blanc[oa]|dioxid\w*`), named: 'with-white' },
  ],
  'ash-avoid': [
    {
      words: wholeWords(
        unbroken`
          steam\w*|vapor\w*|plancha|rins\w*|wash\w*|enjuag\w*|lav\w*|(?:get|got|take) (?:it|that|this|
          them)? ?(?:off|rid)|remove|quit\w+|sac(?:o|ar)\w*
        `,
      ),
      named: 'ash-steam',
    },
    { words: wholeWords(String.raw`alcohols?|isoprop\w*|ipa|spray\w*|roci\w*`), named: 'ash-alcohol' },
  ],
  'no-lumps': [
    {
      words: wholeWords(
        unbroken`
          (?:lumps?|clumps?|bits|dots) (?:inside|in (?:my|the) (?:cut |made |cured )?(?:soap|bars?|loaf)|
          when i cut)|(?:grumos?|bolitas?|puntos?) (?:\w+ )?(?:(?:a|por )?dentro|en (?:el|mi) jabon|
          al cortar)
        `,
      ),
      named: 'lumps-in-bar',
    },
    {
      words: wholeWords(
        String.raw`(?:oil|aceite|agua|water) (?:or|o|u) (?:in |en |con )?(?:the |el |la )?(?:oil|aceite|agua|water)`,
      ),
      named: 'oil-or-water',
    },
    { words: wholeWords(String.raw`td|titanium\w*|dioxid\w*|titanio|tio2`), named: 'titanium-lumps' },
  ],
  botanicals: [
    { words: wholeWords(String.raw`ann?att?os?|achiote|urucu\w*|onoto|bija`), technique: 'steep-in-oil' },
    { words: wholeWords('lavender|lavanda'), named: 'lavender-buds' },
    { words: wholeWords('coffee|cafe|grounds|posos'), named: 'coffee-grounds' },
    { words: wholeWords('fresh|fresc[oa]s?|allotment|from (?:my|me|the) garden'), lye: 'fresh-plants' },
  ],
  'coloured-suds': [
    { words: wholeWords(String.raw`charcoal|carbon\w*|gr[ae]y|gris|black|negr[oa]`), named: 'charcoal-suds' },
  ],
  'stained-things': [
    {
      words: wholeWords(String.raw`(?:charcoal|carbon\w*).*(?:sink|bath|shower|bar|pileta|ducha|soap)`),
      named: 'charcoal-suds',
    },
  ],
  'steep-in-oil': [
    { words: wholeWords(String.raw`ann?att?os?|achiote|urucu\w*|onoto|bija`), named: 'annatto-in-oil' },
  ],
  'colour-families': [
    {
      words: wholeWords('coffee grounds|ground coffee|cafe molido|molido|posos'),
      named: 'coffee-grounds',
    },
  ],
  'darker-lighter': [
    {
      words: wholeWords(
        unbroken`
          (?:too dark|light\w*|white|aclar\w*|blanc[oa]|oscuro).*(?:${IN_POT})|(?:${IN_POT}).*(?:too dark|
          light\w*|white|aclar\w*|blanc[oa]|berenjena)
        `,
      ),
      named: 'lighten-in-pot',
    },
    {
      words: wholeWords('too dark|how fix|muy oscur[oa]|me qued[oa] oscur[oa]'),
      named: 'lighten-next-time',
    },
  ],
  'dust-on-top': [
    {
      words: wholeWords(
        String.raw`rub\w* off|comes? off|on my hands|with (?:the|a) finger|se sale|se va con|dedo`,
      ),
      named: 'rubs-off',
    },
  ],
  'vanilla-brown': [{ words: wholeWords('white|ivory|blanc[oa]|marfil'), named: 'white-vanilla' }],
  ...CARE_PARTS,
  'label-selling': [
    {
      words: wholeWords(
        String.raw`(?:can|may|puedo|podria) (?:i |we )?(?:sell|vend\w*)|sell\w*|vend\w*|insurance|safety report`,
      ),
      lye: 'selling',
    },
  ],
  'cosmetic-grade': [
    {
      words: wholeWords(String.raw`resin\w*|nails?|unas|craft\w*|candles?|velas?|manualidades`),
      lye: 'craft-colour',
    },
  ],
  'unlabelled-powder': [
    {
      words: wholeWords(String.raw`resin\w*|nails?|unas|craft\w*|school|candles?|velas?|paint`),
      lye: 'craft-colour',
    },
  ],
  'shine-sparkle': [{ words: wholeWords('glitter|purpurina|brillantina|escarcha'), lye: 'craft-glitter' }],
  'milk-colour': [
    { words: wholeWords(String.raw`burnt|smells?|ammonia|quem\w*|huele|amoniaco`), lye: 'scorched-milk' },
  ],
};
