import type { Block, ReplyWith } from '../../src/conversation/reply.ts';
import type { Known } from '../../src/engine/flaws/consider.ts';
import { diagnose } from '../../src/engine/flaws/diagnose.ts';
import type { Diagnosis, Evidence } from '../../src/engine/flaws/diagnosis.ts';
import type { FindingId } from '../../src/engine/flaws/findings.ts';
import { photographed } from '../../src/engine/flaws/photo-evidence.ts';
import { answered, MOST_QUESTIONS } from '../../src/engine/flaws/questions.ts';
import { whiffCautions } from '../../src/presenting/whiff.ts';
import type { FlawFile, Learned, PhotoShown } from '../../src/records/flaws/index.ts';
import type { Words } from '../../src/words/index.ts';
import { seenColours } from './seen-colours.ts';
import { type Bench, flawAdvice, flawCautions, flawHeadline, flawReasons } from './view.ts';

/** A case looked at with all that is known by now, and what would tell most next. */
export type Looked = {
  readonly file: FlawFile;
  readonly diagnosis: Diagnosis;
  readonly question: FindingId | undefined;
};

/**
 * Weighs everything in a case: what was said of lye before the last answer stands until it was tested. Throws the
 * Refusals of `diagnose`.
 */
export function lookAt(file: FlawFile, learned: Learned): Looked {
  const now = lookOnce(file, learned, { warned: false });
  if (now.diagnosis.doNotUse) return now;
  const warned = file.answers.some((_, at) => {
    const before = { ...file, answers: file.answers.slice(0, at) };
    return lookOnce(before, learned, { warned: false }).diagnosis.doNotUse;
  });
  return warned ? lookOnce(file, learned, { warned }) : now;
}

function lookOnce(file: FlawFile, { turnedOut }: Learned, { warned }: { readonly warned: boolean }): Looked {
  const { opened, answers, withdrawn } = file;
  const { words } = opened;
  const known: Known = {
    evidence: evidenceIn(file),
    withdrawn,
    unanswered: answers.filter(({ answer }) => answer === 'unsure').map(({ finding }) => finding),
    turnedOut,
    warned,
    ...(opened.plan && { batch: opened.plan.numbers }),
  };
  const diagnosis = diagnose(words, known);
  const asking = answers.length < MOST_QUESTIONS && !isBusyWithWater(diagnosis);
  return { file, diagnosis, question: asking ? diagnosis.ask : undefined };
}

/** Who rinses an eye, or hurts and tells of nothing else, is not to be asked about specks. */
const isBusyWithWater = ({ firstAid, cantTell }: Diagnosis): boolean =>
  firstAid === 'eye' || (firstAid !== undefined && cantTell === 'nothing-known');

function evidenceIn({ opened: { photo, plan }, answers }: FlawFile): readonly Evidence[] {
  const seen = (photo?.findings ?? []).flatMap(({ finding, ratio }) =>
    finding && ratio !== undefined ? [photographed(finding, ratio)] : [],
  );
  const planned = (plan?.evidence ?? []).map(
    (one): Evidence => ({ ...one, via: 'plan', from: plan?.name ?? 'plan' }),
  );
  const said = answers.flatMap(({ finding, answer }) =>
    answer === 'unsure' ? [] : [answered(finding, answer === 'yes')],
  );
  return [...seen, ...planned, ...said];
}

/** A diagnosis as it is told to programs, and the case it is of. */
export type FlawData = Diagnosis & { readonly case: string };

declare module '../../src/conversation/reply.ts' {
  interface AnswerData {
    diagnose: FlawData;
  }
}

/** Words on the face of a diagnosis. */
const MOST_WORDS = 110;

