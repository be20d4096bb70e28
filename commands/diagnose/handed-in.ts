import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import { planEvidence } from '../../src/engine/flaws/plan-evidence.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import type * as flaws from '../../src/records/flaws/index.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { findingOf, PHOTO_LIMITS, type PhotoQuality, type PhotoReading } from '../../src/workers/photo.ts';
import { photoLabels } from './answer.ts';
import type { MarkedPhotos } from './marked-photos.ts';

/** Reads a picture in the workers and keeps it marked; its numbers are what is remembered. */
export async function readPicture(
  file: Attachment,
  { pictures, marked }: { readonly pictures: number; readonly marked: MarkedPhotos },
  context: Context,
): Promise<flaws.PhotoShown> {
  const { workers, asker, say, idempotencyKey } = context;
  const { bytes: most } = PHOTO_LIMITS;
  if (file.size > most)
    refuse('photo-too-heavy', { megabytes: Math.ceil(file.size / 2 ** 20), most: most / 2 ** 20 });
  const bytes = await file.read();
  const owner = { owner: asker.id };
  const { reading, photo: bare } = await workers.run('readPhoto', { bytes }, owner);
  const photo = photoShown(reading, pictures);
  if (photo.bars.length > 0) {
    const labels = photoLabels(photo, say);
    const png = await workers.run(
      'markPhoto',
      { photo: bare, reading, title: say.photo.markedTitle, labels },
      owner,
    );
    marked.keep(idempotencyKey, { png, photo: bare });
  }
  return photo;
}

function photoShown(reading: PhotoReading, pictures: number): flaws.PhotoShown {
  return {
    pictures,
    bars: reading.bars.map(({ box }) => box),
    ...(reading.whiteReference && { whiteReference: reading.whiteReference.box }),
    colours: [...reading.colours],
    ...(reading.unread && { unread: reading.unread }),
    poor: reading.bars.length > 0 ? poorness(reading.quality) : [],
    findings: reading.findings.map(({ id, answer, strength, confidence, ratio, region }) => {
      const finding = findingOf(id);
      return { id, ...(finding && { finding }), answer, strength, confidence, ratio, region: region.box };
    }),
  };
}

/** What costs a reading about a quarter of its trust or more. */
function poorness({ blur, noise, glare, resolution }: PhotoQuality): flaws.PhotoShown['poor'] {
  return [
    ...(blur > 0.012 ? ['blur' as const] : []),
    ...(noise > 4 ? ['noise' as const] : []),
    ...(glare > 0.1 ? ['glare' as const] : []),
    ...(resolution < 190 ? ['resolution' as const] : []),
  ];
}

/** The numbers of a kept recipe, planned in the workers: they warm a loaf many times over. */
export async function readPlan(asked: string, context: Context): Promise<flaws.PlanShown> {
  const { store, asker, workers } = context;
  const found = await findRecipe(context.recipes, asked);
  const measures = MEASURES[(await preferencesOf(store, asker.id)).spoons];
  const { request } = await readKept(found, context.shelf, measures);
  const { evidence, numbers } = planEvidence(await workers.run('planBatch', request, { owner: asker.id }));
  return {
    name: found.name,
    evidence: evidence.map(({ finding, probability }) => ({ finding, probability })),
    numbers: structuredClone(numbers) as flaws.PlanShown['numbers'],
  };
}
