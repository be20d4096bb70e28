import { unbroken } from '../../../../over-lines.ts';
import { DRY_PURITY, FAT, LYE, PERCENT } from '../../amounts/words.ts';
import { withPurityTold } from './bare-purity.ts';
import { withLyeWater } from './lye-water.ts';
import { isReason, PUT_RIGHT, PUT_RIGHT_WHY, YES_SO } from './superfat-put-right.ts';
import { withWaterByLye } from './water-by-lye.ts';

/** Superfat by its short hands too: "sf5", "se 5 %", "4% de se" (trade usage). */
const SHORT_FAT = `(?:${FAT}|s\\.?e\\.?|s\\.?g\\.?|super ?grasa|sobre ?grasa|sobre ?engr?|sobre(?= (?:\\d|1[0-2])(?: ?%)? ?(?:[;,]|$)))`;
const FIGURE = String.raw`-? ?\d{1,2}(?:[.,]\d+)?(?![\d.,]*\d| ?(?:g|gr|kg|oz|lb))`;
const SUPERFAT: readonly RegExp[] = [
  new RegExp(
    unbroken`
      (?<![\p{L}\d])(?:(?:at|with|con|al|a|for|para|un|el|the|of|de) )*(?<figure>${FIGURE}) ?(?:%|percent|
      pct|pc|por ?ciento|(?! ?(?:de |of )?(?:${FAT}) ?\d{1,2}(?![\d.,]*\d| ?g))) ?(?:de |of )?(?:${FAT}|se|
      sg|sobre ?grasa)(?![\p{L}])
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<![\p{L}\d])(?:(?:at|with|con|al|a|for|para|un|el|the) )*${SHORT_FAT} ?(?:(?:of|at|de|del|al|a|is|
      es|en|about|around|has to be|should be|needs to be|must be|to be|debe (?:de )?ser|tiene que ser|
      ha de ser|sea|=|:|,) ?)*(?<figure>${FIGURE}) ?(?:%|percent|pct|por ?ciento)?(?![\p{L}\d])
    `,
    'u',
  ),
  // "5 pct extra fat", "leave 7% of fat over", "5% libre de grasa".
  new RegExp(
    unbroken`
      (?<![\p{L}\d])(?:(?:at|with|con|al|a|leave|leaving|dejando|deja|un|el) )*(?<figure>${FIGURE}) ?(?:%|
      percent|pct|por ?ciento) ?(?:(?:of |de )?(?:extra|free|spare|excess|unsaponified) (?:fats?|oils?)|
      (?:de )?exceso de (?:grasa|aceite)s?|(?:of |de )?(?:fats?|oils?|grasas?|aceites?) (?:over|left over|
      extra|free|libres?|de mas|sobrante|sin saponificar)|libres? de grasa)(?![\p{L}])
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<![\p{L}\d])(?:(?:no|zero|sin|cero|nada|without(?: any)?|nil) (?:nada de |any |
      ningun )?(?:de )?(?:${FAT}|(?:sobre|super) ?engras(?:ar|e))|${FAT} (?:ninguno|none|nada))(?![\p{L}])
    `,
    'u',
  ),
  new RegExp(`(?<![\\p{L}\\d])${FAT} (?:cero|zero|nil|nought)(?![\\p{L}])`, 'u'),
];
/** "I keep it at 6", "lo dejo al 5": how whoever asks has their soap. */
const KEEPS = unbroken`
  (?:(?:i|we) (?:(?:always|usually|normally|mostly) )?(?:keep|like|run|have|do|make|set|want) (?:it|mine|
  ours|them|everything|my (?:soaps?|bars?))|(?:siempre )?(?:lo|la|los|las) (?:dejo|dejamos|hago|hacemos|
  llevo|quiero|uso)(?: siempre)?)
`;
/** "sosa al 5", "lye at 5%", "al 7%", "for 5": lye water is never so weak, so that it is the superfat (common practice, no source). */
const AT = new RegExp(
  unbroken`
    (?<![\p{L}\d])(?:${LYE} |${KEEPS} )?(?:at|al|a|for|para|to) (?:un |
    a )?(?<figure>\d{1,2}(?:[.,]\d)?)(?<percent> ?(?:%|percent|pct|por ?ciento))?(?= *(?:[;,.](?!\d)|$|and |
    y |x fa|please|pls|plz|porfa|
    (?:in|en) (?:g|gr|grams?|gramos|oz|ounces|onzas)(?!\p{L})|thanks|ta(?!\p{L})|cuant[oa]s?(?!\p{L})|eh(?!\p{L})|(?:after|with|con|
    tras) (?:the |el |la )?(?:swap|change|switch|cambio)(?!\p{L})|how much|${LYE}|(?<=^(?:al|
    at) \d{1,2} ?%) *\d))
  `,
  'u',
);
const BEHIND_WEIGHT = new RegExp(
  `(?<=\\d\\d ?(?:g|gr|gramos|grams|kg|oz|lbs?)?) (?<figure>\\d{1,2}(?:[.,]\\d)?) ?%(?= *(?:[;,]|$|${LYE}|soda))`,
  'u',
);
/** Percent up to which a bare figure beside lye is its superfat, and from which no percent is one (common practice, no source). */
export const MOST_BARE_SUPERFAT = 12;
export const MOST_SUPERFAT = 30;

