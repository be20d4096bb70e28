/** Whose a piece of work is: a member's, within a group. */
export type Place = { readonly owner: string; readonly group: string };

/** Hands out turns: who took one goes to the end of the line, behind everybody else who waits. */
class Turns<Line> {
  readonly #lines = new Map<string, Line>();
  readonly #make: () => Line;

  constructor(make: () => Line) {
    this.#make = make;
  }

  get count(): number {
    return this.#lines.size;
  }

  at(name: string): Line | undefined {
    return this.#lines.get(name);
  }

  orNew(name: string): Line {
    const line = this.#lines.get(name) ?? this.#make();
    this.#lines.set(name, line);
    return line;
  }

  /** Whose turn it is; goes back to the end of the line while `keep` says that more waits there. */
  next<Taken>(take: (line: Line) => Taken, keep: (line: Line) => boolean): Taken | undefined {
    const [first] = this.#lines;
    if (!first) return undefined;
    const [name, line] = first;
    const taken = take(line);
    this.#lines.delete(name);
    if (keep(line)) this.#lines.set(name, line);
    return taken;
  }
}

/**
 * Takes turns between groups, and within a group between its members: who asks ten times waits ten rounds, who asks
 * once waits one, however many others of a large group ask.
 */
export class FairQueue<Task> {
  readonly #groups = new Turns(() => new Turns<Task[]>(() => []));
  #size = 0;

  get size(): number {
    return this.#size;
  }

  /** How many groups have something waiting. */
  get groups(): number {
    return this.#groups.count;
  }

  /** How many members of a group have something waiting. */
  membersOf(group: string): number {
    return this.#groups.at(group)?.count ?? 0;
  }

  push(task: Task, { owner, group }: Place): void {
    this.#groups.orNew(group).orNew(owner).push(task);
    this.#size += 1;
  }

  shift(): Task | undefined {
    const task = this.#groups.next(
      members =>
        members.next(
          tasks => tasks.shift(),
          tasks => tasks.length > 0,
        ),
      members => members.count > 0,
    );
    if (task !== undefined) this.#size -= 1;
    return task;
  }
}
