import { unbroken } from '../../over-lines.ts';
import type { Turn } from './item.ts';

/** The words from the start of a text on that do this to an amount. */
type Word = { readonly is: Turn; readonly pattern: RegExp };

const word = (is: Turn, ...patterns: readonly string[]): Word => ({
  is,
  pattern: new RegExp(String.raw`(?:${patterns.join('|')})(?![\p{L}\p{N}'’-])`, 'uy'),
});

const PIECE = unbroken`
  (?:bars?|wells?|cavit(?:y|ies)|holes?|slots?|mou?lds?|pieces?|soaps?|cells?|one|layers?|portions?|
  colou?rs?|jugs?|pots?|cups?|of (?:them|those|these|the \p{L}+))
`;
const PIEZA =
  '(?:barras?|huecos?|cavidad(?:es)?|moldes?|moldecitos?|pastillas?|piezas?|jabon(?:es)?|unidad|capas?|porcion|jarras?|vasos?|color)';

/** Turns of phrase in both languages, folded to lower case without accents; the longer before the shorter. From memory of chats. */
export const TURNS: readonly Word[] = [
  word(
    'corrects',
    unbroken`
      (?:no ,? ?|naw ,? ?|ah ,? ?|oh ,? ?|ay ,? ?|wait ,? ?)*(?:wait(?: no)?|hang on|hold on|sorry|
      scratch that|correction|oops|whoops|nope|i mean|i meant|or rather|make (?:that|it)|better say|
      strike that|my bad|wrong card|misread)(?: ,? ?(?:no|not that|actually|that should be|it should be|
      should be|make (?:that|it)|it is|it's|i mean))*(?: ?,)?
    `,
    "actually(?: no)?(?: ?,)?(?: (?:it's|its|it is|make (?:that|it)))?",
    unbroken`
      (?:ah ,? ?|no ,? ?|ay ,? ?|uy ,? ?)*(?:perdon(?:en|a|ad)?|espera|esperen|digo|quise decir|
      quiero decir|mejor dicho|corrijo|miento|me equivoque|disculpa(?:s|en)?|bueno ,? ?(?:digamos|pongamos|
      mejor)|mejor pon(?:gamos|le)?|rectifico)(?: ,? ?(?:no|son|eran|es|era|que son))*(?: ?,)?
    `,
    // "12.4 g, no, 14.2 g"
    '(?<=, )(?:ah |oh |ay )?no (?=[,.])',
  ),
  word(
    'denies',
    '(?:not|never|instead of|rather than)(?! (?:more|less|sure|too|to|over|under|even|quite)\\b)',
    'no (?:eran?|son|es|fueron|los?|las?)(?= )',
    'en vez de|en lugar de|y no(?= \\d)',
  ),
  word(
    'past',
    unbroken`
      last (?:time|week|month|year|one|batch)|the other (?:day|week|batch)|originally|at first|i used to|
      used to (?:do|make|be)|previous(?:ly)?|before that|usually|normally|my (?:usual|last|old) (?:batch|
      one|recipe|loaf)
    `,
    "(?:i'd|i had|id|had) (?:\\p{L}+ )?(?:written|wrote|put down|said)|i (?:first )?(?:wrote|said|told you)",
    unbroken`
      la (?:ultima|otra|anterior) (?:vez|tanda)|la vez (?:pasada|anterior)|al principio|antes (?:hacia|
      usaba|eran?|ponia|puse)|normalmente|habitualmente|habia (?:puesto|escrito|dicho)|puse antes|
      la semana pasada|el mes pasado|mi lote (?:anterior|pasado)
    `,
  ),
  word(
    'now',
    "this time|this batch is|this one is|now|today(?:'s)?|tonight|esta vez|ahora|hoy|esta tanda|este lote",
    'but|pero',
  ),
  word(
    'whole',
    'altogether|in (?:total|all)|all (?:told|together|up)|total|en total|entre (?:todos|todas)|todo junto|in the (?:pot|batch)',
  ),
  word(
    'lost',
    '(?:i |we )?(?:spil(?:t|led)|lost|wasted|dropped|threw (?:out|away))(?: (?:about|abt|some|like))*',
    '(?:se me (?:cayeron|cayo|derramaron|derramo|fueron)|derrame|perdi|bote|tire)(?: (?:unos|como|unas))*',
  ),
  word(
    'takes',
    unbroken`
      (?:gonna |going to |will |i'll |i'm |im )?(?:tak(?:e|es|en|ing|in)|took|pull(?:s|ed|ing|in)?|pour(?:s|
      ed|ing|in)? off|reserv(?:e|ed|ing)|set(?:ting)? aside|split(?:ting)? off|siphon(?:ed)? off|draw(?:ing|
      n)?|drew|withdr(?:ew|aw|awn|awing)|scoop(?:ed|ing)?)(?: (?:out|off|away|aside|from it))?
    `,
    unbroken`
      (?:le |les |lo |la |voy a )?(?:saco|sacar|saque|sacamos|aparto|apartar|aparte|apartamos|separo|
      separar|separe|separamos|reservo|reservar|reserve|quito|quitar|tomo|tomar)(?: aparte)?
    `,
  ),
  word(
    'each',
    `each(?: ${PIECE})?|every ${PIECE}|a ?piece|ea|per (?:bar|well|cavity|hole|slot|mou?ld|piece|soap|cell|layer)`,
    `cada (?:un[oa]|${PIEZA})|cada(?= (?:\\d|uno|una))|c \\/ u|c\\/u|por (?:pieza|barra|hueco|molde|pastilla|cavidad|unidad|capa)`,
  ),
];

