import type { Context } from '../../../src/conversation/context.ts';
import { type Given, textsOf } from '../../../src/conversation/question.ts';
import { Offer } from '../../../src/conversation/typed/which-one.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import type { Colourant } from '../../../src/engine/colourants/colourant.ts';
import { ranCommand } from '../reading/ran-command.ts';
import type { Ran } from '../understood.ts';

/** Over pale soap an interference mica looks white: nobody who names a hue means it first. */
const HIDES = 'interference-needs-dark-base';

/** The first of several that holds in lye and shows its hue; undefined where none does. */
const likeliestOf = (candidates: readonly { readonly id: string }[]): Colourant | undefined =>
  candidates
    .flatMap(({ id }) => colourantById(id) ?? [])
    .find(({ alkali, hints }) => alkali.behaviour === 'stable' && !hints.includes(HIDES));

/**
 * A look at a mix in which one name may be several: as the one of them that holds in lye, with a button for each other. Throws the offer
 * itself where none is likelier, or what the preview throws.
 */
export async function previewOfLikeliest(given: Given, context: Context): Promise<Ran> {
  try {
    return await ranCommand('preview', given, context);
  } catch (offer) {
    if (!(offer instanceof Offer) || offer.refusal.id !== 'colourant-ambiguous') throw offer;
    const { text, candidates } = offer.refusal.values as {
      readonly text: string;
      readonly candidates: readonly { readonly id: string }[];
    };
    const likeliest = likeliestOf(candidates);
    const { mix } = textsOf(given);
    if (!likeliest || mix === undefined || !mix.toLowerCase().includes(text.toLowerCase())) throw offer;
    const name = likeliest.names[context.say.language];
    const at = mix.toLowerCase().indexOf(text.toLowerCase());
    const told = `${mix.slice(0, at)}${name}${mix.slice(at + text.length)}`;
    const shown = await ranCommand('preview', { ...given, mix: told }, context);
    const note = context.say.ask.likeliestOf({ text, name });
    return {
      ...shown,
      blocks: [{ kind: 'text', text: note, firm: true }, ...shown.blocks],
      choices: offer.choices,
    };
  }
}
