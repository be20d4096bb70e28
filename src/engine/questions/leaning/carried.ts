import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/* Turns that are whole sentences and leave out only what they are about. */

const ASKS = new RegExp(
  unbroken`
    [?¿]|^\W*(?:(?:and|y|e|but|pero|ok|so|then|right|also|entonces|oye|che|uy|ah|oh) )*(?:how|what|why|
    which|when|where|who|whats|can|could|do|does|did|is|are|will|wont|would|should|shall|must|have i|como|
    que|cual\p{L}*|cuant\p{L}*|cuando|donde|por ?que|puedo|puede\p{L}*|se puede|sirve\p{L}*|
    conviene)(?!\p{L})|(?<!\p{L})(?:how do i|do i|can i|should i|is it|is that|will it|la tiro|lo tiro|
    los tiro|se puede|puedo)(?!\p{L})
  `,
  'iu',
);

/** Whether a turn asks, and does not only tell what happened. Pure. */
export const isAsked = (turn: string): boolean => ASKS.test(unaccented(turn));

const ANOTHER = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:my |the |an?)?other (?:batch|loaf|soap|one|bar)s?|another (?:batch|loaf|soap|one|bar|
    question|thing)|new (?:batch|question|topic)|different (?:batch|question|thing)|otr[oa] (?:lote|tanda|
    jabon|pan|cosa|pregunta|tema|consulta)|cambiando de tema|by the way|btw|por cierto)(?!\p{L})
  `,
  'iu',
);
/** Whether a turn says that it is of something else than the one before. Pure. */
export const turnsToAnother = (turn: string): boolean => ANOTHER.test(unaccented(turn));

const PRONOUN = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:of |about |for |with )?(?:it|them|these|those)|(?:this|that)(?! (?:way|much|many|long|
    time|is|was|the|\p{L}+ (?:jug|water|pot|mould|bar|soap)))|they)(?!\p{L})
  `,
  'iu',
);
/** "It is", "it's": what stands in its place is said with the verb. */
const IS = /(?<!\p{L})(?:it|that|they)['’]?(s|re)(?!\p{L})/iu;
/** What a Spanish verb takes along: "evitarlo", "lo arreglo". */
const ENCLITIC = /(?<!\p{L})(\p{L}{2,}(?:ar|er|ir))(?:l[oae]s?)(?!\p{L})/iu;
const BEFORE_VERB = new RegExp(
  unbroken`
    (?:(?<=^\W*)|(?<=(?<!\p{L})(?:c[oó]mo|cu[aá]ndo|d[oó]nde|s[ií]|no|ya|qu[eé]|puedo|se|me|
    te) ))l[oae]s? (?=\p{L}{3,}(?:o|a|e|as|es|an|en|amos|emos|ar|er|ir)(?!\p{L}))
  `,
  'iu',
);
const NEUTER = /(?<!\p{L})(?:eso|esto|aquello)(?!\p{L})/iu;

/**
 * A turn with its subject in the place of the pronoun that stands for it; undefined where it has none. Pure.
 * @example putInPlace('how do I stop it next time', 'soda ash') // 'how do I stop soda ash next time'
 */
export function putInPlace(turn: string, subject: string): string | undefined {
  if (IS.test(turn))
    return turn.replace(IS, (_, verb: string) => `${subject} ${verb === 're' ? 'are' : 'is'}`);
  if (PRONOUN.test(turn)) return turn.replace(PRONOUN, subject);
  if (NEUTER.test(turn)) return turn.replace(NEUTER, subject);
  if (ENCLITIC.test(turn)) return turn.replace(ENCLITIC, `$1 ${subject}`);
  // "Lo evito": the verb first, then what it is done to.
  const found = BEFORE_VERB.exec(turn);
  if (!found) return undefined;
  const rest = turn.slice(found.index + found[0].length);
  const [verb = ''] = /^\p{L}+/u.exec(rest) ?? [];
  return `${turn.slice(0, found.index)}${verb} ${subject}${rest.slice(verb.length)}`;
}
