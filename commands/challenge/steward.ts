import type { Context } from '../../src/conversation/context.ts';
import type { Named } from '../../src/conversation/question.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { readDeadline } from '../../src/engine/challenges/deadline.ts';
import type { StewardEvent } from '../../src/engine/challenges/events.ts';
import { zoneOf } from '../../src/engine/challenges/wall-time.ts';
import { refuse } from '../../src/engine/refusal.ts';
import {
  asOf,
  cancelChallenge,
  disqualify as disqualifyEntry,
  extendChallenge,
  requireChallenge,
} from '../../src/records/challenges/index.ts';
import { groupSettings, keepGroupSettings } from '../../src/records/group.ts';
import { roleMark } from '../../src/words/marks.ts';
import { type NumberedBar, numberedBars, numberedName } from './bars.ts';
import { chooseChallenge, chooseToLookAt, madeBySteward, scopeOf } from './lookup.ts';

type Which = { readonly challenge?: string | undefined };

const reply = (headline: string, data: object): Reply => ({
  kind: 'reply',
  headline,
  data,
  blocks: [],
  cautions: [],
});

/** Moves deadlines later. */
export async function extend(
  asked: Which & {
    readonly 'entries-until'?: string | undefined;
    readonly 'votes-until'?: string | undefined;
    readonly reason: string;
  },
  context: Context,
): Promise<Reply> {
  const { at, say } = context;
  const challenge = await chooseChallenge(context, asked.challenge, ['announced', 'entering', 'voting']);
  const { terms } = asOf(challenge, at);
  const read = (text: string | undefined) =>
    text === undefined ? undefined : readDeadline(text, { zone: terms.zone, now: at }).at;
  const entriesUntil = read(asked['entries-until']);
  // Where nobody votes, both end together.
  const votesUntil = read(asked['votes-until']) ?? (terms.decides === 'colour' ? entriesUntil : undefined);
  const extension = {
    reason: asked.reason,
    ...(entriesUntil && { entriesUntil }),
    ...(votesUntil && { votesUntil }),
  };
  await extendChallenge(scopeOf(context), challenge.id, extension, madeBySteward(context));
  context.checkDue?.();
  const after = asOf(await requireChallenge(scopeOf(context), challenge.id), at).terms;
  const { moment } = say.challenges;
  return reply(
    say.challengeSteps.extended({
      title: after.title,
      entries: moment(after.entriesUntil, after.zone),
      votes: after.decides === 'colour' ? undefined : moment(after.votesUntil, after.zone),
    }),
    { challenge: challenge.id, terms: after },
  );
}

/** Calls a challenge off. */
export async function cancel(asked: Which & { readonly reason: string }, context: Context): Promise<Reply> {
  const challenge = await chooseChallenge(context, asked.challenge, [
    'announced',
    'entering',
    'voting',
    'counting',
  ]);
  await cancelChallenge(scopeOf(context), challenge.id, asked.reason, madeBySteward(context));
  context.checkDue?.();
  const { title } = asOf(challenge, context.at).terms;
  return reply(context.say.challenges.cancelled({ title, reason: asked.reason.trim() }), {
    challenge: challenge.id,
    reason: asked.reason.trim(),
  });
}

/** Takes a bar out. */
export async function disqualify(
  asked: Which & { readonly entry: number; readonly reason: string },
  context: Context,
): Promise<Reply> {
  const challenge = await chooseToLookAt(
    context,
    asked.challenge,
    phase => ['voting', 'counting', 'entering', 'closed'].indexOf(phase) + (phase === 'cancelled' ? 9 : 1),
  );
  const now = asOf(challenge, context.at);
  const bar = numberedBars(challenge, now).find(({ number }) => number === asked.entry);
  if (!bar) return refuse('challenge-entry-unknown', { entry: String(asked.entry) });
  const { reason } = asked;
  await disqualifyEntry(scopeOf(context), challenge.id, { entry: bar.entry, reason }, madeBySteward(context));
  context.checkDue?.();
  const { say } = context;
  return reply(say.challengeSteps.disqualified({ bar: numberedName(bar, now, say), reason: reason.trim() }), {
    challenge: challenge.id,
    entry: bar.entry,
    reason: reason.trim(),
  });
}

/** Everything that stewards did about a challenge, for members to read. */
export async function audit(asked: Which, context: Context): Promise<Reply> {
  const { say, at } = context;
  const challenge = await chooseToLookAt(context, asked.challenge, () => 0);
  const now = asOf(challenge, at);
  const bars = new Map(numberedBars(challenge, now).map(bar => [bar.entry, bar]));
  const { zone, title } = now.terms;
  return {
    kind: 'reply',
    headline: say.challengeSteps.audit({ title, deeds: now.audit.length }),
    data: { challenge: challenge.id, audit: now.audit },
    blocks: [
      {
        kind: 'rows',
        rows: now.audit.map(event =>
          say.challengeSteps.deed({
            when: say.challenges.moment(event.at, zone),
            who: event.name ?? event.by,
            what: deedOf(event, { zone, bars, now }, context),
          }),
        ),
      },
    ],
    cautions: [],
  };
}

function deedOf(
  event: StewardEvent,
  { zone, bars, now }: { zone: string; bars: ReadonlyMap<string, NumberedBar>; now: ReturnType<typeof asOf> },
  { say }: Context,
): string {
  const { deeds } = say.challengeSteps;
  const { moment } = say.challenges;
  switch (event.kind) {
    case 'opened':
      return deeds.opened;
    case 'extended':
      return deeds.extended({
        entries: event.entriesUntil === undefined ? undefined : moment(event.entriesUntil, zone),
        votes: event.votesUntil === undefined ? undefined : moment(event.votesUntil, zone),
        reason: event.reason,
      });
    case 'cancelled':
      return deeds.cancelled(event);
    case 'disqualified': {
      const bar = bars.get(event.entry);
      return deeds.disqualified({
        bar: bar ? numberedName(bar, now, say) : event.entry,
        reason: event.reason,
      });
    }
  }
}

/** What a group may set; what is left out stays as it is. */
type Settings = {
  readonly role?: Named | undefined;
  readonly zone?: string | undefined;
  readonly calls?: Named | undefined;
  readonly quiet?: boolean | undefined;
  readonly threads?: boolean | undefined;
  readonly calendar?: boolean | undefined;
};

/** Shows or sets who besides the platform's managers is a steward, and the zone of the group's times. */
export async function settings(asked: Settings, context: Context): Promise<Reply> {
  const { store, group, say } = context;
  const { role, zone, calls, quiet, threads, calendar } = asked;
  const { callsRole, ...before } = await groupSettings(store, group);
  const called = calls?.id ?? (quiet ? undefined : callsRole);
  const set = {
    ...before,
    ...(role && { stewardRole: role.id }),
    ...(zone !== undefined && { zone: zoneOf(zone).name }),
    ...(called !== undefined && { callsRole: called }),
    ...(threads !== undefined && { threads }),
    ...(calendar !== undefined && { calendar }),
  };
  if (Object.values(asked).some(value => value !== undefined)) await keepGroupSettings(store, group, set);
  const words = say.challengeSteps;
  return {
    ...reply(
      words.settings({ role: set.stewardRole && roleMark(set.stewardRole), zone: set.zone ?? 'UTC' }),
      set,
    ),
    blocks: [
      {
        kind: 'text',
        text: words.settingsBeside({
          calls: called && roleMark(called),
          threads: set.threads ?? true,
          calendar: set.calendar ?? true,
        }),
      },
      ...(calls?.canBeCalled === false ? [{ kind: 'text' as const, text: words.roleUncallable }] : []),
    ],
  };
}
