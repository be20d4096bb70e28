import { type Answer, type Call, noContent, ok, type Route } from '../http/exchange.ts';
import type { Kernel } from '../kernel.ts';
import { messageView } from '../members/views.ts';
import { refusal } from '../refusals/findings.ts';
import { flags } from '../refusals/message.ts';
import { ruleOf } from '../refusals/rules.ts';
import { numberOf } from '../state/json.ts';
import type { MessageRecord } from '../state/messages.ts';
import { checkDraft, createMessage, deleteMessage, editMessage } from '../writing/write.ts';
import { callbackTypes, type Live } from './live.ts';
import { aboutFollowUp } from './metadata.ts';
import type { Interactions } from './registry.ts';

/** Follow-ups, and the original answer afterwards: fetch, edit, delete. */
export function webhookRoutes(kernel: Kernel, interactions: Interactions): readonly Route[] {
  const liveOf = (call: Call): Live => interactions.byToken(call.params[1] ?? '');
  const messageOf = (call: Call): MessageRecord => {
    const live = liveOf(call);
    const name = call.params[2] ?? '';
    const id = name === '@original' ? live.originalId : name;
    const record = id === undefined ? undefined : kernel.messages.get(id);
    const isOurs = id === live.originalId || live.shown.includes(id ?? '');
    if (!record || !isOurs) throw refusal('message-unknown', 'Unknown Message');
    return record;
  };
  const write = (live: Live, record: MessageRecord, call: Call): Answer => {
    checkDraft(kernel, call, [], record.message);
    const edited = editMessage(kernel, record, call.body, call.uploads);
    if (!live.shown.includes(edited.message.id)) live.shown.push(edited.message.id);
    live.settle({ kind: 'message', interactionId: live.id, message: messageView(kernel, edited) });
    return ok(edited.message);
  };
  const followUp = (call: Call): Answer => {
    const live = liveOf(call);
    const original = live.originalId === undefined ? undefined : kernel.messages.get(live.originalId);
    // The first follow-up after a deferral completes it: Receiving and Responding > Create Followup Message.
    if (live.acknowledgedAs === callbackTypes.deferMessage && original?.pending)
      return write(live, original, call);
    checkDraft(kernel, call, []);
    if (live.context === 'elsewhere' && live.followUps >= (ruleOf('follow-ups-elsewhere').limit ?? 0))
      throw refusal('follow-ups-elsewhere');
    live.followUps += 1;
    const isEphemeral = (numberOf(call.body.flags, 0) & flags.ephemeral) !== 0;
    const record = createMessage(kernel, {
      body: call.body,
      uploads: call.uploads,
      channelId: live.channelId,
      guildId: live.guildId,
      visibleTo: isEphemeral ? live.userId : 'everyone',
      interactionId: live.id,
      extra: aboutFollowUp(kernel, live),
    });
    live.shown.push(record.message.id);
    live.settle({ kind: 'message', interactionId: live.id, message: messageView(kernel, record) });
    return ok(record.message);
  };
  const one = /^\/webhooks\/(\d+)\/([\w-]+)\/messages\/(@original|\d+)$/;
  return [
    { method: 'POST', path: /^\/webhooks\/(\d+)\/([\w-]+)$/, bot: false, handle: followUp },
    {
      method: 'GET',
      path: one,
      bot: false,
      handle: call => ok(kernel.files.freshMessage(messageOf(call).message)),
    },
    { method: 'PATCH', path: one, bot: false, handle: call => write(liveOf(call), messageOf(call), call) },
    {
      method: 'DELETE',
      path: one,
      bot: false,
      handle: call => {
        deleteMessage(kernel, messageOf(call));
        return noContent;
      },
    },
  ];
}
