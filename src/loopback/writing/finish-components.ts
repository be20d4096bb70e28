import type { Kernel } from '../kernel.ts';
import { type Json, listOf, numberOf, recordOf, textOf, wordOf } from '../state/json.ts';

/** Every component of a tree, parents before children, in reading order. */
export function* walk(components: readonly unknown[]): Generator<Json> {
  for (const item of components) {
    const component = recordOf(item);
    yield component;
    yield* walk(listOf(component.components));
    if (component.accessory !== undefined) yield* walk([component.accessory]);
    if (component.component !== undefined) yield* walk([component.component]);
  }
}

/** Components as the platform stores them: each with an id, attachment:// turned into addresses. */
export function finishComponents(
  kernel: Kernel,
  components: readonly unknown[],
  attachments: readonly Json[],
): readonly Json[] {
  const taken = new Set([...walk(components)].map(component => numberOf(component.id, 0)));
  let last = 0;
  const nextId = (): number => {
    do last += 1;
    while (taken.has(last));
    return last;
  };
  const media = (item: unknown): Json => {
    const url = textOf(recordOf(item).url) ?? '';
    if (!url.startsWith('attachment://')) return recordOf(item);
    const file = attachments.find(attachment => attachment.filename === url.slice('attachment://'.length));
    const stored = file && kernel.files.get(String(file.id));
    if (!file || !stored) return recordOf(item);
    const { url: address, proxy_url, width, height, content_type } = file;
    return {
      url: address,
      proxy_url,
      content_type,
      attachment_id: stored.id,
      flags: 0,
      width: width ?? null,
      height: height ?? null,
    };
  };
  const finish = (item: unknown): Json => {
    const component = recordOf(item);
    const id = numberOf(component.id, 0);
    return {
      ...component,
      id: id === 0 ? nextId() : id,
      ...(Array.isArray(component.components) && { components: component.components.map(finish) }),
      ...(component.accessory !== undefined && { accessory: finish(component.accessory) }),
      ...(component.component !== undefined && { component: finish(component.component) }),
      ...(component.media !== undefined && { media: media(component.media) }),
      ...(component.file !== undefined && fileFields(component, media(component.file), kernel)),
      ...(Array.isArray(component.items) && {
        items: component.items.map(entry => ({
          ...recordOf(entry),
          media: media(recordOf(entry).media),
        })),
      }),
    };
  };
  return components.map(finish);
}

function fileFields(component: Json, file: Json, kernel: Kernel): Json {
  const stored = kernel.files.get(wordOf(file.attachment_id));
  return stored ? { file, name: stored.name, size: stored.bytes.byteLength } : { file: component.file };
}
