/** The platform's objects as a member sees them. */
import type { APIModalInteractionResponseCallbackData } from 'discord-api-types/v10';
import type { Control, FileView, FormField, MessageView, OpenForm } from '../interface/views.ts';
import type { Kernel } from '../kernel.ts';
import { flags } from '../refusals/message.ts';
import { type Json, listOf, numberOf, recordOf, textOf } from '../state/json.ts';
import type { MessageRecord } from '../state/messages.ts';
import { walk } from '../writing/finish-components.ts';

const menuKinds: Readonly<Record<number, Control['kind'] & FormField['kind']>> = {
  3: 'text-menu',
  5: 'user-menu',
  6: 'role-menu',
  7: 'mentionable-menu',
  8: 'channel-menu',
};
const fieldKinds: Readonly<Record<number, FormField['kind']>> = {
  ...menuKinds,
  4: 'text',
  19: 'files',
  21: 'one-of',
  22: 'some-of',
  23: 'tick',
};

const optionsOf = (component: Json) =>
  listOf(component.options).map(item => ({
    label: textOf(recordOf(item).label) ?? '',
    value: textOf(recordOf(item).value) ?? '',
  }));

/** A stored message as seen now, with fresh file addresses. */
export function messageView(kernel: Kernel, record: MessageRecord): MessageView {
  const raw = kernel.files.freshMessage(record.message);
  const all = [...walk(raw.components ?? [])];
  return {
    id: raw.id,
    channelId: raw.channel_id,
    ...(record.guildId !== undefined && { guildId: record.guildId }),
    authorId: raw.author.id,
    ephemeral: (numberOf(raw.flags, 0) & flags.ephemeral) !== 0,
    visibleTo: record.visibleTo,
    ...(record.interactionId !== undefined && { interactionId: record.interactionId }),
    text: [raw.content, ...all.map(component => textOf(component.content) ?? '')].filter(Boolean).join('\n'),
    components: raw.components ?? [],
    controls: all.flatMap(controlOf),
    files: raw.attachments.flatMap(attachment => fileView(kernel, attachment.id, attachment.description)),
    raw,
  };
}

function fileView(kernel: Kernel, id: string, description: string | undefined): readonly FileView[] {
  const file = kernel.files.get(id);
  return file ? [kernel.files.seen(file, description)] : [];
}

function controlOf(component: Json): readonly Control[] {
  const type = numberOf(component.type, 0);
  const menu = menuKinds[type];
  if (type !== 2 && !menu) return [];
  const customId = textOf(component.custom_id);
  return [
    {
      kind: menu ?? (component.style === 5 ? 'link' : 'button'),
      ...(customId !== undefined && { customId }),
      label: textOf(component[menu ? 'placeholder' : 'label']) ?? '',
      disabled: component.disabled === true,
      options: optionsOf(component),
    },
  ];
}

/** A form as it opens before a member. */
export function openFormOf(raw: Json, interactionId: string): OpenForm {
  const fields = listOf(raw.components).flatMap((part): readonly FormField[] => {
    const label = recordOf(part);
    const field = recordOf(label.component ?? listOf(label.components)[0]);
    const kind = fieldKinds[numberOf(field.type, 0)];
    if (!kind) return [];
    const value = textOf(field.value);
    return [
      {
        customId: textOf(field.custom_id) ?? '',
        kind,
        label: textOf(label.label) ?? textOf(field.label) ?? '',
        required: kind !== 'tick' && field.required !== false,
        ...(value !== undefined && { value }),
        options: optionsOf(field),
      },
    ];
  });
  return {
    customId: textOf(raw.custom_id) ?? '',
    title: textOf(raw.title) ?? '',
    fields,
    interactionId,
    raw: raw as unknown as APIModalInteractionResponseCallbackData,
  };
}
