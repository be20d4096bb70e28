/**
 * What `make` gives, made when it is first asked for and kept. For tables that are built from lists: a program starts without
 * them, and one that reads no text never builds them.
 */
export function whenAsked<Made>(make: () => Made): () => Made {
  let made: { readonly it: Made } | undefined;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
}

/** A set that is filled when somebody first looks into it: for words that are gathered from lists. */
export class SetWhenAsked<One> extends Set<One> {
  #gather: (() => Iterable<One>) | undefined;

  constructor(gather: () => Iterable<One>) {
    super();
    this.#gather = gather;
  }

  #fill(): void {
    const gather = this.#gather;
    if (!gather) return;
    this.#gather = undefined;
    for (const one of gather()) super.add(one);
  }

  override get size(): number {
    this.#fill();
    return super.size;
  }

  override has(one: One): boolean {
    this.#fill();
    return super.has(one);
  }

  override keys(): SetIterator<One> {
    return this.values();
  }

  override values(): SetIterator<One> {
    this.#fill();
    return super.values();
  }

  override [Symbol.iterator](): SetIterator<One> {
    return this.values();
  }
}

/** A map that is filled when somebody first looks into it. */
export class MapWhenAsked<Key, Value> extends Map<Key, Value> {
  #gather: (() => Iterable<readonly [Key, Value]>) | undefined;

  constructor(gather: () => Iterable<readonly [Key, Value]>) {
    super();
    this.#gather = gather;
  }

  #fill(): void {
    const gather = this.#gather;
    if (!gather) return;
    this.#gather = undefined;
    for (const [key, value] of gather()) super.set(key, value);
  }

  override get size(): number {
    this.#fill();
    return super.size;
  }

  override has(key: Key): boolean {
    this.#fill();
    return super.has(key);
  }

  override get(key: Key): Value | undefined {
    this.#fill();
    return super.get(key);
  }

  override keys(): MapIterator<Key> {
    this.#fill();
    return super.keys();
  }

  override values(): MapIterator<Value> {
    this.#fill();
    return super.values();
  }

  override entries(): MapIterator<[Key, Value]> {
    this.#fill();
    return super.entries();
  }

  override [Symbol.iterator](): MapIterator<[Key, Value]> {
    return this.entries();
  }
}
