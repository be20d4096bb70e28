import { groupedBy } from '../../grouped.ts';
import { unbroken } from '../../over-lines.ts';
import { refuse } from '../../refusal.ts';
import { foldedWords } from '../../text/fold.ts';
import { type BarredScentReason, SCENTS, type ScentRisk, type ScentRow } from './scents.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** `name` is as it was understood, in small letters. */
    'scent-barred': { readonly name: string; readonly reason: BarredScentReason };
  }
}

/** A scent that needs a caution, by the name that was read. */
export type RiskyScent = { readonly name: string; readonly risk: ScentRisk };

type Name = { readonly words: readonly string[]; readonly row: ScentRow };
type NamedScent = { readonly name: string; readonly row: ScentRow };

const NAMES: ReadonlyMap<string, readonly Name[]> = new Map(
  [
    ...groupedBy(
      SCENTS.flatMap(row => row.names.split('; ').map((name): Name => ({ words: foldedWords(name), row }))),
      ({ words }) => words[0] ?? '',
    ),
  ].map(([first, names]) => [first, names.toSorted((a, b) => b.words.length - a.words.length)]),
);

/** Freed of what burns in the sun. */
const SUN_SAFE =
  /\b(?:fcf|furo?coumarin free|furanocoumarin free|bergapten free|distilled|sin furocumarina|sin bergapteno|destilad[oa])\b/u;
/** A perfumer's oil of that name, not the plant's own. */
const COMPOUNDED = /\b(?:fragrance|fragancia|fo|accord|acorde|type|tipo|synthetic|sintetic[oa]|aroma)\b/u;
/** Names that hold one of ours and are something else. */
const OTHERWISE = new RegExp(
  unbroken`
    \b(?:cologne earth|tierra de colonia|lemon eucalyptus|eucalyptus citriodora|eucalipto limon|perfume oil|
    perfumer|aceite perfumado|aceite de perfume|cinnamon free|sin canela)\b
  `,
  'gu',
);

function namedIn(text: string): readonly NamedScent[] {
  const words = foldedWords(foldedWords(text.slice(0, 500)).join(' ').replace(OTHERWISE, ' '));
  const found: NamedScent[] = [];
  let at = 0;
  while (at < words.length) {
    const name = (NAMES.get(words[at]!) ?? []).find(one =>
      one.words.every((word, index) => words[at + index] === word),
    );
    if (name) found.push({ name: name.words.join(' '), row: name.row });
    at += name?.words.length ?? 1;
  }
  return found;
}

/** Throws a Refusal `scent-barred` where perfume is asked for where a colour or ingredient could be named. */
export function refusePerfume(text: string): void {
  const found = namedIn(text).find(({ row }) => row.barred === 'alcohol' || row.risk === 'perfume');
  if (found && !COMPOUNDED.test(foldedWords(text.slice(0, 500)).join(' ')))
    refuse('scent-barred', { name: found.name, reason: 'alcohol' });
}

/**
 * The scents in a text that burn, sensitise or redden skin by name, each once. Throws a Refusal `scent-barred` for
 * perfume in alcohol, for scents made for another use, and for plants whose oil is prohibited, unless a perfumer's oil
 * of that name is meant.
 */
export function riskyScents(text: string): readonly RiskyScent[] {
  const found = namedIn(text);
  const said = foldedWords(text.slice(0, 500)).join(' ');
  const barred = found.find(
    ({ row }) => row.barred !== undefined && !(row.barred === 'prohibited' && COMPOUNDED.test(said)),
  );
  if (barred?.row.barred) refuse('scent-barred', { name: barred.name, reason: barred.row.barred });
  const risky = found.flatMap(({ name, row: { risk } }): readonly RiskyScent[] =>
    risk === undefined || (risk === 'phototoxic' && SUN_SAFE.test(said)) ? [] : [{ name, risk }],
  );
  // "3% de perfume" beside another name is only the word for a scent.
  const named = risky.filter(({ risk }) => risk !== 'perfume');
  const all = named.length > 0 ? named : risky;
  return all.filter(({ risk }, index) => all.findIndex(one => one.risk === risk) === index);
}
