/** Something we need to post news in a place, and may not do or have there. */
export type Lack = 'view' | 'post' | 'post-in-threads' | 'attach' | 'unlocked' | 'messages';

/** Something that would stand beside the news, and that we may not put there. */
export type LackBeside = 'thread' | 'calendar';
