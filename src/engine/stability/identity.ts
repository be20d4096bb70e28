import { colourantById, colourants } from '../colourants/catalogue.ts';
import type { AlkaliBehaviour, Colourant } from '../colourants/colourant.ts';
import { fold } from '../colourants/fold.ts';
import { checkIngredients } from './check.ts';
import { checkColourant } from './check-colourant.ts';
import type { Confidence, IngredientReport } from './report.ts';
import { substanceById } from './substances/index.ts';

/** Longest part of an identity that unrecognised words make, characters. */
const longestUnknown = 120;
const ofIngredients = 'of:';

/** The ingredients that decide a colour, in one order whatever the label's; empty when none is known. */
function ingredientSet({ components, unknown }: IngredientReport): string {
  const certain = components.filter(({ ifPresent }) => !ifPresent);
  const ids = (certain.length > 0 ? certain : components)
    .filter(({ role }) => role !== 'additive' && role !== 'carrier')
    .map(({ id }) => id);
  if (ids.length === 0) return '';
  const strange = unknown.map(fold).toSorted().join(' ').slice(0, longestUnknown);
  return [...new Set(ids)].toSorted().join('+') + (strange === '' ? '' : `+?${strange}`);
}

let sets: ReadonlyMap<string, readonly string[]> | undefined;
let byId: ReadonlyMap<string, string> | undefined;

/** Sets of ingredients by catalogue id; built when first asked for. */
function setsById(): ReadonlyMap<string, string> {
  byId ??= new Map([...idsBySet()].flatMap(([set, ids]) => ids.map((id): [string, string] => [id, set])));
  return byId;
}

/** Catalogue ids by their set of ingredients; built when first asked for. */
function idsBySet(): ReadonlyMap<string, readonly string[]> {
  if (sets !== undefined) return sets;
  const known = new Map<string, string[]>();
  for (const colourant of colourants) {
    const set = ingredientSet(checkIngredients(colourant.names.en));
    known.set(set, [...(known.get(set) ?? []), colourant.id]);
  }
  sets = known;
  return known;
}

/**
 * What reports on a colour are filed under: the catalogue's id where the ingredients are that entry's and no other's
 * (or the member says which), else the ingredients themselves, `of:mica+titanium-dioxide`, in one order whatever the
 * label's. Undefined when nothing in it is recognised.
 */
export function identityOf(report: IngredientReport, colourant?: Colourant): string | undefined {
  const set = ingredientSet(report);
  if (set === '') return colourant?.id;
  const ids = idsBySet().get(set) ?? [];
  if (colourant !== undefined && ids.includes(colourant.id)) return colourant.id;
  return ids.length === 1 ? ids[0] : `${ofIngredients}${set}`;
}

/**
 * The identities whose reports speak of this one: itself, and for bare ingredients every catalogue entry made of
 * them; for a catalogue entry the bare ingredients too.
 */
export function identitiesAlike(identity: string): readonly string[] {
  if (identity.startsWith(ofIngredients))
    return [identity, ...(idsBySet().get(identity.slice(ofIngredients.length)) ?? [])];
  const set = setsById().get(identity);
  return set ? [identity, `${ofIngredients}${set}`] : [identity];
}

/** What an identity stands for: a catalogue entry, or the label names of its ingredients and what nobody knew. */
export function identified(
  identity: string,
): { readonly colourant: Colourant } | { readonly names: readonly string[]; readonly unknown: string } {
  const colourant = colourantById(identity);
  if (colourant !== undefined) return { colourant };
  const [known = '', unknown = ''] = identity.replace(ofIngredients, '').split('+?');
  const names = known.split('+').map(id => substanceById(id)?.names[0] ?? id);
  return { names: [...new Set(names)], unknown };
}

/** What the chemistry expects of an identity before anybody has reported. */
export function chemistryOf(identity: string): {
  readonly behaviour: AlkaliBehaviour;
  readonly confidence: Confidence;
} {
  const found = identified(identity);
  const { verdict, confidence } =
    'colourant' in found
      ? checkColourant(found.colourant)
      : checkIngredients([...found.names, found.unknown].join(', '));
  return { behaviour: verdict, confidence };
}
