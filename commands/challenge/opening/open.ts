import { z } from 'zod';
import { followUp } from '../../../src/conversation/command.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Named } from '../../../src/conversation/question.ts';
import type { Form, Reply } from '../../../src/conversation/reply.ts';
import { validSent } from '../../../src/conversation/typed/validate.ts';
import { challengeAt } from '../../../src/engine/challenges/challenge.ts';
import type { Fixed } from '../../../src/engine/challenges/wall-time.ts';
import { openChallenge, requireChallenge } from '../../../src/records/challenges/index.ts';
import { groupSettings } from '../../../src/records/group.ts';
import { madeBySteward, requireOtherTitle, scopeOf } from '../lookup.ts';
import { announcementPicture } from '../pictures.ts';
import { announcementReply } from '../view.ts';
import { type OpenAsked, readTerms } from './terms.ts';

/** Opens a challenge; without anything said, asks for what matters first. */
export async function open(asked: OpenAsked, context: Context): Promise<Reply | Form> {
  if (Object.keys(asked).length === 0) return openForm(context);
  const { terms, shifted } = await readTerms(asked, context);
  const made = madeBySteward(context);
  await requireOtherTitle(terms.title, made.id, context);
  const { language } = context;
  const channel = asked.channel?.id ?? context.channel ?? '';
  const { id } = await openChallenge(scopeOf(context), { terms, channel, language }, made);
  context.checkDue?.();
  return opened(id, { shifted, channel: asked.channel }, context);
}

async function opened(
  id: string,
  { shifted, channel }: { readonly shifted: readonly Fixed[]; readonly channel: Named | undefined },
  context: Context,
): Promise<Reply> {
  const { say, at, workers } = context;
  const challenge = await requireChallenge(scopeOf(context), id);
  const now = challengeAt(challenge.events, at);
  const told = announcementReply(challenge, now, say);
  const { choices: _offeredInTheChannel, ...announcement } = told;
  const notes = [
    ...shifted.map(fixed => shiftOf(fixed, context)),
    whereTold(channel, context),
    ...(await besideTold(channel, context)),
    ...(now.terms.decides === 'votes' ? [] : [say.challengeSteps.unscoredKinds]),
  ];
  return {
    ...announcement,
    headline: say.challengeSteps.opened({ title: now.terms.title }),
    blocks: [
      { kind: 'text', text: notes.join('\n') },
      ...(await announcementPicture(workers, { challenge, now, say })),
      ...announcement.blocks,
    ],
  };
}

/** Where the group hears of it; or that it does not, by what is missing there, and where it would. */
function whereTold(channel: Named | undefined, context: Context): string {
  const { here, say } = context;
  const words = say.challengeSteps;
  if (!channel && context.channel === undefined) return words.openedHere;
  const lacks = channel ? (channel.lacks ?? []) : (here?.lacks ?? []);
  if (lacks.length > 0) return words.openedUntold({ lacks, instead: here?.betterPlaces() ?? [] });
  return channel ? words.openedInOther({ channel: channel.name }) : words.openedInChannel;
}

/** What will not stand beside the news although the group wants it, by what we may not do there. */
async function besideTold(channel: Named | undefined, context: Context): Promise<readonly string[]> {
  const { here, store, group, say } = context;
  const { threads = true, calendar = true } = await groupSettings(store, group);
  const wanted = { thread: threads, calendar };
  const lacks = (channel ?? here)?.lacksBeside?.filter(lack => wanted[lack]) ?? [];
  return lacks.length > 0 ? [say.challengeSteps.lacksBeside({ lacks })] : [];
}

function shiftOf({ at, zone, shift }: Fixed, { say }: Context): string {
  const { kind, minutes } = shift ?? { kind: 'twice', minutes: 0 };
  return say.challenges.shifted[kind]({ minutes, at, zone });
}

const openForm = ({ say: { challengeSteps: steps } }: Context): Form => ({
  kind: 'form',
  title: steps.openTitle,
  fields: [
    { kind: 'line', name: 'title', label: steps.fields.title, required: true, most: 80 },
    { kind: 'paragraph', name: 'brief', label: steps.fields.brief, required: false, most: 1000 },
    {
      kind: 'line',
      name: 'palette',
      label: steps.fields.palette,
      hint: steps.hints.palette,
      required: false,
    },
    {
      kind: 'line',
      name: 'entries-until',
      label: steps.fields.entriesUntil,
      hint: steps.hints.deadline,
      required: false,
    },
    {
      kind: 'line',
      name: 'votes-until',
      label: steps.fields.votesUntil,
      hint: steps.hints.deadline,
      required: false,
    },
  ],
  follow: openFilled.with({}),
});

const sentTerms = z.object({
  title: z.string(),
  brief: z.string().optional(),
  palette: z.string().optional(),
  'entries-until': z.string().optional(),
  'votes-until': z.string().optional(),
});

/** What a steward filled in. */
export const openFilled = followUp({
  seenBy: 'asker',
  pace: 'slow',
  access: 'steward',
  args: z.object({}).shape,
  answer: (_, context, { fields }) => open(validSent(sentTerms, fields), context),
});
