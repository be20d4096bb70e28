import { unbroken } from '../../over-lines.ts';
import { fold } from '../../text/fold.ts';
import { unaccented } from '../../text/unaccented.ts';

/** Words of the trade that can be explained, and what makers call them, in both languages. */
const CALLED = {
  batter: 'batter, raw soap batter, soap batter, masa, masa cruda, masa de jabon',
  trace:
    'trace, light trace, medium trace, thick trace, thin trace, traza, traza ligera, traza media, traza espesa',
  superfat:
    'superfat, super fat, superfatting, lye discount, sobreengrasado, sobreengrase, sobregrasa, descuento de sosa',
  gel: 'gel, gel phase, gelling, partial gel, fase de gel, fase gel, gelificacion, gelificado',
  glycerinRivers: 'glycerin rivers, glycerine rivers, glycerin river, rios de glicerina, rio de glicerina',
  ash: 'soda ash, ash, ash on soap, ceniza, ceniza de sosa, ceniza de soda',
  premix: 'premix, premixed colour, premezcla',
  paste: 'colour paste, pasta de color',
  portion: 'portion, portion of batter, parte de masa, porcion de masa',
  lake: 'lake, lakes, lake dye, lake pigment, colour lake, laca, lacas',
  mica: 'mica, micas, mica powder',
  oxide: 'oxide, oxides, iron oxide pigment, oxido, oxidos',
  dishTest: 'dish test, prueba del plato',
  testBar: 'test bar, barra de prueba',
  colourUnits: 'colour unit, colour units, delta e, ciede2000, unidad de color, unidades de color',
  zap: 'zap, zap test, calambre, prueba de la lengua, prueba del calambre',
  cure: 'cure, cure time, curing, curing time, cured soap, curado, curacion, tiempo de curado',
  ricing: 'ricing, riced soap, riced batter, arroz, efecto arroz, masa arrozada',
  acceleration:
    'acceleration, accelerating, accelerate, accelerated trace, seizing, seize, seized soap, aceleracion, acelerar, traza acelerada',
  bleed: 'bleed, bleeding, colour bleed, colour bleeding, migrate, migration, sangrado, sangrar, migracion',
  dispersion: 'dispersion, dispersing, colour dispersion, dispersed colour, dispersar, dispersion de color',
  ppo: 'ppo, p p o, tsp ppo, oz ppo, per pound of oils',
  waterDiscount: 'water discount, discounted water, water discounting, descuento de agua',
} as const;

export type TradeTerm = keyof typeof CALLED;

const BY_NAME: ReadonlyMap<string, TradeTerm> = new Map(
  Object.entries(CALLED).flatMap(([term, names]) =>
    names.split(', ').map(name => [fold(name), term as TradeTerm] as const),
  ),
);

/** A word that stands alone is asked for its meaning, but for what one may have or pour. */
const OWNED: ReadonlySet<TradeTerm> = new Set([
  'batter',
  'paste',
  'portion',
  'lake',
  'mica',
  'oxide',
  'premix',
  'testBar',
]);
const BARE: ReadonlySet<string> = new Set(
  [...BY_NAME].filter(([, term]) => !OWNED.has(term)).map(([name]) => name),
);

const ARTICLE = '(?:(?:a|an|the|el|la|los|las|un|una|lo) )?';
const FRAMES = [
  `(?:wh?[aou]?t(?: is|'s|s| are)|whats|define|explain|describe) (?:meant by |exactly is )?${ARTICLE}(.+?)`,
  `what (?:do (?:you|u|they|people|we) mean (?:by|with)|on earth is|exactly is|is (?:this|that)) ${ARTICLE}(.+?)`,
  `que (?:es|significa) (?:eso|esto) de(?:l)? ${ARTICLE}(.+?)`,
  `a que (?:le |se le )?llam(?:an?|as|amos) ${ARTICLE}(.+?)`,
  `(?:what (?:does|do)|tell me what) ${ARTICLE}(.+?) (?:mean|means|stand for)`,
  `(?:the )?(?:meaning|definition) of ${ARTICLE}(.+?)`,
  `${ARTICLE}(.+?) (?:meaning|definition)`,
  `(?:que (?:es|son|significan?|quiere decir)|que se entiende por|define|explica(?:me)?) ${ARTICLE}(.+?)`,
  `(?:significado|definicion) de(?:l)? ${ARTICLE}(.+?)`,
  `what (?:does|do) ${ARTICLE}(.+?) look like`,
  `(?:como se ve|como es|que aspecto tiene) ${ARTICLE}(.+?)`,
].map(
  frame =>
    new RegExp(
      unbroken`
        ^(?:and |so |but |please |y |pues |hola |hi |hey )?${frame}(?: (?:in|en) (?:cold process |soap|
        soaping|soap making|soapmaking|el |los )*(?:jabon(?:es)?|soap|soaping|making)?)?(?: (?:in|with|en|
        con) (?:one|an?|simple|plain|easy|few|una|pocas|palabras)(?: (?:sentence|words?|terms|frase|faciles|
        sencillas|simples|palabras|normales))*)?(?: please| por favor)?$
      `,
      'u',
    ),
);

const ASKED_BEHIND =
  /(?<!\p{L})(\p{L}+)(?!\p{L})(?: [\p{L}\p{N}']+){0,3}? (?:wh?[aou]ts?(?: is|'s)?|que (?:es|significa)|q es) (?:el |la |a |an |the )?\1(?: mean)?$/u;

/**
 * The word of the trade that a question asks the meaning of and nothing else: "what is trace?", "¿qué es la traza?", "trace?".
 * Undefined for any other question.
 */
export function termAsked(question: string): TradeTerm | undefined {
  if (question.length > 80) return undefined;
  const text = unaccented(question)
    .replace(/[^\p{L}\p{N}']+/gu, ' ')
    .trim();
  // "Recipe says 1 tsp ppo what is ppo": the word stands before its question already.
  const told = ASKED_BEHIND.exec(text)?.[1];
  const behind = told === undefined ? undefined : BY_NAME.get(fold(told));
  if (behind) return behind;
  const bare = BARE.has(fold(text)) ? BY_NAME.get(fold(text)) : undefined;
  if (bare) return bare;
  for (const frame of FRAMES) {
    const word = frame.exec(text)?.[1];
    const term = word === undefined ? undefined : BY_NAME.get(fold(word));
    if (term) return term;
  }
  return undefined;
}
