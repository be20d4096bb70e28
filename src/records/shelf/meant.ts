import { findColourant } from '../../engine/colourants/asked/find-colourant.ts';
import { choiceOf, colourantById } from '../../engine/colourants/catalogue.ts';
import type { Colourant } from '../../engine/colourants/colourant.ts';
import { colourantsByNumber, colourantsNamed } from '../../engine/colourants/find.ts';
import { metalIn, refuseMetal } from '../../engine/colourants/metals.ts';
import {
  refuseBarred,
  refuseBarredJar,
  refusePerfume,
  refusePoisonIn,
  refuseSpirits,
} from '../../engine/hazards/index.ts';
import { refuse } from '../../engine/refusal.ts';
import { checkIngredients } from '../../engine/stability/check.ts';
import { checkColourant } from '../../engine/stability/check-colourant.ts';
import { identityOf } from '../../engine/stability/identity.ts';
import type { Component, IngredientReport } from '../../engine/stability/report.ts';
import { cut } from '../../engine/text/excerpt.ts';
import { ownElseCatalogue, ownNamed } from './jars/own-jar.ts';
import { listShelf } from './queries.ts';
import type { Shelf, ShelfItem } from './shelf.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'list-nothing-recognised': { readonly text: string };
  }
}

/** What a member means by a colour, and what its chemistry is. */
export type Meant = {
  readonly report: IngredientReport;
  /** The catalogue entry, where it is one. */
  readonly colourant?: Colourant | undefined;
  /** The member's own jar, where it is one. */
  readonly item?: ShelfItem;
  /** What reports on it are filed under; undefined when nothing in it is known. */
  readonly identity: string | undefined;
};

const undecided: ReadonlySet<string> = new Set(['colourant-unknown', 'colourant-ambiguous']);
/** Longer texts, and those with separators, are lists and no names. */
const longestName = 80;
const isName = (text: string) => text.length <= longestName && !/[,;\n]/.test(text);

/** The colour that an item is: by its own ingredient list where it has one, else by what the member said it is. */
export function meantByItem(item: ShelfItem): Meant {
  refuseBarredJar(item.name);
  const colourant = item.colourant === undefined ? undefined : colourantById(item.colourant);
  const { ingredients } = item;
  if (!ingredients && !colourant) return refuse('jar-unidentified', { name: item.name });
  const report = ingredients ? checkIngredients(ingredients.text) : checkColourant(colourant as Colourant);
  return { report, colourant, item, identity: identityOf(report, colourant) };
}

const meantByColourant = (colourant: Colourant): Meant => ({
  report: checkColourant(colourant),
  colourant,
  identity: colourant.id,
});

/**
 * A colour by the catalogue's name or number, or by an ingredient list. Metals come back as a report whose verdict is
 * `never`. Refuses as the catalogue does for a name it does not know, and a list of which nothing is recognised.
 */
export function meantByText(text: string): Meant {
  const name = text.trim();
  if (isName(name)) {
    refuseBarred(name);
    if (!/^parfum$/iu.test(name)) refusePerfume(name);
  }
  refusePoisonIn(name);
  const report = checkIngredients(name);
  const never = report.verdictIfPresent === 'never';
  if (isName(name)) {
    const metal = metalIn(name)?.certainty;
    if (metal === 'unclear' || (metal === 'metal' && !never)) refuseMetal(name);
  }
  if (never) return { report, identity: undefined };
  if (report.kind === 'plain' && isName(name)) refuseSpirits(name);
  if (isName(name)) {
    const known = exactColourant(name);
    if (known) return meantByColourant(known);
  }
  if (report.components.length > 0) return { report, identity: identityOf(report) };
  return isName(name)
    ? meantByColourant(findColourant(name))
    : refuse('list-nothing-recognised', { text: cut(name, longestName) });
}

/**
 * The colour somebody means: their own item by its exact name, else what {@link meantByText} makes of it, else their
 * own item by a close spelling.
 */
export const findMeant = (shelf: Shelf, text: string): Promise<Meant> =>
  ownElseCatalogue(shelf, text, { byItem: meantByItem, byText: meantByText, undecided });

/** The ingredients of several colours at once, in the order they were named, and what was not recognised. */
export type MeantTogether = {
  readonly components: readonly Component[];
  readonly unknown: readonly string[];
};

/** "Silver" on a label is the metal or a mica of its colour: only their owner knows. */
const BARE_METAL = /^\s*(?:silver|gold|plata|oro|argent|silver powder|gold powder)\s*$/i;

function refuseBareMetal(piece: string): void {
  if (!BARE_METAL.test(piece)) return;
  const instead = colourantById(/gold|oro/i.test(piece) ? 'gold-mica' : 'silver-mica');
  if (instead) refuse('metal-or-mica', { text: piece.trim(), metal: 'leaf', instead: choiceOf(instead) });
}

/** The catalogue's entry of exactly that name or number, where there is one and no second. */
function exactColourant(name: string): Colourant | undefined {
  const numbered = colourantsByNumber(name);
  const [known, another] = numbered.length > 0 ? numbered : colourantsNamed(name);
  return another ? undefined : known;
}

/**
 * The ingredients of everything a member names: own items and catalogue names with commas between, an ingredient list,
 * or both mixed. Refuses a metal's bare name, and a text of which nothing is recognised.
 */
export async function findTogether(shelf: Shelf, text: string): Promise<MeantTogether> {
  const own = await listShelf(shelf);
  const whole = ownNamed(own, text.trim());
  const pieces = whole ? [text] : text.split(/[,;\n]/);
  const named = pieces.map(piece => {
    const item = ownNamed(own, piece.trim());
    const colourant = item ? undefined : exactColourant(piece.trim());
    return item ? meantByItem(item).report : colourant && checkColourant(colourant);
  });
  // What is no name is read as one list, since brackets may hold commas.
  for (const piece of pieces) {
    refusePoisonIn(piece);
    refuseBareMetal(piece);
  }
  const rest = pieces.filter((piece, index) => !named[index] && piece.trim() !== '').join(', ');
  const reports = [
    ...named.filter(report => report !== undefined),
    ...(rest === '' ? [] : [checkIngredients(rest)]),
  ];
  const components = reports.flatMap(report => report.components);
  if (components.length === 0) {
    if (isName(text.trim())) findColourant(text);
    refuse('list-nothing-recognised', { text: cut(text, longestName) });
  }
  return { components, unknown: reports.flatMap(({ unknown }) => unknown) };
}
