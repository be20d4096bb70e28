import { unbroken } from '../../../../over-lines.ts';
import { ADDRESSED, OUT } from './beside-oils.ts';

/** Who may have an oil of their own, or a recipe; a pattern. */
export const PERSON = unbroken`
  (?:sister|brother|mother|mum|mom|mam|mama|dad|nan|nana|gran|granny|grandma|grandmother|grandson|nephew|
  aunt|auntie|cousin|friend|mate|neighbou?r|teacher|husband|wife|hubby|daughter|son|baby|partner|butcher|
  farmer|someone|somebody|abuel[oa]|herman[oa]|madre|padre|tia|tio|prim[oa]|amig[oa]|vecin[oa]|maestra|
  profe|suegr[oa]|comadre|compadre|marido|mujer|cunad[oa]|hij[oa]|senora|carnicero|alguien|nietos?|bebe|
  buddy|pal|classmate|workmate|colleague|coworker|flatmate|housemate|roommate|girlfriend|boyfriend|niece|
  stepmum|godmother|novi[oa]|pareja|sobrin[oa]|yerno|nuera|padrin[oa]|madrina|companer[oa]|colega|
  veterinari[oa]|vet|baker|panader[oa]|shepherd|beekeeper|apicultora?|cuate|compa|comai|comay)s?
`;
const ARTICLE = '(?:(?:the|my|our|an?|her|his|some|las?|los|el|mis?|una?|nuestr[oa]s?|tu|su)(?: own)?)';
/** Of these no phrase is harmless. */
const NOT_IT = unbroken`
  (?:last|another|other|next|previous|earlier|yesterday|tomorrow|old|hair|lips?|balm|candles?|cooking|
  frying|pastry|lotion|cream|dinner|later|ayer|manana|otr[oa]s?|proxim[oa]s?|siguiente|pasad[oa]|mes|pelo|
  labios|crema|velas?|freir|cocinar|comer|comida|cena|despues)
`;
const NOUN = `(?!(?:${NOT_IT}|${OUT})(?!\\p{L}))[\\p{L}'’]+`;

