import {
  type APIComponentInModalActionRow,
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData,
  ComponentType,
  TextInputStyle,
} from 'discord.js';
import type { Field, Form } from '../conversation/reply.ts';

/** A form as the platform's modal: at most five labelled fields, 45 characters of title and label. */
export const modalOf = ({
  title,
  fields,
  follow,
}: Form<string>): APIModalInteractionResponseCallbackData => ({
  custom_id: follow,
  title: title.slice(0, 45),
  components: fields.map(labelled),
});

const labelled = (field: Field): APILabelComponent => ({
  type: ComponentType.Label,
  label: field.label.slice(0, 45),
  ...('hint' in field && field.hint && { description: field.hint.slice(0, 100) }),
  component: inputOf(field) as APILabelComponent['component'],
});

function inputOf(field: Field): APIComponentInModalActionRow | APILabelComponent['component'] {
  const { name, required } = field;
  switch (field.kind) {
    case 'line':
    case 'paragraph':
      return {
        type: ComponentType.TextInput,
        custom_id: name,
        style: field.kind === 'line' ? TextInputStyle.Short : TextInputStyle.Paragraph,
        required,
        max_length: field.most ?? (field.kind === 'line' ? 200 : 2000),
        ...(field.value && { value: field.value }),
      };
    case 'pick':
      return {
        type: ComponentType.StringSelect,
        custom_id: name,
        required,
        options: field.items.map(({ label, value, chosen }) => ({ label, value, default: chosen ?? false })),
      };
    case 'picture':
      return {
        type: ComponentType.FileUpload,
        custom_id: name,
        min_values: required ? 1 : 0,
        max_values: 1,
        required,
      };
  }
}
