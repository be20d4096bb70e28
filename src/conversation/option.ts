import { z } from 'zod';
import type { ReadAs } from '../engine/questions/options/in-plain-words.ts';
import type { Phrase } from '../words/sentence.ts';
import type { DeclaredOption } from './declared.ts';
import type { Attachment, Named } from './question.ts';

/**
 * The options a command can declare, as zod schemas that also carry what fronts need to know.
 * Amounts are always text: their grammar lives in the engine. No option transforms its value.
 */
type Meta = {
  readonly option: DeclaredOption['kind'];
  readonly says: Phrase;
  readonly labels?: Readonly<Record<string, Phrase>>;
  readonly reads?: ReadAs;
};

const declare = <S extends z.ZodType>(schema: S, meta: Meta): S => schema.meta(meta);

/**
 * A line of text, trimmed by nobody: at most `most` characters (default 200, the platform allows 6000). `reads`: an amount that is also
 * read as a plain question would tell it.
 */
export const text = (says: Phrase, { most = 200, reads }: { most?: number; reads?: ReadAs } = {}) =>
  declare(z.string().min(1).max(most), { option: 'text', says, ...(reads && { reads }) });

/** One of the keys of `labels`; the platform shows the label, answers carry the key. */
export const choice = <const Key extends string>(says: Phrase, labels: Readonly<Record<Key, Phrase>>) =>
  declare(z.enum(Object.keys(labels) as [Key, ...Key[]]), { option: 'choice', says, labels });

/** A whole number within bounds, both allowed. */
export const whole = (says: Phrase, { least, most }: { least: number; most: number }) =>
  declare(z.number().int().min(least).max(most), { option: 'whole', says });

/** A number within bounds, both allowed. */
export const number = (says: Phrase, { least, most }: { least: number; most: number }) =>
  declare(z.number().min(least).max(most), { option: 'number', says });

export const yesNo = (says: Phrase) => declare(z.boolean(), { option: 'yes-no', says });

/** A picture or file the member hands in. */
export const picture = (says: Phrase) =>
  declare(
    z.custom<Attachment>(value => typeof value === 'object' && value !== null && 'read' in value),
    { option: 'picture', says },
  );

const named = (kind: Named['kind'], says: Phrase) =>
  declare(
    z.custom<Named>(
      value => typeof value === 'object' && value !== null && 'kind' in value && value.kind === kind,
    ),
    { option: kind, says },
  );

/** A member of the group, a role, or a channel, picked where the platform lets one pick. */
export const member = (says: Phrase) => named('member', says);
export const role = (says: Phrase) => named('role', says);
export const channel = (says: Phrase) => named('channel', says);

/** Up to `most` of the same text option, declared as `name-1` .. `name-<most>` since nothing repeats there. */
export const several = (says: Phrase, { most }: { most: number }) =>
  z.array(text(says)).max(most).default([]);
