// Starts the program, then registers the service worker: the other way round, its downloads would slow the first start.

// Enter never marks and never saves: callipers that type end each value with it.
addEventListener(
  "keydown",
  (e) => {
    if (e.key === "Enter" && e.target.closest?.("[data-no-enter]")) e.preventDefault();
  },
  true,
);

await Blazor.start();
const chosen = lastJobs.chosen();
if (chosen) Blazor.navigateTo(chosen);

if ("serviceWorker" in navigator)
  navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" });
