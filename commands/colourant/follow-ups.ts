import { z } from 'zod';
import { type FollowUp, followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { refuse } from '../../src/engine/refusal.ts';
import * as evidence from '../../src/records/evidence/index.ts';
import { oneColourReply, wholeGroupReply } from './report-pages.ts';

/** Where a group's reports are kept. */
export const scopeOf = ({ store, group }: Context): evidence.EvidenceScope => ({ store, group });

/** What was seen of a colour, as this member may know it. */
export const evidenceOn = (identity: string, context: Context): Promise<evidence.Evidence> =>
  evidence.reportsOn(scopeOf(context), identity, context.asker.id);

const page = z
  .string()
  .regex(/^\d{1,4}$/)
  .transform(Number);

const group: FollowUp<{ readonly page: string | number }> = followUp({
  seenBy: 'asker',
  replaces: true,
  args: { page },
  answer: (asked, context) => wholePage(asked.page, context),
});

const one: FollowUp<{ readonly colour: string | number; readonly page: string | number }> = followUp({
  seenBy: 'asker',
  replaces: true,
  args: { colour: z.string(), page },
  async answer(asked, context) {
    const identity = await evidence.identityFiled(scopeOf(context), asked.colour);
    return identity === undefined
      ? refuse('follow-up-expired', {})
      : colourPage(identity, asked.page, context);
  },
});

const open: FollowUp<Record<never, never>> = followUp({
  seenBy: 'asker',
  args: {},
  async answer(_, context, { values }) {
    const identity = await evidence.identityFiled(scopeOf(context), (values[0] ?? '').slice(0, 60));
    return identity === undefined ? refuse('follow-up-expired', {}) : colourPage(identity, 0, context);
  },
});

/** A page, from 0, of everything the group has seen. */
export async function wholePage(asked: number, context: Context): Promise<Reply> {
  const reports = await evidence.everyReport(scopeOf(context), context.asker.id);
  const leads = { page: (to: number) => group.with({ page: to }), open: open.with({}) };
  return wholeGroupReply(reports, { page: asked, leads, say: context.say });
}

/** A page, from 0, of what was seen of one colour. */
export async function colourPage(identity: string, asked: number, context: Context): Promise<Reply> {
  const leads = { page: (to: number) => one.with({ colour: evidence.filed(identity), page: to }) };
  return oneColourReply(identity, await evidenceOn(identity, context), {
    page: asked,
    leads,
    say: context.say,
  });
}

/** The buttons and the menu of a page. */
export const evidenceFollowUps = { group, one, open };
