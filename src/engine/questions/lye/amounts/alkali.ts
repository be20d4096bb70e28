import { unbroken } from '../../../over-lines.ts';
import {
  DRY_PURITY,
  decimal,
  FAT,
  LYE,
  MASS,
  PERCENT,
  POTASSIUM,
  type Remaining,
  SODIUM,
  told,
} from './words.ts';

/** "sosa al 98%", "KOH at 85". */
const PURE = new RegExp(`(${LYE}) ${DRY_PURITY}(?: pure| purity| pura| de pureza)?`, 'u');

/** Which lye a recipe has: one alkali or both, with the share of the potash (percent) where shares are told, and whether it comes dissolved. */
export type LyeTold = {
  readonly alkali: 'NaOH' | 'KOH' | 'both';
  readonly kohPercent?: number;
  readonly solution: boolean;
};

/** Whether lye is none alone that is weighed dry: both, or one in water. Pure. */
export const isNoSingleAlkali = ({ alkali, solution }: LyeTold): boolean => alkali === 'both' || solution;

export type Alkali = {
  readonly given: { lye?: string; purity?: number };
  readonly lye: LyeTold;
  readonly purityTold: boolean;
  readonly purity: number | undefined;
};

/** "KOH no, NaOH": the alkali that is not meant. */
const NOT_THIS = new RegExp(`(?<![\\p{L}\\d])${LYE},? no(?= ?[,;] ?(?:si )?${LYE})`, 'gu');

const ANY_FAT = new RegExp(
  String.raw`\d+(?:[.,]\d+)? ?(?:%|percent|por ciento)? ?(?:de |of )?${FAT}|${FAT} ?(?:of |de |al |is |: ?)*\d+(?:[.,]\d+)? ?(?:%|percent|por ciento)?`,
  'gu',
);

/** Percent from which dry alkali is sold. */
const LIKE_A_PURITY = 80;
/** "170 g KOH 85%": what was weighed, and how pure it is. */
const WEIGHED_AT = new RegExp(
  `(${MASS}(?: of| de)? ${LYE}) (?:at |al |de |del )?${PERCENT}(?: pure| purity| pura| de pureza)?`,
  'u',
);

/** "pure KOH": taken at its word, since lye that is purer than it was counted burns. */
const SAID_PURE =
  /(?<![\p{L}\d])(?:pure (koh|potassium hydroxide|caustic potash)|(koh|potasa(?: caustica)?|hidroxido (?:de )?potas(?:ico|io)) pur[oa])(?!\p{L})/gu;

/** Which alkali, how pure, and whether it comes dissolved. */
export function alkaliIn(rest: Remaining): Alkali {
  rest.text = rest.text.replace(SAID_PURE, (whole, one?: string, two?: string) =>
    /\d ?(?:%|percent|por ciento)/u.test(rest.text.replace(ANY_FAT, ''))
      ? whole
      : `${one ?? two} purity 100%`,
  );
  rest.text = rest.text.replace(NOT_THIS, ' ; ');
  rest.text = rest.text.replace(WEIGHED_AT, (whole: string, mass: string, percent: string) =>
    decimal(percent) >= LIKE_A_PURITY ? `${mass} ; purity ${percent}%` : whole,
  );
  rest.text = rest.text.replace(PURE, '$1 ; purity $2%');
  const potassium = POTASSIUM.test(rest.text);
  const both =
    (potassium && SODIUM.test(rest.text)) || /\b(?:dual lye|both lyes|doble sosa|lye mix)\b/u.test(rest.text);
  const name = potassium ? 'KOH' : 'NaOH';
  if (both) return { ...bothIn(rest), purityTold: true, purity: undefined };
  const dissolved = told(
    rest.take(
      `(?:a |my |with |using |con |en )*${PERCENT} ?(?:${LYE} )?(?:solution|solucion|master ?batch(?:ed)?)(?: of ${LYE}| de ${LYE})?`,
      `(?:una )?(?:solucion|disolucion)(?: de ${LYE})? (?:al |de |del )?${PERCENT}`,
      `${LYE} solution (?:at |of )?${PERCENT}`,
    ),
  );
  // Weaker than that it is the strength of a batch's lye water, which /plan calls water.
  if (dissolved !== undefined && decimal(dissolved) < 45) rest.text += ` ; ${dissolved}% lye concentration`;
  else if (dissolved !== undefined)
    return {
      given: { lye: `${dissolved}% ${potassium ? 'KOH' : 'lye'} solution` },
      lye: { alkali: name, solution: true },
      purityTold: true,
      purity: 1,
    };
  const purity = told(
    rest.take(
      unbroken`
        (?:the |my |la |mi |with |con |is |of )*(?:${LYE} )?(?:purity|
        pureza)(?: of ${LYE}| de la ${LYE})? ?(?:of |is |at |es |de |del |al |: ?)*${PERCENT}(?: ${LYE})?
      `,
      `${LYE} (?:at |of |is |al |de |del |es |con )*${PERCENT} ?(?:pure|purity|pura|puro|de pureza|pureza)`,
      `${PERCENT} ?(?:pure|purity|pura|de pureza) (?:${LYE})?`,
      ...(potassium
        ? [
            `${LYE} (?:at |al |de |del )?${PERCENT}(?! ?(?:of |de )?(?!for|para|in|en|on|with|con|y|and)[a-z])`,
            `${PERCENT} ?(?:koh|potassium hydroxide|potasa(?: caustica)?|hidroxido de potasio)`,
          ]
        : []),
    ),
  );
  const figure = purity === undefined ? undefined : decimal(purity);
  return {
    given: potassium
      ? { lye: figure === undefined ? name : `KOH ${figure}%` }
      : figure === undefined
        ? {}
        : { purity: figure },
    lye: { alkali: name, solution: false },
    purityTold: figure !== undefined,
    purity: figure === undefined ? undefined : figure / 100,
  };
}

/** Shares of two alkalis; untold, `/plan` says what it takes. */
function bothIn(rest: Remaining): Pick<Alkali, 'given' | 'lye'> {
  const share = (of: string) => told(rest.take(`${PERCENT} ?(?:of |de )?${of}`, `${of} ?${PERCENT}`));
  const koh = share('(?:koh|potassium hydroxide|potasa(?: caustica)?|hidroxido de potasio)');
  const naoh = share('(?:naoh|sodium hydroxide|sosa(?: caustica)?|hidroxido de sodio)');
  rest.take('(?:with |con )?(?:dual lye|both lyes|lye mix)');
  if (koh === undefined && naoh === undefined)
    return { given: { lye: 'both' }, lye: { alkali: 'both', solution: false } };
  const kohPercent = koh === undefined ? 100 - decimal(naoh!) : decimal(koh);
  return {
    given: { lye: `NaOH ${naoh ?? 100 - kohPercent}% + KOH ${koh ?? kohPercent}%` },
    lye: { alkali: 'both', kohPercent, solution: false },
  };
}
