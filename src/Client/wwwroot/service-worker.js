// While developing nothing is cached. The published program uses service-worker.published.js.
self.addEventListener("fetch", () => {});
