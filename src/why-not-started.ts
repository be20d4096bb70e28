import { StoreFailure } from './records/failure.ts';

/** What the client library says of a token that is none, before and after it asked the platform. */
const NO_TOKEN = /invalid token|TokenInvalid|401/i;
/** System errors of a platform that is not there, by `code` (man 3 errno). */
const NOT_THERE =
  /^(?:ECONNREFUSED|ENOTFOUND|EAI_AGAIN|ETIMEDOUT|EHOSTUNREACH|ENETUNREACH|ECONNRESET|UND_ERR_\w+)$/;

/** System errors of a file or folder that this user may not use, by `code` (man 3 errno), and what SQLite says of one. */
const NOT_OURS = /\b(?:EACCES|EPERM|EROFS)\b|readonly database|unable to open database/i;
const WHOSE = 'the file and its folder must be writable by the user that runs this';

/** The reason behind a failure, where it has one: that of the system or the server, without what led there. */
function reasonBehind({ message, cause }: Error): string {
  const behind = cause instanceof AggregateError ? cause.errors[0] : cause;
  const said = behind instanceof Error ? behind.message.replace(/^the store's thread failed: /, '') : '';
  return said === '' || message.includes(said) ? message : `${message} (${said})`;
}

const withAdvice = (reason: string): string => (NOT_OURS.test(reason) ? `${reason}; ${WHOSE}` : reason);

/** One sentence on why a start ended: which setting to look at, where it is one, and what is wrong. Never what is in the setting. */
export function whyNotStarted(error: Error): string {
  const { code = '', syscall = '', path } = error as NodeJS.ErrnoException;
  if (error instanceof StoreFailure && error.during === 'open')
    return `TINTMOOT_STORE: ${withAdvice(reasonBehind(error))}.`;
  if (syscall === 'listen')
    return `TINTMOOT_OPERATIONS: its address cannot be listened on (${error.message}).`;
  if (NO_TOKEN.test(`${code} ${error.message}`))
    return 'DISCORD_TOKEN: the chat platform does not know that token; copy it anew from your application there.';
  if (NOT_THERE.test(String(code)))
    return `DISCORD_API: the chat platform cannot be reached (${error.message}); is this machine on the network?`;
  // A file that was named for a backup, say.
  if (path !== undefined && code !== '') return `${path}: ${withAdvice(error.message)}.`;
  return error.message;
}
