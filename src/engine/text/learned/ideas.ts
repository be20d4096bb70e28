/** Finds, in words that are lower case and without accents, what they stand for: each idea once, in the order of its list. */
export type IdeasIn = (words: readonly string[]) => readonly string[];

/**
 * Reads a list of ideas, one a line: `name: word word stem*`, where `*` is any ending. A line that is set in goes on with the idea
 * before it. What stands for an idea in several languages
 * is known in all of them by what one taught.
 * @example ideasFrom('scent: scent* fragran* aroma')(['fragrance', 'last']) // ['scent']
 */
export function ideasFrom(list: string): IdeasIn {
  const lines = list
    .trim()
    .split(/\n(?! )/u)
    .map(line => line.split(': '));
  const order = lines.map(([idea = '']) => idea);
  const whole = new Map<string, string[]>();
  const begun = new Map<string, string[]>();
  for (const [idea = '', words = ''] of lines)
    for (const word of words.trim().split(/\s+/u)) {
      const [table, key] = word.endsWith('*') ? [begun, word.slice(0, -1)] : [whole, word];
      table.set(key, [...(table.get(key) ?? []), idea]);
    }
  return words => {
    const found = new Set<string>();
    for (const word of words) {
      for (const idea of whole.get(word) ?? []) found.add(idea);
      for (let end = 2; end <= word.length; end += 1)
        for (const idea of begun.get(word.slice(0, end)) ?? []) found.add(idea);
    }
    return order.filter(idea => found.has(idea));
  };
}
