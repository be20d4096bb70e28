import { action } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, picture, text, whole, yesNo } from '../../src/conversation/option.ts';
import { parseStrength, printStrength } from '../../src/engine/quantities/strength.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { suggestJars } from '../../src/presenting/colour/suggest.ts';
import { identityName, weigh } from '../../src/presenting/evidence.ts';
import * as evidence from '../../src/records/evidence/index.ts';
import { findMeant } from '../../src/records/shelf/meant.ts';
import { phrases } from '../../src/words/declared.ts';
import { undoChoice } from '../shelf/follow-ups.ts';
import { colourPage, evidenceOn, scopeOf, wholePage } from './follow-ups.ts';
import { colour } from './options.ts';
import { reportedReply } from './report-pages.ts';

const says = phrases('colourant');

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'report-none-of-yours': { readonly name: string };
  }
}

const process = choice(says.options.process);

/** The colour that is meant, with what its reports are filed under; metals are refused. */
async function reportable(asked: string, context: Context) {
  const meant = await findMeant(context.shelf, asked);
  const { identity, report } = meant;
  if (report.verdictIfPresent === 'never')
    refuse('metal-never-in-lye', { text: cut(asked, 80), metal: 'unnamed' });
  if (identity === undefined) return refuse('list-nothing-recognised', { text: cut(asked, 80) });
  const name = meant.item?.name ?? identityName(identity, context.say);
  return { identity, name };
}

/** What the group saw of a colour: told, shown, taken back, shared. */
export const reportActions = {
  report: action({
    purpose: says.report.purpose,
    seenBy: 'group',
    options: {
      item: colour,
      result: choice(says.report.result),
      process,
      weeks: whole(says.report.weeks, { least: 0, most: 520 }).optional(),
      strength: text(says.report.strength, { most: 60 }).optional(),
      base: text(says.report.base, { most: 100 }).optional(),
      note: text(says.report.note, { most: 300 }).optional(),
      photo: picture(says.report.photo).optional(),
    },
    completes: { item: suggestJars },
    async answer({ item, result, process: made, weeks, strength, base, note, photo }, context) {
      const { say, by, change, id, channel } = context;
      const { identity } = await reportable(item, context);
      // The group sees it: the colour by its own name, not by what the jar is called at home.
      const name = identityName(identity, say);
      const kept: evidence.Report = {
        identity,
        result,
        process: made,
        at: change.at,
        weeks,
        note,
        base,
        strength: strength === undefined ? undefined : printStrength(parseStrength(strength)),
        photo: photo && { channel, interaction: id, attachment: photo.id },
      };
      const { replaced, repeated } = await evidence.keepReport(scopeOf(context), kept, {
        member: by.member,
        cause: change.cause,
        name,
      });
      const weighed = weigh(identity, await evidenceOn(identity, context));
      const reply = reportedReply(
        { kept, name, withPhoto: photo !== undefined },
        { replaced, repeated, weighed },
        say,
      );
      return { ...reply, choices: undoChoice({ repeated }, change.cause, context) };
    },
  }),
  evidence: action({
    purpose: says.evidence.purpose,
    seenBy: 'asker',
    options: { item: colour.optional() },
    completes: { item: suggestJars },
    async answer({ item }, context) {
      if (item === undefined) return wholePage(0, context);
      return colourPage((await reportable(item, context)).identity, 0, context);
    },
  }),
  withdraw: action({
    purpose: says.withdraw.purpose,
    seenBy: 'asker',
    options: { item: colour, process: process.optional() },
    completes: { item: suggestJars },
    async answer({ item, process: made }, context) {
      const { say, by } = context;
      const { identity, name } = await reportable(item, context);
      const gone = await evidence.withdrawReports(scopeOf(context), identity, {
        member: by.member,
        process: made,
        name,
        change: context.change,
      });
      if (gone.length === 0) refuse('report-none-of-yours', { name });
      return {
        kind: 'reply',
        headline: say.evidence.withdrawn({ name, reports: gone.length }),
        data: { colour: identity, withdrawn: gone },
        blocks: [],
        cautions: [],
        choices: undoChoice({ repeated: false }, context.change.cause, context),
      };
    },
  }),
  share: action({
    purpose: says.share.purpose,
    seenBy: 'asker',
    access: 'steward',
    options: {
      on: yesNo(says.share.on).optional(),
    },
    async answer({ on }, context) {
      const scope = scopeOf(context);
      const words = context.say.evidence;
      if (on !== undefined) await evidence.setSharing(scope, on, new Date(context.at));
      const shares = on ?? (await evidence.shares(scope));
      const now = shares ? words.sharingIsOn : words.sharingIsOff;
      return {
        kind: 'reply',
        headline: on === undefined ? now : on ? words.sharingOn : words.sharingOff,
        data: { shares },
        blocks: [],
        cautions: [],
      };
    },
  }),
};
