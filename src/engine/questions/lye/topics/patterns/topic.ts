import { unbroken } from '../../../../over-lines.ts';
import type { LyeTopic } from '../topic.ts';

export type TopicPatterns = readonly (readonly [topic: LyeTopic, patterns: readonly RegExp[]])[];

export const LYE =
  '(?:lye|naoh|koh|caustic(?: soda| potash)?|(?:sodium |potassium )?hydroxide|sosa|soda caustica|lejia|potasa|hidroxido)';
export const MAY =
  '(?:can|could|should|may|must|do|does|is it|are|how|when|what|will|would|puedo|puede|pueden|podria|debo|se puede|es|como|cuando|que|hay que)';
export const SOAP = '(?:soaps?|bars?|loaf|loaves|jabon(?:es)?|pastillas?|barras?|pan(?:es)? de jabon)';
export const ACID =
  '(?:vinegar|citric acid|lemon juice|lemon|acid|vinagre|acido citrico|zumo de limon|jugo de limon|limon)';
const GLASS = unbroken`
  (?:glass|oven glass)(?: (?:jug|jar|bowl|pitcher|measuring|container|cup|bottle|beaker))|preserving jar|
  mason jar|oven glass|(?:in|use|using) (?:a )?glass|(?:jarra|vaso|bote|frasco|bol|recipiente|
  tarro)s? de (?:vidrio|cristal)|en (?:vidrio|cristal)
`;
const ALUMINIUM = unbroken`
  (?:alumini?um|zinc|tin|galvani[sz]ed)(?: \w+)? (?:pots?|pans?|bowls?|jugs?|spoons?|buckets?)|(?:in|use|
  using) alumini?um|(?:stir|mix|spoon)\w* (?:with|in) alumini?um|(?:olla|cazo|bol|cuchara|cubo|
  jarra)s? de (?:aluminio|zinc)|en aluminio
`;
/** One thing named not more than `gap` characters before another; both as patterns. */
export const near = (before: string, after: string, gap = 40) =>
  new RegExp(String.raw`\b(?:${before})\b.{0,${gap}}\b(?:${after})\b`, 'u');

/** Of what is added to lye and what it is kept in; plain text. */
export const SUBSTANCE_PATTERNS: TopicPatterns = [
  [
    'clean-up',
    [
      near(
        String.raw`neutrali[sz]\w*|clean(?:ing)? ?up|clean(?= (?:the |my |up )?(?:lye|naoh|caustic))|mop(?: up)?|limpi\w*|recog\w*`,
        `${LYE}(?: (?:water|flakes|crystals|solution))?`,
      ),
      near(
        String.raw`spill\w*|spilt|dropped|derram\w*|se (?:me|nos|le) (?:cay|reg|volc)(?:o|eron|aron)`,
        LYE,
      ),
      near(
        LYE,
        String.raw`spill\w*|spilt|fell on the (?:floor|bench|counter|table|worktop)|derram\w*|carpet|alfombra|moqueta|flakes on|crystals on`,
      ),
    ],
  ],
  [
    'drain-cleaner',
    [
      /\b(?:drain (?:cleaner|opener|unblocker)|desatascador\w*|destapa ?(?:canos|canerias?|desagues?|tuberias?)|limpia ?tuberias|destapador)\b/u,
      // "La de destapar cañería": caustic by what it is sold for.
      near(
        LYE,
        unbroken`
          (?:de|para) (?:destapar|destrancar|desatorar) (?:la |las |los |el )?(?:canerias?|canos?|desagues?|tuberias?|
          drenajes?|piletas?|inodoros?)
        `,
        60,
      ),
      // "Dice el señor que es de la de desatascar": lye that is sold for drains, however far on that is told.
      near(
        LYE,
        unbroken`
          (?:de |para )(?:la |lo |el )?(?:de |para )?desatascar|(?:the )?drain (?:one|kind|stuff|type|
          sort|lye|soda|caustic)|(?:meant |sold )?for (?:the )?drains
        `,
        200,
      ),
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
      near(LYE, '(?:in)?to (?:the )?water or (?:the )?water|al agua o (?:el )?agua', 8),
    ],
  ],
  ['glass-jug', [near(GLASS, LYE, 60), near(LYE, GLASS, 60)]],
  [
    'aluminium',
    [
      near(ALUMINIUM, LYE, 60),
      near(LYE, ALUMINIUM, 60),
      near('can i|could i|is it ok|puedo|se puede|podria', ALUMINIUM, 24),
    ],
  ],
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
      near(
        `(?:added|add|put|poured|weighed|used|echado|eche|puse|anadi|agregue|puesto)(?: \\w+){0,2} ${LYE}`,
        '(?:twice|two times|dos veces|doble|otra vez)(?! as)',
        16,
      ),
      near(LYE, '(?:twice|two times|dos veces)(?! as)', 3),
      near('(?:twice|two times|dos veces)', `(?:the|la|in the)? ?${LYE}`, 6),
    ],
  ],
  [
    'wrong-unit',
    [
      new RegExp(
        unbroken`
          \b(?:scale|balanza|bascula|peso)\b.{0,24}\b(?:was|were|set|estaba|marcaba|
          puesta)\b.{0,16}\b(?:in )?(?:en )?(?:ounces|oz|onzas|pounds|libras|grams|gramos)\b
        `,
        'u',
      ),
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
      new RegExp(
        unbroken`
          \b(?:forgot|forget|forgotten|olvide|se me olvido)\b(?: (?:to|the|my|la|de|anadir|echar|poner|add|
          put|in|whether|if|i|added))* (?:lye|naoh|sosa|lejia|potasa)\b
        `,
        'u',
      ),
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
      new RegExp(
        unbroken`
          \b(?:too little|not enough|too few|less|forgot the|very little|poca|muy poca|demasiado poca|falta|
          menos)\b.{0,10}\b(?:water|agua)\b.{0,40}\b(?:lye|naoh|sosa|soap|jabon|batter|masa)\b
        `,
        'u',
      ),
      near(LYE, '(?:too little|not enough|poca|demasiado poca|muy poca) (?:water|agua)', 40),
      /^(?:i (?:used|added|put|have) |use |puse |eche )?(?:too little|not enough|(?:muy |demasiado )?poca) (?:water|agua)\b[ ?!.]*$/u,
    ],
  ],
  [
    'vessel',
    [
      near(
        '(?:can|could|should|may|do) i|is it (?:ok|okay|safe) to|puedo|se puede|debo',
        unbroken`
          (?:jugs?|jars?|bowls?|dish|dishes|pots?|pans?|buckets?|containers?|cups?|pitchers?|spoons?|
          jarras?|botes?|bol(?:es)?|ollas?|cubos?|recipientes?|cucharas?|cazos?)\b.{0,30}\b${LYE}
        `,
        30,
      ),
      near(
        `(?:what|which|que)(?: kind of| sort of| type of| tipo de)? (?:jugs?|bowls?|pots?|containers?|jarra|recipiente|olla)`,
        LYE,
        40,
      ),
    ],
  ],
];
