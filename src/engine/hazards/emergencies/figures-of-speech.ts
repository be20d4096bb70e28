/*
 * Turns of phrase in which a word of harm stands and nobody is harmed. The phrase alone is taken away; whatever else the words tell is read
 * as it stands. Both languages, from general knowledge of them (no source).
 */
import { unbroken } from '../../over-lines.ts';

const SAID: readonly RegExp[] = [
  // "Drank in every word", "tragué saliva", "swallowed my pride".
  /\bdr(?:a|i|u)nk(?:ing)? in (?:every|each|all|the|your|his|her) (?:\w+ ){0,2}?(?:words?|lesson|advice|views?|talk)\b/giu,
  /\bswallow(?:ed|ing|s)? (?:my|your|his|her|their) (?:pride|words|doubts?|anger|laugh(?:ter)?|tears)\b/giu,
  new RegExp(
    unbroken`
      \b(?:me )?(?:trag\p{L}+) (?:saliva|el orgullo|las palabras|la rabia|el coraje|las lagrimas|
      las lágrimas)(?! (?:con|y|de) (?:la )?(?:sosa|soda|lej[ií]a|masa|jab[oó]n))
    `,
    'giu',
  ),
  // "The calculator ate my recipe", "la sosa se come los trapos".
  new RegExp(
    unbroken`
      \b(?:lye |soap )?(?:calculator|computer|phone|app|page|spreadsheet|printer|internet) (?:has )?(?:ate|
      eaten|swallowed|eats)\b(?: (?:all )?(?:my|the|our) \w+)?
    `,
    'giu',
  ),
  new RegExp(
    unbroken`
      \b(?:sosa|soda|lej[ií]a|lye|caustic) (?:(?:se|me) )*(?:come|com[ií]a|comi[oó]|eats?|ate) (?:los |las |
      la |el |my |the |through )?(?:trapos?|ropa|tela|guantes?|esponjas?|rags?|cloths?|aprons?|tea towels?|
      sponges?)\b
    `,
    'giu',
  ),
  // "The flowers drank the rest": what soaks up a liquid; "my little flower" may be a child, and is none.
  new RegExp(
    unbroken`
      \b(?:the|those|these|my dried|dried) (?:dried |dry )?(?:flowers|petals|herbs|leaves|roots|seeds|oats|oatmeal|grounds|clay|starch|calendula|
      chamomile|lavender|rosemary|nettles|comfrey|marigolds?|(?:wooden |wood |cardboard )?(?:mou?ld|box|tray)|wood|paper|towels?|cloths?|
      muslin|sponges?|bread|rice) (?:has |have |had )?(?:all |really |just )?(?:drank|drunk|drinks?|swallow(?:s|ed)?)(?: up)?\b
    `,
    'giu',
  ),
  new RegExp(
    unbroken`
      \b(?:las|los|la|el|esas|esos) (?:flores|p[eé]talos|hierbas|hojas|ra[ií]ces|semillas|avena|posos|arcilla|almid[oó]n|cal[eé]ndula|manzanilla|
      lavanda|romero|ortigas|molde|madera|cart[oó]n|papel|toallas?|trapos?|pa[nñ]os?|esponjas?|gasa|arroz|pan) (?:(?:se|me|nos|lo|la) )*(?:ha |han |
      hab[ií]a[n]? )?(?:beb(?:i[oó]|ieron|ido|en|e|[ií]a[n]?)|trag(?:[oó]|aron|ado|an?|aba[n]?)|tom(?:[oó]|aron|ado))(?!\p{L})
    `,
    'giu',
  ),
  // "A volcano mould", "a joke about a volcano".
  new RegExp(
    unbroken`
      \bvolcan(?:o|ic)(?:-| )(?:mou?lds?|shapes?|cakes?|designs?|swirls?|names?|party|science)\b|
      \bmolde (?:de|con forma de) volc[aá]n\b|\b(?:jokes?|film|documentary|book|story|chiste|película|
      documental) (?:about|on|of|de|sobre) (?:an? |the |un |el )?volc[aá]n(?:o|es)?\b
    `,
    'giu',
  ),
  // "Casi me ahogo de la risa", "está que arde el concurso", "burning a hole in my drawer".
  new RegExp(
    unbroken`
      \b(?:me |se |nos )?(?:ahog\p{L}+|mor\p{L}+|muer\p{L}+|llor\p{L}+) de (?:la )?risa\b|\b(?:choked|
      choking|wheezing|crying|died|dying) (?:with|from|of) (?:laughter|laughing)\b
    `,
    'giu',
  ),
  /\best[aá]n? que arden?\b|\bburn(?:ing|s|t)? a hole in (?:my|his|her|your|our) (?:pockets?|drawers?|wallets?|purse|shel(?:f|ves))\b/giu,
  // "Here the water boils at 87 degrees", of a place that lies high.
  new RegExp(
    unbroken`
      \bwater boils at (?:about |around |only )?\d{2} ?(?:degrees|°|º|c\b)|\bagua (?:hierve|ebulle) a (?:unos |como |
      los )?\d{2} ?(?:grados|°|º|c\b)
    `,
    'giu',
  ),
  // Dripping, the fat of a roast: by its animal, beside another fat, or weighed.
  new RegExp(
    unbroken`
      \b(?:beef|mutton|pork|bacon|lamb|roast|duck|goose|chicken|rendered|nothing but) drippings?\b|
      \b(?:soap|bars?) (?:of|from|with) drippings?\b|
      \bdrippings?(?= (?:and|or|plus|with|&) (?:lard|tallow|suet|marge|margarine|butter|coconut|olive|palm|
      oil|shortening|sunflower)\b| ?,? ?\d| soap\b| for soap\b)|
      \b(?:\d+ ?(?:g|kg|oz|lbs?|grams?|pounds?)|lard|tallow|suet|marge|margarine|butter|coconut|olive|palm|
      shortening)(?: of| and| or| plus| &|,)* drippings?\b(?! (?:on|onto|down|off|from|over|in|into|all|everywhere)\b)
    `,
    'giu',
  ),
  // Margarine for short, or a friend, and no slip for one who feels sick ("mareo").
  /\bmarge\b/giu,
  // Eyes of hardware, and what is called after one: "eye bolt", "ojo de buey", "ojo de la cerradura".
  new RegExp(
    unbroken`
      \beye(?:-| )?(?:bolts?|screws?|hooks?|lets?|hole)s?\b|\bhooks? and eyes?\b|
      \bojos? de (?:buey|(?:la )?cerradura|(?:la )?aguja|pez)\b
    `,
    'giu',
  ),
  // A hint that is asked for is nothing that tips over.
  /\b(?:any|some|your|good|got) tips\b/giu,
  // "Gas bill".
  /\bgas (?:bill|meter|man|company|price|board)s?\b|\b(?:recibo|factura|cuenta) del? gas\b/giu,
];

/** Words as somebody typed them, without figures of speech that name a harm. Pure. */
export const withoutFiguresOfSpeech = (words: string): string =>
  SAID.reduce((said, pattern) => said.replace(pattern, whole => ' '.repeat(whole.length)), words);

/** Sayings that tell of no harm, and yet of a matter of their own. */
const NO_HARM: readonly RegExp[] = [
  // Glasses that mist over are looked through, and nobody breathes in by it.
  new RegExp(
    unbroken`
      \b(?:glasses|goggles|specs|spectacles|visor)(?: (?:always|keep|all|just))* (?:steam(?:s|ing|ed)?|
      fog(?:s|ging|ged)?|mist(?:s|ing|ed)?)(?: up| over)?\b|
      \bse (?:me |nos )?empa[nñ]an? (?:las gafas|los lentes|los anteojos|la pantalla)
    `,
    'giu',
  ),
];

/** {@link withoutFiguresOfSpeech}, and without what harms nobody though it is asked about. Pure. */
export const withoutNoHarm = (words: string): string =>
  NO_HARM.reduce(
    (said, pattern) => said.replace(pattern, whole => ' '.repeat(whole.length)),
    withoutFiguresOfSpeech(words),
  );
