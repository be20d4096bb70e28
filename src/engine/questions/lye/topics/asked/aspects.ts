import { unbroken } from '../../../../over-lines.ts';
import { LYE, THINGS } from './things.ts';

const SUPERFAT = THINGS.superfat;

const THE = '(?:the |my |your |la |el |mi |tu |de )*';
const FIGURE =
  '(?:amount|number|figure|weight|quantity|calculation|sums?|cantidad|cuenta|peso|cifra|calculo)';
const OF_LYE = `(?:${THE}${FIGURE} (?:of |de )?${THE}${LYE}|${THE}${LYE}(?: ${FIGURE})?)`;

/** What is asked of a thing; patterns over plain text: lower case, no accents, no marks. */
export const ASPECTS = {
  /** Does it change the lye, is it counted for it? */
  changesLye: [
    unbroken`
      (?:chang\w+|alter\w*|affect\w*|influence\w*|throw\w*(?: \w+){0,2} (?:out|off)|mess\w* (?:with|up)|
      adjust\w*|redo|rework|recalculat\w*|cambia\w*|altera\w*|afecta\w*|modifica\w*|varia\w*|recalcul\w*|
      ajust\w*)(?: (?:the|my|your|how much|la|el|mi|lo|en|algo|anything|a|al|que|cuanta|in))* ${OF_LYE}
    `,
    `(?:how much|cuanta)(?: more| mas)? ${LYE} i need`,
    unbroken`
      ${OF_LYE}(?: \w+){0,6} (?:chang\w*|the same|stays?|differ\w*|be off|(?:need|have) to be (?:adjusted|
      changed)|cambia\w*|igual|la misma|lo mismo|distint\w+|como estaba|as it was)
    `,
    `(?:same|misma|mismo)(?: (?:amount|weight|quantity|cantidad|peso))?(?: of| de)? (?:the |la )?${LYE}`,
    `(?:keep|mantener|sin mover|sin cambiar)(?: the| la| de)* ${LYE}`,
    `(?:count|figure|include|factor|reckon)\\w*\\b.{0,40}\\b(?:lye|oils?|fats?|superfat|caustic)`,
    `cuenta\\w*\\b.{0,30}\\b(?:aceites?|grasas?|sosa|soda|lejia)`,
    `(?:eat\\w*|use\\w* up|take\\w* up|swallow\\w*)(?: up)?(?: \\w+){0,3} (?:lye|naoh|koh|caustic)`,
    '(?:se come|come|gasta|consume)(?: \\w+){0,3} (?:sosa|soda|lejia|hidroxido)',
    `lleva\\w*(?: \\w+){0,2} (?:la )?misma ${LYE}`,
    'throw (?:the )?superfat out',
    'redo (?:all )?(?:the|my) sums|recalculat\\w+|recalcul\\w+',
    `cuenta (?:de|para) (?:la )?${LYE}`,
  ],
  /** What the lye does to a colour is asked, and nothing of its amount. */
  ofColour: [
    '(?:chang\\w*|turns?|lose\\w*|cambi\\w*|vir\\w*|pierd\\w*|mud\\w*)(?: its| su| el| the| de)* (?:colou?r|tono)',
  ],
  meaning: [
    `what(?: (?:even|exactly|on earth))? (?:is|does|s) (?:a |the |this )?${SUPERFAT}`,
    `whats (?:a |the |this )?${SUPERFAT}`,
    `${SUPERFAT}\\b.{0,30}\\bmeans?\\b|means?\\b.{0,20}\\b${SUPERFAT}`,
    `qu?e (?:es|significa|quiere decir)(?: \\w+){0,3} ${SUPERFAT}`,
    'am i being thick',
  ],
  what: [
    '(?:what|whats)(?: \\w+){0,2} (?:is|does|do|s)\\b',
    'qu?e (?:es|significa|quiere decir)',
    'mean(?:s|ing)?\\b',
    'de que\\b',
  ],
  same: [
    '(?:the )?same (?:thing |stuff |as\\b)?',
    'differen\\w+',
    'lo mismo',
    'iguale?s?\\b',
    'diferencia\\w*',
    'confus\\w+|confund\\w+',
  ],
  which: [
    '(?:which|cual(?:es)?|que) (?:\\w+ ){0,4}(?:is |es |da |sale )?(?:better|best|harder|mejor|mas dur[oa]|duro|need\\w*|use)',
    '(?:better|mejor|harder|mas dur[oa])\\b.{0,40}\\b(?:or|o)\\b',
    'q es mejor|que es mejor|cual da',
  ],
  onWhich: [
    `(?:off|from|of|to|on|in|into|a|de|en|le|al)?\\b ?(?:the |la )?${LYE}\\b.{0,40}\\b(?:or|o)\\b.{0,40}\\b(?:oils?|fats?|aceites?|grasas?)`,
    `(?:oils?|fats?|aceites?|grasas?)\\b.{0,40}\\b(?:or|o)\\b.{0,40}\\b${LYE}`,
    '(?:extra|more) (?:oil|fat) or less',
    'before or after',
    'antes o despues',
  ],
  keeps: [
    'how long\\b.{0,40}\\b(?:keep|last|store|good|sit|stand|leave)',
    '(?:keep|store|save|use|leave)\\b.{0,40}\\b(?:month|week|weeks|months|days?|tomorrow|tuesday|later|next|yesterday)',
    'from yesterday|de ayer',
    '(?:anoche|ayer|last night|yesterday|the night before)\\b.{0,60}\\b(?:use\\w*|using|usar\\w*|uso|sirve|vale|good|ok)',
    '(?:cuanto(?: tiempo)?|hasta cuando)\\b.{0,24}\\b(?:dura|aguanta|se guarda|se conserva|puedo guardar)',
    '(?:puedo|se puede|podria) (?:guardar|usar|dejar|hacer|preparar|mezclar|disolver)\\b.{0,60}\\b(?:semana|mes|dias?)',
    '(?:puedo|se puede|podria) (?:guardar|usar|dejar|hacer|preparar|mezclar|disolver)\\b.{0,60}\\b(?:manana|ayer|otro)',
    // Made one day for the next: the jug stands till then.
    '(?:mix|make|prepare|do|dissolve)\\b.{0,40}\\b(?:night before|day before|in advance|ahead(?: of time)?|the evening before)',
    '(?:mix|make|prepare|dissolve)\\b.{0,40}\\b(?:tonight|today|now)\\b.{0,40}\\b(?:tomorrow|later|the next day)',
    '(?:vispera|noche (?:antes|anterior)|dia (?:antes|anterior)|de un dia (?:para|pa) (?:el )?otro|con antelacion)',
  ],
  may: [
    '(?:can|could|may|should|shall|must) (?:i|we|you|it)\\b',
    'is it (?:ok|okay|alright|fine|safe)',
    '(?:se )?puede[sn]?\\b|puedo\\b|sirven?\\b|vale\\b|uso\\b|hay que|tiene que|tengo que|have to|need to be|does it need',
  ],
  howMuch: ['how much', 'how many', 'cuant[oa]s?\\b', 'como cuanto'],
  howLong: ['how long', 'cuanto (?:tiempo )?(?:tarda|demora|espero)'],
  convert: [
    'convers\\w*|convert\\w*|factor\\b|multipl\\w+|pas(?:o|ar|arlo)\\b|divid\\w+|x 40|40 56|turn (?:it )?into|work out',
  ],
  cools: ['(?:cool\\w*|cold|enfri\\w+|fri[oa])'],
  signs: [
    'how (?:do|can|will) i (?:know|tell|get|recogni[sz]e)',
    'como (?:se|reconozco|veo|consigo)',
    'que aspecto',
  ],
  avoid: ['(?:avoid|prevent|stop|get rid of|evit\\w+|quit\\w+|prevenir)'],
  wrap: ['(?:wrap\\w*|packag\\w*|envolv\\w+|envuelv\\w+|empaquet\\w+|empac\\w+)'],
  decorate: ['(?:decorat\\w+|stamp\\w*|paint\\w*|help|decor\\w+|sellar|adornar|ayudar|pintar)'],
  smell: ['(?:smell\\w*|odou?r|huele|olor)'],
  history: [
    '(?:who first|first made|invent\\w+|history|in the old days|antes|antiguamente|abuel\\w+|usaba\\w*)',
  ],
  less: [
    '(?:less|not enough|too little|under|short of|half)(?: of)? (?:the )?(?:lye|caustic|naoh)',
    '(?:menos|poca|falto|falta de) (?:de )?(?:la )?(?:sosa|soda|lejia)',
  ],
  low: [`${SUPERFAT}(?: \\w+){0,3} [1-4](?: percent)?|[1-4] ?(?:percent )?(?:de )?${SUPERFAT}`],
  high: [
    `${SUPERFAT}(?: \\w+){0,3} (?:[89]|1[0-9]|2[0-9])(?: percent)?|(?:[89]|1[0-9]|2[0-9]) ?(?:percent )?(?:de )?${SUPERFAT}`,
    `${SUPERFAT} higher|higher ${SUPERFAT}|otr[oa]s 8|others 8`,
  ],
  tooMuch: [
    'too (?:much|high|low|little)|mucho|poco|muy (?:alto|bajo)|why do|rule|is it (?:ok|okay)|enough|basta|suficiente|better|mejor|higher|lower',
  ],
  freezes: ['(?:does|will|can|se)\\b.{0,24}\\b(?:freeze|congela)'],
  insteadOfLye: [
    `(?:instead of|in place of|en (?:vez|lugar) de) (?:the |la )?${LYE}`,
    `(?:works?|serve|sirve)(?: \\w+){0,3} (?:as|como) (?:the |la )?${LYE}`,
  ],
  sameAmount: [
    '(?:same|equal) (?:amount|weight|grams|quantity|number)|(?:la |el )?mism[oa] (?:cantidad|peso)|mismos gramos|igual cantidad',
  ],
  insteadOfOther: [
    unbroken`
      (?:instead of|in place of|rather than|en (?:vez|ves|lugar) de?) (?:the |la |el )?(?:koh|naoh|sodium|potassium|
      caustic soda|potash|potasa|potasio|sosa|soda|sodio)
    `,
  ],
  atMarket: ['(?:fair|market|stall|school|church|shop|feria|mercado|mercadillo|colegio|puesto|tienda)'],
  old: [
    '(?:old|vieja?|antigua|grand\\w+|abuela|madre|mother|not written|no (?:lo )?(?:tengo )?apunt\\w+|did ?n t write)',
  ],
  whatHappens: [
    'what happens|que pasa|que pasaria|que sucede|is it (?:bad|a problem)|pasa algo|wrong|equivoc\\w+',
  ],
  order: [
    unbroken`
      ${LYE}\b.{0,24}\b(?:in ?to|in|to|onto|al|a la|a|en el|en|con|sobre el|encima del?|
      arriba del?)\b.{0,8}\b(?:water|agua)\b.{0,12}\b(?:or|o|not|y no al reves|nunca)\b
    `,
    unbroken`
      (?:water|agua)\b.{0,24}\b(?:in ?to|in|to|onto|on|a la|sobre|en la|en|encima de|
      arriba de)\b.{0,8}${LYE}\b.{0,12}\b(?:or|o|not|y no al reves|nunca)\b
    `,
  ],
  waterEffect: [
    '(?:more|less|little|too much) water (?:make|give|mean|go|do|it|harden|set)\\w*',
    'what(?: ?s| is)? the water for',
    '(?:mas|menos|poca|poco|mucha) agua\\b.{0,40}\\b(?:dur\\w+|bland\\w+|tard\\w+|cuaj\\w+|ceniza)',
    'cuant[oa] es (?:poca?|mucha?) agua|cuanto es poco agua',
    'buy me|advantage|que gano|para que sirve el agua',
    '(?:el doble|2 veces|doble)\\b.{0,40}\\b(?:el triple|3 veces|triple)',
  ],
  inGeneral: ['(?:in general|roughly|rule of thumb|ballpark|en general|mas o menos|aproximad\\w+)'],
  zero: [
    `(?:0|zero|cero|minus \\d|menos \\d|negativ\\w+)(?: percent)?(?: de)? ${SUPERFAT}|${SUPERFAT}(?: \\w+){0,3} (?:0|zero|cero|negativ\\w+|minus|menos \\d)`,
  ],
  bubbles: ['(?:bubbl\\w+|lather\\w*|foam\\w*|espuma\\w*|burbuj\\w+)'],
  scaled: ['(?:doubl\\w+|duplic\\w+|tripl\\w+|halv\\w+|in half|a la mitad|por dos)'],
  swapped: [
    '(?:swap\\w*|replac\\w+|substitut\\w+|instead|use (?:\\w+ ){1,5}(?:for|instead)|cambi\\w+|sustitu\\w+|reemplaz\\w+|lo mismo)',
  ],
  together: ['(?:mix\\w*|both|together|dual|mezcl\\w+|las dos|los dos|junt\\w+|misma receta|same recipe)'],
  nobody: ['(?:nobody|no one|nadie|ignor\\w+|corrig\\w+|correct\\w*|adjust\\w*|ajust\\w*|bother)'],
  holds: ['(?:aguanta\\w*|resiste\\w*|soporta\\w*|withstand\\w*|holds?|safe for|stands? up|sirve)'],
  lowered: [
    `(?:lower|reduce|take out|remove|bajar|reducir|quitar|sacar)(?:le|se)? (?:the |la |some )?(?:of the )?${LYE}`,
  ],
  afterwards: ['(?:already|made|ya hech[oa]|salio|came out|remedio|muy fuerte|too strong)'],
  gone: ['(?:gone|used up|disappear\\w*|desaparec\\w+|se va|se gasta|se acaba)'],
  hold: ['(?:contain\\w*|have|hold|any|left|tienen?|llevan?|queda\\w*|contienen?)'],
  whenUse: [
    'a (?:los|las) cuant[oa]s (?:dias|semanas)\\b.{0,24}\\busa\\w*',
    'how (?:soon|many (?:days|weeks))\\b.{0,24}\\b(?:use|safe)',
    'cuando (?:ya )?(?:lo |la )?(?:puedo|se puede) usar',
  ],
  howManyBars: ['how many (?:bars|soaps)|cuant[oa]s (?:barras|pastillas|jabones)'],
  comeOut: ['(?:salen|sale|saco|will i (?:cut|get)|do i (?:get|cut)|does it make|come out)'],
  sold: ['(?:sell\\w*|vend\\w+)'],
  done: [
    '(?:i (?:have |just )?(?:put|added|poured|left out|forgot)|puse|eche|anadi|agregue|olvide|se me olvido|added)',
  ],
  addRest: [
    '(?:add|put in|stir in|echar|agregar|anadir|poner|pongo|echo)\\b.{0,20}\\b(?:rest|other half|remaind\\w+|resto|otra mitad|lo que falta|que falta)',
  ],
  offByGrams: [
    unbroken`
      (?:reads?|shows?|weighs?|is|was|marca\w*|pesa\w*|da)(?: \w+){0,2} \d+ ?(?:g|grams?|gramos?|
      oz)(?: \w+){0,2} (?:high|low|heavy|light|more|less|over|under|off|too much|too little|de mas|de menos|
      mas|menos)
    `,
    '\\d+ ?(?:g|grams?|gramos?|oz) (?:off|out)\\b',
  ],
  replacesWater: [
    '(?:replace\\w*|instead of|in place of|for|en (?:vez|lugar) de|sustitu\\w+|por)(?: \\w+){0,2} (?:water|agua)',
  ],
} as const satisfies Record<string, readonly string[]>;

export type Aspect = keyof typeof ASPECTS;
