/** Gives back what it is given, in place of a new object: whoever extends it puts its private fields on that. */
class Given {
  constructor(key: object) {
    // biome-ignore lint/correctness/noConstructorReturn: that is what it is for.
    return key;
  }
}

/** What can be looked up by the very object. */
export type ValuesOn<Key extends object, Value> = {
  get(key: Key): Value | undefined;
  set(key: Key, value: Value): void;
};

/**
 * Values that are known by an object and go with it, as in a WeakMap, but for objects of which each question makes new ones. What
 * a WeakMap holds counts as used when the young are collected, whether or not its key is
 * (`IterateAndScavengePromotedObjectsVisitor::VisitEphemeronHashTable` in V8's scavenger), so each question's context was
 * copied twice and then grew old. Here the value stands on the object itself, where nothing else sees it: no key, no copy and
 * no comparison takes it along.
 */
export function valuesOn<Key extends object, Value>(): ValuesOn<Key, Value> {
  class Bearer extends Given {
    #value: Value;

    constructor(key: Key, value: Value) {
      super(key);
      this.#value = value;
    }

    static of(key: object): Value | undefined {
      return #value in key ? (key as Bearer).#value : undefined;
    }

    static on(key: Key, value: Value): void {
      if (#value in key) (key as unknown as Bearer).#value = value;
      else new Bearer(key, value);
    }
  }
  return { get: key => Bearer.of(key), set: (key, value) => Bearer.on(key, value) };
}
