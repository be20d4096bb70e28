/** Longer texts are hardly ever written twice, UTF-16 units. */
const LONGEST = 80;
/** So many texts are remembered; then all are read anew. */
const MOST = 500;

/**
 * A reading of short texts that is made once for each: names and amounts come again and again. For what hangs on the text
 * alone; what throws is read again each time.
 */
export function remembered<Read>(read: (text: string) => Read): (text: string) => Read {
  const known = new Map<string, { readonly it: Read }>();
  return text => {
    const before = known.get(text);
    if (before) return before.it;
    const it = read(text);
    if (text.length > LONGEST) return it;
    if (known.size >= MOST) known.clear();
    known.set(text, { it });
    return it;
  };
}
