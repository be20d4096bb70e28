import { open, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import type { DeclaredOption } from '../conversation/declared.ts';
import type { Attachment, Given, OptionValue } from '../conversation/question.ts';
import { typedValue } from '../conversation/typed/typed-value.ts';
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
    given[key] = option?.kind === 'picture' ? await fileAt(text) : option ? typedValue(option, text) : text;
  }
  return given;
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
