import { Component, options } from 'preact';

// Browser translation replaces our text nodes with its own, so what Preact then writes to ours is
// invisible: the old numbers would stay, perhaps under a “Good”. So before a part is drawn again,
// all DOM changes made by others are undone, in reverse order. The new content is then translated
// like any other.

type Maybe<T> = T | null | undefined;
/** Event sent to a part after it was drawn: its content is as we drew it, in English. */
export const DRAWN = 'drawn';
const watched = new Set<Element>();
let observer: MutationObserver | undefined;
/** Mutations made by others since the last draw. */
let done: MutationRecord[] = [];
/** Nodes of the components that asked to be redrawn. */
const asked: Maybe<Node>[] = [];

// Patched before the first draw, so that what a part draws as it wakes counts as our own.
const { setState } = Component.prototype;
Component.prototype.setState = function (...change) {
  asked.push(this.base);
  setState.apply(this, change);
};
options.debounceRendering = (draw) => queueMicrotask(() => drawAsLeft(asked.splice(0), draw));

/** From now on, changes that others make to this live part are undone before it is drawn. */
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

/** Restores the parts that hold these nodes to what we drew, then draws. */
export function drawAsLeft(nodes: readonly Maybe<Node>[], draw: () => void): void {
  const parts = new Set(nodes.map(partOf));
  done.push(...(observer?.takeRecords() ?? []));
  observer?.disconnect();
  // A node whose part is unknown may be in any part.
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

/**
 * The part that is drawn on its own: a live part, or an element in one that ticks, such as a clock.
 * Undefined once it has been removed from the page.
 */
function partOf(node: Maybe<Node>): Maybe<Element> {
  const part = (node instanceof Element ? node : node?.parentElement)?.closest(
    '[data-island], [data-ticks]',
  );
  return part?.isConnected ? part : undefined;
}

function undo({ target, oldValue, addedNodes, removedNodes, nextSibling }: MutationRecord): void {
  // The default text of a text area (the only target with `wrap`) is set by us (mount.tsx) and is
  // never visible.
  if ('wrap' in target) return;
  if (target instanceof CharacterData) target.data = oldValue ?? '';
  // Leave an element that an extension wrapped around the focused field: moving the field would
  // lose the focus and key presses.
  for (const node of addedNodes as NodeListOf<ChildNode>)
    if (node.parentNode === target && !node.contains(document.activeElement)) node.remove();
  const before = nextSibling?.parentNode === target ? nextSibling : null;
  for (const node of removedNodes) if (!node.isConnected) target.insertBefore(node, before);
}
