/** Something we need to post news in a place, and may not do or have there. */
export type Lack = 'view' | 'post' | 'post-in-threads' | 'attach' | 'unlocked' | 'messages';
