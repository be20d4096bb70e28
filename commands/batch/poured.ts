import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { applyChanges } from '../../src/engine/batch/made/apply-changes.ts';
import { type Change, parseChanges } from '../../src/engine/batch/made/changes.ts';
import type { WrittenPlan } from '../../src/engine/batch/planning/written-plan.ts';
import type { BarPrediction } from '../../src/engine/colour/mixing/bar.ts';
import { Refusal, refuse } from '../../src/engine/refusal.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { foldName } from '../../src/engine/text/names/own-names.ts';
import { colourJar } from '../../src/presenting/colour/jars.ts';
import {
  keepPhoto,
  listBatches,
  type PouredColour,
  pourBatch,
  type ToPour,
} from '../../src/records/batches/index.ts';
import { noteShelf } from '../../src/records/group-shelves.ts';
import { clockOf, kitchenOf, type Preferences, preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe, type KeptPlan, lastPlan, ONCE } from '../../src/records/recipes/index.ts';
import { tidyName } from '../../src/records/shelf/names.ts';
import { duesFor } from './dates.ts';
import { dayOf } from './day.ts';
import { type JarColour, type Planned, plannedBy, plannedInWords } from './made.ts';
import { pouredView } from './view.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'batch-nothing-said': Record<never, never>;
    'batch-two-sources': Record<never, never>;
  }
}

export type PouredAsked = {
  readonly recipe?: string | undefined;
  readonly made?: string | undefined;
  readonly oils?: string | undefined;
  readonly size?: string | undefined;
  readonly changes?: string | undefined;
  readonly base?: string | undefined;
  readonly name?: string | undefined;
  readonly on?: string | undefined;
  readonly photo?: Attachment | undefined;
};

/** Keeps what was really poured, and takes it off the shelf. Throws the Refusals of reading it. */
export async function pouredReply(asked: PouredAsked, context: Context): Promise<Reply> {
  const { store, asker, group, change, language } = context;
  const wishes = await preferencesOf(store, asker.id);
  const measures = kitchenOf(wishes);
  const changes = asked.changes === undefined ? [] : parseChanges(asked.changes, measures);
  const at = await dayOf(asked.on, context);
  const { planned, recipe } = await whatWasPlanned(asked, { changes, wishes }, context);
  const made = applyChanges<JarColour>(planned.portions, changes, measures);
  const gelled = made.gelled ?? planned.gelled;
  const predicted = await predictions(made.portions, { ...planned, gelled }, context);
  const photo = asked.photo && (await smallPhoto(asked.photo, context));
  const wantedName = tidyName(
    cut(asked.name ?? recipe ?? made.portions.map(({ name }) => name).join(', '), 60),
  );
  const poured: ToPour = {
    name: await nameFor(wantedName, context),
    at,
    group,
    language,
    ...(planned.plan && { plan: keptPart(planned.plan) }),
    ...(recipe !== undefined && { recipe }),
    ...(asked.changes !== undefined && { changes: asked.changes }),
    asides: [...made.notes],
    shades: [...planned.shades],
    gelled,
    gelSaid: made.gelled !== undefined,
    ...(planned.peak && { peak: planned.peak }),
    cure: planned.cure,
    lyeConcentration: planned.lyeConcentration,
    kohShare: planned.kohShare,
    saltPercent: planned.saltPercent,
    isLoaf: planned.isLoaf,
    portions: made.portions.map((portion, which) => ({
      name: portion.name,
      grams: portion.grams,
      millilitres: planned.portions[which]!.millilitres,
      colours: portion.colours.map(recorded),
      ...predictedPart(predicted[which]),
    })),
  };
  const takings = takingsOf(poured);
  const dues = duesFor({ ...poured, id: change.cause }, { clock: clockOf(wishes), now: context.at });
  const shelfNoted =
    context.here?.letInBy === 'member' ? [] : noteShelf(group, asker.id, new Date(context.at));
  const outcome = await pourBatch(context.book, poured, {
    takings,
    change,
    also: [...dues, ...shelfNoted],
  });
  if (photo) await keepPhoto(context.book, outcome.batch.id, { cause: change.cause, bytes: photo });
  return pouredView(outcome, { changes, takings, photo: photo !== undefined, wishes, wantedName }, context);
}

