/** The colourant that a command with these options is about. Pure. */
export const thingOf = ({
  given,
}: {
  readonly given: Readonly<Record<string, string>>;
}): string | undefined =>
  given.colourant ??
  given.item ??
  (given.mix?.includes('+') ? undefined : given.mix?.replace(/^[\d.,/ ]+\p{L}+ /u, ''));
