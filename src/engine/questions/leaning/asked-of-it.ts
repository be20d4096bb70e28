/** What is asked of what was spoken of before, without naming it. */
export type Aspect =
  | 'why'
  | 'holds'
  | 'allowed'
  | 'safe'
  | 'bleeds'
  | 'how-much'
  | 'wet'
  | 'water'
  | 'looks'
  | 'instead'
  | 'next-time'
  | 'done'
  | 'still'
  | 'comes-back'
  | 'how-long'
  | 'how-hot'
  | 'same'
  | 'more'
  | 'when'
  | 'too-much'
  | 'which-cup'
  | 'that-one';

const IT =
  '(?:it|that|this|these|those|they|them|this one|that one|the colou?r|my soap|the soap|my bars?|eso|esto|este|esta|ese|esa|lo|la|las|los|el color|el jabon|la pastilla)';
const CUPS =
  '(?:us|uk|american|british|english|imperial|metric|australian|250|240)(?: ml)?(?: (?:cups?|spoons?|tsps?|teaspoons?))?';
const POWDER = '(?:mica|oxido|oxide|pigmento?|colou?r|colorante|polvo|powder|arcilla|clay|dye)';
const WILL = '(?:will|would|does|do|can|could|is|are|did|has)';
const END =
  '(?: (?:in soap|in cp|in lye|in the lye|in the end|over time|later|in the sun|in the light|en jabon|en la sosa|con el tiempo|al sol|con la luz|a la luz|on the windowsill|no|verdad))*';

const whole = (...alternatives: readonly string[]): RegExp =>
  new RegExp(`^(?:${alternatives.join('|')})$`, 'u');

