import type { Before, Ran } from '../../../../src/engine/questions/leaning/before.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';
import type { Subject } from '../../../../src/engine/questions/leaning/subject/talk-subject.ts';

export const ran = (command: string, given: Ran['given'], more: Partial<Ran> = {}): Ran => ({
  kind: 'command',
  job: undefined,
  command,
  given,
  ...more,
});

const listed = (given: Ran['given']): string =>
  Object.entries(given)
    .map(([name, one]) => `${name} ${one}`)
    .join('; ');

/**
 * What a turn behind that is read as, in a line: a command with its options (of two, both), a part of the answer, what is asked back, a matter;
 * undefined where it stands alone. `behind`: the last command where something came in between; `subject`: what the talk is about.
 */
export function leanTold(
  turn: string,
  last: Before | undefined,
  { behind, subject }: { readonly behind?: Ran; readonly subject?: Subject } = {},
): string | undefined {
  const command = last?.kind === 'command' ? last : behind;
  const lean = leanOf(turn, last && { last, ran: command, subject });
  if (!lean) return undefined;
  switch (lean.kind) {
    case 'runs':
      return lean.readings
        .map(({ command: run, given, asked, scaled }) =>
          [
            `${run}: ${listed(given)}`,
            ...(asked === undefined ? [] : [`asked ${asked}`]),
            ...(scaled === undefined ? [] : [`scaled ${scaled}`]),
            ...(lean.unit === undefined ? [] : [`in ${lean.unit}`]),
          ].join(', '),
        )
        .join(' | ');
    case 'part':
      return `part ${lean.of}${lean.behind ? ` behind ${lean.behind.command}` : ''}`;
    case 'asks':
      return `asks ${lean.lacks}`;
    case 'matter':
      return `matter ${lean.id}`;
    case 'technique':
      return `technique ${lean.id}${lean.words === undefined ? '' : ` (${lean.words})`}`;
    case 'scent':
      return `scent for ${lean.grams} g`;
    default:
      return lean.kind;
  }
}
