import { unbroken } from '../../../../over-lines.ts';

/** Which oils are in the pot that the lye is for, of which mould a weight is, and what is in it only perhaps: nobody here knows. */
export const WHICH_POT: readonly RegExp[] = [
  // "The lye's only for the green pot": of which oils, nobody here knows.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:lye|soda|sosa|naoh|koh|potash|potasa|
      caustica?)(?:['’]s| is| es| va| que| quiero| seria)*,? (?:only|just|solo|solamente|nomas|
      unicamente) (?:for|para|pa) (?:the|this|that|my|mine|la|el|lo|mi|esta|este|esa|ese)(?!\p{L})
    `,
    'u',
  ),
  // "500 g olive and 250 g coconut each for her mould and mine", "per mould": of one, or of all that there are.
  new RegExp(
    unbroken`
      (?<=\d.*)(?<!\p{L})(?:each|apiece)(?: one)? (?:for|per) (?:the |my |our |her |
      his )?(?:\p{L}+(?:['’]s)? ){0,2}?(?:mou?lds?|loa(?:f|ves)|batch(?:es)?|pots?|tins?|mine|hers|his|us|
      person)(?!\p{L})
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<=\d.*)(?<!\p{L})(?:per|por(?: cada)?|para cada|en cada|in each|for each|cada un[oa] (?:para|
      en)) (?:(?:el|la|un|una|mi|the|my|a) )?(?:mou?ld|loaf|batch|pot|person|head|molde|tanda|lote|olla|
      persona|cabeza)(?!\p{L})
    `,
    'u',
  ),
  // "High oleic no, the plain one": which of two kinds it is stands behind the name.
  new RegExp(
    unbroken`
      (?<=\d.*\p{L} )no,? (?:sino )?(?:del?|el|la|es|the|it['’]?s)(?: (?:la|el|the))? (?:normal|comun|
      otr[oa]|corriente|regular|plain|ordinary|usual|other)(?!\p{L})
    `,
    'u',
  ),
  // "200 g coconut is for next week", "the coconut is optional".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:is|are|was|were|es|son|va|van|queda|quedan|era|eran)(?: (?:only|just|solo))? (?:for|
      para) (?:the |my |la |el |mi )?(?:next|another|other|later|tomorrow|otr[oa]|proxim[oa]|siguiente|
      despues|manana)(?!\p{L})
    `,
    'u',
  ),
  /(?<!\p{L})(?:optional|opcional(?:es)?|if i (?:have|find|can get|get) (?:any|some|it)|si (?:me alcanza|consigo|encuentro))(?!\p{L})/u,
  // "800 g olive including 200 g coconut".
  /(?<!\p{L})(?:including|included in|of which|incluyendo|incluid[oa]s?|de l[oa]s cuales|de ell[oa]s)(?= [^;]{0,20}\d)/u,
  // "150 g de karité que no cuenta para la soda": whether it is in the pot that lye is for.
  new RegExp(
    unbroken`
      (?<=\d.*)(?<!\p{L})(?:no|not|never|nunca|tampoco|does ?n['’]?t|do ?n['’]?t|sin)(?: (?:se|la|
      lo))? (?:count\p{L}*|cuent[aeo]n?|contar\p{L}*|entran?) (?:for|in|towards|para|en) (?:the |la |mi |
      my )?(?:lye|soda|sosa|naoh|koh|caustica?)(?!\p{L})
    `,
    'u',
  ),
  // "El coco no lo puse", "the coconut is not in it".
  new RegExp(
    unbroken`
      (?<!\p{L})no (?:l[oea]s?|se l[oea]s?) (?:puse|pusimos|eche|echamos|use|usamos|agregue|anadi|meti|
      llev\p{L}+|he (?:puesto|echado|usado|metido))(?!\p{L})|(?<!\p{L})(?:is|are|was|were|
      went) ?n[o']t (?:in|used|going in|added)(?!\p{L})
    `,
    'u',
  ),
];
