import { z } from 'zod';
import { action, command, followUp, privateIfRecipe } from '../src/conversation/command.ts';
import type { Context } from '../src/conversation/context.ts';
import { several, text } from '../src/conversation/option.ts';
import type { Block, Choice } from '../src/conversation/reply.ts';
import { oilGramsFor } from '../src/engine/batch/fit.ts';
import { fillPortions } from '../src/engine/batch/portions/portions.ts';
import { batterOfPot } from '../src/engine/batch/portions/pot.ts';
import { makeRecipe } from '../src/engine/batch/recipe.ts';
import { type Batter, TYPICAL_BATTER } from '../src/engine/dispersion/batter.ts';
import { answerDose } from '../src/engine/dosing/answer.ts';
import { parseCarrier, parsePremix } from '../src/engine/dosing/parse-premix.ts';
import { portionMillilitres } from '../src/engine/dosing/portion.ts';
import type { DoseAnswer, DoseAsked } from '../src/engine/dosing/request.ts';
import { parsePortionRange } from '../src/engine/quantities/amount.ts';
import { excerpt } from '../src/engine/quantities/excerpt.ts';
import { parseStrength, type Strength, splitStrength } from '../src/engine/quantities/strength.ts';
import { MEASURES, type Measures } from '../src/engine/quantities/units.ts';
import { refuse } from '../src/engine/refusal.ts';
import { checkColourant } from '../src/engine/stability/check-colourant.ts';
import { amountPhrase } from '../src/engine/text/amount-phrases.ts';
import { carrierNamed } from '../src/engine/text/carrier-name.ts';
import { notForSoap } from '../src/presenting/check.ts';
import { suggestJars } from '../src/presenting/colour/suggest.ts';
import { colourCost, portionCostView } from '../src/presenting/cost.ts';
import {
  doseAside,
  doseCautions,
  doseMeasures,
  doseSteps,
  type NamedDose,
  nameOf,
  spoonsOf,
} from '../src/presenting/dose.ts';
import { doseAnswerData } from '../src/presenting/dose-data.ts';
import { colourNotes, withoutCatalogueLye } from '../src/presenting/warning.ts';
import { preferencesOf } from '../src/records/preferences.ts';
import { findRecipe, nearestRecipes } from '../src/records/recipes/index.ts';
import { readKept } from '../src/records/recipes/kept-plan.ts';
import { useItem } from '../src/records/shelf/index.ts';
import { findJar, type Jar, knownOf } from '../src/records/shelf/jar.ts';
import { meantByItem } from '../src/records/shelf/meant.ts';
import type { Words } from '../src/words/index.ts';

declare module '../src/engine/refusal.ts' {
  interface Reasons {
    'premix-carrier-twice': { readonly premix: string; readonly carrier: string };
  }
}

const FULL: Strength = { by: 'name', name: 'full' };

const take = followUp({
  seenBy: 'asker',
  args: { item: z.string(), milligrams: z.string().transform(Number) },
  async answer({ item, milligrams }, { shelf, change, say }) {
    const outcome = await useItem(shelf, item, milligrams / 1000, change);
    return {
      kind: 'reply',
      headline: say.shelf.taken(outcome),
      data: outcome,
      blocks: [],
      cautions: [],
    };
  },
});

