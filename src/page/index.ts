/** The room in a browser, over the loopback host. */
export { openJournal } from './persistence/journal.ts';
export { furnish, HOME } from './seats.ts';
export { openPage, type Page } from './server.ts';
