import type { Block, Caution } from '../../src/conversation/reply.ts';
import type { PlanAnswer } from '../../src/engine/batch/planning/plan-answer.ts';
import { checkColourant } from '../../src/engine/stability/check-colourant.ts';
import { type LabelComponent, labelLine } from '../../src/engine/stability/label.ts';
import { legalShareOf } from '../../src/engine/stability/legal-share.ts';
import { permittedSummary } from '../../src/engine/stability/permitted-summary.ts';
import { weighComponents } from '../../src/engine/stability/weigh-components.ts';
import type { PlanRead } from '../../src/records/recipes/kept-plan.ts';
import { meantByItem } from '../../src/records/shelf/meant.ts';
import type { Words } from '../../src/words/index.ts';

export type Market = 'us' | 'eu';

/** A label's colour part: what goes on it, what else to know, and the same for programs. */
export type Labelled = {
  readonly headline: string;
  readonly data: object;
  readonly blocks: readonly Block[];
  readonly cautions: readonly Caution[];
};

/** The ingredients of every colour in a plan, weighed, and those of their labels that nobody knew. */
export function plannedParts(
  { jars }: Pick<PlanRead, 'jars'>,
  { portions }: Pick<PlanAnswer, 'portions'>,
): { readonly components: readonly LabelComponent[]; readonly unknown: readonly string[] } {
  const powders = portions.flatMap(({ doses }, portion) =>
    doses.flatMap((dose, which) => {
      const jar = jars[portion]?.[which];
      if (!jar) return [];
      const { components, unknown } = jar.item ? meantByItem(jar.item).report : checkColourant(jar.colourant);
      return [{ components, unknown, grams: dose.grams.typical }];
    }),
  );
  return {
    components: weighComponents(powders),
    unknown: [...new Set(powders.flatMap(({ unknown }) => unknown))],
  };
}

const coloursNothing = (components: readonly LabelComponent[]): boolean =>
  components.every(({ role }) => role === 'additive' || role === 'carrier');

/** The colours of a finished bar as its label declares them; refuses when one of them must not meet lye. */
export function labelled(
  components: readonly LabelComponent[],
  unknown: readonly string[],
  { market, say }: { readonly market: Market; readonly say: Words },
): Labelled {
  const line = labelLine(components, market);
  const words = say.checking;
  const { label, permitted } = say.stability;
  const weighed = components.length > 0 && components.every(({ grams }) => grams !== undefined);
  const standing = permittedSummary(components)[market];
  const legal = legalShareOf(components);
  const doubtful = standing.standing !== 'listed' && standing.standing !== 'no-colour';
  return {
    headline: coloursNothing(components) ? words.coloursNothing : line.line,
    data: { market, ...line, unknown, standing, ...(legal && { legal }) },
    blocks: [
      {
        kind: 'text',
        text: [weighed ? words.labelByWeight : words.labelAsGiven, words.labelShort].join(' '),
      },
      {
        kind: 'text',
        text: [
          label[market],
          market === 'us' ? permitted.trueSoap : permitted.euResponsible,
          permitted.change,
        ].join('\n'),
        folds: true,
      },
    ],
    cautions: [
      ...(unknown.length > 0
        ? [{ id: 'label-left-out' as const, text: words.labelLeftOut({ names: unknown }) }]
        : []),
      ...(line.unsure.length > 0
        ? [{ id: 'label-unsure' as const, text: label.unsure({ names: line.unsure }) }]
        : []),
      ...(legal
        ? [
            {
              id: 'label-legal-most' as const,
              text: words.labelMost({ ...legal, percent: Number((legal.share * 100).toPrecision(3)) }),
            },
          ]
        : []),
      ...(doubtful ? [{ id: 'label-standing' as const, text: words[market](standing) }] : []),
    ],
  };
}
