import { unbroken } from '../../../../over-lines.ts';

const LIQUID =
  '(?:water|agua|milk|leche|buttermilk|beer|cerveza|tea|te|coffee|cafe|wine|vino|liquid|liquido)';
const INSIDE =
  '(?:included?|inside|in it|in there|counted|incluid[oa]s?|inclusive|dentro|adentro|metid[oa]s?|contad[oa]s?|y todo|and all)';
const UNIT = '(?:g|gr|gramos|grams?|kg|kilos?|lbs?|pounds?|libras?|oz|ounces?|onzas?|ml)';
const MASS = `\\d[\\d.,/]* ?${UNIT}?`;
const WET = '(?:water|agua|lye|sosa|soda|milk|leche|liquid|liquido|everything|todo)';
/** All that stands on the scale. */
const LOT = unbroken`
  (?:everything|all of it|all in all|(?:the|my) (?:whole |entire )?(?:lot|thing|bucket|pot|pan|bowl|jug|tub|
  mix|mixture|batter|batch|contents?)|todo(?: junto)?|el (?:balde|cubo|conjunto|cazo|contenido|bol|tazon|
  lote)|la (?:olla|mezcla|cubeta|jarra|masa|tanda))
`;
const WEIGHS =
  '(?:weighs?|weighed|weighing|comes? to|came to|is|pesa|pesan|peso|pesaba|pese|suma|suman|da|dan|es|son)';

const OILS = '(?:oils?|fats?|butters?|aceites?|grasas?|mantecas?)';
const AND = '(?:,? (?:and|y|e|plus|mas|con|with)|,)(?: (?:the|my|los|las|el|la|mis))* ';
/** "Oils and water and lye", in any order. */
const OILS_AND_WATER = `(?:${OILS}(?:${AND}${WET}){1,3}|${WET}(?:${AND}${WET}){0,2}${AND}${OILS}(?:${AND}${WET}){0,2})`;

/**
 * Weights that hold the water too, of which no oils are known: "1400 g, 350 g of which is water". Taken as oils they would be given the
 * lye of the water's weight as well. Each takes what `plainWords` gives.
 */