const STRENGTH = new RegExp(
  `(?<![\\p{L}\\d])(?:lejia de )?${LYE} (?:at|al|de|a) (2[5-9]|3\\d|40) ?%(?! ?(?:de |of )?(?:${FAT}|solu|disol|conc))`,
  'u',
);

const POTASH =
  '(?:koh|potassium hydroxide|caustic potash|potasa(?: caustica)?|hidroxido (?:de )?potas(?:ico|io))';
/** "Pure KOH", "potasa pura (KOH)": taken at its word, since lye that is purer than it was counted burns. */
const PURE_POTASH = new RegExp(
  unbroken`
    (?<![\p{L}\d])(?:pure|pura|puro) ${POTASH}(?: ${POTASH})?(?![\p{L}\d])(?! ?\d)|
    (?<![\p{L}\d])${POTASH}(?: ${POTASH})?(?: is| es|,)? (?:pure|pura|
    puro)(?: ${POTASH})?(?![\p{L}\d])(?! (?!(?:para|pa|for|with|con|en|in|y|and) )(?:[\p{L}]+)(?= \d| oil))
  `,
  'u',
);

/** A percent that may be how pure it is; a smaller one is a superfat or water. */
const LIKE_A_PURITY = /(?<![\d.,])(?:[5-9]\d|100)(?:[.,]\d+)? ?(?:%|percent|por ciento)/u;

const KEPT: readonly RegExp[] = [
  // Two alkalis by their shares.
  `${PERCENT} ?(?:of |de )?${LYE}(?: ?[,/+]| and| y| con)? ?${PERCENT} ?(?:of |de )?${LYE}`,
  `${PERCENT} ?(?:de |of )?(?:${LYE} )?(?:concentration|concentracion|conc|strength|solution|solucion|purity|pureza|pure)`,
  unbroken`
    (?:(?:water|agua) )?(?:${LYE} )?(?:at |a |al )?(?:concentration|concentracion|conc|strength|solution|
    solucion|purity|pureza)(?: (?:of|de)(?: (?:the|la|el))? ${LYE})? ?(?:of |at |de |del |al |is |
    : ?)*${PERCENT}
  `,
  unbroken`
    (?:water|agua|ratio|proporcion)(?: (?:to|a) ${LYE})?(?: (?:at|of|de|al|ratio|
    proporcion))* \d+(?:[.,]\d+)? ?: ?\d+(?:[.,]\d+)?(?! ?:)(?: (?:to|a) ${LYE})?
  `,
  String.raw`\d+(?:[.,]\d+)? ?: ?\d+(?:[.,]\d+)? (?:water|agua|ratio)(?: (?:to|a) ${LYE})?(?: ratio)?`,
  `${LYE} (?:at |al |del |of |is |says |es |dice |de )?(?:(?:8|9)\\d(?:[.,]\\d+)?|100) ?%`,
  `${LYE} ${DRY_PURITY}`,
  `(?:${LYE} )?(?:al|at|del) (?:8|9)\\d(?:[.,]\\d+)? ?%`,
  `(?:water|agua)(?: (?:at|of|al|del|is))* ${PERCENT}(?: (?:of|de) (?:the |los )?(?:oils?|aceites?))?`,
].map(pattern => new RegExp(`(?<![\\p{L}\\d])(?:${pattern})(?![\\p{L}\\d])`, 'u'));

