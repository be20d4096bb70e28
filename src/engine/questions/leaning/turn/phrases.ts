/* Phrases by which a turn leans on the one before: taken out before its words are looked at. English and Spanish, as they are typed. */

import { spaced, unbroken } from '../../../over-lines.ts';

/** These say by themselves that something goes on as before. */
export const MARKS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:is (?:it|that) |would it be |do i use |does it need )?(?:the )?same(?: (?:again|
    amounts?|dose|thing|goes|as|too|but))*(?: (?:for|with|in))?|(?:what|how) (?:about|abt)|what if|(?:and |
    for )?(?:the |my )?other (?:half|halfs|halves|part|bit|one)(?:s)?(?: (?:is|are|will|s|gonna|going|to|be|
    gets))*|(?:y |para )?la otra (?:mitad|parte)(?: (?:va|sera|es|lleva|en|con|de))*|i (?:only|
    just) (?:have|had|got)|ive (?:only |just )?got|(?:i )?meant|i mean|i said|no wait|rather|(?:(?:es|seria|
    va|vale|sirve) )?(?:(?:lo|la|el) )?(?:mism[oa]|igual)(?: (?:cantidad|dosis|cosa|pero))?(?: (?:para|con|
    de|en|que|al?))?|que tal|que hay de|que pasa(?:ria)? (?:con|si)|(?:solo|nomas|nada mas) tengo|
    tengo (?:solo|nomas)|(?:quise|queria|quiero) decir|digo|me (?:refiero|referia) a)(?!\p{L})
  `,
  'gu',
);

/** These ask for the same once more, and mark nothing. */
export const ASKED_AGAIN = new RegExp(
  unbroken`
    \b(?:(?:can|could|would) (?:i|you|u|ye) (?:have|get|say|give|tell|do|put|
    show)(?: me)?(?: it| that| them| this)?|(?:give|tell|show) me(?: it| that)?|make (?:it|that)|
    lets (?:say|do|make it|go)|how (?:much|many)(?: is (?:it|that)| would (?:it|that) be| do i (?:need|use|
    add|put))?|whats (?:it|that)|i want(?:ed)?|i need(?:ed)?|id like|it has to be|it should be|
    it needs to be|(?:me )?(?:lo|la|los|las) (?:das|dices|pones|pasas|quiero|quisiera)|(?:pasa|di|pon|
    da)me(?:lo|la)?|pasalo|ponlo|cuant[oa]s?(?: (?:es|seria|serian|son|le pongo|pongo|echo|le echo|lleva|
    uso|necesito))?(?: eso| en total)?|que sean?|quiero|quisiera|necesito|hazlo|haz)(?![\p{L}])
  `,
  'gu',
);

/** Words that tell nothing by themselves. */
export const FILLING: ReadonlySet<string> = new Set(
  spaced`
    a an the of for with in on at to by is be it its that this those these them one ones my me i im we you
    u just only have got get use using make making as before about like around roughly more less some go
    add put all batch total then and plus so same if does did does do un una unos unas el la los las lo le
    de del al a con para pa x por en que es son sea sean eso esa ese esos esas esto este esta estos mi mis
    me yo como antes solo nomas y e mas menos unos uso pongo echo hago tengo seria total lote todo toda
    want real really very quite quiero muy bien
  `.split(' '),
);

/** The next word is what it is not. */
export const DENIES = /^(?:not|no|never|instead|vez|lugar|without|sin)$/u;

/** What a portion is counted by. */
export const OF_OILS = /^(?:oils?|fats?|aceites?|grasas?)$/u;
export const OF_BATTER = /^(?:batter|batido|soap|mix|mixture|masa|mezcla|jabon|pasta)$/u;

/** Units that are asked for, without an amount. */
export const UNITS: readonly (readonly [unit: 'grams' | 'spoons' | 'ounces', words: RegExp])[] = [
  ['grams', /^(?:grams?|grammes?|gr?s?|gramos?|weight|peso)$/u],
  [
    'spoons',
    /^(?:spoons?|teaspoons?|tablespoons?|tsps?|tbsps?|cucharas?|cucharadas?|cucharaditas?|cucharitas?|cditas?|cdtas?|cdas?|volume|volumen)$/u,
  ],
  ['ounces', /^(?:ounces?|oz|onzas?)$/u],
];

/** A part or a multiple of what was told. */
export const TIMES: readonly (readonly [RegExp, number])[] = [
  [
    new RegExp(
      unbroken`
        \b(?:half(?! (?:an? |of an? )?(?:kilos?|kg|cups?|pounds?|lbs?|lit(?:re|er)s?|ounces?|oz|tsps?|
        teaspoons?|gallon)\b)(?: (?:of )?(?:that|it|as much|the amount|the batch|a batch|the recipe|the lot|
        everything))?|halve (?:it|that|this|the (?:lot|recipe|batch|whole thing)|everything|all of it)|
        split (?:it |that |this |them )?(?:in |into )?(?:half and half|half|halves|two parts|(?:two|
        2)(?: ways)?)|(?:divide|parte|reduce)\p{L}* (?:todo )?(?:entre|en|a|por) (?:dos|2|la mitad)|
        (?:a )?la mitad(?: de (?:eso|todo|lo mismo|la receta))?|media receta|medio lote)\b
      `,
      'u',
    ),
    0.5,
  ],
  [
    new RegExp(
      unbroken`
        \b(?:double(?: (?:that|it|the amount|the batch|the recipe))?|twice (?:that|as much|the amount|
        the batch)|2 ?x|x ?2|el doble|al doble|doble(?: de eso)?|duplic\p{L}+)(?!\p{L})
      `,
      'u',
    ),
    2,
  ],
  [
    /\b(?:triple(?: (?:that|it|the batch))?|three times (?:that|as much)|3 ?x|x ?3|el triple|triplic\p{L}+)(?!\p{L})/u,
    3,
  ],
  [/\b(?:a quarter (?:of )?(?:that|it)|quarter (?:that|batch)|un cuarto de eso|la cuarta parte)\b/u, 0.25],
  [/\b(?:a third (?:of )?(?:that|it)|un tercio de eso|la tercera parte)\b/u, 1 / 3],
];

/** "Split three ways", "entre 4 colores": so many equal parts of what was told. */
export const IN_PARTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:its |ill |im |if i |i |am |gonna |going to |lo |la |los |si |voy a )*(?:split|splitting|
    divid\p{L}*|shar\p{L}*|part\p{L}*|separ\p{L}*|repart\p{L}*)(?: (?:it|that|this|the batter|batter|
    equally|evenly|up|la masa|por igual))*(?: (?:in|into|between|among|over|across|en|entre|por|to))? )(2|3|
    4|5|6|two|three|four|five|six|dos|tres|cuatro|cinco|seis)(?: (?:ways?|parts?|colou?rs?|pots?|jugs?|
    cups?|portions?|lots?|layers?|bits?|partes?|colores|jarras?|vasos?|porciones|capas?|iguales|
    equal))*(?!\p{L})
  `,
  'u',
);
export const NUMBERS: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  seis: 6,
};