/** The case as a reply without its choices; `marked` is its photo with what was seen drawn on it, while there is one. */
export function flawReply(
  id: string,
  { file, diagnosis, question }: Looked,
  { say, measures, marked }: Bench & { readonly marked: Uint8Array | undefined },
): ReplyWith<FlawData> {
  const { photo } = file.opened;
  const questionText = question && say.flaws.questions[question];
  return {
    kind: 'reply',
    headline: flawHeadline(diagnosis, say),
    data: {
      ...diagnosis,
      case: id,
      ...(photo && { photo: photoData(photo) }),
      ...(questionText && {
        nextQuestion: { id: question, text: questionText, answers: ['yes', 'no', 'unsure'] },
      }),
    },
    blocks: [
      ...flawAdvice(diagnosis, { measures, say }),
      ...seenColours(diagnosis, photo, say),
      ...(marked && photo ? [picture(photo, marked, say)] : []),
      ...flawReasons(diagnosis, say),
      ...(photo ? photoNotes(photo, say) : []),
      ...lookingAt(diagnosis, question, say),
      ...answersGiven(file, say),
      ...(questionText
        ? [
            {
              kind: 'text' as const,
              firm: true,
              text: say.flaws.question({
                at: file.answers.length + 1,
                most: MOST_QUESTIONS,
                text: questionText,
              }),
            },
          ]
        : []),
    ],
    cautions: [...whiffCautions(file.opened.words, say), ...flawCautions(diagnosis, say)],
    most: MOST_WORDS,
  };
}

const photoData = ({ bars, whiteReference, colours, findings }: PhotoShown) => ({
  bars,
  whiteReference,
  colours: colours.map(({ lab, hex, share, plusMinus }) => ({ lab, hex, share, plusMinus })),
  findings: findings.map(({ id, answer, strength, confidence, region }) => ({
    id,
    answer,
    strength,
    confidence,
    region,
  })),
});

/** What is on the photo, one line each in the order of its numbers. */
export const photoLabels = ({ findings }: Pick<PhotoShown, 'findings'>, say: Words): readonly string[] =>
  findings.map(({ id, answer, confidence }) => {
    // A case of before an update may tell of a sight that has another name now.
    const name = say.photo.findings[id as keyof typeof say.photo.findings] ?? id;
    const told = { name, percent: Math.round(100 * confidence) };
    return answer === 'possibly' ? say.photo.possibly(told) : say.photo.seen(told);
  });

function picture(photo: PhotoShown, png: Uint8Array, say: Words): Block {
  const list = photoLabels(photo, say).map((label, index) => `${index + 1} ${label}`);
  const alt = list.length > 0 ? say.photo.markedAlt({ list: list.join('; ') }) : say.photo.markedAltNothing;
  return { kind: 'picture', name: 'marked.png', png, alt };
}

function photoNotes({ bars, unread, findings, poor, pictures }: PhotoShown, say: Words): readonly Block[] {
  const nothing =
    bars.length === 0 ? [say.photo.barUnseen] : findings.length === 0 ? [say.photo.nothingSeen] : [];
  const lines = [
    ...(unread ? [say.photo.unread[unread]] : nothing),
    ...poor.filter(why => why !== unread).map(why => say.photo.poor[why]),
    say.photo.fromDrawings,
    ...(pictures > 1 ? [say.flaws.firstPicture({ count: pictures })] : []),
  ];
  return [{ kind: 'text', text: lines.join(' '), ...(bars.length > 0 && !unread && { fold: 'why' }) }];
}

/** Where nothing can be told: what to look at besides what is being asked. */
function lookingAt(diagnosis: Diagnosis, question: FindingId | undefined, say: Words): Block[] {
  const { cantTell, lookAt: all } = diagnosis;
  const others = all.filter(id => id !== question);
  if (!cantTell || isBusyWithWater(diagnosis) || others.length === 0) return [];
  const rows = others.map(id => say.flaws.questions[id] ?? say.flaws.findings[id]);
  return [{ kind: 'rows', title: say.flaws.lookAt, rows }];
}

function answersGiven({ answers, withdrawn }: FlawFile, say: Words): Block[] {
  const lines = answers
    .filter(({ finding }) => !withdrawn.includes(finding))
    .map(({ finding, answer }) =>
      say.flaws.answered({ text: say.flaws.questions[finding] ?? '', answer: say.flaws.answers[answer] }),
    );
  if (lines.length === 0) return [];
  return [{ kind: 'text', folds: true, fold: 'why', text: `${say.flaws.yourAnswers}: ${lines.join(' ')}` }];
}
