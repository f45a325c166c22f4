// The device's own store, its locks and its news between tabs. All judgement is made in C#; here nothing is decided
// but that a number is never given twice.

const databaseName = "witnessmark";
const strict = { durability: "strict" };
const patience = 45_000; // ms that another tab may talk to the shop before this one does it too
let database;
let channel;
let isSuperseded = false;

export const asked = (request) =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

export const done = (transaction) =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new Error("The store gave up."));
    transaction.onerror = () => reject(transaction.error);
  });

function newDevice() {
  const alphabet = "abcdefghjkmnpqrstuvwxyz23456789";
  const chance = crypto.getRandomValues(new Uint8Array(10));
  return "d-" + Array.from(chance, (b) => alphabet[b % alphabet.length]).join("");
}

/** Opens the store; calls <c>Blocked</c> of the listener while another tab holds it in an older form. */
export async function open(listener) {
  const request = indexedDB.open(databaseName, 2);
  request.onblocked = () => listener.invokeMethodAsync("Blocked");
  request.onupgradeneeded = ({ oldVersion }) => {
    if (oldVersion < 1) {
      request.result.createObjectStore("entries", { keyPath: "id" });
      request.result.createObjectStore("facts");
      const facts = request.transaction.objectStore("facts");
      facts.put(newDevice(), "device");
      facts.put(0, "headSeq");
    }
    if (oldVersion < 2) request.result.createObjectStore("photographs", { keyPath: "sha256" }).createIndex("sent", "sent");
  };
  database = await asked(request);
  // another tab of a newer version wants to change the store: from here on this one writes nothing
  database.onversionchange = () => {
    isSuperseded = true;
    database.close();
  };
  channel = "BroadcastChannel" in window ? new BroadcastChannel(databaseName) : null;
}

/** Whether a newer version of the program took the store over in another tab. */
export const superseded = () => isSuperseded;

/** A transaction on one store, and the store. */
export function inStore(name, mode = "readonly") {
  const transaction = database.transaction(name, mode, strict);
  return [transaction, transaction.objectStore(name)];
}

/** All facts about the device as one JSON text. */
export async function facts() {
  const store = database.transaction("facts").objectStore("facts");
  const [keys, values] = await Promise.all([asked(store.getAllKeys()), asked(store.getAll())]);
  return JSON.stringify(Object.fromEntries(keys.map((k, i) => [k, values[i]])));
}

/** Texts of all entries, or of those with the given ids. */
export async function entries(ids) {
  const store = database.transaction("entries").objectStore("entries");
  const found = ids ? await Promise.all(ids.map((id) => asked(store.get(id)))) : await asked(store.getAll());
  return found.filter((e) => e).map((e) => e.text);
}

/**
 * Number and fact in one transaction. Answers "" when it stands, "full" when there is no room, "superseded" when the store is another tab's now, or
 * the head that another tab has written meanwhile.
 */
export async function append(id, text, seq, previous, hash) {
  if (isSuperseded) return "superseded";
  const transaction = database.transaction(["entries", "facts"], "readwrite", strict);
  const finished = done(transaction);
  const facts = transaction.objectStore("facts");
  let head = null;
  // asked and written in one go, which waits for the store once: nothing stands before the transaction ends, and it ends with the answer's consent only
  const taken = Promise.all([asked(facts.get("headSeq")), asked(facts.get("headHash"))]).then(([headSeq, headHash]) => {
    if (headSeq === seq - 1 && (headHash ?? null) === (previous ?? null)) return;
    head = JSON.stringify({ headSeq, headHash });
    transaction.abort();
  });
  try {
    transaction.objectStore("entries").add({ id, text });
    facts.put(seq, "headSeq");
    facts.put(hash, "headHash");
    await Promise.all([taken, finished]);
  } catch (error) {
    if (head) return head;
    if ((error ?? transaction.error)?.name === "QuotaExceededError") return "full";
    throw error;
  }
  tell({ ids: [id] });
  return "";
}

