import { unbroken } from '../../../over-lines.ts';
import { THINGS } from '../asked/things.ts';
import { all, type Outright, within } from './words.ts';

const LYE = 'lye|naoh|koh|sosa|soda|lejia|superfat|sobreengrasad[oa]';
const UNIT = 'g|gr|grams?|gramos|oz|ounces?|onzas?|lbs?|pounds?|libras?|kg|kilos?';
const OIL = 'oils?|aceites?|fats?|grasas?';
const MOULD = String.raw`mou?lds?|moldes?`;

const SOAP = 'soaps?|bars?|batch(?:es)?|loaf|loaves|jabon(?:es)?|pastillas?|barras?|lotes?|tandas?|them|it';
const MAKE = 'make|made|pour|poured|start|bars? done|hacer(?:l[oa]s?)?|hech[oa]s?|hago|verter|empezar';
const BY_WHEN = unbroken`
  when(?: do| should| must| would| have)? (?:i|we|you)|latest|by when|how (?:early|far ahead|far in advance|long before)|
  last (?:day|date)|(?:para |hasta |pa )?cuando (?:tengo|debo|deberia|hay|los|las|l[oa]|hago|empiezo)|con cuanto tiempo|
  cuanto (?:tiempo )?antes|fecha (?:limite|tope)
`;
const CURED_BY =
  '(?:cured|ready|done) (?:by|for|in time|on)|curad[oa]s? (?:el|para|antes)|list[oa]s? (?:el|para|antes)';

const COSTS =
  'costs?|cost me|come to|comes to|cuestan?|me (?:cuesta|sale|salen)|sale|salen|salio|costo|costos|costes?';
const OF_MAKING = unbroken`
  materials?|ingredients?|oils?|to make|making|in oils|work out|materiales|insumos|ingredientes|aceites|hacer(?:l[oa])?|
  producir|saco|calculo|calcular
`;
const ONE = 'batch(?:es)?|loaf|loaves|bars?|soaps?|lotes?|tandas?|jabon(?:es)?|pastillas?|barras?';

/** Of a whole batch: what its mould holds, when it has to be made, what it costs. Figures are common practice. */
export const OF_BATCHES: readonly Outright[] = [
  {
    words: within(
      unbroken`
        (?:how (?:much|many)|cuant[oa]s?) (?:${UNIT})? ?(?:of |de )?(?:${OIL}) (?:\p{L}+ ){0,4}?(?:[\d.,]+ ?(?:l|lit(?:er|re)s?|
        litros?|ml|inch(?:es)?|in|cm) )?(?:\p{L}+ ){0,2}?(?:${MOULD})|(?:${MOULD}) (?:\p{L}+ ){0,2}?(?:takes?|holds?|fits?|lleva|
        llevan?|coge) (?:how (?:much|many)|cuant[oa]s?)(?: (?:${UNIT}))?(?: (?:of|de))? (?:${OIL})|(?:how (?:much|many)|
        cuant[oa]s?) (?:${UNIT})? ?(?:of |de )?(?:${OIL}) (?:\p{L}+ ){0,3}?(?:fit|go|caben?|entran?) (?:\p{L}+ ){0,3}?(?:${MOULD})
      `,
    ),
    unless: within(`${LYE}|micas?|colou?r\\w*|color\\w*|oxid\\w+|pigment\\w*|scent|fragrance|esencia`),
    technique: 'split-batter',
    to: { named: 'oils-for-mould' },
  },
  {
    words: all(BY_WHEN, MAKE, SOAP, `${CURED_BY}|${THINGS.occasion}`),
    unless: within(
      `${LYE}|how much|how many|cuant[oa]s|colou?rs?|colores|micas?|theme|tema|challenge|reto|contest|concurso`,
    ),
    technique: 'cure-time',
    to: { named: 'start-when' },
  },
  {
    words: all(COSTS, ONE, OF_MAKING),
    unless: within(
      unbroken`
        ${LYE}|charge|sell\w*|insur\w*|stall|post\w*|ship\w*|courier|courses?|class(?:es)?|licen[cs]e|permits?|vend\w+|cobr\w+|
        precio de venta|seguro|puesto|envios?|enviar|mandar|curso|taller|tramites?|registro|colou?rs?|color(?:es)?|went|came out|
        sale (?:con|el color|feo|bien|mal|blando|duro)|de que color
      `,
    ),
    technique: 'label-selling',
    to: { named: 'batch-cost' },
  },
  {
    words: all(
      'labels?|etiquetas?',
      '(?:what|which|que)(?: \\p{L}+){0,4} (?:go|goes|put|write|be|list|say|need\\w*|poner|pongo|lleva|llevar|decir|debe)',
      'sell\\w*|market|fair|stall|legal\\w*|have to|has to|need\\w*|must|vend\\w+|feria|mercado|tengo que|hay que|debe|obligatori\\w+',
    ),
    unless: within(
      `${LYE}|says?|reads?|dice|pone que|leo|surviv\\w*|holds?|aguanta\\w*|ci|micas?|colou?rs?|color(?:es)?|pigment\\w*|lake|printer|impresora`,
    ),
    technique: 'label-selling',
    to: { named: 'label-what' },
  },
];