const fraction = (share: string, value: number, pattern: string) => ({
  share,
  value,
  pattern: new RegExp(String.raw`(?:${pattern})(?![\p{L}\p{N}/'’-])`, 'uy'),
});
const A = '(?:an? |one |1 |the |la |el |un |una |otro |otra |other )*';

/** "30 % of it": a percent of anything else is none of the batter. */
export const PERCENT = new RegExp(
  unbroken`
    (\d{1,2}(?:[.,]\d)?) ?(?:%|percent|pct|por ?ciento) (?=(?:of|o|de|del) (?:it|that|this|them|the|my|la|
    el|mi|eso)(?!\p{L})(?! (?:oils?|aceites?|usual|normal|dose|dosis)))
  `,
  'uy',
);

/** Parts of a whole; what stands before a unit was made a figure with it before. */
export const FRACTIONS = [
  fraction('2/3', 2 / 3, '(?:two|2|dos)[ -](?:thirds?|3rds?|tercios|terceras partes)|2/3(?:rds?)?'),
  fraction(
    '3/4',
    3 / 4,
    '(?:three|3|tres)[ -](?:quarters?|qtrs?|fourths?|4ths?|cuartos|cuartas partes)|3/4(?:ths?)?',
  ),
  fraction('2/5', 2 / 5, '(?:two|2|dos)[ -](?:fifths|5ths|quintos|quintas partes)|2/5(?:ths?)?'),
  fraction('3/5', 3 / 5, '(?:three|3|tres)[ -](?:fifths|5ths|quintos|quintas partes)|3/5(?:ths?)?'),
  fraction('1/3', 1 / 3, `${A}(?:third|3rd|tercio|tercera parte|terciecito)|1/3(?:rd)?`),
  fraction('1/4', 1 / 4, `${A}(?:quarter|qtr|fourth|4th|cuarto|cuarta parte|cuartito)|1/4(?:th)?`),
  fraction('1/5', 1 / 5, `${A}(?:fifth|5th|quinto|quinta parte)|1/5(?:th)?`),
  fraction('1/6', 1 / 6, `${A}(?:sixth|6th|sexto|sexta parte)|1/6(?:th)?`),
  fraction('1/8', 1 / 8, `${A}(?:eighth|8th|octavo|octava parte)|1/8(?:th)?`),
  fraction('1/10', 1 / 10, `${A}(?:tenth|10th|decimo|decima parte)|1/10(?:th)?`),
  fraction(
    '1/2',
    1 / 2,
    `${A}(?:half|mitad)|1/2|medi[oa](?= (?:lote|masa|olla|tanda|mezcla|batido|jabon|receta))`,
  ),
] as const;
