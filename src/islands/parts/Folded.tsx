import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

/** Fields folded away until the reader opens them, or until one of them has a problem. */
export function Folded({
  name,
  needed,
  children,
}: {
  readonly name: string;
  readonly needed: boolean;
  readonly children: ComponentChildren;
}) {
  const [open, setOpen] = useState(false);
  if (needed && !open) setOpen(true);
  return (
    <details class="folded" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{name}</summary>
      {children}
    </details>
  );
}
