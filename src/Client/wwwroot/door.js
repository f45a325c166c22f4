// The key of this device: made here, kept by the browser in a form that no script can read, and used for nothing but showing that this is
// the device that a lead let in.

const name = "witnessmark door";
const kind = { name: "ECDSA", namedCurve: "P-256" };

const asked = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

async function store(mode) {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("keys");
  return (await asked(opening)).transaction("keys", mode, { durability: "strict" }).objectStore("keys");
}

const pair = async () => await asked((await store("readonly")).get("device"));

/** Whether this browser can keep a key: only on https, and on the computer that serves. */
export const can = () => !!globalThis.crypto?.subtle;

/** The coordinates of the public key, made on first use. */
export async function key() {
  let mine = await pair();
  if (!mine) {
    mine = await crypto.subtle.generateKey(kind, false, ["sign"]);
    await asked((await store("readwrite")).add(mine, "device"));
  }
  const { x, y } = await crypto.subtle.exportKey("jwk", mine.publicKey);
  return [x, y];
}

/** Signs a text; empty when this device has no key. */
export async function sign(text) {
  const mine = await pair();
  if (!mine) return "";
  const made = await crypto.subtle.sign({ name: "ECDSA", hash: "SHA-256" }, mine.privateKey, new TextEncoder().encode(text));
  return btoa(String.fromCharCode(...new Uint8Array(made)))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}

/** Another key, for a device that was shut out. */
export async function forget() {
  await asked((await store("readwrite")).delete("device"));
}

/** Tells, at most once in a while, that somebody is at this device. */
export function watch(listener, every) {
  let last = 0;
  const seen = () => {
    if (Date.now() - last < every) return;
    last = Date.now();
    listener.invokeMethodAsync("SomebodyIsHere");
  };
  addEventListener("pointerdown", seen, { passive: true });
  addEventListener("keydown", seen, { passive: true });
}
