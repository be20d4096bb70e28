import type { Context } from '../../../src/conversation/context.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { bleeds } from '../../../src/engine/colourants/holding-hues.ts';
import { type AskedOfIt, askedIn } from '../../../src/engine/questions/leaning/before.ts';
import type { Reading } from '../../../src/engine/questions/read.ts';
import { capital } from '../../../src/engine/text/capital.ts';
import type { Words } from '../../../src/words/index.ts';

/** What is asked of a colourant in a sentence of its own; undefined where its name means none, or several that differ in that. */
export function ofThing(asked: AskedOfIt, item: string, say: Words): string | undefined {
  const meant = colourantsMeant(item);
  const [first, ...others] = meant;
  const isAlike = new Set(meant.map(one => (asked === 'bleeds' ? bleeds(one) : one.light))).size === 1;
  if (!first || !isAlike) return undefined;
  const name = others.length === 0 ? first.names[say.language] : capital(item);
  return asked === 'bleeds'
    ? say.leaning.bleeds({ name, does: bleeds(first) })
    : say.leaning.light({ name, light: first.light });
}

/** Of a mica without a list its coat decides. */
const NO_LIST = 'mica-unknown-coat';

/** What a check says first where light, bleeding or an unlisted mica is asked about; undefined for every other question. */
export function askedOfThing(
  { command }: Reading,
  question: string,
  { item }: Readonly<Record<string, string>>,
  { say }: Context,
): { readonly headline: string; readonly of?: AskedOfIt } | undefined {
  if (command !== 'colourant check' || item === undefined) return undefined;
  const of = askedIn(question);
  const headline = of && ofThing(of, item, say);
  if (of && headline !== undefined) return { headline, of };
  const [meant] = colourantsMeant(item);
  return meant?.id === NO_LIST ? { headline: say.leaning.micaCoat } : undefined;
}
