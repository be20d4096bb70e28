import { readdir } from 'node:fs/promises';
import type { Action, Command, FollowUp, MenuEntry } from '../command.ts';
import { isAction } from '../command.ts';
import { commonFollowUps } from '../faces/open-fold.ts';
import type { FollowTarget } from '../follow-ups/follow.ts';
import type { Question } from '../question.ts';
import type { DeadlineAct, DeadlineActs, DeadlineServices } from '../unasked/deadline.ts';

/** Every command there is, and every way into one. */
export type CommandRegistry = {
  readonly commands: readonly Command[];
  /** By path: `dose`, `shelf add`. */
  readonly actions: ReadonlyMap<string, Action>;
  /** By name: `dose.take`. */
  readonly followUps: ReadonlyMap<string, FollowUp>;
  readonly nameOf: ReadonlyMap<FollowTarget, string>;
  /** By English name, under which they are registered. */
  readonly menuEntries: ReadonlyMap<string, MenuEntry>;
  /** Every command's own. */
  readonly deadlineActs: (services: DeadlineServices) => DeadlineActs;
  /** Where commands are loaded as they are needed: loads what the question needs. */
  prepare?(question: Question): Promise<void> | undefined;
  /** The same for all of them. */
  complete?(): Promise<void> | undefined;
};

/** Indexes the commands. Throws an Error when two of them share a name. */
export function indexCommands(commands: readonly Command[]): CommandRegistry {
  const actions = new Map<string, Action>();
  const followUps = new Map<string, FollowUp>(Object.entries(commonFollowUps));
  const menuEntries = new Map<string, MenuEntry>();
  for (const command of commands) {
    const { name, does, menu } = command;
    if (isAction(does)) enter(actions, name, does);
    else for (const [sub, action] of Object.entries(does)) enter(actions, `${name} ${sub}`, action);
    for (const [follow, followUp] of Object.entries(command.followUps))
      enter(followUps, `${name}.${follow}`, followUp);
    if (menu) enter(menuEntries, menu.name.en, menu);
  }
  const nameOf = new Map<FollowTarget, string>([...followUps].map(([name, followUp]) => [followUp, name]));
  return {
    commands,
    actions,
    followUps,
    nameOf,
    menuEntries,
    deadlineActs: services => deadlineActs(commands, services),
  };
}

function deadlineActs(commands: readonly Command[], services: DeadlineServices): DeadlineActs {
  const acts = new Map<string, DeadlineAct>();
  for (const { deadlines } of commands)
    for (const [what, act] of Object.entries(deadlines?.(services) ?? {})) enter(acts, what, act);
  return Object.fromEntries(acts);
}

function enter<T>(map: Map<string, T>, name: string, value: T): void {
  if (map.has(name)) throw new Error(`two things are called ${name}`);
  map.set(name, value);
}

/** Where each command of the folder is: a file there is a command, and so is a folder by its `command.ts`. */
export async function commandFiles(folder: URL): Promise<ReadonlyMap<string, URL>> {
  const entries = await readdir(folder, { withFileTypes: true });
  const files = entries.flatMap((entry): [string, URL][] => {
    if (entry.isDirectory()) return [[entry.name, new URL(`${entry.name}/command.ts`, folder)]];
    return entry.name.endsWith('.ts')
      ? [[entry.name.slice(0, -'.ts'.length), new URL(entry.name, folder)]]
      : [];
  });
  return new Map(files.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** The command that a file declares. */
export const loadCommand = async (file: URL): Promise<Command> =>
  ((await import(file.href)) as { default: Command }).default;

/** Reads the folder of commands, all of them; nothing else needs to know of it. */
export async function readCommands(folder: URL): Promise<CommandRegistry> {
  return indexCommands(await Promise.all([...(await commandFiles(folder)).values()].map(loadCommand)));
}
