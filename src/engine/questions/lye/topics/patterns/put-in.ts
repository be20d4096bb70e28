import { unbroken } from '../../../../over-lines.ts';
import { near, SOAP, type TopicPatterns } from './topic.ts';

const MAY = '(?:can|could|may|should|is|are|will|how|puedo|se puede|sirven?|valen?|ok|okay)';
const BOX = unbroken`
  (?:(?:milk |juice |drinks? )?cartons?|\w*briks?|pvc(?: pipes?)?|(?:drain )?pipes?|yogh?urt (?:pots?|cups?|
  tubs?)|(?:crisps?|chips?) (?:tubes?|cans?)|tubes?(?= mou?ld)|(?:sardine|tuna|baking|cake|biscuit|
  coffee) tins?|tin cans?|tubo de patatas(?: fritas)?|tubos? de pvc|tuberias?(?: de pvc)?|
  latas?(?: de \w+)?|vasitos? de yogur|(?:vasos?|envases?|botes?) de yogur|carton de (?:leche|zumo))
`;
const HOT_OIL = '(?:cinnamon|clove|thyme|oregano|lemongrass|peppermint|canela|clavo|tomillo|menta)';
const SPIRIT_SCENT = unbroken`
  (?:fabric softener|laundry softener|softener|aftershave|(?<!eau de )cologne|body spray|(?:vanilla |
  almond |lemon |kitchen )?(?:essence|extract)\b.{0,12}\bkitchen|(?:kitchen|baking|supermarket) (?:vanilla |
  almond |lemon )?(?:essence|extract|flavou?ring)|perfume from|suavizante|(?<!agua de )colonia(?: de \w+)?|
  esencia de \w+ (?:del super\w*|de cocina|de reposteria)|air freshener|ambientador)
`;
const BED =
  '(?:electric blankets?|heating pads?|heat mats?|hot water bottles?|mantas? electricas?|esterillas? electricas?|almohadillas? termicas?)';

