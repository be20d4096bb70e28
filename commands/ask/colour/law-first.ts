import type { Context } from '../../../src/conversation/context.ts';
import { type Given, textsOf } from '../../../src/conversation/question.ts';
import type { Block } from '../../../src/conversation/reply.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { permittedSummary } from '../../../src/engine/stability/permitted-summary.ts';
import { meantName } from '../../../src/presenting/check.ts';
import { findMeant, meantByText } from '../../../src/records/shelf/meant.ts';
import type { Ran } from '../understood.ts';

/**
 * The check of a colourant as it is told to whoever asks what a law says of it: the region that was named first, then what lye does.
 * Unchanged where no region is named. Throws as the check itself does.
 */
export async function lawFirst(
  answer: Ran,
  { given, facts }: { readonly given: Given; readonly facts: Facts },
  context: Context,
): Promise<Ran> {
  const { region, country } = facts;
  const { item, ingredients } = textsOf(given);
  const of = item ?? ingredients;
  if ((region === undefined && country === undefined) || of === undefined) return answer;
  const { say, shelf } = context;
  const meant = item === undefined ? meantByText(of) : await findMeant(shelf, item);
  const { us, eu } = permittedSummary(meant.report.components);
  const isLaw = (block: Block) => block.kind === 'rows' && block.title === say.checking.mayBeUsed;
  const law =
    country !== undefined
      ? say.ask.lawElsewhere({ country })
      : region === 'EU'
        ? say.checking.eu(eu)
        : say.checking.us(us);
  return {
    ...answer,
    headline: say.ask.lawOfIt({ name: meantName(meant, say) ?? of, law }),
    blocks: [
      ...answer.blocks.filter(isLaw).map(block => ({ ...block, firm: true })),
      { kind: 'text', text: answer.headline, firm: true },
      ...answer.blocks.filter(block => !isLaw(block)),
    ],
  };
}
