import type { Origin } from '../../origin.ts';

/** A question about handling lye that has one answer, whatever the recipe; `src/words` speaks each. */
export type LyeTopic =
  | 'clean-up'
  | 'drain-cleaner'
  | 'baking-soda'
  | 'bleach'
  | 'water-onto-lye'
  | 'glass-jug'
  | 'aluminium'
  | 'no-goggles'
  | 'lye-twice'
  | 'wrong-unit'
  | 'lye-forgotten'
  | 'harder-by-lye'
  | 'too-little-water';

const MEMORY = (source: string): Origin => ({ trust: 'from memory', source });
const TRADE: Origin = { trust: 'common practice', source: 'soap makers handling lye at home' };

/** @public Where each answer comes from. */
export const LYE_TOPIC_ORIGINS: Readonly<Record<LyeTopic, Origin>> = {
  'clean-up': MEMORY(
    'safety data sheets of sodium hydroxide, section 6 (sweep up dry, then flush) and 4 (rinse skin with water only)',
  ),
  'drain-cleaner': MEMORY(
    'safety data sheets of crystal drain openers: aluminium chips, nitrates, surfactants',
  ),
  'baking-soda': MEMORY('sodium hydrogen carbonate does not saponify fats (textbook chemistry)'),
  bleach: MEMORY('household bleach is sodium hypochlorite; sodium hydroxide is another substance (labels)'),
  'water-onto-lye': MEMORY(
    'safety data sheets of sodium hydroxide, section 7: always the solid into cold water',
  ),
  'glass-jug': TRADE,
  aluminium: MEMORY(
    'safety data sheets of sodium hydroxide, section 10: hydrogen with aluminium, zinc and tin',
  ),
  'no-goggles': MEMORY('safety data sheets of sodium hydroxide, section 8: tight goggles; H314, H318'),
  'lye-twice': TRADE,
  'wrong-unit': TRADE,
  'lye-forgotten': TRADE,
  'harder-by-lye': TRADE,
  'too-little-water': MEMORY(
    'solubility of sodium hydroxide: about its own weight of water at 20 C, CRC Handbook',
  ),
};

const LYE =
  '(?:lye|naoh|koh|caustic(?: soda| potash)?|(?:sodium |potassium )?hydroxide|sosa|soda caustica|lejia|potasa|hidroxido)';
const GLASS =
  '(?:glass|oven glass)(?: (?:jug|jar|bowl|pitcher|measuring|container|cup|bottle|beaker))|preserving jar|oven glass|(?:in|use|using) (?:a )?glass|(?:jarra|vaso|bote|frasco|bol|recipiente|tarro)s? de (?:vidrio|cristal)|en (?:vidrio|cristal)';
const ALUMINIUM = String.raw`(?:alumini?um|zinc|tin|galvani[sz]ed)(?: \w+)? (?:pots?|pans?|bowls?|jugs?|spoons?|buckets?)|(?:in|use|using) alumini?um|(?:olla|cazo|bol|cuchara|cubo|jarra)s? de (?:aluminio|zinc)|en aluminio`;
const near = (before: string, after: string, gap = 40) =>
  new RegExp(String.raw`\b(?:${before})\b.{0,${gap}}\b(?:${after})\b`, 'u');

