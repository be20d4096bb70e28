import { readdirSync } from 'node:fs';
import { SlashCommandBuilder } from 'discord.js';
import { describe, expect, test } from 'vitest';
import { type Action, isAction } from '../../src/conversation/command.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import type { Phrase } from '../../src/words/sentence.ts';

const folder = new URL('../../commands/', import.meta.url);
const registry = await readCommands(folder);

const actionsOf = (does: (typeof registry.commands)[number]['does']): [string, Action][] =>
  isAction(does) ? [['', does]] : Object.entries(does);

const phrases = (action: Action): Phrase[] => [
  action.purpose,
  ...action.options.flatMap(option => [option.says, ...(option.choices ?? []).map(one => one.label)]),
];

describe.each(registry.commands.map(command => [command.name, command] as const))('/%s', (name, command) => {
  test('is a file or a folder of that name', () => {
    expect(readdirSync(folder).map(entry => entry.replace(/\.ts$/, ''))).toContain(name);
  });

  test('has a name the platform takes', () => {
    for (const part of [
      name,
      ...actionsOf(command.does)
        .map(([sub]) => sub)
        .filter(Boolean),
    ])
      expect(part).toMatch(/^[a-z][a-z-]{0,31}$/);
  });

  test('has at most 25 subcommands, each with at most 25 options, none named twice', () => {
    const actions = actionsOf(command.does);
    expect(actions.length).toBeLessThanOrEqual(25);
    for (const [, { options }] of actions) {
      expect(options.length).toBeLessThanOrEqual(25);
      expect(new Set(options.map(option => option.name)).size).toBe(options.length);
      for (const option of options) expect(option.name).toMatch(/^[a-z][a-z0-9-]{0,31}$/);
    }
  });

  test('asks for what it must have before what it may have', () => {
    for (const [, { options }] of actionsOf(command.does)) {
      const required = options.map(option => option.required);
      expect(required).toEqual([...required].sort((a, b) => Number(b) - Number(a)));
    }
  });

  test('says what each thing is for in 100 characters, in both languages', () => {
    const all = [command.purpose, ...actionsOf(command.does).flatMap(([, action]) => phrases(action))];
    for (const { en, es } of all)
      for (const text of [en, es]) {
        expect(text.length).toBeGreaterThan(0);
        expect(text.length).toBeLessThanOrEqual(100);
      }
  });

  test('offers at most 25 choices for an option', () => {
    for (const [, { options }] of actionsOf(command.does))
      for (const { choices = [] } of options) expect(choices.length).toBeLessThanOrEqual(25);
  });

  test('has a name and purpose the platform’s own builder accepts', () => {
    const built = new SlashCommandBuilder().setName(name).setDescription(command.purpose.en);
    expect(built.toJSON().name).toBe(name);
  });
});
