import type { ColourantKind } from '../../colourants/colourant.ts';
import { colourantsMeant } from '../../colourants/find.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { QuestionRead } from '../read.ts';

/** What grows or is dug is known by its name; a mica or a pigment is what its label says. */
const BY_NATURE: ReadonlySet<ColourantKind> = new Set<ColourantKind>(['botanical', 'clay', 'carbon']);
const UNLABELLED =
  /(?<!\p{L})(?:unlabell?ed|no (?:label|name)|without (?:a )?(?:label|name)|sin (?:etiqueta|nombre|rotul\p{L}*))(?!\p{L})/u;
/** Whether all that is named is a plant, a clay or charcoal, and nobody says that its label is missing. Pure. */
export const isNamedByNature = (question: string, { facts }: QuestionRead): boolean =>
  !UNLABELLED.test(unaccented(question)) &&
  facts.named.length > 0 &&
  facts.named.every(name => {
    const meant = colourantsMeant(name);
    return meant.length > 0 && meant.every(({ kind }) => BY_NATURE.has(kind));
  });