/** The plan, recipe or words it was made from; exactly one of them, the last plan where none is named. */
async function whatWasPlanned(
  asked: PouredAsked,
  { changes, wishes }: { readonly changes: readonly Change[]; readonly wishes: Preferences },
  context: Context,
): Promise<{ readonly planned: Planned; readonly recipe?: string }> {
  const { recipe, made, oils, size } = asked;
  if (recipe !== undefined && (made !== undefined || oils !== undefined)) refuse('batch-two-sources', {});
  if (made !== undefined && oils === undefined)
    return { planned: await plannedInWords(made, asked.base, context) };
  if (oils !== undefined) {
    const words = { oils, ...(size && { size }), ...(made && { portions: made }) };
    const plan: KeptPlan = { written: words, spoons: wishes.spoons, times: ONCE, colours: [] };
    return { planned: await plannedBy(inPlace(plan, changes), context, { asSaid: made !== undefined }) };
  }
  if (recipe !== undefined) {
    const found = await findRecipe(context.recipes, recipe);
    return { planned: await plannedBy(inPlace(keptPart(found), changes), context), recipe: found.name };
  }
  const last = await lastPlan(context.shelf).catch((refusal: unknown) => {
    if (refusal instanceof Refusal && refusal.id === 'plan-forgotten')
      return refuse('batch-nothing-said', {});
    throw refusal;
  });
  return { planned: await plannedBy(inPlace(keptPart(last), changes), context) };
}

/** The plan with the place where the loaf really stood: its heat hangs on that. */
function inPlace(plan: KeptPlan, changes: readonly Change[]): KeptPlan {
  const place = changes.findLast(change => change.kind === 'process');
  if (!place) return plan;
  const { oven: _oven, ...rest } = plan.written;
  const written: WrittenPlan =
    place.process === 'oven' ? { ...plan.written, process: 'oven' } : { ...rest, process: place.process };
  return { ...plan, written };
}

const keptPart = ({ written, spoons, times, colours }: KeptPlan) => ({
  written,
  spoons,
  times,
  colours: [...colours],
});

function recorded({ jar: { item }, name, colourant, teaspoons, grams, pigment }: JarColour): PouredColour {
  return {
    name,
    colourant,
    teaspoons,
    milligrams: Math.round(grams * 1000),
    pigment,
    ...(item && { item: item.id, lot: item.lot.number }),
    ...(item?.lot.label !== undefined && { label: item.lot.label }),
  };
}

const predictedPart = (found: BarPrediction | undefined) =>
  found ? { predicted: { lab: found.lab, plusMinus: found.plusMinus } } : {};

/** What is believed of every portion before anybody has seen it. */
async function predictions(
  portions: readonly { readonly colours: readonly JarColour[] }[],
  { shades, gelled }: Pick<Planned, 'shades' | 'gelled'>,
  context: Context,
): Promise<readonly BarPrediction[]> {
  const mixes = await Promise.all(
    portions.map(({ colours }) =>
      Promise.all(
        colours.map(async ({ jar, pigment }) => ({ jar: await colourJar(jar, context), grams: pigment })),
      ),
    ),
  );
  return context.workers.run('predictBars', { portions: mixes, shades, gelled }, { owner: context.asker.id });
}

/** What leaves the shelf, each jar once. */
function takingsOf({ portions }: Pick<ToPour, 'portions'>) {
  const grams = new Map<string, number>();
  for (const { item, milligrams } of portions.flatMap(({ colours }) => colours))
    if (item !== undefined && milligrams > 0) grams.set(item, (grams.get(item) ?? 0) + milligrams / 1000);
  return [...grams].map(([item, taken]) => ({ item, grams: taken }));
}

/** A photo as small as it is kept. Throws the Refusals of reading a photo. */
export const smallPhoto = async (photo: Attachment, { workers, asker }: Context): Promise<Uint8Array> =>
  (await workers.run('keepEntryPhoto', { bytes: await photo.read() }, { owner: asker.id })).bytes;

/** A name unlike those of the member's other batches; names are what they ask by. */
async function nameFor(name: string, context: Context): Promise<string> {
  const taken = new Set((await listBatches(context.book)).map(one => foldName(one.name)));
  if (!taken.has(foldName(name))) return name;
  for (let count = 2; ; count += 1) {
    const numbered = `${name} ${count}`;
    if (!taken.has(foldName(numbered))) return numbered;
  }
}
