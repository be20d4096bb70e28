import { unbroken } from '../../../over-lines.ts';
import { all, type Outright, within } from './words.ts';

const COLOUR = '(?:colou?rs?|pigments?|micas?|oxides?|color(?:es)?|colorantes?|pigmentos?|micas?|oxidos?)';
const PURPLE = 'purples?|violets?|lilacs?|lavender|morad[oa]s?|violetas?|lilas?|purpura';
const TURNED_GREY = unbroken`
  (?:went|gone|goes|going|turned|turns?|turning|became|is|came out|looks|volvio|vuelve|puso|pone|quedo|
  salio|esta|viro|hizo) (?:\p{L}+ ){0,2}?(?:gr[ae]y|gris|gris[ae]ce[oa])
`;
const TITANIUM = 'td|tio2|titanium(?: dioxide)?|dioxido(?: de titanio)?|titanio';
const PLANT_PARTS =
  'peels?|zest|rinds?|petals?|herbs?|leaves|leaf|flowers?|buds|cascaras?|ralladura|petalos?|hierbas?|hojas?|flor(?:es)?';
const BROWNED = String.raw`brown\w*|marron\w*|cafes?|oscur\w+|oxidad[oa]s?`;
const CLAY = 'clays?|arcillas?';

/** Of colours and powders, in whatever order. */
export const OF_COLOURS: readonly Outright[] = [
  {
    words: within(
      unbroken`
        (?:a que hora|(?:en|a) que (?:momento|punto|paso)|cuando|when|at (?:what|which) (?:point|stage|
        moment|time)|what (?:point|stage|time)) (?:\p{L}+ ){0,4}?(?:ech\w+|pon\w+|agreg\w+|anad\w+|va|
        met\w+|add\w*|put\w*|goes?|stir\w*|mix\w*) (?:in )?(?:el |la |las |los |the |my |your )?${COLOUR}
      `,
    ),
    unless: within(
      String.raw`scents?|fragranc\w*|esencias?|perfum\w*|lye|sosa|soda|oils?|aceites?|mou?ld|molde|top|encima|water|agua|fade\w*|gel`,
    ),
    technique: 'when-colour',
    to: { technique: 'when-colour' },
  },
  {
    words: within(
      unbroken`
        all (?:of it )?in (?:at once|together|one go) and (?:whizz|blend|blitz|mix|stir)|(?:echo|pongo|
        meto) todo (?:junto|de una(?: vez)?) y (?:bato|mezclo|batido)
      `,
    ),
    unless: within('lye|naoh|sosa|soda|lejia|water|agua'),
    technique: 'when-colour',
    to: { technique: 'when-colour' },
  },
  {
    words: within(
      unbroken`
        (?:${CLAY})(?: to| per| for| in|:| a| por| para| en)? (?:the |my |los )?(?:oils?|
        aceites?)(?: ratio)?|ratio (?:of |for )?(?:the )?(?:${CLAY})|(?:how much|cuanta) (?:${CLAY})|
        proporcion (?:\p{L}+ )?(?:de )?(?:${CLAY})
      `,
    ),
    unless: within(
      unbroken`
        \d|rose|pink|green|red|purple|yellow|white|rosa|verde|roja|morada|amarilla|blanca|kaolin|bentonite|
        caolin|bentonita|or|o|thick\w*|espes\w*|water|agua|lye|sosa|soda
      `,
    ),
    technique: 'clays-colour',
    to: { technique: 'clays-colour' },
  },
  {
    words: all(PURPLE, TURNED_GREY),
    unless: within(
      unbroken`
        (?:alkanet|alcaneta|ultramar\w*|scum|lather|espuma|mix\w*|mezcl\w*|and|y) (?:\p{L}+ ){0,3}?(?:blue|
        azul|yellow|amarill\w*|green|verde)|ultramar\w*|alkanet|alcaneta|lather|espuma
      `,
    ),
    technique: 'changed-in-pot',
    to: { named: 'purple-turned' },
  },
  {
    words: all('alkanet|alcaneta|orcaneta|ratanjot', String.raw`blues?|azul\w*|gr[ae]y\w*|gris\w*`),
    technique: 'colour-families',
    to: { named: 'natural-purple' },
  },
  {
    words: all(
      PLANT_PARTS,
      unbroken`
        (?:gone|went|turned|turns?|going|goes?|se (?:me )?(?:pus\w+|pon\w+|volv\w+|vuelv\w+|hic\w+)|
        quedaron|salieron) (?:\p{L}+ ){0,2}?(?:${BROWNED})
      `,
    ),
    technique: 'botanicals',
    to: { named: 'plants-browned' },
  },
  {
    words: within(
      unbroken`
        what (?:does|will|would|do) lye (?:\p{L}+ )?do (?:to|with) (?:the |my )?(?:natural|plant|herbal|
        botanical)\p{L}*(?: colou?r\p{L}*)?|que (?:le )?hace la (?:soda|sosa|lejia) (?:a|con) (?:los |
        las )?(?:colores (?:naturales|de planta)|plantas|colorantes naturales)
      `,
    ),
    technique: 'natural-colours',
    to: { named: 'lye-and-plants' },
    atHand: true,
  },
  {
    words: within(
      unbroken`
        (?:${TITANIUM})[^.]*(?<!\p{L})(?:no|wont|doesnt|isnt|not|
        not going to) (?:se (?:me )?)?(?:disuelv\p{L}*|disolv\p{L}*|dissolv\p{L}*|mix(?:es|ing)? in|mezcla)
      `,
    ),
    technique: 'no-lumps',
    to: { named: 'titanium-lumps' },
  },
  {
    words: all(
      TITANIUM,
      unbroken`
        (?:oil|aceite)(?: (?:one|kind|type|dispersible|soluble|version))* (?:\p{L}+ )?(?:not|instead of|
        rather than|no|en vez del?|en lugar del?) (?:the |el |al |de |del )*(?:water|agua)|oil(?: |
        -)?(?:dispersible|soluble)|(?:dispersable|soluble) en aceite|el de aceite
      `,
    ),
    unless: within(
      'water(?: |-)?(?:dispersible|soluble)|(?:dispersable|soluble) en agua|or|vs|o|difference|diferencia',
    ),
    technique: 'no-lumps',
    to: { named: 'titanium-oil-kind' },
  },
  {
    words: all(
      TITANIUM,
      unbroken`
        (?:water|agua)(?: (?:one|kind|type|dispersible|soluble|version))* (?:\p{L}+ )?(?:not|instead of|
        rather than|no|en vez del?|en lugar del?) (?:the |el |al |de |del )*(?:oil|aceite)|water(?: |
        -)?(?:dispersible|soluble)|(?:dispersable|soluble) en agua|el de agua
      `,
    ),
    unless: within(
      'oil(?: |-)?(?:dispersible|soluble)|(?:dispersable|soluble) en aceite|or|vs|o|difference|diferencia|lye|sosa|soda',
    ),
    technique: 'no-lumps',
    to: { named: 'titanium-water-kind' },
  },
  {
    words: all(
      TITANIUM,
      unbroken`
        (?:oil|aceite|water|agua)(?:(?: |-)?(?:dispersible|soluble|dispersable))? (?:or|o|vs|u) (?:en |in |
        con |with )?(?:oil|aceite|water|agua)|(?:wet|mix|mojo|mezclo|disuelvo) (?:it )?(?:in|en|con) (?:oil|
        aceite|water|agua) (?:or|o) `,
    ),
    technique: 'no-lumps',
    to: { named: 'titanium-which' },
  },
  {
    words: within(
      unbroken`
        (?:white|whitener|blanco|blanqueador)[^.?]*?(?<!\p{L})(?:isnt|is not|not|no|without|other than|
        besides|except|instead of|aint|que no (?:sea|lleve|tenga)|sin|aparte del?|en vez del?|menos|
        diferente al?|distinto al?) (?:the |any |using |usar |el |de )*(?:${TITANIUM})|(?:alternativ\p{L}+|
        substitut\p{L}+|sustituto|reemplazo) (?:to|for|al?|del?) (?:the |el )?(?:${TITANIUM})
      `,
    ),
    technique: 'whiter-soap',
    to: { named: 'white-without-titanium' },
  },
  {
    words: within(
      unbroken`
        (?:colou?rs? |color |mejor )?(?:(?:en )?polvo (?:o|vs) (?:en )?liquid[oa]|(?:en )?liquid[oa]s? (?:o|
        vs) (?:en )?polvos?|powder(?:s|ed)? (?:or|vs) liquids?|liquids? (?:or|vs) powder(?:s|
        ed)?)(?: colou?rs?)?
      `,
    ),
    unless: within('lye|naoh|sosa|soda|lejia|milk|leche|honey|miel|lactate|lactato|sugar|azucar'),
    technique: 'mica-or-oxide',
    to: { named: 'powder-or-liquid' },
  },
  {
    words: all(
      String.raw`left ?over|extra|spare|sobr\w+|me quedo`,
      'colou?red oil|mica[^.]*oil|oil[^.]*mica|aceite (?:con|coloreado|de) ?(?:color|mica)?|mica[^.]*aceite',
      String.raw`keep\w*|last\w*|store\w*|save|guard\w*|dura|conserv\w*`,
    ),
    technique: 'premix-keeps',
    to: { technique: 'premix-keeps' },
  },
  {
    words: within(
      unbroken`
        (?:how (?:do|should|to)(?: (?:i|you|we))? use|como (?:se )?(?:usa|uso|usan|preparo|
        se prepara)) (?:the |el )?(?:ann?att?o|achiote|urucu|onoto|bija)|(?:ann?att?o|achiote|urucu|onoto|
        bija)(?: seeds?)? (?:como (?:se )?(?:usa|uso|prepara|preparo)|how (?:do|to)(?: (?:i|you))? use)
      `,
    ),
    technique: 'steep-in-oil',
    to: { named: 'annatto-in-oil' },
  },
  {
    words: within(
      unbroken`
        (?:(?:coffee|used) grounds|ground coffee|cafe molido|posos de cafe|
        borra de cafe) (?:\p{L}+ ){0,2}?(?:for|to get|to make|para|da|dan|give) (?:\p{L}+ )?(?:brown|marron|
        cafe|colou?r)
      `,
    ),
    technique: 'colour-families',
    to: { named: 'coffee-grounds' },
  },
  {
    words: within(
      unbroken`
        (?:ombres?|degradad[oa]s?|degrades?|gradient)(?: (?:soap|jabon|effect|efecto|layers?|capas?|colou?r|
        de color))?(?: (?:for|para) (?:beginners?|principiantes?|a beginner))?
      `,
    ),
    unless: within(String.raw`\d|order|orden|first|primero|challenge|reto|contest|concurso`),
    technique: 'layers-how',
    to: { named: 'ombre-how' },
  },
];
