import { unbroken } from '../../over-lines.ts';

/** Soap that is cooked until the lye is used up. */
const COOKED = new RegExp(
  unbroken`
    (?<!\p{L})(?:hot[ -]?process|hp (?:soap|batch|loaf)|crock ?pots?|slow[ -]?cookers?|(?:proceso|jabon(?:es)?) (?:en |a |al )?
    (?:el |en )?calientes?|olla (?:de coccion )?lenta|coccion lenta|jabon(?:es)? (?:cocid[oa]s?|hervid[oa]s?)|boiled soap|
    full boil)(?!\p{L})
  `,
  'u',
);
/** How the cook itself goes: its hours, its heat, its stirring, how the paste looks. */
const OF_THE_COOK = new RegExp(
  unbroken`
    (?<!\p{L})(?:how (?:long|many (?:hours|minutes)|hot|often)|what (?:temp\p{L}*|heat|setting)|which setting|
    cuant[oa]s? (?:tiempo|rato|horas|minutos|grados)|a cuant[oa]s? grados|(?:a|en) que (?:temp\p{L}*|fuego|potencia)|
    cada cuanto|fuego (?:lento|bajo|alto|medio)|on (?:low|high|warm)|(?:de|a) fuego)(?!\p{L})
  `,
  'u',
);
const COOKS = new RegExp(
  unbroken`
    (?<!\p{L})(?:cook\p{L}*|low|high|warm|till|til|until|before|stir\p{L}*|mash\p{L}*|gel|apple ?sauce|done|pot|
    coc\p{L}+|cuec\p{L}+|cuez\p{L}+|hierv\p{L}+|herv\p{L}+|olla|caldera|revuel\p{L}+|remuev\p{L}+|mover\p{L}*|pure|
    hasta|mantengo|dejo)(?!\p{L})
  `,
  'u',
);
/** Drying, washing and colour are asked of it as of any bar; what hurts is never another field. */
const OF_ANY_BAR = new RegExp(
  unbroken`
    (?<!\p{L})(?:cur(?:e|es|ed|ing|ar|ad[oa]s?|o|a)|dry(?:ing)?|sec(?:a|ar|ado|o)|use (?:it|them|the bars?)|usar(?:l[oa]s?)?|
    safe|segur[oa]|colou?r\p{L}*|micas?|oxides?|clays?|pigment\p{L}*|swirl\p{L}*|dye\p{L}*|tint\p{L}*|tenir|arcillas?|oxidos?|
    scent\p{L}*|fragranc\p{L}*|esencias?|aroma\p{L}*|zap\p{L}*|superfat|how much|cuant[oa] (?:sosa|soda|agua|lejia)|volcano\p{L}*|
    overflow\p{L}*|boil\p{L}* over|rising|desbord\p{L}*|cold process|proceso en frio)(?!\p{L})
  `,
  'u',
);

/** Whether a question is about how hot process is cooked, which has rules of its own; `text` in lower case without accents. Pure. */
export const asksOfTheCook = (text: string): boolean =>
  COOKED.test(text) && OF_THE_COOK.test(text) && COOKS.test(text) && !OF_ANY_BAR.test(text);