/** Entries of other devices, and how far the shop was read, in one transaction. */
export async function keep(ids, texts, ledger, pulled) {
  const transaction = database.transaction(["entries", "facts"], "readwrite", strict);
  const finished = done(transaction);
  const store = transaction.objectStore("entries");
  const known = await Promise.all(ids.map((id) => asked(store.getKey(id))));
  ids.forEach((id, i) => known[i] ?? store.put({ id, text: texts[i] }));
  transaction.objectStore("facts").put(ledger, "ledger");
  transaction.objectStore("facts").put(pulled, "pulled");
  await finished;
  tell({ ids });
}

export async function remember(names, values) {
  const transaction = database.transaction("facts", "readwrite", strict);
  const finished = done(transaction);
  names.forEach((name, i) => transaction.objectStore("facts").put(values[i], name));
  await finished;
  tell({ ids: [] });
}

/** Answers when what was drawn has come onto the screen; soon where nothing is painted, because nobody looks. */
export const painted = () =>
  new Promise((resolve) => {
    const unseen = setTimeout(resolve, 50);
    requestAnimationFrame(() => {
      clearTimeout(unseen);
      setTimeout(resolve);
    });
  });

const tell = (news) => channel?.postMessage(news);

/** Tells of other tabs' writing, of the network coming back and of the page becoming visible. */
export function listen(listener) {
  if (channel)
    channel.onmessage = (e) => (e.data.forgot ? location.reload() : listener.invokeMethodAsync("HeardOf", e.data.ids));
  addEventListener("online", () => listener.invokeMethodAsync("Wake"));
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") listener.invokeMethodAsync("Wake");
  });
}

// The shop's news, while the page is looked at: browsers keep few lines open to one shop, and a page out of sight asks from time to time anyway.
let news;
let newsTo;

export function hearNews(listener) {
  if (!newsTo) document.addEventListener("visibilitychange", openNews);
  newsTo = listener;
  openNews();
}

function openNews() {
  if (document.visibilityState !== "visible") {
    news?.close();
    news = null;
  } else if (!news || news.readyState === EventSource.CLOSED) {
    news = new EventSource("api/news");
    news.onmessage = (e) => newsTo.invokeMethodAsync("HeadIs", Number(e.data));
  }
}

let since = null; // when the lock was first found taken, and ever since

/**
 * Runs the method unless another tab runs it now. A tab that holds on for long may be frozen by the browser and never let go: then this one takes the
 * lock from it. Should both run, no harm is done: the shop counts twice-sent once. So without locks (no secure context) it just runs.
 */
export async function alone(listener, method) {
  const run = () => listener.invokeMethodAsync(method);
  if (!navigator.locks) return run();
  const steal = since !== null && Date.now() - since > patience;
  const how = steal ? { steal: true } : { ifAvailable: true };
  try {
    return await navigator.locks.request(databaseName, how, async (lock) => {
      since = lock ? null : (since ?? Date.now());
      return lock ? await run() : false;
    });
  } catch (error) {
    if (error?.name === "AbortError") return false; // another tab took the lock; what was begun ends by itself
    throw error;
  }
}

/** A newer version of the program that waits may take over now, from the next start on. */
export async function letNewerTakeOver() {
  const registration = await navigator.serviceWorker?.getRegistration();
  registration?.waiting?.postMessage("take over");
}

/** Asks the browser not to clear the store when space runs short. */
export async function persist() {
  return (await navigator.storage?.persist?.()) ?? false;
}

export async function space() {
  const estimate = await navigator.storage?.estimate?.();
  const kept = (await navigator.storage?.persisted?.()) ?? false;
  return JSON.stringify({ usage: estimate?.usage ?? 0, quota: estimate?.quota ?? 0, kept });
}

// Timers: one key each, so that two tabs never put back what the other changed.
const timerKeys = IDBKeyRange.bound("timer ", "timer \uffff");

export async function timers() {
  const store = database.transaction("facts").objectStore("facts");
  const [keys, values] = await Promise.all([asked(store.getAllKeys(timerKeys)), asked(store.getAll(timerKeys))]);
  return keys.map((k, i) => [k.slice(6), values[i]]);
}

