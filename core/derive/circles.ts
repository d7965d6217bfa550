import type { ActSheet } from '../show/act-sheet.ts';
import type { SheetIndex } from '../show/sheet-index.ts';
import type { Cue, Subject } from './derived.ts';
import { flows, type Sends } from './sends.ts';

/**
 * Circles in which a signal comes back to where it was: an effect that feeds itself, a mix that returns into
 * itself, a cue that reaches a mix which reaches the cue. Each list holds the sources, mixes and cue outputs of one
 * circle. Only something that returns to the desk can close one.
 */
export function findCircles(
  sheet: ActSheet,
  index: SheetIndex,
  sends: Sends,
  cues: readonly Cue[],
): Subject[][] {
  const graph = new SignalGraph();
  for (const decision of sheet.decisions)
    if (decision.about === 'effect send' && index.sourceAt.has(decision.sourceId))
      graph.link({ of: 'source', id: decision.sourceId }, { of: 'source', id: decision.returnSourceId });
  for (const source of sheet.sources) {
    const here: Subject = { of: 'source', id: source.id };
    if (source.returnsMixId !== null) graph.link({ of: 'mix', id: source.returnsMixId }, here);
    if (source.returnsCueOutputId !== null)
      graph.link({ of: 'cueOutput', id: source.returnsCueOutputId }, here);
  }
  if (graph.isEmpty()) return [];
  for (const [sourceAt, source] of sheet.sources.entries())
    for (const [mixAt, mix] of sheet.mixes.entries())
      if (flows(sends, sourceAt, mixAt))
        graph.link({ of: 'source', id: source.id }, { of: 'mix', id: mix.id });
  for (const { mixId, cueOutputId } of cues)
    if (cueOutputId !== null) graph.link({ of: 'mix', id: mixId }, { of: 'cueOutput', id: cueOutputId });
  return graph.circles();
}

type Node = { subject: Subject; next: number[] };

/** Sources, mixes and cue outputs, and what flows from which into which. */
class SignalGraph {
  readonly #nodes: Node[] = [];
  readonly #at = new Map<string, number>();

  isEmpty(): boolean {
    return this.#nodes.length === 0;
  }

  link(from: Subject & { id: string }, to: Subject & { id: string }): void {
    this.#nodes[this.#place(from)]?.next.push(this.#place(to));
  }

  /** Every group of nodes that all reach each other, by two walks (Kosaraju), without recursion. */
  circles(): Subject[][] {
    const back: number[][] = this.#nodes.map(() => []);
    this.#nodes.forEach(({ next }, at) => {
      for (const to of next) back[to]?.push(at);
    });
    const group = new Int32Array(this.#nodes.length).fill(-1);
    const groups: number[][] = [];
    for (const start of this.#inOrderOfFinish().reverse()) {
      if (group[start] !== -1) continue;
      const members = [start];
      group[start] = groups.length;
      for (let at = 0; at < members.length; at++)
        for (const to of back[members[at] ?? 0] ?? [])
          if (group[to] === -1) {
            group[to] = groups.length;
            members.push(to);
          }
      groups.push(members);
    }
    return groups
      .filter(([first = 0, ...others]) => others.length > 0 || this.#nodes[first]?.next.includes(first))
      .map((members) => members.sort((a, b) => a - b).flatMap((at) => this.#nodes[at]?.subject ?? []));
  }

  #inOrderOfFinish(): number[] {
    const finished: number[] = [];
    const seen = new Uint8Array(this.#nodes.length);
    for (let start = 0; start < this.#nodes.length; start++) {
      if (seen[start]) continue;
      seen[start] = 1;
      const stack = [{ at: start, tried: 0 }];
      for (let top = stack.at(-1); top; top = stack.at(-1)) {
        const to = this.#nodes[top.at]?.next[top.tried++];
        if (to === undefined) {
          finished.push(top.at);
          stack.pop();
        } else if (!seen[to]) {
          seen[to] = 1;
          stack.push({ at: to, tried: 0 });
        }
      }
    }
    return finished;
  }

  #place(subject: Subject & { id: string }): number {
    const key = `${subject.of} ${subject.id}`;
    const there = this.#at.get(key);
    if (there !== undefined) return there;
    this.#at.set(key, this.#nodes.length);
    return this.#nodes.push({ subject, next: [] }) - 1;
  }
}
