import type { HostEvent } from '../../loopback/index.ts';

type Message = HostEvent & { readonly kind: 'message-created' | 'message-edited' };

/**
 * The fewest events that rebuild the same room: people and places, the commands as they stand, the newest messages
 * in their last state, and the files on them. An answer that never came does not come back.
 */
export function compact(events: readonly HostEvent[], mostMessages: number): readonly HostEvent[] {
  const last = new Map<string, Message>();
  for (const event of events) {
    if (event.kind === 'message-created' || event.kind === 'message-edited')
      last.set(event.message.id, event);
    else if (event.kind === 'message-deleted') last.delete(event.id);
  }
  const ended = [...last].filter(([, { pending }]) => !pending).slice(-mostMessages);
  const messages = new Map(ended);
  const files = new Set(ended.flatMap(([, { message }]) => message.attachments.map(({ id }) => id)));
  const newest = newestOf(events);

  return events.flatMap((event): readonly HostEvent[] => {
    switch (event.kind) {
      case 'message-created': {
        const now = messages.get(event.message.id);
        return now ? [{ ...now, kind: 'message-created', seq: event.seq, at: event.at }] : [];
      }
      case 'file-stored':
        return files.has(event.id) ? [event] : [];
      case 'commands-changed':
      case 'member-changed':
      case 'channel-changed':
      case 'application':
        return newest.get(nameOf(event)) === event ? [event] : [];
      case 'message-edited':
      case 'message-deleted':
      case 'form-opened':
      case 'interaction-sent':
      case 'interaction-acknowledged':
      case 'interaction-failed':
        return [];
      default:
        return [event];
    }
  });
}

/** The interactions that kept messages answer. */
export const answered = (events: readonly HostEvent[]): ReadonlySet<string> =>
  new Set(
    events.flatMap(event => ('interactionId' in event && event.interactionId ? [event.interactionId] : [])),
  );

const newestOf = (events: readonly HostEvent[]) => new Map(events.map(event => [nameOf(event), event]));

/** What an event is about: a later event about the same thing takes its place. */
function nameOf(event: HostEvent): string {
  const { kind } = event;
  const group = 'guildId' in event ? (event.guildId ?? '') : '';
  const id = 'id' in event && kind !== 'application' ? event.id : '';
  return [kind, group, id].join('/');
}
