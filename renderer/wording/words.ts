import { english } from './english.ts';

/** The interface in a language: another language is another table of this shape. */
export type Words = typeof english;

export const words: Words = english;
