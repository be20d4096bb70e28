import { unbroken } from '../../src/engine/over-lines.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { SOAP_WORDS } from '../../src/engine/questions/fields/soap-words.ts';
import { isOfNoAmount } from '../../src/engine/questions/lye/no-amount.ts';
import { isCurious } from '../../src/engine/questions/lye/topics/curious.ts';
import type { QuestionRead, Reading } from '../../src/engine/questions/read.ts';
import { foldedColour, isColourWord } from '../../src/engine/text/colours/folded-colours.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { behind, outsideReply, SURELY_ELSEWHERE } from './elsewhere.ts';
import { topicReply } from './lye/matter.ts';

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

/**
 * To a question near lye of which nothing is understood: what always holds. Undefined where a colour may be meant, or
 * something in it is known.
 */
export function unsureReply(question: string, read: QuestionRead, context: Context): Reply | undefined {
  const [reading] = read.readings;
  const { facts, outside } = read;
  const isNothing =
    outside === 'other' ||
    reading === undefined ||
    (outside === undefined &&
      (/^(?:dose|colourant check)$/u.test(reading.command) || isOfNoAmount(question, read)));
  if (isKnown(facts) || OF_COLOUR.test(question)) return undefined;
  // An amount for an amount is a dose: which colourant it is of is asked.
  if (reading?.job === 'dose' && facts.portion !== undefined && facts.powder !== undefined) return undefined;
  if (!isNothing || !NEAR_LYE.test(question)) return undefined;
  const unsure = unsureOf(question, context);
  if (outside !== 'other' || read.elsewhere < SURELY_ELSEWHERE) return unsure;
  // Lye in lessons, films or hair is another field; what always holds near lye stands behind that.
  return behind(unsure, outsideReply(read, context));
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
 * Of what is not understood: near lye or soap, or where somebody may come to harm, what always holds; out of interest one calm sentence; else
 * what is missing is asked back.
 */
export function unsureOf(question: string, context: Context): Reply {
  if (isCurious(question)) return topicReply('soap-at-large', context);
  const plain = unaccented(question);
  const isNearSoap = SOAP_WORDS.test(plain) && !CALM.test(plain);
  return NEAR_LYE.test(question) || MAY_HARM.test(plain) || isNearSoap
    ? topicReply('unsure', context)
    : askedBack(context);
}

/** Asks for what nobody can answer without. */
export const askedBack = ({ say: { ask } }: Context): Reply => ({
  kind: 'reply',
  headline: ask.tellMore,
  data: { understood: { command: 'ask', given: {}, askedBack: true } },
  blocks: [{ kind: 'text', text: ask.canDo }],
  cautions: [],
});

const isKnown = ({ named, target }: QuestionRead['facts']): boolean =>
  named.length > 0 || target !== undefined;

/** Whether something may be used is asked, and no flaw told. */
const PERMISSION =
  /^\W*(?:(?:can|could|may|should) i|(?:le |me )?puedo|se puede) (?:use|put|add|usar|poner|echar)/iu;

/** Causes of a flaw that nobody told. */
export const isBlindDiagnosis = ({ job }: Reading, question: string, { facts }: QuestionRead): boolean =>
  job === 'diagnose' &&
  (facts.findings === 0 || PERMISSION.test(question)) &&
  !isKnown(facts) &&
  !OF_COLOUR.test(question) &&
  !hasColours(question);

const SURE_DOUBT = 0.8;

/** What is near lye is hardly a doubt about an answer of ours, unless it is surely one. */
export const isHardlyDoubt = ({ job, score }: Reading, question: string): boolean =>
  job === 'doubt' && score < SURE_DOUBT && NEAR_LYE.test(question);

/** A colour it was and one it became are a flaw that is told. */
const hasColours = (question: string): boolean =>
  (question.match(/\p{L}+/gu) ?? []).some(word => isColourWord(foldedColour(word)));

const SURELY = 0.95;

/** A colour guessed from a leftover phrase, or asked back for where none was spoken of. */
export function isGuessedColour(
  { data }: Reply,
  { command, job, score }: Reading,
  asked: { readonly question: string; readonly read: QuestionRead },
): boolean {
  if (
    !/^(?:dose|colourant check)$/u.test(command) ||
    // What is surely asked of law or of wetting, away from lye, is told which name is not known.
    (/^(?:law|wet)$/u.test(job) && score >= SURELY && !NEAR_LYE.test(asked.question)) ||
    isKnown(asked.read.facts) ||
    OF_COLOUR.test(asked.question)
  )
    return false;
  const { problem, lacking } = data as { readonly problem?: unknown; readonly lacking?: unknown };
  return (
    problem === 'colourant-unknown' ||
    problem === 'colourant-ambiguous' ||
    (lacking !== undefined && asked.read.facts.portion === undefined)
  );
}
