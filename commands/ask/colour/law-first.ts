import type { Context } from '../../../src/conversation/context.ts';
import { type Given, textsOf } from '../../../src/conversation/question.ts';
import type { Block } from '../../../src/conversation/reply.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { likelyLaw } from '../../../src/engine/questions/places/likely-law.ts';
import type { Region } from '../../../src/engine/questions/places/regions.ts';
import { permittedSummary } from '../../../src/engine/stability/permitted-summary.ts';
import type { Component } from '../../../src/engine/stability/report.ts';
import { capital } from '../../../src/engine/text/capital.ts';
import { meantName } from '../../../src/presenting/check.ts';
import { findMeant, meantByText } from '../../../src/records/shelf/meant.ts';
import type { Words } from '../../../src/words/index.ts';
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
  const isLaw = (block: Block) => block.kind === 'rows' && block.title === say.checking.mayBeUsed;
  const law =
    country !== undefined
      ? say.ask.likelyLaw({ country, law: likelyLaw(country, meant.report.components) })
      : ofRegion(region, meant.report.components, say);
  const lawOfIt = say.ask.lawOfIt({ name: capital(meantName(meant, say) ?? of), law });
  // What must never meet lye stays out first, listed or not.
  const isBarredByLye = meant.report.verdict === 'never' || meant.report.verdictIfPresent === 'never';
  const [first, second] = isBarredByLye ? [answer.headline, lawOfIt] : [lawOfIt, answer.headline];
  return {
    ...answer,
    headline: first,
    blocks: [
      ...answer.blocks.filter(isLaw).map(block => ({ ...block, firm: true })),
      { kind: 'text', text: second, firm: true },
      ...answer.blocks.filter(block => !isLaw(block)),
    ],
  };
}

function ofRegion(region: Region | undefined, components: readonly Component[], { checking }: Words): string {
  const { us, eu } = permittedSummary(components);
  return region === 'EU' ? checking.eu(eu) : checking.us(us);
}