/** Whole phrases that change nothing: where an oil comes from, who gave it, who or what the soap is for. */
export const HARMLESS_PHRASES: readonly RegExp[] = [
  // A group that makes it, and who wants to know.
  unbroken`
    (?:our|my|the|nuestr[oa]|mi|el|la) (?:[\p{L}]+(?:['’]s|s['’])? )?(?:group|club|team|class|choir|guild|co-?op|workshop|grupo|taller|clase|equipo|
    coro|cooperativa|asociacion)(?: (?:is|are|esta|estan|va|van|vamos))?(?: a)? (?:using|making|doing|uses?|makes?|usa|usan|hace|hacen|usando|
    haciendo|usar|hacer)
  `,
  `(?<=^ *)(?:${ARTICLE} )?${PERSON} (?:wants?|needs?|asks?(?: for)?|asked(?: for)?|quiere|necesita|pide|quisiera)(?= (?:#|the |el |la )?@)`,
  // Where whoever gave or sold it is.
  unbroken`
    (?:next door|down the (?:road|lane|street)|up the (?:road|lane|hill)|across the (?:road|street|way)|
    round the corner|over the road|de al lado|de enfrente|de la esquina|de la vuelta|de abajo|de arriba)
  `,
  // What is to be made of what is weighed.
  unbroken`
    (?:yo |ya )?(?:hare|haremos) (?:un |unos |mi |el )?jabon(?:es)?(?! (?:despues|luego|manana|otr[oa]|con
    lo|aparte)(?!\p{L}))
  `,
  // How it will feel, and why a weight was put right.
  unbroken`
    (?:o |or |y |and )?(?:(?:no )?(?:me |nos |le |te )(?:va|ira) a (?:raspar|resecar|secar|irritar)|(?:will|
    would) (?:it|this|that) (?:scratch|dry out|irritate)(?: (?:me|us|my skin|my hands))?)(?: (?:la|las|
    el) (?:piel|manos|cara))?
  `,
  unbroken`
    (?:que |porque |because |as )?(?:lei mal|i misread|misread|i read)(?: (?:la|el|the|it))?(?: (?:bascula|
    balanza|receta|papel|numero|scales?|note|card))?(?: wrong)?
  `,
  // What it cost, what it stands for, and who looks once more.
  unbroken`
    (?:gives?|gave|sells?|lets?) (?:it |them )?(?:to )?(?:me|us|it me) (?:(?:have|has) (?:it|
    them) )?(?:for )?(?:free|nothing|cheap)|going free|for free|(?:haz|hace|hagan?|
    digamos) (?:de )?cuenta(?: que)?|(?:is|are|es|son) (?:the |el |la )?(?:single|original|simple)(?= *$)|
    (?:goes?|going|va|van) in(?= *(?:#|$))|tal (?:como|cual) figura|repartid[oa]s (?:asi|en)|
    (?:the )?(?:full|whole)(?: (?:one|recipe|batch))? (?:is|was)|(?:porque|que|because it|
    that) (?:me )?(?:sobro|sobraba|was spare|is spare)|going spare|let me (?:go |just )*(?:look|check|see)|
    dejame ver|(?:can|could) (?:i|we) (?:use|put|take|swap|have)|(?:puedo|podria|podemos|se puede) (?:poner|
    usar|echar|meter|cambiar)(?:le|lo)?|(?:por vencer(?:se)?|to use (?:it |them )?up)(?: before (?:it|
    they) (?:turns?|goes? off|expires?|spoils?))?|(?:hacer|hago|preparar|preparo) otr[oa](?= ?:)
  `,
  // What soap it is.
  '(?:an?|my|the|this|that|nice|posh|lovely|soft|hard|gentle|plain|simple|basic|new|big|little|fancy) one(?! (?:day|time|of)(?!\\p{L}))',
  // What is asked or meant to be done.
  unbroken`
    (?:tell me|know|see|check|sure|ask|asking|wondering|wonder|saber|dime|digan?|ver|sabe[ns]?|sabeis|
    dices?|pregunto) (?:if|si)|(?:going|want|wanted|hoping|trying|thinking|planning|fixing|looking|about|
    like|love|need) to (?:make|do|use|try|mix|soap|start|pour|go with)|thinking (?:of|about) (?:making|
    doing|something|a)|(?:voy|vamos|quiero|queremos|pienso|quisiera|intento|me gustaria|
    a punto de) (?:a )?(?:hacer|usar|probar|preparar|intentar|jabonear|empezar)|i'?m (?:going|doing|making|
    putting)
  `,
  // Batter that is under way.
  unbroken`
    (?:it'?s |its |ya )?(?:already )?(?:setting up|thickening|seizing|tracing|getting thick|melting|melted|
    cooling|espesando|derritiendose|derretid[oa]s?|cuajando)(?: (?:already|up|now|fast|ya))?|
    i'?m (?:panicking|nervous|worried|scared|stuck|lost|new|confused)|(?:came|comes|taken|copied|
    found) (?:out of|from|in|off) (?:an?|the|my|this) (?:\p{L}+ )?(?:book|cookbook|magazine|paper|card|
    website|page|forum|group|class|course)|(?:sacad[oa]|copiad[oa]|viene) de (?:un|una|la|el|mi) (?:libro|
    revista|pagina|curso|grupo|cuaderno)
  `,
  unbroken`
    (?:left (?:over )?)?(?:from|off|by) (?:${ARTICLE} )?(?:\p{L}+'s (?=(?!(?:${NOT_IT}|
    ${OUT})(?!\p{L}))))?${NOUN}(?: (?:in|at|of|on|down) (?:the |my )?${NOUN})?
  `,
  `(?:del|de (?:la|las|los|mis?|nuestr[oa]))(?: ${NOUN})?`,
  unbroken`
    (?:${ARTICLE} )?${PERSON}(?:,? (?:ha|has))? (?:gave|sent|brought|rendered|rend\p{L}+|made|dado|dio|
    dieron|regalo|regalaron|regala|regalan|trajo|traen|mando|manda|saca|sacan)(?: (?:me|us|to me))?
  `,
  // Who is spoken to, at either end of a clause.
  `^(?:${ADDRESSED})(?= )|(?<!(?<!\\p{L})(?:of|for|from|by|with|to|de|del|con|para|pa|que|por|y|and|${ARTICLE}) )(?:${ADDRESSED})(?= *$)`,
  `(?:como|asi) (?:lo |le )?(?:hacia|hace) (?:mi|la|el) ${PERSON}`,
  `(?:dice|dicen) (?:mi|la|el|mis) ${PERSON}(?: que| q)?`,
  `^(?:hermano|compa|vecin[oa]|amig[oa]s?|comadre|profe|buenas (?:tardes|noches)|buenos dias)(?= )`,
  unbroken`
    (?:${ARTICLE} )?${PERSON}(?: (?:de|from|at|of|in) (?:la |el |the |mi |my )?${NOUN})?(?:,? (?:que|
    q))? (?:me|nos) (?:ha |han )?(?:dado|dio|dieron|regalo|trajo|mando)
  `,
  unbroken`
    (?:${ARTICLE} )?${PERSON} (?:wrote|writes|says|said|reckons|swears|insists|claims|dice|dijo|dicen|
    escribio|sostiene|insiste|asegura|afirma)(?: (?:me|that|que|q))?
  `,
  `(?:que )?(?:me|nos) (?:dio|dieron|ha dado|han dado|regalo|regalaron|regala|regalan|trajo|trajeron|mando)(?: (?:mi|la|el|una?) ${PERSON})?`,
  `(?:that |which )?(?:my|the|a) ${PERSON} (?:sold|sells) (?:me|us)`,
  '(?:was|were) (?:given|gifted)',
  "(?:(?:all )?on |of )?(?:my|our|its|it's|his|her|their) own|(?:all )?by itself|propi[oa]s?",
  unbroken`
    (?:for|para|pa) (?:${ARTICLE} )?(?:[\p{L}'’]+ )?(?:soaps?|bars?|batch|loaf|mou?ld|skin|hands?|feet|face|
    laundry|clothes|dishes|dish|kitchen|wash\p{L}*|clean\p{L}*|shav\p{L}*|market|sale|fair|school|wedding|
    favou?rs|party|christmas|gifts?|presents?|church|beginners?|kids?|children|jabon(?:es)?|jaboncitos?|
    barras?|molde|piel|manos|pies|cara|ropa|platos|lavar|limpiar|cocina|feria|mercado|boda|colegio|navidad|
    regalos?|regalar|tanda|lote|receta|azahar)(?: (?:sale|fair|favou?rs|stall))?
  `,
  `(?:for|para|pa) (?:${ARTICLE} )?(?:${PERSON}|dog|perro)(?: in law)?`,
  `(?:my |our |mi |the )?${PERSON}(?:'s)? (?:bit of paper|recipe|card|book|list|soap)`,
  unbroken`
    (?:rendered|rendering|wrote|written|melted) down|nada mas|nothing (?:else|more)|in the house|
    por (?:error|accidente)|sin querer|this (?:week|time|month)|(?:the )?other (?:bits|things|stuff|
    bits and bobs)?(?: (?:is|are))?(?= ?#|oils?|fats?|aceites?)|(?:subo|subi|bajo|baje|subimos|bajamos|paso|
    pase) (?:el |la )?# a (?=#)|(?:up|down|raising|lowering|raised|lowered|put|bumped|
    bumping) (?:the )?# (?:up |down )?to (?=#)|(?:queda|sigue|quedan|siguen|stays|stay) (?:en|at|igual|
    in)(?= ?(?:#|$))|(?:against|over) (?=#)|(?:stays|nada|queda)(?= *$)|(?:sabe|saben|digan|dime|mira|
    checa) si|used # (?:of )?@
  `,
  `(?:a|my|our|the|una?|mi|la) ${PERSON}(?:'s)?(?: in law)?(?= (?:recipe|soap|wedding|says|dice|me|receta))`,
].map(pattern => new RegExp(`(?<![\\p{L}'’])(?:${pattern})(?![\\p{L}'’])`, 'gu'));
