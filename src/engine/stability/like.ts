import { colourantById, colourants } from '../colourants/catalogue.ts';
import type { Colourant } from '../colourants/colourant.ts';
import { readEntries } from './entries.ts';
import { recognise } from './recognise.ts';
import type { PowderKind } from './report.ts';
import { substanceById } from './substances/index.ts';

/** What an entry of ours and a list have in common when both name the same coat. */
function coatOf(ids: readonly string[]): string {
  const colouring = ids.filter(
    id => !['substrate', 'additive', 'carrier'].includes(substanceById(id)?.role ?? ''),
  );
  const groups = colouring.map(id => (id.startsWith('iron-oxide') ? 'iron-oxides' : id));
  return [...new Set(groups)].toSorted().join(' ');
}

let coats: ReadonlyMap<string, Colourant> | undefined;

/** Our micas by coat, the usual one of each first; built when first asked for. */
function micasByCoat(): ReadonlyMap<string, Colourant> {
  if (coats !== undefined) return coats;
  const known = new Map<string, Colourant>();
  for (const mica of colourants.filter(({ kind, inci }) => kind === 'mica' && inci !== undefined)) {
    const ids = readEntries(mica.inci ?? '').flatMap(entry =>
      recognise(entry).substances.map(({ id }) => id),
    );
    const coat = coatOf(ids);
    if (!known.has(coat)) known.set(coat, mica);
  }
  coats = known;
  return known;
}

/** For ingredients of a kind that our catalogue has no entry of. */
const usual: ReadonlyMap<PowderKind, string> = new Map([
  ['oxide', 'red-iron-oxide'],
  ['lake', 'red-40-lake'],
  ['dye', 'red-40-dye'],
  ['clay', 'kaolin'],
  ['botanical', 'nettle'],
]);

/**
 * The catalogue entries whose dose, wetting and weight a powder shares: for a mica the one with the same coat,
 * for a neon any, else those of the ingredients that make its kind.
 */
export function alike(kind: PowderKind, ids: readonly string[]): readonly Colourant[] {
  const one = (colourant: Colourant | undefined): readonly Colourant[] =>
    colourant === undefined ? [] : [colourant];
  if (kind === 'mica') return one(micasByCoat().get(coatOf(ids)) ?? colourantById('mica-unknown-coat'));
  if (kind === 'neon') return one(colourantById('neon-pink'));
  const ofKind = ids.map(substanceById).filter(substance => substance?.kind === kind);
  const known = ofKind.flatMap(substance => one(colourantById(substance?.like ?? '')));
  return known.length > 0 ? known : one(colourantById(usual.get(kind) ?? ''));
}