/** Looked for in this order. A whole turn has to be of such words: what names a thing of its own stands alone. */
const ASPECTS: readonly (readonly [Aspect, RegExp])[] = [
  [
    'next-time',
    whole(
      `(?:how (?:do|can|could|should) (?:i|we|you) )?(?:(?:stop|avoid|prevent|fix|dodge|keep) )(?:${IT} )?(?:from )?(?:happening )?(?:again )?(?:for |the )?(?:next time|happening|happening again|in future|again)`,
      `(?:how (?:do|can|could|should) (?:i|we|you) )(?:stop|avoid|prevent|dodge) ${IT}(?: happening)?`,
      `what (?:do|should|can) i do (?:different(?:ly)?|better)?(?: for)? next time`,
      'next time',
      `(?:y )?(?:como (?:lo |la |las |los )?(?:evito|evitar(?:lo|la)?|puedo evitar(?:lo|la)?|prevengo|hago para que no (?:me )?(?:vuelva a pasar|pase|vuelva a salir))(?: eso)?(?: la proxima(?: vez)?| otra vez)?)`,
      `(?:que hago |y )?(?:para )?la proxima(?: vez)?(?: (?:que hago|como (?:lo|la) (?:evito|hago)|como hago))?`,
      `como hago (?:para )?que no (?:me )?(?:vuelva a pasar|pase mas|pase de nuevo|salga|pase)(?: la proxima(?: vez)?)?`,
    ),
  ],
  [
    'done',
    whole(
      `(?:i )?(?:did|done|ive done|have done|tried) (?:that|it|this|all that|so)(?: (?:and )?(?:now )?whats? ?(?:now|next)?)?`,
      `(?:whats? )?(?:now|next)(?: what)?`,
      `(?:what (?:do|should|shall) (?:i|we) do )?(?:now|next|after that|after)`,
      `(?:now )?what(?: comes)?(?: next)?`,
      `(?:ya )?(?:lo |la |eso )?(?:hice|he hecho|probe|esta hecho|esta)(?: eso| asi)?(?: y)?(?: ahora)?(?: que)?(?: hago| sigue)?`,
      `(?:y )?(?:ahora )?que (?:hago|sigue|viene)?(?: ahora| despues| luego)?`,
      `(?:y )?(?:luego|despues|ahora)(?: que)?`,
      `que mas(?: hago)?`,
    ),
  ],
  [
    'still',
    whole(
      `(?:i )?(?:(?:did|tried) (?:that|it|this|all that) )?(?:and |but )?(?:its |it is |theyre |my batter is |the batter is |his )?(?:all )?(?:still|is still) (?:\\p{L}+ ?){1,4}`,
      `(?:its|it is|it was|ive|i)? ?(?:all )?(?:already|just) (?:poured|in the mould|in the mold|in|in moulds|set|cut|unmou?lded|hard|solid|thick|mixed|done)(?: (?:it|them|now|in the mou?ld))?`,
      `(?:its|it is) (?:all )?in(?: the mou?ld)?(?: already)?(?: (?:and|but))? ?(?:lumpy|thick|solid|set|\\d+ (?:hrs?|hours?|mins?|minutes?))?`,
      `(?:pero )?(?:ya )?(?:lo hice y )?(?:sigue|siguen|todavia|aun|esta todavia|continua)(?: (?:estando|esta))? (?:\\p{L}+ ?){1,4}`,
      `(?:ya )?(?:lo |la |eso )?(?:hice|probe|he hecho)(?: eso| asi)? (?:y|pero) (?:sigue|siguen|todavia|aun|esta) (?:\\p{L}+ ?){1,4}`,
      `ya (?:lo |la )?(?:verti|vertida?|eche|esta (?:en el molde|vertid[oa]|echad[oa]|cortad[oa]|dur[oa])|en el molde|cort[eo]|desmolde)(?: (?:al molde|en el molde))?`,
      `no (?:mejora|cambia|se arregla|funciona|funciono|sirvio|sale)`,
      `(?:it )?(?:didnt|did not|doesnt|hasnt|wont) (?:work|help|helped|worked|change|changed|budge|go away|come out)`,
      `no (?:luck|change|good|difference|better)`,
    ),
  ],
  [
    'comes-back',
    whole(
      `(?:and )?(?:how (?:do|can|could|should) (?:i|we|you) )?(?:get|take|wash|clean|wipe) (?:rid of )?${IT}(?: (?:off|out|away))?(?: how)?`,
      `(?:y )?como (?:lo|la|los|las|se) (?:quito|quita|saco|saca|elimino|elimina)`,
      `${WILL} (?:${IT} )?(?:come back|go away|go|get better|come right|come out|recover|improve|wear off|even out|disappear|sort itself out)(?: (?:in the cure|with cure|as it cures|(?:while|when|once) it (?:cures|dries|is cured)|on its own|by itself|again|in time))?`,
      `(?:can|could) (?:i|we) (?:still )?(?:save|fix|rescue|use|sell|keep|gift|give) (?:${IT})`,
      `(?:is it|are they|is that|is this) (?:ruined|lost|salvageable|fixable|spoiled|a goner|a write off)`,
      `(?:bin it|worth saving|any way (?:to|of) (?:fix|save|fixing|saving) (?:it|that))`,
      `(?:${IT} )?(?:se )?(?:va a )?(?:se )?(?:quita|quitar|va|ira|arregla|arreglar|recupera|recuperar|mejora|mejorar|vuelve|volvera?|pasa|pasara)(?: (?:solo|sola|con el curado|con el tiempo|despues))?`,
      `(?:tiene|hay) (?:arreglo|remedio|solucion)`,
      `(?:lo|la|los|las) (?:puedo |puede |podria )?(?:salvo|salvar|arreglo|arreglar|rescato|rescatar|uso|usar|tiro|tirar)`,
      `(?:se )?(?:puede|puedo) (?:salvar|arreglar|rescatar|usar|aprovechar)(?:lo|la|los|las)?`,
      `esta (?:perdid[oa]|arruinad[oa]|echad[oa] a perder)`,
    ),
  ],
  [
    'how-long',
    whole(
      `(?:for )?how (?:long|many (?:mins?|minutes|hours|days|weeks))(?: (?:is|does|do|will|should|for|would) (?:${IT}|i|we)(?: (?:take|last|wait|be|leave it|keep it))?)?(?: for)?`,
      `how long(?: (?:until|till|before)(?: then| that)?)?`,
      `(?:por )?cuanto (?:tiempo|rato|tarda|dura|espero|hay que esperar)(?: (?:es|seria|son|dura|tarda|espero|lo dejo|la dejo))?(?: eso)?`,
      `cuant[oa]s (?:minutos|horas|dias|semanas)(?: (?:son|espero|tarda))?`,
      'when(?: is that| will that be)?',
      'cuando(?: es eso| seria)?',
    ),
  ],
  [
    'how-hot',
    whole(
      `(?:at |to )?(?:what|which|how) (?:temp|temps|temperature|hot|warm|cold|cool)(?: (?:is|should|does) (?:${IT}|i)(?: (?:be|use))?)?(?: for (?:that|it))?`,
      `(?:a )?(?:que|cual) (?:temperatura|temp)(?: (?:es|seria|uso|debe ser))?`,
      'que tan caliente(?: (?:se pone|esta|queda))?',
      `how (?:hot|warm|cold) (?:does|will|should|is|can) ${IT} ?(?:get|be|go)?`,
      `(?:(?:and |y )?(?:in|en) )?(?:grados |degrees )?(?:fahrenheit|celsius|centigrad(?:e|os)|f|c)`,
      'how hot (?:it|does it|will it) get',
      'cuanto se calienta',
    ),
  ],
  [
    'water',
    whole(
      `(?:how much|what about|the|much) ?(?:less |more )?(?:water|liquid)(?: (?:is that|for (?:it|that)|do i (?:need|use|add)|goes in|with it|then))?`,
      'water',
      `(?:the |el )?(?:water|agua) (?:the same|same|igual|lo mismo|tambien|stays)`,
      `same water`,
      `(?:y )?(?:cuanta|el|la|que|de)? ?agua(?: (?:lleva|le pongo|uso|necesito|pongo|seria|es|para eso))?`,
    ),
  ],
  [
    'why',
    whole(
      `(?:but )?why(?: (?:is|was|does|do|not|so|that|this|did|would) ?(?:${IT})?(?: (?:is|happen|happened|so|matter))?)?`,
      'how come(?: that)?',
      'why so(?: much| little| long)?',
      `(?:y )?(?:por ?que|pq|xq|y eso)(?: (?:me |se |le )?(?:es|no|pasa|paso|ocurre|sale|salio|salen|hace|queda|quedo|pone|puso|tanto|debe))?(?: (?:eso|esto|asi|entonces))?`,
      'a que se debe(?: eso)?',
      'what (?:causes?|caused|does) (?:it|that)',
    ),
  ],
  [
    'instead',
    whole(
      `what (?:does|do|will|can|would|holds|stays|works|else)(?: (?:i use|i use instead|instead|then|work|hold|stay|last|work instead))*`,
      `what (?:can|should|do|could) i use(?: instead)?`,
      `which (?:one )?(?:does|do|will|would|holds|stays|works)(?: (?:it|hold|stay|last))?`,
      `(?:y )?(?:cual|que|cuales)(?: (?:otro|otra))? (?:si|uso|aguanta|aguantan|sirve|sirven|queda|pongo|seria|se queda|no se va|dura|duran)(?: (?:si|entonces|en vez|en su lugar|aguanta|sirve|dura))?`,
      `que uso(?: en (?:vez|lugar|su lugar))?`,
    ),
  ],
  [
    'bleeds',
    whole(
      `(?:${WILL} )?(?:${IT} )?(?:bleed|bleeds|stain|stains|ruin|mark|run|rub off|migrate|wander|leak|dye)(?: (?:into|in|my|the|on|onto|a|off)?(?: (?:white|towels?|flannels?|cloths?|cloth|skin|hands?|lather|suds|washcloths?|bath|tub|sink|other colou?rs?|colou?rs?|next layer|layers?|swirls?|the|my|bits?|base|part|half|rest|face ?cloths?|\\p{L}+ (?:one|layer|part|swirl|bit)))*)?`,
      `(?:${WILL} )?(?:my |the )?(?:lather|suds|foam|bubbles) (?:be |turn |go |come out |get )?(?:pink|red|blue|green|black|grey|gray|colou?red|purple|orange|yellow|brown)`,
      `(?:me |se |nos )?(?:va a |van a |ira a )?(?:manch|sangr|migr|pint|corr|arruin)(?:a|ar|e|er|an)(?: (?:la|mi|mis|el|las|los|mucho|lo|a|en|asi|piel|toallas?|espuma|blanco|manos|manopla|otros?|colores))*`,
      `(?:la )?espuma (?:sale|queda|saldra|quedara|sera) (?:\\p{L}+)`,
    ),
  ],
  [
    'holds',
    whole(
      `(?:${WILL} )?(?:${IT} )?(?:(?:not |wont )?(?:fade|fades|last|lasts|hold|holds|survive|survives|stay|stays|keep|turn|change|morph|go|bear|stand)|stable|lye (?:safe|stable|proof)|colou?r ?fast|light ?fast)(?: (?:up|its colou?r|colou?r|well|bright|green|blue|pink|red|purple|yellow|orange|brown|grey|the lye|lye|true|out|ok|okay|like that|much|gel|the gel))*${END}`,
      `(?:con|en) (?:el |la )?(?:sol|luz|tiempo) (?:se )?(?:va|ira|pierde|destine|quita|aguanta|dura)`,
      `(?:est[ae]|es[ae]) ${POWDER}(?: (?:si|me))? (?:sirve|aguanta|vale|dura|se puede)(?: (?:para jabon|en jabon|con la sosa))?`,
      `(?:is|does|will|can i use) (?:this|that) ${POWDER}(?: (?:work|hold|ok|okay|lye safe|safe|survive|stable|in soap))*`,
      `(?:is|are) (?:${IT} )(?:lye ?(?:safe|stable|proof)|stable|colou?r ?fast|light ?fast)`,
      `(?:y )?(?:se )?(?:me )?(?:va a )?(?:${IT} )?(?:aguanta|aguantan|aguantara|resiste|resisten|dura|duran|durar|mantiene|mantienen|queda|va|desvanece|decolora|destine|despinta|aclara|pierde|apaga|cambia|cambiar|sobrevive|estable|sobrevivira|desteñira|irse)(?: (?:bien|mucho|el color|la sosa|la lejia|color|asi|verde|azul|rosa|rojo|de color|con la sosa))*${END}`,
    ),
  ],
  [
    'allowed',
    whole(
      `(?:is |are )?(?:${IT} )?(?:allowed|legal|permitted|approved)(?: (?:in|here|there|to sell|for soap))*`,
      `can i sell (?:with )?${IT}`,
      `(?:esta|es|son|estan)? ?(?:permitid[oa]s?|legal(?:es)?|se permite|se puede vender)`,
      `(?:lo|la|los|las) puedo vender`,
    ),
  ],
  [
    'safe',
    whole(
      `(?:is |are )?(?:${IT} )?(?:still )?(?:safe|ok|okay|fine|dangerous|harmful|toxic|usable)(?: (?:to use|for skin|on skin|for kids|for children|for babies|for me|to touch|in soap|then|on my skin|to wash with))*`,
      `(?:y )?(?:es|son|esta|sera)? ?(?:segur[oa]s?|peligros[oa]s?|toxic[oa]s?|dan[ia]n[oa]?)(?: (?:de usar|usarlo|usarla|para la piel|para ninos|para usar|asi))*`,
      `(?:se )?(?:puede|puedo) usar(?:lo|la|los|las)?(?: asi| igual)?`,
      `(?:${IT} )?sirve(?: asi| igual)?`,
    ),
  ],
  [
    'how-much',
    whole(
      `how much(?: (?:of )?(?:${IT}))?(?: (?:do i|should i|would i|goes|to) ?(?:need|use|put|add|put in|go in|in|put in it)?)?`,
      `how much(?: (?:is|of) (?:it|that))`,
      `(?:y )?(?:cuant[oa]s?|que cantidad)(?: (?:de (?:eso|ese|esa|cada uno|el|ella)|le (?:pongo|echo)|lo|pongo|echo|uso|lleva|seria|va|es))*`,
    ),
  ],
  [
    'wet',
    whole(
      `(?:can|could|should|do|must) i (?:mix|wet|put|stir|disperse|make) (?:${IT} )?(?:in|with|into|up with|up in)?(?: (?:a bit of |some |the |plain )?(?:oil|water|glycerin(?:e)?|batter|first|what))*`,
      `(?:what|how) (?:do|should|can|shall) i (?:mix|wet|disperse|put|dissolve) (?:${IT})(?: (?:in|into|with|in first))?`,
      `(?:in|with) (?:oil or water|water or oil)`,
      `(?:i )?(?:wet|mix|dissolve|disperse|stir) ${IT} (?:with|in|into) what`,
      `(?:do|should|must) i wet ${IT}(?: first| before(?:hand)?)?`,
      `(?:${IT} )?(?:en|con) que (?:lo |la |se )?(?:deshago|deshace|moja)`,
      `(?:lo|la|los|las) (?:mojo|humedezco|disuelvo|deshago)(?: (?:antes|primero))?`,
      `(?:did you mean |is that |do you mean )?(?:in )?(?:oil or water|water or oil)`,
      `(?:con|en) que (?:lo|la) (?:mezclo|disuelvo|mojo|humedezco|diluyo|pongo)`,
      `(?:lo|la|los|las|se) (?:puedo |puede )?(?:mezclo|mezclar|disuelvo|disolver|mojo|mojar|humedecer|diluyo|diluir|pongo|echo)(?: (?:con|en) (?:el |la )?(?:agua|aceite|glicerina|que))?(?: o (?:en |con )?(?:el |la )?(?:agua|aceite|glicerina))?`,
      `(?:eso |lo |la )?(?:va |deshago |disuelvo |mojo )?(?:en|con) (?:el |la )?(?:agua|aceite) o (?:en |con )?(?:el |la )?(?:agua|aceite)(?: (?:lo|la|los|las|se) (?:deshago|disuelvo|mojo|mezclo|pongo|echo|deshace|disuelve|moja))?`,
      `(?:como )(?:lo|la) (?:mezclo|disuelvo|mojo|preparo|uso)`,
    ),
  ],
  [
    'when',
    whole(
      `(?:(?:do|does|should) )?(?:${IT} |i )?(?:put |add |go |goes )?(?:${IT} )?(?:in )?(?:before or after|after or before)(?: (?:trace|lye|the lye|scent|the scent))?`,
      `when (?:do|should|does) (?:i|${IT}) (?:add|put|go|stir)(?: (?:${IT}))?(?: in)?`,
      `(?:eso |lo |la )?(?:va |pongo |echo |se pone |se echa )?(?:antes o despues|despues o antes)(?: de (?:la )?(?:traza|sosa|lejia|esencia))?`,
      `(?:y )?cuando (?:lo|la|los|las|se) (?:pongo|echo|pone|echa|agrego|agrega|anado|anade)`,
    ),
  ],
  [
    'too-much',
    whole(
      `(?:is |isnt )?(?:${IT} )(?:too much|a lot|enough|too little)`,
      `(?:whats )?(?:the )?max(?:imum)?`,
      `(?:no )?(?:es|sera) (?:mucho|demasiado|poco|suficiente)(?: eso)?`,
    ),
  ],
  [
    'looks',
    whole(
      `(?:what|which) colou?r (?:will|would|does|is) (?:${IT})(?: (?:be|come out|turn out|look|give|make|end up))?`,
      `(?:what|how) (?:will|would|does) (?:${IT}) (?:look|look like|come out|turn out)`,
      `(?:whats|what is|hows|how is) ${IT} (?:going to |gonna )?(?:look like|look|be like|come out)`,
      `(?:y )?(?:de |a )?que color (?:queda|sale|da|saldria|quedaria|sera|va a quedar)(?: (?:eso|al final|la barra))?`,
      `(?:y )?como (?:queda|sale|se ve|quedaria|se veria)(?: (?:de color|el color|al final))*`,
    ),
  ],
  [
    'same',
    whole(
      'both(?: the)?(?: same)?',
      '(?:is it |are they )?the same(?: thing| for both)?',
      '(?:los dos|las dos|ambos|ambas)(?: (?:igual(?:es)?|a la misma))?',
      '(?:es|son)? ?lo mismo',
      '(?:son )?iguales',
    ),
  ],
  [
    'more',
    whole(
      '(?:tell me )?more',
      'go on',
      'and\\??',
      'mas',
      'sigue',
      'cuentame mas',
      'explain(?: that)?',
      'explica(?:me)?(?: eso)?',
      'how(?: so| do i do that| do i do it| exactly)?',
      'como(?: (?:lo hago|se hace|asi))?',
      'meaning(?: what)?',
      'what do you mean',
      'en que sentido',
    ),
  ],
  [
    'which-cup',
    whole(
      `(?:is (?:that|it|this) |are (?:those|they|these) )?(?:in )?${CUPS}(?: (?:or|o) (?:in )?${CUPS})+`,
      `(?:what|which) (?:size |kind of )?(?:cups?|spoons?)`,
      `(?:en |son |es )?(?:que )?(?:tazas?|cucharas?|cucharadas?) (?:son|de que tamano)`,
      `(?:en |son |es )?tazas? (?:de )?(?:gringas?|americanas?|metricas?|europeas?|240|250)(?: ml)?(?: o (?:de )?(?:gringas?|americanas?|metricas?|europeas?|240|250)(?: ml)?)?`,
    ),
  ],
  [
    'that-one',
    whole(
      '(?:that|this|the other)(?: one)?',
      'which(?: one)?(?: is better)?',
      '(?:y )?(?:el otro|la otra|ese|esa|este|cual|el primero|la primera)',
      'with the other(?: one)?',
      '(?:con )?(?:el otro|la otra)',
    ),
  ],
];

/** What is asked of the thing before in a turn that names none; undefined where it asks for something of its own. Pure. */
export const aspectIn = (turn: string): Aspect | undefined =>
  ASPECTS.find(([, pattern]) => pattern.test(turn))?.[0];
