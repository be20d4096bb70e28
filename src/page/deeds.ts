import {
  type Action,
  type Host,
  type Member,
  type MemberFile,
  Refused,
  Unanswered,
} from '../loopback/index.ts';
import type { Deed, DeedResult } from './model.ts';
import type { View } from './view.ts';

export type Files = ReadonlyMap<string, readonly MemberFile[]>;

/** A deed as it is done in the room. */
export type Doing = {
  readonly host: Host;
  readonly view: View;
  readonly member: Member;
  /** Hears the id of the interaction a deed became, before anything answers it. */
  readonly onAsked: (interaction: string, line: string) => void;
};

/** Does what a member wants; resolves once the assistant has answered. Never rejects for what the member did. */
export async function perform(deed: Deed, files: Files, doing: Doing): Promise<DeedResult> {
  try {
    return await act(deed, files, doing);
  } catch (error) {
    if (error instanceof Refused) return { done: false, why: 'unfit', detail: error.message };
    if (error instanceof Unanswered) return { done: false, why: 'silent', detail: error.message };
    throw error;
  }
}

const gone = { done: false, why: 'gone', detail: '' } as const;

async function act(deed: Deed, files: Files, doing: Doing): Promise<DeedResult> {
  const { host, view, member } = doing;
  switch (deed.do) {
    case 'run': {
      const attached = [...files].flatMap(([name, [file]]) => (file ? [[name, file] as const] : []));
      const options = { ...deed.options, ...Object.fromEntries(attached) };
      return await interact({ do: 'run', command: deed.command, options }, deed.line, doing);
    }
    case 'submit': {
      const form = view.form(deed.form, member.id);
      if (!form) return gone;
      const fields = { ...deed.fields, ...Object.fromEntries(files) };
      const result = await interact({ do: 'submit', form, fields }, deed.line, doing);
      view.closeForm(deed.form);
      return result;
    }
    case 'post':
      await member.postMessage(deed.text, files.get('post') ?? []);
      return { done: true };
  }
  const message = host.latest(deed.message);
  if (!message) return gone;
  switch (deed.do) {
    case 'put-away':
      member.deleteMessage(message);
      return { done: true };
    case 'press':
      return await interact({ do: 'press', message, customId: deed.customId }, deed.line, doing);
    case 'choose':
      return await interact(
        { do: 'choose', message, customId: deed.customId, values: deed.values },
        deed.line,
        doing,
      );
    case 'point':
      return await interact({ do: 'menu', name: deed.entry, target: message }, deed.line, doing);
  }
}

async function interact(action: Action, line: string, { host, member, onAsked }: Doing): Promise<DeedResult> {
  // The host notes the interaction before `perform` gives way: the next note is ours.
  const leave = host.subscribe(event => {
    if (event.kind === 'interaction-sent') onAsked(event.interactionId, line);
  });
  const performing = member.perform(action);
  leave();
  await performing;
  return { done: true };
}
