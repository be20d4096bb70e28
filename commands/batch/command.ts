import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { picture, text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { nearestRecipes } from '../../src/records/recipes/index.ts';
import { nearestNames } from '../../src/records/shelf/index.ts';
import { curedReply } from './cured.ts';
import { batchActs } from './deadlines.ts';
import { exportReply } from './export.ts';
import { batchFollowUps } from './follow-ups.ts';
import { datesReply, listReply, notedReply, shownReply } from './keeping.ts';
import { batch, completes, on, weights } from './options.ts';
import { pouredReply } from './poured.ts';
import { removedReply, sharedReply, unsharedReply } from './sharing.ts';
import { weighedReply, weighingFollowUps } from './weighing.ts';

export default commandGroup(
  'batch',
  {
    en: 'Your batch book: what you poured, how it cured, what it taught me of your jars',
    es: 'Tu libro de lotes: qué vertiste, cómo curó y qué enseñó de tus botes',
  },
  {
    poured: action({
      purpose: {
        en: 'Keep what you really poured; its colours leave your shelf',
        es: 'Guarda lo que vertiste; sus colores salen de tu estantería',
      },
      anywhere: true,
      seenBy: 'asker',
      pace: 'slow',
      options: {
        recipe: text(
          {
            en: 'A kept recipe; without anything, your last plan',
            es: 'Una receta guardada; sin nada, tu último plan',
          },
          { most: 100 },
        ).optional(),
        changes: text(
          {
            en: 'What was otherwise: “2 tsp instead of 1, no gel, fridge”',
            es: 'Qué fue distinto: «2 cdta en vez de 1, sin gel, nevera»',
          },
          { most: 1000 },
        ).optional(),
        made: text(
          {
            en: 'Without a plan: “2 cups violet 1/2 tsp + gold mica pastel; 1 cup plain”',
            es: 'Sin plan: «2 tazas violeta 1/2 cdta + mica dorada pastel; 1 taza sin color»',
          },
          { most: 1500 },
        ).optional(),
        oils: text(
          {
            en: 'Its oils, for dates and heat: “coconut 30%, olive 70%”',
            es: 'Sus aceites, para fechas y calor: «coco 30%, oliva 70%»',
          },
          { most: 1500, reads: 'oils' },
        ).optional(),
        size: text(
          {
            en: 'With oils: “1000 g oils”, “mould 25x9x7 cm”',
            es: 'Con aceites: «1000 g de aceites», «molde 25x9x7 cm»',
          },
          { reads: 'size' },
        ).optional(),
        base: text(
          {
            en: 'The soap without colour: white, cream, yellow, green, deep, or its oils',
            es: 'El jabón sin color: blanca, crema, amarilla, verde, intensa, o sus aceites',
          },
          { most: 400 },
        ).optional(),
        name: text({ en: 'A name for it', es: 'Un nombre para él' }, { most: 60 }).optional(),
        on,
        photo: picture({ en: 'A photo of the pour', es: 'Una foto del vertido' }).optional(),
      },
      completes: {
        recipe: async (typed: string, context: Context) =>
          (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
        base: (typed: string, { say }: Context) => suggestBases(typed, say),
      },
      answer: pouredReply,
    }),
    cut: action({
      purpose: { en: 'It is cut', es: 'Ya está cortado' },
      anywhere: true,
      seenBy: 'asker',
      options: { batch: batch.optional(), weights: weights.optional(), on },
      completes,
      answer: (asked, context) => weighedReply('cut', asked, context),
    }),
    weigh: action({
      purpose: {
        en: 'Weigh bars: when they stop losing they are cured',
        es: 'Pesa barras: cuando dejan de perder están curadas',
      },
      anywhere: true,
      seenBy: 'asker',
      options: { weights, batch: batch.optional(), on },
      completes,
      answer: (asked, context) => weighedReply('weighed', asked, context),
    }),
    cured: action({
      purpose: {
        en: 'It is cured: a photo beside white paper shows what colours it became',
        es: 'Ya curó: una foto junto a papel blanco muestra qué colores salieron',
      },
      anywhere: true,
      seenBy: 'asker',
      pace: 'slow',
      options: {
        batch: batch.optional(),
        photo: picture({
          en: 'One bar beside white paper, by daylight',
          es: 'Una barra junto a papel blanco, con luz de día',
        }).optional(),
        colours: text(
          {
            en: 'Or what each portion became: “violet #6b5aa8; gold #c9a24b”',
            es: 'O qué color tomó cada parte: «violeta #6b5aa8; dorado #c9a24b»',
          },
          { most: 500 },
        ).optional(),
        weights: weights.optional(),
        on,
      },
      completes,
      answer: curedReply,
    }),
    show: action({
      purpose: {
        en: 'One batch: what went in, what it became, what comes next',
        es: 'Un lote: qué llevó, en qué quedó y qué sigue',
      },
      anywhere: true,
      seenBy: 'asker',
      options: { batch: batch.optional() },
      completes,
      answer: shownReply,
    }),
    list: action({
      purpose: { en: 'Your batches, by colour, jar or date', es: 'Tus lotes, por color, bote o fecha' },
      anywhere: true,
      seenBy: 'asker',
      options: {
        colour: text(
          { en: 'A colour it has: “violet”', es: 'Un color que lleva: «violeta»' },
          { most: 60 },
        ).optional(),
        jar: text({ en: 'A jar that went in', es: 'Un bote que llevó' }, { most: 100 }).optional(),
        since: text(
          { en: 'From which day on: “2026-11-01”', es: 'Desde qué día: «2026-11-01»' },
          { most: 20 },
        ).optional(),
        shared: yesNo({
          en: 'Those that members show to this group',
          es: 'Los que se muestran a este grupo',
        }).optional(),
      },
      completes: {
        jar: async (typed: string, { shelf }: Context) =>
          (await nearestNames(shelf, typed, 25)).map(name => ({ name, value: name })),
      },
      answer: listReply,
    }),
    dates: action({
      purpose: { en: 'What your batches ask for next, and when', es: 'Qué piden tus lotes y cuándo' },
      anywhere: true,
      seenBy: 'asker',
      options: {
        batch: batch.optional(),
        remind: yesNo({
          en: 'Reminders of this batch: on or off',
          es: 'Avisos de este lote: sí o no',
        }).optional(),
      },
      completes,
      answer: datesReply,
    }),
    note: action({
      purpose: { en: 'Write something beside a batch', es: 'Apunta algo junto a un lote' },
      anywhere: true,
      seenBy: 'asker',
      options: {
        text: text({ en: 'What to note', es: 'Qué apuntar' }, { most: 1000 }),
        batch: batch.optional(),
        on,
      },
      completes,
      answer: notedReply,
    }),
    share: action({
      purpose: { en: 'Show a batch to this group', es: 'Muestra un lote a este grupo' },
      seenBy: 'group',
      options: { batch: batch.optional() },
      completes,
      answer: sharedReply,
    }),
    unshare: action({
      purpose: { en: 'Take a batch back from this group', es: 'Retira un lote de este grupo' },
      seenBy: 'asker',
      options: { batch: batch.optional() },
      completes,
      answer: unsharedReply,
    }),
    remove: action({
      purpose: {
        en: 'Remove a batch with its photos; your shelf stays as it is',
        es: 'Quita un lote con sus fotos; tu estantería queda igual',
      },
      anywhere: true,
      seenBy: 'asker',
      options: { batch },
      completes,
      answer: removedReply,
    }),
    export: action({
      purpose: { en: 'All your batches as CSV and JSON', es: 'Todos tus lotes en CSV y JSON' },
      anywhere: true,
      seenBy: 'asker',
      options: {},
      answer: (_, context) => exportReply(context),
    }),
  },
  { followUps: { ...batchFollowUps, ...weighingFollowUps }, deadlines: batchActs },
);
