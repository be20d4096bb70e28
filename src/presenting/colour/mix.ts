import type { Context } from '../../conversation/context.ts';
import { parseMix, type WrittenPart } from '../../engine/colour/reading/mix-text.ts';
import { colourantsNamed } from '../../engine/colourants/find.ts';
import { TYPICAL_BATTER } from '../../engine/dispersion/batter.ts';
import { strengthInPortion } from '../../engine/dosing/amount-in-portion.ts';
import { answerDose } from '../../engine/dosing/answer.ts';
import { portionMillilitres } from '../../engine/dosing/portion.ts';
import type { DoseAnswer } from '../../engine/dosing/request.ts';
import type { Portion } from '../../engine/quantities/amount.ts';
import type { Measures } from '../../engine/quantities/units.ts';
import { fold } from '../../engine/text/fold.ts';
import { listShelf } from '../../records/shelf/index.ts';
import { findJar, type Jar, knownOf } from '../../records/shelf/jars/jar.ts';
import { spooned } from './jars.ts';

/** A mix with its jars found and its doses held under their ceilings. */
export type MixRead = { readonly jars: readonly Jar[]; readonly answer: DoseAnswer };

/**
 * Finds the jars of a mix on the member's shelf or in the catalogue and doses them together.
 * Throws the Refusals of `parseMix`, `findJar` and `answerDose`.
 */
export async function readMix(
  text: string,
  { portion, measures }: { readonly portion: Portion; readonly measures: Measures },
  { shelf }: Pick<Context, 'shelf'>,
): Promise<MixRead> {
  const own = new Set((await listShelf(shelf)).map(({ name }) => fold(name)));
  const parts = parseMix(text, measures, one => own.has(fold(one)) || colourantsNamed(one).length > 0);
  const found = await Promise.all(parts.map(async part => ({ part, jar: await jarOfPart(part, shelf) })));
  const millilitres = portionMillilitres(portion, TYPICAL_BATTER);
  const colourants = found.map(({ part, jar }) => ({
    ...knownOf(jar, measures),
    strength: strengthInPortion(part.dose, spooned(jar, measures), { millilitres, measures }),
  }));
  return { jars: found.map(({ jar }) => jar), answer: answerDose({ portion, colourants, measures }) };
}

/** A jar may be called "Dusk full": where the name as a whole is one of theirs, its strength is not cut off. */
async function jarOfPart({ name, dose }: WrittenPart, shelf: Parameters<typeof findJar>[0]): Promise<Jar> {
  if (dose.by !== 'name') return findJar(shelf, name);
  const whole = await findJar(shelf, `${name} ${dose.name}`).catch(() => undefined);
  return whole?.item && fold(whole.item.name) === fold(`${name} ${dose.name}`) ? whole : findJar(shelf, name);
}
