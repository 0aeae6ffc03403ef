// Keeps the screen on while something must be seen, where the browser can. Gives the way to let it go.

export function keepAwake(): () => void {
  let held: WakeLockSentinel | undefined;
  let wanted = true;
  const ask = async () => {
    if (!wanted || document.visibilityState !== 'visible') return;
    try {
      const lock = await navigator.wakeLock?.request('screen');
      if (wanted) held = lock;
      else await lock?.release();
    } catch {
      // A phone that saves its last power may refuse: the screen then goes off as it always does.
    }
  };
  // The browser lets it go when the app is left.
  document.addEventListener('visibilitychange', ask);
  void ask();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', ask);
    void held?.release();
  };
}
