import { join } from 'node:path';
import { type LabelledLine, labelledLines } from './labelled-lines.ts';

/**
 * What comes into the inbox of a group, by eight hands who each wrote 600 messages as four makers, and what each is about by their own
 * label: a matter of technique or of lye, `job:` with what a command does, `chat`, `cannot-do`, `vague-trouble`, `follow-up` where it
 * leans on an earlier message, `outside`, or `none` where it is of soap and no matter.
 */
export const INBOXES = [
  'dairy-and-workbench',
  'ledger-and-fishing-port',
  'library-and-salon',
  'lorry-and-pharmacy',
  'organ-and-olive-press',
  'schoolroom-and-needle',
  'signalbox-and-kitchen',
  'surgery-and-terrace',
] as const;

export const inboxTexts = (): readonly LabelledLine[] => labelledLines(join(import.meta.dirname, 'inbox'));
