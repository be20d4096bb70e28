import { z } from 'zod';
import { followUp } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Choice, Reply } from '../../src/conversation/reply.ts';
import { validSent } from '../../src/conversation/typed/validate.ts';
import { refuse } from '../../src/engine/refusal.ts';
import * as flaws from '../../src/records/flaws/index.ts';
import { type BarePhoto, PHOTO_LIMITS } from '../../src/workers/photo.ts';
import type { MarkedPhotos } from './marked-photos.ts';

const args = { id: z.string(), cause: z.enum(flaws.outcomes) };
const sent = z.object({
  photo: z.custom<Attachment>(value => typeof value === 'object' && value !== null && 'read' in value),
});

type About = { readonly id: string; readonly cause: flaws.Outcome };

/**
 * Keeping a member's picture for the group's labelled set: nothing of it happens unless they press a button that says
 * what will be kept, and they can take it back with the one under the answer.
 */
export function giving(marked: MarkedPhotos) {
  const takeBack = followUp({
    seenBy: 'asker',
    hours: 24 * 90,
    args: { id: z.string() },
    async answer({ id }, context): Promise<Reply> {
      const taken = await flaws.takePicturesBack(context, context.asker.id, id);
      const headline = context.say.flaws.pictures.takenBack({ count: taken });
      return { kind: 'reply', headline, data: { taken }, blocks: [], cautions: [] };
    },
  });

  const kept = async (
    { id, cause }: About,
    { jpeg, width, height }: BarePhoto,
    context: Context,
  ): Promise<Reply> => {
    const { say, by } = context;
    await flaws.givePicture(context, id, { ...by, cause, jpeg, width, height });
    return {
      kind: 'reply',
      headline: say.flaws.pictures.given({ name: causeName(cause, context) }),
      data: { case: id, cause, width, height, bytes: jpeg.byteLength },
      blocks: [{ kind: 'text', text: say.flaws.pictures.givenNote }],
      cautions: [],
      choices: [{ kind: 'button', label: say.flaws.pictures.takeBack, follow: takeBack.with({ id }) }],
    };
  };

  const filled = followUp({
    seenBy: 'asker',
    pace: 'slow',
    args,
    async answer(about, context, { fields }) {
      const { photo } = validSent(sent, fields);
      const { bytes: most } = PHOTO_LIMITS;
      if (photo.size > most)
        refuse('photo-too-heavy', { megabytes: Math.ceil(photo.size / 2 ** 20), most: most / 2 ** 20 });
      const bytes = await photo.read();
      return kept(
        about,
        await context.workers.run('barePhoto', { bytes }, { owner: context.asker.id }),
        context,
      );
    },
  });

  /** Pictures are held in memory only, so after weeks of cure it is usually asked for anew. */
  const give = followUp({
    seenBy: 'asker',
    opensForm: true,
    args,
    async answer(about, context) {
      const photo = marked.of(about.id)?.photo;
      if (photo) return kept(about, photo, context);
      const { pictures } = context.say.flaws;
      return {
        kind: 'form',
        title: pictures.formTitle,
        fields: [{ kind: 'picture', name: 'photo', label: pictures.formPhoto, required: true }],
        follow: filled.with(about),
      };
    },
  });

  return { give, filled, takeBack };
}

/** The offer under the answer to "What did it turn out to be?"; none where the group has let nobody in. */
export function offer(
  about: About,
  { give }: Pick<ReturnType<typeof giving>, 'give'>,
  { here, say }: Pick<Context, 'here' | 'say'>,
): { readonly text: readonly string[]; readonly choices: readonly Choice[] } {
  if (here?.letInBy === 'member') return { text: [], choices: [] };
  return {
    text: [say.flaws.pictures.offer],
    choices: [{ kind: 'button', weight: 'plain', label: say.flaws.pictures.give, follow: give.with(about) }],
  };
}

const causeName = (cause: flaws.Outcome, { say }: Pick<Context, 'say'>): string =>
  cause === 'something-else' ? say.flaws.somethingElse : say.flaws.causes[cause].name;
