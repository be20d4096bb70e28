import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

/*
 * How whoever asks asks: who is to tell, when they can, what of it. Of the question, and of no oil.
 */
const LYE_OR_NUMBER = unbroken`
  (?:the |la |el |my |mi )?(?:(?:number|figure|amount|weight|cantidad|cuenta|peso|dato) (?:of|for|de|
  para) (?:the |la )?)?(?:${LYE}|soda|lye number|lye figure|lye amount)
`;
const ASKED_FOR: readonly RegExp[] = [
  // "Could someone work out the sodium hydroxide for", "me das la sosa de", "apúntame la sosa de".
  unbroken`
    (?:(?:can|could|would|will|please|pls|someone|somebody|anyone|anybody|you|ye|kindly|possibly|just|
    help me|be able to|me|nos|por favor|podrian?|puede[ns]?|alguien|quien|si|le|les) )*(?:work out|give me|compute|determine|derive|agradezco|
    agradeceria|agradeceriamos|necesito saber|quisiera saber|quiero saber|
    tell me|find|reckon|send me|get me|do me|do|check|figure|spare|lend me|pass me|hand me|have|da[sn]?|das|
    dais|dan|tiran?|tiras|pasan?|pasas|pasais|dices|decis|dicen|dime|dame|apuntame|apuntenme|anotame|sacame|
    sacan|sacas|calculas|calculan|mandame|mandan|echan|hechan|ayudan con|
    ayudas con) (?=${LYE_OR_NUMBER}(?!\p{L}))
  `,
  `(?:what(?:'s| would be| is| will be| should be)|cual (?:es|seria|sera)|cuanto (?:es|seria|sale)) (?=${LYE_OR_NUMBER}(?!\\p{L}))`,
  `(?:just|only|solo|nomas|solamente) (?=${LYE_OR_NUMBER}(?!\\p{L}))`,
  // "No hay apuro, cuando puedan:".
  unbroken`
    (?:when(?:ever)? (?:you|ye|anyone|someone|somebody|u) (?:can|could|has|have|get|gets)(?: (?:a|
    the) (?:minute|moment|chance|sec|second|mo|time))?|cuando (?:puedan?|puedas|podais|
    tengan?(?: un)? (?:rato|tiempo|momento)|tengas(?: un)? (?:rato|tiempo|momento)|
    alguien pueda))(?= ?[:;,]|$)
  `,
  // "Se me olvidó deciros que son gramos": what they are is told.
  unbroken`
    (?:(?:i )?(?:forgot|forget|should have said)(?: to (?:say|mention|tell you|add))?|
    (?:se me )?olvid[oe] (?:decir|poner|mencionar|aclarar)\p{L}*)(?: (?:that|que))?(?= (?:they['’]?re|
    they are|these are|it['’]?s|all|son|es|todo|van)(?: (?:all|todos?|in|en))* (?:grams?|gramos|ounces|
    onzas|oz|g)(?!\p{L}))
  `,
  // "And I'll do the water myself", "el agua ya la saco yo".
  unbroken`
    (?:and |y |but |pero )?(?:(?:the )?(?:water|agua)(?: (?:ya|i|we))* (?:la saco yo|la calculo yo|
    la pongo yo|(?:i )?(?:know|can (?:do|work out)|have))|(?:el|la) agua (?:ya )?(?:la )?(?:saco|calculo|se|
    tengo)(?: yo)?|i(?:'ll| will| can) (?:do|work out|sort) the water(?: (?:myself|out))?)(?= ?[;,.]|$)
  `,
].map(pattern => new RegExp(`(?<![\\p{L}\\d])(?:${pattern})`, 'gu'));

/** "Sorry, caps key stuck", "sorry for the caps": who excuses how it is written. */
const EXCUSE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:oh |ay |so )?(?:sorry|apologies|soz|perdon(?:en|ad)?|disculp\p{L}+|
    lo siento)),?(?: (?:for|about|por|if|que|the|las|los|la|el|my|mis|mi|all|tantas?))* ?(?:caps?|capitals?|
    shouting|keyboard|typing|typos?|spelling|phone|autocorrect|dictat\p{L}+|mayus\p{L}*|gritos|teclado|
    letra|ortografia|faltas|errores|dedazos|corrector|telefono|celular|movil|i am dictating|i'm dictating|
    estoy dictando)[^;\d]{0,60}(?= ?(?:;|$))
  `,
  'gu',
);
const OF_OIL =
  /(?<!\p{L})(?:oils?|fats?|aceites?|manteca\p{L}*|olive|oliva|coco\p{L}*|it|half|lye|sosa)(?!\p{L})/u;

/** A line whose question is told as plainly as the readers behind take it. Takes what `plainWords` gives with its clauses. Pure. */
export const askedPlainly = (plain: string): string =>
  ASKED_FOR.reduce((line, pattern) => line.replace(pattern, ' ; '), plain).replace(EXCUSE, whole =>
    OF_OIL.test(whole) ? whole : ' ; ',
  );
