import { action, commandGroup, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, picture, text, whole, yesNo } from '../../src/conversation/option.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { completeColourants } from '../../src/engine/colourants/complete.ts';
import { parseStrength, printStrength } from '../../src/engine/quantities/strength.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { checkReply } from '../../src/presenting/check.ts';
import { identityName, weigh } from '../../src/presenting/evidence.ts';
import * as evidence from '../../src/records/evidence/index.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe, nearestRecipes } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { findMeant, findTogether, type Meant, meantByText } from '../../src/records/shelf/meant.ts';
import { colourPage, evidenceFollowUps, evidenceOn, scopeOf, wholePage } from './follow-ups.ts';
import { labelled, plannedParts } from './label.ts';
import { reportedReply } from './report-pages.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'colour-nothing-given': Record<string, never>;
    'label-nothing-named': Record<string, never>;
    'report-none-of-yours': { readonly name: string };
  }
}

/** A label is shorter; what is longer is no label. */
const longestList = 4000;

const colour = text(
  {
    en: 'An item on your shelf, a colourant such as “gold mica”, or an ingredient list',
    es: 'Un producto de tu estantería, un colorante («mica dorada») o una lista de ingredientes',
  },
  { most: longestList },
);
const process = choice(
  { en: 'How the soap was made', es: 'Cómo se hizo el jabón' },
  {
    ambient: { en: 'Left to itself, no gel', es: 'Sin calor añadido, sin gel' },
    gel: { en: 'Went through gel, or was heated to', es: 'Pasó por gel, o se calentó para eso' },
    other: { en: 'Another way', es: 'De otra manera' },
  },
);

/** The colour that is meant, with what its reports are filed under; metals are refused. */
async function reportable(asked: string, context: Context) {
  const meant = await findMeant(context.shelf, asked);
  const { identity, report } = meant;
  if (report.verdictIfPresent === 'never')
    refuse('metal-never-in-lye', { text: asked.slice(0, 80), metal: 'unnamed' });
  if (identity === undefined) return refuse('list-nothing-recognised', { text: asked.slice(0, 80) });
  const name = meant.item?.name ?? identityName(identity, context.say);
  return { identity, name };
}

async function checked(meant: Meant, context: Context): Promise<Reply> {
  const { identity } = meant;
  const weighed = identity === undefined ? undefined : weigh(identity, await evidenceOn(identity, context));
  return checkReply(meant, weighed, context.say);
}

/** The colours of a kept recipe, planned so that they can be weighed. */
async function inRecipe(asked: string, context: Context) {
  const { store, asker, workers } = context;
  const kept = await findRecipe(context.recipes, asked);
  const { spoons } = await preferencesOf(store, asker.id);
  const read = await readKept(kept, context.shelf, MEASURES[spoons]);
  return plannedParts(read, await workers.run('planBatch', read.request, { owner: asker.id }));
}

async function suggestColours(typed: string, context: Context): Promise<readonly Suggestion[]> {
  const own = await listShelf(context.shelf);
  const fits = own.filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase())).slice(0, 10);
  return [...fits.map(({ name }) => ({ name, value: name })), ...completeColourants(typed, context.language)];
}

