// Looks for bar codes through the camera. What it reads is only told; who holds the device decides.

import { readRow } from "./barcode.js";

const LINES = 24; // rows of a picture that are read
const PAUSE = 120; // ms between pictures
const OWN = ["code_39", "code_128", "data_matrix", "qr_code"];
let running;

/** What this browser can do: "none" without a camera, "own" with a reader of its own, else "ours". */
export function can() {
  if (!navigator.mediaDevices?.getUserMedia) return "none";
  return "BarcodeDetector" in window ? "own" : "ours";
}

/** Shows the camera and tells each code that was read twice the same. Answers "" or why there is no picture. */
export async function start(selector, listener) {
  stop();
  const mine = (running = {});
  try {
    const wanted = { facingMode: "environment", width: { ideal: 1280 }, height: { ideal: 720 } };
    mine.stream = await navigator.mediaDevices.getUserMedia({ video: wanted, audio: false });
    const video = document.querySelector(selector);
    if (mine !== running || !video) {
      mine.stream.getTracks().forEach((t) => t.stop());
      return "";
    }
    video.srcObject = mine.stream;
    await video.play();
    look(mine, video, listener);
    return "";
  } catch (refused) {
    if (mine === running) stop();
    return refused.name || "Error";
  }
}

export function stop() {
  running?.stream?.getTracks().forEach((t) => t.stop());
  running = null;
}

async function look(mine, video, listener) {
  const detector = can() === "own" ? new BarcodeDetector({ formats: OWN }) : null;
  let before = null;
  while (mine === running) {
    const text = detector ? ((await detector.detect(video).catch(() => []))[0]?.rawValue ?? null) : readPicture(video);
    // a single picture may be blurred: only what the next one says too is told
    if (text && text === before && mine === running) listener.invokeMethodAsync("Seen", text);
    before = text;
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
}

const canvas = document.createElement("canvas");

function readPicture(video) {
  const [width, height] = [video.videoWidth, video.videoHeight];
  if (!width) return null;
  [canvas.width, canvas.height] = [width, height];
  const surface = canvas.getContext("2d", { willReadFrequently: true });
  surface.drawImage(video, 0, 0);
  for (let line = 1; line < LINES; line++) {
    // from the middle outwards: there the code is held
    const off = (line % 2 ? 1 : -1) * Math.floor(line / 2);
    const y = Math.round(height / 2 + (off * height) / LINES);
    const { data } = surface.getImageData(0, y, width, 1);
    const text = readRow(Float32Array.from({ length: width }, (_, x) => brightness(data, 4 * x)));
    if (text) return text;
  }
  return null;
}

// ITU-R BT.601 luma, from memory
const brightness = (data, i) => 0.299 * data[i] + 0.587 * data[i + 1] + 0.114 * data[i + 2];
