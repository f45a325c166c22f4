// Photographs: drawn anew and small before they are kept, kept in the device's own store before anything is said of them,
// and thrown away here only when the shop has them and room is needed.
import { asked, done, inStore } from "./device.js";

const longest = 1600; // pixels
const quality = 0.8;
const type = "image/jpeg";

/** The chosen file as a small JPEG; empty when this browser cannot read it. Drawing takes over the picture and nothing else. */
export async function shrink(input) {
  try {
    const picture = await createImageBitmap(input.files[0]);
    const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    const pen = canvas.getContext("2d");
    pen.imageSmoothingQuality = "high";
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const drawn = await new Promise((resolve) => canvas.toBlob(resolve, type, quality));
    return new Uint8Array(await drawn.arrayBuffer());
  } catch {
    return new Uint8Array();
  }
}

/** Keeps a picture; false when there is no room even without those that the shop has. */
export async function keep(sha256, bytes) {
  if (await put(sha256, bytes)) return true;
  await forgetSent();
  return put(sha256, bytes);
}

async function put(sha256, bytes) {
  try {
    const [transaction, store] = inStore("photographs", "readwrite");
    const finished = done(transaction);
    store.put({ sha256, bytes, sent: 0 });
    await finished;
    return true;
  } catch (error) {
    if (error?.name === "QuotaExceededError") return false;
    throw error;
  }
}

async function forgetSent() {
  const [transaction, store] = inStore("photographs", "readwrite");
  const finished = done(transaction);
  for (const key of await asked(store.index("sent").getAllKeys(1))) store.delete(key);
  await finished;
}

/** Hashes of pictures that the shop has not confirmed. */
export const unsent = () => asked(inStore("photographs")[1].index("sent").getAllKeys(0));

export async function bytes(sha256) {
  return (await asked(inStore("photographs")[1].get(sha256)))?.bytes ?? new Uint8Array();
}

/** Notes that the shop has one picture, or, without a hash, that it has none of them. */
export async function noteSent(sha256, sent) {
  const [transaction, store] = inStore("photographs", "readwrite");
  const finished = done(transaction);
  const found = sha256 ? [await asked(store.get(sha256))] : await asked(store.getAll());
  for (const each of found) if (each) store.put({ ...each, sent });
  await finished;
}

/** Where an image finds the picture: here, or at the shop. */
export async function address(sha256) {
  const here = await bytes(sha256);
  return here.length > 0 ? show(here) : `api/photographs/${sha256}`;
}

export const show = (picture) => URL.createObjectURL(new Blob([picture], { type }));
export const hide = (url) => url.startsWith("blob:") && URL.revokeObjectURL(url);
