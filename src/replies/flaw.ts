import type { Block, Caution } from '../conversation/reply.ts';
import type { Diagnosis, RankedCause, Weight } from '../engine/flaws/diagnosis.ts';
import type { Words } from '../words/index.ts';

/** Causes that are shown with their reasons; the rest would only blur the picture. */
const SHOWN = 3;
const REASONS = 3;

/** The first line: first aid before anything, then that nothing can be told, then the likeliest cause. */
export function flawHeadline({ firstAid, cantTell, causes }: Diagnosis, say: Words): string {
  if (firstAid) return say.flaws.firstAid[firstAid];
  if (cantTell) return say.flaws.cantTell[cantTell];
  const [first] = causes;
  return first ? ranked(first, say) : say.flaws.cantTell['nothing-known'];
}

/** The causes with what spoke for and against them, what to do now and next time, and what to look at. */
export function flawBlocks(diagnosis: Diagnosis, say: Words): readonly Block[] {
  const { causes, cantTell, lookAt, cut } = diagnosis;
  const shown = cantTell ? [] : causes.slice(0, SHOWN);
  const [first] = shown;
  return [
    ...(first
      ? [
          { kind: 'text' as const, text: say.flaws.causes[first.id].why },
          rows(
            say.flaws.thisBatch,
            first.thisBatch.map(id => say.flaws.remedies[id]),
          ),
          rows(
            say.flaws.nextBatch,
            first.nextBatch.map(id => say.flaws.remedies[id]),
          ),
        ]
      : []),
    ...shown.map(cause => rows(ranked(cause, say), reasons(cause, diagnosis, say))),
    ...(cantTell
      ? [
          rows(
            '',
            lookAt.map(id => say.flaws.questions[id] ?? say.flaws.findings[id]),
          ),
        ]
      : []),
    ...(cut ? [{ kind: 'text' as const, text: say.flaws.cut }] : []),
  ];
}

/** Lye in unknown excess is a caution of its own. */
export const flawCautions = ({ causes, cantTell }: Diagnosis, say: Words): readonly Caution[] =>
  !cantTell && causes.slice(0, 1).some(cause => cause.doNotUse)
    ? [{ id: 'do-not-use', text: say.flaws.doNotUse }]
    : [];

const ranked = ({ id, probability }: RankedCause, say: Words): string =>
  say.flaws.ranked({ name: say.flaws.causes[id].name, percent: Math.round(probability * 100) });

const rows = (title: string, lines: readonly string[]): Block => ({
  kind: 'rows',
  ...(title && { title }),
  rows: lines,
});

function reasons({ because, against }: RankedCause, { findings }: Diagnosis, say: Words): readonly string[] {
  const told = (weights: readonly Weight[]) =>
    weights.slice(0, REASONS).map(({ finding }) => {
      const seen = findings.find(({ id }) => id === finding);
      const name = say.flaws.findings[finding];
      return seen?.present === false ? say.flaws.notThere({ finding: name }) : name;
    });
  const line = (title: string, names: readonly string[]) =>
    names.length > 0 ? [`${title}: ${names.join('; ')}`] : [];
  return [...line(say.flaws.because, told(because)), ...line(say.flaws.against, told(against))];
}
