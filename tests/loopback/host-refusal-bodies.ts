import { type RuleId, rules } from '../../src/loopback/refusals/rules.ts';

export type Json = Record<string, unknown>;
/** A body the platform refuses for one row of the table, and the nearest one it takes. */
export interface Pair {
  readonly refused: unknown;
  readonly taken: unknown;
}

/** Pairs of a row of our own, and those that the platform's description refuses by itself: `judge.ts` has them. */
export function split<Pairs extends Record<string, Pair>>(pairs: Pairs) {
  const entries = Object.entries(pairs);
  return {
    ours: Object.fromEntries(entries.filter(([id]) => id in rules)) as Pick<Pairs, keyof Pairs & RuleId>,
    theirs: Object.fromEntries(entries.filter(([id]) => !(id in rules))),
  };
}

const v2 = 1 << 15;
export const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));
export const long = (count: number): string => 'ö'.repeat(count);
export const text = (content = 'stir'): Json => ({ type: 10, content });
export const button = (over: Json = {}): Json => ({
  type: 2,
  style: 1,
  label: 'Stir',
  custom_id: 'stir',
  ...over,
});
const row = (...components: Json[]): Json => ({ type: 1, components });
export const option = (index: number): Json => ({ label: `Oil ${index}`, value: `oil-${index}` });
export const menu = (over: Json = {}): Json => ({
  type: 3,
  custom_id: 'oils',
  options: [option(0)],
  ...over,
});
export const people = (over: Json = {}): Json => ({ type: 5, custom_id: 'makers', ...over });
export const section = (over: Json = {}): Json => ({
  type: 9,
  components: [text()],
  accessory: button(),
  ...over,
});
const gallery = (...items: Json[]): Json => ({ type: 12, items });
const picture = (url = 'https://example.org/bar.png', over: Json = {}): Json => ({ media: { url }, ...over });
const newer = (...components: unknown[]): Json => ({ flags: v2, components });
const older = (...components: unknown[]): Json => ({ content: 'soap', components });
const embed = (over: Json): Json => ({ embeds: [{ title: 'soap', ...over }] });
const mentions = (allowed_mentions: unknown): Json => ({ content: 'soap', allowed_mentions });
const filler = times(3, () => ({ description: long(1900) }));

