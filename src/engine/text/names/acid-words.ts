import { unbroken } from '../../over-lines.ts';
import { foldedWords } from '../fold.ts';

/** Acids of the kitchen and of labels; fatty acids and the acids of preservatives are too weak to count. */
const NAMED = new RegExp(
  unbroken`
    \b(?:(?:citric|lactic|acetic|ascorbic|tartaric|malic|glycolic|salicylic|hydrochloric|muriatic|
    phosphoric|sul(?:ph|f)uric|oxalic) acid|acido (?:citrico|lactico|acetico|ascorbico|tartarico|malico|
    glicolico|salicilico|clorhidrico|muriatico|fosforico|sulfurico|oxalico)|vinegar|vinagre|(?:lemon|
    lime) (?:juice|water)|juice of (?:a |half a )?(?:lemon|lime)|(?:zumo|jugo|agua) de (?:limon|lima)|
    lemonade|limonada|vitamin c|vitamina c|cream of tartar|cremor tartaro)\b
  `,
  'u',
);
/** An acid by no name of its own; "acid red 52" is a dye and stearic acid a fat. */
const BARE = new RegExp(
  unbroken`
    (?<!\b(?:stearic|palmitic|myristic|lauric|oleic|linoleic|ricinoleic|fatty|sorbic|benzoic|hyaluronic|
    amino|carminic|boric|dehydroacetic|polyhydroxystearic) )\bacid(?= (?:and|to|in|on|with|at|or|for|my|
    into|too|there)\b|$)|\bacido(?= (?:con|y|en|a|al|para|el|mi|o)\b|$)
  `,
  'u',
);
/** "Ultramar con limón": the fruit stands for its juice; as a scent, a hue or a peel it is none. */
const FRUIT = new RegExp(
  unbroken`
    \b(?:con|with|and|y|plus|mas|add|echo|echar(?:le)?|pongo|poner(?:le)?) (?:(?:un poco de|a bit of|
    a squeeze of|gotas de|some|el|un|a|mi|my) )?(limon|lima|lemon|lime)(?= (?:in|on|en|to|a|al|together|
    juntos|ok|safe|can|se|is|it|o|or|encima)\b|$)
  `,
  'u',
);

/**
 * The acid that a text names, in English or Spanish, folded as `foldedWords` does ("citric acid", "zumo de limon"), or
 * undefined. Meant for what may meet a pigment that acid destroys.
 */
export function acidIn(text: string): string | undefined {
  const said = foldedWords(text.slice(0, 2000)).join(' ');
  const named = NAMED.exec(said)?.[0];
  if (named !== undefined) return named;
  const fruit = FRUIT.exec(said)?.[1];
  if (fruit !== undefined) return /^(?:lemon|lime)$/u.test(fruit) ? `${fruit} juice` : `zumo de ${fruit}`;
  return BARE.test(said) ? (/acido/u.test(said) ? 'acido' : 'acid') : undefined;
}
