import { unbroken } from '../../../over-lines.ts';
import { all, type Outright, whole, within } from './words.ts';

const SECONDS = unbroken`
  (?:(?:\d+|ten|twenty|thirty|a few|few|unos?|pocos?|diez|veinte|treinta) ?(?:s|secs?|seconds?|seg|segs|
  segundos?)|(?:an? |un )?(?:instant(?:e|ly)?|no time|segundo|toque)|seconds|segundos|straight ?away|
  at once|de una(?: vez)?|de golpe|al instante)
`;
const SCENT = String.raw`perfum\w*|fragranc\w*|fraganc\w*|scents?|esencias?|escencias?|aromas?|fo|eo|essential oils?|aceite esencial`;
const WENT_HARD = unbroken`
  (?:went|gone|goes|turned|turning|set|setting|its|now|got|se (?:me )?(?:ha )?(?:puso|hizo|quedo|puesto|
  esta poniendo|pone)|quedo|esta) (?:\p{L}+ ){0,4}?(?:solid|hard|rock|stone|brick|concrete|cement|stiff|
  dur[oa]|durisim[oa]|piedra|ladrillo|cemento|ties[oa])|se (?:me )?(?:tranco|endurecio|solidifico)|seized|
  siezed
`;
/** A bar that is made is a matter of its own. */
const MADE = within(
  String.raw`bars?|cured?|unmou?ld\w*|cut(?:ting)?|weeks?|days?|yesterday|barras?|pastillas?|curad\w*|desmold\w*|cort\w+|semanas?|dias?|ayer|soft|bland[oa]`,
);

const STIFF = String.raw`stiff|thick|set|setting|hard|solid|seized|ties[oa]s?|dur[oa]s?|espes[oa]s?|endureci\w*|espeso|cuaj\w+`;
const LAST_POT =
  '(?:(?:4th|fourth|3rd|third|5th|fifth|last|cuart[oa]|tercer[oa]?|quint[oa]|ultim[oa])(?: (?:one|jug|pot|cup|jar|colou?r|bowl|jarra|vaso|color|tarro))?)';
const SHARED = String.raw`split\w*|divid\w*|jugs?|pots?|cups|jars?|bowls?|colou?rs|jarras?|vasos?|tarros?|colores|reparto`;

const SPILT_LYE = 'lye|naoh|caustic(?: soda)?|sodium hydroxide|soda|sosa|lejia|hidroxido';
const SPILT = unbroken`
  spill\w*|spilt|dropped|tipped|knocked|(?:fell|went|ran|got) (?:all )?(?:over|on|onto)|se (?:me|nos|
  le) (?:ha |han )?(?:reg|bot|derram|ca|volc|chorre|vir|tir)\w+|regue|bote|derrame|volque|chorree|tire|vire|
  (?:regad|derramad|botad|volcad|chorread)[oa]
`;
const SURFACE = unbroken`
  work ?tops?|counter ?tops?|counters?|bench|tables?|floors?|tiles?|carpet|kitchen|encimera|mesa|mesada|
  meson|tope|mostrador|banco|suelo|piso|baldosas?|alfombra|cocina
`;
const CLEANS = String.raw`clean\w*|wipe\w*|mop\w*|limpi\w+|recoj\w+|recog\w+`;
/** Water, bleach or metal beside it, or somebody there, is more than a spill. */
const MORE_THAN_SPILT = within(
  unbroken`
    aluminium|aluminum|aluminio|bleach|cloro|drain|desague|hands?|skin|feet|foot|eyes?|manos?|piel|pies?|
    ojos?|kids?|child\w*|nin[oa]s?|dogs?|cats?|perr[oa]s?|gat[oa]s?|ash|ceniza|baking|club
  `,
);

const WET_TOOLS = unbroken`
  jugs?|pots?|pans?|jars?|bowls?|tools?|spatulas?|blenders?|stick blenders?|whisks?|spoons?|bottles?|cups?|
  utensils?|jarras?|ollas?|batidoras?|espatulas?|utensilios?|cacharros?|recipientes?|vasos?|tazas?|
  cucharas?|herramientas?|implementos?|trastes?|bol(?:es)?|pocillos?
`;

