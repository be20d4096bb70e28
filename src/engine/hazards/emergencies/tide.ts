import { unbroken } from '../../over-lines.ts';

/** What follows the tide and nobody who is dizzy. */
const OF_THE_SEA = unbroken`
  \s+(?:azul|verde|gris|turquesa|nocturna|suave|pastel|baja|alta|roja|negra|viva|muerta|llena|creciente|
  menguante|sube|subia|subio|bajaba|bajo)\b
`;
/** What stands before the tide: articles and prepositions, and what soap makers name after it. */
const NAMED = new RegExp(
  unbroken`
    (?:^|["“«'(:,;|+]\s*|\b(?:una|de|con|como|en|entre|bajo|sobre|azul|verde|gris|color|colores|tono|jabon|
    jabón|mica|bote|barra|lote|receta|llamado|llamada|nombre|swirl|pastilla)(?:\s+(?:la|las))?\s+)$
  `,
  'iu',
);
const ARTICLE = /^\s*las?\s+$/iu;
const WORD = new RegExp(String.raw`(?<![\p{L}\p{N}])mareas?(?![\p{L}\p{N}])(${OF_THE_SEA})?`, 'giu');

/**
 * The text with the tide ("marea", also what makes dizzy) put as another word of the sea, each character in its place.
 * Where it may be somebody's dizziness it stays.
 */
export const withoutTide = (text: string): string =>
  text.replace(WORD, (found: string, sea: string | undefined, at: number) => {
    const before = text.slice(0, at);
    const isNamed =
      NAMED.test(before) || (ARTICLE.test(before) && text.slice(at + found.length).trim() === '');
    return sea !== undefined || isNamed ? `playa${found.slice(5)}` : found;
  });