/** "97% purity", "al 97% de pureza": in the order that the strict reader takes. */
const PURITY_BEHIND = new RegExp(
  `^(?:${LYE} )?(?:al |at )?(\\d+(?:[.,]\\d+)?) ?(?:%|percent|por ?ciento) ?(?:of |de )?(?:purity|pureza)$`,
  'u',
);

/** What is no ingredient's amount, as the reader of lye questions takes it, and the line without it. */
export type Fixed = {
  readonly rest: string;
  readonly superfat: string | undefined;
  readonly kept: readonly string[];
};

/** "If I go from 5 to 8 percent superfat": the one that it goes to. */
const FROM_ONE_FAT = new RegExp(
  unbroken`
    (?:(?:if )?(?:i|we) go |si (?:paso|subo|bajo) )?(?<!\p{L})(?:from|del?) \d{1,2}(?: ?%)? (?:to|
    al?) (?=\d{1,2} ?(?:%|percent|por ?ciento)? ?(?:de )?${FAT})
  `,
  'u',
);
/** "Subo el sobreengrasado de 5 a 8". */
const FAT_FROM_TO = new RegExp(
  unbroken`
    ((?:sub|baj|cambi|pas|rais|lower|chang|mov|bump|put|go|went|up)\p{L}*(?: (?:it|up|down|the|my|el|mi|
    la))* ${FAT}) (?:from|del?) (?:the )?\d{1,2}(?:[.,]\d)?(?: ?(?:%|percent|por ciento))? (?:to|al?) (?=\d)
  `,
  'u',
);
/** "Sobreengrasado? 8", "superfat, the 8". */
const ASKED_AND_TOLD = new RegExp(
  unbroken`
    ((?<!(?:what|which|que|cual|how much|cuanto) (?:is the |the |el |
    es el )?)(?<![\p{L}\d])${FAT}) ?[;,] ?(?:(?:un|el|al|the|at) )?(?=\d{1,2}(?:[.,]\d)? ?(?:%|percent|
    por ciento)? ?(?:[;,]|$))
  `,
  'u',
);
/** "50/30/20". */
const SLASHED = /(?<![\d/])\d{1,2}(?: ?\/ ?\d{1,2}){1,5}(?![\d/])/gu;
const isHundred = (figures: string): boolean =>
  Math.abs(figures.split('/').reduce((sum, figure) => sum + Number(figure), 0) - 100) <= 1;

