import type { Caution } from '../conversation/reply.ts';
import type { Caution as DoseCaution } from '../engine/dosing/cautions.ts';
import { type EvidenceScope, reportsOn } from '../records/evidence/index.ts';
import { calledByOwner } from '../records/shelf/called.ts';
import type { ShelfItem } from '../records/shelf/index.ts';
import type { Jar } from '../records/shelf/jars/jar.ts';
import { type Meant, meantByItem } from '../records/shelf/meant.ts';
import type { Words } from '../words/index.ts';
import { deciding } from './check.ts';
import { nameOf } from './dose.ts';
import { evidenceForDose, nobodyReported, weigh } from './evidence.ts';

/** One short warning of what lye does to a colour, by its name; undefined where it holds or nobody knows. */
export function warningSentence(
  name: string,
  { report, colourant }: Pick<Meant, 'report' | 'colourant'>,
  say: Words,
): string | undefined {
  const { warning, towards: colours, on: conditions } = say.stability;
  const towards = (colours as Readonly<Record<string, string>>)[report.towards ?? ''];
  const on = (conditions as Readonly<Record<string, string>>)[
    deciding(report)?.on ?? colourant?.alkali.on ?? ''
  ];
  switch (report.verdict) {
    case 'destroyed':
    case 'shifts':
      return towards && warning[report.verdict]({ name, towards });
    case 'bleeds':
      return warning.bleeds({ name });
    case 'conditional':
      return on && warning.conditional({ name, on });
    default:
      return undefined;
  }
}

/** What the ingredient list that an item keeps warns of; undefined without a list. */
export const itemWarning = (item: ShelfItem, say: Words): string | undefined =>
  item.ingredients && warningSentence(item.name, meantByItem(item), say);

/** What is known of the colours of a dose beyond their catalogue entries. */
export type ColourNotes = {
  /** From the jars' own ingredient lists, and from a group that mostly saw it fail. */
  readonly cautions: readonly Caution[];
  /** "7 of 9 here saw it hold." */
  readonly asides: readonly string[];
};

/** The warnings of the jars' own labels, and what the group has seen of each colour. */
export async function colourNotes(
  jars: readonly Jar[],
  { scope, viewer, say }: { readonly scope: EvidenceScope; readonly viewer: string; readonly say: Words },
): Promise<ColourNotes> {
  const notes = await Promise.all(
    jars.map(async ({ colourant, item }) => {
      const own = item && itemWarning(item, say);
      const identity = item ? meantByItem(item).identity : colourant.id;
      const name = () => item?.name ?? nameOf(colourant, say);
      const evidence = identity === undefined ? undefined : await reportsOn(scope, identity, viewer);
      const seen =
        identity === undefined || evidence === undefined || nobodyReported(evidence)
          ? {}
          : evidenceForDose(name(), weigh(identity, evidence), say);
      const grams = item?.lot.oddSpoonGrams;
      const odd = grams === undefined ? undefined : say.shelf.oddSpoon({ name: name(), grams });
      return {
        own: own ? { id: 'label-lye-changes' as const, text: own } : undefined,
        odd: odd === undefined ? undefined : { id: 'spoon-odd' as const, text: odd },
        ...seen,
      };
    }),
  );
  return {
    cautions: notes.flatMap(({ odd, own, caution }) => [odd, own, caution].filter(one => one !== undefined)),
    asides: notes.flatMap(({ aside }) => aside ?? []),
  };
}

/**
 * The cautions of a dose without what the catalogue warns of in lye where a jar's own label knows better: its list was
 * read, and all of it was known.
 */
export function withoutCatalogueLye<C extends DoseCaution>(
  cautions: readonly C[],
  jars: readonly Jar[],
): readonly C[] {
  const labelled = new Set(
    jars.flatMap(({ colourant, item }) =>
      item?.ingredients && meantByItem(item).report.verdict !== 'unknown'
        ? [colourant.names.en, calledByOwner(item).en]
        : [],
    ),
  );
  return cautions.filter(
    caution => caution.id !== 'lye-changes' || !labelled.has(caution.values.colourant.en),
  );
}
