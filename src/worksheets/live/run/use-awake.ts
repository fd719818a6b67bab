import { useEffect, useState } from 'preact/hooks';

/** Keeps the screen on while it is shown, where the browser allows it, and says whether it does; takes hold again after a pause. */
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
        // A low battery or a setting forbids it: the bench works, the screen goes dark.
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
