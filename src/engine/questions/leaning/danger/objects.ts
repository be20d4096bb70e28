import { unbroken } from '../../../over-lines.ts';
import { wordCount } from '../../../text/word-count.ts';
import { plainTurn } from '../turn/plain.ts';

const MOST_WORDS = 20;
/** It did no harm so far, somebody else does it, it is little, natural or eaten. */
const OBJECTS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:nothing|never|no harm)(?: \p{L}+){0,3} (?:happen\p{L}*|hurt|bother\p{L}*|had|did|
    problem|trouble)|nothings? happens|(?:doesnt|dont|didnt|never) (?:hurt|bother|do|did|
    hurts)(?: \p{L}+){0,2}|im (?:still )?(?:fine|ok|alive)|all the time|every day|(?:she|he|they|everybody|
    everyone|people|others|somebody|my \p{L}+) (?:always |all )?(?:uses?|puts?|does|do|did|swears?)|
    its (?:all )?(?:natural|organic|edible|food)|non ?toxic|washable|(?:only|just) (?:a )?(?:little|tiny|
    bit|pinch|drop|touch|for me|for myself|one bar)|no (?:me |le |nos )?(?:pasa|paso|pasado|hace|hizo|
    ha hecho) (?:na|nada|dano)|nunca (?:me |le )?(?:ha |paso|pasa|hizo)\p{L}*|(?:todos|to) los dias|
    (?:todo el mundo|todas|mi \p{L}+) (?:la |lo |los |las )?(?:usa|usan|echa|echan|pone|ponen|hace|hacen)|
    es (?:natural|comestible|ecologic[oa])|no (?:es )?toxic[oa]|solo (?:un poco|un poquito|una gota|
    una pizca|para mi)|un poquito|se (?:quita|va) (?:con|al|lavando))(?!\p{L})
  `,
  'u',
);

/** Whether a turn holds against a refusal that it did no harm, that others do it or that it is only a little. Pure. */
export const objects = (typed: string): boolean =>
  wordCount(typed) <= MOST_WORDS && OBJECTS.test(plainTurn(typed)) && !/\d/u.test(typed);

/** After something white was looked at: whether it may be lye. */
const MAYBE_LYE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:its|it is|that it is|thats|if its|is it|it isnt|isnt it|is that|cant it be|could it be|
    it might be|not)(?: (?:not|just|straight|pure|actually|really|raw|dry))* (?:lye|caustic)|no (?:es|sera|
    sea)(?: \p{L}+)? (?:sosa|soda|lejia)|(?:y si|si|que) (?:es|fuera|sea)(?: \p{L}+)? (?:sosa|soda|lejia)|
    (?:es|sera)(?: \p{L}+)? (?:sosa|soda caustica|lejia)(?: o .*)?)(?: \p{L}+){0,2}$
  `,
  'u',
);
/** Whether a turn asks of what was seen on a bar whether it is lye. Pure. */
export const asksWhetherLye = (typed: string): boolean =>
  wordCount(typed) <= MOST_OF_LYE && MAYBE_LYE.test(plainTurn(typed)) && !SOMEBODY.test(plainTurn(typed));
const MOST_OF_LYE = 10;
/** What was drunk, touched or smelled is no bar. */
const SOMEBODY = new RegExp(
  unbroken`
    (?<!\p{L})(?:drank|drink|ate|swallow\p{L}*|touched|skin|eyes?|hands?|mouth|breath\p{L}*|smell\p{L}*|kid|
    child|dog|cat|bebi\p{L}*|comi\p{L}*|trag\p{L}*|toc\p{L}*|piel|ojos?|manos?|boca|respir\p{L}*|huele|
    nin[oa]|perr[oa]|gat[oa])(?!\p{L})
  `,
  'u',
);
