import type { Action } from '../command.ts';
import type { Context } from '../context.ts';
import type { Conversation } from '../conversation.ts';
import type { Given } from '../question.ts';

/** What is watched for what is the asker's own: whether a command that was run on the way named a jar. */
const watched = new WeakMap<Conversation, { namesJar: boolean }>();

/** From here on it is kept whether what one question runs names a jar of its asker's. */
export function watchOwn(conversation: Conversation): void {
  if (!watched.has(conversation)) watched.set(conversation, { namesJar: false });
}

/** Whether a command that was run since it is watched named a jar of the asker's. */
export const hasNamedJar = (conversation: Conversation): boolean =>
  watched.get(conversation)?.namesJar ?? false;

/** Notes, where somebody watches, whether a command that is about to run names a jar. */
export async function noteOwn(
  conversation: Conversation,
  { action, given }: { readonly action: Action; readonly given: Given },
  context: Context,
): Promise<void> {
  const seen = watched.get(conversation);
  if (!seen || seen.namesJar || !action.namesJar) return;
  // What cannot be read is refused by the command itself, and its "no" is looked through as any answer.
  seen.namesJar = await action.namesJar(given, context).catch(() => false);
}
