import { action, command } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, picture, text, whole, yesNo } from '../../src/conversation/option.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { readColour } from '../../src/engine/text/colours/colour-name.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { targetOf } from './answer.ts';
import { matchFollowUps, matchReply } from './follow-ups.ts';
import { matchPhoto, matchPhotoFollowUps } from './photo.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'match-without-target': Record<never, never>;
    'match-two-targets': Record<never, never>;
  }
}

export default command(
  'match',
  action({
    purpose: {
      en: 'A recipe in real spoons for the colour you want, from your shelf',
      es: 'Una receta en cucharas para el color que quieres, con lo de tu estantería',
    },
    anywhere: true,
    // A recipe from the shelf tells what stands on it; a colour of a photo is chosen by whoever sent it.
    seenBy: ({ from, photo }) => (from === 'catalogue' && !photo ? 'group' : 'asker'),
    // Where it is asked in words among members, whose answer everybody reads.
    namesJar: async ({ from }, { shelf }) => from !== 'catalogue' && (await listShelf(shelf)).length > 0,
    pace: 'slow',
    options: {
      target: text({
        en: 'The colour: “#6b3fa0”, or a name such as “teal” or “rebeccapurple”',
        es: 'El color: «#6b3fa0», o un nombre inglés como «teal» o «rebeccapurple»',
      }).optional(),
      photo: picture({
        en: 'Or a photo of a bar: you pick one of its colours',
        es: 'O una foto de una pastilla: eliges uno de sus colores',
      }).optional(),
      portion: text(
        {
          en: 'How much batter: “2 cups”, “500 ml”. 1 cup unless you say',
          es: 'Cuánta masa: «2 tazas», «500 ml». 1 taza si no dices nada',
        },
        { reads: 'portion' },
      ).optional(),
      from: choice(
        {
          en: 'What it may use. Your shelf unless you say',
          es: 'De dónde. De tu estantería si no dices nada',
        },
        {
          shelf: { en: 'My shelf', es: 'Mi estantería' },
          catalogue: { en: 'Any pigment', es: 'Cualquier pigmento' },
        },
      ).optional(),
      most: whole(
        {
          en: 'How many colourants at most, beside a white. 3 unless you say',
          es: 'Cuántos colorantes como mucho, sin contar un blanco. 3 si no dices',
        },
        { least: 1, most: 3 },
      ).optional(),
      base: text(
        {
          en: 'The soap without colour: white, cream, yellow, green, or your oils. Cream unless you say',
          es: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites. Crema si no dices',
        },
        { most: 400 },
      ).optional(),
      gel: yesNo({
        en: 'Does it go through gel? No unless you say',
        es: '¿Pasa por gel? No, si no dices nada',
      }).optional(),
    },
    completes: { base: (typed: string, { say }: Context) => suggestBases(typed, say) },
    async answer({ target, photo, portion, from, most, base, gel }, context) {
      const asked = {
        portion: portion?.trim() ?? context.say.match.oneCup,
        most: most ?? 3,
        gelled: gel ?? false,
        ...(from !== undefined && { from }),
        ...(base !== undefined && { base }),
      };
      if (target !== undefined && photo) refuse('match-two-targets', {});
      if (photo) return matchPhoto(photo, asked, context);
      if (target === undefined) return refuse('match-without-target', {});
      return matchReply(targetOf(readColour(target).hex), asked, context);
    },
  }),
  { followUps: { ...matchFollowUps, ...matchPhotoFollowUps } },
);
