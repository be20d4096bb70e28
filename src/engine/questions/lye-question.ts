import { ADDITIVES } from '../batch/additives.ts';
import { DEFAULT_PURITY } from '../batch/lye/lye.ts';
import { knownOil } from '../batch/oils/find-oil.ts';
import { parseOils } from '../batch/oils/oil-list.ts';
import type { WrittenPlan } from '../batch/planning/written-plan.ts';
import { OUNCE_G, POUND_G } from '../quantities/units.ts';
import { Refusal, refuse } from '../refusal.ts';
import type { WeighedLye } from './lye-check.ts';

/** What of a lye question `/plan` takes, in its own words, and lye or water that the question itself weighs. */
export type LyeQuestion = {
  readonly given: Partial<
    Pick<WrittenPlan, 'oils' | 'size' | 'superfat' | 'lye' | 'water' | 'purity' | 'additives' | 'liquid'>
  >;
  /** Lye that somebody weighed already. */
  readonly weighed: WeighedLye | undefined;
  /** Grams of oils where they are told for the whole, and not oil by oil. */
  readonly oilGrams: number | undefined;
  readonly asksWater: boolean;
  /** True where the alkali is KOH and its purity is not told. */
  readonly usualKoh: boolean;
};

const LYE = String.raw`(?:lye|naoh|koh|caustic soda|caustic potash|(?:sodium|potassium) hydroxide|sosa caustica|sosa|soda caustica|lejia|potasa caustica|potasa|potash|hidroxido (?:de )?(?:sodico|sodio|potasico|potasio))`;
const POTASSIUM =
  /\b(?:koh|potassium hydroxide|caustic potash|potasa(?: caustica)?|hidroxido (?:de )?potas(?:ico|io))\b/u;
const SODIUM =
  /\b(?:naoh|sodium hydroxide|caustic soda|sosa(?: caustica)?|soda caustica|hidroxido (?:de )?sod(?:ico|io))\b/u;
const UNIT = String.raw`(?:kg|kilos?|kilograms?|kilogramos?|g|gr|grams?|gramos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)\b`;
const COUNT = String.raw`\d+(?:[.,]\d+)?(?: \d+\/\d+)?`;
const MASS = String.raw`${COUNT} ?${UNIT}`;
const PERCENT = String.raw`(\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)`;
const FAT = String.raw`(?:superfat(?:ting|ted)?|sf|sobre ?engrasado|sobre ?engrase|sobregrasa)`;

const IN_GRAMS: readonly (readonly [unit: RegExp, grams: number])[] = [
  [/^k/u, 1000],
  [/^g/u, 1],
  [/^o/u, OUNCE_G],
  [/^[lp]/u, POUND_G],
];
const decimal = (figure: string) => Number(figure.replace(',', '.'));

/** Grams of `250 g`, `1.5 kg`, `2 libras`. */
function gramsOf(mass: string): number {
  const [, figure = '', unit = ''] = new RegExp(String.raw`^(${COUNT}) ?(\p{L}+)`, 'u').exec(mass) ?? [];
  const [whole = '', part] = figure.split(' ');
  const [over = 0, under = 1] = (part ?? '0/1').split('/').map(Number);
  return (decimal(whole) + over / under) * (IN_GRAMS.find(([start]) => start.test(unit))?.[1] ?? Number.NaN);
}

const neat = (grams: number) => String(Number(grams.toFixed(2)));

