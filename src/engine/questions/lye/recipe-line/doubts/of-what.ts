import { unbroken } from '../../../../over-lines.ts';
import { MASS } from '../../amounts/words.ts';

/**
 * What leaves open of what a weight is, or which lye, pound or pot: patterns that stand as words of their own, in plain text of both
 * languages (general knowledge of them, no source).
 */
export const OF_WHAT: readonly string[] = [
  // "Sodium or potassium, the label is gone": one takes 1.4 times the other.
  unbroken`
    (?:(?:sodium|sodio|naoh|sosa|soda|caustic)(?: (?:hydroxide|caustica))? (?:or|o)(?: (?:is it|else|the|la|de|es))* (?:potassium|
    potasio|koh|potash|potasa)|(?:potassium|potasio|koh|potash|potasa)(?: (?:hydroxide|caustica))? (?:or|o)(?: (?:is it|else|the|la|
    de|es))* (?:sodium|sodio|naoh|sosa|soda))(?! (?:for|para)(?: (?:an?|the|my|una?|la|el|mi))* (?:bars?|soaps?|barras?|pastillas?|jabon))
  `,
  // "Los junto o no sé", "together or apart": one pot or two.
  unbroken`
    (?:junt\p{L}+|mezcl\p{L}+|combin\p{L}+|together|in one pot|en una olla)(?: \p{L}+){0,3} (?:or|o) (?:no(?: (?:lo )?se)?|not|
    (?:i )?(?:don'?t|do not) know|apart|separate\p{L}*|separad[oa]s?|por separado|aparte|cada)
  `,
  // "Here a pound is sometimes of 500": which one was weighed.
  unbroken`
    (?:libras?|pounds?|lbs?)(?: (?!de |of |and |y )\p{L}+){0,6} (?:a veces|sometimes|often|depende\p{L}*|depends|varia\p{L}*|
    varies|segun|puede\p{L}*|can|may|suele\p{L}*)(?: \p{L}+){0,4} [3-5]\d\d
  `,
  // "My mould takes 1200 g", "me caben 1000 g": of oils, or of all that is poured.
  unbroken`
    (?:mou?lds?|moldes?|loaf|box|caja)(?: (?!of |de )\p{L}+){0,3} (?:takes?|holds?|fits?|carr(?:y|ies)|caben?|entran?|admiten?|
    llevan?|hacen?)(?: (?:me|about|unos|hasta|up to|exactly|like|some|just))* ${MASS}(?! ?(?:of |de )?(?:the |los )?(?:oils?|
    fats?|aceites?|grasas?)(?!\p{L}))|(?:me |le |nos )?(?:caben?|entran?)(?: (?:unos|hasta|como|casi))* ${MASS}(?! ?(?:de )?(?:aceites?|
    grasas?)(?!\p{L}))
  `,
  unbroken`
    (?!1 g)${MASS}(?: (?:in|en|it|the|el|molde|mould|mold|total))* (?:(?:with|including|con|incluyendo|contando)
    (?: (?:the|el|la))? (?:water|agua)(?: (?:and|y) (?:all|everything|todo|lye|sosa))?|
    (?:water|agua) (?:and all|y todo|included|incluida))
  `,
  unbroken`
    ${MASS} (?:(?:loaf|bread|silicone|wooden|soap|pan) )*(?:mou?lds?|moldes?|moldecitos?)|(?:mou?lds?|moldes?)(?: (?:of|de|for|para|size))+ ${MASS}
    (?! ?(?:of |de )?(?:the |los )?(?:oils?|fats?|aceites?|grasas?)(?!\p{L}))
  `,
  // "12 bars of 100 g": what a bar weighs is soap.
  unbroken`
    \d{1,3} (?:bars?|soaps?|pastillas?|jabones|jaboncitos|barras?|pieces|piezas)(?: (?:of|de|at|a|con|with))+ (?:(?:unos|about) )?${MASS}
    (?! ?(?:of |de )?(?:oils?|fats?|aceites?|grasas?)(?!\p{L}))
  `,
  // "The ounces I read off the measuring glass", "las leí en la taza": what a vessel holds, and no weight.
  unbroken`
    (?:(?:i |we )?(?:read|took|got|had|measured|filled|went by)(?: (?:it|them|those|that|all))* (?:off|from|in|on|up to|to|with|by)|
    (?:(?:yo )?(?:(?:los|las|lo|la) )?(?:lei|leimos|tome|saque|medi|mire|llene))(?: (?:hasta|con|en|de|
    por))+)(?: (?:the|a|an|my|that|la|el|mi|una?|esa|ese))?
    (?: (?!scale|balanza|bascula)\p{L}+){0,3} (?:jugs?|cups?|mugs?|lines?|glass(?:es)?|beakers?|marks?|tazas?|
    jarras?|vasos?|rayas?|rayitas?|marcas?|lineas?|
    probetas?|mamadera|biberon)
  `,
  // "What the back fat came to at the butcher's, rind and all": raw, with what is no fat in it.
  unbroken`
    (?:rind|skin|bones?|meat|gristle|shell|jar|lid|wrapper|paper) and all|(?:con|incluyendo) (?:su |la |el |
    los |las )?(?:corteza|cuero|pellejo|piel|hueso|
    huesos|carne|cascara|envoltorio|papel|tarro|frasco)(?: y todo)?|(?:is|was|are|es|son|era|fue) (?:what|
    lo que) (?:the |my |a |it |they |el |la |me )*
    (?:\p{L}+ ){0,3}?(?:came to|weighed|cost|gave|sold|pes[oaó]|pesaba|pesaron|dieron|vendi\p{L}*|cobr\p{L}*)|
    (?:weigh\p{L}*|pes\p{L}*)[^;]{0,25}(?:before|antes de) (?:i |it was |it is |being )?
    (?:render\p{L}*|melt\p{L}*|strain\p{L}*|derret\p{L}*|fundir\p{L}*|colar\p{L}*)
  `,
  // "The coconut's those two tins from the korma": what is told of an oil may make another thing of it.
  unbroken`
    (?<=\d.*)(?:olive|coconut|palm|castor|sunflower|canola|rapeseed|lard|tallow|shea|almond|avocado|hemp|oliva|
    coco|palma|ricino|girasol|manteca|sebo|karite|
    almendras?|aguacate)(?:['’]s| is| are| was| were| es| son| era) (?:those|that|these|this|what|es[eao]s?|est[eao]s?|aquell?[eoa]s?|lo que|
    el de|la de)(?! (?:all|so|much|fine|ok|right|todo|bien|que pesa|it weighs))
  `,
  // "Or maybe I took 50 out", "o quizá le quité": what was put right a moment ago is open again.
  unbroken`
    (?<=\d.*)(?:or|o) (?:maybe|perhaps|quizas?|a lo mejor|tal vez|puede que|capaz)(?! (?:\d|superfat|sobre|5|with|
    con|a little))(?: (?:i|we|he|she|que|le|la|lo))*
    (?: (?:took|take|left|put|used|added|spilt|spilled|forgot|quite|saque|eche|puse|deje|olvide|use))
  `,
  // "O los 1200 son con el agua": of oils, or of more than oils.
  unbroken`
    (?:or|o) (?:(?:are|is|son|es|va|van|the|los|las|el|that|those|eso|esos|does|do) )*(?:\d[\d.,]* ?(?:g|gr|
    kg)? )?(?:(?:are|is|son|es|va|van|incluye\p{L}*|includes?|
    including|already|ya) )*(?:with|con|including|incluid[oa]s?) (?:the |el )?(?:water|agua)
  `,
  // "Jabón de aguacate 1 kg": what is weighed is the soap.
  unbroken`
    (?:jabon(?:es)?|soaps?) (?:de|of) (?!castil|leche|sal(?!\p{L}))\p{L}+(?: \p{L}+)? ${MASS}(?! ?(?:de|of) (?:aceites?|oils?|grasas?|fats?|\p{L}+))
  `,
  // "Or half the sunflower": whether all, some or none of it is in.
  unbroken`
    (?:or|o)(?: (?:only|just|solo|maybe|quizas?))* (?:half|a third|a quarter|medi[oa]|la mitad|un tercio)(?: (?:of|de))?(?: (?:the|el|la|los|
    las|del))? (?!hours?|horas?|an? |day|dia)\p{L}+(?= ?[;,:])
  `,
  // In the River Plate countries bare "manteca" is butter from milk, elsewhere lard (general knowledge, no source).
  unbroken`
    (?<=^(?=.*(?<!\p{L})(?:che|vos|tenes|queres|podes|sabes|decime|haceme|pasame|ponele|haces|argentin\p{L}*|urugua\p{L}*|rosario|
    montevideo|buenos aires|mendoza|rioplatense)(?!\p{L})).*)manteca(?! (?:de|vegetal|animal)(?!\p{L}))
  `,
  // "Weighed jar, flowers and all", "with the calendula still in": what is weighed is not all oil.
  unbroken`
    (?:jars?|tubs?|tins?|bottles?|lids?|flowers?|herbs?|petals?|leaves|seeds|wrappers?|skin|rind|bones?)
    (?:,? (?:and )?\p{L}+){0,2} and all|(?:tarros?|frascos?|botes?|tapas?|flores|hierbas|petalos|hojas|semillas)
    (?:,? (?:y )?\p{L}+){0,2} y todo|
    (?:flowers?|herbs?|petals?|leaves|flores|hierbas|petalos|hojas) (?:(?:are|were|is|still|siguen|estan) )*(?:in it|in there|dentro|adentro)
  `,
  // Not rendered yet: how much of it is fat comes out in the pan.
  unbroken`
    (?<=;[^;]*)(?:(?:not|isn'?t|wasn'?t|never|haven'?t|hasn'?t)(?: (?:been|it|yet))* rendered|un-?rendered|sin (?:derretir|rendir|fundir))|
    still (?:some |a bit of |bits of )?(?:meat|gristle|skin)|(?:meat|gristle|carne|pellejo) (?:still )?(?:on (?:it|some|them)|pegad[oa])
  `,
  // A scale that blinks, or weighs in something else: none of its figures can be trusted.
  unbroken`
    (?:scales?|balance|bascula|balanza|pesa)(?: (?!(?:cero|zero|to|a)(?!\p{L}))\p{L}+){0,9}? (?:blink\p{L}*|flicker\p{L}*|flash\p{L}*|drift\p{L}*|
    jump\p{L}*|wobbl\p{L}*|dying|dead|faulty|parpade\p{L}*|salt\p{L}*|falla\p{L}*|loc[oa]|rar[oa]|(?:marca|pesa|esta|in|en|shows?|
    reads?|set to)(?: (?:en|in))? (?:onzas|oz|ounces|libras|pounds|lbs?))
  `,
];
