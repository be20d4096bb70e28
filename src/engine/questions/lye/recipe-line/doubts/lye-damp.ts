import { unbroken } from '../../../../over-lines.ts';
import { LYE } from '../../amounts/words.ts';

const OF_IT = `(?:${LYE}|soda|flakes?|pellets?|escamas|perlas|bag|tub|tin|bote|bolsa|frasco|tarro)`;
const ALSO = unbroken`
  (?:it|its|it['’]s|is|are|was|were|has|have|had|got|gone|went|turned|become|back|in|into|to|like|all|just|one|1|an?|big|solid|hard|bit|very|old|
  looks?|feels?|es|esta|estan|son|se|ha|han|quedo|quedado|puso|hizo|vuelto|un|una|en|muy|toda|todo|como|medio|poco|vieja|hech[oa]|me|nos|y|and|
  ,)
`;
const DAMP = unbroken`
  (?:damp|wet|moist|clumped|clumpy|caked|lumpy|(?:wet |solid |hard |big )*(?:lumps?|clumps?|block|rock|brick)|humed[oa]s?|humedecid[oa]s?|mojad[oa]s?|
  apelmazad[oa]s?|aterronad[oa]s?|terron(?:es)?|piedra|bloque|grumos)
`;
const LYE_DAMP = new RegExp(`(?<!\\p{L})${OF_IT},?(?: ${ALSO},?)* ${DAMP}(?!\\p{L})`, 'u');
/** "The lye is from a bag that's been open in the shed and it's gone to one wet lump": what it became stands further on in its sentence. */
const GONE = new RegExp(
  `(?<!\\p{L})${OF_IT}(?!\\p{L})[^;]{0,80}?(?<!\\p{L})(?:it['’]?s|it is|has|it|is|esta|se (?:ha|quedo|puso|hizo)|quedo)(?: ${ALSO})* ${DAMP}(?!\\p{L})`,
  'u',
);
/** So much of it is told again: its end tells what became of the lye. UTF-16 units. */
const LONGEST = 60;
/** What may be damp in its place. */
const OF_ELSE = new RegExp(
  unbroken`
    (?<!\p{L})(?:batter|masa|mixture|mezcla|soaps?|jabon\p{L}*|mica|clay|arcilla|shea|karite|butter|manteca|coconut|coco|oil|aceite|salt|sal|sugar|
    azucar|oats|avena|weather|tiempo|kitchen|cocina|hands|manos|dissolv\p{L}*|disolv\p{L}*|disuel\p{L}*|water|agua|stir\p{L}*)(?!\p{L})
  `,
  'u',
);

/**
 * The words by which lye drew water from the air, so that nobody knows how much of a weight of it is lye; undefined where none do. Takes what
 * `plainWords` gives with its clauses. Pure.
 */
export function lyeDampIn(plain: string): string | undefined {
  for (const sentence of plain.split(';')) {
    const [text] = LYE_DAMP.exec(sentence) ?? GONE.exec(sentence) ?? [];
    if (text !== undefined && !OF_ELSE.test(text)) return text.slice(-LONGEST).trim();
  }
  return undefined;
}
