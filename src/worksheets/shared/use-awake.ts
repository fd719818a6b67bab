import { useEffect, useState } from 'preact/hooks';

export type Awake = 'on' | 'off' | 'unknown';

/** Keeps the screen on while it is shown, where the browser allows it; takes hold again after a pause. */
export function useAwake(wanted: boolean): Awake {
  const [state, setState] = useState<Awake>('unknown');
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) {
      setState(wanted ? 'unknown' : 'off');
      return;
    }
    let held: WakeLockSentinel | undefined;
    let over = false;
    const hold = async () => {
      if (document.visibilityState !== 'visible' || over) return;
      try {
        held = await navigator.wakeLock.request('screen');
        if (over) await held.release();
        else setState('on');
        held.addEventListener('release', () => setState('off'));
      } catch {
        // A low battery or a setting forbids it: the bench works, the screen goes dark.
        setState('off');
      }
    };
    hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', hold);
      held?.release().catch(() => {});
    };
  }, [wanted]);
  return state;
}
