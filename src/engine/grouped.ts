/**
 * The items of each key, in the order in which they came, keys in that of their first item: what `Map.groupBy` gives
 * (https://tc39.es/ecma262/#sec-map.groupby). That is of Node 21, and other programs may run the engine on Node 20.
 */
export function groupedBy<Key, Item>(items: Iterable<Item>, keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
