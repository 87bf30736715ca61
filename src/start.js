// Starts the app and takes the first paint of index.html away. No inline script: the page's policy forbids it.
try {
  const { default: start } = await import("./haulm.js");
  await start();
  document.getElementById("start").remove();
} catch (cause) {
  console.error(cause);
  document.getElementById("start-state").textContent =
    "Haulm did not start: a part of the program did not arrive, or this browser is too old to run it. " +
    "Reload the page; where that does not help, use a newer browser. What was saved in this browser is untouched.";
}
// Then keeps it for the times without a network. A page from a file cannot, and does not need to.
if (navigator.serviceWorker && location.protocol !== "file:") {
  try {
    const kept = await navigator.serviceWorker.register("offline.js");
    const tell = () => kept.waiting && navigator.serviceWorker.controller && dispatchEvent(new Event("haulm-newer"));
    tell();
    kept.addEventListener("updatefound", () => kept.installing?.addEventListener("statechange", tell));
    addEventListener("haulm-use", () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      kept.waiting?.postMessage("use");
    });
  } catch (cause) {
    // The app works without; it only will not open with no network.
    console.info("not kept for offline use", cause);
  }
}
