import type { z } from 'zod';
import { refuse } from '../../engine/refusal.ts';
import type { DeclaredOption } from '../declared.ts';
import { repeatedName } from '../declared.ts';
import type { Given } from '../question.ts';
import { choiceTyped } from './choice-typed.ts';
import { optionMeant } from './option-meant.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'option-missing': { option: string };
    /** `meant`: the option that was likely meant. */
    'option-unknown': { option: string; known: readonly string[]; meant: string | undefined };
    'option-too-long': { option: string; most: number };
    'option-not-offered': { option: string; offered: readonly string[] };
    'option-not-a-number': { option: string };
    'option-out-of-range': { option: string; least: number; most: number };
    'option-not-yes-or-no': { option: string };
    'option-needs-a-file': { option: string };
    'option-names-nobody': { option: string; kind: 'member' | 'role' | 'channel' };
    'follow-up-invalid': Record<string, never>;
  }
}

/**
 * Checks what a front was given against the declaration.
 * Throws a Refusal that names the first option at fault; returns the options as the command declared them.
 */
export function validOptions<S extends z.ZodObject>(
  schema: S,
  options: readonly DeclaredOption[],
  given: Given,
): z.output<S> {
  for (const name of Object.keys(given))
    if (!options.some(option => option.name === name)) {
      const known = options.map(option => option.name);
      refuse('option-unknown', { option: name, known, meant: optionMeant(name, known) });
    }
  const meant = withChoices(options, given);
  for (const option of options) check(option, meant[option.name]);
  return schema.parse(gathered(schema, meant));
}

/** What was given, each choice by its value however it was typed. */
function withChoices(options: readonly DeclaredOption[], given: Given): Given {
  const chosen = options.flatMap(option => {
    const value = given[option.name];
    return option.kind === 'choice' && typeof value === 'string'
      ? [[option.name, choiceTyped(option, value)]]
      : [];
  });
  return chosen.length === 0 ? given : { ...given, ...(Object.fromEntries(chosen) as Given) };
}

function check(option: DeclaredOption, value: Given[string] | undefined): void {
  const { name } = option;
  if (value === undefined || (typeof value === 'string' && value.trim() === '')) {
    if (option.required || value !== undefined) refuse('option-missing', { option: name });
    return;
  }
  switch (option.kind) {
    case 'text':
      if (typeof value !== 'string') refuse('option-missing', { option: name });
      else if (option.most !== undefined && value.length > option.most)
        refuse('option-too-long', { option: name, most: option.most });
      return;
    case 'choice': {
      const offered = (option.choices ?? []).map(one => one.value);
      if (typeof value !== 'string' || !offered.includes(value))
        refuse('option-not-offered', { option: name, offered });
      return;
    }
    case 'whole':
    case 'number':
      checkNumber(option, value);
      return;
    case 'yes-no':
      if (typeof value !== 'boolean') refuse('option-not-yes-or-no', { option: name });
      return;
    case 'picture':
      if (typeof value !== 'object' || !('read' in value)) refuse('option-needs-a-file', { option: name });
      return;
    case 'member':
    case 'role':
    case 'channel':
      if (typeof value !== 'object' || !('kind' in value) || value.kind !== option.kind)
        refuse('option-names-nobody', { option: name, kind: option.kind });
  }
}

function checkNumber({ name, kind, least = 0, most = 0 }: DeclaredOption, value: Given[string]): void {
  if (typeof value !== 'number' || !Number.isFinite(value)) refuse('option-not-a-number', { option: name });
  else if (value < least || value > most || (kind === 'whole' && !Number.isInteger(value)))
    refuse('option-out-of-range', { option: name, least, most });
}

/** Puts `with-1`, `with-3` back together as `with: [...]`. */
function gathered(schema: z.ZodObject, given: Given): Record<string, unknown> {
  const whole: Record<string, unknown> = {};
  const names = Object.keys(given);
  for (const name of Object.keys(schema.shape)) {
    if (given[name] !== undefined) whole[name] = given[name];
    if (!names.some(one => one.startsWith(name) && one[name.length] === '-')) continue;
    const repeated = Array.from({ length: 25 }, (_, index) => given[repeatedName(name, index + 1)]);
    const several = repeated.filter(value => value !== undefined);
    if (several.length > 0) whole[name] = several;
  }
  return whole;
}

/** Arguments of a follow-up, after their signature was checked: only an old version of ours can fail here. */
export function validArgs<S extends z.ZodObject>(
  schema: S,
  args: Readonly<Record<string, string>>,
): z.output<S> {
  const parsed = schema.safeParse(args);
  return parsed.success ? parsed.data : refuse('follow-up-invalid', {});
}

/** What a form sent, nobody having signed it. Throws a Refusal `option-missing` that names the first field that is not there. */
export function validSent<S extends z.ZodObject>(schema: S, fields: Given): z.output<S> {
  const parsed = schema.safeParse(fields);
  if (parsed.success) return parsed.data;
  return refuse('option-missing', { option: String(parsed.error.issues[0]?.path[0] ?? '') });
}
