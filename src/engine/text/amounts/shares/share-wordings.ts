import { unbroken } from '../../../over-lines.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { namesIn } from '../../names/listed-names.ts';
import { bare } from './share-at.ts';

/** What is said of the order of a list, or what it looks like, is no part of it. */
const BEHIND = new RegExp(
  unbroken`
    [\s,]*(?:\(?(?:en|in) (?:ese|este|tal|that|this) (?:mismo )?ord(?:en|er)\)?|respectively|
    respectivamente|(?:like|como|igual que|as (?:in|on)|in the (?:manner|style|colou?rs) of) (?:(?:the|our|
    my|your|a|la|mi|nuestra|una) )?(?:\p{L}+ )?(?:flag|bandera)(?: (?:de|of) [\p{L} ]+)?|\(?(?:all|
    todas?) (?:the same|equal|del mismo|iguales?)(?: (?:height|depth|size|alto|grueso|tama[ñn]o))?\)?|
    pero todas? (?:del mismo (?:alto|grueso)|iguales))[\s.!]*$
  `,
  'iu',
);
const UNCOLOURED = /\bun[ -]colou?red\b/giu;
const PER_CENT = /(?<=\d) ?(?:p\.\s?c\.?|pc)(?=[\s,;.)]|$)/giu;

/** A division without what is said of its order or likeness, percents and plain parts as the grammar writes them. */
export const tidiedShares = (text: string): string =>
  text.replace(UNCOLOURED, 'uncoloured').replace(PER_CENT, '%').replace(BEHIND, '').trim();

const WHOLE = new RegExp(
  unbroken`
    ^(?:(?:all|the whole (?:lot|thing|batch|pot)|every (?:bit|drop)|everything)(?: of (?:it|them|
    the (?:batter|batch|lot|pot)))?(?: is| in)?|(?:todo|toda|entero|entera)(?: (?:el|la) (?:masa|mezcla|
    jab[oó]n|lote))?(?: (?:de|en|va))*) (.+)$
  `,
  'iu',
);
const WHOLE_LAST = /^(.+?)[\s,]+(?:all of it|the whole (?:lot|thing|batch)|tod[oa]|complet[oa]|enter[oa])$/iu;
const TIMES: readonly (readonly [RegExp, number])[] = [
  [/doble|double|twice|two times|2 times|dos veces/iu, 2],
  [/triple|three times|3 times|tres veces/iu, 3],
];
const MANY = '(?:el |the )?(doble|triple|double|twice|two times|three times|[23] times|dos veces|tres veces)';
/** "celeste el doble que el amarillo", "twice as much white as blue", "double the red to the gold". */
const MANIFOLD: readonly RegExp[] = [
  new RegExp(
    `^(?<more>.+?),? ${MANY} (?:que|de|the|than|of the)(?: el| la| lo)?(?: del?)? (?<less>.+)$`,
    'iu',
  ),
  new RegExp(
    `^${MANY} (?:(?:as much|the(?: amount of)?|de) )+(?<more>.+?) (?:as|to|than|que(?: de)?|a) (?:the |el |la )?(?<less>.+)$`,
    'iu',
  ),
];
/** "split 4 ways even, pink peach mint n lemon", "en 3 partes: rojo, blanco, azul". */
const WAYS = new RegExp(
  unbroken`
    ^(?:(?:split|divided?|parted|cut|repartid[oa]|dividid[oa]|partid[oa])\s+)?(?:(?:in|into|
    en)\s+)?(\d{1,2})(?=:| \p{L}) ?(?:equal |even )?(?:ways?|parts?|portions?|partes|porciones|pots|jugs|
    cups)?(?: (?:even(?:ly)?|equal(?:ly)?|iguales|alike|each))*(?:\s*[:,-]\s*| (?:of|de|with|con|for|
    para) )(\D.*)$
  `,
  'iu',
);

/**
 * A division that is told in words alone, in the portions' own grammar: "all of it green", "celeste el doble que el amarillo", "split 4
 * ways even, pink peach mint n lemon". Undefined where it is none of these.
 */
export function wordedShares(text: string): string | undefined {
  const all = bare((WHOLE.exec(text) ?? WHOLE_LAST.exec(text))?.[1] ?? '');
  if (all !== '' && knowsColour(all)) return `100% ${all}`;
  for (const pattern of MANIFOLD) {
    const match = pattern.exec(text);
    const { more = '', less = '' } = match?.groups ?? {};
    const times = TIMES.find(([said]) => said.test(match?.[0] ?? ''))?.[1];
    if (match && times !== undefined && knowsColour(bare(more)) && knowsColour(bare(less)))
      return `${times} parts ${bare(more)}; 1 parts ${bare(less)}`;
  }
  const [, ways, list] = WAYS.exec(text) ?? [];
  if (ways === undefined || list === undefined) return undefined;
  const names = namesIn(list, knowsColour, Number(ways));
  if (/\d|(?<!\p{L})(?:one|una?|half|mitad|rest|resto)(?!\p{L})/iu.test(list)) return undefined;
  return names.length === Number(ways) ? names.map(name => `1 parts ${name}`).join('; ') : undefined;
}
