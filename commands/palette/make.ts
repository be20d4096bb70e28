import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { readPalette } from '../../src/engine/palettes/read-palette.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { refuseTooLarge, shelfChoice } from '../../src/presenting/colour/candidates.ts';
import { knownAs } from '../../src/presenting/colour/jars.ts';
import { learntNote } from '../../src/presenting/colour/learnt-strength.ts';
import { type Recipe, recipesOf } from '../../src/presenting/colour/recipe.ts';
import { closenessOf, tenth } from '../../src/presenting/colour/view.ts';
import type { Words } from '../../src/words/index.ts';
import { type SoapAsked, soapAsked } from './soap.ts';

/** A recipe from the shelf for every colour of a palette, in words or by its mood. */
export async function makeReply(
  asked: SoapAsked & { readonly colours: string },
  context: Context,
): Promise<Reply> {
  const { workers, asker, say } = context;
  const owner = { owner: asker.id };
  const { measures, written, ...soap } = await soapAsked(asked, context);
  const { colours, theme } = readPalette(asked.colours);
  const { usable } = await shelfChoice(measures, context);
  if (usable.length === 0) refuse('palette-without-jars', {});
  refuseTooLarge({ usable }, soap.portion, measures);
  const candidates = usable.map(({ candidate }) => candidate);
  const made: { readonly hex: string; readonly recipe: Recipe | undefined; readonly reached: boolean }[] = [];
  for (const { hex, lab } of colours) {
    const answer = await workers.run(
      'matchJars',
      { target: lab, candidates, most: 2, recipes: 1, ...soap },
      owner,
    );
    made.push({ hex, recipe: recipesOf(answer, usable, measures)[0], reached: answer.reached });
  }
  const reached = made.filter(one => one.reached).length;
  const strips = {
    title: say.palettes.makeTitle({ theme }),
    rows: [
      { title: say.palettes.wanted, fields: made.map(({ hex }) => ({ hex, label: hex })) },
      {
        title: say.palettes.madeOf,
        fields: made.map(({ hex, recipe }) => ({
          hex: recipe?.predicted.hex ?? hex,
          label: recipe ? recipeView(recipe, say) : '–',
        })),
      },
    ],
    note: say.palettes.pictureNote,
  };
  const rows = made.map(({ hex, recipe }) =>
    recipe
      ? say.palettes.makeRow({
          hex,
          recipe: recipeView(recipe, say),
          deltaE: tenth(recipe.deltaE),
          nearness: closenessOf(recipe, say),
        })
      : say.palettes.makeNone({ hex }),
  );
  const png = await workers.run('paletteStrips', strips, owner);
  return {
    kind: 'reply',
    headline: say.palettes.make({ reached, of: made.length, portion: written }),
    data: {
      theme,
      colours: made.map(({ hex, recipe }) => ({
        hex,
        deltaE: recipe?.deltaE,
        made: recipe?.predicted.hex,
        doses: recipe?.doses.map(({ jar, teaspoons, offShelfGrams }) => ({
          name: knownAs(jar, say),
          teaspoons,
          grams: offShelfGrams,
        })),
      })),
    },
    blocks: [
      { kind: 'rows', rows },
      ...learntNote(
        made.flatMap(({ recipe }) => recipe?.doses.map(({ jar }) => jar) ?? []),
        say,
      ),
      { kind: 'picture', name: 'palette.png', png, alt: say.palettes.picture({ list: rows.join('; ') }) },
      ...(reached < made.length ? [{ kind: 'text' as const, text: say.palettes.reachMore }] : []),
    ],
    cautions: [],
  };
}

const recipeView = ({ doses }: Recipe, say: Words): string =>
  doses
    .map(({ jar, ...dose }) =>
      say.palettes.dose({ spoons: say.quantities.measure(dose), name: knownAs(jar, say) }),
    )
    .join(' + ');
