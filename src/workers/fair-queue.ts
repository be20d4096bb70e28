/** Whose a piece of work is: a member's, within a group. */
export type Place = { readonly owner: string; readonly group: string };

/** So many names are known to have had turns; then all are as if they came for the first time. */
const MOST_KNOWN = 1_000;

/**
 * Hands out turns: whose last one is longest ago has the next, even where they had nothing waiting meanwhile. Who comes for
 * the first time stands before who has a turn just then, and behind whose last one was before.
 */
class Turns<Line> {
  readonly #lines = new Map<string, Line>();
  /** In which turn each had its last, or stood before the next one. */
  readonly #stands = new Map<string, number>();
  #turn = 0;
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
    if (!this.#stands.has(name)) this.#stand(name, this.#turn - 0.5);
    return line;
  }

  /** Whose turn it is; stays in the line while `keep` says that more waits there. */
  next<Taken>(take: (line: Line) => Taken, keep: (line: Line) => boolean): Taken | undefined {
    let [first] = this.#lines;
    if (!first) return undefined;
    for (const one of this.#lines) if (this.#standOf(one[0]) < this.#standOf(first[0])) first = one;
    const [name, line] = first;
    const taken = take(line);
    this.#turn += 1;
    this.#stand(name, this.#turn);
    if (!keep(line)) this.#lines.delete(name);
    return taken;
  }

  #standOf(name: string): number {
    return this.#stands.get(name) ?? this.#turn - 0.5;
  }

  #stand(name: string, turn: number): void {
    if (this.#stands.size >= MOST_KNOWN) this.#stands.clear();
    this.#stands.set(name, turn);
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

  /** `first`: before whatever else of the same member waits. */
  push(task: Task, { owner, group }: Place, { first = false }: { readonly first?: boolean } = {}): void {
    const tasks = this.#groups.orNew(group).orNew(owner);
    if (first) tasks.unshift(task);
    else tasks.push(task);
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
