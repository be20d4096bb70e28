import type { Kernel } from '../kernel.ts';
import { type Json, recordOf, textOf } from '../state/json.ts';
import { userJson } from '../state/serializers.ts';
import { interactionTypes, type Live } from './live.ts';

/** Fields that tie an answer to its interaction. Source: Resources > Message > Message Interaction Metadata. */
export function aboutInteraction(kernel: Kernel, live: Live): Json {
  const user = kernel.room.users.get(live.userId);
  const data = recordOf(live.dispatch.data);
  const metadata = {
    id: live.id,
    type: live.type,
    user: user && userJson(user),
    authorizing_integration_owners: live.dispatch.authorizing_integration_owners,
    ...(live.sourceMessageId !== undefined && { interacted_message_id: live.sourceMessageId }),
  };
  const base = {
    application_id: kernel.room.applicationId,
    webhook_id: kernel.room.applicationId,
    interaction_metadata: metadata,
  };
  if (live.type === interactionTypes.command)
    return {
      ...base,
      type: data.type === 1 ? 20 : 23,
      interaction: { id: live.id, type: live.type, name: textOf(data.name), user: user && userJson(user) },
    };
  if (live.sourceMessageId === undefined) return base;
  return { ...base, type: 19, message_reference: referenceTo(live, live.sourceMessageId) };
}

/** Fields of a follow-up: it hangs on the first answer. */
export function aboutFollowUp(kernel: Kernel, live: Live): Json {
  const { interaction: _, type: __, ...base } = aboutInteraction(kernel, live);
  if (live.originalId === undefined) return base;
  return { ...base, type: 19, message_reference: referenceTo(live, live.originalId) };
}

const referenceTo = (live: Live, messageId: string): Json => ({
  type: 0,
  message_id: messageId,
  channel_id: live.channelId,
  ...(live.guildId !== undefined && { guild_id: live.guildId }),
});
