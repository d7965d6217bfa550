import { randomBytes, timingSafeEqual } from 'node:crypto';
import { z } from 'zod';

/** Where a second start of the program asks for a way in, and the header with the secret that only this user can read. */
export const comeForwardPath = '/come-forward';
export const secretHeader = 'x-foldbook-secret';

/** What a second start is answered: an address that opens one more window, and how many windows were told to show up. */
export const CameForward = z.strictObject({ entry: z.string(), windowCount: z.number().int().min(0) });
export type CameForward = z.infer<typeof CameForward>;

export const newSecret = () => randomBytes(24).toString('base64url');

/** Whether a secret that was sent is the one. */
export function isSecret(given: unknown, secret: string): boolean {
  const [one, other] = [Buffer.from(typeof given === 'string' ? given : ''), Buffer.from(secret)];
  return one.length === other.length && timingSafeEqual(one, other);
}
