import { spaced, unbroken } from '../../over-lines.ts';
import { foldedWords } from '../../text/fold.ts';
import { deaccented } from '../../text/unaccented.ts';

/** What a fragrance is said, or known, to do besides its percent. */
export type ScentTold = {
  /** `told` by the member; `often`: its kind is known to (`name` as it was read). */
  readonly speeds?: { readonly how: 'told' } | { readonly how: 'often'; readonly name: string };
  /** Words that nothing here is known of, as they were typed. */
  readonly unknown?: string;
};

const SPEEDS = new RegExp(
  unbroken`
    (?<!\p{L})(?:accelerat\p{L}*|seiz\p{L}*|ricing|moves? (?:very |really )?fast|speeds?(?: (?:it|things|
    trace|batter))?(?: up)?|(?:very )?fast(?: mover| trace)?|thickens?|aceler\p{L}*|se agarra|
    agarrota\p{L}*|espesa\p{L}*|r[aá]pid[oa]s?)(?!\p{L})
  `,
  'giu',
);
const SPEEDS_NOT = new RegExp(
  unbroken`
    (?<!\p{L})(?:non?|not|never|without|doesn['’]?t|does not|won['’]?t|sin|nunca)[\s-]+(?:(?:se|any|
    known to|que)\s+)?(?:accelerat\p{L}*|seiz\p{L}*|ric\p{L}*|thicken\p{L}*|speed\p{L}*(?: up)?|
    aceler\p{L}*|espesa\p{L}*|agarrota\p{L}*)(?!\p{L})
  `,
  'giu',
);

/** Flowers and warm spices, whose scents speed batter more often than others (common practice). */
const OFTEN = new Set(
  spaced`
    floral florals flores flor jasmine jazmin lily lilies lirio lilac lila hyacinth jacinto gardenia
    tuberose nardo honeysuckle madreselva magnolia freesia peony peonia carnation clavel ylang neroli
    azahar violets muguet wisteria glicinia plumeria frangipani rose roses rosa rosas spice spices spicy
    especia especias especiado
  `.split(' '),
);
/** Scents that as a rule leave batter its time (common practice). */
const CALM = new Set(
  spaced`
    lavender lavandin lavanda lavandino rosemary romero tea tree arbol te peppermint spearmint mint menta
    hierbabuena eucalyptus eucalipto patchouli pachuli cedar cedarwood cedro orange naranja lemon limon
    lime lima bergamot bergamota grapefruit pomelo litsea citronella citronela lemongrass limoncillo vetiver
  `.split(' '),
);
/** Words that say how much of what, and name nothing. */
const BESIDE = new Set(
  spaced`
    fragrance fragrances oil oils essential eo fo scent scented perfume aroma aromas fragancia fragancias
    aceite aceites esencial esenciales of the a an at in for with and or is it that which my from to by on
    total about usage use using used dose load level content share ppo de del el la los las un una al en
    con y o es que mi por para lo dosis uso carga contenido nivel sobre unos grasa grasas fat fats percent
    por ciento unscented plain portion very really quite some muy bastante algo blend mezcla vanilla
    vanillin vanillins vainilla vainillina ethyl etil certificate ifra max maximum certificado maximo limit
    limite category categoria soap jabon
  `.split(' '),
);

/**
 * What the words of a fragrance tell besides percents: that it speeds up the batter, and what nothing is known of. `named`
 * are scents that are known by another reader. Pure.
 * @example scentTold('3% jasmine').speeds // { how: 'often', name: 'jasmine' }
 */
export function scentTold(text: string, named: readonly string[] = []): ScentTold {
  const said = text.slice(0, 500).replace(SPEEDS_NOT, ' ');
  const isTold = said.search(SPEEDS) >= 0;
  const known = new Set(named.flatMap(name => foldedWords(name)));
  const words = said
    .replace(SPEEDS, ' ')
    .split(/[^\p{L}\p{M}'’-]+/u)
    .filter(word => word.length > 1);
  const folded = (word: string) => foldedWords(word)[0] ?? '';
  const often = words.find(word => OFTEN.has(deaccented(word)) || OFTEN.has(folded(word)));
  const unknown = words.filter(word =>
    [deaccented(word), folded(word)].every(one => ![OFTEN, CALM, BESIDE, known].some(set => set.has(one))),
  );
  return {
    ...(isTold && { speeds: { how: 'told' } as const }),
    ...(!isTold && often !== undefined && { speeds: { how: 'often', name: often } as const }),
    ...(unknown.length > 0 && { unknown: [...new Set(unknown)].slice(0, 6).join(' ') }),
  };
}
