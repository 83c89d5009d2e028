/** Keeps the screen lit while one walks, where the browser can; asked for again after it was dark. */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let wanted = true;
  const ask = async (): Promise<void> => {
    const lit = lock !== undefined && !lock.released;
    if (!wanted || lit || document.visibilityState !== 'visible') return;
    try {
      const given = await navigator.wakeLock.request('screen');
      if (wanted) lock = given;
      else await given.release();
    } catch {
      // A browser without it, or a battery that runs low: the screen goes dark as it always does.
    }
  };
  const again = () => void ask();
  document.addEventListener('visibilitychange', again);
  void ask();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', again);
    void lock?.release();
  };
}
