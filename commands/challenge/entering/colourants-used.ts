import type { Suggestion } from '../../../src/conversation/command.ts';
import type { Context } from '../../../src/conversation/context.ts';
import type { Terms } from '../../../src/engine/challenges/terms.ts';
import { completeColourants } from '../../../src/engine/colourants/complete.ts';
import { Refusal, refuse } from '../../../src/engine/refusal.ts';
import { fold } from '../../../src/engine/text/fold.ts';
import { namesApart } from '../../../src/engine/text/names/names-apart.ts';
import { listShelf } from '../../../src/records/shelf/index.ts';
import { findJar } from '../../../src/records/shelf/jars/jar.ts';

declare module '../../../src/engine/refusal.ts' {
  interface Reasons {
    'challenge-colourants-missing': Record<never, never>;
  }
}

/** A colourant in a bar: its name, its id in the catalogue where it is known, and whether its maker keeps it. */
export type Used = {
  readonly name: string;
  readonly colourant?: string | undefined;
  readonly onShelf: boolean;
};

/** Refusals of a name that is only not known; what must not go into soap stays refused. */
const UNKNOWN: ReadonlySet<string> = new Set([
  'colourant-unknown',
  'colourant-ambiguous',
  'jar-unidentified',
]);

/**
 * Reads `Evening sky, titanium dioxide`: jars of the member's own shelf by their names, else colourants of the
 * catalogue. A kind of which they keep a jar counts as theirs. A name that nobody knows is taken as it is written
 * where any colourants are allowed, and refused where a rule hangs on what it is; none at all is refused.
 */
export async function readUsed(
  text: string,
  { constraint }: Pick<Terms, 'constraint'>,
  { shelf, say }: Context,
): Promise<readonly Used[]> {
  const names = namesApart(text);
  if (names.length === 0) refuse('challenge-colourants-missing', {});
  const own = await listShelf(shelf);
  return await Promise.all(
    names.map(async (name): Promise<Used> => {
      const kept = own.find(item => fold(item.name) === fold(name));
      if (kept) return { name: kept.name, colourant: kept.colourant, onShelf: true };
      const found = await findJar(shelf, name).catch((refusal: unknown) => {
        const asWritten = constraint === 'none' && refusal instanceof Refusal && UNKNOWN.has(refusal.id);
        if (asWritten) return undefined;
        throw refusal;
      });
      if (!found) return { name, onShelf: false };
      const { colourant, item } = found;
      const onShelf = item !== undefined || own.some(one => one.colourant === colourant.id);
      return { name: item?.name ?? colourant.names[say.language], colourant: colourant.id, onShelf };
    }),
  );
}

/** Completes the last name of a list: the member's own jars first, then the catalogue. */
export async function suggestUsed(
  typed: string,
  { shelf, language }: Context,
): Promise<readonly Suggestion[]> {
  const cut = typed.lastIndexOf(',') + 1;
  const before = typed.slice(0, cut);
  const last = typed.slice(cut).trim().toLowerCase();
  const own = (await listShelf(shelf)).map(({ name }) => name);
  const fitting = own.filter(name => name.toLowerCase().includes(last)).slice(0, 15);
  const known = completeColourants(last, language).map(({ name }) => name);
  return [...new Set([...fitting, ...known])].map(name => {
    const whole = before === '' ? name : `${before} ${name}`;
    return { name: whole, value: whole };
  });
}
