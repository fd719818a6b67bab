import { Component, options } from 'preact';

// A browser that translates puts texts of its own in place of ours, and what Preact then writes into ours nobody sees:
// the numbers of before would stay, under a “Good”. So before a part is drawn again all that others did to it is
// undone, the last first; what was drawn is then translated as anything new is.

type Maybe<T> = T | null | undefined;
/** What a part is told once it was drawn: all in it is as it was drawn, in English. */
export const DRAWN = 'drawn';
const watched = new Set<Element>();
let observer: MutationObserver | undefined;
/** What others did to the parts since they were drawn. */
let done: MutationRecord[] = [];
/** Where something is to be drawn again. */
const asked: Maybe<Node>[] = [];

// From the first drawing on: what a part draws as it wakes is no one else's doing.
const { setState } = Component.prototype;
Component.prototype.setState = function (...change) {
  asked.push(this.base);
  setState.apply(this, change);
};
options.debounceRendering = (draw) => queueMicrotask(() => drawAsLeft(asked.splice(0), draw));

/** From now on a live part is drawn on what it was left as. */
export function watchPart(part: Element): void {
  observer ??= new MutationObserver((records) => done.push(...records));
  watched.add(part);
  watch(part);
}

const watch = (part: Element) =>
  observer?.observe(part, {
    subtree: true,
    childList: true,
    characterData: true,
    characterDataOldValue: true,
  });

/** Draws in the parts that hold some nodes, each as it was left. */
export function drawAsLeft(nodes: readonly Maybe<Node>[], draw: () => void): void {
  const parts = new Set(nodes.map(partOf));
  done.push(...(observer?.takeRecords() ?? []));
  observer?.disconnect();
  // Where it cannot be told in which part, it may be in any.
  const isAny = parts.has(undefined);
  const isHere = ({ target }: MutationRecord) =>
    isAny || [...parts].some((part) => part!.contains(target));
  const here = done.filter(isHere);
  done = done.filter((record) => !isHere(record));
  try {
    for (const record of here.reverse()) undo(record);
    draw();
    for (const part of isAny ? watched : parts) part!.dispatchEvent(new Event(DRAWN));
  } finally {
    watched.forEach(watch);
  }
}

/** What is drawn by itself: a live part, or what goes on within one, as a clock does. None where it was taken out. */
function partOf(node: Maybe<Node>): Maybe<Element> {
  const part = (node instanceof Element ? node : node?.parentElement)?.closest(
    '[data-island], [data-ticks]',
  );
  return part?.isConnected ? part : undefined;
}

function undo({ target, oldValue, addedNodes, removedNodes, nextSibling }: MutationRecord): void {
  // What a text area begins with, the one thing that has a wrap, is our own doing (mount.tsx), and never in sight.
  if ('wrap' in target) return;
  if (target instanceof CharacterData) target.data = oldValue ?? '';
  // What an extension wrapped around the field that is typed in stays: moved, the field would lose the focus, and keys.
  for (const node of addedNodes as NodeListOf<ChildNode>)
    if (node.parentNode === target && !node.contains(document.activeElement)) node.remove();
  const before = nextSibling?.parentNode === target ? nextSibling : null;
  for (const node of removedNodes) if (!node.isConnected) target.insertBefore(node, before);
}