export async function saveTimer(id, text) {
  const transaction = database.transaction("facts", "readwrite", strict);
  const finished = done(transaction);
  const facts = transaction.objectStore("facts");
  if (text) facts.put(text, `timer ${id}`);
  else facts.delete(`timer ${id}`);
  await finished;
  tell({ ids: [] });
}

// Settings: one key for each person who works here.
export async function settings(person) {
  return (await asked(database.transaction("facts").objectStore("facts").get(`settings ${person}`))) ?? null;
}

export async function saveSettings(person, text) {
  const transaction = database.transaction("facts", "readwrite", strict);
  const finished = done(transaction);
  transaction.objectStore("facts").put(text, `settings ${person}`);
  await finished;
  tell({ ids: [] });
}

/** The shop is another one: nothing of the one before stays, and this device takes a new name. */
export async function forget(person, settings) {
  const transaction = database.transaction(["entries", "facts", "photographs"], "readwrite", strict);
  const finished = done(transaction);
  for (const name of ["entries", "facts", "photographs"]) transaction.objectStore(name).clear();
  const facts = transaction.objectStore("facts");
  facts.put(newDevice(), "device");
  facts.put(0, "headSeq");
  facts.put(person, "person");
  facts.put(settings, `settings ${person}`);
  await finished;
  for (const key of Object.keys(localStorage)) if (key.startsWith("draft ")) localStorage.removeItem(key);
  lastJobs.keep(null);
  tell({ forgot: true });
}

let wasDark = false;
document.addEventListener("visibilitychange", () => (wasDark = true));

/** Whether the page was out of sight since this was asked last. */
export function dark() {
  const was = wasDark || document.visibilityState === "hidden";
  wasDark = false;
  return was;
}

let calling = "";
export function attention(words) {
  const title = document.title.startsWith(calling) ? document.title.slice(calling.length) : document.title;
  calling = words ? `${words} · ` : "";
  if (document.title !== calling + title) document.title = calling + title;
}

export const vibrate = () => navigator.vibrate?.([300, 150, 300]);

let audio;
export function readySound(wanted) {
  if (!wanted || !("AudioContext" in window)) return;
  audio ??= new AudioContext();
  audio.resume();
}

/** Three short tones. */
export function beep() {
  if (audio?.state !== "running") return;
  for (let i = 0; i < 3; i++) {
    const tone = audio.createOscillator();
    const volume = audio.createGain();
    tone.frequency.value = 880;
    volume.gain.value = 0.2;
    tone.connect(volume).connect(audio.destination);
    tone.start(audio.currentTime + i * 0.4);
    tone.stop(audio.currentTime + i * 0.4 + 0.2);
  }
}

// What is half typed survives a reload. It is no fact yet, so it needs no strict store.
export const draft = (key) => localStorage.getItem(`draft ${key}`);
export function saveDraft(key, text) {
  if (text) localStorage.setItem(`draft ${key}`, text);
  else localStorage.removeItem(`draft ${key}`);
}

// Digits typed on a keyboard, or by an instrument that acts as one, reach the reading wherever the focus stands.
let typist;
addEventListener("keydown", (e) => {
  if (!typist || e.ctrlKey || e.altKey || e.metaKey) return;
  if (document.querySelector("dialog[open]")) return; // what is typed there is not meant for what lies below it
  if (e.target.closest?.("input, textarea, select")) return;
  if (/^[0-9A-Za-z.,-]$/.test(e.key) || e.key === "Backspace" || e.key === "Enter") {
    if (e.key === "Enter" && e.target.closest?.("a, summary, button:not([data-no-enter])")) return;
    e.preventDefault();
    typist.invokeMethodAsync("Typed", e.key);
  }
});
let turn = 0;

/** Gives the keys to a reading; answers the turn by which it gives them back. */
export function type(listener) {
  typist = listener;
  return ++turn;
}

// a reading that goes away must not take the keys from the one that came in its place
export function stopTyping(mine) {
  if (mine === turn) typist = null;
}

export const focus = (selector) => document.querySelector(selector)?.focus({ preventScroll: true });
export const toTop = (selector) => requestAnimationFrame(() => document.querySelector(selector)?.scrollTo(0, 0)); // asked at once, it would lay the page out twice
export const topOfPage = () => scrollTo(0, 0);
