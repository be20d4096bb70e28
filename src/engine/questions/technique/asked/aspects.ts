import { unbroken } from '../../../over-lines.ts';
import { BATTER_ASPECTS } from './batter-aspects.ts';
import { THINGS } from './things.ts';

const { colour, white } = THINGS;

/** What is asked of a thing of the bench; patterns over plain text: lower case, no accents, no marks. */
export const ASPECTS = {
  ...BATTER_ASPECTS,
  store: [
    '(?:stor\\w+|put (?:them|it) away|keep(?:ing)? (?:them|it|my|the|soaps?|bars?|cured|finished|in)|guard\\w+|almacen\\w+|conserv\\w+)',
  ],
  /** Where or in what. */
  inWhat: [
    '(?:where|how|what|in|box\\w*|bags?|airtight|wardrobe|cupboard|drawer|shelf|wrapped|donde|como|en|caja|bolsa|ropero|armario|cajon|estante|frasco)',
  ],
  howLongKeeps: [
    unbroken`
      how long (?:do|does|will|can)(?: \w+){1,4} (?:keep|last|stay good)|shelf life|go off|expire\w*|
      caduc\w+|cuanto (?:tiempo )?(?:me )?(?:dura\w*|aguanta\w*)|se (?:vence|pasa|echa a perder)n?
    `,
  ],
  knowsWhen: [
    unbroken`
      how (?:do|can|will|would|to) (?:i |you |u |we |one )?(?:know|tell)|signs? (?:that|of)|como (?:se|
      me doy cuenta|reconozco|veo|noto)|when is it|is it (?:cured|ready)
    `,
  ],
  cured: ['(?:cured?|curing|ready to use|fully done|curad[oa]s?|curo|list[oa]s? para usar)'],
  curesHowLong: [
    unbroken`
      (?:how long|how many (?:weeks|months)|cuant[oa]s?(?: tiempo| semanas| meses)?)\b.{0,30}\b(?:cur\w+|
      use|usar?|usarl[oa]s?|ready|list[oa]s?|rest|reposa\w*|madur\w+)
    `,
    '(?:en|a los?) (?:cuanto(?: tiempo)?|cuantos dias|cuantas semanas)\\b.{0,20}\\bus\\w+',
    'when can (?:i|we|you|they|he|she) (?:start )?us\\w+',
    'cuando (?:ya )?(?:l[oa]s? )?(?:puedo|se puede|podre) usar\\w*',
  ],
  start: [
    unbroken`
      (?:when|how (?:early|soon|far ahead|long before)|cuando|con cuanto tiempo|cuanto (?:tiempo )?antes|
      hasta cuando)\b.{0,40}\b(?:start|begin|make|do it|do them|pour|get going|arranc\w+|empiez\w+|empez\w+|
      comienz\w+|hag\w+|hacerl\w+|tengo que|debo)
    `,
    '(?:is (?:it|there)|am i|sera|es|estoy|llego|alcanza)\\b.{0,20}\\b(?:too late|enough time|in time|tarde|a tiempo|tiempo)',
    'ready (?:by|for|in time)|list[oa]s? (?:para|a tiempo)|cuando (?:arranco|empiezo|lo hago|los hago)',
  ],
  cut: ['(?:cut\\w*|slic\\w+|cort\\w+|rebanar|partir)'],
  airBubbles: [
    '(?:(?:air|trapped) ?(?:bubbles?|pockets?|holes?)|bubbles|burbujas?(?: de aire)?|huecos de aire|pocitos)',
  ],
  lathers: ['(?:lather\\w*|foam\\w*|suds|bath|espuma\\w*|fizz\\w*|bombas?|wand)'],
  avoid: [
    '(?:stop|avoid|prevent|get rid|get (?:them|it) out|without|no|evit\\w+|sin|sacar|quit\\w+|impedir|how come|why|what (?:causes|makes)|por ?que|from|how do)',
  ],
  changesColour: [
    unbroken`
      (?:chang\w+|affect\w*|alter\w*|do(?:es)?(?: \w+){0,3} to|fade\w*|dull\w*|lighten\w*|cambia\w*|
      afecta\w*|aclara\w*|apaga\w*|modifica\w*)\b.{0,24}\b${colour}
    `,
    `${colour}\\b.{0,24}\\b(?:chang\\w+|affected|different|paler|lighter|cambia\\w*|distint\\w+|mas clar\\w+|igual|the same)`,
  ],
  gives: [
    unbroken`
      (?:giv(?:e|ing)(?: \w+){0,3} (?:away|out|to|one|it|them|as)|give (?:it|one|them)|gift(?:s|ed|ing)?|
      regal\w+|(?:se )?(?:lo|la|los|las) (?:puedo |podria )?dar|darsel[oa]s?)
    `,
  ],
  when: [
    unbroken`
      (?:when|how soon|already|yet|now|today|tomorrow|saturday|sunday|monday|friday|week(?:end)?|cuando|ya|
      ahora|hoy|manana|sabado|domingo|lunes|viernes|semana)
    `,
  ],
  suits: [
    '(?:safe|ok|okay|fine|suit\\w*|good|bad|use|give|for|sirve|seguro|bueno|malo|puede|puedo|usar|dar|para|apto|hace mal)',
  ],
  washes: ['(?:wash\\w*|rins\\w+|clean\\w*|wip\\w+|soak\\w*|lav\\w+|enjuag\\w+|limpi\\w+|remoj\\w+)'],
  scales: ['(?:doubl\\w+|twice|triple|halv\\w+|half|bigger|duplic\\w+|doble|tripl\\w+|mitad|mas grande)'],
  alike: [
    '(?:do i (?:double|halve|triple|scale)|same (?:amount|dose)|also|too|as well|tambien|la misma|igual|se (?:duplica|dobla))',
  ],
  without: [
    `(?:without|leave out|leaving out|skip\\w*|no|if i dont (?:use|add)|sin|no (?:le )?pong\\w+|dej\\w+ fuera)(?: (?:the|any|adding|el|usar))* ${white}`,
  ],
  food: ['(?:food|with (?:the )?(?:milk|meat|dinner)|beside|next to|comida|alimentos|junto a)'],
  meansOrWhy: [
    unbroken`
      (?:what (?:is|s|does|even)|whats|why|mean\w*|explain|point of|worth|matter|religion|fuss|que es|
      que significa|por ?que|para que|vale la pena|explic\w+|importa)
    `,
  ],
  buys: [
    unbroken`
      (?:buy\w*|get|find|order|cheap\w*|price|shops?|store|hardware|from|source|where|compr\w+|consig\w+|
      consegu\w+|vend\w+|barat\w+|ferreteria|tienda|donde)
    `,
  ],
  buysLye: [
    unbroken`
      (?:(?:buy|get|find|order|source|cheap\w*|where)\b.{0,24}\b(?:lye|naoh|caustic(?: soda)?)|(?:lye|naoh|
      caustic(?: soda)?)\b.{0,16}\b(?:from|at|in) (?:the |a |my )?(?:hardware|diy|builders|supermarket|shop|
      store|chemist|farm|internet)|(?:compr\w+|consig\w+|consegu\w+|donde|barat\w+)\b.{0,24}\b(?:sosa|
      soda caustica|soda|hidroxido)|(?:sosa|soda(?: caustica)?|
      hidroxido)\b.{0,16}\b(?:de (?:la )?(?:ferreteria|drogueria|tienda|super\w*|chino)))
    `,
  ],
  onlyOf: ['(?:100|pure|all|only|just|nearly all|pur[oa]s?|sol[oa]|todo|casi todo|castile|castilla)'],
  fineEnough: [
    unbroken`
      (?:fine enough|how fine|too coarse|grind\w*|ground|sieve\w*|sift\w*|how much|how many|which|
      can i (?:put|add|use)|add|muel\w+|moler|molid\w+|tamiz\w+|colar|cuant[oa]s?|puedo|le pongo)
    `,
  ],
  which: ['(?:which|what|or|better|best|does it matter|can i|is it ok|sirve|cual|que|o|mejor|importa|puedo)'],
  whenOrHow: [
    '(?:when|how (?:soon|long|do|hard|deep)|too (?:soon|early|late)|cuando|cuanto|como|antes|pronto)',
  ],
  shaves: [
    unbroken`
      (?:shav\w+|plan(?:e|ed|ing)|bevel\w*|trim\w*|scrap(?:e|ed|ing)|peel\w*|steam\w*|cepill\w+|rasp(?:o|ar|
      arl\w+)|pel(?:o|ar|arl\w+)|rebaj\w+|bisel\w+|afeit\w+|vapor\w*)
    `,
  ],
  setsOrNot: [
    '(?:set|sets|setting|harden\\w*|firm|work|trace|gel|ok|make|making|cuaj\\w+|endurec\\w+|endurez\\w+|sale|hacer|hago|fragu\\w+|anda)',
  ],
  cures: [
    '(?:cur(?:e|es|ed|ing|ar|arlos?|arlas?|o|ado|ando)|dry\\w*|rack|sec(?:o|a|an|ar|arlos?|arlas?|ado|ando))',
  ],
  usesUp: [
    '(?:do with|use (?:up)?|uses for|make (?:of|with|from)|reuse|save|throw|bin|hac\\w+|hago|us\\w+|aprovech\\w+|sirven?|reutiliz\\w+|tir\\w+)',
  ],
  again: [
    unbroken`
      (?:repeat\w*|same (?:shade|colou?r|again)|match(?:ing)?|identical|consistent|every (?:time|batch)|
      two batches|next batch|repet\w+|mism[oa] (?:tono|color)|identic\w+|igual(?:es)?|cada (?:vez|lote)|
      dos (?:lotes|tandas))
    `,
  ],
  old: [
    unbroken`
      (?:old|expired?|out of date|years? (?:old|ago)|past (?:its|their) date|still (?:good|ok|usable)|
      go(?:es)? (?:off|bad)|use by|viej[oa]s?|vencid\w+|caduc\w+|hace anos|de hace|se vence\w*|
      pasad[oa]s? de fecha)
    `,
  ],
  natural: [
    unbroken`
      (?:(?:is|are)\b.{0,24}\bnatural|(?:es|son)\b.{0,24}\bnatural(?:es)?|natural or (?:synthetic|
      artificial|chemical)|quimic[oa]s?|synthetic|artificial\w*|sintetic\w+)
    `,
  ],
  howDo: ['(?:how|when|can|put|make|do|like|want|best|como|cuando|puedo|poner|hacer|hago|va|meter)'],
  howMuch: ['(?:how (?:much|big|many)|what is|whats|cuant[oa]s?|que es)'],
  falsely: ['(?:false\\w*|fals[oa]s?)'],
  asksWhat: [
    unbroken`
      (?:looks? like|what(?:s| is) (?:a |an |light |thin |medium |thick |heavy )*trace|how (?:do|will|
      can) (?:i|you|we) (?:know|tell|recogni[sz]e)|que es|como (?:es|se ve|se reconoce|se nota|luce))
    `,
  ],
  looksAlike: [
    '(?:look\\w*|end up|stay|darker|lighter|brighter|judge|queda\\w*|igual|mas (?:oscur[oa]|clar[oa])|se nota)',
  ],
  halves: [
    '(?:half|halve|less|reduce|cut (?:down|back)|lower|discount|menos|mitad|reduc\\w+|baj\\w+|descuento)',
  ],
  harder: ['(?:hard\\w*|quick\\w*|faster|sooner|firm\\w*|dur[oa]|antes|rapido|seque|endurez\\w+)'],
  weighs: [
    '(?:my|i have|ive got|got|have|mi|tengo|la tengo|esta|viene|convert\\w*|pas\\w+|weigh\\w*|use|only)',
  ],
  saves: [
    unbroken`
      (?:save|rescue|salvage|fix|use (?:it|them) (?:up|still)|do with (?:it|them)|bin (?:it|them)|
      throw (?:it|them)|salv\w+|rescat\w+|arregl\w+|aprovech\w+|tir(?:o|arlo|arlos|ar))
    `,
  ],
  tooStrong: [
    unbroken`
      (?:too much colou?r|(?:colou?red|black|gr[ae]y|blue|red|green) (?:lather|suds|foam|water)|
      lather (?:comes|is|goes|turns)|comes? off|stain\w*|demasiado color|me pase (?:con|de)|espuma (?:sale|
      queda|negra|gris|azul|roja|de color)|manch\w+|desti\w+)
    `,
  ],
  matters: [
    '(?:matter|difference|differen\\w+|change|ok|same|diferencia|importa|cambia|igual|sirve|distint\\w+)',
  ],
  otherUse: [
    '(?:for (?:anything|something) else|other (?:things?|uses?)|again|after(?:wards)?|back (?:in|to)|otra cosa|otras cosas|despues|de nuevo|volver a)',
  ],
  uses: ['(?:us\\w+|sirve\\w*|puedo|can i|go(?:es)? back|safe)'],
  keepsOn: ['(?:keep|use|still|just|instead|good for|guard\\w+|dej\\w+|us\\w+|sirve\\w*)'],
  needs: [
    '(?:need|have to|must|should|do i|put|on|open|hace falta|necesito|tengo que|prend\\w+|abr\\w+|hay que)',
  ],
  recurs: [
    '(?:keep (?:on )?getting|always|every (?:time|batch|single)|again and again|siempre|cada vez|sigue saliendo|me sale mucha)',
  ],
  yellowed: [
    unbroken`
      (?:(?:less|not so|not as|too|so|no|without) yellow(?:ish)?|yellow(?:ish)? (?:tinge|tint|cast|base)|
      menos amarill\w+|(?:tan|muy) amarill\w+|tono amarill\w+|amarillent\w+)
    `,
  ],
  goesHard: [
    '(?:went|gone|goes|turned|set|se (?:me )?(?:puso|hizo|quedo))(?: \\w+){0,3} (?:hard|solid|thick|stiff|dur[oa]|espes[oa]|ties[oa]|solid[oa])',
  ],
  fewDays: [
    unbroken`
      (?:after|for|its been|been|only|at|hace|van|ya|a los|despues de)?(?: \w+){0,2} ?(?:[1-7]|a|an|one|two|
      three|four|couple of|few|un|una|dos|tres|cuatro|unos) (?:days?|weeks?|dias?|semanas?)
    `,
  ],
  notSaid: [
    unbroken`
      (?:doesnt|does not|dont|didnt|not|no)(?: \w+)? (?:say|know|tell|dice|pone|trae|se cual|sabe)|no label|
      sin etiqueta|which (?:kind|one|sort) (?:it is|i have|is it)|cual (?:es|tengo)
    `,
  ],
} as const satisfies Record<string, readonly string[]>;
export type Aspect = keyof typeof ASPECTS;
