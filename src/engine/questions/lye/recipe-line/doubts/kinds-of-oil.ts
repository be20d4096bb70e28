import { knownOil } from '../../../../batch/oils/find-oil.ts';
import type { Oil } from '../../../../batch/oils/oil.ts';
import { unbroken } from '../../../../over-lines.ts';

/** Whether an oil is of a kind: `maybe` where makers or seasons differ. */
export type OfKind = 'yes' | 'no' | 'maybe';
type Kind = {
  /** The kind as a noun; lower case without accents. */
  readonly noun: RegExp;
  readonly of: (oil: Oil) => OfKind;
};

/** Soft by the hand, or solid in one season and runny in the next: coconut melts at 24 °C (75 °F), lard and palm are between (common practice). */
const SEASONAL: ReadonlySet<string> = new Set(
  'coconut palm-kernel babassu palm palm-olein lard goose-fat duck-fat chicken-fat butterfat lanolin neem shea cupuacu mango murumuru jojoba'.split(
    ' ',
  ),
);
/** Percent of saturated fat from which an oil is solid at room temperature whatever the season (common practice; `profile` has its source). */
const SOLID_FROM = 50;
const SATURATED = ['C16:0', 'C18:0', 'C14:0', 'C12:0', 'C20:0', 'C22:0'] as const;
function solid({ id, oilClass, profile }: Oil): OfKind {
  if (SEASONAL.has(id)) return 'maybe';
  if (oilClass === 'wax') return 'yes';
  const saturated = SATURATED.reduce((sum, acid) => sum + (profile?.[acid] ?? 0), 0);
  return saturated >= SOLID_FROM || oilClass === 'butter' ? 'yes' : 'no';
}
/** Pressed from what grocers sell as nuts; those of stones and legumes are nuts to some (general knowledge, from memory). */
const NUTS: ReadonlySet<string> = new Set(['almond', 'hazelnut', 'walnut', 'macadamia', 'brazil-nut']);
const NUTS_TO_SOME: ReadonlySet<string> = new Set(['peanut', 'argan', 'apricot-kernel']);
const FROM_ANIMALS: ReadonlySet<string> = new Set(['beeswax', 'lanolin']);

const animal = ({ id, oilClass }: Oil): OfKind =>
  oilClass === 'animal-fat' ? 'yes' : FROM_ANIMALS.has(id) ? 'maybe' : 'no';
const not = (of: Kind['of']): Kind['of'] => {
  const turned = { yes: 'no', no: 'yes', maybe: 'maybe' } as const;
  return oil => turned[of(oil)];
};
const THINGS = '(?:ones?|oils?|fats?|butters?|stuff|things?|bits?|part|lot|ingredients?)';
const COSAS = '(?:aceites?|grasas?|mantecas?|cosas?|ingredientes?|parte)';
const ANY =
  "(?:anything|nothing|everything|something|whatever)(?: (?:that is|that's|is|from|of|an?|too|really))*";
const ALGO =
  '(?:lo|l[oa]s|nada|algo|todo lo|cosas?|(?:de )?origen)(?: (?:que (?:sea|es|esta)|de|mas|muy|tan))*';
const kind = (patterns: readonly string[], of: Kind['of']): Kind => ({
  noun: new RegExp(`(?<![\\p{L}\\d-])(?:${patterns.join('|')})(?![\\p{L}-])`, 'u'),
  of,
});
const described = (english: string, spanish: string): readonly string[] => [
  `(?:${english})(?: |-)${THINGS}`,
  `${ANY} (?:${english})s?`,
  `${COSAS} (?:mas |muy |de )?(?:${spanish})`,
  `${ALGO} (?:${spanish})`,
];

/** Kinds of oils by which makers speak of several at once (trade usage), each with what is surely of it. */
export const KINDS: readonly Kind[] = [
  kind(['butters', 'butter-free', 'mantequillas', 'mantecas'], ({ oilClass, id }) =>
    oilClass === 'butter' ? 'yes' : id === 'lard' || id === 'butterfat' ? 'maybe' : 'no',
  ),
  kind(
    ['waxes', 'wax-free', 'ceras', '(?:any|the|no|sin) wax(?! \\p{L})', 'nada de cera'],
    ({ oilClass, id }) => (id === 'jojoba' ? 'maybe' : oilClass === 'wax' ? 'yes' : 'no'),
  ),
  kind([...described('animal|animals', 'animal(?:es)?'), 'animal-free', 'animal products?'], animal),
  kind(
    [
      ...described('plant|vegetable|vegan|veggie|vegetarian', 'vegetal(?:es)?|vegan[oa]s?'),
      'plant-based',
      'vegan',
      'vegetarian',
      'vegan[oa]s?',
      'vegetarian[oa]s?',
      'vegetales',
      '(?:version|parte) vegetal',
    ],
    not(animal),
  ),
  kind([...described('hard|solid|brittle', '(?:solid|dur)[oa]s?'), 'solids'], solid),
  kind([...described('liquid|runny|pourable|soft', '(?:liquid|bland)[oa]s?'), 'los liquidos'], not(solid)),
  kind([...described('nut', 'frutos? secos?'), 'nuts', 'nut-free', 'frutos secos', 'nueces'], ({ id }) =>
    NUTS.has(id) ? 'yes' : NUTS_TO_SOME.has(id) ? 'maybe' : 'no',
  ),
  // Which of them are of these nobody here knows.
  kind(
    [
      unbroken`
        (?:tropical|exotic|imported|local|cheap(?:er)?|expensive|dear|pricey|posh|fancy|saturated|old|
        rancid|new|fresh|refined|unrefined|organic|heavy|light)(?: |-)(?:ones|oils|fats)
      `,
      unbroken`
        (?:aceites?|grasas?|l[oa]s) (?:mas |muy )?(?:tropicales|exotic[oa]s|importad[oa]s|car[oa]s|
        barat[oa]s|saturad[oa]s|viej[oa]s|ranci[oa]s|nuev[oa]s|refinad[oa]s|organic[oa]s|pesad[oa]s|
        liger[oa]s)
      `,
      'aceites? tropical',
    ],
    () => 'maybe',
  ),
];

/** Of which kind an oil named in a recipe is; `maybe` for a name that no oil has. */
export const isOfKind = (one: Kind, name: string): OfKind => {
  const oil = knownOil(name);
  return oil === undefined ? 'maybe' : one.of(oil);
};
