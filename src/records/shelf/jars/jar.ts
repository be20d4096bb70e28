import type { FoundColour } from '../../../engine/batch/planning/written-plan.ts';
import { findColourant } from '../../../engine/colourants/asked/find-colourant.ts';
import { colourantById } from '../../../engine/colourants/catalogue.ts';
import type { Colourant } from '../../../engine/colourants/colourant.ts';
import { refuseBarredJar } from '../../../engine/hazards/index.ts';
import type { Amount } from '../../../engine/quantities/amount.ts';
import type { Measures } from '../../../engine/quantities/units.ts';
import { Refusal, refuse } from '../../../engine/refusal.ts';
import { remembered } from '../../../engine/remembered.ts';
import { checkIngredients } from '../../../engine/stability/check.ts';
import { checkColourant } from '../../../engine/stability/check-colourant.ts';
import { legalShareOf, underLaw } from '../../../engine/stability/legal-share.ts';
import { cut } from '../../../engine/text/excerpt.ts';
import type { Shelf, ShelfItem } from '../shelf.ts';
import { timesItsKind } from './learnt-strength.ts';
import { ownElseCatalogue } from './own-jar.ts';

declare module '../../../engine/refusal.ts' {
  interface Reasons {
    'jar-unidentified': { readonly name: string };
    'spoons-not-weighed': { readonly name: string };
    'law-allows-too-little': { readonly text: string; readonly law: 'us' | 'eu'; readonly percent: number };
  }
}

/** Refusals of the catalogue after which a close spelling on the shelf may still be meant. */
const UNDECIDED: ReadonlySet<string> = new Set(['colourant-unknown', 'colourant-ambiguous']);

/** What a member means by a colourant: the generic kind, and their own jar of it where they have one. */
export type Jar = {
  readonly colourant: Colourant;
  readonly item?: ShelfItem;
  /** Of somebody else's jar of it, told with a recipe: how much of it is pigment, 0 to 1. */
  readonly pigmentFraction?: number;
};

/**
 * The jar somebody names: their own item by its exact name, else the catalogue, else their own item by a close
 * spelling. Throws the catalogue's Refusal when nothing fits, and `jar-unidentified` for an item of theirs of
 * which nobody said what it is.
 */
export const findJar = (shelf: Shelf, text: string): Promise<Jar> =>
  ownElseCatalogue<Jar>(shelf, text, {
    byItem: jarOf,
    byText: name => ({ colourant: inCatalogue(name) }),
    undecided: UNDECIDED,
    beforeSpelling: refuseTooLittle,
  });

/** The jar that an item is. Throws a Refusal `jar-unidentified` when nobody said what is in it. */
export function jarOf(item: ShelfItem): Jar {
  refuseBarredJar(item.name);
  const colourant = item.colourant === undefined ? undefined : colourantById(item.colourant);
  return colourant
    ? { colourant: lawful(colourant, item), item }
    : refuse('jar-unidentified', { name: item.name });
}

/** The colourant of an item with its dose held under the law: by the item's own ingredient list where it has one. */
function lawful(colourant: Colourant, { name, ingredients, lot }: ShelfItem): Colourant {
  const { components: told } = ingredients ? checkIngredients(ingredients.text) : checkColourant(colourant);
  // A jar named after a restricted colour keeps that colour's limit whatever it was described as.
  const components = [...told, ...checkIngredients(name).components];
  const { spoonWeight } = lot;
  return underLaw(colourant, components, spoonWeight && spoonWeight.grams / spoonWeight.spoonMillilitres);
}

const lawfulKinds = new WeakMap<Colourant, Colourant>();

/** A catalogue's colourant with its dose held under the law. */
function lawfulKind(colourant: Colourant): Colourant {
  const known = lawfulKinds.get(colourant) ?? underLaw(colourant, checkColourant(colourant).components);
  lawfulKinds.set(colourant, known);
  return known;
}

const inCatalogue = remembered(name => lawfulKind(findColourant(name)));

/** A colour that no spoon measures out, so little of it the law allows. */
function refuseTooLittle(text: string): void {
  const legal = legalShareOf(checkIngredients(text).components);
  if (legal && legal.share < LEAST_SPOONED)
    refuse('law-allows-too-little', {
      text: cut(text, 80),
      law: legal.law,
      percent: Number((legal.share * 100).toPrecision(3)),
    });
}

/** Below this share of a bar (0.1 %) a full dose of dye is over the law: such a colour is dosed from its own label only. */
const LEAST_SPOONED = 0.001;

/** What dosing needs to know of a jar: what it is, and what its owner and its bars found out about it. */
export function knownOf(jar: Jar, { teaspoon }: Pick<Measures, 'teaspoon'>): FoundColour {
  const { colourant, item, pigmentFraction = item?.pigmentFraction } = jar;
  const { dishTest, spoonWeight } = item?.lot ?? {};
  const timesKind = timesItsKind(jar);
  return {
    colourant,
    ...(spoonWeight && { gramsPerTeaspoon: (spoonWeight.grams * teaspoon) / spoonWeight.spoonMillilitres }),
    ...(dishTest && { dishTest }),
    ...(timesKind !== undefined && { timesKind }),
    ...(pigmentFraction !== undefined && {
      premix: { by: 'percent', pigmentShare: pigmentFraction, carrier: 'glycerin' },
    }),
  };
}

/** The catalogue's colourant that an item is: what the member says, else what its name says, else undefined. */
export function identify(name: string, said: string | undefined): Colourant | undefined {
  if (said !== undefined) return findColourant(said);
  try {
    return findColourant(name);
  } catch (refusal) {
    if (refusal instanceof Refusal && UNDECIDED.has(refusal.id)) return undefined;
    throw refusal;
  }
}

/** What a spoon of something is weighed by. */
export type Spooned = {
  readonly name: string;
  readonly colourant?: string | Colourant | undefined;
  readonly lot?: ShelfItem['lot'];
};

/**
 * An amount in grams. Spoons count by the member's own weighing of that lot, else by the loose powder's typical
 * density; throws a Refusal `spoons-not-weighed` when neither is known.
 */
export function gramsOf(amount: Amount, { name, colourant, lot }: Spooned): number {
  if (amount.measure === 'mass') return amount.grams;
  if (lot?.spoonWeight)
    return (amount.millilitres * lot.spoonWeight.grams) / lot.spoonWeight.spoonMillilitres;
  const known = typeof colourant === 'string' ? colourantById(colourant) : colourant;
  return known ? amount.millilitres * known.bulkDensity.typical : refuse('spoons-not-weighed', { name });
}
