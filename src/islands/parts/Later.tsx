import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/**
 * What explains a result: drawn with it the first time, and after a change once the result stands, so
 * that at a key press nobody waits for a figure before they see the number.
 */
export function Later({ draw }: { readonly draw: () => ComponentChildren }) {
  const drawn = useRef<{ readonly by: unknown; readonly parts: ComponentChildren } | undefined>(
    undefined,
  );
  const [due, setDue] = useState<unknown>();
  if (!drawn.current || (due === draw && drawn.current.by !== draw))
    drawn.current = { by: draw, parts: draw() };
  useLayoutEffect(() => {
    if (drawn.current?.by === draw) return;
    const timer = setTimeout(() => setDue(() => draw));
    return () => clearTimeout(timer);
  }, [draw]);
  return <>{drawn.current.parts}</>;
}
