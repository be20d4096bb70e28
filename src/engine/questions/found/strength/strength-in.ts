import { unbroken } from '../../../over-lines.ts';
import type { NamedThing } from '../names/named-thing.ts';
import type { Words } from '../words-of.ts';
import { CLIPPED, DEEP, PARTS, PERCENT, STRENGTHS } from './strength-words.ts';

/** What was not wished: "too strong", "demasiado oscuro", "it came out dark". */
const UNWISHED = new RegExp(
  unbroken`
    \b(?:(?<!not )too|demasiado|tan|nada|none of (?:that|this|the|your)|nada de(?: es[oa]s?)?|(?:no|not)(?: (?:a|an|un|una|muy|very|so|all that|quede|sea|salga|
    quiero))?|less|menos|wasn'?t|isn'?t|(?:was|were|came out|turned out|salio|quedo|me quedo) (?:too |so |
    very |muy |tan |bien )?)\s*(?:${DEEP}|pale|light|faint|clarit[oa]|clar[oa]|palid[oa]|palidit[oa]|
    bajit[oa]|pastel|suave|suavecit[oa]|soft|baby|powder|minty|milky|washed out|deslavad[oa])(?: (?:blue|
    pink|green|yellow|azul|rosa|verde))?\b
  `,
  'gu',
);

function percentIn(text: string): string | undefined {
  const percent = PERCENT.exec(text)?.[1];
  return percent === '50' ? 'half' : percent && `${percent}%`;
}

/** The colourant stands as `;` here. */
const GREY_WISHED = new RegExp(
  unbroken`
    \b(?:gr[ea]ys?|gris(?:es)?),? (?:how (?:much|many)|cuant[oa])(?: of| de)? ;|(?:how much|
    cuant[oa])(?: of| de)? ; (?:(?:do i (?:need|use) |hace falta |pongo )?(?:for|to get|to make|para|
    pa)(?: sacar| hacer| un[oa]?| an?| nice| soft| light| pale| bonito)* )(?:gr[ea]y|gris)\b
  `,
  'u',
);
/** Grey is what a little black makes: "and the gray, how much charcoal", "cuánto carbón para un gris". */
const isGreyOfBlack = (said: string, things: readonly NamedThing[]): boolean =>
  GREY_WISHED.test(said) && things.some(({ text }) => /charcoal|black|carbon|negr/u.test(text));

/** The strength a question wishes, looked for outside the colourants' names. */
export function strengthIn({ words }: Words, things: readonly NamedThing[]): string | undefined {
  const said = words
    .map((word, at) => (things.some(({ from, to }) => at >= from && at < to) ? ';' : word))
    .join(' ')
    .replaceAll('colour', 'color')
    .replace(UNWISHED, ';');
  // What it would be at full strength is asked, whatever it is now: "barely lilac".
  if (/\bwhat would (?:be )?full (?:strength|colou?r)\b/u.test(said)) return 'full';
  const share = PARTS.find(([, pattern]) => pattern.test(said))?.[0] ?? percentIn(said);
  if (share !== undefined) return share;
  if (isGreyOfBlack(said, things)) return 'tint';
  const rest = CLIPPED.reduce((text, [pattern, meant]) => text.replace(pattern, meant), said);
  return STRENGTHS.find(([, pattern]) => pattern.test(rest))?.[0];
}
