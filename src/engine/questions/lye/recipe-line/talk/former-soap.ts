import { unbroken } from '../../../../over-lines.ts';

/** Another soap than the one that is asked about, which was made before. */
const FORMER = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the |my )?(?:first|last|previous|other) (?:one|batch|time|soap|loaf|bar|go)|yesterday|
    last (?:week|month|year|night|time)|(?:la|el|mi) (?:primer[oa]?|ultim[oa]|otr[oa]|anterior)(?: (?:vez|
    tanda|jabon|lote))?(?: que)?|ayer|(?:la semana|el mes) pasad[oa])(?!\p{L})
  `,
  'u',
);
/** Opens what is made now. */
const NOW =
  /^[\s,]*(?:(?:so|but|and|y|pero|bueno) )?(?:this (?:one|time)|now|today|ahora|hoy|est[ae] (?:vez|es|lleva|tanda|jabon)|para est[ae])(?!\p{L})/u;
/** What is as it was then is told by that soap. */
const AS_THEN =
  /(?<!\p{L})(?:same|again|too|also|like|as|except|but with|igual|mism[oa]s?|otra vez|tambien|como|salvo|menos|sin|without|not|no|left)(?!\p{L})/u;

/**
 * A line of `plainWords` without a sentence at its head that tells of a soap made before, with no weight, where the next one opens what
 * is made now: "the first one was all olive. This one: 550 g tallow". Whatever compares the two leaves both. Pure.
 */
export function withoutFormerSoap(plain: string): string {
  const sentences = plain.split(';');
  const at = sentences.findIndex(sentence => NOW.test(sentence) && /\d/u.test(sentence));
  const before = sentences.slice(0, Math.max(at, 0));
  const isTold = before.some(sentence => FORMER.test(sentence));
  const compares =
    before.some(sentence => /\d/u.test(sentence)) ||
    sentences.some(one => AS_THEN.test(one.replace(NEVER_MIND, '')));
  return at > 0 && isTold && !compares ? sentences.slice(at).join(';').trim() : plain;
}
/** "Never mind that one". */
const NEVER_MIND =
  /(?<!\p{L})(?:never mind|forget|ignore|olvid[ae]\p{L}*) (?:that|about that|es[oa])(?: one)?(?!\p{L})/gu;
