import type { Block, Caution, Measure, Reply } from '../../../src/conversation/reply.ts';
import { capital } from '../../../src/engine/text/capital.ts';
import type { AskReply } from '../understood.ts';

/** What a reply of one dose calls its colour. */
const nameIn = ({ blocks }: Reply): string | undefined =>
  blocks.flatMap(block => (block.kind === 'measures' ? block.measures : []))[0]?.label;

/** A caution that some of several share stands once; what one alone has, or has otherwise, is told by its name. */
function cautionsOf(doses: readonly Reply[]): readonly Caution[] {
  const all = doses.flatMap(dose => dose.cautions.map(caution => ({ caution, name: nameIn(dose) })));
  const texts = (id: string) =>
    new Set(all.filter(one => one.caution.id === id).map(one => one.caution.text));
  // A mix warns where it is weighed out.
  const warning = doses.filter(({ cautions }) => cautions.length > 0);
  const isOfAll = (id: string) => warning.every(({ cautions }) => cautions.some(one => one.id === id));
  const told = new Map<string, Caution>();
  for (const { caution, name } of all) {
    const { id, text, brief } = caution;
    const isOne = texts(id).size === 1 && isOfAll(id);
    const isNamed = name === undefined || tells(text, name);
    const own = (said: string) => (isOne || isNamed ? said : `${capital(name)}: ${said}`);
    if (!told.has(own(text)))
      told.set(own(text), {
        ...caution,
        text: own(text),
        ...(brief !== undefined && {
          brief: isOne || name === undefined ? brief : `${capital(name)}: ${brief}`,
        }),
      });
  }
  return [...told.values()];
}
/** Whether a text says a word of a name, "ultramarine" of "ultramarine blue"; short ones are hues. */
const tells = (text: string, name: string): boolean => {
  const said = new Set(text.toLowerCase().match(/\p{L}+/gu));
  return name
    .toLowerCase()
    .split(' ')
    .some(word => word.length > SHORT_WORD && said.has(word));
};
const SHORT_WORD = 6;

const measuresOf = ({ blocks }: Reply, fold: 'face' | 'numbers'): readonly Measure[] =>
  blocks.flatMap(block => (block.kind === 'measures' && block.fold === fold ? block.measures : []));

/** As what each dose was understood. */
const linesOf = (doses: readonly Reply[]): readonly string[] =>
  doses.flatMap(({ blocks }) =>
    blocks.flatMap(block => (block.kind === 'text' && block.firm ? [block.text] : [])),
  );

/** The wetting and blending of each colour, and why, under its name. */
const foldsOf = (dose: Reply): readonly Block[] => {
  const title = capital(nameIn(dose) ?? '');
  return dose.blocks.flatMap((block): readonly Block[] => {
    if (block.kind === 'measures' || (block.kind === 'text' && block.firm)) return [];
    if (block.kind === 'rows' && block.numbered) return [{ ...block, title, fold: 'steps' }];
    return block.kind === 'text' && block.fold === 'why'
      ? [{ kind: 'rows', title, rows: [block.text], fold: 'why' }]
      : [block];
  });
};

/**
 * Doses of one batch's parts as one answer: every colour with its spoons, its grams, how it is wetted and its cautions. `told`: what stands
 * over them. Pure.
 */
export function together(
  doses: readonly AskReply[],
  told: Pick<AskReply, 'headline' | 'understood'>,
): AskReply {
  const [first, ...others] = doses;
  const grams = doses.flatMap(dose => measuresOf(dose, 'face'));
  return {
    ...first!,
    ...told,
    blocks: [
      ...(others.length > 0
        ? [{ kind: 'text' as const, text: others.map(one => one.headline).join('\n'), firm: true }]
        : []),
      { kind: 'measures', measures: grams, firm: true },
      { kind: 'measures', measures: doses.flatMap(dose => measuresOf(dose, 'numbers')), fold: 'numbers' },
      { kind: 'text', text: linesOf(doses).join('\n'), firm: true },
      ...doses.flatMap(foldsOf),
    ],
    cautions: cautionsOf(doses),
    next: doses.flatMap(({ next = [] }) => next.slice(0, 1)),
  };
}
