import { key } from './key.ts';

// A member.
/** What a member wishes lies under this key. */
export const preferences = (member: string) => key('preference', member);
/** One wish about how a member is answered. */
export const preference = (member: string, wish: string) => key('preference', member, wish);

/** Which standing cautions a member was given in full lies under this key. */
export const mets = (member: string) => key('met', member);
/** That a member was given a standing caution in full. */
export const met = (member: string, caution: string) => key('met', member, caution);

// Colours matched.
/** Lines and questions of a member that buttons go on with. */
export const askedLines = (member: string) => key('asked', member);
/** One of them, under the id of the answer that offered the buttons. */
export const askedLine = (member: string, id: string) => key('asked', member, id);

/** What answers to everybody folded away lies under this key. */
export const allFoldedAnswers = () => key('late-fold');
/** What answers to a member folded away lies under this key. */
export const foldedAnswers = (member: string) => key('late-fold', member);
/** What one answer folded away, under the id that its buttons carry. */
export const foldedAnswer = (member: string, id: string) => key('late-fold', member, id);

/** What changes of everybody took away of late lies under this key. */
export const allUndoables = () => key('late-undo');
/** What a member's changes took away of late lies under this key. */
export const undoables = (member: string) => key('late-undo', member);
/** What one change took away, by its cause. */
export const undoable = (member: string, cause: string) => key('late-undo', member, cause);
/** That changes were taken back lies under this key. */
export const allUndone = () => key('undone');
/** That a change was taken back: whatever it made must not be made once more. */
export const undone = (member: string, cause: string) => key('undone', member, cause);

/** The matches a member was lately answered with lie under this key. */
export const recentMatches = (member: string) => key('late-match', member);
/** One match a member was lately answered with: what its buttons and its menu go on with. */
export const recentMatch = (member: string, id: string) => key('late-match', member, id);

// What did not reach a group.
/** What a member is to be told with their next answer lies under this key. */
export const notices = (member: string) => key('notice', member);
/** That a group could not be told of something a member is responsible for. */
export const notice = (member: string, group: string, id: string) => key('notice', member, group, id);
