// Where down is, as the device feels it. Values are held between events: many devices tell only what changes.

const PATIENCE = 1000; // ms until a device that tells nothing has none
const TICK = 50; // ms
const KEPT = 100; // ticks
let running;

/** Why there is nothing to feel: "insecure", "none", or "" when there may be. */
export function can() {
  if (!window.isSecureContext) return "insecure";
  return "DeviceOrientationEvent" in window ? "" : "none";
}

/** Begins to feel. Answers "" or what is in the way. */
export async function start() {
  stop();
  const mine = (running = { ticks: [] });
  try {
    // some phones ask the person first, and only in a tap
    if (typeof DeviceOrientationEvent.requestPermission === "function") {
      if ((await DeviceOrientationEvent.requestPermission()) !== "granted") return end(mine, "refused");
    }
  } catch {
    return end(mine, "refused");
  }
  if (mine !== running) return "";
  const first = new Promise((told) => {
    mine.feel = ({ beta, gamma }) => {
      if (beta === null || gamma === null) return;
      mine.now = [beta, gamma];
      told(true);
    };
  });
  window.addEventListener("deviceorientation", mine.feel);
  const felt = await Promise.race([first, new Promise((late) => setTimeout(late, PATIENCE, false))]);
  if (!felt) return end(mine, "none");
  mine.timer = setInterval(() => {
    mine.ticks.push(mine.now);
    if (mine.ticks.length > KEPT) mine.ticks.shift();
  }, TICK);
  return "";
}

export function stop() {
  end(running, "");
}

function end(mine, why) {
  window.removeEventListener("deviceorientation", mine?.feel);
  clearInterval(mine?.timer);
  if (mine === running) running = null;
  return why;
}

/** Front-back and left-right, in degrees, of the newest seconds: one after the other. */
export const latest = (seconds) => (running?.ticks ?? []).slice(-Math.round((seconds * 1000) / TICK)).flat();

/** Forgets what was felt so far: a hand has moved it. */
export function forget() {
  if (running) running.ticks = [];
}