/** Rows that a plain message body in a channel runs into. */
const pairs = {
  'component-kind-unknown': { refused: newer({ type: 99 }), taken: newer(text()) },
  'component-misplaced': { refused: newer(button()), taken: newer(row(button())) },
  'components-need-flag': { refused: older(text()), taken: newer(text()) },
  'components-total': {
    refused: newer(...times(41, () => text('x'))),
    taken: newer(...times(40, () => text('x'))),
  },
  'component-id-duplicate': {
    refused: newer({ ...text(), id: 7 }, { ...text(), id: 7 }),
    taken: newer({ ...text(), id: 0 }, { ...text(), id: 0 }),
  },
  'custom-id-length': {
    refused: older(row(button({ custom_id: long(101) }))),
    taken: older(row(button({ custom_id: long(100) }))),
  },
  'custom-id-duplicate': {
    refused: older(row(button()), row(button())),
    taken: older(row(button()), row(button({ custom_id: 'rest' }))),
  },
  'legacy-rows': {
    refused: older(...times(6, i => row(button({ custom_id: `b${i}` })))),
    taken: older(...times(5, i => row(button({ custom_id: `b${i}` })))),
  },
  'row-buttons': {
    refused: older(row(...times(6, i => button({ custom_id: `b${i}` })))),
    taken: older(row(...times(5, i => button({ custom_id: `b${i}` })))),
  },
  'row-select-alone': { refused: older(row(menu(), button())), taken: older(row(menu()), row(button())) },
  'button-style': { refused: older(row(button({ style: 7 }))), taken: older(row(button({ style: 4 }))) },
  'button-label': {
    refused: older(row(button({ label: long(81) }))),
    taken: older(row(button({ label: long(80) }))),
  },
  'button-face': {
    refused: older(row({ type: 2, style: 1, custom_id: 'a' })),
    taken: older(row({ type: 2, style: 1, custom_id: 'a', emoji: { name: '🧼' } })),
  },
  'button-fields': {
    refused: older(row(button({ style: 5, url: 'https://example.org' }))),
    taken: older(row({ type: 2, style: 5, label: 'Read', url: 'https://example.org' })),
  },
  'button-url': {
    refused: older(row({ type: 2, style: 5, label: 'Read', url: `https://example.org/${'a'.repeat(493)}` })),
    taken: older(row({ type: 2, style: 5, label: 'Read', url: `https://example.org/${'a'.repeat(492)}` })),
  },
  'select-options': {
    refused: older(row(menu({ options: times(26, option) }))),
    taken: older(row(menu({ options: times(25, option) }))),
  },
  'select-option-text': {
    refused: older(row(menu({ options: [{ label: long(101), value: 'a' }] }))),
    taken: older(row(menu({ options: [{ label: long(100), value: 'a' }] }))),
  },
  'select-option-duplicate': {
    refused: older(row(menu({ options: [option(1), option(1)] }))),
    taken: older(row(menu({ options: [option(1), option(2)] }))),
  },
  'select-placeholder': {
    refused: older(row(menu({ placeholder: long(151) }))),
    taken: older(row(menu({ placeholder: long(150) }))),
  },
  'select-range': {
    refused: older(row(menu({ min_values: 2, max_values: 1 }))),
    taken: older(row(menu({ min_values: 0, max_values: 1 }))),
  },
  'select-defaults': {
    refused: older(row(people({ default_values: times(2, i => ({ id: `${i}`, type: 'user' })) }))),
    taken: older(row(people({ default_values: [{ id: '1', type: 'user' }] }))),
  },
  'section-texts': {
    refused: newer(section({ components: times(4, () => text()) })),
    taken: newer(section({ components: times(3, () => text()) })),
  },
  'section-accessory': { refused: newer({ type: 9, components: [text()] }), taken: newer(section()) },
  'text-empty': { refused: newer(text('')), taken: newer(text('.')) },
  'text-total': {
    refused: newer(text(long(2000)), { type: 17, components: [text(long(2001))] }),
    taken: newer(text(long(2000)), { type: 17, components: [text(long(2000))] }),
  },
  'gallery-items': {
    refused: newer(gallery(...times(11, () => picture()))),
    taken: newer(gallery(...times(10, () => picture()))),
  },
  'media-description': {
    refused: newer(gallery(picture(undefined, { description: long(1025) }))),
    taken: newer(gallery(picture(undefined, { description: long(1024) }))),
  },
  'media-url': {
    refused: newer(gallery(picture('ftp://example.org/bar.png'))),
    taken: newer(gallery(picture())),
  },
  'media-attachment-missing': {
    refused: newer(gallery(picture('attachment://bar.png'))),
    taken: newer(gallery(picture())),
  },
  'file-attachment-only': {
    refused: newer({ type: 13, file: { url: 'https://example.org/recipe.pdf' } }),
    taken: newer(text()),
  },
  'separator-spacing': {
    refused: newer(text(), { type: 14, spacing: 3 }),
    taken: newer(text(), { type: 14, spacing: 2, divider: false }),
  },
  'container-colour': {
    refused: newer({ type: 17, accent_color: 0x1000000, components: [text()] }),
    taken: newer({ type: 17, accent_color: 0xffffff, components: [text()] }),
  },
  'container-empty': {
    refused: newer({ type: 17, components: [] }),
    taken: newer({ type: 17, components: [text()] }),
  },
  'message-empty': { refused: { content: '' }, taken: { content: '.' } },
  'content-length': { refused: { content: long(2001) }, taken: { content: long(2000) } },
  'v2-excludes': { refused: { ...newer(text()), content: 'soap' }, taken: { ...newer(text()), content: '' } },
  'embed-count': {
    refused: { embeds: times(11, () => ({ title: 'a' })) },
    taken: { embeds: times(10, () => ({ title: 'a' })) },
  },
  'embed-title': { refused: embed({ title: long(257) }), taken: embed({ title: long(256) }) },
  'embed-description': {
    refused: embed({ description: long(4097) }),
    taken: embed({ description: long(4096) }),
  },
  'embed-fields': {
    refused: embed({ fields: times(26, () => ({ name: 'a', value: 'b' })) }),
    taken: embed({ fields: times(25, () => ({ name: 'a', value: 'b' })) }),
  },
  'embed-field-name': {
    refused: embed({ fields: [{ name: long(257), value: 'b' }] }),
    taken: embed({ fields: [{ name: long(256), value: 'b' }] }),
  },
  'embed-field-value': {
    refused: embed({ fields: [{ name: 'a', value: '' }] }),
    taken: embed({ fields: [{ name: 'a', value: long(1024) }] }),
  },
  'embed-footer': {
    refused: embed({ footer: { text: long(2049) } }),
    taken: embed({ footer: { text: long(2048) } }),
  },
  'embed-author': {
    refused: embed({ author: { name: long(257) } }),
    taken: embed({ author: { name: long(256) } }),
  },
  'embed-total': {
    refused: { embeds: [...filler, { description: long(301) }] },
    taken: { embeds: [...filler, { description: long(300) }] },
  },
  'nonce-length': { refused: { content: 'a', nonce: long(26) }, taken: { content: 'a', nonce: long(25) } },
  'mentions-shape': { refused: mentions({ users: 'all' }), taken: mentions({ parse: [] }) },
  'mentions-kind': { refused: mentions({ parse: ['soapers'] }), taken: mentions({ parse: ['everyone'] }) },
  'mentions-count': {
    refused: mentions({ users: times(101, i => `${i}`) }),
    taken: mentions({ users: times(100, i => `${i}`) }),
  },
  'mentions-exclusive': {
    refused: mentions({ parse: ['users'], users: ['1'] }),
    taken: mentions({ parse: ['roles'], users: ['1'] }),
  },
  'attachment-unknown': {
    refused: { content: 'a', attachments: [{ id: '5' }] },
    taken: { content: 'a', attachments: [] },
  },
  'reply-to-unknown': {
    refused: { content: 'a', message_reference: { message_id: '5' } },
    taken: { content: 'a', message_reference: { message_id: '5', fail_if_not_exists: false } },
  },
  'body-shape': { refused: { content: 'a', components: {} }, taken: { content: 'a', components: [] } },
} as const satisfies Record<string, Pair>;

export const { ours: messagePairs, theirs: carriedMessagePairs } = split(pairs);
