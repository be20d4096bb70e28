import { unbroken } from '../../over-lines.ts';
import { colourWordIn } from '../../text/colours/colour-words-in.ts';
import { unaccented } from '../../text/unaccented.ts';
import { isOfNoAmount } from '../lye/no-amount.ts';
import { isCurious } from '../lye/topics/curious.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';
import type { QuestionRead, Reading } from '../read.ts';
import { SOAP_WORDS } from './soap-words.ts';

/* Of what a question speaks of which nothing, or hardly anything, was understood: whether what always holds near lye has to be said. */

const NEAR_LYE =
  /\b(?:lye|naoh|koh|caustic soda|sodium hydroxide|sosa|soda c[aá]ustica|raw soap|(?:soap )?batter|jab[oó]n crudo|masa de jab[oó]n)\b/iu;
/** What lye does to a colour is asked of by these. */
const OF_COLOUR = new RegExp(
  unbroken`
    \b(?:surviv\w*|hold\w*|stay\w*|fade\w*|bleed\w*|stable|mica|pigment\w*|oxide|clays?|arcillas?|dye|lake|
    colou?r\w*|swirl\w*|aguant\w*|resist\w*|destiñ\w*|tono|tinte|colorante\w*)\b
  `,
  'iu',
);

const isKnown = ({ named, target }: QuestionRead['facts']): boolean =>
  named.length > 0 || target !== undefined;

/** Whether a question near lye is one of which nothing is understood: no colour may be meant in it, and nothing in it is known. Pure. */
export function isUnsureNearLye(question: string, read: QuestionRead): boolean {
  const [reading] = read.readings;
  const { facts, outside } = read;
  const isNothing =
    outside === 'other' ||
    reading === undefined ||
    (outside === undefined &&
      (/^(?:dose|colourant check)$/u.test(reading.command) || isOfNoAmount(question, read)));
  if (isKnown(facts) || OF_COLOUR.test(question)) return false;
  // An amount for an amount is a dose: which colourant it is of is asked.
  if (reading?.job === 'dose' && facts.portion !== undefined && facts.powder !== undefined) return false;
  return isNothing && NEAR_LYE.test(question);
}

/** What is asked of soap that is made, kept, given or spoken of; with no word of lye beside it there is nothing to be careful of. */
const CALM = new RegExp(
  unbroken`
    \b(?:cure|cures|curing|cured|curado|curando|se cura|ideas?|gifts?|presents?|regal\w+|history|historia|
    scents?|creamiest|hair|difference|liners?|paper|papel|racks?|pack(?:age|aging)\w*|store|shelf life|
    boxe?s?|caja|dura|caro|cheap\w*|price|precio|significa|mean(?:s|ing)?|navidad|christmas|marsella|
    opinion|creamy|lather|espuma|labels?|etiquetas?)\b
  `,
  'iu',
);
/** Of making, of harm, and of those who may come to it. */
const MAY_HARM = new RegExp(
  unbroken`
    \b(?:raw|fresh\w*|uncured|new|zap\w*|burn\w*|sting\w*|itch\w*|rash\w*|hurt\w*|hot|heat\w*|smok\w*|
    foam\w*|fumes?|gas|eat\w*|ate|drink\w*|drank|swallow\w*|taste\w*|lick\w*|eyes?|skin|wounds?|kids?|
    child(?:ren)?|baby|babies|toddlers?|pets?|dogs?|cats?|allerg\w*|safe\w*|danger\w*|toxic|poison\w*|
    harm\w*|caustic|acid\w*|vinegar|bleach|alumini?um|oven|microwave|stove|crud[oa]s?|fresc[oa]s?|
    nuev[oa]s?|quem\w*|pic[ao]\w*|arde\w*|escuec\w*|irrit\w*|caliente\w*|humo\w*|com[eo]r?|beb[eo]\w*|
    trag\w*|lam[ei]\w*|prob\w+|ojos?|piel|heridas?|ninos?|ninas?|hij[oa]s?|bebes?|mascotas?|perr[oa]s?|
    gat[oa]s?|alerg\w*|segur[oa]\w*|peligr\w*|toxic\w*|venen\w*|acid[oa]s?|vinagre|lejia|aluminio|horno|
    microondas|estufa)\b
  `,
  'iu',
);

/**
 * What is said of a question that was not understood: near lye or soap, or where somebody may come to harm, what always holds; out of interest
 * one calm sentence; undefined where what is missing is asked back. Pure.
 */
export function heldWhateverIsMeant(question: string): LyeTopic | undefined {
  if (isCurious(question)) return 'soap-at-large';
  const plain = unaccented(question);
  const isNearSoap = SOAP_WORDS.test(plain) && !CALM.test(plain);
  return NEAR_LYE.test(question) || MAY_HARM.test(plain) || isNearSoap ? 'unsure' : undefined;
}

/** Whether something may be used is asked, and no flaw told. */
const PERMISSION =
  /^\W*(?:(?:can|could|may|should) i|(?:le |me )?puedo|se puede) (?:use|put|add|usar|poner|echar)/iu;

/** Whether causes would be told of a flaw that nobody told: a colour it was and one it became are one that is told. Pure. */
export const isBlindDiagnosis = ({ job }: Reading, question: string, { facts }: QuestionRead): boolean =>
  job === 'diagnose' &&
  (facts.findings === 0 || PERMISSION.test(question)) &&
  !isKnown(facts) &&
  !OF_COLOUR.test(question) &&
  colourWordIn(question) === undefined;

const SURE_DOUBT = 0.8;

/** What is near lye is hardly a doubt about an answer of ours, unless it is surely one. Pure. */
export const isHardlyDoubt = ({ job, score }: Reading, question: string): boolean =>
  job === 'doubt' && score < SURE_DOUBT && NEAR_LYE.test(question);

const SURELY = 0.95;

/**
 * Whether the colour that a reading is of may be a leftover phrase, or one that was never spoken of. What is surely asked of law or of wetting,
 * away from lye, is none: it is told which name is not known. Pure.
 */
export function mayBeGuessed(
  { command, job, score }: Reading,
  question: string,
  { facts }: QuestionRead,
): boolean {
  if (!/^(?:dose|colourant check)$/u.test(command) || isKnown(facts) || OF_COLOUR.test(question))
    return false;
  return !(/^(?:law|wet)$/u.test(job) && score >= SURELY && !NEAR_LYE.test(question));
}
