/** What a member types behind a command, looked up in its declaration and typed as the platform types it. */
import type { APIApplicationCommand } from 'discord-api-types/v10';
import type { Options, OptionValue } from '../interface/people.ts';
import type { Kernel } from '../kernel.ts';
import { characters } from '../refusals/findings.ts';
import { Refused } from '../refused.ts';
import { isRecord, type Json, listOf, numberOf, recordOf, textOf, wordOf } from '../state/json.ts';
import { Resolved } from './resolved.ts';

/** Option types. Source: Interactions > Application Commands > Option Type. */
const types = {
  subcommand: 1,
  group: 2,
  text: 3,
  whole: 4,
  yesNo: 5,
  user: 6,
  channel: 7,
  role: 8,
  mentionable: 9,
  number: 10,
  file: 11,
} as const;

export interface Filled {
  /** `options` of the interaction data, nested under subcommands. */
  readonly options: readonly Json[];
  readonly resolved: Json | undefined;
  readonly focusedType: number;
}

/** A member cannot send this; the platform's client does not let it through. */
export const notPossible = (message: string): Refused => new Refused(400, 50035, message);

/** Fills a command's options. `path`: subcommand names; `focused`: the option being typed, for autocomplete. */
export function fillOptions(
  kernel: Kernel,
  given: {
    readonly command: APIApplicationCommand;
    readonly path: readonly string[];
    readonly options: Options;
    readonly guildId: string | undefined;
    readonly focused?: string;
  },
): Filled {
  let declared = listOf((given.command as unknown as Json).options).map(recordOf);
  const steps: Json[] = [];
  for (const name of given.path) {
    const step = declared.find(option => option.name === name && numberOf(option.type, 0) <= types.group);
    if (!step) throw notPossible(`/${given.command.name} has no subcommand "${name}"`);
    steps.push(step);
    declared = listOf(step.options).map(recordOf);
  }
  if (declared.some(option => numberOf(option.type, 0) <= types.group))
    throw notPossible(
      `/${given.command.name} wants one of: ${declared.map(option => String(option.name)).join(', ')}`,
    );
  for (const name of Object.keys(given.options))
    if (!declared.some(option => option.name === name))
      throw notPossible(`/${[given.command.name, ...given.path].join(' ')} has no option "${name}"`);
  const resolved = new Resolved(kernel, given.guildId);
  const filled = declared.flatMap(option => fillOne(option, given, resolved));
  const focused = declared.find(option => option.name === given.focused);
  if (given.focused !== undefined && focused?.autocomplete !== true)
    throw notPossible(`option "${given.focused}" offers no choices while typing`);
  const nested = steps.reduceRight<readonly Json[]>(
    (inner, step) => [{ name: step.name, type: step.type, options: inner }],
    filled,
  );
  return { options: nested, resolved: resolved.json(), focusedType: numberOf(focused?.type, types.text) };
}

function fillOne(
  option: Json,
  given: { readonly options: Options; readonly focused?: string },
  resolved: Resolved,
): readonly Json[] {
  const name = textOf(option.name) ?? '';
  const value = given.options[name];
  const isFocused = given.focused === name;
  if (isFocused) return [{ name, type: option.type, value: wordOf(value), focused: true }];
  if (value === undefined) {
    if (option.required === true && given.focused === undefined)
      throw notPossible(`option "${name}" is required`);
    return [];
  }
  // While typing, the other options arrive as they stand, unchecked: Application Commands > Autocomplete.
  if (given.focused !== undefined && typeof value !== 'object') return [{ name, type: option.type, value }];
  return [{ name, type: option.type, value: typed(option, name, value, resolved) }];
}

function typed(option: Json, name: string, value: OptionValue, resolved: Resolved): unknown {
  switch (option.type) {
    case types.text:
      return text(option, name, value);
    case types.whole:
    case types.number:
      return number(option, name, value);
    case types.yesNo:
      if (typeof value !== 'boolean') throw notPossible(`option "${name}" is true or false`);
      return value;
    case types.file:
      if (typeof value !== 'object' || !('bytes' in value)) throw notPossible(`option "${name}" is a file`);
      return resolved.upload(value);
    default:
      return resolved.person(entityId(name, value), numberOf(option.type, 0), name);
  }
}

function text(option: Json, name: string, value: OptionValue): string {
  if (typeof value !== 'string' || value === '') throw notPossible(`option "${name}" is text`);
  const count = characters(value);
  const min = numberOf(option.min_length, 0);
  const max = numberOf(option.max_length, 6000);
  if (count < min || count > max) throw notPossible(`option "${name}" is ${min} to ${max} characters long`);
  checkChosen(option, name, value);
  return value;
}

function number(option: Json, name: string, value: OptionValue): number {
  const isWhole = option.type === types.whole;
  if (typeof value !== 'number' || !Number.isFinite(value) || (isWhole && !Number.isSafeInteger(value)))
    throw notPossible(`option "${name}" is a ${isWhole ? 'whole ' : ''}number`);
  const min = numberOf(option.min_value, Number.MIN_SAFE_INTEGER);
  const max = numberOf(option.max_value, Number.MAX_SAFE_INTEGER);
  if (value < min || value > max) throw notPossible(`option "${name}" is between ${min} and ${max}`);
  checkChosen(option, name, value);
  return value;
}

function checkChosen(option: Json, name: string, value: unknown): void {
  const choices = listOf(option.choices).map(choice => recordOf(choice).value);
  if (choices.length > 0 && !choices.includes(value))
    throw notPossible(`option "${name}" is one of: ${choices.map(String).join(', ')}`);
}

function entityId(name: string, value: OptionValue): string {
  if (typeof value === 'string') return value;
  const id = isRecord(value) ? textOf((value as Json).id) : undefined;
  if (id === undefined) throw notPossible(`option "${name}" is a member, role or channel`);
  return id;
}
