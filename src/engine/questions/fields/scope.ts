import { unbroken } from '../../over-lines.ts';

/** What lies outside the field, by what it is about. */
export type Outside =
  | 'melt-and-pour'
  | 'candles'
  | 'bath-products'
  | 'body-care'
  | 'medical'
  | 'food'
  | 'textiles'
  | 'business'
  | 'lye-elsewhere'
  | 'hot-process'
  | 'other';

/** Fields that are somebody else's, on text in lower case without accents; the first that fits is named. */
const FIELDS: readonly (readonly [Outside, RegExp])[] = [
  [
    'melt-and-pour',
    new RegExp(
      unbroken`
        \bmelt[ -]?(?:and|n|&)[ -]?pour\b|\bm ?& ?p\b|\bmp (?:base|soap)\b|\b(?:glycerin|
        glicerina) (?:soap )?base\b|\bbase de (?:glicerina|jabon)\b|\bglicerina de derretir\b|
        \bjabon de glicerina\b|\bglicerina para derretir\b|\bglicerina\b.*\bmicroondas\b|\b(?:derr[ei]t\w+|
        fund\w+) (?:la |mi |una |el |en )?(?:base|glicerina)\b|\bmicrowave\b.*\b(?:base|glycerine?)\b|
        \b(?:base|glycerine?)\b.*\bmicrowave\b|\bmelt (?:my |the |a |some |down )*(?:\w+ )?base\b|
        \b(?:derretir|fundir) y verter\b|\bsoap base\b|\bbase (?:para )?(?:derretir|fundir)\b
      `,
      '',
    ),
  ],
  [
    'candles',
    /\bcandles?\b|\bvelas?\b|\bwax melts?\b|\bsoy wax\b(?!.*\bsoap)|\bwick\w*\b|\bpabilos?\b|\bmechas?\b|\bveladoras?\b|\bcera de (?:soja|soya)\b(?!.*jabon)/,
  ],
  [
    'bath-products',
    /\bbath ?bombs?\b|\bbombas? de ban[oa]\b|\bbath salts?\b|\bsales de bano\b|\bbubble bars?\b|\bshower steamers?\b|\bshampoo bars?\b(?! .*lye)|\bsyndet\b/,
  ],
  [
    'body-care',
    new RegExp(
      unbroken`
        \blotions?\b|\blocion(?:es)?\b|\blip ?balms?\b|\bbalsamo labial\b|\blip ?gloss\b|
        \blip ?sticks? (?:recipe|for)\b|\bbody butters?\b|\bface (?:cream|mask)\b|\bcrema (?:es buena|
        hidratante|para|facial|corporal|de manos)\b|\bcremas? para\b|\bdeodorants?\b|\bdesodorante\b|
        \bsugar scrub\b|\bsunscreen\b|\bprotector solar\b|\bserum\b|\bnail (?:polish|varnish|lacquer)\b|
        \besmalte de unas\b|\bunas (?:acrilicas|de gel)\b|\bhair dye\b|\btinte (?:de|para el) (?:pelo|
        cabello)\b|\bmascarilla\b|\bperfume recipe\b|\beau de (?:parfum|toilette|cologne)\b|
        \bagua de colonia\b|\blabial(?:es)?\b|\bpomada\b
      `,
      '',
    ),
  ],
  [
    'medical',
    new RegExp(
      unbroken`
        \bcure[sd]?\b.*\b(?:my|eczema|acne|psoriasis|rash)|\beczema\b|\bpsoriasis\b|\bdermatitis\b|\bacne\b|
        \brosacea\b|\bcur(?:a|ar|e) (?:el|la|mi|las|los)\b|\b(?:what|which|que) (?:cream|crema|ointment|
        medicine|medicina)\b|\brash\b.*\b(?:take|cream|what)\b|\bsarpullido\b|\bhongos? (?:en|de) (?:la|los|
        las)? ?(?:piel|pies|unas)\b|\bdiabet\w*\b|\bpoison (?:ivy|oak|sumac)\b|\bhiedra venenosa\b|\b(?:que|
        what) (?:me )?(?:tomo|puedo tomar|can i take|do i take) (?:para|pa|for)\b|\bpregnan\w*\b|
        \bembaraz\w*\b|\bheadache\b|\bdolor de\b|\bfever\b|\bfiebre\b|\bantibiotic\w*\b|
        \bmanchas de la cara\b|\bdoctor\b|\bblood pressure\b|\b(?:tension|presion) (?:alta|baja|arterial)\b|
        \b(?:open|deep|infected|bleeding) (?:burns?|wounds?|cuts?|sores?|blisters?)\b|\b(?:heridas?|
        quemaduras?|llagas?|ampollas?) (?:abiert\w+|infectad\w+|profund\w+|que (?:sangra|supura)\w*)\b|
        \b(?:puedo|podemos|puede|se puede|podria) (?:me |mi \w+ )?(?:tomar(?:me|se)?|beber(?:me|
        se)?) (?:el |la |un |una )?(?:infusion|te|jugo|zumo|agua|cocimiento)\b|\b(?:can|could|may|
        should) (?:i|we|you) drink (?:the |a |my |some )?(?:\w+ )?(?:tea|infusion|juice|brew)\b
      `,
      '',
    ),
  ],
  [
    'food',
    new RegExp(
      unbroken`
        \bsourdough\b|\bbread\b|\bpan de\b|\breceta (?:de|del|para|pa) (?:el |la |los |las |un |una |
        hacer )?(?:pan|panes|pastel(?:es)?|panque|pay|bizcocho|bunuelos|galletas?|tamales|mole|pizza|arroz|
        pollo|carne|caldo|sopa|salsa|pozole|atole|enchiladas?|ensalada|gelatina|postre|flan|tortillas?)\b|
        \brecipe (?:for|of) (?:\w+ )?(?:bread|cake|cookies|soup|stew|pie|pancakes|muffins|chicken|pasta|jam|
        biscuits|rolls|casserole|chili)\b|\b(?:bread|cake|cookie|soup|stew|pancake|muffin|jam|biscuit|
        casserole) recipes?\b|\b(?:dry|bread|instant) yeast\b|\blevadura (?:de|para|pa) pan\b|\b(?:knead|
        amas\w+ (?:el )?pan)\b|\bcake recipe\b|\bbake (?:a|bread|cookies)\b|\bcookies?\b|
        \bcook(?:ing)? (?:dinner|rice|chicken)\b|\bdinner\b|\bcenar\b|\bmacarons?\b|
        \bfrosting for (?:a )?(?:birthday )?cakes?\b|\bpizza\b|\btortillas?\b|\bmermelada\b|\bpie recipe\b|
        \b(?:hard |soft |cottage |goats? )?cheese (?:recipe|making)\b|\b(?:make|mak|
        making) (?:\w+ ){0,3}(?:cheese|yogh?urt|butter|kefir)\b(?! soap)|\b(?:hacer|
        hago) (?:\w+ ){0,2}(?:queso|yogur|kefir|requeson)\b
      `,
      '',
    ),
  ],
  [
    'textiles',
    new RegExp(
      unbroken`
        \b(?:dye|tie dye|tenir|tintar|pintar|colou?r)\b.*\b(?:t-? ?shirts?|fabric|wool|yarn|cotton|
        cloth(?:es)?|socks|playeras?|camisetas?|remeras?|poleras?|telas?|lana|ropa|algodon|pared|wall|walls|wood|furniture|
        muebles)\b|\b(?:tint|colou?r|stain|tenir|pigmentar)\w* (?:\w+ ){0,2}(?:concrete|grout|mortar|paving|
        hormigon)\b(?! grey| gray)|\bresin (?:art|mold|table)\b|\bepoxy\b|\bpaint my (?:wall|house|room|
        nails)\b|\bresina\b
      `,
      '',
    ),
  ],
  [
    'business',
    new RegExp(
      unbroken`
        \b(?:what|how much) (?:should|do|can|to) (?:i )?charge\b|\bcharge for\b|\bpric(?:e|ing)\b|
        \bcuanto (?:cobro|cobrar|deberia cobrar|debo cobrar)\b|\bprecio\b|\bcaption\b|\bshipping\b|
        \benvios?\b|\btaxes\b|\bimpuestos\b|\blogo\b|\bwebsite\b|\bpagina web\b|\bbusiness name\b|
        \bnombre para mi (?:marca|negocio)\b|\bhashtags?\b|\binsurance\b|\bseguro de\b|\bwhere (?:can|
        do) i buy\b|\bdonde (?:compro|puedo comprar|consigo|venden)\b|\bbest (?:brand|supplier)\b|
        \bmejor (?:marca|proveedor)\b|\b(?:a|per|el|por) (?:bushel|tonne|ton|acre|quintal|
        tonelada)\b(?! (?:of|de)\b)|\b(?:market|futures|spot) price\b|\bgoing (?:rate|price)\b|\b(?:a como|
        a cuanto) (?:esta|anda|dan|venden)\b|\bcuanto (?:cuesta|vale)n? (?:el|la|los|las|un|una) (?!lote|
        tanda|jabon|barra|batch)\w+
      `,
      '',
    ),
  ],
  ['body-care', /\bton(?:er|ico)s?\b|\bconservantes?\b|\bpreservatives?\b|\bhamamelis\b|\bwitch hazel\b/],
  [
    'textiles',
    /\benvejecer\b|\bmadera\b(?!.*(?:jabon|molde))|\bbetun\b|\bwood stain\b|\bstain (?:a )?wood\b/,
  ],
  [
    'business',
    /\biva\b|\bautonom[oa]s?\b|\btax(?:es)?\b|\bfactura\w*\b|\bmi marca\b|\bmy brand\b|\bsocial media\b/,
  ],
  [
    'other',
    // Animals of a farm, and what ails them.
    new RegExp(
      unbroken`
        \b(?:off|aff) (?:her|his|its|their) feed\b|\b(?:udder|mastitis|hoof|hooves|deworm\w*|wormer|lambing|
        calving|kidding season|farrowing|molting hens?|laying hens?|desparasit\w*|ubre|veterinari[oa]|
        vet bills?|livestock|ganado)\b|\b(?:my|one of my|one of the|our|mi|mis|una de mis|
        uno de mis) (?:\w+ )?(?:doe|does|buck|goats?|kids? goats?|cows?|calf|calves|sheep|ewes?|lambs?|
        hens?|chickens?|roosters?|horses?|mare|pigs?|sow|piglets?|donkey|vacas?|cabras?|chivos?|borregos?|
        gallinas?|pollos?|puercos?|cerdos?|caballos?|becerros?) (?:is|are|has|have|won'?t|wont|keeps?|got|
        stopped|isn'?t|aren'?t|esta|estan|no|tiene|tienen|anda|se)\b
      `,
      '',
    ),
  ],
  [
    'other',
    new RegExp(
      unbroken`
        \b(?:trains?|bus|buses|flights?|vuelos?|tren|trenes|camion(?:es)?)\b.*\b(?:run|runs|leave|leaves|
        sale|salen|llega|sunday|domingo|hora)\b|\bspelling (?:test|words)\b|\b(?:knit|crochet|tejer)\w*\b|
        \btractor\b|\b(?:math|school) (?:problem|lesson|worksheet)s?\b|\brefacciones\b|\b(?:lottery|
        loteria)\b
      `,
      '',
    ),
  ],
  [
    'other',
    new RegExp(
      unbroken`
        \bweather\b|\brain(?:ing)?\b|\bllover\b|\bllueve\b|\bclima\b|\bgonna rain\b|\bfootball\b|\bfutbol\b|
        \bwho won\b|\bquien gano\b|\bpresident\w*\b|\bmovie\b|\bpelicula\b|\bmy car\b|\bhomework\b|
        \btarea de\b|\btell me a joke\b|\bchiste\b|\bhoroscop\w*\b|\blaundry detergent\b|\bdetergente\b|
        \bdish soap recipe\b|\bstocks?\b price|\btranslate\b|\btraduce\b|\bwifi\b|\bpassword\b|\bmy (?:dog|
        cat) (?:is sick|wont eat)\b|\bboyfriend\b|\bgirlfriend\b|\bplant(?:s)? (?:dying|care)\b|
        \bgardening\b|\bgarden (?:tips|pests?|bed|beds|soil|fertili[sz]er)\b|\b(?:plant|grow|water|
        weed)\w* (?:\w+ ){0,3}garden\b|\bwhat time\b|\bque hora\b
      `,
      '',
    ),
  ],
];