/** "Sunflower ok?", "girasol sirve": it is asked whether the thing does, which is what is told of it anyhow. */
export const SERVES = / (?:sirve|vale|va bien|works?|will do|ok|okay|fine|all right|alright)$/u;

/** A deep one. */
export const DEEP_AT_END =
  /(?<!\p{L})(?:(?:and|but|i want(?: it)?|lo quiero|pero|y|que sea) )*(?:dark|strong|bold|oscur[oa]|fuerte|intens[oa]|subid[oa])$/u;
/** A pale shade that is wished for at the end of a turn. */
export const PALE_AT_END =
  /(?<!\p{L})(?:(?:and|but|i want(?: it)?|lo quiero|pero|y|que sea) )*(?:pale|soft|palid[oa]|clarit[oa]|suavecit[oa]|suave)$/u;

export const LIGHTER = new RegExp(
  unbroken`
    \b(?:(?:a (?:bit|little|touch|tad|shade) |much |way |more )?(?:lighter|paler|softer|fainter|weaker|
    less strong|less intense|less dark|less bright|not so (?:strong|dark)|not as (?:strong|dark)|too dark|
    too strong)|(?:un poco |un poquito |algo |mucho |un pelin )?(?:mas (?:clar|suav|palid|baj|tenue|
    flojit)\p{L}*|menos (?:fuerte|intens|oscur|carg)\p{L}*|clarit[oa]|suavecit[oa]))(?!\p{L})
  `,
  'u',
);
export const DARKER = new RegExp(
  unbroken`
    \b(?:(?:a (?:bit|little|touch|tad|shade) |much |way |more )?(?:darker|deeper|blacker|bluer|redder|
    greener|pinker|yellower|browner|stronger|bolder|brighter|more intense|more colou?r|more vivid|less pale|
    too light|too pale|(?:it )?(?:came|comes|turned) out (?:too |all |a bit )?(?:gr[ae]y|pale|
    weak)(?: last time)?(?: i)?(?: want(?:ed)?(?: it)?(?: to be)? (?:black|dark|deep|strong))?)|(?:un poco |
    un poquito |algo |mucho |un pelin )?(?:mas (?:oscur|fuerte|intens|carg|viv|subid|brillante)\p{L}*|
    menos (?:clar|palid)\p{L}*|oscurit[oa]|(?:la otra vez |la ultima vez )?(?:me )?(?:salio|quedo) (?:muy |
    medio )?(?:gris|palid[oa]|clar[oa])(?: la otra vez| la ultima vez)?(?: (?:y )?lo quiero (?:negro|oscuro|
    fuerte))?))(?!\p{L})
  `,
  'u',
);