export default commandGroup(
  'colourant',
  {
    en: 'Will it survive the lye, may it be used, and what this group has seen',
    es: 'Si aguanta la sosa, si se puede usar y qué ha visto este grupo',
  },
  {
    check: action({
      purpose: {
        en: 'Read a label: what lye does to each ingredient, dose, and the law',
        es: 'Lee una etiqueta: qué hace la sosa con cada ingrediente, dosis y normas',
      },
      anywhere: true,
      // An item of one's own shelf is one's own; a label is anybody's.
      seenBy: ({ item }) => (item === undefined ? 'group' : 'asker'),
      options: {
        ingredients: text(
          {
            en: 'The ingredients as the label has them: “Mica (CI 77019), Carmine (CI 75470)”',
            es: 'Los ingredientes como en la etiqueta: «Mica (CI 77019), Carmine (CI 75470)»',
          },
          { most: longestList },
        ).optional(),
        item: text({
          en: 'Or an item on your shelf, or a colourant such as “gold mica”',
          es: 'O un producto de tu estantería, o un colorante como «mica dorada»',
        }).optional(),
      },
      completes: { item: suggestColours },
      namesJar: async ({ item }, { shelf }) =>
        item !== undefined && (await findMeant(shelf, item)).item !== undefined,
      async answer({ ingredients, item }, context) {
        if ((ingredients === undefined) === (item === undefined)) refuse('colour-nothing-given', {});
        const meant =
          item === undefined ? meantByText(ingredients ?? '') : await findMeant(context.shelf, item);
        return checked(meant, context);
      },
    }),
    report: action({
      purpose: {
        en: 'Tell the group how a colour came out in your cured bar',
        es: 'Cuenta al grupo cómo quedó un color en tu pastilla curada',
      },
      seenBy: 'group',
      options: {
        item: colour,
        result: choice(
          { en: 'What became of the colour', es: 'Qué fue del color' },
          {
            held: { en: 'It held', es: 'Aguantó' },
            shifted: { en: 'It turned into another colour', es: 'Se volvió otro color' },
            faded: { en: 'It faded', es: 'Se apagó' },
            bled: { en: 'It bled into the next colour', es: 'Sangró en el color vecino' },
          },
        ),
        process,
        weeks: whole(
          { en: 'Weeks since the pour when you looked', es: 'Semanas desde el vertido cuando miraste' },
          { least: 0, most: 520 },
        ).optional(),
        strength: text(
          {
            en: 'How strong: tint, pastel, medium, full, or teaspoons per cup',
            es: 'Cuánto: toque, pastel, medio, pleno, o cucharaditas por taza',
          },
          { most: 60 },
        ).optional(),
        base: text(
          {
            en: 'The batter: “pale olive base”, “with white”',
            es: 'La masa: «base clara de oliva», «con blanco»',
          },
          { most: 100 },
        ).optional(),
        note: text(
          { en: 'Anything else worth knowing', es: 'Algo más que convenga saber' },
          { most: 300 },
        ).optional(),
        photo: picture({ en: 'A photo of the bar', es: 'Una foto de la pastilla' }).optional(),
      },
      completes: { item: suggestColours },
      async answer({ item, result, process: made, weeks, strength, base, note, photo }, context) {
        const { say, asker, change, id, channel } = context;
        const { identity } = await reportable(item, context);
        // The group sees it: the colour by its own name, not by what the jar is called at home.
        const name = identityName(identity, say);
        const kept: evidence.Report = {
          identity,
          result,
          process: made,
          at: change.at,
          weeks,
          note,
          base,
          strength: strength === undefined ? undefined : printStrength(parseStrength(strength)),
          photo: photo && { channel, interaction: id, attachment: photo.id },
        };
        const { replaced, repeated } = await evidence.keepReport(scopeOf(context), kept, {
          member: asker.id,
          cause: change.cause,
        });
        const weighed = weigh(identity, await evidenceOn(identity, context));
        return reportedReply(
          { kept, name, withPhoto: photo !== undefined },
          { replaced, repeated, weighed },
          say,
        );
      },
    }),
    evidence: action({
      purpose: {
        en: 'What this group has seen of one colour, or of all',
        es: 'Qué ha visto este grupo de un color, o de todos',
      },
      seenBy: 'asker',
      options: { item: colour.optional() },
      completes: { item: suggestColours },
      async answer({ item }, context) {
        if (item === undefined) return wholePage(0, context);
        return colourPage((await reportable(item, context)).identity, 0, context);
      },
    }),
    withdraw: action({
      purpose: { en: 'Take back your own report', es: 'Retira tu propio informe' },
      seenBy: 'asker',
      options: { item: colour, process: process.optional() },
      completes: { item: suggestColours },
      async answer({ item, process: made }, context) {
        const { say, asker } = context;
        const { identity, name } = await reportable(item, context);
        const gone = await evidence.withdrawReports(scopeOf(context), identity, {
          member: asker.id,
          process: made,
        });
        if (gone.length === 0) refuse('report-none-of-yours', { name });
        return {
          kind: 'reply',
          headline: say.evidence.withdrawn({ name, reports: gone.length }),
          data: { colour: identity, withdrawn: gone },
          blocks: [],
          cautions: [],
        };
      },
    }),
    share: action({
      purpose: {
        en: 'Stewards: share counts with groups that also share, or stop',
        es: 'Responsables: compartir cuentas con grupos que también comparten, o dejarlo',
      },
      seenBy: 'asker',
      access: 'steward',
      options: {
        on: yesNo({ en: 'Yes to share, no to stop', es: 'Sí para compartir, no para dejarlo' }).optional(),
      },
      async answer({ on }, context) {
        const scope = scopeOf(context);
        const words = context.say.evidence;
        if (on !== undefined) await evidence.setSharing(scope, on, new Date(context.at));
        const shares = on ?? (await evidence.shares(scope));
        const now = shares ? words.sharingIsOn : words.sharingIsOff;
        return {
          kind: 'reply',
          headline: on === undefined ? now : on ? words.sharingOn : words.sharingOff,
          data: { shares },
          blocks: [],
          cautions: [],
        };
      },
    }),
    label: action({
      purpose: {
        en: 'The colours of a finished bar as its label must list them',
        es: 'Los colores de una pastilla como debe listarlos su etiqueta',
      },
      seenBy: 'asker',
      options: {
        market: choice(
          { en: 'Where it will be sold', es: 'Dónde se venderá' },
          {
            us: { en: 'United States', es: 'Estados Unidos' },
            eu: { en: 'European Union', es: 'Unión Europea' },
          },
        ),
        of: text(
          {
            en: 'The colours in it: “ultramarine blue, gold mica”, or an ingredient list',
            es: 'Los colores que lleva: «azul ultramar, mica dorada», o una lista de ingredientes',
          },
          { most: longestList },
        ).optional(),
        recipe: text(
          { en: 'Or a kept recipe, by its name', es: 'O una receta guardada, por su nombre' },
          { most: 100 },
        ).optional(),
      },
      completes: {
        recipe: async (typed, context) =>
          (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
      },
      async answer({ of, recipe, market }, context) {
        if ((of === undefined) === (recipe === undefined)) refuse('label-nothing-named', {});
        const { components, unknown } =
          recipe === undefined
            ? await findTogether(context.shelf, of ?? '')
            : await inRecipe(recipe, context);
        if (components.length === 0) refuse('label-nothing-named', {});
        return { kind: 'reply', ...labelled(components, unknown, { market, say: context.say }) };
      },
    }),
  },
  { followUps: evidenceFollowUps },
);
