import {
  type Action,
  type Host,
  type Member,
  type MemberFile,
  Refused,
  Unanswered,
} from '../loopback/index.ts';
import type { ActionResult, Asked, PageAction } from './model.ts';
import type { View } from './view.ts';

export type Files = ReadonlyMap<string, readonly MemberFile[]>;

/** An action as it is done in the room. */
export type Doing = {
  readonly host: Host;
  readonly view: View;
  readonly member: Member;
  /** Hears the id of the interaction an action became, before anything answers it. */
  readonly onAsked: (interaction: string, asked: Omit<Asked, 'by'>) => void;
};

/** Does what a member wants; resolves once the assistant has answered. Never rejects for what the member did. */
export async function perform(pageAction: PageAction, files: Files, doing: Doing): Promise<ActionResult> {
  try {
    return await act(pageAction, files, doing);
  } catch (error) {
    if (error instanceof Refused) return { done: false, why: 'unfit', detail: error.message };
    if (error instanceof Unanswered) return { done: false, why: 'silent', detail: error.message };
    throw error;
  }
}

/** The start of the custom id of a button that opens a fold. */
const isFold = (customId: string): boolean => /^\d+~g~fold\.open~/.test(customId);

const gone = { done: false, why: 'gone', detail: '' } as const;

async function act(pageAction: PageAction, files: Files, doing: Doing): Promise<ActionResult> {
  const { host, view, member } = doing;
  switch (pageAction.do) {
    case 'run': {
      const attached = [...files].flatMap(([name, [file]]) => (file ? [[name, file] as const] : []));
      const options = { ...pageAction.options, ...Object.fromEntries(attached) };
      return await interact(
        { do: 'run', command: pageAction.command, options },
        { line: pageAction.line },
        doing,
      );
    }
    case 'submit': {
      const form = view.form(pageAction.form, member.id);
      if (!form) return gone;
      const fields = { ...pageAction.fields, ...Object.fromEntries(files) };
      const result = await interact({ do: 'submit', form, fields }, { line: pageAction.line }, doing);
      view.closeForm(pageAction.form);
      return result;
    }
    case 'post':
      await member.postMessage(pageAction.text, files.get('post') ?? []);
      return { done: true };
  }
  const message = host.latest(pageAction.message);
  if (!message) return gone;
  switch (pageAction.do) {
    case 'put-away':
      member.deleteMessage(message);
      return { done: true };
    case 'press':
      return await interact(
        { do: 'press', message, customId: pageAction.customId },
        {
          line: pageAction.line,
          ...(isFold(pageAction.customId) && {
            unfolds: { message: pageAction.message, customId: pageAction.customId },
          }),
        },
        doing,
      );
    case 'choose':
      return await interact(
        { do: 'choose', message, customId: pageAction.customId, values: pageAction.values },
        { line: pageAction.line },
        doing,
      );
    case 'point':
      return await interact(
        { do: 'menu', name: pageAction.entry, target: message },
        { line: pageAction.line },
        doing,
      );
  }
}

async function interact(
  action: Action,
  asked: Omit<Asked, 'by'>,
  { host, member, onAsked }: Doing,
): Promise<ActionResult> {
  // The host notes the interaction before `perform` gives way: the next note is ours.
  const leave = host.subscribe(event => {
    if (event.kind === 'interaction-sent') onAsked(event.interactionId, asked);
  });
  const performing = member.perform(action);
  leave();
  await performing;
  return { done: true };
}
