import { unbroken } from '../../../../over-lines.ts';
import { DIALECT } from '../../../dialect.ts';
import { HARMLESS_BY_KIND, isRequest } from '../items/harmless-words.ts';

/** Dialect words that deny. */
const DENIES =
  /^(?:ate|nae|naw|noo|nuh|no|dinnae|cannae|didnae|isnae|wisnae|havenae|gonnae|gwaan|nah|nowt|hindi|wala|fur|fi|fe|waan|without)$/u;

/**
 * Words that say nothing of whether an oil beside which they stand is in the pot, all of it: what makers' plain recipes have there, in
 * the sets of other hands. Whatever else stands there is asked for, since what keeps an oil out of a pot has no end of words.
 */
const HARMLESS: ReadonlySet<string> = new Set(
  `i im i'm ive i've we we've you ye ya u me us my our your he she he's she's they who it it's its itself
  that that's this these those there there's here which what whats what's how
  am is are was were be been have has having hv ha ave got get had do does did doing can could will would want wanted need needs needed required
  like love   intend intends intended propose proposes compute computed pretendo propongo
  make makes making made mix mixing mixes mixed blended melt melted melting weigh weighs weighed weighing
  measured pour pouring poured put pop popping tip tipped chuck chucking dumped use using run running add
  adding added
  give gives gave tell check please kindly pls plz plss help calculate calculated saponify saponifying
  soaping work figure figures sums sum right correct ok okay safe fine good enough reckon find know see show
  say says said wrote told try trying start started
  so and then now today tonight also just only plain straight all both each whole total together in into on
  to at of from for with by as per because since ere about around roughly too very really quite much many a
  an the some
  but pero castile castilla always ever test obv obvs teh following typed someone somebody anyone alguien
  che oye checa siempre necesario puso saponifico enrancia rancid rancio i'd we'd cow cow's house card frito
  putting co-op jar po justo ponle wt amt
  first second-hand week's time morning afternoon evening day bank holiday sunday monday saturday sabado domingo lunes
  recipe recipes soap soaps soaping bar bars batch loaf mold mould molds block blocks slab pot pan pots
  slow-cooker bowl beaker beakers jug bucket tub scale scales bench oils mix blend composition fraction mass
  weight weights amount amounts percent quantity gram grams number numbers lye sodium caustic soda water
  superfat calculator spreadsheet pamphlet cookbook paper lst same usual style kind type
  butcher's butcher market farm farmers mkt store shop feed town village kitchen fair church sale school class cellar beach room
  virgin extra refined unrefined raw pure pomace light cheap fancy supermarket local cold pressed organic
  hard soft solid liquid clean white yellow golden nice lovely easy gentle quick little small big bigger
  plain basic simple straight normal regular standard fresh home rendered rendering strained filtered melted
  brisket kidney leaf clear frozen cubes dried lump lumps bit dozen eggs
  mi mis nuestro nuestra nuestros nuestras su sus tu yo nosotros ella ellos usted me te se le les lo la los
  las nos un una unos unas el al del de en con para pa por y que q como cual este esta esto estos eso ese
  esa aqui
  es son era eran sea seria estoy esta estan hay tengo tiene tenemos traigo trae llevo lleva llevan llevamos
  mezcle mezclamos hago hace hacer haciendo hacemos quiero quiere queremos quisiera necesito necesita ocupo
  voy vamos va van pongo pone ponemos puse pusimos puesto echo echa echado echamos echar poner uso usa
  usamos usar usando peso pesa pese pesado pesar pesamos mezclo mezcla mezclada mezclando derrito mido
  agrego anado meto metido vertido vierto hice
  sale salga saben sabe saber sabes dice dijo dicen digan dime dame den da dan diga calcula calculado
  calcular ayuda ayudan ayudar revisen revisenlo mire miren mira ver pase pasa pues porfa favor gracias
  cuanto cuanta cuantos cuantas cuentas
  receta recetas jabon jabones jaboncito jaboncitos barra barras pastilla pastillas tanda lote hornada molde
  olla cazo bol cubeta balde bascula balanza casa cocina taller
  gramos cantidad masa peso pesos total todo toda todos todas junto juntos cada puro pura solo solamente
  nomas mas tambien siempre hoy ahora ya aca asi ahorita mismo misma igual bien bueno buena buen virgen
  extra refinado refinada crudo cruda puros pura casero casera barato colado blanco blanca limpio limpia
  americana vieja viejo nueva nuevo normal comun cerquita molino finca feria mercado carnicero carniceria
  pueblo tienda navidad familia bebe boda colegio ropa rapido
  sera seran seria serian will'll pido pedimos pedia pide piden copio copiando copying copied anoto tonight's today's this'll
  deseo desea deseamos gustaria rogaria anyway anyways anyhow press myself meself mehself ourselves
  x s n r oh well hey hi hello dear love gente mismos mismas stuff ruego indiquen indique indicar corresponde corresponden corresponderia`.split(
    /\s+/u,
  ),
);

