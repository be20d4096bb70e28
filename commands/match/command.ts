import { action, command } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, picture, text, whole, yesNo } from '../../src/conversation/option.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { readColour } from '../../src/engine/text/colours/colour-name.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { targetOf } from './answer.ts';
import { matchFollowUps, matchReply } from './follow-ups.ts';
import { matchPhoto, matchPhotoFollowUps } from './photo.ts';

const says = phrases('match');

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'match-without-target': Record<never, never>;
    'match-two-targets': Record<never, never>;
  }
}

export default command(
  'match',
  action({
    purpose: says.purpose,
    anywhere: true,
    // A recipe from the shelf tells what stands on it; a colour of a photo is chosen by whoever sent it.
    seenBy: ({ from, photo }) => (from === 'catalogue' && !photo ? 'group' : 'asker'),
    // Where it is asked in words among members, whose answer everybody reads.
    namesJar: async ({ from }, { shelf }) => from !== 'catalogue' && (await listShelf(shelf)).length > 0,
    pace: 'slow',
    options: {
      target: text(says.target).optional(),
      photo: picture(says.photo).optional(),
      portion: text(says.portion, { reads: 'portion' }).optional(),
      from: choice(says.from).optional(),
      with: text(says.with, { most: 400 }).optional(),
      most: whole(says.most, { least: 1, most: 3 }).optional(),
      base: text(says.base, { most: 400 }).optional(),
      gel: yesNo(says.gel).optional(),
    },
    completes: { base: (typed: string, { say }: Context) => suggestBases(typed, say) },
    async answer({ target, photo, portion, from, with: told, most, base, gel }, context) {
      const asked = {
        portion: portion?.trim() ?? context.say.match.oneCup,
        most: most ?? 3,
        gelled: gel ?? false,
        ...(from !== undefined && { from }),
        ...(told !== undefined && { with: told }),
        ...(base !== undefined && { base }),
      };
      if (target !== undefined && photo) refuse('match-two-targets', {});
      if (photo) return matchPhoto(photo, asked, context);
      if (target === undefined) return refuse('match-without-target', {});
      return matchReply(targetOf(readColour(target).hex), asked, context);
    },
  }),
  { followUps: { ...matchFollowUps, ...matchPhotoFollowUps } },
);
