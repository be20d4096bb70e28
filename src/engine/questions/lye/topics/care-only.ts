import { unbroken } from '../../../over-lines.ts';
import type { LyeTopic } from './topic.ts';

/** Longer ones tell a story, and a story may hold words of harm that nobody has written yet. */
const MOST_WORDS = 22;
/** What went missing, was spilled or stands in the cold is told with how it came about. */
const MOST_OF: { readonly [Topic in LyeTopic]?: number } = {
  'oil-forgotten': 38,
  'lye-forgotten': 38,
  'clean-up': 42,
  'lye-water-in-cold': 38,
  'lye-heats': 30,
};

/** Told or asked in the words of an accident, of which nothing has happened to anybody. */
const CARE: ReadonlySet<LyeTopic> = new Set([
  'lye-guessed',
  'oil-spilled',
  'undissolved-lye',
  'not-sober',
  'blender-smokes',
  'old-bar',
  'rusty-lid',
  'class-rules',
  'water-unwritten',
  'alcohol-in-lye',
  'flame-near',
  'no-vinegar',
  'back-to-food',
  'vanillin',
  'gear',
  'fan',
  'acid-on-soap',
  'oil-forgotten',
  'lye-forgotten',
  'lye-heats',
  'lye-water-in-cold',
]);
/** These only where it is said that it is a plan, or that nothing happened. */
const ONLY_WITH: { readonly [Topic in LyeTopic]?: RegExp } = {
  aluminium:
    /^(?!.*\b(?:lye|sosa|soda|caustic)\b).*\b(?:non ?stick|coated|antiadherente|para hacer jab\p{L}+|to make soap)\b/iu,
  asthma: /^(?!.*\b(?:lye|sosa|soda|mix\w*|mezcl\w*|attack|ataque)\b)\W*(?:i have asthma|tengo asma)\b/iu,
  'no-window': /\b(?:enough|ok|okay|vale|sirve|basta|suficiente)\W*$/iu,
  'water-was-put-on': /\bnothing happened\b|\bno pas[oó] nada\b/iu,
  'contact-lenses': new RegExp(
    unbroken`
      ^\W*(?:(?:can|may) i wear |puedo llevar )?(?:contact lenses|contacts|lentillas|
      lentes de contacto)(?: (?:with|near|and|con|y) (?:the |la )?(?:lye|soap|sosa|jab[oó]n))?\W*$
    `,
    'iu',
  ),
  pregnant: /\b(?:and i|y) (?:want|am going|would like|voy|quiero)\b/iu,
  'pets-washed':
    /\bpara mi (?:perr|gat)[oa] jab[oó]n\W*$|\b(?:soap|bar) for my (?:dog|cat)\W*$|\bjab[oó]n para mi (?:perr|gat)[oa]\W*$/iu,
  'scorched-milk': /\b(?:leche|milk)\b/iu,
  children: /\b(?:mientras (?:mezclo|hago)|while i (?:mix|make|stir))\b/iu,
  // It flies, and nobody breathed it or asks what to do then.
  dust: new RegExp(
    unbroken`
      ^(?!.*\b(?:breath\w*|inhal\w*|respir\w*|aspir\w*|lungs?|pulm\w+|what (?:do|to|if)|if (?:i|you|some)|
      qu[eé] (?:hago|toca|pasa)|si (?:uno|alguien))\b)
    `,
    'iu',
  ),
  // Asked how to clean it, and of the place alone.
  'clean-up': new RegExp(
    unbroken`
      \b(?:(?:lo|la) barro|(?:do|should|can) i (?:sweep|mop|hose|wipe|vacuum)|c[oó]mo (?:lo|la|las|
      los) (?:recojo|limpio|quito)|c[oó]mo (?:(?:lo|la) )?(?:limpio|recojo)|puedo (?:barrer|recoger)\p{L}*|
      c[oó]mo (?:(?:lo|la|se|puedo) )*limpi\p{L}+|how (?:do|should|can|to)(?: (?:i|we|you))? (?:clean|wipe|
      mop)|vinegar|vinagre)(?!\p{L})
    `,
    'iu',
  ),
};
/** Somebody who was kept away from it, and what an animal does behind a door. */
const KEPT_AWAY = unbroken`
  (?:(?:i|we)(?:[’']?ve| have)? )?(?:shut|put|locked|kept|moved|took|sent|chased)(?: up)? (?:the |my |
  our )?(?:dogs?|cats?|pupp(?:y|ies)|kids?|pets?|little one)(?: \w+)? (?:upstairs|downstairs|outside|out|
  away|next door|in (?:the|her|his|its|their|a)(?: other)? \w+)|(?:the |my |our )?(?:dogs?|cats?|pets?|
  kids?)(?: is|[’']s| are)? (?:shut|locked|kept)(?: \w+)? (?:out|away|outside|upstairs|in (?:the|her|his|
  its)(?: other)? \w+)|(?:el |la |los |las |mi )?(?:perr[oa]s?|gat[oa]s?|
  mascotas?)(?: ya)? (?:est[aá]n? )?(?:encerrad[oa]s?|afuera|fuera)(?: en (?:el|la|su) \w+)?|(?:encerr[eé]|
  saqu[eé]|apart[eé]) (?:al?|a la) (?:perr[oa]|gat[oa])
`;
const BEHIND_A_DOOR =
  "(?:,? (?:and|y) )(?:(?:she|he|it|they)(?:[’']s| is|[’']re| are)? )?(?:howling|barking|whining|meowing|llorando|ladrando|aullando|maullando)(?: about it)?";