/** These are our field whatever else is spoken of: a bar, its batter, its lye. */
const OURS =
  /\b(?:cold process|cp\b|proceso (?:en )?frio|hot process|proceso (?:en )?caliente|saponif\w*|trace|traza|naoh|batter|masa de jabon|soda ash)\b/u;
/** A candle's dye or a bread's spice asked about for soap is ours too. */
const FOR_SOAP =
  /\b(?:in|for|en|para|to|al|a mi|de mi)\b(?: \w+){0,2} (?:soaps?|jabon(?:es)?|my soap|bars? of soap|cp)\b/u;

/** Which field a question is about that is not cold-process soap, or undefined. `text` in lower case without accents. */
export function outsideField(text: string): Outside | undefined {
  const found = FIELDS.find(([, pattern]) => pattern.test(text));
  if (!found) return undefined;
  const [field] = found;
  if (
    field !== 'medical' &&
    field !== 'melt-and-pour' &&
    field !== 'business' &&
    (OURS.test(text) || FOR_SOAP.test(text))
  )
    return undefined;
  return field;
}

/** Hot process is a neighbour: colours behave much alike, but the heat and the thick paste differ. */
export const isHotProcess = (text: string): boolean =>
  /\bhot process\b|\bhp (?:soap|batch)\b|\bcrock ?pot\b|\bslow cooker\b|\bproceso (?:en |a )?caliente\b|\bolla lenta\b/u.test(
    text,
  );
