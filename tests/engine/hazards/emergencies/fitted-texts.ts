import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { accountsOf } from '../../../../src/engine/hazards/emergencies/evidence/weigh.ts';
import type { Grounds } from '../../../../src/engine/hazards/emergencies/grounds.ts';
import { groundsIn } from '../../../../src/engine/hazards/emergencies/read.ts';
import type { EmergencyId } from '../../../../src/engine/hazards/index.ts';
import { EXAMPLES } from '../../flaws/examples.ts';
import type { Sample } from './fit-weights.ts';

export type FittedText = {
  readonly text: string;
  readonly id: EmergencyId | undefined;
  readonly writer: string;
  readonly set: 'first' | 'second' | 'own' | 'flaws';
  readonly grounds: Grounds;
};

type Written = { text: string; id: EmergencyId; writer?: string };
type File = Record<'emergencies' | 'no-alarm' | 'first-aid-questions', Written[] | undefined>;

const FILES = { first: 'tune', second: 'second', own: 'own' } as const;

/** Every text that the weights are fitted to: both halves by another hand, our own, and the flaws where nobody is hurt. */
export function fittedTexts(): readonly FittedText[] {
  const written = Object.entries(FILES).flatMap(([set, name]) => {
    const file = JSON.parse(
      readFileSync(join(import.meta.dirname, `emergencies-${name}.json`), 'utf8'),
    ) as File;
    return [
      ...(file.emergencies ?? []),
      ...(file['first-aid-questions'] ?? []),
      ...(file['no-alarm'] ?? []).map(one => ({ ...one, id: undefined })),
    ].map(({ text, id, writer = 'own' }) => ({
      text,
      id,
      writer,
      set: set as FittedText['set'],
      grounds: groundsIn(text),
    }));
  });
  const flaws = EXAMPLES.map(({ text }) => ({
    text,
    id: undefined,
    writer: 'flaws',
    set: 'flaws' as const,
    grounds: groundsIn(text),
  })).filter(({ grounds }) => grounds.told.length === 0);
  return [...written, ...flaws];
}

/**
 * What the fit sees of a text: once with the patterns that hold in it and once without, for the patterns know these
 * texts and will not know the next. Ideas that `unheard` names are left out.
 */
export function samplesOf(
  { grounds, id }: FittedText,
  unheard: (mention: Grounds['mentions'][number]) => boolean = () => false,
): readonly [Sample, Sample] {
  const mentions = grounds.mentions.filter(mention => !unheard(mention));
  return [
    { id, accounts: accountsOf(mentions, grounds.reading, grounds.told) },
    { id, accounts: accountsOf(mentions, grounds.reading, []) },
  ];
}