const KEPT_AWAY_WORDS = `(?:${KEPT_AWAY})(?:${BEHIND_A_DOOR})?`;
/** "My kid was home sick and I got distracted": why something was left out. */
const DISTRACTED = unbroken`
  (?:(?:and|y|,) )*(?:(?:my|the|our|el|la|mi) )?(?:kids?|son|daughter|baby|toddler|husband|wife|dogs?|cats?|
  mum|mom|ni[nñ][oa]s?|hij[oa]s?|beb[eé]|marido|perr[oa]|gat[oa])(?: (?:is|was|were|est[aá]|
  estaba))?(?: home)?(?: (?:sick|ill|off school|crying|barking|talking|mal[oa]|enferm[oa]|llorando|ladrando|
  habl\w+))?(?: (?:at home|en casa))?(?: (?:and|so|y)) (?:i |me )(?:got |was )?(?:distracted|interrupted|
  lost count|despist\w+|distraj\w+|interrump\w+)|(?:my|the|our|el|la|mi) (?:kids?|son|daughter|baby|toddler|
  husband|wife|dogs?|cats?|ni[nñ][oa]|hij[oa]|marido|perr[oa]|gat[oa]) (?:distracted|interrupted) me|
  me (?:distrajo|interrumpi[oó]|llam[oó]) (?:el|la|mi) \w+
`;