/** "More green in it", "mas verde": the hue that it turns towards. */
export const TOWARDS = new RegExp(
  unbroken`
    ^(?:(?:a (?:bit|little|touch) |some |un poco |un toque )?(?:more|mas)(?: hacia(?: el)?| de| towards?)?|
    (?:un poco )?(?:tirando|que tire|tirar|yendo) (?:a|al|hacia(?: el)?)|(?:leaning|going|tending|
    leans)(?: a bit)? (?:to|towards?|more)|with (?:a (?:hint|touch|bit) of|some)|con (?:un (?:toque|poco|
    puntito) de|algo de)) (\p{L}+)(?: (?:in it|in|to it|please|side))?$
  `,
  'u',
);

/** "Per kilo", "por libra": an amount of oils. */
const OF_THE_BATTER = '(?: (?:of |de )?(?:batter|masa|mezcla|batido|jabon|soap))';
export const PER_WEIGHT: readonly (readonly [RegExp, string])[] = [
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?<!(?:half|quarter|quarters|third|media|medio|cuarto) (?:of )?)(?:per|x|por|a|each|every|
        cada|al) (?:kilo|kg|kilogramo)s?${OF_THE_BATTER}(?!\p{L})
      `,
      'u',
    ),
    ' 1 kg batter ',
  ],
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?<!(?:half|quarter|quarters|third|media|medio|cuarto) (?:of )?)(?:per|x|por|a|each|every|
        cada) (?:pound|lb|libra)s?${OF_THE_BATTER}(?!\p{L})
      `,
      'u',
    ),
    ' 1 lb batter ',
  ],
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?<!(?:half|quarter|quarters|third|media|medio|cuarto) (?:of )?)(?:per|x|por|a|each|every|
        cada|al) (?:kilo|kg|kilogramo)s?(?: (?:of |de )?(?:oils?|aceites?))?(?!\p{L})
      `,
      'u',
    ),
    ' 1 kg oils ',
  ],
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?<!(?:half|quarter|quarters|third|media|medio|cuarto) (?:of )?)(?:(?:per|x|por|a|each|
        every|cada) (?:pound|lb|libra)s?(?: (?:of |de )?(?:oils?|aceites?))?|ppo)(?!\p{L})
      `,
      'u',
    ),
    ' 1 lb oils ',
  ],
];

/** Why it is wanted so: it changes nothing unless it tells of an amount or of what was done. */
export const REASON = new RegExp(
  unbroken`
    (?: (?:here|aca|aqui)(?: (?:where|in|que|en|donde|es|its)(?: [\p{L}]+){1,5})| (?:cos|cause|because|cuz|
    coz|bc|since|porque|pq|xq|ya que|por lo de)(?: (?!(?:add\p{L}*|more|less|instead|swap\p{L}*|without|
    extra|put|mas|menos|sin|agreg\p{L}*|anad\p{L}*|cambi\p{L}*|ech\p{L}*)(?!\p{L}))[\p{L}]+){1,9})$
  `,
  'u',
);

/** What a depth is likened to: "lighter, like a baby's room". */
export const LIKENED = /^ *(?:like|como|for|para|as in) (?:[\p{L}]+ ?){1,5}$/u;

/** "My scale only does grams": the unit that is asked for. */
export const SCALE = new RegExp(
  unbroken`
    ^(?:my|mi|the|la) (?:scales?|balanza|bascula|peso) (?:only |just |solo |nomas )*(?:does|do|shows?|
    reads?|weighs?|is|in|goes|da|marca|pesa|mide|es|esta|en| )+ ?(?=(?:g|gr|grams?|gramos?|oz|ounces?|
    onzas?)$)
  `,
  'u',
);