/** Plain text; the first that fits counts, so that spills stand before what is spilled. */
const TOPICS: readonly (readonly [topic: LyeTopic, patterns: readonly RegExp[]])[] = [
  [
    'clean-up',
    [
      near(
        String.raw`neutrali[sz]\w*|clean(?:ing)? ?up|clean(?= (?:the |my |up )?(?:lye|naoh|caustic))|get rid of|dispose(?: of)?|throw (?:out|away)|pour (?:away|down)|mop(?: up)?|limpi\w*|deshag\w*|deshacer\w*|tirar|desech\w*|recog\w*`,
        `${LYE}(?: (?:water|flakes|crystals|solution))?`,
      ),
      near(
        String.raw`spill\w*|spilt|leftover|left over|sobr(?:o|a|ante|ado)|derram\w*|se me cayo|cay(?:o|eron)`,
        LYE,
      ),
      near(
        LYE,
        String.raw`spill\w*|spilt|left ?over|derram\w*|carpet|alfombra|moqueta|flakes on|crystals on|down the (?:drain|sink)|por el (?:desague|fregadero)`,
      ),
    ],
  ],
  [
    'drain-cleaner',
    [
      /\b(?:drain (?:cleaner|opener|unblocker)|desatascador\w*|destapa ?canos|limpia ?tuberias|destapador)\b/u,
    ],
  ],
  [
    'bleach',
    [
      /\b(?:lejia (?:de (?:la )?ropa|de lavar|de limpiar|domestica|blanqueadora|del super\w*|normal)|lavandina|agua lavandina|cloro de (?:la )?ropa)\b/u,
      near('bleach|hypochlorite|hipoclorito', `${LYE}|make soap|hacer jabon`),
      near(LYE, 'bleach|hypochlorite|hipoclorito'),
    ],
  ],
  [
    'baking-soda',
    [
      near(
        String.raw`baking soda|washing soda|soda ash|bicarbonat\w*|(?:sodium )?carbonate|carbonato(?: de sodio)?`,
        'instead of|in place of|replace|for (?:the )?lye|as lye|en (?:vez|lugar) de|por (?:la )?sosa|como sosa',
      ),
      near(
        'instead of|replace|swap|substitute|en (?:vez|lugar) de|sustituir|reemplazar',
        String.raw`baking soda|washing soda|soda ash|bicarbonat\w*|carbonato`,
      ),
    ],
  ],
  [
    'water-onto-lye',
    [
      near(
        String.raw`(?:pour|add|put|tip)(?:ing)?(?: the)?(?: \w+)? water`,
        `(?:on ?to|on|in ?to|to|over)(?: the| my)? ${LYE}`,
        8,
      ),
      near(
        '(?:echar|echo|echas?|verter|vierto|anadir|anado|pongo|poner)(?:le)?(?: el)? agua',
        `(?:sobre|encima de|a|en|sobre de)(?: la)? ${LYE}`,
        8,
      ),
      near(`${LYE}`, '(?:in)?to (?:the )?water or (?:the )?water|al agua o (?:el )?agua', 8),
    ],
  ],
  ['glass-jug', [near(GLASS, LYE, 60), near(LYE, GLASS, 60)]],
  ['aluminium', [near(ALUMINIUM, LYE, 60), near(LYE, ALUMINIUM, 60)]],
  [
    'no-goggles',
    [
      near(
        String.raw`forget|forgot|without|no|skip|need|don ?t have|sin|olvid\w*|hacen? falta|necesito|no tengo`,
        'goggles|gloves|eye protection|gafas|guantes',
        24,
      ),
    ],
  ],
  [
    'lye-twice',
    [
      near(`${LYE}`, 'twice|two times|dos veces|doble|otra vez', 24),
      near('twice|dos veces|two times', LYE, 24),
    ],
  ],
  [
    'wrong-unit',
    [
      /\b(?:scale|balanza|bascula|peso)\b.{0,24}\b(?:was|were|set|estaba|marcaba|puesta)\b.{0,16}\b(?:in )?(?:en )?(?:ounces|oz|onzas|pounds|libras|grams|gramos)\b/u,
      near('ounces|oz|onzas', 'instead of grams|en (?:vez|lugar) de gramos', 12),
      near('grams|gramos', 'instead of ounces|en (?:vez|lugar) de onzas', 12),
    ],
  ],
  [
    'lye-forgotten',
    [
      near(
        '(?:if|whether|si) (?:i |le |he |ya )*(?:have |had |already )*(?:added|put in|put|poured|used|eche|puse|anadi|agregue|echado|puesto)',
        LYE,
        12,
      ),
      /\b(?:forgot|olvide|se me olvido)\b(?: (?:to|the|my|la|de|anadir|echar|poner|add|put|in|whether|if|i|added))* (?:lye|naoh|sosa|lejia|potasa)\b/u,
    ],
  ],
  [
    'harder-by-lye',
    [
      near(
        `(?:double|more|extra|add|increase|doblar|duplicar|mas|aumentar|subir)(?: the| la| de)?(?: more| extra)? ${LYE}`,
        String.raw`hard(?:er|en)?|firm(?:er)?|set faster|dur[oa]s?|endure\w*|firme|cuaj\w*`,
        40,
      ),
      near('(?:can|could|should|may) i|puedo|podria', `(?:double|doblar|duplicar)(?: the| la)? ${LYE}`, 8),
    ],
  ],
  [
    'too-little-water',
    [
      /\b(?:too little|not enough|too few|less|forgot the|very little|poca|muy poca|demasiado poca|falta|menos)\b.{0,10}\b(?:water|agua)\b.{0,40}\b(?:lye|naoh|sosa|soap|jabon|batter|masa)\b/u,
      near(LYE, '(?:too little|not enough|poca|demasiado poca|muy poca) (?:water|agua)', 40),
      /^(?:i (?:used|added|put|have) |use |puse |eche )?(?:too little|not enough|(?:muy |demasiado )?poca) (?:water|agua)\b[ ?!.]*$/u,
    ],
  ],
];

/** Which matter of handling lye a question asks about, in English or Spanish, or undefined. */
export function lyeTopicIn(question: string): LyeTopic | undefined {
  const plain = question
    .slice(0, 2000)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return TOPICS.find(([, patterns]) => patterns.some(pattern => pattern.test(plain)))?.[0];
}
