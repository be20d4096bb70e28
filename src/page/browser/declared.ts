import { LOCALES } from '../../words/locales.ts';
import type { Command, Language } from '../model.ts';

/** An option of a command, as the page shows it. */
export type Option = {
  readonly name: string;
  readonly kind: 'text' | 'whole' | 'number' | 'yes-no' | 'file';
  readonly required: boolean;
  readonly says: string;
  readonly completes: boolean;
  readonly choices: readonly { readonly label: string; readonly value: string }[];
  readonly least?: number;
  readonly most?: number;
};

/** One thing that can be asked. `path` is `dose` or `shelf add`. */
export type Action = {
  readonly path: string;
  readonly says: string;
  readonly options: readonly Option[];
};

type RawOption = {
  readonly name: string;
  readonly type: number;
  readonly description: string;
  readonly description_localizations?: Readonly<Record<string, string | null>> | null;
  readonly required?: boolean;
  readonly autocomplete?: boolean;
  readonly options?: readonly RawOption[];
  readonly choices?: readonly {
    readonly name: string;
    readonly name_localizations?: Readonly<Record<string, string | null>> | null;
    readonly value: string | number;
  }[];
  readonly min_value?: number;
  readonly max_value?: number;
  readonly max_length?: number;
};

/** Types of options. Source: platform documentation, Interactions > Application Commands > Option Type. */
const SUBCOMMAND = 1;
const KINDS: Readonly<Record<number, Option['kind']>> = {
  3: 'text',
  4: 'whole',
  5: 'yes-no',
  // Members, channels and roles are named here as they are called.
  6: 'text',
  7: 'text',
  8: 'text',
  10: 'number',
  11: 'file',
};

/** Types of commands, same source: 1 is typed, 3 stands in the menu of a message. */
const TYPED = 1;
const ON_MESSAGE = 3;

/** Everything that can be typed, in the words of a language. */
export function actionsOf(commands: readonly Command[], language: Language): readonly Action[] {
  return commands
    .filter(({ type }) => Number(type ?? TYPED) === TYPED)
    .flatMap((command): readonly Action[] => {
      const options = (command.options ?? []) as unknown as readonly RawOption[];
      const subs = options.filter(({ type }) => type === SUBCOMMAND);
      if (subs.length === 0) return [actionOf(command.name, { ...command, options }, language)];
      return subs.map(sub => actionOf(`${command.name} ${sub.name}`, sub, language));
    });
}

/** Names of the entries that messages have in their menu. */
export const entriesOf = (commands: readonly Command[], language: Language) =>
  commands
    .filter(({ type }) => Number(type) === ON_MESSAGE)
    .map(({ name, name_localizations }) => ({ name, label: inLanguage(name, name_localizations, language) }));

const actionOf = (
  path: string,
  { description, description_localizations, options = [] }: Described,
  language: Language,
): Action => ({
  path,
  says: inLanguage(description, description_localizations, language),
  options: options.flatMap(option => optionOf(option, language)),
});

type Described = {
  readonly description: string;
  readonly description_localizations?: RawOption['description_localizations'];
  readonly options?: readonly RawOption[];
};

function optionOf(raw: RawOption, language: Language): readonly Option[] {
  const kind = KINDS[raw.type];
  if (!kind) return [];
  const least = raw.min_value;
  const most = raw.max_value ?? raw.max_length;
  return [
    {
      name: raw.name,
      kind,
      required: raw.required === true,
      says: inLanguage(raw.description, raw.description_localizations, language),
      completes: raw.autocomplete === true,
      choices: (raw.choices ?? []).map(choice => ({
        label: inLanguage(choice.name, choice.name_localizations, language),
        value: String(choice.value),
      })),
      ...(least !== undefined && { least }),
      ...(most !== undefined && { most }),
    },
  ];
}

const inLanguage = (
  text: string,
  others: RawOption['description_localizations'] | undefined,
  language: Language,
): string => others?.[LOCALES[language][0] as keyof typeof others] ?? text;
