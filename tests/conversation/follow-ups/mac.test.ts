import { createHmac } from 'node:crypto';
import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { Hmac } from '../../../src/conversation/follow-ups/mac.ts';

const hex = (text: string) => Buffer.from(text, 'hex');

// RFC 4231, "Identifiers and Test Vectors for HMAC-SHA-224, HMAC-SHA-256 ...", 4.2, 4.3, 4.7 and 4.8. Its other texts are no UTF-8.
test.each([
  ['0b'.repeat(20), 'Hi There', 'b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7'],
  [
    Buffer.from('Jefe').toString('hex'),
    'what do ya want for nothing?',
    '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
  ],
  [
    'aa'.repeat(131),
    'Test Using Larger Than Block-Size Key - Hash Key First',
    '60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54',
  ],
  [
    'aa'.repeat(131),
    'This is a test using a larger than block-size key and a larger than block-size data. The key needs to be hashed before being used by the HMAC algorithm.',
    '9b09ffa71b942fcb27635fbcd5b0e944bfdc63644f0713938a7f51535c3a35e2',
  ],
])('a text is signed as the standard’s own examples are', (key, text, told) => {
  expect(Buffer.from(new Hmac(hex(key)).of(text), 'base64url').toString('hex')).toBe(told);
});

// Against the implementation of Node's crypto (OpenSSL).
test.prop([
  fc.uint8Array({ minLength: 1, maxLength: 80 }),
  fc.array(fc.string({ unit: 'binary', maxLength: 300 }), { minLength: 1, maxLength: 5 }),
])(
  'one signer signs texts of any length and script, one after another, as the library does',
  (key, texts) => {
    const signer = new Hmac(key);
    for (const text of texts)
      expect(signer.of(text)).toBe(createHmac('sha256', key).update(text).digest('base64url'));
  },
);
