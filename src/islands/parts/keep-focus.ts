/**
 * A button that goes once it is pressed takes the focus with it. Where it was pressed with a key, the
 * focus goes on to what stays; where it was pressed with a finger, no keyboard is to open over the page.
 */
export function keepFocus(event: MouseEvent, stays: string): void {
  if (event.detail === 0) document.getElementById(stays)?.focus();
}
