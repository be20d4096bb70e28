/** Checks of command declarations. Source: platform documentation, Interactions > Application Commands. */
import { type Json, listOf, recordOf, textOf, wordOf } from '../state/json.ts';
import { characters, Findings, type Path } from './findings.ts';
import { checkChoice } from './form.ts';
import { locales } from './locales.ts';
import { ruleOf } from './rules.ts';

const namePattern = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;
const subcommand = 1;
const group = 2;

/** Throws what the platform would answer to one declaration. `scope`: a guild's id, or undefined for everywhere. */
export function checkDeclaration(command: Json, scope: string | undefined) {
  const found = new Findings();
  addDeclaration(found, command, [], scope);
  found.settle();
}

/** Throws what the platform would answer to a whole list. */
export function checkDeclarations(commands: readonly unknown[], scope: string | undefined) {
  const found = new Findings();
  const names = new Set<string>();
  for (const [index, item] of commands.entries()) {
    const command = recordOf(item);
    addDeclaration(found, command, [index], scope);
    const key = `${wordOf(command.type ?? 1)} ${wordOf(command.name)}`;
    if (names.has(key)) found.add('command-duplicate', [index, 'name']);
    names.add(key);
  }
  found.settle();
}

function addDeclaration(found: Findings, command: Json, at: Path, scope: string | undefined) {
  const type = command.type ?? 1;
  checkName(found, command, at, type === 1);
  if (scope !== undefined)
    for (const field of ['contexts', 'integration_types'])
      if (command[field] !== undefined && command[field] !== null)
        found.add('command-global-only', [...at, field]);
  const options = listOf(command.options);
  if (type !== 1) {
    if (command.description) found.add('menu-description', [...at, 'description']);
    if (options.length > 0) found.add('menu-description', [...at, 'options']);
    return;
  }
  checkDescription(found, command, at);
  checkOptionList(found, options, [...at, 'options'], [subcommand, group]);
  if (sizeOf(command) > (ruleOf('command-size').limit ?? 0)) found.add('command-size', at);
}

function checkName(found: Findings, named: Json, at: Path, slash: boolean) {
  const check = (value: unknown, path: Path): void => {
    const name = textOf(value) ?? '';
    const fine = slash
      ? namePattern.test(name) && name === name.toLowerCase()
      : characters(name) >= 1 && characters(name) <= 32;
    if (!fine) found.add('command-name', path);
  };
  check(named.name, [...at, 'name']);
  for (const [locale, name] of Object.entries(recordOf(named.name_localizations))) {
    const path = [...at, 'name_localizations', locale];
    if (!locales.has(locale)) found.add('command-locale', path);
    if (name !== null) check(name, path);
  }
}

function checkDescription(found: Findings, described: Json, at: Path) {
  for (const locale of Object.keys(recordOf(described.description_localizations)))
    if (!locales.has(locale)) found.add('command-locale', [...at, 'description_localizations', locale]);
}

/** `nested`: which of subcommand and group may stand here. */
function checkOptionList(found: Findings, options: readonly unknown[], at: Path, nested: readonly number[]) {
  const isNested = options.map(item => [subcommand, group].includes(Number(recordOf(item).type)));
  if (isNested.includes(true) && isNested.includes(false)) found.add('option-mixed', at);
  const names = new Set<unknown>();
  let optionalSeen = false;
  for (const [index, item] of options.entries()) {
    const option = recordOf(item);
    const path = [...at, index];
    const type = Number(option.type);
    checkName(found, option, path, true);
    checkDescription(found, option, path);
    if (names.has(option.name)) found.add('option-duplicate', [...path, 'name']);
    names.add(option.name);
    if (type <= 2) {
      if (!nested.includes(type)) found.add('option-mixed', [...path, 'type']);
      checkOptionList(
        found,
        listOf(option.options),
        [...path, 'options'],
        type === group ? [subcommand] : [],
      );
    } else checkParameter(found, option, path, type);
    if (type > 2 && option.required === true && optionalSeen)
      found.add('option-order', [...path, 'required']);
    if (option.required !== true) optionalSeen = true;
  }
}

function checkParameter(found: Findings, option: Json, path: Path, type: number) {
  const choices = listOf(option.choices);
  const takesChoices = type === 3 || type === 4 || type === 10;
  if (choices.length > 0 && (!takesChoices || option.autocomplete === true))
    found.add('option-choices-kind', [...path, 'choices']);
  if (option.autocomplete === true && !takesChoices)
    found.add('option-choices-kind', [...path, 'autocomplete']);
  if (takesChoices)
    for (const [index, item] of choices.entries())
      checkChoice(found, recordOf(item), [...path, 'choices', index], type);
  checkBounds(found, option, path, { low: 'min_value', high: 'max_value', fits: type === 4 || type === 10 });
  checkBounds(found, option, path, { low: 'min_length', high: 'max_length', fits: type === 3 });
  found.range('option-range', [...path, 'min_length'], option.min_length, 0, 6000);
  found.range('option-range', [...path, 'max_length'], option.max_length, 1, 6000);
}

function checkBounds(
  found: Findings,
  option: Json,
  path: Path,
  bounds: { readonly low: string; readonly high: string; readonly fits: boolean },
) {
  const low = option[bounds.low] ?? undefined;
  const high = option[bounds.high] ?? undefined;
  if (!bounds.fits && (low !== undefined || high !== undefined))
    found.add('option-range', [...path, bounds.low]);
  if (low !== undefined && high !== undefined && Number(low) > Number(high))
    found.add('option-range', [...path, bounds.low]);
}

/** Characters of name, description and values; of each localised text the longest counts. */
function sizeOf(part: Json): number {
  const longest = (field: string): number =>
    Math.max(
      characters(textOf(part[field]) ?? ''),
      ...Object.values(recordOf(part[`${field}_localizations`])).map(text => characters(textOf(text) ?? '')),
    );
  const ofChoices = listOf(part.choices).map(item => {
    const choice = recordOf(item);
    return characters(textOf(choice.name) ?? '') + characters(textOf(choice.value) ?? '');
  });
  const inside = listOf(part.options).map(item => sizeOf(recordOf(item)));
  return (
    longest('name') + longest('description') + [...ofChoices, ...inside].reduce((sum, size) => sum + size, 0)
  );
}
