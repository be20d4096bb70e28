/*
 * What runs in the Redis server: each script is one step there, and looks first whether it is still the same server.
 *
 * A namespace is two Redis keys: a hash of the texts, and a sorted set of their keys, all of one score, which
 * Redis keeps in byte order. The braces put both on one node of a cluster.
 */

/** What a script answers where the server is not the one that was opened, or was emptied since. */
export const EMPTIED = 'EMPTIED';
const checkMark = `
if redis.call('GET', KEYS[3]) ~= ARGV[1] then return redis.error_reply('${EMPTIED}') end`;

/** Looks at every condition before it writes anything; Redis runs a script as one. Gives the clash, or nil. */
export const commitScript = `${checkMark}
for i = 2, #ARGV, 3 do
  if (ARGV[i] == 'add' or ARGV[i] == 'absent') and redis.call('HEXISTS', KEYS[1], ARGV[i + 1]) == 1 then
    return ARGV[i + 1]
  end
end
for i = 2, #ARGV, 3 do
  if ARGV[i] == 'put' or ARGV[i] == 'add' then
    redis.call('HSET', KEYS[1], ARGV[i + 1], ARGV[i + 2])
    redis.call('ZADD', KEYS[2], 0, ARGV[i + 1])
  elseif ARGV[i] == 'drop' then
    redis.call('HDEL', KEYS[1], ARGV[i + 1])
    redis.call('ZREM', KEYS[2], ARGV[i + 1])
  end
end
return nil`;

/** At most ARGV[2] entries of each span that follows, a list a span. */
export const rangesScript = `${checkMark}
local spans = {}
for at = 3, #ARGV, 2 do
  local keys = redis.call('ZRANGEBYLEX', KEYS[2], ARGV[at], ARGV[at + 1], 'LIMIT', 0, ARGV[2])
  local entries = {}
  for i, key in ipairs(keys) do
    entries[2 * i - 1] = key
    entries[2 * i] = redis.call('HGET', KEYS[1], key)
  end
  spans[#spans + 1] = entries
end
return spans`;
