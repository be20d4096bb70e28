import type { Block, Caution } from '../conversation/reply.ts';
import { type LabelComponent, labelLine } from '../engine/stability/label.ts';
import { permittedSummary } from '../engine/stability/permitted-summary.ts';
import type { Words } from '../words/index.ts';

export type Market = 'us' | 'eu';

/** A label's colour part: what goes on it, what else to know, and the same for programs. */
export type Labelled = {
  readonly headline: string;
  readonly data: object;
  readonly blocks: readonly Block[];
  readonly cautions: readonly Caution[];
};

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
  const doubtful = standing.standing !== 'listed' && standing.standing !== 'no-colour';
  return {
    headline: line.line,
    data: { market, ...line, unknown, standing },
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
      ...(unknown.length > 0 ? [{ id: 'label-left-out', text: words.labelLeftOut({ names: unknown }) }] : []),
      ...(line.unsure.length > 0 ? [{ id: 'label-unsure', text: label.unsure({ names: line.unsure }) }] : []),
      ...(doubtful ? [{ id: 'label-standing', text: words[market](standing) }] : []),
    ],
  };
}
