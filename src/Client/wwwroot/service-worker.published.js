// Keeps the program itself on the device, so that it starts without network and without the shop.
// Every version has its own cache; files of one version are never mixed with those of another.

self.importScripts("./service-worker-assets.js");

const cacheName = `shell ${self.assetsManifest.version}`;
const wanted = /\.(wasm|js|json|css|woff2|html|svg|png|webmanifest|dat|blat|txt)$/;
const unwanted = /^service-worker(\.published)?\.js$|\.map$/;
const assets = self.assetsManifest.assets.filter((a) => wanted.test(a.url) && !unwanted.test(a.url));
const paths = new Set(assets.map((a) => new URL(a.url, self.location).pathname));
const index = new URL("index.html", self.location).pathname;
const patience = 2500; // ms: then the start from the cache goes ahead

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) return;
  if (url.pathname.startsWith("/api/") || url.pathname.startsWith("/trust")) return; // the shop's own to answer
  if (event.request.mode === "navigate") event.respondWith(page());
  else if (paths.has(url.pathname)) event.respondWith(file(event.request, url.pathname));
});

async function install() {
  const cache = await caches.open(cacheName);
  await cache.addAll(assets.map((a) => new Request(a.url, { integrity: a.hash, cache: "no-cache" })));
  await self.skipWaiting();
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
  return (await cache.match(path)) ?? fetch(request);
}
