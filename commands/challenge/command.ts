import { action, commandGroup } from '../../src/conversation/command.ts';
import { member, picture, role, text, whole, yesNo } from '../../src/conversation/option.ts';
import { phrases } from '../../src/words/declared.ts';
import { history, list, results, show } from './answer.ts';
import { challengeActs } from './deadlines.ts';
import { suggestUsed } from './entering/colourants-used.ts';
import { enter, part, replace, takeBack, withdraw } from './entering/enter.ts';
import { enterButton, enterFilled } from './entering/enter-form.ts';
import { exportChallenge } from './export.ts';
import { ideas } from './ideas.ts';
import { suggestChallenges } from './lookup.ts';
import { open, openFilled } from './opening/open.ts';
import { showPalette } from './opening/palette.ts';
import { drawn, terms, zone } from './opening/term-options.ts';
import { audit, cancel, disqualify, extend, settings } from './steward.ts';
import { back, ballot, ownBallot, pick, turn, vote } from './voting/vote.ts';
import { giveRecipe } from './winning-recipe.ts';

const says = phrases('challenge');

const challenge = text(says.options.challenge).optional();
const completes = { challenge: suggestChallenges };
const reason = text(says.options.reason, { most: 300 });
const barNumber = whole(says.options.barNumber, { least: 1, most: 9999 });

const title = text(says.options.title, { most: 80 });
const photo = picture(says.options.photo);
const colourants = text(says.options.colourants, { most: 500 });
const note = text(says.options.note, { most: 1000 }).optional();
const made = text(says.options.made).optional();

export default commandGroup(
  'challenge',
  says.purpose,
  {
    open: action({
      purpose: says.open.purpose,
      seenBy: 'asker',
      opensForm: 'bare',
      access: 'steward',
      options: terms,
      answer: open,
    }),
    show: action({
      purpose: says.show.purpose,
      seenBy: 'asker',
      options: { challenge },
      completes,
      answer: show,
    }),
    list: action({
      purpose: says.list.purpose,
      seenBy: 'asker',
      options: {},
      answer: (_, context) => list(context),
    }),
    enter: action({
      purpose: says.enter.purpose,
      seenBy: 'asker',
      pace: 'slow',
      options: { title, photo, colourants, note, made, challenge },
      completes: { ...completes, colourants: suggestUsed },
      answer: enter,
    }),
    replace: action({
      purpose: says.replace.purpose,
      seenBy: 'asker',
      pace: 'slow',
      options: {
        entry: barNumber.optional(),
        title: title.optional(),
        photo: photo.optional(),
        colourants: colourants.optional(),
        note,
        made,
        challenge,
      },
      completes: { ...completes, colourants: suggestUsed },
      answer: replace,
    }),
    withdraw: action({
      purpose: says.withdraw.purpose,
      seenBy: 'asker',
      options: { entry: barNumber.optional(), challenge },
      completes,
      answer: withdraw,
    }),
    vote: action({
      purpose: says.vote.purpose,
      seenBy: 'asker',
      options: {
        ranking: text(says.vote.ranking, { most: 1000 }).optional(),
        challenge,
      },
      completes,
      answer: vote,
    }),
    ballot: action({
      purpose: says.ballot.purpose,
      seenBy: 'asker',
      options: { challenge },
      completes,
      answer: (asked, context) => ownBallot(asked.challenge, context),
    }),
    results: action({
      purpose: says.results.purpose,
      seenBy: 'group',
      options: { challenge },
      completes,
      answer: results,
    }),
    history: action({
      purpose: says.history.purpose,
      seenBy: 'asker',
      options: {
        member: member(says.history.member).optional(),
      },
      answer: history,
    }),
    audit: action({
      purpose: says.audit.purpose,
      seenBy: 'asker',
      options: { challenge },
      completes,
      answer: audit,
    }),
    recipe: action({
      purpose: says.recipe.purpose,
      seenBy: 'group',
      options: {
        recipe: text(says.recipe.recipe, { most: 100 }),
        challenge,
      },
      answer: giveRecipe,
    }),
    palette: action({
      purpose: says.palette.purpose,
      seenBy: 'asker',
      pace: 'slow',
      options: {
        colours: terms.random,
        ...drawn,
        photo: picture(says.palette.photo).optional(),
      },
      answer: showPalette,
    }),
    extend: action({
      purpose: says.extend.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: {
        reason,
        'entries-until': terms['entries-until'],
        'votes-until': terms['votes-until'],
        challenge,
      },
      completes,
      answer: extend,
    }),
    cancel: action({
      purpose: says.cancel.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: { reason, challenge },
      completes,
      answer: cancel,
    }),
    disqualify: action({
      purpose: says.disqualify.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: { entry: barNumber, reason, challenge },
      completes,
      answer: disqualify,
    }),
    export: action({
      purpose: says.export.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: { challenge },
      completes,
      answer: exportChallenge,
    }),
    settings: action({
      purpose: says.settings.purpose,
      seenBy: 'asker',
      access: 'steward',
      options: {
        role: role(says.settings.role).optional(),
        zone: zone.optional(),
        calls: role(says.settings.calls).optional(),
        quiet: yesNo(says.settings.quiet).optional(),
        threads: yesNo(says.settings.threads).optional(),
        calendar: yesNo(says.settings.calendar).optional(),
      },
      answer: settings,
    }),
  },
  {
    followUps: {
      'open-form': openFilled,
      enter: enterButton,
      'enter-form': enterFilled,
      part,
      withdraw: takeBack,
      ballot,
      pick,
      turn,
      back,
      ideas,
    },
    deadlines: challengeActs,
  },
);
