import { spaced } from '../../../engine/over-lines.ts';
import type { BackupReason, backup as en } from '../../en/fronts/backup.ts';
import type { RefusalSentences } from '../../sentence.ts';

export const backup: typeof en = {
  backedUp: v => `Copia de ${v.records} registros en ${v.file} (sha256 ${v.sha256}).`,
  restored: v => `Restaurados ${v.records} registros de ${v.file}, releídos e iguales (sha256 ${v.sha256}).`,
  moved: v => `Copiados ${v.records} registros, releídos e iguales (sha256 ${v.sha256}).`,
};

export const backupRefusals: Pick<RefusalSentences, BackupReason> = {
  'backup-changed': ({ file }) =>
    `${file} está dañado: no es lo que se escribió. No se ha restaurado nada; usa otra copia.`,
  'backup-cut-short': ({ file }) =>
    `${file} acaba antes de tiempo. No se ha restaurado nada; usa otra copia.`,
  'backup-exists': ({ file }) => `${file} ya existe: di un archivo que no exista.`,
  'backup-how': ({ mode }) =>
    mode === 'move'
      ? 'Di de dónde a dónde: npm run move -- --from sqlite:.tintmoot/records.sqlite --to postgres://HOST/DATABASE'
      : `Di qué archivo: npm run ${mode} -- records.backup`,
  'backup-missing': ({ file }) => `No hay ningún archivo ${file}: di uno que exista.`,
  'backup-of-memory': () =>
    'De un almacén en memoria no se puede hacer copia desde fuera: pon en TINTMOOT_STORE el que quieres.',
  'backup-unlike': ({ records, expected }) => spaced`
    La copia no es como el original (${records} registros de ${expected}): algo escribió mientras tanto.
    Para todo lo que escriba, vacía el destino y empieza de nuevo.
  `,
  'backup-unreadable': ({ file, line }) =>
    `${file} no es una copia mía (la línea ${line} no se lee). No se ha restaurado nada; di un archivo hecho con npm run backup.`,
  'move-onto-itself': () => 'El origen y el destino son el mismo almacén: di dos.',
  'restore-not-empty': () => 'Ese almacén ya tiene registros y no se ha cambiado nada: di uno vacío.',
  'store-half-filled': () =>
    'Este almacén tiene solo una parte de lo que se restauraba o trasladaba: repite el mismo npm run restore o npm run move, sigue donde se paró.',
  'store-newer': ({ format, known }) =>
    `Este almacén lo escribió una versión más nueva (formato ${format}, yo conozco el ${known}): arranca esa versión o restaura una copia anterior.`,
};
