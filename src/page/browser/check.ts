import { numberTyped, yesNoTyped } from '../../engine/text/lines/option-value.ts';
import type { page } from '../../words/en/fronts/page.ts';
import type { Option } from './declared.ts';

type Say = typeof page;

/** What of an option is sent, or the sentence that says what is wrong with it. Undefined when it is left out. */
export type Checked = { readonly value: string | number | boolean } | { readonly wrong: string } | undefined;

/** Types what was typed as the platform would, or says in words why it cannot. */
export function checkOption(option: Option, typed: string, say: Say): Checked {
  const text = typed.trim();
  const { name, kind, most } = option;
  if (text === '') return option.required ? { wrong: say.needed({ option: name }) } : undefined;
  switch (kind) {
    case 'file':
      return { wrong: say.fileByName({ option: name }) };
    case 'yes-no': {
      const value = yesNoTyped(text);
      return value === undefined ? { wrong: say.notYesOrNo({ option: name }) } : { value };
    }
    case 'whole':
    case 'number':
      return checkNumber(option, text, say);
    case 'text':
      if (option.choices.length > 0) return checkChoice(option, text, say);
      return most !== undefined && [...text].length > most
        ? { wrong: say.tooLong({ option: name, most }) }
        : { value: text };
  }
}

function checkNumber({ name, kind, least, most }: Option, text: string, say: Say): Checked {
  const value = numberTyped(text);
  if (value === undefined) return { wrong: say.notNumber({ option: name }) };
  if (kind === 'whole' && !Number.isInteger(value)) return { wrong: say.notWhole({ option: name }) };
  if (value < (least ?? -Infinity) || value > (most ?? Infinity))
    return { wrong: say.outOfRange({ option: name, least, most }) };
  return { value };
}

function checkChoice({ name, choices }: Option, text: string, say: Say): Checked {
  const same = (other: string) => other.toLowerCase() === text.toLowerCase();
  const found = choices.find(({ value, label }) => same(value) || same(label));
  if (found) return { value: found.value };
  return { wrong: say.notOffered({ option: name, offered: choices.map(({ label }) => label).join(', ') }) };
}
