import type { Class } from '../../../src/engine/questions/learned/classes.ts';

/** What came in and is to be written down, whatever else is told of it. */
const COME_IN =
  /^\W*(?:ap[uú]nt[ae]\w*|a[nñ]ad[ei]\w*|agr[eé]g\w+|anot[ae]\w*|registr[ae]\w*|add|log|note (?:down )?that)(?!\p{L})|(?<!\p{L})(?:me (?:lleg[oó]|regal\w+|han regalado|dieron)|arrived|came in the (?:post|mail)|gave me)(?!\p{L})/iu;

/** Which of the three things one does with a shelf; the sets tell only that it is one. */
export const ofShelf = (text: string): Class =>
  COME_IN.test(text) && !/\?/u.test(text) ? 'shelf-add' : ofKept(text);
const ofKept = (text: string): Class =>
  /\b(?:used|gast\w+|us[eé]|take|quita\w*|resta\w*|off|subtract\w*|minus|baj[aeo]\w*|finished|acab\w+|spil[lt]\w*|knocked|remove|delete|bin it|borr\w+|s[aá]ca\w*|se (?:me )?cay\w+|r[eé]sta\w*)\b/iu.test(
    text,
  )
    ? 'shelf-use'
    : /\b(?:left|queda\w*|have i|do i|tengo|still|restantes?|existencias|inventari?o\w*|how much|cu[aá]nt[oa]s?|which|cu[aá]l\w*|what|whats|list|longest|hay|qu[eé] (?:me|hay))\b/iu.test(
          text,
        )
      ? 'shelf-show'
      : 'shelf-add';
