import type { Talk } from '../before.ts';

/** The colourant that a command with these options is about. Pure. */
export const thingOf = ({
  given,
}: {
  readonly given: Readonly<Record<string, string>>;
}): string | undefined =>
  given.colourant ??
  given.item ??
  (given.mix?.includes('+') ? undefined : given.mix?.replace(/^[\d.,/ ]+\p{L}+ /u, ''));

/** The colour that the question before was about; undefined where it was about none, or something came in between. Pure. */
export const spokenOfIn = (talk: Talk | undefined): string | undefined =>
  talk?.last.kind === 'command' ? thingOf(talk.last) : undefined;
