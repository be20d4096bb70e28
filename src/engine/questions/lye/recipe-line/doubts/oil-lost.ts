import { unbroken } from '../../../../over-lines.ts';
import { LYE, plainWords } from '../../amounts/words.ts';
import { tellsOfHarm } from '../plain-recipe.ts';
import { asksForLyeOfWeighed } from '../recipe-asked.ts';

/** Oil that ran out, fell or was knocked over; somebody who "dropped in" brought some. */
const LOST = new RegExp(
  unbroken`
    (?<!\p{L})(?:spill(?:ed|t|s|ing)?|spilt|knocked(?: (?:it|them|the \p{L}+))?(?: (?:over|down|off))?|
    tipped over|dropped (?!in|by|off)|leaked|went on the floor|ended (?:up )?on the (?:floor|counter|table|
    worktop)|se (?:me |nos |le |les )*(?:derram\p{L}+|volc\p{L}+|cay(?:o|eron)|reg(?:o|aron)|volte\p{L}+)|
    derrame|volc(?:o|aron|que)|tumb(?:o|aron)|se fue(?:ron)? (?:al (?:piso|suelo)|por el (?:fregadero|
    desague|lavabo|lavaplatos|sumidero|cano))|(?:went|ran|gone|poured) down the (?:sink|drain|
    plughole))(?!\p{L})
  `,
  'u',
);
/** "Before any lye went in": there was none yet. */
const NO_LYE_YET = new RegExp(
  `(?<!\\p{L})(?:before|without|antes de|sin|no)(?: \\p{L}+){0,4}? ${LYE}(?: (?:went|goes|was|is|had|got) \\p{L}+| yet| todavia| aun)?(?!\\p{L})`,
  'gu',
);
const ANY_LYE = new RegExp(`(?<!\\p{L})${LYE}(?!\\p{L})`, 'u');

/** The words of a line that tell of oil that was lost, none of them of lye; undefined where there are none. Takes what `plainWords` gives. */
export function oilLostIn(plain: string): string | undefined {
  const lost = plain
    .replace(NO_LYE_YET, '')
    .split(';')
    .find(sentence => LOST.test(sentence) && !ANY_LYE.test(sentence));
  return lost === undefined ? undefined : LOST.exec(lost)![0].trim();
}

const ANIMAL = '(?:dogs?|cats?|puppy|kitten|perr[oa]s?|perrit[oa]|gat[oa]s?|gatit[oa])';
/** Who knocks a pan over was at no lye. */
const KNOCKS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the|my|our|el|la|mi|un|una) )?${ANIMAL}(?:,? (?:called |named |llamad[oa] |
    que se llama )?(?!(?:lick|drank|drink|ate|eat|has|was|got|met|lam|comi|bebi|me|nos|se|knock|tip|bump|
    jump|push|ran|volc|tir|tumb|empuj|volte|choc)\p{L}*)\p{L}+)?(?: \d+(?:[.,]\d)? ?(?:kg|kilos?|lbs?|
    pounds?|libras?)(?: (?:of|de) \p{L}+(?: \p{L}+)?)?)? (?:me |nos |lo |la )?(?:knock|tip|bump|jump|push|
    ran into|volc|tir|tumb|empuj|volte|choc)\p{L}*(?: (?:over|into|on|against|contra))?
  `,
  'gu',
);
const FELL = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:went|ran|poured|spilled|spilt) (?:all )?(?:on|over|onto|across) the (?:floor|counter|
    table|worktop)|(?:se fue(?:ron)? )?(?:al|por el) (?:piso|suelo)|spill\p{L}*|spilt|derram\p{L}*|
    boiled over)(?!\p{L})
  `,
  'gu',
);
const BROKE =
  /(?<!\p{L})(?:crack\p{L}*|broke\p{L}*|shatter\p{L}*|raj\p{L}+|romp\p{L}+|quebr\p{L}+|parti[oó])(?!\p{L})/u;
/** What an animal or somebody may have met it with. */
const MET = new RegExp(
  unbroken`
    (?<!\p{L})(?:lick\p{L}*|drank|drink\p{L}*|ate|eat\p{L}*|paws?|fur|coat|nose|skin|face|mouth|lam\p{L}*|
    patas?|pelo|hocico|comi\p{L}*|bebi\p{L}*|prob\p{L}*)(?!\p{L})
  `,
  'u',
);

/**
 * Whether a text tells of nothing but weighed oil that was knocked over or spilled before lye met it, and asks for the lye of what is
 * left: nobody met lye. Pure.
 */
export function isOilLostBeforeLye(text: string): boolean {
  const plain = plainWords(text, { clauses: true });
  if (!LOST.test(plain) || MET.test(plain) || !asksForLyeOfWeighed(text)) return false;
  if (oilLostIn(plain) === undefined) return false;
  // What broke held lye, where nobody says that none was in yet.
  if (BROKE.test(plain) && plain.replace(NO_LYE_YET, '') === plain) return false;
  return !tellsOfHarm(plain.replace(KNOCKS, ' ').replace(FELL, ' '));
}
