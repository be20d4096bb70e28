import { numberTyped, yesNoTyped } from '../../engine/text/lines/option-value.ts';
import type { DeclaredOption } from '../declared.ts';
import type { OptionValue } from '../question.ts';

/** A text as the option's kind wants it; as it stands where it is none, so that validation names what is wrong. */
export function typedValue({ kind }: Pick<DeclaredOption, 'kind'>, text: string): OptionValue {
  switch (kind) {
    case 'whole':
    case 'number':
      return numberTyped(text) ?? text;
    case 'yes-no':
      return yesNoTyped(text) ?? text;
    case 'member':
    case 'role':
    case 'channel': {
      // As it is mentioned on the platform, or by its id or name.
      const id = /^<(?:@&|@!?|#)(\w+)>$/.exec(text.trim())?.[1] ?? text.trim().replace(/^[@#]/, '');
      return { kind, id, name: id };
    }
    case 'picture':
    case 'text':
    case 'choice':
      return text;
  }
}
