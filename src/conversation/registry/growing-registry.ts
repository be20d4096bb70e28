import type { Command } from '../command.ts';
import { commonFollowUps } from '../faces/open-fold.ts';
import { followUpNameIn } from '../follow-ups/follow.ts';
import type { Question } from '../question.ts';
import type { DeadlineActs, DeadlineServices } from '../unasked/deadline.ts';
import { type CommandRegistry, commandFiles, indexCommands, loadCommand } from './registry.ts';

/**
 * The commands of a folder, each loaded when a question first needs it: a process is ready long before it has read
 * what one group or another will once ask for, and holds in memory only what was asked.
 */
export class GrowingRegistry implements CommandRegistry {
  readonly #files: ReadonlyMap<string, URL>;
  readonly #loading = new Map<string, Promise<Command>>();
  #known = indexCommands([]);

  private constructor(files: ReadonlyMap<string, URL>) {
    this.#files = files;
  }

  /** Looks which commands there are; reads none of them. */
  static async of(folder: URL): Promise<GrowingRegistry> {
    return new GrowingRegistry(await commandFiles(folder));
  }

  get commands() {
    return this.#known.commands;
  }

  get actions() {
    return this.#known.actions;
  }

  get followUps() {
    return this.#known.followUps;
  }

  get nameOf() {
    return this.#known.nameOf;
  }

  get menuEntries() {
    return this.#known.menuEntries;
  }

  deadlineActs(services: DeadlineServices): DeadlineActs {
    return this.#known.deadlineActs(services);
  }

  /** Loads what the question needs; undefined when that is there already. */
  prepare(question: Question): Promise<void> | undefined {
    if (question.kind === 'follow' && Object.hasOwn(commonFollowUps, followUpNameIn(question.sealed)))
      return undefined;
    const name = commandOf(question);
    // A menu entry may be anybody's, and whoever errs in a name is told of those that come near.
    if (name === undefined || !this.#files.has(name)) return this.complete();
    const [known] = this.#known.commands.filter(one => one.name === name);
    if (known) return known.listsCommands ? this.complete() : undefined;
    return this.#load([name]).then(([loaded]) => (loaded?.listsCommands ? this.complete() : undefined));
  }

  /** Loads a command before anybody asks for it; one that is not there, or does not load, waits for whoever asks. */
  async ahead(name: string): Promise<void> {
    if (this.#files.has(name)) await this.#load([name]).catch(() => undefined);
  }

  /** Loads every command; undefined when they are there already. */
  complete(): Promise<void> | undefined {
    if (this.#known.commands.length === this.#files.size) return undefined;
    return this.#load([...this.#files.keys()]).then(() => undefined);
  }

  async #load(names: readonly string[]): Promise<readonly Command[]> {
    const loaded = await Promise.all(
      names.map(name => {
        const loading = this.#loading.get(name) ?? loadCommand(this.#files.get(name) as URL);
        this.#loading.set(name, loading);
        // What could not be loaded is tried again by the next question.
        loading.catch(() => this.#loading.delete(name));
        return loading;
      }),
    );
    const all = new Set([...this.#known.commands, ...loaded]);
    if (all.size > this.#known.commands.length)
      this.#known = indexCommands([...all].sort((a, b) => (a.name < b.name ? -1 : 1)));
    return loaded;
  }
}

function commandOf(question: Question): string | undefined {
  switch (question.kind) {
    case 'command':
    case 'typing':
      return question.path[0];
    case 'follow':
      return followUpNameIn(question.sealed).split('.')[0];
    case 'point':
      return undefined;
  }
}
