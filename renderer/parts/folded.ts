/** A text as letters that are typed to find it are compared with: small ones without accents. */
export const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
