/** What a question is about, each answered by one command. */
export type Job =
  | 'dose'
  | 'survives-lye'
  | 'law'
  | 'diagnose'
  | 'mix'
  | 'preview'
  | 'lye'
  | 'plan'
  | 'compare'
  | 'wet'
  | 'shelf-add'
  | 'shelf-use'
  | 'shelf-show'
  | 'challenge'
  | 'help';

/** How much a turn of phrase speaks for a job; the sums are compared. */
type Cue = readonly [job: Job, weight: number, pattern: RegExp];

/**
 * Turns of phrase that tell what is asked, in both languages, on text in lower case without accents. Weights from memory:
 * 3 settles it alone, 2 is usual, 1 leans.
 */
export const CUES: readonly Cue[] = [
  // Law: who lets through, and where.
  [
    'law',
    4,
    /\b(?:customs|aduanas?|frontera)\b|\b(?:across|over|at|past|through|near) the border\b|\bborder (?:guards?|crossing|control)\b|\b(?:do|does|will|would|did|might) (?:they|it|the \w+|\w+) (?:let|allow|permit)\b|\b(?:si|no|lo|la|los|las|me|nos|te|se) (?:si |no )?(?:lo |la |los |las )?(?:dejan|dejen|dejaran|dejarian|permiten?|admiten)\b|\blet (?:me|us|you|people) (?:sell|use|put|bring|ship)\b|\b(?:they|law|rules) (?:allow|let|permit)\b/,
  ],
  [
    'law',
    2,
    /\b(?:up|down|over) there\b|\b(?:sell|selling|vend\w+)\b.*\b(?:alla|there)\b|\b(?:alla|there)\b.*\b(?:sell|selling|vend\w+)\b/,
  ],
  // Nothing but these is at hand: what can be mixed of them?
  [
    'mix',
    4,
    /\ball (?:that )?(?:i|we)(?:'ve| have)? (?:got|have|own)\b|\b(?:lo unico que|solo|solamente|nada mas|nomas) (?:tengo|tenemos|hay)\b.*\b(?:y|oxido|ultramar|mica|arcilla|dioxido|carbon)\b/,
  ],
  // A bar that is there and looks wrong.
  [
    'diagnose',
    5,
    /(?<!\b(?:will|would|does|do|make|makes|how|if|should) )\b(?:my|mi|mis|our|these|this|the|este|estos) (?:\w+ )?(?:soaps?|jabon(?:es|cito|citos)?|bars?|barras?|loaf|batch|lote|pastillas?) (?:ya |just |now |all )?(?:se parecen? a|parecen?|looks? like|(?:came|come) out (?:like|looking))\b/,
  ],
  [
    'diagnose',
    2,
    /\b(?:era|eran|estaba|was|were|used to be|supposed to be|debia ser|tenia que ser) (?:a |un )?(?:pink|white|red|blue|green|purple|yellow|orange|black|rosa|blanc[oa]s?|roj[oa]s?|azul(?:es)?|verdes?|morad[oa]s?|amarill[oa]s?|naranja|negr[oa]s?)\b|\bpor que (?:sera|fue|seria|paso)\b|\b(?:por que|why)\s*\?*$/,
  ],
  [
    'survives-lye',
    4,
    /\b(?:will|would|does|do|is) (?:that|this|it|they|the colou?r|the \w+) (?:\w+ )?(?:stay|stays|last|hold|keep|fade|go brown)\b/,
  ],
  [
    'mix',
    3,
    /\b(?:what|which) (?:combination|blend|mix|mixture|pigments?|micas?|oxides?|colou?rs?|colou?rants?|powders?)\b.*\b(?:gives?|yields?|makes?|gets?|produces?|use|mix|blend)\b|\bque (?:mezclo|junto|combino|uso|le pongo para que)\b|\bque colores\b.*\b(?:sale|salga|da|de|queda|quede|junto|mezclo|uso|necesito)\b|\bhow would i (?:go about|get|make|mix)\b|\b(?:get|gets|come|comes) (?:me )?close to\b/,
  ],
  [
    'mix',
    2,
    /\bi (?:want|need|would like|wanna) (?:to )?(?:make|get|mix)\b.*\bi(?:'ve| have| got| only)\b|\bneed (?:a|an|some)\b.*\bwhat\b|\b(?:necesito|quiero) (?:un|el) (?:tono|color)\b/,
  ],
  ['lye', 3, /\b(?:caustic|hydroxide|soda ?caustica)\b.*\d|\d.*\b(?:lye and water|lye n water)\b/],
  [
    'help',
    5,
    /\bwhat (?:all |else |even |kinda |kind of |sort of |stuff |things |questions? )*(?:can|could|do) (?:you|i) (?:even |all |actually |really )*(?:do|help|ask|answer)(?: (?:with|you|me|for me|about|here))*[ ?.!]*$|\b(?:de )?que (?:cosas )?(?:te|le|les) puedo preguntar\b|\bpara que sirve (?:este|el|esto) ?(?:bot|chat)?\b|\ben que (?:me |nos )?pued(?:es|e) ayudar\b|\bwhat (?:are|r) you (?:good )?for\b/,
  ],
  [
    'plan',
    4,
    /\b(?:quiero|quisiera|voy a|ayudame a|vamos a) (?:a )?(?:hacer|armar|preparar|montar) (?:una?|el|la|mi) (?:tanda|lote|batch|receta|jabon|molde|barra)\b|\bwalk me through\b|\b(?:help me )?set (?:me )?up (?:a|my)\b|\b(?:i am|i'm|im) planning\b|\blay (?:it|this) out\b/,
  ],
  [
    'compare',
    4,
    /\bwhat'?s (?:the )?(?:stronger|strongest|more)\b|\bis (?:\w+ ){1,4}stronger than\b|\bentre .* cual\b/,
  ],
  [
    'diagnose',
    5,
    /\bwhat(?:'?s| is| was| could be) the (?:mechanism|reason|cause|explanation|culprit)\b|\bhow come\b|\bwhat (?:makes|made|would make|could cause|would cause) (?:it|them|my|the|a)\b|\bwhy (?:would|might|should) (?:a|my|the|an|it)\b|\b(?:cual es|cual sera) (?:la causa|el motivo|la razon)\b|\ba que se debera\b/,
  ],
  [
    'wet',
    5,
    /\bdispersant\b|\b(?:best|what|which|better) (?:liquid|carrier)\b|\bcomo (?:lo |la |los )?(?:disuelvo|deshago|diluyo|mojo|humedezco|hidrato|disperso|remojo|desleo)\b|\b(?:va|van|se pone) (?:en|con) (?:agua|aceite|glicerina) o\b|\b(?:glycerol|glycerine?|water|oil) or (?:in )?(?:glycerol|glycerine?|water|oil) (?:for|the better)\b|^(?:oil|water|glycerin\w*) or (?:oil|water|glycerin\w*)\b/,
  ],
  ['preview', 2.5, /^(?:can you )?show me\b.*\d/],
  [
    'shelf-show',
    5,
    /\bdo i still have\b|\bhave i (?:still )?got any\b|\btodavia (?:tengo|me queda)\b|\baun tengo\b/,
  ],
  [
    'dose',
    2,
    /\b(?:quiero|want to|voy a|gonna|i'?ll) (?:poner|ponerle|echar|echarle|add|put|use|usar)\b|\ble (?:quiero|voy a) (?:poner|echar)\b|\b(?:el doble|a la mitad|la mitad) de lo (?:normal|habitual|de siempre)\b|\b(?:double|half) (?:of )?(?:the )?(?:usual|normal)\b/,
  ],
  [
    'survives-lye',
    2,
    /\bse (?:me )?(?:muere|cae|apaga|quema|estropea|arruina|oxida)\b|\bno (?:se )?queda\b|\b(?:queda(?:n|ra)?|sale) (?:marron|cafe|gris|verde|igual)\b|\bcon la (?:sosa|soda|lejia)\b|\b(?:la|el) (?:sosa|soda|lejia) (?:lo|la|se)\b|\b(?:si )?pinta o\b|\bsi pinta\b|\bdies?\b.*\blye\b|\b(?:give|gives|dan|da) (?:brown|color|red|green|yellow|marron|rojo|verde|amarillo)\b|\bsirve(?:n)? (?:de|para|como)\b|\bvale(?:n)? (?:de|para|como)\b|\bpuedo pintar\b|\bes (?:una burrada|mala idea|buena idea)\b|\bgood idea\b|\bbad idea\b/,
  ],
  [
    'diagnose',
    2,
    /\b(?:la |mi )?espuma (?:sale|es|queda|esta)\b|\b(?:es|sera|sera que es|puede ser) por (?:eso|el|la|los)\b|\bis (?:it|that) (?:why|because)\b|\b(?:my|the) (?:lather|foam|suds)\b|\bse (?:puso|volvio|quedo|hizo|me puso) (?:\w+ )?(?:naranja|marron|cafe|gris|verde|duro|blando|negro|amarillo)\b/,
  ],
  [
    'mix',
    3,
    /\bque (?:colores?|tonos?) (?:me )?(?:pueden|puedo|podrian|saldrian|salen|saco|haria)\b|\b(?:which|what) colou?rs? (?:do )?i (?:need|use|mix|want)\b|\bneed to make\b/,
  ],
  ['mix', 3, /\b(?:of each|de cada (?:un[oa]|color))\b.*\b(?:make|get|for|para|hacer|sacar)\b/],
  ['lye', 4, /\bcuant[oa] (?:de )?soda\b(?!.*\bbicarbonato)/],
  ['mix', 2, /\b(?:como|how)\s*\??$/],
  [
    'preview',
    4,
    /\bhow (?:dark|light|pale|strong|bright|deep)\b.*\blooks?\b|\blooks? the (?:bar|soap)\b|\bque (?:tono|color) (?:da|sale|queda|me da|coge|toma|resulta)\b|\bhow will it look\b|\bcomo de (?:oscur|clar|fuert)\w+\b/,
  ],
  [
    'compare',
    4,
    /\bcual (?:manda|gana|domina|cubre mas|colorea|es mejor para)\b|\bigual(?:es)? (?:peso|cantidad|dosis)\b|\bsame (?:weight|dose|amount)\b.*\bwhich\b/,
  ],
  [
    'wet',
    4,
    /\b(?:can i |do i |to )?(?:wet|disperse|dissolve|premix|hydrate)\b.*\b(?:in|with|into) (?:the )?(?:glycerin\w*|oil|water|alcohol)\b|\bbetter (?:in )?(?:oil|water|glycerin\w*)\b|\bmejor (?:en|con) (?:aceite|agua|glicerina)\b|\b(?:en que|con que|en q) (?:lo |la |los |las )?(?:deshag|deshac|disuelv|disolv|mezcl|dilu|bat)\w*\b|\bgoes? on the \w+ or (?:on )?the oils?\b/,
  ],
  [
    'shelf-add',
    3.5,
    /^(?:\w+ )?(?:apunta\w*|anota\w*|registra\w*|agrega\w*|guarda\w*|suma\w*|anade\w*|mete\w*|add|log)\b.*\d/,
  ],
  [
    'dose',
    2,
    /\bhow (?:much|many)\b|\bhow mch\b|\bcuant[oa]s?\b|\bq tant[oa]\b|\bque tant[oa]\b|\bdosis\b|\bdose\b|\bdosage\b|\busage rate\b/,
  ],
  [
    'dose',
    2,
    /\btoo (?:much|little)\b|\benough\b|\bdemasiad[oa]\b|\bes mucho\b|\bsuficiente\b|\bppo\b|\bper (?:lb|pound)\b|\bpor libra\b|\bdosifica/,
  ],
  [
    'dose',
    1,
    /\b(?:for|into|in|para|en|per|por)\b.*\b(?:batter|oils?|cups?|tazas?|masa|mezcla|aceites?|pint|lote|batch|libra|kilo)\b/,
  ],
  [
    'lye',
    4,
    /\b(?:how (?:much|many)|cuant[oa]s?|calcul\w*|que cantidad de|amount of)\b.{0,24}\b(?:lye|naoh|koh|caustic soda|sosa(?: caustica)?|soda caustica|lejia|hidroxido|potasa)\b/,
  ],
  [
    'lye',
    4,
    /^(?:lye|naoh|koh|sosa|lejia)\b.*\d|\blye (?:n|and|&) water\b|\bsosa y agua\b|\blye calc|\blye (?:amount|for)\b|\bsaponif\w*\b.*\d/,
  ],
  ['lye', 2, /\b(?:superfat|sf|sobreengrasado|sobre engrasado|sobregrasa)\b/],
  [
    'survives-lye',
    3,
    /\bsurviv\w*|\bsobreviv\w*|\baguant\w*|\bresist\w*\b|\bwithstand\b|\bstand up to\b|\bhold(?:s)? up\b|\blye (?:safe|stable|proof|eat|kill)|\b(?:stable|safe|estable|segur[oa])\b.*\b(?:lye|cp|cold process|soap|jabon|sosa|lejia)\b|\bph (?:alto|high)|\bhigh ph\b/,
  ],
  [
    'survives-lye',
    3,
    /\b(?:will|itll|it'll|gonna|going to|does|do|is|are|would|can)\b.*\b(?:stay|hold|keep|fade|bleed|morph|go weird|go brown|turn|change|discolou?r|last|be ok|be fine|eat)\b/,
  ],
  [
    'survives-lye',
    3,
    /\b(?:stay|stays|se (?:mantiene|queda|hace|vuelve|pone|decolora|destine|destiñe|degrada|va|pierde|corre)|se me va a|cambia de color|pierde (?:el )?color|mantiene (?:el|su)|sangra|destine|migra)\b.*|\bok (?:for|in) (?:cp|cold process|soap)\b|\b(?:sirve|funciona|vale|jala)\b.*\b(?:para|en|con)\b.*\b(?:jabon|cp|proceso|sosa|frio)\b/,
  ],
  [
    'survives-lye',
    2,
    /\bcan i (?:use|put|add|swap|replace|sub)\b|\bis it ok to\b|\bok to use\b|\bis (?:this|that|it|\w+) (?:one )?(?:ok|safe|fine|good)\b|\bpuedo (?:usar|echar|poner|meter|agregar|sustituir|cambiar)\b|\ble puedo\b|\bse puede (?:usar|poner|echar|meter)\b|\bpodria usar\b|\by si (?:uso|le pongo|le echo)\b|\bwhat about\b|\bwill\b.*\b(?:work|do|make it|be)\b|\bdoes\b.*\bwork\b|\bworks? in (?:cp|cold process|soap)|\bwhat if i use\b/,
  ],
  [
    'survives-lye',
    2,
    /\bci ?\d{5}\b|\bingredient|\blabel says\b|\bbag says\b|\bla etiqueta dice\b|\bcontiene\b|\blleva\b.*,/,
  ],
  [
    'law',
    4,
    /\b(?:allowed|alowed|permitted|legal(?:ly|es|mente)?|lawful|banned|ban|prohibid[oa]s?|permitid[oa]s?|approved|aprobad[oa]s?|autorizad[oa]s?|fda|regulation|regulations?|reglamento|normativa|annex|anexo|illegal|ilegal|the law|la ley|restricted|compliant|cpsr|cosmetic(?:s)? law)\b/,
  ],
  [
    'law',
    3,
    /\b(?:can|may|do|puedo|hay que|tengo que|debo)\b.*\b(?:sell|selling|vender|vendo|on the label|en la etiqueta|declarar|etiquetar)\b|\b(?:sell|vender|vendo)\b.*\b(?:europe|europa|us|usa|eu|ue|estados unidos|espana|mexico|germany|alemania|market|mercado)\b/,
  ],
  [
    'law',
    1,
    /\b(?:in|en) (?:the )?(?:eu|ue|europe|europa|us|usa|america|united states|estados unidos|union europea)\b/,
  ],
  [
    'diagnose',
    3,
    /^(?:so |ok |help |hey |oye |pues |y |ay |hola )*(?:why|y (?:did|is|are|do)|por ?que|porque|xq|pq)\b|\bwhy (?:did|is|are|r|does|do|has|have|would|won'?t|wont|my|the)\b|\bpor ?que (?:se|mi|mis|me|el|la|los|las|salio|salieron|tiene|hay|esta|estan|sale|huele|le|no|suda)\b|\b(?:a que se debe|what caused|what causes|que causa|que le paso|que paso|que me paso|what happened|what went wrong|whats wrong|what'?s wrong|what is wrong|que hice mal|what did i do|que tiene mi|que es (?:eso|esto|ese)|se me (?:corto|separo|agrieto|puso|acelero|hizo|volvio|quemo|mancho|llen\w*))\b/,
  ],
  [
    'diagnose',
    2,
    /\b(?:what is it|what(?:'?s| is| are) (?:this|that|these|those)|is it (?:ruined|safe|bad|mold|mould|ok to use)|can i (?:save|fix|rebatch)|how (?:do i|to) fix|como lo arreglo|tiene arreglo|se echo a perder|normal)\b|\b(?:why|y tho)\s*\??$/,
  ],
  [
    'diagnose',
    2,
    /\b(?:crack\w*|crackl\w*|glycerin rivers?|rivers?|specks?|dots?|spots?|streaks?|ash|soda ash|powdery stuff|crumbl\w*|brittle|sweat\w*|drops of water|dreaded orange|dos\b|rancid|seized|riced|separated|mushy|lye heavy|zap\w*|volcano|bubbles are|lather is|faded|motas?|manchas?|grietas?|agrietad\w*|ceniza de sosa|ceniza|polvo blanco|puntitos?|rayas|venas|rios de glicerina|desmorona\w*|quebradiz\w*|suda\w*|rancio|cortado|grumos?|cuartead\w*|cheese)\b/,
  ],
  [
    'mix',
    3,
    /\bwhat (?:do|can|should|colou?rs?|would) (?:i |you |u )?(?:mix|blend|combine|make|makes|get|gets|give|gives)\b|\bhow (?:do|can|would|to) (?:i |you |u )?(?:make|get|mix|achieve|create|reach|hit)\b|\bhow to (?:make|get|mix|achieve)\b|\bwhat makes\b|\bwhich colou?rs? (?:make|give|do i mix)\b|\bwhat colou?rs? (?:make|makes|do i (?:mix|need|use))\b/,
  ],
  [
    'mix',
    3,
    /\b(?:como|cmo|komo) (?:le )?(?:hago|hacer|saco|sacar|consigo|conseguir|logro|lograr|obtengo|obtener|llego|puedo (?:hacer|sacar|lograr|conseguir|obtener)|se (?:hace|saca|logra|consigue|obtiene))\b|\bque (?:colores?|pigmentos?|micas?) (?:mezclo|uso|junto|combino|necesito|hacen|me dan|dan)\b|\bque (?:mezclo|combino|junto)\b|\bque (?:\w+ )?(?:puedo|podria) (?:hacer|sacar|lograr)\b|\bcon que (?:hago|saco|consigo|logro)\b/,
  ],
  [
    'mix',
    3,
    /\bwhat (?:\w+ )?can i (?:make|do|get) (?:from|with|out of)\b|\bwhat (?:can|could) i make\b|\b(?:from|on|in) my shelf\b.*\bmake\b|\b(?:need|want|quiero|necesito)\b.*#[\da-f]{3,6}\b|#[\da-f]{6}\b|\brecipe for (?:a )?(?:dusty|deep|dark|light)?\b|\bmatch (?:this|a|the)?\b|\bi (?:only |just )?(?:have|got)\b.*\bmake\b|\bquiero (?:un|el) (?:color|tono|rosa|azul|verde|morado|rojo|amarillo|naranja|gris|beige|lila)\b/,
  ],
  [
    'mix',
    2,
    /\b(?:make it|turn it|get it|hacerlo|que quede|ponerlo) (?:white|black|red|blue|green|pink|yellow|orange|purple|blanco|negro|rojo|azul|verde|rosa|amarillo|morado|naranja)\b|\bto get\b|\bpara (?:lograr|conseguir|obtener|sacar|que salga|que me salga)\b/,
  ],
  [
    'preview',
    4,
    /\b(?:look|looks|looking) like\b|\bwhat colou?r (?:am i|will|would|does|do|is it|'?ll)\b|\bend up with\b|\bcome out\b|\bturn out\b|\bhow (?:will|would|does) .*\blook\b|\bshow me (?:what|how)\b|\bpreview\b|\bcomo (?:se (?:ve|veria|vera|verian)|quedaria|queda|quedara|saldria|sale|va a quedar|quedan)\b|\b(?:que|de que) color (?:sale|saldria|queda|quedaria|da|daria|me va|va a|me queda|me sale|seria|resulta)\b|\bensename\b|\bmuestrame\b|\bvista previa\b/,
  ],
  [
    'plan',
    4,
    /\bplan (?:me|a|out|my|for|completo|complete|del?|de un)\b|^plan\b|\b(?:whole|full|entire|complete) (?:batch|recipe|loaf|plan|thing)\b|\btodo el lote\b|\blote (?:completo|entero)\b|\bplane\w*\b|\bplanifica\w*\b|\bwrite (?:it|this) (?:all )?out\b|\btell me how much of everything\b|\bstep by step\b|\bpaso a paso\b|\bhow much of everything\b|\bcuanto de (?:todo|cada)\b|\bde principio a fin\b|\barmame\b|\bhazme (?:un|el|la) (?:lote|plan|receta)\b/,
  ],
  [
    'plan',
    2,
    /\b(?:swirl|ombre|layers?|layered|loaf|batch|hanger|drop swirl|in the pot|capas|remolino|degradado|marmolado|lote|barra de|molde|columna|stripes|mitad\b.*\bmitad|half .* half|quarter .* quarter)\b/,
  ],
  [
    'compare',
    4,
    /\b(?:which|what|cual|cuales|q)\b.*\b(?:stronger|strongest|more (?:intense|pigmented|powerful|concentrated|potent)|tints? more|mas (?:fuerte|potente|intens[oa]|concentrad[oa]|pigmentad[oa]|pigmento)|pinta mas|tine mas|cunde mas|rinde mas|da mas color|colorea mas|deeper)\b/,
  ],
  [
    'compare',
    4,
    /\b(?:stronger|more pigmented|more intense) (?:than|then)\b|\bmas (?:fuerte|potente|intens[oa]|concentrad[oa]) que\b|\b(?:pinta|tine|cunde|colorea|rinde|tinta) mas\b|\bcompare\b|\bcompara\w*\b|\b(?:vs|versus)\b|\bdifference in strength\b/,
  ],
  [
    'wet',
    4,
    /\b(?:what|which|que|en que|con que|in what|in which)\b.{0,40}\b(?:wet|disperse|dissolve|pre ?mix|hydrate|slurry|deshag\w*|disuelv\w*|humede\w*|hidrat\w*|dispers\w*|moj\w*|dilu\w*|desli\w*|remoj\w*)\b/,
  ],
  [
    'wet',
    4,
    /\b(?:wet|disperse|dissolve|premix|pre mix|mix|stir|blend|deshag\w*|disuelv\w*|humede\w*|mezcl\w*|dispers\w*|moj\w*|dilu\w*|hidrat\w*)\b.*\b(?:first|before|or just dump|dump it|antes|primero|water or oil|oil or water|agua o (?:en )?aceite|aceite o (?:en )?agua|in water|in oil|en agua|en aceite)\b/,
  ],
  [
    'wet',
    3,
    /\b(?:water or oil|oil or water|agua o (?:en )?aceite|aceite o (?:en )?agua|oil (?:or|and) glycerin|carrier)\b|\bwhat oil\b.*\bwet\b|\bclump\w*\b.*\b(?:how|mix)\b|\bdo (?:i|u|you) (?:have to |need to )?(?:wet|disperse|premix)\b|\bhay que (?:humede\w*|disolver|hidratar|mojar|mezclar)\b|\btengo que (?:humede\w*|disolver|hidratar|mojar)\b/,
  ],
  [
    'shelf-add',
    4,
    /\b(?:add|put|log|save|register|agrega\w*|anad\w*|apunta\w*|anota\w*|registra\w*|guarda\w*|mete|pon|suma\w*|agregue)\b.*\b(?:shelf|inventory|stock|stash|estanteria|estante|inventario|repisa|mis (?:pigmentos|colores|cosas)|alacena|despensa)\b/,
  ],
  [
    'shelf-add',
    3,
    /\b(?:i |we |just )*(?:bought|got in|compre|me llego|llegaron|acabo de comprar|me llegaron|restock\w*)\b.*\d/,
  ],
  [
    'shelf-use',
    4,
    /\b(?:used|use up|spent|gaste|use|usado|utilice|take|quita\w*|saca\w*|resta\w*|descuenta\w*|remove|spilled|tire|derrame|baja\w*)\b.*\b(?:off|from|de|del)?\b.*\b(?:shelf|inventory|stock|stash|estanteria|estante|inventario|repisa|left|quedan?)\b/,
  ],
  [
    'shelf-show',
    5,
    /\bhow much\b.*\b(?:left|do i (?:still )?have|have i got|do i got|remain\w*|in stock|on my shelf)\b|\bcuant[oa]s?\b.*\b(?:me queda\w*|queda\w*|tengo|hay en mi|sobra)\b|\bam i (?:low|out)\b|\b(?:whats|what'?s|what is|show me|list|que hay|que tengo|lista\w*|muestra\w*)\b.*\b(?:on|en) (?:my|mi) (?:shelf|estanteria|inventario|estante|repisa)\b|\bdo i (?:still )?have (?:any|some)\b|\b(?:me )?queda (?:algo|poco|mucho)\b|\bstill have\b.*\b\?/,
  ],
  [
    'challenge',
    4,
    /\b(?:challenge|challange|quiz|reto|retame|desafio|concurso|contest|game|juego|adivina\w*|dare me|ponme a prueba|trivia|color prompt|colour prompt)\b/,
  ],
  [
    'help',
    4,
    /^(?:help|ayuda|ayudame|\?+|menu|commands|comandos|start|hi|hello|hola|hey|buenas|info)(?: me| please| pls| porfa| por favor)?[!.? ]*$|\bwhat (?:can|do) (?:you|u) do\b|\bque (?:puedes|sabes|podes) hacer\b|\bque haces\b|\bcomo (?:funcionas?|te uso|se usa esto|te pregunto)\b|\bhow (?:do|does) (?:i use (?:you|this)|this work|this thing work|u work|you work)\b|\bwho are you\b|\bquien eres\b|\bwhat (?:is|are) (?:this bot|you)\b|\bpara que sirves\b|\bque (?:mas )?puedo preguntar/,
  ],
];
