import {
  type APIComponentInModalActionRow,
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData,
  ComponentType,
  TextInputStyle,
} from 'discord.js';
import type { Field, Form } from '../conversation/reply.ts';
import { cut } from '../engine/text/excerpt.ts';
import { plainThroughout } from '../words/marks.ts';

/** A form as the platform's modal: at most five labelled fields, 45 characters of title and label, no marks. */
export const modalOf = (form: Form<string>): APIModalInteractionResponseCallbackData =>
  plainModalOf(plainThroughout(form));

const plainModalOf = ({ title, fields, follow }: Form<string>): APIModalInteractionResponseCallbackData => ({
  custom_id: follow,
  title: cut(title, 45),
  components: fields.map(labelled),
});

const labelled = (field: Field): APILabelComponent => ({
  type: ComponentType.Label,
  label: cut(field.label, 45),
  ...('hint' in field && field.hint && { description: cut(field.hint, 100) }),
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
        max_length: roomOf(field),
        // What is longer than the field takes would make the whole form a "no".
        ...(field.value && { value: cut(field.value, roomOf(field)) }),
      };
    case 'pick':
      if (fitsRadio(field))
        return {
          type: ComponentType.RadioGroup,
          custom_id: name,
          required,
          options: field.items.map(({ label, value, chosen }) => ({
            label: cut(label, 100),
            value,
            default: chosen ?? false,
          })),
        };
      return {
        type: ComponentType.StringSelect,
        custom_id: name,
        required,
        options: field.items
          .slice(0, 25)
          .map(({ label, value, chosen }) => ({ label: cut(label, 100), value, default: chosen ?? false })),
      };
    case 'several':
      return {
        type: ComponentType.CheckboxGroup,
        custom_id: name,
        required,
        min_values: required ? 1 : 0,
        options: field.items
          .slice(0, 10)
          .map(({ label, value, chosen }) => ({ label: cut(label, 100), value, default: chosen ?? false })),
      };
    case 'picture':
      return {
        type: ComponentType.FileUpload,
        custom_id: name,
        min_values: required ? 1 : 0,
        max_values: 1,
        file_types: ['image'],
        required,
      };
  }
}

const roomOf = ({
  kind,
  most,
}: {
  readonly kind: 'line' | 'paragraph';
  readonly most?: number | undefined;
}) => most ?? (kind === 'line' ? 200 : 2000);

/** All at a glance where there are 2 to 10; what may be left out again needs a menu, a radio button stays chosen. */
const fitsRadio = ({ items, required }: Extract<Field, { kind: 'pick' | 'several' }>): boolean =>
  items.length >= 2 && items.length <= 10 && (required || !items.some(({ chosen }) => chosen));
