/** A test: the file it is in, from the root, and how long it takes. */
type Known = { readonly file: string; readonly millis: number };

/** How many folders two places have in common: `src/engine/heat/gel.ts` and `tests/engine/heat/gel.test.ts` two. */
function nearness(source: string, test: string): number {
  const [one, other] = [source, test].map(path => path.split('/').slice(1, -1));
  const apart = one!.findIndex((folder, at) => folder !== other![at]);
  return apart === -1 ? one!.length : apart;
}

/** Tests of the same room first, then those of the room around it; the quickest first among those as near. */
export function nearestFirst<One extends Known>(tests: readonly One[], source: string): readonly One[] {
  return tests
    .map(one => ({ one, near: nearness(source, one.file) }))
    .sort((a, b) => b.near - a.near || a.one.millis - b.one.millis)
    .map(({ one }) => one);
}
