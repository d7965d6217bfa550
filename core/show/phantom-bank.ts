import type { Box, Socket } from './rig.ts';

/**
 * Which 48 V switch of its box a socket hangs on, counted from 0: one switch serves a bank of sockets, in the order of
 * their numbers.
 */
export function phantomBankOf(box: Pick<Box, 'phantomBankSize'>, socket: Pick<Socket, 'number'>): number {
  return Math.floor((socket.number - 1) / box.phantomBankSize);
}
