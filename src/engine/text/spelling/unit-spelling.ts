import type { Rewriting } from '../patterns/fitting.ts';

const OF_SOMETHING = String.raw`(?=(?: y media)? d(?:e|el)? (?!(?:madera|palo|metal|acero|pl[aá]stico|silicona|aluminio|t[eé]|caf[eé])(?!\p{L})))`;

/** Units and parts of them as phones and hurry spell them, each with what is meant; both languages (from memory of how makers write). */
export const UNIT_SPELLINGS: readonly Rewriting[] = [
  [/(?<!\p{L})(?:cps|cupps?|cus|cpus)\b/giu, 'cups'],
  [/\b(?:tasas?|tzas?|tazaz)\b/giu, 'tazas'],
  [/\b(?:tea ?sp|tspn|teasp|teaspons?|teespoons?|teaspooms?|tspoons?)\b/giu, 'tsp'],
  [/\b(?:tablesp|tblspn|tblspoons?|tablespons?|table spoons?)\b/giu, 'tbsp'],
  [/\b(?:tea spoons?)\b/giu, 'tsp'],
  [/\b(?:cucharas? soperas?|cucharas? (?:grandes?|de sopa))\b/giu, 'cucharada'],
  [
    /\b(?:cuchar(?:ita|illa)s?|cucharas? (?:chicas?|peque[ñn]as?)) (?:de (?:t[eé]|caf[eé])(?!\p{L}))?|\bcucharas? de (?:t[eé]|caf[eé])(?!\p{L})/giu,
    'cucharaditas ',
  ],
  [/\b(?:cuchar(?:ita|illa)s?|cuharaditas?|cucharadtias?|cucharaditaz|cucharditas?)\b/giu, 'cucharaditas'],
  // A spoon of something, and no spoon of wood: how a tablespoon is called in much of America.
  [
    new RegExp(String.raw`(?<=(?:(?<!\d)1|[½¼¾]|\b(?:una|media)) ?)cuchara${OF_SOMETHING}`, 'giu'),
    'cucharada',
  ],
  [new RegExp(String.raw`(?<=(?:\d|\b(?:dos|tres|cuatro)) ?)cucharas${OF_SOMETHING}`, 'giu'), 'cucharadas'],
  [/\b(?:onsas?)\b/giu, 'onzas'],
  // A quarter of a kilo and half of that, as it is bought in Spain (from memory).
  [/(?<![\p{L}\d] ?)cuarto y mitad(?: de (?:kilo|kg))?(?!\p{L})/giu, '375 g'],
  [/\b(?:betwen|beetween|bewteen|betweem|btwn)\b/giu, 'between'],
  [/\b(?:gramoz|grmos|gramso|gram(?:it|ic|ill)os?)\b/giu, 'gramos'],
  [/\bcucharad(?:ic|ill)as?\b/giu, 'cucharaditas'],
  [/\b(?:ounzes|onces|ouces|ounces?s)\b/giu, 'ounces'],
  [/\b(?:ponds|puonds|pouns)\b/giu, 'pounds'],
  [
    /(?<=\d\s?)(?:mils|millis|milis)\b|(?<=\d\s?)mil(?=\s*(?:$|[,.;)]|of\b|left\b|i\b|(?:soap |raw )?batter\b))/giu,
    'ml',
  ],
  [/\bper cents?\b/giu, 'percent'],
  // "KOH purity 99", "pureza 90": of a hundred, and no grams.
  [
    /\b(purity|pureza)(?: (?:of|is|del?|es))? ((?:[5-9]\d|100)(?:[.,]\d+)?)(?![\d.,]*\d)(?! ?(?:%|percent|por ciento))/giu,
    '$1 $2%',
  ],
  // "1/8th of a tsp"
  [/(?<![\d.,/])(\d\/\d{1,2})(?:ths?|rds?|nds?)(?!\p{L})/giu, '$1'],
  [/(?<=\d\s?)c\.\s?c\.?(?=\s|$)/giu, 'cc'],
];

/** "Aseite", "haceite", "azeyte": the Spanish word for oil. */
export const MISSPELT_ACEITE = /(?<!\p{L})h?a(?:s|sc|z|c)e[iy]tes?(?!\p{L})/giu;

/** "Sobrengrasado", "superengrasado", "sobreengrasao", "5% sob": superfat as it is written in a hurry (from memory). Lower case without accents. */
export const SUPERFAT_SPELLINGS: readonly Rewriting[] = [
  [
    /(?<!\p{L})(?:sobr\p{L}{0,2}n?gras\p{L}*|super ?engras\p{L}*|sobre ?engr?(?=\.? ?\d)|overfat(?:ting|ted)?)(?!\p{L})/gu,
    'superfat',
  ],
  [/(?<=\d ?(?:%|por ciento) (?:de )?)sob(?!\p{L})/gu, 'superfat'],
];
