import type { AlkaliBehaviour, Carrier, Colourant } from '../colourants/colourant.ts';
import { acidIn } from '../text/names/acid-words.ts';
import { type Entry, readEntries } from './entries.ts';
import { underLaw } from './legal-share.ts';
import { alike } from './like.ts';
import { recognise } from './recognise.ts';
import type { Component, Confidence, IngredientReport, PowderKind } from './report.ts';
import { substanceById } from './substances/index.ts';
import type { Substance } from './substances/substance.ts';

/** Worst first: the weakest ingredient decides. An ingredient nobody knows is worse than one that holds. */
const weakestFirst: readonly AlkaliBehaviour[] = [
  'never',
  'destroyed',
  'shifts',
  'bleeds',
  'conditional',
  'unknown',
  'stable',
];
const weakness = (behaviour: AlkaliBehaviour): number => weakestFirst.indexOf(behaviour);

const leastSureFirst: readonly Confidence[] = ['low', 'medium', 'high'];
const fadesFirst = ['fades', 'fades-slowly', 'holds'] as const;

function componentOf(substance: Substance, entry: Entry): Component {
  const { id, ci, role, alkali, light = 'holds', confidence, source } = substance;
  return {
    as: entry.as,
    id,
    ci: ci.length === 0 ? undefined : ci.join(', '),
    role,
    alkali: alkali.behaviour,
    ...(alkali.towards === undefined ? {} : { towards: alkali.towards }),
    ...(alkali.on === undefined ? {} : { on: alkali.on }),
    light,
    ifPresent: entry.ifPresent,
    ...(entry.percent === undefined ? {} : { percent: entry.percent }),
    confidence,
    source,
  };
}

/** Each substance once; certainly there wins over perhaps there. */
function merged(components: readonly Component[]): readonly Component[] {
  const byId = new Map<string, Component>();
  for (const component of components) {
    const before = byId.get(component.id);
    if (before === undefined || (before.ifPresent && !component.ifPresent)) byId.set(component.id, component);
  }
  return [...byId.values()];
}

const weakestOf = (components: readonly Component[]): Component | undefined =>
  components.toSorted((a, b) => weakness(a.alkali) - weakness(b.alkali))[0];

function verdictOf(components: readonly Component[], unknown: readonly string[]): AlkaliBehaviour {
  const weakest = weakestOf(components)?.alkali ?? 'unknown';
  return unknown.length > 0 && weakness('unknown') < weakness(weakest) ? 'unknown' : weakest;
}

const colours = (component: Component): boolean =>
  component.role !== 'additive' && component.role !== 'carrier';
const kindOfComponent = (component: Component): PowderKind | undefined => substanceById(component.id)?.kind;

/** Whether an ingredient is an ultramarine of any shade. */
export const isUltramarine = (component: Component): boolean => kindOfComponent(component) === 'ultramarine';

/** Acid takes the sulphur out of an ultramarine, and its colour with it (Ullmann, as cited by Haz-Map). */
const destroyedByAcid = (component: Component): Component =>
  isUltramarine(component) ? { ...component, alkali: 'destroyed', towards: 'paler' } : component;

function kindOf(components: readonly Component[]): PowderKind {
  const has = (test: (component: Component) => boolean): boolean => components.some(test);
  const glitter = has(({ role }) => role === 'glitter');
  if (has(({ alkali }) => alkali === 'never')) return glitter ? 'glitter' : 'metal';
  if (glitter) return 'glitter';
  if (has(({ role }) => role === 'resin')) return 'neon';
  if (has(({ role }) => role === 'substrate')) return 'mica';
  const kinds = components
    .filter(colours)
    .map(kindOfComponent)
    .filter(kind => kind !== undefined);
  return kinds.find(kind => kind !== 'white') ?? kinds[0] ?? (components.length > 0 ? 'plain' : 'unknown');
}

/** The liquids that suit every ingredient of the powder's kind, the usual one first. */
const carriersOf = ([first, ...others]: readonly Colourant[]): readonly Carrier[] =>
  (first?.carriers ?? []).filter(carrier => others.every(({ carriers }) => carriers.includes(carrier)));

function doseOf(like: readonly Colourant[]): IngredientReport['dose'] {
  const doses = like.map(({ dose }) => dose).toSorted((a, b) => a.fullTspPerCup - b.fullTspPerCup);
  return doses[0];
}

/** The dose of the kind, held under the law of what is really in it. */
function doseUnderLaw(
  like: readonly Colourant[],
  components: readonly Component[],
): IngredientReport['dose'] {
  const dose = doseOf(like);
  const [kind] = like;
  return dose && kind ? underLaw({ dose, bulkDensity: kind.bulkDensity }, components).dose : dose;
}

/**
 * What an ingredient list says about a powder in raw soap: each ingredient recognised, what lye does to it, what the
 * powder is, and the verdict of its weakest ingredient. Ingredients behind "may contain" count only in
 * `verdictIfPresent`. Never throws; work grows in proportion to the text.
 * @example checkIngredients('Mica (CI 77019), Ultramarines (CI 77007)').verdict // 'stable'
 */
export function checkIngredients(text: string): IngredientReport {
  const read = readEntries(text).map(entry => ({ entry, recognised: recognise(entry) }));
  const alone = merged(
    read.flatMap(({ entry, recognised }) =>
      recognised.substances.map(substance => componentOf(substance, entry)),
    ),
  );
  const soured = alone.some(isUltramarine) && acidIn(text) !== undefined;
  const components = soured ? alone.map(destroyedByAcid) : alone;
  const unknown = [...new Set(read.flatMap(({ recognised }) => recognised.unknown))];
  const certain = components.some(({ ifPresent }) => !ifPresent)
    ? components.filter(({ ifPresent }) => !ifPresent)
    : components;
  const kind = kindOf(certain);
  const verdict = verdictOf(certain, unknown);
  const verdictIfPresent = verdictOf(components, unknown);
  const never = verdictIfPresent === 'never';
  const like = never
    ? []
    : alike(
        kind,
        certain.map(({ id }) => id),
      );
  const telling = certain.filter(colours);
  const towards = weakestOf(certain)?.towards;
  const predispersedIn = components
    .map(({ id }) => substanceById(id)?.liquid)
    .find(liquid => liquid !== undefined);
  return {
    components,
    kind,
    verdict,
    verdictIfPresent,
    ...(towards === undefined ? {} : { towards }),
    carriers: carriersOf(like),
    dose: doseUnderLaw(like, components),
    light: fadesFirst.find(light => telling.some(component => component.light === light)) ?? 'holds',
    confidence:
      unknown.length > 0 || components.length === 0
        ? 'low'
        : (leastSureFirst.find(level => telling.some(({ confidence }) => confidence === level)) ?? 'high'),
    like: like[0]?.id,
    ...(predispersedIn === undefined || telling.length === 0 ? {} : { predispersedIn }),
    ...(soured ? { acidMeetsUltramarine: true } : {}),
    unknown,
  };
}
