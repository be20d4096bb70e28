import { key } from './key.ts';

// The house.
/** The key that follow-ups are signed with. */
export const signingKey = () => key('meta', 'signing-key');

/** In which format the store as a whole is. */
export const formatKey = () => key('meta', 'format');
/** What is written and dropped to see whether the store can be written to. */
export const probeKey = (who: string) => key('meta', 'probe', who);
/** That it is written down whose every record is, and of which kinds. */
export const ownedMarker = () => key('meta', 'owned');
/** That a store is being filled from a backup or another store. */
export const fillingKey = () => key('meta', 'filling');

// Whose what is.
/** What groups keep of a member is written down under this key. */
export const ownedRecords = (member: string) => key('owned', member);
/** That a record, by its key, is a member's. */
export const ownedRecord = (member: string, record: string) => `${ownedRecords(member)}/${record}`;

// Groups that put us out.
/** The groups that put us out lie under this key. */
export const groupsLeft = () => key('group-left');
/** That a group put us out, and when: its records stay until the time for keeping them is over. */
export const groupLeft = (group: string) => key('group-left', group);