export const WET_WEIGHTS: readonly RegExp[] = [
  // "1500 g, oils and water and lye together", "everything comes to 1500 g, oils and water": the water is in it, however much it is.
  new RegExp(
    unbroken`
      (?<!\p{L})${OILS_AND_WATER}(?: (?:all|todo|todos))*,? (?:together|combined|juntos?|in all|in total|
      en total|all in|included|incluidos?|y todo|and all)(?!\p{L})
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})${LOT}(?: (?:in|that|de|que|en|hay)(?: [^;,\d]{0,20})?)? ${WEIGHS}(?: (?:about|roughly|unos|
      nearly|casi|me|now|ya))* ${MASS}[^;]{0,40}?(?<!\p{L})${OILS_AND_WATER}(?!\p{L})
    `,
    'u',
  ),
  // "Molde de 1200 g de masa", "1.1 kg of batter": of which the oils are a part.
  new RegExp(`${MASS} (?:of|de) (?:the |la )?(?:masa|batter|raw soap|jabon crudo)(?!\\p{L})`, 'u'),
  // "Whole batch 1500 g with the water": no weight of oils.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:batch|total|whole|weight|batter|lote|tanda|masa|peso|
      todo)(?!\p{L})(?:(?!(?<!\p{L})(?:oils?|fats?|aceites?|grasas?)(?!\p{L}))[^;]){0,40}?(?:with|including|
      incl|con|incluyendo|incluid[oa])(?: the| el| la| toda el| todo el| toda la)? (?:water|agua|lye|sosa|
      soda|caustica?)(?!\p{L})(?:(?: ?,| and| y| plus| mas)+(?: (?:the|el|la))* (?:water|agua|lye|sosa|soda|
      caustica?|everything|all|todo|liquids?|liquidos?|colou?rs?|scents?|aromas?|fragrance|lo demas|
      the rest)(?!\p{L}))*(?= ?(?:[;,]|and all|y todo|in(?! a)|included|incluid\p{L}+|$))
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:(?:total|whole|all)(?: \p{L}+)? (?:weight |mass )?(?:of )?(?:the )?batter|(?:peso|
      masa) total (?:de|con)(?: la| el)? (?:masa|mezcla|agua))(?!\p{L})
    `,
    'u',
  ),
  // "The batter weighs 1000 g counting 250 g of water".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:batch|total|whole|weight|weighs|batter|mixture|lote|tanda|masa|mezcla|peso|pesa|
      todo)(?!\p{L})[^;]{0,40}?(?:counting|including|contando|incluyendo)(?!\p{L})[^;]{0,25}?(?:water|agua|
      milk|leche|lye|sosa|soda)(?!\p{L})
    `,
    'u',
  ),
  // "The batch is 1400 g with the 380 g water and the lye counted in".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:batch|total|whole|weight|weighs?|batter|mixture|lote|tanda|masa|mezcla|peso|pesa|
      todo)(?!\p{L})[^;]{0,40}?(?<!\p{L})(?:with|con)(?!\p{L})[^;]{0,30}?(?:water|agua|lye|sosa|
      soda)(?!\p{L})[^;]{0,30}?(?<!\p{L})(?:counted|included|inside|in it|in there|
      (?:already )?in(?= ?(?:[;,]|$))|metid\p{L}+|dentro|contad\p{L}+|incluid\p{L}+|sumad\p{L}+)(?!\p{L})
    `,
    'u',
  ),
  // "Entre agua y aceites hay 1500 g", "oils and water come to 1400 g": no weight of oils.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:between|entre)(?: (?:the|los|las|el|la))* (?:(?:water|agua|lye|sosa|soda|milk|
      leche)(?: and| y|,)+(?: (?:the|los|las|el|la))* (?:oils?|fats?|aceites?|grasas?)|(?:oils?|fats?|
      aceites?|grasas?)(?: and| y|,)+(?: (?:the|los|las|el|la))* (?:water|agua|lye|sosa|soda|milk|
      leche))(?!\p{L})
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:(?:water|agua)(?: and| y| plus| mas| con| with)+(?: (?:the|los|las|el|la))* (?:oils?|
      fats?|aceites?|grasas?)|(?:oils?|fats?|aceites?|grasas?)(?: and| y| plus| mas| con| with)+(?: (?:the|
      los|las|el|la))* (?:water|agua))(?: (?:all|todo|together|combined|juntos?))* (?:together|combined|
      juntos?|in all|in total|en total|weighs?|weighed|pesan?|suman?|comes? to|came to|makes?|adds? up|
      totals?|(?:are|is|son|hay)(?= (?:about |unos |some )?\d))(?!\p{L})
    `,
    'u',
  ),
  // "My recipe makes 1.5 kg with the water", "1.5 kg with the water": what comes out of it holds all that went in.
  new RegExp(
    unbroken`
      (?:(?<=^|[;:,] ?)|(?<!\p{L})(?:makes?|made|making|gives?|yields?|at|to|out|fills?|holds?|takes?|
      weighs?|totals?|total|is|rinde|da|dan|salen?|saca|hace|hago|llena|pesa|suma|lleva|es|son) )(?:(?:me|
      nos|about|roughly|nearly|some|unos|casi|como|a|total) )*${MASS}(?: (?:in all|in total|total|en total|
      altogether|all told|de (?:masa|mezcla)|of (?:batter|mix|mixture)))?,? (?:with|including|incl|counting|
      con|incluyendo|contando|incluid[oa])(?: (?:the|its|my|all|el|la|su|toda|todo))* ${WET}(?= ?(?:[;,]|$|
      (?:and|y|in(?! a)|included|oils|the oils)(?!\p{L})))
    `,
    'u',
  ),
  // "Of which 330 g is water", "350 g of it water", "de los cuales 400 son agua".
  new RegExp(
    `(?<!\\p{L})(?:of which|of whom|de (?:l[oa]s? )?cual(?:es)?)(?!\\p{L})[^;]{0,40}?(?<!\\p{L})${LIQUID}(?!\\p{L})`,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:of (?:it|that|this|those|them)|de (?:ell[oa]s?|es[oa]s?|est[oa]s?|ahi|alli))(?: (?:the|
      el|la|is|are|was|es|son|hay|van?|about|unos))*(?: ${MASS})?(?: (?:is|are|was|es|son|of|de|the|el|
      la))* ${LIQUID}(?!\p{L})
    `,
    'u',
  ),
  new RegExp(
    `${MASS} (?:of (?:it|that|this|them|which)|de (?:ell[oa]s?|es[oa]s?|est[oa]s?)) (?:is |are |was |es |son |the |el |la )*${LIQUID}(?!\\p{L})`,
    'u',
  ),
  // "2 kg in all with 500 g water included", "contando 400 g de agua".
  new RegExp(
    `${MASS}(?: (?:of|de|the|el|la))* ${LIQUID}(?: (?:already|ya|is|are|es|son|being|esta|estan))* ${INSIDE}(?!\\p{L})`,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:including|incl|counting|contando|incluyendo|incluid[oa]s?)(?: (?:the|los|las|el|la|unos|
      about))* ${MASS}(?: (?:of|de|the|el|la))* ${LIQUID}(?!\p{L})
    `,
    'u',
  ),
  // "1 kilo de aceites con la leche incluida", "38 oz with the milk in": how much of it is milk nobody knows.
  new RegExp(
    unbroken`
      ${MASS}(?: (?:of|de) ${OILS})?(?: (?:in all|in total|total|en total|altogether|all told|
      all in))?,? (?:ya |already )?(?:with|including|incl|counting|con|incluyendo|contando|
      incluid[oa])(?: (?:the|its|my|all|el|la|su|toda|todo))* (?:milk|leche|buttermilk|cream|nata|yogh?urt?|
      yogur|beer|cerveza|tea|coffee|cafe)(?: (?:already|ya))? (?:in|in it|in there|included|counted|and all|
      incluid[oa]|dentro|adentro|contad[oa]|metid[oa]|y todo)(?= ?(?:[;,:]|$|(?:and|y|half|mitad)(?!\p{L})))
    `,
    'u',
  ),
  // "1400 g all told with 350 g of water in it".
  new RegExp(
    unbroken`
      ${MASS} (?:of (?:it|stuff) )?(?:in all|in total|all ?together|altogether|all told|total|en total|
      en todo|todo junto|in the (?:pot|bucket|pan|bowl)|en (?:la olla|el balde|el cazo))(?: (?:with|
      con))(?: (?:the|los|las|el|la))* ${MASS}(?: (?:of|de|the|el|la))* ${LIQUID}(?!\p{L})
    `,
    'u',
  ),
  // "Everything in the bucket weighs 1400 g": all that is wet is in it, wherever that is told.
  new RegExp(
    unbroken`
      (?<!\p{L})${LOT}(?: (?:in|that|de|que|en|hay)(?: [^;,\d]{0,20})?)?(?: (?:together|combined|
      junt[oa]s?))? ${WEIGHS}(?: (?:about|roughly|unos|nearly|casi|me|now|ya|
      exactly))* ${MASS}(?![\p{L}\d])(?![.,/]\d)(?= ?(?:[;,:]|$|(?:of which|of it|de l[oa]s? cual|in|en|
      with|con|and|y|total|all|junto|
      together)(?!\p{L}))).*(?:${MASS}(?:[^;,\d]{0,16} )?(?<!\p{L})${LIQUID}(?!\p{L})|
      (?<!\p{L})${LIQUID} (?:(?:is|are|was|weighs|es|son|of|de|pesa) )*${MASS})
    `,
    'u',
  ),
];
