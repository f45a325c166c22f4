// The microphone as it is, nothing evened out. The last seconds stand in memory until newer ones push them out; nothing is kept or sent.

const KEPT = 6; // s
const EVENED = ["echoCancellation", "noiseSuppression", "autoGainControl"];
let running;

/** Why this device cannot listen: "insecure", "none", or "" when it can. */
export function can() {
  if (!window.isSecureContext) return "insecure";
  return navigator.mediaDevices?.getUserMedia && "AudioWorkletNode" in window ? "" : "none";
}

/** Begins to listen. Answers "" or the name of what is in the way. */
export async function start() {
  stop();
  const mine = (running = { at: 0, heard: 0 });
  try {
    const wanted = Object.fromEntries([...EVENED.map((name) => [name, false]), ["channelCount", 1]]);
    mine.stream = await navigator.mediaDevices.getUserMedia({ audio: wanted, video: false });
    mine.context = new AudioContext();
    await mine.context.audioWorklet.addModule("microphone-tap.js");
    await mine.context.resume();
    if (mine === running) listen(mine);
    else release(mine);
    return "";
  } catch (refused) {
    release(mine);
    if (mine === running) running = null;
    return refused.name || "Error";
  }
}

export function stop() {
  release(running);
  running = null;
}

function listen(mine) {
  const { context, stream } = mine;
  mine.ring = new Float32Array(Math.ceil(KEPT * context.sampleRate));
  const tap = new AudioWorkletNode(context, "tap");
  tap.port.onmessage = ({ data }) => take(mine, data);
  const silence = new GainNode(context, { gain: 0 }); // a tap that leads nowhere is not worked by every browser
  context.createMediaStreamSource(stream).connect(tap).connect(silence).connect(context.destination);
}

function take(mine, samples) {
  for (const sample of samples) {
    mine.ring[mine.at] = sample;
    mine.at = (mine.at + 1) % mine.ring.length;
  }
  mine.heard += samples.length;
}

function release(mine) {
  mine?.stream?.getTracks().forEach((track) => track.stop());
  mine?.context?.close().catch(() => {});
}

/** Samples in a second. */
export const rate = () => running?.context?.sampleRate ?? 0;

/** Whether the microphone is still there: it may be pulled out, or taken by a call. */
export const alive = () => running?.stream?.getAudioTracks()[0]?.readyState === "live";

/** Whether the browser evens the sound out all the same. */
export function evened() {
  const now = running?.stream?.getAudioTracks()[0]?.getSettings() ?? {};
  return EVENED.some((name) => now[name] === true);
}

/** The newest seconds as bytes of 32 bit floating point; fewer where fewer were heard. */
export function latest(seconds) {
  if (!running?.ring) return new Uint8Array();
  const { ring, at, heard } = running;
  const length = Math.min(Math.round(seconds * rate()), heard, ring.length);
  const samples = new Float32Array(length);
  for (let i = 0; i < length; i++) samples[i] = ring[(at - length + i + ring.length) % ring.length];
  return new Uint8Array(samples.buffer);
}

/** Forgets what was heard so far. */
export function forget() {
  if (running) running.heard = 0;
}
