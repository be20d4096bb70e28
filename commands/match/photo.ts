import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { nearestWord } from '../../src/engine/colour/reading/plain-words.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { capital } from '../../src/engine/text/capital.ts';
import { whole } from '../../src/presenting/colour/view.ts';
import { keepRecentMatch, type MatchAsked, recentMatchOf } from '../../src/records/matches/index.ts';
import { matchReply, seenIn, seenOf } from './follow-ups.ts';

/** Which of a photo's colours is wanted: the number comes from a menu, which nobody signed. */
const pick = followUp({
  seenBy: seenIn,
  pace: 'slow',
  args: { match: z.string(), seen: z.string() },
  async answer({ match }, context, { values }): Promise<Reply> {
    const recent = await recentMatchOf(context.shelf, match);
    const chosen = recent.colours[Number(values[0])] ?? refuse('match-forgotten', {});
    return matchReply(chosen.lab, recent.asked, context);
  },
});

/** The main colours of a photo as a menu; a photo with one colour is matched at once. */
export async function matchPhoto(photo: Attachment, asked: MatchAsked, context: Context): Promise<Reply> {
  const { workers, asker, shelf, say, idempotencyKey, change } = context;
  const bytes = await photo.read();
  const owner = { owner: asker.id };
  const { colours, whiteReference } = await workers.run('photoColours', { bytes }, owner);
  const [only, other] = colours;
  if (!only) return refuse('photo-bar-unseen', {});
  if (!other) return matchReply(only.lab, asked, context);
  const kept = colours.map(({ lab, hex }) => ({ lab, hex }));
  await keepRecentMatch(shelf, idempotencyKey, { asked, colours: kept, recipes: [] }, change.at);
  const words = say.match.photo;
  const items = colours.map(({ lab, hex, share }, number) => ({
    hex,
    label: words.item({ number: number + 1, word: say.colour.names[nearestWord(lab)], hex }),
    note: words.share({ percent: Math.round(share * 100) }),
  }));
  const headline = words.which({ count: colours.length });
  const png = await workers.run('photoPalette', { title: capital(words.pick), colours: items }, owner);
  return {
    kind: 'reply',
    headline,
    data: { colours, whiteReference },
    blocks: [
      {
        kind: 'picture',
        name: 'colours.png',
        png,
        alt: words.alt({ list: items.map(({ label, note }) => `${label}, ${note}`).join('; ') }),
      },
      {
        kind: 'text',
        text: [
          whiteReference ? words.balanced : words.unbalanced,
          say.colour.plusMinus({ units: String(whole(only.plusMinus)) }),
        ].join('\n'),
      },
    ],
    cautions: [],
    choices: [
      {
        kind: 'menu',
        label: words.pick,
        least: 1,
        most: 1,
        items: items.map(({ label, note }, number) => ({ label, note, value: String(number) })),
        follow: pick.with({ match: idempotencyKey, seen: seenOf(asked) }),
      },
    ],
  };
}

export const matchPhotoFollowUps = { pick };
