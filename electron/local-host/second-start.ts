import { randomBytes, timingSafeEqual } from 'node:crypto';

/** Where a second start of the program asks for a way in, and the header with the secret that only this user can read. */
export const comeForwardPath = '/come-forward';
export const secretHeader = 'x-foldbook-secret';

export const newSecret = () => randomBytes(24).toString('base64url');

/** Whether a secret that was sent is the one. */
export function isSecret(given: unknown, secret: string): boolean {
  const [one, other] = [Buffer.from(typeof given === 'string' ? given : ''), Buffer.from(secret)];
  return one.length === other.length && timingSafeEqual(one, other);
}
