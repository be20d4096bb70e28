import { RESTJSONErrorCodes as published } from 'discord.js';
import { expect, test } from 'vitest';
import { type RuleId, ruleOf } from '../../src/loopback/refusals/rules.ts';

/** Source: the platform's published list of JSON error codes, as the discord-api-types package transcribes it. */
const expected: readonly (readonly [RuleId, number])[] = [
  ['message-empty', published.CannotSendAnEmptyMessage],
  ['files-count', published.MaximumNumberOfAttachmentsInAMessageReached],
  ['file-size', published.RequestEntityTooLarge],
  ['request-size', published.RequestEntityTooLarge],
  ['body-json', published.RequestBodyContainsInvalidJSON],
  ['channel-unknown', published.UnknownChannel],
  ['channel-hidden', published.MissingAccess],
  ['channel-closed', published.MissingPermissions],
  ['channel-not-text', published.CannotSendMessagesInNonTextChannel],
  ['thread-archived', published.InvalidActionOnArchivedThread],
  ['thread-locked', published.ThreadLocked],
  ['thread-twice', published.ThreadAlreadyCreatedForMessage],
  ['event-over', published.CannotUpdateAFinishedEvent],
  ['event-unknown', published.UnknownGuildScheduledEvent],
  ['direct-messages-closed', published.CannotSendMessagesToThisUser],
  ['user-unknown', published.UnknownUser],
  ['member-unknown', published.UnknownMember],
  ['guild-unknown', published.UnknownGuild],
  ['message-unknown', published.UnknownMessage],
  ['message-of-another', published.CannotEditMessageAuthoredByAnotherUser],
  ['interaction-unknown', published.UnknownInteraction],
  ['interaction-late', published.UnknownInteraction],
  ['acknowledged-twice', published.InteractionHasAlreadyBeenAcknowledged],
  ['webhook-token', published.InvalidWebhookToken],
  ['webhook-early', published.UnknownWebhook],
  ['follow-ups-elsewhere', published.ThisInteractionHasHitTheMaximumNumberOfFollowUpMessages],
  ['command-count', published.MaximumNumberOfApplicationCommandsReached],
  ['command-creates', published.MaximumDailyApplicationCommandCreatesReached],
  ['command-unknown', published.UnknownApplicationCommand],
  ['application-unknown', published.UnknownApplication],
];

test.each(expected)('the loopback host refuses %s with the published code', (rule, code) => {
  expect(ruleOf(rule).number).toBe(code);
});