/** Of what somebody stands before, and of what lye has a part in. */
export const AT_HAND: readonly Outright[] = [
  {
    words: all(SPILT_LYE, SPILT, SURFACE, CLEANS),
    unless: MORE_THAN_SPILT,
    technique: 'lye-spilt-surface',
    to: { lye: 'clean-up' },
    atHand: true,
  },
  {
    words: within(
      unbroken`
        zap ?tests? (?:on |with |by )?(?:the |my |your )?tongue|how (?:do|to|does|should)(?: (?:i|you|we|
        one|it))? (?:do |work )?(?:a |the )?zap ?test\w*|how (?:do|to) (?:i |you )?(?:zap|tongue) ?test|
        (?:como|q|que) (?:se hace|hago|hacer|es) (?:la |el )?(?:prueba|test) (?:de la lengua|del? (?:zap|
        calambre|corrientazo|toque))|(?:prueba|test) (?:de la lengua|del? (?:zap|calambre|toque)),? (?:como|
        q es)
      `,
    ),
    unless: within(
      String.raw`kids?|child\w*|nin[oa]s?|hij[oa]s?|raw|batter|masa|crud[oa]|fresh|recien|sell\w*|vend\w*`,
    ),
    technique: 'cure-time',
    to: { named: 'zap-how' },
    atHand: true,
  },
  {
    words: whole(
      String.raw`(?:the )?zap ?tests?\W+tongue|(?:prueba|test) del? (?:zap|calambre|toque)\W+(?:la )?lengua`,
    ),
    technique: 'cure-time',
    to: { named: 'zap-how' },
    atHand: true,
  },
  {
    words: within(
      unbroken`
        (?:trac(?:ed|es|ing|e)|thick(?:ened)?|went (?:thick|hard|solid)|set(?: up)?|seized|trazo|
        llego a traza|dio traza|traza|espeso|se (?:me )?(?:espeso|puso (?:dur[oa]|espes[oa])|
        endurecio)) (?:\p{L}+ ){0,3}?(?:in|within|after|en|a los)? ?${SECONDS}
      `,
    ),
    unless: within(
      unbroken`
        how long|how many|blend\w* (?:in|for)|bursts?|should|cuanto|golpes?|false|falsa|yesterday|
        last (?:week|night|time|batch)|every time|always|ayer|anoche|la (?:ultima|otra) vez|cada vez|siempre
      `,
    ),
    technique: 'thick-now',
    to: { named: 'fast-now' },
    atHand: true,
  },
  {
    words: all(SCENT, WENT_HARD),
    unless: MADE,
    technique: 'thick-now',
    to: { named: 'solid-now' },
    atHand: true,
  },
  {
    words: all(SHARED, String.raw`${LAST_POT} (?:\p{L}+ ){0,4}?(?:${STIFF})`),
    technique: 'keep-fluid',
    to: { technique: 'keep-fluid' },
  },
  {
    words: within(
      unbroken`
        (?:how (?:do|should|can|to)(?: (?:i|you|we))?|como|best way to) (?:se )?(?:wash|clean|lavo|lavar|
        lavan|limpio|limpiar|limpian) (?:up |out |off )?(?:the |my |all |these |las? |los? |mis? |el |
        todas? |todos? |esas? |esos? )*(?:mixing |soap |soapy |messy |sucias? |sucios? )?(?:${WET_TOOLS})
      `,
    ),
    unless: within(String.raw`lye|naoh|caustic\w*|sosa|soda|lejia|stain\w*|manch\w*`),
    technique: 'clean-tools',
    to: { technique: 'clean-tools' },
  },
  {
    words: within(
      unbroken`
        (?:can|could|should|may) i (?:cut|unmou?ld|demou?ld|slice)(?: (?:it|them|the loaf|my loaf|the soap|
        my soap))? (?:today|now|yet|already|tonight|this (?:morning|evening))|(?:ya )?(?:puedo|se puede|
        podria) (?:partir|cortar|desmoldar|sacar)(?:lo|la)?(?: (?:el|la|mi) (?:molde|jabon|pan|barra|
        loaf))?(?: del molde)? (?:hoy|ya|ahora|esta (?:noche|tarde))
      `,
    ),
    technique: 'demould-cut',
    to: { lye: 'after-pour' },
  },
  {
    words: within(
      unbroken`
        (?:did ?nt|nobody|no one|never) (?:\p{L}+ ){0,4}?(?:lye|caustic)(?: \p{L}+){0,3} (?:hot|heats?|
        warm)|(?:se )?(?:calienta|calento|calentaba) (?:\p{L}+ ){0,2}?(?:la )?(?:soda|sosa|lejia)|
        (?:la )?(?:soda|sosa|lejia) (?:se )?(?:calienta|calento|calentaba) (?:tanto|mucho|muchisimo|asi)|
        why (?:does|is|did) (?:the |my )?lye (?:water )?(?:get |so )*(?:hot|warm)
      `,
    ),
    unless: within(
      String.raw`melt\w*|smok\w*|boil\w*|spit\w*|derrit\w*|humo|hierv\w*|hirv\w*|escup\w*|salpic\w*|plastic\w*`,
    ),
    technique: 'lye-nerves',
    to: { technique: 'lye-nerves' },
    atHand: true,
  },
  {
    words: all(
      String.raw`super ?fat\w*|sobre ?engras\w*|sobre ?grasa`,
      unbroken`
        (?:mica|colou?r|carrier|pigment|dispers\w*)(?: \p{L}+)? oils?|oils? (?:for|of|with|in) (?:the |
        my )?(?:micas?|colou?rs?|pigments?)|aceite (?:del?|con|para) (?:la |el |las |los )?(?:micas?|
        color\w*|pigmentos?)
      `,
    ),
    unless: within(String.raw`\d+ ?(?:g|kg|oz|lb)`),
    technique: 'carrier-counts',
    to: { technique: 'carrier-counts' },
    atHand: true,
  },
  {
    words: all(
      'gloves?|guantes?',
      String.raw`unmou?ld\w*|demou?ld\w*|cut(?:ting)?|desmold\w*|sacar(?:lo)? del molde|cort(?:o|ar|arlo)`,
    ),
    unless: within(String.raw`which|what|kind|cuales|sharp|knife|cuchillo|without|sin|forgot|olvid\w+`),
    technique: 'goggles-gloves',
    to: { named: 'gloves-raw' },
  },
];
