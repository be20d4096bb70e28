import { Piscina } from 'piscina';

type Waiting = { [Piscina.queueOptionsSymbol]: object | null };

const ownerOf = (task: Waiting): string =>
  (task[Piscina.queueOptionsSymbol] as { owner?: string } | null)?.owner ?? '';

/** Takes turns between owners: who asks ten times waits ten rounds, who asks once waits one. */
export class FairQueue<Task extends Waiting> {
  readonly #byOwner = new Map<string, Task[]>();

  get size(): number {
    return [...this.#byOwner.values()].reduce((sum, tasks) => sum + tasks.length, 0);
  }

  push(task: Task): void {
    const owner = ownerOf(task);
    const tasks = this.#byOwner.get(owner);
    if (tasks) tasks.push(task);
    else this.#byOwner.set(owner, [task]);
  }

  shift(): Task | null {
    for (const [owner, tasks] of this.#byOwner) {
      const task = tasks.shift();
      // Back to the end of the line, behind everybody else who waits.
      this.#byOwner.delete(owner);
      if (tasks.length > 0) this.#byOwner.set(owner, tasks);
      if (task) return task;
    }
    return null;
  }

  remove(task: Task): void {
    const owner = ownerOf(task);
    const rest = (this.#byOwner.get(owner) ?? []).filter(other => other !== task);
    if (rest.length > 0) this.#byOwner.set(owner, rest);
    else this.#byOwner.delete(owner);
  }
}
