import type { Context } from '../../../src/conversation/context.ts';
import { nearestWord } from '../../../src/engine/colour/reading/plain-words.ts';
import { labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import type { Colourant } from '../../../src/engine/colourants/colourant.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import type { Dose } from '../../../src/engine/dosing/request.ts';
import { byLanguage } from '../../../src/engine/language.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import type { Measures } from '../../../src/engine/quantities/units.ts';
import { asksDifference } from '../../../src/engine/questions/found/asked/difference-asked.ts';
import { jarsMeantIn } from '../../../src/engine/questions/found/jars/jars-meant.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { capital } from '../../../src/engine/text/capital.ts';
import { verdictSentence } from '../../../src/presenting/check.ts';
import { learntNote } from '../../../src/presenting/colour/learnt-strength.ts';
import { nameOf, rough, spoonsOf } from '../../../src/presenting/dose.ts';
import { kitchenOf, preferencesOf } from '../../../src/records/preferences.ts';
import { listShelf } from '../../../src/records/shelf/index.ts';
import { findJar, type Jar, knownOf } from '../../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../../src/words/index.ts';
import { shownAsReply } from '../reading/ran-command.ts';
import type { Ran } from '../understood.ts';

/** More jars than this are no comparison. */
const MOST = 5;

/** A jar with the colourants that its name may be, where they are several. */
type Compared = Jar & { readonly mayBe?: readonly Colourant[] };

/** A name that may be several of one strength compares as any of them; else it is asked which. */
async function jarOrAlike(name: string, { shelf }: Context): Promise<Compared> {
  try {
    return await findJar(shelf, name);
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || refusal.id !== 'colourant-ambiguous') throw refusal;
    const [first, ...others] = colourantsMeant(name);
    if (!first || others.some(other => other.dose.fullTspPerCup !== first.dose.fullTspPerCup)) throw refusal;
    return { colourant: { ...first, names: byLanguage(() => name) }, mayBe: [first, ...others] };
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
): Promise<Ran> {
  const items = await listShelf(context.shelf);
  const meant = jarsMeantIn(question, items, names);
  const [one, other] = meant;
  if (one && other && meant.length === 2)
    return shownAsReply(await context.run('shelf compare', { one: one.name, other: other.name }), context);
  if (names.length < 2) return whichTwo(meant.length > 2 ? meant : items, context);
  const jars: Compared[] = [];
  for (const name of names.slice(0, MOST)) jars.push(await jarOrAlike(name, context));
  return await sideBySide(jars, asksDifference(question), context);
}

/** Asks which two are meant, with what there is to choose from. */
const whichTwo = (known: readonly { readonly name: string }[], { say }: Context): Ran => ({
  kind: 'reply',
  headline: say.ask.compareWhich({ names: known.slice(0, MOST).map(({ name }) => name) }),
  data: {},
  short: { lacking: ['first', 'second'] },
  blocks: [],
  cautions: [],
});

/** Nearer than this two are called as strong, times. */
const HARDLY = 1.1;

/**
 * Two jars and more, the strongest first: what each is, what it looks like, what lye and light do to it, and what a cup takes.
 * Told first is which is the stronger, or what each is where their difference is asked.
 */
async function sideBySide(
  jars: readonly Compared[],
  isDifference: boolean,
  { say, store, asker }: Context,
): Promise<Ran> {
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const rows = jars
    .map(jar => ({ jar, name: jar.item?.name ?? nameOf(jar.colourant, say), dose: inACup(jar, measures) }))
    .sort((a, b) => a.dose.teaspoons - b.dose.teaspoons);
  const [strongest, next] = rows;
  const times = next!.dose.teaspoons / strongest!.dose.teaspoons;
  const told = { one: strongest!.name, other: next!.name };
  const strength =
    times < HARDLY ? say.ask.asStrong(told) : say.ask.stronger({ ...told, times: rough(times) });
  const kinds = rows.map(({ jar, name }) =>
    say.ask.whatItIs({ name, kind: kindOf(jar, say), hue: hueOf(jar, say) }),
  );
  return {
    kind: 'reply',
    headline: capital(isDifference ? kinds.slice(0, 2).join('; ') : strength),
    data: { strengths: rows.map(({ name, dose }) => ({ name, teaspoonsPerCup: dose.teaspoons })) },
    blocks: [
      ...(isDifference ? [{ kind: 'text' as const, text: strength }] : []),
      {
        kind: 'rows',
        rows: rows.map(({ jar, name, dose }, at) =>
          [
            isDifference && at < 2 ? `${name}:` : `${kinds[at]!}.`,
            fateOf(jar, say),
            say.ask.fullInACup({ spoons: spoonsOf(dose, say) }),
          ].join(' '),
        ),
      },
      ...learntNote(jars, say),
      { kind: 'text', text: say.ask.compareNote },
    ],
    cautions: [],
  };
}

const kindOf = ({ colourant }: Compared, say: Words): string => say.ask.kinds[colourant.kind];

/** How it looks at full colour, by our own estimate. */
const hueOf = ({ colourant, mayBe }: Compared, say: Words): string | undefined =>
  mayBe ? undefined : say.colour.names[nearestWord(labOfHex(colourant.hex))];

/** What lye and light do to it; of a name that may be several, that its coat decides. */
function fateOf({ colourant, mayBe }: Compared, say: Words): string {
  const { behaviour, towards, on } = colourant.alkali;
  if (mayBe?.some(one => one.alkali.behaviour !== behaviour)) return say.ask.coatDecides;
  const verdict = verdictSentence(behaviour, { towards, on }, say);
  return `${verdict} ${say.colourants.light[colourant.light]}`;
}

/** What a cup takes of a jar at full colour. */
function inACup(jar: Jar, measures: Measures): Dose {
  const { doses } = answerDose({
    portion: parsePortion('1 cup', measures),
    colourants: [{ ...knownOf(jar, measures), strength: { by: 'name', name: 'full' } }],
    measures,
  });
  return doses[0]!;
}