/** Who may be spoken to, and may have an oil where they are not: "thanks buddy" is no "my buddy has it". */
export const ADDRESSED =
  unbroken`
  buddy|mates?|pals?|lads?|lass(?:es|ies)?|folks?|guys|girls|ladies|gents|gang|crew|chums?|chaps?|peeps|
  team|y'all|yall|all|everyone|everybody|dears?|hun|hon|honey|love|luv|loves|lovely|lovelies|darling|
  sweetie|sweetheart|petal|duck|pet|flower|hen|boss|chief|bro|bruv|bruh|sis|sir|madam|ma'?am|miss|doc|
  teacher|friends?|cousins?|neighbou?rs?|soapers|makers|
` +
  unbroken`
    tios?|tias?|chic[oa]s|compas?|compadres?|comadres?|cuates?|wey|guey|man[oa]s?|manit[oa]s?|panas?|
    parcer[oa]s?|parce|mae|maje|cham[oa]s?|causa|pata|che|boludos?|nenas?|reinas?|corazon|lind[oa]s?|
    guap[oa]s?|maj[oa]s?|bella|cielo|vida|carino|amor|mij[oa]|mijit[oa]|hij[oa]|herman[oa]s?|jef[ea]|patron|
    patrona|don|dona|senor(?:as?|es|itas?)?|maestr[oa]s?|doctora?|profes?|profa|seno|companer[oa]s?|familia|
    banda|raza|tropa|gente|foro|grupo|vecin[oa]s?|jaboner[oa]s|colegas?|paisan[oa]s?|illo|quillo|killo|
    picha|miarma|nin[oa]s?|tod[oa]s|amig[oa]s?
  `;
const IS_ADDRESSED = new RegExp(`^(?:${ADDRESSED})$`, 'u');

/** Whether a word that stands with an oil leaves it in the pot. Lower case without accents. */
export const isHarmlessBesideOil = (word: string): boolean =>
  HARMLESS.has(word) ||
  /^\p{L}{3,}-ish$/u.test(word) ||
  HARMLESS_BY_KIND.has(word) ||
  isRequest(word) ||
  (DIALECT.has(word) && !DENIES.test(word) && !IS_ADDRESSED.test(word));

