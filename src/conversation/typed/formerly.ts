import type { DeclaredOption } from '../declared.ts';
import type { Given } from '../question.ts';

/** What was given, under the names the options have now; a number where a text is asked today is read as it was typed. */
export const renamed = (
  given: Given,
  options: readonly DeclaredOption[],
  formerly?: Readonly<Record<string, string>>,
): Given => {
  if (!formerly) return given;
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => {
      if (!Object.hasOwn(formerly, name)) return [name, value];
      const now = formerly[name]!;
      const isText = options.find(one => one.name === now)?.kind === 'text';
      return [now, isText && typeof value === 'number' ? String(value) : value];
    }),
  );
};
