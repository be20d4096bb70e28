import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { byLanguage } from '../../../src/engine/language.ts';
import { parsePortion } from '../../../src/engine/quantities/portion.ts';
import { jarsMeantIn } from '../../../src/engine/questions/found/jars-meant.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { learntNote } from '../../../src/presenting/colour/learnt-strength.ts';
import { nameOf, rough, spoonsOf } from '../../../src/presenting/dose.ts';
import { kitchenOf, preferencesOf } from '../../../src/records/preferences.ts';
import { listShelf } from '../../../src/records/shelf/index.ts';
import { findJar, type Jar, knownOf } from '../../../src/records/shelf/jars/jar.ts';

/** More jars than this are no comparison. */
const MOST = 5;

/** A name that may be several of one strength compares as any of them; else it is asked which. */
async function jarOrAlike(name: string, { shelf }: Context): Promise<Jar> {
  try {
    return await findJar(shelf, name);
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || refusal.id !== 'colourant-ambiguous') throw refusal;
    const [first, ...others] = colourantsMeant(name);
    if (!first || others.some(other => other.dose.fullTspPerCup !== first.dose.fullTspPerCup)) throw refusal;
    return { colourant: { ...first, names: byLanguage(() => name) } };
  }
}

/**
 * Which colourant is the stronger: by what a cup takes of each at full colour, smaller being stronger. Jars of one kind
 * are told apart by test bars only, and it says so.
 */
export async function compareReply(
  names: readonly string[],
  question: string,
  context: Context,
): Promise<Reply> {
  const { say, store, asker, shelf } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const items = await listShelf(shelf);
  const meant = jarsMeantIn(question, items, names);
  const [one, other] = meant;
  if (one && other && meant.length === 2)
    return (await context.run('shelf compare', { one: one.name, other: other.name })) as Reply;
  if (names.length < 2) {
    const known = (meant.length > 2 ? meant : items).map(({ name }) => name);
    const headline = say.ask.compareWhich({ names: known.slice(0, MOST) });
    return { kind: 'reply', headline, data: { lacking: ['first', 'second'] }, blocks: [], cautions: [] };
  }
  const jars: Jar[] = [];
  for (const name of names.slice(0, MOST)) jars.push(await jarOrAlike(name, context));
  const portion = parsePortion('1 cup', measures);
  const rows = jars
    .map(jar => {
      const { doses } = answerDose({
        portion,
        colourants: [{ ...knownOf(jar, measures), strength: { by: 'name', name: 'full' } }],
        measures,
      });
      const [dose] = doses;
      return { name: jar.item?.name ?? nameOf(jar.colourant, say), kind: jar.colourant.id, dose: dose! };
    })
    .sort((a, b) => a.dose.teaspoons - b.dose.teaspoons);
  const [strongest, next] = rows as [(typeof rows)[number], (typeof rows)[number]];
  const times = next.dose.teaspoons / strongest.dose.teaspoons;
  const headline =
    times < 1.1
      ? say.ask.asStrong({ one: strongest.name, other: next.name })
      : say.ask.stronger({
          one: strongest.name,
          other: next.name,
          times: rough(times),
        });
  return {
    kind: 'reply',
    headline,
    data: { strengths: rows.map(({ name, dose }) => ({ name, teaspoonsPerCup: dose.teaspoons })) },
    blocks: [
      {
        kind: 'rows',
        rows: rows.map(({ name, dose }) => say.ask.fullInACup({ name, spoons: spoonsOf(dose, say) })),
      },
      ...learntNote(jars, say),
      { kind: 'text', text: say.ask.compareNote },
    ],
    cautions: [],
  };
}
