import { unbroken } from '../../../../over-lines.ts';
import { LYE, near, type TopicPatterns } from './topic.ts';

const ASKS =
  '(?:can|could|may|should|is it (?:ok|okay|safe)|how (?:much|many)|what (?:happens|if)|puedo|se puede|podria|debo|cuant[oa]s?|que pasa)';
const LIQUID = unbroken`
  (?:(?:goats? |coconut |cows? |oat |almond |breast )?milk|buttermilk|cream|beer|wine|cider|tea|coffee|
  (?:orange |apple |carrot |lemon |lime )?juice|lemon juice|vinegar|aloe(?: vera)?|puree|leche(?: de \w+)?|
  nata|cerveza|vino|sidra|te|cafe|(?:zumo|jugo)(?: de \w+)?|vinagre|sabila|pure)
`;
const SUGAR = '(?:honey|sugar|syrup|molasses|treacle|miel|azucar|jarabe|melaza|panela|piloncillo)';
const HOT_C =
  '(?:[89][0-9]|1[0-9][0-9]|2[0-4][0-9]) ?(?:degrees |grados )?(?:c|celsius|centigrados?|degrees|grados)';
const HOT_F = '(?:17[6-9]|1[89][0-9]|[2-4][0-9][0-9]) ?(?:degrees )?(?:f|fahrenheit)';
const HOT = `(?:${HOT_C}|${HOT_F})`;

/** Of what the kitchen lends: its liquids, sugars, oven and spoons; plain text. */
export const KITCHEN_PATTERNS: TopicPatterns = [
  [
    'liquid-instead',
    [
      near(
        `${ASKS}\\b.{0,24}\\b${LIQUID}`,
        unbroken`
          (?:instead|in place) of(?: the)? (?:water|liquid)|(?:to )?replac\w+(?: the)? water|(?:as|
          for)(?: the)? (?:water|liquid)|en (?:vez|lugar) del? agua|(?:como|por)(?: el)? (?:agua|liquido)
        `,
        24,
      ),
    ],
  ],
  ['sugars', [near(ASKS, `${SUGAR}\\b.{0,40}\\b(?:oils?|batter|soap|batch|aceites?|masa|jabon|lote)`, 40)]],
  [
    'hot-oven',
    [
      near('(?:soap|soaps|loaf|bars?|mould|mold|jabon|molde|barra)', `(?:oven|horno)\\b.{0,16}\\b${HOT}`, 30),
      near(ASKS, `(?:oven|horno)\\b.{0,16}\\b${HOT}.{0,24}\\b(?:soap|loaf|jabon|overnight|gel)`, 24),
    ],
  ],
  ['hot-oils', [near(`(?:oils?|fats?|aceites?|grasas?)\\b.{0,24}\\b${HOT}`, LYE, 60)]],
  [
    'spooned-lye',
    [
      near(
        String.raw`measur\w*|scoop\w*|medir|medi|mido`,
        `${LYE}\\b.{0,16}\\b(?:cups?|spoons?|table ?spoons?|tea ?spoons?|scoops?|by volume|cucharas?|cucharad\\w*|tazas?|vasos?)`,
        16,
      ),
    ],
  ],
  [
    'children',
    [
      near(
        ASKS,
        String.raw`(?:\d{1,2} (?:years? old|yo|anos))\b.{0,30}\b(?:help|make|mix|stir|ayudar|hacer|mezclar)\b.{0,30}\b(?:soap|jabon)`,
        24,
      ),
      near(
        ASKS,
        unbroken`
          (?:soap making|make soap|soaping|hacer jabon)\b.{0,24}\b(?:kids?|child(?:ren)?|toddler|baby|bebe|
          ninos?|hij[oa]s?)\b.{0,16}\b(?:room|asleep|home|house|around|cuarto|casa|dormid[oa])
        `,
        24,
      ),
    ],
  ],
  [
    'candle-scent',
    [
      near(
        ASKS,
        '(?:candle|wax melt|room|diffuser|velas?|difusor)\\b.{0,12}\\b(?:fragrances?|scents?|oils?|perfume|fragancia|aroma|esencia)',
        24,
      ),
      near(
        ASKS,
        '(?:fragancia|aroma|esencia|fragrance|scent)\\b.{0,16}\\b(?:de|para|for|from)(?: \\w+)? (?:candles?|velas?|difusor)',
        24,
      ),
    ],
  ],
];
