import { open, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import type { DeclaredOption } from '../conversation/declared.ts';
import type { Attachment, Given, OptionValue } from '../conversation/question.ts';
import { refuse } from '../engine/refusal.ts';

declare module '../engine/refusal.ts' {
  interface Reasons {
    'file-not-found': { path: string };
    'line-option-twice': { option: string };
  }
}

/** Types the texts of a command line as the chat platform would have typed them. Throws a Refusal. */
export async function givenFrom(
  texts: readonly { readonly name: string; readonly text: string }[],
  declared: readonly DeclaredOption[],
): Promise<Given> {
  const given: Record<string, OptionValue> = {};
  for (const { name, text } of texts) {
    // `with:` is the first of `with-1`, `with-2`, ...
    const option = declared.find(one => one.name === name) ?? declared.find(one => one.name === `${name}-1`);
    const key = option?.name ?? name;
    if (key in given) refuse('line-option-twice', { option: name });
    given[key] = option ? await typed(option, text) : text;
  }
  return given;
}

async function typed({ kind }: DeclaredOption, text: string): Promise<OptionValue> {
  switch (kind) {
    case 'whole':
    case 'number':
      return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text) ? Number(text.replace(',', '.')) : text;
    case 'yes-no':
      if (/^(yes|y|true|sí|si)$/i.test(text)) return true;
      return /^(no|n|false)$/i.test(text) ? false : text;
    case 'picture':
      return await fileAt(text);
    case 'member':
    case 'role':
    case 'channel': {
      // As it is mentioned on the platform, or by its id or name.
      const id = /^<(?:@&|@!?|#)(\w+)>$/.exec(text.trim())?.[1] ?? text.trim().replace(/^[@#]/, '');
      return { kind, id, name: id };
    }
    case 'text':
    case 'choice':
      return text;
  }
}

/** A local file in place of an attachment. Throws a Refusal when there is none. */
export async function fileAt(path: string): Promise<Attachment> {
  const found = await stat(path).catch(() => undefined);
  if (!found?.isFile()) return refuse('file-not-found', { path });
  return {
    name: basename(path),
    mediaType: undefined,
    size: found.size,
    async read() {
      await using file = await open(path);
      return new Uint8Array(await file.readFile());
    },
  };
}
