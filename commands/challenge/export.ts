import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { csv } from '../../src/presenting/csv.ts';
import { asOf, exportElection, resultAt } from '../../src/records/challenges/index.ts';
import { requireCountable } from './answer.ts';
import { colourantsOfBar, makersAreKnown, numberedBars } from './bars.ts';
import { chooseToLookAt, scopeOf, settled } from './lookup.ts';
import { placesOf } from './pictures.ts';
import { resultData } from './view.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);

/**
 * A challenge as files for stewards: JSON that `npm run -s tally` counts again, and one row an entry as CSV. A ballot
 * that leaves out an entry still tells that its voter made that entry.
 */
export async function exportChallenge(
  asked: { readonly challenge?: string | undefined },
  context: Context,
): Promise<Reply> {
  const { say, at } = context;
  const found = await chooseToLookAt(context, asked.challenge, phase => (phase === 'closed' ? 0 : 1));
  const challenge = await settled(context, found);
  const now = asOf(challenge, at);
  requireCountable(now);
  const scope = scopeOf(context);
  const [election, result] = await Promise.all([
    exportElection(scope, challenge, at),
    resultAt(scope, challenge, at),
  ]);
  const places = new Map(placesOf(result).map(({ entry, place }) => [entry, place]));
  // While votes are cast nobody learns whose bar is whose, stewards included.
  const hidden = !makersAreKnown(now);
  const entries = numberedBars(challenge, now).map(({ number, entry, by, bar, ...state }) => {
    const measured = result.colour.get(entry);
    const score = measured && 'score' in measured ? measured.score : undefined;
    return {
      number,
      entry,
      member: hidden ? undefined : by,
      title: bar.title,
      maker: hidden ? undefined : bar.maker,
      colourants: colourantsOfBar({ bar }, now, say),
      state: state.state,
      ...(state.state === 'disqualified' && { reason: state.reason }),
      place: places.get(entry),
      votes: result.tally?.votes[entry],
      colourScore: score?.score,
      colourPlusMinus: score?.plusMinus,
    };
  });
  const json = {
    ...election,
    id: challenge.id,
    terms: now.terms,
    entries,
    result: resultData(challenge, result),
  };
  const table = csv([
    [
      'place',
      'number',
      'entry',
      'title',
      'maker',
      'member',
      'colourants',
      'state',
      'votes',
      'colour_score',
      'colour_plus_minus',
      'reason',
    ],
    ...entries.map(one => [
      one.place,
      one.number,
      one.entry,
      one.title,
      one.maker,
      one.member,
      one.colourants.join('; '),
      one.state,
      one.votes,
      one.colourScore?.toFixed(2),
      one.colourPlusMinus?.toFixed(2),
      'reason' in one ? one.reason : undefined,
    ]),
  ]);
  return {
    kind: 'reply',
    headline: say.challengeSteps.exported({ title: now.terms.title }),
    data: json,
    blocks: [
      {
        kind: 'file',
        name: 'challenge.json',
        bytes: bytesOf(`${JSON.stringify(json, undefined, 2)}\n`),
        mediaType: 'application/json',
      },
      { kind: 'file', name: 'challenge.csv', bytes: bytesOf(table), mediaType: 'text/csv' },
      { kind: 'text', text: say.challengeSteps.exportNote, folds: true },
    ],
    cautions: [],
  };
}