/** Of what a beginner would put into soap, pour it into, or put it under; plain text. */
export const PUT_IN_PATTERNS: TopicPatterns = [
  ['electric-blanket', [new RegExp(`\\b${BED}\\b`, 'u')]],
  [
    'oven-to-hurry',
    [
      new RegExp(
        unbroken`
          ^(?!.*\b\d{2,3}\b)(?=.*\b(?:oven|horno)\b)(?!.*\b(?:clean\w*|limpi\w*|glass|mitts?|burns?|wounds?|
          cuts?|quemaduras?|heridas?)\b)(?=.*\b(?:${SOAP}|loaf|mou?ld|molde)\b)
        `,
        'u',
      ),
    ],
  ],
  [
    'fridge-with-food',
    [
      near(
        '(?:fridge|refrigerator|freezer|nevera|frigorifico|heladera|refrigerador|congelador)',
        'food|milk|comida|alimentos|leche',
        40,
      ),
      near('food|comida|alimentos', 'fridge|refrigerator|nevera|frigorifico|heladera|refrigerador', 30),
    ],
  ],
  [
    'flame',
    [
      near('torch|flame|lighter|blow ?torch|soplete|mechero|llama', `${SOAP}|top|shiny|brill\\w+`, 40),
      near(
        `${SOAP}|top|burn`,
        'with a (?:torch|flame|lighter|blow ?torch)|con (?:un |el )?(?:soplete|mechero)',
        50,
      ),
    ],
  ],
  [
    'not-an-oil',
    [
      /\b(?:motor|engine|machine|mineral|baby|paraffin|lamp) oil\b|\baceite (?:de )?(?:motor|coche|maquina|mineral|parafina)\b/u,
      near(
        'aceite|oil',
        '(?:de (?:las |una )?latas? de|from (?:a |the )?(?:tins?|cans?) of|of tinned|de) ?(?:atun|sardinas?|anchoas|tuna|sardines?|anchov\\w+)',
        6,
      ),
      near('(?:sardine|tuna|fish|anchovy)(?: tin| can)?', 'oil', 4),
    ],
  ],
  [
    'mould-stuff',
    [near(`${MAY}|mou?lds?|moldes?|pour|verter`, BOX, 30), near(BOX, 'mou?lds?|moldes?|soap|jabon', 30)],
  ],
  [
    'sugars',
    [
      near('honey|miel', `(?:cucharad\\w+|spoon\\w*|tbsps?)\\b.{0,24}\\b(?:oils?|aceites?)`, 12),
      near('honey|miel', 'how much|when|cuant[ao]|cuando', 16),
      near('how much|cuant[ao]', '(?:honey|miel)\\b(?! (?:gold|colou?r|mica|amber))', 12),
    ],
  ],
  [
    'sand-and-shells',
    [
      near('sand|arena', `beach|exfolia\\w*|scrub\\w*|${SOAP}|playa`, 24),
      near('(?:sea ?)?shells?|conchas?|caracolas?', `${SOAP}|mou?lds?|playa|beach|top|encima|molde`, 30),
      near(SOAP, '(?:sea ?)shells?|conchas?|caracolas?|beach sand|arena', 24),
    ],
  ],
  [
    'puree',
    [
      near(
        '(?:purees?|pures?|mashed|mash|pulp|pulpa|smoothie)',
        `of|de|pumpkin|avocado|banana|carrot|cucumber|fruit|calabaza|aguacate|platano|zanahoria|pepino|fruta|${SOAP}|en el jabon`,
        4,
      ),
      near('(?:pumpkin|avocado|banana|carrot|cucumber|fruit)', 'purees?', 2),
    ],
  ],
  [
    'kitchen-spice',
    [
      new RegExp(
        unbroken`
          \b(?:ground |powdered )?(?:cinnamon|cloves?|chill?i(?: powder)?|cayenne|black pepper|
          mustard powder|ginger powder)\b(?! (?:oil|essential|leaf|bark|bud|e ?o\b|coloured|colored|
          brown))(?=.{0,60}\b(?:soap|colou?r|kitchen|bar|how much|cup|oils|batter)\b)
        `,
        'u',
      ),
      new RegExp(
        unbroken`
          \b(?:soap|colou?r|how much|can i|add|put)\b(?=.{0,40}\b(?:(?:ground|powdered|kitchen) (?:cinnamon|
          cloves?|chill?i|pepper|ginger)|cinnamon powder|cayenne)\b)
        `,
        'u',
      ),
      new RegExp(
        unbroken`
          ^(?!.*\b(?:esencial(?:es)?|fragancia|aroma|essential|fragrance)\b).*\b(?:canela|clavo|clavos|
          guindilla|chile en polvo|aji molido|cayena|pimienta|jengibre en polvo|
          mostaza en polvo)\b(?=.{0,60}\b(?:jabon|color|cocina|cuant[oa]|taza|aceites?|masa)\b)
        `,
        'u',
      ),
      /\b(?:jabon|cuant[oa]|puedo|echar|poner)\b(?!.{0,60}\b(?:esencial(?:es)?|fragancia|aroma)\b)(?=.{0,40}\b(?:canela|clavo|guindilla|aji molido|cayena)\b)/u,
    ],
  ],
  [
    'fresh-plants',
    [
      near(
        'fresh|frescos?|frescas?',
        'petals?|flowers?|leaves|herbs|fruit|petalos|flores|hojas|hierbas|fruta',
        4,
      ),
      near(
        'petals?|flowers?|leaves|herbs|petalos|flores|hojas|hierbas|fruta',
        '(?:de \\w+ )?fresc[oa]s?',
        10,
      ),
    ],
  ],
  [
    'craft-glitter',
    [
      near('purpurina|glitter|brillantina', 'crafts?|school|manualidades|papeleria|escolar', 12),
      near('craft|school|nail', 'glitter', 6),
      near(
        'put|add|use|ok|can|puedo|pongo|poner(?:le)?|echar(?:le)?|usar',
        'glitter|purpurina|brillantina|diamantina|escarcha|brillos(?: de)?',
        16,
      ),
    ],
  ],
  [
    'household-scent',
    [
      new RegExp(`\\b${SPIRIT_SCENT}\\b`, 'u'),
      near(
        'vanilla|almond|lemon',
        '(?:essence|extract|flavou?ring)\\b.{0,12}\\b(?:kitchen|supermarket|baking)',
        4,
      ),
    ],
  ],
  [
    'ink',
    [
      new RegExp(
        unbroken`
          \b(?:pen|printer|biro|marker|fountain pen|tattoo) ink\b|\bink (?:from|of) (?:a |my )?(?:pen|
          printer|biro|marker)\b|\btinta de (?:boli\w*|impresora|rotulador|pluma|tatuaje)\b
        `,
        'u',
      ),
    ],
  ],
  [
    'hot-oils-of-scent',
    [
      near(
        `(?:${HOT_OIL})(?: leaf| bark| bud)?`,
        '(?:essential )?oils?\\b.{0,40}\\b(?:how|much|many|drops?|ml|lots|soap|ok|safe)',
        4,
      ),
      near(
        `(?:aceites? esencial(?:es)?|esencia|aceite) de ${HOT_OIL}`,
        '\\d|cuant\\w+|puedo|se puede|gotas|mucho|jabon',
        30,
      ),
      near(
        'how many|lots of|lot of|cuantas|muchas|\\d+',
        '(?:drops|gotas)\\b.{0,24}\\b(?:oil|scent|fragrance|essential|aceite|aroma|esencia)',
        6,
      ),
      near(
        'oil|scent|fragrance|aroma|esencia(?:l)?',
        '(?:how many|lots of|cuantas|muchas) (?:drops|gotas)',
        30,
      ),
    ],
  ],
  [
    'scent-dose',
    [
      /^(?:(?:so|and|y) )?(?:how much|cuant[oa])(?: \w+)? (?:scent|fragrance|smell|perfume|aroma|fragancia|olor)\b/u,
    ],
  ],
];
