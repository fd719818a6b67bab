/**
 * A button that disappears when pressed takes the focus with it. If it was pressed by keyboard, the
 * focus moves to an element that stays. If it was tapped, the focus does not move, so that no
 * on-screen keyboard opens.
 */
export function keepFocus(event: MouseEvent, stays: string): void {
  if (event.detail === 0) document.getElementById(stays)?.focus();
}
