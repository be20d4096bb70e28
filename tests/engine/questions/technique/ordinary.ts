import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** An ordinary question as it comes in a day: what it is about by another hand's label, and what a good answer says first. */
export type OrdinaryQuestion = {
  readonly text: string;
  readonly language: 'en' | 'es';
  /** A matter, `job:` with what a command does, `follow-up` where it leans on an earlier message, or `none`. */
  readonly label: string;
  readonly good: string;
};

/** One hand's questions; `judgedFirst`: how many answers a third hand judged so when the set was asked for the first time. */
export type OrdinarySet = {
  readonly name: string;
  readonly writer: string;
  readonly judgedFirst?: Readonly<
    Record<'good' | 'useful' | 'asks' | 'useless' | 'wrong' | 'harmful', number>
  >;
  readonly questions: readonly OrdinaryQuestion[];
};

const folder = join(import.meta.dirname, 'ordinary');

/** Every set of ordinary questions, by the name of its file. */
export const ordinarySets = (): readonly OrdinarySet[] =>
  readdirSync(folder)
    .sort()
    .map(file => ({
      ...(JSON.parse(readFileSync(join(folder, file), 'utf8')) as Omit<OrdinarySet, 'name'>),
      name: file.replace('.json', ''),
    }));