/** Lower case without accents, thousands and pounds with ounces as one figure of grams. */
function plainWords(question: string): string {
  return question
    .slice(0, 2000)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[?!¿¡"“”«»()]|\.(?!\d)/gu, ' ')
    .replace(/\b(\d{1,3})[.,](\d{3})(?= ?(?:g|gr|grams?|gramos?|ml)\b)/gu, '$1$2')
    .replace(
      /(\d+(?:[.,]\d+)?) ?(?:lbs?|pounds?|libras?)(?: and| y|,)? (\d+(?:[.,]\d+)?) ?(?:oz|ounces?|onzas?)\b/gu,
      (_, pounds: string, ounces: string) =>
        `${neat(decimal(pounds) * POUND_G + decimal(ounces) * OUNCE_G)} g`,
    )
    .replace(/\s+/gu, ' ')
    .trim();
}

/** A text from which what was understood is taken out, so that nothing left over is passed by. */
class Remaining {
  text: string;
  constructor(text: string) {
    this.text = text;
  }

  /** The first match of any pattern, taken out. */
  take(...patterns: readonly string[]): RegExpExecArray | undefined {
    for (const pattern of patterns) {
      const match = new RegExp(String.raw`(?<![\p{L}\d])(?:${pattern})(?![\p{L}\d])`, 'u').exec(this.text);
      if (!match) continue;
      this.text = `${this.text.slice(0, match.index)} ; ${this.text.slice(match.index + match[0].length)}`;
      return match;
    }
    return undefined;
  }
}

const told = (match: RegExpExecArray | undefined) => match?.slice(1).find(part => part !== undefined);

/**
 * Takes a question about lye apart: what `/plan` has an option for, lye weighed already, and all the rest, which must read
 * as a list of oils. Nothing is passed by: what is neither understood nor a word that changes nothing is refused, as
 * `/plan` would. Pure. Throws the Refusals of `parseOils`.
 * @example readLyeQuestion('how much KOH 90% for 500 g olive').given // { lye: 'KOH 90%', oils: '500 g olive' }
 */
export function readLyeQuestion(question: string): LyeQuestion {
  const rest = new Remaining(plainWords(question));
  const superfat = superfatIn(rest);
  const alkali = alkaliIn(rest);
  const water = waterIn(rest);
  const weighed = weighedIn(rest, alkali);
  const added = addedIn(rest);
  const size = rest.take(
    String.raw`(${MASS})(?: total| of| de| in)* (?:total )?(?:oils|oil|fats|aceites|aceite|grasas)(?: in all| in total| en total)?(?! de | [a-z]+ oil)`,
  )?.[1];
  const oils = oilsIn(rest.text);
  return {
    given: {
      ...(oils !== undefined && { oils }),
      ...(size !== undefined && { size: `${size} oils` }),
      ...superfat,
      ...alkali.given,
      ...water,
      ...added,
    },
    weighed,
    oilGrams: size === undefined ? undefined : gramsOf(size),
    asksWater: /\b(?:how much|cuanta) (?:water|agua)\b/u.test(plainWords(question)),
    usualKoh: alkali.potassium && !alkali.purityTold,
  };
}

function superfatIn(rest: Remaining): { superfat?: number } {
  if (rest.take(String.raw`(?:no|zero|without(?: any)?|sin|cero) (?:de )?${FAT}`)) return { superfat: 0 };
  const percent = told(
    rest.take(
      String.raw`(?:a |at |at a |con |with |with a |al |un )*(-? ?\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)? ?(?:de |of )?${FAT}`,
      String.raw`${FAT} ?(?:of |at |de |del |al |is |=|: ?)*(-? ?\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)?`,
    ),
  );
  return percent === undefined ? {} : { superfat: decimal(percent.replace(' ', '')) };
}

type Alkali = {
  readonly given: { lye?: string; purity?: number };
  readonly potassium: boolean;
  readonly purityTold: boolean;
  readonly purity: number | undefined;
};

/** Which alkali, how pure, and whether it comes dissolved. */
function alkaliIn(rest: Remaining): Alkali {
  const potassium = POTASSIUM.test(rest.text);
  const both =
    (potassium && SODIUM.test(rest.text)) || /\b(?:dual lye|both lyes|doble sosa|lye mix)\b/u.test(rest.text);
  const name = potassium ? 'KOH' : 'NaOH';
  if (both) return { given: { lye: bothIn(rest) }, potassium: false, purityTold: true, purity: undefined };
  const dissolved = told(
    rest.take(
      String.raw`(?:a |my |with |using |con |en )*${PERCENT} ?(?:${LYE} )?(?:solution|solucion|master ?batch(?:ed)?)(?: of ${LYE}| de ${LYE})?`,
      String.raw`(?:una )?(?:solucion|disolucion)(?: de ${LYE})? (?:al |de |del )?${PERCENT}`,
      String.raw`${LYE} solution (?:at |of )?${PERCENT}`,
    ),
  );
  // Weaker than that it is the strength of a batch's lye water, which /plan calls water.
  if (dissolved !== undefined && decimal(dissolved) < 45) rest.text += ` ; ${dissolved}% lye concentration`;
  else if (dissolved !== undefined)
    return {
      given: { lye: `${dissolved}% ${potassium ? 'KOH' : 'lye'} solution` },
      potassium,
      purityTold: true,
      purity: 1,
    };
  const purity = told(
    rest.take(
      String.raw`(?:the |my |la |mi |with |con |is |of )*(?:${LYE} )?(?:purity|pureza)(?: of ${LYE}| de la ${LYE})? ?(?:of |is |at |es |de |del |al |: ?)*${PERCENT}(?: ${LYE})?`,
      String.raw`${LYE} (?:at |of |is |al |de |del |es |con )*${PERCENT} ?(?:pure|purity|pura|puro|de pureza|pureza)`,
      String.raw`${PERCENT} ?(?:pure|purity|pura|de pureza) (?:${LYE})?`,
      ...(potassium
        ? [
            String.raw`${LYE} (?:at |al |de |del )?${PERCENT}(?! ?(?:of |de )?[a-z])`,
            String.raw`${PERCENT} ?(?:koh|potassium hydroxide|potasa(?: caustica)?|hidroxido de potasio)`,
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
    potassium,
    purityTold: figure !== undefined,
    purity: figure === undefined ? undefined : figure / 100,
  };
}

/** Shares of two alkalis; untold, `/plan` says what it takes. */
function bothIn(rest: Remaining): string {
  const share = (of: string) =>
    told(rest.take(String.raw`${PERCENT} ?(?:of |de )?${of}`, String.raw`${of} ?${PERCENT}`));
  const koh = share(String.raw`(?:koh|potassium hydroxide|potasa(?: caustica)?|hidroxido de potasio)`);
  const naoh = share(String.raw`(?:naoh|sodium hydroxide|sosa(?: caustica)?|hidroxido de sodio)`);
  rest.take(String.raw`(?:with |con )?(?:dual lye|both lyes|lye mix)`);
  if (koh === undefined && naoh === undefined) return 'both';
  if (koh === undefined) return `NaOH ${naoh}% + KOH ${100 - decimal(naoh!)}%`;
  return `NaOH ${naoh ?? 100 - decimal(koh)}% + KOH ${koh}%`;
}

function waterIn(rest: Remaining): { water?: string } {
  const ratio = rest.take(
    String.raw`(?:a |at |with |con |al )*(\d+(?:[.,]\d+)?) ?: ?(\d+(?:[.,]\d+)?)(?: (?:water|agua|ratio|to|lye|a|de|sosa|proporcion))*`,
  );
  if (ratio) return { water: `${ratio[1]}:${ratio[2]}` };
  const strength = told(
    rest.take(
      String.raw`(?:a |at |at a |with |con |with a |al )*${PERCENT} ?(?:de |of )?(?:${LYE} )?(?:concentration|concentracion|strength)(?: (?:of|de) ${LYE})?`,
      String.raw`(?:${LYE} )?(?:concentration|concentracion|strength)(?: (?:of|de) ${LYE})? ?(?:of |at |de |del |al |is |: ?)*${PERCENT}`,
      String.raw`(?:a |at |with |con |al )*${PERCENT} ?(?:de )?${LYE}`,
    ),
  );
  if (strength !== undefined) return { water: `${strength}% lye` };
  const ofOils = told(
    rest.take(
      String.raw`(?:a |at |with |con |al )*${PERCENT} ?(?:de |of )?(?:water|agua)(?: (?:of|as|de|del|sobre)(?: the| los)? (?:oils?|aceites?|percent of oils))?`,
      String.raw`(?:water|agua) ?(?:at |of |al |del |is |: ?)*${PERCENT}(?: (?:of|de) (?:the |los )?(?:oils?|aceites?))?`,
    ),
  );
  return ofOils === undefined ? {} : { water: `${ofOils}% of oils` };
}

function weighedIn(rest: Remaining, { potassium, purity }: Alkali): WeighedLye | undefined {
  const mass = told(
    rest.take(
      String.raw`(${MASS})(?: of| de)?(?: the| my| la)? ${LYE}`,
      String.raw`${LYE}(?: is|:|=| es)? ?(${MASS})(?! ?(?:of |de )?[a-z]+(?: oil)?)`,
    ),
  );
  if (mass === undefined) return undefined;
  const alkali = potassium ? 'KOH' : 'NaOH';
  return { alkali, grams: gramsOf(mass), purity: purity ?? DEFAULT_PURITY[alkali] };
}

/** Bare milk is the drink, whatever fat is named after it. */
const MILK = /^(?:milk|leche)$/u;
const NAMES = ADDITIVES.flatMap(({ synonyms, liquid }) =>
  synonyms.map(name => ({ name: plainWords(name), isLiquid: liquid !== undefined })),
)
  .filter(
    ({ name }) =>
      name.length > 2 &&
      !/^(?:agua|water|oil)$/u.test(name) &&
      (MILK.test(name) || knownOil(name) === undefined),
  )
  .sort((a, b) => b.name.length - a.name.length);
const SPOONED = String.raw`(?:${MASS}|${COUNT} ?(?:%|percent|por ciento|tbsps?|tsps?|tablespoons?|teaspoons?|cups?|ml|cdas?|cdtas?|cucharadas?|cucharaditas?|tazas?))`;

/** What is stirred in and what stands in the place of water, as `/plan` takes them. */
function addedIn(rest: Remaining): { additives?: string; liquid?: string } {
  const additives: string[] = [];
  const liquids: string[] = [];
  for (const { name, isLiquid } of NAMES) {
    if (!rest.text.includes(name)) continue;
    const plain = name.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);
    const amount = told(
      rest.take(
        String.raw`(?:with |con |and |y |plus |mas )*(${SPOONED}) (?:of |de )?${plain}(?! (?:oil|butter|seed|wax|fat))`,
        String.raw`(?:with |con |and |y |plus |mas )*${plain} (${SPOONED})(?! (?:of |de )?(?:olive|coconut|palm|[a-z]+ (?:oil|butter)))`,
      ),
    );
    if (amount !== undefined) additives.push(`${name} ${amount}`);
    else if (
      rest.take(
        String.raw`(?:with |con |and |y |plus |mas |some |a |en |in |un poco de )*${plain}(?! (?:oil|butter|seed|wax|fat))(?: (?:instead|in place) of (?:the )?water| en (?:vez|lugar) del? agua)?`,
      )
    )
      (isLiquid ? liquids : additives).push(name);
  }
  return {
    ...(additives.length > 0 && { additives: additives.join(', ') }),
    ...(liquids.length > 0 && { liquid: liquids.join(', ') }),
  };
}

/** Words that change nothing of the lye, at either end of what is left. */
const IDLE = new Set(
  'how much many lye naoh koh sodium potassium hydroxide caustic soda sosa caustica lejia potasa hidroxido de sodio potasio do i we you need should would will use using used to make for with in of and the a an my me please hi hello hey thanks is it that this right correct ok okay safe by mistake accidentally put added have had has got recipe says said say calls soap soaps bar bars batch batches can could what whats the s amount calculate calculator calc give tell water grams oil oils on at if it did so too cold process cp made as from into be are was there all only just about also or but know want wanna going gonna does take takes need needed cuanta cuanto cuantos cuantas necesito hace falta hay que para con en y de la el los las un una mi me por favor gracias hola es esta bien correcto receta dice jabon jabones pastillas lote puedo usar use uso eche puse echar poner hacer quiero calcular calcula cantidad agua gramos error sin querer lleva llevan va van se le que si a al del he puesto echado ok then will enough weigh weighed masses ?'.split(
    ' ',
  ),
);

function trimmed(piece: string): string {
  const words = piece.split(' ').filter(word => word !== '');
  const isIdle = (word: string | undefined) => word !== undefined && IDLE.has(word.replace(/['’:]/gu, ''));
  while (isIdle(words[0])) words.shift();
  // An oil's own last word stays: "olive oil".
  while (isIdle(words.at(-1)) && !/^(?:oils?)$/u.test(words.at(-1)!)) words.pop();
  return words.join(' ');
}

const SHARES: readonly (readonly [pattern: RegExp, percent: string])[] = [
  [/\b(?:two|2) thirds|\bdos tercios|\b2\/3/gu, '66.67%'],
  [/\b(?:a|one|1) third|\bun tercio|\b1\/3/gu, '33.33%'],
  [/\bthree quarters|\btres cuartos/gu, '75%'],
  [/\b(?:a |one )?quarter\b(?! of a)|\bun cuarto\b(?! de (?:kilo|libra))/gu, '25%'],
  [/\bhalf(?! (?:an? )?(?:kilo|kg|pound|lb|cup|ounce))|\b(?:la )?mitad(?: de)?\b/gu, '50%'],
];

/** The list of oils that is left, read by the plan's own reader, which refuses whatever it does not know. */
function oilsIn(text: string): string | undefined {
  const shared = SHARES.reduce((all, [pattern, percent]) => all.replace(pattern, percent), text);
  const list = shared
    .replace(/(?<=\p{L}) (?:and |y )?(?=\d+(?:\.\d+)?%)/gu, ', ')
    .split(/[;,](?!\d)/u)
    .map(trimmed)
    .filter(piece => piece !== '' && !/^(?:oils?)$/u.test(piece))
    .join(', ');
  if (list === '') return undefined;
  const volume =
    /(?:\d|\b(?:an?|one|two|half|una?|dos|media)) ?(?:cups?|tazas?|ml|l|lit(?:er|re)s?|litros?|tbsps?|tsps?|pints?|quarts?|gallons?)\b/u;
  if (volume.test(list)) refuse('oil-by-volume', { text: list.slice(0, 60) });
  try {
    parseOils(list);
    return list;
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || refusal.id !== 'oils-without-unit') throw refusal;
    const grams = list.replace(/\b(\d+)\b(?! ?(?:g|kg|oz|lbs?)\b)/gu, '$1 g');
    parseOils(grams);
    return grams;
  }
}

const ASKED = new RegExp(
  String.raw`\b(?:how (?:much|many)|cuant[oa]s?|calcul\w*|que cantidad de|amount of)\b.{0,16}\b${LYE}\b|^${LYE}\b.*\d`,
  'u',
);
const TOLD = new RegExp(String.raw`\b${MASS}(?: of| de)?(?: the| my| la)? ${LYE}\b`, 'u');

/** What of lye a question is about, as far as its turns of phrase tell. */
export function lyeAskedIn(question: string): { readonly amount: boolean; readonly weighed: boolean } {
  const plain = plainWords(question);
  const figured = /\d/u.test(plain);
  return { amount: figured && ASKED.test(plain), weighed: TOLD.test(plain) };
}
