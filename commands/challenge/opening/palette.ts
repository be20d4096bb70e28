import type { Context } from '../../../src/conversation/context.ts';
import type { Attachment } from '../../../src/conversation/question.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { leastFaceShare } from '../../../src/engine/challenges/measured.ts';
import { CHALLENGE_BASE } from '../../../src/engine/challenges/palette-written.ts';
import type { Target } from '../../../src/engine/challenges/terms.ts';
import { hexOfLab, labOfHex } from '../../../src/engine/colour/spectra/cielab.ts';
import { sharedShelves } from '../../../src/records/group-shelves.ts';
import { candidatesOf } from './shelf-candidates.ts';

/** At most so many colours make a palette. */
const mostColours = 6;

/** The main colours of what is in a photo, the largest first. Throws the Refusals of the photo's reader. */
export async function paletteOfPhoto(
  photo: Attachment,
  { workers, asker }: Pick<Context, 'workers' | 'asker'>,
): Promise<readonly Target[]> {
  const bytes = await photo.read();
  const { colours } = await workers.run('photoColours', { bytes }, { owner: asker.id });
  return colours
    .filter(({ share }) => share >= leastFaceShare)
    .slice(0, mostColours)
    .map(({ lab, hex }) => ({ hex, lab }));
}

export type DrawAsked = {
  readonly colours?: number | undefined;
  readonly share?: number | undefined;
  readonly seed?: string | undefined;
};

/** A palette drawn by a seed that a part of the group's shelves can make. */
export async function drawnPalette({ colours = 3, share = 60, seed }: DrawAsked, context: Context) {
  const drawnWith = seed?.trim() || context.id.slice(-6);
  const shelves = (await sharedShelves(context.store, context.group)).map(candidatesOf);
  const drawn = await context.workers.run(
    'drawPalette',
    {
      seed: drawnWith,
      size: colours,
      leastShare: share / 100,
      shelves: shelves.filter(shelf => shelf.length > 0),
      base: CHALLENGE_BASE,
    },
    { owner: context.asker.id },
  );
  const palette = drawn.colours.map((lab): Target => {
    const hex = hexOfLab(lab);
    return { hex, lab: labOfHex(hex) };
  });
  return { palette, seed: drawnWith, share: drawn.share, shelves: drawn.shelves };
}

/** Answers `/challenge palette`: the colours of a photo, or a palette drawn from the group's shelves. */
export async function showPalette(
  { photo, ...asked }: DrawAsked & { readonly photo?: Attachment | undefined },
  context: Context,
): Promise<Reply> {
  const steps = context.say.challengeSteps;
  if (photo) {
    const palette = await paletteOfPhoto(photo, context);
    return paletteReply(palette, steps.photoPalette, { from: 'photo' }, context);
  }
  const { palette, seed, share, shelves } = await drawnPalette(asked, context);
  const percent = Math.round(share * 100);
  return paletteReply(
    palette,
    steps.drawnPalette({ seed, percent, shelves }),
    { seed, share, shelves },
    context,
  );
}

async function paletteReply(
  palette: readonly Target[],
  why: string,
  data: object,
  { say, workers, asker }: Context,
): Promise<Reply> {
  const steps = say.challengeSteps;
  const hexes = palette.map(({ hex }) => hex).join(', ');
  const png = await workers.run(
    'challengeCard',
    { kicker: steps.kicker, title: hexes, brief: why, palette, dates: [], rulesTitle: '', rules: [] },
    { owner: asker.id },
  );
  return {
    kind: 'reply',
    headline: hexes,
    data: { palette, ...data },
    blocks: [
      { kind: 'picture', name: 'palette.png', png, alt: say.challenges.palette({ colours: [hexes] }) },
      { kind: 'text', text: why },
      { kind: 'text', text: steps.usePalette({ hexes }), folds: true },
    ],
    cautions: [],
  };
}
