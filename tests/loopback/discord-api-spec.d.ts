/** Its schemas come without types of their own; every one is a schema of zod. */
declare module 'discord-api-spec/zod';
