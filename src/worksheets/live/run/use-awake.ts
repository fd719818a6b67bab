import { useEffect, useState } from 'preact/hooks';

/**
 * Keeps the screen on while mounted, if the browser allows it, and returns whether it does;
 * requested again when the page is shown again.
 */
export function useAwake(): boolean {
  const [on, setOn] = useState(false);
  useEffect(() => {
    if (!('wakeLock' in navigator)) return;
    let held: WakeLockSentinel | undefined;
    let over = false;
    const hold = async () => {
      if (document.visibilityState !== 'visible' || over) return;
      try {
        held = await navigator.wakeLock.request('screen');
        if (over) await held.release();
        else setOn(true);
        held.addEventListener('release', () => setOn(false));
      } catch {
        // Forbidden by a low battery or a setting: the bench works, but the screen may go dark.
        setOn(false);
      }
    };
    hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', hold);
      held?.release().catch(() => {});
    };
  }, []);
  return on;
}
