import { refuseBarred } from '../../hazards/colours/refuse.ts';
import { refuseBatchPart, refuseNoColour } from '../../hazards/no-colour/no-colour.ts';
import { refuse } from '../../refusal.ts';
import { cut } from '../../text/excerpt.ts';
import { whenAsked } from '../../when-asked.ts';
import { type ColourantChoice, choiceOf } from '../catalogue.ts';
import type { Colourant } from '../colourant.ts';
import { colourantsByNumber, colourantsMeant, colourantsNamed, nearestColourants } from '../find.ts';
import { refuseMetal } from '../metals.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'colourant-unknown': { readonly text: string; readonly nearest: readonly ColourantChoice[] };
    'colourant-ambiguous': { readonly text: string; readonly candidates: readonly ColourantChoice[] };
  }
}

/** Longer texts are no names; cut, so that work stays bounded. */
const longestName = 80;

/**
 * The one catalogue entry a member means: by id, Colour Index number ("CI 77007", "77007"), INCI name,
 * name in either language, or synonym; accents, spelling (color, gray) and word order do not matter.
 * Refuses `colourant-ambiguous` with all candidates when several match, `colourant-unknown` with the three
 * nearest names when none does; metal powders, flakes and glitter as {@link refuseMetal} says,
 * poisons and prohibited colours as {@link refuseBarred} does, fillers and glow powders as {@link refuseNoColour},
 * what else is in a batch and colours nothing as {@link refuseBatchPart}.
 * @example findColourant('oxide, red').id // 'red-iron-oxide'
 */
export function findColourant(text: string): Colourant {
  const asked = text.slice(0, longestName);
  refuseMetal(asked);
  refuseBarred(asked);
  refuseNoColour(asked);
  // Only a colourant's own name stands before what the kitchen calls so: no likeness makes wine a mica.
  if (colourantsByNumber(asked).length === 0 && colourantsNamed(asked).length === 0) refuseBatchPart(asked);
  const matches = colourantsMeant(asked);
  const [only] = matches;
  if (only === undefined) {
    const near = whenAsked(() => nearestColourants(asked, 3).map(choiceOf));
    refuse('colourant-unknown', {
      text: cut(text, longestName),
      // Most who ask whether a text is a colourant go on without: comparing it with every name waits for who looks.
      get nearest() {
        return near();
      },
    });
  }
  if (matches.length > 1)
    refuse('colourant-ambiguous', { text: cut(text, longestName), candidates: matches.map(choiceOf) });
  return only;
}
