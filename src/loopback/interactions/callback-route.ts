import type { APIApplicationCommandOptionChoice } from 'discord-api-types/v10';
import type { Answer, Call, Route } from '../http/exchange.ts';
import { noContent, ok } from '../http/exchange.ts';
import type { Kernel } from '../kernel.ts';
import { messageView, openFormOf } from '../members/views.ts';
import { Findings } from '../refusals/findings.ts';
import { checkChoices, checkForm } from '../refusals/form.ts';
import { flags } from '../refusals/message.ts';
import { type Json, listOf, numberOf, recordOf } from '../state/json.ts';
import { finishComponents } from '../writing/finish-components.ts';
import { checkDraft, createMessage, editMessage } from '../writing/write.ts';
import { callbackTypes, interactionTypes, type Live } from './live.ts';
import { aboutInteraction } from './metadata.ts';
import type { Interactions } from './registry.ts';

/** POST /interactions/ID/TOKEN/callback: the first answer, exactly one, within the window. */
export function callbackRoute(kernel: Kernel, interactions: Interactions): Route {
  const handle = (call: Call): Answer => {
    const [id = '', token = ''] = call.params;
    const live = interactions.toAnswer(id, token);
    const type = numberOf(call.body.type, 0);
    const data = recordOf(call.body.data);
    checkFits(live, type);
    const resource = answer(kernel, interactions, live, type, { ...call, body: data });
    if (call.query.get('with_response') !== 'true') return noContent;
    const message = 'message' in resource ? recordOf(resource.message) : undefined;
    return ok({
      interaction: {
        id: live.id,
        type: live.type,
        channel_id: live.channelId,
        ...(live.guildId !== undefined && { guild_id: live.guildId }),
        ...(message && {
          response_message_id: message.id,
          response_message_loading: (numberOf(message.flags, 0) & flags.loading) !== 0,
          response_message_ephemeral: (numberOf(message.flags, 0) & flags.ephemeral) !== 0,
        }),
      },
      ...(message && { resource: { type, message } }),
    });
  };
  return { method: 'POST', path: /^\/interactions\/(\d+)\/([\w-]+)\/callback$/, bot: false, handle };
}

/** Which callback types an interaction takes. Source: Receiving and Responding > Interaction Callback Type. */
function checkFits(live: Live, type: number): void {
  const { message, deferMessage, deferUpdate, update, choices, form } = callbackTypes;
  const onMessage = live.sourceMessageId === undefined ? [] : [deferUpdate, update];
  const fits: readonly number[] =
    live.type === interactionTypes.autocomplete
      ? [choices]
      : [message, deferMessage, ...onMessage, ...(live.type === interactionTypes.form ? [] : [form])];
  if (fits.includes(type)) return;
  const found = new Findings();
  const isSecondForm = type === form && live.type === interactionTypes.form;
  found.add(
    isSecondForm ? 'form-after-form' : 'answer-kind',
    ['type'],
    `Value must be one of (${fits.join(', ')}).`,
  );
  found.settle();
}

type Draft = Pick<Call, 'body' | 'uploads'>;

/** Does what the callback says; gives the resource that `with_response` shows. */
function answer(kernel: Kernel, interactions: Interactions, live: Live, type: number, draft: Draft): Json {
  switch (type) {
    case callbackTypes.message:
    case callbackTypes.deferMessage:
      return reply(kernel, interactions, live, type, draft);
    case callbackTypes.update:
    case callbackTypes.deferUpdate:
      return update(kernel, interactions, live, type, draft);
    case callbackTypes.choices: {
      checkChoices(draft.body, live.focusedType);
      interactions.acknowledge(live, type);
      live.settle({
        kind: 'choices',
        choices: listOf(draft.body.choices) as readonly APIApplicationCommandOptionChoice[],
      });
      return {};
    }
    default: {
      checkForm(draft.body);
      interactions.acknowledge(live, type);
      const raw = { ...draft.body, components: finishComponents(kernel, listOf(draft.body.components), []) };
      const form = openFormOf(raw, live.id);
      kernel.record({
        kind: 'form-opened',
        form,
        visibleTo: live.userId,
        channelId: live.channelId,
        ...(live.sourceMessageId !== undefined && { sourceMessageId: live.sourceMessageId }),
      });
      live.settle({ kind: 'form', interactionId: live.id, form });
      return {};
    }
  }
}

function reply(kernel: Kernel, interactions: Interactions, live: Live, type: number, draft: Draft): Json {
  const deferred = type === callbackTypes.deferMessage;
  const given = numberOf(draft.body.flags, 0);
  if (deferred) {
    const found = new Findings();
    if ((given & ~flags.ephemeral) !== 0) found.add('defer-flags', ['data', 'flags']);
    found.settle();
  } else checkDraft(kernel, draft, ['data']);
  interactions.acknowledge(live, type);
  const record = createMessage(kernel, {
    body: deferred ? {} : draft.body,
    uploads: deferred ? [] : draft.uploads,
    channelId: live.channelId,
    guildId: live.guildId,
    visibleTo: (given & flags.ephemeral) === 0 ? 'everyone' : live.userId,
    interactionId: live.id,
    extra: aboutInteraction(kernel, live),
    pending: deferred,
  });
  live.originalId = record.message.id;
  live.shown.push(record.message.id);
  if (!deferred)
    live.settle({ kind: 'message', interactionId: live.id, message: messageView(kernel, record) });
  return { message: record.message };
}

function update(kernel: Kernel, interactions: Interactions, live: Live, type: number, draft: Draft): Json {
  const source = kernel.messages.get(live.sourceMessageId ?? '');
  const changes = type === callbackTypes.update;
  if (source && changes) checkDraft(kernel, draft, ['data'], source.message);
  interactions.acknowledge(live, type);
  live.originalId = live.sourceMessageId;
  // Dismissed in the meantime: the platform accepts, and nobody sees it.
  if (!source) return {};
  if (!changes) return { message: source.message };
  const record = editMessage(kernel, source, draft.body, draft.uploads);
  live.shown.push(record.message.id);
  live.settle({ kind: 'message', interactionId: live.id, message: messageView(kernel, record) });
  return { message: record.message };
}
