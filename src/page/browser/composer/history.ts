const MOST = 100;

/** What was typed in this seat before, and what is being typed: both outlive a reload of the tab. */
export function pastLines(seat: string) {
  const keyOfPast = `lines ${seat}`;
  const keyOfDraft = `draft ${seat}`;
  const lines = JSON.parse(sessionStorage.getItem(keyOfPast) ?? '[]') as string[];
  let at = lines.length;
  return {
    draft: () => sessionStorage.getItem(keyOfDraft) ?? '',
    keep: (line: string) => sessionStorage.setItem(keyOfDraft, line),
    add(line: string) {
      if (lines.at(-1) !== line) lines.push(line);
      if (lines.length > MOST) lines.shift();
      at = lines.length;
      sessionStorage.setItem(keyOfPast, JSON.stringify(lines));
    },
    /** True while this line is the one that was fetched last. */
    isAt: (line: string) => lines[at] === line,
    /** The line before or after; undefined at the ends. */
    step(by: number): string | undefined {
      if (at + by < 0 || at + by > lines.length) return undefined;
      at += by;
      return lines[at] ?? '';
    },
  };
}