export default command(
  'dose',
  action({
    purpose: {
      en: 'How much colourant for the batter you pull out, and how to wet it',
      es: 'Cuánto colorante para la masa que apartas, y cómo humedecerlo',
    },
    anywhere: true,
    seenBy: privateIfRecipe,
    options: {
      colourant: text({
        en: 'A colourant by name or CI number, or a jar on your shelf',
        es: 'Un colorante por su nombre o número CI, o un bote de tu estantería',
      }),
      portion: text({
        en: 'How much batter: “2 cups”, “500 ml”, “1 lb oils”',
        es: 'Cuánta masa: «2 tazas», «500 ml», «500 g de aceites»',
      }),
      strength: text({
        en: 'Tint, pastel, medium, full, or teaspoons per cup. Full unless you say',
        es: 'Toque, pastel, medio, pleno, o cucharaditas por taza. Pleno si no dices nada',
      }).optional(),
      carrier: text({
        en: 'What you want to wet it in: water, oil or glycerin',
        es: 'En qué quieres humedecerlo: agua, aceite o glicerina',
      }).optional(),
      premix: text({
        en: 'Already wet? “30%” pigment, or your own paste: “1 tsp in 1 Tbsp oil”',
        es: '¿Ya humedecido? «30%» de pigmento, o tu pasta: «1 cdta en 1 cda de aceite»',
      }).optional(),
      with: several(
        {
          en: 'Another colourant in the same portion: “gold mica pastel”',
          es: 'Otro colorante en la misma porción: «mica dorada pastel»',
        },
        { most: 4 },
      ),
      recipe: text(
        {
          en: 'A kept recipe whose batter it is, for a closer answer',
          es: 'Una receta guardada, si es su masa: la respuesta es más exacta',
        },
        { most: 100 },
      ).optional(),
    },
    completes: {
      colourant: suggestJars,
      with: suggestJars,
      strength: (typed, { say }) =>
        Object.entries(say.quantities.strengths)
          .map(([value, name]) => ({ name, value }))
          .filter(({ name }) => name.startsWith(typed.toLowerCase())),
      recipe: async (typed, context) =>
        (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
      carrier: (_, { say }) =>
        Object.entries(say.dispersion.carriers).map(([value, name]) => ({ name, value })),
    },
    essence: ({ data }) => doseEssence(data as ReturnType<typeof doseAnswerData>),
    async namesJar({ colourant, with: others }, { shelf }) {
      const found = await Promise.all([colourant, ...others].map(one => findColoured(one, shelf)));
      return found.some(({ jar }) => jar.item !== undefined);
    },
    async answer(asked, context) {
      const { say, store, asker, shelf } = context;
      const measures = MEASURES[(await preferencesOf(store, asker.id)).spoons];
      const { low: portion, high } = parsePortionRange(asked.portion, measures);

      const first = await findColoured(asked.colourant, shelf);
      const others = await Promise.all(asked.with.map(one => findColoured(one, shelf)));
      const strength = asked.strength === undefined ? first.strength : parseStrength(asked.strength);
      refuseTwoLiquids(asked);
      const wanted = [
        {
          ...doseAsked({ ...first, strength }, measures),
          ...(asked.carrier !== undefined && { carrier: parseCarrier(asked.carrier) }),
          ...(asked.premix !== undefined && { premix: parsePremix(asked.premix, measures) }),
        },
        ...others.map(one => doseAsked(one, measures)),
      ];

      const batter = asked.recipe === undefined ? undefined : await recipeBatter(asked.recipe, context);
      const answer = answerDose({ portion, colourants: wanted, measures, ...(batter && { batter }) });
      const jars = [first, ...others].map(({ jar }) => jar);
      // Of "2-3 cups" both ends are told.
      const more =
        high && answerDose({ portion: high, colourants: wanted, measures, ...(batter && { batter }) });
      const ends = high ? amountPhrase(asked.portion) : undefined;
      const notes = await colourNotes(jars, {
        scope: { store, group: context.group },
        viewer: asker.id,
        say,
      });
      const doses = answer.doses.map(
        (dose, index): NamedDose => ({ dose, name: knownAs(jars[index] as Jar, say) }),
      );
      const cost = colourCost(
        doses.map(({ dose }, index) => ({
          item: jars[index]?.item,
          grams: (dose.premix?.grams ?? dose.grams).typical,
        })),
      );
      const pot = batter ?? TYPICAL_BATTER;
      const costs = portionCostView(cost, portionMillilitres(portion, pot) * pot.gramsPerMillilitre, say);
      const law = jars.flatMap(jar => lawOf(jar, say));
      return {
        kind: 'reply',
        headline: [
          ...new Set(law),
          say.dosing.headline({
            spoons: spoonsOf(answer.doses[0] as NamedDose['dose'], say),
            colourant: doses
              .map(({ dose, name }, index) => {
                const what = dose.premix ? say.dosing.pasteOf({ colourant: name }) : name;
                return index === 0 ? what : `${spoonsOf(dose, say)} ${what}`;
              })
              .join(' + '),
            portion: ends?.low ?? asked.portion.trim(),
          }),
        ].join(' '),
        data: {
          ...doseAnswerData(answer),
          ...(more && { upTo: doseAnswerData(more) }),
          ...(cost && { cost }),
        },
        blocks: [
          ...(more ? [upperEnd(more, { portion: ends?.high ?? '', doses }, say)] : []),
          doseMeasures(doses, say),
          ...doseSteps(doses, say),
          ...notes.asides.map(text => ({ kind: 'text', text }) as const),
          ...costs.map(text => ({ kind: 'text', text }) as const),
          doseAside(
            doses,
            jars.map(({ colourant }) => colourant),
            say,
          ),
        ],
        cautions: [...notes.cautions, ...doseCautions(withoutCatalogueLye(answer.cautions, jars), say)],
        choices: doses.flatMap(({ dose }, index) => takeChoice(jars[index] as Jar, dose, context)),
      };
    },
  }),
  { followUps: { take } },
);

/** A paste is in one liquid: a carrier beside it may name the one it leaves out, and no other. */
function refuseTwoLiquids({
  premix,
  carrier,
}: {
  readonly premix?: string | undefined;
  readonly carrier?: string | undefined;
}): void {
  if (premix === undefined || carrier === undefined) return;
  const inPaste = carrierNamed(premix);
  if (inPaste !== undefined && inPaste !== parseCarrier(carrier))
    refuse('premix-carrier-twice', { premix: excerpt(premix), carrier: excerpt(carrier) });
}

/** The doses of the upper end of a range, in a line. */
const upperEnd = (
  { doses }: DoseAnswer,
  { portion, doses: named }: { readonly portion: string; readonly doses: readonly NamedDose[] },
  say: Words,
): Block => ({
  kind: 'text',
  text: say.ask.bothEnds({
    portion,
    doses: doses.map((dose, index) => `${spoonsOf(dose, say)} ${named[index]?.name ?? ''}`).join(' + '),
  }),
});

/** Two colourants are dosed the same when the spoons, the most and the carrier are. */
const doseEssence = ({ doses }: ReturnType<typeof doseAnswerData>): string =>
  JSON.stringify(
    doses.map(({ spoons, ceilingTeaspoons, carrier }) => [spoons, ceilingTeaspoons, carrier.choice]),
  );

/** What the law says of a colour before any number: that it is listed for something else, or how little it allows. */
function lawOf({ colourant, item }: Jar, say: Words): readonly string[] {
  const { components } = item ? meantByItem(item).report : checkColourant(colourant);
  const elsewhere = notForSoap({ components }, '', say);
  if (elsewhere) return [elsewhere];
  const { legal } = colourant;
  if (!legal) return [];
  const percent = Number((legal.share * 100).toPrecision(3));
  return [say.checking.legalMost({ ...legal, percent, verdict: '' }).trim()];
}

/** The batter of a kept recipe as it stands in the pot when it is split. */
async function recipeBatter(asked: string, context: Context): Promise<Batter> {
  const recipe = await findRecipe(context.recipes, asked);
  const { request } = await readKept(recipe, context.shelf, MEASURES[recipe.spoons]);
  const { pot } = fillPortions(makeRecipe(request, oilGramsFor(request)), request);
  return batterOfPot(pot);
}

type Coloured = { readonly jar: Jar; readonly strength: Strength };

/** "gold mica pastel": a jar, and the strength after it unless the whole is the name of one. */
async function findColoured(asked: string, shelf: Parameters<typeof findJar>[0]): Promise<Coloured> {
  const { rest, strength } = splitStrength(asked);
  if (!strength) return { jar: await findJar(shelf, asked), strength: FULL };
  const whole = await findJar(shelf, asked).catch(() => undefined);
  return whole?.item ? { jar: whole, strength: FULL } : { jar: await findJar(shelf, rest), strength };
}

/** What the member's own jar is known to do narrows the answer. */
const doseAsked = ({ jar, strength }: Coloured, measures: Measures): DoseAsked => ({
  ...knownOf(jar, measures),
  strength,
});

const knownAs = ({ item, colourant }: Jar, say: Words) => item?.name ?? nameOf(colourant, say);

/** Offers to take the dose off the shelf where there is enough of it. */
function takeChoice(
  { item }: Jar,
  { grams, premix }: NamedDose['dose'],
  { say }: Context,
): readonly Choice[] {
  const used = (premix?.grams ?? grams).typical;
  if (!item || (item.stock.grams ?? 0) < used) return [];
  const milligrams = Math.round(used * 1000);
  return [
    {
      kind: 'button',
      label: say.shelf.take({ name: item.name, grams: milligrams / 1000 }),
      follow: take.with({ item: item.id, milligrams }),
    },
  ];
}
