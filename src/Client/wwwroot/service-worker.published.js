// Keeps the program itself on the device, so that it starts without network and without the shop.
// Every version has its own cache; files of one version are never mixed with those of another.

self.importScripts("./service-worker-assets.js");

const cacheName = `shell ${self.assetsManifest.version}`;
const wanted = /\.(wasm|js|json|css|woff2|html|svg|png|webmanifest|dat|blat|txt)$/;
const unwanted = /^service-worker(\.published)?\.js$|\.map$/;
const assets = self.assetsManifest.assets.filter((a) => wanted.test(a.url) && !unwanted.test(a.url));
const languages = self.assetsManifest.assets.filter((a) => /\.po$/.test(a.url)); // fetched when somebody chooses one
const paths = new Set([...assets, ...languages].map((a) => new URL(a.url, self.location).pathname));
const index = new URL("index.html", self.location).pathname;
const patience = 2500; // ms: then the start from the cache goes ahead

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => event.data === "take over" && self.skipWaiting());
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) return;
  if (url.pathname.startsWith("/api/") || url.pathname.startsWith("/trust")) return; // the shop's own to answer
  if (event.request.mode === "navigate") event.respondWith(page());
  else if (paths.has(url.pathname)) event.respondWith(file(event.request, url.pathname));
});

async function install() {
  const cache = await caches.open(cacheName);
  const all = [...assets, ...(await spoken())];
  await cache.addAll(all.map((a) => new Request(a.url, { integrity: a.hash, cache: "no-cache" })));
  // the first one starts at once; a newer one waits until the page says that nothing of this device is still on its way to the shop
}

/** The languages that the version before kept: who works in one goes on in it. */
async function spoken() {
  const had = await Promise.all(languages.map((a) => caches.match(new URL(a.url, self.location).href)));
  return languages.filter((_, i) => had[i]);
}

async function activate() {
  const names = await caches.keys();
  await Promise.all(names.filter((n) => n.startsWith("shell ") && n !== cacheName).map((n) => caches.delete(n)));
  await self.clients.claim();
}

async function page() {
  const cache = await caches.open(cacheName);
  const stored = () => cache.match(index);
  const late = new Promise((resolve) => setTimeout(async () => resolve(await stored()), patience));
  const fresh = fetch(index, { cache: "no-cache" }).then(
    async (answer) => (answer.ok ? answer : ((await stored()) ?? answer)),
    async () => (await stored()) ?? Response.error(),
  );
  return (await Promise.race([fresh, late])) ?? fresh;
}

async function file(request, path) {
  const cache = await caches.open(cacheName);
  const kept = await cache.match(path);
  if (kept || !path.endsWith(".po")) return kept ?? fetch(request);
  const answer = await fetch(request);
  if (answer.ok) await cache.put(path, answer.clone());
  return answer;
}
