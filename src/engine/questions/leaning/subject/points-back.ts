import { unbroken } from '../../../over-lines.ts';
import { plainTurn } from '../turn/plain.ts';

const POINTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:it|its|that|thats|this|these|those|they|them|theyre|mine|one|ones|both|still|already|eso|
    esto|esos|esas|ese|esa|este|esta|lo|ambos|ambas|sigue|todavia|aun|ya|tampoco|tambien)(?!\p{L})
  `,
  'u',
);
const MOST_WORDS = 12;

/** Whether a turn speaks of something that it does not name: what is not understood of it may be about what came before. Pure. */
export function pointsBack(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_WORDS && POINTS.test(text);
}

const HURT = new RegExp(
  unbroken`
    (?<!\p{L})(?:sting\p{L}*|stung|burn\p{L}*|pink|red(?:dish|ness)?|blister\p{L}*|skin|eyes?|rins\p{L}*|
    hurt\p{L}*|itch\p{L}*|numb|pain\p{L}*|sore|swell\p{L}*|swollen|vinegar|lemon|cream|doctors?|hospital|
    ambulance|lick\p{L}*|swallow\p{L}*|worse|dangerous|poisonous|scars?|scarred|blind|vomit\p{L}*|crying|
    cough\p{L}*|breath\p{L}*|dizzy|slippery|arde\p{L}*|quem\p{L}*|roj[oa]s?|rosad[oa]s?|ampollas?|piel|
    ojos?|enjuag\p{L}*|aclar\p{L}*|lav(?:e|ado|ando|arme)|duel\p{L}*|pica\p{L}*|escuec\p{L}*|hinchad\p{L}*|
    vinagre|limon|crema|pomada|medic[oa]s?|urgencias|ambulancia|trag\p{L}*|vomit\p{L}*|llora\p{L}*|tos|
    tose\p{L}*|respira\p{L}*|mareo\p{L}*|resbalos[oa]|peor|empeora\p{L}*|peligros[oa]|venenos[oa]|
    cicatri\p{L}*|cieg[oa])(?!\p{L})
  `,
  'u',
);
/** Longer texts tell what they are about. */
const MOST_OF_HURT = 16;

/** After first aid was given: whether a turn still tells of it, so that it is given once more before anything is read. Pure. */
export function isStillHurt(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_HURT && HURT.test(text.replace(/ice cream/gu, ''));
}

/** A turn with one of these is of the trade again: of lye in its jug or on the bench, too, and not of whoever is hurt. */
const OF_TRADE = new RegExp(
  unbroken`
    (?<!\p{L})(?:lye|naoh|caustic\p{L}*|sosa|soda|lejia|buckets?|pails?|tubs?|jugs?|containers?|baldes?|
    cubos?|cubetas?|tarros?|jarras?|recipientes?|envases?|soaps?|batter|mica|oxide|pigments?|powders?|
    colou?rs?|oils?|mou?lds?|swirls?|cure|curing|trace|scents?|fragrance|shelf|contest|recipe|superfat|
    layers?|bars?|loaf|jabon\p{L}*|masa|oxido|pigmentos?|polvos?|colorantes?|color(?:es)?|aceites?|moldes?|
    remolinos?|cura|curado|traza|esencias?|estante|concurso|receta|capas?|pastillas?|barras?)(?!\p{L})
  `,
  'u',
);
const THANKS = /(?<!\p{L})(?:thanks?|thx|cheers|ta|gracias)(?!\p{L})/u;
const MOST_AFTER_HELP = 10;

/**
 * After first aid was given: whether a turn speaks of nothing of the trade, so that it is still of whoever is hurt, however it is told
 * ("been 10 min its still slippy"). Pure.
 */
export function isOfNothingElse(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_AFTER_HELP && !OF_TRADE.test(text) && !THANKS.test(text);
}

const ON_THE_SKIN =
  /(?<!\p{L})(?:red|slipp\p{L}*|slimy|soapy|sore|roj[oa]s?|resbal\p{L}*|jabonos[oa])(?!\p{L})/u;
/** After lye on skin was spoken of: whether a turn tells how the skin is and that it is not over. Pure. */
export const isSkinStillHurt = (typed: string): boolean =>
  isOfNothingElse(typed) && (ON_THE_SKIN.test(plainTurn(typed)) || isStillHurt(typed));

const ACID = /(?<!\p{L})(?:vinegar|vinagre|lemon|limon|citric|citrico)(?!\p{L})/u;
const MOST_OF_ACID = 10;
/** Whether somebody who was told to rinse reaches for vinegar or lemon. Pure. */
export function asksForAcid(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_ACID && ACID.test(text);
}

const IN_METAL = new RegExp(
  unbroken`
    (?<!\p{L})(?:already|(?:poured|put|mixed|did|done|used) (?:it|that|the lye)|bubbl\p{L}*|fizz\p{L}*|
    foam\p{L}*|smok\p{L}*|hiss\p{L}*|gone black|ya (?:la |lo )?(?:eche|puse|hice|mezcle|verti|esta)|
    burbuj\p{L}*|espum\p{L}*|humo|ennegreci\p{L}*)(?!\p{L})
  `,
  'u',
);
/** After it was told that lye eats aluminium: whether it is in such a pan. Pure. */
export function hasMetMetal(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_AFTER_HELP && IN_METAL.test(text);
}

const CLOTHES = new RegExp(
  unbroken`
    (?<!\p{L})(?:sleeves?|shirt|jumper|jeans|trousers|pants|socks?|shoes?|boots?|clothes|clothing|apron|
    cuffs?|t ?shirt|hoodie|lap|manga|mangas|camisa|camiseta|pantalon(?:es)?|ropa|zapatos?|zapatillas?|
    calcetin(?:es)?|medias|delantal|falda|vestido|jersey|sueter)(?!\p{L})
  `,
  'u',
);
const MOST_OF_CLOTHES = 14;
/** After lye got out: whether some of it is on what somebody wears, which is taken off under the water. Pure. */
export function isOnClothes(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_CLOTHES && CLOTHES.test(text);
}

const SURFACE = new RegExp(
  unbroken`
    (?<!\p{L})(?:worktops?|counter(?:top)?s?|bench|table|floor|tiles?|lino|hob|side|carpet|rug|encimera|
    mesada|meson|mesa|piso|suelo|baldosas?|alfombra)(?!\p{L})
  `,
  'u',
);
const UNHURT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:im|i am|arms?|hands?|skin|everyone|nobody|no ?one|we)(?: (?:is|are|s|re|all|got|
    was))* (?:fine|ok|okay|good|hurt|clean)|not on (?:me|skin|anyone)|nothing on me|only (?:on )?the|
    just (?:on )?the|estoy bien|(?:el brazo|la mano|la piel|todos) (?:esta|estan) bien|
    nadie (?:se )?(?:quemo|toco)|solo (?:en )?(?:la|el))(?!\p{L})
  `,
  'u',
);
const AS_WELL =
  /(?<!\p{L})(?:too|also|as well|aswell|all over|everywhere|and (?:on )?the|tambien|ademas|por todos? lados?|y (?:en|sobre) (?:la|el))(?!\p{L})/u;
/** After lye got on somebody: whether some lies on a surface as well, which is wiped up once they are rinsed. Pure. */
export function isOnSurfaceToo(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_HURT && SURFACE.test(text) && AS_WELL.test(text);
}
/** After lye got out: whether it is told to be on a surface alone, and that nobody is hurt. Pure. */
export function isOnSurface(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_HURT && SURFACE.test(text) && UNHURT.test(text);
}
