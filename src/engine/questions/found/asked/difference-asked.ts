import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';

const DIFFERENCE = new RegExp(
  unbroken`
    (?<!\p{L})(?:differ\p{L}*|diferen\p{L}*|distint[oa]s?|distingu\p{L}*|(?:the )?same (?:thing|stuff|powder|colou?r)|
    (?:lo|el|la) mism[oa]|paying for a name|look(?:s)? (?:the same|alike)|se ven? iguales?|los veo igual(?:es)?|son iguales?)(?!\p{L})
  `,
  'u',
);
const STRENGTH = new RegExp(
  unbroken`
    (?<!\p{L})(?:strong(?:er|est)?|stren?gth|go(?:es)? further|bolder|fuertes?|fuerza|pinta(?:n)?|tine(?:n)?|rinde(?:n)?|
    intens[oa]s?|potentes?|cubre(?:n)?)(?!\p{L})
  `,
  'u',
);

/** Whether it is asked what tells two colourants apart, and not which of them is the stronger. Pure. */
export function asksDifference(question: string): boolean {
  const text = unaccented(question);
  return DIFFERENCE.test(text) && !STRENGTH.test(text);
}
