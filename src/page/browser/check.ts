import type { page } from '../../words/en/page.ts';
import type { Option } from './declared.ts';

type Say = typeof page;

/** What of an option is sent, or the sentence that says what is wrong with it. Undefined when it is left out. */
export type Checked = { readonly value: string | number | boolean } | { readonly wrong: string } | undefined;

const YES = /^(yes|y|true|sí|si)$/i;
const NO = /^(no|n|false)$/i;

/** Types what was typed as the platform would, or says in words why it cannot. */
export function checkOption(option: Option, typed: string, say: Say): Checked {
  const text = typed.trim();
  const { name, kind, most } = option;
  if (text === '') return option.required ? { wrong: say.needed({ option: name }) } : undefined;
  switch (kind) {
    case 'file':
      return { wrong: say.fileByName({ option: name }) };
    case 'yes-no':
      if (YES.test(text)) return { value: true };
      return NO.test(text) ? { value: false } : { wrong: say.notYesOrNo({ option: name }) };
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
  if (!/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text)) return { wrong: say.notNumber({ option: name }) };
  const value = Number(text.replace(',', '.'));
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