/** Words that a matter itself brings, and that tell of no harm there. */
const OWN_WORDS: { readonly [Topic in LyeTopic]?: RegExp } = {
  'oil-forgotten': new RegExp(
    String.raw`\b(?:melt\w*|derret\w*|derrit\w*|hot plate|warm\w*|caliente)\b|${DISTRACTED}`,
    'giu',
  ),
  'lye-forgotten': new RegExp(DISTRACTED, 'giu'),
  'lye-water-in-cold': /\brun and (?:grab|get|fetch) it\b|\bhot\b|\bcaliente\b/giu,
  'lye-heats':
    /\b(?:hot|boiling hot|steam\w*|caliente|vapor|humo|humea\w*|smok(?:e|ed|y|ing)|fum(?:e|ed|ing))\b/giu,
  'clean-up': new RegExp(
    unbroken`
      ${KEPT_AWAY_WORDS}|\b(?:spill\w*|spilt|derram\p{L}*|se me (?:reg[oó]|cay[oó]|volc[oó]|bot[oó]|
      chorre[oó])|c[oó]mo (?:(?:lo|la|se|puedo) )*limpi\p{L}+|how (?:do|should|can|to)(?: (?:i|we|
      you))? (?:clean|wipe|mop))(?!\p{L})
    `,
    'giu',
  ),
  'oil-spilled': /(?<!\p{L})(?:spill\p{L}*|spilt|lost|derram\p{L}*|se (?:me )?cay[oó])(?!\p{L})/giu,
  'flame-near':
    /\b(?:candles?|velas?)(?: is)? (?:burning|encendidas?)|\b(?:burning|lit) candles?|\bsmoking\b|\bgas (?:boiler|heater)|\bfum(?:o|ar|ando)\b|\bfuego\b/giu,
  'blender-smokes': /\b(?:smok\w*|smells? burnt|humo|humea\w*|huele a quemado|se quema|se calienta)\b/giu,
  'old-bar': /\b(?:grandm\w+|abuela|huele a (?:viejo|rancio)|smells? (?:old|rancid))\b/giu,
  'no-vinegar':
    /\bon (?:the )?(?:burns?|skin)\b|\b(?:en|sobre) (?:la |las )?(?:piel|quemaduras?)\b|\bburns?\b(?= it)|\bit neutrali[sz]es\b/giu,
  children: /\b(?:dogs?|cats?|pets?|perr[oa]s?|gat[oa]s?|mascotas?)\b/giu,
  'pets-washed': /\b(?:dogs?|cats?|pets?|perr[oa]s?|gat[oa]s?|mascotas?)\b/giu,
  'back-to-food': /\b(?:eat|comer|cook|cocinar)\b/giu,
  pregnant: /(?<!\p{L})(?:dando (?:el )?pecho|breast ?feed\p{L}*|baby|beb[eé])(?!\p{L})/giu,
  'contact-lenses': /\b(?:eyes?)\b(?= (?:lens|contact))/giu,
  'scorched-milk':
    /\b(?:(?:huele|olor) a (?:amon[ií]aco|quemad[oa])|(?:smells?|stinks?) (?:of|like) ammonia|se (?:me )?quem[aoó]|quemad[oa]|burnt|scorched)\b/giu,
  vanillin: /\bburn(?:ed|t)\b/giu,
  'not-sober': /\bafter (?:a |some |two )?drinks?\b|\bdrunk\b/giu,
  gear: /\bmouth\b(?= mask)/giu,
};
/** Somebody's body, pain or help; what spits, boils over, catches fire or gives off gas; lye that went where it should not. */
const HARM = new RegExp(
  unbroken`
    (?<!\p{L})(?:eyes?|skin|hands?(?! (?:shake|mixer|blender))|fingers?|arms?|legs?|face|mouth|lips?|tongue|throat|
    nose|lungs?|chest|stomach|feet|foot|hair|son|daughter|kids?|child(?:ren)?|baby|toddler|husband|wife|mum|
    mom|dad|somebody|someone|he|she|they|dogs?|cats?|pets?|pupp(?:y|ies)|kittens?|paws?|birds?|parrots?|
    hens?|chickens?|rabbits?|drank|drink|drinks|swallow\p{L}*|eat|ate|eaten|lick\p{L}*|breath\p{L}*|inhal\p{L}*|
    cough\p{L}*|chok\p{L}*|vomit\p{L}*|dizzy|faint\p{L}*|wheez\p{L}*|gasp\p{L}*|rash\p{L}*|itch\p{L}*|blister\p{L}*|sting\p{L}*|stung|
    burn\p{L}*|pain\p{L}*|hurt\p{L}*|sore|red|gas|fumes?|flames?|fire|alight|explo\p{L}*|erupt\p{L}*|volcan\p{L}*|overflow\p{L}*|
    foam\p{L}*|fizz\p{L}*|bubbl\p{L}*|boil\p{L}*|hiss\p{L}*|froth\p{L}*|sizzl\p{L}*|crackl\p{L}*|thump\p{L}*|throw\p{L}*|scream\p{L}*|
    holler\p{L}*|collaps\p{L}*|convuls\p{L}*|dead|dying|unconscious|shak(?:es|ing)|trembl\p{L}*|limp\p{L}*|hot|spit\p{L}*|
    splash\p{L}*|splatter\p{L}*|smok\p{L}*|steam\p{L}*|spill\p{L}*|spilt|leak\p{L}*|melt\p{L}*|shatter\p{L}*|crack\p{L}*|doctor|
    hospital|ambulance|poison\p{L}*|emergency|help|first aid|ojos?|piel|manos?|dedos?|brazos?|piernas?|cara|
    boca|labios?|lengua|garganta|nariz|pulm\p{L}+|pecho|est[oó]mago|pies?|pelo|hij[oa]s?|ni[nñ][oa]s?|
    beb[eé]s?|marido|esposa?|perr[oa]s?|gat[oa]s?|mascotas?|alguien|bebi[oó]|beber|trag\p{L}*|comi[oó]|lami\p{L}*|
    respir\p{L}*|inhal\p{L}*|tos\p{L}*|ahog\p{L}*|v[oó]mit\p{L}*|mare\p{L}*|desmay\p{L}*|sarpullido|ampollas?|picor|arde\p{L}*|
    escuec\p{L}*|duele\p{L}*|dolor|roj[oa]s?|huele\p{L}*|humos?|llamas?|fuego|explot\p{L}*|desbord\p{L}*|chisporrot\p{L}*|
    caliente|falta (?:el )?aire|grit\p{L}*|llor\p{L}*|tiembl\p{L}*|cojea|inconsciente|convuls\p{L}*|espuma|burbuj\p{L}*|
    hierv\p{L}*|hirv\p{L}*|salpic\p{L}*|derram\p{L}*|gote\p{L}*|derrit\p{L}*|rompi[oó]|raj\p{L}*|quem\p{L}*|sale humo|m[eé]dic[oa]|
    urgencias|ambulancia|t[oó]xic\p{L}*|veneno\p{L}*|ayuda|auxilio|socorro)(?!\p{L})
  `,
  'iu',
);
/** A cleaner beside it is a matter of gas. */
const CLEANER = /\b(?:bleach|chlorine|lej[ií]a|cloro|lavandina|salfum[aá]n|muriatic|limpi\w*|clean\w*)\b/iu;

/**
 * True where a text of such a matter tells of nobody hurt and of nothing that spits, burns or gives off gas: it gets the
 * matter's own answer, and first aid would only hide it. Any word of harm that the matter does not bring itself, and it is
 * left to first aid.
 */
export function isCareOnly(topic: LyeTopic, words: string): boolean {
  const only = ONLY_WITH[topic];
  if (!CARE.has(topic) && !only) return false;
  if ((words.match(/\p{L}+/gu) ?? []).length > (MOST_OF[topic] ?? MOST_WORDS) || only?.test(words) === false)
    return false;
  const own = OWN_WORDS[topic];
  const told = own ? words.replace(own, ' ') : words;
  return !HARM.test(told) && !CLEANER.test(told);
}
