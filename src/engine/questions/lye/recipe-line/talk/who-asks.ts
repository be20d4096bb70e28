import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { TURNS } from '../../amounts/chat-words.ts';
import { isLostWord } from '../items/words-beside.ts';
import { withoutNamesakes } from './namesakes.ts';

/*
 * Who asks, of which nothing goes into a pot: a name, a home, a trade, a language that is not one's own (general knowledge of both languages, no source).
 */

const GREETS = unbroken`
  (?:(?:hola|buenas|buenos dias|buenas (?:tardes|noches)|hi|hello|hey|good (?:morning|evening|afternoon)|
  morning|evening)[ ,]*(?:todos|todas|all|everyone|there)? ?)*
`;
const WORD = "[\\p{L}'’-]+";
/** "Soy Maricruz, nueva aquí", "I am from Poland", "my name is Ann": to be of a place or a trade, never to be out of something. */
const INTRODUCES = new RegExp(
  unbroken`
    (?<=^|; ?|, ?)(?<greets>${GREETS}[,;]? ?)(?:(?:y )?(?:soy|somos|me llamo|mi nombre es)|(?:and )?(?:i am|
    i['’]?m|we are|we['’]?re)(?= (?:from|an?|new|called) )|
    my name(?: i|['’])?s) (?<who>${WORD}(?: ${WORD}){0,5})(?<here>[,;] ?(?:nuev[oa]s?|principiante|novat[oa]|
    new|a beginner)(?: (?:aqui|por aqui|en esto|here|to this|at this))?)?(?= ?(?:[;,:]|$))
  `,
  'gu',
);
/** "Sorry for my English", "perdón por la ortografía". */
const EXCUSES = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:and |y )?(?:sorry|apologies|forgive me|excuse me|excuse|perdon\p{L}*|
    disculp\p{L}+)(?: (?:for|about|por))? (?:my |the |this |any |mi |la |el |las |los )?
    (?:(?:bad|poor|broken|mal|long|dumb|silly|tont[oa]) )?(?:english|spanish|spelling|typos|typing|grammar|
    question|message|bother|trouble|ingles|espanol|castellano|ortografia|
    faltas|molestias?|pregunta|mensaje|letra))(?!\p{L})(?: (?:tonta|largo|larga))?
  `,
  'gu',
);
/** "Me podrían decir", "could you tell me": who asks politely. */
const ASKS_KINDLY = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:alguien |quien )?(?:me|nos) (?:podria[sn]?|puede[sn]?|pueden|pudiera[sn]?|sabria[sn]?|
    haria[sn]? el favor de) (?:decir|ayudar(?: con)?|calcular|sacar|indicar|pasar|dar)|
    (?:alguien |quien )(?:podria|puede|sabria) (?:decirme|ayudarme(?: con)?|calcularme|sacarme|pasarme)|
    (?:could|can|would|will) (?:you|anyone|anybody|someone|somebody|one of you) (?:please |kindly )?(?:tell me|
    help me(?: with)?|give me|let me know|work out(?: for me)?))(?!\p{L})
  `,
  'gu',
);
/** Spoken into a phone while one thinks. */
const FILLERS = /(?<!\p{L})(?:um+|uh+|erm+|hm+)(?!\p{L}),?/gu;

const wordsOf = (text: string): readonly string[] => text.split(/[^\p{L}]+/u).filter(word => word !== '');
/** Names and trades hold no oil, and nothing that turns a recipe or is lost of it. */
const isWho = (who: string): boolean =>
  wordsOf(who).every(
    word => !TURNS.has(word) && !isLostWord(word) && (word.length < 3 || knownOil(word) === undefined),
  );

/** A line without whoever asks introducing or excusing themselves. Takes what `plainWords` gives. Pure. */
export const withoutWhoAsks = (plain: string): string =>
  withoutNamesakes(plain)
    .replace(EXCUSES, ' ; ')
    .replace(INTRODUCES, (whole, ...rest) => (isWho((rest.at(-1) as { who: string }).who) ? ' ; ' : whole))
    .replace(FILLERS, ' ')
    .replace(ASKS_KINDLY, ' ');