/** What is not in the pot, or not yet, whichever clause of a sentence says so. */
export const OUT = unbroken`
  no (?:me |nos )?(?:llego|llegaron|vino|vinieron|alcanzo|aparecio|trajo|trajeron)|never (?:came|arrived|
  turned up|showed)|(?:did ?n.?t|did not|has ?n.?t|had ?n.?t) (?:come|came|arrived?|show(?:n|ed)? up|
  turn(?:ed)? up)|none|unused|untouched|unopened|borrow\p{L}*|lent|lend\p{L}*|return\p{L}*|gave (?:it|them|
  some|that) \p{L}+|(?:gave|given?|giving) (?:\p{L}+ ){0,2}away|sold(?! (?:me|us))|donat\p{L}+|vend(?:i|
  imos|io|ido)|(?:regale|regalamos|done|donamos|comimos)|back|plann\p{L}*|thinking|undecided|wondering|
  might|maybe|perhaps|probably|if|unless|until|till|later|afterwards?|after|before|when|once|instead|
  tomorrow|yesterday|cupboard|pantry|larder|fridge|freezer|shelf|drawer|pendiente|pens\p{L}+|tal vez|
  quizas?|a lo mejor|acaso|prest\p{L}+|devolv\p{L}+|devuel\p{L}+|guard\p{L}+|apart\p{L}+|reserv\p{L}+|
  despues|luego|cuando|antes|todavia|aun|ningun\p{L}*|sin usar|sin abrir|ayer|anteayer|alacena|despensa|
  nevera|refri\p{L}*|estante|cajon|armario|separad\p{L}+|aside|separate\p{L}*|kept|keep\p{L}*|sav(?:e|ed|
  ing)|spare|stash\p{L}*|still|yet
`;
const NOT_IN_YET = new RegExp(`(?<!\\p{L})(?:${OUT})(?!\\p{L})`, 'u');
/** These hold such a word and tell nothing of an oil. */
export const NO_ABSENCE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:keep|use|leave) (?:the|it at the) same (?:@|amount of @|#)|(?:(?<=y )|
    (?<=^ *))si (?=(?:# ){1,3}(?:(?:le|les|lo) )?(?:pongo|uso|echo|meto))|to use (?:it |
    them )?up(?: before (?:it|they) (?:turns?|goes? off|expires?|spoils?))?|(?:it'?s|it|is|bar|
    soap)(?: (?:is|bar|soap))? (?:still )?(?:zapp\p{L}+|zaps?|stings?|tingl\p{L}+|
    harsh)(?: still)?(?: after)?|(?:copying|copied|reading|read|written|pinned|stuck|taped|copio|copiado|
    apuntado|leo|pegado)(?: (?:this|it|lo|esto))? (?:off|from|on|to|de|en|del) (?:the |my |la |el |
    mi )?(?:fridge|freezer|cupboard|pantry|shelf|nevera|alacena|despensa|armario|refri\p{L}*)(?: door)?|
    (?:that'?s |es )?(?:all (?:that'?s|there is|i have|i've got|we have)|
    (?:todo )?lo (?:unico )?que (?:hay|tengo|tenemos|queda)) (?:in|en) (?:the|my|la|el|mi) \p{L}+|
    (?:tell me|know|see|check|sure|saber|dime|digan?|ver) (?:if|si)|(?:it'?s|is|bar is|
    soap is) still (?:soft|wet|sticky|tacky|oily|greasy|squishy|mushy)(?: after)?|(?:sigue|esta|todavia|
    aun)(?: (?:todavia|aun|esta|sigue|muy))* (?:bland[oa]|pegajos[oa]|aceitos[oa]|grasos[oa]|
    moj[oa]d[oa])(?: despues)?(?: de)?|before i (?:mix|pour|start|begin|do|go|melt)(?: (?:it|this|
    anything))?|before i (?:tip|chuck|bung|add|put|stir|throw|use) (?:it|this|@)(?: in)?|
    antes de (?:echarl[ao]|tirarl[ao]|usarl[ao]|ponerl[ao])|antes de (?:mezclar|empezar|echar(?:la)?|
    (?:la )?@)|before (?:the )?@|after (?:rendering|straining|melting)|(?:he|she|they) gave (?:it|
    them) to (?:me|us)|if (?:it's|its|it is|(?:my )?(?:recipe|oils?|#) (?:is|are|r)|my #(?= #))|(?:me|
    nos) (?:prestaron|presto) (?:una|esta|la) receta|(?:same|igual|como) (?:as |que )?(?:the |my |el |la |
    lo )?(?:de )?(?:last|usual|always|before|siempre|anterior|ever|mayo|ayer)(?: (?:time|week|month|one|
    batch|vez))?(?:'s)?|but (?:last|this) time)(?!\p{L})
  `,
  'gu',
);

/** Harmless words that together tell of an oil which is yet to come, is another's, or is to be sold; `#` stands for what was read. */
const NOT_HERE = new RegExp(
  [
    unbroken`
      (?:to|will|'ll|ll|must|should|could|can|gonna|wanna|gotta) (?:get|have|find|buy|order|want|
      need)(?! (?:a|an|the|it|this|that|my|some|to|for|#|@)(?!\p{L}))
    `,
    "(?:to|will|'ll|must|gonna|gotta) get (?:at|from|in|on|some|it|that|the rest)",
    "# (?:that |which )?(?:i|we)(?:'d| would| do| still| really)? (?:want|need|like|love)(?: (?:to get|still|too|also|more))?(?= *$)",
    '(?:for|on) sale',
    '(?:me|nos|le|les) (?:trae|traen|traera|traeran|consigue|consiguen|va a traer|van a traer)',
    '# que (?:quiero|necesito|queremos|ocupo|necesitamos|ocupamos|kiero|nesesito)(?: (?:todavia|tambien|mas))?(?= *$)',
    '(?:is|are|es|son) (?:needed|wanted|required)(?= *$)',
  ]
    .map(pattern => `(?<![\\p{L}'])${pattern}`)
    .join('|'),
  'u',
);
/** What an oil is sold and kept in, weighed with it: nobody knows how much of the weight is oil. A bowl or a pot is weighed empty first. */
const WITH_ITS_JAR = new RegExp(
  unbroken`
    (?<!\p{L})(?:weigh\p{L}*(?: (?:it|in|inside|still))*(?: (?:its|the|their|own))+ (?:jars?|tubs?|bottles?|
    tins?|cartons?|box|bags?|packets?|packaging|wrapp\p{L}+|containers?)|pes\p{L}+(?: (?:en|dentro|de))+
    (?: (?:el|la|su|sus|los)) (?:tarros?|frascos?|botellas?|latas?|envases?|bolsas?|cajas?|
    garrafas?))(?!\p{L})
  `,
  'u',
);
/** The words by which a sentence says that something is not in the pot, or not all that was weighed; undefined where none are. Takes what was said of it. */
export const absenceIn = (sentence: string): string | undefined => {
  const said = sentence.replace(NO_ABSENCE, '#');
  return (NOT_IN_YET.exec(said) ?? NOT_HERE.exec(said) ?? WITH_ITS_JAR.exec(said))?.[0].replace(/^# /u, '');
};
