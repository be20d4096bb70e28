import { spaced } from '../../../engine/over-lines.ts';
import type { RefusalSentences } from '../../sentence.ts';

type Tally = { records: number; sha256: string };

export const backup = {
  backedUp: (v: Tally & { file: string }) =>
    `Backed up ${v.records} records to ${v.file} (sha256 ${v.sha256}).`,
  restored: (v: Tally & { file: string }) =>
    `Restored ${v.records} records from ${v.file}, read back and equal (sha256 ${v.sha256}).`,
  moved: (v: Tally) => `Copied ${v.records} records, read back and equal (sha256 ${v.sha256}).`,
};

export type BackupReason =
  | 'backup-changed'
  | 'backup-cut-short'
  | 'backup-exists'
  | 'backup-how'
  | 'backup-missing'
  | 'backup-of-memory'
  | 'backup-unlike'
  | 'backup-unreadable'
  | 'move-onto-itself'
  | 'restore-not-empty'
  | 'store-half-filled'
  | 'store-newer';

export const backupRefusals: Pick<RefusalSentences, BackupReason> = {
  'backup-changed': ({ file }) =>
    `${file} is damaged: it is not what was written. Nothing was restored; take another backup.`,
  'backup-cut-short': ({ file }) =>
    `${file} ends too early: it was cut short. Nothing was restored; take another backup.`,
  'backup-exists': ({ file }) => `${file} is there already: name a file that is not.`,
  'backup-how': ({ mode }) =>
    mode === 'move'
      ? 'Say from where to where: npm run move -- --from sqlite:.tintmoot/records.sqlite --to postgres://HOST/DATABASE'
      : `Say which file: npm run ${mode} -- records.backup`,
  'backup-missing': ({ file }) => `There is no file ${file}: name one that is there.`,
  'backup-of-memory': () =>
    'A store in memory cannot be backed up from outside: set TINTMOOT_STORE to the store you mean.',
  'backup-unlike': ({ records, expected }) => spaced`
    The copy is not like its source (${records} records for ${expected}): something wrote meanwhile. Stop
    everything that writes, empty the target and start again.
  `,
  'backup-unreadable': ({ file, line }) =>
    `${file} is no backup of mine (line ${line} does not read). Nothing was restored; name a file that npm run backup made.`,
  'move-onto-itself': () => 'From and to are the same store: name two.',
  'restore-not-empty': () =>
    'That store holds records already, and nothing was changed: name one that is empty.',
  'store-half-filled': () =>
    'This store holds only part of what was to be restored or moved into it: run the same npm run restore or npm run move again, it goes on where it stopped.',
  'store-newer': ({ format, known }) =>
    `This store was written by a newer version (format ${format}, I know ${known}): start that version, or restore a backup from before it.`,
};