/** Takes superfat, strength, purity and the ratio of water out of a line that `plainWords` gave. Pure. */
export function fixedIn(line: string): Fixed {
  let rest = withPurityTold(withWaterByLye(withLyeWater(line.replace(/ ?@ ?/gu, ' at '))))
    .replace(/(?<!\p{L})s\/f(?!\p{L})/gu, 'sf')
    .replace(/(?<=\d )(sf)(?=\d)/gu, '; sf ')
    .replace(FROM_ONE_FAT, '')
    .replace(ASKED_AND_TOLD, '$1 ')
    .replace(FAT_FROM_TO, '$1 ')
    .replace(SLASHED, whole => (isHundred(whole) ? whole.replaceAll('/', ' ') : whole));
  let superfat: string | undefined;
  const kept: string[] = [];
  // "Lejía de sosa al 33%": of lye water, whose strength nobody takes for a superfat.
  rest = rest.replace(STRENGTH, (_, percent: string) => {
    kept.push(`${percent}% lye concentration`);
    return ' ; ';
  });
  const pure = LIKE_A_PURITY.test(rest.replace(ANY_FAT, '')) ? null : PURE_POTASH.exec(rest);
  if (pure) {
    kept.push('koh purity 100%');
    rest = without(rest, pure, WEIGHED.test(rest.slice(0, pure.index)) ? 'koh' : '');
  }
  for (const pattern of KEPT) {
    const match = pattern.exec(rest);
    if (!match) continue;
    kept.push(match[0].replace(/ (?:is|says|es|dice) /u, ' ').replace(PURITY_BEHIND, 'purity $1%'));
    // "170 g KOH 85%": the alkali is what was weighed, too.
    const [lye] = WEIGHED.test(rest.slice(0, match.index)) ? (FIRST_LYE.exec(match[0]) ?? []) : [];
    rest = without(rest, match, lye);
  }
  for (const pattern of SUPERFAT) {
    const match = superfat === undefined ? pattern.exec(rest) : null;
    if (!match) continue;
    superfat = match.groups?.figure?.replace(' ', '') ?? '0';
    rest = without(rest, match);
    // "Superfat at 5, no make that 8".
    const behind = rest.slice(match.index);
    // "Superfat 20, yes 20".
    const yes = YES_SO.exec(behind);
    if (yes?.groups?.figure === superfat) {
      rest = `${rest.slice(0, match.index)} ; ${behind.slice(yes[0].length)}`;
      continue;
    }
    const why = PUT_RIGHT_WHY.exec(behind);
    const again = PUT_RIGHT.exec(behind) ?? (why && isReason(why.groups!.why!) ? why : null);
    if (!again) continue;
    superfat = again.groups!.figure!;
    rest = `${rest.slice(0, match.index)} ; ${behind.slice(again[0].length)}`;
  }
  const at = superfat === undefined ? AT.exec(rest) : null;
  const figure = Number(at?.groups?.figure?.replace(',', '.'));
  if (at && figure <= (at.groups?.percent === undefined ? MOST_BARE_SUPERFAT : MOST_SUPERFAT)) {
    superfat = at.groups!.figure!;
    // "I got 141 g lye at 5 percent": the lye is what was weighed.
    const [lye] = WEIGHED.test(rest.slice(0, at.index)) ? (FIRST_LYE.exec(at[0]) ?? []) : [];
    rest = without(rest, at, lye);
  }
  // "Cerdo 150 5%": the one percent of a line whose oils are weighed.
  const behindWeight =
    superfat === undefined && rest.split('%').length === 2 ? BEHIND_WEIGHT.exec(rest) : null;
  if (behindWeight && Number(behindWeight.groups!.figure!.replace(',', '.')) <= MOST_BARE_SUPERFAT) {
    superfat = behindWeight.groups!.figure!;
    rest = without(rest, behindWeight);
  }
  // The same superfat in other words: "sin sobreengrasado o sea 0%".
  if (superfat !== undefined)
    rest = rest.replace(
      new RegExp(
        `(?<=[;,] *)(?:(?:o sea|so|i\\.?e\\.?|that is) )?${superfat} ?(?:%|percent)(?= ?[;,]|$)`,
        'u',
      ),
      ' ; ',
    );
  return { rest, superfat, kept };
}

/** A superfat's percent is none of the potash. */
const ANY_FAT = new RegExp(
  unbroken`
    \d+(?:[.,]\d+)? ?(?:%|percent|por ?ciento)? ?(?:de |of )?(?:${FAT})|(?:${FAT}) ?(?:of |de |at |al |is |
    =|: ?)*\d+(?:[.,]\d+)? ?(?:%|percent|por ?ciento)?
  `,
  'gu',
);
const WEIGHED = /\d ?(?:g|gr|grams?|gramos?|oz|ounces?|onzas?|kg|lbs?)(?: of| de)? $/u;
const FIRST_LYE = new RegExp(`^${LYE}`, 'u');
const without = (line: string, { index, 0: text }: RegExpExecArray, instead = ''): string =>
  `${line.slice(0, index)}${instead} ; ${line.slice(index + text.length)}`;
