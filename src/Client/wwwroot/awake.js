// Keeps the screen from going dark while it is wanted, where the browser can.

let wanted = false;
let lock = null;

async function take() {
  if (!wanted || lock || !can() || document.visibilityState !== "visible") return;
  try {
    const taken = await navigator.wakeLock.request("screen");
    if (!wanted || lock) return taken.release();
    lock = taken;
    taken.addEventListener("release", () => lock === taken && (lock = null));
  } catch {
    // refused, on a low battery for one: then the screen goes dark as it always did
  }
}

export const can = () => "wakeLock" in navigator;

export function keep(on) {
  wanted = on;
  if (on) return take();
  lock?.release();
  lock = null;
}

// a page out of sight loses it
document.addEventListener("visibilitychange", take);
