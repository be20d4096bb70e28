import type { Suggestion } from '../../conversation/command.ts';
import type { Context } from '../../conversation/context.ts';
import type { BaseShade } from '../../engine/colour/mixing/base-soap.ts';
import { completeColourants } from '../../engine/colourants/complete.ts';
import { fold } from '../../engine/text/fold.ts';
import { listShelf } from '../../records/shelf/index.ts';
import type { Words } from '../../words/index.ts';

/** Longest value a suggestion may have, characters. */
const LONGEST = 100;

/** One's own jars whose name holds what is typed, then the catalogue. */
export async function suggestJars(
  typed: string,
  { shelf, language }: Context,
): Promise<readonly Suggestion[]> {
  const own = (await listShelf(shelf)).filter(({ name }) => fold(name).includes(fold(typed))).slice(0, 10);
  return [...own.map(({ name }) => ({ name, value: name })), ...completeColourants(typed, language)];
}

/** Completes the last colourant of a mix: the member's own jars first, then the catalogue. */
export async function suggestMix(
  typed: string,
  { shelf, language }: Context,
): Promise<readonly Suggestion[]> {
  const cut = Math.max(typed.lastIndexOf('+'), typed.lastIndexOf(',')) + 1;
  const before = typed.slice(0, cut).trim();
  const last = typed.slice(cut).trim();
  const own = (await listShelf(shelf)).map(({ name }) => name);
  const fitting = own.filter(name => fold(name).includes(fold(last))).slice(0, 10);
  const known = completeColourants(last, language).map(({ name }) => name);
  return [...new Set([...fitting, ...known])]
    .map(name => (before === '' ? name : `${before} ${name}`))
    .filter(whole => whole.length <= LONGEST)
    .map(whole => ({ name: whole, value: whole }));
}

/** The casts a base may have. */
export const suggestBases = (typed: string, { colour }: Words): readonly Suggestion[] =>
  (Object.entries(colour.bases) as [BaseShade, string][])
    .map(([value, name]) => ({ name, value }))
    .filter(({ name, value }) => `${value} ${name}`.toLowerCase().includes(typed.trim().toLowerCase()));
